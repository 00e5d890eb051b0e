// Which numbers of a table are the accelerometer: three that move between two opposite values over six still faces.
// Private to engine/sensor.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include <Eigen/Core>

#include "engine/sensor/teach_table.hpp"

namespace fleetrung::sensor::teaching
{

inline constexpr std::size_t faces = 6;

/// When each step ran [s after the first packet]; nothing where it is missing. `of` takes a TeachStep as a number.
struct Steps {
    struct Span {
        double from, to;
    };
    std::array<std::optional<Span>, teachSteps> spans;

    [[nodiscard]] const Span& of(std::size_t step) const { return *spans.at(step); }
};

struct Records {
    std::size_t from = 0, to = 0;

    [[nodiscard]] std::size_t size() const { return to > from ? to - from : 0; }
};
[[nodiscard]] Records recordsBetween(const Table& table, double from, double to);
/// Of a still step, without its begin: late packets of the move before come then.
[[nodiscard]] Records recordsOfStep(const Table& table, const Steps& steps, std::size_t step);

/// A number over the faces.
struct FaceValues {
    Place place;
    std::array<double, faces> mean{}, spread{}; ///< trimmed: a few broken records do not matter
    double range = 0, noise = 0;                ///< of the means; median of the spreads
};
using Used = std::array<bool, faces>;
/// Nothing where a face has no number.
[[nodiscard]] std::optional<FaceValues> overFaces(const Table& table, const std::array<Records, faces>& records,
                                                  const Place& place, const Used& used);

/// Where three axes of a sensor stand: the first sample of a packet, how many samples, and bits from one to the next.
struct Triad {
    std::array<Place, 3> places;
    int samples = 1;
    int stride = 0; ///< bits; 0 with one sample

    [[nodiscard]] Place of(std::size_t axis, int sample) const
    {
        auto place = places.at(axis);
        place.bit += sample * stride;
        return place;
    }
};

/// How fine a triad is read: the step of its lowest byte that tells something, in its counts. Too narrow a type or the
/// wrong byte order leaves only the highest byte.
[[nodiscard]] double resolutionOf(const Table& table, const Triad& triad);

/// Whether it jumps from one end of its type to the other: then its highest bits are missing.
[[nodiscard]] bool jumpsOver(const Table& table, const Triad& triad);

/// Of two readings as fine as each other: bytes before packed bits; of two that end in the same byte the wider (its
/// upper byte repeats the sign, and keeps the range), else the narrower (the wider has a foreign byte below).
[[nodiscard]] bool plainer(const Table& table, const Triad& a, const Triad& b);

struct Accelerometer {
    std::size_t table = 0;
    Triad triad;
    Eigen::Vector3d center = Eigen::Vector3d::Zero(); ///< counts
    double countsPerGravity = 0;
    double residual = 0;                ///< of the sphere through the faces, relative
    double noise = 0;                   ///< of one reading at rest, relative to gravity
    double resolution = 0;              ///< relative to gravity
    std::optional<std::size_t> leftOut; ///< a face that does not fit the others
};

/// The best reading of these faces as an accelerometer, over all tables; `used` says which faces take part.
[[nodiscard]] std::optional<Accelerometer> findAccelerometer(const std::vector<Table>& tables, const Steps& steps,
                                                             const Used& used);

} // namespace fleetrung::sensor::teaching
