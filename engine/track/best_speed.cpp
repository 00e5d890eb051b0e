#include "engine/track/best_speed.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include "engine/base/numbers.hpp"
#include "engine/sprint/flying.hpp"

namespace fleetrung::track
{
namespace
{

constexpr double shortestStretch = 10; // m
constexpr int daysKept = 365;
constexpr double fastestPossible = 15; // m/s, as engine/sprint refuses it
constexpr double handOffset = 0.24;    // s, as engine/sprint adds it to times from a gun

constexpr std::array<std::string_view, 5> kindNames{"sprints", "flying", "resisted", "hill", "easy"};

bool possible(double speed)
{
    return std::isfinite(speed) && speed > 0 && speed <= fastestPossible;
}

/// Splits in order of distance, the whole run's distance and time last.
std::vector<sprint::Split> marksOf(const Run& run)
{
    auto marks = run.splits;
    std::ranges::sort(marks, {}, &sprint::Split::distance);
    if (marks.empty() || marks.back().distance < run.distance)
        marks.push_back({run.distance, run.time});
    return marks;
}

/// Greatest mean speed between two marks at least 10 m apart; 0 where there are none.
double fastestStretch(const std::vector<sprint::Split>& marks)
{
    double fastest = 0;
    for (std::size_t to = 1; to < marks.size(); ++to) {
        std::size_t from = to;
        while (from > 0 && marks[to].distance - marks[from].distance < shortestStretch)
            --from;
        const double distance = marks[to].distance - marks[from].distance;
        const double time = marks[to].time - marks[from].time;
        if (distance >= shortestStretch && time > 0)
            fastest = std::max(fastest, distance / time);
    }
    return fastest;
}

std::optional<TopSpeed> topOf(const Run& run, const std::optional<sprint::SprintFit>& fit)
{
    TopSpeed top{0, run.day, SpeedSource::Estimated, run.byHand()};
    const auto offer = [&top](double speed, SpeedSource source) {
        if (possible(speed) && speed > top.speed)
            top = {speed, top.day, source, top.byHand};
    };
    if (run.flying) {
        if (run.time > 0)
            offer(run.distance / run.time, SpeedSource::FlyingZone);
    } else if (fit) {
        offer(fit->model.vmax, SpeedSource::Fit);
    }
    if (!run.splits.empty())
        offer(fastestStretch(marksOf(run)), SpeedSource::Stretch);
    if (top.speed == 0)
        offer(estimatedSpeed(run), SpeedSource::Estimated);
    return top.speed > 0 ? std::optional(top) : std::nullopt;
}

} // namespace

std::optional<WorkKind> workKindNamed(std::string_view name)
{
    const auto found = std::ranges::find(kindNames, name);
    return found == kindNames.end() ? std::nullopt : std::optional(static_cast<WorkKind>(found - kindNames.begin()));
}

std::string_view nameOf(WorkKind kind)
{
    return kindNames.at(static_cast<std::size_t>(kind));
}

double speedFromTime(double distance, double movingTime, double tau)
{
    return distance / (movingTime + tau * std::expm1(-movingTime / tau));
}

double estimatedSpeed(const Run& run)
{
    double moving = run.time;
    if (run.options.start.clock == sprint::Clock::Gun)
        moving += (run.byHand() ? handOffset : 0) - run.options.start.reaction.value_or(usualReaction);
    return moving > 0 ? speedFromTime(run.distance, moving) : 0;
}

KnownRun know(Run run)
{
    KnownRun known;
    if (!run.flying && !run.splits.empty())
        if (auto fit = sprint::fitSplits(run.splits, run.options))
            known.fit = std::move(*fit);
    known.top = topOf(run, known.fit);
    known.run = std::move(run);
    return known;
}

std::optional<TopSpeed> bestSpeed(std::span<const KnownRun> runs, CivilDate day)
{
    // What is measured goes before what was timed by hand, and that before what is only estimated.
    const auto rank = [](const TopSpeed& top) {
        return std::tuple(top.source != SpeedSource::Estimated, !top.byHand, top.speed);
    };
    std::optional<TopSpeed> best;
    for (const auto& [run, fit, top] : runs) {
        const int age = daysBetween(run.day, day);
        if (top && age >= 0 && age <= daysKept && run.wind.value_or(0) <= strongestWind &&
            (!best || rank(*top) > rank(*best)))
            best = top;
    }
    return best;
}

std::string describe(const TopSpeed& speed)
{
    constexpr std::array<std::string_view, 4> sources{"flying zone", "between splits", "fit to splits",
                                                      "estimated from a whole run"};
    return fixedText(speed.speed, 2) + " m/s, " + std::string(sources.at(static_cast<std::size_t>(speed.source))) +
           (speed.byHand ? ", by hand, " : ", ") + dateText(speed.day);
}

} // namespace fleetrung::track
