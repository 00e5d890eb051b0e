#include "mobile/views/rung_form.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <QCoreApplication>

#include "engine/reps/lift.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/form_keys.hpp"
#include "mobile/views/forms.hpp"
#include "mobile/views/season_form.hpp"

namespace fleetrung::views
{
namespace
{

struct RungFormWords {
    Q_DECLARE_TR_FUNCTIONS(RungFormWords)
};

constexpr std::array phaseKinds{season::PhaseKind::GeneralPreparation, season::PhaseKind::SpecialPreparation,
                                season::PhaseKind::PreCompetition, season::PhaseKind::Competition,
                                season::PhaseKind::Taper};

// Bounds of sense, not of training: those that a file of ladders must keep to as well.
constexpr double longestRange = 1.5;   // m
constexpr double longestTarget = 2000; // ms

QString phaseText(season::PhaseKind kind)
{
    return engineText(std::string(season::phaseName(kind)));
}

int placeOf(season::PhaseKind kind)
{
    const auto found = std::ranges::find(phaseKinds, kind);
    return found == phaseKinds.end() ? 0 : static_cast<int>(found - phaseKinds.begin());
}

season::PhaseKind phaseAt(int place)
{
    return phaseKinds[static_cast<std::size_t>(std::clamp(place, 0, static_cast<int>(phaseKinds.size()) - 1))];
}

season::Metric metricOf(reps::EvidenceMetric metric)
{
    switch (metric) {
    case reps::EvidenceMetric::MeanVelocity:
        return season::Metric::MeanVelocity;
    case reps::EvidenceMetric::PeakVelocity:
        return season::Metric::PeakVelocity;
    case reps::EvidenceMetric::DropTime:
        return season::Metric::DropTime;
    case reps::EvidenceMetric::ContactTime:
        return season::Metric::ContactTime;
    }
    return season::Metric::MeanVelocity;
}

/// The two ends of a band; both problems are told where both are wrong.
template <class Read>
season::Band readBand(FormReader& reader, const QString& low, const QString& high, const QString& wrongOrder, Read read)
{
    const auto from = read(low);
    const auto to = read(high);
    if (from && to && *from > *to)
        reader.problem(high, wrongOrder);
    return {from.value_or(0), to.value_or(0)};
}

void readBox(FormReader& reader, const QVariantMap& form, const Units& units, season::Rung& rung)
{
    const QString field = QStringLiteral("box");
    rung.box.reset();
    if (reader.isEmpty(field))
        return;
    const auto box = units.parseEntered(form.value(field).toString());
    if (!box || !isBoxHeight(*box))
        return reader.problem(field, RungFormWords::tr("This is no height of a box."));
    rung.box = *box;
}

} // namespace

std::vector<std::string> motionKeys()
{
    std::vector<std::string> keys;
    for (const auto& lift : reps::allLifts())
        keys.emplace_back(lift.key);
    return keys;
}

QStringList motionNames()
{
    QStringList names;
    for (const auto& lift : reps::allLifts())
        names += engineText(std::string(lift.name));
    return names;
}

QStringList phaseNames()
{
    QStringList names;
    for (const auto kind : phaseKinds)
        names += phaseText(kind);
    return names;
}

QString rungWords(const season::Rung& rung, const Units& units)
{
    QStringList parts{
        units.lengthRange(rung.range.low, rung.range.high),
        RungFormWords::tr("leads to %1").arg(units.millisecondRange(rung.targetBand.low, rung.targetBand.high)),
        RungFormWords::tr("%1 × %2").arg(rung.sets).arg(rung.repetitions)};
    parts += rung.earliest == rung.latest
                 ? phaseText(rung.earliest)
                 : RungFormWords::tr("%1 to %2").arg(phaseText(rung.earliest), phaseText(rung.latest));
    return parts.join(QStringLiteral(" · "));
}

QVariantMap rungFields(const season::Rung& rung, const Units& units)
{
    const auto whole = [&units](double value) { return units.number(std::round(value), 0); };
    QVariantList needs;
    for (std::size_t i = 0; i < roomKeys.size(); ++i)
        if (std::ranges::find(rung.needs, roomKeys[i]) != rung.needs.end())
            needs.append(static_cast<int>(i));
    return {{QStringLiteral("name"), engineText(rung.name)},
            {QStringLiteral("motion"), indexOfKey(motionKeys(), rung.lift)},
            {QStringLiteral("rangeFrom"), units.lengthNumber(rung.range.low)},
            {QStringLiteral("rangeTo"), units.lengthNumber(rung.range.high)},
            {QStringLiteral("targetFrom"), whole(rung.targetBand.low * 1000)},
            {QStringLiteral("targetTo"), whole(rung.targetBand.high * 1000)},
            {QStringLiteral("earliest"), placeOf(rung.earliest)},
            {QStringLiteral("latest"), placeOf(rung.latest)},
            {QStringLiteral("sets"), whole(rung.sets)},
            {QStringLiteral("repetitions"), whole(rung.repetitions)},
            {QStringLiteral("rest"), whole(rung.restSeconds)},
            {QStringLiteral("ratio"), whole(rung.loadRatio * 100)},
            {QStringLiteral("probe"), whole(rung.probeShare * 100)},
            {QStringLiteral("box"), rung.box ? units.lengthNumber(rung.box->metres()) : QString()},
            {QStringLiteral("needs"), needs}};
}

tl::expected<season::Rung, QVariantMap> readRung(const QVariantMap& form, season::Rung rung, const Units& units)
{
    FormReader reader(form, units);
    const QString name = reader.text(QStringLiteral("name"), true);
    if (name != engineText(rung.name)) // else it keeps its place for the height of a box
        rung.pattern = name.toStdString();
    const auto lift = chosenKey(motionKeys(), reader.choice(QStringLiteral("motion")));
    if (lift != rung.lift) // what is measured follows from how the bar moves
        rung.metric = metricOf(reps::findLift(lift)->metric);
    rung.lift = lift;
    rung.range = readBand(reader, QStringLiteral("rangeFrom"), QStringLiteral("rangeTo"),
                          RungFormWords::tr("The longer range stands here."),
                          [&reader](const QString& field) { return reader.length(field, 0.01, longestRange, true); });
    rung.targetBand = readBand(reader, QStringLiteral("targetFrom"), QStringLiteral("targetTo"),
                               RungFormWords::tr("The later time stands here."), [&reader](const QString& field) {
                                   return reader.milliseconds(field, 10, longestTarget, true);
                               });
    rung.earliest = phaseAt(reader.choice(QStringLiteral("earliest")));
    rung.latest = phaseAt(reader.choice(QStringLiteral("latest")));
    if (rung.earliest > rung.latest)
        reader.problem(QStringLiteral("latest"), RungFormWords::tr("It ends before it begins."));
    rung.sets = reader.wholeNumber(QStringLiteral("sets"), 1, 12, true).value_or(1);
    rung.repetitions = reader.wholeNumber(QStringLiteral("repetitions"), 1, 30, true).value_or(1);
    rung.restSeconds = reader.wholeNumber(QStringLiteral("rest"), 0, 900, true).value_or(0);
    rung.loadRatio = reader.number(QStringLiteral("ratio"), 10, 200, true).value_or(100) / 100;
    rung.probeShare = reader.number(QStringLiteral("probe"), 0, 100, true).value_or(0) / 100;
    readBox(reader, form, units, rung);
    rung.needs.clear();
    for (const auto& index : form.value(QStringLiteral("needs")).toList())
        rung.needs.push_back(chosenKey(roomKeys, index.toInt()));
    if (!reader.sound())
        return tl::unexpected(reader.problems());
    if (!rung.box)
        rung.pattern = name.toStdString();
    rung.name = rung.box ? season::rungNameWith(rung, *rung.box, rung.box->unit) : rung.pattern;
    return rung;
}

} // namespace fleetrung::views
