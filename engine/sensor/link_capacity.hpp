// Whether a link carries what a sensor sends. In every connection interval a few packets go over the air; a
// notification that does not fill its packet takes one all the same. Source: Bluetooth Core Specification Vol 3 Part F
// (MTU - 3 bytes a notification), Vol 6 Part B (intervals in steps of 1.25 ms from 7.5 ms to 4 s), from memory. How
// many packets go in one interval is not promised by anybody: 4 to 6 is common practice, no source.
#pragma once

#include <string>
#include <vector>

#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{

struct LinkTerms {
    int mtu = 23;              ///< bytes
    double interval = 0.030;   ///< s
    double packetsAnEvent = 4; ///< notifications in one interval
};

/// Bytes per second that full notifications carry: (MTU - 3) x packets / interval.
[[nodiscard]] double bytesPerSecond(const LinkTerms& terms);

struct LinkPlan {
    double bytesCarried = 0, packetsCarried = 0; ///< per second
    double bytesNeeded = 0, packetsNeeded = 0;   ///< per second, of all streams; lines of text are estimated
    bool fits = true;                            ///< also where the rate is not known
    double highestRate = 0;            ///< Hz that the link carries in this form; 0: none (a packet is too large)
    std::vector<std::string> warnings; ///< each says what to do; none where it fits with something to spare
};

/// `rate` [Hz] 0: the map's own.
[[nodiscard]] LinkPlan planLink(const SensorMap& map, const LinkTerms& terms, double rate = 0);

} // namespace fleetrung::sensor
