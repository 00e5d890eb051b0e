#include "engine/season/plan.hpp"

#include <algorithm>
#include <array>

#include "engine/base/numbers.hpp"
#include "engine/season/stair.hpp"
#include "engine/season/week.hpp"

namespace fleetrung::season
{
namespace
{

using std::chrono::days;

std::string stateText(const LadderState& state)
{
    std::string text = state.ladder;
    for (const auto& stay : state.path)
        text += ' ' + stay.rung + ' ' + dateText(stay.from);
    return text;
}

Identifier planId(const SeasonSetup& setup, std::span<const LadderState> states, std::optional<CivilDate> today,
                  const SeasonData& data)
{
    std::vector<std::string> parts{"plan", data.version, jsonText(setupJson(setup))};
    for (const auto& state : states)
        parts.push_back(stateText(state));
    if (today)
        parts.push_back(dateText(*today));
    const std::vector<std::string_view> views(parts.begin(), parts.end());
    return hashIdentifier(views);
}

const LadderState* findState(std::span<const LadderState> states, std::string_view ladder)
{
    const auto found =
        std::find_if(states.begin(), states.end(), [&](const LadderState& state) { return state.ladder == ladder; });
    return found == states.end() || found->path.empty() ? nullptr : &*found;
}

/// The path up to and including `today`, as it was taken.
void appendTaken(LadderPlan& plan, const LadderState& state, CivilDate today, std::span<const PhaseSpan> phases)
{
    for (std::size_t i = 0; i < state.path.size(); ++i) {
        const auto& stay = state.path[i];
        const CivilDate to = i + 1 < state.path.size() ? state.path[i + 1].from - days(1) : today;
        const auto* phase = phaseOn(phases, stay.from);
        if (stay.from <= to)
            plan.rungs.push_back({stay.rung, stay.from, to, to, phase == nullptr ? 0 : phase->macrocycle, true});
    }
}

/// Everything one ladder's stair is laid from.
struct Ground {
    const SeasonSetup& setup;
    const SeasonData& data;
    std::span<const PhaseSpan> phases;
    std::vector<Window> windows;
};

LadderPlan layLadder(const Ladder& ladder, const Ground& ground, const LadderState* state,
                     std::optional<CivilDate> today, std::vector<CivilDate>& heavySteps,
                     std::vector<std::string>& notes)
{
    const auto usable = usableRungs(ladder, ground.setup, ground.data.rules);
    LadderPlan plan{ladder.key, {}, usable.omitted};
    for (const auto& omitted : usable.omitted)
        notes.push_back(ladder.find(omitted.rung)->name + " is not planned: " + omitted.reason + ".");
    if (usable.rungs.empty())
        notes.push_back("The " + ladder.name + " ladder has no rung that can be used.");
    const bool started = state != nullptr && today;
    if (started)
        appendTaken(plan, *state, *today, ground.phases);
    const CivilDate begins = ladderStart(ground.setup, ladder.key);
    for (auto window : ground.windows) {
        if (window.to < begins || (started && window.to <= *today))
            continue;
        window.from = std::max(window.from, begins);
        Footing footing{0, window.from, window.from};
        // A stay that began in this window goes on; one from before it ends, and the ladder begins anew.
        const bool under = started && state->since() >= window.from && state->since() <= window.to;
        if (under)
            footing = {usable.placeOf(ladder, state->rung()), state->since(), *today + days(1)};
        auto stair = layStair(ladder, usable, window, ground.phases, ground.setup, ground.data.rules, footing,
                              heavySteps, notes);
        if (under && !stair.empty()) {
            if (!plan.rungs.empty())
                plan.rungs.back().latest = stair.front().latest;
            stair.front().from = *today + days(1);
            if (stair.front().from > stair.front().to)
                stair.erase(stair.begin());
        } else if (started && !stair.empty() && stair.front().from <= *today) {
            stair.front().from = *today + days(1);
        }
        plan.rungs.insert(plan.rungs.end(), stair.begin(), stair.end());
    }
    return plan;
}

/// What a block costs: lifting days, by the phase they are taken from.
void noteBlocks(const SeasonSetup& setup, std::span<const PhaseSpan> phases, std::vector<std::string>& notes)
{
    for (const auto& block : setup.blocks) {
        std::string taken;
        for (const auto& span : phases) {
            int count = 0;
            for (CivilDate day = std::max(block.from, span.from); day <= std::min(block.to, span.to); day += days(1))
                count += span.kind != PhaseKind::Transition &&
                         std::find(setup.trainingDays.begin(), setup.trainingDays.end(), isoWeekday(day)) !=
                             setup.trainingDays.end();
            if (count > 0)
                taken += (taken.empty() ? "" : ", ") + integerText(count) +
                         (count == 1 ? " lifting day" : " lifting days") + " of " + std::string(phaseName(span.kind));
        }
        const bool exam = block.kind == Block::Kind::Exam;
        notes.push_back(blockText(block) + (block.region.empty() ? "" : ", " + block.region + ",") +
                        (taken.empty() ? " costs no lifting day." : (exam ? " halves " : " takes ") + taken + '.') +
                        " No step is planned in it.");
    }
}

SeasonPlan layPlan(const SeasonSetup& setup, std::span<const LadderState> states, std::optional<CivilDate> today,
                   const SeasonData& data)
{
    auto layout = layPhases(setup, data.rules);
    SeasonPlan plan;
    plan.id = planId(setup, states, today, data);
    plan.setup = setup;
    plan.phases = std::move(layout.spans);
    plan.end = plan.phases.back().to;
    plan.notes = std::move(layout.notes);
    const Ground ground{setup, data, plan.phases, trainingWindows(plan.phases)};
    noteBlocks(setup, plan.phases, plan.notes);
    std::vector<CivilDate> heavySteps;
    for (const auto& key : setup.ladders)
        plan.ladders.push_back(
            layLadder(*ladderOf(setup, data, key), ground, findState(states, key), today, heavySteps, plan.notes));
    for (const auto& window : ground.windows)
        keepHeavyStepsApart(plan, window, today, data);
    if (!setup.liftsPerSessionReason.empty())
        plan.notes.push_back(integerText(liftCap(setup, data.rules)) +
                             " primary lifts a session by choice: " + setup.liftsPerSessionReason);
    if (static_cast<int>(setup.ladders.size()) > liftCap(setup, data.rules))
        plan.notes.push_back(integerText(static_cast<int>(setup.ladders.size())) + " ladders share " +
                             integerText(liftCap(setup, data.rules)) + " places a session: they take turns.");
    return plan;
}

} // namespace

Expected<SeasonPlan> planSeason(const SeasonSetup& setup, const SeasonData& data)
{
    if (const auto checked = checkSetup(setup, data); !checked)
        return tl::unexpected(checked.error());
    return layPlan(setup, {}, std::nullopt, data);
}

Expected<SeasonPlan> replanSeason(const SeasonSetup& setup, std::span<const LadderState> states, CivilDate today,
                                  const SeasonData& data)
{
    if (const auto checked = checkSetup(setup, data); !checked)
        return tl::unexpected(checked.error());
    for (const auto& state : states) {
        const auto* ladder = ladderOf(setup, data, state.ladder);
        for (const auto& stay : state.path)
            if (ladder == nullptr || ladder->find(stay.rung) == nullptr)
                return fail(Code::InvalidArgument, state.ladder + '.' + stay.rung, "there is no such rung");
    }
    return layPlan(setup, states, today, data);
}

const LadderPlan* findLadderPlan(const SeasonPlan& plan, std::string_view ladder)
{
    const auto found = std::find_if(plan.ladders.begin(), plan.ladders.end(),
                                    [&](const LadderPlan& item) { return item.ladder == ladder; });
    return found == plan.ladders.end() ? nullptr : &*found;
}

const PlannedRung* rungOn(const LadderPlan& plan, CivilDate day)
{
    const auto found = std::find_if(plan.rungs.begin(), plan.rungs.end(),
                                    [&](const PlannedRung& rung) { return rung.from <= day && day <= rung.to; });
    return found == plan.rungs.end() ? nullptr : &*found;
}

int weekOf(const SeasonPlan& plan, CivilDate day)
{
    const int first = plan.setup.weekStart;
    return daysBetween(firstDayOfWeek(plan.setup.start, first), firstDayOfWeek(day, first)) / 7 + 1;
}

int weekCount(const SeasonPlan& plan)
{
    return weekOf(plan, plan.end);
}

std::vector<LadderState> startStates(const SeasonPlan& plan)
{
    std::vector<LadderState> states;
    for (const auto& ladder : plan.ladders)
        if (!ladder.rungs.empty())
            states.push_back({ladder.ladder, {{ladder.rungs.front().rung, ladder.rungs.front().from}}, {}, {}});
    return states;
}

} // namespace fleetrung::season
