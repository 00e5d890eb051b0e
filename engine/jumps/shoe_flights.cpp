#include <algorithm>
#include <cmath>
#include <optional>

#include <Eigen/Geometry>

#include "engine/jumps/flights.hpp"
#include "engine/motion/gravity.hpp"

namespace fleetrung::jumps
{
namespace
{

// Starting values of this project.
constexpr double impactRise = 15;    // m/s2 within a hundredth of a second
constexpr double impactLength = 25;  // m/s2
constexpr double pulled = 0.06;      // s after the heel's rise in which a foot is jerked off the ground
constexpr double ringing = 0.10;     // s after an impact in which no other counts
constexpr double heelRateLimit = 4;  // rad/s
constexpr double instepLever = 0.06; // m: what its turning gives the sensor's upward speed at take-off
constexpr double fallSpeed = 0.6;    // m/s
constexpr double fallShare = 0.5;    // of the speed that the flight's duration asks for

std::vector<std::size_t> impacts(const Signal& signal, const std::vector<double>& rate)
{
    double heelRises = signal.time.front() - 1;
    std::vector<std::size_t> found;
    for (std::size_t i = 1; i < signal.size(); ++i) {
        const double length = signal.length[i];
        if (rate[i] > heelRateLimit)
            heelRises = signal.time[i];
        if (length < impactLength || signal.time[i] - heelRises < pulled ||
            (!found.empty() && signal.time[i] - signal.time[found.back()] < ringing))
            continue;
        double before = signal.length[i - 1];
        for (std::size_t j = i - 1; j > 0 && signal.time[i] - signal.time[j - 1] < 0.010; --j)
            before = std::min(before, signal.length[j - 1]);
        if (length - before > impactRise)
            found.push_back(i);
    }
    return found;
}

double verticalForce(const Signal& signal, std::size_t i)
{
    const auto* rest = signal.restBefore(signal.time[i]);
    const double offset = rest != nullptr ? rest->force - motion::standardGravity : 0;
    return signal.force(i).dot(signal.up[i]) - offset;
}

/// Change of vertical speed between two samples [m/s].
double speedGained(const Signal& signal, std::size_t from, std::size_t to)
{
    double speed = 0;
    for (std::size_t i = from; i < to; ++i) {
        const double mean = 0.5 * (verticalForce(signal, i) + verticalForce(signal, i + 1));
        speed += (mean - motion::standardGravity) * (signal.time[i + 1] - signal.time[i]);
    }
    return speed;
}

/// Where the heel rises fastest between two samples.
std::optional<std::size_t> heelOff(const std::vector<double>& rate, std::size_t from, std::size_t to)
{
    const auto begin = rate.begin();
    const auto peak =
        std::max_element(begin + static_cast<std::ptrdiff_t>(from), begin + static_cast<std::ptrdiff_t>(to));
    if (from >= to || *peak < heelRateLimit)
        return std::nullopt;
    return static_cast<std::size_t>(peak - begin);
}

/// The recording ends while the foot is in the air.
bool endsInAir(const Signal& signal, std::size_t takeoff)
{
    const std::size_t end = signal.size() - 1;
    const std::size_t from = signal.at(signal.time[end] - 0.1);
    const double duration = signal.time[end] - signal.time[takeoff];
    return duration > 0.15 && duration < longestFlight && from > takeoff &&
           speedGained(signal, from, end) < -0.3 * motion::standardGravity * (signal.time[end] - signal.time[from]);
}

} // namespace

std::vector<double> heelRate(const Signal& signal)
{
    std::vector<double> rate(signal.size(), 0.0);
    for (std::size_t i = 1; i < signal.size(); ++i) {
        const auto* rest = signal.restBefore(signal.time[i]);
        const auto& flat = rest != nullptr ? *rest : signal.rests.front();
        const Eigen::Vector3d axis = flat.up.cross(signal.up[i]);
        if (axis.norm() > 1e-3) // up turns in the sensor's axes against the sensor's own turning
            rate[i] = -(signal.recording->samples[i].angularRate - flat.rate).dot(axis.normalized());
    }
    return rate;
}

std::vector<Flight> shoeFlights(const Signal& signal)
{
    std::vector<Flight> flights;
    const auto rate = heelRate(signal);
    std::size_t from = 0;
    for (const auto impact : impacts(signal, rate)) {
        const auto takeoff = heelOff(rate, from, impact);
        const auto* rest = signal.restBefore(signal.time[impact]);
        const std::size_t still = rest != nullptr ? std::max(rest->last, from) : from;
        const std::size_t start = takeoff.value_or(still);
        const double duration = signal.time[impact] - signal.time[start];
        const bool rested = rest != nullptr && rest->last >= from; // since the last impact: speed is known from there
        const double startSpeed = rested || !takeoff ? 0 : instepLever * rate[*takeoff];
        const double speed = startSpeed + speedGained(signal, rested ? rest->last : start, impact - 1);
        const double asked = -fallShare * motion::standardGravity * duration / 2;
        if (takeoff && duration > shortestFlight && duration < longestFlight && speed < asked)
            flights.push_back({*takeoff + 1, impact - 1, true, true});
        else if (rested && speed < -fallSpeed)
            flights.push_back({start + 1, impact - 1, false, true});
        from = impact;
    }
    const auto takeoff = heelOff(rate, from, signal.size());
    if (takeoff && endsInAir(signal, *takeoff))
        flights.push_back({*takeoff + 1, signal.size() - 1, true, false});
    return flights;
}

} // namespace fleetrung::jumps
