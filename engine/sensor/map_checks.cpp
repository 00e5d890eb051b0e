// What a schema cannot say of a map.
#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "engine/base/numbers.hpp"
#include "engine/sensor/bits.hpp"
#include "engine/sensor/gatt.hpp"
#include "engine/sensor/map_words.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr int longestBits = gatt::longestValue * 8;
constexpr std::size_t longestKey = 64;

std::string indexed(std::string_view name, std::size_t index)
{
    return std::string(name) + '[' + integerText(static_cast<std::int64_t>(index)) + ']';
}

std::string name(Channel channel)
{
    return std::string(wordOf(channelWords, channel));
}

/// A run of bits that something takes up.
struct Taken {
    int begin, end;
    std::string place;
};

class Checker
{
public:
    std::optional<Error> check(const SensorMap& map)
    {
        identity(map);
        writes(map.start, "start");
        writes(map.stop, "stop");
        if (map.streams.empty() || map.streams.size() > 2)
            refuse("streams", "a map has one or two streams");
        for (std::size_t i = 0; i < map.streams.size(); ++i)
            stream(map.streams[i], indexed("streams", i));
        if (map.streams.size() == 2 && map.streams[0].service == map.streams[1].service &&
            map.streams[0].characteristic == map.streams[1].characteristic)
            refuse("streams[1].characteristic", "two streams of one characteristic; describe it once");
        together(map);
        return problem_;
    }

private:
    void refuse(std::string place, std::string message)
    {
        if (!problem_)
            problem_ = Error{Code::InvalidInput, std::move(place), std::move(message)};
    }

    void identity(const SensorMap& map)
    {
        const auto plain = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
        if (map.key.empty() || map.key.size() > longestKey || !std::all_of(map.key.begin(), map.key.end(), plain))
            refuse("key", "write 1 to 64 lower-case letters, digits and hyphens");
        if (map.name.empty())
            refuse("name", "a name is needed");
    }

    void uuid(const std::string& text, const std::string& place)
    {
        const auto whole = gatt::parseUuid(text);
        if (!whole)
            refuse(place, whole.error().message);
        else if (*whole != text)
            refuse(place, "a UUID has 36 lower-case characters inside the program");
    }

    void writes(const std::vector<CharacteristicWrite>& all, std::string_view list)
    {
        for (std::size_t i = 0; i < all.size(); ++i) {
            const auto place = indexed(list, i);
            uuid(all[i].service, place + ".service");
            uuid(all[i].characteristic, place + ".characteristic");
            if (all[i].bytes.empty() || all[i].bytes.size() > gatt::longestValue)
                refuse(place + ".bytes", "a write has 1 to 512 bytes");
        }
    }

    void stream(const StreamForm& form, const std::string& place)
    {
        uuid(form.service, place + ".service");
        uuid(form.characteristic, place + ".characteristic");
        seen_.clear();
        if (form.text)
            lines(form, place);
        else
            binary(form, place);
        axes(place, Channel::AccelerometerX, "accelerometer");
        axes(place, Channel::GyroscopeX, "gyroscope");
        if (!has(Channel::AccelerometerX) && !has(Channel::GyroscopeX))
            refuse(place, "it carries neither accelerometer nor gyroscope");
        if (!(form.rate >= 0 && std::isfinite(form.rate)))
            refuse(place + ".rate", "samples per second, or 0 where they are not known");
    }

    /// Of one stream.
    [[nodiscard]] bool has(Channel channel) const
    {
        return std::find(seen_.begin(), seen_.end(), channel) != seen_.end();
    }

    void axes(const std::string& place, Channel first, const std::string& sensor)
    {
        int found = 0;
        for (int i = 0; i < 3; ++i)
            found += has(static_cast<Channel>(static_cast<int>(first) + i)) ? 1 : 0;
        if (found != 0 && found != 3)
            refuse(place, "the " + sensor + " has three axes; " + integerText(3 - found) + " of them missing");
    }

    /// Accelerometer and gyroscope each come once.
    void together(const SensorMap& map)
    {
        int force = 0, turning = 0;
        for (const auto& form : map.streams) {
            force += carries(form, Channel::AccelerometerX) ? 1 : 0;
            turning += carries(form, Channel::GyroscopeX) ? 1 : 0;
        }
        if (force == 0)
            refuse("streams", "no stream carries the accelerometer (channels accelerometerX, Y and Z)");
        if (force > 1 || turning > 1)
            refuse("streams[1]",
                   std::string(force > 1 ? "the accelerometer" : "the gyroscope") + " comes in both streams; keep one");
    }

    static bool carries(const StreamForm& form, Channel channel)
    {
        const auto isIt = [&](const auto& field) { return field.channel == channel; };
        if (form.text)
            return std::any_of(form.lines.columns.begin(), form.lines.columns.end(), isIt);
        return std::any_of(form.binary.sampleFields.begin(), form.binary.sampleFields.end(), isIt);
    }

