// What was done, as the report shows it: sessions, sets, repetitions, sprints and jumps. SI units, loads in kg.
// An empty optional means "not measured" and stands as an empty cell, never as a zero.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/base/identifier.hpp"
#include "engine/report/moment.hpp"
#include "engine/reps/repetition.hpp"
#include "engine/sprint/force_velocity.hpp"
#include "engine/sprint/splits.hpp"
#include "engine/track/weeks.hpp"

namespace fleetrung::report
{

/// What was measured, or typed: a typed value has no uncertainty, and what was not measured has no value.
struct Measurement {
    std::optional<double> value;
    std::optional<double> uncertainty; ///< standard, same unit
};

/// Which leg or arm worked; one-sided lifts keep left and right apart.
enum class Side { Both, Left, Right };

struct Repetition {
    Identifier id;
    int number = 1;                    ///< 1-based within the set
    Measurement meanVelocity;          ///< m/s, concentric
    Measurement propulsiveVelocity;    ///< m/s
    Measurement peakVelocity;          ///< m/s
    Measurement timeToPeak;            ///< s (TPV)
    Measurement range;                 ///< m (ROM)
    Measurement displacementToPeak;    ///< m
    Measurement concentricTime;        ///< s
    Measurement velocityAt100ms;       ///< m/s
    Measurement velocityAt200ms;       ///< m/s
    Measurement eccentricPeakVelocity; ///< m/s, negative
    Measurement eccentricTime;         ///< s
    Measurement reversalTime;          ///< s
    reps::Flags flags = 0;
    bool accepted = true; ///< false: the athlete struck it out, or it is outside the rung's range
};

struct Set {
    Identifier id;
    int number = 1;     ///< 1-based within the session
    std::string lift;   ///< key, "half-squat"
    std::string name;   ///< "Half squat"
    std::string ladder; ///< name of the ladder; empty for a lift outside the ladders
    std::string rung;   ///< name of the rung; empty likewise
    Side side = Side::Both;
    std::optional<double> loadKg;
    int repetitionsPlanned = 0;
    int repetitionsDone = 0;
    std::string kind = "work";          ///< warm-up, probe, work, maintenance; only a probe set is evidence
    bool measured = false;              ///< by a sensor; otherwise typed
    std::optional<double> velocityLoss; ///< share (0..1) from the fastest repetition
    std::optional<double> effort;       ///< 1-10
    std::string note;
    std::vector<Repetition> repetitions; ///< may be fewer than done: a set without a sensor has none
};

struct Session {
    Identifier id;
    CivilDate day{}; ///< the training day
    Moment started;
    std::string kind; ///< strength, track, test
    std::string phase;
    std::optional<double> effort; ///< 1-10, of the whole session
    std::string note;
    std::vector<Set> sets;
};

/// How the athlete was on a day, as entered.
struct Wellness {
    CivilDate day{};
    Moment asked;
    std::optional<double> sleepHours;
    std::optional<double> soreness; ///< 0-10
    std::optional<double> pain;     ///< 0-10
    std::string painWhere;
    std::optional<double> bodyMassKg;
    std::string note;
};

struct Split {
    double distanceM = 0;
    double timeS = 0;
};

/// One timed run. Only runs of the same `test` are ever compared.
/// What the splits of a run say: the speed curve fitted to them (engine/sprint/splits.hpp), and force and power from
/// it.
struct SpeedCurve {
    std::optional<sprint::SprintFit> fit;
    std::string noFit; ///< why there is none
    double beamM = 0;  ///< from the start line to the beam that starts the clock
    std::optional<sprint::ForceVelocity> force;
    std::string noForce; ///< why there is none
    double massKg = 0;   ///< for which force was worked out
};

struct Sprint {
    Identifier id;
    CivilDate day{};
    Moment at;
    std::string test; ///< what was run: "flying 20 m", "30 m from blocks"
    double distanceM = 0;
    std::optional<double> runInM; ///< before the timed zone of a flying run
    double timeS = 0;
    std::string start;  ///< standing, block, flying
    std::string timing; ///< gates, hand, video
    std::string surface;
    std::string shoes;
    std::optional<double> windMps; ///< along the run, tail wind positive
    std::optional<double> temperatureC;
    bool competition = false;
    bool trial = false; ///< a trial of a test day
    std::vector<Split> splits;
    std::optional<SpeedCurve> curve;    ///< none for a flying start, and without splits
    track::FastMetres fast;             ///< against the best speed of the 12 months up to its day
    std::optional<double> contactTimeS; ///< of a step near top speed, from video
    std::optional<double> stepLengthM;  ///< likewise
    std::string note;
};

/// Runs on the track that are counted: a sled, a hill, easy runs.
struct TrackWork {
    Identifier id;
    CivilDate day{};
    Moment at;
    std::string kind; ///< sprints, flying, resisted, hill, easy
    double distanceM = 0;
    int repetitions = 1;
    std::optional<double> bestTimeS;
    std::optional<double> restS;
    std::optional<double> effort; ///< 1-10
    std::optional<double> loadKg; ///< on the sled
    std::optional<double> slopePercent;
    std::optional<double> windMps;
    std::string timing; ///< of the best time
    std::string surface;
    std::string shoes;
    track::FastMetres fast;
    std::string note;
};

/// A week of the track log against the sprint days that were planned.
struct TrackWeek {
    track::Week week;
    int sprintDaysPlanned = 0; ///< of the season, up to the day the report knows
    int sprintDaysDone = 0;    ///< days with a run or with work
};

struct Jump {
    Identifier id;
    CivilDate day{};
    Moment at;
    std::string kind; ///< "drop jump", "standing long jump", "3 bounds"
    Side side = Side::Both;
    std::optional<double> boxHeightM;
    std::optional<double> distanceM;
    Measurement contactTime;      ///< s
    Measurement flightTime;       ///< s
    Measurement height;           ///< m
    Measurement reactiveStrength; ///< m/s: height / contact time
    bool trial = false;           ///< a trial of a test day
    std::string surface;
    std::string shoes;
    std::string note;
};

} // namespace fleetrung::report
