#include "engine/strength/general_equations.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fleetrung::strength
{
namespace
{

constexpr double smallestShare = 0.30, largestShare = 1.05;

struct Equation {
    std::string_view lift;
    double square, linear, constant; ///< % of 1RM
    double velocityError;            ///< m/s
    double percentError;             ///< of 1RM
    std::string_view source;
};

constexpr std::array<Equation, 3> equations{{
    {"full-squat", -5.961, -50.71, 117.0, 0.06, 0, "Sanchez-Medina et al. 2017, Sports Med Int Open 1(2):E80-E88"},
    {"parallel-squat", 0, -83.54, 120.15, 0, 10, "Naclerio & Larumbe-Zabala, 290 athletes"},
    {"bench-press", 8.4326, -73.501, 112.33, 0, 3.56,
     "Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31(5):347-352"},
}};

} // namespace

Expected<GeneralShare> generalShare(std::string_view lift, double velocity)
{
    if (!std::isfinite(velocity) || velocity <= 0)
        return fail(Code::InvalidInput, "velocity", "must lie above zero");
    const auto found = std::ranges::find(equations, lift, &Equation::lift);
    if (found == equations.end())
        return fail(Code::NotAvailable, "lift", "has no published equation; lift at two loads for a line of your own");
    const double share = (found->square * velocity * velocity + found->linear * velocity + found->constant) / 100;
    if (share < smallestShare || share > largestShare)
        return fail(Code::NotAvailable, "velocity", "lies outside what the published equation was made from");
    const double steepness = std::abs(2 * found->square * velocity + found->linear);
    const double error = (found->percentError + steepness * found->velocityError) / 100;
    return GeneralShare{share, share - error, share + error, found->source};
}

} // namespace fleetrung::strength
