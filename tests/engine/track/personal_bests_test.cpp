#include <catch2/catch.hpp>

#include "engine/track/personal_bests.hpp"

using namespace fleetrung;
using namespace fleetrung::track;

namespace
{

TestRun run(const char* test, int day, double time)
{
    TestRun one;
    one.test = test;
    one.day = CivilDate{std::chrono::days{20000 + day}};
    one.time = time;
    return one;
}

} // namespace

TEST_CASE("Each test has its own best, and the test run last comes first", "[bests]")
{
    const std::vector<TestRun> runs{run("60 m", 0, 7.5), run("flying 20 m", 3, 2.1), run("60 m", 7, 7.4),
                                    run("60 m", 9, 7.4), run("flying 20 m", 12, 2.2)};
    const auto bests = personalBests(runs);
    REQUIRE(bests.size() == 2);
    CHECK(bests[0].test == "flying 20 m");
    CHECK(bests[0].best == 1u);
    CHECK(bests[1].runs == 3);
    CHECK(bests[1].best == 2u); // the earlier of the equal two
}

TEST_CASE("A wind-aided competition is no best, and stands beside it where it is faster", "[bests]")
{
    std::vector<TestRun> runs{run("100 m", 0, 11.2), run("100 m", 7, 11.0)};
    runs[1].competition = true;
    runs[1].wind = 2.1;
    auto bests = personalBests(runs);
    CHECK(bests[0].best == 0u);
    CHECK(bests[0].windAided == 1u);
    runs[1].wind = 2.0; // allowed
    bests = personalBests(runs);
    CHECK(bests[0].best == 1u);
    CHECK_FALSE(bests[0].windAided.has_value());
    runs[1].wind = 2.1;
    runs[1].time = 11.3;
    CHECK_FALSE(personalBests(runs)[0].windAided.has_value());
    runs.erase(runs.begin());
    CHECK_FALSE(personalBests(runs)[0].best.has_value());
    CHECK(personalBests(runs)[0].windAided == 0u);
}

TEST_CASE("Strong wind in training is written beside the time but takes no best away", "[bests]")
{
    std::vector<TestRun> runs{run("100 m", 0, 11.2), run("100 m", 7, 11.0)};
    runs[1].wind = 3.0;
    CHECK(personalBests(runs)[0].best == 1u);
}

TEST_CASE("A time by hand is the best only where there is no other", "[bests]")
{
    std::vector<TestRun> runs{run("30 m", 0, 4.0), run("30 m", 7, 4.1)};
    runs[0].byHand = true;
    CHECK(personalBests(runs)[0].best == 1u);
    runs[1].byHand = true;
    CHECK(personalBests(runs)[0].best == 0u);
}
