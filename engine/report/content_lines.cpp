#include "engine/report/content_lines.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung::report
{
namespace
{

constexpr std::size_t foldAt = 75; // octets of a line without its line break, section 3.1

bool continuesSequence(char octet)
{
    return (static_cast<unsigned char>(octet) & 0xC0U) == 0x80U;
}

/// How much of `text` goes on a line with `room` octets.
std::size_t cutAt(std::string_view text, std::size_t room)
{
    if (text.size() <= room)
        return text.size();
    constexpr std::size_t longestSequence = 4; // beyond that it is no UTF-8 and may be cut anywhere
    std::size_t cut = room;
    while (cut > room - longestSequence && continuesSequence(text[cut]))
        --cut;
    return continuesSequence(text[cut]) ? room : cut;
}

std::string twoDigits(std::int64_t value)
{
    return (value < 10 ? "0" : "") + integerText(value);
}

std::string clockText(std::chrono::seconds sinceMidnight)
{
    const auto seconds = sinceMidnight.count();
    return "T" + twoDigits(seconds / 3600) + twoDigits(seconds / 60 % 60) + twoDigits(seconds % 60);
}

/// The line that begins at `at`, without its line break; `at` moves behind it.
std::string_view takeLine(std::string_view bytes, std::size_t& at)
{
    const auto end = std::min(bytes.find('\n', at), bytes.size());
    auto line = bytes.substr(at, end - at);
    at = end + 1;
    if (line.ends_with('\r'))
        line.remove_suffix(1);
    return line;
}

} // namespace

std::string_view ContentLine::name() const
{
    return std::string_view(text).substr(0, text.find_first_of(":;"));
}

std::string_view ContentLine::value() const
{
    const auto colon = text.find(':');
    return colon == std::string::npos ? std::string_view() : std::string_view(text).substr(colon + 1);
}

std::string foldedText(std::string_view line)
{
    auto cut = cutAt(line, foldAt);
    std::string text(line.substr(0, cut));
    for (line.remove_prefix(cut); !line.empty(); line.remove_prefix(cut)) {
        cut = cutAt(line, foldAt - 1); // the space that marks the fold counts
        text.append("\r\n ").append(line.substr(0, cut));
    }
    return text += "\r\n";
}

std::vector<ContentLine> contentLines(std::string_view bytes)
{
    std::vector<ContentLine> lines;
    int number = 1;
    for (std::size_t at = 0; at < bytes.size(); ++number) {
        const auto line = takeLine(bytes, at);
        if (!lines.empty() && (line.starts_with(' ') || line.starts_with('\t')))
            lines.back().text += line.substr(1);
        else if (!line.empty())
            lines.push_back({std::string(line), number});
    }
    return lines;
}

std::string escapedText(std::string_view text)
{
    std::string escaped;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool partOfBreak = c == '\r' && i + 1 < text.size() && text[i + 1] == '\n';
        if (partOfBreak)
            continue;
        if (c == '\\' || c == ';' || c == ',')
            escaped.append(1, '\\').append(1, c);
        else if (c == '\n' || c == '\r')
            escaped += "\\n";
        else
            escaped += static_cast<unsigned char>(c) < ' ' || c == '\x7F' ? ' ' : c;
    }
    return escaped;
}

std::string calendarDate(CivilDate day)
{
    auto text = dateText(day);
    std::erase(text, '-');
    return text;
}

std::string floatingTime(CivilDate day, std::chrono::minutes sinceMidnight)
{
    const auto later = std::chrono::floor<std::chrono::days>(sinceMidnight);
    return calendarDate(day + later) + clockText(sinceMidnight - later);
}

std::string calendarInstant(std::chrono::sys_seconds instant)
{
    const auto day = std::chrono::floor<std::chrono::days>(instant);
    return calendarDate(day) + clockText(instant - day) + "Z";
}

} // namespace fleetrung::report
