// What one sensor's own errors are, found by laying it on its six faces, and taken off every sample.
//
// Model, per axis: reading = (true + offset) / scale for the accelerometer (so true = scale x reading - offset);
// true = reading - bias for the gyroscope. Six faces give mean readings up and down for each axis:
// scale = 2 g / (up - down), offset = scale x (up + down) / 2 (closed form of the two equations +-g = scale r -
// offset). No face lies quite level: from there Newton's method goes to where all six readings have the length g.
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
    bool justTaken_ = false;     ///< and it has not moved since
};

/// Watches a running stream and finds the gyroscope's bias anew whenever the sensor lies still (temperature moves it).
/// Still is: both sensors quiet for 1 s, and gravity where it was. An even turn about the vertical looks like a bias to
/// both sensors; so after the first time the bias may move by 0.2 degree/s and 0.3 degree/s a minute, no more (1
/// degree/s from one that was kept from another day). The first one of a sensor that nobody measured (up to 12
/// degree/s) may be such a turn, and nothing tells. It does not stay: a bias further off is believed once two rests
/// agree on it in poses 20 degrees or more apart, for a turn about the vertical (of more than 0.6 degree/s) would lie
/// along gravity in both.
class Rezero
{
public:
    Rezero() = default;
    /// A bias that was measured before [rad/s].
    explicit Rezero(const Eigen::Vector3d& bias) : bias_(bias) {}

    /// The new bias [rad/s] where this sample completed a still span of 1 s, else nothing. Allocates nothing.
    std::optional<Eigen::Vector3d> add(const Sample& uncalibrated);

private:
    static constexpr std::size_t blockCount = 8;
    struct Block {
        int count = 0;
        double begin = 0;                                                                ///< s
        Eigen::Vector3d force = Eigen::Vector3d::Zero(), rate = Eigen::Vector3d::Zero(); ///< first sums, then means
        Eigen::Vector3d forceSquares = Eigen::Vector3d::Zero(), rateSquares = Eigen::Vector3d::Zero();
        Eigen::Vector3d firstForce = Eigen::Vector3d::Zero(), firstRate = Eigen::Vector3d::Zero();
    };

    [[nodiscard]] bool isQuiet(Block& block) const;
    struct Rest {
        Eigen::Vector3d force, rate; ///< means
    };
    [[nodiscard]] std::optional<Rest> rest() const;
    [[nodiscard]] bool confirms(const Rest& other);

    std::optional<Eigen::Vector3d> bias_;
    std::optional<Rest> rival_;     ///< the last rest whose rate lay too far from the bias
    std::optional<double> foundAt_; ///< s
    double last_ = 0;               ///< s
    Block running_;
    std::array<Block, blockCount> quiet_;
    std::size_t quietCount_ = 0;
};

} // namespace fleetrung::motion
