#include "engine/season/squad_day.hpp"

#include <algorithm>
#include <tuple>

namespace fleetrung::season
{
namespace
{

constexpr int noRack = -1;

/// One athlete's lift of one round.
struct Place {
    const DueAthlete* athlete;
    const PlannedLift* lift;
    double loadKg;
};

double loadOf(const PlannedLift& lift)
{
    return lift.work.empty() ? 0 : lift.work.front().loadKg.value_or(0);
}

bool needsRack(const PlannedLift& lift)
{
    return lift.metric != Metric::ContactTime;
}

std::vector<Place> placesOf(std::span<const DueAthlete> due, std::size_t round)
{
    std::vector<Place> places;
    for (const auto& athlete : due)
        if (round < athlete.session.lifts.size())
            places.push_back({&athlete, &athlete.session.lifts[round], loadOf(athlete.session.lifts[round])});
    // Those of one group who lift the same stand together, the lightest first.
    std::stable_sort(places.begin(), places.end(), [](const Place& a, const Place& b) {
        return std::tuple(!needsRack(*a.lift), a.athlete->group, a.lift->ladder, a.lift->rung, a.loadKg,
                          a.athlete->athlete) < std::tuple(!needsRack(*b.lift), b.athlete->group, b.lift->ladder,
                                                           b.lift->rung, b.loadKg, b.athlete->athlete);
    });
    return places;
}

bool sameTurn(const RackTurn& turn, const Place& place)
{
    return turn.ladder == place.lift->ladder && turn.rung == place.lift->rung;
}

void append(std::vector<RackTurn>& turns, const Place& place, int round, int rack)
{
    const bool joins =
        !turns.empty() && turns.back().round == round && turns.back().rack == rack && sameTurn(turns.back(), place);
    if (!joins)
        turns.push_back({round, rack, place.lift->ladder, place.lift->rung, {}});
    turns.back().athletes.push_back(place.athlete->athlete);
}

} // namespace

std::vector<RackTurn> shareRacks(std::span<const DueAthlete> due, int racks)
{
    std::vector<RackTurn> turns;
    std::size_t rounds = 0;
    for (const auto& athlete : due)
        rounds = std::max(rounds, athlete.session.lifts.size());
    const int count = std::max(1, racks);
    for (std::size_t round = 0; round < rounds; ++round) {
        const auto places = placesOf(due, round);
        const auto standing =
            std::count_if(places.begin(), places.end(), [](const Place& p) { return needsRack(*p.lift); });
        std::ptrdiff_t index = 0;
        for (const auto& place : places) {
            // Neighbours in the order share a rack, and every rack gets its equal part.
            const int rack = needsRack(*place.lift)
                                 ? static_cast<int>(index++ * count / std::max<std::ptrdiff_t>(1, standing))
                                 : noRack;
            append(turns, place, static_cast<int>(round), rack);
        }
    }
    return turns;
}

} // namespace fleetrung::season
