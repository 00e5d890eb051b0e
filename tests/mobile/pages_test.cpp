#include <catch2/catch.hpp>

#include "mobile/views/ladder_view_model.hpp"
#include "mobile/views/squad_view_model.hpp"
#include "mobile/views/track_view_model.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace Catch
{
template <> struct StringMaker<QString> {
    static std::string convert(const QString& text) { return text.toStdString(); }
};
} // namespace Catch

namespace
{

CivilDate day(const char* text)
{
    return *parseDate(text);
}

LadderPageData ladderWithDecision()
{
    season::Decision decision;
    decision.ladder = "squat";
    decision.kind = season::DecisionKind::Hold;
    decision.from = decision.to = "half";
    decision.reason = "Soon enough, but not yet steady.";
    season::EvidenceLine time;
    time.name = "time to peak";
    time.value = 291;
    time.uncertainty = 4;
    time.unit = "ms";
    time.allowed = "240–300";
    time.met = true;
    season::EvidenceLine trend;
    trend.name = "1RM trend";
    trend.value = 0.4;
    trend.uncertainty = 0.2;
    trend.unit = "kg";
    decision.evidence = {time, trend};
    LadderShown shown;
    shown.key = "squat";
    shown.name = "Squat";
    shown.rungKeys = {"full", "parallel", "half", "quarter"};
    shown.rungName = "Half squat";
    shown.decision = decision;
    LadderPageData data;
    data.ladders = {shown};
    data.week = 17;
    data.weeks = 30;
    data.daysToMain = 91;
    return data;
}

} // namespace

TEST_CASE("A decision stands in words, its evidence in marks that are no colour", "[ladder]")
{
    Preferences preferences;
    LadderViewModel view(&preferences);
    view.show(ladderWithDecision());
    CHECK(view.decisionTitle() == QStringLiteral("Hold at half squat today"));
    CHECK(view.competitionText() == QStringLiteral("13 weeks to the main competition"));
    REQUIRE(view.evidence()->count() == 2);
    const auto rows = view.evidence()->all();
    CHECK(rows[0].value(QStringLiteral("mark")).toInt() == 0);
    CHECK(rows[0].value(QStringLiteral("value")).toString() == QStringLiteral("291 ms"));
    CHECK(rows[1].value(QStringLiteral("mark")).toInt() == 2);
    preferences.setPounds(true);
    CHECK(view.evidence()->all()[1].value(QStringLiteral("value")).toString().endsWith(QStringLiteral("lb")));
}

TEST_CASE("Deciding otherwise needs a reason, and names the rung it leads to", "[ladder]")
{
    Preferences preferences;
    LadderViewModel view(&preferences);
    view.show(ladderWithDecision());
    QString to;
    QString why;
    bool followed = true;
    QObject::connect(&view, &LadderViewModel::answered,
                     [&](const Identifier&, bool f, const QString& changedTo, const QString& reason) {
                         followed = f;
                         to = changedTo;
                         why = reason;
                     });
    CHECK(view.otherChoices() == QStringList{QStringLiteral("Step"), QStringLiteral("Step back"),
                                             QStringLiteral("Ease"), QStringLiteral("Rest")});
    CHECK_FALSE(view.decideOtherwise(0, QStringLiteral("  ")).isEmpty());
    CHECK(view.canAnswer());
    CHECK(view.decideOtherwise(0, QStringLiteral("race moved")).isEmpty());
    CHECK_FALSE(followed);
    CHECK(to == QStringLiteral("quarter"));
    CHECK(why == QStringLiteral("race moved"));
    CHECK_FALSE(view.canAnswer());
}

TEST_CASE("A run is typed with decimal commas and comes out in SI", "[track][locale]")
{
    Preferences preferences;
    TrackViewModel view(&preferences);
    view.show(QStringLiteral("A"), day("2026-03-30"), {}, {});
    std::optional<store::Sprint> run;
    QObject::connect(&view, &TrackViewModel::runAdded, [&run](const store::Sprint& added) { run = added; });
    QVariantMap form{{QStringLiteral("distance"), QStringLiteral("60")},
                     {QStringLiteral("time"), QStringLiteral("7,12")},
                     {QStringLiteral("wind"), QStringLiteral("-0,4")},
                     {QStringLiteral("start"), 0},
                     {QStringLiteral("surface"), 1},
                     {QStringLiteral("timing"), 3},
                     {QStringLiteral("day"), QStringLiteral("2026-03-28")}};
    CHECK(view.addRun(form).isEmpty());
    REQUIRE(run.has_value());
    CHECK(run->time == 7.12);
    CHECK(*run->windMps == -0.4);
    CHECK(run->surface == "indoor");
    CHECK(run->run.trainingDay == day("2026-03-28"));
    form[QStringLiteral("time")] = QStringLiteral("3,9");
    CHECK(view.addRun(form).contains(QStringLiteral("time")));
}

TEST_CASE("Under eighteen an athlete is taken only with a guardian's consent", "[squad]")
{
    Preferences preferences;
    SquadViewModel view(&preferences);
    view.show({}, {}, "", day("2026-03-30"));
    int saved = 0;
    QObject::connect(&view, &SquadViewModel::saved, [&saved] { ++saved; });
    QVariantMap form{{QStringLiteral("name"), QStringLiteral("Ada  Example")},
                     {QStringLiteral("born"), QStringLiteral("2009-05-17")},
                     {QStringLiteral("years"), QStringLiteral("1")}};
    CHECK(view.save({}, form).contains(QStringLiteral("consent")));
    form[QStringLiteral("consent")] = true;
    CHECK(view.save({}, form).isEmpty());
    CHECK(saved == 1);
    form[QStringLiteral("born")] = QStringLiteral("2027-05-17");
    CHECK(view.save({}, form).contains(QStringLiteral("born")));
}

TEST_CASE("A list that grows keeps its rows", "[rows]")
{
    Rows rows({"key"}, nullptr);
    rows.show({{{QStringLiteral("key"), 1}}, {{QStringLiteral("key"), 2}}});
    int inserted = 0;
    int reset = 0;
    QObject::connect(&rows, &QAbstractItemModel::rowsInserted, [&inserted] { ++inserted; });
    QObject::connect(&rows, &QAbstractItemModel::modelReset, [&reset] { ++reset; });
    rows.show({{{QStringLiteral("key"), 1}}, {{QStringLiteral("key"), 2}}, {{QStringLiteral("key"), 3}}});
    CHECK(rows.count() == 3);
    CHECK(inserted == 1);
    CHECK(reset == 0);
    rows.show({});
    CHECK(rows.count() == 0);
}
