#include <cmath>

#include "engine/base/numbers.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/import_parts.hpp"

namespace fleetrung::logbook
{
namespace
{

std::string rounded(double value, double steps)
{
    return integerText(std::llround(value * steps));
}

/// Day, centimetres and milliseconds: rows of one key are the same run, or cannot be told apart.
std::string keyOf(const store::Sprint& run)
{
    std::string key = dateText(run.run.trainingDay) + "|" + rounded(run.distance, 100) + "|" + rounded(run.time, 1000);
    for (const auto& split : run.splits)
        key += "|" + rounded(split.distance, 100) + ":" + rounded(split.time, 1000);
    return key;
}

store::Sprint rowOf(const importing::ReadRun& run)
{
    store::Sprint row;
    row.run.trainingDay = run.day;
    row.distance = run.distance;
    row.time = run.time;
    for (const auto& split : run.splits)
        row.splits.push_back({split.distance, split.time});
    row.start = run.start;
    row.runIn = run.runIn;
    row.timing = run.timing;
    row.surface = run.surface;
    row.shoes = run.shoes;
    row.windMps = run.wind;
    row.temperatureC = run.temperature;
    row.effort = run.effort;
    row.competition = run.competition;
    row.note = run.note;
    row.test = run.trial;
    row.reactionS = run.reaction;
    row.contactS = run.contact;
    row.stepLengthM = run.stepLength;
    return row;
}

class RunImport
{
public:
    RunImport(Logbook& logbook, const ImportPlan& plan) : logbook_(logbook), plan_(plan) {}

    Expected<void> take(const importing::ReadRun& run, ImportedAthletes& athletes, ImportCount& count)
    {
        const auto athlete = athletes.of(run);
        if (!athlete)
            return failure(athlete);
        if (!*athlete) {
            ++count.skipped;
            return {};
        }
        if (auto known = readStored(**athlete); !known)
            return known;
        auto row = rowOf(run);
        row.athlete = **athlete;
        const std::string who = identifierText(row.athlete) + "|", key = keyOf(row);
        const std::string within = who + key + "|" + integerText(run.clock.value_or(-1)) + "|" + run.attempt;
        if (!inFile_.insert(within).second) {
            ++count.duplicates;
            return {};
        }
        const int place = alike_.next(who + key);
        if (alike_.isStored(who + key, place)) {
            ++count.duplicates;
            return {};
        }
        row.run = momentOf(run, ofDay_[who + dateText(run.day)]++, plan_);
        row.id = importedId("imported run", row.athlete, key, place);
        return write(row, count);
    }

private:
    Expected<void> readStored(const Identifier& athlete)
    {
        if (!read_.insert(athlete).second)
            return {};
        return logbook_.sprints(athlete).map([&](const std::vector<store::Sprint>& runs) {
            for (const auto& run : runs)
                alike_.stored(identifierText(athlete) + "|" + keyOf(run));
        });
    }

    /// A row that an undo took back comes back as it is now; one that was changed since its import stays.
    Expected<void> write(const store::Sprint& row, ImportCount& count)
    {
        if (plan_.dryRun) {
            ++count.added;
            return {};
        }
        const auto added = logbook_.rows().insert(row);
        if (!added)
            return failure(added);
        if (!*added) {
            const auto there = logbook_.rows().find<store::Sprint>(row.id);
            if (!there)
                return failure(there);
            if (!there->deleted) {
                ++count.duplicates;
                return {};
            }
            auto restored =
                logbook_.changeSprint(row).and_then([&] { return logbook_.setSprintDeleted(row.id, false); });
            if (!restored)
                return restored;
        }
        ++count.added;
        count.receipt.sprints.push_back(row.id);
        return {};
    }

    Logbook& logbook_;
    const ImportPlan& plan_;
    Alike alike_;
    std::set<Identifier> read_;
    std::set<std::string> inFile_;
    std::map<std::string, int> ofDay_;
};

} // namespace

Expected<ImportCount> importRuns(Logbook& logbook, const std::vector<importing::ReadRun>& runs, const ImportPlan& plan)
{
    RunImport import(logbook, plan);
    std::optional<ImportedAthletes> athletes;
    return asOne(logbook, plan, runs.size(), [&](std::size_t row, ImportCount& count) {
        if (!athletes)
            athletes.emplace(logbook, plan, count);
        return import.take(runs[row], *athletes, count);
    });
}

} // namespace fleetrung::logbook
