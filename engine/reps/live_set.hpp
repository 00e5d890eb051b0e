// A set while it is being lifted: samples go in one by one, repetitions come out as they end.
//
// Each sample is carried forward by the tracker (engine/motion/tracker.hpp). Where the forward estimate shows that a
// repetition may have ended, the last seconds are smoothed backwards from the newest sample, which gives the best
// motion that all samples so far allow, and the detectors of the final analysis look at it. The rules that compare the
// repetitions of a set (outliers, partials, pulls that begin on nothing) see what has been announced so far.
//
// What comes out depends on lift, traits and samples alone: a stored recording played again gives the very same values.
//
// Memory is asked for when the first half second is complete, enough for 5 minutes at the rate found there, and after
// that only by a look at the end of a stroke: a bounded number of times, most of them at an announcement. A longer set
// goes on, and grows its memory then.
#pragma once

#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "engine/reps/analyse.hpp"
#include "engine/reps/live_window.hpp"
#include "engine/reps/selection.hpp"
#include "engine/reps/stroke_watch.hpp"

namespace fleetrung::reps
{

class LiveSet
{
public:
    /// `sensor` and `hasGyroscope` describe the source of the samples. The lift must outlive the set.
    LiveSet(const Lift& lift, const motion::SensorTraits& sensor, bool hasGyroscope = true);
    LiveSet(const LiveSet&) = delete;
    LiveSet& operator=(const LiveSet&) = delete;

    /// Samples that do not move forward in time are left out here, counted, and kept for the final analysis. Returns
    /// the repetitions that became certain with this sample, 0.15 s of signal after their concentric end at most; valid
    /// until the next call. Later or never only where nothing has stood still for so long that velocity is off by more
    /// than 0.04 m/s: there the end of a rise cannot be told until more is known.
    std::span<const Repetition> add(const motion::Sample& sample);

    /// All repetitions announced so far, as announced.
    [[nodiscard]] const std::vector<Repetition>& announced() const { return announced_; }
    [[nodiscard]] SetSummary summary() const;
    [[nodiscard]] std::size_t leftOut() const { return late_.size(); }
    /// The samples taken in, in order of time.
    [[nodiscard]] const motion::Recording& recording() const { return recording_; }

    /// The final analysis of everything received, late samples put back in order.
    [[nodiscard]] Expected<SetAnalysis> finish() const;

private:
    struct Late {
        std::size_t after; ///< samples taken in before it came
        motion::Sample sample;
    };

    void start();
    void follow(const Instant& now);
    void look(const Instant& now);
    /// The last stroke of the window, where it is one that was not announced and may be a repetition.
    [[nodiscard]] std::optional<Candidate> newest() const;
    [[nodiscard]] bool belongs(const Candidate& candidate);
    void announce(const Candidate& candidate);

    const Lift& lift_;
    motion::Recording recording_;
    LiveWindow window_;
    StrokeWatch watch_;
    bool started_ = false;
    double nextStart_ = 0;                  ///< s
    bool lookDue_ = false;                  ///< put off because the newest sample is a keyframe
    double lastEnd_;                        ///< s, concentric end of the last announced repetition
    std::vector<double> rises_;             ///< m, of all candidates so far
    std::optional<double> lastStartHeight_; ///< m, concentric start of the last announced repetition
    std::vector<Repetition> announced_;
    std::vector<Late> late_;
};

} // namespace fleetrung::reps
