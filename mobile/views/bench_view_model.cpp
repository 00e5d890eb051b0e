#include "mobile/views/bench_view_model.hpp"

#include <algorithm>
#include <cmath>

#include "mobile/views/bar_words.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/forms.hpp"

namespace fleetrung::views
{
namespace
{

const QString dot = QStringLiteral(" · ");
constexpr double mostKg = 600; // beyond sense: a slip of the finger

} // namespace

BenchViewModel::BenchViewModel(Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), plates_(preferences),
      lifts_({"key", "name", "load", "plan", "rung", "band", "progress", "done", "extra"}, this),
      notes_({"text", "caution"}, this), why_({"about", "text"}, this),
      checkEvidence_({"mark", "name", "value", "allowed"}, this), sharers_({"key", "name", "shortName", "here"}, this),
      others_({"title", "detail", "done"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        convertLoad();
        showLifts();
        showNotes();
        showOthers();
        showCheck();
        emit sessionChanged();
        emit setChanged();
    });
    loadUnits_ = preferences->units();
    restTick_.setInterval(1000);
    connect(&restTick_, &QTimer::timeout, this, &BenchViewModel::restChanged);
}

// --- The open lift

const BenchLift* BenchViewModel::openedLift() const
{
    return open_ ? &day_.lifts[*open_] : nullptr;
}

std::optional<season::PlannedSet> BenchViewModel::plannedSet() const
{
    const BenchLift* lift = openedLift();
    if (!lift)
        return std::nullopt;
    if (kind_ == Probe && lift->plan.probe)
        return lift->plan.probe;
    if (kind_ == WarmUp && !lift->plan.warmUp.empty())
        return lift->plan.warmUp.front();
    if (kind_ == Maintenance && lift->plan.maintenance && !lift->plan.maintenance->sets.empty()) {
        const auto& sets = lift->plan.maintenance->sets;
        return sets[std::min(static_cast<std::size_t>(lift->maintenanceDone), sets.size() - 1)];
    }
    if (lift->plan.work.empty())
        return std::nullopt;
    const auto index = std::min(static_cast<std::size_t>(lift->setsDone), lift->plan.work.size() - 1);
    return lift->plan.work[index];
}

QString BenchViewModel::liftName() const
{
    if (!openedLift())
        return {};
    const bool longer = kind_ == Maintenance && !openedLift()->maintenanceName.empty();
    return engineText(longer ? openedLift()->maintenanceName : openedLift()->name);
}

QString BenchViewModel::setText() const
{
    const BenchLift* lift = openedLift();
    if (!lift)
        return {};
    if (kind_ == Probe)
        return tr("probe set");
    if (kind_ == WarmUp)
        return tr("warm-up");
    if (kind_ == Maintenance)
        return tr("maintenance set");
    const int planned = static_cast<int>(lift->plan.work.size());
    return lift->setsDone < planned ? tr("set %1 of %2").arg(lift->setsDone + 1).arg(planned)
                                    : tr("extra set %1").arg(lift->setsDone + 1);
}

QString BenchViewModel::loadText() const
{
    const auto set = plannedSet();
    if (!set)
        return {};
    if (!asksLoad())
        return tr("body mass");
    const auto load = loadKg();
    return load ? units().mass(*load) : tr("load to be found");
}

QString BenchViewModel::planText() const
{
    const BenchLift* lift = openedLift();
    const auto set = plannedSet();
    if (!lift || !set)
        return {};
    const QString repetitions = tr("%1 planned").arg(repetitionsText(set->repetitions));
    return lift->rungCount == 0 ? repetitions
                                : tr("rung %1 of %2").arg(lift->rungNumber).arg(lift->rungCount) + dot + repetitions;
}

QString BenchViewModel::plannedLoad() const
{
    const auto set = plannedSet();
    return set && set->loadKg ? units().massNumber(*set->loadKg) : load_; // found with the bar, not by the plan
}

bool BenchViewModel::asksLoad() const
{
    const auto set = plannedSet();
    return openedLift() && !(set && set->loadKg && *set->loadKg == 0);
}

QString BenchViewModel::platesText() const
{
    const auto load = loadKg();
    return load ? views::platesText(*load, preferences_->bar(), units()) : QString();
}

QString BenchViewModel::maximumText(const QVariantMap& form) const
{
    const auto load = units().parseMass(form.value(QStringLiteral("load")).toString());
    const auto repetitions = Units::parse(form.value(QStringLiteral("repetitions")).toString());
    const auto effort = Units::parse(form.value(QStringLiteral("effort")).toString());
    if (!load || !(*load <= mostKg) || !repetitions || !(*repetitions >= 1 && *repetitions <= 50) || !effort ||
        !(*effort >= 1 && *effort <= 10))
        return {};
    return views::maximumText(*load, static_cast<int>(*repetitions), *effort, units());
}

QString BenchViewModel::knownMaximum() const
{
    const BenchLift* lift = openedLift();
    return lift && lift->maximumKg ? units().massNumber(std::round(*lift->maximumKg)) : QString();
}

