// What goes on the bar, and why.
#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/season/load.hpp"
#include "engine/season/session_parts.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double plateStep = 2.5; // kg, smallest pair of plates in most gyms: common practice, no source
constexpr int adult = 18;

/// Full work on the rung since it was entered.
std::vector<WorkDone> workOfStay(const LiftDay& lift)
{
    std::vector<WorkDone> work;
    if (lift.state == nullptr || lift.state->rung() != lift.rung.key)
        return work;
    for (const auto& done : lift.log.work)
        if (done.ladder == lift.ladder.key && done.rung == lift.rung.key && !done.eased && !done.maintenance &&
            done.loadKg > 0 && done.day >= lift.state->since() && done.day < lift.day)
            work.push_back(done);
    return work;
}

/// Last estimate of the longest range's maximum: what short ranges are held against.
std::optional<double> longestRangeMaximum(const LiftDay& lift)
{
    std::optional<double> found;
    for (const auto& known : lift.log.maxima)
        if (known.ladder == lift.ladder.key && known.rung == lift.ladder.rungs.front().key && known.day < lift.day)
            found = known.loadKg;
    return found;
}

/// Work load carried from the rung where it was lifted to the rung of today, by the ladder's ratios.
ChosenLoad carriedLoad(const LiftDay& lift)
{
    if (lift.state == nullptr || !lift.state->workLoadKg)
        return {};
    LoadLimit load{*lift.state->workLoadKg, "the last work load"};
    const auto& rungs = lift.ladder.rungs;
    const auto from = static_cast<std::size_t>(lift.ladder.indexOf(lift.state->rung()).value_or(0));
    const auto to = static_cast<std::size_t>(lift.ladder.indexOf(lift.rung.key).value_or(0));
    for (auto i = from; i < to; ++i)
        load = firstLoadOn(rungs[i + 1], load.maximumKg, std::nullopt, longestRangeMaximum(lift),
                           lift.plan.setup.athlete, lift.day, lift.data.rules);
    for (auto i = from; i > to; --i) // never heavier on the way back
        load = {load.maximumKg / std::max(1.0, rungs[i].loadRatio), "the last work load, never more on a longer range"};
    return {load.maximumKg, load.reason};
}

/// Short squats stay within their factor of the full squat's maximum on every day, not only the first.
void holdShortRange(const LiftDay& lift, ChosenLoad& load)
{
    const auto full = longestRangeMaximum(lift);
    if (!load.kg || !full)
        return;
    const auto cap = shortRangeLimit(lift.rung, *full, lift.plan.setup.athlete, lift.day, lift.data.rules);
    if (cap && cap->maximumKg < *load.kg)
        load = {cap->maximumKg, cap->reason};
}

} // namespace

bool isYoung(const SeasonPlan& plan, CivilDate day)
{
    return ageOn(plan.setup.athlete, day).value_or(adult) < adult;
}

double toPlates(double loadKg)
{
    return std::floor(loadKg / plateStep + 1e-9) * plateStep;
}

ChosenLoad chooseLoad(const LiftDay& lift)
{
    const auto work = workOfStay(lift);
    ChosenLoad load;
    if (work.empty()) {
        load = carriedLoad(lift);
    } else {
        const auto next = nextLoad(work, lift.day, lift.data.rules);
        load = {next.maximumKg, next.reason};
    }
    holdShortRange(lift, load);
    return load;
}

int contactsLeft(const SeasonPlan& plan, const TrainingLog& log, CivilDate day, const Rules& rules)
{
    constexpr int week = 7;
    int thisWeek = 0;
    for (const auto& done : log.contacts) {
        const int ago = daysBetween(done.day, day);
        if (ago > 0 && ago < static_cast<int>(rules.jumpRestDays))
            return 0;
        if (ago > 0 && ago < week)
            thisWeek += done.contacts;
    }
    const double session = isYoung(plan, day) ? rules.jumpContactsYoung : rules.jumpContacts;
    return std::max(0, std::min(static_cast<int>(session), static_cast<int>(rules.jumpContactsWeek) - thisWeek));
}

} // namespace fleetrung::season
