// Captures: bit for bit, small, and no bytes from outside can hurt.
#include "store_helper.hpp"

#include <bit>
#include <cmath>
#include <numbers>
#include <random>

#include <zstd.h>

#include "engine/store/capture_codec.hpp"

using namespace fleetrung;
using namespace fleetrung::store;
using namespace fleetrung::store::test;

namespace
{

constexpr double gravity = 9.80665;

/// Counts of a 16-bit sensor (+-16 g, +-2000 degrees a second) on a bar that moves up and down, with the noise of a
/// common part (150 micro-g and 7 milli-degrees a second per root Hz).
CaptureSamples barMotion(unsigned seed, double seconds, double rate)
{
    const double accelerometerCount = 16 * gravity / 32768;
    const double gyroscopeCount = 2000 * std::numbers::pi / 180 / 32768;
    std::mt19937 random(seed);
    std::normal_distribution<double> accelerometerNoise(0, 150e-6 * gravity * std::sqrt(rate / 2));
    std::normal_distribution<double> gyroscopeNoise(0, 7e-3 * std::numbers::pi / 180 * std::sqrt(rate / 2));
    CaptureSamples samples;
    const auto count = static_cast<int>(seconds * rate);
    for (int i = 0; i < count; ++i) {
        const double t = i / rate;
        const double up =
            gravity + 4 * std::sin(2 * std::numbers::pi * 0.6 * t) * std::sin(2 * std::numbers::pi * 0.05 * t);
        samples.time.push_back(0.0123 + t * 1.000041);
        samples.counters.push_back((i + 65000) % 65536);
        samples.arrivals.push_back(static_cast<std::int64_t>(t * 1e9) + static_cast<std::int64_t>(random() % 4000000));
        const std::array axes{0.31 * up, -0.2 * up, 0.93 * up};
        for (std::size_t k = 0; k < 3; ++k) {
            const auto force = std::lround((axes[k] + accelerometerNoise(random)) / accelerometerCount);
            const auto turn = std::lround((0.1 * std::sin(t) + gyroscopeNoise(random)) / gyroscopeCount);
            samples.channels[k].push_back(static_cast<double>(force) * accelerometerCount);
            samples.channels[k + 3].push_back(static_cast<double>(turn) * gyroscopeCount);
        }
    }
    return samples;
}

CountScales barScales()
{
    return {16 * gravity / 32768, 2000 * std::numbers::pi / 180 / 32768};
}

bool sameBits(const CaptureSamples& a, const CaptureSamples& b)
{
    const auto same = [](const std::vector<double>& x, const std::vector<double>& y) {
        return std::ranges::equal(x, y, [](double p, double q) {
            return std::bit_cast<std::uint64_t>(p) == std::bit_cast<std::uint64_t>(q);
        });
    };
    for (std::size_t i = 0; i < a.channels.size(); ++i)
        if (!same(a.channels[i], b.channels[i]))
            return false;
    return same(a.time, b.time) && a.counters == b.counters && a.arrivals == b.arrivals;
}

} // namespace

TEST_CASE("a capture comes back bit for bit, whatever its numbers are")
{
    CaptureSamples samples;
    CountScales scales;
    SECTION("nothing at all") {}
    SECTION("counts of the sensor")
    {
        samples = barMotion(1, 5, 200);
        scales = barScales();
    }
    SECTION("counts with a wrong scale")
    {
        samples = barMotion(2, 5, 200);
        scales = {0.017, 3};
    }
    SECTION("decimals as a file writes them")
    {
        for (int i = 0; i < 1000; ++i) {
            samples.time.push_back(i * 5 / 1000.0);
            for (auto& channel : samples.channels)
                channel.push_back((i * 7919 % 20001 - 10000) / 10000.0);
        }
    }
    SECTION("any doubles: minus zero, the smallest, the largest, infinity")
    {
        std::mt19937_64 random(3);
        for (int i = 0; i < 500; ++i) {
            samples.time.push_back(std::bit_cast<double>(random()));
            for (auto& channel : samples.channels)
                channel.push_back(std::bit_cast<double>(random()));
        }
        samples.channels[0][0] = -0.0;
        samples.channels[0][1] = std::numeric_limits<double>::denorm_min();
        samples.channels[0][2] = std::numeric_limits<double>::max();
        samples.channels[0][3] = -std::numeric_limits<double>::infinity();
    }
    SECTION("counters at the ends of their range")
    {
        samples.time = {0, 1, 2};
        samples.counters = {std::numeric_limits<std::int64_t>::min(), std::numeric_limits<std::int64_t>::max(), -1};
    }
    SECTION("no gyroscope")
    {
        samples = barMotion(4, 1, 100);
        for (std::size_t i = 3; i < 6; ++i)
            samples.channels[i].clear();
    }
    const auto encoded = good(encodeCapture(samples, scales));
    const auto decoded = good(decodeCapture(encoded.bytes));
    CHECK(sameBits(decoded.samples, samples));
    CHECK(decoded.contentHash == encoded.contentHash);
}

TEST_CASE("columns of different lengths are refused")
{
    auto samples = barMotion(5, 1, 100);
    samples.channels[2].pop_back();
    CHECK(codeOf(encodeCapture(samples)) == Code::InvalidArgument);
}