    void channel(Channel channel, const std::string& place)
    {
        if (has(channel))
            refuse(place + ".channel", "the channel " + name(channel) + " comes twice; keep one");
        seen_.push_back(channel);
    }

    void scaling(Channel channel, double offset, double scale, const std::string& place)
    {
        if (scale == 0)
            refuse(place + ".scale", "a scale of zero makes every reading zero; give the units of one count");
        if (!std::isfinite(scale) || !std::isfinite(1 / scale))
            refuse(place + ".scale", "the scale is out of all proportion; give the units of one count");
        if (!std::isfinite(offset))
            refuse(place + ".offset", "a finite number is needed");
        const auto quantity = quantityOf(channel);
        if ((quantity == Quantity::Time || quantity == Quantity::Number) && scale < 0)
            refuse(place + ".scale", "the channel " + name(channel) + " grows; its scale is above zero");
        if (channel == Channel::Counter && std::abs(1 / scale - std::round(1 / scale)) > 1e-6 / scale)
            refuse(place + ".scale", "a counter grows by a whole number a step; its scale is 1, 0.5, 0.25 and so on");
        if (channel == Channel::Count && !(scale == 1 && offset == 0))
            refuse(place + ".scale", "the channel count stands for itself: scale 1, offset 0");
    }

    void binary(const StreamForm& form, const std::string& place)
    {
        const auto& packet = form.binary;
        taken_.clear();
        const int bits = packet.length > 0 ? packet.length * 8 : longestBits;
        if (packet.length < 0 || packet.length > gatt::longestValue)
            refuse(place + ".length", "a packet has 512 bytes at most");
        if (packet.stream && packet.mark.empty())
            refuse(place + ".mark", "packets in a byte stream are found by the bytes they begin with; give them");
        if (packet.stream && packet.length == 0)
            refuse(place + ".length", "packets in a byte stream have a fixed length; give it");
        take(0, static_cast<int>(std::min<std::size_t>(packet.mark.size(), longestBits)) * 8, bits, place + ".mark");
        for (std::size_t i = 0; i < packet.packetFields.size(); ++i) {
            const auto& field = packet.packetFields[i];
            const auto at = place + '.' + indexed("packetFields", i);
            fieldChecks(field, at);
            if (field.channel <= Channel::GyroscopeZ || field.channel == Channel::StampDelta)
                refuse(at + ".channel", "the channel " + name(field.channel) + " belongs in sampleFields");
            if (field.channel == Channel::Count && packet.samples != 0)
                refuse(place + ".samples", "the packet says itself how many samples it holds (count); write 0 here");
            take(field.bit, bitsOf(field.type), bits, at);
        }
        if (samplesFit(packet, bits, place))
            sampleFields(form, place);
        noOverlap();
        wraps(form, place);
    }

    bool samplesFit(const BinaryForm& packet, int bits, const std::string& place)
    {
        if (packet.sampleBits < 8 || packet.sampleBits > longestBits || packet.firstBit < 0 || packet.samples < 0) {
            refuse(place + ".sampleBytes", "a sample has 1 to 512 bytes");
            return false;
        }
        const int room = packet.firstBit < bits ? (bits - packet.firstBit) / packet.sampleBits : 0;
        const int wanted = packet.samples > 0 ? packet.samples : 1;
        if (room < wanted) {
            refuse(place + ".samples", "a packet of " + integerText(bits / 8) + " bytes has no room for " +
                                           integerText(wanted) + (wanted == 1 ? " sample" : " samples") + " of " +
                                           shortestText(packet.sampleBits / 8.0) + " bytes from byte " +
                                           shortestText(packet.firstBit / 8.0) + " on");
            return false;
        }
        take(packet.firstBit, (packet.samples > 0 ? packet.samples : room) * packet.sampleBits, bits,
             place + ".sampleFields");
        return true;
    }

    void sampleFields(const StreamForm& form, const std::string& place)
    {
        auto ofPacket = std::exchange(taken_, {});
        for (std::size_t i = 0; i < form.binary.sampleFields.size(); ++i) {
            const auto& field = form.binary.sampleFields[i];
            const auto at = place + '.' + indexed("sampleFields", i);
            fieldChecks(field, at);
            if (field.channel == Channel::Count ||
                (field.channel == Channel::Counter && form.counts == Counts::Packets))
                refuse(at + ".channel", "what counts packets or samples of a packet belongs in packetFields");
            if (field.channel == Channel::StampDelta && !stampOfPacket(form.binary))
                refuse(at + ".channel", "stampDelta counts from the packet's stamp; packetFields have none");
            take(field.bit, bitsOf(field.type), form.binary.sampleBits, at);
        }
        noOverlap();
        taken_ = std::move(ofPacket);
    }

