// Decisions taken again from what was kept with them, and what is found where something was tampered with.
#include "logbook_helper.hpp"

#include "engine/season/replay.hpp"
#include "engine/store/connection.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

constexpr std::chrono::days apart{4};

/// A season of `sessions` decision days; the full squat's peak comes sooner from session to session, one night is bad.
Filled played(Logbook& logbook, int sessions)
{
    const auto filled = fill(logbook);
    auto day = good(logbook.states(filled.season, date("2025-12-01"))).at(0).since();
    for (int i = 0; i < sessions; ++i, day += apart) {
        store::Wellness slept;
        slept.athlete = filled.athlete;
        slept.asked = at(day, 50000);
        slept.sleepHours = i == 3 ? 2 : 8;
        good(logbook.addWellness(slept));
        good(logbook.decide(filled.season, at(day)));
        typedSession(logbook, filled.athlete, day, 0.600 - 0.030 * std::max(0, i - 2), 0.50);
    }
    return filled;
}

void tamper(const Folder& folder, const std::string& sql)
{
    store::Connection file(folder.paths().rows, store::Access::ReadWrite);
    file.run(sql);
}

std::string textOf(const std::vector<ReplayedDay>& days)
{
    Json all = Json::array();
    for (const auto& day : days) {
        Json json{{"day", dateText(day.day)}, {"input", day.input}, {"plan", identifierText(day.plan)}};
        json["decisions"] = Json::array();
        for (const auto& decision : day.decisions)
            json["decisions"].push_back(season::decisionJson(decision));
        all.push_back(json);
    }
    return jsonText(all);
}

} // namespace

TEST_CASE("every stored decision comes out again from the input kept with it")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = played(logbook, 10);
    int calls = 0;
    const auto check = good(logbook.verifyDecisions(season, [&](int done, int all) {
        ++calls;
        return done < all;
    }));
    CHECK(check.checked == static_cast<int>(good(logbook.rows().list<store::Decision>()).size()));
    CHECK(check.checked >= 20);
    CHECK(check.differences.empty());
    CHECK(check.unchecked.empty());
    CHECK(calls >= 10);
    CHECK(codeOf(logbook.verifyDecisions(season, [](int, int) { return false; })) == Code::Cancelled);
    CHECK(good(logbook.verify()).empty());
}

TEST_CASE("later edits of the training do not change what a past decision was made from")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = played(logbook, 6);
    for (const auto& session : good(logbook.sessions(athlete)))
        good(logbook.deleteSession(session.id));
    CHECK(good(logbook.verifyDecisions(season)).differences.empty());
}

TEST_CASE("a decision that was tampered with is named with its day, ladder, field and both values")
{
    const Folder folder;
    Identifier season;
    {
        auto logbook = openLogbook(folder);
        season = played(logbook, 6).season;
    }
    tamper(folder, "UPDATE decision SET evidence = replace(evidence, '\"set_factor\":1.0', '\"set_factor\":0.5')"
                   " WHERE ladder = 'squat' AND rowid = (SELECT max(rowid) FROM decision WHERE ladder = 'squat')");
    tamper(folder, "UPDATE decision SET rung_to = 'quarter' WHERE ladder = 'squat' AND"
                   " rowid = (SELECT min(rowid) FROM decision WHERE ladder = 'squat')");
    auto logbook = openLogbook(folder);
    const auto found = good(logbook.verifyDecisions(season)).differences;
    REQUIRE(found.size() == 2);
    CHECK(found[0].difference.ladder == "squat");
    CHECK(found[0].difference.field == "to");
    CHECK(found[0].difference.stored == "quarter");
    CHECK(found[0].difference.derived == "full");
    CHECK(found[1].day > found[0].day);
    CHECK(found[1].difference.field == "set_factor");
    CHECK(found[1].difference.stored == "0.5");
    CHECK(found[1].difference.derived == "1.0");
}

