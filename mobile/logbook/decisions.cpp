#include <map>
#include <tuple>

#include "engine/base/numbers.hpp"
#include "engine/season/replay.hpp"
#include "mobile/logbook/add.hpp"
#include "mobile/logbook/day_input.hpp"
#include "mobile/logbook/decision_record.hpp"
#include "mobile/logbook/documents.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/warm_up.hpp"

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

/// Two athletes may be given the same decision on the same facts: the season tells them apart. So may one athlete twice
/// on one day, with another in between: the ordinal tells those apart.
Identifier storedId(const Identifier& season, const season::Decision& decision, int ordinal)
{
    const std::string seasonText = identifierText(season), decisionText = identifierText(decision.id),
                      ordinalText = integerText(ordinal);
    return hashIdentifier(std::array<std::string_view, 3>{seasonText, decisionText, ordinalText});
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
    row.loadFactor = decision.loadFactor;
    return row;
}

/// What the decisions tell of left against right.
std::vector<SideDifference> sidesOf(const std::vector<season::Decision>& decisions)
{
    std::vector<SideDifference> found;
    for (const auto& decision : decisions)
        for (const auto& line : decision.evidence)
            if (line.name == "left later than right" || line.name == "right later than left")
                found.push_back({decision.ladder, line});
    return found;
}

struct Kept {
    Identifier input, rules;
};

/// The day's input and what it was decided with, by value.
Expected<Kept> keep(store::Store& store, const Identifier& athlete, const season::DayInput& input)
{
    const auto day =
        keepDocument(store, store::DocumentKind::DayInput, season::dayInputJson(input), athlete, input.today);
    if (!day)
        return failure(day);
    const auto rules = keepDocument(store, store::DocumentKind::SeasonData, season::seasonDataJson());
    if (!rules)
        return failure(rules);
    return Kept{*day, *rules};
}

} // namespace

std::vector<store::Decision> lastOfEachDay(std::vector<store::Decision> all)
{
    std::map<std::tuple<Identifier, CivilDate, std::string>, std::size_t> last;
    for (std::size_t i = 0; i < all.size(); ++i)
        last[{all[i].season, all[i].day, all[i].ladder}] = i;
    std::vector<store::Decision> kept;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (last.at({all[i].season, all[i].day, all[i].ladder}) == i)
            kept.push_back(std::move(all[i]));
    return kept;
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

Expected<std::vector<season::Decision>> Logbook::decide(const Identifier& season, const Moment& now,
                                                        const std::vector<std::string>& stepByExposure)
{
    const auto today = now.trainingDay;
    const auto sources = readDay(*this, season, today, stepByExposure);
    if (!sources)
        return failure(sources);
    const auto earlier = store_->list<store::Decision>({.season = season, .from = today, .to = today});
    if (!earlier)
        return failure(earlier);
    const auto& row = sources->walk.record().row;
    auto decisions = season::decideDay(sources->input, sources->walk.data());
    std::optional<Kept> kept;
    const auto stored = inTransaction([&]() -> Expected<void> {
        for (auto& decision : decisions) {
            int ordinal = 1;
            std::optional<season::Decision> standing;
            for (const auto& one : *earlier)
                if (one.ladder == decision.ladder) {
                    const auto record = recordOf(one);
                    if (!record)
                        return failure(record);
                    standing = record->decision;
                    ordinal = std::max(ordinal, one.ordinal + 1);
                }
            if (standing && sameDecision(*standing, decision)) {
                decision.id = standing->id; // it stands, with the answer it was given
                continue;
            }
            if (!kept) {
                const auto documents = keep(*store_, row.athlete, sources->input);
                if (!documents)
                    return failure(documents);
                kept = *documents;
            }
            decision.id = storedId(season, decision, ordinal);
            auto fresh = rowOf(row, decision, now);
            fresh.input = kept->input;
            fresh.rules = kept->rules;
            fresh.ordinal = ordinal;
            if (auto added = store_->insert(std::move(fresh)); !added)
                return failure(added);
        }
        return {};
    });
    if (!stored)
        return failure(stored);
    return decisions;
}

Expected<std::vector<DecisionRecord>> Logbook::decisions(const Identifier& season, std::optional<CivilDate> from,
                                                         std::optional<CivilDate> to) const
{
    auto rows = store_->list<store::Decision>({.season = season, .from = from, .to = to});
    if (!rows)
        return failure(rows);
    auto last = lastOfEachDay(std::move(*rows));
    const auto record = this->season(season);
    if (!record)
        return failure(record);
    const auto& ladders = record->setup.ladders; // those taken together in the order chosen
    std::ranges::stable_sort(last, {}, [&](const auto& row) {
        return std::tuple(row.day, std::ranges::find(ladders, row.ladder) - ladders.begin());
    });
    std::vector<DecisionRecord> records;
    for (const auto& row : last) {
        auto read = recordOf(row);
        if (!read)
            return failure(read);
        records.push_back(std::move(*read));
    }
    return records;
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

Expected<season::DayInput> Logbook::dayInput(const Identifier& season, CivilDate today) const
{
    return readDay(*this, season, today).map([](DaySources&& sources) { return std::move(sources.input); });
}

Expected<DayView> Logbook::day(const Identifier& season, CivilDate today) const
{
    auto sources = readDay(*this, season, today);
    if (!sources)
        return failure(sources);
    const auto records = decisions(season, today, today);
    if (!records)
        return failure(records);
    const auto& walk = sources->walk;
    DayView view;
    view.season = season;
    view.states = walk.on(today);
    for (const auto& record : *records)
        view.decisions.push_back(record.decision);
    auto plan = season::replanSeason(walk.setup(), view.states, today, walk.data());
    if (!plan)
        return failure(plan);
    view.plan = std::move(*plan);
    // Loads are carried from the rung before the day's step to the one after it: planSession wants to know both.
    view.session = season::planSession(view.plan, sources->input.states, followedOn(*records, today, walk.data()),
                                       today, walk.data(), sources->input.log);
    auto answers = keptAnswers(*store_, walk.record().row.athlete, today);
    if (!answers)
        return failure(answers);
    for (const auto& answer : *answers) {
        if (!answer.accepted)
            continue;
        view.session = season::adjusted(std::move(view.session), answer.adjustment);
        view.adjustments.push_back(answer.adjustment);
    }
    view.warmUpAnswers = std::move(*answers);
    view.sides = sidesOf(view.decisions);
    view.log = std::move(sources->input.log);
    return view;
}

} // namespace fleetrung::logbook
