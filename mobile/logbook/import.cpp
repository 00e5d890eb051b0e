#include "mobile/logbook/import.hpp"

#include <algorithm>
#include <array>

#include "engine/base/numbers.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/import_parts.hpp"

namespace fleetrung::logbook
{
namespace
{

std::string lowered(std::string text)
{
    std::ranges::transform(text, text.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return text;
}

NameChoice matchOf(const std::string& name, const std::vector<store::Athlete>& squad,
                   const std::map<std::string, std::string>& kept)
{
    const auto known = kept.find(name);
    const auto wanted = known == kept.end() ? parseIdentifier(name) : parseIdentifier(known->second);
    const store::Athlete* match = nullptr;
    int called = 0;
    for (const auto& athlete : squad) {
        if (wanted && athlete.id == *wanted)
            return {NameChoice::Match, athlete.id};
        if (!name.empty() && lowered(athlete.name) == lowered(name)) {
            match = &athlete;
            ++called;
        }
    }
    return called == 1 ? NameChoice{NameChoice::Match, match->id} : NameChoice{};
}

template <class Row> std::vector<std::string> namesOf(const std::vector<Row>& rows)
{
    std::vector<std::string> names;
    std::set<std::string> seen;
    for (const auto& row : rows)
        if (auto name = fileName(row); seen.insert(name).second)
            names.push_back(std::move(name));
    return names;
}

template <class R> Expected<bool> anyOf(const Logbook& logbook, const store::Filter& filter)
{
    return logbook.rows().list<R>(filter).map([](const std::vector<R>& rows) { return !rows.empty(); });
}

Expected<void> undoSession(Logbook& logbook, const Identifier& session)
{
    const auto used = anyOf<store::LiftSet>(logbook, {.session = session});
    if (!used)
        return failure(used);
    return *used ? Expected<void>() : logbook.deleteSession(session);
}

Expected<void> undoAthlete(Logbook& logbook, const Identifier& athlete)
{
    const auto sprints = anyOf<store::Sprint>(logbook, {.athlete = athlete});
    const auto sessions = anyOf<store::Session>(logbook, {.athlete = athlete});
    const auto seasons = anyOf<store::Season>(logbook, {.athlete = athlete});
    const auto jumps = anyOf<store::Jump>(logbook, {.athlete = athlete});
    for (const auto* used : {&sprints, &sessions, &seasons, &jumps}) {
        if (!*used)
            return failure(*used);
        if (**used)
            return {};
    }
    return logbook.deleteAthlete(athlete);
}

} // namespace

std::string fileName(const importing::ReadRow& row)
{
    return row.athlete.empty() && row.athleteKey ? identifierText(*row.athleteKey) : row.athlete;
}

std::vector<std::pair<std::string, NameChoice>> matchNames(const std::vector<std::string>& names,
                                                           const std::vector<store::Athlete>& squad,
                                                           const std::map<std::string, std::string>& kept)
{
    std::vector<std::pair<std::string, NameChoice>> matched;
    for (const auto& name : names)
        matched.emplace_back(name, matchOf(name, squad, kept));
    return matched;
}

std::vector<std::string> namesIn(const std::vector<importing::ReadRun>& runs)
{
    return namesOf(runs);
}

std::vector<std::string> namesIn(const std::vector<importing::ReadSet>& sets)
{
    return namesOf(sets);
}

Expected<std::optional<Identifier>> ImportedAthletes::of(const importing::ReadRow& row)
{
    const auto name = fileName(row);
    const auto choice = plan_.names.find(name);
    if (choice == plan_.names.end() || choice->second.kind == NameChoice::Skip)
        return std::optional<Identifier>();
    if (choice->second.kind == NameChoice::Match)
        return std::optional(choice->second.athlete);
    if (const auto made = made_.find(name); made != made_.end())
        return std::optional(made->second);
    if (plan_.dryRun)
        return std::optional(importedId("dry run", {}, name, 0)); // of nobody in the log
    store::Athlete athlete;
    athlete.name = name;
    const auto added = logbook_.addAthlete(athlete);
    if (!added)
        return failure(added);
    made_[name] = *added;
    count_.receipt.athletes.push_back(*added);
    return std::optional(*added);
}

Moment momentOf(const importing::ReadRow& row, int before, const ImportPlan& plan)
{
    constexpr int noon = 12 * 3600, evening = 23 * 3600;
    const int second = row.clock.value_or(std::min(noon + 60 * before, evening));
    Moment moment = plan.momentOf(row.day, second);
    moment.trainingDay = row.day;
    if (row.clock && row.offsetMinutes) {
        moment.offsetMinutes = *row.offsetMinutes;
        moment.utcSeconds =
            row.day.time_since_epoch().count() * std::int64_t{86400} + second - std::int64_t{60} * *row.offsetMinutes;
    }
    return moment;
}

Identifier importedId(std::string_view kind, const Identifier& athlete, const std::string& key, int place)
{
    const auto who = identifierText(athlete), ordinal = integerText(place);
    const std::array<std::string_view, 4> parts{kind, who, key, ordinal};
    return hashIdentifier(parts);
}

Expected<ImportCount> asOne(Logbook& logbook, const ImportPlan& plan, std::size_t rows,
                            const std::function<Expected<void>(std::size_t row, ImportCount& count)>& work)
{
    constexpr std::size_t often = 50;
    ImportCount count;
    const auto all = [&]() -> Expected<void> {
        for (std::size_t row = 0; row < rows; ++row) {
            if (row % often == 0 && plan.progress && !plan.progress(static_cast<int>(row), static_cast<int>(rows)))
                return fail(Code::Cancelled, "", "the import was stopped; nothing was added");
            if (auto one = work(row, count); !one)
                return one;
        }
        return {};
    };
    const auto done = plan.dryRun ? all() : logbook.inTransaction(all);
    if (!done)
        return failure(done);
    return count;
}

Expected<void> undoImport(Logbook& logbook, const ImportReceipt& receipt)
{
    return logbook.inTransaction([&]() -> Expected<void> {
        for (const auto& id : receipt.sprints)
            if (auto gone = logbook.setSprintDeleted(id, true); !gone)
                return gone;
        for (const auto& id : receipt.sets)
            if (auto gone = logbook.deleteSet(id); !gone)
                return gone;
        for (const auto& id : receipt.sessions)
            if (auto gone = undoSession(logbook, id); !gone)
                return gone;
        for (const auto& id : receipt.athletes)
            if (auto gone = undoAthlete(logbook, id); !gone)
                return gone;
        return {};
    });
}

} // namespace fleetrung::logbook
