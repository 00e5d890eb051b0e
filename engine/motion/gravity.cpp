#include "engine/motion/gravity.hpp"

#include <cmath>
#include <numbers>

namespace fleetrung::motion
{

double normalGravity(double latitudeDegrees, double height)
{
    constexpr double atEquator = 9.7803253359; // m/s2
    constexpr double k = 0.00193185265241;     // Somigliana's constant
    constexpr double eccentricitySquared = 0.00669437999014;
    constexpr double semiMajorAxis = 6378137.0; // m
    constexpr double flattening = 1.0 / 298.257223563;
    constexpr double m = 0.00344978650684; // centrifugal over gravity at the equator
    const double sine = std::sin(latitudeDegrees * std::numbers::pi / 180.0);
    const double s2 = sine * sine;
    const double onEllipsoid = atEquator * (1.0 + k * s2) / std::sqrt(1.0 - eccentricitySquared * s2);
    const double relative = height / semiMajorAxis;
    return onEllipsoid *
           (1.0 - 2.0 * (1.0 + flattening + m - 2.0 * flattening * s2) * relative + 3.0 * relative * relative);
}

} // namespace fleetrung::motion
