#include "tests/accuracy/score.hpp"

#include <algorithm>
#include <stdexcept>

#include "tests/accuracy/live.hpp"

namespace fleetrung::accuracy
{
namespace
{

using reps::Repetition;
using simulator::StrokeTruth;

/// A metric that is always given, and one that may be "not available".
std::optional<reps::Measured> given(const reps::Measured& metric)
{
    return metric;
}
std::optional<reps::Measured> given(const std::optional<reps::Measured>& metric)
{
    return metric;
}

template <auto member> std::optional<reps::Measured> of(const Repetition& rep)
{
    return given(rep.*member);
}
template <auto member> std::optional<double> trueOf(const StrokeTruth& truth)
{
    return truth.*member;
}
std::optional<double> trueDuration(const StrokeTruth& truth)
{
    return truth.concentricEnd - truth.concentricStart;
}
std::optional<double> trueFall(const StrokeTruth& truth)
{
    if (truth.eccentricPeakVelocity == 0)
        return std::nullopt;
    return truth.eccentricPeakVelocity;
}

Judged compared(const simulator::TrueRepetition& truth, const Repetition& rep)
{
    Judged judged;
    judged.found = true;
    judged.flags = rep.flags;
    judged.flaggedPartial = reps::has(rep.flags, reps::Flag::ShortRange);
    judged.flaggedTwoPeaked = reps::has(rep.flags, reps::Flag::TwoPeaked);
    for (std::size_t m = 0; m < metricCount; ++m) {
        const auto& metric = allMetrics()[m];
        const auto measured = metric.measured(rep);
        const auto exact = metric.truth(truth.sensor);
        if (measured && exact && !(metric.ofPeak && judged.flaggedTwoPeaked))
            judged.difference[m] = Difference{measured->value - *exact, measured->uncertainty};
    }
    return judged;
}

bool refusedAt(const std::vector<reps::RefusedRepetition>& refused, double peak)
{
    return std::any_of(refused.begin(), refused.end(), [&](const reps::RefusedRepetition& rep) {
        return rep.concentricStart <= peak && peak <= rep.concentricEnd;
    });
}

void compare(const simulator::SimulatedSet& set, const reps::SetAnalysis& analysis, SetScore& score)
{
    const auto& found = analysis.repetitions;
    std::vector<bool> matched(found.size());
    for (const auto& truth : set.truth) {
        const double peak = truth.sensor.peakTime;
        std::size_t i = 0;
        while (i < found.size() && (matched[i] || found[i].concentricStart > peak || found[i].concentricEnd < peak))
            ++i;
        Judged judged;
        if (i < found.size()) {
            matched[i] = true;
            judged = compared(truth, found[i]);
        }
        judged.deadStop = truth.sensor.eccentricPeakVelocity == 0;
        judged.partial = truth.partial;
        judged.twoPeaked = truth.sensor.twoPeaked;
        judged.refused = !judged.found && refusedAt(analysis.refused, peak);
        score.repetitions.push_back(judged);
    }
    for (std::size_t i = 0; i < found.size(); ++i)
        if (!matched[i])
            score.invented.push_back(found[i].peakTime);
}

} // namespace

const std::array<Metric, metricCount>& allMetrics()
{
    static const std::array<Metric, metricCount> metrics{{
        {"mean", "mm/s", 1e3, of<&Repetition::meanVelocity>, trueOf<&StrokeTruth::meanVelocity>, false},
        {"peak", "mm/s", 1e3, of<&Repetition::peakVelocity>, trueOf<&StrokeTruth::peakVelocity>, false},
        {"TPV", "ms", 1e3, of<&Repetition::timeToPeakVelocity>, trueOf<&StrokeTruth::timeToPeakVelocity>, true},
        {"ROM", "mm", 1e3, of<&Repetition::range>, trueOf<&StrokeTruth::range>, false},
        {"propulsive", "mm/s", 1e3, of<&Repetition::meanPropulsiveVelocity>,
         trueOf<&StrokeTruth::meanPropulsiveVelocity>, false},
        {"v100", "mm/s", 1e3, of<&Repetition::velocityAt100ms>, trueOf<&StrokeTruth::velocityAt100ms>, false},
        {"to-peak", "mm", 1e3, of<&Repetition::displacementToPeak>, trueOf<&StrokeTruth::displacementToPeak>, true},
        {"duration", "ms", 1e3, of<&Repetition::concentricDuration>, trueDuration, false},
        {"eccentric", "mm/s", 1e3, of<&Repetition::eccentricPeakVelocity>, trueFall, false},
    }};
    return metrics;
}

SetScore judge(Situation situation, bool withLive)
{
    auto set = simulate(situation);
    for (int attempt = 0; !set && attempt < 50; ++attempt) {
        situation.seed = mixed(situation.seed, 99);
        set = simulate(situation);
    }
    if (!set)
        throw std::runtime_error(describe(set.error()));
    SetScore score{situation, {}, {}, {}, {}, 0};
    const auto analysis = reps::analyseSet(set->recording, *situation.lift);
    if (!analysis) {
        score.refusal = describe(analysis.error());
        compare(*set, reps::SetAnalysis{}, score);
        return score;
    }
    compare(*set, *analysis, score);
    if (withLive)
        judgeLive(*set, *analysis, *situation.lift, score);
    return score;
}

} // namespace fleetrung::accuracy
