#include "engine/reps/lift.hpp"

#include <algorithm>
#include <array>

#include "engine/reps/body_share.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr auto eccentric = Start::Eccentric;
constexpr auto concentric = Start::Concentric;
constexpr auto mean = EvidenceMetric::MeanVelocity;
constexpr auto peak = EvidenceMetric::PeakVelocity;

constexpr double mostOfBody = bodyShares::allButShanksAndFeet;

constexpr Returns standing{true, false};    // every repetition ends at the same height
constexpr Returns fromSupport{false, true}; // every repetition begins at the same height
constexpr Returns bothEnds{true, true};
constexpr Returns nowhere{false, false};

// Ranges are starting values of this project (no published table was found); they only separate repetitions of the lift
// from other movements.
constexpr std::array<Lift, 19> lifts{{
    // key, name, start, returns, least, greatest, typical range [m], metric, ballistic, one-sided, body share, second
    // pull
    {"full-squat", "Full squat", eccentric, standing, 0.30, 1.00, 0.62, mean, false, false, mostOfBody},
    {"parallel-squat", "Parallel squat", eccentric, standing, 0.25, 0.90, 0.50, mean, false, false, mostOfBody},
    {"half-squat", "Half squat", eccentric, standing, 0.15, 0.70, 0.36, mean, false, false, mostOfBody},
    {"quarter-squat", "Quarter squat", eccentric, standing, 0.07, 0.50, 0.18, mean, false, false, mostOfBody},
    {"pin-quarter-squat", "Quarter squat from pins", concentric, bothEnds, 0.06, 0.50, 0.16, mean, false, false,
     mostOfBody},
    {"drop-squat", "Short drop squat", eccentric, standing, 0.06, 0.50, 0.14, EvidenceMetric::DropTime, false, false,
     mostOfBody},
    {"step-up", "Step-up", concentric, bothEnds, 0.06, 0.70, 0.35, mean, false, true,
     bodyShares::allButOneShankAndFoot},
    {"floor-clean", "Clean from the floor", concentric, fromSupport, 0.45, 1.60, 1.05, peak, true, false, mostOfBody,
     true},
    {"floor-power-clean", "Power clean from the floor", concentric, fromSupport, 0.45, 1.60, 1.15, peak, true, false,
     mostOfBody, true},
    {"block-power-clean", "Power clean from blocks", concentric, fromSupport, 0.30, 1.30, 0.80, peak, true, false,
     mostOfBody},
    {"hang-power-clean", "Hang power clean", eccentric, nowhere, 0.25, 1.30, 0.70, peak, true, false, mostOfBody},
    {"drop-hang-power-clean", "Hang power clean with a fast drop", eccentric, nowhere, 0.25, 1.30, 0.70, peak, true,
     false, mostOfBody},
    {"hinge", "Hinge", eccentric, standing, 0.10, 0.90, 0.45, mean, false, false, bodyShares::headArmsTrunk},
    {"block-pull", "Pull from blocks", concentric, bothEnds, 0.10, 0.90, 0.35, mean, false, false, mostOfBody},
    {"high-pull", "High pull", concentric, fromSupport, 0.15, 1.20, 0.55, peak, true, false, mostOfBody},
    {"bench-press", "Bench press", eccentric, bothEnds, 0.15, 0.70, 0.40, mean, false, false, bodyShares::nothing},
    {"calf-raise", "Calf raise", concentric, standing, 0.025, 0.25, 0.09, mean, false, false, bodyShares::allButFeet},
    {"drop-jump", "Drop jump", eccentric, nowhere, 0.05, 1.20, 0.45, EvidenceMetric::ContactTime, true, false,
     bodyShares::whole},
    {"free", "Free stroke", concentric, nowhere, 0.05, 4.00, 0.40, peak, false, false, bodyShares::nothing},
}};

} // namespace

std::span<const Lift> allLifts()
{
    return lifts;
}

const Lift* findLift(std::string_view key)
{
    const auto found = std::find_if(lifts.begin(), lifts.end(), [&](const Lift& lift) { return lift.key == key; });
    return found == lifts.end() ? nullptr : &*found;
}

} // namespace fleetrung::reps
