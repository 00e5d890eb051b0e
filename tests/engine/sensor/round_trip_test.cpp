// Samples to packets by the demo's encoder and back, through random maps of every form.
#include <catch2/catch.hpp>

#include "demo/sensor/packet_encoder.hpp"
#include "tests/engine/sensor/decoder_helper.hpp"
#include "tests/engine/sensor/random_map.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

namespace
{

std::vector<motion::Sample> swinging(std::size_t count)
{
    std::vector<motion::Sample> samples;
    for (std::size_t i = 0; i < count; ++i) {
        const double time = static_cast<double>(i) / 200;
        samples.push_back({time,
                           {12 * std::sin(5 * time), 9 * std::cos(3 * time), 9.8 + 5 * std::sin(7 * time)},
                           {4 * std::cos(5 * time), 5 * std::sin(2 * time), -3 * std::sin(11 * time)}});
    }
    return samples;
}

/// How far a reading may be off: half a count of integers, of floats their resolution below 32, of lines their
/// decimals.
double tolerance(const StreamForm& form, Channel channel)
{
    if (form.text)
        return 0.006;
    for (const auto& field : form.binary.sampleFields)
        if (field.channel == channel)
            return field.type == NumberType::Float16   ? 0.0079
                   : field.type == NumberType::Float32 ? 1e-6
                                                       : std::abs(field.scale) * 0.501;
    return 0;
}

void checkReadings(const RawSample& got, const motion::Sample& sent, const StreamForm& form)
{
    for (int i = 0; i < 3; ++i) {
        const auto at = static_cast<std::size_t>(i);
        if (std::isfinite(got.specificForce[at]))
            REQUIRE(std::abs(got.specificForce[at] - sent.specificForce[i]) <= tolerance(form, axis(i)));
        if (std::isfinite(got.angularRate[at]))
            REQUIRE(std::abs(got.angularRate[at] - sent.angularRate[i]) <= tolerance(form, axis(3 + i)));
    }
}

bool has(const StreamForm& form, Channel channel)
{
    const auto is = [&](const auto& field) { return field.channel == channel; };
    const auto any = [&](const auto& fields) { return std::any_of(fields.begin(), fields.end(), is); };
    return form.text ? any(form.lines.columns) : any(form.binary.packetFields) || any(form.binary.sampleFields);
}

/// Samples that cannot come back: a first line (it may be half of one), and what waits for a notification to be full.
std::size_t mostMissing(const StreamForm& form)
{
    constexpr std::size_t payload = 244, shortestLine = 6;
    if (form.text)
        return 1 + payload / shortestLine;
    const auto inPacket = static_cast<std::size_t>(std::max(1, 8 * 512 / form.binary.sampleBits));
    return form.binary.stream ? inPacket * (3 + payload / static_cast<std::size_t>(form.binary.length)) : inPacket;
}

} // namespace

TEST_CASE("What a sensor of any random map sends is decoded to what it measured", "[sensor][decoder][property]")
{
    const std::uint64_t seed = 21'052;
    CAPTURE(seed);
    RandomMap random(seed);
    const auto sent = swinging(600);
    for (int round = 0; round < 400; ++round) {
        const auto map = random.make();
        CAPTURE(round, sensorMapText(map));
        PacketDecoder decoder(map);
        std::vector<std::vector<RawSample>> got(map.streams.size());
        for (const auto& packet : demo::PacketEncoder(map).encode(sent)) {
            const auto fresh = decoder.decode(packet.source, packet.bytes, packet.arrival);
            got[packet.source].insert(got[packet.source].end(), fresh.begin(), fresh.end());
        }
        for (std::size_t i = 0; i < map.streams.size(); ++i) {
            const auto& form = map.streams[i];
            const auto& counts = decoder.counts(i);
            CAPTURE(i, got[i].size(), counts.bad, counts.lost, counts.doubled);
            REQUIRE(counts.badInAll() == 0);
            REQUIRE(counts.lost == 0);
            REQUIRE(counts.doubled == 0);
            REQUIRE(got[i].size() + mostMissing(form) >= sent.size());
            const std::size_t skipped = form.text ? 1 : 0;
            const double begun = std::isnan(got[i].front().stamp) ? 0 : got[i].front().stamp;
            for (std::size_t j = 0; j < got[i].size(); ++j) {
                checkReadings(got[i][j], sent[j + skipped], form);
                REQUIRE(got[i][j].counter == (has(form, Channel::Counter) ? static_cast<std::int64_t>(j) : -1));
                const double since = sent[j + skipped].time - sent[skipped].time;
                if (!std::isnan(got[i][j].stamp) && !std::isnan(got[i].front().stamp))
                    REQUIRE(got[i][j].stamp - begun == Approx(since).margin(0.0021));
            }
            const auto last = got[i].back();
            if (has(form, Channel::Stamp) && last.count == 1)
                CHECK_FALSE(std::isnan(last.stamp));
        }
    }
}

TEST_CASE("Lost and doubled packets of random maps are counted to the sample", "[sensor][decoder][property]")
{
    const std::uint64_t seed = 4'711;
    CAPTURE(seed);
    RandomMap random(seed);
    std::mt19937_64 chance(seed);
    const auto sent = swinging(600);
    int tried = 0;
    while (tried < 150) {
        const auto map = random.make();
        const auto& form = map.streams.front();
        if (form.text || form.binary.stream || !has(form, Channel::Counter))
            continue;
        ++tried;
        CAPTURE(tried, sensorMapText(map));
        auto packets = demo::PacketEncoder(map).encode(sent);
        std::erase_if(packets, [](const auto& packet) { return packet.source != 0; });
        PacketDecoder decoder(map);
        std::int64_t lost = 0, doubled = 0, inOne = 0, got = 0;
        bool before = false;
        for (std::size_t i = 0; i < packets.size(); ++i) {
            const auto dice = chance() % 20;
            const bool loses = dice == 0 && i > 0 && i + 1 < packets.size() && inOne > 0;
            if (loses) {
                lost += inOne;
                before = true;
                continue;
            }
            const auto fresh = decoder.decode(0, packets[i].bytes, packets[i].arrival);
            inOne = static_cast<std::int64_t>(fresh.size());
            got += inOne;
            for (const auto& sample : fresh)
                checkReadings(sample, sent[static_cast<std::size_t>(sample.counter)], form);
            if (dice == 1) {
                CHECK(decoder.decode(0, packets[i].bytes, packets[i].arrival).empty());
                ++doubled;
            }
        }
        CHECK(before);
        CHECK(decoder.counts(0).lost == lost);
        CHECK(decoder.counts(0).doubled == doubled);
        CHECK(decoder.counts(0).samples == got);
        CHECK(decoder.counts(0).badInAll() == 0);
    }
}
