// A one-dimensional path in closed form: acceleration runs from level to level on an ease curve, velocity and height
// are its exact integrals. Height, velocity and (unless a level jumps) acceleration are continuous from piece to piece.
#pragma once

#include <vector>

namespace fleetrung::simulator
{

/// How acceleration goes from its first to its last value over a piece, u = 0..1.
enum class Ease {
    Smooth,      ///< 10u^3 - 15u^4 + 6u^5: two derivatives vanish at both ends
    Rise,        ///< 1 - (1-u)^3: begins at full rate, as force does when a bar leaves its support
    Fall,        ///< u^3: ends at full rate, as force does at take-off
    MinimumJerk, ///< textbook stroke: `from` is range / duration^2
    HalfSine     ///< textbook stroke: `from` is peak velocity / duration
};

struct Kinematics {
    double height = 0, velocity = 0, acceleration = 0; ///< m, m/s, m/s2
};

struct Piece {
    double start, duration;  ///< s
    double height, velocity; ///< at the start
    double from, to;         ///< m/s2
    Ease ease;

    [[nodiscard]] Kinematics at(double time) const;
};

class Path
{
public:
    explicit Path(double height = 0) : now{height, 0, 0} {}

    /// Appends a piece that begins where the last one ended.
    void ease(double duration, double from, double to, Ease curve = Ease::Smooth);
    /// At rest at the present height.
    void hold(double duration);
    /// From rest to rest over `rise` (down where negative), minimum jerk (Flash and Hogan 1985).
    void minimumJerk(double duration, double rise);
    /// v = peak sin(pi t / duration).
    void halfSine(double duration, double peak);
    /// Takes rounding away: states what the height and velocity reached were meant to be.
    void settleAt(double height, double velocity);

    [[nodiscard]] double end() const { return time; }
    [[nodiscard]] const Kinematics& state() const { return now; }
    /// Before the first and after the last piece the path rests.
    [[nodiscard]] Kinematics at(double when) const;

private:
    std::vector<Piece> pieces;
    double time = 0;
    Kinematics now;
};

} // namespace fleetrung::simulator
