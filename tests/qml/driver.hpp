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
    Q_INVOKABLE fleetrung::views::BenchViewModel* emptyBench();
    Q_INVOKABLE fleetrung::views::LadderViewModel* ladder();
    Q_INVOKABLE fleetrung::views::LadderViewModel* emptyLadder();
    Q_INVOKABLE fleetrung::views::TrackViewModel* track(int runs);
    Q_INVOKABLE fleetrung::views::TrendsViewModel* trends();
    Q_INVOKABLE fleetrung::views::TrendsViewModel* emptyTrends();
    Q_INVOKABLE fleetrung::views::SquadViewModel* squad(int athletes);

    /// The program over a new, empty store.
    Q_INVOKABLE fleetrung::views::AppViewModel* app();
    /// Adds an athlete with a season around 2026-03-30 (a Monday with lifts) to that store.
    Q_INVOKABLE void plantSeason();
    /// Waits until the logbook has answered.
    Q_INVOKABLE void settle();
    /// A bar sensor that lies still for two seconds: no repetition may be found in what it sends.
    Q_INVOKABLE void offerStillSensor();
    /// A bar sensor on a simulated set of the lift that is open; played at once.
    Q_INVOKABLE void offerSimulatedSet(int repetitions);
    /// Repetitions of the athlete's latest stored set that are not struck out; -1 where there is none.
    Q_INVOKABLE int storedRepetitions();

private:
    views::Preferences preferences_;
    QTemporaryDir folder_;
    std::unique_ptr<views::LogThread> log_;
    std::unique_ptr<views::AppViewModel> app_;
};

} // namespace fleetrung::tests
