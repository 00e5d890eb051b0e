// A day chosen by touch: a day or a week forwards or back, or a tap on the month. The week begins as the locale has it.
#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "engine/base/civil_date.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class DayPicker : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Owned by a view model")
    Q_PROPERTY(QString dayText READ dayText NOTIFY changed FINAL)
    Q_PROPERTY(QString monthText READ monthText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList weekdays READ weekdays NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* cells READ cells CONSTANT FINAL) ///< six weeks, in order of days

public:
    explicit DayPicker(const Preferences* preferences, QObject* parent = nullptr);

    /// Without telling: nobody has moved it.
    void show(CivilDate day, CivilDate today);
    [[nodiscard]] CivilDate day() const { return day_; }

    Q_INVOKABLE void move(int days);
    Q_INVOKABLE void moveMonth(int months); ///< the month looked at; the day stays
    Q_INVOKABLE void choose(int cell);

    QString dayText() const;
    QString monthText() const;
    QStringList weekdays() const;
    Rows* cells() { return &cells_; }

signals:
    void changed();
    void moved(); ///< another day was chosen

private:
    Units units() const { return preferences_->units(); }
    [[nodiscard]] CivilDate firstCell() const;
    void showCells();
    void take(CivilDate day);

    const Preferences* preferences_;
    CivilDate day_{};
    CivilDate today_{};
    CivilDate month_{}; ///< its first day
    Rows cells_;
};

} // namespace fleetrung::views
