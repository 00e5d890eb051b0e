// The rows of the store as plain structs, one struct a table. SI units; kilograms are written out (`loadKg`).
// The store knows nothing of the engine's own types: mobile/logbook maps between the two.
//
// Every row can be merged with the same row of another device (design: "Merge"): it has a 128-bit id, the device it
// came from, the Lamport counter of its making, and a mark instead of a deletion. Which device changed which field last
// stands in a side table, `field_stamp`, and only for fields changed after the row was made: most rows are never
// changed and cost nothing, and a merge can still ask each field for its (counter, device).
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/base/identifier.hpp"

namespace fleetrung::store
{

/// What all rows share. `origin`, `counter` and `deleted` are set by the store; the id comes from the caller.
struct Row {
    Identifier id;
    Identifier origin;        ///< the device that made the row
    std::int64_t counter = 0; ///< Lamport counter of its making
    bool deleted = false;
};

/// An instant as the athlete knew it. The training day may differ from the civil day (a session past midnight).
struct Moment {
    std::int64_t utcSeconds = 0; ///< since 1970-01-01
    int offsetMinutes = 0;       ///< local time minus UTC
    std::string zone;            ///< IANA name, "Europe/Vienna"
    CivilDate trainingDay{};
};

enum class Side { Both, Left, Right };
enum class SetKind { WarmUp, Probe, Work, Maintenance };
enum class EditKind { Delete, Undelete, Relabel, Add };
enum class Answer { None, Followed, Changed };

struct Device : Row {
    std::string name;
};

struct Athlete : Row {
    std::string name;
    std::string event; ///< "200 m", "long jump"
    std::optional<CivilDate> born;
    std::optional<double> statureM;
    std::optional<double> bodyMassKg;
    std::optional<double> trainingYears; ///< of regular lifting
    bool guardianConsent = false;        ///< asked for under 18 only
    std::string note;
    std::string group; ///< training group, "sprint 2"; empty where there is none
};

struct Season : Row {
    Identifier athlete;
    std::string name;
    CivilDate start{};
    CivilDate finish{};
    std::string setup; ///< JSON text, written and read by engine/season
};

struct Session : Row {
    Identifier athlete;
    std::optional<Identifier> season;
    Moment begun;
    std::string kind;             ///< "strength", "track", "test"
    std::optional<double> effort; ///< 1..10, of the whole session
    std::string note;
};

struct LiftSet : Row {
    Identifier session;
    int ordinal = 0; ///< 1, 2, ... in the session
    Moment done;
    std::string lift;   ///< lift key, "half-squat"
    std::string ladder; ///< ladder key; empty for a lift outside the ladders
    std::string rung;   ///< rung key; empty likewise
    SetKind kind = SetKind::Work;
    Side side = Side::Both;
    double loadKg = 0;
    int repetitionsPlanned = 0;         ///< 0 where nothing was planned
    std::optional<int> repetitionsDone; ///< as typed; a set with a sensor counts its repetitions
    std::optional<double> boxHeightM;
    std::optional<double> effort; ///< 1..10
    std::string note;
};

/// One recording of one sensor in one place. The samples stand in the captures file under `contentHash`.
struct Capture : Row {
    Identifier set;
    std::string sensor;    ///< which sensor: address, or "file"
    std::string placement; ///< "bar", "waist", "shoe"
    std::string contentHash;
    std::int64_t samples = 0;
    bool hasGyroscope = true;
    std::string traits; ///< JSON text: what the data sheet says (noise, range)
    std::string
        clockFit; ///< JSON text: how counters and arrivals became times; empty where the times came with the data
};

/// One reading of a capture by one version of the engine; or what was typed, without a capture. Of the analyses of a
/// set the accepted one counts.
struct Analysis : Row {
    Identifier set;
    std::optional<Identifier> capture;
    std::string engineVersion; ///< "typed" where no sensor was used
    std::string settingsHash;
    bool accepted = true;
    double samplingRateHz = 0;
};

/// A value and its standard uncertainty; no value where it was not measured.
struct Metric {
    std::optional<double> value;
    std::optional<double> uncertainty;

