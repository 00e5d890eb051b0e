// Seeded randomness that gives the same numbers with every standard library: std::normal_distribution does not.
#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>

namespace fleetrung::simulator
{

class Random
{
public:
    explicit Random(std::uint64_t seed) : engine(seed) {}

    /// [0, 1), 53 bits.
    double uniform() { return static_cast<double>(engine() >> 11U) * 0x1.0p-53; }
    double uniform(double from, double to) { return from + (to - from) * uniform(); }

    /// Standard normal, Box and Muller 1958 (the cosine half only: one draw never depends on the one before).
    double normal()
    {
        const double radius = std::sqrt(-2 * std::log(1 - uniform()));
        return radius * std::cos(2 * std::numbers::pi * uniform());
    }
    double normal(double mean, double deviation) { return mean + deviation * normal(); }

    bool chance(double share) { return uniform() < share; }
    /// A whole number in [0, count).
    int below(int count) { return static_cast<int>(uniform() * count); }
    std::uint64_t seed() { return engine(); }

private:
    std::mt19937_64 engine;
};

} // namespace fleetrung::simulator
