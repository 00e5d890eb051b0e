#include "driver.hpp"

#include <algorithm>
#include <cmath>

#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QQmlEngine>
#include <QThread>

#include "demo/simulator/simulator.hpp"
#include "engine/base/numbers.hpp"
#include "engine/sprint/model.hpp"
#include "mobile/logbook/track_log.hpp"
#include "mobile/views/new_identifier.hpp"
#include "mobile/views/replay_source.hpp"

namespace fleetrung::tests
{
namespace
{

using namespace views;

CivilDate day(const char* text)
{
    return *parseDate(text);
}

const CivilDate first = day("2025-11-03");
const CivilDate today = day("2026-03-30");

plot::SeasonSpan seasonSpan()
{
    return {.first = first,
            .last = day("2026-06-07"),
            .today = today,
            .phases = {{"general preparation", first, day("2026-01-25")},
                       {"special preparation", day("2026-01-26"), day("2026-04-26")},
                       {"competition", day("2026-04-27"), day("2026-06-07")}},
            .races = {{day("2026-05-17"), "Evening meet", false}, {day("2026-06-06"), "Championship", true}}};
}

season::EvidenceLine evidenceLine(const char* name, double value, double uncertainty, const char* unit,
                                  const char* allowed, bool met)
{
    season::EvidenceLine line;
    line.name = name;
    line.value = value;
    line.uncertainty = uncertainty;
    line.unit = unit;
    line.allowed = allowed;
    line.met = met;
    return line;
}

std::vector<StairStep> squatSteps(const season::Decision& latest)
{
    season::Decision step;
    step.rule = "step-for-evidence";
    step.reason = "Sooner by 40 ms since 2026-01-05, and strength is not lost.";
    step.evidence = {evidenceLine("time to peak, gain", 40, 9, "ms", "at least 27", true)};
    StairStep full;
    full.rungName = "Full squat";
    full.taken = true;
    full.from = first;
    full.to = day("2026-01-04");
    full.week = 1;
    StairStep half;
    half.rung = 2;
    half.rungName = "Half squat";
    half.taken = true;
    half.from = day("2026-02-16");
    half.to = today;
    half.underWay = true;
    half.week = 16;
    half.decision = step;
    half.answer = DecisionAnswer{};
    half.sessions = 9;
    half.firstLoadKg = half.lastLoadKg = 100;
    StairStep quarter;
    quarter.rung = 3;
    quarter.rungName = "Quarter squat";
    quarter.from = day("2026-04-06");
    quarter.week = 23;
    quarter.next = true;
    quarter.firstPlanned = day("2026-03-23");
    quarter.earliest = day("2026-04-01");
    quarter.latest = day("2026-04-20");
    quarter.decision = latest;
    return {full, half, quarter};
}

season::SeasonSetup outdoorSetup()
{
    season::SeasonSetup setup;
    setup.name = "Outdoor 2026";
    setup.start = first;
    setup.competitions = {
        {.date = day("2026-06-06"), .name = "Championship", .priority = season::Priority::A, .main = true}};
    setup.trainingDays = {1, 3, 5};
    setup.sprintDays = {2, 6};
    setup.equipment = {"bar", "rack", "pins", "blocks"};
    setup.ladders = {"squat", "clean"};
    return setup;
}

LadderShown squatLadder()
{
    LadderShown shown;
    shown.key = "squat";
    shown.name = "Squat";
    shown.rungKeys = {"full", "parallel", "half", "quarter", "pins", "drop"};
    shown.stair.ladder = "Squat";
    shown.stair.rungs = {"Full", "Parallel", "Half", "Quarter", "Quarter from pins", "Short drop"};
    shown.stair.planned = {{0, first, day("2025-12-21")},
                           {1, day("2025-12-22"), day("2026-02-01")},
                           {2, day("2026-02-02"), day("2026-03-22")},
                           {3, day("2026-03-23"), day("2026-06-07")}};
    shown.stair.taken = {
        {0, first, day("2026-01-04")}, {1, day("2026-01-05"), day("2026-02-15")}, {2, day("2026-02-16"), today}};
    shown.stair.season = seasonSpan();
    season::Decision decision;
    decision.ladder = "squat";
    decision.from = decision.to = "half";
    decision.reason = "Soon enough, but not yet steady.";
    decision.evidence = {evidenceLine("time to peak", 291, 4, "ms", "240–300", true),
                         evidenceLine("spread", 26, 0, "ms", "up to 18", false),
                         evidenceLine("range", 34, 0, "cm", "32–38", true)};
    shown.decision = decision;
    shown.rungName = "Half squat";
    shown.steps = squatSteps(decision);
    shown.nextWeek = 23;
    shown.latestWeek = 25;
    return shown;
}

template <class T> T* owned(T* object)
{
    QQmlEngine::setObjectOwnership(object, QQmlEngine::CppOwnership);
    return object;
}

} // namespace

Driver::Driver()
{
    preferences_.setLocale(QLocale(QLocale::English, QLocale::UnitedKingdom));
    preferences_.setAppearance(Preferences::Dark);
    preferences_.setCautionsRead(true);
}

Driver::~Driver() = default;

Preferences* Driver::preferences()
{
    return owned(&preferences_);
}

namespace
{

BenchDay squatDay()
{
    BenchLift lift;
    lift.plan.ladder = "squat";
    lift.plan.rung = "half";
    lift.plan.lift = "half-squat";
    lift.plan.work = {{.repetitions = 5, .loadKg = 140.0}, {.repetitions = 5, .loadKg = 140.0}};
    lift.plan.setStop = 0.15;
    lift.plan.targetBand = {0.240, 0.300};
    lift.plan.range = {0.32, 0.38};
    lift.plan.warmUp = {{.repetitions = 3, .loadKg = 84.0}, {.repetitions = 2, .loadKg = 98.0}};
    lift.plan.maintenance =
        season::MaintenanceSets{"full", {{.repetitions = 3, .loadKg = 120.0}}, "Left on 2026-02-16."};
    lift.maintenanceName = "Full squat";
    lift.maintenanceLift = "full-squat";
    lift.plan.why = {{"rung", "Half squat since 2026-02-16: the step before was for evidence."},
                     {"load", "140 kg is within 10 % of the last seven days."}};
    lift.name = "Half squat";
    lift.ladder = "Squat";
    lift.rungNumber = 3;
    lift.rungCount = 6;
    BenchDay data;
    data.day = today;
    data.athlete = "Mira Example-Longsurname";
    data.phase = QStringLiteral("special preparation");
    data.week = QStringLiteral("week 22 of 31");
    data.notes = {"The clean rests: its competition is on 2026-04-01."};
    data.lifts = {lift};
    season::SecondaryLift thrust;
    thrust.name = "Hip thrust";
    data.others = {OtherLift{thrust, 0, 80.0}};
    return data;
}

} // namespace

BenchViewModel* Driver::bench()
{
    auto* view = owned(new BenchViewModel(&preferences_, this));
    view->showDay(squatDay());
    return view;
}

BenchViewModel* Driver::benchAfterSlowWarmUp()
{
    season::DayAdjustment slow;
    slow.ladder = "squat";
    slow.known = true;
    slow.loadFactor = 0.95;
    slow.setsOff = 1;
    slow.reason = "Both warm-up loads were slower than usual by more than 1.5 typical errors.";
    slow.evidence = {evidenceLine("velocity at 84 kg", -0.08, 0.03, "m/s", "not below -0.06", false),
                     evidenceLine("velocity at 98 kg", -0.07, 0.03, "m/s", "not below -0.06", false)};
    BenchDay data = squatDay();
    data.lifts.front().check = WarmUpCheckShown{slow, {}, {}};
    auto* view = owned(new BenchViewModel(&preferences_, this));
    view->showDay(data);
    return view;
}

void Driver::repetition(BenchViewModel* bench, double milliseconds, double velocity)
{
    reps::Repetition repetition;
    repetition.timeToPeakVelocity = {milliseconds / 1000, 0.004};
    repetition.meanVelocity = {velocity, 0.01};
    repetition.peakVelocity = {velocity * 1.6, 0.02};
    repetition.range = {0.34, 0.004};
    bench->addRepetition(repetition);
}

void Driver::sensor(BenchViewModel* bench, int state)
{
    bench->showSensor(static_cast<BenchViewModel::Sensor>(state), QStringLiteral("Bar sensor"), 200);
}

void Driver::share(BenchViewModel* bench)
{
    bench->showSharers({{"a", "Mira Example-Longsurname"}, {"b", "Noor Example"}}, "a");
}

BenchViewModel* Driver::emptyBench()
{
    BenchDay data;
    data.emptyTitle = QStringLiteral("No season yet");
    data.emptyText = QStringLiteral("Plan a season on Ladder.");
    auto* view = owned(new BenchViewModel(&preferences_, this));
    view->showDay(data);
    return view;
}

LadderViewModel* Driver::ladder()
{
    LadderPageData data;
    data.ladders = {squatLadder()};
    data.week = 22;
    data.weeks = 31;
    data.phase = QStringLiteral("special preparation");
    data.daysToMain = 68;
    auto* view = owned(new LadderViewModel(&preferences_, this));
    view->show(data);
    return view;
}

bool Driver::speakPseudo(bool on)
{
    const bool loaded = translations_.install(on ? QStringLiteral(FLEETRUNG_PSEUDO_LANGUAGE) : QString());
    emit preferences_.languageChanged(); // what a real change tells
    translations_.install(on ? QStringLiteral(FLEETRUNG_PSEUDO_LANGUAGE) : QString());
    emit preferences_.unitsChanged();
    if (app_) {
        settle();
        app_->refresh(); // what was read meanwhile may have been worded in between
        settle();
    }
    return loaded;
}

void Driver::mirror(bool on)
{
    QGuiApplication::setLayoutDirection(on ? Qt::RightToLeft : Qt::LeftToRight);
}

LadderViewModel* Driver::emptyLadder()
{
    LadderPageData data;
    data.canPlan = true;
    data.emptyTitle = QStringLiteral("A season is planned backwards");
    data.emptyText = QStringLiteral("Say when the main competition is.");
    auto* view = owned(new LadderViewModel(&preferences_, this));
    view->show(data);
    return view;
}

namespace
{

/// The season that both its pages show, on its first day.
std::optional<SeasonShown> shownSeason()
{
    season::SeasonSetup setup = outdoorSetup();
    setup.competitions.insert(setup.competitions.begin(),
                              {.date = day("2026-05-17"), .name = "Evening meet", .priority = season::Priority::C});
    const auto fresh = season::planSeason(setup);
    if (!fresh) {
        qWarning("%s", describe(fresh.error()).c_str());
        return std::nullopt;
    }
    const auto states = season::startStates(*fresh);
    return SeasonShown{*season::replanSeason(setup, states, today), states, today};
}

} // namespace

SeasonViewModel* Driver::season()
{
    auto* view = owned(new SeasonViewModel(&preferences_, this));
    view->show(shownSeason());
    return view;
}

SeasonLiftsViewModel* Driver::seasonLifts()
{
    auto* view = owned(new SeasonLiftsViewModel(&preferences_, this));
    view->show(shownSeason());
    return view;
}

DoneSetsViewModel* Driver::doneSets()
{
    auto* view = owned(new DoneSetsViewModel(&preferences_, this));
    DoneSet done{.set = {}, .name = "Half squat"};
    done.set.row.id.bytes[15] = 7;
    done.set.row.ladder = "squat";
    done.set.row.loadKg = 140;
    done.set.measured = true;
    done.set.done = 2;
    for (const double time : {0.286, 0.301}) {
        logbook::RepetitionView repetition;
        repetition.row.id.bytes[15] = static_cast<std::uint8_t>(done.set.repetitions.size() + 1);
        repetition.row.timeToPeakVelocity.value = time;
        repetition.row.meanVelocity.value = 0.6;
        done.set.repetitions.push_back(repetition);
    }
    done.set.repetitions.back().row.flags = static_cast<std::int64_t>(reps::Flag::ShortRange);
    std::vector<DoneSet> sets{done};
    for (int i = 0; i < 3; ++i) {
        sets.push_back({.set = {}, .name = "Clean from the floor"});
        sets.back().set.row.id.bytes[15] = static_cast<std::uint8_t>(20 + i);
        sets.back().set.row.ladder = "clean";
    }
    view->show(sets);
    return view;
}

SquadDayViewModel* Driver::squadDay(int athletes)
{
    preferences_.setRacks(2);
    auto* view = owned(new SquadDayViewModel(&preferences_, this));
    std::vector<Sharer> squad;
    std::vector<season::DueAthlete> due;
    for (int i = 0; i < athletes; ++i) {
        season::DueAthlete athlete;
        athlete.athlete.bytes[15] = static_cast<std::uint8_t>(i);
        athlete.name = "Athlete Number" + std::to_string(i);
        athlete.group = i % 2 == 0 ? "A" : "B";
        athlete.session.day = today;
        season::PlannedLift lift = squatDay().lifts.front().plan;
        lift.work.front().loadKg = 100.0 + i;
        athlete.session.lifts = {lift};
        squad.push_back({identifierText(athlete.athlete), athlete.name});
        due.push_back(athlete);
    }
    view->showSquad(squad);
    view->show(due);
    return view;
}

TrackViewModel* Driver::track(int runs)
{
    std::vector<store::Sprint> shown;
    for (int i = 0; i < runs; ++i) {
        store::Sprint run;
        run.id.bytes[15] = static_cast<std::uint8_t>(i);
        run.run.trainingDay = first + std::chrono::days{i};
        run.distance = 60;
        run.time = 7.4 - 0.001 * i;
        run.start = "block";
        run.timing = "gates";
        run.surface = "indoor";
        run.windMps = 0.4;
        const sprint::Model model{.vmax = 9.4 + 0.01 * i, .tau = 1.2};
        for (const double distance : {5.0, 10.0, 20.0, 30.0, 40.0, 60.0})
            run.splits.push_back({distance, 0.17 + roundTo(model.timeTo(distance), 100)});
        shown.push_back(run);
    }
    auto* view = owned(new TrackViewModel(&preferences_, this));
    view->show(QStringLiteral("Mira Example"), today, shown, {});
    connect(view, &TrackViewModel::runOpened, view, [view, shown](const Identifier& id, bool useAll) {
        store::Athlete mira;
        mira.bodyMassKg = 61;
        mira.statureM = 1.70;
        view->showRun(logbook::runStory(*std::ranges::find(shown, id, &store::Sprint::id), shown, mira, useAll));
    });
    return view;
}

TrackWorkViewModel* Driver::trackWork(int weeks)
{
    TrackWorkData data;
    std::vector<track::Work> done;
    for (int week = weeks - 1; week >= 0; --week) {
        store::TrackWork row;
        row.id.bytes[15] = static_cast<std::uint8_t>(week + 1);
        row.done.trainingDay = today - std::chrono::days{7 * week};
        row.kind = "resisted";
        row.distance = 30;
        row.repetitions = week == 0 ? 30 : 20;
        row.effort = 8;
        row.loadKg = 10;
        row.restS = 180;
        row.surface = "track";
        row.shoes = "spikes";
        done.push_back(logbook::workOf(row));
        data.work.push_back({row, track::fastMetres(done.back(), std::nullopt)});
    }
    if (weeks > 0)
        data.weeks = track::weeks({}, done, {}, today - std::chrono::days{7 * (weeks - 1)}, today);
    auto* view = owned(new TrackWorkViewModel(&preferences_, this));
    view->show(today, std::move(data));
    return view;
}

TrendsViewModel* Driver::trends()
{
    LadderTrend squat{.name = "Squat", .quantity = "time to peak velocity", .points = {}};
    for (int i = 0; i < 8; ++i) {
        LiftPoint point;
        point.day = today - std::chrono::days{56 - 7 * i};
        point.rung = "Half squat";
        point.targetBand = plot::Span{0.24, 0.30};
        point.seconds = 0.34 - 0.006 * i;
        point.uncertainty = 0.006;
        point.loadKg = 120;
        point.note = i == 3 ? "slept badly" : "";
        point.sets = {{.kind = "probe",
                       .loadKg = 120,
                       .repetitions = 3,
                       .fastest = 0.62,
                       .velocityLoss = {},
                       .effort = {},
                       .note = {}},
                      {.kind = "work",
                       .loadKg = 140,
                       .repetitions = 5,
                       .fastest = 0.51,
                       .velocityLoss = 0.12,
                       .effort = {},
                       .note = {}}};
        squat.points.push_back(point);
    }
    LadderTrend stepUp{.name = "Step-up", .quantity = "time to peak velocity", .points = {}};
    for (int i = 0; i < 6; ++i)
        for (const auto side : {plot::Side::Left, plot::Side::Right}) {
            LiftPoint point;
            point.day = today - std::chrono::days{120 - 7 * i};
            point.rung = "35 cm";
            point.seconds = 0.44 - 0.004 * i + (side == plot::Side::Left ? 0.02 : 0);
            point.side = side;
            stepUp.points.push_back(point);
        }
    TestTrend flying{.name = "flying 20 m", .points = {}};
    for (int i = 0; i < 5; ++i) {
        RunPoint run;
        run.day = today - std::chrono::days{100 - 21 * i};
        run.seconds = 2.14 - 0.01 * i;
        run.windMps = i == 4 ? 2.6 : 0.3;
        run.timing = i == 0 ? "hand" : "gates";
        run.surface = "track";
        flying.points.push_back(run);
    }
    TrendsData data;
    data.athlete = QStringLiteral("Mira Example");
    report::LoadVelocity loads;
    for (int day = 0; day < 6; ++day)
        for (const double load : {60.0, 90.0, 120.0}) {
            loads.points.push_back({load, 1.3 - 0.0065 * load + 0.02 * std::sin(2.0 * day + load)});
            loads.days.push_back(today - std::chrono::days{40 - 7 * day});
        }
    loads.sessions = 6;
    loads.curve = strength::loadVelocityCurve(loads.points, "half-squat");
    report::LoadVelocity none;
    none.curve = strength::loadVelocityCurve({}, "step-up");
    data.season = {.name = "Outdoor 2026",
                   .span = seasonSpan(),
                   .ladders = {squat, stepUp},
                   .tests = {flying},
                   .loads = {{"Squat", "Half squat", {loads}}, {"Step-up", "Step-up, 35 cm", {none}}}};
    auto* view = owned(new TrendsViewModel(&preferences_, this));
    view->show(data);
    return view;
}

TrendsViewModel* Driver::emptyTrends()
{
    return owned(new TrendsViewModel(&preferences_, this));
}

void Driver::judge(TrendsViewModel* trends, bool enough)
{
    transfer::Transfer found;
    for (int weeks = 0; weeks <= transfer::longestLag; ++weeks) {
        auto& lag = found.lags.emplace_back();
        lag.weeks = weeks;
        lag.pairs = enough ? 18 - weeks : 9;
        lag.rungs = enough ? 4 : 2;
        lag.correlation = weeks == 2 ? 0.72 : 0.1 * weeks - 0.2;
        lag.low = *lag.correlation - 0.25;
        lag.high = *lag.correlation + 0.2;
        if (enough)
            lag.chanceReaches = 0.55 + 0.01 * weeks;
    }
    found.verdict = enough ? transfer::Verdict::MovedTogether : transfer::Verdict::NotEnough;
    if (enough)
        found.chance = 0.012;
    found.sentence =
        enough ? "In the weeks when the bar was quicker within a rung, sprint times (flying 20 m) were better "
                 "than the season's trend 2 weeks later: rank correlation 0.72 over 16 weeks and 4 rungs; chance "
                 "alone gives as much in 1.2 of 100 such seasons. It shows that they moved together, not that "
                 "one caused the other."
               : "Not enough: 3 more tests, on 1 more rung (flying 20 m). Each counts in a further week, with the "
                 "bar measured in that week and the four before.";
    trends->didItWork()->show(Expected<transfer::Transfer>(std::move(found)));
}

SquadViewModel* Driver::squad(int athletes)
{
    std::vector<AthleteShown> shown;
    for (int i = 0; i < athletes; ++i) {
        AthleteShown athlete;
        athlete.key = std::to_string(i);
        athlete.name = "Athlete Number" + std::to_string(i);
        athlete.born = day("2001-04-01");
        athlete.event = "200 m";
        shown.push_back(athlete);
    }
    auto* view = owned(new SquadViewModel(&preferences_, this));
    view->show(shown, {}, athletes > 0 ? "0" : "", today);
    return view;
}

store::StorePaths Driver::ownPaths() const
{
    return {.rows = folder_.filePath(store_ + QStringLiteral(".fleetrung")).toStdString(),
            .captures = folder_.filePath(store_ + QStringLiteral(".captures")).toStdString()};
}

AppViewModel* Driver::app()
{
    app_.reset();
    log_.reset();
    static int stores = 0;
    store_ = QStringLiteral("store%1").arg(++stores);
    slowDemo_ = false;
    log_ = std::make_unique<LogThread>(ownPaths(), newIdentifier());
    makeApp();
    return owned(app_.get());
}

AppViewModel* Driver::restart()
{
    app_.reset();
    makeApp();
    return owned(app_.get());
}

namespace
{

/// A demo of one athlete without a season; or one that is never done.
decltype(DemoHand::make) demoOf(bool slow)
{
    return [slow](const store::StorePaths& paths, const std::function<bool(double)>& progress) -> Expected<CivilDate> {
        while (slow) {
            if (!progress(0.25))
                return fail(Code::Cancelled, "demo", "was cancelled");
            QThread::msleep(5);
        }
        auto logbook = logbook::Logbook::open(paths, newIdentifier(), newIdentifier);
        if (!logbook)
            return tl::unexpected(logbook.error());
        store::Athlete athlete;
        athlete.name = "Demo Example";
        athlete.born = day("2000-02-01");
        return logbook->addAthlete(athlete).map([](const Identifier&) { return day("2026-06-03"); });
    };
}

} // namespace

bool Driver::demoKept()
{
    return QFile::exists(folder_.filePath(store_ + QStringLiteral("-demo/athletes.fleetrung")));
}

void Driver::makeApp()
{
    app_ = std::make_unique<AppViewModel>(&preferences_, log_.get(), DayClock(today));
    auto files = folderHand(folder_.filePath(store_));
    offered_.clear();
    files.offer = [this](const QStringList& paths) { offered_ += paths; };
    app_->handFilesTo(std::move(files));
    app_->offerDemo({.folder = folder_.filePath(store_ + QStringLiteral("-demo")), .make = demoOf(slowDemo_)},
                    ownPaths());
    app_->refresh();
    settle();
}

void Driver::plant(const char* name)
{
    log_->run(
        this,
        [name](logbook::Logbook& logbook) -> Expected<Identifier> {
            store::Athlete athlete;
            athlete.name = name;
            athlete.born = day("2001-04-01");
            athlete.bodyMassKg = 66;
            athlete.trainingYears = 6;
            const auto id = logbook.addAthlete(athlete);
            if (!id)
                return id;
            return logbook.addSeason(*id, outdoorSetup());
        },
        [](const Expected<Identifier>& added) {
            if (!added)
                qWarning("the season was refused: %s", describe(added.error()).c_str());
        });
    settle();
    app_->refresh();
    settle();
}

void Driver::plantSeason()
{
    plant("Mira Example");
}

void Driver::plantSecondAthlete()
{
    plant("Noor Example");
}

QString Driver::keyOf(const QString& athlete)
{
    for (const auto& row : app_->squad()->athletes()->all())
        if (row.value(QStringLiteral("name")).toString() == athlete)
            return row.value(QStringLiteral("key")).toString();
    return {};
}

QString Driver::ownersOfSets()
{
    QString owner;
    log_->run(
        this,
        [](logbook::Logbook& logbook) -> Expected<std::string> {
            const auto squad = logbook.squad(today);
            if (!squad)
                return tl::unexpected(squad.error());
            std::string names; // one name where only one athlete has sets
            for (const auto& summary : *squad)
                if (summary.sessions > 0)
                    names += summary.athlete.name;
            return names;
        },
        [&owner](const Expected<std::string>& found) { owner = QString::fromStdString(found.value_or("")); });
    settle();
    return owner;
}

QString Driver::handedCalendar()
{
    QString text;
    for (QDirIterator file(folder_.path(), {QStringLiteral("*.ics")}, QDir::Files, QDirIterator::Subdirectories);
         file.hasNext();) {
        QFile found(file.next());
        if (found.open(QIODevice::ReadOnly))
            text = QString::fromUtf8(found.readAll());
    }
    return text;
}

int Driver::handedFiles(const QString& ending)
{
    int files = 0;
    for (QDirIterator file(folder_.filePath(store_), {QStringLiteral("*.") + ending}, QDir::Files,
                           QDirIterator::Subdirectories);
         file.hasNext();)
        files += QFileInfo(file.next()).size() > 0;
    return files;
}

void Driver::settle()
{
    log_->settle();
    log_->settle(); // an answer may ask again
}

void Driver::offerStillSensor()
{
    motion::Recording recording;
    for (int i = 0; i < 200; ++i)
        recording.samples.push_back({.time = i / 100.0, .specificForce = {0, 0, 9.81}, .angularRate = {0, 0, 0}});
    app_->offerSensor({.name = QStringLiteral("Bar sensor"),
                       .make = [recording] { return std::make_unique<ReplaySource>(recording, "Bar sensor", 1.0); }});
}

namespace
{

/// Played at 100 Hz; nothing where the simulator refused.
std::optional<motion::Recording> simulatedSet(const std::string& lift, int repetitions)
{
    simulator::SetPlan plan;
    plan.lift = lift;
    plan.repetitions = repetitions;
    plan.stillBefore = 1; // short: builds without optimisation are slow
    plan.topPause = 0.5;
    plan.stillAfter = 1;
    simulator::SensorPlan sensor;
    sensor.rate = 100;
    const auto set = simulator::simulateSet(plan, sensor, 20260330);
    if (!set) {
        qWarning("%s", describe(set.error()).c_str());
        return std::nullopt;
    }
    return set->recording;
}

} // namespace

void Driver::offerSimulatedSet(int repetitions)
{
    const auto set = simulatedSet(app_->bench()->openedLift()->plan.lift, repetitions);
    if (set)
        app_->offerSensor({.name = QStringLiteral("Bar sensor"), .make = [recording = *set] {
                               return std::make_unique<ReplaySource>(recording, "Bar sensor", 0.0);
                           }});
}

void Driver::cutOff(int repetitions)
{
    const auto set = simulatedSet("half-squat", repetitions);
    if (!set)
        return;
    log_->run(
        this,
        [recording = *set](logbook::Logbook& logbook) -> Expected<void> {
            const auto squad = logbook.squad(today);
            if (!squad)
                return tl::unexpected(squad.error());
            logbook::SetUnderWay facts;
            facts.athlete = squad->front().athlete.id;
            facts.set.id = newIdentifier();
            facts.set.lift = "half-squat";
            facts.set.ladder = "squat";
            facts.set.rung = "half";
            facts.set.loadKg = 100;
            facts.source = {"C4:10:00:00:4F:2A", "bar"};
            facts.sensor = recording.sensor;
            facts.begun = DayClock(today).now();
            if (auto begun = logbook.beginRecording(facts); !begun)
                return begun;
            return logbook.keepPiece(facts.set.id, 0, recording);
        },
        [](const Expected<void>& kept) {
            if (!kept)
                qWarning("the set was refused: %s", describe(kept.error()).c_str());
        });
    settle();
}

int Driver::storedRepetitions()
{
    int count = -1;
    log_->run(
        this,
        [](logbook::Logbook& logbook) -> Expected<int> {
            const auto squad = logbook.squad(today);
            if (!squad || squad->empty())
                return -1;
            const auto sessions = logbook.sessions(squad->front().athlete.id);
            if (!sessions || sessions->empty())
                return -1;
            const auto sets = logbook.sets(sessions->back().id);
            if (!sets || sets->empty())
                return -1;
            return static_cast<int>(
                std::ranges::count(sets->back().repetitions, false, &logbook::RepetitionView::deleted));
        },
        [&count](const Expected<int>& counted) { count = counted.value_or(-1); });
    settle();
    return count;
}

void Driver::putFile(const QString& name, const QString& text)
{
    const auto put = folderHand(folder_.filePath(store_)).hand(name, text.toUtf8());
    if (!put)
        qWarning("the file was refused: %s", describe(put.error()).c_str());
}

int Driver::storedRuns()
{
    int count = -1;
    log_->run(
        this,
        [](logbook::Logbook& logbook) {
            return logbook.rows().list<store::Sprint>().map(
                [](const auto& rows) { return static_cast<int>(rows.size()); });
        },
        [&count](const Expected<int>& counted) { count = counted.value_or(-1); });
    settle();
    return count;
}

} // namespace fleetrung::tests
