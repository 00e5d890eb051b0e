#include <array>
#include <utility>

#include "engine/base/numbers.hpp"
#include "engine/season/evidence.hpp"
#include "engine/season/object_reader.hpp"

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
            json[std::string(key)] = {{"value", measured->value}, {"uncertainty", measured->uncertainty}};
    json["valid_share"] = evidence.validShare;
    return json;
}

Expected<SessionEvidence> evidenceFromJson(const Json& json)
{
    ReadProblem problem;
    ObjectReader reader(json, "", problem);
    SessionEvidence evidence;
    evidence.day = reader.date("day");
    evidence.ladder = reader.text("ladder");
    evidence.rung = reader.text("rung");
    evidence.side = readKey<Side>(reader, "side", sideKeys);
    evidence.source = readKey<EvidenceSource>(reader, "source", sourceKeys);
    evidence.loadKg = reader.number("load_kg", 0, 2000);
    for (const auto& [key, member] : measures)
        reader.object(key, [&, wanted = member](ObjectReader& item) {
            const double value = item.number("value", -2000, 2000);
            evidence.*wanted = Measured{value, item.number("uncertainty", 0, 2000)};
        });
    evidence.validShare = reader.number("valid_share", 0, 1);
    reader.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return evidence;
}

} // namespace fleetrung::season
