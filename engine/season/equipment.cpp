// Which rungs an athlete can use (equipment) and may use (age, body mass, growth).
#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/season/stair.hpp"

namespace fleetrung::season
{
namespace
{

constexpr int adult = 18;

std::string centimetresText(double metres)
{
    return integerText(std::lround(metres * 100)) + " cm";
}

/// Empty where the rung may be used.
std::string refusal(const Rung& rung, const SeasonSetup& setup, const Rules& rules)
{
    for (const auto& need : rung.needs)
        if (std::find(setup.equipment.begin(), setup.equipment.end(), need) == setup.equipment.end())
            return "no " + need + " in the equipment";
    if (rung.box && boxFor(rung, setup) == nullptr)
        return "no box of " + lengthText(*rung.box);
    if (rung.metric != Metric::ContactTime)
        return {};
    const auto& athlete = setup.athlete;
    const auto age = ageOn(athlete, setup.start);
    if (age && *age < rules.jumpLowestAge)
        return "no drop jumps under " + shortestText(rules.jumpLowestAge);
    const auto* box = boxFor(rung, setup);
    if (box == nullptr)
        return {};
    const double height = box->metres();
    if (athlete.growthPerMonth && *athlete.growthPerMonth > rules.growthLimit)
        return "no drop jumps while growing by more than " + fixedText(rules.growthLimit * 100, 1) + " cm a month";
    if (age && *age < adult && height > rules.jumpHeightYoung + boxTolerance)
        return "under 18 no drop above " + centimetresText(rules.jumpHeightYoung);
    if (athlete.bodyMassKg && *athlete.bodyMassKg > rules.jumpHeavyMass && height > rules.jumpHeavyHeight)
        return "above " + fixedText(rules.jumpHeavyMass, 0) + " kg of body mass no drop above " +
               centimetresText(rules.jumpHeavyHeight);
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
