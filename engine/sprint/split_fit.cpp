#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/sprint/split_rules.hpp"
#include "engine/statistics/nonlinear_fit.hpp"

namespace fleetrung::sprint
{
namespace
{

constexpr double handOffset = 0.24;        // s
constexpr double suspectElectronic = 0.04; // s that a gate lies off what the others say (starting values)
constexpr double suspectHand = 0.20;
constexpr double suspectShare = 1.0 / 3; // and the others agree so much better without it
constexpr double contradiction = 0.08;   // s rms: said, where no single gate explains it
constexpr double usualTau = 1.2;         // s, where the search begins
constexpr double leastCertain = 0.15;    // relative standard error of vmax beyond which nothing is given

struct TimeAndSlopes {
    double time, byLogVmax, byLogTau;
};

/// Time to a distance and its derivatives by ln vmax and ln tau: u + exp(-u) - 1 = z, du/dz = 1 / (1 - exp(-u)).
TimeAndSlopes timeTo(const Model& model, double distance)
{
    if (distance <= 0)
        return {0, 0, 0};
    const double time = model.timeTo(distance);
    const double z = distance / (model.vmax * model.tau);
    const double byZ = model.tau / -std::expm1(-time / model.tau);
    return {time, -z * byZ, time - z * byZ};
}

/// Parameters: ln vmax, ln tau, and the offset where it is free.
class Problem
{
public:
    Problem(const std::vector<SplitResidual>& splits, const SplitOptions& options)
        : splits_(splits), start_(options.start),
          added_(options.timing == Timing::Hand && options.start.clock == Clock::Gun ? handOffset : 0)
    {
    }

    [[nodiscard]] double clockTime(const Split& split) const { return split.time + added_; }

    [[nodiscard]] double offsetOf(const Eigen::VectorXd& p) const
    {
        if (offsetIsFree(start_))
            return p[2];
        if (start_.clock == Clock::Beam)
            return -modelOf(p).timeTo(start_.beamDistance);
        return start_.clock == Clock::Gun ? *start_.reaction : 0;
    }

    [[nodiscard]] static Model modelOf(const Eigen::VectorXd& p) { return {std::exp(p[0]), std::exp(p[1])}; }

    [[nodiscard]] double residual(const Split& split, const Eigen::VectorXd& p) const
    {
        return clockTime(split) - offsetOf(p) - modelOf(p).timeTo(split.distance + lead());
    }

    [[nodiscard]] statistics::Residuals at(const Eigen::VectorXd& p) const
    {
        const Model model = modelOf(p);
        const TimeAndSlopes beam = timeTo(model, lead());
        statistics::Residuals result{Eigen::VectorXd(usedCount(splits_)),
                                     Eigen::MatrixXd(usedCount(splits_), p.size())};
        Eigen::Index row = 0;
        for (const auto& s : splits_) {
            if (!s.used)
                continue;
            const TimeAndSlopes t = timeTo(model, s.split.distance + lead());
            result.value[row] = residual(s.split, p);
            result.jacobian(row, 0) = -(t.byLogVmax - beam.byLogVmax);
            result.jacobian(row, 1) = -(t.byLogTau - beam.byLogTau);
            if (p.size() == 3)
                result.jacobian(row, 2) = -1;
            ++row;
        }
        return result;
    }

    [[nodiscard]] Expected<statistics::NonlinearFit> solve() const
    {
        Eigen::VectorXd start = Eigen::VectorXd::Zero(unknowns(start_));
        start[0] = std::log(1.05 * fastestStretch());
        start[1] = std::log(usualTau);
        return statistics::fitNonlinear([this](const Eigen::VectorXd& p) { return at(p); }, start);
    }

private:
    [[nodiscard]] double lead() const { return start_.clock == Clock::Beam ? start_.beamDistance : 0; }

    [[nodiscard]] double fastestStretch() const
    {
        double fastest = 1;
        const Split* before = nullptr;
        for (const auto& s : splits_) {
            if (!s.used)
                continue;
            if (before)
                fastest = std::max(fastest, (s.split.distance - before->distance) / (s.split.time - before->time));
            before = &s.split;
        }
        return fastest;
    }

