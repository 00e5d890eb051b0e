#include "engine/sensor/hexadecimal.hpp"

#include <charconv>

namespace fleetrung::sensor
{

std::optional<std::vector<std::uint8_t>> parseHexadecimal(std::string_view text)
{
    std::vector<std::uint8_t> bytes;
    while (!text.empty()) {
        if (!bytes.empty() && text.starts_with(' '))
            text.remove_prefix(1);
        std::uint8_t byte = 0;
        const auto pair = text.substr(0, 2);
        const auto [end, error] = std::from_chars(pair.data(), pair.data() + pair.size(), byte, 16);
        if (error != std::errc() || pair.size() != 2 || end != pair.data() + 2)
            return std::nullopt;
        bytes.push_back(byte);
        text.remove_prefix(2);
    }
    return bytes;
}

std::string hexadecimalText(std::span<const std::uint8_t> bytes)
{
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    for (const auto byte : bytes) {
        text.append(text.empty() ? "" : " ");
        text += digits[byte >> 4U];
        text += digits[byte & 0xFU];
    }
    return text;
}

} // namespace fleetrung::sensor
