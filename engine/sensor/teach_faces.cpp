#include "engine/sensor/teach_faces.hpp"

#include <algorithm>
#include <cmath>

#include <Eigen/QR>

#include "engine/sensor/bits.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

using Eigen::Vector3d;

// Starting values of this project, chosen on random layouts (tests/teach).
constexpr double farAboveNoise = 6;  // range over the faces / noise at rest
constexpr double sameChannel = 0.04; // of the range: how alike the samples of one packet are
constexpr double alikeRange = 1.8;   // between two axes: a chip that lies aslant reaches from 2 / sqrt 3 to 2
constexpr double rangeOfFive = 2.6;  // likewise, where one face is left out and one axis reaches half as far
constexpr double roundEnough = 0.04; // of gravity: residual of the sphere
constexpr double squareEnough = 0.3; // cosine between two faces that ought to stand at right angles
constexpr double ownBias = 0.3;      // gravities: zero offset of any accelerometer; of a magnetometer it may be more
constexpr std::size_t mostChannels = 32; // of one type

/// One number of a sample; the places of all samples of a packet.
struct ChannelPlaces {
    FaceValues values;
    std::vector<int> bits;
};

std::vector<ChannelPlaces> channelsOf(const Table& table, const std::array<Records, faces>& records,
                                      const PlaceGroup& group, const Used& used)
{
    std::vector<ChannelPlaces> channels;
    for (const auto& place : group) {
        const auto values = overFaces(table, records, place, used);
        if (!values || !(values->range > farAboveNoise * values->noise) || !(values->range > 1e-9)) {
            continue;
        }
        const auto same = [&](const ChannelPlaces& channel) {
            const double allowed = sameChannel * values->range + 3 * values->noise;
            for (std::size_t face = 0; face < faces; ++face) {
                if (used.at(face) && std::abs(channel.values.mean.at(face) - values->mean.at(face)) > allowed) {
                    return false;
                }
            }
            return true;
        };
        const auto found = std::find_if(channels.begin(), channels.end(), same);
        if (found != channels.end()) {
            found->bits.push_back(place.bit);
        } else if (channels.size() < mostChannels) {
            channels.push_back({*values, {place.bit}});
        }
    }
    return channels;
}

struct Sphere {
    Vector3d center;
    double radius, residual; // residual relative to the radius
};

/// |m - c| = r is linear in c and r2 - |c|2: 2 c.m + (r2 - |c|2) = |m|2.
std::optional<Sphere> sphereThrough(const std::vector<Vector3d>& points)
{
    Vector3d middle = Vector3d::Zero();
    for (const auto& point : points) {
        middle += point / static_cast<double>(points.size());
    }
    double size = 0;
    for (const auto& point : points) {
        size = std::max(size, (point - middle).norm());
    }
    const auto rows = static_cast<Eigen::Index>(points.size());
    Eigen::MatrixXd matrix(rows, 4);
    Eigen::VectorXd squares(rows);
    for (Eigen::Index i = 0; i < rows; ++i) {
        const Vector3d point = (points[static_cast<std::size_t>(i)] - middle) / size;
        matrix.row(i) << 2 * point.transpose(), 1;
        squares[i] = point.squaredNorm();
    }
    const Eigen::Vector4d solution = matrix.colPivHouseholderQr().solve(squares);
    const Vector3d center = solution.head<3>();
    const double radius = std::sqrt(solution[3] + center.squaredNorm());
    if (!(radius > 0) || !std::isfinite(radius)) {
        return std::nullopt;
    }
    double residual = 0;
    for (const auto& point : points) {
        residual = std::max(residual, std::abs(((point - middle) / size - center).norm() / radius - 1));
    }
    return Sphere{middle + size * center, radius * size, residual};
}

/// Every face stands opposite to at most one other, and at right angles to the rest.
bool facesOfACube(const std::vector<Vector3d>& points, const Sphere& sphere)
{
    std::size_t opposite = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        for (std::size_t j = i + 1; j < points.size(); ++j) {
            const double cosine =
                (points[i] - sphere.center).dot(points[j] - sphere.center) / (sphere.radius * sphere.radius);
            if (std::abs(cosine + 1) < squareEnough) {
                ++opposite;
            } else if (!(std::abs(cosine) < squareEnough)) {
                return false;
            }
        }
    }
    return opposite == points.size() / 2;
}

/// Nought stands at nought, and of offset binary in the same place on all three axes.
bool centredLikeOne(const Table& table, const Place& place, const Sphere& sphere)
{
    Eigen::Array3d off = sphere.center;
    if (!table.isText() && !isFloat(place.type) && !isSigned(place.type)) {
        off -= sphere.center.mean();
    }
    return off.abs().maxCoeff() < ownBias * sphere.radius + 1;
}

