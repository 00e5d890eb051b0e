// What is known of a motion beside its samples.
#pragma once

#include <cstddef>

namespace fleetrung::motion
{

/// A sample at which the sensor is believed to be at a height it has been at before.
struct Return {
    std::size_t sample;
    bool top; ///< at the upper turning point; else the lower one
};

struct Knowledge {
    double heightSpread = 1.0;  ///< m, standard deviation of height about its mean over the capture
    double speedSpread = 1.0;   ///< m/s, standard deviation of horizontal velocity about zero
    double topSpread = 0.012;   ///< m, standard deviation of the height at which tops return
    double bottomSpread = 0.02; ///< m
};

} // namespace fleetrung::motion
