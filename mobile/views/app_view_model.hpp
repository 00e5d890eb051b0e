// The program behind the five places: which athlete is shown, what is written to the logbook when a page asks, and what
// has just happened, with the way back.
#pragma once

#include <functional>
#include <memory>
#include <optional>

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/views/bench_view_model.hpp"
#include "mobile/views/day_clock.hpp"
#include "mobile/views/demo_maker.hpp"
#include "mobile/views/file_hand.hpp"
#include "mobile/views/import_view_model.hpp"
#include "mobile/views/keyboard.hpp"
#include "mobile/views/ladder_view_model.hpp"
#include "mobile/views/live_session.hpp"
#include "mobile/views/log_thread.hpp"
#include "mobile/views/page_data.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/season_lifts_view_model.hpp"
#include "mobile/views/season_view_model.hpp"
#include "mobile/views/sensor_desk.hpp"
#include "mobile/views/squad_day_view_model.hpp"
#include "mobile/views/squad_view_model.hpp"
#include "mobile/views/track_view_model.hpp"
#include "mobile/views/track_work_view_model.hpp"
#include "mobile/views/trends_view_model.hpp"

namespace fleetrung::views
{

/// A sensor that can be started: what the program found, or was told to play.
struct SensorOffer {
    QString name;
    LiveSession::MakeSource make;
    QString address = {}; ///< of a radio's sensor; empty: it has none
};

class AppViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(fleetrung::views::Preferences* preferences READ preferences CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Keyboard* keyboard READ keyboard CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::BenchViewModel* bench READ bench CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::DoneSetsViewModel* doneSets READ doneSets CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::LadderViewModel* ladder READ ladder CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::SeasonViewModel* season READ season CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::SeasonLiftsViewModel* seasonLifts READ seasonLifts CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::TrackViewModel* track READ track CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::TrackWorkViewModel* trackWork READ trackWork CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::TrendsViewModel* trends READ trends CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::SquadViewModel* squad READ squad CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::SquadDayViewModel* squadDay READ squadDay CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::SensorsViewModel* sensors READ sensors CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::FindSensorsViewModel* findSensors READ findSensors CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::TeachViewModel* teach READ teach CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::CalibrationViewModel* calibration READ calibration CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::ImportViewModel* imports READ imports CONSTANT FINAL)
    Q_PROPERTY(QString notice READ notice NOTIFY noticeChanged FINAL)
    Q_PROPERTY(bool noticeIsProblem READ noticeIsProblem NOTIFY noticeChanged FINAL)
    Q_PROPERTY(bool noticeCanUndo READ noticeCanUndo NOTIFY noticeChanged FINAL)
    /// The demo squad can be looked at; it is being made; it is what the pages show.
    Q_PROPERTY(bool demoOffered READ demoOffered NOTIFY demoChanged FINAL)
    Q_PROPERTY(bool demoMaking READ demoMaking NOTIFY demoChanged FINAL)
    Q_PROPERTY(bool demoShown READ demoShown NOTIFY demoChanged FINAL)
    Q_PROPERTY(QString demoText READ demoText NOTIFY demoChanged FINAL)

public:
    AppViewModel(Preferences* preferences, LogThread* log, DayClock clock, QObject* parent = nullptr);

    void offerSensor(SensorOffer offer);
    /// The radio outlives the program's view model. Without one everything else works.
    void setRadio(ble::Radio* radio) { desk_.setRadio(radio); }
    /// 1: stored recordings are watched in real time; 0: at once.
    void setReplaySpeed(double speed) { replaySpeed_ = speed; }
    void handFilesTo(FileHand hand) { files_ = std::move(hand); }
    /// `own`: the logbook that is shown again when the demo is left.
    void offerDemo(DemoHand hand, store::StorePaths own);
    /// Reads everything the pages show anew.
    void refresh();

    /// The season as a calendar file for other programs; handed out again, its entries are updated, not doubled.
    Q_INVOKABLE void handOutCalendar();
    /// The season so far as a document, and as tables.
    Q_INVOKABLE void handOutReport();
    Q_INVOKABLE void handOutTables();
    Q_INVOKABLE void openDemo();
    Q_INVOKABLE void cancelDemo();
    Q_INVOKABLE void leaveDemo(); ///< and removes it
    Q_INVOKABLE void undo();
    Q_INVOKABLE void closeNotice();

    Preferences* preferences() { return preferences_; }
    Keyboard* keyboard() { return &keyboard_; }
    BenchViewModel* bench() { return &bench_; }
    DoneSetsViewModel* doneSets() { return &doneSets_; }
    LadderViewModel* ladder() { return &ladder_; }
    SeasonViewModel* season() { return &season_; }
    SeasonLiftsViewModel* seasonLifts() { return &seasonLifts_; }
    TrackViewModel* track() { return &track_; }
    TrackWorkViewModel* trackWork() { return &trackWork_; }
    TrendsViewModel* trends() { return &trends_; }
    SquadViewModel* squad() { return &squad_; }
    SquadDayViewModel* squadDay() { return &squadDay_; }
    SensorsViewModel* sensors() { return &desk_.sensors(); }
    FindSensorsViewModel* findSensors() { return &desk_.find(); }
    TeachViewModel* teach() { return &desk_.teach(); }
    CalibrationViewModel* calibration() { return &desk_.calibration(); }
    ImportViewModel* imports() { return &import_; }
    QString notice() const { return notice_; }
    bool noticeIsProblem() const { return problem_; }
    bool noticeCanUndo() const { return static_cast<bool>(undo_); }
    bool demoOffered() const { return demo_.make && !demoShown_; }
    bool demoMaking() const { return demoMaker_.running(); }
    bool demoShown() const { return demoShown_; }
    QString demoText() const;

signals:
    void noticeChanged();
    void demoChanged();
    /// The pages show what the logbook holds.
    void refreshed();

private:
    using Undo = std::function<Expected<void>(logbook::Logbook&)>;

