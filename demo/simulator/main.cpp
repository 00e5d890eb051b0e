// fleetrung-simulate: one simulated set as a recording CSV, and its truth as CSV beside it.
#include <cstdint>
#include <cstdio>
#include <exception>
#include <fstream>
#include <iostream>
#include <map>
#include <string>

#include <CLI/CLI.hpp>

#include "demo/simulator/simulator.hpp"

using namespace fleetrung::simulator;

namespace
{

bool write(const std::string& path, const std::string& bytes)
{
    std::ofstream file(path, std::ios::binary);
    file << bytes;
    file.close();
    if (!file) {
        std::cerr << "fleetrung-simulate: cannot write " << path << "\n";
    }
    return static_cast<bool>(file);
}

/// Options of what the sensor and the radio do wrong.
void addFaults(CLI::App& app, SensorPlan& sensor, std::string& swappedSigns)
{
    const std::map<std::string, int> axes{{"accelerometer-x", 0}, {"accelerometer-y", 1}, {"accelerometer-z", 2},
                                          {"gyroscope-x", 3},     {"gyroscope-y", 4},     {"gyroscope-z", 5}};
    auto& faults = sensor.faults;
    app.add_option("--loss", sensor.lossShare, "share of packets lost");
    app.add_option("--doubled", sensor.doubledShare, "share of packets that arrive twice");
    app.add_option("--swapped", sensor.swappedShare, "share of packets that arrive after the next one");
    app.add_option("--burst-loss", faults.burstLoss, "s without a sample, once");
    app.add_option("--burst-at", faults.burstAt, "s, where that begins");
    app.add_option("--burst-repetition", faults.burstRepetition,
                   "instead: in the middle of the concentric phase of this repetition, from 0");
    app.add_option("--clock-step", faults.clockStep, "s that the time stamps jump, once (with --as-received)");
    app.add_option("--clock-step-at", faults.clockStepAt, "s");
    app.add_option("--accelerometer-range", sensor.accelerometerRange, "g, 2-32; 0 = the part's own");
    app.add_option("--stuck-axis", faults.stuckAxis, "accelerometer-x .. gyroscope-z keeps one reading")
        ->transform(CLI::CheckedTransformer(axes));
    app.add_option("--stuck-from", faults.stuckFrom, "s, from when on");
    app.add_option("--swapped-sign", swappedSigns, "axes of the gyroscope that turn the wrong way, for example xz")
        ->check([](const std::string& text) {
            return text.find_first_not_of("xyz") == std::string::npos ? "" : "give letters of xyz";
        });
    app.add_flag("!--no-gyroscope", sensor.hasGyroscope, "the sensor has no gyroscope");
}

void addJumps(CLI::App& app, SetPlan& plan)
{
    const std::map<std::string, Mishap> mishaps{{"none", Mishap::None},
                                                {"flat-landing", Mishap::FlatLanding},
                                                {"bent-landing", Mishap::BentLanding},
                                                {"double-bounce", Mishap::DoubleBounce},
                                                {"ends-in-flight", Mishap::EndsInFlight},
                                                {"onto-box", Mishap::OntoBox}};
    app.add_option("--contact", plan.contactTime, "s, drop jumps and ankle hops; 0 = usual");
    app.add_option("--jump-height", plan.jumpHeight, "m; 0 = usual");
    app.add_flag("--on-shoe", plan.onShoe, "jumps: the sensor on a shoe instead of the waist");
    app.add_flag("--approach", plan.approach, "jumps: walks up first");
    app.add_option("--mishap", plan.mishap,
                   "of jumps: none, flat-landing, bent-landing, double-bounce, ends-in-flight, onto-box")
        ->transform(CLI::CheckedTransformer(mishaps));
}

int run(int argc, char** argv)
{
    CLI::App app{"Writes one simulated set as a recording CSV, and its truth as CSV beside it."};
    SetPlan plan;
    SensorPlan sensor;
    std::string part = "A";
    std::string output = "set.csv";
    std::uint64_t seed = 1;
    double loadKg = 0;
    bool lifeless = false;
    bool asReceived = false;
    std::string swappedSigns;
    app.add_option("output", output,
                   "recording CSV to write; the truth goes to the same name with .truth.csv, of jumps with .jumps.csv");
    app.add_option("--lift", plan.lift, "lift key, ankle-hop, counter-movement-jump or squat-jump");
    app.add_option("--repetitions", plan.repetitions, "0-30");
    app.add_option("--range", plan.range, "m; 0 = usual for the lift");
    app.add_option("--load-share", plan.loadShare, "of the one-repetition maximum, 0-1");
    app.add_option("--load", loadKg, "kg, written into the file");
    app.add_option("--mean-velocity", plan.meanVelocity, "m/s; 0 = from the load");
    app.add_option("--time-to-peak-share", plan.timeToPeakShare, "of the concentric duration; 0 = usual");
    app.add_option("--top-pause", plan.topPause, "s");
    app.add_option("--bottom-pause", plan.bottomPause, "s; 0 = touch-and-go");
    app.add_option("--tempo", plan.tempo, "eccentric duration, relative to usual");
    app.add_option("--velocity-loss", plan.velocityLoss, "share lost by the last repetition");
    app.add_flag("--rack-work", plan.rackWork, "plates, un-racking, walking out, re-racking");
    app.add_flag("--drop", plan.drop, "drop the bar instead of lowering it");
    app.add_flag("--lifeless", lifeless, "no tremor, no breathing, no sway");
    app.add_option("--part", part, "sensor part: A, B, C, D, E, old, perfect");
    app.add_option("--rate", sensor.rate, "Hz, 25-2000");
    app.add_flag("--any-mounting", sensor.randomMounting, "sensor turned any way");
    app.add_option("--wobble", sensor.wobble, "rad, rotation about the bar over a stroke");
    app.add_option("--lever", sensor.lever.y(), "m, sensor from the bar's centre along the bar");
    app.add_option("--skew", sensor.clockSkew, "of the sensor's clock, relative");
    app.add_option("--jitter", sensor.timingJitter, "s, standard deviation");
    addJumps(app, plan);
    addFaults(app, sensor, swappedSigns);
    app.add_flag("--as-received", asReceived, "rows as they came off the air: late packets late, doubled ones twice");
    app.add_option("--seed", seed, "the same seed gives the same bytes");
    CLI11_PARSE(app, argc, argv);

    sensor.part = part;
    for (const char axis : swappedSigns) {
        sensor.faults.swappedSign.at(static_cast<std::size_t>(axis - 'x')) = true;
    }
    if (lifeless) {
        plan.living = false;
        plan.sway = 0;
    }
    auto set = simulateSet(plan, sensor, seed);
    if (!set) {
        std::cerr << "fleetrung-simulate: " << fleetrung::describe(set.error()) << "\n";
        return 2;
    }
    if (asReceived) {
        set->recording.samples = std::move(set->received);
    }
    auto truthPath = output;
    if (truthPath.ends_with(".csv")) {
        truthPath.resize(truthPath.size() - 4);
    }
    const auto jumpsPath = truthPath + ".jumps.csv";
    truthPath += ".truth.csv";
    if (!write(output, recordingCsv(set->recording, plan.lift, loadKg)) || !write(truthPath, truthCsv(set->truth))) {
        return 1;
    }
    if (!set->jumps.empty() && !write(jumpsPath, jumpsCsv(set->jumps))) {
        return 1;
    }
    std::cout << output << ": " << set->recording.samples.size() << " samples, " << set->truth.size()
              << " repetitions; truth in " << truthPath << "\n";
    return 0;
}

} // namespace

int main(int argc, char** argv)
{
    try {
        return run(argc, argv);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "fleetrung-simulate: %s\n", error.what());
        return 1;
    }
}
