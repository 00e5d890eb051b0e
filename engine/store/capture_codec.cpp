#include "engine/store/capture_codec.hpp"

#include <cereal/types/vector.hpp>
#include <zstd.h>

#include "engine/base/identifier.hpp"
#include "engine/base/numbers.hpp"
#include "engine/store/column.hpp"
#include "engine/store/wire_archive.hpp"

namespace fleetrung::store
{
namespace
{

constexpr std::uint16_t wireVersion = 1;
constexpr int compressionLevel =
    6; // beyond it, captures grow smaller by less than 1 % and writing takes twice the time

// Which columns follow, in this order.
constexpr std::uint16_t timePresent = 1U << 0U;
constexpr std::uint16_t firstChannelPresent = 1U << 1U; // six of them
constexpr std::uint16_t countersPresent = 1U << 7U;
constexpr std::uint16_t arrivalsPresent = 1U << 8U;

struct WireCapture {
    std::uint16_t version = wireVersion;
    std::uint64_t count = 0;
    std::uint16_t present = 0;
    std::vector<PackedColumn> columns;

    template <class Archive> void serialize(Archive& archive) { archive(version, count, present, columns); }
};

constexpr std::uint16_t channelPresent(std::size_t channel)
{
    return static_cast<std::uint16_t>(firstChannelPresent << channel);
}

WireCapture packed(const CaptureSamples& samples, const CountScales& scales)
{
    WireCapture wire;
    const auto add = [&wire](std::uint16_t mark, bool any, auto pack) {
        if (!any)
            return;
        wire.present = static_cast<std::uint16_t>(wire.present | mark);
        wire.columns.push_back(pack());
    };
    wire.count = samples.time.size();
    add(timePresent, !samples.time.empty(), [&] { return packDoubles(samples.time, 0); });
    for (std::size_t i = 0; i < samples.channels.size(); ++i)
        add(channelPresent(i), !samples.channels[i].empty(),
            [&] { return packDoubles(samples.channels[i], i < 3 ? scales.accelerometer : scales.gyroscope); });
    add(countersPresent, !samples.counters.empty(), [&] { return packIntegers(samples.counters); });
    add(arrivalsPresent, !samples.arrivals.empty(), [&] { return packIntegers(samples.arrivals); });
    return wire;
}

/// Nothing where a column is missing, is one too many, or does not have `count` numbers.
std::optional<CaptureSamples> unpacked(const WireCapture& wire)
{
    CaptureSamples samples;
    std::size_t next = 0;
    bool good = true;
    const auto take = [&](std::uint16_t mark, auto& into, auto unpack) {
        if (!good || (wire.present & mark) == 0)
            return;
        auto column = next < wire.columns.size() ? unpack(wire.columns[next++], wire.count) : std::nullopt;
        good = column.has_value();
        if (good)
            into = std::move(*column);
    };
    take(timePresent, samples.time, unpackDoubles);
    for (std::size_t i = 0; i < samples.channels.size(); ++i)
        take(channelPresent(i), samples.channels[i], unpackDoubles);
    take(countersPresent, samples.counters, unpackIntegers);
    take(arrivalsPresent, samples.arrivals, unpackIntegers);
    if (!good || next != wire.columns.size() || samples.time.size() != wire.count)
        return std::nullopt;
    return samples;
}

bool sameLengths(const CaptureSamples& samples)
{
    const auto fits = [&](const auto& column) { return column.empty() || column.size() == samples.time.size(); };
    return std::ranges::all_of(samples.channels, fits) && fits(samples.counters) && fits(samples.arrivals);
}

tl::unexpected<Error> damaged(const std::string& how)
{
    return fail(Code::StoreCorrupt, "capture",
                "the recording's bytes are damaged (" + how + "); restore it from a backup");
}

/// The columns before zstd.
Expected<std::vector<std::uint8_t>> decompressed(std::span<const std::uint8_t> bytes)
{
    const auto size = ZSTD_getFrameContentSize(bytes.data(), bytes.size());
    if (size == ZSTD_CONTENTSIZE_ERROR || size == ZSTD_CONTENTSIZE_UNKNOWN)
        return damaged("not a compressed capture");
    if (size > largestCaptureBytes)
        return damaged("claims " + integerText(static_cast<std::int64_t>(size >> 20U)) + " MiB");
    std::vector<std::uint8_t> plain(size);
    const auto written = ZSTD_decompress(plain.data(), plain.size(), bytes.data(), bytes.size());
    if (ZSTD_isError(written) != 0 || written != plain.size())
        return damaged("cannot be decompressed");
    return plain;
}

} // namespace

Expected<EncodedCapture> encodeCapture(const CaptureSamples& samples, const CountScales& scales)
{
    if (!sameLengths(samples))
        return fail(Code::InvalidArgument, "capture", "every column of a recording must be as long as its time column");
    WireWriter writer;
    writer(packed(samples, scales));
    const auto plain = writer.take();
    if (plain.size() > largestCaptureBytes)
        return fail(Code::Refused, "capture", "the recording is too long to be kept; cut it into sets");

    EncodedCapture encoded{contentHash(plain), std::vector<std::uint8_t>(ZSTD_compressBound(plain.size()))};
    const auto size =
        ZSTD_compress(encoded.bytes.data(), encoded.bytes.size(), plain.data(), plain.size(), compressionLevel);
    if (ZSTD_isError(size) != 0)
        return fail(Code::StoreFailed, "capture",
                    "the recording could not be compressed; free some memory and try again");
    encoded.bytes.resize(size);
    return encoded;
}

Expected<DecodedCapture> decodeCapture(std::span<const std::uint8_t> bytes)
{
    const auto plain = decompressed(bytes);
    if (!plain)
        return tl::unexpected(plain.error());
    try {
        WireReader versionOnly(*plain);
        std::uint16_t version = 0;
        versionOnly(version);
        if (version > wireVersion)
            return fail(Code::StoreTooNew, "capture",
                        "the recording was written by a later version; update this program");
        if (version == 0)
            return damaged("has no version");

        WireReader reader(*plain);
        WireCapture wire;
        reader(wire);
        auto samples = reader.atEnd() ? unpacked(wire) : std::nullopt;
        if (!samples)
            return damaged("columns do not fit together");
        return DecodedCapture{contentHash(*plain), std::move(*samples)};
    } catch (const std::exception& error) { // cereal's, and no memory
        return damaged(error.what());
    }
}

} // namespace fleetrung::store
