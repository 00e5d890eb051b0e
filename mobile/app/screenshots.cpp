#include "mobile/app/screenshots.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QDir>

#include "mobile/app/photographer.hpp"
#include "mobile/app/sensor_pictures.hpp"

namespace fleetrung::app
{
namespace
{

/// The stored set that the open lift would replay.
logbook::SetView storedSet(views::LogThread& log, const Identifier& set, QObject* receiver)
{
    logbook::SetView stored;
    log.run(
        receiver, [set](logbook::Logbook& logbook) { return logbook.set(set); },
        [&stored](const Expected<logbook::SetView>& view) {
            if (view)
                stored = *view;
        });
    log.settle();
    return stored;
}

std::vector<reps::Repetition> repetitionsOf(const logbook::SetView& set)
{
    std::vector<reps::Repetition> repetitions;
    for (const auto& repetition : set.repetitions)
        if (!repetition.deleted)
            repetitions.push_back(logbook::engineRepetition(repetition.row));
    return repetitions;
}

/// A stored set as if it had been done today, its second repetition struck out.
void takeDoneSets(Photographer& photographer, views::AppViewModel& app, logbook::SetView set)
{
    auto& done = *app.doneSets();
    if (set.repetitions.size() > 1)
        set.repetitions[1].deleted = true;
    done.show({{.set = set, .name = app.bench()->openedLift()->name}});
    photographer.takeSheet(QStringLiteral("doneSetsSheet"), QStringLiteral("bench-sets-done"));
    done.open(done.sets()->all()[0].value(QStringLiteral("key")).toString());
    photographer.takeSheet(QStringLiteral("doneSetSheet"), QStringLiteral("bench-set-put-right"));
    done.show({});
}

/// Moves a repetition's time to peak, to show what the page says of one outside the band.
reps::Repetition withTimeToPeak(reps::Repetition repetition, double seconds)
{
    repetition.timeToPeakVelocity.value = seconds;
    return repetition;
}

/// The lift of the day that can be shown best: recorded before, and not done yet; a squat where there is one.
QString liftToShow(views::BenchViewModel& bench)
{
    QString best;
    for (const auto& row : bench.lifts()->all()) {
        const QString key = row.value(QStringLiteral("key")).toString();
        bench.openLift(key);
        const bool open = bench.openedLift()->replay && !row.value(QStringLiteral("done")).toBool();
        if (open && (best.isEmpty() || key == QStringLiteral("squat")))
            best = key;
    }
    return best;
}

/// A slow warm-up, and two who share the sensor.
void takeCheckAndSharers(Photographer& photographer, views::AppViewModel& app)
{
    views::BenchViewModel& bench = *app.bench();
    const views::BenchDay before = bench.day();
    views::BenchDay slow = before;
    for (auto& lift : slow.lifts) {
        if (lift.plan.ladder != bench.openedLift()->plan.ladder || lift.plan.warmUp.size() < 2)
            continue;
        season::DayAdjustment less;
        less.known = true;
        less.ladder = lift.plan.ladder;
        less.loadFactor = 0.95;
        less.setsOff = 1;
        less.reason = "Both warm-up loads were slower than usual.";
        for (std::size_t i = lift.plan.warmUp.size() - 2; i < lift.plan.warmUp.size(); ++i) {
            season::EvidenceLine line; // as season::warmUpCheck names it
            line.name = "slower than usual at " + bench.massText(lift.plan.warmUp[i].loadKg.value_or(0)).toStdString();
            line.value = 0.08;
            line.uncertainty = 0.03;
            line.unit = "m/s";
            line.allowed = "at most 0.060";
            less.evidence.push_back(line);
        }
        lift.check = views::WarmUpCheckShown{less, {}, {}};
    }
    bench.showDay(slow);
    bench.showSharers({{"a", before.athlete}, {"b", "Noor Beispiel"}, {"c", "Ada Example"}}, "a");
    photographer.take(QStringLiteral("bench-warm-up-check"));
    bench.showSharers({}, {});
    bench.showDay(before);
}

/// What the large number of the set is: as a tap on it asks.
void takeExplained(Photographer& photographer)
{
    photographer.tap(QStringLiteral("timeToPeak"));
    photographer.takeSheet(QStringLiteral("explainSheet"), QStringLiteral("bench-explained"));
}

void takeSetStates(Photographer& photographer, views::AppViewModel& app, views::LogThread& log)
{
    using views::BenchViewModel;
    BenchViewModel& bench = *app.bench();
    if (bench.lifts()->count() == 0)
        return;
    const QString shown = liftToShow(bench);
    if (!shown.isEmpty())
        bench.openLift(shown);
    photographer.take(QStringLiteral("bench-no-sensor"));
    photographer.takeSheet(QStringLiteral("typedSheet"), QStringLiteral("bench-typed-set"));
    photographer.takeSheetOver(QStringLiteral("typedSheet"), QStringLiteral("typedPlatesSheet"),
                               QStringLiteral("bench-plates"));
    photographer.takeSheet(QStringLiteral("loadChartSheet"), QStringLiteral("bench-load-chart"));
    if (!bench.openedLift()->replay)
        return;
    const auto stored = storedSet(log, *bench.openedLift()->replay, &app);
    const auto repetitions = repetitionsOf(stored);
    if (repetitions.empty())
        return;
    const QString sensor = QCoreApplication::translate("Sensor", "Bar sensor");
    const auto band = bench.openedLift()->plan.targetBand;
    takeCheckAndSharers(photographer, app);
    bench.setKind(BenchViewModel::Probe); // what was recorded last: the header names the load that it was done with

    bench.showSensor(BenchViewModel::Streaming, sensor);
    photographer.take(QStringLiteral("bench-streaming"));
    bench.addRepetition(repetitions.front());
    photographer.take(QStringLiteral("bench-first-repetition"));
    bench.showRepetitions(repetitions);
    photographer.take(QStringLiteral("bench-set"));
    takeExplained(photographer);
    auto outside = repetitions;
    outside.back() = withTimeToPeak(outside.back(), band.high + 0.024);
    bench.showRepetitions(outside);
    photographer.take(QStringLiteral("bench-outside-band"));
    auto tired = repetitions;
    reps::Repetition slow = tired.back();
    slow.meanVelocity.value = tired.front().meanVelocity.value * (1 - bench.openedLift()->plan.setStop - 0.06);
    slow.peakVelocity.value = tired.front().peakVelocity.value * (1 - bench.openedLift()->plan.setStop - 0.06);
    tired.push_back(slow);
    bench.showRepetitions(tired);
    photographer.take(QStringLiteral("bench-stop-now"));
    bench.showRepetitions(repetitions);
    bench.showSensor(BenchViewModel::Lost, sensor);
    photographer.take(QStringLiteral("bench-lost"));
    bench.showSensor(BenchViewModel::Ready, sensor);
    bench.showLastSet({.repetitions = static_cast<int>(repetitions.size()),
                       .timeToPeak = repetitions.front().timeToPeakVelocity.value,
                       .meanVelocity = repetitions.front().meanVelocity.value,
                       .loadKg = bench.loadKg().value_or(0)});
    photographer.take(QStringLiteral("bench-between-sets"));
    takeDoneSets(photographer, app, stored);
    bench.leaveLift();
}

/// Two splits typed, the third under way.
void takeSplits(Photographer& photographer, views::TrackViewModel& track)
{
    photographer.openSheet(QStringLiteral("runSheet"));
    views::SplitEntry& entry = *track.splits();
    entry.begin({});
    constexpr std::string_view under = "37";
    for (const std::string_view keys : {std::string_view("189"), std::string_view("288"), under}) {
        for (const char key : keys)
            entry.press(QString(QLatin1Char(key)));
        if (keys != under)
            entry.add(entry.distance());
    }
    photographer.takeSheet(QStringLiteral("splitSheet"), QStringLiteral("track-splits"));
    photographer.closeSheet(QStringLiteral("runSheet"));
}

/// Two trials typed, the third under way.
void takeJumps(Photographer& photographer, views::TrackViewModel& track)
{
    photographer.openSheet(QStringLiteral("jumpSheet"));
    for (const auto& [contact, flight] : {std::pair{"182", "505"}, std::pair{"178", "512"}})
        track.jumpEntry()->addTrial({{QStringLiteral("kind"), 0},
                                     {QStringLiteral("box"), QStringLiteral("30")},
                                     {QStringLiteral("contact"), QString::fromLatin1(contact)},
                                     {QStringLiteral("flight"), QString::fromLatin1(flight)}});
    photographer.take(QStringLiteral("track-add-jumps"));
    photographer.closeSheet(QStringLiteral("jumpSheet"));
}

/// The latest run with splits and the latest flying one, opened.
void takeRuns(Photographer& photographer, views::TrackViewModel& track, views::LogThread& log)
{
    for (const auto& [detail, name] : {std::pair{"splits", "track-run"}, std::pair{"run-in", "track-flying-run"}}) {
        const auto& rows = track.runs()->all();
        const auto run = std::ranges::find_if(rows, [detail = detail](const QVariantMap& row) {
            return row.value(QStringLiteral("detail")).toString().contains(QLatin1String(detail));
        });
        if (run == rows.end())
            continue;
        track.openRun(run->value(QStringLiteral("key")).toString());
        log.settle();
        photographer.takeSheet(QStringLiteral("runFitSheet"), QLatin1String(name));
    }
}

/// An invented file of gates: its folder is that of a screenshot's program, so the table is shown as it was read.
void takeImport(Photographer& photographer, views::AppViewModel& app, views::LogThread& log)
{
    const QString sheet = QStringLiteral("importSheet");
    app.imports()->begin(false);
    photographer.takeSheet(sheet, QStringLiteral("import-files"));
    for (const auto& [text, name] :
         {std::pair{"Name;Date;10 m;30 m;Wind\nMira Example;1.11.2025;1,85;4,02;0,3\nA guest;1.11.2025;1,95;4,20;\n"
                    "Mira Example;1.11.2025;abc;4,01;\n",
                    "import-runs"},
          std::pair{"Name;Date;Split 1;Split 2\nMira Example;3/4/2025;1,850;4,021\n", "import-question"}}) {
        const auto table = importing::readTable(text);
        if (!table)
            continue;
        app.imports()->showTable(std::make_shared<const importing::Table>(*table));
        log.settle();
        photographer.takeSheet(sheet, QLatin1String(name));
    }
    app.imports()->openColumn(2);
    photographer.takeSheetOver(sheet, QStringLiteral("pickSheet"), QStringLiteral("import-column"));
}

/// The steps of the stair, and the season as it is changed.
void takeSeason(Photographer& photographer, views::AppViewModel& app)
{
    const auto& steps = app.ladder()->steps()->all();
    int taken = -1;
    int ahead = -1;
    for (int i = 0; i < steps.size(); ++i) {
        const bool isTaken = steps[i].value(QStringLiteral("taken")).toBool();
        if (isTaken && i > 0)
            taken = i;
        if (!isTaken && ahead < 0)
            ahead = i;
    }
    if (app.ladder()->openStep(taken))
        photographer.takeSheet(QStringLiteral("stepSheet"), QStringLiteral("ladder-step-taken"));
    if (app.ladder()->openStep(ahead))
        photographer.takeSheet(QStringLiteral("stepSheet"), QStringLiteral("ladder-step-ahead"));
    photographer.takeSheet(QStringLiteral("stepsSheet"), QStringLiteral("ladder-steps"));
    photographer.takeSheet(QStringLiteral("premiseSheet"), QStringLiteral("ladder-premise"));
    const QString season = QStringLiteral("seasonEditSheet");
    photographer.takeSheet(season, QStringLiteral("season"));
    app.season()->editCompetition(app.season()->competitions()->count() - 1);
    app.season()->day()->move(-21);
    photographer.takeSheetOver(season, QStringLiteral("competitionSheet"), QStringLiteral("season-competition"));
    app.season()->editBlock(-1);
    photographer.takeSheetOver(season, QStringLiteral("blockSheet"), QStringLiteral("season-days-away"));
    const QString lifts = QStringLiteral("seasonLiftsSheet");
    photographer.takeSheet(lifts, QStringLiteral("season-lifts"));
    photographer.takeFormOver(lifts, QStringLiteral("secondarySheet"), -1, QStringLiteral("season-lift-beside"));
    app.seasonLifts()->beginOwn(0);
    photographer.takeSheetOver(lifts, QStringLiteral("ownSheet"), QStringLiteral("season-own-ladder"));
    photographer.takeFormOver(lifts, QStringLiteral("rungSheet"), 1, QStringLiteral("season-rung"));
}

/// Keeps the sets of the first ladder of the session, and of the others the probe set alone.
Expected<void> leaveHalfDone(logbook::Logbook& logbook, const Identifier& session)
{
    const auto sets = logbook.sets(session);
    if (!sets)
        return tl::unexpected(sets.error());
    for (const auto& set : *sets) {
        if (set.row.ladder == sets->front().row.ladder || set.row.kind != store::SetKind::Work)
            continue;
        if (const auto gone = logbook.deleteSet(set.row.id); !gone)
            return gone;
    }
    return {};
}

} // namespace

Expected<std::optional<CivilDate>> rehearseDay(logbook::Logbook& logbook)
{
    const auto squad = logbook.squad(CivilDate{});
    if (!squad)
        return tl::unexpected(squad.error());
    for (const auto& summary : *squad) {
        if (!summary.season)
            continue;
        auto sessions = logbook.sessions(summary.athlete.id);
        if (!sessions)
            return tl::unexpected(sessions.error());
        std::erase_if(*sessions, [](const store::Session& session) { return session.kind != "strength"; });
        if (sessions->empty())
            continue;
        const store::Session& session = (*sessions)[sessions->size() * 9 / 20];
        if (const auto left = leaveHalfDone(logbook, session.id); !left)
            return tl::unexpected(left.error());
        return std::optional(session.begun.trainingDay);
    }
    return std::optional<CivilDate>();
}

int saveScreenshots(QQuickWindow& window, views::AppViewModel& app, views::LogThread& log, const QString& folder,
                    QSize size)
{
    if (!QDir().mkpath(folder))
        return 0;
    window.resize(size);
    settle(200);
    Photographer photographer(window, app, folder);
    photographer.place(0);
    photographer.take(QStringLiteral("bench"));
    if (app.bench()->lifts()->count() > 0) {
        app.bench()->openWhy(app.bench()->lifts()->all().constFirst().value(QStringLiteral("key")).toString());
        photographer.takeSheet(QStringLiteral("whySheet"), QStringLiteral("bench-why"));
        photographer.takeSheet(QStringLiteral("wellnessSheet"), QStringLiteral("bench-how-are-you"));
    }
    takeSetStates(photographer, app, log);
    photographer.place(1);
    photographer.take(QStringLiteral("ladder"));
    if (app.ladder()->canAnswer())
        photographer.takeSheet(QStringLiteral("decideSheet"), QStringLiteral("ladder-decide-otherwise"));
    if (app.ladder()->hasSeason())
        takeSeason(photographer, app);
    if (app.ladder()->canPlan())
        photographer.takeSheet(QStringLiteral("seasonSheet"), QStringLiteral("ladder-plan-season"));
    photographer.place(2);
    photographer.take(QStringLiteral("track"));
    photographer.takeSheet(QStringLiteral("runSheet"), QStringLiteral("track-add-run"));
    takeSplits(photographer, *app.track());
    takeRuns(photographer, *app.track(), log);
    takeImport(photographer, app, log);
    photographer.takeSheet(QStringLiteral("bestsSheet"), QStringLiteral("track-bests"));
    app.track()->setTest(1);
    photographer.take(QStringLiteral("track-one-test"));
    app.track()->setTest(0);
    app.track()->setJumpsShown(true);
    photographer.take(QStringLiteral("track-jumps"));
    takeJumps(photographer, *app.track());
    app.track()->setJumpsShown(false);
    app.trackWork()->setShown(true);
    log.settle();
    photographer.take(QStringLiteral("track-work"));
    photographer.takeSheet(QStringLiteral("workSheet"), QStringLiteral("track-add-work"));
    app.trackWork()->setShown(false);
    photographer.place(3);
    photographer.take(QStringLiteral("trends"));
    if (app.trends()->loads()->hasLift())
        photographer.takePart(QStringLiteral("loads"), QStringLiteral("trends-loads"));
    photographer.takePart(QStringLiteral("didItWork"), QStringLiteral("trends-did-it-work"));
    photographer.takeSheet(QStringLiteral("howJudgedSheet"), QStringLiteral("trends-how-judged"));
    photographer.place(4);
    photographer.take(QStringLiteral("squad"));
    photographer.part(1);
    log.settle();
    photographer.take(QStringLiteral("squad-today"));
    photographer.part(2);
    photographer.take(QStringLiteral("squad-device"));
    takeSensors(photographer, app);
    photographer.part(0);
    photographer.takeSheet(QStringLiteral("athleteSheet"), QStringLiteral("squad-athlete"));
    photographer.takeSheet(QStringLiteral("cautions"), QStringLiteral("cautions"));
    return photographer.saved();
}

} // namespace fleetrung::app
