// The part of the program behind Track: what is typed goes into the logbook, each with its undo.
#include <algorithm>
#include <memory>

#include "mobile/logbook/run_fit.hpp"
#include "mobile/views/app_view_model.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

namespace
{

using SetDeleted = Expected<void> (Logbook::*)(const Identifier&, bool);

/// The mark of deletion set or taken off one row.
auto marking(SetDeleted set, bool deleted)
{
    return [set, deleted](const Identifier& row) {
        return [set, deleted, row](Logbook& logbook) { return (logbook.*set)(row, deleted); };
    };
}

/// With the fits of all runs before it: work for the thread of the logbook.
Expected<logbook::RunStory> storyOf(const Logbook& logbook, const Identifier& athlete, const Identifier& id,
                                    bool useAll)
{
    const auto who = logbook.athlete(athlete);
    const auto runs = logbook.sprints(athlete);
    if (!who || !runs)
        return tl::unexpected(!who ? who.error() : runs.error());
    const auto run = std::ranges::find(*runs, id, &store::Sprint::id);
    if (run == runs->end())
        return fail(Code::NotFound, "run", "is not in the log; it may have been deleted");
    return logbook::runStory(*run, *runs, *who, useAll);
}

} // namespace

void AppViewModel::connectTrack()
{
    const auto stamped = [this](CivilDate day) {
        store::Moment moment = clock_.now();
        moment.trainingDay = day;
        return moment;
    };
    connect(&track_, &TrackViewModel::runAdded, this, [this, stamped](store::Sprint run) {
        const auto id = athlete();
        if (!id)
            return;
        run.athlete = *id;
        run.run = stamped(run.run.trainingDay);
        write([run](Logbook& logbook) { return logbook.addSprint(run); }, tr("The run is saved."),
              marking(&Logbook::setSprintDeleted, true));
    });
    connect(&track_, &TrackViewModel::runOpened, this, [this](const Identifier& run, bool useAll) {
        const auto id = athlete();
        if (!id)
            return;
        log_->run(
            this, [who = *id, run, useAll](const Logbook& logbook) { return storyOf(logbook, who, run, useAll); },
            [this](Expected<logbook::RunStory> story) {
                if (!story)
                    return sayProblem(story.error());
                track_.showRun(std::move(*story));
            });
    });
    connect(&track_, &TrackViewModel::jumpsAdded, this, [this, stamped](std::vector<store::Jump> jumps) {
        const auto id = athlete();
        if (!id || jumps.empty())
            return;
        for (auto& jump : jumps) {
            jump.athlete = *id;
            jump.done = stamped(jump.done.trainingDay);
        }
        writeJumps(std::move(jumps));
    });
    const auto remove = [this](const QString& key, SetDeleted set, const QString& said) {
        const auto id = parseIdentifier(key.toStdString());
        if (!id)
            return;
        write([id = *id, set](Logbook& logbook) { return (logbook.*set)(id, true).map([id] { return id; }); }, said,
              marking(set, false));
    };
    connect(&track_, &TrackViewModel::runRemoved, this,
            [remove](const QString& key) { remove(key, &Logbook::setSprintDeleted, tr("The run is deleted.")); });
    connect(&track_, &TrackViewModel::jumpRemoved, this,
            [remove](const QString& key) { remove(key, &Logbook::setJumpDeleted, tr("The jump is deleted.")); });
}

/// All of them or none, and one undo for all.
void AppViewModel::writeJumps(std::vector<store::Jump> jumps)
{
    const auto ids = std::make_shared<std::vector<Identifier>>();
    const auto add = [jumps, ids](Logbook& logbook) -> Expected<void> {
        for (const auto& jump : jumps) {
            const auto id = logbook.addJump(jump);
            if (!id)
                return tl::unexpected(id.error());
            ids->push_back(*id);
        }
        return {};
    };
    const auto takeBack = [ids](Logbook& logbook) {
        return logbook.inTransaction([&]() -> Expected<void> {
            for (const auto& id : *ids)
                if (auto gone = logbook.setJumpDeleted(id, true); !gone)
                    return gone;
            return {};
        });
    };
    write(
        [add, ids](Logbook& logbook) {
            return logbook.inTransaction([&] { return add(logbook); }).map([ids] { return ids->front(); });
        },
        jumps.size() == 1 ? tr("The jump is saved.") : tr("%1 jumps are saved.").arg(jumps.size()),
        [takeBack](const Identifier&) -> Undo { return takeBack; });
}

} // namespace fleetrung::views
