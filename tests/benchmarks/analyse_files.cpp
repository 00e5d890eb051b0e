// fleetrung-analyse-files FILE...: the engine's repetitions of each recording CSV, and the time its analysis took
// (the middle of three), one JSON object a line. Reading the file is not timed.
#include <algorithm>
#include <array>
#include <chrono>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>

#include "engine/base/json.hpp"
#include "engine/motion/recording_csv.hpp"
#include "engine/reps/analyse.hpp"

using namespace fleetrung;

namespace
{

Json repetition(const reps::Repetition& rep)
{
    return {{"start", rep.concentricStart},
            {"peak_at", rep.peakTime},
            {"end", rep.concentricEnd},
            {"mean_velocity", rep.meanVelocity.value},
            {"peak_velocity", rep.peakVelocity.value},
            {"time_to_peak", rep.timeToPeakVelocity.value},
            {"range", rep.range.value}};
}

Json analysed(const motion::Recording& recording, const reps::Lift& lift)
{
    std::array<double, 3> seconds{};
    Json found = Json::array();
    for (auto& second : seconds) {
        const auto begun = std::chrono::steady_clock::now();
        const auto analysis = reps::analyseSet(recording, lift);
        second = std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
        if (analysis && &second == seconds.data())
            for (const auto& rep : analysis->repetitions)
                found.push_back(repetition(rep));
    }
    std::sort(seconds.begin(), seconds.end());
    return {{"signal_s", recording.samples.back().time - recording.samples.front().time},
            {"took_s", seconds[1]},
            {"repetitions", found}};
}

} // namespace

int main(int argc, char** argv)
{
    for (int i = 1; i < argc; ++i) {
        std::ifstream file(argv[i], std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), {}};
        const auto read = motion::importRecording(bytes);
        const auto* lift = read ? reps::findLift(read->lift.value_or("free")) : nullptr;
        if (lift == nullptr) {
            std::cerr << argv[i] << ": " << (read ? "no such lift" : describe(read.error())) << '\n';
            return 1;
        }
        std::cout << jsonText(analysed(read->recording, *lift)) << '\n';
    }
    return 0;
}
