#include "engine/report/rung_change.hpp"

#include <algorithm>
#include <span>

#include "engine/statistics/reliability.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::report
{
namespace
{

constexpr std::size_t fewestSessions = 6;      // starting value of this project, as the rule for a step asks
constexpr int longestPause = 14;               // days between sessions whose difference tells the typical error
constexpr double smallestTypicalError = 0.010; // s

struct Stretch {
    std::size_t rung = 0;
    std::vector<const EvidencePoint*> points;
};

std::vector<Stretch> stretchesOf(const Ladder& ladder, Side side)
{
    std::vector<Stretch> stretches;
    for (const auto& point : ladder.evidence) {
        if (point.side != side || !point.time.value)
            continue;
        if (stretches.empty() || stretches.back().rung != point.rung)
            stretches.push_back({point.rung, {}});
        stretches.back().points.push_back(&point);
    }
    return stretches;
}

double typicalErrorOf(const Stretch& stretch, double prior)
{
    std::vector<double> differences;
    for (std::size_t i = 1; i < stretch.points.size(); ++i)
        if (daysBetween(stretch.points[i - 1]->day, stretch.points[i]->day) <= longestPause)
            differences.push_back(*stretch.points[i]->time.value - *stretch.points[i - 1]->time.value);
    return std::max(statistics::typicalErrorWithPrior(differences, prior), smallestTypicalError);
}

RungChange changeOver(const Stretch& stretch, Side side, double priorShare)
{
    std::vector<double> times;
    for (const auto* point : stretch.points)
        times.push_back(*point->time.value);
    RungChange change;
    change.rung = stretch.rung;
    change.side = side;
    change.first = stretch.points.front()->day;
    change.last = stretch.points.back()->day;
    change.sessions = static_cast<int>(times.size());
    change.entry = statistics::mean(std::span(times).first(3));
    change.latest = statistics::mean(std::span(times).last(3));
    change.typicalError = typicalErrorOf(stretch, priorShare * change.entry);
    return change;
}

} // namespace

std::vector<RungChange> rungChanges(const Ladder& ladder)
{
    std::vector<RungChange> changes;
    for (const Side side : {Side::Both, Side::Left, Side::Right})
        for (const auto& stretch : stretchesOf(ladder, side))
            if (stretch.points.size() >= fewestSessions)
                changes.push_back(changeOver(stretch, side, ladder.typicalErrorShare));
    std::stable_sort(changes.begin(), changes.end(),
                     [](const RungChange& a, const RungChange& b) { return a.first < b.first; });
    return changes;
}

} // namespace fleetrung::report