    bool operator==(const Metric&) const = default;
};

struct Repetition : Row {
    Identifier analysis;
    int ordinal = 0; ///< 1, 2, ... in the set
    Side side = Side::Both;
    double eccentricStart =
        0; ///< s, on the capture's clock, as the next three; a typed repetition has its ordinal here
    double concentricStart = 0;
    double peakTime = 0;
    double concentricEnd = 0;
    std::int64_t flags = 0; ///< bits of reps::Flag

    Metric meanVelocity;           ///< m/s
    Metric meanPropulsiveVelocity; ///< m/s
    Metric peakVelocity;           ///< m/s
    Metric timeToPeakVelocity;     ///< s
    Metric range;                  ///< m
    Metric displacementToPeak;     ///< m
    Metric concentricDuration;     ///< s
    Metric velocityAt100ms;        ///< m/s
    Metric velocityAt200ms;        ///< m/s
    Metric eccentricPeakVelocity;  ///< m/s, negative
    Metric eccentricDuration;      ///< s
    Metric reversalTime;           ///< s
};

/// What the user said of one repetition; kept apart from the analyses and applied to each of them when read, in the
/// order of (counter, device). It means the repetition that holds `atTime` between its start and end.
struct EditEvent : Row {
    Identifier set;
    std::optional<Identifier> capture;
    double atTime = 0; ///< s, on the capture's clock; the ordinal for a typed set
    EditKind kind = EditKind::Delete;
    std::string value; ///< Relabel: "both", "left", "right", "evidence", "no-evidence"; Add: JSON of what was typed
    Moment made;
};

struct Split {
    double distance = 0; ///< m from the start line
    double time = 0;     ///< s

    bool operator==(const Split&) const = default;
};

struct Sprint : Row {
    Identifier athlete;
    std::optional<Identifier> session;
    Moment run;
    double distance = 0;       ///< m; of a flying sprint the zone
    double time = 0;           ///< s
    std::vector<Split> splits; ///< distances ascending; may be empty
    std::string start;         ///< "block", "standing", "falling", "rolling", "flying"
    double runIn = 0;          ///< m before the zone of a flying sprint
    std::string timing;        ///< "hand", "gates", "video", "electronic"
    std::string surface;       ///< "track", "indoor", "grass"
    std::string shoes;         ///< "spikes", "flats"
    std::optional<double> windMps;
    std::optional<double> temperatureC;
    std::optional<double> effort; ///< 1..10
    bool competition = false;
    std::string note;
    bool test = false;                 ///< a trial of a test day: compared with the tests before it
    std::optional<double> reactionS;   ///< from the gun to the first movement
    std::optional<double> beamM;       ///< start line to the beam that starts the clock; splits count from the beam
    std::optional<double> altitudeM;   ///< above the sea
    std::optional<double> contactS;    ///< of a step near top speed, from video
    std::optional<double> stepLengthM; ///< near top speed, from video
};

/// Work on the track that is counted, timed or not: 6 x 30 m behind a sled, 4 x 150 m easy.
struct TrackWork : Row {
    Identifier athlete;
    std::optional<Identifier> session;
    Moment done;
    std::string kind;                ///< "sprints", "flying", "resisted", "hill", "easy"
    double distance = 0;             ///< m of one run; of a flying sprint the zone
    int repetitions = 1;             ///< runs
    std::optional<double> bestTimeS; ///< of one run
    std::optional<double> restS;     ///< between runs
    std::optional<double> effort;    ///< 1..10
    std::optional<double> loadKg;    ///< on the sled
    std::optional<double> slopePercent;
    std::optional<double> windMps;
    std::string timing;  ///< as of a sprint, of bestTimeS
    std::string surface; ///< as of a sprint
    std::string shoes;   ///< as of a sprint
    std::string note;
};

struct Jump : Row {
    Identifier athlete;
    std::optional<Identifier> session;
    Moment done;
    std::string kind; ///< "drop-jump", "counter-movement", "squat-jump", "standing-long", "bounds"
    Side side = Side::Both;
    std::optional<double> boxHeightM;
    Metric contact;  ///< s
    Metric flight;   ///< s
    Metric height;   ///< m
    Metric distance; ///< m, of horizontal jumps
    std::string note;
    bool test = false;   ///< a trial of a test day
    int repetitions = 1; ///< jumps in one go: 3 or 5 of bounds
    std::string surface; ///< as of a sprint
    std::string shoes;   ///< as of a sprint
};

struct Wellness : Row {
    Identifier athlete;
    Moment asked;
    std::optional<double> sleepHours;
    std::optional<double> soreness; ///< 0..10
    std::optional<double> pain;     ///< 0..10
    std::string painWhere;          ///< "knee", "hamstring", "back", ...; empty where there is none
    bool sharpPain = false;
    bool limping = false;
    bool newHamstringPain = false;
    bool refused = false; ///< does not want to train today
    std::optional<double> bodyMassKg;
    std::string note;
};

/// A day on which the planned training did not happen.
struct LostDay : Row {
    Identifier athlete;
    CivilDate day{};
    std::string why; ///< "illness", "travel"
};

/// A long text, compressed on the disk.
struct PackedText {
    std::string text;

