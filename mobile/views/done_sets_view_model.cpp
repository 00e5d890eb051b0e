#include "mobile/views/done_sets_view_model.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/reps/repetition.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/forms.hpp"

namespace fleetrung::views
{
namespace
{

const QString dot = QStringLiteral(" · ");
constexpr double mostKg = 600;      // as on Bench: beyond it is a slip of the finger
constexpr double behindTheLast = 1; // s; where a repetition is put that the sensor missed

constexpr std::array kinds{store::SetKind::Work, store::SetKind::Probe, store::SetKind::WarmUp,
                           store::SetKind::Maintenance};

int indexOf(store::SetKind kind)
{
    const auto at = std::ranges::find(kinds, kind);
    return at == kinds.end() ? 0 : static_cast<int>(at - kinds.begin());
}

std::optional<double> timeOf(const store::Repetition& row, const DoneSet& of)
{
    return of.byDropTime && row.reversalTime.value ? row.reversalTime.value : row.timeToPeakVelocity.value;
}

std::optional<double> velocityOf(const store::Repetition& row, const DoneSet& of)
{
    return of.byPeakVelocity ? row.peakVelocity.value : row.meanVelocity.value;
}

QString kindText(store::SetKind kind)
{
    switch (kind) {
    case store::SetKind::Probe:
        return DoneSetsViewModel::tr("probe set");
    case store::SetKind::WarmUp:
        return DoneSetsViewModel::tr("warm-up");
    case store::SetKind::Maintenance:
        return DoneSetsViewModel::tr("maintenance set");
    case store::SetKind::Work:
        break;
    }
    return DoneSetsViewModel::tr("work set");
}

} // namespace

DoneSetsViewModel::DoneSetsViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), sets_({"key", "title", "detail"}, this),
      repetitions_({"key", "title", "detail", "struck", "evidence", "onRight"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, &DoneSetsViewModel::showRows);
}

void DoneSetsViewModel::show(std::vector<DoneSet> sets)
{
    done_ = std::move(sets);
    if (!opened())
        open_.reset();
    showRows();
}

void DoneSetsViewModel::open(const QString& key)
{
    open_ = parseIdentifier(key.toStdString());
    showRows();
}

const DoneSet* DoneSetsViewModel::opened() const
{
    for (const auto& done : done_)
        if (open_ && done.set.row.id == *open_)
            return &done;
    return nullptr;
}

const logbook::RepetitionView* DoneSetsViewModel::find(const QString& repetition) const
{
    const auto id = parseIdentifier(repetition.toStdString());
    if (!opened() || !id)
        return nullptr;
    const auto& all = opened()->set.repetitions;
    const auto at = std::ranges::find_if(all, [&](const logbook::RepetitionView& view) { return view.row.id == *id; });
    return at == all.end() ? nullptr : &*at;
}

// --- What is shown

QString DoneSetsViewModel::countText() const
{
    if (done_.empty())
        return {};
    return done_.size() == 1 ? tr("1 set done today") : tr("%1 sets done today").arg(done_.size());
}

QVariantMap DoneSetsViewModel::rowOf(const DoneSet& done) const
{
    const auto& set = done.set;
    QStringList parts;
    if (!set.row.ladder.empty())
        parts += kindText(set.row.kind);
    parts += set.done == 1 ? tr("1 repetition") : tr("%1 repetitions").arg(set.done);
    if (set.meanTimeToPeak)
        parts += units().milliseconds(*set.meanTimeToPeak);
    return {{QStringLiteral("key"), QString::fromStdString(identifierText(set.row.id))},
            {QStringLiteral("title"), set.row.loadKg > 0
                                          ? tr("%1, %2").arg(engineText(done.name), units().mass(set.row.loadKg))
                                          : engineText(done.name)},
            {QStringLiteral("detail"), parts.join(dot)}};
}

QVariantMap DoneSetsViewModel::rowOf(const logbook::RepetitionView& repetition, int number, const DoneSet& of) const
{
    QStringList parts;
    if (const auto time = timeOf(repetition.row, of))
        parts += units().milliseconds(*time);
    if (const auto velocity = velocityOf(repetition.row, of))
        parts += units().velocity(*velocity);
    if (parts.isEmpty())
        parts += tr("nothing measured");
    if (of.oneSided && repetition.side != store::Side::Both)
        parts += repetition.side == store::Side::Right ? tr("right") : tr("left");
    const auto flags = static_cast<reps::Flags>(repetition.row.flags);
    if (reps::has(flags, reps::Flag::TwoPeaked))
        parts += tr("two peaks");
    if (reps::has(flags, reps::Flag::ShortRange))
        parts += tr("short of its range");
    if (repetition.deleted)
        parts += tr("struck out");
    else if (!repetition.evidence)
        parts += tr("no evidence");
    return {{QStringLiteral("key"), QString::fromStdString(identifierText(repetition.row.id))},
            {QStringLiteral("title"), tr("Repetition %1").arg(number)},
            {QStringLiteral("detail"), parts.join(dot)},
            {QStringLiteral("struck"), repetition.deleted},
            {QStringLiteral("evidence"), repetition.evidence},
            {QStringLiteral("onRight"), repetition.side == store::Side::Right}};
}

