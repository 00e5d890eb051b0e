#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/reps/lift.hpp"
#include "engine/season/rules.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/import_parts.hpp"
#include "mobile/logbook/training.hpp"

namespace fleetrung::logbook
{
namespace
{

using DayKey = std::pair<Identifier, CivilDate>;

std::string keyOf(const store::LiftSet& set, CivilDate day, int repetitions)
{
    return dateText(day) + "|" + set.lift + "|" + integerText(static_cast<int>(set.side)) + "|" +
           integerText(std::llround(set.loadKg * 100)) + "|" + integerText(repetitions);
}

std::string textOf(const std::optional<double>& value)
{
    return value ? shortestText(*value) : "-";
}

store::Side sideOf(const std::string& key)
{
    return key == "left" ? store::Side::Left : key == "right" ? store::Side::Right : store::Side::Both;
}

store::SetKind kindOf(const std::string& key)
{
    if (key == "warm-up")
        return store::SetKind::WarmUp;
    if (key == "probe")
        return store::SetKind::Probe;
    return key == "maintenance" ? store::SetKind::Maintenance : store::SetKind::Work;
}

/// The rung that the set was done on, where the lift, the file's word for it and the box leave just one.
void placeOnLadder(store::LiftSet& set, const std::string& word)
{
    const season::Ladder* ladder = nullptr;
    const season::Rung* found = nullptr;
    int candidates = 0;
    for (const auto& one : season::standardSeasonData().ladders)
        for (const auto& rung : one.rungs) {
            if (rung.lift != set.lift)
                continue;
            const bool named = word.empty() || word == rung.key || word == rung.name;
            const bool boxed = !set.boxHeightM || !rung.boxHeight() ||
                               std::abs(*set.boxHeightM - *rung.boxHeight()) <= season::boxTolerance;
            if (!named || !boxed)
                continue;
            ladder = &one;
            found = &rung;
            ++candidates;
        }
    if (candidates != 1)
        return;
    set.ladder = ladder->key;
    set.rung = found->key;
}

store::LiftSet rowOf(const importing::ReadSet& set, const std::string& lift)
{
    store::LiftSet row;
    row.lift = lift;
    row.side = sideOf(set.side);
    row.kind = kindOf(set.kind);
    row.loadKg = set.loadKg;
    row.boxHeightM = set.boxHeight;
    row.effort = set.effort;
    row.note = set.note;
    row.repetitionsDone = set.repetitions;
    if (lift == "free")
        row.note = set.lift + (row.note.empty() ? "" : "; ") + row.note;
    placeOnLadder(row, set.rung);
    return row;
}

class SetImport
{
public:
    SetImport(Logbook& logbook, const ImportPlan& plan) : logbook_(logbook), plan_(plan) {}

    Expected<void> take(const importing::ReadSet& set, ImportedAthletes& athletes, ImportCount& count)
    {
        const auto lift = plan_.lifts.find(set.lift);
        if (lift == plan_.lifts.end() || reps::findLift(lift->second) == nullptr) {
            ++count.skipped;
            return {};
        }
        const auto athlete = athletes.of(set);
        if (!athlete)
            return failure(athlete);
        if (!*athlete) {
            ++count.skipped;
            return {};
        }
        if (auto known = readStored(**athlete); !known)
            return known;
        auto row = rowOf(set, lift->second);
        const std::string who = identifierText(**athlete) + "|", key = keyOf(row, set.day, set.repetitions);
        const bool told = set.clock || !set.attempt.empty();
        const std::string within = who + key + "|" + integerText(set.clock.value_or(-1)) + "|" + set.attempt;
        const bool twice = told && !inFile_.insert(within).second;
        const int place = twice ? 0 : alike_.next(who + key);
        if (twice || alike_.isStored(who + key, place)) {
            ++count.duplicates;
            return {};
        }
        row.id = importedId("imported set", **athlete,
                            key + "|" + textOf(set.timeToPeak) + "|" + textOf(set.meanVelocity) + "|" +
                                textOf(set.peakVelocity) + "|" + textOf(set.range),
                            place);
        return write(row, set, **athlete, count);
    }

private:
    struct Day {
        Identifier session;
        int sets = 0; ///< the highest ordinal so far
    };

