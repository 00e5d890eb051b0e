#include "engine/sensor/link_capacity.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/sensor/gatt.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr double charactersAValue = 8; ///< "-12.345," : an estimate
constexpr double tight = 0.8;          ///< share of the link above which repeats have no room (starting value)

/// What one stream sends for one sample.
struct Need {
    double bytes = 0;   ///< a sample
    double packets = 0; ///< a sample
    int packetBytes = 0;
    double samples = 1; ///< a packet
    bool tooLarge = false;
};

int bitsOfPacket(const BinaryForm& form, int samples)
{
    int bits = std::max(static_cast<int>(form.mark.size()) * 8, form.firstBit + samples * form.sampleBits);
    for (const auto& field : form.packetFields)
        bits = std::max(bits, field.bit + bitsOf(field.type));
    return form.length > 0 ? form.length * 8 : bits;
}

Need needOf(const StreamForm& form, int payload)
{
    Need need;
    if (form.text) {
        need.bytes = charactersAValue * static_cast<double>(form.lines.columns.size()) +
                     static_cast<double>(form.lines.prefix.size()) + 1;
        for (const auto& column : form.lines.columns)
            need.bytes += column.key.empty() ? 0 : static_cast<double>(column.key.size()) + 1;
        need.packets = need.bytes / std::max(payload, 1);
        return need;
    }
    const auto& binary = form.binary;
    const int room = (binary.length > 0 ? binary.length : payload) * 8 - binary.firstBit;
    const int samples = binary.samples > 0 ? binary.samples : std::max(1, room / std::max(1, binary.sampleBits));
    need.samples = samples;
    need.packetBytes = (bitsOfPacket(binary, samples) + 7) / 8;
    need.bytes = need.packetBytes / need.samples;
    need.packets = binary.stream ? need.bytes / std::max(payload, 1) : 1 / need.samples;
    need.tooLarge = !binary.stream && need.packetBytes > payload;
    return need;
}

std::string whole(double value)
{
    return fixedText(value, 0);
}

void warnOfPackets(LinkPlan& plan, const Need& need, int payload)
{
    plan.fits = false;
    plan.highestRate = 0;
    plan.warnings.push_back("A packet has " + integerText(need.packetBytes) + " bytes, the link carries " +
                            integerText(payload) + " in one. Ask for an MTU of " +
                            integerText(need.packetBytes + gatt::notificationHeader) +
                            " or more, or let the sensor send fewer samples in a packet.");
}

void warnOfRate(LinkPlan& plan, double rate, bool halfEmpty)
{
    const double share = plan.packetsNeeded / plan.packetsCarried;
    if (share <= tight)
        return;
    plan.fits = share <= 1;
    const auto what = plan.fits
                          ? std::string("This fills ") + whole(100 * share) +
                                " % of the link and leaves little for packets that must be sent again. "
                          : "At " + whole(rate) + " Hz the sensor sends " + whole(plan.bytesNeeded) + " bytes in " +
                                whole(plan.packetsNeeded) + " packets a second, the link carries " +
                                whole(plan.packetsCarried) + " packets: samples will be lost. ";
    const auto rateToSet = std::floor(plan.fits ? plan.highestRate * tight : plan.highestRate);
    plan.warnings.push_back(
        what + "Set the sensor to " + whole(rateToSet) + " Hz or less, " +
        (halfEmpty ? "let it send several samples in a packet, " : "ask for a larger MTU and larger packets, ") +
        "or ask for a shorter connection interval.");
}

} // namespace

double bytesPerSecond(const LinkTerms& terms)
{
    return terms.interval > 0 ? gatt::payloadOf(terms.mtu) * terms.packetsAnEvent / terms.interval : 0;
}

LinkPlan planLink(const SensorMap& map, const LinkTerms& terms, double rate)
{
    LinkPlan plan;
    const int payload = gatt::payloadOf(terms.mtu);
    plan.bytesCarried = bytesPerSecond(terms);
    plan.packetsCarried = terms.interval > 0 ? terms.packetsAnEvent / terms.interval : 0;
    double bytesASample = 0, packetsASample = 0;
    bool halfEmpty = true;
    for (const auto& form : map.streams) {
        const auto need = needOf(form, payload);
        bytesASample += need.bytes;
        packetsASample += need.packets;
        rate = rate > 0 ? rate : form.rate;
        halfEmpty = halfEmpty && !form.text && !form.binary.stream && 2 * need.packetBytes <= payload;
    }
    plan.bytesNeeded = bytesASample * rate;
    plan.packetsNeeded = packetsASample * rate;
    plan.highestRate = packetsASample > 0 ? plan.packetsCarried / packetsASample : 0;
    for (const auto& form : map.streams)
        if (const auto need = needOf(form, payload); need.tooLarge)
            warnOfPackets(plan, need, payload);
    if (plan.fits && rate > 0)
        warnOfRate(plan, rate, halfEmpty);
    return plan;
}

} // namespace fleetrung::sensor
