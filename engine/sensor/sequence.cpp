#include "engine/sensor/sequence.hpp"

#include <cmath>

#include "engine/sensor/bits.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr double mostWhole = 9007199254740992.0; ///< 2^53: doubles count in ones up to here
constexpr double nanosecond = 1e-9;
constexpr double longestStamp = 1e9; ///< s
constexpr std::int64_t noWrap = std::int64_t{1} << 62U;

/// What the form says of one running number, whatever kind of form it is.
struct Running {
    int bits = 0; ///< 0: it never wraps by itself
    double scale = 1;
};

std::optional<Running> runningOf(const StreamForm& form, Channel channel)
{
    if (form.text) {
        for (const auto& column : form.lines.columns)
            if (column.channel == channel)
                return Running{0, std::abs(column.scale)};
        return std::nullopt;
    }
    for (const auto* fields : {&form.binary.packetFields, &form.binary.sampleFields})
        for (const auto& field : *fields)
            if (field.channel == channel)
                return Running{isFloat(field.type) ? 0 : bitsOf(field.type), std::abs(field.scale)};
    return std::nullopt;
}

std::int64_t wholeCounts(double value)
{
    return value > 0 && value < mostWhole ? std::llround(value) : noWrap;
}

std::int64_t wrapOf(const Running& running, double wrap, double unit)
{
    if (wrap > 0)
        return wholeCounts(wrap / unit);
    return running.bits > 0 ? std::int64_t{1} << static_cast<unsigned>(running.bits) : noWrap;
}

RunningCounter counterOf(const StreamForm& form)
{
    const auto running = runningOf(form, Channel::Counter).value_or(Running{});
    const double perStep = std::round(1 / running.scale);
    return {wrapOf(running, static_cast<double>(form.counterWrap), running.scale),
            perStep >= 1 && perStep < longestStamp ? std::llround(perStep) : 1};
}

RunningStamp stampOf(const StreamForm& form)
{
    const auto running = runningOf(form, Channel::Stamp).value_or(Running{});
    const double unit = running.bits > 0 ? running.scale : nanosecond;
    return {wrapOf(running, form.stampWrap, unit), unit};
}

} // namespace

std::optional<std::int64_t> counterCounts(double counts)
{
    if (!(std::abs(counts) < mostWhole))
        return std::nullopt;
    return std::llround(counts);
}

std::optional<std::int64_t> stampNanoseconds(double seconds)
{
    if (!(std::abs(seconds) < longestStamp))
        return std::nullopt;
    return std::llround(seconds / nanosecond);
}

Sequence::Sequence(const StreamForm& form)
    : counts_(form.counts), stampOf_(form.stampOf), counter_(counterOf(form)), stamp_(sensor::stampOf(form))
{
}

void Sequence::restart()
{
    counter_.restart();
    stamp_.restart();
    nextSample_ = samplesOfLast_ = 0;
}

std::size_t Sequence::place(std::span<RawSample> samples, const Ticks& packet, std::span<const Ticks> each, bool again,
                            PacketCounts& counts)
{
    auto verdict = packet.counter ? countPacket(samples, packet, counts) : Verdict::Follows;
    if (verdict == Verdict::Follows && packet.stamp) {
        const auto ofStamp = stampPacket(samples, packet, each, again && !packet.counter);
        if (!packet.counter)
            verdict = ofStamp;
    }
    std::size_t kept = 0;
    bool late = verdict == Verdict::Late, leap = verdict == Verdict::Leap;
    for (std::size_t i = 0; verdict == Verdict::Follows && i < samples.size(); ++i) {
        const auto own = placeSample(samples[i], each[i], counts);
        late = late || own == Verdict::Late;
        leap = leap || own == Verdict::Leap;
        if (own == Verdict::Follows)
            samples[kept++] = samples[i];
    }
    counts.doubled += late ? 1 : 0;
    counts.bad.at(static_cast<std::size_t>(BadPacket::Leap)) += leap ? 1 : 0;
    return kept;
}

Verdict Sequence::countPacket(std::span<RawSample> samples, const Ticks& packet, PacketCounts& counts)
{
    const auto size = static_cast<std::int64_t>(samples.size());
    std::int64_t first = 0;
    if (counts_ == Counts::Packets) {
        const auto seen = counter_.see(*packet.counter, 1, samples.front().arrival);
        if (seen.verdict != Verdict::Follows)
            return seen.verdict;
        counts.lost += seen.lost * samplesOfLast_;
        first = nextSample_ + seen.lost * samplesOfLast_;
        nextSample_ = first + size;
        samplesOfLast_ = size;
    } else {
        const auto before = stampOf_ == StampOf::Last ? (size - 1) * counter_.perStep() : 0;
        const auto seen = counter_.see(*packet.counter - before, size, samples.front().arrival);
        if (seen.verdict != Verdict::Follows)
            return seen.verdict;
        counts.lost += seen.lost;
        first = seen.first;
    }
    for (auto& sample : samples)
        sample.counter = first++;
    return Verdict::Follows;
}

Verdict Sequence::stampPacket(std::span<RawSample> samples, const Ticks& packet, std::span<const Ticks> each,
                              bool again)
{
    const auto seen = stamp_.see(*packet.stamp, samples.front().arrival);
    if (seen.verdict != Verdict::Follows)
        return seen.verdict;
    if (seen.same && again)
        return Verdict::Late;
    for (std::size_t i = 0; i < samples.size(); ++i)
        samples[i].stamp = seen.seconds + each[i].delta;
    const auto reference = stampOf_ == StampOf::First ? 0 : samples.size() - 1;
    if (std::isnan(each[reference].delta))
        samples[reference].stamp = seen.seconds;
    return Verdict::Follows;
}

/// Of a sample that carries its own counter or stamp.
Verdict Sequence::placeSample(RawSample& sample, const Ticks& own, PacketCounts& counts)
{
    if (own.counter) {
        const auto seen = counter_.see(*own.counter, 1, sample.arrival);
        if (seen.verdict != Verdict::Follows)
            return seen.verdict;
        counts.lost += seen.lost;
        sample.counter = seen.first;
    }
    if (!own.stamp)
        return Verdict::Follows;
    const auto seen = stamp_.see(*own.stamp, sample.arrival);
    if (seen.verdict == Verdict::Follows)
        sample.stamp = seen.seconds;
    else if (sample.counter < 0)
        return seen.verdict;
    return Verdict::Follows;
}

} // namespace fleetrung::sensor
