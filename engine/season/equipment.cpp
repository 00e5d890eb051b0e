// Which rungs an athlete can use (equipment) and may use (age, body mass, growth).
#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/season/stair.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double boxTolerance = 0.01; // m
constexpr int adult = 18;

std::string centimetres(double metres)
{
    return integerText(std::lround(metres * 100)) + " cm";
}

bool hasBox(const SeasonSetup& setup, double height)
{
    return std::any_of(setup.boxHeights.begin(), setup.boxHeights.end(),
                       [&](double box) { return std::abs(box - height) <= boxTolerance; });
}

/// Empty where the rung may be used.
std::string refusal(const Rung& rung, const SeasonSetup& setup, const Rules& rules)
{
    for (const auto& need : rung.needs)
        if (std::find(setup.equipment.begin(), setup.equipment.end(), need) == setup.equipment.end())
            return "no " + need + " in the equipment";
    if (rung.boxHeight && !hasBox(setup, *rung.boxHeight))
        return "no box of " + centimetres(*rung.boxHeight);
    if (rung.metric != Metric::ContactTime || !rung.boxHeight)
        return {};
    const auto& athlete = setup.athlete;
    const auto age = ageOn(athlete, setup.start);
    if (athlete.growthPerMonth && *athlete.growthPerMonth > rules.growthLimit)
        return "no drop jumps while growing by more than " + fixedText(rules.growthLimit * 100, 1) + " cm a month";
    if (age && *age<adult&& * rung.boxHeight> rules.jumpHeightYoung)
        return "under 18 no drop above " + centimetres(rules.jumpHeightYoung);
    if (athlete.bodyMassKg && *athlete.bodyMassKg > rules.jumpHeavyMass && *rung.boxHeight > rules.jumpHeavyHeight)
        return "above " + fixedText(rules.jumpHeavyMass, 0) + " kg of body mass no drop above " +
               centimetres(rules.jumpHeavyHeight);
    return {};
}

} // namespace

UsableRungs usableRungs(const Ladder& ladder, const SeasonSetup& setup, const Rules& rules)
{
    UsableRungs usable;
    for (const auto& rung : ladder.rungs) {
        auto reason = refusal(rung, setup, rules);
        if (reason.empty())
            usable.rungs.push_back(&rung);
        else
            usable.omitted.push_back({rung.key, std::move(reason)});
    }
    return usable;
}

} // namespace fleetrung::season
