// The simulated sensor serves the layout of any map, and moves as it is told.
#include <QFile>

#include "demo/sensor/bluez/gatt_layout.hpp"
#include "demo/sensor/bluez/movement.hpp"
#include "engine/sensor/packet_decoder.hpp"
#include "tests/ble/streaming.hpp"

namespace fleetrung::ble
{
namespace
{

struct Written {
    QTemporaryDir folder;
    QString path;
};

/// A file of that content, for as long as this lives.
std::unique_ptr<Written> written(const std::string& content)
{
    auto file = std::make_unique<Written>();
    file->path = file->folder.filePath("file");
    QFile out(file->path);
    REQUIRE(out.open(QIODevice::WriteOnly));
    out.write(QByteArray::fromStdString(content));
    return file;
}

/// The samples in notifications of the plain map.
std::vector<sensor::RawSample> decoded(const std::vector<QByteArray>& packets)
{
    sensor::PacketDecoder decoder(plain);
    std::vector<sensor::RawSample> samples;
    for (const auto& packet : packets) {
        const auto* bytes = reinterpret_cast<const std::uint8_t*>(packet.constData());
        for (const auto& sample : decoder.decode(0, {bytes, static_cast<std::size_t>(packet.size())}, 0)) {
            samples.push_back(sample);
        }
    }
    return samples;
}

double forceOf(const sensor::RawSample& sample)
{
    return Eigen::Vector3d(sample.specificForce[0], sample.specificForce[1], sample.specificForce[2]).norm();
}

} // namespace

TEST_CASE("a sensor of every map that comes with the program streams gravity at rest")
{
    if (!privateBus().running()) {
        WARN("skipped: no dbus-daemon on this machine (Debian package dbus)");
        return;
    }
    for (const auto& map : sensor::includedMaps()) {
        INFO(map.key);
        const auto file = written(sensor::sensorMapText(map));
        const auto bench = startBench({"--map", file->path, "--pause", "-1", "--alone"});
        BareCentral central;
        REQUIRE(central.find(barSensor));
        REQUIRE(central.connectTo(barSensor));
        const auto& first = map.streams.front();
        REQUIRE(central.subscribe(QString::fromStdString(first.service), QString::fromStdString(first.characteristic)));
        for (const auto& write : map.start) {
            central.write(QString::fromStdString(write.service), QString::fromStdString(write.characteristic),
                          demo::bytesOf(write.bytes));
        }
        REQUIRE(more(central, 10));
        sensor::PacketDecoder decoder(map);
        int samples = 0;
        for (const auto& packet : central.received) {
            const auto* bytes = reinterpret_cast<const std::uint8_t*>(packet.constData());
            for (const auto& sample : decoder.decode(0, {bytes, static_cast<std::size_t>(packet.size())}, 0)) {
                if (!std::isnan(sample.specificForce[0])) {
                    CHECK(forceOf(sample) == Approx(9.8).margin(0.6)); // offsets of 0.02 g an axis, one deviation
                    ++samples;
                }
            }
        }
        CHECK(samples >= 5);
    }
}

TEST_CASE("a recording is played as it was written")
{
    demo::LiftPlan lift;
    lift.repetitions = 1;
    lift.seed = 7;
    lift.rate = 200;
    const auto set = demo::simulatedSet(lift, true);
    REQUIRE(set);
    const auto file = written(simulator::recordingCsv(set->recording, "half-squat", 0));
    const auto bench = startBench({"--recording", file->path, "--pause", "0"});
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, set->recording.samples.size() + 100, 20000));
    const auto samples = decoded(central.received);
    const auto same = [](const sensor::RawSample& came, const motion::Sample& was) {
        for (int axis = 0; axis < 3; ++axis) {
            // Half a count of the plain map, and rounding.
            if (std::abs(came.specificForce[static_cast<std::size_t>(axis)] - was.specificForce[axis]) > 0.0025 ||
                std::abs(came.angularRate[static_cast<std::size_t>(axis)] - was.angularRate[axis]) > 0.0006) {
                return false;
            }
        }
        return true;
    };
    // It was found somewhere in the recording, and comes round: every sample from there on is the recording's next.
    const auto& recorded = set->recording.samples;
    std::size_t longest = 0;
    for (std::size_t begin = 0; begin < recorded.size(); ++begin) {
        std::size_t count = 0;
        while (count < samples.size() && same(samples[count], recorded[(begin + count) % recorded.size()])) {
            ++count;
        }
        longest = std::max(longest, count);
    }
    CHECK(longest == samples.size());
}

TEST_CASE("a posed sensor lies on the face it is told, and turns once about the vertical")
{
    const auto bench = startBench({"--posed"});
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE((*bench)("move face -x") == "ok");
    REQUIRE(more(central, 200));
    CHECK(decoded(central.received).back().specificForce[0] == Approx(-9.8).margin(0.7));
    central.received.clear();
    REQUIRE((*bench)("move turn") == "ok");
    REQUIRE(more(central, 450, 10000));
    double turned = 0;
    for (const auto& sample : decoded(central.received)) {
        turned += sample.angularRate[0] / 100;
    }
    // Counter-clockwise seen from above, the x axis pointing down; offset of 1 degree/s, one deviation, over 4.5 s.
    CHECK(turned == Approx(-6.28).margin(0.25));
}

} // namespace fleetrung::ble
