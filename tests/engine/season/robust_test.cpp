// Files nobody meant: whatever stands in a season file, there is an answer or one clear refusal.
#include <random>

#include <catch2/catch.hpp>

#include "engine/season/session_plan.hpp"
#include "tests/engine/season/example.hpp"

using namespace fleetrung;
using namespace fleetrung::season;
using namespace fleetrung::season::example;

namespace
{

std::string damaged(std::string text, std::mt19937& random)
{
    static const std::string alphabet = "0123456789-\"{}[],: aeABC.";
    const auto hits = 1 + random() % 4;
    for (unsigned i = 0; i < hits; ++i) {
        const auto at = random() % text.size();
        if (random() % 3 == 0)
            text.erase(at, 1 + random() % 8);
        else
            text[at] = alphabet[random() % alphabet.size()];
        if (text.empty())
            return "x";
    }
    return text;
}

} // namespace

TEST_CASE("Damaged season files give a plan or one refusal that says what to do", "[season][setup][robust]")
{
    constexpr unsigned seed = 20260105;
    std::mt19937 random(seed);
    int refused = 0, planned = 0;
    for (int i = 0; i < 3000; ++i) {
        const auto text = damaged(seasonText(), random);
        const auto read = parseSetup(text);
        if (!read) {
            ++refused;
            INFO(text);
            CHECK(read.error().message.size() > 10);
            continue;
        }
        const auto plan = planSeason(*read);
        INFO(text);
        REQUIRE(plan);
        ++planned;
        for (std::size_t span = 1; span < plan->phases.size(); ++span)
            CHECK(plan->phases[span].from == plan->phases[span - 1].to + std::chrono::days(1));
    }
    INFO("seed " << seed << ": " << planned << " planned, " << refused << " refused");
    CHECK(planned > 100);
    CHECK(refused > 100);
}

TEST_CASE("Main races a day apart, or on the season's second day, still give whole seasons", "[season][plan][robust]")
{
    for (const int apart : {0, 1, 2, 7, 13, 30}) {
        auto season = setup();
        season.start = on("2027-12-30");
        const auto first = season.start + std::chrono::days(1);
        season.competitions = {{first, "First", Priority::A, true},
                               {first + std::chrono::days(apart), "Second", Priority::A, true}};
        const auto plan = planSeason(season);
        REQUIRE(plan);
        CHECK(plan->end == first + std::chrono::days(apart));
        DayInput input;
        input.plan = *plan;
        input.states = startStates(*plan);
        for (auto day = season.start - std::chrono::days(3); day <= plan->end + std::chrono::days(3);
             day += std::chrono::days(1)) {
            input.today = day;
            for (const auto& decision : decideDay(input))
                CHECK_FALSE(decision.reason.empty());
            const auto session = planSession(*plan, input.states, {}, day);
            CHECK((!session.lifts.empty() || !session.notes.empty()));
        }
    }
}
