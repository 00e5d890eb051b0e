#include "engine/sprint/flying.hpp"

#include <numbers>

namespace fleetrung::sprint
{

Expected<FlyingSpeed> flyingSpeed(double zone, double time, double timingError)
{
    if (!(zone > 0 && zone <= 200))
        return fail(Code::InvalidInput, "zone", "give a zone of up to 200 m");
    if (!(time > 0))
        return fail(Code::InvalidInput, "time", "give a time above zero");
    const double speed = zone / time;
    if (speed > 15)
        return fail(Code::InvalidInput, "time", "faster than 15 m/s: check zone and time");
    return FlyingSpeed{speed, speed * timingError * std::numbers::sqrt2 / time};
}

} // namespace fleetrung::sprint
