#include "engine/season/evidence.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::size_t probeRepetitions = 3;
constexpr std::size_t fewestValid = 2;
constexpr std::size_t ownRangeRepetitions = 6;
constexpr double thousandths = 1000; // 1 ms, 0.001 m/s, 1 mm: the steps in which these are printed

using Repetitions = std::vector<const reps::Repetition*>;

/// Median of the values, with the median of their uncertainties: the sensor's error is much the same in all three.
std::optional<Measured> medianOf(const Repetitions& repetitions, Measured reps::Repetition::*metric)
{
    if (repetitions.empty())
        return std::nullopt;
    std::vector<double> values, uncertainties;
    for (const auto* repetition : repetitions) {
        values.push_back((repetition->*metric).value);
        uncertainties.push_back((repetition->*metric).uncertainty);
    }
    return Measured{roundTo(statistics::median(values), thousandths),
                    roundTo(statistics::median(uncertainties), thousandths)};
}

double validShareOf(const ProbeSet& probe, const Rules& rules)
{
    std::size_t valid = 0;
    for (const auto group : {probe.repetitions, probe.others})
        valid += static_cast<std::size_t>(std::count_if(group.begin(), group.end(), [&](const auto& repetition) {
            return isValid(repetition, probe.ownRange, rules);
        }));
    const auto all = probe.repetitions.size() + probe.others.size();
    return all == 0 ? 0 : static_cast<double>(valid) / static_cast<double>(all);
}

/// A probe set may be brought to the probe load later; a work set that stands in for one may not.
double loadShareAllowed(const ProbeSet& probe, const Rules& rules)
{
    return probe.source == EvidenceSource::Probe ? rules.loadCorrectionLimit : rules.loadTolerance;
}

bool loadFits(const ProbeSet& probe, const Rules& rules)
{
    return !probe.probeLoadKg ||
           std::abs(probe.loadKg - *probe.probeLoadKg) <= loadShareAllowed(probe, rules) * *probe.probeLoadKg + 1e-9;
}

} // namespace

std::optional<double> ownRange(std::span<const reps::Repetition> accepted)
{
    if (accepted.size() < ownRangeRepetitions)
        return std::nullopt;
    std::vector<double> ranges;
    for (const auto& repetition : accepted.first(ownRangeRepetitions))
        ranges.push_back(repetition.range.value);
    return statistics::median(ranges);
}

bool isValid(const reps::Repetition& repetition, std::optional<double> own, const Rules& rules)
{
    if (reps::has(repetition.flags, reps::Flag::Clipped) || reps::has(repetition.flags, reps::Flag::Gap))
        return false;
    if (!own)
        return true;
    const double allowed = std::max(rules.rangeTolerance, rules.rangeToleranceShare * *own);
    return roundTo(std::abs(repetition.range.value - *own), thousandths) <= roundTo(allowed, thousandths);
}

Expected<SessionEvidence> evidenceFromProbe(const ProbeSet& probe, const Rules& rules)
{
    if (!loadFits(probe, rules))
        return fail(Code::NotAvailable, probe.ladder + '.' + probe.rung,
                    "no evidence: " + fixedText(probe.loadKg, 1) + " kg is more than " +
                        fixedText(loadShareAllowed(probe, rules) * 100, 0) + " % off the probe load of " +
                        fixedText(*probe.probeLoadKg, 1) + " kg");
    Repetitions valid, singlePeaked;
    for (const auto& repetition : probe.repetitions.first(std::min(probeRepetitions, probe.repetitions.size()))) {
        if (!isValid(repetition, probe.ownRange, rules))
            continue;
        valid.push_back(&repetition);
        if (!reps::has(repetition.flags, reps::Flag::TwoPeaked))
            singlePeaked.push_back(&repetition);
    }
    if (valid.size() < fewestValid)
        return fail(Code::NotAvailable, probe.ladder + '.' + probe.rung,
                    "no evidence: fewer than two of the probe's three repetitions were valid; keep to your own range");

    SessionEvidence evidence;
    evidence.day = probe.day;
    evidence.ladder = probe.ladder;
    evidence.rung = probe.rung;
    evidence.side = probe.side;
    evidence.source = probe.source;
    evidence.loadKg = probe.loadKg;
    if (singlePeaked.size() >= fewestValid)
        evidence.timeToPeak = medianOf(singlePeaked, &reps::Repetition::timeToPeakVelocity);
    evidence.meanVelocity = medianOf(valid, &reps::Repetition::meanVelocity);
    evidence.peakVelocity = medianOf(valid, &reps::Repetition::peakVelocity);
    evidence.range = medianOf(valid, &reps::Repetition::range);
    evidence.validShare = roundTo(validShareOf(probe, rules), thousandths);
    return evidence;
}

} // namespace fleetrung::season
