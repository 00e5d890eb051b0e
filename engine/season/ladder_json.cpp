#include <array>

#include "engine/base/numbers.hpp"
#include "engine/season/ladder_reader.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double longestRange = 1.5;   // m
constexpr double longestTarget = 2000; // ms
constexpr double lowestBox = 0.02;     // m
constexpr double highestBox = 1.2;     // m

Metric readMetric(ObjectReader& reader)
{
    const auto key = reader.text("metric");
    for (const auto metric : {Metric::MeanVelocity, Metric::PeakVelocity, Metric::DropTime, Metric::ContactTime})
        if (metricKey(metric) == key)
            return metric;
    reader.refuse("metric", "one of mean-velocity, peak-velocity, drop-time, contact-time is needed here");
    return Metric::MeanVelocity;
}

StrengthMeasure readStrength(ObjectReader& reader)
{
    const auto key = reader.text("strength");
    for (const auto measure : {StrengthMeasure::OneRepetitionMaximum, StrengthMeasure::ProbeVelocity})
        if (strengthKey(measure) == key)
            return measure;
    reader.refuse("strength", "e1rm or velocity is needed here");
    return StrengthMeasure::OneRepetitionMaximum;
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

Rung readRung(ObjectReader& reader, ReadProblem& problem)
{
    Rung rung;
    rung.key = reader.text("key");
    rung.pattern = reader.text("name");
    rung.lift = reader.text("lift");
    rung.metric = readMetric(reader);
    rung.range = readBand(reader, "range_m", longestRange, 1);
    rung.targetBand = readBand(reader, "target_ms", longestTarget, 0.001);
    rung.earliest = readPhase(reader, "earliest");
    rung.latest = readPhase(reader, "latest");
    rung.sets = reader.integer("sets", 1, 12);
    rung.repetitions = reader.integer("repetitions", 1, 30);
    rung.restSeconds = reader.number("rest_s", 0, 900);
    rung.loadRatio = reader.number("load_ratio", 0.1, 2);
    rung.loadRule = reader.text("load_rule");
    rung.probeShare = reader.number("probe_share", 0, 1);
    rung.strength = readStrength(reader);
    if (const auto* box = reader.optionalValue("box"))
        rung.box = readBox(*box, reader.at("box"), problem);
    rung.needs = reader.texts("needs");
    rung.cautions = reader.texts("cautions");
    rung.climbs = reader.booleanOr("climbs", false);
    rung.origin = reader.text("origin");
    rung.name = rung.box ? rungNameWith(rung, *rung.box, rung.box->unit) : rung.pattern;
    return rung;
}

Json bandJson(const Band& band, double unit)
{
    return Json::array({roundTo(band.low * unit, 1000), roundTo(band.high * unit, 1000)});
}

Json rungJson(const Rung& rung)
{
    Json json{{"key", rung.key},
              {"name", rung.pattern},
              {"lift", rung.lift},
              {"metric", metricKey(rung.metric)},
              {"range_m", bandJson(rung.range, 1)},
              {"target_ms", bandJson(rung.targetBand, 1000)},
              {"earliest", phaseKey(rung.earliest)},
              {"latest", phaseKey(rung.latest)},
              {"sets", rung.sets},
              {"repetitions", rung.repetitions},
              {"rest_s", rung.restSeconds},
              {"load_ratio", rung.loadRatio},
              {"load_rule", rung.loadRule},
              {"probe_share", rung.probeShare},
              {"strength", strengthKey(rung.strength)}};
    if (rung.box)
        json["box"] = lengthText(*rung.box);
    json["needs"] = rung.needs;
    json["cautions"] = rung.cautions;
    if (rung.climbs)
        json["climbs"] = true;
    json["origin"] = rung.origin;
    return json;
}

} // namespace

EnteredLength readBox(const Json& value, const std::string& place, ReadProblem& problem)
{
    std::optional<EnteredLength> length;
    if (value.is_number())
        length = centimetres(value.get<double>());
    else if (value.is_string())
        length = parseLength(value.get_ref<const std::string&>());
    if (!length || length->metres() < lowestBox || length->metres() > highestBox) {
        problem.note(place, "the height of a box from 2 cm to 120 cm is needed here, like \"36 cm\" or \"14 in\"");
        return centimetres(lowestBox * 100);
    }
    return *length;
}

Ladder readLadder(ObjectReader& reader, ReadProblem& problem)
{
    Ladder ladder;
    ladder.key = reader.text("key");
    ladder.name = reader.text("name");
    ladder.heavy = reader.boolean("heavy");
    ladder.oneSided = reader.boolean("one_sided");
    ladder.order = reader.integer("order", 0, 100);
    ladder.typicalErrorShare = reader.number("typical_error_share", 0.01, 0.5);
    ladder.regions = reader.texts("regions");
    reader.eachObject("rungs", [&](ObjectReader& rung) { ladder.rungs.push_back(readRung(rung, problem)); });
    if (const auto checked = checkLadder(ladder, reader.place()); !checked)
        problem.note(checked.error().place, checked.error().message);
    return ladder;
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
        auto ladder = readLadder(reader, problem);
        if (findLadder(ladders, ladder.key) != nullptr)
            reader.refuse("key", "this ladder stands twice");
        ladders.push_back(std::move(ladder));
    });
    top.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return ladders;
}

Expected<Ladder> parseLadder(std::string_view text)
{
    const auto json = parseJson(text);
    if (!json)
        return tl::unexpected(json.error());
    ReadProblem problem;
    ObjectReader top(*json, "", problem);
    auto ladder = readLadder(top, problem);
    top.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return ladder;
}

Json ladderJson(const Ladder& ladder)
{
    Json json{{"key", ladder.key},        {"name", ladder.name},
              {"heavy", ladder.heavy},    {"one_sided", ladder.oneSided},
              {"order", ladder.order},    {"typical_error_share", ladder.typicalErrorShare},
              {"regions", ladder.regions}};
    json["rungs"] = Json::array();
    for (const auto& rung : ladder.rungs)
        json["rungs"].push_back(rungJson(rung));
    return json;
}

} // namespace fleetrung::season
