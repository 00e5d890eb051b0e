// A day's decisions taken again from what was kept with them.
#include <catch2/catch.hpp>

#include "engine/season/replay.hpp"
#include "tests/engine/season/example.hpp"

using namespace fleetrung;
using namespace fleetrung::season;
using namespace fleetrung::season::example;

namespace
{

/// A day with something in every part of the input.
DayInput fullDay()
{
    auto input = squatDay("2026-04-17", "half", "2026-03-16",
                          sessions(on("2026-03-16"), 4, "half", {300, 302, 298, 292, 288, 280, 276, 274}));
    input.history[0].loads = {{60, reps::Measured{0.25, 0.004}, reps::Measured{0.9, 0.01}}, {100, {}, {}}};
    input.states[0].probeLoadKg = 100;
    input.states[0].workLoadKg = 117.5;
    input.log.work = {{on("2026-03-16"), "squat", "half", 117.5, 4, 5, 7.5, false, false},
                      {on("2026-03-20"), "squat", "parallel", 110, 3, 3, {}, true, true}};
    input.log.contacts = {{on("2026-03-18"), 20}};
    input.log.maxima = {{on("2026-02-18"), "squat", "full", 130}};
    input.log.tests = {{on("2026-03-18"), "flying 20 m, gates", 2.11, 0.4}, {on("2026-04-08"), "", 2.1, {}}};
    input.wellness.sleepHours = 7.5;
    input.wellness.pain = 1;
    input.wellness.painRegion = "knee";
    return input;
}

} // namespace

TEST_CASE("A day's input is kept by value: written and read back it says the same and decides the same",
          "[season][replay]")
{
    const auto input = fullDay();
    const auto json = dayInputJson(input);
    const auto read = dayInputFromJson(*parseJson(jsonText(json)));
    REQUIRE(read);
    CHECK(jsonText(dayInputJson(*read)) == jsonText(json));
    CHECK(inputId(dayInputJson(*read)) == inputId(json));
    CHECK(rederive(json, decideDay(input))->empty());
}

TEST_CASE("A decision that was altered after it was taken is found, with the field that differs", "[season][replay]")
{
    const auto input = fullDay();
    auto decisions = decideDay(input);
    decisions[0].evidence.at(1).value += 1;
    decisions[0].loadFactor = 0.5;
    const auto differences = *rederive(dayInputJson(input), decisions);
    REQUIRE(differences.size() == 2);
    CHECK(differences[0].field == "evidence[1].value");
    CHECK(differences[1].field == "load_factor");
    CHECK(differences[1].stored == "0.5");
    CHECK(differences[1].derived == "1.0");
}

TEST_CASE("An input that was altered gives other decisions or another name", "[season][replay]")
{
    const auto input = fullDay();
    const auto json = dayInputJson(input);
    auto other = json;
    other["history"][7]["time_to_peak_s"]["value"] = 0.331;
    CHECK(inputId(other) != inputId(json));
    CHECK_FALSE(rederive(other, decideDay(input))->empty());
    other["history"][7].erase("day");
    CHECK(rederive(other, decideDay(input)).error().place == "history[7].day");
}

TEST_CASE("Decisions are taken again with the rules they were taken with, not with today's", "[season][replay]")
{
    const auto kept = seasonDataJson();
    CHECK(seasonDataFromJson(kept)->version == standardSeasonData().version);

    auto older = kept; // a program that asked for twice the gain
    auto rules = *parseJson(kept["rules"].get<std::string>());
    rules["numbers"]["step_gain"]["value"] = 50;
    older["rules"] = jsonText(rules);
    const auto olderData = seasonDataFromJson(older);
    REQUIRE(olderData);
    const auto input = fullDay();
    const auto then = decideDay(input, *olderData);
    CHECK(rederive(dayInputJson(input), then, *olderData)->empty());
    CHECK_FALSE(rederive(dayInputJson(input), then)->empty());
}

TEST_CASE("Every rule that decides has its words, and the words carry the numbers in use", "[season][replay][data]")
{
    const auto& rules = standardSeasonData().rules;
    const auto text = explainRules(rules);
    for (const auto& rule : rules.texts) {
        CHECK(text.find(rule.title) != std::string::npos);
        CHECK(rule.text.find('{') == std::string::npos);
    }
    std::size_t named = 0;
    for (const auto& number : rules.numbers)
        for (const auto& rule : rules.texts)
            named += std::find(rule.numbers.begin(), rule.numbers.end(), number.key) != rule.numbers.end() ? 1 : 0;
    CHECK(named >= rules.numbers.size()); // no number stands outside every rule
    CHECK(findRule(rules, "step-for-evidence")->text.find(numberText(*findNumber(rules, "step_valid_share"))) !=
          std::string::npos);
}
