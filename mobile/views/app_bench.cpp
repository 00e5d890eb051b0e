// The part of the program behind Bench: a set begins, runs, and is written.
#include <algorithm>

#include "engine/reps/lift.hpp"
#include "mobile/views/app_view_model.hpp"
#include "mobile/views/new_identifier.hpp"
#include "mobile/views/replay_source.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

namespace
{

/// What is said of a set that is over.
SetDone summaryOf(const std::vector<reps::Repetition>& repetitions, double loadKg)
{
    SetDone done{
        .repetitions = static_cast<int>(repetitions.size()), .timeToPeak = {}, .meanVelocity = {}, .loadKg = loadKg};
    if (repetitions.empty())
        return done;
    double time = 0;
    double velocity = 0;
    for (const auto& repetition : repetitions) {
        time += repetition.timeToPeakVelocity.value;
        velocity += repetition.meanVelocity.value;
    }
    done.timeToPeak = time / static_cast<double>(repetitions.size());
    done.meanVelocity = velocity / static_cast<double>(repetitions.size());
    return done;
}

/// What the user undid during the set is struck out of what the final analysis found: the repetition that overlaps it
/// in time.
Expected<void> strikeOut(Logbook& logbook, const Identifier& id, const std::vector<reps::Repetition>& undone,
                         const logbook::Moment& now)
{
    const auto set = logbook.set(id);
    if (!set)
        return tl::unexpected(set.error());
    for (const auto& found : set->repetitions) {
        const bool meant = std::ranges::any_of(undone, [&found](const reps::Repetition& repetition) {
            return repetition.concentricStart < found.row.concentricEnd &&
                   repetition.concentricEnd > found.row.concentricStart;
        });
        if (!meant)
            continue;
        if (const auto struck = logbook.deleteRepetition(found.row.id, now); !struck)
            return struck;
    }
    return {};
}

} // namespace

void AppViewModel::offerSensor(SensorOffer offer)
{
    sensor_ = std::move(offer);
    bench_.showSensor(BenchViewModel::Ready, sensor_->name);
}

void AppViewModel::connectBench()
{
    connect(&bench_, &BenchViewModel::beginAsked, this, &AppViewModel::beginSet);
    connect(&bench_, &BenchViewModel::endFirst, this, [this] {
        sayProblem(
            {.code = Code::Refused, .place = {}, .message = tr("A set is under way. End it first.").toStdString()});
    });
    connect(&bench_, &BenchViewModel::liftLeft, this, [this] {
        live_.drop();
        unsaved_.reset();
        if (setUnderWay_ && !saving_)
            dropRecording(*setUnderWay_);
        setUnderWay_.reset();
        showIdleSensor();
    });
    connect(&bench_, &BenchViewModel::endAsked, this, [this] {
        if (unsaved_)
            return finishSet(motion::Recording(*unsaved_), std::vector(unsavedBeside_));
        if (!replaying_)
            return live_.end();
        live_.drop();
        bench_.showRepetitions({});
        showIdleSensor();
    });
    connect(&bench_, &BenchViewModel::setTyped, this, &AppViewModel::keepTypedSet);
    connect(&live_, &LiveSession::repetitionFound, this, &AppViewModel::takeRepetition);
    connect(&live_, &LiveSession::barRested, this, &AppViewModel::barHasRested);
    connect(&bench_, &BenchViewModel::setChanged, this, &AppViewModel::listenToBar);
    connect(preferences_, &Preferences::changed, this, &AppViewModel::listenToBar);
    connect(&live_, &LiveSession::failed, this, [this](const QString& message) {
        sayProblem({.code = Code::NotAvailable, .place = {}, .message = message.toStdString()});
    });
    connect(&live_, &LiveSession::stateChanged, this, [this](sensor::LinkState state) {
        if (!listensTo_.isEmpty()) // no set yet: the page of the sensors tells how it is
            return;
        switch (state) {
        case sensor::LinkState::Streaming:
            return bench_.showSensor(BenchViewModel::Streaming, sourceName_);
        case sensor::LinkState::Idle:
            return bench_.showSensor(BenchViewModel::Finished, sourceName_);
        case sensor::LinkState::Searching:
        case sensor::LinkState::Connecting:
        case sensor::LinkState::Lost:
            return bench_.showSensor(BenchViewModel::Lost, sourceName_);
        }
    });
    connect(&live_, &LiveSession::pieceReady, this, [this](int ordinal, const motion::Recording& piece) {
        if (replaying_ || !setUnderWay_)
            return;
        log_->run(
            this,
            [id = *setUnderWay_, ordinal, piece](Logbook& logbook) { return logbook.keepPiece(id, ordinal, piece); },
            [this](const Expected<void>& kept) {
                if (!kept)
                    sayProblem(kept.error());
            });
    });
    connect(&live_, &LiveSession::recorded, this, &AppViewModel::finishSet);
}

