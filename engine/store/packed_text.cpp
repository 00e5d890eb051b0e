#include "engine/store/packed_text.hpp"

#include <zstd.h>

namespace fleetrung::store
{
namespace
{

constexpr int compressionLevel = 3;

} // namespace

std::vector<std::uint8_t> packText(const std::string& text)
{
    if (text.size() > largestText)
        return {};
    std::vector<std::uint8_t> bytes(ZSTD_compressBound(text.size()));
    const auto size = ZSTD_compress(bytes.data(), bytes.size(), text.data(), text.size(), compressionLevel);
    bytes.resize(ZSTD_isError(size) != 0 ? 0 : size);
    return bytes;
}

std::optional<std::string> unpackText(std::span<const std::uint8_t> bytes)
{
    const auto size = ZSTD_getFrameContentSize(bytes.data(), bytes.size());
    if (size == ZSTD_CONTENTSIZE_ERROR || size == ZSTD_CONTENTSIZE_UNKNOWN || size > largestText)
        return std::nullopt;
    std::string text(size, '\0');
    const auto written = ZSTD_decompress(text.data(), text.size(), bytes.data(), bytes.size());
    if (ZSTD_isError(written) != 0 || written != text.size())
        return std::nullopt;
    return text;
}

} // namespace fleetrung::store
