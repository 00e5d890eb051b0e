#include "mobile/views/season_pictures.hpp"

#include <algorithm>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/stair_steps.hpp"

namespace fleetrung::views
{
namespace
{

std::vector<plot::StairStay> staysOf(const std::vector<report::Stay>& stays)
{
    std::vector<plot::StairStay> steps;
    for (const auto& stay : stays)
        steps.push_back({.rung = stay.rung, .first = stay.first, .last = stay.last});
    return steps;
}

plot::StairInput stairOf(const report::Ladder& ladder, const report::SeasonReport& report, CivilDate today)
{
    plot::StairInput input;
    input.ladder = ladder.name;
    for (const auto& rung : ladder.rungs)
        input.rungs.push_back(shortName(rung.name, ladder.name));
    input.planned = staysOf(ladder.planned);
    input.taken = staysOf(ladder.taken);
    input.season = spanOf(report, today);
    return input;
}

/// The day's decision on the ladder, and what was answered.
void putDecision(LadderShown& shown, const season::SeasonSetup& setup,
                 const std::vector<logbook::DecisionRecord>& decisions, CivilDate today)
{
    for (const auto& record : decisions) {
        if (record.decision.ladder != shown.key || record.decision.day != today)
            continue;
        shown.decision = record.decision;
        shown.rungName = rungName(setup, shown.key, record.decision.from);
        shown.nextName = rungName(setup, shown.key, record.decision.to);
        shown.answer = answerOf(setup, record);
        shown.cautions = cautionTexts(record.decision.cautions);
    }
}

/// When the plan steps next, and when it must.
void putNext(LadderShown& shown, const season::SeasonPlan& plan, CivilDate today)
{
    const auto* ladder = season::findLadderPlan(plan, shown.key);
    if (!ladder)
        return;
    const auto* here = season::rungOn(*ladder, today);
    const auto next = std::ranges::find_if(ladder->rungs, [&](const season::PlannedRung& rung) {
        return rung.from > today && (!here || rung.rung != here->rung);
    });
    if (next == ladder->rungs.end())
        return;
    shown.nextWeek = season::weekOf(plan, next->from);
    if (here && here->latest >= next->from)
        shown.latestWeek = season::weekOf(plan, here->latest + std::chrono::days{1});
}

} // namespace

plot::SeasonSpan spanOf(const report::SeasonReport& report, CivilDate today)
{
    plot::SeasonSpan span{.first = report.first, .last = report.last, .today = today, .phases = {}, .races = {}};
    for (const auto& phase : report.phases)
        span.phases.push_back({.name = phase.name, .first = phase.first, .last = phase.last});
    for (const auto& race : report.competitions)
        span.races.push_back({.day = race.day, .name = race.name, .main = race.main});
    return span;
}

std::string shortName(const std::string& rung, const std::string& ladder)
{
    const auto cut = [&rung](std::size_t from, std::size_t length) {
        std::string rest = rung;
        rest.erase(from, length);
        return rest;
    };
    const auto lower = [](std::string text) {
        std::ranges::transform(text, text.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? char(c + 32) : c; });
        return text;
    };
    const std::size_t at = lower(rung).find(lower(ladder));
    if (at == std::string::npos)
        return rung;
    std::string rest = cut(at, ladder.size());
    const auto isEdge = [](char c) { return c == ' ' || c == ','; };
    while (!rest.empty() && isEdge(rest.front()))
        rest.erase(0, 1);
    while (!rest.empty() && isEdge(rest.back()))
        rest.pop_back();
    if (const auto gap = rest.find("  "); gap != std::string::npos)
        rest.erase(gap, 1);
    if (rest.empty())
        return rung;
    if (rest.front() >= 'a' && rest.front() <= 'z')
        rest.front() = char(rest.front() - 32);
    return rest;
}

LadderPageData ladderPage(const logbook::DayView& view, const report::SeasonReport& report,
                          const std::vector<logbook::DecisionRecord>& decisions, CivilDate today)
{
    LadderPageData data;
    data.today = today;
    data.week = season::weekOf(view.plan, today);
    data.weeks = season::weekCount(view.plan);
    if (const auto* phase = season::phaseOn(view.plan.phases, today))
        data.phase = engineText(std::string(season::phaseName(phase->kind)));
    for (const auto& race : report.competitions)
        if (race.main && (!data.daysToMain || *data.daysToMain < 0))
            data.daysToMain = daysBetween(today, race.day);
    for (const auto& ladder : report.ladders) {
        LadderShown shown;
        shown.key = ladder.key;
        shown.name = ladder.name;
        for (const auto& rung : ladder.rungs)
            shown.rungKeys.push_back(rung.key);
        shown.stair = stairOf(ladder, report, today);
        putDecision(shown, view.plan.setup, decisions, today);
        putNext(shown, view.plan, today);
        shown.steps = stairSteps(ladder, view.plan, decisions, today);
        data.ladders.push_back(std::move(shown));
    }
    return data;
}

} // namespace fleetrung::views
