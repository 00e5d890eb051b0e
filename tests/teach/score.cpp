#include "tests/teach/score.hpp"

#include <chrono>
#include <cmath>
#include <map>

#include <Eigen/SVD>

#include "engine/base/numbers.hpp"

namespace fleetrung::tests
{
namespace
{

using Eigen::Matrix3d;
using Eigen::Vector3d;
using sensor::RawSample;

constexpr double raiseHeight = 0.5;

struct Read {
    std::vector<RawSample> samples;
    std::int64_t lost = 0;
    bool counted = false;
    std::map<std::int64_t, double> stamps; ///< s, of each notification, by its arrival

    [[nodiscard]] bool stamped() const { return stamps.size() * 20 > samples.size(); }
};

Read read(const sensor::SensorMap& map, std::size_t stream, std::size_t source,
          const std::vector<sensor::RawPacket>& packets)
{
    sensor::PacketDecoder decoder(map);
    Read result;
    for (const auto& packet : packets) {
        if (packet.source == source) {
            const auto samples = decoder.decode(stream, packet.bytes, packet.arrival);
            result.samples.insert(result.samples.end(), samples.begin(), samples.end());
            for (const auto& sample : samples) {
                if (!std::isnan(sample.stamp)) {
                    result.stamps.emplace(packet.arrival, sample.stamp);
                }
            }
        }
    }
    result.lost = decoder.counts(stream).lost;
    result.counted = !result.samples.empty() && result.samples.back().counter >= 0;
    return result;
}

Vector3d forceOf(const RawSample& sample)
{
    return {sample.specificForce[0], sample.specificForce[1], sample.specificForce[2]};
}

Vector3d rateOf(const RawSample& sample)
{
    return {sample.angularRate[0], sample.angularRate[1], sample.angularRate[2]};
}

/// The same sample read twice: same notification, same place in it.
using Pair = std::pair<const RawSample*, const RawSample*>;
std::vector<Pair> pairsOf(const Read& taught, const Read& truth)
{
    std::map<std::pair<std::int64_t, int>, const RawSample*> known;
    const auto keyed = [](const std::vector<RawSample>& samples, auto&& visit) {
        std::int64_t arrival = -1;
        int place = 0;
        for (const auto& sample : samples) {
            place = sample.arrival == arrival ? place + 1 : 0;
            arrival = sample.arrival;
            visit(std::pair{arrival, place}, sample);
        }
    };
    keyed(truth.samples, [&](const auto& key, const RawSample& sample) { known[key] = &sample; });
    std::vector<Pair> pairs;
    keyed(taught.samples, [&](const auto& key, const RawSample& sample) {
        if (const auto found = known.find(key); found != known.end()) {
            pairs.emplace_back(&sample, found->second);
        }
    });
    return pairs;
}

/// The rotation that brings the taught forces nearest to the true ones (Kabsch 1976). Without a gyroscope nothing tells
/// a frame from its mirror image, and nothing depends on it: then a reflection will do.
Matrix3d bestRotation(const std::vector<Pair>& pairs, bool orReflection)
{
    Matrix3d product = Matrix3d::Zero();
    for (const auto& [taught, truth] : pairs) {
        product += forceOf(*truth) * forceOf(*taught).transpose();
    }
    const Eigen::JacobiSVD<Matrix3d> svd(product, Eigen::ComputeFullU | Eigen::ComputeFullV);
    Matrix3d keep = Matrix3d::Identity();
    keep(2, 2) = !orReflection && (svd.matrixU() * svd.matrixV().transpose()).determinant() < 0 ? -1 : 1;
    return svd.matrixU() * keep * svd.matrixV().transpose();
}

template <class Of> double rmsOff(const std::vector<Pair>& pairs, const Matrix3d& rotation, Of of)
{
    double squares = 0;
    for (const auto& [taught, truth] : pairs) {
        squares += (rotation * of(*taught) - of(*truth)).squaredNorm();
    }
    return std::sqrt(squares / static_cast<double>(pairs.size()));
}

/// Which sample of a packet a stamp belongs to cannot be told, and shifts all of them alike.
std::string stampFault(const Read& taught, const Read& truth)
{
    double n = 0, x = 0, y = 0, xx = 0, xy = 0, yy = 0;
    for (const auto& [arrival, stamp] : taught.stamps) {
        const auto found = truth.stamps.find(arrival);
        if (found != truth.stamps.end()) {
            const double a = found->second - truth.stamps.begin()->second, b = stamp - taught.stamps.begin()->second;
            n += 1, x += a, y += b, xx += a * a, xy += a * b, yy += b * b;
        }
    }
    if (n < 10) {
        return "stamps missing";
    }
    const double slope = (xy - x * y / n) / (xx - x * x / n);
    const double left = std::sqrt(std::max(0.0, (yy - y * y / n - slope * (xy - x * y / n)) / n));
    if (std::abs(slope - 1) > 0.005) {
        return "stamps run " + fixedText(slope, 4) + " times as fast";
    }
    return left > 0.003 ? "stamps scatter by " + fixedText(1000 * left, 1) + " ms" : "";
}

std::string streamFault(const Read& taught, const Read& truth, const sensor::StreamForm& form, double rate)
{
    const auto samples = static_cast<double>(truth.samples.size());
    if (std::abs(static_cast<double>(taught.samples.size()) - samples) > 0.01 * samples) {
        return integerText(static_cast<std::int64_t>(taught.samples.size())) + " samples instead of " +
               integerText(static_cast<std::int64_t>(truth.samples.size()));
    }
    if (std::abs(form.rate / rate - 1) > 0.01) {
        return "rate " + fixedText(form.rate, 3) + " instead of " + fixedText(rate, 3);
    }
    const bool anyTrue = truth.counted || truth.stamped(), anyTaught = taught.counted || taught.stamped();
    if (anyTrue && !anyTaught) {
        return "neither counter nor stamps found";
    }
    if (truth.counted && !taught.counted) {
        return "counter not found";
    }
    if (truth.stamped() && !taught.stamped() && !taught.counted) {
        return "stamps not found";
    }
    if (truth.counted && std::abs(static_cast<double>(taught.lost - truth.lost)) >
                             2 + 0.01 * static_cast<double>(truth.samples.size())) {
        return integerText(taught.lost) + " lost instead of " + integerText(truth.lost);
    }
    return "";
}

Scored compare(const Layout& layout, const sensor::SensorMap& map, const std::vector<sensor::RawPacket>& packets)
{
    Scored scored;
    const auto fail = [&](std::string why) {
        scored.why = std::move(why);
        return scored;
    };
    if (map.streams.size() != layout.map.streams.size()) {
        return fail(integerText(static_cast<std::int64_t>(map.streams.size())) + " streams");
    }
    std::vector<std::vector<Pair>> pairs;
    std::vector<Read> kept;
    kept.reserve(4);
    for (std::size_t s = 0; s < map.streams.size(); ++s) {
        if (map.streams[s].characteristic != layout.map.streams[s].characteristic) {
            return fail("another characteristic");
        }
        kept.push_back(read(map, s, s, packets));
        kept.push_back(read(layout.map, s, s, packets));
        const auto& taught = kept[2 * s];
        const auto& truth = kept[2 * s + 1];
        if (auto fault = streamFault(taught, truth, map.streams[s], layout.rate); !fault.empty()) {
            return fail(std::move(fault));
        }
        pairs.push_back(pairsOf(taught, truth));
        if (pairs.back().size() < truth.samples.size() * 98 / 100) {
            return fail("samples at other places");
        }
        if (truth.stamped() && taught.stamped()) {
            if (auto fault = stampFault(taught, truth); !fault.empty()) {
                return fail(std::move(fault));
            }
        }
    }
    const auto rotation = bestRotation(pairs.front(), !layout.map.hasGyroscope());
    scored.force = rmsOff(pairs.front(), rotation, forceOf);
    if (!(scored.force < 0.3)) {
        return fail("specific force off by " + fixedText(scored.force, 2) + " m/s2");
    }
    const auto& turning = pairs.back();
    const bool has = !std::isnan(rateOf(*turning.front().first).x());
    const bool should = !std::isnan(rateOf(*turning.front().second).x());
    if (has != should) {
        return fail(should ? "gyroscope not found" : "a gyroscope that is none");
    }
    if (has) {
        double squares = 0;
        for (const auto& [taught, truth] : turning) {
            squares += rateOf(*truth).squaredNorm() / static_cast<double>(turning.size());
        }
        scored.turning = rmsOff(turning, rotation, rateOf);
        if (!(scored.turning < 0.04 * std::sqrt(squares) + 0.03)) {
            return fail("angular rate off by " + fixedText(scored.turning, 3) + " of " +
                        fixedText(std::sqrt(squares), 3) + " rad/s");
        }
    }
    scored.outcome = Outcome::Right;
    return scored;
}

} // namespace

Layout layoutOf(std::uint64_t seed)
{
    simulator::Random random(seed);
    return randomLayout(random);
}

sensor::Taught teachLayout(std::uint64_t seed)
{
    simulator::Random random(seed);
    const auto layout = randomLayout(random);
    Device device(layout, random);
    Hand hand(random, raiseHeight);
    hand.doSteps({});
    return sensor::teach(recordTeaching(device, hand, raiseHeight));
}

Scored scoreLayout(std::uint64_t seed)
{
    simulator::Random random(seed);
    const auto layout = randomLayout(random);
    Device device(layout, random);
    Hand hand(random, raiseHeight);
    hand.doSteps({});
    const auto recording = recordTeaching(device, hand, raiseHeight);
    const auto begin = std::chrono::steady_clock::now();
    const auto taught = sensor::teach(recording);
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    Scored scored;
    if (taught.map) {
        Hand later(random, raiseHeight);
        later.waveAbout(20);
        scored = compare(layout, *taught.map, device.record(later));
    } else {
        scored.outcome = taught.repeat ? Outcome::Repeat : Outcome::Wrong;
        scored.why = taught.why;
    }
    scored.seconds = seconds;
    return scored;
}

Spoiled spoilLayout(std::uint64_t seed, Spoil spoil)
{
    simulator::Random random(seed);
    Spoiled spoiled;
    spoiled.mistake.spoil = spoil;
    const int first = spoil == Spoil::SameFaceTwice  ? 1
                      : spoil == Spoil::RestlessFace ? 0
                      : spoil == Spoil::NoRaise      ? 9
                                                     : 6;
    const int count = spoil == Spoil::SameFaceTwice  ? 5
                      : spoil == Spoil::RestlessFace ? 6
                      : spoil == Spoil::NoRaise      ? 2
                                                     : 3;
    auto layout = randomLayout(random);
    const bool turns = spoil == Spoil::HalfTurn || spoil == Spoil::TurnOtherWay;
    while (turns && !layout.map.hasGyroscope()) {
        layout = randomLayout(random); // without a gyroscope nobody can see a turn
    }
    spoiled.words = layout.words;
    spoiled.mistake.step = static_cast<sensor::TeachStep>(first + random.below(count));
    Device device(layout, random);
    Hand hand(random, raiseHeight);
    hand.doSteps(spoiled.mistake);
    spoiled.taught = sensor::teach(recordTeaching(device, hand, raiseHeight));
    return spoiled;
}

} // namespace fleetrung::tests
