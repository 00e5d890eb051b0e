#include "tests/seasons/body.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::seasons
{
namespace
{

using season::Metric;

constexpr double usualShare = 0.7;           // of the rung's maximum: where RungTruth::time holds
constexpr double loadEffect = 0.8;           // share of time to peak a share of the maximum costs: heavier is later
constexpr double fatigueDays = 5;            // time constant
constexpr double fatigueUnit = 60;           // repetitions at the maximum that make one unit
constexpr int longAbsence = 14;              // days, from which on something is lost
constexpr double dayPart = 0.8;              // of a session's noise is the day's, the rest is the repetitions'
constexpr double repetitionPart = 0.9;       // 0.6 / 0.67, the error of a median of three
constexpr double cutDepth = 0.15;            // of range, in a sloppy session
constexpr double driftPerRepetition = 0.003; // share, and m/s of velocity
constexpr double rangeNoise = 0.012;         // share

double lookUp(const std::map<std::string, double>& values, const std::string& key)
{
    const auto found = values.find(key);
    return found == values.end() ? 0 : found->second;
}

double levelled(double sessions, double pace)
{
    return 1 - std::exp(-sessions / pace);
}

} // namespace

double Body::maximumOn(const std::string& ladder, const std::string& rung) const
{
    const auto& truth = athlete_.ladders.at(ladder);
    const auto found = trained_.find(ladder);
    const double sessions = found == trained_.end() ? 0 : found->second.strength;
    return truth.maximumKg * (1 + truth.growth * levelled(sessions, truth.pace)) * truth.rungs.at(rung).share;
}

double Body::freshTime(const season::Ladder& ladder, const season::Rung& rung, double loadKg) const
{
    const auto& truth = athlete_.ladders.at(ladder.key).rungs.at(rung.key);
    const auto found = trained_.find(ladder.key);
    const double sessions = found == trained_.end() ? 0 : lookUp(found->second.rungs, rung.key);
    const double time = truth.time * (1 - truth.gain * levelled(sessions, truth.pace));
    if (rung.probeShare <= 0)
        return time;
    return time * (1 + loadEffect * (loadKg / maximumOn(ladder.key, rung.key) - usualShare));
}

double Body::sessionNoise(const season::Ladder& ladder, const season::Rung& rung) const
{
    const auto& rules = season::standardSeasonData().rules;
    const double time = athlete_.ladders.at(ladder.key).rungs.at(rung.key).time;
    const double prior = rung.metric == Metric::ContactTime
                             ? rules.contactError
                             : std::max(rules.typicalErrorFloor, ladder.typicalErrorShare * time);
    return athlete_.noise * prior;
}

int Body::mostRepetitions(const std::string& ladder, const std::string& rung, double loadKg) const
{
    const double share = loadKg / maximumOn(ladder, rung); // Epley 1985, from memory: 1RM = load (1 + n / 30)
    return std::max(0, static_cast<int>(30 * (1 / std::max(0.2, share) - 1)));
}

double Body::measuredTime(const season::Ladder& ladder, const season::Rung& rung, double loadKg, double lean)
{
    return freshTime(ladder, rung, loadKg) * (1 + athlete_.fatigueEffect * fatigue_) * (1 + lean);
}

double Body::measuredVelocity(const season::Ladder& ladder, const season::Rung& rung, double loadKg)
{
    const double relative = rung.probeShare > 0 ? loadKg / maximumOn(ladder.key, rung.key) : 0;
    return 1.45 - 1.1 * relative - 0.01 * fatigue_ + 0.035 * athlete_.noise * random_.normal();
}

/// Load and effort are always typed, a velocity at times.
season::SessionEvidence Body::typed(double velocity, double loadKg)
{
    season::SessionEvidence evidence;
    evidence.source = season::EvidenceSource::Typed;
    if (random_.chance(0.3) && loadKg > 0)
        evidence.meanVelocity = reps::Measured{velocity, 0.02};
    return evidence;
}

/// Contact time with its index, or drop time: one number a session.
season::SessionEvidence Body::timed(const season::Ladder& ladder, const season::Rung& rung, double loadKg,
                                    double velocity, double dayNoise)
{
    const double time =
        measuredTime(ladder, rung, loadKg, 0) + dayNoise + 0.6 * sessionNoise(ladder, rung) * random_.normal();
    season::SessionEvidence evidence;
    evidence.timeToPeak = reps::Measured{std::max(0.03, time), 0.003};
    if (rung.metric == Metric::ContactTime)
        evidence.reactiveStrength =
            reps::Measured{0.3 / evidence.timeToPeak->value * (1 + 0.06 * random_.normal()), 0.03};
    else
        evidence.meanVelocity = reps::Measured{velocity, 0.01};
    return evidence;
}

/// Repetitions of one session on one side, later and slower from one to the next; some cut in a sloppy session.
std::vector<reps::Repetition> Body::lifted(int count, const Session& session)
{
    std::vector<reps::Repetition> repetitions(static_cast<std::size_t>(count));
    double drift = 0;
    for (auto& repetition : repetitions) {
        const bool cut = session.sloppy && random_.chance(0.5);
        const double range = session.range * (1 + rangeNoise * random_.normal()) * (cut ? 1 - cutDepth : 1);
        // At equal acceleration the time to peak goes with the root of range.
        const double time = session.time * std::sqrt(range / session.range) * (1 + drift) +
                            repetitionPart * session.noise * random_.normal();
        repetition.range = {range, 0.004};
        repetition.timeToPeakVelocity = {std::max(0.03, time), 0.003};
        repetition.meanVelocity = {std::max(0.1, session.velocity + 0.02 * random_.normal() - drift), 0.008};
        repetition.peakVelocity = {1.6 * repetition.meanVelocity.value, 0.012};
        drift += driftPerRepetition;
    }
    return repetitions;
}

std::vector<season::SessionEvidence> Body::probe(const season::Ladder& ladder, const season::Rung& rung, CivilDate day,
                                                 double loadKg, std::optional<double> probeLoadKg)
{
    const double noise = sessionNoise(ladder, rung);
    const double dayNoise = dayPart * noise * random_.normal();
    const double velocity = measuredVelocity(ladder, rung, loadKg);
    std::vector<season::SessionEvidence> found;
    const auto keep = [&](season::SessionEvidence evidence, season::Side side) {
        evidence.day = day;
        evidence.ladder = ladder.key;
        evidence.rung = rung.key;
        evidence.side = side;
        evidence.loadKg = loadKg;
        found.push_back(std::move(evidence));
    };
    if (!athlete_.sensor) {
        keep(typed(velocity, loadKg), season::Side::Both);
        return found;
    }
    if (rung.metric == Metric::ContactTime || rung.metric == Metric::DropTime) {
        keep(timed(ladder, rung, loadKg, velocity, dayNoise), season::Side::Both);
        return found;
    }
    const auto& truth = athlete_.ladders.at(ladder.key);
    const double own = truth.rungs.at(rung.key).range;
    const bool sloppy = random_.chance(athlete_.sloppy);
    const auto sides =
        ladder.oneSided ? std::vector{season::Side::Left, season::Side::Right} : std::vector{season::Side::Both};
    for (const auto side : sides) {
        const double lean = side == season::Side::Left    ? truth.asymmetry / 2
                            : side == season::Side::Right ? -truth.asymmetry / 2
                                                          : 0;
        const Session session{measuredTime(ladder, rung, loadKg, lean) + dayNoise, velocity, own, noise, sloppy};
        const auto repetitions = lifted(3, session), others = lifted(12, session);
        const season::ProbeSet set{day,    ladder.key,  rung.key,    side,   season::EvidenceSource::Probe,
                                   loadKg, probeLoadKg, repetitions, others, own};
        auto evidence = season::evidenceFromProbe(set, season::standardSeasonData().rules);
        if (!evidence)
            continue;
        if (&rung == &ladder.rungs.front())
            evidence->estimatedMaximum =
                reps::Measured{maximumOn(ladder.key, rung.key) * (1 + 0.03 * random_.normal()), 2};
        keep(std::move(*evidence), side);
    }
    return found;
}

double Body::flyingTime(int dayOfSeason)
{
    return athlete_.flying * (1 - 0.03 * levelled(dayOfSeason, 90)) + athlete_.stopwatch * random_.normal();
}

void Body::rest(int dayCount)
{
    fatigue_ *= std::exp(-dayCount / fatigueDays);
    if (dayCount < longAbsence)
        return;
    const double kept = std::exp(-dayCount / 60.0);
    for (auto& [ladder, trained] : trained_) {
        trained.strength *= kept;
        for (auto& [rung, sessions] : trained.rungs)
            sessions *= kept;
    }
}

void Body::train(const season::PlannedLift& lift, double loadKg)
{
    auto& trained = trained_[lift.ladder];
    trained.strength += lift.primer ? 0 : 1;
    trained.rungs[lift.rung] += lift.primer ? 0 : 1;
    const double relative =
        loadKg > 0 ? loadKg / std::max(1.0, maximumOn(lift.ladder, lift.rung)) : 0.5; // jumps count as half
    for (const auto& set : lift.work)
        fatigue_ += set.repetitions * relative / fatigueUnit;
}

} // namespace fleetrung::seasons
