// A Plot that can travel through Qt properties and signals.
#pragma once

#include <QMetaType>
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "mobile/plot/spoken_summary.hpp"

namespace fleetrung::plot
{

struct PlotValue {
    Q_GADGET
    QML_VALUE_TYPE(plotValue)
    Q_PROPERTY(QString summary READ summary)
    Q_PROPERTY(bool empty READ isEmpty)

public:
    Plot plot;
    SpokenPhrases phrases = {}; ///< of the language that the plot's words are in

    [[nodiscard]] QString summary() const; ///< for screen readers
    [[nodiscard]] bool isEmpty() const { return plot.primitives.empty(); }
};

} // namespace fleetrung::plot

Q_DECLARE_METATYPE(fleetrung::plot::PlotValue)
