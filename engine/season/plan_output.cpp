#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/season/plan.hpp"

namespace fleetrung::season
{
namespace
{

Json bandJson(const Band& band, double unit)
{
    return Json::array({roundTo(band.low * unit, 1000), roundTo(band.high * unit, 1000)});
}

Json rungJson(const PlannedRung& planned, const Rung& rung, const SeasonSetup& setup)
{
    return {{"rung", rung.key},
            {"name", rungName(rung, setup)},
            {"lift", rung.lift},
            {"from", dateText(planned.from)},
            {"to", dateText(planned.to)},
            {"latest", dateText(planned.latest)},
            {"macrocycle", planned.macrocycle + 1},
            {"taken", planned.taken},
            {"target_ms", bandJson(rung.targetBand, 1000)},
            {"range_m", bandJson(rung.range, 1)},
            {"sets", rung.sets},
            {"repetitions", rung.repetitions}};
}

Json ladderJson(const LadderPlan& plan, const Ladder& ladder, const SeasonSetup& setup)
{
    Json json{{"ladder", ladder.key}, {"name", ladder.name}};
    json["rungs"] = Json::array();
    for (const auto& planned : plan.rungs)
        json["rungs"].push_back(rungJson(planned, *ladder.find(planned.rung), setup));
    json["not_planned"] = Json::array();
    for (const auto& omitted : plan.omitted)
        json["not_planned"].push_back({{"rung", omitted.rung}, {"reason", omitted.reason}});
    return json;
}

std::string priorityText(Priority priority)
{
    return std::string(1, static_cast<char>('A' + static_cast<int>(priority)));
}

std::string padded(std::string text, std::size_t width)
{
    text.resize(std::max(text.size(), width), ' ');
    return text;
}

std::string bandText(const Band& band)
{
    return fixedText(band.low * 1000, 0) + "-" + fixedText(band.high * 1000, 0) + " ms";
}

constexpr std::size_t nameWidth = 40;
constexpr std::size_t dateWidth = 12;

std::string phaseTable(const SeasonPlan& plan)
{
    std::string text = padded("Phase", nameWidth) + padded("from", dateWidth) + padded("to", dateWidth) +
                       padded("days", 6) + "weeks\n";
    for (const auto& span : plan.phases)
        text += padded(std::string(phaseName(span.kind)), nameWidth) + padded(dateText(span.from), dateWidth) +
                padded(dateText(span.to), dateWidth) + padded(integerText(daysBetween(span.from, span.to) + 1), 6) +
                integerText(weekOf(plan, span.from)) + "-" + integerText(weekOf(plan, span.to)) + "\n";
    return text;
}

std::string stairTable(const LadderPlan& plan, const Ladder& ladder, const SeasonSetup& setup)
{
    std::string text = "\n" + padded(ladder.name + " ladder", nameWidth) + padded("from", dateWidth) +
                       padded("to", dateWidth) + padded("latest", dateWidth) + "target band\n";
    for (const auto& planned : plan.rungs) {
        const auto& rung = *ladder.find(planned.rung);
        text += padded("  " + rungName(rung, setup), nameWidth) + padded(dateText(planned.from), dateWidth) +
                padded(dateText(planned.to), dateWidth) +
                padded(planned.taken ? "taken" : dateText(planned.latest), dateWidth) + bandText(rung.targetBand) +
                "\n";
    }
    return text;
}

/// What must be said of the whole plan: always the first start and the premise, the guardian's word under 18, and what
/// the planned rungs ask for.
std::vector<const Caution*> cautionsOf(const SeasonPlan& plan, const SeasonData& data)
{
    std::vector<std::string> keys{"first-start", "premise"};
    constexpr int adult = 18;
    if (ageOn(plan.setup.athlete, plan.setup.start).value_or(adult) < adult)
        keys.emplace_back("young");
    for (const auto& laid : plan.ladders)
        for (const auto& planned : laid.rungs)
            if (const auto* rung = ladderOf(plan.setup, data, laid.ladder)->find(planned.rung))
                keys.insert(keys.end(), rung->cautions.begin(), rung->cautions.end());
    std::vector<const Caution*> cautions;
    for (const auto& key : keys)
        if (const auto* caution = findCaution(data, key);
            caution != nullptr && std::find(cautions.begin(), cautions.end(), caution) == cautions.end())
            cautions.push_back(caution);
    return cautions;
}

} // namespace

Json planJson(const SeasonPlan& plan, const SeasonData& data)
{
    Json json{{"plan", identifierText(plan.id)},
              {"season", plan.setup.name},
              {"start", dateText(plan.setup.start)},
              {"end", dateText(plan.end)},
              {"weeks", weekCount(plan)}};
    json["competitions"] = setupJson(plan.setup)["competitions"];
    json["phases"] = Json::array();
    for (const auto& span : plan.phases)
        json["phases"].push_back({{"phase", phaseKey(span.kind)},
                                  {"from", dateText(span.from)},
                                  {"to", dateText(span.to)},
                                  {"days", daysBetween(span.from, span.to) + 1},
                                  {"macrocycle", span.macrocycle + 1}});
    json["ladders"] = Json::array();
    for (const auto& ladder : plan.ladders)
        json["ladders"].push_back(ladderJson(ladder, *ladderOf(plan.setup, data, ladder.ladder), plan.setup));
    json["notes"] = plan.notes;
    json["cautions"] = Json::array();
    for (const auto* caution : cautionsOf(plan, data))
        json["cautions"].push_back({{"title", caution->title}, {"text", caution->text}});
    return json;
}

std::string planText(const SeasonPlan& plan, const SeasonData& data)
{
    std::string text = plan.setup.name + ": " + dateText(plan.setup.start) + " to " + dateText(plan.end) + ", " +
                       integerText(weekCount(plan)) + " weeks\n\n" + phaseTable(plan);
    for (const auto& ladder : plan.ladders)
        text += stairTable(ladder, *ladderOf(plan.setup, data, ladder.ladder), plan.setup);
    text += "\nCompetitions\n";
    for (const auto& competition : plan.setup.competitions)
        text += "  " + dateText(competition.date) + "  " + priorityText(competition.priority) +
                (competition.main ? "  main  " : "        ") + competition.name + "\n";
    if (!plan.notes.empty())
        text += "\nNotes\n";
    for (const auto& note : plan.notes)
        text += "  " + note + "\n";
    text += "\nCautions\n";
    for (const auto* caution : cautionsOf(plan, data))
        text += "  " + caution->title + ": " + caution->text + "\n";
    return text;
}

} // namespace fleetrung::season