/// Samples that all three channels have at the same stride.
Triad triadOf(const Table& table, const std::array<const ChannelPlaces*, 3>& channels)
{
    Triad triad;
    for (std::size_t axis = 0; axis < 3; ++axis) {
        triad.places.at(axis) = channels.at(axis)->values.place;
    }
    const auto& bits = channels[0]->bits;
    if (bits.size() < 2) {
        return triad;
    }
    const int stride = bits[1] - bits[0];
    const auto has = [&](const ChannelPlaces* channel, int sample) {
        return std::find(channel->bits.begin(), channel->bits.end(), channel->values.place.bit + sample * stride) !=
               channel->bits.end();
    };
    if (stride < 3 * table.widthOf(triad.places[0])) {
        return triad;
    }
    while (std::all_of(channels.begin(), channels.end(), [&](const auto* c) { return has(c, triad.samples); })) {
        ++triad.samples;
    }
    triad.stride = triad.samples > 1 ? stride : 0;
    return triad;
}

bool mayBelong(const Table& table, const FaceValues& a, const FaceValues& b, double alike)
{
    const int apart = b.place.bit - a.place.bit;
    const bool packed = !table.isText() && bitsOf(a.place.type) == 12;
    const double coarse = table.isText() ? 0 : 2;
    return (packed ? apart == 12 : apart >= table.widthOf(a.place)) && a.range < alike * b.range + coarse &&
           b.range < alike * a.range + coarse;
}

std::optional<Accelerometer> judged(const Table& table, const std::array<const ChannelPlaces*, 3>& channels,
                                    const Used& used)
{
    std::vector<Vector3d> points;
    for (std::size_t face = 0; face < faces; ++face) {
        if (used.at(face)) {
            points.push_back({channels[0]->values.mean.at(face), channels[1]->values.mean.at(face),
                              channels[2]->values.mean.at(face)});
        }
    }
    const auto sphere = sphereThrough(points);
    if (!sphere) {
        return std::nullopt;
    }
    const double step = table.isText() || channels[0]->values.place.type == NumberType::Float16 ||
                                channels[0]->values.place.type == NumberType::Float32
                            ? 0
                            : 1 / sphere->radius;
    if (sphere->residual > roundEnough + 0.6 * std::min(step, 0.15) || !facesOfACube(points, *sphere) ||
        !centredLikeOne(table, channels[0]->values.place, *sphere)) {
        return std::nullopt;
    }
    Accelerometer found;
    found.triad = triadOf(table, channels);
    found.center = sphere->center;
    found.countsPerGravity = sphere->radius;
    found.residual = sphere->residual;
    for (const auto* channel : channels) {
        found.noise = std::max(found.noise, channel->values.noise / sphere->radius);
    }
    if (jumpsOver(table, found.triad)) {
        return std::nullopt;
    }
    found.resolution = resolutionOf(table, found.triad) / sphere->radius;
    return found;
}

/// Finer by at least half, else plainer, else rounder.
bool better(const Table& table, const Accelerometer& a, const Accelerometer& b)
{
    const auto grain = [](const Accelerometer& found) { return std::max(found.resolution, 0.2 * found.noise); };
    if (grain(a) < 0.5 * grain(b) || grain(b) < 0.5 * grain(a)) {
        return grain(a) < grain(b);
    }
    const bool one = plainer(table, a.triad, b.triad), other = plainer(table, b.triad, a.triad);
    return one != other ? one : a.residual < b.residual;
}

void consider(const Table& table, const std::vector<ChannelPlaces>& channels, const Used& used,
              std::optional<Accelerometer>& best)
{
    const bool six = std::all_of(used.begin(), used.end(), [](bool face) { return face; });
    const double alike = six ? alikeRange : rangeOfFive;
    for (const auto& x : channels) {
        for (const auto& y : channels) {
            if (!mayBelong(table, x.values, y.values, alike)) {
                continue;
            }
            for (const auto& z : channels) {
                if (!mayBelong(table, y.values, z.values, alike)) {
                    continue;
                }
                auto found = judged(table, {&x, &y, &z}, used);
                if (found && (!best || better(table, *found, *best))) {
                    best = std::move(found);
                }
            }
        }
    }
}

} // namespace

std::optional<Accelerometer> findAccelerometer(const std::vector<Table>& tables, const Steps& steps, const Used& used)
{
    std::optional<Accelerometer> best;
    for (std::size_t t = 0; t < tables.size(); ++t) {
        const auto& table = tables[t];
        std::array<Records, faces> records;
        for (std::size_t face = 0; face < faces; ++face) {
            records.at(face) = recordsOfStep(table, steps, face);
        }
        std::optional<Accelerometer> here;
        for (const auto& group : placesOf(table)) {
            consider(table, channelsOf(table, records, group, used), used, here);
        }
        // The plainest reading of a notifier comes first; another must be finer by far to be believed.
        if (here && (!best || here->resolution + here->noise < 0.3 * (best->resolution + best->noise))) {
            here->table = t;
            best = std::move(here);
        }
    }
    return best;
}

} // namespace fleetrung::sensor::teaching