    const std::vector<SplitResidual>& splits_;
    Start start_;
    double added_;
};

/// Tries each used gate as the one that contradicts the others; leaves out the worst where it truly does.
void leaveOutSuspect(std::vector<SplitResidual>& splits, const SplitOptions& options, double rmsBefore)
{
    const double limit = options.timing == Timing::Hand ? suspectHand : suspectElectronic;
    std::optional<std::size_t> worst;
    double worstOff = limit;
    for (std::size_t i = 0; i < splits.size(); ++i) {
        if (!splits[i].used)
            continue;
        splits[i].used = false;
        const Problem others(splits, options);
        if (checkPlacement(splits, options.start) && usedCount(splits) > unknowns(options.start)) {
            const auto fit = others.solve();
            const double off = fit ? std::abs(others.residual(splits[i].split, fit->parameters)) : 0;
            const double rms = fit ? std::sqrt(fit->sumOfSquares / usedCount(splits)) : rmsBefore;
            if (off > worstOff && rms < suspectShare * rmsBefore) {
                worst = i;
                worstOff = off;
            }
        }
        splits[i].used = true;
    }
    if (!worst)
        return;
    splits[*worst].used = false;
    splits[*worst].why = "contradicts the other splits by " + fixedText(worstOff, 2) + " s; check this gate";
}

double rmsOf(const statistics::NonlinearFit& fit)
{
    return std::sqrt(fit.sumOfSquares / static_cast<double>(fit.residuals.size()));
}

SprintFit describe(const statistics::NonlinearFit& fit, const Problem& problem, std::vector<SplitResidual> splits,
                   const SplitOptions& options)
{
    SprintFit result;
    result.model = Problem::modelOf(fit.parameters);
    result.startOffset = problem.offsetOf(fit.parameters);
    result.offsetFree = offsetIsFree(options.start);
    result.vmaxError = result.model.vmax * fit.standardErrors[0]; // first order: the parameters are logarithms
    result.tauError = result.model.tau * fit.standardErrors[1];
    if (result.offsetFree)
        result.offsetError = fit.standardErrors[2];
    const double product = fit.standardErrors[0] * fit.standardErrors[1];
    result.vmaxTauCorrelation = product > 0 ? fit.covariance(0, 1) / product : 0;
    result.residualRms = rmsOf(fit);
    result.residualDeviation = fit.residualDeviation;
    for (auto& s : splits) {
        s.residual = problem.residual(s.split, fit.parameters);
        if (!s.used)
            result.notes.push_back("The split at " + shortestText(roundTo(s.split.distance, 100)) +
                                   " m was left out: " + s.why + ".");
    }
    result.residuals = std::move(splits);
    if (options.timing == Timing::Hand && options.start.clock == Clock::Gun)
        result.notes.emplace_back("0.24 s were added to times by hand.");
    if (result.residualRms > contradiction)
        result.notes.push_back("The splits lie " + fixedText(result.residualRms, 2) +
                               " s from the fitted sprint: check distances and gates.");
    return result;
}

Expected<void> checkStart(const Start& start)
{
    if (start.reaction && !(*start.reaction >= 0 && *start.reaction <= 2))
        return fail(Code::InvalidInput, "reaction", "give a reaction time of 0 to 2 s");
    if (start.clock == Clock::Beam && !(start.beamDistance > 0 && start.beamDistance <= 5))
        return fail(Code::InvalidInput, "beam distance", "give the way from the start to the first beam, up to 5 m");
    return {};
}

} // namespace

Expected<SprintFit> fitSplits(std::span<const Split> given, const SplitOptions& options)
{
    if (auto fine = checkStart(options.start); !fine)
        return tl::unexpected(fine.error());
    auto splits = readSplits(given);
    if (!splits)
        return tl::unexpected(splits.error());
    if (auto placed = checkPlacement(*splits, options.start); !placed)
        return tl::unexpected(placed.error());
    const Problem problem(*splits, options);
    auto fit = problem.solve();
    // A bad gate first: the stretch behind it looks faster than any, and the rest like the end of the sprint.
    if (fit && !options.keepSuspects)
        leaveOutSuspect(*splits, options, rmsOf(*fit));
    if (!options.keepAfterPeak)
        leaveOutAfterPeak(*splits);
    if (auto placed = checkPlacement(*splits, options.start); !placed)
        return tl::unexpected(placed.error());
    fit = problem.solve();
    if (!fit)
        return fail(fit.error().code, "splits",
                    "no sprint fits these splits (" + fit.error().message + "); check distances, times and the start");
    SprintFit result = describe(*fit, problem, *splits, options);
    if (result.vmaxError > leastCertain * result.model.vmax || result.model.vmax > 20 || result.model.tau < 0.1)
        return fail(Code::NotAvailable, "splits",
                    "these splits do not carry top speed: add gates further along the run, or check the times");
    return result;
}

} // namespace fleetrung::sprint
