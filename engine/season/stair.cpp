#include "engine/season/stair.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung::season
{
namespace
{

using std::chrono::days;

/// First day of the window in a phase of that kind or a later one.
CivilDate phaseBegin(PhaseKind kind, const Window& window, std::span<const PhaseSpan> phases)
{
    for (const auto& span : phases)
        if (span.macrocycle == window.macrocycle && span.kind >= kind && span.to >= window.from)
            return std::max(span.from, window.from);
    return window.taperTo;
}

/// Last day of the window in a phase of that kind or an earlier one; races after the taper belong to its rungs.
CivilDate phaseEnd(PhaseKind kind, const Window& window, std::span<const PhaseSpan> phases)
{
    if (kind == PhaseKind::Taper)
        return window.to;
    CivilDate last = window.from;
    for (const auto& span : phases)
        if (span.macrocycle == window.macrocycle && span.kind <= kind && span.to >= window.from &&
            span.to <= window.taperTo)
            last = std::max(last, span.to);
    return last;
}

/// Shortest stay on a rung: what a step for evidence needs, less only where the window is too short for it.
int shortestStay(const UsableRungs& usable, const Window& window, const Rules& rules)
{
    const int total = daysBetween(window.from, window.taperTo) + 1;
    return std::max(1, std::min(static_cast<int>(rules.stepDays), total / static_cast<int>(usable.rungs.size())));
}

bool collides(CivilDate day, const std::vector<CivilDate>& heavySteps, const Rules& rules)
{
    return std::any_of(heavySteps.begin(), heavySteps.end(), [&](CivilDate other) {
        return std::abs(daysBetween(day, other)) < static_cast<int>(rules.heavyStepDays);
    });
}

/// A day on which the ladder goes its usual way: no block rests it, and no exams are written.
bool isUsual(const SeasonSetup& setup, const Ladder& ladder, CivilDate day)
{
    return setup.blocks.empty() ||
           (restBlockOn(setup, ladder.regions, day) == nullptr && blockOn(setup, Block::Kind::Exam, day) == nullptr);
}

/// First day after `count` usual days from `from` on, not beyond `end`.
CivilDate afterUsualDays(const SeasonSetup& setup, const Ladder& ladder, CivilDate from, int count, CivilDate end)
{
    CivilDate day = from;
    for (; count > 0 && day < end; day += days(1))
        count -= isUsual(setup, ladder, day) ? 1 : 0;
    return count > 0 ? day + days(count) : day;
}

/// The day nearest to `wanted` within [low, high] that satisfies `fits`.
template <class Fits> std::optional<CivilDate> nearestDay(CivilDate wanted, CivilDate low, CivilDate high, Fits fits)
{
    const int reach = std::max(daysBetween(low, wanted), daysBetween(wanted, high));
    for (int away = 0; away <= reach; ++away)
        for (const CivilDate day : {wanted - days(away), wanted + days(away)})
            if (day >= low && day <= high && fits(day))
                return day;
    return std::nullopt;
}

/// The day of a step: in no block, and for heavy ladders clear of the others' steps where the time allows it.
CivilDate stepDay(const Ladder& ladder, const SeasonSetup& setup, CivilDate wanted, CivilDate low, CivilDate high,
                  CivilDate end, const std::vector<CivilDate>& heavySteps, const Rules& rules)
{
    const auto usual = [&](CivilDate day) { return isUsual(setup, ladder, day); };
    const auto clear = [&](CivilDate day) { return usual(day) && !collides(day, heavySteps, rules); };
    if (ladder.heavy)
        if (const auto day = nearestDay(wanted, low, high, clear))
            return *day;
    if (const auto day = nearestDay(wanted, low, high, usual))
        return *day;
    CivilDate day = wanted;
    while (day <= end && !usual(day))
        day += days(1);
    return day;
}

void noteShortTime(const Ladder& ladder, const UsableRungs& usable, const Window& window, const Rules& rules,
                   std::vector<std::string>& notes)
{
    const int stay = shortestStay(usable, window, rules);
    if (stay < static_cast<int>(rules.stepDays))
        notes.push_back("Too little time for " + integerText(static_cast<int>(usable.rungs.size())) + " rungs of the " +
                        ladder.name + " ladder before " + dateText(window.taperTo) + ": about " + integerText(stay) +
                        (stay == 1 ? " day" : " days") + " on each instead of " +
                        integerText(static_cast<int>(rules.stepDays)) + " or more.");
}

} // namespace

std::vector<Window> trainingWindows(std::span<const PhaseSpan> phases)
{
    std::vector<Window> windows;
    for (const auto& span : phases) {
        if (span.kind == PhaseKind::Transition)
            continue;
        if (windows.empty() || windows.back().macrocycle != span.macrocycle)
            windows.push_back({span.from, span.to, span.to, span.macrocycle});
        windows.back().to = span.to;
        if (span.kind == PhaseKind::Taper)
            windows.back().taperTo = span.to;
    }
    return windows;
}

std::size_t UsableRungs::placeOf(const Ladder& ladder, std::string_view rungKey) const
{
    const auto wanted = ladder.indexOf(rungKey);
    for (std::size_t place = 0; place < rungs.size(); ++place)
        if (wanted && *ladder.indexOf(rungs[place]->key) >= *wanted)
            return place;
    return wanted && !rungs.empty() ? rungs.size() - 1 : 0;
}

CivilDate latestDay(const UsableRungs& usable, std::size_t place, const Window& window,
                    std::span<const PhaseSpan> phases, const Rules& rules)
{
    const int stay = shortestStay(usable, window, rules);
    CivilDate latest = window.to;
    for (std::size_t i = usable.rungs.size() - 1; i-- > place;) {
        const CivilDate room = (i + 2 == usable.rungs.size() ? window.taperTo : latest) - days(stay);
        latest = std::max(window.from, std::min(phaseEnd(usable.rungs[i]->latest, window, phases), room));
    }
    return latest;
}

std::vector<PlannedRung> layStair(const Ladder& ladder, const UsableRungs& usable, const Window& window,
                                  std::span<const PhaseSpan> phases, const SeasonSetup& setup, const Rules& rules,
                                  const Footing& footing, std::vector<CivilDate>& heavySteps,
                                  std::vector<std::string>& notes)
{
    std::vector<PlannedRung> stair;
    if (usable.rungs.empty())
        return stair;
    if (footing.place == 0)
        noteShortTime(ladder, usable, window, rules, notes);
    const int stay = shortestStay(usable, window, rules);
    const auto count = static_cast<int>(usable.rungs.size() - footing.place);
    const int total = daysBetween(footing.since, window.taperTo) + 1;

    CivilDate entry = footing.since;
    for (int step = 0; step < count; ++step) {
        const auto place = footing.place + static_cast<std::size_t>(step);
        const auto& rung = *usable.rungs[place];
        if (step > 0) {
            const CivilDate high =
                std::max(latestDay(usable, place - 1, window, phases, rules) + days(1), footing.notBefore);
            const CivilDate stayed = afterUsualDays(setup, ladder, entry, stay, window.to);
            const CivilDate low =
                std::min(high, std::max({stayed, phaseBegin(rung.earliest, window, phases), footing.notBefore}));
            const CivilDate wanted =
                std::max(std::clamp(footing.since + days(step * total / count), low, high), entry + days(1));
            const CivilDate next =
                stepDay(ladder, setup, wanted, std::max(low, entry + days(1)), high, window.to, heavySteps, rules);
            if (next > window.to)
                break; // said above: the time is too short for every rung
            stair.back().to = next - days(1);
            stair.back().latest = std::max(stair.back().latest, stair.back().to);
            entry = next;
            if (ladder.heavy)
                heavySteps.push_back(next);
        }
        stair.push_back(
            {rung.key, entry, window.to, latestDay(usable, place, window, phases, rules), window.macrocycle, false});
    }
    return stair;
}

} // namespace fleetrung::season
