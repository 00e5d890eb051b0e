#include "engine/reps/analyse.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/motion/vertical_motion.hpp"
#include "engine/reps/metrics.hpp"
#include "engine/reps/selection.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double shortestRecording = 0.5; // s
constexpr double partialShare = 0.7;      // of the set's median range
constexpr double lightClipping = 0.020;   // s together inside a concentric phase; starting value of this project

std::optional<Error> refusal(const motion::Recording& recording)
{
    const auto& samples = recording.samples;
    if (samples.size() < 8 || samples.back().time - samples.front().time < shortestRecording)
        return Error{Code::InvalidInput, "", "the recording is shorter than half a second; record the whole set"};
    return std::nullopt;
}

/// A stroke of any kind says nothing of where it ends; a lifter under a bar stays within arm's reach of one height.
motion::Knowledge knowledgeOf(const Lift& lift)
{
    motion::Knowledge knowledge;
    knowledge.heightSpread = lift.key == "free" ? 0.4 : std::max(0.3, lift.typicalRange);
    knowledge.speedSpread = lift.key == "free" ? 0.5 : 0.3;
    return knowledge;
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

/// Why the concentric phase of a repetition says nothing; nothing where it does.
std::optional<RefusedRepetition> refusal(const Movement& up, const motion::Screening& screening)
{
    if (motion::sharedTime(screening.gaps, up.start, up.end) > 0)
        return RefusedRepetition{up.start, up.end, motion::Fault::Gap,
                                 "samples are missing inside the concentric phase for more than 60 ms"};
    const double clipped = motion::sharedTime(screening.clipped, up.start, up.end);
    if (clipped > lightClipping)
        return RefusedRepetition{up.start, up.end, motion::Fault::Clipped,
                                 "readings lie at the end of the sensor's range for " + fixedText(1e3 * clipped, 0) +
                                     " ms of the concentric phase; set a wider range"};
    return std::nullopt;
}

void flagPartials(std::vector<Repetition>& repetitions)
{
    if (repetitions.size() < 3)
        return;
    std::vector<double> ranges;
    for (const auto& rep : repetitions)
        ranges.push_back(rep.range.value);
    std::nth_element(ranges.begin(), ranges.begin() + static_cast<std::ptrdiff_t>(ranges.size() / 2), ranges.end());
    const double usual = ranges[ranges.size() / 2];
    for (auto& rep : repetitions)
        if (rep.range.value < partialShare * usual)
            rep.flags = rep.flags | Flag::ShortRange;
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
    if (lift.key != "free")
        flagPartials(analysis.repetitions);
    analysis.summary = summarise(analysis.repetitions, lift);
    analysis.trace = {std::move(motion->time), std::move(motion->velocity), std::move(motion->height),
                      std::move(motion->acceleration)};
    return analysis;
}

} // namespace fleetrung::reps
