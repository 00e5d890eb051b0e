// The report's speed curves: what the splits of each run say, and the latest one as a picture.
#include <algorithm>

#include "engine/report/words.hpp"
#include "mobile/pdf/by_time.hpp"
#include "mobile/pdf/report_pages.hpp"
#include "mobile/pdf/report_pictures.hpp"

namespace fleetrung::pdf
{
namespace
{

constexpr double curveHeight = 165, residualHeight = 110; // points

using Runs = std::vector<const report::Sprint*>;

/// "9.42 ± 0.05": one figure of the error at least; left out where nothing was left to judge it by.
QString withError(double value, double error)
{
    constexpr double seen = 0.0095; // written with two decimals it would be 0.01
    const QString text = qtText(report::numberText(value, 2));
    return error > 0 ? text + QStringLiteral(" ± ") + qtText(report::numberText(error, error < seen ? 3 : 2)) : text;
}

QString leftOut(const sprint::SprintFit& fit)
{
    QStringList distances;
    for (const auto& residual : fit.residuals)
        if (!residual.used)
            distances << qtText(report::numberText(residual.split.distance, 0)) + QStringLiteral(" m");
    return distances.isEmpty() ? notKnown() : distances.join(QStringLiteral(", "));
}

bool hasFit(const report::Sprint* run)
{
    return run->curve->fit.has_value();
}

/// Of the runs of one time the one with the greatest top speed.
QStringList fitRow(const QString& when, const Runs& runs)
{
    const auto& best = **std::ranges::max_element(
        runs, {}, [](const auto* run) { return hasFit(run) ? run->curve->fit->model.vmax : 0.0; });
    const auto& curve = *best.curve;
    const QString count = QString::number(runs.size());
    if (!curve.fit)
        return {when, count, notKnown(), notKnown(), notKnown(), notKnown(), notKnown(), notKnown()};
    const auto perKilogram = [&curve](double sprint::ForceVelocity::*value, int decimals) {
        return curve.force ? qtText(report::numberText((*curve.force).*value / curve.massKg, decimals)) : notKnown();
    };
    return {when,
            count,
            withError(curve.fit->model.vmax, curve.fit->vmaxError),
            withError(curve.fit->model.tau, curve.fit->tauError),
            qtText(report::millisecondsText(curve.fit->residualRms)),
            perKilogram(&sprint::ForceVelocity::f0, 2),
            perKilogram(&sprint::ForceVelocity::pmax, 1),
            leftOut(*curve.fit)};
}

/// Each reason once, with its days.
std::vector<QString> reasons(const Runs& runs)
{
    std::vector<QString> texts;
    for (const auto* run : runs)
        if (!run->curve->fit)
            texts.push_back(qtText(report::shortDayText(run->day)) + QStringLiteral(": no curve, ") +
                            qtText(run->curve->noFit));
    const auto noForce = std::ranges::find_if(
        runs, [](const auto* run) { return run->curve->fit.has_value() && !run->curve->force.has_value(); });
    if (noForce != runs.end())
        texts.push_back(QStringLiteral("Without force and power: ") + qtText((*noForce)->curve->noForce));
    return texts;
}

} // namespace

void setSprintFits(PageFlow& flow, const report::SeasonReport& report, const std::string& test)
{
    Runs runs;
    for (const auto& run : report.sprints)
        if (run.test == test && run.curve)
            runs.push_back(&run);
    const auto latest = std::find_if(runs.rbegin(), runs.rend(), hasFit);
    if (latest == runs.rend())
        return;
    flow.subsection(qtText(report::capitalised(test)) + QStringLiteral(": speed by the splits"));
    std::vector<QStringList> rows;
    for (const auto& [when, group] : byTime(report, runs))
        rows.push_back(fitRow(when, group));
    flow.table({{QStringLiteral("When"), 1.3},
                {QStringLiteral("Runs"), 0.6, true},
                {QStringLiteral("Top speed, m/s"), 1.6, true},
                {QStringLiteral("τ, s"), 1.4, true},
                {QStringLiteral("Fit within, ms"), 1.2, true},
                {QStringLiteral("F0, N/kg"), 1, true},
                {QStringLiteral("Power, W/kg"), 1.35, true},
                {QStringLiteral("Left out"), 1.4}},
               rows);
    flow.lead(QStringLiteral("Speed over the way on ") + qtText(report::shortDayText((*latest)->day)) +
              QStringLiteral(", and how far each split lies from the curve"));
    flow.picture(speedCurveOf(*(*latest)->curve), curveHeight);
    flow.picture(splitResidualsOf(*(*latest)->curve), residualHeight);
    if (const auto texts = reasons(runs); !texts.empty())
        flow.points(texts);
    flow.quiet(QStringLiteral("The run with the greatest top speed stands for its time. ± is one standard error. F0 "
                              "and power: greatest horizontal force and power for each "
                              "kilogram, with the drag of the air. A flying start gives none of these."));
}

} // namespace fleetrung::pdf
