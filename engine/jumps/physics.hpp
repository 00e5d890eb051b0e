// What follows from contact, flight and landing speed. SI units.
#pragma once

#include <string_view>

namespace fleetrung::jumps
{

/// A value and its standard uncertainty (same unit).
struct Measured {
    double value = 0;
    double uncertainty = 0;
};

/// h = g t^2 / 8: rise of a body that takes off and lands at the same height. Source: the projectile's path.
[[nodiscard]] double heightFromFlight(double flight, double gravity);
/// h = v^2 / (2 g), also the height of a drop that ends at this speed.
[[nodiscard]] double heightFromSpeed(double speed, double gravity);
/// v = sqrt(2 g h).
[[nodiscard]] double speedFromHeight(double height, double gravity);

/// Contacts up to 0.250 s are fast, longer ones slow. Source: Schmidtbleicher 1992, Training for power events, in:
/// Komi (ed) Strength and Power in Sport (from memory).
enum class StretchShortening { Fast, Slow };
[[nodiscard]] StretchShortening stretchShortening(double contact);
[[nodiscard]] std::string_view nameOf(StretchShortening cycle); ///< "fast", "slow"

} // namespace fleetrung::jumps
