#include "engine/base/csv_table.hpp"

#include <catch2/catch.hpp>

#include <random>

using namespace fleetrung;

namespace
{

using Cells = std::vector<std::string>;

CsvTable table(const std::string& text)
{
    auto result = parseCsv(text);
    if (!result)
        FAIL(describe(result.error()));
    return std::move(*result);
}

Error refusal(const std::string& text)
{
    const auto result = parseCsv(text);
    REQUIRE_FALSE(result);
    CHECK(result.error().code == Code::InvalidInput);
    return result.error();
}

} // namespace

TEST_CASE("quoted cells hold delimiters, quotation marks and line ends", "[csv]")
{
    const auto read = table("a,b\r\n\"x, \"\"y\"\"\",\"two\r\nlines\"\r\n3,4\r\n");
    CHECK(read.header.cells == Cells{"a", "b"});
    REQUIRE(read.rows.size() == 2);
    CHECK(read.rows[0].cells == Cells{"x, \"y\"", "two\r\nlines"});
    CHECK(read.rows[0].line == 2);
    CHECK(read.rows[1].line == 4);
}

TEST_CASE("a record is written as RFC 4180 asks", "[csv]")
{
    // RFC 4180, section 2: CRLF ends a record (1); cells with line ends, quotes or commas stand in quotes (6); a quote
    // is doubled (7).
    CHECK(csvRecord(Cells{"plain", "a,\"b\"", "two\nlines", "", "semi;colon"}) ==
          "plain,\"a,\"\"b\"\"\",\"two\nlines\",,semi;colon\r\n");
}

TEST_CASE("what is written is read back, whatever the cells hold", "[csv][property]")
{
    const std::uint64_t seed = 20260401;
    CAPTURE(seed);
    std::mt19937_64 random(seed);
    const std::string alphabet = "ab1,\"\n\r;\t.'=#\xC3\xA4";
    const auto below = [&](std::size_t limit) {
        return std::uniform_int_distribution<std::size_t>(0, limit - 1)(random);
    };
    for (int round = 0; round < 500; ++round) {
        std::string text = csvRecord(Cells{"one", "two", "three"});
        std::vector<Cells> rows;
        for (int r = 0; r < 4; ++r) {
            Cells cells(3);
            for (auto& cell : cells)
                for (auto left = below(6); left > 0; --left)
                    cell += alphabet[below(alphabet.size())];
            // Unquoted spaces and tabs around a cell are not kept: they are the reader's tolerance for hand-made files.
            for (auto& cell : cells)
                while (!cell.empty() && (cell.front() == '\t' || cell.back() == '\t'))
                    cell.erase(cell.front() == '\t' ? 0 : cell.size() - 1, 1);
            text += csvRecord(cells);
            rows.push_back(cells);
        }
        const auto read = table(text);
        CAPTURE(text);
        REQUIRE(read.rows.size() == rows.size());
        for (std::size_t r = 0; r < rows.size(); ++r)
            REQUIRE(read.rows[r].cells == rows[r]);
    }
}

TEST_CASE("the header tells the delimiter, the numbers tell the decimal mark", "[csv]")
{
    CHECK(table("a,b\n1,2\n").delimiter == ',');
    CHECK(table("a;b\n1,5;2\n").delimiter == ';');
    CHECK(table("a;b\n1,5;2\n").decimalMark == ',');
    CHECK(table("a;b\n1.5;2\n").decimalMark == '.');
    CHECK(table("a;b\nx, y;2\n").decimalMark == '.');
    CHECK(table("a\tb\n1\t2\n").delimiter == '\t');
    CHECK(table("one\n1\n").delimiter == ',');
}

TEST_CASE("lines are counted through comments, empty lines and every kind of line end", "[csv]")
{
    const std::string end = GENERATE("\n", "\r\n", "\r");
    CAPTURE(end);
    std::string text = "\xEF\xBB\xBF# by: hand|#|a,b||1,2|||3,4|5,6";
    for (auto at = text.find('|'); at != std::string::npos; at = text.find('|', at))
        text.replace(at, 1, end);
    const auto read = table(text);
    CHECK(read.comments == Cells{"by: hand", ""});
    CHECK(read.header.line == 3);
    REQUIRE(read.rows.size() == 3);
    CHECK(read.rows[0].line == 5);
    CHECK(read.rows[1].line == 8);
    CHECK(read.rows[2].line == 9);
    CHECK(read.rows[2].cells == Cells{"5", "6"});
}

TEST_CASE("a row with more or fewer cells than the header is refused with its line", "[csv]")
{
    CHECK(refusal("a,b\n1,2\n3\n").place == "line 3");
    CHECK(refusal("a,b\n1,2,3\n").place == "line 2");
}

TEST_CASE("broken quoting is refused with its line", "[csv]")
{
    CHECK(refusal("a,b\n1,2\n3,\"never closed\n5,6\n").place == "line 3");
    CHECK(refusal("a,b\n1,\"x\"y\n").place == "line 2");
    CHECK(refusal("a,b\n1,x\"y\n").place == "line 2");
}

TEST_CASE("no table is no table", "[csv]")
{
    CHECK(refusal("").place == "line 1");
    CHECK(refusal("# only a comment\n").place == "line 1");
    CHECK(refusal(std::string("a,b\n1,\0\n", 8)).message.find("not a text file") != std::string::npos);
    CHECK(table("a,b\n").rows.empty());
}

TEST_CASE("reading row by row stops at the caller's error", "[csv]")
{
    int rows = 0;
    const auto read = readCsv(
        "a\n1\n2\n3\n", [](const CsvHead&) { return Expected<void>(); },
        [&](const CsvRow& row) -> Expected<void> {
            ++rows;
            if (row.cells[0] == "2")
                return fail(Code::Refused, "line 3", "enough");
            return {};
        });
    REQUIRE_FALSE(read);
    CHECK(read.error().message == "enough");
    CHECK(rows == 2);
}

TEST_CASE("text that a spreadsheet would run gets an apostrophe, which import takes off", "[csv]")
{
    // OWASP ASVS 5.0, 1.2.10; the full-width forms of = + - @ stand in longer lists of the same advice.
    for (const std::string& text :
         {std::string("=1+1"), std::string("+49 30"), std::string("-x"), std::string("@sum"), std::string("\tx"),
          std::string("\rx"), std::string("\0x", 2), std::string("'quoted"),
          std::string("\xEF\xBC\x9D"
                      "1"),
          std::string("\xEF\xBC\xA0")}) {
        CAPTURE(text);
        CHECK(guardedText(text) == "'" + text);
        CHECK(unguardedText(guardedText(text)) == text);
    }
    for (const std::string text : {"plain", "", "a=b", "M\xC3\xA4rta", "5 x 3"}) {
        CAPTURE(text);
        CHECK(guardedText(text) == text);
        CHECK(unguardedText(text) == text);
    }
    CHECK(unguardedText("'tis") == "'tis"); // an apostrophe that guards nothing stays
}
