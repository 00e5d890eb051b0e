// What goes on the bar: plates for a load, and the load of plates. Weights are whole hundredths of their unit, so that
// 1.25 kg and 2.5 lb add up exactly.
#pragma once

#include <vector>

#include "engine/base/error.hpp"

namespace fleetrung::strength
{

inline constexpr double kilogramsPerPound = 0.45359237; ///< exact (international pound, 1959)

/// Unit-free: all weights in kilograms, or all in pounds.
struct Rack {
    double bar = 20;
    struct Plates {
        double weight = 0; ///< of one plate
        int pairs = 0;
    };
    std::vector<Plates> plates;
};

/// Bars and plates found in most weight rooms (common practice, no source).
[[nodiscard]] Rack kilogramRack(); ///< bar 20; 25, 20, 15, 10, 5, 2.5, 1.25
[[nodiscard]] Rack poundRack();    ///< bar 45; 45, 35, 25, 10, 5, 2.5

struct Loading {
    double total = 0;         ///< bar and both sides
    std::vector<double> side; ///< plates of one side, heaviest first, from the inside out
};

/// The load nearest to `load` that the rack can make, the lighter of two that are equally near; with the fewest plates.
/// Fails with InvalidInput for weights that are not whole hundredths above zero, more than 50 pairs of one plate or 12
/// kinds, a load that is negative or beyond 1000, and with NotAvailable below the bar's own weight.
[[nodiscard]] Expected<Loading> platesFor(double load, const Rack& rack);

/// What lies on the bar when these plates are on each side of it, heaviest first. Fails with InvalidInput for weights
/// that are not whole hundredths above zero, and beyond 1000.
[[nodiscard]] Expected<Loading> loadOf(std::vector<double> side, double bar);

} // namespace fleetrung::strength
