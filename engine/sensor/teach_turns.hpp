// Which numbers are the gyroscope, how large its counts are and which way its axes turn. Private to engine/sensor.
//
// While the sensor is turned from face to face, gravity turns the other way in its axes: du/dt = u x w. With w = F q of
// three fields q about the axes of the accelerometer's fields, F is a scale times a signed permutation: the one that
// explains most of the moves says scale, axes and signs at once. The whole turns check it, and tell a left-handed
// frame: there F has the other sign (u is mirrored, w is not).
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "engine/sensor/teach_motion.hpp"

namespace fleetrung::sensor::teaching
{

struct Gyroscope {
    std::size_t table = 0;
    Triad triad;
    Eigen::Vector3d bias = Eigen::Vector3d::Zero();     ///< counts, at rest
    double scale = 0;                                   ///< rad/s a count
    Eigen::Matrix3d axes = Eigen::Matrix3d::Identity(); ///< signed permutation: fields -> axes of the accelerometer's
                                                        ///< fields, as they are (`mirrored`: z turned about)
    bool mirrored = false;                              ///< the fields' frame is left-handed
    double explained = 0;                               ///< share of gravity's turning that it explains, 0..1
    double misfit = 0; ///< rad: between gravity as carried on by it from rest to rest, and as measured (rms)
    std::array<double, 3> turns{}; ///< rad, of the three turns, counter-clockwise positive
    double resolution = 0;         ///< counts
};

struct GyroscopeSearch {
    std::optional<Gyroscope> found;
    bool somethingTurns = false; ///< three fields follow the turns, if badly
};

[[nodiscard]] GyroscopeSearch findGyroscope(const std::vector<Table>& tables, const Steps& steps,
                                            const Accelerometer& accelerometer, const Gravity& gravity);

} // namespace fleetrung::sensor::teaching
