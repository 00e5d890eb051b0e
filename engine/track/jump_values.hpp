// What is worked out from the measured or typed values of one jump. SI units.
//
// Height = g t^2 / 8 from the flight time, which holds where the body lands as it took off (Bosco C, Luhtanen P, Komi
// PV, A simple method for measurement of mechanical power in jumping, Eur J Appl Physiol 1983;50:273-282,
// doi:10.1007/BF00422166, from memory). RSI = height / contact (definitions in engine/jumps/jump.hpp).
#pragma once

#include <optional>

#include "engine/jumps/physics.hpp"

namespace fleetrung::track
{

struct JumpValues {
    std::optional<jumps::Measured> height; ///< m
    std::optional<jumps::Measured> rsi;    ///< m/s
};

/// A height that is given stands; else it is worked out from the flight. Values that are not above zero count as not
/// given. Uncertainties are of the first order, contact and flight taken as independent; 0 where none is known.
[[nodiscard]] JumpValues jumpValues(const std::optional<jumps::Measured>& contact,
                                    const std::optional<jumps::Measured>& flight,
                                    const std::optional<jumps::Measured>& height = {});

} // namespace fleetrung::track
