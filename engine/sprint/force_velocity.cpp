#include "engine/sprint/force_velocity.hpp"

#include <cmath>
#include <vector>

#include "engine/statistics/linear_fit.hpp"

namespace fleetrung::sprint
{
namespace
{

constexpr double torr = 101325.0 / 760;
constexpr int points = 400;       // evenly spaced times of the line
constexpr double ratioFrom = 0.3; // s
constexpr double dragCoefficient = 0.9;

Expected<void> check(const Runner& runner, const Air& air)
{
    if (!(runner.mass >= 20 && runner.mass <= 250))
        return fail(Code::InvalidInput, "body mass", "give a body mass of 20 to 250 kg");
    if (!(runner.stature >= 1.0 && runner.stature <= 2.5))
        return fail(Code::InvalidInput, "stature", "give a stature of 1.0 to 2.5 m");
    if (!(air.temperature >= -40 && air.temperature <= 60))
        return fail(Code::InvalidInput, "temperature", "give a temperature of -40 to 60 degrees Celsius");
    if (!(air.pressure >= 50000 && air.pressure <= 110000))
        return fail(Code::InvalidInput, "pressure", "give a pressure of 500 to 1100 hPa");
    if (!(std::abs(air.wind) <= 15))
        return fail(Code::InvalidInput, "wind", "give a wind of -15 to 15 m/s");
    return {};
}

double forceAt(const Model& model, double time, const Runner& runner, const Air& air)
{
    const double relative = model.speedAt(time) - air.wind;
    return runner.mass * model.accelerationAt(time) + dragFactor(runner, air) * relative * std::abs(relative);
}

double ratioAt(const Model& model, double time, const Runner& runner, const Air& air)
{
    const double force = forceAt(model, time, runner, air);
    return force / std::hypot(force, runner.mass * air.gravity);
}

} // namespace

double pressureAtHeight(double height)
{
    return 101325 * std::pow(1 - 2.25577e-5 * height, 5.25588);
}

double dragFactor(const Runner& runner, const Air& air)
{
    const double density = 1.293 * (air.pressure / torr / 760) * 273 / (273 + air.temperature);
    const double front = 0.2025 * std::pow(runner.stature, 0.725) * std::pow(runner.mass, 0.425) * 0.266;
    return 0.5 * density * front * dragCoefficient;
}

Expected<ForceVelocity> forceVelocity(const Model& model, double lastTime, const Runner& runner, const Air& air)
{
    if (auto fine = check(runner, air); !fine)
        return tl::unexpected(fine.error());
    if (!(lastTime > ratioFrom))
        return fail(Code::NotAvailable, "splits", "the last split must lie beyond 0.3 s after the first movement");
    std::vector<double> speeds, forces, fastSpeeds, ratios;
    for (int i = 0; i <= points; ++i) {
        const double time = lastTime * i / points;
        const double speed = model.speedAt(time);
        speeds.push_back(speed);
        forces.push_back(forceAt(model, time, runner, air));
        if (time < ratioFrom)
            continue;
        fastSpeeds.push_back(speed);
        ratios.push_back(ratioAt(model, time, runner, air));
    }
    const auto line = statistics::fitLine(speeds, forces);
    const auto ratioLine = statistics::fitLine(fastSpeeds, ratios);
    if (!line || !ratioLine || line->slope >= 0)
        return fail(Code::NotAvailable, "splits",
                    "force does not fall with speed here: the splits do not carry a profile");
    ForceVelocity result;
    result.f0 = line->intercept;
    result.slope = line->slope;
    result.v0 = -line->intercept / line->slope;
    result.pmax = result.f0 * result.v0 / 4;
    result.rfMax = ratioAt(model, ratioFrom, runner, air);
    result.drf = ratioLine->slope;
    return result;
}

} // namespace fleetrung::sprint
