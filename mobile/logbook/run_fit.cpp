#include "mobile/logbook/run_fit.hpp"

#include <vector>

namespace fleetrung::logbook
{
namespace
{

std::vector<sprint::Split> splitsOf(const store::Sprint& run)
{
    std::vector<sprint::Split> splits;
    for (const auto& split : run.splits)
        splits.push_back({split.distance, split.time});
    return splits;
}

Expected<ForceProfile> forceOf(const sprint::SprintFit& fit, const store::Sprint& run, const store::Athlete& athlete)
{
    if (!athlete.bodyMassKg || !athlete.statureM)
        return fail(Code::NotAvailable, "",
                    "body mass and stature are not known; type them on Squad, under the athlete");
    ForceProfile profile;
    profile.massKg = *athlete.bodyMassKg;
    profile.assumedTemperature = !run.temperatureC;
    profile.assumedAltitude = !run.altitudeM;
    profile.assumedWind = !run.windMps;
    profile.air.temperature = run.temperatureC.value_or(profile.air.temperature);
    profile.air.pressure = sprint::pressureAtHeight(run.altitudeM.value_or(0));
    profile.air.wind = run.windMps.value_or(0);
    double last = 0;
    for (const auto& split : fit.residuals)
        if (split.used)
            last = split.split.time - fit.startOffset;
    const sprint::Runner runner{*athlete.bodyMassKg, *athlete.statureM};
    return sprint::forceVelocity(fit.model, last, runner, profile.air).map([&](const sprint::ForceVelocity& found) {
        profile.forceVelocity = found;
        return profile;
    });
}

/// Of one day the order of the clock decides.
bool earlier(const store::Sprint& one, const store::Sprint& other)
{
    return one.run.trainingDay != other.run.trainingDay ? one.run.trainingDay < other.run.trainingDay
                                                        : one.run.utcSeconds < other.run.utcSeconds;
}

} // namespace

sprint::SplitOptions splitOptions(const store::Sprint& run)
{
    sprint::SplitOptions options;
    options.timing = run.timing == "hand" ? sprint::Timing::Hand : sprint::Timing::Electronic;
    sprint::Start& start = options.start;
    const bool standing = run.start == "standing";
    if (run.start == "block" || (standing && run.timing == "electronic")) {
        start.clock = sprint::Clock::Gun;
        start.reaction = run.reactionS;
    } else if (standing && run.timing != "hand" && run.beamM) {
        start.clock = sprint::Clock::Beam;
        start.beamDistance = *run.beamM;
    } else if (standing && run.timing != "hand") {
        start.clock = sprint::Clock::FirstMovement;
    } else {
        start.clock = sprint::Clock::Unknown;
    }
    return options;
}

Expected<RunFit> fitRun(const store::Sprint& run, const store::Athlete& athlete, bool useAll)
{
    if (run.start == "flying")
        return fail(Code::NotAvailable, "", "a flying start shows no acceleration: it gives no tau, force or power");
    RunFit result;
    result.options = splitOptions(run);
    result.options.keepSuspects = result.options.keepAfterPeak = useAll;
    auto fit = sprint::fitSplits(splitsOf(run), result.options);
    if (!fit)
        return tl::unexpected(fit.error());
    result.fit = std::move(*fit);
    result.force = forceOf(result.fit, run, athlete);
    return result;
}

double timingError(const store::Sprint& run)
{
    if (run.timing == "hand")
        return 0.1;
    return run.timing == "video" ? 0.004 : 0.005;
}

Expected<FlyingRun> flyingRun(const store::Sprint& run, std::span<const store::Sprint> all)
{
    const auto speedOf = [](const store::Sprint& one) {
        return sprint::flyingSpeed(one.distance, one.time, timingError(one));
    };
    const auto speed = speedOf(run);
    if (!speed)
        return tl::unexpected(speed.error());
    std::vector<sprint::DatedSpeed> before;
    for (const auto& one : all)
        if (one.start == "flying" && earlier(one, run))
            if (const auto past = speedOf(one))
                before.push_back({one.run.trainingDay, past->speed, past->error});
    return FlyingRun{*speed, sprint::compareWithHistory({run.run.trainingDay, speed->speed, speed->error}, before)};
}

sprint::HistoryComparison compareRun(const store::Sprint& run, const RunFit& fit, std::span<const store::Sprint> all,
                                     const store::Athlete& athlete)
{
    std::vector<sprint::DatedSpeed> before;
    for (const auto& one : all)
        if (one.start == run.start && !one.splits.empty() && earlier(one, run))
            if (const auto past = fitRun(one, athlete))
                before.push_back({one.run.trainingDay, past->fit.model.vmax, past->fit.vmaxError});
    return sprint::compareWithHistory({run.run.trainingDay, fit.fit.model.vmax, fit.fit.vmaxError}, before);
}

RunStory runStory(const store::Sprint& run, std::span<const store::Sprint> all, const store::Athlete& athlete,
                  bool useAll)
{
    RunStory story{.run = run, .usesAll = useAll, .fit = {}, .flying = {}, .topSpeeds = {}};
    if (run.start == "flying") {
        story.flying = flyingRun(run, all);
        return story;
    }
    story.fit = fitRun(run, athlete, useAll);
    if (*story.fit)
        story.topSpeeds = compareRun(run, **story.fit, all, athlete);
    return story;
}

} // namespace fleetrung::logbook
