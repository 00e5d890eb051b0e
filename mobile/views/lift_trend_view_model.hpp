// Time to peak velocity of one ladder over the weeks: which side, which weeks, and the session behind a touched point.
#pragma once

#include <QObject>
#include <QPointF>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/plot/plot_value.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/trend_points.hpp"

namespace fleetrung::views
{

class LiftTrendViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(bool hasLifts READ hasLifts NOTIFY changed FINAL)
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)
    Q_PROPERTY(int current READ current NOTIFY changed FINAL)
    Q_PROPERTY(QStringList sides READ sides NOTIFY changed FINAL)
    Q_PROPERTY(int side READ side NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::plot::PlotValue plot READ plot NOTIFY changed FINAL)
    Q_PROPERTY(QString words READ words NOTIFY changed FINAL)
    Q_PROPERTY(QString hidden READ hidden NOTIFY changed FINAL)
    Q_PROPERTY(QString chosenText READ chosenText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList chosenDetails READ chosenDetails NOTIFY changed FINAL)

public:
    explicit LiftTrendViewModel(const Preferences* preferences, QObject* parent = nullptr);

    /// Points before `from` are hidden. The ladder and side looked at stay where they are still there.
    void show(const std::vector<LadderTrend>& ladders, const plot::SeasonSpan& span, std::optional<CivilDate> from);

    Q_INVOKABLE void choose(int index);
    Q_INVOKABLE void chooseSide(int index);
    /// The point at a place of the picture; none where there is none.
    Q_INVOKABLE void touch(const QPointF& place);
    /// The next point (1) or the one before (-1); the newest where none was chosen.
    Q_INVOKABLE void step(int by);
    Q_INVOKABLE void letGo();
    void showAllSides();

    bool hasLifts() const { return !ladders_.empty(); }
    QStringList names() const;
    std::string ladder() const { return hasLifts() ? ladders_[current_].name : std::string(); }
    int current() const { return static_cast<int>(current_); }
    QStringList sides() const; ///< empty where the lift has none
    int side() const { return static_cast<int>(side_); }
    QString title() const;
    plot::PlotValue plot() const;
    QString words() const;
    QString hidden() const; ///< where the filters hide every point: what they leave out
    QString chosenText() const;
    QStringList chosenDetails() const;

signals:
    void changed();
    void ladderChanged();

private:
    void pick();
    [[nodiscard]] plot::TpvTrendInput input() const;
    [[nodiscard]] const LiftPoint* chosen() const;
    [[nodiscard]] bool hasSides() const;

    const Preferences* preferences_;
    std::vector<LadderTrend> ladders_;
    plot::SeasonSpan span_;
    std::optional<CivilDate> from_;
    std::size_t current_ = 0;
    plot::Side side_ = plot::Side::Both;
    std::vector<LiftPoint> points_; ///< what the filters leave
    std::optional<std::size_t> chosen_;
};

} // namespace fleetrung::views
