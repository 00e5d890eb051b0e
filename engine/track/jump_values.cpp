#include "engine/track/jump_values.hpp"

#include <cmath>

#include "engine/motion/gravity.hpp"

namespace fleetrung::track
{
namespace
{

std::optional<jumps::Measured> positive(const std::optional<jumps::Measured>& value)
{
    return value && value->value > 0 ? value : std::nullopt;
}

} // namespace

JumpValues jumpValues(const std::optional<jumps::Measured>& contact, const std::optional<jumps::Measured>& flight,
                      const std::optional<jumps::Measured>& height)
{
    JumpValues values;
    const auto air = positive(flight);
    values.height = positive(height);
    if (!values.height && air) {
        const double rise = jumps::heightFromFlight(air->value, motion::standardGravity);
        values.height = jumps::Measured{rise, 2 * rise / air->value * air->uncertainty};
    }
    const auto ground = positive(contact);
    if (values.height && ground) {
        const double rsi = values.height->value / ground->value;
        values.rsi = jumps::Measured{rsi, rsi * std::hypot(values.height->uncertainty / values.height->value,
                                                           ground->uncertainty / ground->value)};
    }
    return values;
}

} // namespace fleetrung::track
