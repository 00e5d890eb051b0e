#include <algorithm>
#include <cmath>

#include "mobile/plot/pictures.hpp"
#include "mobile/plot/season_axis.hpp"

namespace fleetrung::plot
{
namespace
{

constexpr double raceRow = 0.75; // rungs below the last one

/// One stepped line for each run of stays without a gap (the plan pauses between two macrocycles).
void addPath(Plot& plot, const std::vector<StairStay>& stays, const SeasonSpan& season, Role role,
             const std::string& name)
{
    Line line{role, name, {}, true};
    const auto close = [&](const StairStay& stay) {
        line.points.push_back({weeksAt(season, stay.last + std::chrono::days{1}), static_cast<double>(stay.rung)});
        plot.primitives.push_back(line);
        line.points.clear();
    };
    for (std::size_t i = 0; i < stays.size(); ++i) {
        if (i > 0 && daysBetween(stays[i - 1].last, stays[i].first) > 1)
            close(stays[i - 1]);
        line.points.push_back({weeksAt(season, stays[i].first), static_cast<double>(stays[i].rung)});
    }
    if (!stays.empty())
        close(stays.back());
}

void addRaces(Plot& plot, const SeasonSpan& season, double y)
{
    for (const auto& race : season.races) {
        Mark mark;
        mark.role = race.main ? Role::MainRace : Role::Race;
        mark.shape = Shape::Flag;
        mark.at = {placeOf(season, race.day), y};
        mark.series = "competition";
        mark.name = race.main ? race.name + " (main)" : race.name;
        plot.primitives.push_back(mark);
    }
}

void addLatest(Plot& plot, const StairInput& input)
{
    if (input.taken.empty())
        return;
    Mark mark;
    mark.role = Role::Latest;
    mark.shape = Shape::Dot;
    mark.at = {placeOf(input.season, input.taken.back().last), static_cast<double>(input.taken.back().rung)};
    mark.series = "now";
    plot.primitives.push_back(mark);
}

std::vector<LegendEntry> legendOf(const StairInput& input)
{
    std::vector<LegendEntry> legend;
    if (!input.taken.empty())
        legend.push_back({Role::Taken, LegendEntry::Sample::Line, Shape::Ring, "taken"});
    if (!input.planned.empty())
        legend.push_back({Role::Planned, LegendEntry::Sample::Line, Shape::Ring, "planned"});
    if (input.season.today)
        legend.push_back({Role::Today, LegendEntry::Sample::Line, Shape::Ring, "today"});
    const auto has = [&](bool main) {
        return std::any_of(input.season.races.begin(), input.season.races.end(),
                           [main](const RaceDay& race) { return race.main == main; });
    };
    if (has(false))
        legend.push_back({Role::Race, LegendEntry::Sample::Mark, Shape::Flag, "competition"});
    if (has(true))
        legend.push_back({Role::MainRace, LegendEntry::Sample::Mark, Shape::Flag, "main one"});
    return legend;
}

} // namespace

Plot stair(const StairInput& input)
{
    Plot plot;
    plot.title = input.ladder + " ladder";
    plot.x = weekAxis(input.season);
    plot.strip = phaseStrip(input.season);

    const auto rungs = static_cast<double>(input.rungs.size());
    plot.y.kind = Axis::Kind::Category;
    plot.y.title = "rung, longest range at the top";
    plot.y.downwards = true;
    plot.y.from = -0.6;
    plot.y.to = input.season.races.empty() ? rungs - 0.4 : rungs - 0.4 + raceRow;
    for (std::size_t i = 0; i < input.rungs.size(); ++i)
        plot.y.ticks.push_back(
            {static_cast<double>(i), input.rungs[i], !input.taken.empty() && input.taken.back().rung == i});
    for (std::size_t i = 0; i + 1 < input.rungs.size(); ++i) {
        const double between = static_cast<double>(i) + 0.5;
        plot.primitives.push_back(Line{Role::Grid, "", {{plot.x.from, between}, {plot.x.to, between}}, false});
    }
    addToday(plot, input.season);
    addPath(plot, input.planned, input.season, Role::Planned, "planned");
    addPath(plot, input.taken, input.season, Role::Taken, "taken");
    addRaces(plot, input.season, rungs - 0.4 + raceRow / 2);
    addLatest(plot, input);
    plot.legend = legendOf(input);
    return plot;
}

std::optional<StairHit> stairHit(const StairInput& input, Point place)
{
    // A fingertip on a phone: three quarters of a rung, a twelfth of the season. Starting values of this project.
    constexpr double reachDown = 0.75;
    const double reachAcross = std::max(1.0, weeksAt(input.season, input.season.last) / 12);
    std::optional<StairHit> hit;
    double nearest = 1;
    const auto look = [&](const std::vector<StairStay>& stays, bool taken) {
        for (std::size_t i = 0; i < stays.size(); ++i) {
            const double from = weeksAt(input.season, stays[i].first);
            const double to = weeksAt(input.season, stays[i].last + std::chrono::days{1});
            const double across = std::max({from - place.x, place.x - to, 0.0}) / reachAcross;
            const double down = std::abs(place.y - static_cast<double>(stays[i].rung)) / reachDown;
            const double distance = std::hypot(across, down);
            if (distance >= nearest)
                continue;
            nearest = distance;
            hit = StairHit{taken, i};
        }
    };
    look(input.taken, true);
    look(input.planned, false);
    return hit;
}

} // namespace fleetrung::plot
