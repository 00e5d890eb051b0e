// 128-bit identifiers of rows. New random ones come from the caller (the engine draws no random numbers);
// ids of imported rows, plans and decisions are hashes of what they were made from, so that making them twice adds
// nothing.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace fleetrung
{

struct Identifier {
    std::array<std::uint8_t, 16> bytes{};

    auto operator<=>(const Identifier&) const = default;
};

/// 32 lower-case hexadecimal digits.
[[nodiscard]] std::string identifierText(const Identifier& id);
[[nodiscard]] std::optional<Identifier> parseIdentifier(std::string_view text);

/// BLAKE2b-128 (RFC 7693, through libsodium) of the parts; lengths are hashed too, so ("ab","c") and ("a","bc") differ.
[[nodiscard]] Identifier hashIdentifier(std::span<const std::string_view> parts);

/// BLAKE2b-256 of bytes, 64 hexadecimal digits: the name of a raw capture's content.
[[nodiscard]] std::string contentHash(std::span<const std::uint8_t> bytes);

} // namespace fleetrung
