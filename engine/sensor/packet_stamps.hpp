// A packet with one stamp and many samples: the others' stamps, from the step between samples. Private to
// engine/sensor.
#pragma once

#include <cstdint>
#include <limits>
#include <span>

#include "engine/sensor/packet.hpp"

namespace fleetrung::sensor
{

class PacketStamps
{
public:
    /// `rate` 0: not known.
    explicit PacketStamps(double rate);

    /// Gives every sample of one packet a stamp where one has; the step is learnt from packet to packet.
    void fill(std::span<RawSample> packet);
    void restart();

private:
    void learn(const RawSample& stamped, std::size_t number);

    double step_;
    bool known_ = false;
    int others_ = 0; ///< steps in a row unlike the known one
    double last_ = std::numeric_limits<double>::quiet_NaN();
    std::int64_t lastNumber_ = 0, received_ = 0;
};

} // namespace fleetrung::sensor
