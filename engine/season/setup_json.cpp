// A setup from and to its JSON form.
#include <algorithm>
#include <array>

#include "engine/base/numbers.hpp"
#include "engine/season/ladder_reader.hpp"
#include "engine/season/setup.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::array<std::string_view, 7> dayNames{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};
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

void readBoxes(ObjectReader& reader, std::string_view key, ReadProblem& problem, std::vector<EnteredLength>& boxes)
{
    const auto* list = reader.optionalValue(key);
    if (list == nullptr)
        return;
    if (!list->is_array())
        return reader.refuse(key, "a list [ ... ] is needed here");
    for (std::size_t i = 0; i < list->size(); ++i)
        boxes.push_back(
            readBox((*list)[i], reader.at(key) + '[' + integerText(static_cast<std::int64_t>(i)) + ']', problem));
}

Block readBlock(ObjectReader& reader)
{
    Block block;
    const auto kind = reader.text("kind");
    bool known = false;
    for (const auto each : {Block::Kind::Travel, Block::Kind::Exam, Block::Kind::Illness, Block::Kind::Injury})
        if (blockKey(each) == kind) {
            block.kind = each;
            known = true;
        }
    if (!known)
        reader.refuse("kind", "one of travel, exam, illness, injury is needed here");
    block.from = reader.date("from");
    block.to = reader.date("to");
    block.region = reader.textOr("region", "");
    block.note = reader.textOr("note", "");
    return block;
}

SecondaryLift readSecondary(ObjectReader& reader)
{
    SecondaryLift item;
    item.name = reader.text("name");
    item.lift = reader.textOr("lift", "");
    item.days = readDays(reader, "days");
    item.sets = reader.integer("sets", 1, 12);
    item.repetitions = reader.integer("repetitions", 1, 30);
    item.regions = reader.texts("regions");
    return item;
}

int readWeekStart(ObjectReader& reader)
{
    const auto day = reader.textOr("week_start", "mon");
    if (day != "mon" && day != "sun")
        reader.refuse("week_start", "weeks begin on mon or sun");
    return day == "sun" ? 7 : 1;
}

SeasonSetup readSetup(ObjectReader& reader, ReadProblem& problem)
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
    for (const auto* key : {"box_heights", "box_heights_cm"}) // the second: seasons stored before inches were kept
        readBoxes(reader, key, problem, setup.boxHeights);
    if (reader.has("equipment"))
        setup.equipment = reader.texts("equipment");
    setup.ladders = reader.texts("ladders");
    if (reader.has("ladder_starts"))
        reader.eachObject("ladder_starts", [&](ObjectReader& item) {
            setup.ladderStarts.push_back({item.text("ladder"), item.date("from")});
        });
    if (reader.has("own_ladders"))
        reader.eachObject("own_ladders",
                          [&](ObjectReader& item) { setup.ownLadders.push_back(readLadder(item, problem)); });
    if (reader.has("blocks"))
        reader.eachObject("blocks", [&](ObjectReader& item) { setup.blocks.push_back(readBlock(item)); });
    std::stable_sort(setup.blocks.begin(), setup.blocks.end(),
                     [](const Block& a, const Block& b) { return a.from < b.from; });
    if (reader.has("secondary"))
        reader.eachObject("secondary", [&](ObjectReader& item) { setup.secondary.push_back(readSecondary(item)); });
    setup.weekStart = readWeekStart(reader);
    reader.object("athlete", [&](ObjectReader& item) { setup.athlete = readAthlete(item); });
    return setup;
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

Json blockJson(const Block& block)
{
    Json json{{"kind", blockKey(block.kind)}, {"from", dateText(block.from)}, {"to", dateText(block.to)}};
    if (!block.region.empty())
        json["region"] = block.region;
    if (!block.note.empty())
        json["note"] = block.note;
    return json;
}

Json secondaryJson(const SecondaryLift& item)
{
    return {{"name", item.name},
            {"lift", item.lift},
            {"days", daysJson(item.days)},
            {"sets", item.sets},
            {"repetitions", item.repetitions},
            {"regions", item.regions}};
}

} // namespace

Expected<SeasonSetup> parseSetup(std::string_view text, const SeasonData& data)
{
    const auto json = parseJson(text);
    if (!json)
        return tl::unexpected(json.error());
    ReadProblem problem;
    ObjectReader top(*json, "", problem);
    auto setup = readSetup(top, problem);
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
    json["box_heights"] = Json::array();
    for (const auto& height : setup.boxHeights)
        json["box_heights"].push_back(lengthText(height));
    json["equipment"] = setup.equipment;
    json["ladders"] = setup.ladders;
    for (const auto& start : setup.ladderStarts)
        json["ladder_starts"].push_back({{"ladder", start.ladder}, {"from", dateText(start.from)}});
    for (const auto& ladder : setup.ownLadders)
        json["own_ladders"].push_back(ladderJson(ladder));
    for (const auto& block : setup.blocks)
        json["blocks"].push_back(blockJson(block));
    for (const auto& item : setup.secondary)
        json["secondary"].push_back(secondaryJson(item));
    json["week_start"] = dayNames[static_cast<std::size_t>(setup.weekStart - 1)];
    json["athlete"] = athleteJson(setup.athlete);
    return json;
}

} // namespace fleetrung::season
