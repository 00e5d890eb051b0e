// fleetrung-export-sets FOLDER COUNT SEED: simulated sets of class A as recording CSV with their truth, for the peer.
#include <fstream>
#include <iostream>
#include <string>

#include "engine/base/json.hpp"
#include "tests/accuracy/situation.hpp"

using namespace fleetrung;

namespace
{

Json truthOf(const simulator::TrueRepetition& truth)
{
    const auto& rep = truth.sensor;
    return {{"start", rep.concentricStart},
            {"peak_at", rep.peakTime},
            {"end", rep.concentricEnd},
            {"mean_velocity", rep.meanVelocity},
            {"peak_velocity", rep.peakVelocity},
            {"time_to_peak", rep.timeToPeakVelocity},
            {"range", rep.range},
            {"from_rest", rep.eccentricPeakVelocity == 0}};
}

bool write(const std::string& path, const std::string& bytes)
{
    std::ofstream file(path, std::ios::binary);
    file << bytes;
    return static_cast<bool>(file.flush());
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 4) {
        std::cerr << "usage: fleetrung-export-sets FOLDER COUNT SEED\n";
        return 2;
    }
    const std::string folder = argv[1];
    const auto lifts = accuracy::judgedLifts();
    const auto count = std::stoul(argv[2]);
    const auto seed = std::stoull(argv[3]);
    std::uint64_t number = 0;
    for (std::size_t i = 0; i < count; ++number) {
        const auto* lift = lifts[i % lifts.size()];
        const auto set = accuracy::simulate({lift, &accuracy::allFaults().front(), 200, accuracy::mixed(seed, number)});
        if (!set)
            continue; // no body can do what was drawn
        Json truth{{"lift", lift->key},
                   {"least_range", lift->minimumRange},
                   {"greatest_range", lift->maximumRange},
                   {"repetitions", Json::array()}};
        for (const auto& rep : set->truth)
            truth["repetitions"].push_back(truthOf(rep));
        const auto name = folder + "/" + std::to_string(i++);
        if (!write(name + ".csv", simulator::recordingCsv(set->recording, lift->key, 0)) ||
            !write(name + ".truth.json", jsonText(truth))) {
            std::cerr << "fleetrung-export-sets: cannot write " << name << '\n';
            return 1;
        }
    }
    return 0;
}
