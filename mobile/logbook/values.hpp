// What the logbook hands out: the store's records put together with what the engine makes of them. Plain values, SI
// units.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/motion/sample.hpp"
#include "engine/reps/analyse.hpp"
#include "engine/season/decision.hpp"
#include "engine/season/replay.hpp"
#include "engine/season/squad_day.hpp"
#include "engine/season/warm_up_check.hpp"
#include "engine/store/records.hpp"

namespace fleetrung::logbook
{

using store::Moment;

struct AthleteSummary {
    store::Athlete athlete;
    std::optional<store::Season> season; ///< the one that holds the day asked for, else the latest
    int sessions = 0;                    ///< ever
    std::optional<CivilDate> lastDay;    ///< of a session
    std::optional<int> age;              ///< whole years on the day asked for
};

/// A season as stored, with its setup read.
struct SeasonRecord {
    store::Season row;
    season::SeasonSetup setup;
};

/// One repetition with the user's edits applied.
struct RepetitionView {
    store::Repetition row; ///< as analysed, or as typed
    store::Side side{};    ///< after relabelling
    bool deleted = false;  ///< struck out by the user
    bool evidence = true;  ///< false: the user said that it must not count as evidence
};

/// One set with the repetitions of its accepted analysis.
struct SetView {
    store::LiftSet row;
    bool measured = false; ///< a capture is stored: it can be replayed
    double samplingRateHz = 0;
    std::vector<RepetitionView> repetitions; ///< those struck out among them, marked
    int done = 0;                            ///< repetitions that count; as typed where none was measured
    std::optional<double> velocityLoss;      ///< share (0..1) from the fastest
    std::optional<double> meanTimeToPeak;    ///< s
};

struct SessionView {
    store::Session row;
    std::vector<SetView> sets;
};

/// What became of a recording: stored already, and the engine's own result for drawing.
struct RecordedSet {
    Identifier set;
    bool added = true; ///< false: this set was stored before (import of the same file), nothing was changed
    reps::SetAnalysis analysis;
};

/// Where a recording came from.
struct RecordingSource {
    std::string sensor = "file"; ///< address of the sensor, "file", "simulator"
    std::string placement = "bar";
};

/// What a second sensor recorded of a set ("shoe").
struct BesideRecording {
    RecordingSource source;
    motion::Recording recording;
};

/// One recording of a set; the first is the one that was analysed.
struct KeptCapture {
    Identifier capture;
    RecordingSource source;
    std::int64_t samples = 0;
};

/// What is needed to finish a set whose recording was cut off; `set.id` names the recording. A session left zero is the
/// athlete's of that day.
struct SetUnderWay {
    Identifier athlete;
    store::LiftSet set;
    RecordingSource source = {};
    motion::SensorTraits sensor = {};
    bool hasGyroscope = true;
    Moment begun = {};
};

/// A set that the program did not live to finish.
struct UnfinishedSet {
    Identifier recording;
    std::optional<SetUnderWay> facts; ///< none: the recording was begun without them and can only be dropped
};

/// What a set without a sensor may say of its repetitions; one value stands for all of them.
struct TypedRepetitions {
    int count = 0;
    std::optional<double> meanVelocity = {}; ///< m/s
    std::optional<double> peakVelocity = {}; ///< m/s
    std::optional<double> timeToPeak = {};   ///< s
    std::optional<double> range = {};        ///< m
};

struct DecisionRecord {
    season::Decision decision;
    Moment made;
    store::Answer answer = store::Answer::None;
    std::string changedTo;
    std::string why;
};

/// Left against right on a one-sided ladder, as the day's decision tells it.
struct SideDifference {
    std::string ladder;
    season::EvidenceLine line;
};

/// A day's adjustment, and what the athlete did with it.
struct WarmUpAnswer {
    season::DayAdjustment adjustment;
    bool accepted = true;
    std::string why; ///< of a "no"
};

/// Everything Bench and Ladder need of one day.
struct DayView {
    Identifier season;
    season::SeasonPlan plan;                        ///< re-planned from where the athlete stands
    std::vector<season::LadderState> states;        ///< with the day's decisions followed
    std::vector<season::Decision> decisions;        ///< of the day; empty where none were taken yet
    season::SessionPlan session;                    ///< with the adjustments made
    season::TrainingLog log;                        ///< before the day
    std::vector<season::DayAdjustment> adjustments; ///< kept of the day's warm-up checks, and made
    std::vector<WarmUpAnswer> warmUpAnswers;        ///< all that were answered, those declined too
    std::vector<SideDifference> sides;
};

/// A stored decision that comes out differently from what was kept with it, or can no longer be read.
struct DecisionDifference {
    Identifier decision;
    CivilDate day{};
    season::Difference difference; ///< field "kept input" or "kept rules" where those were damaged or are missing
};

/// A stored decision that cannot be taken again, and why.
struct UncheckedDecision {
    Identifier decision;
    CivilDate day{};
    std::string ladder;
    std::string reason;
};

struct DecisionCheck {
    int checked = 0; ///< taken again, those that differ among them
    std::vector<DecisionDifference> differences;
    std::vector<UncheckedDecision> unchecked;
};

/// Decisions taken again from one kept input.
struct ReplayedDay {
    CivilDate day{};
    std::string input; ///< JSON text as kept
    Identifier plan;
    std::vector<season::Decision> decisions;
};

/// One week on one rung: never joined across rungs.
struct WeekPoint {
    int week = 1; ///< 1-based from the season's first day
    std::string rung;
    season::Side side{};
    int sessions = 0;
    double timeToPeak = 0;          ///< s, median of the sessions' values
    double uncertainty = 0;         ///< s, standard
    std::optional<double> velocity; ///< m/s, median of the rung's evidence metric
    double loadKg = 0;              ///< median
};

} // namespace fleetrung::logbook
