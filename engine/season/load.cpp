#include "engine/season/load.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung::season
{
namespace
{

constexpr int adult = 18;
constexpr int weekDays = 7;
constexpr int monthDays = 28;

bool isYoung(const AthleteFacts& athlete, CivilDate day, const Rules& rules)
{
    const auto age = ageOn(athlete, day);
    return (age && *age < adult) || (athlete.trainingYears && *athlete.trainingYears < rules.youngTrainingYears);
}

bool isShortSquat(const Rung& rung)
{
    return rung.lift == "quarter-squat" || rung.lift == "pin-quarter-squat";
}

/// The load that stood when the last `span` days began: of the last session before them, else the first within them.
double loadBefore(std::span<const WorkDone> work, CivilDate day, int span)
{
    double load = work.front().loadKg;
    for (const auto& done : work)
        if (daysBetween(done.day, day) >= span)
            load = done.loadKg;
    return load;
}

bool beatenBy(const WorkDone& done, int repetitions)
{
    return done.targetRepetitions > 0 && done.doneRepetitions - done.targetRepetitions >= repetitions;
}

} // namespace

std::optional<LoadLimit> shortRangeLimit(const Rung& rung, double fullMaximumKg, const AthleteFacts& athlete,
                                         CivilDate day, const Rules& rules)
{
    if (!isShortSquat(rung))
        return std::nullopt;
    const bool young = isYoung(athlete, day, rules);
    const double factor = young ? rules.shortRangeLimitYoung : rules.shortRangeLimit;
    return LoadLimit{factor * fullMaximumKg, fixedText(factor, 1) + " x the full squat's estimated maximum" +
                                                 (young ? " (under 18 or under two years of lifting)" : "")};
}

LoadLimit firstLoadOn(const Rung& next, double lastWorkLoadKg, std::optional<double> effortSevenKg,
                      std::optional<double> fullMaximumKg, const AthleteFacts& athlete, CivilDate day,
                      const Rules& rules)
{
    LoadLimit limit{next.loadRatio * lastWorkLoadKg,
                    fixedText(next.loadRatio, 3) + " x the last load on the rung before"};
    if (effortSevenKg && *effortSevenKg < limit.maximumKg)
        limit = {*effortSevenKg, "the load of effort 7 of 10"};
    if (fullMaximumKg)
        if (auto cap = shortRangeLimit(next, *fullMaximumKg, athlete, day, rules);
            cap && cap->maximumKg < limit.maximumKg)
            limit = std::move(*cap);
    const auto age = ageOn(athlete, day);
    if (age && *age < adult && (1 + rules.loadWeek) * lastWorkLoadKg < limit.maximumKg)
        limit = {(1 + rules.loadWeek) * lastWorkLoadKg,
                 "at most " + fixedText(rules.loadWeek * 100, 0) + " % more under 18"};
    return limit;
}

LoadLimit loadLimit(std::span<const WorkDone> work, CivilDate day, const Rules& rules)
{
    const double byWeek = loadBefore(work, day, weekDays) * (1 + rules.loadWeek);
    const double byMonth = loadBefore(work, day, monthDays) * (1 + rules.loadMonth);
    if (byMonth < byWeek)
        return {byMonth, "at most " + fixedText(rules.loadMonth * 100, 0) + " % more in 28 days"};
    return {byWeek, "at most " + fixedText(rules.loadWeek * 100, 0) + " % more in 7 days"};
}

LoadLimit nextLoad(std::span<const WorkDone> work, CivilDate day, const Rules& rules)
{
    const auto& last = work.back();
    LoadLimit next{last.loadKg, "the load of " + dateText(last.day)};
    if (work.size() >= 2) {
        const auto& before = work[work.size() - 2];
        const bool held = before.loadKg >= last.loadKg;
        const bool byTwo = held && beatenBy(last, 2) && beatenBy(before, 2);
        if (byTwo || (held && beatenBy(last, 1) && beatenBy(before, 1))) {
            const double growth = byTwo ? rules.sensorlessLarge : rules.sensorlessSmall;
            next = {last.loadKg * (1 + growth), fixedText(growth * 100, 0) + " % more than on " + dateText(last.day) +
                                                    ": the target was beaten by " +
                                                    (byTwo ? "two repetitions" : "a repetition") + " in two sessions"};
        }
    }
    const auto limit = loadLimit(work, day, rules);
    if (limit.maximumKg < next.maximumKg)
        return limit;
    return next;
}

} // namespace fleetrung::season
