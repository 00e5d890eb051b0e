#include "engine/motion/stream_clock.hpp"

#include <algorithm>
#include <cmath>
#include <complex>
#include <limits>
#include <numbers>
#include <utility>

#include "engine/motion/lower_envelope.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double nanosecond = 1e-9;
constexpr double unknownPeriod = 0.01;  // s, until two packets have come
constexpr double widestPace = 40;       // of an unknown period: 2.5 Hz to 4 kHz
constexpr double stampSpread = 200e-6;  // standard deviation of the pace of a crystal; common practice, no source
constexpr double rateSpread = 0.025;    // of a rate as the sensor's maker says; starting value of this project
constexpr double paceKeptSpread = 1e-4; // of a pace found before the link was lost
constexpr double contradicted = 4;      // standard errors beyond which the sensor's word on its pace counts for nothing
constexpr double feigned = 0.03;        // s by which a slow beat of packets and radio bends the edge
constexpr double settledSpread = 1e-3;  // of a pace good enough for a set: 0.3 ms in 0.3 s
constexpr double settledAfter = 0.5;    // s
constexpr double offsetOver = 10;       // s of arrivals that say where the line lies now
constexpr double slewOver = 2;          // s in which an error would be gone
constexpr double slewMost = 0.01;       // share of the pace
constexpr double stepForward = 0.2;     // s behind the line: goes there at once
constexpr double leastStep = 1e-6;      // s between samples whose ticks do not grow
constexpr double steppedBack = 0.5;     // s: numbers that fall so far began anew
constexpr int fewSamples = 16;          // until the step from sample to sample is known
constexpr double likeStep = 0.3;        // relative
constexpr double stepWeight = 0.05;
constexpr double spreadStep = 0.02; // of the running median, relative
// A loss without counter or stamp: the lower edge of the arrivals stands a packet higher than before, and stays there.
constexpr double edgeNow = 1, edgeBefore = 3; // s of arrivals that tell the edge now, and before
constexpr double longSilence = 0.2;           // s without a packet: what was held up comes in late for a while
constexpr double calmAfter = 2;               // s after it
constexpr double shortestLoss = 5e-3;         // s: a shorter packet drowns in the lateness of all
constexpr double likePackets = 0.3;           // packets from a whole number of them
constexpr double strollOver = 0.5;            // s of packets that tell whether lateness strolls
constexpr double strolls = 0.3;               // length of the mean of lateness as a pointer, one turn a packet
constexpr double fullTurn = 2 * std::numbers::pi;

} // namespace

struct StreamClock::State {
    double nominalPeriod = 0; // s; 0: not known
    bool begun = false, wishesFrozen = false, frozen = false, restarted = false;
    ClockFit line; // of the times given out
    double unit = unknownPeriod;
    double bestPace = 1, paceSpread = std::numeric_limits<double>::infinity(); // s per unit; relative
    double wordPace = 1, wordSpread = std::numeric_limits<double>::infinity(); // what is believed before any arrival
    LowerEnvelope envelope;
    double firstArrival = 0;
    std::int64_t origin = 0, base = 0, tick = 0, count = 0;
    double time = 0;
    double ticksASample = 1;
    int samples = 0, otherSteps = 0; // since start or restart, up to a few; steps in a row unlike ticksASample
    double spread = 0;
    std::int64_t missing = 0, owed = 0;    // samples: in all, and those that the count goes on by after the set
    std::complex<double> stroll = 1;       // mean of lateness as a pointer
    double edge = 0;                       // s, of the arrivals at the last block
    double lastArrival = 0, calmSince = 0; // s

    [[nodiscard]] double secondsOf(std::int64_t arrival) const
    {
        return static_cast<double>(arrival - line.arrivalZero) * nanosecond;
    }
    [[nodiscard]] double unitsOf(std::int64_t at) const { return static_cast<double>(at - origin) * unit; }

    void begin(const Tick& first)
    {
        begun = true;
        line.by = first.hasStamp       ? ClockFit::By::Stamp
                  : first.counter >= 0 ? ClockFit::By::Counter
                                       : ClockFit::By::Arrival;
        if (line.by == ClockFit::By::Stamp) {
            unit = nanosecond;
            ticksASample = (nominalPeriod > 0 ? nominalPeriod : unknownPeriod) / nanosecond;
            wordSpread = stampSpread;
        } else if (nominalPeriod > 0) {
            unit = nominalPeriod;
            wordSpread = rateSpread;
        }
        line.period = unit;
        paceSpread = wordSpread;
        origin = line.tickZero = line.by == ClockFit::By::Arrival ? 0 : rawTick(first);
        firstArrival = secondsOf(first.arrival);
        line.offset = firstArrival - ticksToLast(first) * line.period;
        tick = origin - 1;
        time = line.offset - line.period;
    }

