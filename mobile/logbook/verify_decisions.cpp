#include <map>

#include "engine/season/replay.hpp"
#include "mobile/logbook/decision_record.hpp"
#include "mobile/logbook/documents.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{
namespace
{

constexpr const char* noInputs =
    "no inputs kept (made before inputs were kept, or by another program); it can be read but not taken again";

/// Rules and ladders by the name they were kept under, read once.
class KeptRules
{
public:
    explicit KeptRules(const store::Store& store) : store_(store) {}

    Expected<const season::SeasonData*> find(const Identifier& id)
    {
        if (const auto known = known_.find(id); known != known_.end())
            return &known->second;
        auto data = readDocument(store_, id)
                        .and_then([](const store::Document& document) { return parseJson(document.content.text); })
                        .and_then([](const Json& json) { return season::seasonDataFromJson(json); });
        if (!data)
            return failure(data);
        return &known_.emplace(id, std::move(*data)).first->second;
    }

private:
    const store::Store& store_;
    std::map<Identifier, season::SeasonData> known_;
};

/// The same things stand in a row's columns, for queries, and in its text, for ever.
std::vector<season::Difference> columnsAgainstText(const store::Decision& row, const season::Decision& decision)
{
    std::vector<season::Difference> found;
    const auto compare = [&](const char* column, const std::string& stored, const std::string& text) {
        if (stored != text)
            found.push_back({decision.ladder, column, stored, text});
    };
    compare("ladder", row.ladder, decision.ladder);
    compare("day", dateText(row.day), dateText(decision.day));
    compare("action", row.action, std::string(season::decisionKey(decision.kind)));
    compare("rule", row.rule, decision.rule);
    compare("from", row.rungFrom, decision.from);
    compare("to", row.rungTo, decision.to);
    compare("reason", row.reason, decision.reason);
    return found;
}

class Check
{
public:
    Check(const store::Store& store, DecisionCheck& into) : store_(store), rules_(store), into_(into) {}

    /// Rows made from one input with one set of rules.
    void take(const std::vector<store::Decision>& rows)
    {
        std::vector<season::Decision> readable;
        std::map<std::string, const store::Decision*> byLadder;
        for (const auto& row : rows) {
            const auto record = recordOf(row);
            if (!record) {
                differ(row, {row.ladder, "evidence", row.evidence, record.error().message});
                ++into_.checked;
                continue;
            }
            for (auto& difference : columnsAgainstText(row, record->decision))
                differ(row, std::move(difference));
            byLadder[record->decision.ladder] = &row;
            readable.push_back(record->decision);
        }
        if (!rows.front().input || !rows.front().rules) {
            for (const auto& row : rows)
                into_.unchecked.push_back({row.id, row.day, row.ladder, noInputs});
            return;
        }
        into_.checked += static_cast<int>(readable.size());
        const auto input = readDocument(store_, *rows.front().input).and_then([](const store::Document& document) {
            return parseJson(document.content.text);
        });
        const auto rules = rules_.find(*rows.front().rules);
        if (!input || !rules) {
            for (const auto& row : rows)
                differ(row, {row.ladder, input ? "kept rules" : "kept input", "",
                             input ? rules.error().message : input.error().message});
            return;
        }
        const auto differences = season::rederive(*input, readable, **rules);
        if (!differences)
            for (const auto& row : rows)
                differ(row, {row.ladder, "kept input", "", describe(differences.error())});
        else
            for (const auto& difference : *differences)
                differ(*byLadder.at(difference.ladder), difference);
    }

private:
    void differ(const store::Decision& row, season::Difference difference)
    {
        into_.differences.push_back({row.id, row.day, std::move(difference)});
    }

    const store::Store& store_;
    KeptRules rules_;
    DecisionCheck& into_;
};

/// In the order taken, those of one input together.
std::vector<std::vector<store::Decision>> byInput(std::vector<store::Decision> rows)
{
    std::vector<std::vector<store::Decision>> groups;
    for (auto& row : rows) {
        const bool joins = !groups.empty() && groups.back().front().input == row.input &&
                           groups.back().front().rules == row.rules && groups.back().front().day == row.day;
        if (!joins)
            groups.emplace_back();
        groups.back().push_back(std::move(row));
    }
    return groups;
}

} // namespace

Expected<DecisionCheck> Logbook::verifyDecisions(const Identifier& season,
                                                 const std::function<bool(int, int)>& progress) const
{
    auto rows = store_->list<store::Decision>({.season = season, .deletedToo = true});
    if (!rows)
        return failure(rows);
    const auto all = static_cast<int>(rows->size());
    DecisionCheck found;
    Check check(*store_, found);
    int done = 0;
    for (const auto& group : byInput(std::move(*rows))) {
        if (progress && !progress(done, all))
            return fail(Code::Cancelled, "", "the check of the decisions was stopped");
        check.take(group);
        done += static_cast<int>(group.size());
    }
    return found;
}

Expected<std::vector<ReplayedDay>> Logbook::replay(const Identifier& season) const
{
    auto rows = store_->list<store::Decision>({.season = season});
    if (!rows)
        return failure(rows);
    KeptRules rules(*store_);
    std::vector<ReplayedDay> days;
    for (const auto& group : byInput(std::move(*rows))) {
        const auto& row = group.front();
        if (!row.input || !row.rules)
            continue;
        const auto document = readDocument(*store_, *row.input);
        if (!document)
            return failure(document);
        const auto data = rules.find(*row.rules);
        if (!data)
            return failure(data);
        const auto input = parseJson(document->content.text).and_then([&](const Json& json) {
            return season::dayInputFromJson(json, **data);
        });
        if (!input)
            return failure(input);
        days.push_back({row.day, document->content.text, input->plan.id,
                        season::decideDay(*input, season::dataFor(input->plan.setup, **data))});
    }
    return days;
}

} // namespace fleetrung::logbook
