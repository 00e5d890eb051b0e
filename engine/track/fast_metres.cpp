#include "engine/track/fast_metres.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fleetrung::track
{
namespace
{

/// Metres from the first movement until the model reaches the speed; none where it never does.
std::optional<double> metresTo(const sprint::Model& model, double speed)
{
    if (speed >= model.vmax)
        return std::nullopt;
    return model.distanceAt(-model.tau * std::log1p(-speed / model.vmax));
}

/// Metres of a run of this model above the speed.
double above(const sprint::Model& model, double speed, double distance)
{
    const auto reached = metresTo(model, speed);
    return reached ? std::max(0.0, distance - *reached) : 0;
}

/// Metres of the stretches beyond `from` whose mean speed reaches the share.
double stretchesAbove(const KnownRun& known, const sprint::Split& from, double speed)
{
    double metres = 0;
    auto last = from;
    const auto count = [&](const sprint::Split& to) {
        if (to.distance > last.distance && to.time > last.time) {
            if ((to.distance - last.distance) / (to.time - last.time) >= speed)
                metres += to.distance - last.distance;
            last = to;
        }
    };
    for (const auto& residual : known.fit->residuals)
        count(residual.split);
    count({known.run.distance, known.run.time});
    return metres;
}

double fittedAbove(const KnownRun& known, double speed)
{
    const auto& start = known.run.options.start;
    const double lead = start.clock == sprint::Clock::Beam ? start.beamDistance : 0;
    sprint::Split lastUsed{};
    for (const auto& residual : known.fit->residuals)
        if (residual.used)
            lastUsed = residual.split;
    const auto reached = metresTo(known.fit->model, speed);
    const double byFit = reached ? std::max(0.0, lastUsed.distance - std::max(0.0, *reached - lead)) : 0;
    return byFit + stretchesAbove(known, lastUsed, speed);
}

FastMetres ofZone(double speed, double metres, double best, Basis basis)
{
    FastMetres fast;
    fast.at90 = speed >= fastShare * best ? metres : 0;
    fast.at95 = speed >= fastestShare * best ? metres : 0;
    fast.basis = basis;
    return fast;
}

FastMetres ofModel(const sprint::Model& model, double distance, int runs, double best)
{
    FastMetres fast;
    fast.at90 = runs * above(model, fastShare * best, distance);
    fast.at95 = runs * above(model, fastestShare * best, distance);
    fast.basis = Basis::Estimated;
    return fast;
}

FastMetres none(std::string why)
{
    FastMetres fast;
    fast.why = std::move(why);
    return fast;
}

FastMetres ofUntimed(const Work& work, double best)
{
    if (work.effort.value_or(0) < fullEffort)
        return none("not timed, and effort is below 9 or was not typed");
    auto fast = work.kind == WorkKind::Flying ? ofZone(best, work.metres(), best, Basis::Estimated)
                                              : ofModel({best, usualTau}, work.distance, work.repetitions, best);
    fast.why = "not timed; at that effort taken as run to best speed";
    return fast;
}

FastMetres ofTimed(const Work& work, double best)
{
    auto fast =
        work.kind == WorkKind::Flying
            ? ofZone(work.distance / *work.bestTime, work.metres(), best, Basis::Estimated)
            : ofModel({speedFromTime(work.distance, *work.bestTime), usualTau}, work.distance, work.repetitions, best);
    fast.why = "the best time stands for all runs";
    return fast;
}

const std::string unknownBest = "no run of the last 12 months tells a best speed";

} // namespace

FastMetres fastMetres(const KnownRun& known, const std::optional<TopSpeed>& best)
{
    const Run& run = known.run;
    if (!best)
        return none(unknownBest);
    if (!known.top)
        return none("its time cannot be");
    if (run.flying)
        return ofZone(run.distance / run.time, run.distance, best->speed, Basis::Measured);
    if (known.fit) {
        FastMetres fast;
        fast.at90 = fittedAbove(known, fastShare * best->speed);
        fast.at95 = fittedAbove(known, fastestShare * best->speed);
        fast.basis = Basis::Fitted;
        return fast;
    }
    auto fast = ofModel({estimatedSpeed(run), usualTau}, run.distance, 1, best->speed);
    fast.why = "no splits that show its speed";
    return fast;
}

FastMetres fastMetres(const Work& work, const std::optional<TopSpeed>& best)
{
    if (work.kind != WorkKind::Sprints && work.kind != WorkKind::Flying)
        return none(std::string(nameOf(work.kind)) + " runs count no fast metres");
    if (!best)
        return none(unknownBest);
    return work.bestTime && *work.bestTime > 0 ? ofTimed(work, best->speed) : ofUntimed(work, best->speed);
}

std::string_view nameOf(Basis basis)
{
    constexpr std::array<std::string_view, 4> names{"none", "measured", "fitted", "estimated"};
    return names.at(static_cast<std::size_t>(basis));
}

} // namespace fleetrung::track
