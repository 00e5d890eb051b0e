#include "mobile/app/sensor_pictures.hpp"

#include <cmath>

namespace fleetrung::app
{
namespace
{

const QString bar = QStringLiteral("C4:10:00:00:4F:2A");
const QString shoe = QStringLiteral("C4:10:00:00:71:0B");

std::vector<views::SensorShown> stagedSensors()
{
    views::SensorShown first;
    first.address = bar;
    first.name = QStringLiteral("Bar sensor");
    first.mapName = QStringLiteral("Plain packets");
    first.mapKey = "plain-packets";
    first.sixFaces = true;
    views::SensorShown second = first;
    second.address = shoe;
    second.name = QStringLiteral("Left shoe");
    second.place = views::SensorPlace::Shoe;
    second.sixFaces = false;
    return {first, second};
}

sensor::Health stagedHealth()
{
    sensor::Health health;
    health.rate = 198;
    health.expectedRate = 200;
    health.lossShare = 0.004;
    health.jitter = 0.018;
    health.longestStall = 0.14;
    return health;
}

void showStreaming(views::SensorsViewModel& sensors)
{
    sensors.showState(bar, sensor::LinkState::Streaming);
    sensors.showHealth(bar, stagedHealth());
    sensors.showInfo(bar, {.battery = 82,
                           .mtu = {},
                           .manufacturer = {},
                           .model = {},
                           .firmware = QStringLiteral("1.4"),
                           .hardware = {},
                           .serial = {}});
    sensors.showZeroed(bar);
    sensors.showState(shoe, sensor::LinkState::Searching);
}

void takeFinding(Photographer& photographer, views::FindSensorsViewModel& find)
{
    const QString sheet = QStringLiteral("findSheet");
    photographer.openSheet(sheet);
    find.showSearching(true);
    photographer.take(QStringLiteral("sensors-find-nothing"));
    find.showFound({QStringLiteral("C4:10:00:00:22:9D"), QStringLiteral("Motion 9D"), -48, {}});
    find.showFound({QStringLiteral("5E:00:00:00:31:C7"), {}, -71, {}});
    find.showFound({bar, QStringLiteral("Motion 2A"), -58, {}});
    find.showFound({QStringLiteral("7A:00:00:00:08:1F"), QStringLiteral("Headphones of the next room"), -88, {}});
    photographer.take(QStringLiteral("sensors-find"));
    find.choose(QStringLiteral("C4:10:00:00:22:9D"));
    photographer.take(QStringLiteral("sensors-listening"));
    find.showFits({{.map = {"plain-lines", QStringLiteral("Lines of numbers"), false}, .applies = true, .fit = 0.1}},
                  400, true);
    photographer.take(QStringLiteral("sensors-unread"));
    find.showFits({{.map = {"plain-packets", QStringLiteral("Plain packets"), false}, .applies = true, .fit = 0.97}},
                  600, true);
    photographer.take(QStringLiteral("sensors-name"));
    photographer.closeSheet(sheet);
}

void takeTeaching(Photographer& photographer, views::TeachViewModel& teach)
{
    const QString sheet = QStringLiteral("teachSheet");
    teach.begin(bar, QStringLiteral("Bar sensor"));
    teach.showNotifiers(bar, {{}});
    photographer.openSheet(sheet);
    photographer.take(QStringLiteral("sensors-teach-step"));
    teach.start();
    photographer.take(QStringLiteral("sensors-teach-running"));
    photographer.closeSheet(sheet);
}

void takeSides(Photographer& photographer, views::CalibrationViewModel& calibration)
{
    const QString sheet = QStringLiteral("calibrationSheet");
    calibration.begin(bar, QStringLiteral("Bar sensor"));
    photographer.openSheet(sheet);
    double time = 0;
    const auto lie = [&calibration, &time](const Eigen::Vector3d& up, double seconds) {
        std::vector<motion::Sample> samples;
        for (int i = 0; i < static_cast<int>(seconds * 100); ++i) {
            const double ripple = 0.005 * std::sin(40.0 * i);
            samples.push_back({time += 0.01, 9.9 * up + Eigen::Vector3d::Constant(ripple), Eigen::Vector3d::Zero()});
        }
        calibration.addSamples(bar, samples);
    };
    lie({0, 0, 1}, 2.5);
    lie({0, 0, -1}, 2.5);
    lie({0, 0.6, 0.8}, 2.5);
    photographer.take(QStringLiteral("sensors-six-sides-slanted"));
    lie({0, 1, 0}, 2.5);
    photographer.take(QStringLiteral("sensors-six-sides"));
    for (const Eigen::Vector3d& up : {Eigen::Vector3d(0, -1, 0), Eigen::Vector3d(1, 0, 0), Eigen::Vector3d(-1, 0, 0)})
        lie(up, 2.5);
    photographer.take(QStringLiteral("sensors-six-sides-done"));
    photographer.closeSheet(sheet);
}

} // namespace

void takeSensors(Photographer& photographer, views::AppViewModel& app)
{
    views::SensorsViewModel& sensors = *app.sensors();
    const QString list = QStringLiteral("sensorsSheet");
    photographer.takeSheet(list, QStringLiteral("sensors-none"));
    sensors.showTrouble({}, {ble::TroubleKind::BluetoothOff, ble::troubleText(ble::TroubleKind::BluetoothOff, {})});
    photographer.takeSheet(list, QStringLiteral("sensors-bluetooth-off"));
    sensors.endTrouble({});

    sensors.showSensors(stagedSensors());
    app.findSensors()->showSaved(stagedSensors());
    showStreaming(sensors);
    photographer.takeSheet(list, QStringLiteral("sensors"));
    sensors.openSensor(bar);
    photographer.takeSheet(QStringLiteral("sensorSheet"), QStringLiteral("sensors-health"));
    sensors.openSensor(bar);
    photographer.takeSheetOver(QStringLiteral("sensorSheet"), QStringLiteral("mapSheet"),
                               QStringLiteral("sensors-maps"));
    sensors.showState(bar, sensor::LinkState::Lost);
    sensors.showTrouble(
        bar, {ble::TroubleKind::Dropped, ble::troubleText(ble::TroubleKind::Dropped, QStringLiteral("Bar sensor"))});
    sensors.openSensor(bar);
    photographer.takeSheet(QStringLiteral("sensorSheet"), QStringLiteral("sensors-lost"));
    showStreaming(sensors);
    takeFinding(photographer, *app.findSensors());
    takeTeaching(photographer, *app.teach());
    takeSides(photographer, *app.calibration());
    sensors.showSensors({});
    app.findSensors()->showSaved({});
}

} // namespace fleetrung::app
