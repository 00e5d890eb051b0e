#include <set>

#include <catch2/catch.hpp>

#include "engine/reps/lift.hpp"
#include "engine/season/rules.hpp"
#include "engine/season/season_files.hpp"
#include "tests/engine/season/example.hpp"

using namespace fleetrung;
using namespace fleetrung::season;

TEST_CASE("The ladders, rules and cautions of the starting set can be read", "[season][data]")
{
    const auto ladders = parseLadders(laddersFile());
    INFO((ladders ? std::string() : describe(ladders.error())));
    REQUIRE(ladders);
    const auto rules = parseRules(rulesFile());
    INFO((rules ? std::string() : describe(rules.error())));
    REQUIRE(rules);
    REQUIRE(parseCautions(cautionsFile()));
    CHECK(standardSeasonData().ladders.size() == ladders->size());
    CHECK(standardSeasonData().rules.stepGain == rules->stepGain);
}

TEST_CASE("The starting set has the seven ladders, each from its longest range down", "[season][data]")
{
    std::vector<std::pair<std::string, std::size_t>> found;
    for (const auto& ladder : standardSeasonData().ladders)
        found.emplace_back(ladder.key, ladder.rungs.size());
    CHECK(found ==
          std::vector<std::pair<std::string, std::size_t>>{
              {"squat", 6}, {"step-up", 5}, {"clean", 5}, {"hinge", 3}, {"pull", 4}, {"drop-jump", 5}, {"ankle", 3}});
    for (const auto& ladder : standardSeasonData().ladders)
        for (std::size_t i = 1; i < ladder.rungs.size(); ++i)
            if (!ladder.rungs[i].climbs)
                CHECK(ladder.rungs[i].range.high <= ladder.rungs[i - 1].range.high);
}

TEST_CASE("Every rung names a lift that the repetition finder knows", "[season][data]")
{
    for (const auto& ladder : standardSeasonData().ladders)
        for (const auto& rung : ladder.rungs) {
            INFO(ladder.key << '.' << rung.key);
            CHECK(reps::findLift(rung.lift) != nullptr);
        }
}

TEST_CASE("Every caution that a rung names exists and says something", "[season][data]")
{
    const auto& data = standardSeasonData();
    for (const auto& ladder : data.ladders)
        for (const auto& rung : ladder.rungs)
            for (const auto& key : rung.cautions) {
                const auto* caution = findCaution(data, key);
                INFO(key);
                REQUIRE(caution != nullptr);
                CHECK(caution->text.size() > 40);
            }
    for (const auto* key : {"first-start", "young", "pain", "premise", "estimate"})
        CHECK(findCaution(data, key) != nullptr);
}

TEST_CASE("A ladder that grows longer downwards is refused, and the place is named", "[season][data]")
{
    std::string text(laddersFile());
    const std::string range = R"("range_m": [0.28, 0.42])"; // half squat
    REQUIRE(text.find(range) != std::string::npos);
    text.replace(text.find(range), range.size(), R"("range_m": [0.28, 0.72])");
    const auto ladders = parseLadders(text);
    REQUIRE_FALSE(ladders);
    CHECK(ladders.error().code == Code::InvalidInput);
    CHECK(ladders.error().place == "ladders[0].rungs");
    CHECK(ladders.error().message.find("longest range first") != std::string::npos);
}

TEST_CASE("A rule without its origin, with a misspelt name or out of bounds is refused", "[season][data]")
{
    const std::string good(rulesFile());
    const auto with = [&](const std::string& piece, const std::string& other) {
        auto text = good;
        REQUIRE(text.find(piece) != std::string::npos);
        return parseRules(text.replace(text.find(piece), piece.size(), other));
    };
    const std::string stepGain =
        R"("step_gain": {"value": 1.85, "unit": "typical errors", "origin": "starting value of this project")";
    CHECK(with(stepGain, R"("step_gain": {"value": 1.85, "unit": "typical errors", "origin": "")").error().place ==
          "numbers.step_gain.origin");
    CHECK(with("\"step_gain\"", "\"stepgain\"").error().place == "numbers.step_gain");
    CHECK(with(stepGain, R"("step_gain": {"value": -1, "unit": "typical errors", "origin": "x")").error().place ==
          "numbers.step_gain.value");
    CHECK(with("{\"phase\": \"transition\"", "{\"phase\": \"taper\"").error().place == "phases[0].phase");
}

