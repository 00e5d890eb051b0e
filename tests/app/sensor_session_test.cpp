// From box to stored repetitions, over the air: the program's view models, logbook and radio as mobile/app joins them,
// against the simulated sensor. Truth: the simulated set that the sensor plays, made here again from the same seed.
#include <catch2/catch.hpp>

#include "demo/sensor/bluez/movement.hpp"
#include "mobile/views/app_view_model.hpp"
#include "tests/logbook/logbook_helper.hpp"
#include "tests/radio/radio_bench.hpp"

using namespace fleetrung;
using namespace fleetrung::ble;
using logbook::test::Folder;
using views::AppViewModel;
using views::BenchViewModel;
using views::FindSensorsViewModel;

namespace
{

constexpr int setSeed = 5, setLength = 3;

/// The phone: switched on when made, off when destroyed; what it wrote stays in the folder.
class Phone
{
public:
    explicit Phone(const Folder& folder)
        : log_({folder.paths().rows, folder.paths().captures}, logbook::test::numbered(0xB0001)),
          radio_(devicePermission(), shortTiming()),
          app_(&preferences_, &log_, views::DayClock(logbook::test::date("2025-12-01")))
    {
        app_.setRadio(&radio_);
        app_.refresh();
        log_.settle();
    }
    ~Phone() { log_.settle(); }

    AppViewModel& app() { return app_; }
    BenchViewModel& bench() { return *app_.bench(); }

    [[nodiscard]] bool sensorReady() { return bench().sensor() == BenchViewModel::Ready; }

    /// As a person does it who sees the sensor for the first time.
    void findAndSave()
    {
        auto& find = *app_.findSensors();
        find.search();
        REQUIRE(waitUntil([&] { return find.foundCount() > 0; }));
        find.choose(barSensor);
        REQUIRE(waitUntil([&] { return find.stage() == FindSensorsViewModel::Naming; }, 20000));
        REQUIRE(find.save(QStringLiteral("Old faithful"), 0).isEmpty());
        find.leave();
    }

    /// As on the first day: found, named, saved, and squats under way.
    void begin()
    {
        findAndSave();
        REQUIRE(waitUntil([&] { return sensorReady(); }));
        beginSquats();
    }
    void openSquats()
    {
        REQUIRE(bench().hasAthlete());
        bench().openLift(QStringLiteral("squat"));
        REQUIRE(bench().openedLift() != nullptr);
        bench().setLoad(QStringLiteral("100"));
    }
    void beginSquats()
    {
        openSquats();
        bench().begin();
        REQUIRE(waitUntil([&] { return bench().sensor() == BenchViewModel::Streaming; }));
    }

    void endSet()
    {
        bench().endSet();
        REQUIRE(waitUntil([&] { return !bench().running() && !stored().empty(); }));
    }

    std::vector<logbook::SetView> stored()
    {
        std::vector<logbook::SetView> sets;
        log_.run(
            &app_,
            [](logbook::Logbook& logbook) -> Expected<std::vector<logbook::SetView>> {
                std::vector<logbook::SetView> all;
                for (const auto& athlete : logbook::test::good(logbook.squad(logbook::test::date("2025-12-01"))))
                    for (const auto& session : logbook::test::good(logbook.sessions(athlete.athlete.id)))
                        for (auto& set : logbook::test::good(logbook.sets(session.id)))
                            all.push_back(std::move(set));
                return all;
            },
            [&sets](Expected<std::vector<logbook::SetView>> read) { sets = logbook::test::good(std::move(read)); });
        log_.settle();
        return sets;
    }

private:
    views::Preferences preferences_;
    views::LogThread log_;
    Radio radio_; ///< outlives what uses it
    AppViewModel app_;
};

/// An athlete whose season begins today with full squats.
void fillFolder(const Folder& folder)
{
    auto logbook = logbook::test::openLogbook(folder);
    logbook::test::fill(logbook);
}

QStringList sensorOptions()
{
    return {QStringLiteral("--alone"),
            QStringLiteral("--map"),
            QStringLiteral(FLEETRUNG_MAPS "/int16-counter16.json"),
            QStringLiteral("--lift"),
            QStringLiteral("full-squat"),
            QStringLiteral("--repetitions"),
            QString::number(setLength),
            QStringLiteral("--seed"),
            QString::number(setSeed),
            QStringLiteral("--pause"),
            QStringLiteral("-1")};
}

simulator::SimulatedSet truthOf()
{
    return logbook::test::good(
        demo::simulatedSet({.lift = "full-squat", .repetitions = setLength, .seed = setSeed, .rate = 100}, true));
}

} // namespace

TEST_CASE("a sensor out of its box is found, named, connects by itself, and a set of it is stored as it was lifted")
{
    const Folder folder;
    fillFolder(folder);
    Air air(sensorOptions());
    const auto truth = truthOf();
    {
        Phone phone(folder);
        phone.begin();
        air("move go");
        const int length = static_cast<int>(1000 * truth.recording.samples.back().time);
        REQUIRE(waitUntil([&] { return phone.bench().repetitions().size() >= truth.truth.size(); }, length + 10000));
        waitUntil([] { return false; }, 1000); // nothing more comes
        phone.endSet();
        const auto sets = phone.stored();
        REQUIRE(sets.size() == 1);
        CHECK(sets[0].measured);
        CHECK(sets[0].row.loadKg == 100);
        REQUIRE(sets[0].repetitions.size() == truth.truth.size());
        for (std::size_t i = 0; i < truth.truth.size(); ++i) {
            CAPTURE(i);
            CHECK(sets[0].repetitions[i].row.meanVelocity.value.value_or(0) ==
                  Approx(truth.truth[i].sensor.meanVelocity).margin(0.03));
        }
    }
    // Started anew, nobody touches it: the saved sensor is there again.
    Phone again(folder);
    CHECK(waitUntil([&] { return again.sensorReady(); }));
    CHECK(again.stored().size() == 1);
}

