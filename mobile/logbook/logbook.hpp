// The athlete's logbook: what the program does with its data, without Qt. Joins the store (rows) and the engine
// (meaning); the interface, the desk program and the demo call this and nothing below it.
//
// Nothing here reads a clock or draws random numbers: every call that needs "now" takes a Moment, new ids come from the
// function given at opening. What a call reported as done is on the disk. One object belongs to one thread; other
// threads open their own with `openReadOnly`. An id left zero in a row handed in means "make a new one"; a row whose id
// is stored already is not added again.
#pragma once

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/report/season_report.hpp"
#include "engine/store/store.hpp"
#include "mobile/logbook/values.hpp"

namespace fleetrung::logbook
{

class Logbook
{
public:
    using NewIdentifier = std::function<Identifier()>;

    [[nodiscard]] static Expected<Logbook> open(const store::StorePaths& paths, const Identifier& device,
                                                NewIdentifier newIdentifier);
    [[nodiscard]] static Expected<Logbook> openReadOnly(const store::StorePaths& paths);

    /// Many calls as one: all or nothing, and one write to the disk.
    [[nodiscard]] Expected<void> inTransaction(const std::function<Expected<void>()>& work);
    /// What is wrong with the files, in words; empty where all is well.
    [[nodiscard]] Expected<std::vector<std::string>> verify() const;

    // Squad. Deleting marks; restoring takes the mark off, with everything below as it was.
    [[nodiscard]] Expected<std::vector<AthleteSummary>> squad(CivilDate today) const;
    [[nodiscard]] Expected<std::vector<store::Athlete>> deletedAthletes() const;
    [[nodiscard]] Expected<store::Athlete> athlete(const Identifier& id) const;
    [[nodiscard]] Expected<Identifier> addAthlete(store::Athlete athlete);
    [[nodiscard]] Expected<void> changeAthlete(const store::Athlete& athlete);
    [[nodiscard]] Expected<void> deleteAthlete(const Identifier& id);
    [[nodiscard]] Expected<void> restoreAthlete(const Identifier& id);

    // Seasons. The setup is checked as a form or file would be (season::checkSetup); the athlete's facts in it are
    // taken from the athlete's row.
    [[nodiscard]] Expected<Identifier> addSeason(const Identifier& athlete, const season::SeasonSetup& setup,
                                                 const Identifier& id = {});
    [[nodiscard]] Expected<void> changeSeason(const Identifier& season, const season::SeasonSetup& setup);
    [[nodiscard]] Expected<void> deleteSeason(const Identifier& season);
    [[nodiscard]] Expected<SeasonRecord> season(const Identifier& id) const;
    [[nodiscard]] Expected<std::vector<SeasonRecord>> seasons(const Identifier& athlete) const;
    /// NotFound where no season of the athlete holds that day.
    [[nodiscard]] Expected<SeasonRecord> seasonOn(const Identifier& athlete, CivilDate day) const;
    /// Re-planned from where the athlete stands on that day.
    [[nodiscard]] Expected<season::SeasonPlan> plan(const Identifier& season, CivilDate today) const;
    /// Where the athlete stands at the beginning of that day: the start, moved by every decision before it that was
    /// not answered with "changed" (then by what it was changed to, where that is a rung).
    [[nodiscard]] Expected<std::vector<season::LadderState>> states(const Identifier& season, CivilDate day) const;

    // Sessions and sets
    /// The athlete's session of that kind ("strength", "track", "test") on now.trainingDay; a new one where there is
    /// none.
    [[nodiscard]] Expected<Identifier> openSession(const Identifier& athlete, const std::string& kind,
                                                   const Moment& now);
    [[nodiscard]] Expected<void> changeSession(const store::Session& session);
    [[nodiscard]] Expected<void> deleteSession(const Identifier& id);
    [[nodiscard]] Expected<void> restoreSession(const Identifier& id);
    [[nodiscard]] Expected<std::vector<store::Session>>
    sessions(const Identifier& athlete, std::optional<CivilDate> from = {}, std::optional<CivilDate> to = {}) const;
    [[nodiscard]] Expected<SessionView> session(const Identifier& id) const;
    [[nodiscard]] Expected<std::vector<SetView>> sets(const Identifier& session) const;
    [[nodiscard]] Expected<SetView> set(const Identifier& id) const;

