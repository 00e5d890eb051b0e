#include "demo/simulator/jump_body.hpp"

#include <cmath>
#include <numbers>

namespace fleetrung::simulator
{

double JumpBody::flightTime(const Flight& flight) const
{
    const double landing = std::sqrt(flight.speed * flight.speed - 2 * plan.gravity * flight.rise);
    return (flight.speed + landing) / plan.gravity;
}

void JumpBody::strike(double delay, double duration, double cycles, double strength)
{
    const double turn = 2 * std::numbers::pi * cycles / duration;
    const Eigen::Vector3d direction{random.uniform(-0.3, 0.3), random.uniform(-0.3, 0.3), 1};
    scene.rings.push_back({now() + delay, duration, direction * strength / (turn * turn), cycles});
}

} // namespace fleetrung::simulator
