// A stored capture played through the live set again.
#include "logbook_helper.hpp"

#include <bit>

#include "engine/reps/live_set.hpp"
#include "mobile/logbook/capture_mapping.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

struct Announcement {
    double at; ///< s
    reps::Repetition repetition;
};

std::vector<Announcement> play(const motion::Recording& recording, const reps::Lift& lift)
{
    reps::LiveSet live(lift, recording.sensor, recording.hasGyroscope);
    std::vector<Announcement> announced;
    for (const auto& sample : recording.samples)
        for (const auto& repetition : live.add(sample))
            announced.push_back({sample.time, repetition});
    return announced;
}

bool sameBits(double a, double b)
{
    return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b);
}

bool sameBits(const reps::Measured& a, const reps::Measured& b)
{
    return sameBits(a.value, b.value) && sameBits(a.uncertainty, b.uncertainty);
}

} // namespace

TEST_CASE("a stored capture played again announces the very values that were announced live, bit for bit")
{
    const std::string key = GENERATE("full-squat", "floor-power-clean", "calf-raise");
    const auto recording = simulated(key, 5, 23).recording;
    const auto encoded = good(store::encodeCapture(samplesOf(recording), scalesOf(recording.sensor)));
    const auto decoded = good(store::decodeCapture(encoded.bytes));
    const auto stored = recordingOf(decoded.samples, recording.hasGyroscope, recording.sensor);
    const auto& lift = *reps::findLift(key);
    const auto live = play(recording, lift), again = play(stored, lift);
    REQUIRE(live.size() == again.size());
    REQUIRE(live.size() >= 4);
    for (std::size_t i = 0; i < live.size(); ++i) {
        const auto& a = live[i].repetition;
        const auto& b = again[i].repetition;
        CHECK(sameBits(live[i].at, again[i].at));
        CHECK(sameBits(a.concentricStart, b.concentricStart));
        CHECK(sameBits(a.concentricEnd, b.concentricEnd));
        CHECK(sameBits(a.meanVelocity, b.meanVelocity));
        CHECK(sameBits(a.peakVelocity, b.peakVelocity));
        CHECK(sameBits(a.timeToPeakVelocity, b.timeToPeakVelocity));
        CHECK(sameBits(a.range, b.range));
        CHECK(a.flags == b.flags);
    }
}
