// What one sensor's own errors are, found by laying it on its six faces, and taken off every sample.
//
// Model, per axis: reading = (true + offset) / scale for the accelerometer (so true = scale x reading - offset);
// true = reading - bias for the gyroscope. Six faces give mean readings up and down for each axis:
// scale = 2 g / (up - down), offset = scale x (up + down) / 2 (closed form of the two equations +-g = scale r -
// offset).
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>

#include "engine/base/error.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::motion
{

struct Calibration {
    Eigen::Vector3d scale = Eigen::Vector3d::Ones();
    Eigen::Vector3d offset = Eigen::Vector3d::Zero();        ///< m/s2
    Eigen::Vector3d gyroscopeBias = Eigen::Vector3d::Zero(); ///< rad/s
    bool sixFaces = false; ///< scale and offset were measured; false: they are the sensor's word

    [[nodiscard]] Sample apply(const Sample& sample) const
    {
        return {sample.time, scale.cwiseProduct(sample.specificForce) - offset, sample.angularRate - gyroscopeBias};
    }
};
[[nodiscard]] std::string calibrationText(const Calibration& calibration);
[[nodiscard]] Expected<Calibration> parseCalibration(const std::string& json);

/// Faces by the axis that points up: +x -x +y -y +z -z.
inline constexpr std::size_t faceCount = 6;

/// Collects the six faces from samples of a sensor that is laid down six times, in any order: it finds by itself which
/// face is up and when the sensor has lain still long enough (1.5 s).
class SixFaces
{
public:
    enum class Now { Moving, Settling, Taken, TakenBefore, Slanted }; ///< Slanted: still, but on no face
    Now add(const Sample& uncalibrated);

    [[nodiscard]] const std::array<bool, faceCount>& taken() const { return taken_; }
    [[nodiscard]] bool complete() const;
    /// InvalidInput where a face is missing or two contradict each other (another gravity by more than 10 %); the place
    /// names the face.
    [[nodiscard]] Expected<Calibration> solve(double gravity) const;
    void forget(std::size_t face);

private:
    std::array<bool, faceCount> taken_{};
    std::array<Eigen::Vector3d, faceCount> mean_{}, rate_{};
    std::vector<Sample> window_; ///< of the last 1.5 s
};

/// Watches a running stream and finds the gyroscope's bias anew whenever the sensor lies still (temperature moves it):
/// also the change of bias per minute, for health.
class Rezero
{
public:
    /// The new bias [rad/s] where this sample completed a still span of 1 s, else nothing.
    std::optional<Eigen::Vector3d> add(const Sample& uncalibrated);

private:
    std::vector<Sample> window_;
};

} // namespace fleetrung::motion
