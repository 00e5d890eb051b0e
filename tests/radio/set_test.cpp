#include <catch2/catch.hpp>

#include <QFile>
#include <QTemporaryDir>

#include "demo/sensor/bluez/movement.hpp"
#include "demo/sensor/bluez/plain_map.hpp"
#include "engine/reps/lift.hpp"
#include "engine/reps/live_set.hpp"
#include "tests/radio/radio_bench.hpp"

using namespace fleetrung;
using namespace fleetrung::ble;

namespace
{

/// A map as a file, for the simulated sensor.
class MapFile
{
public:
    explicit MapFile(const sensor::SensorMap& map)
    {
        QFile file(path());
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(sensor::sensorMapText(map)));
    }
    [[nodiscard]] QString path() const { return folder_.filePath("map.json"); }

private:
    QTemporaryDir folder_;
};

} // namespace

// Truth: the simulated set that the sensor plays, made here again from the same seed.
TEST_CASE("a set streamed through the radio has the repetitions of the simulated truth")
{
    const demo::LiftPlan plan{.lift = "half-squat", .repetitions = 3, .seed = 5, .rate = 100};
    const auto truth = demo::simulatedSet(plan, true);
    REQUIRE(truth);
    Air air({"--alone", "--lift", "half-squat", "--repetitions", "3", "--seed", "5", "--pause", "-1"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.samples[barSensor].size() > 100; }));

    const auto* lift = reps::findLift("half-squat");
    REQUIRE(lift != nullptr);
    RunningSet set(w.radio);
    reps::LiveSet live(*lift, set.source().traits(), set.source().hasGyroscope());
    set.onSample = [&live](const motion::Sample& sample) { live.add(sample); };
    air("move go");
    const auto& strokes = truth->truth;
    const double length = truth->recording.samples.back().time;
    REQUIRE(
        waitUntil([&] { return live.announced().size() >= strokes.size(); }, static_cast<int>(1000 * length) + 5000));
    waitUntil([] { return false; }, 1000); // nothing more comes
    REQUIRE(live.announced().size() == strokes.size());
    for (std::size_t i = 0; i < strokes.size(); ++i) {
        CAPTURE(i);
        CHECK(live.announced()[i].meanVelocity.value == Approx(strokes[i].sensor.meanVelocity).margin(0.03));
        CHECK(live.announced()[i].range.value == Approx(strokes[i].sensor.range).margin(0.03));
    }
    CHECK(set.inOrder());
    CHECK(w.told.health[barSensor].lossShare == 0);
    CHECK(waitUntil([&] { return set.source().batteryPercent() == 80; }));
}

TEST_CASE("two sensors stream side by side, and a lost link of one leaves the other alone")
{
    const MapFile file(demo::plainMap());
    Air air({"--alone", "--second", file.path()});
    Watched w;
    w.radio.keep(known(barSensor));
    w.radio.keep(known(shoeSensor));
    REQUIRE(waitUntil([&] { return w.told.streaming(barSensor) && w.told.streaming(shoeSensor); }));
    RunningSet bar(w.radio, barSensor), shoe(w.radio, shoeSensor);
    REQUIRE(waitUntil([&] { return bar.samples.size() > 50 && shoe.samples.size() > 50; }));
    const auto stream = [](const auto& samples) { return samples.back().time; };
    CHECK(std::abs(stream(bar.samples) - stream(shoe.samples)) < 0.2); // one clock for both

    const auto connections = air.count("connections", 1);
    air("drop");
    const auto taken = shoe.samples.size();
    REQUIRE(waitUntil([&] { return w.told.streaming(barSensor) && shoe.samples.size() > taken + 50; }));
    CHECK(air.count("connections", 1) == connections);
    CHECK(bar.inOrder());
    CHECK(shoe.inOrder());
}

TEST_CASE("garbage bytes are counted, named and skipped")
{
    Air air({"--alone"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.samples[barSensor].size() > 50; }));
    CHECK(w.told.health[barSensor].badPackets == 0);
    air("garble 0.3");
    REQUIRE(waitUntil([&] { return w.told.health[barSensor].badPackets > 10; }));
    CHECK(w.told.health[barSensor].lastBad.has_value());
    CHECK(w.told.streaming());
}

TEST_CASE("a sensor without a map is heard as it is, and what it sends is told byte for byte")
{
    auto map = demo::plainMap();
    map.start.clear(); // it sends as soon as somebody listens
    map.stop.clear();
    const MapFile file(map);
    Air air({"--alone", "--map", file.path()});
    Watched w;
    w.radio.listen(barSensor);
    REQUIRE(waitUntil([&] { return w.told.raw.size() > 50; }));
    REQUIRE(w.told.notifiers.size() == 1); // the battery is no motion
    CHECK(w.told.notifiers[0].service == map.streams[0].service);
    CHECK(w.told.notifiers[0].characteristic == map.streams[0].characteristic);
    w.radio.stopListening();
    CHECK(waitUntil([&] { return air.count("disconnectCalls") == 1; }));

    const auto sent = air.sent(QString::fromStdString(map.streams[0].characteristic));
    REQUIRE(static_cast<std::size_t>(sent.size()) >= w.told.raw.size());
    std::size_t different = 0;
    for (std::size_t i = 0; i < w.told.raw.size(); ++i) {
        const auto& bytes = w.told.raw[i].bytes;
        const auto& original = sent[static_cast<qsizetype>(i)];
        different += !std::equal(bytes.begin(), bytes.end(), original.begin(), original.end(),
                                 [](auto a, char b) { return a == static_cast<unsigned char>(b); });
    }
    CHECK(different == 0);
}

TEST_CASE("a kept sensor can be heard raw for teaching, and streams again after that")
{
    Air air({"--alone"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.streaming(); }));
    w.radio.listen(barSensor);
    REQUIRE(waitUntil([&] { return !w.told.notifiers.empty(); }));
    CHECK(air.count("connections") == 2);
    w.told.samples.clear();
    w.radio.stopListening();
    CHECK(waitUntil([&] { return w.told.samples[barSensor].size() > 20; }));
    CHECK(air.count("connections") == 3);
}
