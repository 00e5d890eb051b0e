// A swapped sign of the gyroscope, seen in the solved motion: turning the wrong way, it lets gravity leak sideways in
// the middle of every stroke. Used inside motion/.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>

#include "engine/motion/tracker.hpp"

namespace fleetrung::motion
{

/// Root mean square of horizontal velocity over keyframes [m/s].
[[nodiscard]] double sidewaysSpeed(std::span<const Keyframe> keyframes, const Smoothing& smoothing);

/// The axes whose swapped sign explains a motion that goes sideways at `speed`: with them turned round it hardly does.
/// Nothing where that speed is what a lifter may do, or where no other sign is decisively better.
[[nodiscard]] std::optional<std::string> findSwappedAxes(const Recording& recording, const Knowledge& knowledge,
                                                         double speed);

} // namespace fleetrung::motion
