// The faults of the report: which class each belongs to and how it is made.
#include <algorithm>

#include "tests/accuracy/situation.hpp"

namespace fleetrung::accuracy
{
namespace
{

using simulator::Random;
using simulator::SimulatedSet;

/// Takes the samples between two instants out of the recording.
void cut(SimulatedSet& set, double from, double to)
{
    auto& samples = set.recording.samples;
    const auto inside = [&](const motion::Sample& sample) { return sample.time > from && sample.time < to; };
    samples.erase(std::remove_if(samples.begin(), samples.end(), inside), samples.end());
}

constexpr double burst = 0.3; // s

/// Packets of 20 ms: two lost in a row still leave a gap under 60 ms.
void shortGaps(Drawn& drawn, Random&)
{
    drawn.sensor.samplesPerPacket = std::max(1, static_cast<int>(0.02 * drawn.sensor.rate));
    drawn.sensor.lossShare = 0.02;
}

template <int percent> void loss(Drawn& drawn, Random&)
{
    drawn.sensor.samplesPerPacket = std::max(1, static_cast<int>(0.05 * drawn.sensor.rate));
    drawn.sensor.lossShare = 0.01 * percent;
}

void jitter(Drawn& drawn, Random&)
{
    drawn.sensor.timingJitter = 0.1 / drawn.sensor.rate;
}

/// Without one a bar that turns in the hands cannot be told from one that moves: it is held to 6 degrees here.
void noGyroscope(Drawn& drawn, Random& random)
{
    drawn.sensor.hasGyroscope = false;
    drawn.sensor.wobble = random.uniform(-0.1, 0.1);
}

void oldPart(Drawn& drawn, Random&)
{
    drawn.sensor.part = "old";
}

/// Impacts go beyond +-4 g, and the hardest pulls beyond +-2 g.
template <int range> void rangeOf(Drawn& drawn, Random&)
{
    drawn.sensor.accelerometerRange = range;
}

/// A dropped bar clips at +-16 g when it lands: that is between repetitions, and no longer class A.
void dropped(Drawn& drawn, Random&)
{
    drawn.plan.drop = true;
}

void nearMaximum(Drawn& drawn, Random& random)
{
    drawn.plan.loadShare = random.uniform(0.92, 1.0);
}

void doubledAndLate(Drawn& drawn, Random&)
{
    drawn.sensor.doubledShare = 0.1;
    drawn.sensor.swappedShare = 0.1;
}

void clockStepBack(Drawn& drawn, Random& random)
{
    drawn.sensor.faults.clockStep = random.uniform(-0.5, -0.1);
    drawn.sensor.faults.clockStepAt = drawn.sensor.startTime + random.uniform(2, 10);
}

/// Any of the six, from some instant of the first three seconds on.
void stuckAxis(Drawn& drawn, Random& random)
{
    drawn.sensor.faults.stuckAxis = random.below(6);
    drawn.sensor.faults.stuckFrom = drawn.sensor.startTime + random.uniform(0, 3);
}

/// Where nothing turns, a swapped sign does no harm and leaves no trace.
void swappedSign(Drawn& drawn, Random& random)
{
    drawn.sensor.faults.swappedSign[static_cast<std::size_t>(random.below(3))] = true;
    drawn.sensor.wobble = random.uniform(0.3, 0.7);
}

/// One gap of 300 ms in the pause after a repetition, where there is room for it; else before the first one.
void burstOutside(SimulatedSet& set, Random& random)
{
    std::vector<double> places;
    for (std::size_t i = 0; i < set.truth.size(); ++i) {
        const double end = set.truth[i].sensor.concentricEnd + 0.1;
        const double next =
            i + 1 < set.truth.size() ? set.truth[i + 1].sensor.eccentricStart : set.recording.samples.back().time;
        if (next - end > burst + 0.2)
            places.push_back(end + 0.5 * (next - end - burst));
    }
    if (places.empty())
        return;
    const double from = places[static_cast<std::size_t>(random.below(static_cast<int>(places.size())))];
    cut(set, from, from + burst);
}

/// In every repetition: 100 ms about the peak of velocity are missing.
void gapInside(SimulatedSet& set, Random&)
{
    for (const auto& rep : set.truth)
        cut(set, rep.sensor.peakTime - 0.05, rep.sensor.peakTime + 0.05);
}

const std::vector<double> classARates{100, 200, 400, 1000};
const std::vector<double> usualRate{200};

const std::vector<Fault> faults{
    {"none", Class::A, "both sensors, unclipped, no gap", classARates, nullptr, nullptr},
    {"short-gaps", Class::A, "2 % of packets of 20 ms lost", usualRate, shortGaps, nullptr},
    {"doubled-late", Class::A, "10 % of packets doubled, 10 % late", usualRate, doubledAndLate, nullptr, true},
    {"near-maximum", Class::A, "loads of 92 to 100 % of the maximum: two peaks", usualRate, nearMaximum, nullptr},
    {"old-part", Class::B, "an old consumer part", usualRate, oldPart, nullptr},
    {"slow", Class::B, "25 and 50 samples a second", {25, 50}, nullptr, nullptr},
    {"loss-2", Class::B, "2 % of packets of 50 ms lost", usualRate, loss<2>, nullptr},
    {"loss-5", Class::B, "5 % of packets of 50 ms lost", usualRate, loss<5>, nullptr},
    {"loss-10", Class::B, "10 % of packets of 50 ms lost", usualRate, loss<10>, nullptr},
    {"burst-outside", Class::B, "300 ms missing between repetitions", usualRate, nullptr, burstOutside},
    {"jitter", Class::B, "instants scatter by a tenth of the interval", usualRate, jitter, nullptr},
    {"no-gyroscope", Class::B, "no gyroscope; the bar turns by 6 degrees at most", usualRate, noGyroscope, nullptr},
    {"clock-step", Class::B, "time stamps jump back by 0.1 to 0.5 s", usualRate, clockStepBack, nullptr, true},
    {"dropped", Class::B, "the bar is dropped: its landing clips", usualRate, dropped, nullptr, false, true},
    {"range-4g", Class::B, "an accelerometer of +-4 g", usualRate, rangeOf<4>, nullptr},
    {"range-2g", Class::B, "an accelerometer of +-2 g", usualRate, rangeOf<2>, nullptr},
    {"stuck-axis", Class::C, "one axis of six keeps its reading", usualRate, stuckAxis, nullptr},
    {"swapped-sign", Class::C, "one axis of the gyroscope turns the wrong way", usualRate, swappedSign, nullptr},
    {"gap-inside", Class::C, "100 ms missing about the peak of every repetition", usualRate, nullptr, gapInside},
};

} // namespace

std::span<const Fault> allFaults()
{
    return faults;
}

} // namespace fleetrung::accuracy
