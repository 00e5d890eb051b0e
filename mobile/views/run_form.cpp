#include "mobile/views/run_form.hpp"

#include <algorithm>
#include <cmath>
#include <ranges>

#include <QCoreApplication>

#include "mobile/views/form_keys.hpp"
#include "mobile/views/forms.hpp"

namespace fleetrung::views
{
namespace
{

// In the order of the form's choices.
const std::vector<std::string> startKeys{"block", "standing", "falling", "rolling", "flying"};

struct RunFormWords {
    Q_DECLARE_TR_FUNCTIONS(RunFormWords)
};

CivilDate readDay(FormReader& reader, CivilDate today)
{
    const auto day = reader.day(QStringLiteral("day"), true);
    if (day && *day > today)
        reader.problem(QStringLiteral("day"), RunFormWords::tr("That day has not come yet."));
    return day.value_or(today);
}

/// The time over the whole distance: as typed, or that of the split there.
void readTime(FormReader& reader, store::Sprint& run, const Units& units)
{
    const QString field = QStringLiteral("time");
    const bool splitAtEnd = !run.splits.empty() && run.splits.back().distance == run.distance;
    const auto typed = reader.number(field, 0.4, 600, !splitAtEnd);
    run.time = typed.value_or(splitAtEnd ? run.splits.back().time : 0);
    if (!typed || run.splits.empty())
        return;
    const store::Split& last = run.splits.back();
    if (splitAtEnd && std::abs(*typed - last.time) > 0.0005)
        reader.problem(field, RunFormWords::tr("The split at %1 says %2. Take one of them out.")
                                  .arg(units.distance(last.distance), units.sprintTime(last.time)));
    else if (!splitAtEnd && *typed <= last.time)
        reader.problem(field, RunFormWords::tr("It must be later than the last split."));
}

void readRareFields(FormReader& reader, store::Sprint& run)
{
    run.reactionS = reader.number(QStringLiteral("reaction"), 0.05, 1, false);
    run.beamM = reader.number(QStringLiteral("beam"), 0.05, 5, false);
    run.temperatureC = reader.number(QStringLiteral("temperature"), -30, 50, false);
    run.altitudeM = reader.number(QStringLiteral("altitude"), -400, 4500, false);
    run.contactS = reader.milliseconds(QStringLiteral("contact"), 60, 300, false);
    run.stepLengthM = reader.length(QStringLiteral("stepLength"), 0.8, 3.2, false);
    run.note = reader.text(QStringLiteral("note"), false).toStdString();
    if (run.start == "flying" || run.start == "falling" || run.start == "rolling")
        run.reactionS.reset();
    if (run.start != "standing" || (run.timing != "gates" && run.timing != "video"))
        run.beamM.reset();
}

} // namespace

tl::expected<store::Sprint, QVariantMap> readRun(const QVariantMap& form, const std::vector<store::Split>& splits,
                                                 CivilDate today, const Units& units)
{
    FormReader reader(form, units);
    store::Sprint run;
    run.start = chosenKey(startKeys, reader.choice(QStringLiteral("start")));
    if (run.start != "flying")
        run.splits = splits;
    // Bounds of sense: what lies beyond is a slip of the finger. Starting values of this project.
    run.distance = reader.number(QStringLiteral("distance"), 5, 1000, true).value_or(0);
    if (run.distance > 0 && !run.splits.empty() && run.splits.back().distance > run.distance)
        reader.problem(QStringLiteral("distance"),
                       RunFormWords::tr("A split lies at %1.").arg(units.distance(run.splits.back().distance)));
    readTime(reader, run, units);
    run.windMps = reader.number(QStringLiteral("wind"), -20, 20, false);
    run.surface = chosenKey(surfaceKeys, reader.choice(QStringLiteral("surface")));
    run.timing = chosenKey(timingKeys, reader.choice(QStringLiteral("timing")));
    run.shoes = chosenKey(shoeKeys, reader.choice(QStringLiteral("shoes")));
    run.test = form.value(QStringLiteral("test")).toBool();
    run.competition = form.value(QStringLiteral("competition")).toBool();
    if (run.start == "flying")
        run.runIn = reader.number(QStringLiteral("runIn"), 5, 100, true).value_or(0);
    readRareFields(reader, run);
    run.run.trainingDay = readDay(reader, today);
    if (reader.sound() && run.distance / run.time > 13) // m/s; nobody has run faster (from memory: 12.4 m/s)
        reader.problem(QStringLiteral("time"),
                       RunFormWords::tr("That is faster than anyone has run. Check distance and time."));
    if (!reader.sound())
        return tl::unexpected(reader.problems());
    return run;
}

QVariantMap runDefaults(std::span<const store::Sprint> runs, const Units& units)
{
    store::Sprint last;
    last.timing = "gates";
    if (!runs.empty())
        last = runs.back();
    const auto number = [&units](std::optional<double> value) {
        return value ? units.number(*value, *value == std::floor(*value) ? 0 : 2) : QString();
    };
    const auto orEmpty = [](double value) { return value > 0 ? std::optional(value) : std::nullopt; };
    return {{QStringLiteral("distance"), number(orEmpty(last.distance))},
            {QStringLiteral("start"), indexOfKey(startKeys, last.start)},
            {QStringLiteral("runIn"), number(orEmpty(last.runIn))},
            {QStringLiteral("timing"), indexOfKey(timingKeys, last.timing)},
            {QStringLiteral("surface"), indexOfKey(surfaceKeys, last.surface)},
            {QStringLiteral("shoes"), indexOfKey(shoeKeys, last.shoes)},
            {QStringLiteral("beam"), number(last.beamM)},
            {QStringLiteral("altitude"), number(last.altitudeM)}};
}

std::vector<double> usualSplits(std::span<const store::Sprint> runs)
{
    std::vector<double> distances;
    for (const auto& run : std::views::reverse(runs)) {
        for (const auto& split : run.splits)
            distances.push_back(split.distance);
        if (!distances.empty())
            break;
    }
    return distances;
}

} // namespace fleetrung::views
