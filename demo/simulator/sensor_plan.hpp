// The sensor of the simulator: which part it is, where it sits, how it samples and what the radio does to it.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include <Eigen/Core>
#include <Eigen/Geometry>

#include "engine/motion/sample.hpp"

namespace fleetrung::simulator
{

/// One class of common MEMS parts. Spread of bias and scale are standard deviations of one axis.
struct Part {
    std::string_view name;          ///< "A" .. "E", "old", "perfect"
    double accelerometerNoise;      ///< micro-g per root Hz
    double gyroscopeNoise;          ///< milli-degree/s per root Hz
    double accelerometerStep;       ///< milli-g per least significant bit; 0 = not quantised
    double gyroscopeStep;           ///< milli-degree/s per least significant bit
    double accelerometerBias;       ///< milli-g
    double gyroscopeBias;           ///< degree/s
    double accelerometerScaleError; ///< relative
    double gyroscopeScaleError;     ///< relative
    double accelerometerRange;      ///< g; 0 = unlimited
    double gyroscopeRange;          ///< degree/s; 0 = unlimited
    std::string_view source;
};

/// All classes; sources in parts.cpp.
[[nodiscard]] std::span<const Part> allParts();
/// Null where there is none of that name.
[[nodiscard]] const Part* findPart(std::string_view name);

/// What goes wrong beside the radio's share of lost, doubled and swapped packets. As it stands, nothing does.
struct SensorFaults {
    double burstLoss = 0;               ///< s without a sample, once
    double burstAt = 0;                 ///< s on the recording's clock, where it begins
    std::optional<int> burstRepetition; ///< 0-based: the burst lies in the middle of its concentric phase instead
    double clockStep = 0;               ///< s that the time stamps jump, once and for good; below 0 they jump back
    double clockStepAt = 0;             ///< s on the recording's clock
    std::optional<int> stuckAxis;       ///< 0-2 accelerometer x y z, 3-5 gyroscope x y z: keeps one reading
    double stuckFrom = 0;               ///< s on the recording's clock
    std::array<bool, 3> swappedSign{};  ///< gyroscope x y z turns the wrong way
};

struct SensorPlan {
    Eigen::Quaterniond mounting = Eigen::Quaterniond::Identity(); ///< sensor axes -> bar axes
    Eigen::Vector3d lever = Eigen::Vector3d::Zero(); ///< m, sensor from the bar's centre in bar axes (y along the bar)
    std::string_view part = "A";
    double rate = 200;       ///< Hz, 25-2000
    double wobble = 0;       ///< rad, rotation about the bar over one stroke (0.7 = 40 degrees)
    double clockSkew = 0;    ///< relative: 100e-6 = the sensor's clock runs 100 ppm fast
    double timingJitter = 0; ///< s, standard deviation of the true instant against the time stamp
    double startTime = 0;    ///< s, the first sample's time stamp
    double lossShare = 0;    ///< of packets that never arrive
    double doubledShare = 0; ///< of packets that arrive twice
    double swappedShare = 0; ///< of packets that arrive after the next one
    int samplesPerPacket = 10;
    bool randomMounting = false; ///< any mounting, drawn from the seed
    bool hasGyroscope = true;
    double accelerometerRange = 0; ///< g, 2-32; 0 = the part's own. Counts stay 16 bits, so the step follows
    SensorFaults faults;
};

} // namespace fleetrung::simulator
