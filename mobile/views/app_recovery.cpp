// The part of the program that keeps a set through a crash: what the set under way is goes to the disk as it begins,
// its samples once a second (app_bench.cpp), and what was cut off is offered at the next start.
#include "engine/reps/analyse.hpp"
#include "mobile/views/app_view_model.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

namespace
{

/// What was left of a set, counted as it would be when kept.
struct CutOff {
    Identifier recording;
    std::string lift;               ///< name; empty: it is not known what it was
    std::optional<int> repetitions; ///< none: it cannot be read
};

Expected<std::optional<CutOff>> firstCutOff(Logbook& logbook)
{
    const auto unfinished = logbook.unfinishedRecordings();
    if (!unfinished)
        return tl::unexpected(unfinished.error());
    if (unfinished->empty())
        return std::optional<CutOff>();
    const auto& left = unfinished->front();
    CutOff cutOff{.recording = left.recording, .lift = {}, .repetitions = {}};
    const reps::Lift* lift = left.facts ? reps::findLift(left.facts->set.lift) : nullptr;
    if (!lift)
        return std::optional(cutOff);
    cutOff.lift = std::string(lift->name);
    const auto recording = logbook.unfinishedRecording(left.recording);
    if (!recording)
        return std::optional(cutOff);
    if (const auto analysis = reps::analyseSet(*recording, *lift))
        cutOff.repetitions = static_cast<int>(analysis->repetitions.size());
    return std::optional(cutOff);
}

} // namespace

void AppViewModel::keepFacts()
{
    if (!setOwner_ || !setUnderWay_)
        return;
    logbook::SetUnderWay facts;
    facts.athlete = *setOwner_;
    facts.set = openedSet(bench_.storedKind(), bench_.loadKg().value_or(0));
    facts.set.id = *setUnderWay_;
    facts.source = sourceOfSet();
    if (const SavedSensor* sensor = desk_.saved(sourceAddress_)) {
        facts.sensor = sensor->map.traits;
        facts.hasGyroscope = sensor->map.hasGyroscope();
    }
    facts.begun = clock_.now();
    log_->run(
        this, [facts](Logbook& logbook) { return logbook.beginRecording(facts); },
        [this](const Expected<void>& begun) {
            if (!begun)
                sayProblem(begun.error());
        });
}

std::vector<logbook::BesideRecording> AppViewModel::besideCaptures(const std::vector<motion::Recording>& beside) const
{
    std::vector<logbook::BesideRecording> captures;
    for (std::size_t i = 0; i < std::min(beside.size(), beside_.size()); ++i)
        if (!beside[i].samples.empty())
            captures.push_back({{beside_[i].address.toStdString(), placeKey(beside_[i].place)}, beside[i]});
    return captures;
}

void AppViewModel::dropRecording(const Identifier& set)
{
    log_->run(
        this, [set](Logbook& logbook) { return logbook.dropRecording(set); },
        [this](const Expected<void>& dropped) {
            if (!dropped)
                sayProblem(dropped.error());
        });
}

void AppViewModel::lookForCutOff()
{
    log_->run(this, firstCutOff, [this](const Expected<std::optional<CutOff>>& found) {
        if (!found)
            return sayProblem(found.error());
        if (!*found || setRuns())
            return;
        const CutOff& cutOff = **found;
        cutOff_ = cutOff.recording;
        const QString lift = QString::fromStdString(cutOff.lift);
        if (!cutOff.repetitions)
            return bench_.showCutOff(lift.isEmpty() ? tr("A set was cut off, and what it was is not known.")
                                                    : tr("%1: the set was cut off too early to be read.").arg(lift),
                                     false);
        const QString count = *cutOff.repetitions == 1 ? tr("1 repetition is kept")
                                                       : tr("%1 repetitions are kept").arg(*cutOff.repetitions);
        bench_.showCutOff(tr("%1: the set was cut off. %2.").arg(lift, count), true);
    });
}

void AppViewModel::answerCutOff(bool kept)
{
    if (!cutOff_)
        return;
    const Identifier recording = *std::exchange(cutOff_, {});
    log_->run(
        this,
        [recording, kept](Logbook& logbook) -> Expected<std::optional<Identifier>> {
            const auto recorded = logbook.finishRecording(recording);
            if (kept)
                return recorded.map([](const logbook::RecordedSet& set) { return std::optional(set.set); });
            // Dropped is a set that is kept and deleted, so that it can be taken back; what cannot be read is gone.
            if (!recorded)
                return logbook.dropRecording(recording).map([] { return std::optional<Identifier>(); });
            return logbook.deleteSet(recorded->set).map([&] { return std::optional(recorded->set); });
        },
        [this, kept](const Expected<std::optional<Identifier>>& done) {
            if (!done)
                sayProblem(done.error());
            else if (kept)
                say(tr("The set is saved."), [id = **done](Logbook& logbook) { return logbook.deleteSet(id); });
            else if (*done)
                say(tr("What was left of the set is dropped."),
                    [id = **done](Logbook& logbook) { return logbook.restoreSet(id); });
            else
                say(tr("What was left of the set is dropped."));
            refresh();
            lookForCutOff();
        });
}

} // namespace fleetrung::views
