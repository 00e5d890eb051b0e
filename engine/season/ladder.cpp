#include "engine/season/ladder.hpp"

#include <algorithm>
#include <array>
#include <set>

#include "engine/base/numbers.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::array<std::string_view, 4> metricKeys{"mean-velocity", "peak-velocity", "drop-time", "contact-time"};
constexpr std::string_view boxMark = "{box}";

tl::unexpected<Error> fault(const std::string& place, const std::string& key, std::string message)
{
    return fail(Code::InvalidInput, place.empty() ? key : place + '.' + key, std::move(message));
}

Expected<void> checkRung(const Rung& rung, const std::string& place)
{
    if (rung.key.empty())
        return fault(place, "key", "a rung needs a key");
    if (rung.name.empty())
        return fault(place, "name", "a rung needs a name");
    if (rung.lift.empty())
        return fault(place, "lift", "a rung needs the key of its lift");
    if (rung.origin.empty())
        return fault(place, "origin", "say where the rung comes from");
    if (rung.range.low > rung.range.high || rung.range.low < 0)
        return fault(place, "range_m", "two numbers, the lower first, are needed here");
    if (rung.targetBand.low > rung.targetBand.high || rung.targetBand.low < 0)
        return fault(place, "target_ms", "two numbers, the lower first, are needed here");
    if (rung.earliest > rung.latest)
        return fault(place, "latest", "the latest phase must not come before the earliest");
    if (rung.sets < 1 || rung.repetitions < 1)
        return fault(place, "sets", "at least one set of one repetition is needed");
    if (rung.pattern.find(boxMark) != std::string::npos && !rung.box)
        return fault(place, "name", "the name speaks of a box; say how high it is");
    return {};
}

/// Down the ladder the range must not grow, nor a rung come due before the one above it.
Expected<void> checkOrder(const Ladder& ladder, const std::string& place)
{
    std::set<std::string> keys;
    for (std::size_t i = 0; i < ladder.rungs.size(); ++i) {
        const auto& rung = ladder.rungs[i];
        if (!keys.insert(rung.key).second)
            return fault(place, "rungs", "the rung key \"" + rung.key + "\" stands twice");
        if (i == 0)
            continue;
        const auto& above = ladder.rungs[i - 1];
        if (rung.range.high > above.range.high && !rung.climbs)
            return fault(place, "rungs",
                         "\"" + rung.name + "\" has a longer range than the rung above it; longest range first");
        if (rung.latest < above.latest || rung.earliest < above.earliest)
            return fault(place, "rungs", "\"" + rung.name + "\" has earlier phases than the rung above it");
    }
    return {};
}

} // namespace

std::string_view metricKey(Metric metric)
{
    return metricKeys[static_cast<std::size_t>(metric)];
}

std::string_view strengthKey(StrengthMeasure measure)
{
    return measure == StrengthMeasure::OneRepetitionMaximum ? "e1rm" : "velocity";
}

std::optional<double> Rung::boxHeight() const
{
    return box ? std::optional(box->metres()) : std::nullopt;
}

std::string rungNameWith(const Rung& rung, const EnteredLength& box, LengthUnit unit)
{
    auto name = rung.pattern;
    if (const auto at = name.find(boxMark); at != std::string::npos)
        name.replace(at, boxMark.size(), lengthText(box, unit));
    return name;
}

const Rung* Ladder::find(std::string_view rungKey) const
{
    const auto index = indexOf(rungKey);
    return index ? &rungs[static_cast<std::size_t>(*index)] : nullptr;
}

std::optional<int> Ladder::indexOf(std::string_view rungKey) const
{
    for (std::size_t i = 0; i < rungs.size(); ++i)
        if (rungs[i].key == rungKey)
            return static_cast<int>(i);
    return std::nullopt;
}

Expected<void> checkLadder(const Ladder& ladder, const std::string& place)
{
    if (ladder.key.empty())
        return fault(place, "key", "a ladder needs a key");
    if (ladder.name.empty())
        return fault(place, "name", "a ladder needs a name");
    if (ladder.rungs.empty())
        return fault(place, "rungs", "a ladder needs at least one rung");
    for (std::size_t i = 0; i < ladder.rungs.size(); ++i) {
        const auto rung = "rungs[" + integerText(static_cast<std::int64_t>(i)) + ']';
        if (auto checked = checkRung(ladder.rungs[i], place.empty() ? rung : place + '.' + rung); !checked)
            return checked;
    }
    return checkOrder(ladder, place);
}

const Ladder* findLadder(const std::vector<Ladder>& ladders, std::string_view key)
{
    const auto found =
        std::find_if(ladders.begin(), ladders.end(), [&](const Ladder& ladder) { return ladder.key == key; });
    return found == ladders.end() ? nullptr : &*found;
}

} // namespace fleetrung::season
