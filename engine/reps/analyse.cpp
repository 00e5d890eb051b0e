#include "engine/reps/analyse.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/motion/vertical_motion.hpp"
#include "engine/reps/metrics.hpp"
#include "engine/reps/selection.hpp"
#include "engine/reps/set_rules.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double shortestRecording = 0.5; // s

std::optional<Error> refusal(const motion::Recording& recording)
{
    const auto& samples = recording.samples;
    if (samples.size() < 8 || samples.back().time - samples.front().time < shortestRecording)
        return Error{Code::InvalidInput, "", "the recording is shorter than half a second; record the whole set"};
    return std::nullopt;
}

/// Turning points that the lift's data says return to their height, from a first look.
std::vector<motion::Return> returnsOf(const motion::VerticalMotion& motion, const std::vector<Candidate>& candidates,
                                      const Lift& lift)
{
    std::vector<motion::Return> returns;
    for (const auto& candidate : candidates) {
        if (lift.returns.top)
            returns.push_back({sampleAt(motion, candidate.up.end), true});
        if (lift.returns.bottom)
            returns.push_back({sampleAt(motion, candidate.up.start), false});
        if (lift.returns.top && candidate.down)
            returns.push_back({sampleAt(motion, candidate.down->start), true});
    }
    return returns;
}

} // namespace

Expected<SetAnalysis> analyseSet(const motion::Recording& recording, const Lift& lift)
{
    if (lift.metric == EvidenceMetric::ContactTime)
        return fail(
            Code::NotAvailable, std::string(lift.key),
            "jumps are told by contact and flight, which a recording of repetitions does not give; type them in");
    if (const auto refused = refusal(recording))
        return tl::unexpected<Error>(*refused);
    auto screening = motion::screen(recording);
    if (!screening)
        return tl::unexpected<Error>(screening.error());
    motion::VerticalMotionSolver solver(recording, knowledgeOf(lift));
    auto motion = solver.look();
    if (!motion)
        return tl::unexpected<Error>(motion.error());
    auto candidates = selectRepetitions(*motion, lift);
    motion = solver.solve(returnsOf(*motion, candidates, lift));
    if (!motion)
        return tl::unexpected<Error>(motion.error());
    candidates = selectRepetitions(*motion, lift);

    SetAnalysis analysis;
    analysis.samplingRate = motion::samplingRate(recording);
    analysis.quality = screening->quality;
    analysis.findings = std::move(screening->findings);
    for (const auto& candidate : candidates)
        if (auto refused = refusal(candidate.up, *screening))
            analysis.refused.push_back(std::move(*refused));
        else
            analysis.repetitions.push_back(measure(*motion, recording, candidate, lift));
    if (lift.key != "free" && analysis.repetitions.size() >= leastForPartials) {
        const double least = leastRange(analysis.repetitions);
        for (auto& rep : analysis.repetitions)
            if (rep.range.value < least)
                rep.flags = rep.flags | Flag::ShortRange;
    }
    analysis.summary = summarise(analysis.repetitions, lift);
    analysis.trace = {std::move(motion->time), std::move(motion->velocity), std::move(motion->height),
                      std::move(motion->acceleration)};
    return analysis;
}

} // namespace fleetrung::reps
