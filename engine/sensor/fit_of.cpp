// How well a map fits what came: which of several maps of the same characteristics is the right one.
#include <algorithm>
#include <cmath>
#include <vector>

#include <Eigen/Core>

#include "engine/sensor/packet_decoder.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr double gravity = 9.80665; ///< m/s2, standard (CGPM 1901)
constexpr std::size_t window = 32;  ///< samples in which the quietest stretch is looked for
constexpr double nanosecond = 1e-9;
// Starting values of this project: gravity within 5 % is right (offset and scale error of a common part), beyond 25 %
// it is not; at rest a sensor turns by less than 20 deg/s, offset and tremor included.
constexpr double gravityRight = 0.05, gravityWrong = 0.25;
constexpr double spreadRight = 0.05 * gravity, spreadWrong = 0.5 * gravity; ///< m/s2
constexpr double turningRight = 0.35, turningWrong = 1.5;                   ///< rad/s
constexpr double paceRight = 0.1, paceWrong = 0.4; ///< how far the stamps' pace may be off that of the arrivals
constexpr double weightOfUse = 0.1;

/// 1 up to `right`, 0 from `wrong` on.
double falling(double value, double right, double wrong)
{
    return std::clamp((wrong - value) / (wrong - right), 0.0, 1.0);
}

struct Read {
    std::vector<Eigen::Vector3d> force, turning; ///< m/s2, rad/s; of whichever stream carries it
    double stampBegin = 0, stampEnd = 0, stampArrivalBegin = 0, stampArrivalEnd = 0;
    bool stamped = false;
};

void take(Read& read, const RawSample& sample)
{
    const Eigen::Vector3d force(sample.specificForce.data()), turning(sample.angularRate.data());
    if (force.allFinite())
        read.force.push_back(force);
    if (turning.allFinite())
        read.turning.push_back(turning);
    if (std::isnan(sample.stamp))
        return;
    read.stampEnd = sample.stamp;
    read.stampArrivalEnd = static_cast<double>(sample.arrival) * nanosecond;
    if (!read.stamped) {
        read.stampBegin = read.stampEnd;
        read.stampArrivalBegin = read.stampArrivalEnd;
    }
    read.stamped = true;
}

struct Stretch {
    std::size_t begin = 0;
    Eigen::Vector3d mean = Eigen::Vector3d::Zero();
    double spread = 0; ///< standard deviation, all axes together
};

/// The window with the least spread.
Stretch quietest(const std::vector<Eigen::Vector3d>& values)
{
    Stretch best;
    for (std::size_t begin = 0; begin + window <= values.size(); begin += window / 4) {
        Eigen::Vector3d sum = Eigen::Vector3d::Zero();
        double squares = 0;
        for (std::size_t i = begin; i < begin + window; ++i) {
            sum += values[i];
            squares += values[i].squaredNorm();
        }
        const Eigen::Vector3d mean = sum / static_cast<double>(window);
        const double spread = std::sqrt(std::max(0.0, squares / static_cast<double>(window) - mean.squaredNorm()));
        if (begin == 0 || spread < best.spread)
            best = {begin, mean, spread};
    }
    return best;
}

double fitOfForce(const std::vector<Eigen::Vector3d>& force)
{
    const auto still = quietest(force);
    const double off = std::abs(std::log(std::max(still.mean.norm(), 1e-9) / gravity));
    return falling(off, gravityRight, gravityWrong) * falling(still.spread, spreadRight, spreadWrong);
}

double fitOfTurning(const std::vector<Eigen::Vector3d>& turning)
{
    return turning.size() < window ? 1 : falling(quietest(turning).mean.norm(), turningRight, turningWrong);
}

double fitOfStamps(const Read& read)
{
    const double arrivals = read.stampArrivalEnd - read.stampArrivalBegin;
    if (!read.stamped || !(arrivals > 0))
        return 1;
    return falling(std::abs((read.stampEnd - read.stampBegin) / arrivals - 1), paceRight, paceWrong);
}

/// Of packets or lines: those that decoded, and of the samples those that came, once.
double shareDecoded(const PacketCounts& counts, std::int64_t fruitful)
{
    const auto tried = fruitful + counts.badInAll() + counts.doubled;
    const auto samples = static_cast<double>(counts.samples);
    if (tried == 0 || counts.samples == 0)
        return 0;
    return static_cast<double>(fruitful) / static_cast<double>(tried) * samples /
           (samples + static_cast<double>(counts.lost));
}

/// How much of what came the map has a use for: of two maps that decode it, the one that leaves less over is right.
struct Use {
    double used = 0, all = 0; ///< values of lines, or bits
    [[nodiscard]] double share() const { return all > 0 ? std::clamp(used / all, 0.0, 1.0) : 0; }
};

void takeLines(Use& use, const TextForm& form, std::span<const std::uint8_t> bytes)
{
    const auto lines = static_cast<double>(std::count(bytes.begin(), bytes.end(), std::uint8_t{'\n'}));
    const auto separators = std::count(bytes.begin(), bytes.end(), static_cast<std::uint8_t>(form.separator));
    use.used += lines * static_cast<double>(form.columns.size());
    use.all += lines + static_cast<double>(separators);
}

void takePacket(Use& use, const BinaryForm& form, std::size_t bytes)
{
    double packetBits = static_cast<double>(form.mark.size()) * 8, sampleBits = 0;
    for (const auto& field : form.packetFields)
        packetBits += bitsOf(field.type);
    for (const auto& field : form.sampleFields)
        sampleBits += bitsOf(field.type);
    const auto bits = static_cast<double>(form.stream ? form.length : static_cast<int>(bytes)) * 8;
    const auto samples =
        form.samples > 0 ? form.samples : std::floor((bits - form.firstBit) / std::max(1, form.sampleBits));
    use.used += packetBits + samples * sampleBits;
    use.all += bits;
}

} // namespace

double fitOf(const SensorMap& map, std::span<const RawPacket> packets)
{
    PacketDecoder decoder(map);
    std::vector<std::int64_t> fruitful(map.streams.size()), seen(map.streams.size());
    std::vector<Use> uses(map.streams.size());
    Read read;
    for (const auto& packet : packets) {
        if (packet.source >= map.streams.size())
            continue;
        const auto samples = decoder.decode(packet.source, packet.bytes, packet.arrival);
        const auto& form = map.streams[packet.source];
        fruitful[packet.source] +=
            form.text || form.binary.stream ? static_cast<std::int64_t>(samples.size()) : (samples.empty() ? 0 : 1);
        if (form.text)
            takeLines(uses[packet.source], form.lines, packet.bytes);
        else
            takePacket(uses[packet.source], form.binary, packet.bytes.size());
        ++seen[packet.source];
        for (const auto& sample : samples)
            take(read, sample);
    }
    if (read.force.size() < window)
        return 0;
    double fit = fitOfForce(read.force) * fitOfTurning(read.turning) * fitOfStamps(read);
    for (std::size_t i = 0; i < map.streams.size(); ++i) {
        if (seen[i] == 0)
            return 0;
        fit *= shareDecoded(decoder.counts(i), fruitful[i]) * (1 - weightOfUse + weightOfUse * uses[i].share());
    }
    return fit;
}

} // namespace fleetrung::sensor
