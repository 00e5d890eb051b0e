#include "tests/accuracy/live.hpp"

#include <algorithm>

#include "engine/reps/live_set.hpp"

namespace fleetrung::accuracy
{
namespace
{

struct Announced {
    reps::Repetition repetition;
    double at; ///< s, the sample with which it came
};

/// Nothing where the two are not both given. Equal values keep the promise whatever their uncertainties.
std::optional<bool> kept(const std::optional<reps::Measured>& live, const std::optional<reps::Measured>& final)
{
    if (!live || !final)
        return std::nullopt;
    const double moved = final->value - live->value;
    const double room = live->uncertainty * live->uncertainty - final->uncertainty * final->uncertainty;
    return moved * moved <= 4 * std::max(0.0, room);
}

} // namespace

void judgeLive(const simulator::SimulatedSet& set, const reps::SetAnalysis& final, const reps::Lift& lift,
               SetScore& score)
{
    reps::LiveSet live(lift, set.recording.sensor, set.recording.hasGyroscope);
    std::vector<Announced> announced;
    for (const auto& sample : set.recording.samples)
        for (const auto& repetition : live.add(sample))
            announced.push_back({repetition, sample.time});

    for (const auto& rep : final.repetitions) {
        const auto same = std::find_if(announced.begin(), announced.end(), [&](const Announced& candidate) {
            return candidate.repetition.peakTime > rep.concentricStart &&
                   candidate.repetition.peakTime < rep.concentricEnd;
        });
        if (same == announced.end()) {
            ++score.liveMissed;
            continue;
        }
        LiveJudged judged{same->at - rep.concentricEnd, {}};
        for (std::size_t m = 0; m < metricCount; ++m)
            judged.kept[m] = kept(allMetrics()[m].measured(same->repetition), allMetrics()[m].measured(rep));
        score.live.push_back(judged);
    }
}

} // namespace fleetrung::accuracy
