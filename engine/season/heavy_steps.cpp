// One heavy ladder steps in seven days: the latest dates of all heavy ladders are laid so that this can be kept.
#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"
#include "engine/season/session_plan.hpp"
#include "engine/season/stair.hpp"

namespace fleetrung::season
{
namespace
{

using std::chrono::days;

/// A rung of a heavy ladder that must be left, and the one that follows.
struct HeavyStep {
    PlannedRung* rung;
    PlannedRung* next;
    CivilDate entered;
};

/// The first latest date first.
std::vector<HeavyStep> heavyStepsIn(SeasonPlan& plan, const Window& window, const SeasonData& data)
{
    std::vector<HeavyStep> steps;
    for (auto& laid : plan.ladders) {
        if (!ladderOf(plan.setup, data, laid.ladder)->heavy)
            continue;
        for (std::size_t i = 0; i + 1 < laid.rungs.size(); ++i) {
            auto &rung = laid.rungs[i], &next = laid.rungs[i + 1];
            const bool goesOn = i > 0 && laid.rungs[i - 1].taken && laid.rungs[i - 1].rung == rung.rung;
            if (!next.taken && rung.rung != next.rung && rung.macrocycle == window.macrocycle &&
                next.macrocycle == window.macrocycle)
                steps.push_back({&rung, &next, goesOn ? laid.rungs[i - 1].from : rung.from});
        }
    }
    std::stable_sort(steps.begin(), steps.end(),
                     [](const auto& a, const auto& b) { return a.rung->latest < b.rung->latest; });
    return steps;
}

/// The nearest day on which a step can be taken - with lifts, without rest before a competition - from `day` on,
/// forwards (+1) or backwards (-1); `day` itself where there is none in four weeks.
CivilDate stepDayFrom(const SeasonPlan& plan, CivilDate day, int way, const Rules& rules)
{
    constexpr int reach = 28;
    for (int away = 0; away <= reach; ++away) {
        const auto tried = day + days(way * away);
        if (isLiftingDay(plan, tried) && !restsForCompetition(plan.setup, tried, rules))
            return tried;
    }
    return day;
}

/// Moves the latest date earlier; what is planned never stands after it, unless that would step into a block.
void dateEarlier(const SeasonPlan& plan, const HeavyStep& step, CivilDate latest)
{
    auto& rung = *step.rung;
    rung.latest = std::min(rung.latest, latest);
    if (rung.taken || rung.to <= rung.latest)
        return;
    if (!plan.setup.blocks.empty() || rung.latest < rung.from) {
        rung.latest = rung.to;
        return;
    }
    rung.to = rung.latest;
    step.next->from = rung.latest + days(1);
}

/// A stay under way is told with the date of what is left of it.
void dateStaysUnderWay(SeasonPlan& plan)
{
    for (auto& laid : plan.ladders)
        for (std::size_t i = 0; i + 1 < laid.rungs.size(); ++i)
            if (laid.rungs[i].taken && laid.rungs[i].rung == laid.rungs[i + 1].rung)
                laid.rungs[i].latest = laid.rungs[i + 1].latest;
}

} // namespace

void keepHeavyStepsApart(SeasonPlan& plan, const Window& window, std::optional<CivilDate> today, const SeasonData& data)
{
    const auto steps = heavyStepsIn(plan, window, data);
    const days apart(static_cast<int>(data.rules.heavyStepDays));
    const days shortest(static_cast<int>(data.rules.stepDays));
    const auto soonest = today && *today >= window.from ? *today : window.from + shortest;
    bool enough = true;
    std::optional<CivilDate> nextStep;
    for (auto step = steps.rbegin(); step != steps.rend(); ++step) {
        auto latest = step->rung->latest;
        auto stepDay = stepDayFrom(plan, latest + days(1), 1, data.rules);
        if (nextStep && stepDay > *nextStep - apart) {
            stepDay = stepDayFrom(plan, *nextStep - apart, -1, data.rules);
            latest = std::min(latest, stepDay - days(1));
            enough = enough && stepDay >= soonest;
        }
        nextStep = stepDay;
        dateEarlier(plan, *step, std::max(latest, step->entered + shortest - days(1)));
    }
    dateStaysUnderWay(plan);
    if (!enough)
        plan.notes.push_back(integerText(static_cast<int>(steps.size())) + " steps of heavy ladders before " +
                             dateText(window.taperTo) + ", one in " +
                             integerText(static_cast<int>(data.rules.heavyStepDays)) +
                             " days: there is no time for all of them, some last rungs will not be reached.");
}

} // namespace fleetrung::season
