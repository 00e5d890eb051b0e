#include <vector>

#include <catch2/catch.hpp>

#include "engine/strength/plates.hpp"

using namespace fleetrung;
using namespace fleetrung::strength;

TEST_CASE("140 kg are three plates a side, 142.5 kg four", "[strength]")
{
    const auto heavy = platesFor(140, kilogramRack());
    REQUIRE(heavy);
    CHECK(heavy->total == 140);
    CHECK(heavy->side == std::vector<double>{25, 25, 10});
    const auto next = platesFor(142.5, kilogramRack());
    CHECK(next->total == 142.5);
    CHECK(next->side == std::vector<double>{25, 25, 10, 1.25});
}

TEST_CASE("225 lb are two plates of 45 a side", "[strength]")
{
    const auto loading = platesFor(225, poundRack());
    REQUIRE(loading);
    CHECK(loading->total == 225);
    CHECK(loading->side == std::vector<double>{45, 45});
    CHECK(225 * kilogramsPerPound == Approx(102.058).margin(0.001));
}

TEST_CASE("A load the plates cannot make becomes the nearest that they can, the lighter of two", "[strength]")
{
    CHECK(platesFor(101, kilogramRack())->total == 100);
    CHECK(platesFor(102, kilogramRack())->total == 102.5);
    CHECK(platesFor(101.25, kilogramRack())->total == 100);
    const Rack small{20, {{20, 1}, {15, 1}}};
    CHECK(platesFor(500, small)->total == 90);
    CHECK(platesFor(52, small)->side == std::vector<double>{15});
}

TEST_CASE("Fewest plates count, not the heaviest first", "[strength]")
{
    const Rack odd{20, {{25, 1}, {15, 2}, {2.5, 2}}}; // 30 a side: 15 + 15, not 25 + 2.5 + 2.5
    const auto loading = platesFor(80, odd);
    REQUIRE(loading);
    CHECK(loading->total == 80);
    CHECK(loading->side == std::vector<double>{15, 15});
}

TEST_CASE("The empty bar carries nothing, and less than the bar is refused", "[strength][error]")
{
    CHECK(platesFor(20, kilogramRack())->side.empty());
    CHECK(platesFor(15, kilogramRack()).error().code == Code::NotAvailable);
    CHECK(platesFor(-1, kilogramRack()).error().code == Code::InvalidInput);
    CHECK(platesFor(5000, kilogramRack()).error().code == Code::InvalidInput);
    CHECK(platesFor(60, Rack{20, {{0, 2}}}).error().code == Code::InvalidInput);
    CHECK(platesFor(60, Rack{20, {{1.234, 2}}}).error().code == Code::InvalidInput);
    CHECK(platesFor(60, Rack{20, {{20, 1000}}}).error().code == Code::InvalidInput);
}

TEST_CASE("Plates put on one by one add up exactly, both sides and the bar")
{
    const auto loading = loadOf({1.25, 25, 10}, 20);
    REQUIRE(loading);
    CHECK(loading->total == 92.5);
    CHECK(loading->side == std::vector<double>{25, 10, 1.25});
    CHECK(loadOf({}, 15)->total == 15);
    CHECK(loadOf({2.5, 2.5, 45}, 45)->total == 145);
    CHECK_FALSE(loadOf({0}, 20));
    CHECK_FALSE(loadOf({0.333}, 20));
    CHECK_FALSE(loadOf(std::vector<double>(20, 25.0), 20)); // 1020
}
