// The parts of the screening. Used inside motion/.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>

#include "engine/motion/intake.hpp"

namespace fleetrung::motion
{

/// Axes in one row: 0-2 accelerometer x y z, 3-5 gyroscope x y z.
inline constexpr int axisCount = 6;
[[nodiscard]] inline double reading(const Sample& sample, int axis)
{
    return axis < 3 ? sample.specificForce[axis] : sample.angularRate[axis - 3];
}
/// "accelerometer y".
[[nodiscard]] std::string axisName(int axis);

/// Least and greatest reading of each axis over neighbouring samples.
struct Extremes {
    std::span<const Sample> samples;
    std::array<double, axisCount> least, greatest;

    [[nodiscard]] double range(int axis) const
    {
        const auto i = static_cast<std::size_t>(axis);
        return greatest[i] - least[i];
    }
};

/// The axis that keeps its reading, or hardly changes it, while the other two of its sensor tremble and move. In a
/// short part of a recording an axis may well have had nothing to see: there the noise of the others decides alone.
[[nodiscard]] std::optional<int> findStuckAxis(const Extremes& part, bool byNoiseAlone);

/// The axis that keeps exactly one reading to the very end, for so long that its noise, as the data sheet gives it,
/// would have moved it many times over.
[[nodiscard]] std::optional<int> findFrozenAxis(const Recording& recording, double rate);

struct ClippedAxes {
    std::vector<Span> spans;                      ///< of any axis, in order
    std::array<std::size_t, axisCount> samples{}; ///< at the end of the range
    std::size_t anyAxis = 0;                      ///< samples with one axis at least
};
[[nodiscard]] ClippedAxes findClipping(const Recording& recording, const Extremes& whole, double period);

/// What does not fit between the gyroscope and the direction of gravity: the axes that turn the wrong way, or all three
/// where the gyroscope says nothing at all while the sensor turns (`silent`).
struct Misfit {
    std::array<bool, 3> swapped{};
    bool silent = false;
};
[[nodiscard]] std::optional<Misfit> findMisfit(const Recording& recording, const Extremes& whole);

} // namespace fleetrung::motion
