#include <map>
#include <tuple>

#include "mobile/logbook/evidence.hpp"
#include "mobile/logbook/failure.hpp"

namespace fleetrung::logbook
{
namespace
{

/// The same words, numbers and move, whatever it was made from.
bool sameDecision(const season::Decision& stored, season::Decision fresh)
{
    fresh.id = stored.id;
    return season::decisionJson(stored) == season::decisionJson(fresh);
}

/// Two athletes may be given the same decision on the same facts: the season tells them apart.
Identifier storedId(const Identifier& season, const season::Decision& decision)
{
    const std::string seasonText = identifierText(season), decisionText = identifierText(decision.id);
    return hashIdentifier(std::array<std::string_view, 2>{seasonText, decisionText});
}

store::Decision rowOf(const store::Season& season, const season::Decision& decision, const Moment& now)
{
    store::Decision row;
    row.id = decision.id;
    row.athlete = season.athlete;
    row.season = season.id;
    row.day = decision.day;
    row.made = now;
    row.ladder = decision.ladder;
    row.action = season::decisionKey(decision.kind);
    row.rule = decision.rule;
    row.rungFrom = decision.from;
    row.rungTo = decision.to;
    row.evidence = jsonText(season::decisionJson(decision));
    row.reason = decision.reason;
    return row;
}

Expected<DecisionRecord> recordOf(const store::Decision& row)
{
    const auto json = parseJson(row.evidence);
    if (!json)
        return failure(json);
    auto decision = season::decisionFromJson(*json);
    if (!decision)
        return failure(decision);
    return DecisionRecord{std::move(*decision), row.made, row.answer, row.changedTo, row.why};
}

/// Of several decisions on one ladder and day (the athlete entered pain after the first one) the last counts.
std::vector<DecisionRecord> lastOfEachDay(std::vector<DecisionRecord> all)
{
    std::map<std::pair<CivilDate, std::string>, std::size_t> last;
    for (std::size_t i = 0; i < all.size(); ++i)
        last[{all[i].decision.day, all[i].decision.ladder}] = i;
    std::vector<DecisionRecord> kept;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (last[{all[i].decision.day, all[i].decision.ladder}] == i)
            kept.push_back(std::move(all[i]));
    return kept;
}

std::ptrdiff_t placeOf(const std::string& ladder)
{
    const auto& ladders = season::standardSeasonData().ladders;
    return std::ranges::find(ladders, ladder, &season::Ladder::key) - ladders.begin();
}

std::optional<int> wholeOf(const std::optional<double>& value)
{
    return value ? std::optional(static_cast<int>(std::lround(*value))) : std::nullopt;
}

/// What was said last of a day; what one entry leaves open, an earlier one of the same day may say.
season::Wellness wellnessOf(const std::vector<store::Wellness>& entries)
{
    season::Wellness today;
    for (const auto& entry : entries) {
        if (entry.sleepHours)
            today.sleepHours = entry.sleepHours;
        if (entry.soreness)
            today.soreness = wholeOf(entry.soreness);
        if (entry.pain) {
            today.pain = wholeOf(entry.pain);
            today.painRegion = entry.painWhere;
        }
        today.sharpPain = entry.sharpPain;
        today.limping = entry.limping;
        today.newHamstringPain = entry.newHamstringPain;
        today.refused = entry.refused;
    }
    return today;
}

} // namespace

Expected<std::vector<season::Decision>> Logbook::decide(const Identifier& season, const Moment& now,
                                                        const std::vector<std::string>& stepByExposure)
{
    const auto today = now.trainingDay;
    const auto walk = LadderWalk::read(*this, season);
    if (!walk)
        return failure(walk);
    const auto history = readEvidence(*this, *walk, today);
    if (!history)
        return failure(history);
    const auto entries = wellness(walk->record().row.athlete, today, today);
    if (!entries)
        return failure(entries);

    season::DayInput input;
    input.states = walk->before(today);
    auto plan = season::replanSeason(walk->setup(), input.states, today);
    if (!plan)
        return failure(plan);
    input.plan = std::move(*plan);
    for (const auto& evidence : *history)
        input.history.push_back(evidence.value);
    input.wellness = wellnessOf(*entries);
    input.today = today;
    input.stepByExposure = stepByExposure;

    const auto earlier = this->decisions(season);
    if (!earlier)
        return failure(earlier);
    auto decisions = season::decideDay(input);
    const auto stored = inTransaction([&]() -> Expected<void> {
        for (auto& decision : decisions) {
            const auto standing = std::ranges::find_if(*earlier, [&](const DecisionRecord& record) {
                return record.decision.day == today && record.decision.ladder == decision.ladder;
            });
            if (standing != earlier->end() && sameDecision(standing->decision, decision)) {
                decision.id = standing->decision.id; // it stands, with the answer it was given
                continue;
            }
            decision.id = storedId(season, decision);
            if (auto added = store_->insert(rowOf(walk->record().row, decision, now)); !added)
                return failure(added);
        }
        return {};
    });
    if (!stored)
        return failure(stored);
    return decisions;
}

Expected<std::vector<DecisionRecord>> Logbook::decisions(const Identifier& season) const
{
    const auto rows = store_->list<store::Decision>({.season = season});
    if (!rows)
        return failure(rows);
    std::vector<DecisionRecord> records;
    for (const auto& row : *rows) {
        auto record = recordOf(row);
        if (!record)
            return failure(record);
        records.push_back(std::move(*record));
    }
    // Those taken together in the order of the ladders; what was decided again stays behind what it replaces.
    std::ranges::stable_sort(records, {}, [](const DecisionRecord& record) {
        return std::tuple(record.decision.day, record.made.utcSeconds, placeOf(record.decision.ladder));
    });
    return lastOfEachDay(std::move(records));
}

Expected<void> Logbook::answerDecision(const Identifier& decision, store::Answer answer, const std::string& changedTo,
                                       const std::string& why)
{
    auto row = store_->find<store::Decision>(decision);
    if (!row)
        return failure(row);
    row->answer = answer;
    row->changedTo = changedTo;
    row->why = why;
    return store_->update(*row);
}

Expected<DayView> Logbook::day(const Identifier& season, CivilDate today) const
{
    const auto walk = LadderWalk::read(*this, season);
    if (!walk)
        return failure(walk);
    DayView view;
    view.season = season;
    view.states = walk->on(today);
    view.decisions = walk->decisionsOn(today);
    auto plan = season::replanSeason(walk->setup(), view.states, today);
    if (!plan)
        return failure(plan);
    view.plan = std::move(*plan);
    // Loads are carried from the rung before the day's step to the one after it: planSession wants to know both.
    view.session = season::planSession(view.plan, walk->before(today), walk->followedOn(today), today);
    return view;
}

} // namespace fleetrung::logbook