    bool operator==(const PackedText&) const = default;
};

/// A motion sensor this device knows: how it is reached, read and corrected. Its id is a hash of its address: the same
/// sensor kept twice is one row.
struct Sensor : Row {
    std::string address;                            ///< as the system tells it
    std::string name;                               ///< as the athlete calls it
    std::string placement = "bar";                  ///< "bar", "shoe", "waist"
    std::string map;                                ///< JSON text (engine/sensor)
    std::string calibration;                        ///< JSON text (engine/motion); empty: not calibrated
    std::optional<std::int64_t> lastUsedUtcSeconds; ///< since 1970-01-01
};

/// A sensor map that was taught or imported. Its id is a hash of its key.
struct SensorMap : Row {
    std::string key;
    std::string name;
    std::string text; ///< JSON text (engine/sensor)
};

enum class DocumentKind { DayInput, SeasonData, WarmUpCheck };

/// What decisions were made from, kept by value for ever and named after its content: the same document twice adds
/// nothing, and one that was tampered with no longer has its name.
struct Document : Row {
    std::optional<Identifier> athlete; ///< whose it is; none for what is the same for all
    std::optional<CivilDate> day;      ///< of which day it speaks
    DocumentKind kind = DocumentKind::DayInput;
    PackedText content; ///< JSON text
};

/// A document's id: hash of its kind, athlete, day and text.
[[nodiscard]] Identifier documentId(const Document& document);

/// Kept for ever, with its evidence by value: later analyses do not rewrite why it was taken. Its id is a hash of what
/// it was made from, so that deciding twice on the same evidence adds nothing.
struct Decision : Row {
    Identifier athlete;
    Identifier season;
    CivilDate day{};
    Moment made;
    std::string ladder;
    std::string action; ///< "step", "hold", "step-back", "ease", "rest"
    std::string rule;
    std::string rungFrom;
    std::string rungTo;
    std::string evidence; ///< JSON text
    std::string reason;   ///< in plain words
    Answer answer = Answer::None;
    std::string changedTo; ///< what was done instead
    std::string why;
    std::optional<Identifier> input; ///< document it was made from; none in rows of the first schema
    std::optional<Identifier> rules; ///< document: ladders, rules and cautions it was made with
    int ordinal = 0;                 ///< 1, 2, ... of the ladder's decisions of that day; 0 in rows of the first schema
    double loadFactor = 1;           ///< on the day's load
};

/// The same rows without their long texts, for who only asks where an athlete stands. Read only.
struct DecisionOutline : Row {
    Identifier season;
    CivilDate day{};
    std::int64_t madeUtcSeconds = 0;
    std::string ladder;
    std::string action;
    std::string rungFrom;
    std::string rungTo;
    Answer answer = Answer::None;
    std::string changedTo;
    int ordinal = 0;
    double loadFactor = 1;
};

} // namespace fleetrung::store
