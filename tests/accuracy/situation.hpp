// Draws what one simulated set is like: how it is lifted, by which sensor, with which fault.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "demo/simulator/random.hpp"
#include "demo/simulator/simulator.hpp"
#include "engine/reps/lift.hpp"

namespace fleetrung::accuracy
{

/// A: the stated accuracy holds. B: found and flagged, with an uncertainty that still covers the truth. C: refused by
/// name.
enum class Class { A, B, C };

struct Drawn {
    simulator::SetPlan plan;
    simulator::SensorPlan sensor;
};

struct Fault {
    std::string_view name;
    Class quality;
    std::string_view what;
    std::vector<double> rates; ///< Hz
    /// Before the set is simulated; null where nothing changes.
    void (*prepare)(Drawn&, simulator::Random&);
    /// Afterwards, where the truth says where the fault must fall; null where nothing changes.
    void (*damage)(simulator::SimulatedSet&, simulator::Random&);
    /// Samples as they came off the air, put in order by the engine; else in order already.
    bool asReceived = false;
    /// Lifts whose bar begins on floor, blocks or pins only.
    bool fromSupportOnly = false;
};

/// "none" first.
[[nodiscard]] std::span<const Fault> allFaults();

/// Lifts that are told by repetitions; `free` has no rule to be right or wrong by.
[[nodiscard]] std::vector<const reps::Lift*> judgedLifts();
[[nodiscard]] bool concerns(const Fault& fault, const reps::Lift& lift);

struct Situation {
    const reps::Lift* lift;
    const Fault* fault;
    double rate;
    std::uint64_t seed; ///< draws everything; the same seed gives the same set
};

[[nodiscard]] Drawn draw(const Situation& situation);

/// Draws and simulates, fault included. Fails where no body can do what was drawn.
[[nodiscard]] Expected<simulator::SimulatedSet> simulate(const Situation& situation);

/// Seeds that do not resemble each other.
[[nodiscard]] std::uint64_t mixed(std::uint64_t seed, std::uint64_t number);

} // namespace fleetrung::accuracy
