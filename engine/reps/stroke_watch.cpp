#include "engine/reps/stroke_watch.hpp"

#include <algorithm>

#include "engine/motion/gravity.hpp"
#include "engine/reps/selection.hpp"

namespace fleetrung::reps
{
namespace
{

// Starting values of this project.
constexpr double enoughOfRange = 0.6;   // of the lift's least rise: the forward estimate may fall short of it
constexpr double slow = 0.04;           // m/s: the end of a rise is near
constexpr double clearlyUp = 0.10;      // m/s: it was not
constexpr double clearlyDown = -0.05;   // m/s
constexpr double afterReversal = 0.06;  // s from slow on
constexpr double afterPause = 0.12;     // s from slow on: what a pause needs to be told
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
        greatest_ = 0;
        looksLeft_ = mostLooks;
        nextLook_ = 0;
        slowSince_.reset();
        fallingSince_.reset();
    } else if (direction_ != -1 && high_.path - path_ >= prominence_) {
        turnedDown_ = direction_ == 1;
        if (direction_ == 0)
            bottom_ = low_;
        direction_ = -1;
        top_ = high_;
        low_ = {now.time, path_};
    }
}

void StrokeWatch::followEnd(const Instant& now)
{
    greatest_ = std::max(greatest_, now.velocity);
    if (now.velocity >= clearlyUp)
        slowSince_.reset();
    else if (now.velocity < slow && !slowSince_)
        slowSince_ = now.time;
    if (lift_.ballistic && !fallingSince_ && now.velocity < greatest_ &&
        now.acceleration < -fallShare * motion::standardGravity)
        fallingSince_ = now.time;
}

bool StrokeWatch::due(const Instant& now) const
{
    if (looksLeft_ <= 0)
        return false;
    if (turnedDown_)
        return true;
    if (direction_ != 1 || now.time < nextLook_ || high_.path - bottom_.path < enoughOfRange * lift_.minimumRange)
        return false;
    if (fallingSince_ && now.time - *fallingSince_ >= afterFreeFall)
        return true;
    if (!slowSince_)
        return false;
    const double since = now.time - *slowSince_;
    return since >= afterPause || (now.velocity < clearlyDown && since >= afterReversal);
}

double StrokeWatch::stretchStart() const
{
    if (lift_.start == Start::Concentric)
        return bottom_.time - leadIn;
    return (top_ ? top_->time : bottom_.time - unseenDescent) - leadIn;
}

} // namespace fleetrung::reps
