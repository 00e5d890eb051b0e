#include "engine/season/turns.hpp"

#include <algorithm>
#include <map>

#include "engine/season/session_plan.hpp"

namespace fleetrung::season
{
namespace
{

using std::chrono::days;

bool contains(const std::vector<int>& weekdays, CivilDate day)
{
    return std::find(weekdays.begin(), weekdays.end(), isoWeekday(day)) != weekdays.end();
}

/// A training day that no block takes from every lift.
bool isFreeTrainingDay(const SeasonSetup& setup, CivilDate day)
{
    return contains(setup.trainingDays, day) && restBlockOn(setup, {}, day) == nullptr;
}

/// The first of two weekly races with the day between them; the other follows it. Null elsewhere.
const Competition* raceWeekOf(const SeasonSetup& setup, CivilDate day)
{
    const auto gap = static_cast<int>(standardSeasonData().rules.raceGapDays);
    for (std::size_t i = 1; i < setup.competitions.size(); ++i) {
        const auto& before = setup.competitions[i - 1];
        const auto& next = setup.competitions[i];
        if (before.date < day && day < next.date && daysBetween(before.date, next.date) <= gap)
            return &before;
    }
    return nullptr;
}

/// The latest day for lifts that is far enough from the next race; nothing where there is none.
std::optional<CivilDate> lastDayBetweenRaces(const SeasonSetup& setup, CivilDate before, CivilDate next)
{
    const auto lead = static_cast<int>(standardSeasonData().rules.raceLeadDays);
    for (CivilDate day = next - days(lead); day > before; day -= days(1))
        if (isFreeTrainingDay(setup, day))
            return day;
    return std::nullopt;
}

int highDaysPerWeek(const SeasonSetup& setup)
{
    return static_cast<int>(std::count_if(setup.trainingDays.begin(), setup.trainingDays.end(), [&](int weekday) {
        return std::find(setup.sprintDays.begin(), setup.sprintDays.end(), weekday) != setup.sprintDays.end();
    }));
}

bool isDropJump(const Ladder& ladder)
{
    return ladder.rungs.front().metric == Metric::ContactTime;
}

/// How many days before `day` the ladder had a day of its own kind: counts its turns.
int turnsBefore(const SeasonPlan& plan, const Ladder& ladder, CivilDate day)
{
    int turns = 0;
    for (CivilDate d = plan.setup.start; d < day; d += days(1))
        turns += standsOn(plan, ladder, d) ? 1 : 0;
    return turns;
}

std::vector<const Ladder*> standingOn(const SeasonPlan& plan, CivilDate day, const SeasonData& data)
{
    std::vector<const Ladder*> standing;
    for (const auto& laid : plan.ladders)
        if (const auto* ladder = ladderOf(plan.setup, data, laid.ladder);
            ladder != nullptr && !laid.rungs.empty() && standsOn(plan, *ladder, day))
            standing.push_back(ladder);
    return standing;
}

/// Of those that stand, as many as there are places, going on from the turns that the first has had.
std::vector<const Ladder*> takeTurns(std::vector<const Ladder*> standing, std::size_t turns, std::size_t cap)
{
    if (standing.size() <= cap)
        return standing;
    std::vector<const Ladder*> chosen;
    for (std::size_t i = 0; i < cap; ++i)
        chosen.push_back(standing[(turns * cap + i) % standing.size()]);
    return chosen;
}

std::vector<const Ladder*> takeTurns(const SeasonPlan& plan, CivilDate day, const SeasonData& data)
{
    auto standing = standingOn(plan, day, data);
    const auto cap = static_cast<std::size_t>(liftCap(plan.setup, data.rules));
    const int turns = standing.size() <= cap ? 0 : turnsBefore(plan, *standing.front(), day);
    return takeTurns(std::move(standing), static_cast<std::size_t>(turns), cap);
}

} // namespace

bool isLiftingDay(const SeasonPlan& plan, CivilDate day)
{
    const auto* phase = phaseOn(plan.phases, day);
    if (phase == nullptr || phase->kind == PhaseKind::Transition || !isFreeTrainingDay(plan.setup, day))
        return false;
    const auto* week = raceWeekOf(plan.setup, day);
    return week == nullptr || day == lastDayBetweenRaces(plan.setup, week[0].date, week[1].date);
}

bool standsOn(const SeasonPlan& plan, const Ladder& ladder, CivilDate day)
{
    if (day < ladderStart(plan.setup, ladder.key) || !isLiftingDay(plan, day) ||
        restBlockOn(plan.setup, ladder.regions, day) != nullptr)
        return false;
    // The one session between weekly races holds heavy lifts whether it is a sprint day or not.
    return !ladder.heavy || highDaysPerWeek(plan.setup) < 2 || contains(plan.setup.sprintDays, day) ||
           raceWeekOf(plan.setup, day) != nullptr;
}

std::vector<const Ladder*> laddersOn(const SeasonPlan& plan, CivilDate day, const SeasonData& data)
{
    auto chosen = takeTurns(plan, day, data);
    std::erase_if(chosen, [&](const Ladder* ladder) {
        if (!isDropJump(*ladder))
            return false;
        for (int back = 1; back < static_cast<int>(data.rules.jumpRestDays); ++back) {
            const auto earlier = takeTurns(plan, day - days(back), data);
            if (std::find(earlier.begin(), earlier.end(), ladder) != earlier.end())
                return true; // drop jumps need their days of rest
        }
        return false;
    });
    std::stable_sort(chosen.begin(), chosen.end(),
                     [](const Ladder* a, const Ladder* b) { return a->order < b->order; });
    return chosen;
}

std::vector<DayTurns> turnsOf(const SeasonPlan& plan, const SeasonData& data)
{
    std::vector<DayTurns> season;
    std::vector<std::vector<const Ladder*>> taken; // before the rest of drop jumps
    std::map<const Ladder*, std::size_t> turns;
    const auto cap = static_cast<std::size_t>(liftCap(plan.setup, data.rules));
    const auto rest = static_cast<std::size_t>(data.rules.jumpRestDays);
    for (CivilDate day = plan.setup.start; day <= plan.end; day += days(1)) {
        auto standing = standingOn(plan, day, data);
        taken.push_back(takeTurns(standing, standing.empty() ? 0 : turns[standing.front()], cap));
        for (const auto* ladder : standing)
            ++turns[ladder];
        auto chosen = taken.back();
        std::erase_if(chosen, [&](const Ladder* ladder) {
            for (std::size_t back = 1; back < rest && back < taken.size() && isDropJump(*ladder); ++back) {
                const auto& earlier = taken[taken.size() - 1 - back];
                if (std::find(earlier.begin(), earlier.end(), ladder) != earlier.end())
                    return true;
            }
            return false;
        });
        std::stable_sort(chosen.begin(), chosen.end(),
                         [](const Ladder* a, const Ladder* b) { return a->order < b->order; });
        if (!chosen.empty())
            season.push_back({day, std::move(chosen)});
    }
    return season;
}

} // namespace fleetrung::season
