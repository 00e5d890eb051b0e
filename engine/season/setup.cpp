#include "engine/season/setup.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/season/object_reader.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::array<std::string_view, 7> dayNames{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};
constexpr std::array<std::string_view, 4> equipmentKeys{"bar", "rack", "pins", "blocks"};
constexpr int adult = 18;
constexpr int longestSeason = 800; // days
constexpr double centimetre = 0.01;

std::vector<int> readDays(ObjectReader& reader, std::string_view key)
{
    std::vector<int> days;
    for (const auto& name : reader.texts(key)) {
        const auto found = std::find(dayNames.begin(), dayNames.end(), name);
        if (found == dayNames.end())
            reader.refuse(key, "\"" + name + "\" is no day; write mon, tue, wed, thu, fri, sat, sun");
        else
            days.push_back(static_cast<int>(found - dayNames.begin()) + 1);
    }
    std::sort(days.begin(), days.end());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

Competition readCompetition(ObjectReader& reader)
{
    Competition competition;
    competition.date = reader.date("date");
    competition.name = reader.text("name");
    competition.main = reader.booleanOr("main", false);
    const auto priority = reader.textOr("priority", competition.main ? "A" : "C");
    if (priority != "A" && priority != "B" && priority != "C")
        reader.refuse("priority", "A, B or C is needed here");
    else
        competition.priority = static_cast<Priority>(priority[0] - 'A');
    return competition;
}

AthleteFacts readAthlete(ObjectReader& reader)
{
    AthleteFacts athlete;
    athlete.name = reader.textOr("name", "");
    athlete.birthDate = reader.optionalDate("birth_date");
    athlete.trainingYears = reader.optionalNumber("training_years", 0, 80);
    athlete.bodyMassKg = reader.optionalNumber("body_mass_kg", 20, 300);
    if (const auto growth = reader.optionalNumber("growth_cm_per_month", 0, 5))
        athlete.growthPerMonth = *growth * centimetre;
    athlete.guardianConsent = reader.booleanOr("guardian_consent", false);
    return athlete;
}

SeasonSetup readSetup(ObjectReader& reader)
{
    SeasonSetup setup;
    setup.name = reader.textOr("name", "Season");
    setup.start = reader.date("start");
    setup.end = reader.optionalDate("end");
    reader.eachObject("competitions", [&](ObjectReader& item) { setup.competitions.push_back(readCompetition(item)); });
    std::stable_sort(setup.competitions.begin(), setup.competitions.end(),
                     [](const Competition& a, const Competition& b) { return a.date < b.date; });
    setup.trainingDays = readDays(reader, "training_days");
    setup.sprintDays = readDays(reader, "sprint_days");
    setup.sessionMinutes = reader.integerOr("session_minutes", setup.sessionMinutes, 10, 300);
    setup.liftsPerSession = reader.integerOr("lifts_per_session", 0, 0, 12);
    setup.liftsPerSessionReason = reader.textOr("lifts_per_session_override", "");
    for (const double height : reader.numbers("box_heights_cm", 2, 120))
        setup.boxHeights.push_back(height * centimetre);
    if (reader.has("equipment"))
        setup.equipment = reader.texts("equipment");
    setup.ladders = reader.texts("ladders");
    reader.object("athlete", [&](ObjectReader& item) { setup.athlete = readAthlete(item); });
    return setup;
}

Expected<void> checkDates(const SeasonSetup& setup)
{
    if (setup.competitions.empty())
        return fail(Code::InvalidInput, "competitions", "a season needs at least one competition");
    for (std::size_t i = 0; i < setup.competitions.size(); ++i) {
        const auto& competition = setup.competitions[i];
        const auto place = "competitions[" + integerText(static_cast<std::int64_t>(i)) + "].date";
        if (competition.date <= setup.start)
            return fail(Code::InvalidInput, place, "\"" + competition.name + "\" lies before the season has begun");
        if (setup.end && competition.date > *setup.end)
            return fail(Code::InvalidInput, place, "\"" + competition.name + "\" lies after the season's end");
        if (daysBetween(setup.start, competition.date) > longestSeason)
            return fail(Code::InvalidInput, place, "a season is at most " + integerText(longestSeason) + " days long");
    }
    if (setup.end && daysBetween(setup.start, *setup.end) > longestSeason)
        return fail(Code::InvalidInput, "end", "a season is at most " + integerText(longestSeason) + " days long");
    if (std::none_of(setup.competitions.begin(), setup.competitions.end(), [](const auto& c) { return c.main; }))
        return fail(Code::InvalidInput, "competitions", "mark at least one competition with \"main\": true");
    return {};
}

Expected<void> checkNames(const SeasonSetup& setup, const SeasonData& data)
{
    if (setup.trainingDays.empty())
        return fail(Code::InvalidInput, "training_days", "name at least one day of the week with lifts");
    if (setup.ladders.empty())
        return fail(Code::InvalidInput, "ladders", "choose at least one ladder");
    for (std::size_t i = 0; i < setup.ladders.size(); ++i) {
        const auto place = "ladders[" + integerText(static_cast<std::int64_t>(i)) + "]";
        if (findLadder(data.ladders, setup.ladders[i]) == nullptr)
            return fail(Code::InvalidInput, place, "there is no ladder \"" + setup.ladders[i] + "\"");
        if (std::find(setup.ladders.begin(), setup.ladders.begin() + static_cast<std::ptrdiff_t>(i),
                      setup.ladders[i]) != setup.ladders.begin() + static_cast<std::ptrdiff_t>(i))
            return fail(Code::InvalidInput, place, "the ladder \"" + setup.ladders[i] + "\" is chosen twice");
    }
    for (const auto& key : setup.equipment)
        if (std::find(equipmentKeys.begin(), equipmentKeys.end(), key) == equipmentKeys.end())
            return fail(Code::InvalidInput, "equipment", "\"" + key + "\" is unknown; write bar, rack, pins, blocks");
    return {};
}

/// Days that follow each other, Sunday to Monday included.
bool hasConsecutiveDays(const std::vector<int>& days)
{
    return std::any_of(days.begin(), days.end(), [&](int day) {
        return std::find(days.begin(), days.end(), day % 7 + 1) != days.end() && days.size() > 1;
    });
}

Expected<void> checkYoung(const SeasonSetup& setup, const Rules& rules)
{
    const auto age = ageOn(setup.athlete, setup.start);
    if (!age || *age >= adult)
        return {};
    if (!setup.athlete.guardianConsent)
        return fail(Code::Refused, "athlete.guardian_consent",
                    "under 18 a guardian must have agreed before a plan is made");
    if (static_cast<double>(setup.trainingDays.size()) > rules.youngDaysPerWeek)
        return fail(Code::Refused, "training_days",
                    "under 18 lifts stand on at most three days a week; choose fewer days");
    if (hasConsecutiveDays(setup.trainingDays))
        return fail(Code::Refused, "training_days",
                    "under 18 lifting days must not follow each other; leave a day between");
    return {};
}

int capFromMinutes(const SeasonSetup& setup, const Rules& rules)
{
    return static_cast<int>(
        std::max(1.0, std::min(rules.liftsPerSession, setup.sessionMinutes / rules.minutesPerLift)));
}

Json daysJson(const std::vector<int>& days)
{
    Json list = Json::array();
    for (const int day : days)
        list.push_back(dayNames[static_cast<std::size_t>(day - 1)]);
    return list;
}

Json athleteJson(const AthleteFacts& athlete)
{
    Json json = Json::object();
    json["name"] = athlete.name;
    if (athlete.birthDate)
        json["birth_date"] = dateText(*athlete.birthDate);
    if (athlete.trainingYears)
        json["training_years"] = *athlete.trainingYears;
    if (athlete.bodyMassKg)
        json["body_mass_kg"] = *athlete.bodyMassKg;
    if (athlete.growthPerMonth)
        json["growth_cm_per_month"] = roundTo(*athlete.growthPerMonth / centimetre, 1000);
    json["guardian_consent"] = athlete.guardianConsent;
    return json;
}

} // namespace