void DoneSetsViewModel::showRows()
{
    QList<QVariantMap> sets;
    for (const auto& done : done_)
        sets.append(rowOf(done));
    sets_.show(sets);
    QList<QVariantMap> repetitions;
    if (const DoneSet* done = opened())
        for (const auto& repetition : done->set.repetitions)
            repetitions.append(rowOf(repetition, static_cast<int>(repetitions.size()) + 1, *done));
    repetitions_.show(repetitions);
    emit changed();
}

QString DoneSetsViewModel::key() const
{
    return opened() ? QString::fromStdString(identifierText(opened()->set.row.id)) : QString();
}

QString DoneSetsViewModel::title() const
{
    return opened() ? rowOf(*opened()).value(QStringLiteral("title")).toString() : QString();
}

QString DoneSetsViewModel::text() const
{
    if (!opened())
        return {};
    const QString how =
        opened()->set.measured ? tr("Measured. What you say here is kept beside the recording.") : tr("Typed in.");
    return rowOf(*opened()).value(QStringLiteral("detail")).toString() + QStringLiteral("\n") + how;
}

bool DoneSetsViewModel::onlyCounted() const
{
    return opened() && !opened()->set.measured && opened()->set.repetitions.empty();
}

QString DoneSetsViewModel::timeName() const
{
    return opened() && opened()->byDropTime ? tr("Drop time") : tr("Time to peak velocity");
}

// --- What the user says

QVariantMap DoneSetsViewModel::form() const
{
    if (!opened())
        return {};
    const auto& row = opened()->set.row;
    return {{QStringLiteral("kind"), indexOf(row.kind)},
            {QStringLiteral("load"), units().massNumber(row.loadKg)},
            {QStringLiteral("repetitions"), QString::number(opened()->set.done)},
            {QStringLiteral("effort"),
             row.effort ? units().number(*row.effort, *row.effort == std::round(*row.effort) ? 0 : 1) : QString()}};
}

QVariantMap DoneSetsViewModel::save(const QVariantMap& form)
{
    if (!opened())
        return {};
    const Units u = units();
    FormReader reader(form, u);
    const auto load = reader.mass(QStringLiteral("load"), 0, mostKg, true);
    const auto effort = reader.number(QStringLiteral("effort"), 1, 10, false);
    const auto count =
        onlyCounted() ? reader.wholeNumber(QStringLiteral("repetitions"), 1, 100, true) : std::optional<int>();
    if (!reader.sound())
        return reader.problems();
    const store::LiftSet before = opened()->set.row;
    store::LiftSet now = before;
    if (units().massNumber(before.loadKg) != form.value(QStringLiteral("load")).toString())
        now.loadKg = *load; // what was shown rounded stays as it was
    now.effort = effort;
    if (count)
        now.repetitionsDone = count;
    if (onLadder())
        now.kind = kinds[static_cast<std::size_t>(std::clamp(reader.choice(QStringLiteral("kind")), 0, 3))];
    emit setSaid(now, before);
    return {};
}

void DoneSetsViewModel::remove()
{
    if (!opened())
        return;
    const Identifier id = opened()->set.row.id;
    emit setRemoved(id);
}

void DoneSetsViewModel::strikeOut(const QString& repetition, bool out)
{
    if (const auto* view = find(repetition))
        emit struckOut(Identifier(view->row.id), out);
}

void DoneSetsViewModel::countAsEvidence(const QString& repetition, bool counts)
{
    if (const auto* view = find(repetition))
        emit evidenceSaid(Identifier(view->row.id), counts);
}

void DoneSetsViewModel::setRight(const QString& repetition, bool right)
{
    if (const auto* view = find(repetition))
        emit sideSaid(Identifier(view->row.id), right ? store::Side::Right : store::Side::Left, view->side);
}

QVariantMap DoneSetsViewModel::add(const QVariantMap& form)
{
    if (!opened())
        return {};
    const Units u = units();
    FormReader reader(form, u);
    logbook::TypedRepetitions values;
    values.count = 1;
    // The bounds of a typed set on Bench.
    const auto velocity = reader.number(QStringLiteral("velocity"), 0.05, 5, false);
    (opened()->byPeakVelocity ? values.peakVelocity : values.meanVelocity) = velocity;
    values.timeToPeak = reader.milliseconds(QStringLiteral("time"), 20, 3000, false);
    if (!reader.sound())
        return reader.problems();
    double last = 0;
    for (const auto& repetition : opened()->set.repetitions)
        last = std::max(last, repetition.row.concentricEnd);
    emit repetitionAdded(Identifier(opened()->set.row.id), last + behindTheLast, values);
    return {};
}

} // namespace fleetrung::views
