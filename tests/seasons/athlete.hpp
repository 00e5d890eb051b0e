// Invented athletes with known true adaptation. Nothing here reads the rules: it is the world that the rules judge.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "demo/simulator/random.hpp"
#include "engine/season/plan.hpp"

namespace fleetrung::seasons
{

using season::SeasonSetup;
using simulator::Random;

/// How one athlete answers to one rung. Time to peak (or drop time, or contact) of a fresh athlete at 70 % of what the
/// rung allows: time x (1 - gain (1 - exp(-sessions / pace))).
struct RungTruth {
    double time = 0;  ///< s, on the first day
    double gain = 0;  ///< share; 0 where the athlete does not respond to this rung
    double pace = 4;  ///< sessions
    double share = 1; ///< maximum on this rung as a share of the ladder's first
    double range = 0; ///< m, the athlete's own
};

struct LadderTruth {
    double maximumKg = 0; ///< 1RM of the first rung on the first day
    double growth = 0;    ///< share of strength won in the end
    double pace = 20;     ///< sessions: strength levels off as 1 - exp(-sessions / pace)
    double asymmetry = 0; ///< left later than right by this share (one-sided lifts)
    std::map<std::string, RungTruth> rungs;
};

struct Absence {
    CivilDate from;
    CivilDate to; ///< inclusive
    std::string reason;
};

struct Pain {
    CivilDate from;
    CivilDate to; ///< inclusive
    int level = 0;
    std::string region;
};

struct Athlete {
    std::uint64_t seed = 0;
    SeasonSetup setup;
    std::map<std::string, LadderTruth> ladders;
    double noise = 1;            ///< session noise as a multiple of the rules' prior typical error
    double fatigueEffect = 0.02; ///< share of time to peak a unit of fatigue costs
    double follows = 1;          ///< share of decisions that are followed
    double exposes = 0.5;        ///< share of questions answered by a step by exposure
    double missed = 0;           ///< share of days missed
    double sloppy = 0;           ///< share of sessions with a cut depth
    double poorNights = 0;       ///< share
    double refuses = 0;          ///< share
    bool sensor = true;          ///< without: typed loads and repetitions, at times a typed velocity
    double flying = 2.2;         ///< s, flying 20 m on the first day
    double stopwatch = 0.02;     ///< s, standard deviation of one time
    std::vector<Absence> absences;
    std::vector<Pain> pains;
};

/// The athlete of that number.
[[nodiscard]] Athlete inventAthlete(std::uint64_t seed);

/// Null where the athlete trains.
[[nodiscard]] const Absence* absenceOn(const Athlete& athlete, CivilDate day);
[[nodiscard]] const Pain* painOn(const Athlete& athlete, CivilDate day);

} // namespace fleetrung::seasons
