#include "engine/report/calendar_event.hpp"

#include <algorithm>
#include <array>
#include <map>

#include "engine/base/numbers.hpp"
#include "engine/report/content_lines.hpp"
#include "engine/report/session_text.hpp"

namespace fleetrung::report
{
namespace
{

using std::chrono::days;

std::string uidOf(const Identifier& season, std::string_view kind, std::string_view key)
{
    return identifierText(
        hashIdentifier(std::array<std::string_view, 4>{"calendar event", identifierText(season), kind, key}));
}

std::string withText(std::string_view property, std::string_view text)
{
    return std::string(property) + ':' + escapedText(text);
}

std::string wholeDay(std::string_view property, CivilDate day)
{
    return std::string(property) + ";VALUE=DATE:" + calendarDate(day);
}

/// What every event says of itself, in the order in which it is written.
struct Saying {
    std::string summary;
    std::string description;
    std::string_view category;
    bool takesTime; ///< OPAQUE: the time is not free for anything else
};

void append(std::vector<std::string>& lines, const Saying& saying)
{
    lines.push_back(withText("SUMMARY", saying.summary));
    lines.push_back(withText("DESCRIPTION", saying.description));
    lines.push_back(withText("CATEGORIES", saying.category));
    lines.emplace_back("STATUS:CONFIRMED");
    lines.emplace_back(saying.takesTime ? "TRANSP:OPAQUE" : "TRANSP:TRANSPARENT");
}

CalendarEvent wholeDays(std::string uid, CivilDate first, CivilDate end, const Saying& saying)
{
    CalendarEvent event{std::move(uid), first, end, {wholeDay("DTSTART", first), wholeDay("DTEND", end)}};
    append(event.content, saying);
    return event;
}

/// The states that still hold on that day. A ladder planned on another rung by then has none: the plan's rung is
/// shown, and its load is not known yet.
std::vector<season::LadderState> statesOn(const CalendarSource& source, CivilDate day)
{
    std::vector<season::LadderState> states;
    for (const auto& state : source.states) {
        const auto* ladder = season::findLadderPlan(source.plan, state.ladder);
        const auto* planned = ladder == nullptr ? nullptr : season::rungOn(*ladder, day);
        if (planned != nullptr && !state.path.empty() && planned->rung == state.rung())
            states.push_back(state);
    }
    return states;
}

CalendarEvent sessionEvent(const CalendarSource& source, const season::SessionPlan& session,
                           const season::SeasonData& data)
{
    const auto day = session.day;
    auto uid = uidOf(source.season, "session", dateText(day));
    Saying saying{sessionSummary(session, data), sessionDescription(source.plan, session, data), "strength", false};
    if (!source.sessionStart)
        return wholeDays(std::move(uid), day, day + days(1), saying); // says which day, not that the day is taken
    const auto start = *source.sessionStart;
    const auto end = start + std::chrono::minutes(source.plan.setup.sessionMinutes);
    CalendarEvent event{std::move(uid), day, day + days(1), {}};
    event.content = {"DTSTART:" + floatingTime(day, start), "DTEND:" + floatingTime(day, end)};
    saying.takesTime = true;
    append(event.content, saying);
    return event;
}

void addSessions(std::vector<CalendarEvent>& events, const CalendarSource& source, const season::SeasonData& data)
{
    for (auto day = source.plan.setup.start; day <= source.plan.end; day += days(1)) {
        if (!season::isLiftingDay(source.plan, day))
            continue;
        const auto session = season::planSession(source.plan, statesOn(source, day), {}, day, data);
        if (!session.lifts.empty())
            events.push_back(sessionEvent(source, session, data));
    }
}

/// A competition is known by its name, and by its place among those of the same name: its date may be moved.
void addCompetitions(std::vector<CalendarEvent>& events, const CalendarSource& source)
{
    auto competitions = source.plan.setup.competitions;
    std::stable_sort(competitions.begin(), competitions.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    std::map<std::string, int> sameName;
    for (const auto& competition : competitions) {
        const auto key = integerText(++sameName[competition.name]) + ' ' + competition.name;
        const std::string priority(1, static_cast<char>('A' + static_cast<int>(competition.priority)));
        events.push_back(wholeDays(uidOf(source.season, "competition", key), competition.date,
                                   competition.date + days(1),
                                   {competition.name,
                                    "Competition of priority " + priority +
                                        (competition.main ? ". The season is planned backwards from it." : "."),
                                    "competition", true}));
    }
}

void addPhases(std::vector<CalendarEvent>& events, const CalendarSource& source)
{
    std::map<std::string, int> sameKind;
    const auto& plan = source.plan;
    for (const auto& span : plan.phases) {
        const auto name = integerText(span.macrocycle) + ' ' + std::string(season::phaseKey(span.kind));
        const auto key = integerText(++sameKind[name]) + ' ' + name;
        events.push_back(wholeDays(uidOf(source.season, "phase", key), span.from, span.to + days(1),
                                   {"Phase: " + std::string(season::phaseName(span.kind)),
                                    "Week " + integerText(season::weekOf(plan, span.from)) + " to " +
                                        integerText(season::weekOf(plan, span.to)) + " of " +
                                        integerText(season::weekCount(plan)) + ".",
                                    "phase", false}));
    }
}

} // namespace

std::vector<CalendarEvent> plannedEvents(const CalendarSource& source, const season::SeasonData& data)
{
    std::vector<CalendarEvent> events;
    addPhases(events, source);
    addCompetitions(events, source);
    addSessions(events, source, data);
    return events;
}

Identifier calendarSeason(const season::SeasonSetup& setup)
{
    std::string year;
    for (const auto& competition : setup.competitions)
        if (competition.main)
            year = std::max(year, dateText(competition.date).substr(0, 4));
    return hashIdentifier(
        std::array<std::string_view, 4>{"calendar of a season", setup.athlete.name, setup.name, year});
}

} // namespace fleetrung::report