TEST_CASE("a kept input that was tampered with is named, by the check of the files too")
{
    const Folder folder;
    Identifier season;
    {
        auto logbook = openLogbook(folder);
        season = played(logbook, 4).season;
    }
    SECTION("replaced by another input")
    {
        tamper(folder, "UPDATE document SET content = (SELECT content FROM document WHERE kind = 'day-input'"
                       " ORDER BY day LIMIT 1) WHERE day = (SELECT max(day) FROM document)");
    }
    SECTION("bytes that are no document")
    {
        tamper(folder, "UPDATE document SET content = x'0102' WHERE day = (SELECT max(day) FROM document)");
    }
    auto logbook = openLogbook(folder);
    const auto check = good(logbook.verifyDecisions(season));
    REQUIRE(check.differences.size() == 2); // squat and hinge of that day
    for (const auto& difference : check.differences)
        CHECK(difference.difference.field == "kept input");
    CHECK(good(logbook.verify()).size() == 1);
    CHECK_FALSE(logbook.replay(season));
}

TEST_CASE("decisions without kept inputs are readable and are told as such, no fault")
{
    const Folder folder;
    Identifier season;
    {
        auto logbook = openLogbook(folder);
        season = played(logbook, 3).season;
    }
    tamper(folder, "UPDATE decision SET input = NULL, rules = NULL, ordinal = 0");
    auto logbook = openLogbook(folder);
    CHECK(good(logbook.decisions(season)).size() == 6);
    const auto check = good(logbook.verifyDecisions(season));
    CHECK(check.checked == 0);
    CHECK(check.differences.empty());
    REQUIRE(check.unchecked.size() == 6);
    CHECK(check.unchecked[0].reason.starts_with("no inputs kept (made before"));
}

TEST_CASE("decisions on a ladder of the athlete's own come out again with it")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto athlete = good(logbook.addAthlete(longJumper()));
    auto setup = thirtyWeeks();
    auto own = *season::findLadder(season::standardSeasonData().ladders, "squat");
    own.key = "my-squat";
    own.name = "My squat";
    for (auto& rung : own.rungs)
        rung.origin = "user";
    setup.ownLadders = {own};
    setup.ladders = {"my-squat", "hinge"};
    const auto season = good(logbook.addSeason(athlete, setup));
    CHECK(good(logbook.decide(season, at(date("2026-01-07")))).at(0).ladder == "my-squat");
    const auto check = good(logbook.verifyDecisions(season));
    CHECK(check.checked == 2);
    CHECK(check.differences.empty());
    CHECK(good(logbook.replay(season)).at(0).decisions.at(0).ladder == "my-squat");
    CHECK(good(logbook.day(season, date("2026-01-07"))).states.at(0).ladder == "my-squat");
    CHECK(good(logbook.dueToday(date("2026-01-07"))).size() == 1);
    CHECK(good(logbook.seasonReport(athlete, season, date("2026-01-08"))).ladders.at(0).name == "My squat");
}

TEST_CASE("a ladder that joins in the tenth week is no layoff, and leaves the others where they stand")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = played(logbook, 12);
    const auto record = good(logbook.season(season));
    const auto joins = good(logbook.decisions(season)).back().decision.day + std::chrono::days{7};
    const auto before = good(logbook.states(season, joins));
    auto setup = record.setup;
    REQUIRE(std::ranges::find(setup.ladders, "pull") == setup.ladders.end());
    setup.ladders.emplace_back("pull");
    setup.ladderStarts = {{"pull", joins}};
    good(logbook.changeSeason(season, setup));
    const auto states = good(logbook.states(season, joins));
    REQUIRE(states.size() == before.size() + 1);
    for (std::size_t i = 0; i < before.size(); ++i)
        CHECK(states[i].rung() == before[i].rung());
    CHECK(states.back().since() == joins);
    for (auto day = joins; day < joins + std::chrono::days{21}; day += std::chrono::days{1})
        for (const auto& decision : good(logbook.decide(season, at(day))))
            if (decision.ladder == "pull") {
                INFO(decision.reason);
                CHECK(decision.kind == season::DecisionKind::Hold);
            }
    CHECK(good(logbook.verifyDecisions(season)).differences.empty());
}