TEST_CASE("Every rung says how its load is found, what tells its strength and where it comes from", "[season][data]")
{
    for (const auto& ladder : standardSeasonData().ladders)
        for (const auto& rung : ladder.rungs) {
            INFO(ladder.key << '.' << rung.key);
            CHECK(rung.loadRule.size() > 10);
            const bool named = rung.origin.find("published: ") == 0 || rung.origin.find("from memory: ") == 0 ||
                               rung.origin.find("common practice, no source") == 0 ||
                               rung.origin.find("starting value of this project") == 0;
            CHECK(named);
            CHECK(rung.name.find('{') == std::string::npos);
        }
    const auto* squat = findLadder(standardSeasonData().ladders, "squat");
    CHECK(squat->find("half")->strength == StrengthMeasure::OneRepetitionMaximum);
    CHECK(squat->find("quarter")->strength == StrengthMeasure::ProbeVelocity);
    CHECK(findLadder(standardSeasonData().ladders, "hinge")->find("quarter")->strength ==
          StrengthMeasure::OneRepetitionMaximum);
}

TEST_CASE("A ladder is written and read back unchanged", "[season][data]")
{
    for (const auto& ladder : standardSeasonData().ladders) {
        const auto text = jsonText(ladderJson(ladder));
        const auto again = parseLadder(text);
        INFO(text);
        REQUIRE(again);
        CHECK(jsonText(ladderJson(*again)) == text);
        CHECK(again->rungs.front().name == ladder.rungs.front().name);
    }
    CHECK(parseLadder("{}").error().place == "key");
}

TEST_CASE("An athlete's own ladder is planned beside the standard ones, and changes the name of the data",
          "[season][data]")
{
    auto ladder = *findLadder(standardSeasonData().ladders, "hinge");
    ladder.key = "trap-bar";
    ladder.name = "Trap bar";
    for (auto& rung : ladder.rungs)
        rung.origin = "user";
    auto season = example::setup();
    season.ownLadders = {ladder};
    season.ladders = {"squat", "trap-bar"};
    REQUIRE(checkSetup(season));
    const auto data = dataFor(season);
    CHECK(findLadder(data.ladders, "trap-bar") != nullptr);
    CHECK(data.version != standardSeasonData().version);
    CHECK(checkSetup(season, data)); // the very same ladder is no other ladder
    CHECK(dataFor(season, data).version == data.version);
    CHECK(dataFor(example::setup()).version == standardSeasonData().version);
    const auto text = jsonText(setupJson(season));
    const auto again = parseSetup(text);
    REQUIRE(again);
    CHECK(jsonText(setupJson(*again)) == text);

    const auto placeOf = [&](auto&& change) {
        auto wrong = season;
        change(wrong.ownLadders[0]);
        const auto checked = checkSetup(wrong);
        return checked ? std::string("was accepted") : checked.error().place;
    };
    CHECK(placeOf([](Ladder& own) { own.key = "squat"; }) == "own_ladders[0].key");
    CHECK(placeOf([](Ladder& own) { own.name.clear(); }) == "own_ladders[0].name");
    CHECK(placeOf([](Ladder& own) { own.rungs.clear(); }) == "own_ladders[0].rungs");
    CHECK(placeOf([](Ladder& own) { own.rungs[1].origin = "published: somewhere"; }) ==
          "own_ladders[0].rungs[1].origin");
    CHECK(placeOf([](Ladder& own) { own.rungs[1].lift = "no-such-lift"; }) == "own_ladders[0].rungs[1].lift");
    CHECK(placeOf([](Ladder& own) { std::swap(own.rungs[0], own.rungs[2]); }) == "own_ladders[0].rungs");
    CHECK(placeOf([](Ladder& own) { own.regions = {"tail"}; }) == "own_ladders[0].regions");
    CHECK(placeOf([](Ladder& own) { own.rungs[0].cautions = {"none"}; }) == "own_ladders[0].rungs[0].cautions");
}
