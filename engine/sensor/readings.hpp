// Where a scaled number goes in a sample. Private to engine/sensor.
#pragma once

#include <cmath>
#include <limits>

#include "engine/sensor/packet.hpp"
#include "engine/sensor/sequence.hpp"

namespace fleetrung::sensor
{

[[nodiscard]] inline RawSample emptySample()
{
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    return {{none, none, none}, {none, none, none}, -1, none, 0, 0, 1};
}

/// Of accelerometer, gyroscope and StampDelta; false where the value is not finite.
inline bool takeReading(Channel channel, double value, RawSample& sample, Ticks& ticks)
{
    const auto axis = static_cast<std::size_t>(channel);
    if (axis < 3)
        sample.specificForce.at(axis) = value;
    else if (axis < 6)
        sample.angularRate.at(axis - 3) = value;
    else if (channel == Channel::StampDelta)
        ticks.delta = value;
    return std::isfinite(value);
}

} // namespace fleetrung::sensor
