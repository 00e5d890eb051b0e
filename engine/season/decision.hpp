// Decisions of one day, from the evidence. Pure: the same input gives the same decisions, byte for byte.
// Precedence: pain or refusal > layoff > competition rest > ease > must step > step > hold; at most one heavy ladder
// steps in seven days.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/identifier.hpp"
#include "engine/season/evidence.hpp"
#include "engine/season/plan.hpp"
#include "engine/season/training_log.hpp"

namespace fleetrung::season
{

enum class DecisionKind { Step, Hold, StepBack, Ease, Rest };
[[nodiscard]] std::string_view decisionKey(DecisionKind kind);  ///< "step", "hold", "step-back", "ease", "rest"
[[nodiscard]] std::string_view decisionName(DecisionKind kind); ///< "step", "hold", "step back", "ease", "rest"

/// One number a decision rests on, by value.
struct EvidenceLine {
    std::string name; ///< "time to peak, gain"
    double value = 0;
    double uncertainty = 0; ///< same unit; 0 for counts
    std::string unit;       ///< "ms", "m/s", "cm", "%", "kg", "days", "sessions"
    std::string allowed;    ///< "at least 27"
    bool met = false;
    bool gates = true;   ///< false: shown beside, the decision does not rest on it (the target band)
    std::string lacking; ///< what is still missing, in words, for the reason; not kept
};

struct Decision {
    Identifier id; ///< hash of the inputs
    CivilDate day;
    std::string ladder;
    std::string rule; ///< stable key, see ruleTitle(): "step-for-evidence", "must-step", "pain", ...
    DecisionKind kind = DecisionKind::Hold;
    std::string from; ///< rung keys; equal unless the kind is step or step back
    std::string to;
    std::vector<EvidenceLine> evidence;
    std::string reason;                ///< plain words
    double loadFactor = 1;             ///< on the day's load
    double setFactor = 1;              ///< on the day's sets
    bool asks = false;                 ///< the athlete or coach may choose to step by exposure
    bool primerAllowed = false;        ///< competition rest: a light, fast primer may be done
    bool noSprints = false;            ///< pain forbids sprinting today, whatever this ladder does
    std::string painRegion;            ///< where it hurts, from pain of 3 on; empty where it does not
    bool strengthLost = false;         ///< a maintenance set is due sooner
    bool speedNotFollowing = false;    ///< maintenance is halved
    std::vector<std::string> cautions; ///< caution keys to show before it is followed
};

/// "Step for evidence" for "step-for-evidence"; empty for a key that is none.
[[nodiscard]] std::string_view ruleTitle(std::string_view rule);

/// How the athlete is today; what was not entered is absent.
struct Wellness {
    std::optional<double> sleepHours;
    std::optional<int> soreness; ///< 0..10
    std::optional<int> pain;     ///< 0..10
    std::string painRegion;      ///< "knee", "hamstring", ...; empty = everywhere
    bool sharpPain = false;
    bool limping = false;
    bool newHamstringPain = false;
    bool refused = false; ///< the athlete does not want to lift today
};

/// Pain of 5 or more, sharp, limping, new in the hamstring: no sprinting, whatever day it is.
[[nodiscard]] bool forbidsSprints(const Wellness& wellness, const Rules& rules);

struct DayInput {
    SeasonPlan plan;
    std::vector<LadderState> states;      ///< one a chosen ladder
    std::vector<SessionEvidence> history; ///< all ladders, by day; sessions of `today` not among them
    TrainingLog log;                      ///< before `today`
    Wellness wellness;
    CivilDate today;
    std::vector<std::string> stepByExposure; ///< ladders on which the athlete or coach chose so, when asked
};

/// One decision a ladder, in the plan's order.
[[nodiscard]] std::vector<Decision> decideDay(const DayInput& input, const SeasonData& data = standardSeasonData());

/// The state after a decision was followed: a step or step back starts a new stay, with a new probe load to be found.
[[nodiscard]] LadderState afterDecision(LadderState state, const Decision& decision);

[[nodiscard]] Json evidenceLineJson(const EvidenceLine& line);
[[nodiscard]] Json decisionJson(const Decision& decision);
[[nodiscard]] Expected<Decision> decisionFromJson(const Json& json);

} // namespace fleetrung::season
