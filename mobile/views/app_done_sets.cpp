// The part of the program behind the sets that are done: what is said of them goes into the logbook, each with its
// undo.
#include "mobile/views/app_view_model.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

namespace
{

/// A change of one row, which the logbook gives no id for.
template <typename Change> auto onRow(const Identifier& row, Change change)
{
    return
        [row, change](Logbook& logbook) -> Expected<Identifier> { return change(logbook).map([row] { return row; }); };
}

} // namespace

void AppViewModel::connectDoneSets()
{
    connect(&doneSets_, &DoneSetsViewModel::setSaid, this,
            [this](const store::LiftSet& now, const store::LiftSet& before) {
                write(onRow(now.id, [now](Logbook& logbook) { return logbook.changeSet(now); }),
                      tr("The set is changed."), [before](const Identifier&) -> Undo {
                          return [before](Logbook& logbook) { return logbook.changeSet(before); };
                      });
            });
    connect(&doneSets_, &DoneSetsViewModel::setRemoved, this, [this](const Identifier& set) {
        write(onRow(set, [set](Logbook& logbook) { return logbook.deleteSet(set); }), tr("The set is deleted."),
              [](const Identifier& id) -> Undo { return [id](Logbook& logbook) { return logbook.restoreSet(id); }; });
    });
    connect(&doneSets_, &DoneSetsViewModel::struckOut, this, [this](const Identifier& repetition, bool out) {
        const auto put = [now = clock_.now()](const Identifier& id, bool struck) {
            return [id, struck, now](Logbook& logbook) {
                return struck ? logbook.deleteRepetition(id, now) : logbook.restoreRepetition(id, now);
            };
        };
        write(onRow(repetition, put(repetition, out)),
              out ? tr("The repetition is struck out.") : tr("The repetition counts again."),
              [put, out](const Identifier& id) -> Undo { return put(id, !out); });
    });
    connect(&doneSets_, &DoneSetsViewModel::evidenceSaid, this, [this](const Identifier& repetition, bool counts) {
        const auto put = [now = clock_.now()](const Identifier& id, bool evidence) {
            return [id, evidence, now](Logbook& logbook) { return logbook.relabelEvidence(id, evidence, now); };
        };
        write(onRow(repetition, put(repetition, counts)),
              counts ? tr("The repetition is evidence again.") : tr("The repetition is no evidence."),
              [put, counts](const Identifier& id) -> Undo { return put(id, !counts); });
    });
    connect(&doneSets_, &DoneSetsViewModel::sideSaid, this,
            [this](const Identifier& repetition, store::Side side, store::Side before) {
                const auto put = [now = clock_.now()](const Identifier& id, store::Side to) {
                    return [id, to, now](Logbook& logbook) { return logbook.relabelSide(id, to, now); };
                };
                write(onRow(repetition, put(repetition, side)), tr("The side is changed."),
                      [put, before](const Identifier& id) -> Undo { return put(id, before); });
            });
    connect(&doneSets_, &DoneSetsViewModel::repetitionAdded, this,
            [this](const Identifier& set, double atTime, const logbook::TypedRepetitions& values) {
                const auto now = clock_.now();
                write([set, atTime, values,
                       now](Logbook& logbook) { return logbook.addRepetition(set, atTime, values, now); },
                      tr("The repetition is added."),
                      [now](const Identifier& id) -> Undo {
                          return [id, now](Logbook& logbook) { return logbook.deleteRepetition(id, now); };
                      });
            });
}

} // namespace fleetrung::views
