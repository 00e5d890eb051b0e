// What a season's setup must hold to before a plan is made.
#include <algorithm>
#include <array>

#include "engine/base/numbers.hpp"
#include "engine/reps/lift.hpp"
#include "engine/season/setup.hpp"
#include "engine/season/setup_parts.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::array<std::string_view, 4> equipmentKeys{"bar", "rack", "pins", "blocks"};
constexpr int adult = 18;
constexpr int longestSeason = 800; // days
constexpr std::string_view userOrigin = "user";

std::string indexed(std::string_view list, std::size_t index)
{
    return std::string(list) + '[' + integerText(static_cast<std::int64_t>(index)) + ']';
}

CivilDate lastDay(const SeasonSetup& setup)
{
    return setup.end.value_or(setup.competitions.back().date);
}

Expected<void> checkDates(const SeasonSetup& setup)
{
    if (setup.competitions.empty())
        return fail(Code::InvalidInput, "competitions", "a season needs at least one competition");
    for (std::size_t i = 0; i < setup.competitions.size(); ++i) {
        const auto& competition = setup.competitions[i];
        const auto place = indexed("competitions", i) + ".date";
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
        const auto place = indexed("ladders", i);
        if (ladderOf(setup, data, setup.ladders[i]) == nullptr)
            return fail(Code::InvalidInput, place, "there is no ladder \"" + setup.ladders[i] + "\"");
        if (std::find(setup.ladders.begin(), setup.ladders.begin() + static_cast<std::ptrdiff_t>(i),
                      setup.ladders[i]) != setup.ladders.begin() + static_cast<std::ptrdiff_t>(i))
            return fail(Code::InvalidInput, place, "the ladder \"" + setup.ladders[i] + "\" is chosen twice");
    }
    for (std::size_t i = 0; i < setup.ladderStarts.size(); ++i) {
        const auto& start = setup.ladderStarts[i];
        if (std::find(setup.ladders.begin(), setup.ladders.end(), start.ladder) == setup.ladders.end())
            return fail(Code::InvalidInput, indexed("ladder_starts", i) + ".ladder",
                        "the ladder \"" + start.ladder + "\" is not among those chosen");
        if (start.from < setup.start || start.from > lastDay(setup))
            return fail(Code::InvalidInput, indexed("ladder_starts", i) + ".from",
                        "the ladder must join inside the season");
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

Expected<void> checkDropJumps(const SeasonSetup& setup, const SeasonData& data, int age)
{
    for (std::size_t i = 0; i < setup.ladders.size() && age < data.rules.jumpLowestAge; ++i)
        if (const auto* ladder = ladderOf(setup, data, setup.ladders[i]);
            ladder->rungs.front().metric == Metric::ContactTime)
            return fail(Code::Refused, indexed("ladders", i),
                        "no drop jumps under " + shortestText(data.rules.jumpLowestAge) + "; leave this ladder out");
    return {};
}

Expected<void> checkYoung(const SeasonSetup& setup, const SeasonData& data)
{
    const auto& rules = data.rules;
    const auto age = ageOn(setup.athlete, setup.start);
    if (!age || *age >= adult)
        return {};
    if (*age < rules.lowestAge)
        return fail(Code::Refused, "athlete.birth_date",
                    "under " + shortestText(rules.lowestAge) +
                        " no lifting is planned: children take part from about that age, when they can follow "
                        "instructions");
    if (auto jumps = checkDropJumps(setup, data, *age); !jumps)
        return jumps;
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

Expected<void> checkBlocks(const SeasonSetup& setup)
{
    for (std::size_t i = 0; i < setup.blocks.size(); ++i) {
        const auto& block = setup.blocks[i];
        const auto place = indexed("blocks", i);
        if (block.to < block.from)
            return fail(Code::InvalidInput, place + ".to", "the block ends before it begins");
        if (block.from < setup.start || block.to > lastDay(setup))
            return fail(Code::InvalidInput, place + ".from", "the block must lie inside the season");
        if (!block.region.empty() && (block.kind != Block::Kind::Injury || !isRegion(block.region)))
            return fail(Code::InvalidInput, place + ".region",
                        block.kind == Block::Kind::Injury
                            ? "\"" + block.region + "\" is no region of the body known here"
                            : std::string("only an injury has a region"));
        for (std::size_t j = 0; j < i; ++j) {
            const auto& other = setup.blocks[j];
            if (other.kind == block.kind && other.region == block.region && other.from <= block.to &&
                block.from <= other.to)
                return fail(Code::InvalidInput, place, "two blocks of the same kind share days; make one of them");
        }
    }
    return {};
}

Expected<void> checkSecondary(const SeasonSetup& setup)
{
    for (std::size_t i = 0; i < setup.secondary.size(); ++i) {
        const auto& item = setup.secondary[i];
        const auto place = indexed("secondary", i);
        if (item.name.empty())
            return fail(Code::InvalidInput, place + ".name", "a secondary lift needs a name");
        if (!item.lift.empty() && reps::findLift(item.lift) == nullptr)
            return fail(Code::InvalidInput, place + ".lift", "there is no lift \"" + item.lift + "\"");
        if (item.sets < 1 || item.repetitions < 1)
            return fail(Code::InvalidInput, place + ".sets", "at least one set of one repetition is needed");
        for (const auto& region : item.regions)
            if (!isRegion(region))
                return fail(Code::InvalidInput, place + ".regions",
                            "\"" + region + "\" is no region of the body known here");
    }
    return {};
}

Expected<void> checkOwnRung(const Rung& rung, const std::string& place, const SeasonData& data)
{
    if (rung.origin != userOrigin)
        return fail(Code::InvalidInput, place + ".origin", "write \"user\": this ladder is the user's own");
    if (reps::findLift(rung.lift) == nullptr)
        return fail(Code::InvalidInput, place + ".lift", "there is no lift \"" + rung.lift + "\"");
    for (const auto& need : rung.needs)
        if (std::find(equipmentKeys.begin(), equipmentKeys.end(), need) == equipmentKeys.end())
            return fail(Code::InvalidInput, place + ".needs",
                        "\"" + need + "\" is unknown; write bar, rack, pins, blocks");
    for (const auto& caution : rung.cautions)
        if (findCaution(data, caution) == nullptr)
            return fail(Code::InvalidInput, place + ".cautions", "there is no caution \"" + caution + "\"");
    return {};
}

Expected<void> checkOwnLadder(const SeasonSetup& setup, std::size_t index, const SeasonData& data)
{
    const auto& ladder = setup.ownLadders[index];
    const auto place = indexed("own_ladders", index);
    if (auto checked = checkLadder(ladder, place); !checked)
        return checked;
    // Data made by dataFor holds the very same ladder already.
    const auto* known = findLadder(data.ladders, ladder.key);
    const bool twice = findLadder(setup.ownLadders, ladder.key) != &ladder;
    if (twice || (known != nullptr && ladderJson(*known) != ladderJson(ladder)))
        return fail(Code::InvalidInput, place + ".key",
                    "there is another ladder \"" + ladder.key + "\"; choose another key");
    for (const auto& region : ladder.regions)
        if (!isRegion(region))
            return fail(Code::InvalidInput, place + ".regions",
                        "\"" + region + "\" is no region of the body known here");
    for (std::size_t i = 0; i < ladder.rungs.size(); ++i)
        if (auto checked = checkOwnRung(ladder.rungs[i], place + '.' + indexed("rungs", i), data); !checked)
            return checked;
    return {};
}

Expected<void> checkOwnLadders(const SeasonSetup& setup, const SeasonData& data)
{
    for (std::size_t i = 0; i < setup.ownLadders.size(); ++i)
        if (auto checked = checkOwnLadder(setup, i, data); !checked)
            return checked;
    return {};
}

} // namespace

Expected<void> checkSetup(const SeasonSetup& setup, const SeasonData& data)
{
    if (auto checked = checkDates(setup); !checked)
        return checked;
    if (auto checked = checkOwnLadders(setup, data); !checked)
        return checked;
    if (auto checked = checkNames(setup, data); !checked)
        return checked;
    if (auto checked = checkBlocks(setup); !checked)
        return checked;
    if (auto checked = checkSecondary(setup); !checked)
        return checked;
    if (setup.weekStart != 1 && setup.weekStart != 7)
        return fail(Code::InvalidInput, "week_start", "weeks begin on mon or sun");
    const int cap = liftCapOfMinutes(setup, data.rules);
    if (setup.liftsPerSession > cap && setup.liftsPerSessionReason.empty())
        return fail(Code::Refused, "lifts_per_session",
                    integerText(setup.sessionMinutes) + " minutes hold " + integerText(cap) +
                        " primary lifts; choose fewer, or say why in lifts_per_session_override");
    return checkYoung(setup, data);
}

} // namespace fleetrung::season
