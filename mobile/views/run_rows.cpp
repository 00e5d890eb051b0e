#include "mobile/views/run_rows.hpp"

#include <QCoreApplication>
#include <QStringList>

#include "engine/base/numbers.hpp"

namespace fleetrung::views
{
namespace
{

struct RunRowsWords {
    Q_DECLARE_TR_FUNCTIONS(RunRowsWords)
};

track::TestRun testRun(const store::Sprint& run)
{
    track::TestRun test;
    test.test = run.start + " " + shortestText(run.distance);
    test.day = run.run.trainingDay;
    test.time = run.time;
    test.wind = run.windMps;
    test.competition = run.competition;
    test.byHand = run.timing == "hand";
    return test;
}

QVariantMap row(const store::Sprint& run, const QString& value, const QStringList& first, const QStringList& second,
                const Units& units)
{
    const QString dot = QStringLiteral(" · ");
    QStringList lines{first.join(dot)};
    if (!second.isEmpty())
        lines += second.join(dot);
    return {{QStringLiteral("key"), QString::fromStdString(identifierText(run.id))},
            {QStringLiteral("title"), testName(run, units)},
            {QStringLiteral("value"), value},
            {QStringLiteral("detail"), lines.join(QLatin1Char('\n'))}};
}

/// "13 Feb 2026", "competition", "wind +0.4".
QStringList circumstances(const store::Sprint& run, const Units& units)
{
    QStringList parts{units.day(run.run.trainingDay)};
    if (run.competition)
        parts += RunRowsWords::tr("competition");
    if (run.test)
        parts += RunRowsWords::tr("test day");
    if (run.windMps)
        parts += RunRowsWords::tr("wind %1").arg(units.signedNumber(*run.windMps, 1));
    if (testRun(run).windAided())
        parts += RunRowsWords::tr("wind-aided");
    return parts;
}

} // namespace

std::vector<track::TestRun> testRuns(const std::vector<store::Sprint>& runs)
{
    std::vector<track::TestRun> tests;
    for (const auto& run : runs)
        tests.push_back(testRun(run));
    return tests;
}

QVariantMap runRow(const store::Sprint& run, const Units& units, bool isBest)
{
    QStringList first = circumstances(run, units);
    if (isBest)
        first.insert(1, RunRowsWords::tr("best"));
    QStringList second;
    if (run.start == "flying" && run.runIn > 0)
        second += RunRowsWords::tr("run-in %1").arg(units.distance(run.runIn));
    for (const auto& key : {run.surface, run.timing})
        if (!key.empty())
            second += trackWord(key);
    if (!run.splits.empty())
        second += RunRowsWords::tr("%1 splits").arg(run.splits.size());
    return row(run, units.sprintTime(run.time), first, second, units);
}

QVariantMap bestRow(const track::PersonalBest& best, const std::vector<store::Sprint>& runs, const Units& units)
{
    const store::Sprint& run = runs.at(best.best.value_or(best.windAided.value_or(0)));
    QStringList second;
    if (run.timing == "hand")
        second += RunRowsWords::tr("by hand");
    second += best.runs == 1 ? RunRowsWords::tr("run once") : RunRowsWords::tr("%1 runs").arg(best.runs);
    if (best.best && best.windAided)
        second += RunRowsWords::tr("wind-aided %1 (%2)")
                      .arg(units.sprintTime(runs.at(*best.windAided).time),
                           units.signedNumber(*runs.at(*best.windAided).windMps, 1));
    return row(run, units.sprintTime(run.time), circumstances(run, units), second, units);
}

} // namespace fleetrung::views
