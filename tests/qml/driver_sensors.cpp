// Sensors for the tests of the pages: invented, without a radio.
#include "driver.hpp"

#include <cmath>

#include <QQmlEngine>

namespace fleetrung::tests
{
namespace
{

using namespace views;

const QString bar = QStringLiteral("C4:10:00:00:4F:2A");

template <class T> T* owned(T* object)
{
    QQmlEngine::setObjectOwnership(object, QQmlEngine::CppOwnership);
    return object;
}

} // namespace

SensorsViewModel* Driver::sensors(int count)
{
    std::vector<SensorShown> shown;
    if (count > 0)
        shown.push_back({.address = bar,
                         .name = QStringLiteral("Bar sensor"),
                         .mapKey = "packets",
                         .mapName = QStringLiteral("Plain packets")});
    for (int i = 1; i < count; ++i) {
        SensorShown shoe;
        shoe.address = QStringLiteral("shoe%1").arg(i);
        shoe.name = i == 1 ? QStringLiteral("Left shoe") : QStringLiteral("Shoe %1").arg(i);
        shoe.place = SensorPlace::Shoe;
        shown.push_back(shoe);
    }
    auto* view = owned(new SensorsViewModel(&preferences_, this));
    view->showMaps({{"packets", QStringLiteral("Plain packets"), false}, {"own", QStringLiteral("Rack two"), true}});
    view->showSensors(shown);
    if (count == 0)
        return view;
    sensor::Health health;
    health.rate = 198;
    health.expectedRate = 200;
    health.lossShare = 0.004;
    health.jitter = 0.018;
    health.longestStall = 0.14;
    view->showState(bar, sensor::LinkState::Streaming);
    view->showHealth(bar, health);
    ble::SensorInfo info;
    info.battery = 82;
    info.firmware = QStringLiteral("1.4");
    view->showInfo(bar, info);
    view->showZeroed(bar);
    return view;
}

void Driver::loseSensor(SensorsViewModel* sensors)
{
    sensors->showState(bar, sensor::LinkState::Lost);
    sensors->showTrouble(bar,
                         {ble::TroubleKind::Dropped, QStringLiteral("The link was lost. Bring the phone nearer.")});
}

FindSensorsViewModel* Driver::findSensors()
{
    return owned(new FindSensorsViewModel(this));
}

void Driver::hear(FindSensorsViewModel* find, int count)
{
    for (int i = 0; i < count; ++i)
        find->showFound({QString::number(i), QStringLiteral("Device %1 of a crowded room").arg(i), -40 - i, {}});
}

void Driver::fit(FindSensorsViewModel* find, bool fits)
{
    find->showFits(
        {{.map = {"packets", QStringLiteral("Plain packets"), false}, .applies = true, .fit = fits ? 0.98 : 0.1}}, 400,
        true);
}

TeachViewModel* Driver::teach()
{
    auto* view = owned(new TeachViewModel(
        &preferences_, [this](const sensor::TeachRecording&, const std::function<bool(double)>&) { return answer_; },
        [this] { return now_; }, this));
    view->begin(bar, QStringLiteral("Bar sensor"));
    view->showNotifiers(bar, {{"service", "characteristic"}});
    return view;
}

void Driver::pass(TeachViewModel* teach, double seconds)
{
    teach->addPackets(bar, {{.source = 0, .arrival = now_, .bytes = {1, 2, 3}}});
    now_ += static_cast<std::int64_t>(seconds * 1e9);
    teach->tick();
}

void Driver::answer(bool learned, int repeat)
{
    answer_ = {};
    answer_.sureness = {{"accelerometer", 0.99, "gravity comes out on all six sides"},
                        {"gyroscope", 0.96, "three turns came out whole"},
                        {"counter", 0.7, "it stood still twice"}};
    answer_.sure = 0.7;
    if (learned)
        answer_.map = sensor::SensorMap{};
    else if (repeat >= 0)
        answer_.repeat = static_cast<sensor::TeachStep>(repeat);
    answer_.why = "It turned less than once.";
}

void Driver::saveSensor()
{
    FindSensorsViewModel& find = *app_->findSensors();
    const auto& map = sensor::includedMaps().front();
    find.showFound({bar, QStringLiteral("Motion 2A"), -50, {}});
    find.choose(bar);
    find.showFits({{.map = {map.key, QString::fromStdString(map.name), false}, .applies = true, .fit = 0.97}}, 300,
                  true);
    const QString problem = find.save(QStringLiteral("Bar sensor"), 0);
    if (!problem.isEmpty())
        qWarning("%s", qPrintable(problem));
    settle();
}

CalibrationViewModel* Driver::calibration()
{
    auto* view = owned(new CalibrationViewModel(&preferences_, this));
    view->begin(bar, QStringLiteral("Bar sensor"));
    return view;
}

void Driver::lay(CalibrationViewModel* calibration, double x, double y, double z)
{
    std::vector<motion::Sample> samples;
    for (int i = 0; i < 60; ++i)
        samples.push_back({time_ += 0.01, {3 * std::sin(0.3 * i), 4 * std::cos(0.2 * i), 9}, {1.5, -1, 0.7}});
    const Eigen::Vector3d up = Eigen::Vector3d(x, y, z).normalized() * 9.9;
    for (int i = 0; i < 250; ++i)
        samples.push_back({time_ += 0.01, up + Eigen::Vector3d::Constant(0.004 * std::sin(1.7 * i)), {0, 0, 0}});
    calibration->addSamples(bar, samples);
}

} // namespace fleetrung::tests
