#include <catch2/catch.hpp>

#include "tests/engine/season/example.hpp"

using namespace fleetrung;
using namespace fleetrung::season;
using namespace fleetrung::season::example;

namespace
{

const Rules& rules()
{
    return standardSeasonData().rules;
}

void checkCovered(const std::vector<PhaseSpan>& spans, CivilDate from, CivilDate to)
{
    REQUIRE_FALSE(spans.empty());
    CHECK(spans.front().from == from);
    CHECK(spans.back().to == to);
    for (std::size_t i = 0; i < spans.size(); ++i) {
        CHECK(spans[i].from <= spans[i].to);
        if (i > 0)
            CHECK(spans[i].from == spans[i - 1].to + std::chrono::days(1));
    }
}

SeasonSetup seasonOf(const char* start, std::vector<Competition> competitions)
{
    auto result = setup();
    result.start = on(start);
    result.competitions = std::move(competitions);
    return result;
}

} // namespace

TEST_CASE("Thirty weeks are laid backwards from the main race: general, special, pre-competition, competition, taper",
          "[season][phases]")
{
    const auto layout = layPhases(setup(), rules());
    std::vector<PhaseKind> kinds;
    for (const auto& span : layout.spans)
        kinds.push_back(span.kind);
    CHECK(kinds == std::vector<PhaseKind>{PhaseKind::GeneralPreparation, PhaseKind::SpecialPreparation,
                                          PhaseKind::PreCompetition, PhaseKind::Competition, PhaseKind::Taper});
    checkCovered(layout.spans, on("2026-01-05"), on("2026-08-02"));
    CHECK(daysBetween(layout.spans.back().from, layout.spans.back().to) + 1 == 14);
    CHECK(layout.notes.empty());
    for (const auto& span : layout.spans)
        CHECK(daysBetween(span.from, span.to) + 1 >= rules().phases[static_cast<std::size_t>(span.kind)].minimumDays);
}

TEST_CASE("Every day of seasons of every length lies in exactly one phase", "[season][phases]")
{
    for (int length = 1; length <= 500; ++length) {
        INFO("days to the race: " << length);
        const auto main = on("2027-07-04");
        auto season = seasonOf("2027-07-03", {{main, "Race", Priority::A, true}});
        season.start = main - std::chrono::days(length);
        checkCovered(layPhases(season, rules()).spans, season.start, main);
    }
}

TEST_CASE("Phases cross the year's end and the leap day without losing a day", "[season][phases]")
{
    // 2028 is a leap year: from 1 October 2027 to 1 March 2028 there are 153 days, the first and last included.
    const auto season = seasonOf("2027-10-01", {{on("2028-03-01"), "Indoor race", Priority::A, true}});
    const auto layout = layPhases(season, rules());
    checkCovered(layout.spans, on("2027-10-01"), on("2028-03-01"));
    int days = 0;
    for (const auto& span : layout.spans)
        days += daysBetween(span.from, span.to) + 1;
    CHECK(days == 153);
    CHECK(phaseOn(layout.spans, on("2028-02-29"))->kind == PhaseKind::Taper);
    CHECK(phaseOn(layout.spans, on("2027-12-31")) != nullptr);
    CHECK(phaseOn(layout.spans, on("2028-03-02")) == nullptr);
}

TEST_CASE("Two peaks make two macrocycles with a transition between", "[season][phases]")
{
    auto season = seasonOf("2026-10-05", {{on("2027-02-20"), "Indoor race", Priority::A, true},
                                          {on("2027-07-17"), "Outdoor race", Priority::A, true},
                                          {on("2027-07-31"), "Club race", Priority::C, false}});
    season.end = on("2027-08-31");
    const auto layout = layPhases(season, rules());
    checkCovered(layout.spans, on("2026-10-05"), on("2027-08-31"));
    CHECK(phaseOn(layout.spans, on("2027-02-20"))->kind == PhaseKind::Taper);
    CHECK(phaseOn(layout.spans, on("2027-02-21"))->kind == PhaseKind::Transition);
    CHECK(phaseOn(layout.spans, on("2027-02-21"))->macrocycle == 1);
    CHECK(phaseOn(layout.spans, on("2027-07-17"))->kind == PhaseKind::Taper);
    CHECK(phaseOn(layout.spans, on("2027-07-31"))->kind == PhaseKind::Competition); // a race after the main one
    CHECK(phaseOn(layout.spans, on("2027-08-31"))->kind == PhaseKind::Transition);
}

TEST_CASE("Too little time is said, with what is compressed", "[season][phases]")
{
    const auto layout = layPhases(seasonOf("2026-05-04", {{on("2026-06-28"), "Race", Priority::A, true}}), rules());
    REQUIRE(layout.notes.size() == 1);
    CHECK(layout.notes[0].find("Too little time before Race") == 0);
    CHECK(layout.notes[0].find("general preparation is compressed to") != std::string::npos);
}

TEST_CASE("The taper cuts volume exponentially by 41 to 60 % in all", "[season][phases][published]")
{
    // Bosquet et al. 2007, doi:10.1249/mss.0b013e31806010e0: two weeks, exponential, 41-60 % (mostly endurance sport).
    const auto season = setup();
    const auto layout = layPhases(season, rules());
    const auto& taper = layout.spans.back();
    const double before = volumeShare(season, layout.spans, rules(), taper.from - std::chrono::days(1));
    double sum = 0, previous = before;
    for (auto day = taper.from; day <= taper.to; day += std::chrono::days(1)) {
        const double share = volumeShare(season, layout.spans, rules(), day);
        CHECK(share < previous);
        previous = share;
        sum += share;
    }
    const double cut = 1 - sum / (14 * before);
    CHECK(cut > 0.41);
    CHECK(cut < 0.60);
    CHECK(cut == Approx(0.5).margin(0.01));
}

TEST_CASE("A B competition takes 30 % of volume for four days, a C competition is trained through", "[season][phases]")
{
    const auto season = setup();
    const auto layout = layPhases(season, rules());
    const auto share = [&](const char* day) { return volumeShare(season, layout.spans, rules(), on(day)); };
    CHECK(share("2026-07-01") == Approx(0.7 * share("2026-06-28")));
    CHECK(share("2026-07-06") == Approx(share("2026-06-28")));
    CHECK(share("2026-06-12") == Approx(share("2026-06-05")));
}
