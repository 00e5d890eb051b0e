#include <catch2/catch.hpp>

#include <QSignalSpy>

#include "mobile/views/bench_view_model.hpp"
#include "mobile/views/sensor_desk.hpp"

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

const QString bar = QStringLiteral("C4:10:00:00:4F:2A");
const QString shoe = QStringLiteral("C4:10:00:00:71:0B");

/// Nobody answers: no scan begins, and what the radio says is what the test says.
class NoAnswer : public ble::Permission
{
public:
    void ask(std::function<void(bool)>) override {}
    [[nodiscard]] QString reason() const override { return {}; }
};

struct Desk {
    Preferences preferences;
    ble::Radio radio{std::make_unique<NoAnswer>()};
    SensorDesk desk{&preferences};
    std::vector<SavedSensor> kept;

    Desk()
    {
        desk.setRadio(&radio);
        QObject::connect(&desk, &SensorDesk::keepAsked, &desk,
                         [this](const SavedSensor& sensor, const QString&) { kept.push_back(sensor); });
    }

    static SavedSensor saved(const QString& address, const QString& name, SensorPlace place)
    {
        return {.id = {},
                .address = address,
                .name = name,
                .place = place,
                .map = sensor::includedMaps().front(),
                .calibration = {}};
    }
    void showTwo()
    {
        desk.showSaved({saved(shoe, QStringLiteral("Left shoe"), SensorPlace::Shoe),
                        saved(bar, QStringLiteral("Bar sensor"), SensorPlace::Bar)});
    }
};

} // namespace

TEST_CASE("A found sensor is asked to be kept with the map that reads it", "[desk]")
{
    Desk desk;
    const auto& map = sensor::includedMaps().back();
    emit desk.radio.found({bar, QStringLiteral("Motion"), -50, {}});
    desk.desk.find().choose(bar);
    desk.desk.find().showFits(
        {{.map = {map.key, QString::fromStdString(map.name), false}, .applies = true, .fit = 0.97}}, 300, true);
    REQUIRE(desk.desk.find().save(QStringLiteral("Bar sensor"), 0).isEmpty());
    REQUIRE(desk.kept.size() == 1);
    CHECK(desk.kept.front().address == bar);
    CHECK(desk.kept.front().map.key == map.key);
}

TEST_CASE("Sensors that stream are the sources of a set, the bar's first", "[desk]")
{
    Desk desk;
    desk.showTwo();
    CHECK(desk.desk.streaming().empty());
    emit desk.radio.stateChanged(shoe, sensor::LinkState::Streaming);
    REQUIRE(desk.desk.streaming().size() == 1);
    emit desk.radio.stateChanged(bar, sensor::LinkState::Streaming);
    const auto both = desk.desk.streaming();
    REQUIRE(both.size() == 2);
    CHECK(both[0].address == bar);
    CHECK(both[1].place == SensorPlace::Shoe);
    emit desk.radio.stateChanged(bar, sensor::LinkState::Lost);
    CHECK(desk.desk.streaming().size() == 1);
}

TEST_CASE("What is changed on a sensor's page is asked to be kept", "[desk]")
{
    Desk desk;
    desk.showTwo();
    auto& page = desk.desk.sensors();
    page.openSensor(shoe);
    CHECK(page.rename(QStringLiteral("Right shoe")).isEmpty());
    page.setPlace(static_cast<int>(SensorPlace::Waist));
    page.chooseMap(QString::fromStdString(sensor::includedMaps().back().key));
    REQUIRE(desk.kept.size() == 3);
    CHECK(desk.kept[0].name == QStringLiteral("Right shoe"));
    CHECK(desk.kept[1].place == SensorPlace::Waist);
    CHECK(desk.kept[2].map.key == sensor::includedMaps().back().key);
    QSignalSpy forgotten(&desk.desk, &SensorDesk::forgetAsked);
    page.forget();
    CHECK(forgotten.count() == 1);
}

TEST_CASE("What was taught is kept, under a key of its own, and read by at once", "[desk]")
{
    Desk desk;
    desk.showTwo();
    std::vector<sensor::SensorMap> maps;
    QObject::connect(&desk.desk, &SensorDesk::keepMapAsked, &desk.desk,
                     [&maps](const sensor::SensorMap& map, const QString&) { maps.push_back(map); });
    sensor::SensorMap taught = sensor::includedMaps().front();
    taught.name = "Rack two";
    emit desk.desk.teach().taught(shoe, taught);
    REQUIRE(maps.size() == 1);
    CHECK(maps.front().key == taught.key + "-2"); // the included one stays as it is
    REQUIRE(desk.kept.size() == 1);
    CHECK(desk.kept.front().map.name == "Rack two");
}

TEST_CASE("A trouble of the radio stands on every page that needs it", "[desk]")
{
    Desk desk;
    emit desk.radio.trouble({}, {ble::TroubleKind::BluetoothOff, QStringLiteral("Bluetooth is off. Switch it on.")});
    CHECK(desk.desk.sensors().radioTrouble() == QStringLiteral("Bluetooth is off. Switch it on."));
    CHECK(desk.desk.find().trouble() == QStringLiteral("Bluetooth is off. Switch it on."));
    emit desk.radio.troubleOver({});
    CHECK(desk.desk.sensors().radioTrouble().isEmpty());
    CHECK(desk.desk.find().trouble().isEmpty());
}

TEST_CASE("Bench says what its sensor does, and that a set goes on when it is back", "[desk]")
{
    Preferences preferences;
    BenchViewModel bench(&preferences);
    CHECK(bench.sensorText() == QStringLiteral("No sensor"));
    bench.showAwaited(QStringLiteral("Bar sensor: looking for it"));
    CHECK(bench.sensorText() == QStringLiteral("Bar sensor: looking for it"));
    bench.showSensorLine(QStringLiteral("198 Hz · battery 82 %"));
    CHECK(bench.sensorDetail().isEmpty()); // of a sensor that is not there nothing is claimed
    bench.showSensor(BenchViewModel::Streaming, QStringLiteral("Bar sensor"));
    CHECK(bench.sensorDetail() == QStringLiteral("198 Hz · battery 82 %"));
    bench.showSensor(BenchViewModel::Lost, QStringLiteral("Bar sensor"));
    CHECK(bench.sensorText() == QStringLiteral("Bar sensor lost. The set goes on when it is back."));
    CHECK(bench.running());
}

TEST_CASE("A set that was cut off is kept or dropped once", "[desk]")
{
    Preferences preferences;
    BenchViewModel bench(&preferences);
    QSignalSpy answered(&bench, &BenchViewModel::cutOffAnswered);
    bench.showCutOff(QStringLiteral("Half squat: the set was cut off. 4 repetitions are kept."), true);
    CHECK(bench.cutOffCanBeKept());
    bench.keepCutOff();
    REQUIRE(answered.count() == 1);
    CHECK(answered.first().first().toBool());
    CHECK(bench.cutOffText().isEmpty());
}
