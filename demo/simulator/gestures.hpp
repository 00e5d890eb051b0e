// How each lift is usually moved: starting values of the simulator, none of them evidence for anything.
#pragma once

#include <string_view>

namespace fleetrung::simulator
{

enum class Kind {
    Stand, ///< down, then up to where it began (squats, hinges, bench press)
    Hang,  ///< a short dip, then a pull to the shoulders
    Pull,  ///< from a support up, and back down to it (pulls, squats from pins)
    Step,  ///< like Pull with the body as support: nothing is put down
    Clean, ///< from a support to the shoulders, caught, stood up with, lowered or dropped
    DropJump,
    Hop,
    CounterMovementJump,
    SquatJump
};

[[nodiscard]] constexpr bool isJump(Kind kind)
{
    return kind >= Kind::DropJump;
}

struct Gesture {
    std::string_view key;
    Kind kind;
    double range;         ///< m
    double slowest;       ///< m/s, mean velocity at the one-repetition maximum
    double gain;          ///< m/s more for each whole share of the maximum that is taken off
    double peakShare;     ///< time to peak velocity / concentric duration
    double loweringSpeed; ///< m/s, mean, on the way down
    double middle;        ///< push half-way to the peak, relative to the first push
    double dip;           ///< m, hang lifts: countermovement
    double caught;        ///< m, cleans: how far the bar falls before it is caught
    double recovered;     ///< m, cleans: how far it rises from there to standing
};

/// Null where there is none of that key.
[[nodiscard]] const Gesture* findGesture(std::string_view key);

} // namespace fleetrung::simulator
