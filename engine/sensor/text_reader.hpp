// One line of text to readings, and notifications to lines. Private to engine/sensor.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "engine/sensor/packet_decoder.hpp"
#include "engine/sensor/sequence.hpp"

namespace fleetrung::sensor
{

class TextReader
{
public:
    explicit TextReader(const TextForm& form);

    /// Reading, counter and stamp of one line without its end; or why not.
    std::optional<BadPacket> read(std::string_view line, RawSample& sample, Ticks& ticks);
    void restart();

private:
    static bool take(const TextColumn& column, std::string_view text, RawSample& sample, Ticks& ticks);
    std::optional<BadPacket> readCell(std::string_view cell, int place, RawSample& sample, Ticks& ticks);
    [[nodiscard]] bool isOfUsualLength(int cells);

    TextForm form_;
    bool byKey_ = false;
    int found_ = 0;                    ///< columns of this line
    int usual_ = 0;                    ///< values of a line; 0: not known yet
    int unusual_ = 0, timesInRow_ = 0; ///< another number of values, and how often it came in a row
};

/// Cuts notifications into lines.
class LineFinder
{
public:
    static constexpr std::size_t longestLine = 512;

    /// The next line without its end; none: all bytes are used up. `tooLong` grows where a line had to be thrown away.
    std::optional<std::string_view> next(std::span<const std::uint8_t>& bytes, std::int64_t& tooLong);
    void restart() { *this = LineFinder(); }

private:
    std::array<char, longestLine> held_{};
    std::size_t size_ = 0;
    bool skips_ = true; ///< to the end of a line whose beginning is not known
};

} // namespace fleetrung::sensor
