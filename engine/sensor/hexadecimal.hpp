// Bytes as text: "a5 01 ff". Private to engine/sensor.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace fleetrung::sensor
{

/// Pairs of digits, at most one space between two pairs; nothing for anything else.
[[nodiscard]] std::optional<std::vector<std::uint8_t>> parseHexadecimal(std::string_view text);
[[nodiscard]] std::string hexadecimalText(std::span<const std::uint8_t> bytes);

} // namespace fleetrung::sensor
