// What a schema cannot say of binary packets.
#include <algorithm>

#include "engine/sensor/bits.hpp"
#include "engine/sensor/gatt.hpp"
#include "engine/sensor/map_check_parts.hpp"
#include "engine/sensor/map_words.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr int longestBits = gatt::longestValue * 8;

class BinaryCheck
{
public:
    BinaryCheck(const StreamForm& form, std::string place, ChannelCheck& channels, MapProblem& problem)
        : form_(form), packet_(form.binary), place_(std::move(place)), channels_(channels), problem_(problem),
          bits_(packet_.length > 0 && packet_.length <= gatt::longestValue ? packet_.length * 8 : longestBits),
          room_(problem, bits_)
    {
    }

    void check()
    {
        if (packet_.length < 0 || packet_.length > gatt::longestValue) {
            problem_.refuse(place_ + ".length", "a packet has 512 bytes at most");
            return;
        }
        if (packet_.stream && packet_.mark.empty())
            problem_.refuse(place_ + ".mark",
                            "packets in a byte stream are found by the bytes they begin with; give them");
        if (packet_.stream && packet_.length == 0)
            problem_.refuse(place_ + ".length", "packets in a byte stream have a fixed length; give it");
        const auto mark = std::min<std::size_t>(packet_.mark.size(), gatt::longestValue + 1);
        room_.take(0, static_cast<int>(mark) * 8, place_ + ".mark");
        packetFields();
        if (samplesFit())
            sampleFields();
        room_.noOverlap();
        checkWraps(form_, place_, problem_);
    }

private:
    void packetFields()
    {
        for (std::size_t i = 0; i < packet_.packetFields.size(); ++i) {
            const auto& field = packet_.packetFields[i];
            const auto at = place_ + '.' + indexed("packetFields", i);
            checkField(field, at);
            if (field.channel <= Channel::GyroscopeZ || field.channel == Channel::StampDelta)
                problem_.refuse(at + ".channel", "the channel " + std::string(wordOf(channelWords, field.channel)) +
                                                     " belongs in sampleFields");
            if (field.channel == Channel::Count && packet_.samples != 0)
                problem_.refuse(place_ + ".samples",
                                "the packet says itself how many samples it holds (count); write 0 here");
            room_.take(field.bit, bitsOf(field.type), at);
        }
    }

    bool samplesFit()
    {
        if (packet_.sampleBits < 8 || packet_.sampleBits > longestBits || packet_.firstBit < 0 || packet_.samples < 0) {
            problem_.refuse(place_ + ".sampleBytes", "a sample has 1 to 512 bytes");
            return false;
        }
        const int room = packet_.firstBit < bits_ ? (bits_ - packet_.firstBit) / packet_.sampleBits : 0;
        const int wanted = packet_.samples > 0 ? packet_.samples : 1;
        if (room < wanted) {
            problem_.refuse(place_ + ".samples", "a packet of " + integerText(bits_ / 8) + " bytes has no room for " +
                                                     integerText(wanted) + (wanted == 1 ? " sample" : " samples") +
                                                     " of " + shortestText(packet_.sampleBits / 8.0) +
                                                     " bytes from byte " + shortestText(packet_.firstBit / 8.0) +
                                                     " on");
            return false;
        }
        samples_ = packet_.samples > 0 ? packet_.samples : room;
        return true;
    }

    void sampleFields()
    {
        RoomCheck room(problem_, packet_.sampleBits);
        for (std::size_t i = 0; i < packet_.sampleFields.size(); ++i) {
            const auto& field = packet_.sampleFields[i];
            const auto at = place_ + '.' + indexed("sampleFields", i);
            checkField(field, at);
            if (field.channel == Channel::Count ||
                (field.channel == Channel::Counter && form_.counts == Counts::Packets))
                problem_.refuse(at + ".channel", "what counts packets or samples of a packet belongs in packetFields");
            if (field.channel == Channel::StampDelta && !stampOfPacket())
                problem_.refuse(at + ".channel", "stampDelta counts from the packet's stamp; packetFields have none");
            room.take(field.bit, bitsOf(field.type), at);
            // A field of the packet may stand in a gap between fields of a sample.
            for (int sample = 0; field.bit >= 0 && field.bit < longestBits && sample < samples_; ++sample)
                room_.take(packet_.firstBit + sample * packet_.sampleBits + field.bit, bitsOf(field.type), at);
        }
        room.noOverlap();
    }

    [[nodiscard]] bool stampOfPacket() const
    {
        return std::any_of(packet_.packetFields.begin(), packet_.packetFields.end(),
                           [](const Field& field) { return field.channel == Channel::Stamp; });
    }

    void checkField(const Field& field, const std::string& place)
    {
        channels_.add(field.channel, field.offset, field.scale, place);
        if (quantityOf(field.channel) == Quantity::Number && isFloat(field.type))
            problem_.refuse(place + ".type", "the channel " + std::string(wordOf(channelWords, field.channel)) +
                                                 " needs a type of whole numbers");
    }

    const StreamForm& form_;
    const BinaryForm& packet_;
    std::string place_;
    ChannelCheck& channels_;
    MapProblem& problem_;
    int bits_;
    RoomCheck room_;
    int samples_ = 0; ///< that are there, or at most
};

} // namespace

void checkBinary(const StreamForm& form, const std::string& place, ChannelCheck& channels, MapProblem& problem)
{
    BinaryCheck(form, place, channels, problem).check();
}

} // namespace fleetrung::sensor