QVariantList BenchViewModel::loadChart(const QString& maximum) const
{
    const auto load = units().parseMass(maximum);
    return load && *load <= mostKg ? chartRows(*load, units()) : QVariantList();
}

QString BenchViewModel::loadLabel() const
{
    return tr("Load on the bar, %1").arg(massUnit());
}

std::optional<double> BenchViewModel::loadKg() const
{
    if (!asksLoad())
        return 0.0;
    const auto load = units().parseMass(load_);
    return load && *load > 0 && *load <= mostKg ? load : std::nullopt;
}

void BenchViewModel::setLoad(const QString& load)
{
    if (load == load_)
        return;
    load_ = load;
    emit setChanged();
}

/// The same load in the units chosen now.
void BenchViewModel::convertLoad()
{
    const auto kilograms = loadUnits_.parseMass(load_);
    const bool asProposed = load_ == proposed_;
    loadUnits_ = units();
    if (kilograms)
        load_ = loadUnits_.massNumber(*kilograms);
    if (asProposed)
        proposed_ = load_;
}

void BenchViewModel::proposeLoad()
{
    const auto set = plannedSet();
    load_ = proposed_ = set && set->loadKg ? units().massNumber(*set->loadKg) : QString();
}

QString BenchViewModel::plannedRepetitions() const
{
    const auto set = plannedSet();
    return set ? QString::number(set->repetitions) : QString();
}

void BenchViewModel::openLift(const QString& key)
{
    if (running() || holdsSet()) // it would be stored as a set of the other lift
        return emit endFirst();
    for (std::size_t i = 0; i < day_.lifts.size(); ++i)
        if (QString::fromStdString(day_.lifts[i].plan.ladder) == key)
            open_ = i;
    clearSet();
    lastSet_.reset();
    restTick_.stop();
    chooseKind();
    showCheck();
    emit setChanged();
    emit liftOpened();
}

void BenchViewModel::goBack()
{
    if (holdsSet())
        return emit endFirst();
    leaveLift();
}

void BenchViewModel::leaveLift()
{
    open_.reset();
    clearSet();
    lastSet_.reset();
    restTick_.stop();
    emit setChanged();
    emit liftLeft();
}

/// The probe set comes first; it is what the evidence rests on.
void BenchViewModel::chooseKind()
{
    const BenchLift* lift = openedLift();
    kind_ = lift && lift->plan.probe && !lift->probeDone ? Probe : Work;
    kindIsChosen_ = false;
    proposeLoad();
}

/// The day was read anew: what the athlete has chosen stays, or a second warm-up set would be a probe set.
void BenchViewModel::goOn()
{
    const BenchLift* lift = openedLift();
    const QString typed = load_ == proposed_ ? QString() : load_;
    const Kind before = kind_;
    if (!kindIsChosen_ || (kind_ == Probe && lift->probeDone))
        chooseKind();
    else
        proposeLoad();
    if (!typed.isEmpty() && (kind_ == before || proposed_.isEmpty()))
        load_ = typed;
}

void BenchViewModel::setKind(Kind kind)
{
    if (kind == kind_)
        return;
    kind_ = kind;
    kindIsChosen_ = true;
    proposeLoad();
    emit setChanged();
}

store::SetKind BenchViewModel::storedKind() const
{
    switch (kind_) {
    case Probe:
        return store::SetKind::Probe;
    case WarmUp:
        return store::SetKind::WarmUp;
    case Maintenance:
        return store::SetKind::Maintenance;
    case Work:
        break;
    }
    return store::SetKind::Work;
}

void BenchViewModel::setRightSide(bool right)
{
    if (right == rightSide_)
        return;
    rightSide_ = right;
    emit setChanged();
}

// --- The sensor

void BenchViewModel::showSensor(Sensor sensor, const QString& name, double rateHz)
{
    sensor_ = sensor;
    if (!name.isEmpty())
        sensorName_ = name;
    rateHz_ = rateHz;
    emit setChanged();
}

void BenchViewModel::showSensorLine(const QString& line)
{
    if (line == sensorLine_)
        return;
    sensorLine_ = line;
    emit setChanged();
}

void BenchViewModel::showListening(bool listens)
{
    if (listens == listens_)
        return;
    listens_ = listens;
    emit setChanged();
}

void BenchViewModel::showAwaited(const QString& text)
{
    if (text == awaited_)
        return;
    awaited_ = text;
    emit setChanged();
}

void BenchViewModel::showCutOff(const QString& text, bool canKeep)
{
    cutOff_ = text;
    cutOffCanBeKept_ = canKeep;
    emit cutOffChanged();
}

void BenchViewModel::keepCutOff()
{
    showCutOff({});
    emit cutOffAnswered(true);
}

void BenchViewModel::dropCutOff()
{
    showCutOff({});
    emit cutOffAnswered(false);
}