std::optional<int> ageOn(const AthleteFacts& athlete, CivilDate day)
{
    if (!athlete.birthDate)
        return std::nullopt;
    const std::chrono::year_month_day born(*athlete.birthDate), now(day);
    const int years = static_cast<int>(now.year()) - static_cast<int>(born.year());
    const bool before = now.month() < born.month() ||
                        (now.month() == born.month() && now.day() < born.day()); // 29 February: from 1 March
    return years - (before ? 1 : 0);
}

int liftCap(const SeasonSetup& setup, const Rules& rules)
{
    return setup.liftsPerSession > 0 ? setup.liftsPerSession : capFromMinutes(setup, rules);
}

Expected<void> checkSetup(const SeasonSetup& setup, const SeasonData& data)
{
    if (auto checked = checkDates(setup); !checked)
        return checked;
    if (auto checked = checkNames(setup, data); !checked)
        return checked;
    const int cap = capFromMinutes(setup, data.rules);
    if (setup.liftsPerSession > cap && setup.liftsPerSessionReason.empty())
        return fail(Code::Refused, "lifts_per_session",
                    integerText(setup.sessionMinutes) + " minutes hold " + integerText(cap) +
                        " primary lifts; choose fewer, or say why in lifts_per_session_override");
    return checkYoung(setup, data.rules);
}

Expected<SeasonSetup> parseSetup(std::string_view text, const SeasonData& data)
{
    const auto json = parseJson(text);
    if (!json)
        return tl::unexpected(json.error());
    ReadProblem problem;
    ObjectReader top(*json, "", problem);
    auto setup = readSetup(top);
    top.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    if (const auto checked = checkSetup(setup, data); !checked)
        return tl::unexpected(checked.error());
    return setup;
}

Json setupJson(const SeasonSetup& setup)
{
    Json json = Json::object();
    json["name"] = setup.name;
    json["start"] = dateText(setup.start);
    if (setup.end)
        json["end"] = dateText(*setup.end);
    json["competitions"] = Json::array();
    for (const auto& competition : setup.competitions)
        json["competitions"].push_back(
            {{"date", dateText(competition.date)},
             {"name", competition.name},
             {"priority", std::string(1, static_cast<char>('A' + static_cast<int>(competition.priority)))},
             {"main", competition.main}});
    json["training_days"] = daysJson(setup.trainingDays);
    json["sprint_days"] = daysJson(setup.sprintDays);
    json["session_minutes"] = setup.sessionMinutes;
    json["lifts_per_session"] = setup.liftsPerSession;
    json["lifts_per_session_override"] = setup.liftsPerSessionReason;
    json["box_heights_cm"] = Json::array();
    for (const double height : setup.boxHeights)
        json["box_heights_cm"].push_back(roundTo(height / centimetre, 1000));
    json["equipment"] = setup.equipment;
    json["ladders"] = setup.ladders;
    json["athlete"] = athleteJson(setup.athlete);
    return json;
}

} // namespace fleetrung::season
