// One jump and what is known of it. SI units; instants on the recording's own clock [s].
//
// Contact = first landing to take-off; flight = take-off to second landing, both as the sensor feels them: at the
// instant at which force begins or ends (force plates call it at 10 or 20 N). Height = g t^2 / 8. Two forms of the
// reactive strength index are given and never mixed: height / contact [m/s] and flight / contact [1]; definitions as in
// PMC9750644, table 1, and Healy, Kenny, Harrison 2017, doi:10.1123/ijspp.2017-0511.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "engine/jumps/physics.hpp"

namespace fleetrung::jumps
{

enum class Kind { Drop, CounterMovement, Squat, Hop };
[[nodiscard]] std::string_view nameOf(Kind kind); ///< "drop", "counter-movement", "squat", "hops"
[[nodiscard]] std::optional<Kind> kindNamed(std::string_view name);

/// What a reader must know before trusting a jump. A set of flags.
enum class Flag : std::uint32_t {
    FlatLanding = 1U << 0U,     ///< a second sharp impact after the first: the heels struck
    BentLanding = 1U << 1U,     ///< second landing lower than the take-off: flight and height are too large
    RaisedLanding = 1U << 2U,   ///< second landing on something higher: no height from flight
    DoubleBounce = 1U << 3U,    ///< a small hop inside the contact, or after the second landing
    NoSecondLanding = 1U << 4U, ///< the recording ends before it, or it was too soft to be seen
    DropHeightOff = 1U << 5U,   ///< effective drop more than 15 % off the box
    Clipped = 1U << 6U,         ///< a reading reached the end of the sensor's range
    Gap = 1U << 7U,             ///< more than 60 ms without samples
    NoStillness = 1U << 8U,     ///< nobody stood still before it: no velocities
    NoGyroscope = 1U << 9U,     ///< orientation was taken as fixed
};

using Flags = std::uint32_t;
[[nodiscard]] constexpr bool has(Flags flags, Flag flag)
{
    return (flags & static_cast<Flags>(flag)) != 0;
}
[[nodiscard]] constexpr Flags operator|(Flags flags, Flag flag)
{
    return flags | static_cast<Flags>(flag);
}
/// "flat-landing", "bent-landing", "raised-landing", "double-bounce", "no-second-landing", "drop-height-off",
/// "clipped", "gap", "no-stillness", "no-gyroscope".
[[nodiscard]] std::vector<std::string_view> flagNames(Flags flags);

struct Jump {
    Kind kind = Kind::Drop;
    std::optional<Measured> landing; ///< s; drop jumps and hops
    Measured takeoff;                ///< s
    std::optional<Measured> secondLanding;

    std::optional<Measured> contact;            ///< s
    std::optional<Measured> flight;             ///< s
    std::optional<Measured> height;             ///< m, from flight; none without a second landing at the same height
    std::optional<Measured> rsi;                ///< m/s, height / contact
    std::optional<Measured> flightContactRatio; ///< flight / contact

    /// m/s, from vertical acceleration since the last stillness; worn on the waist only (a shoe is not the body).
    std::optional<Measured> takeoffVelocity;
    std::optional<Measured> heightFromVelocity; ///< m, v^2 / (2 g)
    std::optional<Measured> effectiveDrop;      ///< m, from the speed of the first landing; drop jumps on the waist
    Flags flags = 0;
};

} // namespace fleetrung::jumps
