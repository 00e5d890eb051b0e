#include "engine/sensor/text_reader.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/sensor/readings.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr int timesToBelieve = 3; ///< lines in a row of another number of values before it is the usual one

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view blank = " \t\r";
    const auto first = text.find_first_not_of(blank);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

/// The text before the next separator; the rest stays. Several blanks in a row part two values once.
std::string_view nextCell(std::string_view& rest, char separator, bool& more)
{
    const auto end = rest.find(separator);
    more = end != std::string_view::npos;
    const auto cell = rest.substr(0, end);
    rest = more ? rest.substr(end + 1) : std::string_view{};
    while (separator == ' ' && more && rest.starts_with(' '))
        rest.remove_prefix(1);
    return cell;
}

} // namespace

TextReader::TextReader(const TextForm& form) : form_(form)
{
    byKey_ =
        std::any_of(form.columns.begin(), form.columns.end(), [](const auto& column) { return !column.key.empty(); });
}

void TextReader::restart()
{
    usual_ = unusual_ = timesInRow_ = 0;
}

std::optional<BadPacket> TextReader::read(std::string_view line, RawSample& sample, Ticks& ticks)
{
    if (!line.starts_with(form_.prefix))
        return BadPacket::NotOurs;
    sample = emptySample();
    ticks = Ticks{};
    found_ = 0;
    auto rest = trimmed(line.substr(form_.prefix.size()));
    if (rest.empty())
        return BadPacket::Empty;
    int cells = 0;
    for (bool more = true; more; ++cells)
        if (const auto bad = readCell(nextCell(rest, form_.separator, more), cells, sample, ticks))
            return bad;
    if (found_ < static_cast<int>(form_.columns.size()))
        return BadPacket::MissingColumn;
    // Where a notification is lost, two halves of lines become one line of the wrong number of values.
    const bool usual = byKey_ ? found_ == static_cast<int>(form_.columns.size()) : isOfUsualLength(cells);
    return usual ? std::nullopt : std::optional(BadPacket::WrongLength);
}

std::optional<BadPacket> TextReader::readCell(std::string_view cell, int place, RawSample& sample, Ticks& ticks)
{
    std::string_view key;
    if (byKey_) {
        const auto equals = cell.find('=');
        if (equals == std::string_view::npos)
            return std::nullopt;
        key = trimmed(cell.substr(0, equals));
        cell = cell.substr(equals + 1);
    }
    for (const auto& column : form_.columns) {
        if (byKey_ ? column.key != key : column.column != place)
            continue;
        if (!take(column, cell, sample, ticks))
            return BadPacket::NotANumber;
        ++found_;
    }
    return std::nullopt;
}

bool TextReader::take(const TextColumn& column, std::string_view text, RawSample& sample, Ticks& ticks)
{
    const auto number = parseNumber(text);
    if (!number)
        return false;
    if (column.channel == Channel::Counter) {
        ticks.counter = counterCounts(*number);
        return ticks.counter.has_value();
    }
    const double value = (*number + column.offset) * column.scale;
    if (column.channel == Channel::Stamp) {
        ticks.stamp = stampNanoseconds(value);
        return ticks.stamp.has_value();
    }
    return takeReading(column.channel, value, sample, ticks);
}

bool TextReader::isOfUsualLength(int cells)
{
    if (usual_ == 0)
        usual_ = cells;
    if (cells == usual_) {
        timesInRow_ = 0;
        return true;
    }
    timesInRow_ = cells == unusual_ ? timesInRow_ + 1 : 1;
    unusual_ = cells;
    if (timesInRow_ < timesToBelieve)
        return false;
    usual_ = cells;
    timesInRow_ = 0;
    return true;
}

std::optional<std::string_view> LineFinder::next(std::span<const std::uint8_t>& bytes, std::int64_t& tooLong)
{
    while (!bytes.empty()) {
        const auto character = static_cast<char>(bytes.front());
        bytes = bytes.subspan(1);
        if (character == '\n') {
            const bool whole = !skips_;
            const std::string_view line(held_.data(), size_);
            size_ = 0;
            skips_ = false;
            if (whole && !line.empty() && line != "\r")
                return line;
        } else if (!skips_ && size_ < held_.size()) {
            held_[size_++] = character;
        } else if (!skips_) {
            ++tooLong;
            skips_ = true;
        }
    }
    return std::nullopt;
}

} // namespace fleetrung::sensor
