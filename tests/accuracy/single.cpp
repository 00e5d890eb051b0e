#include "tests/accuracy/single.hpp"

#include <algorithm>
#include <fstream>
#include <iomanip>
#include <iostream>

#include "tests/accuracy/score.hpp"

namespace fleetrung::accuracy
{
namespace
{

void printPlan(const Drawn& drawn)
{
    const auto& plan = drawn.plan;
    const auto& sensor = drawn.sensor;
    std::cout << plan.repetitions << " x " << plan.lift << ", range " << plan.range << " m, load share "
              << plan.loadShare << ", velocity loss " << plan.velocityLoss << ", top pause " << plan.topPause
              << " s, bottom pause " << plan.bottomPause << " s, tempo " << plan.tempo << ", still before "
              << plan.stillBefore << " s, after " << plan.stillAfter << " s" << (plan.rackWork ? ", rack work" : "")
              << (plan.drop ? ", dropped" : "") << "\npart " << sensor.part << ", " << sensor.rate << " Hz, wobble "
              << sensor.wobble << " rad, lever " << sensor.lever.transpose() << " m, clock skew " << sensor.clockSkew
              << "\n\n";
}

void printInstants(std::string_view what, double start, double peak, double end)
{
    std::cout << std::left << std::setw(9) << what << std::right << std::fixed << std::setprecision(4) << "  start "
              << start << "  peak " << peak << "  end " << end << std::defaultfloat;
}

void print(const simulator::SimulatedSet& set, const std::vector<reps::Repetition>& found, const SetScore& score)
{
    for (std::size_t i = 0; i < set.truth.size(); ++i) {
        const auto& truth = set.truth[i].sensor;
        printInstants("true " + std::to_string(i), truth.concentricStart, truth.peakTime, truth.concentricEnd);
        std::cout << (truth.twoPeaked ? "  two-peaked" : "") << (set.truth[i].partial ? "  partial" : "") << '\n';
        const auto& judged = score.repetitions[i];
        for (std::size_t m = 0; m < metricCount; ++m)
            if (const auto& difference = judged.difference[m])
                std::cout << std::setw(24) << allMetrics()[m].name << std::setw(12)
                          << *allMetrics()[m].truth(truth) * allMetrics()[m].scale << "  error " << std::setw(12)
                          << difference->error * allMetrics()[m].scale << ' ' << allMetrics()[m].unit << "  ("
                          << difference->sigmas() << " sigmas)\n";
    }
    for (std::size_t i = 0; i < found.size(); ++i) {
        printInstants("found " + std::to_string(i), found[i].concentricStart, found[i].peakTime,
                      found[i].concentricEnd);
        for (const auto name : reps::flagNames(found[i].flags))
            std::cout << "  " << name;
        std::cout << '\n';
    }
}

} // namespace

int showSingle(const std::string& lift, const std::string& fault, double rate, std::uint64_t seed,
               const std::string& path)
{
    const auto faults = allFaults();
    const auto found = std::find_if(faults.begin(), faults.end(), [&](const Fault& f) { return f.name == fault; });
    const auto* known = reps::findLift(lift);
    if (known == nullptr || found == faults.end() || rate <= 0) {
        std::cerr << "fleetrung-accuracy: --set needs --lift, --rate and --fault\n";
        return 2;
    }
    const Situation situation{known, &*found, rate, seed};
    printPlan(draw(situation));
    const auto set = simulate(situation);
    if (!set) {
        std::cerr << "fleetrung-accuracy: " << describe(set.error()) << '\n';
        return 1;
    }
    const auto score = judge(situation, false);
    const auto analysis = reps::analyseSet(set->recording, *known);
    print(*set, analysis ? analysis->repetitions : std::vector<reps::Repetition>{}, score);
    std::cout << score.refusal << '\n';
    if (!path.empty())
        std::ofstream(path, std::ios::binary) << simulator::recordingCsv(set->recording, lift, 0);
    return 0;
}

} // namespace fleetrung::accuracy
