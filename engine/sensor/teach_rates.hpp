// Numbers that lie still while the sensor does, and move when it turns: what a gyroscope may be made of. Private to
// engine/sensor.
#pragma once

#include <vector>

#include "engine/sensor/teach_motion.hpp"

namespace fleetrung::sensor::teaching
{

struct RateChannel {
    Place place;
    int samples = 1, stride = 0; ///< of a packet; bits
    double bias = 0;             ///< counts, mean at rest
    double noise = 0;            ///< counts, of one reading at rest
    double activity = 0;         ///< counts, rms of half-second medians
    Integral integral;           ///< of counts above the bias
};

/// Counts above the bias of all samples, without those that broken records bring.
[[nodiscard]] std::vector<double> turningOf(const Table& table, const Triad& triad, std::size_t axis, double bias);

/// Those of one group, in the order of their places; bits that the accelerometer takes are left out.
[[nodiscard]] std::vector<RateChannel> rateChannels(const Table& table, const PlaceGroup& group, const Steps& steps,
                                                    const Triad* accelerometer);

} // namespace fleetrung::sensor::teaching
