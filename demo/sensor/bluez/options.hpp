// What the simulated sensor is told on its command line.
#pragma once

#include <string>
#include <vector>

#include "demo/sensor/bluez/simulation.hpp"
#include "engine/base/error.hpp"

namespace fleetrung::demo
{

struct Options {
    std::string map, second; ///< files; empty: the plain map, and no second sensor
    std::string recording;   ///< CSV; empty: the motion simulator
    LiftPlan lift;
    bool posed = false; ///< lies in a hand, moved by commands, instead of playing sets
    double rate = 0;    ///< samples per second; 0: the map's
    double pause = 8;   ///< s between two sets; below 0: on command
    double skew = 0;    ///< ppm
    int payload = 244;  ///< bytes a notification may hold
    bool neighbours = true, connectedBefore = false;
    std::vector<std::string> commands; ///< carried out at the start
};

/// Fills the air as the options say.
[[nodiscard]] Expected<void> populate(Simulation& simulation, const Options& options);

} // namespace fleetrung::demo
