// What teaching says. Private to engine/sensor.
#pragma once

#include <algorithm>
#include <string>

#include "engine/sensor/teach.hpp"

namespace fleetrung::sensor::teaching
{

/// "face three", "turn one", "raise two".
[[nodiscard]] std::string nameOf(TeachStep step);
[[nodiscard]] inline TeachStep stepOf(std::size_t index)
{
    return static_cast<TeachStep>(index);
}

[[nodiscard]] Taught repeatStep(std::size_t step, std::string why);
[[nodiscard]] Taught notTeachable(std::string why);

/// 1 up to `good`, 0.5 at `bad`, on to 0 along the same line.
[[nodiscard]] inline double sureBelow(double value, double good, double bad)
{
    return std::clamp(1 - 0.5 * (value - good) / (bad - good), 0.0, 1.0);
}

} // namespace fleetrung::sensor::teaching
