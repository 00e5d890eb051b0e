#include <catch2/catch.hpp>

#include "tests/engine/season/example.hpp"

using namespace fleetrung;
using namespace fleetrung::season;
using namespace fleetrung::season::example;

namespace
{
Error errorOf(const std::string& text)
{
    const auto parsed = parseSetup(text);
    return parsed ? Error{Code::InvalidArgument, "", "was accepted"} : parsed.error();
}
} // namespace

TEST_CASE("A season is read from its file and written back unchanged", "[season][setup]")
{
    const auto first = parseSetup(seasonText());
    REQUIRE(first);
    CHECK(first->competitions.size() == 3);
    CHECK(first->competitions[2].main);
    CHECK(first->boxHeights[0].metres() == Approx(0.45));
    const auto text = jsonText(setupJson(*first));
    const auto second = parseSetup(text);
    REQUIRE(second);
    CHECK(jsonText(setupJson(*second)) == text);
}

TEST_CASE("Bad season files are refused with the place at fault", "[season][setup]")
{
    CHECK(errorOf("").code == Code::InvalidInput);
    CHECK(errorOf("{\"start\": }").place.find("line 1, column") == 0);
    CHECK(errorOf("[1, 2]").code == Code::InvalidInput);
    CHECK(errorOf(seasonWith("2026-01-05", "2026-02-30")).place == "start");
    CHECK(errorOf(seasonWith("2026-06-14", "14.6.2026")).place == "competitions[0].date");
    CHECK(errorOf(seasonWith("\"C\"", "\"D\"")).place == "competitions[0].priority");
    CHECK(errorOf(seasonWith("2026-06-14", "2025-06-14")).place == "competitions[0].date");
    CHECK(errorOf(seasonWith("\"training_days\"", "\"trainingdays\"")).place == "trainingdays");
    CHECK(errorOf(seasonWith("\"mon\", \"wed\", \"fri\"],\n  \"sprint", "\"monday\"],\n  \"sprint")).place ==
          "training_days");
    CHECK(errorOf(seasonWith("\"clean\"", "\"squat\"")).place == "ladders[1]");
    CHECK(errorOf(seasonWith("\"clean\"", "\"snatch\"")).place == "ladders[1]");
    CHECK(errorOf(seasonWith(", \"main\": true", "")).place == "competitions");
    CHECK(errorOf(seasonWith("[45,", "[\"low\",")).place == "box_heights_cm[0]");
    CHECK(errorOf(seasonWith("\"session_minutes\": 90", "\"session_minutes\": 1e9")).place == "session_minutes");
    CHECK(errorOf(seasonWith("\"start\"", "\"start\": \"2026-01-05\", \"start\"")).code == Code::InvalidInput);
}

TEST_CASE("A session holds no more primary lifts than its minutes allow, unless the reason is recorded",
          "[season][setup]")
{
    CHECK(liftCap(setup(), standardSeasonData().rules) == 3);
    auto shortOne = setup();
    shortOne.sessionMinutes = 60;
    CHECK(liftCap(shortOne, standardSeasonData().rules) == 2);
    const auto refused =
        errorOf(seasonWith("\"session_minutes\": 90", "\"session_minutes\": 90, \"lifts_per_session\": 5"));
    CHECK(refused.code == Code::Refused);
    CHECK(refused.message.find("hold 3 primary lifts") != std::string::npos);
    const auto allowed =
        parseSetup(seasonWith("\"session_minutes\": 90", "\"session_minutes\": 90, \"lifts_per_session\": 4, "
                                                         "\"lifts_per_session_override\": \"two racks, two coaches\""));
    REQUIRE(allowed);
    const auto plan = planSeason(*allowed);
    REQUIRE(plan);
    CHECK(std::any_of(plan->notes.begin(), plan->notes.end(), [](const std::string& note) {
        return note.find("two racks, two coaches") != std::string::npos;
    }));
}

TEST_CASE("Under 18: a guardian must agree, and there are at most three days that do not follow each other",
          "[season][setup][caution]")
{
    // Three non-consecutive days: Faigenbaum et al. 2009, J Strength Cond Res 23(5 Suppl):S60-S79 (from memory).
    const std::string adult = "\"birth_date\": \"2001-04-12\"";
    CHECK(errorOf(seasonWith(adult, "\"birth_date\": \"2009-04-12\"")).place == "athlete.guardian_consent");
    const std::string young = "\"birth_date\": \"2009-04-12\", \"guardian_consent\": true";
    CHECK(parseSetup(seasonWith(adult, young)));
    auto setupYoung = *parseSetup(seasonWith(adult, young));
    setupYoung.trainingDays = {1, 3, 5, 6};
    CHECK(checkSetup(setupYoung).error().code == Code::Refused);
    setupYoung.trainingDays = {1, 7}; // Sunday and Monday follow each other
    CHECK(checkSetup(setupYoung).error().place == "training_days");
    setupYoung.trainingDays = {2, 4, 7};
    CHECK(checkSetup(setupYoung));
}

TEST_CASE("Age is counted in whole years, and a 29 February birthday comes on 1 March in other years",
          "[season][setup]")
{
    AthleteFacts athlete;
    CHECK_FALSE(ageOn(athlete, on("2026-01-01")));
    athlete.birthDate = on("2008-02-29");
    CHECK(*ageOn(athlete, on("2026-02-28")) == 17);
    CHECK(*ageOn(athlete, on("2026-03-01")) == 18);
    CHECK(*ageOn(athlete, on("2028-02-29")) == 20);
}
