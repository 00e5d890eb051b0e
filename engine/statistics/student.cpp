#include "engine/statistics/student.hpp"

#include <array>
#include <limits>

namespace fleetrung::statistics
{
namespace
{

// 1 to 30 degrees of freedom, from SciPy 1.10.1 (tests/reference/make_statistics.py).
constexpr std::array<double, 30> table{12.706205, 4.302653, 3.182446, 2.776445, 2.570582, 2.446912, 2.364624, 2.306004,
                                       2.262157,  2.228139, 2.200985, 2.178813, 2.160369, 2.144787, 2.13145,  2.119905,
                                       2.109816,  2.100922, 2.093024, 2.085963, 2.079614, 2.073873, 2.068658, 2.063899,
                                       2.059539,  2.055529, 2.051831, 2.048407, 2.04523,  2.042272};
constexpr double normal95 = 1.959963984540054;

} // namespace

double studentT95(int degreesOfFreedom)
{
    if (degreesOfFreedom < 1)
        return std::numeric_limits<double>::quiet_NaN();
    if (degreesOfFreedom <= static_cast<int>(table.size()))
        return table[static_cast<std::size_t>(degreesOfFreedom) - 1];
    // The expansion in 1 / degrees of freedom (Fisher RA, Cornish EA, Technometrics 1960;2:209-225; from memory).
    const double z = normal95, n = degreesOfFreedom;
    const double z3 = z * z * z, z5 = z3 * z * z, z7 = z5 * z * z;
    return z + (z3 + z) / (4 * n) + (5 * z5 + 16 * z3 + 3 * z) / (96 * n * n) +
           (3 * z7 + 19 * z5 + 17 * z3 - 15 * z) / (384 * n * n * n);
}

} // namespace fleetrung::statistics
