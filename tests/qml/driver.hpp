// What the QML tests need of C++: view models filled with an invented athlete, and the whole program over a store in a
// temporary folder.
#pragma once

#include <memory>

#include <QObject>
#include <QTemporaryDir>

#include "mobile/views/app_view_model.hpp"
#include "mobile/views/translations.hpp"

namespace fleetrung::tests
{

class Driver : public QObject
{
    Q_OBJECT

public:
    Driver();
    ~Driver() override;

    Q_INVOKABLE fleetrung::views::Preferences* preferences();
    /// Pages of this engine change their language.
    void speakThrough(QQmlEngine* engine) { translations_.speakThrough(engine); }
    /// Brackets around every translated string, which is two fifths longer than English; or English again.
    Q_INVOKABLE bool speakPseudo(bool on);
    /// As languages do that are written from right to left.
    Q_INVOKABLE void mirror(bool on);
    /// Half squat on the third of six rungs, 140 kg, 2 x 5, band 240-300 ms, stop at 15 %.
    Q_INVOKABLE fleetrung::views::BenchViewModel* bench();
    Q_INVOKABLE void repetition(fleetrung::views::BenchViewModel* bench, double milliseconds, double velocity);
    Q_INVOKABLE void sensor(fleetrung::views::BenchViewModel* bench, int state);
    /// The same, after two slow warm-up loads.
    Q_INVOKABLE fleetrung::views::BenchViewModel* benchAfterSlowWarmUp();
    /// Two share the sensor, keys "a" (lifts now) and "b".
    Q_INVOKABLE void share(fleetrung::views::BenchViewModel* bench);
    /// A half squat set of 140 kg with two repetitions, the second short of its range, and three more sets.
    Q_INVOKABLE fleetrung::views::DoneSetsViewModel* doneSets();
    Q_INVOKABLE fleetrung::views::BenchViewModel* emptyBench();
    Q_INVOKABLE fleetrung::views::LadderViewModel* ladder();
    Q_INVOKABLE fleetrung::views::LadderViewModel* emptyLadder();
    /// A real plan: main competition 2026-06-06, an evening meet on 2026-05-17.
    Q_INVOKABLE fleetrung::views::SeasonViewModel* season();
    Q_INVOKABLE fleetrung::views::SeasonLiftsViewModel* seasonLifts(); ///< of the same season
    /// Due athletes "0", "1", ... on half squat, the even ones in group A, the others in B; two racks.
    Q_INVOKABLE fleetrung::views::SquadDayViewModel* squadDay(int athletes);
    Q_INVOKABLE fleetrung::views::TrackViewModel* track(int runs);
    /// Sprints behind a sled in each of the last weeks, the latest week far above those before it; nothing for 0.
    Q_INVOKABLE fleetrung::views::TrackWorkViewModel* trackWork(int weeks);
    Q_INVOKABLE fleetrung::views::TrendsViewModel* trends();
    Q_INVOKABLE fleetrung::views::TrendsViewModel* emptyTrends();
    /// Whether it worked: the sprint two weeks later goes beyond chance, or three tests are missing.
    Q_INVOKABLE void judge(fleetrung::views::TrendsViewModel* trends, bool enough);
    Q_INVOKABLE fleetrung::views::SquadViewModel* squad(int athletes);

    /// So many saved sensors: "Bar sensor" streams, "Left shoe" is looked for.
    Q_INVOKABLE fleetrung::views::SensorsViewModel* sensors(int count);
    /// The bar's sensor is lost, with a trouble that is told.
    Q_INVOKABLE void loseSensor(fleetrung::views::SensorsViewModel* sensors);
    Q_INVOKABLE fleetrung::views::FindSensorsViewModel* findSensors();
    /// Devices "0", "1", ... are heard, each weaker than the one before.
    Q_INVOKABLE void hear(fleetrung::views::FindSensorsViewModel* find, int count);
    /// A map fits what the chosen one sends, or none does.
    Q_INVOKABLE void fit(fleetrung::views::FindSensorsViewModel* find, bool fits);
    /// Connected, before the first step; its clock stands still but for `pass`.
    Q_INVOKABLE fleetrung::views::TeachViewModel* teach();
    /// Something comes from the sensor, then so many seconds pass.
    Q_INVOKABLE void pass(fleetrung::views::TeachViewModel* teach, double seconds);
    /// What the next learning answers: a map, or that the step is to be repeated.
    Q_INVOKABLE void answer(bool learned, int repeat);
    Q_INVOKABLE fleetrung::views::CalibrationViewModel* calibration();
    /// The sensor is moved and then laid down with that direction up.
    Q_INVOKABLE void lay(fleetrung::views::CalibrationViewModel* calibration, double x, double y, double z);

    /// The program over a new, empty store.
    Q_INVOKABLE fleetrung::views::AppViewModel* app();
    /// Adds an athlete with a season around 2026-03-30 (a Monday with lifts) to that store.
    Q_INVOKABLE void plantSeason();
    /// A second athlete with the same season.
    Q_INVOKABLE void plantSecondAthlete();
    /// The text of the calendar file that was handed out.
    Q_INVOKABLE QString handedCalendar();
    /// How many files of that ending were handed out and are not empty.
    Q_INVOKABLE int handedFiles(const QString& ending);
    Q_INVOKABLE QString keyOf(const QString& athlete);
    /// Names of the athletes who have a session in the store.
    Q_INVOKABLE QString ownersOfSets();
    /// A sensor is found, read by a map that comes with the program, and saved as "Bar sensor".
    Q_INVOKABLE void saveSensor();
    /// A half squat set of that many repetitions was under way when the program was killed.
    Q_INVOKABLE void cutOff(int repetitions);
    /// The program again over the same store.
    Q_INVOKABLE fleetrung::views::AppViewModel* restart();
    /// Waits until the logbook has answered.
    Q_INVOKABLE QStringList offered() { return offered_; } ///< to the share sheet
    Q_INVOKABLE void settle();
    /// A bar sensor that lies still for two seconds: no repetition may be found in what it sends.
    Q_INVOKABLE void offerStillSensor();
    /// A bar sensor on a simulated set of the lift that is open; played at once.
    Q_INVOKABLE void offerSimulatedSet(int repetitions);
    /// Repetitions of the athlete's latest stored set that are not struck out; -1 where there is none.
    Q_INVOKABLE int storedRepetitions();
    /// Whether the demo's logbook stands on the disk.
    Q_INVOKABLE bool demoKept();
    /// Of the program made by `restart`: a demo takes until it is cancelled.
    Q_INVOKABLE void slowDemo() { slowDemo_ = true; }
    /// A file where the program looks for those of other programs.
    Q_INVOKABLE void putFile(const QString& name, const QString& text);
    /// Runs of all athletes in the store.
    Q_INVOKABLE int storedRuns();

private:
    void plant(const char* name);
    void makeApp();
    [[nodiscard]] store::StorePaths ownPaths() const;

    views::Preferences preferences_;
    views::Translations translations_{&preferences_};
    std::int64_t now_ = 0; ///< ns, of teaching
    sensor::Taught answer_;
    double time_ = 0; ///< s, of samples
    QTemporaryDir folder_;
    bool slowDemo_ = false;
    QStringList offered_;
    QString store_; ///< name of the one in use
    std::unique_ptr<views::LogThread> log_;
    std::unique_ptr<views::AppViewModel> app_;
};

} // namespace fleetrung::tests
