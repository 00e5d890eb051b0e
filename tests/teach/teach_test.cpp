// Teaching a sensor nobody described: random layouts in a person's hand, steps gone wrong, and sensors that send
// nothing.
#include <array>
#include <catch2/catch.hpp>

#include "tests/teach/score.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::tests;

namespace
{

constexpr std::int64_t millisecond = 1'000'000;

/// Steps as long as they should be, one after the other.
TeachRecording steppedThrough()
{
    TeachRecording recording;
    recording.notifiers = {{"0000180f-0000-1000-8000-00805f9b34fb", "00002a19-0000-1000-8000-00805f9b34fb"}};
    std::int64_t now = 0;
    for (std::size_t i = 0; i < teachSteps; ++i) {
        const auto step = static_cast<TeachStep>(i);
        const auto end = now + static_cast<std::int64_t>(secondsOf(step) * 1000) * millisecond;
        recording.spans.push_back({step, now, end});
        now = end + 1000 * millisecond;
    }
    return recording;
}

void requireNoMap(const Taught& taught)
{
    INFO(taught.why);
    REQUIRE_FALSE(taught.map);
    REQUIRE_FALSE(taught.why.empty());
}

/// How many of some random layouts name just the step that went wrong; none may give a map.
int namedRightly(Spoil spoil, int layouts)
{
    int named = 0;
    for (int seed = 1; seed <= layouts; ++seed) {
        const auto spoiled = spoilLayout(static_cast<std::uint64_t>(seed), spoil);
        CAPTURE(seed, spoiled.words, spoiled.taught.why);
        CHECK_FALSE(spoiled.taught.map);
        named += spoiled.taught.repeat == spoiled.mistake.step ? 1 : 0;
    }
    return named;
}

} // namespace

TEST_CASE("A sensor that sends nothing cannot be taught, and teaching says so")
{
    requireNoMap(teach({}));
    requireNoMap(teach(steppedThrough()));
}

TEST_CASE("A sensor that tells of nothing but its battery cannot be taught")
{
    auto recording = steppedThrough();
    for (int i = 0; i < 50; ++i) {
        recording.packets.push_back({0, i * 1000 * millisecond, {static_cast<std::uint8_t>(90 - i / 10)}});
    }
    requireNoMap(teach(recording));
}

TEST_CASE("Packets of random bytes give no map")
{
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        CAPTURE(seed);
        simulator::Random random(seed);
        auto recording = steppedThrough();
        const auto length = 1 + random.below(40);
        for (auto now = recording.spans.front().from; now < recording.spans.back().to; now += 20 * millisecond) {
            RawPacket packet{0, now, {}};
            for (int i = 0; i < length; ++i) {
                packet.bytes.push_back(static_cast<std::uint8_t>(random.below(256)));
            }
            recording.packets.push_back(packet);
        }
        requireNoMap(teach(recording));
    }
}

TEST_CASE("A raise that was not done is to be done again")
{
    CHECK(namedRightly(Spoil::NoRaise, 12) >= 11);
}

TEST_CASE("The same face twice is to be laid down again")
{
    CHECK(namedRightly(Spoil::SameFaceTwice, 12) >= 11);
}

TEST_CASE("A face that did not lie still is to be laid down again")
{
    CHECK(namedRightly(Spoil::RestlessFace, 12) >= 11);
}

TEST_CASE("Half a turn is to be turned again")
{
    CHECK(namedRightly(Spoil::HalfTurn, 12) >= 11);
}

TEST_CASE("A turn the other way round is to be turned again")
{
    CHECK(namedRightly(Spoil::TurnOtherWay, 12) >= 11);
}

TEST_CASE("A teaching that is stopped gives no map")
{
    simulator::Random random(2);
    const auto layout = randomLayout(random);
    Device device(layout, random);
    Hand hand(random, 0.5);
    hand.doSteps({});
    const auto recording = recordTeaching(device, hand, 0.5);
    REQUIRE(teach(recording).map);
    const auto stopped = teach(recording, [](double) { return false; });
    REQUIRE_FALSE(stopped.map);
    REQUIRE_FALSE(stopped.repeat);
}

// A small part of what fleetrung-teach-check counts over 500 layouts (tests/teach/CMakeLists.txt), for builds with
// sanitizers.
TEST_CASE("Nine of ten random layouts are taught rightly at the first go")
{
    constexpr int layouts = 30;
    int right = 0;
    for (std::uint64_t seed = 101; seed < 101 + layouts; ++seed) {
        right += scoreLayout(seed).outcome == Outcome::Right ? 1 : 0;
    }
    CAPTURE(right);
    CHECK(right * 10 >= layouts * 9);
}