// 12 bytes a sample is what six 16-bit channels take; times, counters and arrivals come on top and are counted here
// too.
TEST_CASE("a capture of raw counts takes at most 45 % of its 16-bit size, its times and counters included")
{
    auto samples = barMotion(6, 40, 200);
    samples.arrivals.clear(); // one packet carries many samples: no clock of its own a sample
    const auto encoded = good(encodeCapture(samples, barScales()));
    const double share = static_cast<double>(encoded.bytes.size()) / (12.0 * static_cast<double>(samples.time.size()));
    INFO("share of the 16-bit size: " << share);
    CHECK(share <= 0.45);
}

TEST_CASE("the same samples have the same name, others have another")
{
    const auto samples = barMotion(7, 2, 200);
    auto other = samples;
    other.channels[5].back() += barScales().gyroscope;
    CHECK(good(encodeCapture(samples, barScales())).contentHash ==
          good(encodeCapture(samples, barScales())).contentHash);
    CHECK(good(encodeCapture(samples, barScales())).contentHash != good(encodeCapture(other, barScales())).contentHash);
}

TEST_CASE("a capture cut anywhere is refused")
{
    const auto bytes = good(encodeCapture(barMotion(8, 0.5, 100), barScales())).bytes;
    for (std::size_t length = 0; length < bytes.size(); ++length) {
        const auto decoded = decodeCapture(std::span(bytes).first(length));
        REQUIRE_FALSE(decoded);
        REQUIRE(decoded.error().code == Code::StoreCorrupt);
    }
}

TEST_CASE("bytes turned over in a capture, before and after compression, never crash and never pass for the original")
{
    const auto seed = std::random_device{}();
    CAPTURE(seed);
    std::mt19937 random(seed);
    const auto encoded = good(encodeCapture(barMotion(9, 0.5, 100), barScales()));
    std::vector<std::uint8_t> plain(ZSTD_getFrameContentSize(encoded.bytes.data(), encoded.bytes.size()));
    REQUIRE(ZSTD_decompress(plain.data(), plain.size(), encoded.bytes.data(), encoded.bytes.size()) == plain.size());

    for (int i = 0; i < 20000; ++i) {
        auto broken = plain;
        const int turned = 1 + static_cast<int>(random() % 3);
        for (int k = 0; k < turned; ++k) // mostly in the first bytes, where counts and kinds stand
            broken[random() % (random() % 2 == 0 ? 64 : broken.size())] = static_cast<std::uint8_t>(random());
        std::vector<std::uint8_t> packed(ZSTD_compressBound(broken.size()));
        packed.resize(ZSTD_compress(packed.data(), packed.size(), broken.data(), broken.size(), 1));
        const auto decoded = decodeCapture(packed);
        if (decoded && broken != plain)
            REQUIRE(decoded->contentHash != encoded.contentHash);

        auto turnedOver = encoded.bytes;
        turnedOver[random() % turnedOver.size()] ^= static_cast<std::uint8_t>(1 + random() % 255);
        if (const auto other = decodeCapture(turnedOver))
            REQUIRE((other->contentHash != encoded.contentHash ||
                     sameBits(other->samples, good(decodeCapture(encoded.bytes)).samples)));
    }
}

TEST_CASE("a few bytes that claim to be a huge capture are refused before room is made for it")
{
    std::vector<std::uint8_t> zeros(300 << 20U, 0); // compresses to almost nothing
    std::vector<std::uint8_t> bomb(ZSTD_compressBound(zeros.size()));
    bomb.resize(ZSTD_compress(bomb.data(), bomb.size(), zeros.data(), zeros.size(), 1));
    REQUIRE(bomb.size() < 100000);
    const auto decoded = decodeCapture(bomb);
    REQUIRE_FALSE(decoded);
    CHECK_THAT(decoded.error().message, Catch::Contains("claims"));
}

TEST_CASE("samples are kept once, and come back under their content's name only")
{
    const Folder folder;
    auto store = openStore(folder);
    const auto samples = barMotion(10, 2, 200);
    const auto hash = good(store.putSamples(samples, barScales()));
    const auto size = std::filesystem::file_size(folder.paths().captures);
    CHECK(good(store.putSamples(samples, barScales())) == hash);
    CHECK(std::filesystem::file_size(folder.paths().captures) == size);
    CHECK(good(store.samples(hash)) == samples);
    CHECK(codeOf(store.samples(std::string(64, '0'))) == Code::NotFound);
}

TEST_CASE("samples put inside a transaction stay with it or go with it")
{
    const Folder folder;
    auto store = openStore(folder);
    std::string kept, gone;
    good(store.inTransaction([&]() -> Expected<void> {
        good(store.insert(athleteRow(1)));
        kept = good(store.putSamples(barMotion(11, 1, 200), barScales()));
        return {};
    }));
    CHECK_FALSE(store.inTransaction([&]() -> Expected<void> {
        gone = good(store.putSamples(barMotion(12, 1, 200), barScales()));
        return fail(Code::Cancelled, "", "cancelled");
    }));
    CHECK(codeOf(store.samples(gone)) == Code::NotFound);
    CHECK(good(store.samples(kept)) == barMotion(11, 1, 200));
    CHECK(good(store.putSamples(barMotion(12, 1, 200), barScales())) == gone); // and the file takes new ones again
    CHECK(good(store.samples(gone)) == barMotion(12, 1, 200));
}
