// Faults of packets on command: what a bare central gets.
#include <QElapsedTimer>

#include "tests/ble/streaming.hpp"

namespace fleetrung::ble
{
namespace
{

/// Notifications whose counter does not follow the one before.
int breaks(const std::vector<QByteArray>& packets)
{
    int count = 0;
    for (std::size_t i = 1; i < packets.size(); ++i) {
        count += counterOf(packets[i]) == (counterOf(packets[i - 1]) + 1) % 65536 ? 0 : 1;
    }
    return count;
}

/// When each of the next notifications came [ms].
std::vector<qint64> arrivals(BareCentral& central, std::size_t count)
{
    central.received.clear();
    QElapsedTimer clock;
    clock.start();
    std::vector<qint64> times;
    waitUntil([&] {
        times.resize(central.received.size(), clock.elapsed());
        return times.size() >= count;
    });
    return times;
}

std::size_t pausesLongerThan(qint64 milliseconds, const std::vector<qint64>& times)
{
    std::size_t count = 0;
    for (std::size_t i = 1; i < times.size(); ++i) {
        count += times[i] - times[i - 1] > milliseconds ? 1 : 0;
    }
    return count;
}

} // namespace

TEST_CASE("packets are lost by the share told")
{
    const auto bench = startBench({"--do", "lose 0.3", "--rate", "400"});
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 200));
    const int spanned = (counterOf(central.received.back()) - counterOf(central.received.front()) + 65536) % 65536 + 1;
    const double share = 1 - static_cast<double>(central.received.size()) / spanned;
    CHECK(share == Approx(0.3).margin(0.12)); // four standard deviations of 286 draws
    REQUIRE((*bench)("lose 1") == "ok");
    more(central, 1000, 100); // what was on its way
    CHECK_FALSE(more(central, 1, 300));
}

TEST_CASE("packets come twice")
{
    const auto bench = startBench({"--do", "twice 1"});
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 60));
    for (std::size_t i = 1; i < 60; i += 2) {
        CHECK(central.received[i] == central.received[i - 1]);
    }
    CHECK(bench->count("startNotify") == 1);
}

TEST_CASE("packets come garbled, of any length")
{
    const auto bench = startBench({"--do", "garble 1"});
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 60));
    std::size_t ofLength = 0;
    for (const auto& packet : central.received) {
        CHECK(packet.size() >= 1);
        ofLength += packet.size() == 14 ? 1 : 0;
    }
    CHECK(ofLength < central.received.size() / 2);
}

TEST_CASE("packets come in bunches, and none is lost")
{
    const auto bench = startBench({"--do", "bunch 200"});
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    const auto times = arrivals(central, 100);
    CHECK(times.size() >= 100);
    const auto pauses = pausesLongerThan(60, times);
    CHECK(pauses >= 3);
    CHECK(pauses <= 20);
    CHECK(breaks(central.received) == 0);
}

TEST_CASE("a stall holds packets back, and none is lost")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 10));
    REQUIRE((*bench)("stall 1500") == "ok");
    more(central, 1000, 200); // what was on its way
    CHECK_FALSE(more(central, 1, 600));
    CHECK(more(central, 100));
    CHECK(breaks(central.received) == 0);
}

TEST_CASE("a subscribed sensor falls silent, for good or until a new link")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 10));
    REQUIRE((*bench)("silence on") == "ok");
    more(central, 1000, 100); // what was on its way
    CHECK_FALSE(more(central, 1, 300));
    REQUIRE((*bench)("silence off") == "ok");
    CHECK(more(central, 10));
    REQUIRE((*bench)("silence until-reconnect") == "ok");
    more(central, 1000, 100);
    CHECK_FALSE(more(central, 1, 300));
    central.disconnectFrom();
    stream(central);
    CHECK(more(central, 10));
}

TEST_CASE("a sensor that was switched off and on counts anew")
{
    const auto bench = startBench({"--rate", "400"});
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 700));
    const int before = counterOf(central.received.back());
    REQUIRE((*bench)("restart") == "ok");
    REQUIRE(waitUntil([&] { return central.controller()->state() == QLowEnergyController::UnconnectedState; }));
    central.received.clear();
    stream(central);
    REQUIRE(more(central, 1));
    CHECK(counterOf(central.received.front()) < before);
}

} // namespace fleetrung::ble