QString BenchViewModel::sensorText() const
{
    switch (sensor_) {
    case NoSensor:
        return awaited_.isEmpty() ? tr("No sensor") : awaited_;
    case Ready:
        return tr("%1 ready").arg(sensorName_);
    case Streaming:
        return tr("%1 streaming").arg(sensorName_);
    case Lost:
        return tr("%1 lost. The set goes on when it is back.").arg(sensorName_);
    case Finished:
        return tr("%1 has ended").arg(sensorName_);
    }
    return {};
}

QString BenchViewModel::sensorDetail() const
{
    if (!sensorLine_.isEmpty() && (sensor_ == Ready || sensor_ == Streaming))
        return sensorLine_;
    return rateHz_ > 0 && sensor_ != NoSensor ? tr("%1 Hz").arg(units().number(rateHz_, 0)) : QString();
}

bool BenchViewModel::canBegin() const
{
    if (!openedLift() || byContactTime() || running())
        return false;
    return sensor_ == Ready ? loadKg().has_value() : openedLift()->replay.has_value();
}

QString BenchViewModel::beginText() const
{
    if (byContactTime())
        return tr("Not by the bar sensor");
    if (sensor_ == Ready)
        return loadKg() ? tr("Start the set") : tr("Enter the load first");
    return openedLift() && openedLift()->replay ? tr("Replay the last recording") : tr("No sensor to start");
}

QString BenchViewModel::waitingTitle() const
{
    if (byContactTime())
        return tr("Jumps go by contact and flight");
    switch (sensor_) {
    case NoSensor:
        return tr("No sensor on the bar");
    case Lost:
        return tr("The sensor was lost");
    default:
        return running() ? tr("Waiting for the first repetition") : tr("Ready when you are");
    }
}

QString BenchViewModel::waitingText() const
{
    if (byContactTime())
        return tr("Enter contact and flight of each jump under Track, Jumps. Type the set in here when it is done.");
    if (sensor_ == NoSensor)
        return openedLift() && openedLift()->replay ? tr("Type the set in, or watch the last recording of this lift "
                                                         "again. The plan works without a sensor, too.")
                                                    : tr("Type the set in when it is done: load and repetitions are "
                                                         "enough. The plan works without a sensor, too.");
    if (sensor_ == Lost)
        return tr("It is looked for. Repetitions seen so far are kept.");
    if (listens_)
        return tr(
            "Stand still for a moment, then lift with full intent: the set begins by itself, and ends when the bar "
            "has rested for 15 s. Check the load first.");
    return tr("Stand still for a moment, then lift with full intent. Each repetition is announced as it ends.");
}

void BenchViewModel::begin()
{
    if (!canBegin())
        return;
    clearSet();
    emit setChanged();
    emit beginAsked();
}

// --- Repetitions

void BenchViewModel::clearSet()
{
    repetitions_.clear();
    undone_.clear();
}

void BenchViewModel::addRepetition(const reps::Repetition& repetition)
{
    const bool before = stopNow();
    repetitions_.push_back(repetition);
    emit setChanged();
    emit repetitionAdded();
    if (stopNow() && !before)
        emit stopReached();
}

void BenchViewModel::showRepetitions(const std::vector<reps::Repetition>& repetitions)
{
    repetitions_ = repetitions;
    emit setChanged();
}

void BenchViewModel::showLastSet(const SetDone& set)
{
    lastSet_ = set;
    sinceLastSet_.start();
    restTick_.start();
    emit restChanged();
    clearSet();
    emit setChanged();
}

void BenchViewModel::undoRepetition()
{
    if (repetitions_.empty())
        return;
    undone_.push_back(repetitions_.back());
    repetitions_.pop_back();
    emit setChanged();
}

void BenchViewModel::endSet()
{
    if (!repetitions_.empty() || running())
        emit endAsked();
}

QVariantMap BenchViewModel::typeSet(const QVariantMap& form)
{
    const Units u = units();
    FormReader reader(form, u);
    TypedSet set;
    // Bounds of sense, not of strength: what lies beyond is a slip of the finger. Starting values of this project.
    const auto load = reader.mass(QStringLiteral("load"), 0, mostKg, true);
    const auto repetitions = reader.wholeNumber(QStringLiteral("repetitions"), 1, 50, true);
    set.meanVelocity = reader.number(QStringLiteral("velocity"), 0.05, 5, false);
    set.timeToPeak = reader.milliseconds(QStringLiteral("time"), 20, 3000, false);
    set.effort = reader.number(QStringLiteral("effort"), 1, 10, false);
    setKind(static_cast<Kind>(std::clamp(reader.choice(QStringLiteral("kind")), 0, hasMaintenance() ? 3 : 2)));
    set.kind = storedKind();
    if (!reader.sound())
        return reader.problems();
    set.loadKg = load.value_or(0);
    set.repetitions = repetitions.value_or(0);
    emit setTyped(set);
    return {};
}

} // namespace fleetrung::views
