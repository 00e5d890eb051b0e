// The line that arrivals touch from above: a notification can be late, never early. Internal to this folder.
//
// Lowest points of blocks of 0.25 s are kept for the last 64 s. The line below all of them that is nearest to them in
// the sum is the edge of their lower convex hull over their mean abscissa (Moon, Skelly, Towsley, "Estimation and
// removal of clock skew from network delay measurements", INFOCOM 1999).
#pragma once

#include <array>
#include <cstddef>
#include <limits>
#include <optional>

namespace fleetrung::motion
{

class LowerEnvelope
{
public:
    /// A packet: sensor time [units of the caller] and arrival [s]. Both grow. `pace` [s per unit] tells which point of
    /// a block is lowest. True where a block was completed.
    bool add(double sensorTime, double arrival, double pace);
    void clear();

    struct Pace {
        double value;    ///< s per unit
        double error;    ///< likewise, standard
        double duration; ///< s
    };
    /// Nothing for fewer than two blocks.
    [[nodiscard]] std::optional<Pace> pace() const;
    /// Of the line of that pace that touches the points of the last `seconds` from below [s].
    [[nodiscard]] double offset(double pace, double seconds) const;

private:
    struct Point {
        double x = 0, y = 0;
    };
    static constexpr std::size_t capacity = 256;

    [[nodiscard]] const Point& at(std::size_t index) const { return points_[(first_ + index) % capacity]; }
    [[nodiscard]] double medianHeight(double pace, double offset) const;

    std::array<Point, capacity> points_; ///< a ring; the last one is of the block that runs
    std::size_t first_ = 0, size_ = 0;
    double blockEnd_ = -std::numeric_limits<double>::infinity();
};

} // namespace fleetrung::motion