    /// Analyses the recording and stores set, capture, analysis and repetitions in one transaction. `set.ordinal` 0
    /// means next in its session. `beside` are other sensors' recordings of it, kept as they are: the set's
    /// numbers are the first one's. Fails where the lift key is unknown, where a recording beside is empty, and as
    /// reps::analyseSet does; nothing is stored then.
    [[nodiscard]] Expected<RecordedSet> recordSet(store::LiftSet set, const motion::Recording& recording,
                                                  const RecordingSource& source, const Moment& now,
                                                  std::span<const BesideRecording> beside = {});
    /// A set without a sensor.
    [[nodiscard]] Expected<Identifier> typeSet(store::LiftSet set, const TypedRepetitions& typed, const Moment& now);
    [[nodiscard]] Expected<void> changeSet(const store::LiftSet& set);
    [[nodiscard]] Expected<void> deleteSet(const Identifier& id);
    [[nodiscard]] Expected<void> restoreSet(const Identifier& id);
    /// The stored capture, sample for sample as it was recorded. NotFound for a typed set.
    [[nodiscard]] Expected<motion::Recording> recording(const Identifier& set) const;
    /// Analyses the stored capture again where the engine or its settings changed since; the new analysis becomes the
    /// accepted one. False where it is of this engine already.
    [[nodiscard]] Expected<bool> reanalyse(const Identifier& set);

    [[nodiscard]] Expected<std::vector<KeptCapture>> recordings(const Identifier& set) const;
    [[nodiscard]] Expected<motion::Recording> captureRecording(const Identifier& capture) const;

    // A recording under way, on the disk as it comes: say what it will be a recording of, then call keepPiece once a
    // second with what is new. `set` is the id that recordSet will be given; recordSet drops the pieces.
    [[nodiscard]] Expected<void> beginRecording(const SetUnderWay& set);
    [[nodiscard]] Expected<void> keepPiece(const Identifier& set, int ordinal, const motion::Recording& piece);
    /// Recordings that were never finished (the program was killed).
    [[nodiscard]] Expected<std::vector<UnfinishedSet>> unfinishedRecordings() const;
    [[nodiscard]] Expected<motion::Recording> unfinishedRecording(const Identifier& set) const;
    /// recordSet of what was kept, in the session of the day on which it was begun. NotAvailable where its facts were
    /// not kept; as recordSet where it is too short to be read: nothing is changed then.
    [[nodiscard]] Expected<RecordedSet> finishRecording(const Identifier& set);
    [[nodiscard]] Expected<void> dropRecording(const Identifier& set);

    // Sensors this device knows. The address makes the row: the same sensor kept again is changed, one that was
    // forgotten comes back. Map and calibration are checked (InvalidInput); an empty calibration is none.
    [[nodiscard]] Expected<std::vector<store::Sensor>> sensors() const;
    [[nodiscard]] Expected<Identifier> keepSensor(store::Sensor sensor);
    [[nodiscard]] Expected<void> changeSensor(const store::Sensor& sensor);
    [[nodiscard]] Expected<void> forgetSensor(const Identifier& id);
    [[nodiscard]] Expected<void> restoreSensor(const Identifier& id);
    /// Maps that were taught or imported; the key makes the row.
    [[nodiscard]] Expected<std::vector<store::SensorMap>> sensorMaps() const;
    [[nodiscard]] Expected<Identifier> keepSensorMap(const std::string& text);
    [[nodiscard]] Expected<void> forgetSensorMap(const Identifier& id);

