#include "engine/store/squad_rows.hpp"

#include "engine/store/read_rows.hpp"
#include "engine/store/store_state.hpp"

namespace fleetrung::store
{
namespace
{

constexpr std::chrono::days window{28}; // load limits look no further back
constexpr std::chrono::days week{7};

// Of seasons that overlap the one begun last; ?1 is the day.
constexpr std::string_view seasonsOfDay =
    " WHERE athlete.deleted = 0 AND season.deleted = 0"
    " AND season.start_day <= ?1 AND season.finish_day >= ?1 AND NOT EXISTS (SELECT 1 FROM season AS later"
    " WHERE later.athlete = season.athlete AND later.deleted = 0 AND later.start_day <= ?1 AND later.finish_day >= ?1"
    " AND (later.start_day, later.counter, later.id) > (season.start_day, season.counter, season.id))";

/// Only the last decision of a ladder and day counts.
constexpr std::string_view lastOfItsDay =
    " AND NOT EXISTS (SELECT 1 FROM decision AS later WHERE later.season = decision.season AND later.day = decision.day"
    " AND later.ladder = decision.ladder AND later.deleted = 0 AND (later.made_utc_s, later.counter, later.ordinal,"
    " later.id) > (decision.made_utc_s, decision.counter, decision.ordinal, decision.id))";

template <class R>
void readAll(Connection& rows, const std::string& rest, const std::vector<Cell>& values, std::vector<R>& into)
{
    auto read = rows.prepared(selectText<R>() + rest);
    for (std::size_t i = 0; i < values.size(); ++i)
        bindCell(*read, static_cast<int>(i) + 1, values[i]);
    while (read->executeStep())
        into.push_back(readRow<R>(*read));
}

void readDecisions(Connection& rows, const Identifier& season, const std::string& day, SquadRows& into)
{
    const std::string before = " WHERE decision.season = ?1 AND decision.day < ?2 AND decision.deleted = 0 AND ";
    const std::string order = " ORDER BY decision.day, decision.ladder";
    readAll(rows,
            before + "(decision.rung_from <> decision.rung_to OR decision.answer = 'changed')" +
                std::string(lastOfItsDay) + order,
            {season, day}, into.decisions);
    readAll(rows,
            before +
                "decision.load_factor < 1 AND decision.rung_from = decision.rung_to AND"
                " decision.answer <> 'changed'" +
                std::string(lastOfItsDay) + order,
            {season, day}, into.decisions);
    readAll(rows,
            " WHERE decision.season = ?1 AND decision.day = ?2 AND decision.deleted = 0 ORDER BY decision.made_utc_s,"
            " decision.counter, decision.ordinal, decision.id",
            {season, day}, into.today);
}

void readSets(Connection& rows, const Identifier& athlete, const std::string& from, const std::string& day,
              std::vector<SetLifted>& into)
{
    auto read = rows.prepared(
        "SELECT session.athlete, session.begun_day, session.id, lift_set.id, lift_set.ladder, lift_set.rung,"
        " lift_set.kind, lift_set.load_kg, lift_set.repetitions_planned, lift_set.repetitions_done, lift_set.effort"
        " FROM session JOIN lift_set ON lift_set.session = session.id WHERE session.athlete = ?1"
        " AND session.begun_day >= ?2 AND session.begun_day < ?3 AND session.deleted = 0 AND lift_set.deleted = 0"
        " AND lift_set.ladder <> '' AND lift_set.kind <> 'warm-up'"
        " ORDER BY session.begun_day, session.begun_utc_s, session.id, lift_set.ordinal");
    bindCell(*read, 1, athlete);
    read->bind(2, from);
    read->bind(3, day);
    while (read->executeStep()) {
        auto& set = into.emplace_back();
        RowReader reader(*read);
        reader("athlete", set.athlete);
        reader("day", set.day);
        reader("session", set.session);
        reader("set", set.set);
        reader("ladder", set.ladder);
        reader("rung", set.rung);
        reader("kind", set.kind);
        reader("load_kg", set.loadKg);
        reader("repetitions_planned", set.repetitionsPlanned);
        reader("repetitions_done", set.repetitionsDone);
        reader("effort", set.effort);
    }
}

} // namespace

Expected<SquadRows> Store::squadRows(CivilDate day) const
{
    return guarded(state_->rows->path(), [&]() -> Expected<SquadRows> {
        auto& rows = *state_->rows;
        const auto today = dateText(day);
        SquadRows found;
        const std::string order = " ORDER BY athlete.training_group, athlete.name, athlete.id";
        readAll(rows, " JOIN season ON season.athlete = athlete.id" + std::string(seasonsOfDay) + order, {today},
                found.athletes);
        readAll(rows, " JOIN athlete ON athlete.id = season.athlete" + std::string(seasonsOfDay) + order, {today},
                found.seasons);
        for (const auto& season : found.seasons) {
            readDecisions(rows, season.id, today, found);
            readSets(rows, season.athlete, dateText(std::max(season.start, day - window)), today, found.sets);
            readAll(rows,
                    " WHERE jump.athlete = ?1 AND jump.done_day >= ?2 AND jump.done_day < ?3 AND jump.deleted = 0",
                    {season.athlete, dateText(std::max(season.start, day - week)), today}, found.jumps);
            readAll(rows,
                    " WHERE document.athlete = ?1 AND document.day = ?2 AND document.kind = 'warm-up-check' AND"
                    " document.deleted = 0",
                    {season.athlete, today}, found.checks);
        }
        return found;
    });
}

Expected<std::optional<int>> Store::countedRepetitions(const Identifier& set) const
{
    return guarded(state_->rows->path(), [&]() -> Expected<std::optional<int>> {
        auto read = state_->rows->prepared(
            "SELECT (SELECT count(*) FROM edit_event WHERE lift_set = ?1 AND deleted = 0),"
            " (SELECT count(*) FROM analysis JOIN repetition ON repetition.analysis = analysis.id"
            " WHERE analysis.lift_set = ?1 AND analysis.accepted = 1 AND analysis.deleted = 0"
            " AND repetition.deleted = 0)");
        bindCell(*read, 1, set);
        if (!read->executeStep() || read->getColumn(0).getInt() > 0)
            return std::nullopt;
        return read->getColumn(1).getInt();
    });
}

Expected<std::optional<SetLifted>> Store::lastWork(const Identifier& athlete, CivilDate from, CivilDate before,
                                                   const std::string& ladder, const std::string& rung) const
{
    return guarded(state_->rows->path(), [&]() -> Expected<std::optional<SetLifted>> {
        auto read = state_->rows->prepared(
            "SELECT session.begun_day, session.id, lift_set.id, lift_set.kind, lift_set.load_kg FROM session"
            " JOIN lift_set ON lift_set.session = session.id WHERE session.athlete = ?1 AND session.begun_day >= ?2"
            " AND session.begun_day < ?3 AND session.deleted = 0 AND lift_set.deleted = 0 AND lift_set.ladder = ?4"
            " AND lift_set.rung = ?5 AND lift_set.kind IN ('work', 'maintenance')"
            " ORDER BY session.begun_day DESC, session.begun_utc_s DESC, lift_set.load_kg DESC LIMIT 1");
        bindCell(*read, 1, athlete);
        read->bind(2, dateText(from));
        read->bind(3, dateText(before));
        read->bind(4, ladder);
        read->bind(5, rung);
        if (!read->executeStep())
            return std::nullopt;
        SetLifted set;
        set.athlete = athlete;
        set.ladder = ladder;
        set.rung = rung;
        RowReader reader(*read);
        reader("day", set.day);
        reader("session", set.session);
        reader("set", set.set);
        reader("kind", set.kind);
        reader("load_kg", set.loadKg);
        return set;
    });
}

} // namespace fleetrung::store
