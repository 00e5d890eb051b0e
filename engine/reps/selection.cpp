#include "engine/reps/selection.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::reps
{
namespace
{

// Starting values of this project.
constexpr double slowestMean = 0.06;   // m/s
constexpr double longestPause = 8.0;   // s between descent and rise
constexpr double clearlyDown = 0.04;   // m/s
constexpr double outlierShare = 0.5;   // of the set's median rise: below it a stroke is something else
constexpr double supportMargin = 0.35; // of the rise: how far above the set's support a pull may begin

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    const std::size_t n = values.size();
    return n % 2 == 1 ? values[n / 2] : 0.5 * (values[n / 2 - 1] + values[n / 2]);
}

/// Peak-velocity lifts dip a little and rise far; the others come back to where they were.
double leastDescent(const Lift& lift)
{
    return lift.metric == EvidenceMetric::PeakVelocity ? 0.08 : 0.6;
}

/// Highest sample before a lower turning point: a dip too small to count as a stroke of its own still comes from there.
std::size_t highestBefore(const motion::VerticalMotion& motion, std::size_t bottom)
{
    const auto end = motion.height.begin() + static_cast<std::ptrdiff_t>(bottom + 1);
    return static_cast<std::size_t>(std::max_element(motion.height.begin(), end) - motion.height.begin());
}

/// Where the last uninterrupted descent before the bottom sets off: from the hang, not from the shoulders before it.
std::size_t lastDescentStart(const motion::VerticalMotion& motion, std::size_t top, std::size_t bottom)
{
    std::size_t i = bottom;
    while (i > top && motion.velocity[i] > -clearlyDown)
        --i;
    while (i > top && motion.velocity[i] < -0.5 * clearlyDown)
        --i;
    return i;
}

} // namespace

std::optional<Candidate> candidateOf(const motion::VerticalMotion& motion, const Lift& lift, const Stroke& stroke)
{
    Candidate candidate{stroke, findMovement(motion, stroke.bottom, stroke.top, +1), std::nullopt, 0};
    const Movement& up = candidate.up;
    candidate.rise = heightAt(motion, up.end) - heightAt(motion, up.start);
    const double duration = up.end - up.start;
    if (candidate.rise < lift.minimumRange || candidate.rise > lift.maximumRange || duration <= 0 ||
        candidate.rise / duration < slowestMean)
        return std::nullopt;
    if (lift.start == Start::Concentric)
        return candidate;
    const std::size_t top = stroke.topBefore.value_or(highestBefore(motion, stroke.bottom));
    const double enough = leastDescent(lift) * candidate.rise;
    const auto dropFrom = [&](std::size_t i) { return motion.height[i] - motion.height[stroke.bottom]; };
    if (dropFrom(top) < enough)
        return std::nullopt;
    const std::size_t last = lastDescentStart(motion, top, stroke.bottom);
    const Movement down = findMovement(motion, dropFrom(last) < enough ? top : last, stroke.bottom, -1);
    if (up.start - down.end > longestPause)
        return std::nullopt;
    candidate.down = down;
    return candidate;
}

double leastRise(std::vector<double> rises)
{
    // The greater half decides: small movements around a set can outnumber a short set's repetitions.
    std::sort(rises.begin(), rises.end());
    return outlierShare * median({rises.begin() + static_cast<std::ptrdiff_t>(rises.size() / 2), rises.end()});
}

bool startsRaised(double above, double rise)
{
    return above > std::max(0.05, supportMargin * rise);
}

double strokeProminence(const Lift& lift)
{
    return lift.key == "free" ? lift.minimumRange : std::max(0.02, 0.5 * lift.minimumRange);
}

namespace
{

void dropOutliers(std::vector<Candidate>& candidates)
{
    if (candidates.size() < 2)
        return;
    std::vector<double> rises;
    for (const auto& candidate : candidates)
        rises.push_back(candidate.rise);
    const double least = leastRise(std::move(rises));
    std::erase_if(candidates, [&](const Candidate& c) { return c.rise < least; });
}

/// A pull begins on the floor, the blocks or the pins: a rise that begins well above them is the recovery from a catch.
void dropRaisedStarts(const motion::VerticalMotion& motion, std::vector<Candidate>& candidates)
{
    if (candidates.empty())
        return;
    double lowest = heightAt(motion, candidates.front().up.start);
    for (const auto& candidate : candidates)
        lowest = std::min(lowest, heightAt(motion, candidate.up.start));
    std::erase_if(candidates,
                  [&](const Candidate& c) { return startsRaised(heightAt(motion, c.up.start) - lowest, c.rise); });
}

} // namespace

std::vector<Candidate> selectRepetitions(const motion::VerticalMotion& motion, const Lift& lift)
{
    const bool anyStroke = lift.key == "free";
    std::vector<Candidate> candidates;
    for (const auto& stroke : findStrokes(motion, strokeProminence(lift)))
        if (auto candidate = candidateOf(motion, lift, stroke))
            candidates.push_back(std::move(*candidate));
    if (anyStroke)
        return candidates;
    dropOutliers(candidates);
    if (lift.returns.bottom && lift.start == Start::Concentric)
        dropRaisedStarts(motion, candidates);
    return candidates;
}

} // namespace fleetrung::reps
