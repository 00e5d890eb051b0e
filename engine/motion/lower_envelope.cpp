#include "engine/motion/lower_envelope.hpp"

#include <algorithm>

namespace fleetrung::motion
{
namespace
{

constexpr double blockLength = 0.25;    // s
constexpr double leastHeight = 0.25e-3; // s: arrivals are told by a phone that is busy, never better

} // namespace

void LowerEnvelope::clear()
{
    first_ = size_ = 0;
    blockEnd_ = -std::numeric_limits<double>::infinity();
}

bool LowerEnvelope::add(double sensorTime, double arrival, double pace)
{
    if (arrival >= blockEnd_) {
        blockEnd_ = arrival + blockLength;
        if (size_ == capacity)
            first_ = (first_ + 1) % capacity;
        else
            ++size_;
        points_[(first_ + size_ - 1) % capacity] = {sensorTime, arrival};
        return true;
    }
    Point& lowest = points_[(first_ + size_ - 1) % capacity];
    if (arrival - pace * sensorTime <= lowest.y - pace * lowest.x)
        lowest = {sensorTime, arrival};
    return false;
}

std::optional<LowerEnvelope::Pace> LowerEnvelope::pace() const
{
    if (size_ < 2)
        return std::nullopt;
    std::array<Point, capacity> hull;
    std::size_t count = 0;
    double mean = 0;
    for (std::size_t i = 0; i < size_; ++i) {
        const Point& point = at(i);
        mean += (point.x - at(0).x) / static_cast<double>(size_);
        const auto above = [&](const Point& a, const Point& b) { // b lies on or above the line from a to point
            return (b.y - a.y) * (point.x - a.x) >= (point.y - a.y) * (b.x - a.x);
        };
        while (count > 1 && above(hull[count - 2], hull[count - 1]))
            --count;
        hull[count++] = point;
    }
    std::size_t right = 1;
    while (right + 1 < count && hull[right].x - at(0).x < mean)
        ++right;
    const Point &from = hull[right - 1], &to = hull[right];
    const double value = (to.y - from.y) / (to.x - from.x);
    const double duration = at(size_ - 1).y - at(0).y;
    const double height = std::max(medianHeight(value, from.y - value * from.x), leastHeight);
    return Pace{value, 2 * height / (at(size_ - 1).x - at(0).x), duration};
}

double LowerEnvelope::offset(double pace, double seconds) const
{
    const double since = at(size_ - 1).y - seconds;
    double lowest = std::numeric_limits<double>::infinity();
    for (std::size_t i = size_; i-- > 0 && at(i).y >= since;)
        lowest = std::min(lowest, at(i).y - pace * at(i).x);
    return lowest;
}

double LowerEnvelope::medianHeight(double pace, double offset) const
{
    std::array<double, capacity> heights;
    for (std::size_t i = 0; i < size_; ++i)
        heights[i] = at(i).y - pace * at(i).x - offset;
    const auto middle = heights.begin() + static_cast<std::ptrdiff_t>(size_ / 2);
    std::nth_element(heights.begin(), middle, heights.begin() + static_cast<std::ptrdiff_t>(size_));
    return *middle;
}

} // namespace fleetrung::motion
