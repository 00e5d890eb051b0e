// Sensors that nobody described: random layouts of packets and lines, with fields that have nothing to do with motion.
#pragma once

#include <string>
#include <vector>

#include "demo/simulator/random.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::tests
{

/// A field that says something else. Bits from the packet's begin; of lines the column.
struct Distractor {
    enum class Kind { Constant, Temperature, Battery, Magnetometer, Noise, Checksum } kind = Kind::Constant;
    int bit = 0;
    int bytes = 1;
    double value = 0; ///< of the constant, or where the others begin
    int axis = 0;     ///< of the magnetometer
    int stride = 0;   ///< bits from sample to sample where every sample has one; 0: once a packet
};

struct Layout {
    sensor::SensorMap map;                            ///< what teaching should come to
    std::vector<std::vector<Distractor>> distractors; ///< of each stream
    double rate = 100;                                ///< Hz
    int payload = 244;                                ///< bytes of a notification
    bool battery = false;                             ///< a second notifier, once a while
    bool wholeLines = false;                          ///< lines are not joined over notifications
    std::string part = "A";
    double loss = 0;          ///< share of notifications
    double interval = 0.015;  ///< s between the radio's events
    bool anyMounting = false; ///< the chip lies aslant in its case
    std::string words;        ///< what is special, for a failing test
};

[[nodiscard]] Layout randomLayout(simulator::Random& random);

} // namespace fleetrung::tests
