// A sensor of a layout in a person's hand, and the radio between it and the phone.
#pragma once

#include "engine/sensor/teach.hpp"
#include "tests/teach/hand.hpp"
#include "tests/teach/layout.hpp"

namespace fleetrung::tests
{

/// One sensor as it came out of the factory: its errors stay the same over all its recordings.
class Device
{
public:
    Device(const Layout& layout, simulator::Random& random);

    /// Everything that arrives while the hand moves, the battery's notifier as the last source.
    [[nodiscard]] std::vector<sensor::RawPacket> record(const Hand& hand);
    [[nodiscard]] std::vector<sensor::Notifier> notifiers() const;

private:
    [[nodiscard]] std::vector<motion::Sample> samplesOf(const Hand& hand);
    [[nodiscard]] std::vector<sensor::RawPacket> sent(const std::vector<motion::Sample>& samples);
    [[nodiscard]] std::vector<sensor::RawPacket> arrived(std::vector<sensor::RawPacket> packets, double end);

    const Layout& layout_;
    simulator::Random& random_;
    Eigen::Matrix3d mounting_;
    Eigen::Vector3d accelerometerGain_, accelerometerBias_, gyroscopeGain_, gyroscopeBias_, field_;
    double accelerometerNoise_, gyroscopeNoise_, skew_;
};

[[nodiscard]] sensor::TeachRecording recordTeaching(Device& device, const Hand& hand, double raiseHeight);

} // namespace fleetrung::tests
