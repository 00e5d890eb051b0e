// Table of the speed curves fitted to splits: one row a run, the refused ones with their reason.
#include <string>
#include <vector>

#include "engine/report/columns.hpp"

namespace fleetrung::report
{
namespace
{

struct Row {
    const SeasonReport& report;
    const Sprint& sprint;

    [[nodiscard]] const SpeedCurve& curve() const { return *sprint.curve; }
};

using Value = double (*)(const sprint::SprintFit&);

/// Empty where there is no fit.
std::string fitCell(const Row& row, Value value)
{
    return row.curve().fit ? shortestText(value(*row.curve().fit)) : std::string();
}

/// A standard error of 0 means that nothing was left to judge it by.
std::string errorCell(const Row& row, Value error)
{
    return row.curve().fit && error(*row.curve().fit) > 0 ? fitCell(row, error) : std::string();
}

std::string forceCell(const Row& row, double (*value)(const sprint::ForceVelocity&, double mass))
{
    return row.curve().force ? shortestText(value(*row.curve().force, row.curve().massKg)) : std::string();
}

std::string splitsCell(const Row& row, bool used)
{
    int count = 0;
    if (!row.curve().fit)
        return {};
    for (const auto& residual : row.curve().fit->residuals)
        count += residual.used == used;
    return integerText(count);
}

/// "10; 30": metres of the splits that were not used.
std::string leftOutCell(const Row& row)
{
    std::string text;
    if (row.curve().fit)
        for (const auto& residual : row.curve().fit->residuals)
            if (!residual.used)
                text += (text.empty() ? "" : "; ") + shortestText(residual.split.distance);
    return text;
}

std::string reasonCell(const Row& row)
{
    const auto& curve = row.curve();
    return guardedText(!curve.fit ? curve.noFit : !curve.force ? curve.noForce : std::string());
}

} // namespace

DescribedTable sprintFitTable(std::span<const SeasonReport> reports)
{
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& sprint : report.sprints)
            if (sprint.curve)
                rows.push_back({report, sprint});
    using Fit = sprint::SprintFit;
    using Force = sprint::ForceVelocity;
    return describe<Row>(
        "sprint_fits.csv",
        {{"sprint_id", "", "timed run, as in sprints.csv",
          [](const Row& row) { return identifierText(row.sprint.id); }},
         {"athlete_id", "", "athlete, as in athletes.csv",
          [](const Row& row) { return identifierText(row.report.athlete.id); }},
         {"training_day", "ISO 8601 date", "the day the run counts for",
          [](const Row& row) { return dateText(row.sprint.day); }},
         {"top_speed_mps", "m/s", "top speed of the curve v(t) = top (1 - exp(-t / tau)) fitted to the splits",
          [](const Row& row) { return fitCell(row, [](const Fit& fit) { return fit.model.vmax; }); }},
         {"top_speed_error_mps", "m/s", "standard error of top_speed_mps",
          [](const Row& row) { return errorCell(row, [](const Fit& fit) { return fit.vmaxError; }); }},
         {"tau_s", "s", "time constant of the curve",
          [](const Row& row) { return fitCell(row, [](const Fit& fit) { return fit.model.tau; }); }},
         {"tau_error_s", "s", "standard error of tau_s",
          [](const Row& row) { return errorCell(row, [](const Fit& fit) { return fit.tauError; }); }},
         {"start_offset_s", "s", "time on the clock at the first movement",
          [](const Row& row) { return fitCell(row, [](const Fit& fit) { return fit.startOffset; }); }},
         {"start_offset_error_s", "s", "standard error of start_offset_s where it was fitted",
          [](const Row& row) { return errorCell(row, [](const Fit& fit) { return fit.offsetError; }); }},
         {"residual_rms_s", "s", "root mean square of measured minus fitted, used splits",
          [](const Row& row) { return fitCell(row, [](const Fit& fit) { return fit.residualRms; }); }},
         {"splits_used", "1", "splits the curve rests on", [](const Row& row) { return splitsCell(row, true); }},
         {"splits_left_out", "1", "splits that contradict the others or lie after the peak of speed",
          [](const Row& row) { return splitsCell(row, false); }},
         {"left_out_at_m", "m", "their distances", leftOutCell},
         {"f0_n", "N", "greatest horizontal force",
          [](const Row& row) { return forceCell(row, [](const Force& force, double) { return force.f0; }); }},
         {"f0_npkg", "N/kg", "the same for each kilogram of body mass",
          [](const Row& row) {
              return forceCell(row, [](const Force& force, double mass) { return force.f0 / mass; });
          }},
         {"v0_mps", "m/s", "speed at which force ends",
          [](const Row& row) { return forceCell(row, [](const Force& force, double) { return force.v0; }); }},
         {"pmax_w", "W", "greatest horizontal power",
          [](const Row& row) { return forceCell(row, [](const Force& force, double) { return force.pmax; }); }},
         {"pmax_wpkg", "W/kg", "the same for each kilogram of body mass",
          [](const Row& row) {
              return forceCell(row, [](const Force& force, double mass) { return force.pmax / mass; });
          }},
         {"rf_max", "1", "greatest share of force that points forwards, from 0.3 s on",
          [](const Row& row) { return forceCell(row, [](const Force& force, double) { return force.rfMax; }); }},
         {"drf_spm", "s/m", "change of that share with speed",
          [](const Row& row) { return forceCell(row, [](const Force& force, double) { return force.drf; }); }},
         {"body_mass_kg", "kg", "body mass for which force was worked out",
          [](const Row& row) { return forceCell(row, [](const Force&, double mass) { return mass; }); }},
         {"not_available", "", "why there is no fit, or no force", reasonCell}},
        rows);
}

} // namespace fleetrung::report
