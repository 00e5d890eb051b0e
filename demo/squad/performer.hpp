// One invented athlete of the demo: who they are, what they want, and what is true of them without any sensor knowing
// it. Every number here is invented.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/season/setup.hpp"
#include "engine/store/records.hpp"

namespace fleetrung::squad
{

/// What is true on one ladder.
struct Ability {
    std::string ladder;
    double maximumKg;                ///< kg, one-repetition maximum on the longest rung on the first day
    std::vector<double> rungFactors; ///< the maximum of each rung, relative to the longest
};

struct Away {
    CivilDate from, to; ///< inclusive
    std::string why;
};

struct Complaint {
    CivilDate day;
    double pain; ///< 0-10
    std::string where;
};

/// Sprinting as v(t) = top (1 - exp(-t / rise)), with the reaction or the first movement before it.
struct Speed {
    double top;        ///< m/s on the first day
    double rise;       ///< s
    double gain;       ///< share of the top speed gained over the season
    double raceLength; ///< m
};

struct Performer {
    store::Athlete athlete;
    season::SeasonSetup setup;
    CivilDate playedTo; ///< last day that is played
    std::vector<Ability> abilities;
    double strengthGain; ///< share of the maxima gained over a whole season
    double response;     ///< share by which time to peak velocity falls on a rung, in the end
    Speed speed;
    double standingLongJump; ///< m on the first day
    double longJump;         ///< m on the first day; 0: does not compete in it
    double dropContact;      ///< s, ground contact of drop jumps on the first day
    double dropFlight;       ///< s
    std::vector<Away> away;
    std::vector<Complaint> complaints;
    std::uint64_t seed;
};

/// The squad: a long jumper with a whole season, a 200 m runner under 18 and a masters sprinter with a few weeks each.
[[nodiscard]] std::vector<Performer> cast();

} // namespace fleetrung::squad
