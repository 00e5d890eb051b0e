#include "engine/report/summary.hpp"

#include <algorithm>

#include <catch2/catch.hpp>

#include "engine/report/rung_change.hpp"
#include "engine/report/words.hpp"
#include "tests/report/invented_season.hpp"

using namespace fleetrung;
using namespace fleetrung::report;

namespace
{

/// One session a week on each rung, `times` in seconds.
Ladder ladderOf(const std::vector<std::pair<std::size_t, double>>& sessions)
{
    Ladder ladder;
    ladder.name = "Squat";
    ladder.rungs = {{"full-squat", "Full squat", {}}, {"half-squat", "Half squat", {}}};
    CivilDate day = *parseDate("2026-01-05");
    for (const auto& [rung, time] : sessions) {
        EvidencePoint point;
        point.day = day;
        point.rung = rung;
        point.time = {time, 0.004};
        ladder.evidence.push_back(point);
        day += std::chrono::days{7};
    }
    return ladder;
}

bool says(const SeasonReport& report, const std::string& part)
{
    const auto sentences = whatHappened(report);
    return std::any_of(sentences.begin(), sentences.end(),
                       [&](const std::string& sentence) { return sentence.find(part) != std::string::npos; });
}

} // namespace

// Source: closed form. Times fall by 20 ms a week: entry = median of 600, 580, 560; latest = mean of 540, 520, 500;
// five differences d of 20 ms and a prior of 8 % of 580 ms: TE^2 = (6 * 46.4^2 + 5 * 20^2 / 2) / (6 + 5).
TEST_CASE("a change on a rung is told with the typical error of its sessions", "[summary][closed-form]")
{
    const auto changes = rungChanges(ladderOf({{0, 0.60}, {0, 0.58}, {0, 0.56}, {0, 0.54}, {0, 0.52}, {0, 0.50}}));
    REQUIRE(changes.size() == 1);
    CHECK(changes[0].entry == Approx(0.58));
    CHECK(changes[0].latest == Approx(0.52));
    CHECK(changes[0].typicalError == Approx(std::sqrt((6 * 0.0464 * 0.0464 + 5 * 0.02 * 0.02 / 2) / 11)));
    CHECK(changes[0].quicker());
    CHECK_FALSE(changes[0].slower());
}

TEST_CASE("five sessions on a rung are too few for a change", "[summary]")
{
    CHECK(rungChanges(ladderOf({{0, 0.60}, {0, 0.58}, {0, 0.56}, {0, 0.54}, {0, 0.52}})).empty());
}

TEST_CASE("times of two rungs are never one change", "[summary]")
{
    // Six sessions in all, three on each rung, far apart: no change may be told.
    CHECK(rungChanges(ladderOf({{0, 0.60}, {0, 0.60}, {0, 0.60}, {1, 0.30}, {1, 0.30}, {1, 0.30}})).empty());
}

TEST_CASE("left and right are told apart", "[summary]")
{
    auto ladder = ladderOf({{0, 0.60},
                            {0, 0.50},
                            {0, 0.60},
                            {0, 0.50},
                            {0, 0.60},
                            {0, 0.50},
                            {0, 0.60},
                            {0, 0.50},
                            {0, 0.60},
                            {0, 0.50},
                            {0, 0.60},
                            {0, 0.50}});
    for (std::size_t i = 0; i < ladder.evidence.size(); ++i)
        ladder.evidence[i].side = i % 2 == 0 ? Side::Left : Side::Right;
    const auto changes = rungChanges(ladder);
    REQUIRE(changes.size() == 2);
    CHECK(changes[0].entry == Approx(0.60));
    CHECK(changes[1].entry == Approx(0.50));
    CHECK_FALSE(changes[0].quicker());
}

TEST_CASE("the summary says the season in whole sentences", "[summary]")
{
    const auto report = invented::season();
    CHECK(says(report, "Week 22 of 29: the season began on 5 January 2026"));
    CHECK(says(report, "41 of 44 planned training days were done."));
    CHECK(says(report, "3 days were lost: illness 2, travel 1."));
    CHECK(says(report, "from full squat to quarter squat in 3 changes of rung"));
    CHECK(says(report, "best 2.05 s on 26 May 2026 (wind \xE2\x88\x92"
                       "0.2 m/s)"));
    CHECK(says(report, "9 decisions were taken (5 hold, 2 step, 1 ease, 1 rest); 5 followed, 1 changed by the athlete; "
                       "of those that are no hold, 0 still open."));
    CHECK(says(report, "Pain of 3 or more out of 10 was noted on 1 day (left hamstring)."));
    for (const auto& sentence : whatHappened(report))
        CHECK(sentence.ends_with('.'));
}

TEST_CASE("a season in which nothing happened has a summary too", "[summary]")
{
    SeasonReport report;
    report.first = *parseDate("2026-01-05");
    report.last = report.first + std::chrono::days{69};
    report.upTo = report.first;
    CHECK(
        whatHappened(report) ==
        std::vector<std::string>{"Week 1 of 10: the season began on 5 January 2026 and is planned to 15 March 2026."});
}

TEST_CASE("weeks count in sevens from the first day", "[summary]")
{
    SeasonReport report;
    report.first = *parseDate("2026-01-07"); // a Wednesday
    CHECK(weekOf(report, report.first) == 1);
    CHECK(weekOf(report, report.first + std::chrono::days{6}) == 1);
    CHECK(weekOf(report, report.first + std::chrono::days{7}) == 2);
    CHECK(weekOf(report, report.first - std::chrono::days{1}) == 0);
}

TEST_CASE("numbers in words carry a true minus, and a plus where the sign is news", "[words]")
{
    CHECK(numberText(-1.25, 1) == "\xE2\x88\x92"
                                  "1.3");
    CHECK(signedText(1.2, 1) == "+1.2");
    CHECK(signedText(0.04, 1) == "0.0");
    CHECK(inSentence("Half squat") == "half squat");
    CHECK(inSentence("Romanian deadlift to the knee") == "Romanian deadlift to the knee");
    CHECK(inSentence("45 cm") == "45 cm");
    CHECK(inSentence("RDL to the knee") == "RDL to the knee");
    CHECK(dayText(*parseDate("2026-07-25")) == "25 July 2026");
}