    // What the user says of one repetition. Kept as events, applied to this and every later analysis of the set.
    [[nodiscard]] Expected<void> deleteRepetition(const Identifier& repetition, const Moment& now);
    [[nodiscard]] Expected<void> restoreRepetition(const Identifier& repetition, const Moment& now);
    /// One that the sensor missed, at that instant of the recording (for a typed set: one more). Gives its id;
    /// `values.count` is not looked at.
    [[nodiscard]] Expected<Identifier> addRepetition(const Identifier& set, double atTime,
                                                     const TypedRepetitions& values, const Moment& now);
    [[nodiscard]] Expected<void> relabelSide(const Identifier& repetition, store::Side side, const Moment& now);
    [[nodiscard]] Expected<void> relabelEvidence(const Identifier& repetition, bool evidence, const Moment& now);

    // Track, jumps, how the athlete is, days lost. add... gives the id; deleted rows are not listed.
    [[nodiscard]] Expected<Identifier> addSprint(store::Sprint sprint);
    [[nodiscard]] Expected<Identifier> addJump(store::Jump jump);
    [[nodiscard]] Expected<Identifier> addTrackWork(store::TrackWork work);
    [[nodiscard]] Expected<Identifier> addWellness(store::Wellness wellness);
    [[nodiscard]] Expected<Identifier> addLostDay(store::LostDay day);
    [[nodiscard]] Expected<void> changeSprint(const store::Sprint& sprint);
    [[nodiscard]] Expected<void> changeJump(const store::Jump& jump);
    [[nodiscard]] Expected<void> setSprintDeleted(const Identifier& id, bool deleted);
    [[nodiscard]] Expected<void> setJumpDeleted(const Identifier& id, bool deleted);
    [[nodiscard]] Expected<void> setTrackWorkDeleted(const Identifier& id, bool deleted);
    [[nodiscard]] Expected<std::vector<store::Sprint>>
    sprints(const Identifier& athlete, std::optional<CivilDate> from = {}, std::optional<CivilDate> to = {}) const;
    [[nodiscard]] Expected<std::vector<store::Jump>>
    jumps(const Identifier& athlete, std::optional<CivilDate> from = {}, std::optional<CivilDate> to = {}) const;
    [[nodiscard]] Expected<std::vector<store::TrackWork>>
    trackWork(const Identifier& athlete, std::optional<CivilDate> from = {}, std::optional<CivilDate> to = {}) const;
    [[nodiscard]] Expected<std::vector<store::Wellness>>
    wellness(const Identifier& athlete, std::optional<CivilDate> from = {}, std::optional<CivilDate> to = {}) const;
    [[nodiscard]] Expected<std::vector<store::LostDay>>
    lostDays(const Identifier& athlete, std::optional<CivilDate> from = {}, std::optional<CivilDate> to = {}) const;

