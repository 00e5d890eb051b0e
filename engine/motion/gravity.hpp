// Normal gravity of the WGS84 ellipsoid.
#pragma once

namespace fleetrung::motion
{

inline constexpr double standardGravity = 9.80665; ///< m/s2, CGPM 1901

/// m/s2 at a geodetic latitude [degrees] and height above the ellipsoid [m].
/// Source: Somigliana's closed formula and its height series, NGA.STND.0036 (WGS84), 4.1 and 4.3.
[[nodiscard]] double normalGravity(double latitudeDegrees, double height = 0.0);

} // namespace fleetrung::motion
