// The numbers of the season rules, read from rules.json beside this file, where each carries its unit and origin:
// "published" (with the source), "common practice", or "starting value of this project".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/base/json.hpp"
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

/// One number of rules.json as people read it.
struct NumberText {
    std::string key; ///< "step_gain"
    double value = 0;
    std::string unit;   ///< "typical errors"
    std::string origin; ///< "starting value of this project", "common practice, no source", "published: ..."
    std::string about;
};

/// One rule in words, its numbers in place.
struct RuleText {
    std::string key;   ///< "step-for-evidence"
    std::string group; ///< "decision" (in order of precedence), "evidence", "day"
    std::string title; ///< "Step for evidence"
    std::string text;
    std::vector<std::string> numbers; ///< keys
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
        jumpHeightYoung, jumpHeavyMass, jumpHeavyHeight, jumpContactLimit, jumpIndexError, jumpContactsWeek, heavyShare,
        heavyEffort;
    // age, exams, weekly races
    double lowestAge, jumpLowestAge, examVolume, raceGapDays, raceLeadDays;
    // load correction, strength, maintenance, warm-up check, speed, sides
    double loadCorrectionLimit, loadCorrectionPairs, loadCorrectionSessions, loadCorrectionSpread, strengthDays,
        strengthLevel, strengthError, maintenanceDays, maintenanceLatestDays, maintenanceLostDays, maintenanceClearDays,
        warmUpLow, warmUpVeryLow, warmUpLoad, warmUpSetsOff, warmUpStrongLoad, warmUpStrongSets, warmUpSessions,
        speedLoss, speedLossErrors, speedDays, speedWind, speedError, speedStrength, sideLimit, sideErrors,
        sideSessions;

    std::vector<PhaseRule> phases;   ///< all six, in order
    std::vector<NumberText> numbers; ///< the same numbers with unit and origin, in the file's order
    std::vector<RuleText> texts;     ///< decisions by precedence, then what they rest on, then the day
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

/// Fails as the parser of the file at fault does, its place led by the file's name.
[[nodiscard]] Expected<SeasonData> parseSeasonData(std::string_view ladders, std::string_view rules,
                                                   std::string_view cautions);

/// The starting set of this project (ladders.json, rules.json, cautions.json), read once, never changed.
[[nodiscard]] const SeasonData& standardSeasonData();

/// Null where there is none.
[[nodiscard]] const RuleText* findRule(const Rules& rules, std::string_view key);
[[nodiscard]] const NumberText* findNumber(const Rules& rules, std::string_view key);
/// "80 %", "20 mm", "250 ms", "1.35": as rule texts show it.
[[nodiscard]] std::string numberText(const NumberText& number);

/// Every rule by precedence, with its numbers, their units and where they come from; for people.
[[nodiscard]] std::string explainRules(const Rules& rules);
[[nodiscard]] Json rulesJson(const Rules& rules);

[[nodiscard]] const Caution* findCaution(const SeasonData& data, std::string_view key);

} // namespace fleetrung::season
