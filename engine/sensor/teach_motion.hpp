// Signals in time, once the accelerometer is known: which way gravity points, and how far fields turn. Private to
// engine/sensor.
#pragma once

#include <array>
#include <functional>
#include <optional>
#include <vector>

#include <Eigen/Core>

#include "engine/sensor/teach_faces.hpp"

namespace fleetrung::sensor::teaching
{

/// A number that was sampled at any instants, as its integral: means and integrals over any span are two look-ups.
class Integral
{
public:
    Integral() = default;
    Integral(std::vector<double> time, const std::vector<double>& value);

    [[nodiscard]] double between(double from, double to) const { return until(to) - until(from); }
    [[nodiscard]] double mean(double from, double to) const { return between(from, to) / (to - from); }

private:
    [[nodiscard]] double until(double when) const;

    std::vector<double> time_, sum_;
};

/// Instants of all samples of a table, packets taken apart: the last sample of a packet is as old as the packet.
[[nodiscard]] std::vector<double> sampleTimes(const Table& table, int samples);
[[nodiscard]] std::vector<double> samplesOf(const Table& table, const Triad& triad, std::size_t axis);

/// A reading farther from its neighbours on both sides is a broken record, not motion: the median of the five instead.
void mendSpikes(std::vector<double>& reading, double far);

/// Specific force in the axes of the accelerometer's fields, in units of gravity.
struct Gravity {
    std::vector<double> time;
    std::array<std::vector<double>, 3> reading;
    std::array<Integral, 3> integral;

    [[nodiscard]] double begin() const { return time.front(); }
    [[nodiscard]] double end() const { return time.back(); }
    [[nodiscard]] Eigen::Vector3d mean(double from, double to) const;
};
[[nodiscard]] Gravity gravityOf(const Table& table, const Accelerometer& accelerometer);

/// How much the direction of gravity wanders within a span [gravities, greatest distance of quarter-second means], and
/// its mean.
struct Rest {
    Eigen::Vector3d mean;
    double wander;
};
[[nodiscard]] Rest restIn(const Gravity& gravity, const Steps::Span& span);

/// A span that begins and ends at rest.
struct Raise {
    double height =
        0;           ///< m: the double integral of the force along gravity, its mean taken off so that it ends at rest
    double push = 0; ///< m/s2: the greatest of that force, either way
};
[[nodiscard]] Raise raiseIn(const Gravity& gravity, const Steps::Span& span, double metresPerSecondSquared);

} // namespace fleetrung::sensor::teaching