void AppViewModel::showIdleSensor()
{
    if (sensor_)
        bench_.showSensor(BenchViewModel::Ready, sensor_->name);
    else
        bench_.showSensor(BenchViewModel::NoSensor);
}

const reps::Lift* AppViewModel::openedMotion() const
{
    const BenchLift* opened = bench_.openedLift();
    const bool longer = bench_.kind() == BenchViewModel::Maintenance;
    return opened ? reps::findLift(longer ? opened->maintenanceLift : opened->plan.lift) : nullptr;
}

/// The sensor of the bar, and those beside it.
void AppViewModel::chooseSource()
{
    sourceName_ = sensor_->name;
    sourceAddress_ = sensor_->address.isEmpty() ? sensor_->name : sensor_->address;
    beside_.clear();
    for (const auto& other : desk_.streaming())
        if (!sensor_->address.isEmpty() && other.address != sensor_->address)
            beside_.push_back(other);
}

namespace
{

std::vector<LiveSession::MakeSource> sourcesOf(const std::vector<StreamingSensor>& sensors)
{
    std::vector<LiveSession::MakeSource> sources;
    for (const auto& one : sensors)
        sources.push_back(one.make);
    return sources;
}

constexpr double restToEnd = 15; // s, the words on Bench and Squad say so; starting value of this project

} // namespace

void AppViewModel::listenToBar()
{
    live_.endAfterRest(preferences_->setsByThemselves() ? restToEnd : 0);
    const reps::Lift* lift = openedMotion();
    const bool wanted = preferences_->setsByThemselves() && lift && sensor_ && !sensor_->address.isEmpty() &&
                        bench_.sensor() == BenchViewModel::Ready && bench_.canBegin() && !setUnderWay_ && !saving_ &&
                        !unsaved_;
    const QString to = wanted ? sensor_->address + QStringLiteral(" ") +
                                    QString::fromUtf8(lift->key.data(), qsizetype(lift->key.size()))
                              : QString();
    if (to == listensTo_)
        return;
    const bool listened = !listensTo_.isEmpty();
    listensTo_ = to;
    if (wanted) {
        replaying_ = false;
        bench_.setReplaying(false);
        chooseSource();
        live_.listen(sensor_->make, *lift, sourcesOf(beside_));
    } else if (listened && !setUnderWay_) {
        live_.drop();
    }
    bench_.showListening(wanted);
}

/// The first one of a bar that was listened to begins the set.
void AppViewModel::takeRepetition(const reps::Repetition& repetition)
{
    if (!listensTo_.isEmpty()) {
        listensTo_.clear();
        setUnderWay_ = newIdentifier();
        setOwner_ = athlete();
        keepFacts();
        bench_.showListening(false);
        bench_.showSensor(BenchViewModel::Streaming, sourceName_);
    }
    bench_.addRepetition(repetition);
}

void AppViewModel::barHasRested()
{
    if (bench_.repetitionCount() > 0)
        return bench_.endSet();
    live_.drop(); // all of it was taken back
    if (setUnderWay_)
        dropRecording(*setUnderWay_);
    setUnderWay_.reset();
    showIdleSensor();
}

void AppViewModel::beginSet()
{
    const reps::Lift* lift = openedMotion();
    if (!lift)
        return;
    replaying_ = !sensor_;
    bench_.setReplaying(replaying_);
    unsaved_.reset();
    listensTo_.clear();
    if (sensor_) {
        setUnderWay_ = newIdentifier();
        setOwner_ = athlete();
        chooseSource();
        keepFacts();
        live_.begin(sensor_->make, *lift, sourcesOf(beside_));
        return bench_.showListening(false);
    }
    log_->run(
        this, [set = *bench_.openedLift()->replay](Logbook& logbook) { return logbook.recording(set); },
        [this, lift](Expected<motion::Recording> recording) {
            if (!recording)
                return sayProblem(recording.error());
            sourceName_ = tr("Stored recording");
            live_.begin(
                [recording = std::move(*recording), speed = replaySpeed_] {
                    return std::make_unique<ReplaySource>(recording, "stored recording", speed);
                },
                *lift);
        });
}

