#include "engine/jumps/flights.hpp"

#include <algorithm>

#include "engine/motion/gravity.hpp"

namespace fleetrung::jumps
{
namespace
{

constexpr double nothing = 2.5;                          // m/s2: turning and offsets stay below it in flight
constexpr double fallMean = 1.5;                         // m/s2: a body that only sinks fast is not that light
constexpr double loaded = 1.3 * motion::standardGravity; // m/s2: a landing takes at least this much
constexpr double landingTime = 0.08;                     // s in which it does
constexpr double pushTime = 0.6;                         // s before take-off that can belong to the push

/// Greatest upward speed that the force can have given up to the sample, whenever the push began [m/s].
double pushedSpeed(const Signal& signal, std::size_t takeoff)
{
    double speed = 0;
    double greatest = 0;
    for (std::size_t i = takeoff; i > 0 && signal.time[takeoff] - signal.time[i - 1] < pushTime; --i) {
        const double mean = 0.5 * (signal.length[i] + signal.length[i - 1]);
        speed += (mean - motion::standardGravity) * (signal.time[i] - signal.time[i - 1]);
        greatest = std::max(greatest, speed);
    }
    return greatest;
}

double meanLength(const Signal& signal, std::size_t first, std::size_t last)
{
    double sum = 0;
    for (std::size_t i = first; i <= last; ++i)
        sum += signal.length[i];
    return sum / static_cast<double>(last - first + 1);
}

bool landsAfter(const Signal& signal, std::size_t last)
{
    for (std::size_t i = last + 1; i < signal.size() && signal.time[i] - signal.time[last + 1] < landingTime; ++i)
        if (signal.length[i] > loaded)
            return true;
    return false;
}

} // namespace

std::vector<Flight> waistFlights(const Signal& signal)
{
    std::vector<Flight> flights;
    for (std::size_t first = 0; first < signal.size(); ++first) {
        if (signal.length[first] >= nothing)
            continue;
        std::size_t last = first;
        while (last + 1 < signal.size() && signal.length[last + 1] < nothing)
            ++last;
        const double duration = signal.time[last] - signal.time[first];
        const bool seen = first > 0 && duration >= shortestFlight && duration <= longestFlight;
        const bool cut = last + 3 >= signal.size();
        const bool landed = !cut && landsAfter(signal, last);
        const bool pushed = seen && pushedSpeed(signal, first) > 0.25 * motion::standardGravity * duration + 0.05;
        if (seen && ((pushed && (landed || cut)) || (landed && meanLength(signal, first, last) < fallMean)))
            flights.push_back({first, last, pushed, landed});
        first = last;
    }
    return flights;
}

} // namespace fleetrung::jumps
