#include "engine/reps/stroke_watch.hpp"

#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"
#include "engine/reps/selection.hpp"

namespace fleetrung::reps
{
namespace
{

// Starting values of this project.
constexpr double enoughOfRange = 0.6;   // of the lift's least rise: the forward estimate may fall short of it
constexpr double slow = 0.04;           // m/s: the end of a rise is near
constexpr double lowShare = 0.25;       // of the rise's greatest velocity: the same, with the forward estimate's error
constexpr double sameLevel = 0.03;      // m/s
constexpr double clearlyUp = 0.10;      // m/s: it was not
constexpr double upAgain = 0.4;         // of the greatest velocity
constexpr double clearlyDown = -0.05;   // m/s
constexpr double afterReversal = 0.06;  // s from slow on
constexpr double afterPause = 0.125;    // s at one level: what a pause needs to be told
constexpr double afterFreeFall = 0.055; // s
constexpr double fallShare = 0.95;      // of gravity
constexpr int mostLooks = 12;           // at one end of a stroke
constexpr double leadIn = 0.75;         // s before a turning point: the pause there and its change point
constexpr double unseenDescent = 3.0;   // s before a bottom whose descent is too short for a turning point

} // namespace

StrokeWatch::StrokeWatch(const Lift& lift) : lift_(lift), prominence_(strokeProminence(lift)) {}

bool StrokeWatch::add(const Instant& now)
{
    if (!started_) {
        started_ = true;
        low_ = high_ = bottom_ = {now.time, 0};
        last_ = now;
        return false;
    }
    path_ += 0.5 * (last_.velocity + now.velocity) * (now.time - last_.time);
    turn(now);
    followEnd(now);
    last_ = now;
    if (!due(now))
        return false;
    --looksLeft_;
    return true;
}

/// The same turning points as findStrokes gives, on the path so far.
void StrokeWatch::turn(const Instant& now)
{
    turnedDown_ = false;
    if (path_ >= high_.path)
        high_ = {now.time, path_};
    if (path_ <= low_.path)
        low_ = {now.time, path_};
    if (direction_ != 1 && path_ - low_.path >= prominence_) {
        direction_ = 1;
        bottom_ = low_;
        high_ = {now.time, path_};
        arm();
    } else if (direction_ != -1 && high_.path - path_ >= prominence_) {
        turnedDown_ = direction_ == 1;
        if (direction_ == 0)
            bottom_ = low_;
        direction_ = -1;
        top_ = high_;
        low_ = {now.time, path_};
    }
}

/// A rise ends where velocity turns negative, where it stays at one low level (zero, or what the error of the forward
/// estimate makes of it), or in free fall.
void StrokeWatch::followEnd(const Instant& now)
{
    if (now.velocity >= std::max(clearlyUp, upAgain * greatest_) && lowSince_) {
        // It goes on, or another stroke begins where the one before ended.
        if (now.time - *lowSince_ > afterPause)
            bottom_ = lastLow_;
        arm();
    }
    greatest_ = std::max(greatest_, now.velocity);
    if (now.velocity < std::max(slow, lowShare * greatest_)) {
        lastLow_ = {now.time, path_};
        if (!lowSince_)
            lowSince_ = now.time;
        if (!slowSince_ && now.velocity < slow)
            slowSince_ = now.time;
        if (!levelSince_ || std::abs(now.velocity - level_) > sameLevel) {
            level_ = now.velocity;
            levelSince_ = now.time;
        }
    }
    if (lift_.ballistic && !fallingSince_ && now.velocity < greatest_ &&
        now.acceleration < -fallShare * motion::standardGravity)
        fallingSince_ = now.time;
}

void StrokeWatch::arm()
{
    greatest_ = 0;
    looksLeft_ = mostLooks;
    nextLook_ = 0;
    lowSince_.reset();
    slowSince_.reset();
    levelSince_.reset();
    fallingSince_.reset();
}

bool StrokeWatch::due(const Instant& now) const
{
    if (looksLeft_ <= 0)
        return false;
    if (turnedDown_)
        return true;
    if (direction_ != 1 || now.time < nextLook_ || high_.path - bottom_.path < enoughOfRange * lift_.minimumRange)
        return false;
    return (fallingSince_ && now.time - *fallingSince_ >= afterFreeFall) ||
           (levelSince_ && now.time - *levelSince_ >= afterPause) ||
           (slowSince_ && now.time - *slowSince_ >= (now.velocity < clearlyDown ? afterReversal : afterPause));
}

double StrokeWatch::stretchStart() const
{
    if (lift_.start == Start::Concentric)
        return bottom_.time - leadIn;
    return (top_ ? top_->time : bottom_.time - unseenDescent) - leadIn;
}

} // namespace fleetrung::reps
