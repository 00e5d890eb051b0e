// fleetrung-sensor-watch: the app's radio without its pages. Finds a sensor by the services of its map, connects, takes
// one set from it and says each repetition as it ends: what the simulated sensor does can be watched on any terminal.
#include <exception>
#include <fstream>
#include <iostream>
#include <sstream>

#include <CLI/CLI.hpp>
#include <QCoreApplication>
#include <QTimer>

#include "demo/sensor/bluez/plain_map.hpp"
#include "engine/reps/live_set.hpp"
#include "mobile/ble/radio.hpp"

using namespace fleetrung;

namespace
{

struct Plan {
    std::string map; ///< file; empty: the plain map
    std::string lift = "half-squat";
    std::size_t repetitions = 5;
    int patience = 120; ///< s
};

const char* nameOf(sensor::LinkState state)
{
    static constexpr const char* names[] = {"idle", "searching", "connecting", "streaming", "lost"};
    return names[static_cast<std::size_t>(state)];
}

/// One set: from the first streamed sample to the last repetition asked for.
class Watch : public QObject
{
public:
    Watch(sensor::SensorMap map, const reps::Lift& lift, std::size_t repetitions)
        : map_(std::move(map)), lift_(lift), wanted_(repetitions), radio_(ble::devicePermission())
    {
        connect(&radio_, &ble::Radio::found, this, [this](const auto& sensor) { take(sensor); });
        connect(&radio_, &ble::Radio::stateChanged, this, [this](const QString& address, sensor::LinkState state) {
            std::cout << "link: " << nameOf(state) << std::endl;
            if (state == sensor::LinkState::Streaming && !source_) {
                begin(address);
            }
        });
        connect(&radio_, &ble::Radio::trouble, this, [](const QString&, const ble::Trouble& trouble) {
            std::cout << "trouble: " << trouble.text.toStdString() << std::endl;
        });
        connect(&radio_, &ble::Radio::health, this, [](const QString&, const sensor::Health& health) {
            std::cout << "health: " << health.rate << " Hz, " << 100 * health.lossShare << " % lost, jitter "
                      << 1000 * health.jitter << " ms" << std::endl;
        });
        std::cout << "searching" << std::endl;
        radio_.scan();
    }

private:
    void take(const ble::FoundSensor& found)
    {
        std::cout << "found: " << found.address.toStdString() << " \"" << found.name.toStdString() << "\" "
                  << found.signal << " dBm" << std::endl;
        if (!taken_ && found.services.contains(QString::fromStdString(map_.streams.front().service))) {
            taken_ = true;
            radio_.stopScan();
            radio_.keep({found.address, found.name, map_, {}});
        }
    }

    void begin(const QString& address)
    {
        set_ = std::make_unique<reps::LiveSet>(lift_, map_.traits, map_.hasGyroscope());
        source_ = radio_.sourceOf(address)();
        source_->start({[](sensor::LinkState) {}, [this](const auto& sample, const auto&) { add(sample); },
                        [](const Error& error) { std::cout << describe(error) << std::endl; }});
    }

    void add(const motion::Sample& sample)
    {
        for (const auto& repetition : set_->add(sample)) {
            std::cout << "repetition " << ++told_ << ": mean " << repetition.meanVelocity.value << " m/s, peak "
                      << repetition.peakVelocity.value << " m/s after " << 1000 * repetition.timeToPeakVelocity.value
                      << " ms" << std::endl;
        }
        if (told_ >= wanted_) {
            // Not from within the source's own call.
            QTimer::singleShot(0, this, [] { QCoreApplication::exit(0); });
        }
    }

    sensor::SensorMap map_;
    const reps::Lift& lift_;
    std::size_t wanted_, told_ = 0;
    bool taken_ = false;
    ble::Radio radio_;
    std::unique_ptr<reps::LiveSet> set_;
    std::unique_ptr<sensor::SampleSource> source_;
};

int fault(const std::string& text)
{
    std::cerr << "fleetrung-sensor-watch: " << text << "\n";
    return 2;
}

int run(int argc, char** argv)
{
    CLI::App app{"Finds a sensor, takes one set from it and says each repetition."};
    Plan plan;
    app.add_option("--map", plan.map, "sensor map (JSON); without it the simulated sensor's plain one");
    app.add_option("--lift", plan.lift, "lift key");
    app.add_option("--repetitions", plan.repetitions, "ends after so many");
    app.add_option("--patience", plan.patience, "s after which it gives up");
    CLI11_PARSE(app, argc, argv);

    const auto* lift = reps::findLift(plan.lift);
    if (lift == nullptr) {
        return fault("no lift is called " + plan.lift);
    }
    auto map = Expected<sensor::SensorMap>(demo::plainMap());
    if (!plan.map.empty()) {
        std::ostringstream text;
        text << std::ifstream(plan.map).rdbuf();
        map = sensor::parseSensorMap(text.str());
    }
    if (!map) {
        return fault(plan.map + ": " + describe(map.error()));
    }
    QCoreApplication application(argc, argv);
    const Watch watch(std::move(*map), *lift, plan.repetitions);
    QTimer::singleShot(1000 * plan.patience, &application, [] {
        std::cout << "not all repetitions came in time" << std::endl;
        QCoreApplication::exit(1);
    });
    return QCoreApplication::exec();
}

} // namespace

int main(int argc, char** argv)
{
    try {
        return run(argc, argv);
    } catch (const std::exception& error) {
        return fault(error.what());
    }
}
