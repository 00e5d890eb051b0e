// One recording of a motion sensor: what every source (file, radio, simulator, store) hands to the engine.
#pragma once

#include <cstdint>
#include <limits>
#include <string>
#include <vector>

#include <Eigen/Core>

namespace fleetrung::motion
{

/// One instant. Frame: the sensor's own axes, any mounting. Time: seconds of one clock, strictly increasing in a
/// recording.
struct Sample {
    double time;                   ///< s
    Eigen::Vector3d specificForce; ///< m/s2; at rest it has the length of gravity and points up
    Eigen::Vector3d angularRate;   ///< rad/s; zero where the sensor has no gyroscope
};

/// What the data sheet says of the sensor; the defaults are a common consumer part. Sources: references in docs of the
/// simulator.
struct SensorTraits {
    double accelerometerNoise = 150e-6 * 9.80665;          ///< m/s2 per root Hz, one axis
    double gyroscopeNoise = 7e-3 * 3.14159265358979 / 180; ///< rad/s per root Hz, one axis
    double accelerometerBias = 0.020 * 9.80665;            ///< m/s2, standard deviation of the offset of one axis
    double gyroscopeBias = 1.0 * 3.14159265358979 / 180;   ///< rad/s, standard deviation of the offset of one axis
    double accelerometerScaleError = 0.005;                ///< standard deviation of the relative scale error
    double gyroscopeScaleError = 0.01;                     ///< standard deviation of the relative scale error
    double accelerometerRange = std::numeric_limits<double>::infinity(); ///< m/s2; beyond it readings are clipped
    double gyroscopeRange = std::numeric_limits<double>::infinity();     ///< rad/s
};

/// How one sample came over the radio.
struct Receipt {
    std::int64_t counter = -1; ///< the tick its time was made from (ClockFit); -1: the time came with the data
    std::int64_t arrival = 0;  ///< ns of the phone's clock that never steps back

    bool operator==(const Receipt&) const = default;
};

struct Recording {
    std::vector<Sample> samples;
    bool hasGyroscope = true;
    SensorTraits sensor;
    std::vector<Receipt> receipts = {}; ///< one a sample; empty where the times came with the data
    std::string clockFit = {};          ///< JSON text (stream_clock.hpp); empty likewise
};

/// Median sampling rate [Hz] over up to 255 intervals spread over the recording; 0 for fewer than two samples.
[[nodiscard]] double samplingRate(const Recording& recording);

} // namespace fleetrung::motion
