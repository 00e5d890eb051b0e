// The numbers of the season rules, read from rules.json beside this file, where each carries its unit and origin:
// "published" (with the source), "common practice", or "starting value of this project".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/season/ladder.hpp"
#include "engine/season/phase_kind.hpp"

namespace fleetrung::season
{

/// One line of the documented table of phases.
struct PhaseRule {
    PhaseKind kind = PhaseKind::Transition;
    double share = 0;     ///< of the days left after transition and taper
    int minimumDays = 0;  ///< below this the phase is said to be compressed
    int maximumDays = 0;  ///< beyond this the days go to general preparation; 0 = no limit
    double setStop = 0.2; ///< velocity loss from the fastest repetition at which a set stops (share)
    double volume = 1;    ///< sets of the phase as a share of a rung's own sets
};

/// Every number a decision rests on. Names are the keys of rules.json in camelCase; units stand there.
struct Rules {
    // evidence
    double loadTolerance, rangeTolerance, rangeToleranceShare, priorSessions, maximumGapDays, typicalErrorFloor,
        meanVelocityError, peakVelocityError, contactError;
    // step, no response, strength
    double baselineSessions, stepSessions, stepDays, stepGain, stepVelocityLoss, stepValidShare, noResponseSessions,
        noResponseDays, noResponseGain, strengthSessions, strengthLost, mustStepPutOffDays, heavyStepDays;
    // ease, layoff, pain
    double easeGain, easeStrongGain, easeLoad, easeStrongLoad, easeSets, poorNightHours, layoffDays, layoffStepBackDays,
        layoffLongDays, layoffLoad, layoffLateLoad, layoffLateSets, layoffLateDays, painSwap, painStop, growthLimit;
    // loads
    double loadWeek, loadMonth, shortRangeLimit, shortRangeLimitYoung, youngTrainingYears, sensorlessSmall,
        sensorlessLarge;
    // competitions
    double taperDays, taperVolume, minorTaperDays, minorTaperVolume, competitionRestDays, primerLoad, primerRepetitions;
    // sessions and jumps
    double minutesPerLift, liftsPerSession, youngDaysPerWeek, jumpContacts, jumpContactsYoung, jumpRestDays,
        jumpHeightYoung, jumpHeavyMass, jumpHeavyHeight, jumpContactLimit, jumpIndexError;

    std::vector<PhaseRule> phases; ///< all six, in order
};

/// Fails with InvalidInput (place: the key): a number that is missing, unknown, has no origin, or lies out of its
/// bounds.
[[nodiscard]] Expected<Rules> parseRules(std::string_view json);

/// What an athlete must have read before a thing is done.
struct Caution {
    std::string key;   ///< "heavy-short-range"
    std::string title; ///< "Before the first heavy load on a shorter range"
    std::string text;  ///< plain words
};
[[nodiscard]] Expected<std::vector<Caution>> parseCautions(std::string_view json);

/// All the data decisions need beside the athlete's own.
struct SeasonData {
    std::vector<Ladder> ladders;
    Rules rules;
    std::vector<Caution> cautions;
    std::string version; ///< hash of what the data was read from; plans and decisions are named after it too
};

/// The starting set of this project (ladders.json, rules.json, cautions.json), read once, never changed.
[[nodiscard]] const SeasonData& standardSeasonData();

[[nodiscard]] const Caution* findCaution(const SeasonData& data, std::string_view key);

} // namespace fleetrung::season