    static bool stampOfPacket(const BinaryForm& packet)
    {
        return std::any_of(packet.packetFields.begin(), packet.packetFields.end(),
                           [](const Field& field) { return field.channel == Channel::Stamp; });
    }

    void fieldChecks(const Field& field, const std::string& place)
    {
        channel(field.channel, place);
        scaling(field.channel, field.offset, field.scale, place);
        if (quantityOf(field.channel) == Quantity::Number && isFloat(field.type))
            refuse(place + ".type", "the channel " + name(field.channel) + " needs a type of whole numbers");
    }

    void take(int begin, int length, int room, const std::string& place)
    {
        if (begin < 0 || begin > room || length > room - begin)
            refuse(place, "it ends at byte " + shortestText((std::int64_t{begin} + length) / 8.0) + ", but there are " +
                              shortestText(room / 8.0) + " bytes");
        else if (length > 0)
            taken_.push_back({begin, begin + length, place});
    }

    void noOverlap()
    {
        std::stable_sort(taken_.begin(), taken_.end(),
                         [](const Taken& a, const Taken& b) { return a.begin < b.begin; });
        for (std::size_t i = 1; i < taken_.size(); ++i)
            if (taken_[i].begin < taken_[i - 1].end)
                refuse(taken_[i].place,
                       "it overlaps " + taken_[i - 1].place + " (bit " + integerText(taken_[i].begin) + " is in both)");
    }

    /// A wrap beyond what the type holds never comes.
    void wraps(const StreamForm& form, const std::string& place)
    {
        for (const auto* fields : {&form.binary.packetFields, &form.binary.sampleFields})
            for (const auto& field : *fields) {
                const double range = std::ldexp(1.0, bitsOf(field.type)) * std::abs(field.scale) * (1 + 1e-9);
                if (field.channel == Channel::Counter && static_cast<double>(form.counterWrap) > range)
                    refuse(place + ".counterWrap", "its type begins at 0 again before that");
                if (field.channel == Channel::Stamp && !isFloat(field.type) && form.stampWrap > range)
                    refuse(place + ".stampWrap", "its type begins at 0 again before that");
            }
        if (form.counterWrap < 0 || (form.counterWrap > 0 && form.counterWrap < 4))
            refuse(place + ".counterWrap", "a counter that wraps has at least 4 values; 0 where it wraps by its type");
        if (!(form.stampWrap >= 0 && std::isfinite(form.stampWrap)))
            refuse(place + ".stampWrap", "seconds, or 0 where it wraps by its type");
    }

    void lines(const StreamForm& form, const std::string& place)
    {
        const auto& columns = form.lines.columns;
        constexpr std::string_view ofNumbers = "0123456789+-.eE=\n\r";
        const char separator = form.lines.separator;
        if ((separator != '\t' && (separator < ' ' || separator > '~')) ||
            ofNumbers.find(separator) != std::string_view::npos)
            refuse(place + ".separator", "a character that stands in no number is needed: a comma, semicolon or tab");
        const bool byKey = !columns.empty() && !columns.front().key.empty();
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const auto& column = columns[i];
            const auto at = place + '.' + indexed("columns", i);
            channel(column.channel, at);
            scaling(column.channel, column.offset, column.scale, at);
            if (column.channel == Channel::Count || column.channel == Channel::StampDelta)
                refuse(at + ".channel",
                       "a line is one sample; the channel " + name(column.channel) + " has no use here");
            if (byKey == column.key.empty())
                refuse(at + (byKey ? ".key" : ".column"), "number all columns or name all by key");
            if (column.column < 0)
                refuse(at + ".column", "columns count from 0");
            if (column.key.find_first_of(std::string("=\r\n") + separator) != std::string::npos ||
                column.key.starts_with(' ') || column.key.ends_with(' '))
                refuse(at + ".key", "a key has no separator, '=' or blank at its ends");
            for (std::size_t j = 0; j < i; ++j)
                if (byKey ? columns[j].key == column.key : columns[j].column == column.column)
                    refuse(at + (byKey ? ".key" : ".column"),
                           "it overlaps columns[" + integerText(static_cast<std::int64_t>(j)) + "]");
        }
        if (form.lines.prefix.find_first_of("\r\n") != std::string::npos)
            refuse(place + ".prefix", "a prefix stands in one line");
        if (form.counts == Counts::Packets)
            refuse(place + ".counts", "a line is one sample; write samples");
        wraps(form, place);
    }

    std::optional<Error> problem_;
    std::vector<Channel> seen_;
    std::vector<Taken> taken_;
};

} // namespace

std::optional<Error> checkSensorMap(const SensorMap& map)
{
    return Checker().check(map);
}

} // namespace fleetrung::sensor
