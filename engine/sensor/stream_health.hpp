// What a stream's health is told from: the last ten seconds in blocks of one. Private to engine/sensor.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

#include "engine/sensor/stream.hpp"

namespace fleetrung::sensor
{

class StreamHealth
{
public:
    /// `lost`: since the last notification.
    void notification(std::int64_t arrival, int samples, std::int64_t lost);
    void late(double seconds); ///< of an arrival, above the clock's line
    void gap();
    [[nodiscard]] Health at(std::int64_t now, double expectedRate) const;

private:
    static constexpr std::size_t kept = 10;    ///< s
    static constexpr std::size_t classes = 64; ///< of lateness, each a fifth longer than the one before
    struct Block {
        std::int64_t second = -1; ///< since the first notification
        std::int64_t samples = 0, lost = 0, longest = 0;
        std::array<std::uint16_t, classes> lateness{};
    };
    Block& blockOf(std::int64_t arrival);

    std::array<Block, kept + 1> blocks_;
    std::int64_t first_ = -1, last_ = -1; ///< ns; -1: none yet
    std::int64_t samples_ = 0;
    int gaps_ = 0;
    bool afterGap_ = false;
};

} // namespace fleetrung::sensor
