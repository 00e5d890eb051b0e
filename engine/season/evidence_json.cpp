#include <array>
#include <utility>

#include "engine/base/numbers.hpp"
#include "engine/season/evidence_reader.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::array<std::string_view, 3> sideKeys{"both", "left", "right"};
constexpr std::array<std::string_view, 3> sourceKeys{"probe", "first-work-set", "typed"};

constexpr std::array<std::pair<std::string_view, std::optional<Measured> SessionEvidence::*>, 6> measures{
    {{"time_to_peak_s", &SessionEvidence::timeToPeak},
     {"mean_velocity_mps", &SessionEvidence::meanVelocity},
     {"peak_velocity_mps", &SessionEvidence::peakVelocity},
     {"range_m", &SessionEvidence::range},
     {"estimated_maximum_kg", &SessionEvidence::estimatedMaximum},
     {"reactive_strength_mps", &SessionEvidence::reactiveStrength}}};

template <class Enumeration, std::size_t n>
Enumeration readKey(ObjectReader& reader, std::string_view key, const std::array<std::string_view, n>& keys)
{
    const auto written = reader.text(key);
    for (std::size_t i = 0; i < n; ++i)
        if (keys[i] == written)
            return static_cast<Enumeration>(i);
    reader.refuse(key, "\"" + written + "\" is not known here");
    return Enumeration{};
}

Json measuredJson(const Measured& measured)
{
    return {{"value", measured.value}, {"uncertainty", measured.uncertainty}};
}

std::optional<Measured> readMeasured(ObjectReader& reader, std::string_view key)
{
    std::optional<Measured> measured;
    reader.object(key, [&](ObjectReader& item) {
        const double value = item.number("value", -2000, 2000);
        measured = Measured{value, item.number("uncertainty", 0, 2000)};
    });
    return measured;
}

Json loadJson(const LoadPoint& point)
{
    Json json{{"load_kg", point.loadKg}};
    if (point.timeToPeak)
        json["time_to_peak_s"] = measuredJson(*point.timeToPeak);
    if (point.velocity)
        json["velocity_mps"] = measuredJson(*point.velocity);
    return json;
}

} // namespace

Json evidenceJson(const SessionEvidence& evidence)
{
    Json json{{"day", dateText(evidence.day)},
              {"ladder", evidence.ladder},
              {"rung", evidence.rung},
              {"side", sideKeys[static_cast<std::size_t>(evidence.side)]},
              {"source", sourceKeys[static_cast<std::size_t>(evidence.source)]},
              {"load_kg", evidence.loadKg}};
    for (const auto& [key, member] : measures)
        if (const auto& measured = evidence.*member)
            json[std::string(key)] = measuredJson(*measured);
    json["valid_share"] = evidence.validShare;
    if (!evidence.loads.empty())
        json["loads"] = Json::array();
    for (const auto& point : evidence.loads)
        json["loads"].push_back(loadJson(point));
    return json;
}

SessionEvidence readEvidence(ObjectReader& reader)
{
    SessionEvidence evidence;
    evidence.day = reader.date("day");
    evidence.ladder = reader.text("ladder");
    evidence.rung = reader.text("rung");
    evidence.side = readKey<Side>(reader, "side", sideKeys);
    evidence.source = readKey<EvidenceSource>(reader, "source", sourceKeys);
    evidence.loadKg = reader.number("load_kg", 0, 2000);
    for (const auto& [key, member] : measures)
        evidence.*member = readMeasured(reader, key);
    evidence.validShare = reader.number("valid_share", 0, 1);
    if (reader.has("loads"))
        reader.eachObject("loads", [&](ObjectReader& item) {
            evidence.loads.push_back({item.number("load_kg", 0, 2000), readMeasured(item, "time_to_peak_s"),
                                      readMeasured(item, "velocity_mps")});
        });
    return evidence;
}

Expected<SessionEvidence> evidenceFromJson(const Json& json)
{
    ReadProblem problem;
    ObjectReader reader(json, "", problem);
    auto evidence = readEvidence(reader);
    reader.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return evidence;
}

} // namespace fleetrung::season
