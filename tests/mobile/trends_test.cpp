// What Trends says: did it work, in words and rows, judged or not.
#include <catch2/catch.hpp>

#include "mobile/views/trends_view_model.hpp"

using namespace fleetrung;
using namespace fleetrung::views;
using transfer::Lag;
using transfer::Transfer;
using transfer::Verdict;

namespace
{

Lag lagOf(int weeks, int pairs, double correlation, double reaches)
{
    Lag lag;
    lag.weeks = weeks;
    lag.pairs = pairs;
    lag.rungs = 4;
    lag.correlation = correlation;
    lag.chanceReaches = reaches;
    return lag;
}

Transfer together()
{
    Transfer found;
    found.verdict = Verdict::MovedTogether;
    found.lags = {lagOf(0, 20, 0.1, 0.55), lagOf(1, 19, -0.2, 0.56), lagOf(2, 18, 0.71, 0.58), lagOf(3, 17, 0.3, 0.6),
                  lagOf(4, 16, 0, 0.62)};
    found.strongest = 2;
    found.chance = 0.0125;
    found.sentence = "It shows that they moved together.";
    return found;
}

Transfer notEnough()
{
    Transfer found;
    found.lags.resize(5);
    for (int weeks = 0; weeks <= 4; ++weeks) {
        auto& lag = found.lags[static_cast<std::size_t>(weeks)];
        lag.weeks = weeks;
        lag.pairs = 9;
        lag.rungs = 2;
        lag.correlation = 0.9;
    }
    found.testsMissing = 3;
    found.sentence = "Not enough: 3 more tests, on 1 more rung.";
    return found;
}

QString textOf(const DidItWorkViewModel& view, int row, const char* role)
{
    return const_cast<DidItWorkViewModel&>(view).lags()->all()[row].value(QLatin1String(role)).toString();
}

} // namespace

TEST_CASE("Every lag stands with its weeks and what chance reaches, and no cause is claimed", "[trends]")
{
    Preferences preferences;
    preferences.setLocale(QLocale(QLocale::German, QLocale::Germany));
    DidItWorkViewModel view(&preferences);
    view.show(Expected<Transfer>(together()));
    CHECK(view.hasPicture());
    CHECK(view.sentence() == QStringLiteral("It shows that they moved together."));
    REQUIRE(view.lags()->count() == 5);
    CHECK(textOf(view, 2, "value") == QStringLiteral("+0,71"));
    CHECK(textOf(view, 2, "detail") == QStringLiteral("18 weeks with both, 4 rungs, chance reaches 0,58"));
    CHECK(view.chance().contains(QStringLiteral("1,3 of 100"))); // 1.25 rounds away from zero
    CHECK(view.toLog().isEmpty());
    CHECK(view.noProof().contains(QStringLiteral("no proof of cause")));
}

TEST_CASE("With too few tests no correlation is shown, but how far it is and what to log", "[trends]")
{
    Preferences preferences;
    DidItWorkViewModel view(&preferences);
    view.show(Expected<Transfer>(notEnough()));
    CHECK_FALSE(view.hasPicture());
    CHECK(view.chance().isEmpty());
    CHECK(view.sentence().contains(QStringLiteral("3 more tests")));
    REQUIRE(view.lags()->count() == 5);
    CHECK(textOf(view, 0, "value") == QStringLiteral("9 of 12"));
    CHECK_FALSE(textOf(view, 0, "detail").contains(QStringLiteral("0.9")));
    CHECK(view.toLog().contains(QStringLiteral("probe set")));
}

TEST_CASE("A season that cannot be judged says why, and without a season nothing is said", "[trends]")
{
    Preferences preferences;
    DidItWorkViewModel view(&preferences);
    CHECK_FALSE(view.hasSeason());
    CHECK(view.sentence().isEmpty());
    view.show(Expected<Transfer>(fail(Code::InvalidInput, "season", "is longer than 60 weeks")));
    CHECK(view.hasSeason());
    CHECK(view.verdict() == QStringLiteral("Not judged"));
    CHECK(view.sentence().contains(QStringLiteral("longer than 60 weeks")));
    CHECK(view.lags()->count() == 0);
}