    // Evidence and decisions
    /// Sessions before `before` in the season, by day; one ladder, or all where `ladder` is empty.
    [[nodiscard]] Expected<std::vector<season::SessionEvidence>> evidence(const Identifier& season, CivilDate before,
                                                                          const std::string& ladder = {}) const;
    /// Takes the decisions of now.trainingDay from what was done before it and how the athlete is today, and stores
    /// those that are new, evidence by value and with all that they were made from. Deciding again with the same
    /// outcome changes nothing, and leaves the answer that was given.
    [[nodiscard]] Expected<std::vector<season::Decision>> decide(const Identifier& season, const Moment& now,
                                                                 const std::vector<std::string>& stepByExposure = {});
    /// By day and ladder; of several on one ladder and day (pain was entered after the first) the last, which counts.
    /// The others stay in the store.
    [[nodiscard]] Expected<std::vector<DecisionRecord>>
    decisions(const Identifier& season, std::optional<CivilDate> from = {}, std::optional<CivilDate> to = {}) const;
    /// `changedTo` may be a rung key: the athlete then stands on that rung.
    [[nodiscard]] Expected<void> answerDecision(const Identifier& decision, store::Answer answer,
                                                const std::string& changedTo = {}, const std::string& why = {});
    /// Takes every stored decision of the season again, from the input and with the rules that were kept with it.
    /// `progress` is called with how many are done of how many; Cancelled where it gives false.
    [[nodiscard]] Expected<DecisionCheck> verifyDecisions(const Identifier& season,
                                                          const std::function<bool(int, int)>& progress = {}) const;
    /// The season played again, day by day, from the kept inputs. Fails where one is damaged.
    [[nodiscard]] Expected<std::vector<ReplayedDay>> replay(const Identifier& season) const;
    /// What the decisions of that day would be made from. Writes nothing.
    [[nodiscard]] Expected<season::DayInput> dayInput(const Identifier& season, CivilDate today) const;
    /// The day's adjustment of one lift, from the warm-up sets stored today. Writes nothing.
    [[nodiscard]] Expected<season::DayAdjustment> proposedAdjustment(const Identifier& season,
                                                                     const std::string& ladder, CivilDate today) const;
    /// The same with what the athlete did with it, kept where it takes something off: accepted, `day` shows the lighter
    /// session; declined, the session stays and `why` is kept.
    [[nodiscard]] Expected<season::DayAdjustment> answerWarmUpCheck(const Identifier& season, const std::string& ladder,
                                                                    bool accepted, const std::string& why,
                                                                    const Moment& now);
    /// Taken and accepted in one.
    [[nodiscard]] Expected<season::DayAdjustment> warmUpCheck(const Identifier& season, const std::string& ladder,
                                                              const Moment& now);
    /// Who of the squad lifts today, and what: by group and name. For each the session that `day` gives, from few rows;
    /// the maximum that limits short ranges is taken from the last session on the longest one.
    [[nodiscard]] Expected<std::vector<season::DueAthlete>> dueToday(CivilDate today) const;
    /// Plan, states, the day's stored decisions and what to lift. Writes nothing: call `decide` before the session.
    [[nodiscard]] Expected<DayView> day(const Identifier& season, CivilDate today) const;
    /// Time to peak velocity by week, rung and side, in order of weeks.
    [[nodiscard]] Expected<std::vector<WeekPoint>> weeks(const Identifier& season, const std::string& ladder,
                                                         CivilDate today) const;

    [[nodiscard]] Expected<report::SeasonReport> seasonReport(const Identifier& athlete, const Identifier& season,
                                                              CivilDate today) const;
    /// The plan from today on as an iCalendar file (report::seasonCalendar), given the bytes of the file handed out
    /// last (empty: none). Keep what it gives: it is the `previous` of the next call.
    [[nodiscard]] Expected<std::string> seasonCalendar(const Identifier& season, CivilDate today,
                                                       std::chrono::sys_seconds stamp, std::string_view previous,
                                                       std::optional<std::chrono::minutes> sessionStart = {}) const;

    /// For what no use case covers yet (import, export).
    [[nodiscard]] store::Store& rows() { return *store_; }
    [[nodiscard]] const store::Store& rows() const { return *store_; }

private:
    Logbook(store::Store store, NewIdentifier newIdentifier);

    /// Inserts with a new id where it has none; gives the id.
    template <class R> [[nodiscard]] Expected<Identifier> add(R row);
    /// recordSet without dropping the pieces.
    [[nodiscard]] Expected<RecordedSet> storeRecording(store::LiftSet set, const motion::Recording& recording,
                                                       const RecordingSource& source, const Moment& now,
                                                       std::span<const BesideRecording> beside = {});
    /// Next ordinal of its session, and the instant, where they were not given.
    [[nodiscard]] Expected<void> completeSet(store::LiftSet& set, const Moment& now) const;
    /// An event without kind, for the repetition's place in its set.
    [[nodiscard]] Expected<store::EditEvent> eventAt(const Identifier& repetition) const;
    [[nodiscard]] Expected<void> edit(const Identifier& repetition, store::EditKind kind, const std::string& value,
                                      const Moment& now);

    std::unique_ptr<store::Store> store_;
    NewIdentifier newIdentifier_;
};

/// A stored repetition as the engine's value; metrics that were not measured are zero with infinite uncertainty.
[[nodiscard]] reps::Repetition engineRepetition(const store::Repetition& row);

} // namespace fleetrung::logbook
