#include "engine/jumps/landing.hpp"

#include <algorithm>

namespace fleetrung::jumps
{
namespace
{

constexpr double shortly = 0.015; // s to each side that are "around"

/// Length of the force beyond its mean over what is around [m/s2].
double sharpness(const Signal& signal, std::size_t i)
{
    double sum = 0;
    int count = 0;
    for (std::size_t j = signal.at(signal.time[i] - shortly); j < signal.size(); ++j) {
        if (signal.time[j] > signal.time[i] + shortly)
            break;
        sum += signal.length[j];
        ++count;
    }
    return signal.length[i] - sum / count;
}

} // namespace

bool heelsStrike(const Signal& signal, double landing, Worn worn)
{
    const double from = landing + (worn == Worn::Shoe ? 0.028 : 0.020);
    double sharpest = 0;
    for (std::size_t i = signal.at(from); i < signal.size() && signal.time[i] < landing + 0.090; ++i)
        sharpest = std::max(sharpest, sharpness(signal, i));
    return sharpest > (worn == Worn::Shoe ? 80.0 : 34.0);
}

} // namespace fleetrung::jumps
