// Which numbers are the gyroscope, how large its counts are and which way its axes turn. Private to engine/sensor.
//
// While the sensor is turned from face to face, gravity turns the other way in its axes: du/dt = u x w. With w = F q of
// three fields q this is linear in F, and F says scale, axes and signs at once, from the moves alone. The whole turns
// check it, and tell a left-handed frame: there F has the other sign (u is mirrored, w is not).
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
    double askew = 0;  ///< how far its axes lie from the accelerometer's (1 - cosine, the worst)
    double misfit = 0; ///< rad: between gravity as carried on by it from rest to rest, and as measured (rms)
    std::array<double, 3> turns{}; ///< rad, of the three turns, counter-clockwise positive
    double resolution = 0;         ///< counts
};

struct GyroscopeSearch {
    std::optional<Gyroscope> found;
    bool somethingTurns = false; ///< a field rests while still and moves in the turns, but no three make a gyroscope
};

[[nodiscard]] GyroscopeSearch findGyroscope(const std::vector<Table>& tables, const Steps& steps,
                                            const Accelerometer& accelerometer, const Gravity& gravity);

} // namespace fleetrung::sensor::teaching
