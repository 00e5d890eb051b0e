#include "engine/base/json.hpp"

#include <catch2/catch.hpp>

#include <clocale>
#include <random>

#include "engine/base/json_place.hpp"
#include "engine/base/numbers.hpp"

using namespace fleetrung;

namespace
{

Error refusal(const std::string& text)
{
    const auto value = parseJson(text);
    REQUIRE_FALSE(value);
    CHECK(value.error().code == Code::InvalidInput);
    CHECK_FALSE(value.error().message.empty());
    return value.error();
}

} // namespace

TEST_CASE("an object keeps the order of its keys and its bytes", "[json]")
{
    const std::string text = R"({"z":1,"a":[true,null,"M\u00e4rta"],"m":{"x":0.1}})";
    const auto value = parseJson(text);
    REQUIRE(value);
    CHECK(jsonText(*value) == "{\"z\":1,\"a\":[true,null,\"M\xC3\xA4rta\"],\"m\":{\"x\":0.1}}");
}

TEST_CASE("a key that stands twice is refused at any depth", "[json]")
{
    CHECK(refusal(R"({"start":1,"start":2})").message.find("\"start\"") != std::string::npos);
    CHECK(refusal(R"({"a":[{"b":{"c":1,"d":2,"c":3}}]})").message.find("\"c\"") != std::string::npos);
    CHECK(refusal("{\"a\": 1,\n  \"b\": 2,\n  \"a\": 3}").place == "line 3, column 3");
    CHECK(parseJson(R"([{"a":1},{"a":2}])")); // the same key in two objects is no doubling
    CHECK(parseJson(R"({"a":{"a":{"a":1}}})"));
}

TEST_CASE("nesting beyond reason is refused", "[json]")
{
    const auto nested = [](std::size_t depth) { return std::string(depth, '[') + std::string(depth, ']'); };
    CHECK(parseJson(nested(60)));
    CHECK(refusal(nested(100)).message.find("deep") != std::string::npos);
}

TEST_CASE("a syntax error is placed by line and column", "[json]")
{
    CHECK(refusal("{\n  \"a\": 1,\n  \"b\": oops\n}").place.substr(0, 6) == "line 3");
    CHECK(refusal("").place == "line 1, column 1");
    CHECK(refusal("{\n  \"a\": oops}").place == "line 2, column 8");
    refusal("{\"a\":1} trailing");
    refusal("{\"a\":NaN}");
    refusal("{'a':1}");
    refusal("\"\xFF\xFE\"");
}

TEST_CASE("a key path is found as line and column", "[json]")
{
    const std::string text = "{\"name\": \"a \\\"quoted, [name]\",\n"
                             " \"days\": [\"mon\", \"wed\" ,[1, -2.5e3]],\n"
                             " \"competitions\": [{\"date\": 1}, {\"name\": {}, \"date\" : 2}],\n"
                             " \"day\": true, \"empty\": [], \"last\": null}";
    REQUIRE(parseJson(text));
    CHECK(jsonPlace(text, "name") == "line 1, column 2");
    CHECK(jsonPlace(text, "days") == "line 2, column 2");
    CHECK(jsonPlace(text, "days[1]") == "line 2, column 18");
    CHECK(jsonPlace(text, "days[2][1]") == "line 2, column 29");
    CHECK(jsonPlace(text, "competitions[0].date") == "line 3, column 20");
    CHECK(jsonPlace(text, "competitions[1].date") == "line 3, column 45");
    CHECK(jsonPlace(text, "day") == "line 4, column 2");
    CHECK(jsonPlace(text, "last") == "line 4, column 28");
    CHECK(jsonPlace(text, "competitions[1].priority") == "line 3, column 32"); // the object that lacks it
    CHECK(jsonPlace(text, "start") == "line 1, column 1");
    CHECK(jsonPlace("", "a") == "line 1, column 1");
    CHECK(jsonPlace("  7", "") == "line 1, column 3");
}

TEST_CASE("numbers in JSON read back as the same double", "[json][property]")
{
    const std::uint64_t seed = 20260331;
    CAPTURE(seed);
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> mantissa(-10, 10);
    std::uniform_int_distribution<int> exponent(-12, 12);
    for (int i = 0; i < 5000; ++i) {
        const double value = mantissa(random) * std::pow(10.0, exponent(random));
        const auto text = jsonText(Json(value));
        CAPTURE(text);
        REQUIRE(parseNumber(text) == value);
        REQUIRE(parseJson(text)->get<double>() == value);
    }
}

TEST_CASE("text that is no UTF-8 is written as valid JSON, not thrown over the fence", "[json]")
{
    CHECK(jsonText(Json("a\xFF\x62")) == "\"a\xEF\xBF\xBD\x62\"");
}

// ctest runs this once more under locales of its own; the decimal mark of ps_AF has two bytes.
TEST_CASE("JSON does not follow the machine's locale", "[json][locale]")
{
    std::setlocale(LC_ALL, "");
    const std::string text = R"({"a":1.5,"b":[0.25,-1234567.5]})";
    const auto value = parseJson(text);
    REQUIRE(value);
    CHECK(value->at("a").get<double>() == 1.5);
    CHECK(jsonText(*value) == text);
    std::setlocale(LC_ALL, "C");
}