    Expected<void> readStored(const Identifier& athlete)
    {
        if (!read_.insert(athlete).second)
            return {};
        const auto sessions = readTraining(logbook_.rows(), {.athlete = athlete});
        if (!sessions)
            return failure(sessions);
        for (const auto& session : *sessions) {
            const auto date = session.row.begun.trainingDay;
            for (const auto& set : session.sets)
                alike_.stored(identifierText(athlete) + "|" + keyOf(set.row, date, set.done));
            if (session.row.kind == "strength")
                days_.emplace(DayKey{athlete, date}, Day{session.row.id, -1});
        }
        return {};
    }

    /// The session of that day, with the place of its next set.
    Expected<Day*> dayOf(const Identifier& athlete, const Moment& moment, ImportCount& count)
    {
        const DayKey key{athlete, moment.trainingDay};
        if (const auto found = days_.find(key); found == days_.end()) {
            const auto session = logbook_.openSession(athlete, "strength", moment);
            if (!session)
                return failure(session);
            count.receipt.sessions.push_back(*session);
            days_[key] = {*session, 0};
        } else if (found->second.sets < 0) {
            const auto sets =
                logbook_.rows().list<store::LiftSet>({.session = found->second.session, .deletedToo = true});
            if (!sets)
                return failure(sets);
            found->second.sets = 0;
            for (const auto& set : *sets)
                found->second.sets = std::max(found->second.sets, set.ordinal);
        }
        return &days_[key];
    }

    Expected<void> write(store::LiftSet row, const importing::ReadSet& set, const Identifier& athlete,
                         ImportCount& count)
    {
        auto there = logbook_.rows().find<store::LiftSet>(row.id);
        if (!there && there.error().code != Code::NotFound)
            return failure(there);
        if (there && !there->deleted) { // changed since its import
            ++count.duplicates;
            return {};
        }
        if (plan_.dryRun) {
            ++count.added;
            return {};
        }
        const int before = ofDay_[{athlete, set.day}]++;
        row.done = momentOf(set, before, plan_);
        const auto day = dayOf(athlete, row.done, count);
        if (!day)
            return failure(day);
        row.session = (*day)->session;
        row.ordinal = ++(*day)->sets;
        const logbook::TypedRepetitions typed{.count = set.repetitions,
                                              .meanVelocity = set.meanVelocity,
                                              .peakVelocity = set.peakVelocity,
                                              .timeToPeak = set.timeToPeak,
                                              .range = set.range};
        const auto written = there ? logbook_.changeSet(row).and_then([&] { return logbook_.restoreSet(row.id); })
                                   : outcome(logbook_.typeSet(row, typed, row.done));
        if (!written)
            return written;
        ++count.added;
        count.receipt.sets.push_back(row.id);
        return {};
    }

    Logbook& logbook_;
    const ImportPlan& plan_;
    Alike alike_;
    std::set<Identifier> read_;
    std::set<std::string> inFile_;
    std::map<DayKey, Day> days_;
    std::map<DayKey, int> ofDay_;
};

} // namespace

Expected<ImportCount> importSets(Logbook& logbook, const std::vector<importing::ReadSet>& sets, const ImportPlan& plan)
{
    SetImport import(logbook, plan);
    std::optional<ImportedAthletes> athletes;
    return asOne(logbook, plan, sets.size(), [&](std::size_t row, ImportCount& count) {
        if (!athletes)
            athletes.emplace(logbook, plan, count);
        return import.take(sets[row], *athletes, count);
    });
}

} // namespace fleetrung::logbook
