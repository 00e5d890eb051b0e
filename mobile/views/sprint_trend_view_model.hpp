// Times of one sprint test over the weeks: which runs count, the bests among them, and the run behind a touched point.
#pragma once

#include <set>

#include <QList>
#include <QObject>
#include <QPointF>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/plot/plot_value.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/trend_points.hpp"

namespace fleetrung::views
{

constexpr double mostWindMps =
    2; ///< that a time may have behind it to count as a record: World Athletics, TR 17 and 31

class SprintTrendViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(bool hasSprints READ hasSprints NOTIFY changed FINAL)
    Q_PROPERTY(QStringList tests READ tests NOTIFY changed FINAL)
    Q_PROPERTY(int current READ current NOTIFY changed FINAL)
    Q_PROPERTY(QStringList filters READ filters NOTIFY changed FINAL)
    Q_PROPERTY(QList<int> chosenFilters READ chosenFilters NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::plot::PlotValue plot READ plot NOTIFY changed FINAL)
    Q_PROPERTY(QString words READ words NOTIFY changed FINAL)
    Q_PROPERTY(QString leftOut READ leftOut NOTIFY changed FINAL)
    Q_PROPERTY(QString hidden READ hidden NOTIFY changed FINAL)
    Q_PROPERTY(QString chosenText READ chosenText NOTIFY changed FINAL)

public:
    explicit SprintTrendViewModel(const Preferences* preferences, QObject* parent = nullptr);

    /// Runs before `from` are hidden. The test looked at stays where it is still there.
    void show(const std::vector<TestTrend>& tests, const plot::SeasonSpan& span, std::optional<CivilDate> from);

    Q_INVOKABLE void choose(int index);
    /// The run at a place of the picture; none where there is none.
    Q_INVOKABLE void touch(const QPointF& place);
    /// The next run (1) or the one before (-1); the newest where none was chosen.
    Q_INVOKABLE void step(int by);
    Q_INVOKABLE void letGo();
    Q_INVOKABLE void toggleFilter(int index);
    void showAllRuns();

    bool hasSprints() const { return !tests_.empty(); }
    QStringList tests() const;
    int current() const { return static_cast<int>(current_); }
    QStringList filters() const; ///< those that could leave out a run of this test
    QList<int> chosenFilters() const;
    plot::PlotValue plot() const;
    QString words() const;   ///< best and latest of what is shown
    QString leftOut() const; ///< how many runs the filters leave out
    QString hidden() const;  ///< where they hide every run
    QString chosenText() const;

signals:
    void changed();

private:
    enum class Filter { WithoutHand, CalmOnly };

    void pick();
    [[nodiscard]] plot::SprintTrendInput input() const;
    [[nodiscard]] bool isShown(const RunPoint& run) const;
    [[nodiscard]] std::vector<Filter> usefulFilters() const;

    const Preferences* preferences_;
    std::vector<TestTrend> tests_;
    plot::SeasonSpan span_;
    std::optional<CivilDate> from_;
    std::size_t current_ = 0;
    std::set<Filter> filters_;   ///< that are on
    std::vector<RunPoint> runs_; ///< what the filters leave
    std::optional<std::size_t> chosen_;
};

} // namespace fleetrung::views
