#include "mobile/logbook/track_log.hpp"

#include <algorithm>
#include <map>

#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/run_fit.hpp"
#include "mobile/logbook/training.hpp"

namespace fleetrung::logbook
{
namespace
{

constexpr std::chrono::days aYear{366};
constexpr std::chrono::days weeksOfTheMean{7 * (track::weeksBefore + 1)};

std::optional<jumps::Measured> measured(const store::Metric& metric)
{
    return metric.value ? std::optional(jumps::Measured{*metric.value, metric.uncertainty.value_or(0)}) : std::nullopt;
}

std::optional<double> valueOf(const std::optional<jumps::Measured>& measured)
{
    return measured ? std::optional(measured->value) : std::nullopt;
}

} // namespace

track::Run trackRun(const store::Sprint& row)
{
    track::Run run;
    run.day = row.run.trainingDay;
    run.flying = row.start == "flying";
    run.distance = row.distance;
    run.runIn = row.runIn;
    run.time = row.time;
    for (const auto& split : row.splits)
        run.splits.push_back({split.distance, split.time});
    run.options = splitOptions(row);
    run.wind = row.windMps;
    return run;
}

track::Work workOf(const store::TrackWork& row)
{
    return {row.done.trainingDay, track::workKindNamed(row.kind).value_or(track::WorkKind::Easy),
            row.distance,         row.repetitions,
            row.bestTimeS,        row.effort,
            row.timing == "hand"};
}

track::JumpValues valuesOf(const store::Jump& jump)
{
    return track::jumpValues(measured(jump.contact), measured(jump.flight), measured(jump.height));
}

std::vector<track::DropJump> dropJumpsOf(std::span<const store::Jump> jumps)
{
    std::vector<track::DropJump> found;
    for (const auto& jump : jumps) {
        if (jump.kind != "drop-jump" || !jump.boxHeightM)
            continue;
        const auto values = valuesOf(jump);
        found.push_back({jump.done.trainingDay, *jump.boxHeightM, jump.contact.value, jump.flight.value,
                         valueOf(values.height), valueOf(values.rsi), false});
    }
    return found;
}

std::vector<season::ContactsDone> dropJumpContacts(std::span<const SessionView> training,
                                                   std::span<const store::Jump> jumps,
                                                   const std::function<bool(const store::LiftSet&)>& isDropJump)
{
    std::map<std::pair<CivilDate, Identifier>, std::pair<int, int>> bySession; // repetitions of sets, single jumps
    for (const auto& session : training)
        for (const auto& set : session.sets)
            if (isDropJump(set.row))
                bySession[{session.row.begun.trainingDay, session.row.id}].first += set.done;
    for (const auto& jump : jumps)
        if (jump.kind == "drop-jump")
            ++bySession[{jump.done.trainingDay, jump.session.value_or(Identifier{})}].second;
    std::map<CivilDate, int> byDay;
    for (const auto& [place, contacts] : bySession)
        byDay[place.first] += std::max(contacts.first, contacts.second);
    std::vector<season::ContactsDone> found;
    for (const auto& [day, contacts] : byDay)
        if (contacts > 0)
            found.push_back({day, contacts});
    return found;
}

std::vector<track::Contacts> allContacts(std::span<const season::ContactsDone> dropJumps,
                                         std::span<const store::Jump> jumps)
{
    std::vector<track::Contacts> all;
    for (const auto& done : dropJumps)
        all.push_back({done.day, done.contacts});
    for (const auto& jump : jumps)
        if (jump.kind != "drop-jump")
            all.push_back({jump.done.trainingDay, std::max(1, jump.repetitions)});
    return all;
}

track::FastMetres TrackLog::fastOf(const store::Sprint& run) const
{
    return track::fastMetres(track::know(trackRun(run)), track::bestSpeed(runs, run.run.trainingDay));
}

track::FastMetres TrackLog::fastOf(const store::TrackWork& row) const
{
    return track::fastMetres(workOf(row), track::bestSpeed(runs, row.done.trainingDay));
}

Expected<TrackLog> readTrackLog(const Logbook& logbook, const Identifier& athlete, CivilDate from, CivilDate to)
{
    const auto before = from - weeksOfTheMean;
    const auto sprints = logbook.sprints(athlete, from - aYear, to);
    const auto work = logbook.trackWork(athlete, before, to);
    const auto jumps = logbook.jumps(athlete, before, to);
    const auto training = readTraining(logbook.rows(), {.athlete = athlete, .from = before, .to = to});
    if (!sprints)
        return failure(sprints);
    if (!work)
        return failure(work);
    if (!jumps)
        return failure(jumps);
    if (!training)
        return failure(training);
    TrackLog log;
    for (const auto& run : *sprints)
        log.runs.push_back(track::know(trackRun(run)));
    std::ranges::transform(*work, std::back_inserter(log.work), workOf);
    log.contacts = allContacts(
        dropJumpContacts(*training, *jumps, [](const store::LiftSet& set) { return set.lift == "drop-jump"; }), *jumps);
    return log;
}

} // namespace fleetrung::logbook
