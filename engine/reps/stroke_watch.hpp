// Watches the forward estimate of velocity, sample by sample, for an upward stroke that may have ended: only then is it
// worth solving the last seconds again. It rather calls once too often than too late. Used inside reps/.
#pragma once

#include <cstddef>
#include <optional>

#include "engine/reps/lift.hpp"

namespace fleetrung::reps
{

/// One sample of the forward estimate, upwards.
struct Instant {
    std::size_t sample;
    double time;         ///< s
    double velocity;     ///< m/s
    double acceleration; ///< m/s2
};

class StrokeWatch
{
public:
    explicit StrokeWatch(const Lift& lift);

    /// True where it is time for a look at the stroke.
    [[nodiscard]] bool add(const Instant& now);
    /// From when on [s] the stroke and what belongs to it must be seen.
    [[nodiscard]] double stretchStart() const;

    /// What a look said: the next one not before an instant, none any more at this stroke, or hardly any.
    void waitUntil(double time) { nextLook_ = time; }
    void settle() { looksLeft_ = 0; }
    void refuse() { looksLeft_ -= 3; }

private:
    struct Point {
        double time = 0, path = 0;
    };

    void turn(const Instant& now);
    void followEnd(const Instant& now);
    void arm();
    [[nodiscard]] bool due(const Instant& now) const;

    const Lift& lift_;
    double prominence_;
    bool started_ = false;
    Instant last_{};
    double path_ = 0; ///< m, integral of velocity: unlike height it never jumps where the estimate is corrected
    int direction_ = 0;
    Point low_, high_, bottom_;
    std::optional<Point> top_; ///< the upper turning point before the bottom
    bool turnedDown_ = false;  ///< with this very sample
    // The end of the rise, as far as it can be told.
    std::optional<double> lowSince_, slowSince_, levelSince_, fallingSince_;
    Point lastLow_;
    double level_ = 0;    ///< m/s
    double greatest_ = 0; ///< m/s, of the rise
    double nextLook_ = 0;
    int looksLeft_ = 0;
};

} // namespace fleetrung::reps
