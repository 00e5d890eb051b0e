#include "engine/base/numbers.hpp"
#include "tests/seasons/checks.hpp"

namespace fleetrung::seasons
{
namespace
{

std::string decisionText(const Decision& said, const Decision& lived)
{
    std::string text = "    " + said.ladder + ": " + said.rule;
    if (said.from != said.to)
        text += ", " + said.from + " -> " + said.to;
    text += "  (" + said.reason + ")";
    if (said.loadFactor < 1 || said.setFactor < 1)
        text += "  load x " + fixedText(said.loadFactor, 2) + ", sets x " + fixedText(said.setFactor, 2);
    if (lived.to != said.to)
        text += "  NOT FOLLOWED";
    return text + '\n';
}

std::string liftText(const season::PlannedLift& lift)
{
    std::string text = "      " + lift.ladder + " " + lift.rung + (lift.primer ? ", primer" : "") + ":";
    if (!lift.work.empty()) {
        text += " " + integerText(static_cast<std::int64_t>(lift.work.size())) + " x " +
                integerText(lift.work.front().repetitions);
        if (lift.work.front().loadKg)
            text += " x " + fixedText(*lift.work.front().loadKg, 1) + " kg";
    }
    if (lift.probe && lift.probe->loadKg)
        text += ", probe " + fixedText(*lift.probe->loadKg, 1) + " kg";
    if (lift.contacts > 0)
        text += ", " + integerText(lift.contacts) + " contacts";
    if (lift.maintenance)
        text += ", maintenance of " + lift.maintenance->rung;
    return text + '\n';
}

std::string dayText(const Day& day)
{
    std::string text = dateText(day.date) + "  pain " + integerText(day.wellness.pain.value_or(0)) + " " +
                       day.wellness.painRegion + (day.wellness.refused ? "  refuses" : "") + "\n";
    for (std::size_t i = 0; i < day.decisions.size(); ++i) {
        text += decisionText(day.decisions[i], day.lived[i]);
        const auto gain = day.trueGain.find(day.decisions[i].ladder);
        if (day.decisions[i].rule == "step-for-evidence" && gain != day.trueGain.end())
            text += "      true gain since entry: " + fixedText(gain->second, 2) + " typical errors\n";
    }
    for (const auto& lift : day.session.lifts)
        text += liftText(lift);
    for (const auto& note : day.session.notes)
        text += "      " + note + '\n';
    return text;
}

} // namespace

std::string seasonText(const Played& played)
{
    std::string text = "Season " + integerText(static_cast<std::int64_t>(played.athlete.seed)) + "\n" +
                       jsonText(setupJson(played.athlete.setup)) + "\n\n" + planText(played.first) + "\n";
    for (const auto& absence : played.athlete.absences)
        text += absence.reason + " " + dateText(absence.from) + " to " + dateText(absence.to) + '\n';
    for (const auto& day : played.days)
        text += dayText(day);
    for (const auto& breach : judge(played).breaches)
        text += "BREACH (" + breach.check + ") " + dateText(breach.day) + ": " + breach.what + '\n';
    return text;
}

} // namespace fleetrung::seasons
