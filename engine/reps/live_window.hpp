// The forward estimate of a set with its nominal motion at each sample, and the best motion of its last seconds: the
// forward chain smoothed backwards from the newest sample. Used inside reps/.
#pragma once

#include "engine/motion/corrected_trace.hpp"
#include "engine/motion/tracker.hpp"
#include "engine/motion/vertical_motion.hpp"
#include "engine/reps/stroke_watch.hpp"

namespace fleetrung::reps
{

class LiveWindow
{
public:
    /// The recording may grow between calls; it must outlive the window.
    LiveWindow(const motion::Recording& recording, const motion::Knowledge& knowledge);

    /// Makes room for samples of the whole set and keyframes at this rate [Hz].
    void reserve(std::size_t samples, double rate);
    /// To be called once, with the recording's first half second. False where the readings are nowhere near gravity.
    [[nodiscard]] bool start();

    /// Takes in the next sample, if there is one.
    [[nodiscard]] std::optional<Instant> advance();
    /// The newest sample ends an interval: the chain cannot be closed there, but one sample later.
    [[nodiscard]] bool atKeyframe() const;

    /// Solves the samples from an instant [s] to now. False where the solve breaks down.
    [[nodiscard]] bool solve(double from);
    [[nodiscard]] const motion::VerticalMotion& motion() const { return motion_; }
    /// Takes one velocity [m/s] off the whole of that motion.
    void takeOff(double velocity);
    /// The samples of that motion, as a recording of their own.
    [[nodiscard]] const motion::Recording& piece();
    /// Whether the sensor has been still anywhere in the set.
    [[nodiscard]] bool everStill() const;

private:
    void spread(std::size_t first);

    const motion::Recording& recording_;
    motion::Tracker tracker_;
    std::size_t taken_ = 0;
    std::size_t keyframes_ = 0;
    double velocityError_ = 0;                             ///< m/s, of the nominal motion at the last keyframe
    std::vector<double> acceleration_, velocity_, height_; ///< nominal, one a sample
    motion::VerticalMotion motion_;
    motion::Recording piece_;
    std::size_t firstSample_ = 0; ///< of the motion
};

} // namespace fleetrung::reps