TEST_CASE("a link that is lost twice in a set loses and doubles no repetition that was measured")
{
    const Folder folder;
    fillFolder(folder);
    Air air(sensorOptions());
    const auto truth = truthOf();
    Phone phone(folder);
    phone.begin();
    air("drop"); // while the bar rests
    REQUIRE(waitUntil([&] { return phone.bench().sensor() == BenchViewModel::Lost; }));
    REQUIRE(waitUntil([&] { return phone.bench().sensor() == BenchViewModel::Streaming; }));
    waitUntil([] { return false; }, 1500); // a person waits for the sign before lifting
    air("move go");
    const int length = static_cast<int>(1000 * truth.recording.samples.back().time);
    REQUIRE(waitUntil([&] { return phone.bench().repetitions().size() >= 2; }, length + 10000));
    const auto announced = phone.bench().repetitions().size();
    air("drop");
    REQUIRE(waitUntil([&] { return phone.bench().sensor() == BenchViewModel::Lost; }));
    REQUIRE(waitUntil([&] { return phone.bench().sensor() == BenchViewModel::Streaming; }));
    waitUntil([] { return false; }, length / 3);
    phone.endSet();
    const auto sets = phone.stored();
    REQUIRE(sets.size() == 1);
    CHECK(sets[0].repetitions.size() >= announced);
    CHECK(sets[0].repetitions.size() <= truth.truth.size());
    for (std::size_t i = 0; i < announced && i < sets[0].repetitions.size(); ++i) {
        CAPTURE(i);
        CHECK(sets[0].repetitions[i].row.meanVelocity.value.value_or(0) ==
              Approx(truth.truth[i].sensor.meanVelocity).margin(0.05));
    }
}

TEST_CASE("a set that was under way when the program died is offered at the next start, and kept")
{
    const Folder folder;
    fillFolder(folder);
    Air air(sensorOptions());
    const auto truth = truthOf();
    std::size_t announced = 0;
    {
        Phone phone(folder);
        phone.begin();
        air("move go");
        const int length = static_cast<int>(1000 * truth.recording.samples.back().time);
        REQUIRE(waitUntil([&] { return phone.bench().repetitions().size() >= 2; }, length + 10000));
        announced = phone.bench().repetitions().size();
        waitUntil([] { return false; }, 2500); // what was measured is written once a second
    }                                          // nobody ended the set
    Phone again(folder);
    CHECK(again.stored().empty());
    REQUIRE(waitUntil([&] { return !again.bench().cutOffText().isEmpty(); }));
    SECTION("at once")
    {
        again.bench().keepCutOff();
    }
    SECTION("after it was dropped and that was taken back")
    {
        again.bench().dropCutOff();
        REQUIRE(waitUntil([&] { return again.app().noticeCanUndo(); }));
        CHECK(again.stored().empty());
        again.app().undo();
    }
    REQUIRE(waitUntil([&] { return !again.stored().empty(); }));
    const auto sets = again.stored();
    REQUIRE(sets.size() == 1);
    CHECK(sets[0].repetitions.size() >= announced);
    CHECK(sets[0].repetitions.size() <= truth.truth.size());
    CHECK(again.bench().cutOffText().isEmpty());
}

TEST_CASE("a set that nobody starts or ends is stored: the bar moves, and rests for 15 s")
{
    const Folder folder;
    fillFolder(folder);
    Air air(sensorOptions());
    const auto truth = truthOf();
    Phone phone(folder);
    phone.findAndSave();
    REQUIRE(waitUntil([&] { return phone.sensorReady(); }));
    phone.openSquats();
    waitUntil([] { return false; }, 2500); // the bar rests
    CHECK(phone.bench().sensor() == BenchViewModel::Ready);
    air("move go");
    const int length = static_cast<int>(1000 * truth.recording.samples.back().time);
    REQUIRE(waitUntil([&] { return phone.bench().running(); }, length + 10000));
    REQUIRE(waitUntil([&] { return phone.bench().repetitions().size() >= truth.truth.size(); }, length + 10000));
    CHECK(phone.stored().empty());
    REQUIRE(waitUntil([&] { return !phone.bench().running() && !phone.stored().empty(); }, 30000));
    const auto sets = phone.stored();
    REQUIRE(sets.size() == 1);
    CHECK(sets[0].row.loadKg == 100);
    REQUIRE(sets[0].repetitions.size() == truth.truth.size());
    for (std::size_t i = 0; i < truth.truth.size(); ++i) {
        CAPTURE(i);
        CHECK(sets[0].repetitions[i].row.meanVelocity.value.value_or(0) ==
              Approx(truth.truth[i].sensor.meanVelocity).margin(0.03));
    }
    waitUntil([] { return false; }, 2000);
    CHECK(phone.stored().size() == 1); // listening again, and nothing has moved
    CHECK(phone.sensorReady());
}
