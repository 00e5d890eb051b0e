#include <catch2/catch.hpp>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QSignalSpy>

#include "mobile/views/calibration_view_model.hpp"
#include "mobile/views/teach_view_model.hpp"

using namespace fleetrung;
using namespace fleetrung::views;
using sensor::TeachStep;

namespace Catch
{
template <> struct StringMaker<QString> {
    static std::string convert(const QString& text) { return text.toStdString(); }
};
} // namespace Catch

namespace
{

const QString address = QStringLiteral("C4:10:00:00:4F:2A");

/// A teacher's hand over a clock that the test moves.
struct Lesson {
    Preferences preferences;
    std::int64_t now = 0;
    sensor::TeachRecording seen;
    sensor::Taught answer;
    TeachViewModel view;

    Lesson()
        : view(
              &preferences,
              [this](const sensor::TeachRecording& recording, const std::function<bool(double)>& progress) {
                  seen = recording;
                  progress(0.5);
                  return answer;
              },
              [this] { return now; })
    {
        preferences.setLocale(QLocale(QLocale::German, QLocale::Germany));
        view.begin(address, QStringLiteral("Bar sensor"));
        view.showNotifiers(address, {{"service", "characteristic"}});
    }

    void pass(double seconds)
    {
        now += static_cast<std::int64_t>(seconds * 1e9);
        view.tick();
    }
    void send() { view.addPackets(address, {{.source = 0, .arrival = now, .bytes = {1, 2, 3}}}); }
    void doStep()
    {
        if (view.asksHeight())
            CHECK(view.setHeight(QStringLiteral("62,5")).isEmpty());
        view.start();
        send();
        pass(60);
    }
    void learn()
    {
        QElapsedTimer timer;
        timer.start();
        while (view.stage() == TeachViewModel::Learning && timer.elapsed() < 5000)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    void doAll()
    {
        for (std::size_t i = 0; i < sensor::teachSteps; ++i)
            doStep();
        learn();
    }
};

} // namespace

TEST_CASE("Teaching goes through eleven steps: faces, turns, raises", "[teach]")
{
    Lesson lesson;
    CHECK(lesson.view.stepText() == QStringLiteral("Step 1 of 11"));
    CHECK(lesson.view.sentence() == QStringLiteral("Lay it flat, main side up."));
    for (int step = 0; step < 11; ++step) {
        CHECK(lesson.view.stage() == TeachViewModel::Ready);
        CHECK(lesson.view.step() == step);
        lesson.doStep();
    }
    lesson.learn();
    REQUIRE(lesson.seen.spans.size() == sensor::teachSteps);
    CHECK(lesson.seen.spans.front().step == TeachStep::FaceOne);
    CHECK(lesson.seen.spans.back().step == TeachStep::RaiseTwo);
    CHECK(lesson.seen.raiseHeight == Approx(0.625));
    CHECK(lesson.seen.packets.size() == sensor::teachSteps);
}

TEST_CASE("The height of the raises is asked in the user's unit and within reason", "[teach]")
{
    Lesson lesson;
    for (int step = 0; step < 9; ++step)
        lesson.doStep();
    REQUIRE(lesson.view.asksHeight());
    CHECK(lesson.view.heightLabel() == QStringLiteral("How high will you raise it? (cm)"));
    lesson.view.start();
    CHECK(lesson.view.stage() == TeachViewModel::Ready); // not before the height is known
    CHECK_FALSE(lesson.view.setHeight(QStringLiteral("5")).isEmpty());
    CHECK_FALSE(lesson.view.setHeight(QStringLiteral("high")).isEmpty());
    lesson.preferences.setInches(true);
    CHECK(lesson.view.setHeight(QStringLiteral("20")).isEmpty());
    CHECK(lesson.view.sentence() == QStringLiteral("Raise it straight up by 20,0 in, and hold it there."));
}

TEST_CASE("A step in which nothing came is not taken, and says so", "[teach]")
{
    Lesson lesson;
    lesson.view.start();
    lesson.pass(60);
    CHECK(lesson.view.stage() == TeachViewModel::Ready);
    CHECK(lesson.view.step() == 0);
    CHECK(lesson.view.why().startsWith(QStringLiteral("Nothing came")));
    lesson.doStep();
    CHECK(lesson.view.step() == 1);
    CHECK(lesson.view.why().isEmpty());
}

TEST_CASE("The step before can be done again, and the later span is the last", "[teach]")
{
    Lesson lesson;
    lesson.doStep();
    lesson.doStep();
    CHECK(lesson.view.canRepeat());
    lesson.view.repeatLast();
    CHECK(lesson.view.step() == 1);
    for (int step = 1; step < 11; ++step)
        lesson.doStep();
    lesson.learn();
    CHECK(lesson.seen.spans.size() == sensor::teachSteps + 1);
    CHECK(lesson.seen.spans[1].step == TeachStep::FaceTwo);
    CHECK(lesson.seen.spans[2].step == TeachStep::FaceTwo);
}

TEST_CASE("While a step runs, the seconds left and what to do now are told", "[teach]")
{
    Lesson lesson;
    lesson.view.start();
    lesson.send();
    CHECK(lesson.view.nowText() == QStringLiteral("Keep it still"));
    lesson.pass(sensor::secondsOf(TeachStep::FaceOne) / 2);
    CHECK(lesson.view.share() == Approx(0.5));
    CHECK_FALSE(lesson.view.countdown().isEmpty());
    lesson.view.stopStep();
    CHECK(lesson.view.stage() == TeachViewModel::Ready);
    CHECK(lesson.view.step() == 0);
}

TEST_CASE("What must be repeated is gone to straight away, with the reason, and then learned from again", "[teach]")
{
    Lesson lesson;
    lesson.answer.repeat = TeachStep::TurnTwo;
    lesson.answer.why = "It turned less than once.";
    lesson.doAll();
    CHECK(lesson.view.stage() == TeachViewModel::Ready);
    CHECK(lesson.view.step() == static_cast<int>(TeachStep::TurnTwo));
    CHECK(lesson.view.why() == QStringLiteral("It turned less than once."));
    lesson.answer = {};
    lesson.answer.map = sensor::SensorMap{};
    lesson.answer.sure = 0.934;
    lesson.answer.sureness = {{"accelerometer", 0.997, "gravity comes out on all six sides"},
                              {"time stamp", 0.7, "it steps unevenly"}};
    lesson.doStep();
    lesson.learn();
    REQUIRE(lesson.view.stage() == TeachViewModel::Learned);
    CHECK(lesson.seen.spans.size() == sensor::teachSteps + 1);
    const auto rows = lesson.view.sureness()->all();
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].value(QStringLiteral("name")).toString() == QStringLiteral("Acceleration"));
    CHECK(rows[0].value(QStringLiteral("value")).toString() == QStringLiteral("99 %"));
    CHECK(rows[0].value(QStringLiteral("words")).toString() == QStringLiteral("sure"));
    CHECK(rows[1].value(QStringLiteral("words")).toString() == QStringLiteral("fairly sure"));
    CHECK(lesson.view.resultTitle() == QStringLiteral("Learned"));
}