    /// Ticks from this sample to the last one of its packet, about.
    [[nodiscard]] double ticksToLast(const Tick& of) const
    {
        return static_cast<double>(of.count - 1 - of.index) * ticksASample;
    }

    std::int64_t rawTick(const Tick& of)
    {
        if (line.by == ClockFit::By::Stamp && of.hasStamp)
            return std::llround(of.stamp / nanosecond);
        if (line.by == ClockFit::By::Counter && of.counter >= 0)
            return of.counter;
        if (line.by == ClockFit::By::Arrival)
            return count++;
        return tick - base + std::max<std::int64_t>(std::llround(ticksASample), 1); // this one came without
    }

    /// The sensor's numbers began anew: they go on where the line stands at this arrival.
    void goOn(const Tick& of, std::int64_t raw)
    {
        const double now = secondsOf(of.arrival) - ticksToLast(of) * line.pace * line.period;
        const double ticks = (now - line.offset) / (line.pace * line.period);
        base = std::max<std::int64_t>(line.tickZero + std::llround(ticks), tick + 1) - raw;
        envelope.clear();
        wordPace = bestPace;
        wordSpread = paceSpread = std::max(std::min(paceSpread, wordSpread), paceKeptSpread);
        firstArrival = secondsOf(of.arrival);
        samples = 0;
        restarted = false;
    }

    void take(std::int64_t next, bool counted);
    void packetEnded(double arrival, int packetSamples);
    void findPace();
    void watchForLoss(double arrival, bool block, int packetSamples);
    void findLoss(double arrival, double packet, int packetSamples);
    void follow();
    void freezeIfSettled(double arrival);
};

/// Stamps also tell the rate: a step that is unlike those before is a loss, unless it stays. Where samples are counted
/// too, the counter tells what is lost.
void StreamClock::State::take(std::int64_t next, bool counted)
{
    const auto step = static_cast<double>(next - tick);
    tick = next;
    samples = std::min(samples + 1, fewSamples);
    if (line.by != ClockFit::By::Stamp || samples < 2)
        return;
    if (samples == fewSamples && !counted)
        missing += std::max<std::int64_t>(std::llround(step / ticksASample) - 1, 0);
    if (std::abs(step - ticksASample) < likeStep * ticksASample) {
        ticksASample += stepWeight * (step - ticksASample);
        otherSteps = 0;
    } else if (samples == 2 || ++otherSteps > fewSamples) {
        ticksASample = step;
        otherSteps = 0;
    }
}

void StreamClock::State::packetEnded(double arrival, int packetSamples)
{
    const double late = arrival - time;
    spread += (late > spread ? 1 : -1) * spreadStep * std::max(spread, 1e-3);
    const bool block = envelope.add(unitsOf(tick), arrival, bestPace);
    if (!frozen && (block || arrival - firstArrival < slewOver))
        findPace();
    if (line.by == ClockFit::By::Arrival)
        watchForLoss(arrival, block, packetSamples);
    if (frozen)
        return;
    follow();
    if (wishesFrozen)
        freezeIfSettled(arrival);
}

/// The sensor's word and the arrivals' word on the pace, weighed by their errors; a word that the arrivals contradict
/// is dropped. A crystal's word is better than that of arrivals whose beat against the radio is slow.
void StreamClock::State::findPace()
{
    const auto found = envelope.pace();
    if (!found)
        return;
    const double data = std::clamp(found->value, 1 / widestPace, widestPace);
    const bool trusted = wordSpread <= stampSpread;
    const double error = found->error / data + (trusted ? feigned / found->duration : 0);
    if (std::isinf(wordSpread) || std::abs(data / wordPace - 1) > contradicted * (error + wordSpread)) {
        bestPace = data;
        paceSpread = error;
        return;
    }
    const double weight = wordSpread * wordSpread / (wordSpread * wordSpread + error * error);
    bestPace = wordPace + weight * (data - wordPace);
    paceSpread = wordSpread * error / std::hypot(wordSpread, error);
}