store::LiftSet AppViewModel::openedSet(store::SetKind kind, double loadKg) const
{
    const BenchLift* opened = bench_.openedLift();
    store::LiftSet set;
    set.done = clock_.now();
    set.kind = kind;
    set.loadKg = loadKg;
    if (!opened)
        return set;
    set.lift = opened->plan.lift;
    set.ladder = opened->plan.ladder;
    set.rung = opened->plan.rung;
    set.repetitionsPlanned = bench_.plannedRepetitions().toInt();
    set.boxHeightM = opened->plan.boxHeight;
    if (kind == store::SetKind::Maintenance && opened->plan.maintenance) {
        set.rung = opened->plan.maintenance->rung;
        set.lift = opened->maintenanceLift;
    }
    if (opened->oneSided)
        set.side = bench_.rightSide() ? store::Side::Right : store::Side::Left;
    return set;
}

void AppViewModel::finishSet(const motion::Recording& recording, const std::vector<motion::Recording>& beside)
{
    const auto who = setOwner_;
    if (!who || !bench_.openedLift() || !setUnderWay_)
        return;
    if (saving_)
        return;
    saving_ = true;
    unsaved_ = recording; // until the logbook has it: ending again tries again
    unsavedBeside_ = beside;
    store::LiftSet set = openedSet(bench_.storedKind(), bench_.loadKg().value_or(0));
    set.id = *setUnderWay_;
    const auto kept = bench_.repetitions();
    const auto undone = bench_.undone();
    log_->run(
        this,
        [who = *who, set, recording, kept, undone, others = besideCaptures(beside), source = sourceOfSet(),
         now = clock_.now()](Logbook& logbook) mutable -> Expected<SetDone> {
            const auto session = logbook.openSession(who, "strength", now);
            if (!session)
                return tl::unexpected(session.error());
            set.session = *session;
            const auto recorded = logbook.recordSet(set, recording, source, now, others);
            if (!recorded)
                return tl::unexpected(recorded.error());
            if (const auto struck = strikeOut(logbook, recorded->set, undone, now); !struck)
                return tl::unexpected(struck.error());
            return summaryOf(kept, set.loadKg);
        },
        [this, id = *setUnderWay_](const Expected<SetDone>& done) {
            saving_ = false;
            showIdleSensor();
            if (!done)
                return sayProblem(done.error());
            unsaved_.reset();
            setUnderWay_.reset();
            bench_.showLastSet(*done);
            say(tr("The set is saved."), [id](Logbook& logbook) { return logbook.deleteSet(id); });
            refresh();
        });
}

void AppViewModel::keepTypedSet(const TypedSet& typed)
{
    const auto who = athlete();
    const BenchLift* opened = bench_.openedLift();
    if (!who || !opened)
        return;
    const bool byPeak = opened->plan.metric == season::Metric::PeakVelocity;
    logbook::TypedRepetitions repetitions;
    repetitions.count = typed.repetitions;
    (byPeak ? repetitions.peakVelocity : repetitions.meanVelocity) = typed.meanVelocity;
    repetitions.timeToPeak = typed.timeToPeak;
    store::LiftSet set = openedSet(typed.kind, typed.loadKg);
    set.effort = typed.effort;
    bench_.showLastSet({.repetitions = typed.repetitions,
                        .timeToPeak = typed.timeToPeak,
                        .meanVelocity = typed.meanVelocity,
                        .loadKg = typed.loadKg});
    write(
        [who = *who, set, repetitions, now = clock_.now()](Logbook& logbook) mutable -> Expected<Identifier> {
            const auto session = logbook.openSession(who, "strength", now);
            if (!session)
                return tl::unexpected(session.error());
            set.session = *session;
            return logbook.typeSet(set, repetitions, now);
        },
        tr("The set is saved."),
        [](const Identifier& id) -> Undo { return [id](Logbook& logbook) { return logbook.deleteSet(id); }; });
}

} // namespace fleetrung::views
