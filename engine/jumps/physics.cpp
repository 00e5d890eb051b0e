#include "engine/jumps/physics.hpp"

#include <cmath>

namespace fleetrung::jumps
{

double heightFromFlight(double flight, double gravity)
{
    return gravity * flight * flight / 8;
}

double heightFromSpeed(double speed, double gravity)
{
    return speed * speed / (2 * gravity);
}

double speedFromHeight(double height, double gravity)
{
    return std::sqrt(2 * gravity * height);
}

StretchShortening stretchShortening(double contact)
{
    return contact <= 0.250 ? StretchShortening::Fast : StretchShortening::Slow;
}

std::string_view nameOf(StretchShortening cycle)
{
    return cycle == StretchShortening::Fast ? "fast" : "slow";
}

} // namespace fleetrung::jumps
