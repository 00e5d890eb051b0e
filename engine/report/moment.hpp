// An instant with the clock it was lived by: UTC for order, the offset for what the athlete's watch said.
#pragma once

#include <cstdint>
#include <string>

namespace fleetrung::report
{

struct Moment {
    std::int64_t utcMilliseconds = 0; ///< since 1970-01-01T00:00:00Z
    int offsetMinutes = 0;            ///< local time minus UTC
};

/// RFC 3339 with offset, local time: "2026-03-30T17:42:05+02:00"; milliseconds only where they are not zero; UTC is
/// "Z".
[[nodiscard]] std::string momentText(const Moment& moment);

} // namespace fleetrung::report
