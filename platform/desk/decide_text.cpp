#include "engine/base/numbers.hpp"
#include "platform/desk/decide_output.hpp"
#include "platform/desk/text_table.hpp"

namespace fleetrung::desk
{
namespace
{

const season::Ladder& ladderOf(const season::SeasonData& data, const std::string& key)
{
    static const season::Ladder none;
    const auto* ladder = season::findLadder(data.ladders, key);
    return ladder == nullptr ? none : *ladder;
}

std::string rungName(const season::SeasonData& data, const std::string& ladder, const std::string& rung)
{
    const auto* found = ladderOf(data, ladder).find(rung);
    return found == nullptr ? rung : found->name;
}

std::string evidenceText(const season::EvidenceLine& line)
{
    std::string text = line.name + " " + shortestText(line.value);
    if (line.uncertainty > 0)
        text += " +- " + shortestText(line.uncertainty);
    if (!line.unit.empty())
        text += " " + line.unit;
    if (!line.allowed.empty())
        text += " (" + line.allowed + (line.gates ? line.met ? ": met" : ": not met" : "") + ")";
    return text;
}

std::string decisionText(const season::Decision& decision, const season::SeasonData& data)
{
    const auto& ladder = ladderOf(data, decision.ladder);
    std::string text =
        (ladder.name.empty() ? decision.ladder : ladder.name) + ": " + std::string(season::decisionName(decision.kind));
    if (decision.from != decision.to)
        text += " from " + rungName(data, decision.ladder, decision.from) + " to " +
                rungName(data, decision.ladder, decision.to);
    else
        text += ", " + rungName(data, decision.ladder, decision.from);
    text += " [" + decision.rule + "]\n  " + decision.reason + "\n";
    for (const auto& line : decision.evidence)
        text += "    " + evidenceText(line) + "\n";
    for (const auto& key : decision.cautions)
        if (const auto* caution = season::findCaution(data, key))
            text += "  Caution: " + caution->title + ". " + caution->text + "\n";
    return text;
}

std::string setsText(const std::vector<season::PlannedSet>& sets)
{
    return sets.empty()
               ? std::string()
               : integerText(static_cast<std::int64_t>(sets.size())) + " x " + integerText(sets.front().repetitions);
}

std::string loadText(const std::optional<double>& kg)
{
    return kg ? shortestText(*kg) : std::string();
}

std::string sessionTable(const season::SessionPlan& session, const season::SeasonData& data)
{
    using enum TextTable::Align;
    TextTable table;
    table.addColumn("lift", "", Left);
    table.addColumn("warm-up", "kg", Left);
    table.addColumn("probe", "kg");
    table.addColumn("work", "");
    table.addColumn("load", "kg");
    table.addColumn("rest", "s");
    table.addColumn("set stop", "%");
    table.addColumn("box", "cm");
    table.addColumn("contacts", "");
    for (const auto& lift : session.lifts) {
        std::string warmUp;
        for (const auto& set : lift.warmUp)
            warmUp += (warmUp.empty() ? "" : ", ") + (set.loadKg ? shortestText(*set.loadKg) : "?") + " x " +
                      integerText(set.repetitions);
        table.addRow({rungName(data, lift.ladder, lift.rung), warmUp,
                      lift.probe ? loadText(lift.probe->loadKg) : std::string(), setsText(lift.work),
                      lift.work.empty() ? std::string() : loadText(lift.work.front().loadKg),
                      fixedText(lift.restSeconds, 0), fixedText(100 * lift.setStop, 0),
                      lift.boxHeight ? shortestText(roundTo(100 * *lift.boxHeight, 10)) : std::string(),
                      lift.contactLimit > 0 ? integerText(lift.contacts) + " of " + integerText(lift.contactLimit)
                                            : std::string()});
    }
    return table.text();
}

std::string liftNotes(const season::PlannedLift& lift, bool why, const season::SeasonData& data)
{
    const auto name = rungName(data, lift.ladder, lift.rung) + ": ";
    std::string text;
    if (!lift.note.empty())
        text += name + lift.note + "\n";
    if (lift.maintenance)
        text += name + "after it " + setsText(lift.maintenance->sets) + " of " +
                rungName(data, lift.ladder, lift.maintenance->rung) + ". " + lift.maintenance->reason + "\n";
    if (why)
        for (const auto& answer : lift.why)
            text += name + "why this " + answer.about + "? " + answer.text + "\n";
    return text;
}

} // namespace

std::string decidedText(const DecidedDay& day, bool why, const season::SeasonData& data)
{
    const auto& setup = day.input.plan.setup;
    std::string text = dateText(day.session.day);
    for (const auto& name : {setup.athlete.name, setup.name, std::string(season::phaseName(day.session.phase))})
        text += name.empty() ? "" : ", " + name;
    text += "\n\n";
    for (const auto& decision : day.decisions)
        text += decisionText(decision, data);
    text += "\n";
    if (day.session.sprintsForbidden)
        text += "No sprints today.\n";
    else if (day.session.sprintDay)
        text += "Sprints first, the lifts after.\n";
    if (!day.session.lifts.empty())
        text += sessionTable(day.session, data);
    for (const auto& lift : day.session.lifts)
        text += liftNotes(lift, why, data);
    for (const auto& note : day.session.notes)
        text += note + "\n";
    return text;
}

Json decidedJson(const DecidedDay& day, const season::SeasonData& data)
{
    Json json{{"day", dateText(day.session.day)}};
    json["decisions"] = Json::array();
    for (const auto& decision : day.decisions)
        json["decisions"].push_back(season::decisionJson(decision));
    json["session"] = season::sessionJson(day.session, data);
    return json;
}

} // namespace fleetrung::desk
