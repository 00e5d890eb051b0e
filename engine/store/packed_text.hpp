// A long text compressed with zstd, and back (private to engine/store).
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace fleetrung::store
{

/// A text is never larger than this; bytes that claim more are refused before anything is allocated.
inline constexpr std::size_t largestText = std::size_t{64} << 20U;

/// Empty where the text is too large or there is no memory: `unpackText` refuses that.
[[nodiscard]] std::vector<std::uint8_t> packText(const std::string& text);
/// Nothing where the bytes are none that `packText` has made.
[[nodiscard]] std::optional<std::string> unpackText(std::span<const std::uint8_t> bytes);

} // namespace fleetrung::store
