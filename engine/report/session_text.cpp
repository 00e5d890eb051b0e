#include "engine/report/session_text.hpp"

#include <algorithm>
#include <array>

#include "engine/base/numbers.hpp"
#include "engine/report/words.hpp"

namespace fleetrung::report
{
namespace
{

constexpr std::string_view onlyPlanned = "Planned; the day's evidence decides rung and load.";

std::string rungName(const season::SeasonData& data, std::string_view ladderKey, std::string_view rungKey)
{
    const auto* ladder = season::findLadder(data.ladders, ladderKey);
    const auto* rung = ladder == nullptr ? nullptr : ladder->find(rungKey);
    return rung == nullptr ? std::string(rungKey) : rung->name;
}

bool sameSet(const season::PlannedSet& a, const season::PlannedSet& b)
{
    return a.repetitions == b.repetitions && a.loadKg == b.loadKg;
}

std::string loadText(const std::optional<double>& loadKg)
{
    if (!loadKg)
        return "";
    return *loadKg > 0 ? " at " + shortestText(*loadKg) + " kg" : " at body mass";
}

/// "4 x 5 at 120 kg"; sets that differ one after the other: "1 x 5 at 100 kg, 2 x 3 at 110 kg".
std::string setsText(const std::vector<season::PlannedSet>& sets)
{
    std::string text;
    for (auto set = sets.begin(); set != sets.end();) {
        const auto next = std::find_if_not(set, sets.end(), [&](const auto& other) { return sameSet(*set, other); });
        text += (text.empty() ? "" : ", ") + integerText(next - set) + " x " + integerText(set->repetitions) +
                loadText(set->loadKg);
        set = next;
    }
    return text;
}

std::string liftText(const season::PlannedLift& lift, const season::SeasonData& data)
{
    std::string text = rungName(data, lift.ladder, lift.rung) + ": " + setsText(lift.work);
    if (lift.work.empty())
        text += "no work sets";
    if (lift.probe)
        text += ", after a probe set of " + integerText(lift.probe->repetitions) + loadText(lift.probe->loadKg);
    text += '.';
    if (lift.maintenance)
        text += " Then " + inSentence(rungName(data, lift.ladder, lift.maintenance->rung)) + ": " +
                setsText(lift.maintenance->sets) + ", to keep its strength.";
    if (!lift.note.empty())
        text += ' ' + lift.note;
    return text;
}

std::vector<std::string> cautionKeys(const season::SessionPlan& session)
{
    std::vector<std::string> keys;
    for (const auto& lift : session.lifts)
        for (const auto& key : lift.cautions)
            if (std::find(keys.begin(), keys.end(), key) == keys.end())
                keys.push_back(key);
    return keys;
}

} // namespace

std::string sessionSummary(const season::SessionPlan& session, const season::SeasonData& data)
{
    const auto& lifts = session.lifts;
    const bool primer = std::all_of(lifts.begin(), lifts.end(), [](const auto& lift) { return lift.primer; });
    std::string text = primer ? "Primer" : "Lifts";
    std::string_view between = ": "; // then semicolons: some names hold commas
    for (const auto& lift : lifts) {
        text.append(between).append(inSentence(rungName(data, lift.ladder, lift.rung)));
        between = "; ";
    }
    return text;
}

std::string sessionDescription(const season::SeasonPlan& plan, const season::SessionPlan& session,
                               const season::SeasonData& data)
{
    std::string text = capitalised(season::phaseName(session.phase)) + ", week " +
                       integerText(season::weekOf(plan, session.day)) + " of " + integerText(season::weekCount(plan)) +
                       ".";
    if (session.sprintsForbidden)
        text += " No sprints.";
    else if (session.sprintDay)
        text += " Sprints first, then the lifts.";
    for (const auto& lift : session.lifts)
        text += '\n' + liftText(lift, data);
    for (const auto& note : session.notes)
        text += '\n' + note;
    text.append("\n").append(onlyPlanned);
    for (const auto& key : cautionKeys(session))
        if (const auto* caution = season::findCaution(data, key))
            text += '\n' + caution->title + ": " + caution->text;
    return text;
}

} // namespace fleetrung::report
