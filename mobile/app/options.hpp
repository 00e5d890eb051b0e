// What the program was told on its command line.
#pragma once

#include <optional>

#include <QSize>
#include <QString>
#include <QStringList>

#include "engine/base/civil_date.hpp"

namespace fleetrung::app
{

struct Options {
    QString store;       ///< file of the logbook's rows; captures stand beside it
    QString screenshots; ///< folder; empty: none are made
    QString language;    ///< "de": whatever was chosen; empty: as chosen
    QSize pictureSize{390, 844};
    QString replay; ///< recording CSV that is played as the bar sensor
    double replaySpeed = 1;
    std::optional<CivilDate> today;
    bool selfTest = false;
    bool noRadio = false; ///< Bluetooth is left alone
};

/// Prints what is wrong and ends the program with 2 where the arguments make no sense.
[[nodiscard]] Options readOptions(const QStringList& arguments);

} // namespace fleetrung::app
