// The samples of one capture to bytes and back, bit for bit.
//
// Each column is kept as whole numbers where that is exact (counts times the sensor's scale, or decimals as a file
// wrote them), else as the doubles themselves; then differences, bytes of equal rank side by side, and zstd. Whichever
// was chosen, decoding gives the very doubles that went in.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "engine/base/error.hpp"

namespace fleetrung::store
{

struct CaptureSamples {
    std::vector<double> time;                    ///< s
    std::array<std::vector<double>, 6> channels; ///< specific force x y z [m/s2], angular rate x y z [rad/s]
    std::vector<std::int64_t> counters;          ///< ticks of the sensor's clock; empty where there was no radio
    std::vector<std::int64_t> arrivals; ///< ns of a clock that never steps back; empty where there was no radio

    bool operator==(const CaptureSamples&) const = default;
};

/// One count of the accelerometer [m/s2] and of the gyroscope [rad/s]; 0 where it is not known. A hint: a wrong one
/// costs space, never a bit of the data.
struct CountScales {
    double accelerometer = 0;
    double gyroscope = 0;
};

struct EncodedCapture {
    std::string contentHash; ///< of the columns before zstd: another version of zstd names the same samples the same
    std::vector<std::uint8_t> bytes;
};

/// A decompressed capture is never larger than this; a frame that claims more is refused before anything is allocated.
inline constexpr std::size_t largestCaptureBytes = std::size_t{256} << 20U;

/// Fails with InvalidArgument where columns differ in length, and with Refused beyond `largestCaptureBytes`.
[[nodiscard]] Expected<EncodedCapture> encodeCapture(const CaptureSamples& samples, const CountScales& scales = {});

struct DecodedCapture {
    std::string contentHash;
    CaptureSamples samples;
};

/// Fails with StoreCorrupt on any bytes that `encodeCapture` has not made, and with StoreTooNew for a later form.
[[nodiscard]] Expected<DecodedCapture> decodeCapture(std::span<const std::uint8_t> bytes);

} // namespace fleetrung::store