TEST_CASE("inputs are kept once, and deciding again with the same outcome keeps none")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = played(logbook, 5);
    const auto documents = good(logbook.rows().list<store::Document>());
    CHECK(documents.size() == 6); // five days and the rules
    auto day = good(logbook.decisions(season)).back().decision.day;
    good(logbook.decide(season, at(day, 80000)));
    CHECK(good(logbook.rows().list<store::Document>()).size() == 6);
}

TEST_CASE("a season played twice, in two stores and with other names for its rows, is the same byte for byte")
{
    std::string first;
    for (const std::uint32_t firstId : {1U, 70000U}) {
        const Folder folder;
        auto logbook = openLogbook(folder, firstId);
        const auto [athlete, season] = played(logbook, 12);
        const auto days = good(logbook.replay(season));
        REQUIRE(days.size() == 12);
        const auto stored = good(logbook.decisions(season));
        std::size_t i = 0;
        for (const auto& day : days)
            for (const auto& decision : day.decisions) { // as they were stored, but for the name of the row
                auto expected = stored.at(i++).decision;
                expected.id = decision.id;
                CHECK(season::decisionJson(decision) == season::decisionJson(expected));
            }
        if (first.empty())
            first = textOf(days);
        CHECK(textOf(days) == first);
    }
}

TEST_CASE("a slow warm-up takes load and sets off the day, is kept, and a quicker one takes that back")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    auto day = good(logbook.states(season, date("2025-12-01"))).at(0).since();
    const auto warmUp = [&](double at60, double at70) {
        const auto session = good(logbook.openSession(athlete, "strength", at(day)));
        for (const auto& [load, velocity] : {std::pair(60.0, at60), std::pair(70.0, at70)}) {
            TypedRepetitions two;
            two.count = 2;
            two.meanVelocity = velocity;
            good(logbook.typeSet(squat(session, store::SetKind::WarmUp, load), two, at(day)));
        }
    };
    for (int i = 0; i < 4; ++i, day += apart) {
        warmUp(0.80, 0.72);
        typedSession(logbook, athlete, day, 0.6, 0.62);
    }
    good(logbook.decide(season, at(day)));
    const auto planned = good(logbook.day(season, day)).session;
    CHECK_FALSE(good(logbook.warmUpCheck(season, "squat", at(day))).known); // nothing lifted yet
    CHECK(good(logbook.day(season, day)).adjustments.empty());

    warmUp(0.60, 0.50);
    const auto slow = good(logbook.warmUpCheck(season, "squat", at(day)));
    INFO(slow.reason);
    REQUIRE(slow.known);
    CHECK(slow.loadFactor < 1);
    const auto lighter = good(logbook.day(season, day));
    REQUIRE(lighter.adjustments.size() == 1);
    const auto liftOf = [](const season::SessionPlan& session) {
        return *std::ranges::find(session.lifts, "squat", &season::PlannedLift::ladder);
    };
    CHECK(*liftOf(lighter.session).work.at(0).loadKg < *liftOf(planned).work.at(0).loadKg);
    CHECK(liftOf(lighter.session).work.size() < liftOf(planned).work.size());
    CHECK(lighter.states.at(0).rung() == "full"); // never moves the ladder
    good(logbook.warmUpCheck(season, "squat", at(day)));
    CHECK(good(logbook.rows().list<store::Document>({.from = day, .to = day})).size() == 2); // the input and one check

    good(logbook.answerWarmUpCheck(season, "squat", false, "the bar slipped", at(day)));
    const auto declined = good(logbook.day(season, day));
    CHECK(declined.adjustments.empty());
    REQUIRE(declined.warmUpAnswers.size() == 1);
    CHECK(declined.warmUpAnswers[0].why == "the bar slipped");
    CHECK(*liftOf(declined.session).work.at(0).loadKg == *liftOf(planned).work.at(0).loadKg);
    CHECK(good(logbook.proposedAdjustment(season, "squat", day)).loadFactor == slow.loadFactor); // still said

    warmUp(0.80, 0.73); // after a longer warm-up
    CHECK(good(logbook.warmUpCheck(season, "squat", at(day))).loadFactor == 1.0);
    CHECK(*liftOf(good(logbook.day(season, day)).session).work.at(0).loadKg == *liftOf(planned).work.at(0).loadKg);
}
