#include <cstdint>

#include "engine/base/numbers.hpp"
#include "engine/importing/table.hpp"

namespace fleetrung::importing
{
namespace
{

constexpr const char* notText = "this is not a text file; export the table as CSV in UTF-8 and choose that file";

void append(std::string& text, char32_t point)
{
    const auto byte = [&text](char32_t value) { text += static_cast<char>(static_cast<unsigned char>(value)); };
    if (point < 0x80) {
        byte(point);
    } else if (point < 0x800) {
        byte(0xC0 | (point >> 6U));
        byte(0x80 | (point & 0x3FU));
    } else if (point < 0x10000) {
        byte(0xE0 | (point >> 12U));
        byte(0x80 | ((point >> 6U) & 0x3FU));
        byte(0x80 | (point & 0x3FU));
    } else {
        byte(0xF0 | (point >> 18U));
        byte(0x80 | ((point >> 12U) & 0x3FU));
        byte(0x80 | ((point >> 6U) & 0x3FU));
        byte(0x80 | (point & 0x3FU));
    }
}

/// `bytes` after the mark. A lone half of a pair makes the file no text.
Expected<std::string> fromUtf16(std::string_view bytes, bool bigEndian)
{
    if (bytes.size() % 2 != 0)
        return fail(Code::InvalidInput, "", "the file ends in the middle of a character; copy it again");
    const auto unit = [&](std::size_t at) {
        const auto first = static_cast<unsigned char>(bytes[at]), second = static_cast<unsigned char>(bytes[at + 1]);
        return static_cast<char32_t>(bigEndian ? first << 8U | second : second << 8U | first);
    };
    std::string text;
    text.reserve(bytes.size());
    for (std::size_t at = 0; at < bytes.size(); at += 2) {
        const char32_t value = unit(at);
        if (value < 0xD800 || value > 0xDFFF) {
            append(text, value);
            continue;
        }
        const bool pair = value < 0xDC00 && at + 3 < bytes.size() && unit(at + 2) >= 0xDC00 && unit(at + 2) <= 0xDFFF;
        if (!pair)
            return fail(Code::InvalidInput, "", notText);
        append(text, 0x10000 + ((value - 0xD800) << 10U) + (unit(at + 2) - 0xDC00));
        at += 2;
    }
    return text;
}

/// Bytes that follow the first one of a UTF-8 sequence; -1 where none begins so (RFC 3629).
int following(unsigned char first)
{
    if (first < 0x80)
        return 0;
    if (first >= 0xC2 && first <= 0xDF)
        return 1;
    if (first >= 0xE0 && first <= 0xEF)
        return 2;
    return first >= 0xF0 && first <= 0xF4 ? 3 : -1;
}

/// Control characters beside tab and line ends are no text, and neither are broken sequences.
Expected<void> checkText(std::string_view text)
{
    int line = 1;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const auto byte = static_cast<unsigned char>(text[at]);
        if (byte == '\n' || (byte == '\r' && text.substr(at, 2) != "\r\n"))
            ++line;
        const auto place = [line] { return "line " + integerText(line); };
        if ((byte < 0x20 && byte != '\t' && byte != '\n' && byte != '\r') || byte == 0x7F)
            return fail(Code::InvalidInput, place(), notText);
        const int more = following(byte);
        bool whole = more >= 0 && at + static_cast<std::size_t>(more) < text.size();
        for (int i = 1; whole && i <= more; ++i)
            whole = (static_cast<unsigned char>(text[at + static_cast<std::size_t>(i)]) & 0xC0U) == 0x80;
        if (!whole)
            return fail(Code::InvalidInput, place(),
                        "holds bytes that are not UTF-8; save the table as CSV in UTF-8 and choose that file");
        at += static_cast<std::size_t>(more);
    }
    return {};
}

} // namespace

Expected<std::string> utf8Text(std::string_view bytes)
{
    if (bytes.size() > mostBytes)
        return fail(Code::InvalidInput, "", "the file is larger than 64 MB; export a shorter span of time");
    Expected<std::string> text = std::string(bytes);
    if (bytes.starts_with("\xEF\xBB\xBF"))
        text = std::string(bytes.substr(3));
    else if (bytes.starts_with("\xFF\xFE"))
        text = fromUtf16(bytes.substr(2), false);
    else if (bytes.starts_with("\xFE\xFF"))
        text = fromUtf16(bytes.substr(2), true);
    if (!text)
        return text;
    if (text->find_first_not_of(" \t\r\n") == std::string::npos)
        return fail(Code::InvalidInput, "line 1", "the file is empty; it needs a header row and rows below it");
    if (auto sound = checkText(*text); !sound)
        return tl::unexpected(sound.error());
    return text;
}

} // namespace fleetrung::importing
