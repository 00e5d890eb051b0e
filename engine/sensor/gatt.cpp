#include "engine/sensor/gatt.hpp"

#include <algorithm>
#include <array>

namespace fleetrung::sensor::gatt
{
namespace
{

constexpr std::string_view baseTail = "-0000-1000-8000-00805f9b34fb";
constexpr std::string_view hexDigits = "0123456789abcdef";
constexpr std::array<std::size_t, 4> hyphens{8, 13, 18, 23};
constexpr std::size_t wholeLength = 36;

char lower(char character)
{
    return character >= 'A' && character <= 'Z' ? static_cast<char>(character - 'A' + 'a') : character;
}

bool isHexadecimal(std::string_view text)
{
    return text.find_first_not_of(hexDigits) == std::string_view::npos;
}

/// With hyphens where they belong, or 32 digits without any; empty for anything else.
std::string wholeUuid(std::string_view text)
{
    const bool hyphenated = text.size() == wholeLength;
    if (!hyphenated && text.size() != wholeLength - hyphens.size())
        return {};
    std::string uuid;
    for (const char character : text) {
        const bool hyphen = std::find(hyphens.begin(), hyphens.end(), uuid.size()) != hyphens.end();
        if (hyphen && !hyphenated)
            uuid += '-';
        if (hyphen && hyphenated ? character != '-' : !isHexadecimal({&character, 1}))
            return {};
        uuid += character;
    }
    return uuid;
}

} // namespace

std::string uuidOf(std::uint32_t assigned)
{
    std::string uuid;
    for (unsigned shift = 32; shift > 0; shift -= 4)
        uuid += hexDigits[assigned >> (shift - 4) & 0xFU];
    return uuid.append(baseTail);
}

Expected<std::string> parseUuid(std::string_view text)
{
    constexpr std::size_t longest = 40;
    std::string digits(text.substr(0, longest));
    std::transform(digits.begin(), digits.end(), digits.begin(), lower);
    if (text.starts_with('{') && text.ends_with('}') && text.size() < longest)
        digits = digits.substr(1, digits.size() - 2);
    const auto number = digits.starts_with("0x") ? digits.substr(2) : digits;
    const bool isAssigned = (number.size() == 4 || number.size() == 8) && isHexadecimal(number);
    auto uuid = isAssigned ? std::string(8 - number.size(), '0').append(number).append(baseTail) : wholeUuid(digits);
    if (!uuid.empty())
        return uuid;
    return fail(Code::InvalidInput, "",
                "this is no UUID; write 4 or 8 hexadecimal digits, or all 32 as 8-4-4-4-12 with hyphens");
}

std::optional<std::uint32_t> assignedNumber(std::string_view uuid)
{
    const auto whole = parseUuid(uuid);
    if (!whole || !whole->ends_with(baseTail))
        return std::nullopt;
    std::uint32_t number = 0;
    for (const char digit : whole->substr(0, 8))
        number = number << 4U | static_cast<std::uint32_t>(hexDigits.find(digit));
    return number;
}

int payloadOf(int mtu)
{
    return std::clamp(mtu - notificationHeader, 0, longestValue);
}

int mtuOfOnePacket(int linkPacket)
{
    return linkPacket - logicalLinkHeader;
}

int linkPackets(int payload, int linkPacket)
{
    const int bytes = payload + notificationHeader + logicalLinkHeader;
    return linkPacket > 0 ? (bytes + linkPacket - 1) / linkPacket : 0;
}

} // namespace fleetrung::sensor::gatt
