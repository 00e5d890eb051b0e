#include "engine/base/numbers.hpp"

#include <catch2/catch.hpp>

#include <bit>
#include <clocale>
#include <limits>
#include <random>

using namespace fleetrung;

TEST_CASE("a number is read whole or not at all", "[numbers]")
{
    CHECK(parseNumber("12.5") == 12.5);
    CHECK(parseNumber(" -0.125\t") == -0.125);
    CHECK(parseNumber("+3") == 3.0);
    CHECK(parseNumber("1e-3") == 0.001);
    CHECK(parseNumber(".5") == 0.5);
    for (const auto* text : {"", " ", "abc", "1.2.3", "1,5", "12 13", "1e", "--1", "+-1", "0x1F", "nan", "inf",
                             "-Infinity", "1e999", "1_000", "\xD9\xA1\xD9\xA2"}) {
        CAPTURE(text);
        CHECK_FALSE(parseNumber(text));
    }
}

TEST_CASE("a decimal comma is read only where it is asked for", "[numbers]")
{
    CHECK(parseNumber("118,59", ',') == 118.59);
    CHECK_FALSE(parseNumber("118,59"));
    CHECK_FALSE(parseNumber("118.59", ','));
    CHECK_FALSE(parseNumber("1.118,59", ','));
}

TEST_CASE("whole numbers have no decimals and fit 64 bits", "[numbers]")
{
    CHECK(parseInteger(" 42 ") == 42);
    CHECK(parseInteger("-7") == -7);
    CHECK(parseInteger("9223372036854775807") == std::numeric_limits<std::int64_t>::max());
    for (const auto* text : {"", "4.0", "9223372036854775808", "4a", "1e3"}) {
        CAPTURE(text);
        CHECK_FALSE(parseInteger(text));
    }
    CHECK(integerText(std::numeric_limits<std::int64_t>::min()) == "-9223372036854775808");
}

TEST_CASE("the shortest text of a number reads back as the same number, bit for bit", "[numbers][property]")
{
    const std::uint64_t seed = 20260330;
    CAPTURE(seed);
    std::mt19937_64 random(seed);
    for (int i = 0; i < 20000; ++i) {
        const auto value = std::bit_cast<double>(random());
        if (!std::isfinite(value))
            continue;
        const auto text = shortestText(value);
        const auto back = parseNumber(text);
        CAPTURE(text);
        REQUIRE(back);
        REQUIRE(std::bit_cast<std::uint64_t>(*back) == std::bit_cast<std::uint64_t>(value));
    }
    CHECK(shortestText(0.1) == "0.1");
    CHECK(shortestText(-0.0) == "0");
    CHECK(shortestText(120) == "120");
}

TEST_CASE("printed decimals round halves away from zero, as on paper", "[numbers]")
{
    CHECK(fixedText(1.25, 1) == "1.3");
    CHECK(fixedText(-1.25, 1) == "-1.3");
    CHECK(fixedText(2.675, 2) == "2.68"); // the nearest double lies below: printf would say 2.67
    CHECK(fixedText(0.0449, 1) == "0.0");
    CHECK(fixedText(-0.04, 1) == "0.0");
    CHECK(fixedText(0.2, 3) == "0.200");
    CHECK(fixedText(1234567.5, 0) == "1234568");
    CHECK(fixedText(9.9996, 3) == "10.000");
}

TEST_CASE("decisions rest on values rounded to their printed step", "[numbers]")
{
    CHECK(roundTo(0.1234, 1000) == 0.123);
    CHECK(roundTo(-0.1236, 1000) == -0.124);
    CHECK(roundTo(0.2864999, 100) == 0.29);
}

// ctest runs this once more under locales of its own, made by tests/support/make_locales.py.
TEST_CASE("numbers do not follow the machine's locale", "[numbers][locale]")
{
    std::setlocale(LC_ALL, "");
    CHECK(parseNumber("1.5") == 1.5);
    CHECK_FALSE(parseNumber("1,5"));
    CHECK(shortestText(1234567.5) == "1234567.5");
    CHECK(fixedText(-1234567.5, 2) == "-1234567.50");
    CHECK(integerText(1234567) == "1234567");
    std::setlocale(LC_ALL, "C");
}
