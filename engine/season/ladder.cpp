#include "engine/season/ladder.hpp"

#include <algorithm>
#include <array>
#include <set>

#include "engine/base/json.hpp"
#include "engine/season/object_reader.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::array<std::string_view, 4> metricKeys{"mean-velocity", "peak-velocity", "drop-time", "contact-time"};
constexpr double longestRange = 1.5;   // m
constexpr double longestTarget = 2000; // ms

Metric readMetric(ObjectReader& reader)
{
    const auto key = reader.text("metric");
    for (std::size_t i = 0; i < metricKeys.size(); ++i)
        if (metricKeys[i] == key)
            return static_cast<Metric>(i);
    reader.refuse("metric", "one of mean-velocity, peak-velocity, drop-time, contact-time is needed here");
    return Metric::MeanVelocity;
}

PhaseKind readPhase(ObjectReader& reader, std::string_view key)
{
    const auto kind = phaseFromKey(reader.text(key));
    if (!kind)
        reader.refuse(key, "the name of a phase is needed here, like general-preparation");
    return kind.value_or(PhaseKind::GeneralPreparation);
}

Band readBand(ObjectReader& reader, std::string_view key, double high, double unit)
{
    const auto values = reader.numbers(key, 0, high);
    if (values.size() != 2 || values[0] > values[1]) {
        reader.refuse(key, "two numbers, the lower first, are needed here");
        return {};
    }
    return {values[0] * unit, values[1] * unit};
}

Rung readRung(ObjectReader& reader)
{
    Rung rung;
    rung.key = reader.text("key");
    rung.name = reader.text("name");
    rung.lift = reader.text("lift");
    rung.metric = readMetric(reader);
    rung.range = readBand(reader, "range_m", longestRange, 1);
    rung.targetBand = readBand(reader, "target_ms", longestTarget, 0.001);
    rung.earliest = readPhase(reader, "earliest");
    rung.latest = readPhase(reader, "latest");
    if (rung.earliest > rung.latest)
        reader.refuse("latest", "the latest phase must not come before the earliest");
    rung.sets = reader.integer("sets", 1, 12);
    rung.repetitions = reader.integer("repetitions", 1, 30);
    rung.restSeconds = reader.number("rest_s", 0, 900);
    rung.loadRatio = reader.number("load_ratio", 0.1, 2);
    rung.probeShare = reader.number("probe_share", 0, 1);
    rung.boxHeight = reader.optionalNumber("box_m", 0.02, 1.2);
    rung.needs = reader.texts("needs");
    rung.cautions = reader.texts("cautions");
    rung.climbs = reader.booleanOr("climbs", false);
    return rung;
}

/// Down the ladder the range must not grow, nor a rung come due before the one above it.
void checkOrder(const Ladder& ladder, ObjectReader& reader)
{
    std::set<std::string> keys;
    for (std::size_t i = 0; i < ladder.rungs.size(); ++i) {
        const auto& rung = ladder.rungs[i];
        if (!keys.insert(rung.key).second)
            reader.refuse("rungs", "the rung key \"" + rung.key + "\" stands twice");
        if (i == 0)
            continue;
        const auto& above = ladder.rungs[i - 1];
        if (rung.range.high > above.range.high && !rung.climbs)
            reader.refuse("rungs",
                          "\"" + rung.key + "\" has a longer range than the rung above it; longest range first");
        if (rung.latest < above.latest || rung.earliest < above.earliest)
            reader.refuse("rungs", "\"" + rung.key + "\" has earlier phases than the rung above it");
    }
}

} // namespace

std::string_view metricKey(Metric metric)
{
    return metricKeys[static_cast<std::size_t>(metric)];
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

Expected<std::vector<Ladder>> parseLadders(std::string_view text)
{
    const auto json = parseJson(text);
    if (!json)
        return tl::unexpected(json.error());
    ReadProblem problem;
    std::vector<Ladder> ladders;
    ObjectReader top(*json, "", problem);
    top.integer("format", 1, 1);
    top.object("origin", [&](ObjectReader& reader) {
        for (const auto& [field, about] : (*json)["origin"].items())
            (void)reader.text(field);
    });
    top.eachObject("ladders", [&](ObjectReader& reader) {
        Ladder ladder;
        ladder.key = reader.text("key");
        ladder.name = reader.text("name");
        ladder.heavy = reader.boolean("heavy");
        ladder.oneSided = reader.boolean("one_sided");
        ladder.order = reader.integer("order", 0, 100);
        ladder.typicalErrorShare = reader.number("typical_error_share", 0.01, 0.5);
        ladder.regions = reader.texts("regions");
        reader.eachObject("rungs", [&](ObjectReader& rung) { ladder.rungs.push_back(readRung(rung)); });
        if (ladder.rungs.empty())
            reader.refuse("rungs", "a ladder needs at least one rung");
        checkOrder(ladder, reader);
        if (findLadder(ladders, ladder.key) != nullptr)
            reader.refuse("key", "this ladder stands twice");
        ladders.push_back(std::move(ladder));
    });
    top.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return ladders;
}

const Ladder* findLadder(const std::vector<Ladder>& ladders, std::string_view key)
{
    const auto found =
        std::find_if(ladders.begin(), ladders.end(), [&](const Ladder& ladder) { return ladder.key == key; });
    return found == ladders.end() ? nullptr : &*found;
}

} // namespace fleetrung::season
