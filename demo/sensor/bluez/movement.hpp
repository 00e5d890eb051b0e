// What a simulated sensor does while it lies on bar or shoe: its samples one after the other, for ever.
#pragma once

#include <cstdint>
#include <memory>
#include <string>

#include "demo/simulator/simulator.hpp"
#include "engine/base/error.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::demo
{

class Movement
{
public:
    virtual ~Movement() = default;
    /// The next one; its time is not set.
    [[nodiscard]] virtual motion::Sample next() = 0;
    /// The words after "move": "go", "face +x". One sentence where it cannot.
    [[nodiscard]] virtual Expected<void> command(const std::string& words) = 0;
};

/// Plays a recording; between two plays the sensor lies still on the first `stillSeconds` of it.
class PlayedMovement : public Movement
{
public:
    /// `pause` [s] between two plays; below 0: plays only on the command "go".
    PlayedMovement(motion::Recording recording, double stillSeconds, double pause);
    [[nodiscard]] motion::Sample next() override;
    [[nodiscard]] Expected<void> command(const std::string& words) override;

private:
    motion::Recording recording_;
    std::size_t stillSamples_, at_ = 0, stillLeft_ = 0;
    double rate_, pause_;
    bool playing_ = false;
};

struct LiftPlan {
    std::string lift = "half-squat";
    int repetitions = 5;
    std::uint64_t seed = 1;
    double rate = 100; ///< Hz
    bool anyMounting = false;
    bool onShoe = false;
};

/// One set as the motion simulator plays it, with its truth; begins and ends with `restSeconds` of stillness.
[[nodiscard]] Expected<simulator::SimulatedSet> simulatedSet(const LiftPlan& plan, bool hasGyroscope);
inline constexpr double restSeconds = 2;

} // namespace fleetrung::demo
