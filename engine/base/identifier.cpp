#include "engine/base/identifier.hpp"

#include <sodium.h>

namespace fleetrung
{
namespace
{

std::string hexText(std::span<const std::uint8_t> bytes)
{
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const auto byte : bytes) {
        text += digits[byte >> 4U];
        text += digits[byte & 15U];
    }
    return text;
}

int hexValue(char digit)
{
    if (digit >= '0' && digit <= '9')
        return digit - '0';
    if (digit >= 'a' && digit <= 'f')
        return digit - 'a' + 10;
    return -1;
}

} // namespace

std::string identifierText(const Identifier& id)
{
    return hexText(id.bytes);
}

std::optional<Identifier> parseIdentifier(std::string_view text)
{
    Identifier id;
    if (text.size() != 2 * id.bytes.size())
        return std::nullopt;
    for (std::size_t i = 0; i < id.bytes.size(); ++i) {
        const int high = hexValue(text[2 * i]);
        const int low = hexValue(text[2 * i + 1]);
        if (high < 0 || low < 0)
            return std::nullopt;
        id.bytes[i] = static_cast<std::uint8_t>(high * 16 + low);
    }
    return id;
}

Identifier hashIdentifier(std::span<const std::string_view> parts)
{
    crypto_generichash_state state;
    Identifier id;
    crypto_generichash_init(&state, nullptr, 0, id.bytes.size());
    for (const auto part : parts) {
        std::array<std::uint8_t, 8> length{};
        for (std::size_t i = 0; i < length.size(); ++i)
            length[i] = static_cast<std::uint8_t>(static_cast<std::uint64_t>(part.size()) >> (8U * i));
        crypto_generichash_update(&state, length.data(), length.size());
        crypto_generichash_update(&state, reinterpret_cast<const std::uint8_t*>(part.data()), part.size());
    }
    crypto_generichash_final(&state, id.bytes.data(), id.bytes.size());
    return id;
}

std::string contentHash(std::span<const std::uint8_t> bytes)
{
    std::array<std::uint8_t, 32> hash{};
    crypto_generichash(hash.data(), hash.size(), bytes.data(), bytes.size(), nullptr, 0);
    return hexText(hash);
}

} // namespace fleetrung