/// Where packets keep step with the radio's beat, one that just misses a beat lifts the edge as a lost one does: only
/// where lateness strolls over all phases of a packet within a second does a step tell of a loss.
void StreamClock::State::watchForLoss(double arrival, bool block, int packetSamples)
{
    const double packet = packetSamples * bestPace * unit;
    const double height = arrival - bestPace * unitsOf(tick) - edge;
    stroll += std::min(packet / strollOver, 1.0) * (std::polar(1.0, fullTurn * height / packet) - stroll);
    if (arrival - lastArrival > longSilence)
        calmSince = arrival;
    lastArrival = arrival;
    if (!block)
        return;
    edge = envelope.offset(bestPace, edgeBefore);
    if (std::abs(stroll) < strolls && arrival - std::max(calmSince, firstArrival) > calmAfter)
        findLoss(arrival, packet, packetSamples);
}

/// What comes next is counted on by what is missing; in a set, where the gap would fall into the wrong place, after it.
void StreamClock::State::findLoss(double arrival, double packet, int packetSamples)
{
    if (packet < shortestLoss || paceSpread * edgeBefore > likePackets * packet) // else it may be a wrong pace
        return;
    const double packets = (envelope.offset(bestPace, edgeNow) - edge) / packet;
    const double whole = std::round(packets);
    if (whole < 1 || std::abs(packets - whole) > likePackets)
        return;
    const auto samplesLost = static_cast<std::int64_t>(whole) * packetSamples;
    (wishesFrozen ? owed : count) += samplesLost;
    missing += samplesLost;
    calmSince = arrival;
}

/// The line given out goes on from the last sample; outside of sets it bends towards the envelope.
void StreamClock::State::follow()
{
    double pace = bestPace;
    const double units = unitsOf(tick);
    double start = time;
    if (!wishesFrozen) {
        const double behind = envelope.offset(bestPace, offsetOver) + bestPace * units - time;
        if (behind > stepForward)
            start = time + behind;
        else
            pace *= behind < -stepForward ? 0.5 : 1 + std::clamp(behind / slewOver, -slewMost, slewMost);
    }
    line.tickZero = tick;
    line.offset = start;
    if (nominalPeriod > 0 || line.by == ClockFit::By::Stamp) {
        line.pace = pace;
    } else {
        line.pace = 1;
        line.period = pace * unit;
    }
}

void StreamClock::State::freezeIfSettled(double arrival)
{
    frozen = paceSpread <= settledSpread && arrival - firstArrival >= settledAfter;
}

StreamClock::StreamClock(double nominalRate, std::int64_t zero) : state_(std::make_unique<State>())
{
    state_->nominalPeriod = nominalRate > 0 ? 1 / nominalRate : 0;
    state_->line.arrivalZero = zero;
}

StreamClock::~StreamClock() = default;
StreamClock::StreamClock(StreamClock&&) noexcept = default;
StreamClock& StreamClock::operator=(StreamClock&&) noexcept = default;

double StreamClock::timeOf(const Tick& tick)
{
    State& s = *state_;
    if (!s.begun)
        s.begin(tick);
    const std::int64_t raw = s.rawTick(tick);
    if (s.restarted || s.line.timeOf(raw + s.base) < s.time - steppedBack)
        s.goOn(tick, raw);
    s.take(std::max(raw + s.base, s.tick + 1), tick.counter >= 0);
    const double time = s.line.timeOf(s.tick);
    s.time = time > s.time ? time : s.time + leastStep;
    if (tick.index + 1 >= tick.count)
        s.packetEnded(s.secondsOf(tick.arrival), tick.count);
    return s.time;
}

void StreamClock::freeze()
{
    State& s = *state_;
    s.wishesFrozen = true;
    if (!s.begun)
        return;
    s.follow();
    s.freezeIfSettled(s.time + s.spread);
}

void StreamClock::release()
{
    state_->wishesFrozen = state_->frozen = false;
    state_->count += std::exchange(state_->owed, 0);
}

void StreamClock::restart()
{
    state_->restarted = state_->begun;
}

ClockFit StreamClock::fit() const
{
    ClockFit fit = state_->line;
    fit.spread = state_->spread;
    return fit;
}

std::int64_t StreamClock::tick() const
{
    return state_->tick;
}

double StreamClock::rate() const
{
    const State& s = *state_;
    if (s.samples < fewSamples || std::isinf(s.paceSpread))
        return 0;
    return 1 / (s.ticksASample * s.bestPace * s.unit);
}

std::int64_t StreamClock::lost() const
{
    return state_->missing;
}

} // namespace fleetrung::motion
