// A set while it is being lifted: samples go in one by one, repetitions come out as they end.
//
// First form: the set so far is solved anew every tenth of a second of signal, by the very code of the final analysis,
// so that live and final cannot disagree on what a repetition is.
#pragma once

#include <vector>

#include "engine/reps/analyse.hpp"

namespace fleetrung::reps
{

class LiveSet
{
public:
    /// `sensor` and `hasGyroscope` describe the source of the samples.
    LiveSet(const Lift& lift, const motion::SensorTraits& sensor, bool hasGyroscope = true);

    /// Samples must move forward in time; one that does not is left out and counted. Returns the repetitions that
    /// became certain with this sample: at most 0.15 s of signal after their concentric end has settled.
    std::vector<Repetition> add(const motion::Sample& sample);

    /// All repetitions announced so far, as announced.
    [[nodiscard]] const std::vector<Repetition>& announced() const { return announced_; }
    [[nodiscard]] SetSummary summary() const;
    [[nodiscard]] std::size_t leftOut() const { return leftOut_; }
    [[nodiscard]] const motion::Recording& recording() const { return recording_; }

    /// The final analysis of everything recorded.
    [[nodiscard]] Expected<SetAnalysis> finish() const;

private:
    const Lift& lift_;
    motion::Recording recording_;
    std::vector<Repetition> announced_;
    double nextLook_ = 0;
    std::size_t leftOut_ = 0;
};

} // namespace fleetrung::reps
