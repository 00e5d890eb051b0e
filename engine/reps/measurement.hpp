// One candidate while it is being measured. Used inside reps/, by metrics.cpp and descent.cpp.
#pragma once

#include "engine/reps/joint_motion.hpp"
#include "engine/reps/lift.hpp"
#include "engine/reps/local_fit.hpp"
#include "engine/reps/repetition.hpp"
#include "engine/reps/selection.hpp"

namespace fleetrung::reps
{

/// Standard uncertainty of a start or an end [s].
[[nodiscard]] double instantError(const motion::VerticalMotion& motion, const motion::Recording& recording, double time,
                                  bool deadStop, double velocityVariance);
/// Standard uncertainty of a velocity peak's instant [s], for a standard error of acceleration [m/s2] that is the same
/// all around it.
[[nodiscard]] double peakError(const motion::VerticalMotion& motion, const motion::Recording& recording, double peak,
                               double accelerationError);

/// What several metrics share is worked out once.
class Measurement
{
public:
    Measurement(const motion::VerticalMotion& theMotion, const motion::Recording& theRecording,
                const Candidate& candidate, const Lift& theLift);

    Repetition take();

private:
    /// Places in the joint covariance; the early windows' come after `Windows`, those of a descent after these.
    enum Place : std::size_t { Start, Peak, End, Windows };

    [[nodiscard]] bool sampledAt(double lowest) const; ///< whether the rate [Hz] is enough
    [[nodiscard]] Signal acceleration() const { return {motion_.time, motion_.acceleration}; }
    [[nodiscard]] Measured meanUpTo(double time, double heightError, double timeError) const;
    [[nodiscard]] Measured rise(std::size_t from, std::size_t to, double size, double timingError) const;
    [[nodiscard]] double peakErrorAt(double time) const
    {
        return peakError(motion_, recording_, time, meanAccelerationError_);
    }
    [[nodiscard]] Measured atPeak(const Extremum& peak) const;
    void accelerations(Repetition& rep) const;
    void speeds(Repetition& rep) const;
    void shape(Repetition& rep) const;
    void howSoon(Repetition& rep) const;
    void descent(Repetition& rep) const;
    [[nodiscard]] double fastestDescent(const Movement& down) const;
    void reversal(Repetition& rep, const Movement& down) const;
    void dropStop(Repetition& rep, const Movement& down, double downEnd) const;

    const motion::VerticalMotion& motion_;
    const motion::Recording& recording_;
    const Lift& lift_;
    Movement up_; ///< ends at take-off or release for ballistic lifts
    const std::optional<Movement>& down_;
    std::optional<double> freeFall_;
    double rate_;
    double scale_; ///< relative error of a single acceleration; velocity and height have it in their covariance
    JointMotion joint_;
    double meanAccelerationError_ = 0;         ///< m/s2, of the mean from start to peak
    double startError_, peakError_, endError_; ///< s
};

} // namespace fleetrung::reps
