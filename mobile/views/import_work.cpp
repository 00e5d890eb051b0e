#include "mobile/views/import_work.hpp"

#include <algorithm>

#include <QDateTime>

#include "engine/reps/lift.hpp"

namespace fleetrung::views
{
namespace
{

constexpr std::size_t shown = 5; // rows of the preview

/// By the device's time zone on that day.
store::Moment deviceMoment(CivilDate day, int second, const store::Moment& now)
{
    constexpr int aDay = 24 * 3600;
    const QDate date = QDate(1970, 1, 1).addDays(day.time_since_epoch().count() + second / aDay);
    const QDateTime local(date, QTime::fromMSecsSinceStartOfDay(second % aDay * 1000));
    store::Moment moment = now;
    moment.utcSeconds = local.toSecsSinceEpoch();
    moment.offsetMinutes = local.offsetFromUtc() / 60;
    moment.trainingDay = day;
    return moment;
}

ImportRow shownRow(const importing::ReadRun& run)
{
    return {run.athlete, {}, run.day, run.clock, run.distance, run.time, 0, 0, run.splits};
}

ImportRow shownRow(const importing::ReadSet& set)
{
    return {set.athlete, set.lift, set.day, set.clock, 0, 0, set.loadKg, set.repetitions, {}};
}

std::function<bool(int, int)> reporting(const std::shared_ptr<ImportProgress>& progress)
{
    return [progress](int done, int all) {
        progress->done = done;
        progress->all = all;
        return !progress->stopped;
    };
}

Expected<void> chooseMapping(const ImportJob& job, ImportSeen& seen)
{
    seen.mapping = job.mapping;
    if (!job.fresh)
        return {};
    auto proposal = importing::propose(*job.table, job.mapping.kind);
    seen.remarks = std::move(proposal.remarks);
    seen.mapping = std::move(proposal.mapping);
    if (job.kept.empty())
        return {};
    const auto kept = importing::parseMapping(job.kept);
    if (!kept || kept->kind != job.mapping.kind)
        return {}; // of another version: the proposal stands
    if (auto fitting = importing::remembered(*job.table, *kept)) {
        seen.mapping = std::move(*fitting);
        seen.remembered = true;
    }
    return {};
}

template <class Rows>
void matchRows(const ImportJob& job, const std::vector<store::Athlete>& squad, const Rows& rows, ImportSeen& seen)
{
    seen.names = logbook::matchNames(logbook::namesIn(rows), squad, seen.mapping.athletes);
    for (auto& [name, choice] : seen.names) {
        if (const auto chosen = job.names.find(name); chosen != job.names.end())
            choice = chosen->second;
        else if (const auto current = parseIdentifier(job.current); name.empty() && current)
            choice = {logbook::NameChoice::Match, *current};
    }
    for (std::size_t i = 0; i < std::min(shown, rows.size()); ++i)
        seen.first.push_back(shownRow(rows[i]));
}

template <class Rows>
Expected<ImportSeen> bring(logbook::Logbook& logbook, const ImportJob& job, bool write, const Rows& rows,
                           const std::vector<store::Athlete>& squad,
                           Expected<logbook::ImportCount> (*import)(logbook::Logbook&, const Rows&,
                                                                    const logbook::ImportPlan&),
                           ImportSeen seen)
{
    matchRows(job, squad, rows, seen);
    logbook::ImportPlan plan;
    for (const auto& [name, choice] : seen.names)
        plan.names[name] = choice;
    for (const auto& [word, key] : seen.lifts)
        plan.lifts[word] = key;
    plan.momentOf = [now = job.now](CivilDate day, int second) { return deviceMoment(day, second, now); };
    plan.progress = reporting(job.progress);
    plan.dryRun = !write;
    auto count = import(logbook, rows, plan);
    if (!count)
        return tl::unexpected(count.error());
    seen.count = std::move(*count);
    return seen;
}

} // namespace

std::vector<importing::KnownLift> importLifts()
{
    std::vector<importing::KnownLift> known;
    for (const auto& lift : reps::allLifts())
        known.push_back({std::string(lift.key), std::string(lift.name)});
    return known;
}

Expected<std::shared_ptr<const importing::Table>> openImport(const FileHand& files, const QString& name)
{
    const auto read = [&files](const QString& file) {
        const QByteArray bytes = files.last(file);
        return importing::readTable({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    };
    auto table = read(name);
    if (!table)
        return fail(table.error().code,
                    name.toStdString() + (table.error().place.empty() ? "" : ", " + table.error().place),
                    table.error().message);
    for (const auto& more : importing::companions(*table)) {
        const auto other = read(QString::fromStdString(more));
        if (!other) // not there: what it says more is left out
            continue;
        if (auto joint = importing::joined(*table, *other))
            table = std::move(joint);
    }
    return std::make_shared<const importing::Table>(std::move(*table));
}

Expected<ImportSeen> runImport(logbook::Logbook& logbook, const ImportJob& job, bool write)
{
    ImportSeen seen;
    if (auto chosen = chooseMapping(job, seen); !chosen)
        return tl::unexpected(chosen.error());
    const auto squad = logbook.squad(job.now.trainingDay);
    if (!squad)
        return tl::unexpected(squad.error());
    std::vector<store::Athlete> athletes;
    for (const auto& summary : *squad) {
        athletes.push_back(summary.athlete);
        seen.squad.emplace_back(identifierText(summary.athlete.id), summary.athlete.name);
    }
    seen.questions = importing::questions(*job.table, seen.mapping);
    if (!seen.questions.empty())
        return seen;
    const importing::Reading reading{job.now.trainingDay, reporting(job.progress)};
    if (seen.mapping.kind == importing::Kind::Runs) {
        auto runs = importing::readRuns(*job.table, seen.mapping, reading);
        if (!runs)
            return tl::unexpected(runs.error());
        seen.bad = std::move(runs->bad);
        return bring(logbook, job, write, runs->runs, athletes, logbook::importRuns, std::move(seen));
    }
    auto sets = importing::readSets(*job.table, seen.mapping, reading);
    if (!sets)
        return tl::unexpected(sets.error());
    seen.bad = std::move(sets->bad);
    seen.lifts = importing::liftWords(*job.table, seen.mapping, importLifts());
    return bring(logbook, job, write, sets->sets, athletes, logbook::importSets, std::move(seen));
}

} // namespace fleetrung::views
