#include "helper.hpp"

using namespace fleetrung;
using namespace fleetrung::importing;
using namespace fleetrung::importing::test;

namespace
{

std::string utf16(const std::string& ascii, bool bigEndian)
{
    std::string bytes = bigEndian ? "\xFE\xFF" : "\xFF\xFE";
    for (const char c : ascii) {
        if (bigEndian)
            bytes += '\0';
        bytes += c;
        if (!bigEndian)
            bytes += '\0';
    }
    return bytes;
}

const std::string plain = "Name,Date,10 m,30 m\r\nAda,2026-03-01,1.85,4.21\r\nBo,2026-03-01,1.92,4.40\r\n";

} // namespace

TEST_CASE("the same table comes out of every encoding and line end", "[table]")
{
    auto unix = plain, old = plain;
    std::erase(unix, '\r');
    std::erase(old, '\n');
    for (const auto& text : {plain, unix, old, "\xEF\xBB\xBF" + plain, utf16(plain, false), utf16(plain, true)}) {
        const auto table = tableOf(text);
        CHECK(table.header == std::vector<std::string>{"Name", "Date", "10 m", "30 m"});
        REQUIRE(table.rows.size() == 2);
        CHECK(table.rows[1].cells == std::vector<std::string>{"Bo", "2026-03-01", "1.92", "4.40"});
        CHECK(table.rows[1].line == 3);
    }
}

TEST_CASE("characters beyond the first plane come out of UTF-16", "[table]")
{
    const std::string name{"\x3D\xD8\x00\xDE", 4}; // U+1F600 as a pair
    auto bytes = utf16("Name,30 m\nA,4.2\n", false);
    bytes.insert(bytes.find('A', 14), name);
    CHECK(tableOf(bytes).rows[0].cells[0] == "\xF0\x9F\x98\x80"
                                             "A");
}

TEST_CASE("the delimiter is found, also beside decimal commas and quotes", "[table]")
{
    CHECK(tableOf("Name;10 m;30 m\nAda;1,85;4,21\nBo;1,92;4,40\n").delimiter == ';');
    CHECK(tableOf("Ada;2026-03-01;1,85;4,21\nBo;2026-03-01;1,92;4,40\n").delimiter == ';');
    CHECK(tableOf("Name\t10 m\t30 m\nAda\t1,85\t4,21\n").delimiter == '\t');
    const auto quoted = tableOf("Name,30 m,note\n\"Muster; Ada; jun\",\"4,21\",\"a \"\"fast\"\" one\"\n");
    CHECK(quoted.delimiter == ',');
    CHECK(quoted.rows[0].cells == std::vector<std::string>{"Muster; Ada; jun", "4,21", "a \"fast\" one"});
}

TEST_CASE("a header is told from a first row of data", "[table]")
{
    CHECK(tableOf(plain).hasHeader);
    CHECK(tableOf("Sportler;5;10;20\nAda;1,1;1,9;3,2\n").hasHeader);
    CHECK(tableOf("who,when,x\nAda,2026-03-01,4.2\n").hasHeader);
    const auto bare = tableOf("Ada,2026-03-01,1.85,4.21\nBo,2026-03-01,1.92,4.40\n");
    CHECK_FALSE(bare.hasHeader);
    CHECK(bare.rows.size() == 2);
    CHECK(bare.header[3] == "column 4");
}

TEST_CASE("lines above the header and a row of units below it are no rows", "[table]")
{
    const auto table =
        tableOf("Session of the spring group\n\nName,Date,10 m,Wind\n,,ms,m/s\nAda,2026-03-01,1850,0.3\n");
    CHECK(table.preamble == 1);
    CHECK(table.header[0] == "Name");
    CHECK(table.units == std::vector<std::string>{"", "", "ms", "m/s"});
    CHECK(table.rows.size() == 1);
    CHECK(propose(table, Kind::Runs).mapping.columns[2].unit == Unit::Millisecond);
}

TEST_CASE("what cannot be a table is refused once, with place, cause and what to do", "[table]")
{
    CHECK(errorOf("").find("line 1: the file is empty; it needs") == 0);
    CHECK(errorOf(" \r\n\n").find("line 1: the file is empty") == 0);
    CHECK(errorOf(std::string("PK\x03\x04\0\0\0 binary", 15)).find("not a text file") != std::string::npos);
    CHECK(errorOf("Name,30 m\nAda,4.2\nB\xFC,4.3\n").find("line 3: holds bytes that are not UTF-8; save") == 0);
    CHECK(errorOf("Name\nAda\nBo\n").find("one column only") != std::string::npos);
    CHECK(errorOf("Name,30 m\n").find("line 2: there is a header and no row below it") == 0);
    CHECK(errorOf("Name,Note\nAda,fast\nBo,slow\n").find("line 2: neither this row") == 0);
    CHECK(errorOf("Name,30 m\n\"Ada,4.2\n").find("never closed") != std::string::npos);
    CHECK(errorOf(std::string("\xFF\xFE", 2) + "abc").find("middle of a character") != std::string::npos);
}

TEST_CASE("a guard against spreadsheets is taken off", "[table]")
{
    CHECK(tableOf("Name,30 m\n'=Ada,4.2\n").rows[0].cells[0] == "=Ada");
}

TEST_CASE("files of one origin have one header hash, others another", "[table]")
{
    const auto one = headerHash(tableOf("Name,30 m\nAda,4.2\n"));
    CHECK(one == headerHash(tableOf("NAME ; 30 m\nBo;4,4\nCy;4,5\n")));
    CHECK(one != headerHash(tableOf("Name,40 m\nAda,5.2\n")));
    CHECK(one.size() == 64);
}
