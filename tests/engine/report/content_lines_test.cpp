// The lines of an iCalendar object against RFC 5545.
#include <catch2/catch.hpp>

#include "engine/report/content_lines.hpp"

using namespace fleetrung;
using namespace fleetrung::report;

namespace
{

std::string repeated(std::string_view text, int times)
{
    std::string all;
    for (int i = 0; i < times; ++i)
        all += text;
    return all;
}

std::vector<std::string> rawLines(std::string_view folded)
{
    std::vector<std::string> lines;
    while (!folded.empty()) {
        const auto end = folded.find("\r\n");
        REQUIRE(end != std::string_view::npos);
        lines.emplace_back(folded.substr(0, end));
        folded.remove_prefix(end + 2);
    }
    return lines;
}

/// Well-formed by the lead octet's count of continuation octets (RFC 3629 section 3).
bool isWholeUtf8(std::string_view text)
{
    for (std::size_t i = 0; i < text.size();) {
        const auto lead = static_cast<unsigned char>(text[i]);
        const std::size_t length = lead < 0x80 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 0;
        if (length == 0 || i + length > text.size())
            return false;
        for (std::size_t k = 1; k < length; ++k)
            if ((static_cast<unsigned char>(text[i + k]) & 0xC0U) != 0x80U)
                return false;
        i += length;
    }
    return true;
}

CivilDate on(const char* text)
{
    return *parseDate(text);
}

} // namespace

TEST_CASE("A line of 75 octets stays whole and one of 76 is folded", "[calendar]")
{
    // RFC 5545 section 3.1: lines SHOULD NOT be longer than 75 octets, the line break not counted
    const std::string fits(75, 'a');
    CHECK(foldedText(fits) == fits + "\r\n");
    CHECK(foldedText(fits + "b") == fits + "\r\n b\r\n");
    CHECK(foldedText(std::string(75 + 74, 'a')) == fits + "\r\n " + std::string(74, 'a') + "\r\n");
    CHECK(foldedText("") == "\r\n");
}

TEST_CASE("Folding never cuts a UTF-8 sequence, and unfolding gives the line back", "[calendar]")
{
    // RFC 5545 section 3.1 warns that a fold may fall within a UTF-8 multi-octet sequence
    const std::string relay = "\xE9\x99\xB8\xE4\xB8\x8A\xE7\xAB\xB6\xE6\x8A\x80"; // four letters of three octets
    const std::string runner = "\xF0\x9F\x8F\x83";                                // one sign of four octets
    const std::string umlaut = "\xC3\xBC";
    const std::string mixed = relay + runner + umlaut;
    const std::vector<std::string_view> signs{relay, runner, umlaut, mixed};
    for (const auto sign : signs)
        for (std::size_t before = 0; before < 8; ++before) {
            auto line = repeated(sign, 40);
            line.insert(0, before, 'x');
            INFO(line);
            const auto folded = foldedText(line);
            for (const auto& raw : rawLines(folded)) {
                CHECK(raw.size() <= 75);
                CHECK(isWholeUtf8(raw));
            }
            const auto lines = contentLines(folded);
            REQUIRE(lines.size() == 1);
            CHECK(lines[0].text == line);
        }
}

TEST_CASE("Octets that are no UTF-8 are folded as well", "[calendar]")
{
    const std::string line(500, '\x80');
    const auto folded = foldedText(line);
    for (const auto& raw : rawLines(folded))
        CHECK(raw.size() <= 75);
    CHECK(contentLines(folded).at(0).text == line);
}

TEST_CASE("A line keeps the number at which it began, with CRLF and with LF alone", "[calendar]")
{
    const std::string withLineFeeds = "A:1\nB;X=2:3\n 4\n\t5\nC:6";
    std::string withBoth;
    for (const char c : withLineFeeds)
        withBoth.append(c == '\n' ? "\r" : "").append(1, c);
    for (const auto& bytes : {withLineFeeds, withBoth}) {
        const auto lines = contentLines(bytes);
        REQUIRE(lines.size() == 3);
        CHECK(lines[1].text == "B;X=2:345");
        CHECK(lines[1].line == 2);
        CHECK(lines[1].name() == "B");
        CHECK(lines[1].value() == "345");
        CHECK(lines[2].line == 5);
    }
}

TEST_CASE("Text escapes backslash, semicolon, comma and line break, and leaves the colon", "[calendar]")
{
    // RFC 5545 section 3.3.11
    CHECK(escapedText("a,b;c\\d\ne:f") == "a\\,b\\;c\\\\d\\ne:f");
    CHECK(escapedText("one\r\ntwo\rthree\n") == "one\\ntwo\\nthree\\n");
    // CONTROL is no part of a TEXT value
    CHECK(escapedText(std::string("a\0b\tc\x7F", 6)) == "a b c ");
    CHECK(escapedText("\xC3\xBC") == "\xC3\xBC");
}

TEST_CASE("Dates and times are written in the basic format", "[calendar]")
{
    using namespace std::chrono;
    CHECK(calendarDate(on("2028-02-29")) == "20280229");                               // section 3.3.4
    CHECK(floatingTime(on("2026-12-31"), 17h + 5min) == "20261231T170500");            // section 3.3.5, form 1
    CHECK(floatingTime(on("2026-12-31"), 24h + 30min) == "20270101T003000");           // past midnight
    CHECK(calendarInstant(on("2026-03-30") + 15h + 42min + 5s) == "20260330T154205Z"); // form 2
    CHECK(calendarInstant(on("1970-01-01") - 1s) == "19691231T235959Z");
}
