// What the QML tests need of C++: view models filled with an invented athlete, and the whole program over a store in a
// temporary folder.
#pragma once

#include <memory>

#include <QObject>
#include <QTemporaryDir>

#include "mobile/views/app_view_model.hpp"

namespace fleetrung::tests
{

class Driver : public QObject
{
    Q_OBJECT

public:
    Driver();
    ~Driver() override;

    Q_INVOKABLE fleetrung::views::Preferences* preferences();
    /// Half squat on the third of six rungs, 140 kg, 2 x 5, band 240-300 ms, stop at 15 %.
    Q_INVOKABLE fleetrung::views::BenchViewModel* bench();
    Q_INVOKABLE void repetition(fleetrung::views::BenchViewModel* bench, double milliseconds, double velocity);
    Q_INVOKABLE void sensor(fleetrung::views::BenchViewModel* bench, int state);
    /// The same, after two slow warm-up loads.
    Q_INVOKABLE fleetrung::views::BenchViewModel* benchAfterSlowWarmUp();
    /// Two share the sensor, keys "a" (lifts now) and "b".
    Q_INVOKABLE void share(fleetrung::views::BenchViewModel* bench);
    Q_INVOKABLE fleetrung::views::BenchViewModel* emptyBench();
    Q_INVOKABLE fleetrung::views::LadderViewModel* ladder();
    Q_INVOKABLE fleetrung::views::LadderViewModel* emptyLadder();
    /// A real plan: main competition 2026-06-06, an evening meet on 2026-05-17.
    Q_INVOKABLE fleetrung::views::SeasonViewModel* season();
    /// Due athletes "0", "1", ... on half squat, the even ones in group A, the others in B; two racks.
    Q_INVOKABLE fleetrung::views::SquadDayViewModel* squadDay(int athletes);
    Q_INVOKABLE fleetrung::views::TrackViewModel* track(int runs);
    Q_INVOKABLE fleetrung::views::TrendsViewModel* trends();
    Q_INVOKABLE fleetrung::views::TrendsViewModel* emptyTrends();
    Q_INVOKABLE fleetrung::views::SquadViewModel* squad(int athletes);

    /// The program over a new, empty store.
    Q_INVOKABLE fleetrung::views::AppViewModel* app();
    /// Adds an athlete with a season around 2026-03-30 (a Monday with lifts) to that store.
    Q_INVOKABLE void plantSeason();
    /// A second athlete with the same season.
    Q_INVOKABLE void plantSecondAthlete();
    /// The text of the calendar file that was handed out.
    Q_INVOKABLE QString handedCalendar();
    Q_INVOKABLE QString keyOf(const QString& athlete);
    /// Names of the athletes who have a session in the store.
    Q_INVOKABLE QString ownersOfSets();
    /// Waits until the logbook has answered.
    Q_INVOKABLE void settle();
    /// A bar sensor that lies still for two seconds: no repetition may be found in what it sends.
    Q_INVOKABLE void offerStillSensor();
    /// A bar sensor on a simulated set of the lift that is open; played at once.
    Q_INVOKABLE void offerSimulatedSet(int repetitions);
    /// Repetitions of the athlete's latest stored set that are not struck out; -1 where there is none.
    Q_INVOKABLE int storedRepetitions();

private:
    void plant(const char* name);

    views::Preferences preferences_;
    QTemporaryDir folder_;
    std::unique_ptr<views::LogThread> log_;
    std::unique_ptr<views::AppViewModel> app_;
};

} // namespace fleetrung::tests
