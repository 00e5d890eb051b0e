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

TEST_CASE("A box entered as 14 in stays 14 in for who thinks in inches and reads 36 cm for others", "[season][setup]")
{
    // 1 in = 25.4 mm exactly (international inch, 1959): 14 in are 35.56 cm, 45 cm are 17.7 in.
    const auto box = parseLength("14 in");
    REQUIRE(box);
    CHECK(box->metres() == Approx(0.3556).margin(1e-12));
    CHECK(lengthText(*box) == "14 in");
    CHECK(lengthText(*box, LengthUnit::Inch) == "14 in");
    CHECK(lengthText(*box, LengthUnit::Centimetre) == "36 cm");
    CHECK(lengthText(centimetres(45), LengthUnit::Inch) == "17.5 in");
    CHECK(lengthText(centimetres(25.5), LengthUnit::Centimetre) == "25.5 cm");
    CHECK(bandText(0.28, 0.42, LengthUnit::Centimetre) == "28-42 cm");
    CHECK(bandText(0.28, 0.42, LengthUnit::Inch) == "11-16.5 in");
    CHECK(*parseLength("36") == centimetres(36));
    CHECK(*parseLength("14", LengthUnit::Inch) == inches(14));
    for (const auto* wrong : {"", "in", "14 ft", "-3 cm", "0", "1e400 cm", "14 in in"}) {
        INFO(wrong);
        CHECK_FALSE(parseLength(wrong));
    }
}

TEST_CASE("Boxes may be listed in inches and centimetres, and are kept as they were entered", "[season][setup]")
{
    const auto season = parseSetup(seasonWith("\"box_heights_cm\": [45, 35, 25, 15, 10, 20, 30, 40]",
                                              "\"box_heights\": [\"14 in\", 45, \"36 cm\"]"));
    REQUIRE(season);
    CHECK(season->boxHeights == std::vector{inches(14), centimetres(45), centimetres(36)});
    const auto again = parseSetup(jsonText(setupJson(*season)));
    REQUIRE(again);
    CHECK(again->boxHeights == season->boxHeights);
    CHECK(errorOf(seasonWith("\"box_heights_cm\": [45,", "\"box_heights\": [\"14 ft\",")).place == "box_heights[0]");
    CHECK(errorOf(seasonWith("\"box_heights_cm\": [45,", "\"box_heights\": [500,")).place == "box_heights[0]");
}

TEST_CASE("A rung is named after the box the athlete has", "[season][setup]")
{
    auto season = setup();
    season.boxHeights = {inches(14), centimetres(45)};
    const auto& stepUp = *findLadder(standardSeasonData().ladders, "step-up");
    CHECK(stepUp.find("box-35")->name == "Step-up, 35 cm");
    CHECK(rungName(*stepUp.find("box-35"), season, LengthUnit::Inch) == "Step-up, 14 in");
    CHECK(rungName(*stepUp.find("box-35"), season, LengthUnit::Centimetre) == "Step-up, 36 cm");
    CHECK(rungName(*stepUp.find("box-45"), season, LengthUnit::Inch) == "Step-up, 17.5 in");
    CHECK(rungName(*stepUp.find("box-15"), season, LengthUnit::Centimetre) == "Step-up, 15 cm"); // no such box here
    CHECK(boxFor(*stepUp.find("box-15"), season) == nullptr);
    season.boxHeights = {centimetres(36), inches(14)}; // the nearest counts
    CHECK(rungName(*stepUp.find("box-35"), season, LengthUnit::Inch) == "Step-up, 14 in");
}

