#include "engine/season/decision.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/season/lines.hpp"
#include "engine/season/object_reader.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::array<std::string_view, 5> kindKeys{"step", "hold", "step-back", "ease", "rest"};
constexpr std::array<std::string_view, 5> kindNames{"step", "hold", "step back", "ease", "rest"};

} // namespace

std::string_view decisionKey(DecisionKind kind)
{
    return kindKeys[static_cast<std::size_t>(kind)];
}

std::string_view decisionName(DecisionKind kind)
{
    return kindNames[static_cast<std::size_t>(kind)];
}

std::string_view ruleTitle(std::string_view rule)
{
    const auto* found = findRule(standardSeasonData().rules, rule);
    return found == nullptr ? std::string_view{} : std::string_view(found->title);
}

LadderState afterDecision(LadderState state, const Decision& decision)
{
    const bool moves = decision.kind == DecisionKind::Step || decision.kind == DecisionKind::StepBack ||
                       decision.rule == "new-macrocycle"; // a new stay, though it may be on the same rung
    if (!moves || decision.ladder != state.ladder)
        return state;
    state.path.push_back({decision.to, decision.day});
    state.probeLoadKg.reset();
    return state;
}

EvidenceLine readEvidenceLine(ObjectReader& reader)
{
    EvidenceLine line;
    line.name = reader.text("name");
    line.value = reader.number("value", -1e6, 1e6);
    line.uncertainty = reader.number("uncertainty", 0, 1e6);
    line.unit = reader.textOr("unit", "");
    line.allowed = reader.textOr("allowed", "");
    line.met = reader.boolean("met");
    line.gates = reader.boolean("gates");
    return line;
}

Json evidenceLineJson(const EvidenceLine& line)
{
    return {{"name", line.name},  {"value", line.value},     {"uncertainty", line.uncertainty},
            {"unit", line.unit},  {"allowed", line.allowed}, {"met", line.met},
            {"gates", line.gates}};
}

Json decisionJson(const Decision& decision)
{
    Json json{{"id", identifierText(decision.id)},
              {"day", dateText(decision.day)},
              {"ladder", decision.ladder},
              {"rule", decision.rule},
              {"kind", decisionKey(decision.kind)},
              {"from", decision.from},
              {"to", decision.to}};
    json["evidence"] = Json::array();
    for (const auto& line : decision.evidence)
        json["evidence"].push_back(evidenceLineJson(line));
    json["reason"] = decision.reason;
    json["load_factor"] = decision.loadFactor;
    json["set_factor"] = decision.setFactor;
    json["asks"] = decision.asks;
    json["primer_allowed"] = decision.primerAllowed;
    json["no_sprints"] = decision.noSprints;
    json["pain_region"] = decision.painRegion;
    json["strength_lost"] = decision.strengthLost;
    json["speed_not_following"] = decision.speedNotFollowing;
    json["cautions"] = decision.cautions;
    return json;
}

Expected<Decision> decisionFromJson(const Json& json)
{
    ReadProblem problem;
    ObjectReader reader(json, "", problem);
    Decision decision;
    const auto id = parseIdentifier(reader.text("id"));
    if (!id)
        reader.refuse("id", "32 hexadecimal digits are needed here");
    decision.id = id.value_or(Identifier{});
    decision.day = reader.date("day");
    decision.ladder = reader.text("ladder");
    decision.rule = reader.text("rule");
    const auto kind = std::find(kindKeys.begin(), kindKeys.end(), reader.text("kind"));
    if (kind == kindKeys.end())
        reader.refuse("kind", "one of step, hold, step-back, ease, rest is needed here");
    else
        decision.kind = static_cast<DecisionKind>(kind - kindKeys.begin());
    decision.from = reader.text("from");
    decision.to = reader.text("to");
    reader.eachObject("evidence", [&](ObjectReader& item) { decision.evidence.push_back(readEvidenceLine(item)); });
    decision.reason = reader.textOr("reason", "");
    decision.loadFactor = reader.number("load_factor", 0, 2);
    decision.setFactor = reader.number("set_factor", 0, 2);
    decision.asks = reader.boolean("asks");
    decision.primerAllowed = reader.boolean("primer_allowed");
    decision.noSprints = reader.booleanOr("no_sprints", false); // decisions of earlier versions have none of these
    decision.painRegion = reader.textOr("pain_region", "");
    decision.strengthLost = reader.booleanOr("strength_lost", false);
    decision.speedNotFollowing = reader.booleanOr("speed_not_following", false);
    decision.cautions = reader.texts("cautions");
    reader.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return decision;
}

} // namespace fleetrung::season
