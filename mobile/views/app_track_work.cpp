// The part of the program behind the work on Track: worked out while it is looked at, each entry with its undo.
#include "mobile/logbook/track_log.hpp"
#include "mobile/views/app_view_model.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

namespace
{

constexpr std::chrono::days shownBefore{7 * 7}; ///< seven weeks and the one under way

/// Best speed is needed of every day with work: a year of runs before the first.
Expected<TrackWorkData> trackWorkData(const Logbook& logbook, const Identifier& athlete, CivilDate today)
{
    auto rows = logbook.trackWork(athlete, {}, today);
    if (!rows)
        return tl::unexpected(rows.error());
    const CivilDate firstWeek = today - shownBefore;
    const CivilDate from = rows->empty() ? firstWeek : std::min(firstWeek, rows->front().done.trainingDay);
    const auto log = logbook::readTrackLog(logbook, athlete, from, today);
    if (!log)
        return tl::unexpected(log.error());
    TrackWorkData data;
    data.weeks = track::weeks(log->runs, log->work, log->contacts, firstWeek, today);
    for (auto& row : *rows) {
        const auto fast = log->fastOf(row);
        data.work.push_back({std::move(row), fast});
    }
    return data;
}

} // namespace

void AppViewModel::readTrackWork()
{
    const auto id = athlete();
    if (!id)
        return trackWork_.show(clock_.today(), {});
    if (!trackWork_.shown())
        return;
    log_->run(
        this, [id, today = clock_.today()](const Logbook& logbook) { return trackWorkData(logbook, *id, today); },
        [this, id](Expected<TrackWorkData> data) {
            if (athlete() != id) // another one is shown by now
                return;
            if (!data)
                return sayProblem(data.error());
            trackWork_.show(clock_.today(), std::move(*data));
        });
}

void AppViewModel::connectTrackWork()
{
    connect(&trackWork_, &TrackWorkViewModel::asked, this, &AppViewModel::readTrackWork);
    connect(&trackWork_, &TrackWorkViewModel::workAdded, this, [this](store::TrackWork work) {
        const auto id = athlete();
        if (!id)
            return;
        const CivilDate day = work.done.trainingDay;
        work.athlete = *id;
        work.done = clock_.now();
        work.done.trainingDay = day;
        write([work](Logbook& logbook) { return logbook.addTrackWork(work); }, tr("The work is saved."),
              [](const Identifier& added) -> Undo {
                  return [added](Logbook& logbook) { return logbook.setTrackWorkDeleted(added, true); };
              });
    });
    connect(&trackWork_, &TrackWorkViewModel::workRemoved, this, [this](const QString& key) {
        const auto id = parseIdentifier(key.toStdString());
        if (!id)
            return;
        write([id](Logbook& logbook) { return logbook.setTrackWorkDeleted(*id, true).map([id] { return *id; }); },
              tr("The work is deleted."),
              [](const Identifier& gone) -> Undo {
                  return [gone](Logbook& logbook) { return logbook.setTrackWorkDeleted(gone, false); };
              });
    });
}

} // namespace fleetrung::views
