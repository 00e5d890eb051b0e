#include "engine/track/boxes.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/statistics/robust.hpp"

namespace fleetrung::track
{
namespace
{

std::optional<double> medianOf(const std::vector<DropJump>& jumps, std::optional<double> DropJump::*value)
{
    std::vector<double> values;
    for (const auto& jump : jumps)
        if (jump.*value)
            values.push_back(*(jump.*value));
    return values.empty() ? std::nullopt : std::optional(statistics::median(values));
}

BoxValues valuesOf(const std::vector<DropJump>& jumps, double contactLimit)
{
    BoxValues found;
    found.box = jumps.front().box;
    found.jumps = static_cast<int>(jumps.size());
    found.lastDay = std::ranges::max(jumps, {}, &DropJump::day).day;
    std::vector<DropJump> last;
    for (const auto& jump : jumps) {
        if (jump.day == found.lastDay)
            last.push_back(jump);
        const bool counts = jump.rsi && jump.contact && *jump.contact <= contactLimit && !jump.heelsStruck;
        if (counts && *jump.rsi > found.bestRsi.value_or(0))
            found.bestRsi = jump.rsi;
    }
    found.contact = medianOf(last, &DropJump::contact);
    found.flight = medianOf(last, &DropJump::flight);
    found.height = medianOf(last, &DropJump::height);
    found.rsi = medianOf(last, &DropJump::rsi);
    found.withinLimit =
        found.contact && *found.contact <= contactLimit && std::ranges::none_of(last, &DropJump::heelsStruck);
    return found;
}

} // namespace

std::vector<BoxValues> byBox(std::span<const DropJump> jumps, double contactLimit)
{
    std::map<long, std::vector<DropJump>> boxes; // by millimetres: 0.3 m and 0.30000001 m are one box
    for (const auto& jump : jumps)
        boxes[std::lround(1000 * jump.box)].push_back(jump);
    std::vector<BoxValues> result;
    for (const auto& [box, ofBox] : boxes)
        result.push_back(valuesOf(ofBox, contactLimit));
    return result;
}

const BoxValues* bestBox(std::span<const BoxValues> boxes)
{
    const BoxValues* best = nullptr;
    for (const auto& box : boxes)
        if (box.withinLimit && box.rsi && (best == nullptr || *box.rsi > *best->rsi))
            best = &box;
    return best;
}

} // namespace fleetrung::track
