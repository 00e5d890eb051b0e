// How long a frame of the window takes while a simulated bar sensor streams a set of squats at 200 Hz in real time,
// drawn by the software renderer. Prints milliseconds of the work of a frame (layout, drawing) and of the event loop's
// longest silence; nothing here passes or fails. Run with QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software.
#include <algorithm>
#include <cstdio>
#include <vector>

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTimer>

#include "demo/simulator/simulator.hpp"
#include "mobile/views/app_view_model.hpp"
#include "mobile/views/new_identifier.hpp"
#include "mobile/views/replay_source.hpp"

using namespace fleetrung;

namespace
{

constexpr double frame = 1000.0 / 60; // ms

CivilDate day(const char* text)
{
    return *parseDate(text);
}

Expected<Identifier> plant(logbook::Logbook& logbook)
{
    store::Athlete athlete;
    athlete.name = "Mira Example";
    athlete.born = day("2001-04-01");
    athlete.bodyMassKg = 66;
    athlete.trainingYears = 6;
    const auto id = logbook.addAthlete(athlete);
    if (!id)
        return id;
    season::SeasonSetup setup;
    setup.name = "Outdoor 2026";
    setup.start = day("2025-11-03");
    setup.competitions = {
        {.date = day("2026-06-06"), .name = "Championship", .priority = season::Priority::A, .main = true}};
    setup.trainingDays = {1, 3, 5};
    setup.sprintDays = {2, 6};
    setup.equipment = {"bar", "rack", "pins", "blocks"};
    setup.ladders = {"squat", "clean"};
    return logbook.addSeason(*id, setup);
}

Expected<motion::Recording> squats(const std::string& lift)
{
    simulator::SetPlan plan;
    plan.lift = lift;
    plan.repetitions = 10;
    simulator::SensorPlan sensor;
    sensor.rate = 200;
    auto set = simulator::simulateSet(plan, sensor, 20260330);
    if (!set)
        return tl::unexpected(set.error());
    return std::move(set->recording);
}

void report(const char* what, std::vector<double> milliseconds)
{
    if (milliseconds.empty()) {
        std::printf("%-34s none\n", what);
        return;
    }
    std::ranges::sort(milliseconds);
    const auto at = [&](double share) {
        return milliseconds[static_cast<std::size_t>(share * static_cast<double>(milliseconds.size() - 1))];
    };
    const auto late = std::ranges::count_if(milliseconds, [](double one) { return one > frame; });
    std::printf("%-34s %5zu: median %.1f, 95 %% %.1f, 99 %% %.1f, longest %.1f ms; over %.1f ms: %td\n", what,
                milliseconds.size(), at(0.5), at(0.95), at(0.99), at(1), frame, late);
}

/// Work of each frame, from the animations' step to the drawn picture.
class FrameTimes : public QObject
{
public:
    explicit FrameTimes(QQuickWindow* window)
    {
        connect(window, &QQuickWindow::afterAnimating, this, [this] { timer_.start(); });
        connect(window, &QQuickWindow::frameSwapped, this, [this] {
            if (timer_.isValid())
                work_.push_back(static_cast<double>(timer_.nsecsElapsed()) * 1e-6);
        });
    }
    [[nodiscard]] std::vector<double> take() { return std::exchange(work_, {}); }

private:
    QElapsedTimer timer_;
    std::vector<double> work_;
};

/// A beat every 5 ms: how much later than that it comes is how long the interface could not answer.
class Silences : public QObject
{
public:
    Silences()
    {
        beat_.setTimerType(Qt::PreciseTimer);
        connect(&beat_, &QTimer::timeout, this, [this] {
            late_.push_back(std::max(0.0, static_cast<double>(timer_.nsecsElapsed()) * 1e-6 - 5));
            timer_.start();
        });
        timer_.start();
        beat_.start(5);
    }
    [[nodiscard]] std::vector<double> take() { return std::exchange(late_, {}); }

private:
    QTimer beat_;
    QElapsedTimer timer_;
    std::vector<double> late_;
};

int run(QGuiApplication& application)
{
    QTemporaryDir folder;
    views::Preferences preferences{QString()};
    preferences.setCautionsRead(true);
    views::LogThread log({.rows = folder.filePath(QStringLiteral("a.fleetrung")).toStdString(),
                          .captures = folder.filePath(QStringLiteral("captures.fleetrung")).toStdString()},
                         views::newIdentifier());
    log.run(&application, plant, [](const Expected<Identifier>& added) {
        if (!added)
            std::fprintf(stderr, "%s\n", describe(added.error()).c_str());
    });
    log.settle();
    views::AppViewModel app(&preferences, &log, views::DayClock(day("2026-03-30")));
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Fleetrung/Main.qml")));
    auto* window =
        engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    if (!window)
        return 1;
    app.refresh();
    log.settle();
    views::BenchViewModel& bench = *app.bench();
    bench.openLift(QStringLiteral("squat"));
    if (!bench.openedLift())
        return 1;
    const auto recording = squats(bench.openedLift()->plan.lift);
    if (!recording) {
        std::fprintf(stderr, "%s\n", describe(recording.error()).c_str());
        return 1;
    }
    app.offerSensor({.name = QStringLiteral("Bar sensor"), .make = [set = *recording] {
                         return std::make_unique<views::ReplaySource>(set, "Bar sensor", 1.0);
                     }});
    FrameTimes frames(window);
    Silences silences;
    bench.setLoad(QStringLiteral("100"));
    bench.begin();
    const double seconds = recording->samples.back().time - recording->samples.front().time + 1;
    QTimer::singleShot(static_cast<int>(seconds * 1000), &application, [&] {
        std::printf("%.0f s of 200 Hz, %d repetitions shown\n", seconds, bench.repetitionCount());
        report("work of a frame", frames.take());
        report("lateness of a 5 ms beat", silences.take());
        application.quit();
    });
    return application.exec();
}

} // namespace

int main(int argc, char* argv[])
{
    QGuiApplication application(argc, argv);
    return run(application);
}