TEST_CASE("Blocks lie inside the season, do not end before they begin, and share no day with their like",
          "[season][setup]")
{
    const auto with = [](const std::string& blocks) {
        return seasonWith("\"start\": \"2026-01-05\"", "\"start\": \"2026-01-05\", \"blocks\": [" + blocks + "]");
    };
    const auto season = parseSetup(with(
        R"({"kind": "travel", "from": "2026-03-02", "to": "2026-03-08", "note": "camp"},
           {"kind": "injury", "from": "2026-01-05", "to": "2026-01-05", "region": "knee"},
           {"kind": "exam", "from": "2026-03-05", "to": "2026-08-02"})"));
    REQUIRE(season);
    REQUIRE(season->blocks.size() == 3);
    CHECK(season->blocks[0].region == "knee"); // by date
    const auto text = jsonText(setupJson(*season));
    CHECK(jsonText(setupJson(*parseSetup(text))) == text);
    CHECK(restBlockOn(*season, {"knee"}, on("2026-01-05")) != nullptr);
    CHECK(restBlockOn(*season, {"ankle"}, on("2026-01-05")) == nullptr);
    CHECK(restBlockOn(*season, {"ankle"}, on("2026-03-08"))->note == "camp");
    CHECK(restBlockOn(*season, {"ankle"}, on("2026-03-09")) == nullptr); // exams stop nothing
    CHECK(blockOn(*season, Block::Kind::Exam, on("2026-03-09")) != nullptr);

    CHECK(errorOf(with(R"({"kind": "travel", "from": "2026-03-08", "to": "2026-03-02"})")).place == "blocks[0].to");
    CHECK(errorOf(with(R"({"kind": "travel", "from": "2026-01-04", "to": "2026-01-06"})")).place == "blocks[0].from");
    CHECK(errorOf(with(R"({"kind": "travel", "from": "2026-08-01", "to": "2026-08-03"})")).place == "blocks[0].from");
    CHECK(errorOf(with(R"({"kind": "party", "from": "2026-03-01", "to": "2026-03-03"})")).place == "blocks[0].kind");
    CHECK(errorOf(with(R"({"kind": "injury", "from": "2026-03-01", "to": "2026-03-03", "region": "tail"})")).place ==
          "blocks[0].region");
    CHECK(errorOf(with(R"({"kind": "travel", "from": "2026-03-01", "to": "2026-03-03"},
                          {"kind": "travel", "from": "2026-03-03", "to": "2026-03-04"})"))
              .place == "blocks[1]");
}

TEST_CASE("Secondary lifts are kept with their days, sets and regions", "[season][setup]")
{
    const auto with = [](const std::string& lifts) {
        return seasonWith("\"start\": \"2026-01-05\"", "\"start\": \"2026-01-05\", \"secondary\": [" + lifts + "]");
    };
    const auto season = parseSetup(with(R"({"name": "Hip thrust", "days": ["fri", "mon"], "sets": 3, "repetitions": 8,
                                            "regions": ["hip"]})"));
    REQUIRE(season);
    CHECK(season->secondary.at(0).days == std::vector{1, 5});
    const auto text = jsonText(setupJson(*season));
    CHECK(jsonText(setupJson(*parseSetup(text))) == text);
    CHECK(errorOf(with(R"({"name": "Hip thrust", "lift": "no-such-lift", "sets": 3, "repetitions": 8})")).place ==
          "secondary[0].lift");
    CHECK(errorOf(with(R"({"name": "Hip thrust", "sets": 3, "repetitions": 8, "regions": ["tail"]})")).place ==
          "secondary[0].regions");
    CHECK(errorOf(with(R"({"name": "Hip thrust", "sets": 0, "repetitions": 8})")).place == "secondary[0].sets");
}

TEST_CASE("No plan under 7, and no drop jumps under 12", "[season][setup][caution]")
{
    // About 7-8 years: Faigenbaum et al. 2009, J Strength Cond Res 23(5 Suppl):S60-S79 (from memory). No depth jumps
    // for prepubescent athletes: handbook of the NSCA (read in a secondary source); 12 is a value of this project.
    auto season = setup();
    season.athlete.guardianConsent = true;
    season.ladders = {"squat"};
    season.athlete.birthDate = on("2019-01-06"); // 7 on the season's second day
    const auto refused = checkSetup(season);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == Code::Refused);
    CHECK(refused.error().place == "athlete.birth_date");
    season.athlete.birthDate = on("2019-01-05");
    CHECK(checkSetup(season));
    season.ladders = {"squat", "drop-jump"};
    season.athlete.birthDate = on("2014-01-06");
    CHECK(checkSetup(season).error().place == "ladders[1]");
    season.athlete.birthDate = on("2014-01-05");
    CHECK(checkSetup(season));
}