TEST_CASE("What was learned is saved under its name, with a key that a file may have", "[teach]")
{
    Lesson lesson;
    lesson.answer.map = sensor::SensorMap{};
    lesson.answer.sure = 0.95;
    lesson.doAll();
    std::optional<sensor::SensorMap> kept;
    QObject::connect(&lesson.view, &TeachViewModel::taught, &lesson.view,
                     [&kept](const QString&, const sensor::SensorMap& map) { kept = map; });
    CHECK_FALSE(lesson.view.save(QStringLiteral(" ")).isEmpty());
    CHECK(lesson.view.save(QStringLiteral("Härte 2 (rack)")).isEmpty());
    REQUIRE(kept);
    CHECK(kept->name == "Härte 2 (rack)");
    CHECK(kept->key == "harte-2-rack");
}

TEST_CASE("A sensor that cannot be learned says why, and can be begun anew", "[teach]")
{
    Lesson lesson;
    lesson.answer.why = "Nothing in its bytes follows gravity.";
    lesson.doAll();
    CHECK(lesson.view.stage() == TeachViewModel::Failed);
    CHECK(lesson.view.resultText() == QStringLiteral("Nothing in its bytes follows gravity."));
    lesson.view.startOver();
    CHECK(lesson.view.stage() == TeachViewModel::Ready);
    CHECK(lesson.view.step() == 0);
}

TEST_CASE("Learning can be cancelled", "[teach]")
{
    Preferences preferences;
    std::int64_t now = 0;
    std::atomic<bool> stopped{false};
    TeachViewModel view(
        &preferences,
        [&stopped](const sensor::TeachRecording&, const std::function<bool(double)>& progress) {
            while (progress(0.1))
                QThread::msleep(5);
            stopped = true;
            return sensor::Taught{};
        },
        [&now] { return now; });
    view.begin(address, QStringLiteral("Bar sensor"));
    view.showNotifiers(address, {{}});
    for (std::size_t step = 0; step < sensor::teachSteps; ++step) {
        if (view.asksHeight())
            REQUIRE(view.setHeight(view.height()).isEmpty());
        view.start();
        view.addPackets(address, {{}});
        now += 60'000'000'000;
        view.tick();
    }
    REQUIRE(view.stage() == TeachViewModel::Learning);
    view.cancel();
    CHECK(stopped);
    CHECK(view.stage() == TeachViewModel::Connecting);
}
