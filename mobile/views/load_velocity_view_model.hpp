// The athlete's line of velocity against load on the rung of today: the 1RM it points to, or what is missing.
#pragma once

#include <QObject>
#include <QPointF>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "engine/report/load_velocity.hpp"
#include "mobile/plot/load_velocity_picture.hpp"
#include "mobile/plot/plot_value.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/trend_points.hpp"

namespace fleetrung::views
{

class LoadVelocityViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(bool hasLift READ hasLift NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QStringList sides READ sides NOTIFY changed FINAL)
    Q_PROPERTY(int side READ side NOTIFY changed FINAL)
    Q_PROPERTY(bool hasPoints READ hasPoints NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::plot::PlotValue plot READ plot NOTIFY changed FINAL)
    Q_PROPERTY(QString maximum READ maximum NOTIFY changed FINAL)
    Q_PROPERTY(QString words READ words NOTIFY changed FINAL)
    Q_PROPERTY(QString missing READ missing NOTIFY changed FINAL)
    Q_PROPERTY(QString chosenText READ chosenText NOTIFY changed FINAL)

public:
    explicit LoadVelocityViewModel(const Preferences* preferences, QObject* parent = nullptr);

    /// The lines of one ladder, one a side; none: nothing is shown. `rung` as it is named to the athlete.
    void show(const LadderLoads& loads);

    Q_INVOKABLE void chooseSide(int index);
    Q_INVOKABLE void touch(const QPointF& place);
    Q_INVOKABLE void step(int by);
    Q_INVOKABLE void letGo();

    bool hasLift() const { return !loads_.sides.empty(); }
    QString title() const;
    QStringList sides() const; ///< empty where there is one only
    int side() const { return static_cast<int>(current_); }
    bool hasPoints() const { return hasLift() && !here().points.empty(); }
    plot::PlotValue plot() const;
    QString maximum() const; ///< "e1RM 142 kg", with its interval; empty where there is none
    QString words() const;   ///< from how many sessions and points, and what it rests on
    QString missing() const; ///< what to lift for a line
    QString chosenText() const;

signals:
    void changed();

private:
    [[nodiscard]] const report::LoadVelocity& here() const { return loads_.sides[current_]; }
    [[nodiscard]] plot::LoadUnit unit() const;
    [[nodiscard]] plot::Plot picture(std::optional<std::size_t> chosen) const;

    const Preferences* preferences_;
    LadderLoads loads_;
    std::size_t current_ = 0;
    std::optional<std::size_t> chosen_;
};

} // namespace fleetrung::views
