// What counts as evidence: the median of a session's probe set - three full-intent repetitions at one load kept for the
// whole stay on the rung. Nothing else does.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/base/error.hpp"
#include "engine/base/json.hpp"
#include "engine/reps/repetition.hpp"
#include "engine/season/rules.hpp"

namespace fleetrung::season
{

using reps::Measured;

enum class Side { Both, Left, Right };
enum class EvidenceSource { Probe, FirstWorkSet, Typed };

/// The first valid repetitions at one load within a session, full intent: what the load correction and the warm-up
/// check rest on. Medians of up to three.
struct LoadPoint {
    double loadKg = 0;                  ///< kg
    std::optional<Measured> timeToPeak; ///< s, by the rung's metric
    std::optional<Measured> velocity;   ///< m/s, mean or peak by the rung's metric
};

/// One session on one rung.
struct SessionEvidence {
    CivilDate day;
    std::string ladder;
    std::string rung;
    Side side = Side::Both;
    EvidenceSource source = EvidenceSource::Probe;
    double loadKg = 0;                        ///< kg
    std::optional<Measured> timeToPeak;       ///< s: TPV, or drop time, or contact time, by the rung's metric
    std::optional<Measured> meanVelocity;     ///< m/s
    std::optional<Measured> peakVelocity;     ///< m/s
    std::optional<Measured> range;            ///< m
    std::optional<Measured> estimatedMaximum; ///< kg, e1RM
    std::optional<Measured> reactiveStrength; ///< m/s, RSI (jump height / contact)
    double validShare = 1;                    ///< share of the session's repetitions on this rung that were valid
    std::vector<LoadPoint> loads;             ///< all loads of the session on this rung, lightest first
};

/// The athlete's own range on a rung: median of the first six accepted repetitions; nothing with fewer than six.
[[nodiscard]] std::optional<double> ownRange(std::span<const reps::Repetition> accepted);

/// Valid: no clipping, no gap, range within max(2 cm, 7 %) of the athlete's own (where known). Starting value of this
/// project.
[[nodiscard]] bool isValid(const reps::Repetition& repetition, std::optional<double> ownRange, const Rules& rules);

struct ProbeSet {
    CivilDate day;
    std::string ladder;
    std::string rung;
    Side side = Side::Both;
    EvidenceSource source = EvidenceSource::Probe;
    double loadKg = 0;                             ///< kg, lifted
    std::optional<double> probeLoadKg;             ///< kg, the stay's probe load; none in the first session
    std::span<const reps::Repetition> repetitions; ///< the first three count
    std::span<const reps::Repetition>
        others;                     ///< the session's other repetitions on the rung: they only count as valid or not
    std::optional<double> ownRange; ///< m
};

/// Median of the valid ones among the first three (two at least). Two-peaked repetitions give velocity, but no TPV.
/// Values are rounded to the step in which they are printed (1 ms, 0.001 m/s, 1 mm).
/// NotAvailable, with the reason, where the set is no evidence: a probe set more than 15 % off the probe load (between
/// 3 and 15 % it needs the load correction, which decideDay() looks for), a work set in its place more than 3 %, too
/// few valid.
[[nodiscard]] Expected<SessionEvidence> evidenceFromProbe(const ProbeSet& probe, const Rules& rules);

[[nodiscard]] Json evidenceJson(const SessionEvidence& evidence);
[[nodiscard]] Expected<SessionEvidence> evidenceFromJson(const Json& json);

} // namespace fleetrung::season