    void connectSquad();
    void connectTrack();
    void writeJumps(std::vector<store::Jump> jumps);
    void connectTrackWork();
    void readTrackWork();
    void connectLadder();
    void connectSeason();
    void connectTrends();
    void connectSquadDay();
    void connectDay();
    void connectOtherLifts();
    void connectBench();
    void connectDoneSets();
    void connectSensors();
    void connectImport();
    void connectDemo();
    void showLogbook(const store::StorePaths& paths);
    void finishImport(const ImportSeen& seen);

    void say(const QString& text, Undo undo = {});
    void sayProblem(const Error& error);
    /// Writes with `work`, then shows the pages anew, and `text`, with the undo of the row written.
    void write(std::function<Expected<Identifier>(logbook::Logbook&)> work, const QString& text,
               std::function<Undo(const Identifier&)> undo = {});

    void offer(const QStringList& places); ///< of files handed out, to the share sheet
    [[nodiscard]] QString seasonWords() const;
    void showPages(const Expected<AthletePages>& pages);
    [[nodiscard]] std::optional<Identifier> athlete() const { return parseIdentifier(current_); }

    /// Another athlete is shown; refused while a set is under way, which stays with who began it.
    void switchAthlete(const QString& key, bool keepsLift);
    void showSharers();

    void beginSet();
    /// The bar is listened to while a lift is open, its load known and nothing else under way.
    void listenToBar();
    void takeRepetition(const reps::Repetition& repetition);
    void barHasRested();
    void chooseSource();
    [[nodiscard]] const reps::Lift* openedMotion() const;
    void finishSet(const motion::Recording& recording, const std::vector<motion::Recording>& beside = {});
    void keepTypedSet(const TypedSet& typed);
    void showIdleSensor();
    void showBarSensor();
    // What a crash must not take: what the set under way is, and what was left of one.
    void keepFacts();
    void dropRecording(const Identifier& set);
    void lookForCutOff();
    void answerCutOff(bool kept);
    [[nodiscard]] logbook::RecordingSource sourceOfSet() const { return {sourceAddress_.toStdString(), "bar"}; }
    [[nodiscard]] std::vector<logbook::BesideRecording>
    besideCaptures(const std::vector<motion::Recording>& beside) const;
    void refreshSensors();
    /// As `write`, for what no page but those of sensors shows.
    void writeSensor(std::function<Expected<Identifier>(logbook::Logbook&)> work, const QString& said, Undo undo = {});
    void handOutMap(const QString& key);
    void takeInMap(const QString& file);
    [[nodiscard]] bool setRuns() const { return bench_.running() || setUnderWay_ || saving_; }
    [[nodiscard]] store::LiftSet openedSet(store::SetKind kind, double loadKg) const;

    Preferences* preferences_;
    LogThread* log_;
    DayClock clock_;
    Keyboard keyboard_;
    BenchViewModel bench_;
    DoneSetsViewModel doneSets_;
    LadderViewModel ladder_;
    SeasonViewModel season_;
    SeasonLiftsViewModel seasonLifts_;
    TrackViewModel track_;
    TrackWorkViewModel trackWork_;
    TrendsViewModel trends_;
    SquadViewModel squad_;
    SquadDayViewModel squadDay_;
    SensorDesk desk_;
    ImportViewModel import_;
    LiveSession live_;
    FileHand files_;
    DemoHand demo_;
    DemoMaker demoMaker_;
    int demoPercent_ = 0;
    bool demoShown_ = false;
    store::StorePaths ownPaths_;
    DayClock ownClock_; ///< while the demo is shown
    std::optional<SensorOffer> sensor_;
    QString sourceName_;                       ///< of the source that runs
    QString sourceAddress_;                    ///< likewise; its name where it has none
    std::vector<StreamingSensor> beside_;      ///< recorded with the set that runs
    std::optional<Identifier> setUnderWay_;    ///< of a recording that is being kept
    std::optional<Identifier> setOwner_;       ///< who began it
    std::optional<motion::Recording> unsaved_; ///< ended, and not yet in the logbook
    std::vector<motion::Recording> unsavedBeside_;
    bool saving_ = false;
    QString listensTo_; ///< address and lift; empty: nothing is listened to
    double replaySpeed_ = 1;
    bool replaying_ = false; ///< a stored set is watched again: nothing is written
    std::string current_;    ///< identifier of the athlete shown
    QString notice_;
    bool problem_ = false;
    Undo undo_;
    std::optional<Identifier> shownSeason_; ///< of the athlete shown
    std::optional<Identifier> cutOff_;      ///< recording that Bench asks about
};

} // namespace fleetrung::views
