#include "engine/sensor/map_check_parts.hpp"

#include <algorithm>
#include <cmath>

#include "engine/sensor/bits.hpp"
#include "engine/sensor/map_words.hpp"

namespace fleetrung::sensor
{

bool ChannelCheck::has(Channel channel) const
{
    return std::find(seen_.begin(), seen_.end(), channel) != seen_.end();
}

void ChannelCheck::add(Channel channel, double offset, double scale, const std::string& place)
{
    if (has(channel))
        problem_.refuse(place + ".channel",
                        "the channel " + std::string(wordOf(channelWords, channel)) + " comes twice; keep one");
    seen_.push_back(channel);
    checkScale(channel, offset, scale, place);
}

void ChannelCheck::checkScale(Channel channel, double offset, double scale, const std::string& place)
{
    if (scale == 0)
        problem_.refuse(place + ".scale", "a scale of zero makes every reading zero; give the units of one count");
    if (!std::isfinite(scale) || !std::isfinite(1 / scale))
        problem_.refuse(place + ".scale", "the scale is out of all proportion; give the units of one count");
    if (!std::isfinite(offset))
        problem_.refuse(place + ".offset", "a finite number is needed");
    const auto quantity = quantityOf(channel);
    if ((quantity == Quantity::Time || quantity == Quantity::Number) && scale < 0)
        problem_.refuse(place + ".scale", "the channel " + std::string(wordOf(channelWords, channel)) +
                                              " grows; its scale is above zero");
    if (channel == Channel::Counter && std::abs(1 / scale - std::round(1 / scale)) > 1e-6 / scale)
        problem_.refuse(place + ".scale",
                        "a counter grows by a whole number a step; its scale is 1, 0.5, 0.25 and so on");
    if (channel == Channel::Count && !(scale == 1 && offset == 0))
        problem_.refuse(place + ".scale", "the channel count stands for itself: scale 1, offset 0");
}

void ChannelCheck::complete(const std::string& place)
{
    checkAxes(Channel::AccelerometerX, "accelerometer", place);
    checkAxes(Channel::GyroscopeX, "gyroscope", place);
    if (!has(Channel::AccelerometerX) && !has(Channel::GyroscopeX))
        problem_.refuse(place, "it carries neither accelerometer nor gyroscope");
}

void ChannelCheck::checkAxes(Channel first, const std::string& sensor, const std::string& place)
{
    int found = 0;
    for (int i = 0; i < 3; ++i)
        found += has(static_cast<Channel>(static_cast<int>(first) + i)) ? 1 : 0;
    if (found != 0 && found != 3)
        problem_.refuse(place, "the " + sensor + " has three axes; " + integerText(3 - found) + " of them missing");
}

void RoomCheck::take(int begin, int length, const std::string& place)
{
    if (begin < 0 || begin > bits_ || length > bits_ - begin)
        problem_.refuse(place, "it ends at byte " +
                                   shortestText(static_cast<double>(std::int64_t{begin} + length) / 8) +
                                   ", but there are " + shortestText(bits_ / 8.0) + " bytes");
    else if (length > 0)
        taken_.push_back({begin, begin + length, place});
}

void RoomCheck::noOverlap()
{
    std::stable_sort(taken_.begin(), taken_.end(), [](const Taken& a, const Taken& b) { return a.begin < b.begin; });
    for (std::size_t i = 1; i < taken_.size(); ++i)
        if (taken_[i].begin < taken_[i - 1].end)
            problem_.refuse(taken_[i].place, "it overlaps " + taken_[i - 1].place + " (bit " +
                                                 integerText(taken_[i].begin) + " is in both)");
}

void checkWraps(const StreamForm& form, const std::string& place, MapProblem& problem)
{
    for (const auto* fields : {&form.binary.packetFields, &form.binary.sampleFields})
        for (const auto& field : *fields) {
            const double range = std::ldexp(1.0, bitsOf(field.type)) * std::abs(field.scale) * (1 + 1e-9);
            if (field.channel == Channel::Counter && static_cast<double>(form.counterWrap) > range)
                problem.refuse(place + ".counterWrap", "its type begins at 0 again before that");
            if (field.channel == Channel::Stamp && !isFloat(field.type) && form.stampWrap > range)
                problem.refuse(place + ".stampWrap", "its type begins at 0 again before that");
        }
    if (form.counterWrap < 0 || (form.counterWrap > 0 && form.counterWrap < 4))
        problem.refuse(place + ".counterWrap",
                       "a counter that wraps has at least 4 values; 0 where it wraps by its type");
    if (!(form.stampWrap >= 0 && std::isfinite(form.stampWrap)))
        problem.refuse(place + ".stampWrap", "seconds, or 0 where it wraps by its type");
}

} // namespace fleetrung::sensor
