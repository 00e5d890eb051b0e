// Maps as files: what is kept, and what is refused by name.
#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>

#include "engine/base/json_schema.hpp"
#include "engine/sensor/map_files.hpp"
#include "tests/engine/sensor/random_map.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

namespace
{

Json included(std::string_view key)
{
    for (const auto& file : mapFiles())
        if (file.name == key)
            return *parseJson(file.text);
    FAIL("no such map: " << key);
    return {};
}

/// The map with one value put in at a JSON pointer, or taken out where the value is null.
std::string changed(Json map, const std::string& pointer, const Json& value)
{
    if (value.is_null())
        map.patch_inplace(Json::array({{{"op", "remove"}, {"path", pointer}}}));
    else
        map[Json::json_pointer(pointer)] = value;
    return jsonText(map);
}

struct Fault {
    std::string pointer;
    Json value;
    std::string place, words; ///< of the error: the whole place, part of the message
};

void checkRefused(const Json& map, const std::vector<Fault>& faults)
{
    for (const auto& fault : faults) {
        CAPTURE(fault.pointer, jsonText(fault.value));
        const auto read = parseSensorMap(changed(map, fault.pointer, fault.value));
        REQUIRE_FALSE(read);
        CHECK(read.error().code == Code::InvalidInput);
        CHECK(read.error().place == fault.place);
        CHECK_THAT(read.error().message, Catch::Contains(fault.words));
    }
}

const std::string s = "/streams/0";

} // namespace

TEST_CASE("A binary map that cannot be right is refused, with the place and the cause", "[sensor][map][error]")
{
    const auto map = included("int16-counter16");
    REQUIRE(parseSensorMap(jsonText(map)));
    checkRefused(map,
                 {{"/key", nullptr, "key", "missing"},
                  {"/key", "Has Capitals", "key", "lower-case"},
                  {"/name", 7, "name", "text"},
                  {"/streams", Json::array(), "streams", "a list"},
                  {"/streams", 1, "streams", "a list"},
                  {s, "x", "streams[0]", "object"},
                  {s + "/service", nullptr, "streams[0].service", "missing"},
                  {s + "/service", "180", "streams[0].service", "text"},
                  {s + "/service", "180g", "streams[0].service", "UUID"},
                  {s + "/characteristic", "6e400003-b5a3-f393-e0a9-e50e24dcca9", "streams[0].characteristic", "UUID"},
                  {s + "/form", "morse", "streams[0].form", "binary, text"},
                  {s + "/mark", "a5 5", "streams[0].mark", "two hexadecimal digits"},
                  {s + "/mark", "a5", "streams[0].packetFields[0]", "overlaps streams[0].mark"},
                  {s + "/length", 513, "streams[0].length", "from 0 to 512"},
                  {s + "/length", 13, "streams[0].samples", "no room"},
                  {s + "/length", -1, "streams[0].length", "whole number"},
                  {s + "/length", 14.5, "streams[0].length", "whole number"},
                  {s + "/byteStream", true, "streams[0].mark", "byte stream"},
                  {s + "/samples", 2, "streams[0].samples", "no room for 2 samples"},
                  {s + "/firstByte", 1, "streams[0].sampleFields[0]", "overlaps streams[0].packetFields[0]"},
                  {s + "/firstBit", 16, "streams[0].firstBit", "beside firstByte"},
                  {s + "/sampleBytes", nullptr, "streams[0].sampleBytes", "missing"},
                  {s + "/sampleBytes", 11, "streams[0].sampleFields[5]", "ends at byte 12"},
                  {s + "/sampleFields", nullptr, "streams[0].sampleFields", "missing"},
                  {s + "/sampleFields/1/byte", 1, "streams[0].sampleFields[1]", "overlaps streams[0].sampleFields[0]"},
                  {s + "/sampleFields/1/byte", 512, "streams[0].sampleFields[1].byte", "from 0 to 511"},
                  {s + "/sampleFields/1/byte", 511, "streams[0].sampleFields[1]", "there are 12 bytes"},
                  {s + "/sampleFields/1/bit", 3, "streams[0].sampleFields[1].bit", "keep one"},
                  {s + "/sampleFields/2/scale", 0, "streams[0].sampleFields[2].scale", "zero"},
                  {s + "/sampleFields/2/scale", -0.0, "streams[0].sampleFields[2].scale", "zero"},
                  {s + "/sampleFields/2/scale", 1.7e308, "streams[0].sampleFields[2].scale", "proportion"},
                  {s + "/sampleFields/2/scale", 1e-320, "streams[0].sampleFields[2].scale", "proportion"},
                  {s + "/sampleFields/2/scale", "big", "streams[0].sampleFields[2].scale", "a number"},
                  {s + "/sampleFields/2/unit", "deg/s", "streams[0].sampleFields[2].unit", "m/s2 or g"},
                  {s + "/sampleFields/2/unit", "furlong", "streams[0].sampleFields[2].unit", "one of"},
                  {s + "/sampleFields/2/unit", nullptr, "streams[0].sampleFields[2].unit", "m/s2 or g"},
                  {s + "/sampleFields/2/type", "int7", "streams[0].sampleFields[2].type", "float32"},
                  {s + "/sampleFields/2/channel", "accelerometerX", "streams[0].sampleFields[2].channel", "twice"},
                  {s + "/sampleFields/2/channel", "magnetometerX", "streams[0].sampleFields[2].channel", "one of"},
                  {s + "/sampleFields/0", nullptr, "streams[0]", "three axes"},
                  {s + "/sampleFields/2/channel", "stampDelta", "streams[0].sampleFields[2].unit", "s or ms or us"},
                  {s + "/packetFields/0/type", "float32", "streams[0].packetFields[0].type", "whole numbers"},
                  {s + "/packetFields/0/scale", -1, "streams[0].packetFields[0].scale", "above zero"},
                  {s + "/packetFields/0/scale", 0.3, "streams[0].packetFields[0].scale", "whole number a step"},
                  {s + "/packetFields/0/channel", "count", "streams[0].samples", "write 0 here"},
                  {s + "/counterWrap", 70000, "streams[0].counterWrap", "begins at 0 again"},
                  {s + "/counterWrap", 2, "streams[0].counterWrap", "at least 4"},
                  {s + "/rate", -1, "streams[0].rate", "a number from 0"},
                  {s + "/stampOf", "middle", "streams[0].stampOf", "first, last"},
                  {"/start", Json::array({1}), "start[0]", "object"},
                  {"/traits/accelerometerRange", -1, "traits.accelerometerRange", "a number"}});
}

TEST_CASE("A counter may stand between the readings of a sample, not on one", "[sensor][map]")
{
    auto map = included("int16-counter16");
    auto& stream = map["streams"][0];
    stream["firstByte"] = 0;
    stream["sampleBytes"] = 14;
    for (int i = 3; i < 6; ++i)
        stream["sampleFields"][static_cast<std::size_t>(i)]["byte"] = 2 * i + 2;
    stream["packetFields"][0]["byte"] = 6;
    CHECK(parseSensorMap(jsonText(map)));
    checkRefused(
        map, {{s + "/packetFields/0/byte", 7, "streams[0].sampleFields[3]", "overlaps streams[0].packetFields[0]"}});
}

TEST_CASE("A map of lines that cannot be right is refused, with the place and the cause", "[sensor][map][error]")
{
    checkRefused(included("lines-six-g"),
                 {{s + "/columns", nullptr, "streams[0].columns", "missing"},
                  {s + "/separator", "-", "streams[0].separator", "stands in no number"},
                  {s + "/separator", "\xc3\xa9", "streams[0].separator", "ASCII"},
                  {s + "/separator", ",,", "streams[0].separator", "text"},
                  {s + "/columns/3/column", 2, "streams[0].columns[3].column", "overlaps columns[2]"},
                  {s + "/columns/3/column", nullptr, "streams[0].columns[3].column", "either"},
                  {s + "/columns/3/key", "gx", "streams[0].columns[3].column", "either"},
                  {s + "/columns/3/scale", 0, "streams[0].columns[3].scale", "zero"},
                  {s + "/columns/3/channel", "accelerometerX", "streams[0].columns[3].unit", "m/s2 or g"},
                  {s + "/columns/3", nullptr, "streams[0]", "three axes"},
                  {s + "/prefix", "a\nb", "streams[0].prefix", "one line"}});
    checkRefused(included("lines-keys-g"), {{s + "/columns/3/key", "ax", "streams[0].columns[3].key", "overlaps"},
                                            {s + "/columns/3/key", "a=x", "streams[0].columns[3].key", "'='"}});
}

TEST_CASE("Two streams carry the accelerometer and the gyroscope, each once", "[sensor][map][error]")
{
    auto map = included("int16-counter16");
    auto force = map["streams"][0], turning = force;
    force["sampleFields"].erase(force["sampleFields"].begin() + 3, force["sampleFields"].end());
    turning["sampleFields"].erase(turning["sampleFields"].begin(), turning["sampleFields"].begin() + 3);
    turning["characteristic"] = "fff2";
    map["streams"] = Json::array({force, turning});
    const auto read = parseSensorMap(jsonText(map));
    REQUIRE(read);
    CHECK(read->hasGyroscope());
    checkRefused(map, {{"/streams/1", force, "streams[1].characteristic", "describe it once"},
                       {"/streams/0", turning, "streams[1].characteristic", "describe it once"}});
    force["characteristic"] = "fff3";
    checkRefused(map, {{"/streams/1", force, "streams[1]", "accelerometer comes in both"}});
    map["streams"] = Json::array({turning});
    CHECK(parseSensorMap(jsonText(map)).error().message.find("no stream carries the accelerometer") == 0);
}

TEST_CASE("Broken, doubled and monstrous documents are refused", "[sensor][map][error]")
{
    const auto text = jsonText(included("lines-acc-g"), 2);
    const auto place = [](const std::string& json) {
        const auto read = parseSensorMap(json);
        REQUIRE_FALSE(read);
        CHECK_FALSE(read.error().message.empty());
        return read.error().place;
    };
    for (std::size_t length = 0; length < text.size(); ++length) // every beginning of a sound map
        REQUIRE_FALSE(parseSensorMap(std::string_view(text).substr(0, length)));
    auto doubled = text;
    doubled.replace(doubled.find("\"name\""), 6, "\"key\"");
    CHECK(place(doubled) == "line 3, column 3");
    auto endless = text;
    endless.replace(endless.find("\"column\": 0"), 11, "\"column\": 0, \"scale\": 1e999");
    CHECK_FALSE(parseSensorMap(endless));
    place(text + std::string(largestMapBytes, ' '));
    place(std::string(10'000'000, '['));
    place(std::string(100'000, '['));
    std::string wide = "{\"key\":\"a\",\"name\":\"b\",\"streams\":[0";
    for (int i = 0; i < 400'000; ++i)
        wide += ",0";
    CHECK(place(wide + "]}").starts_with("streams"));
    CHECK_FALSE(parseSensorMap("{\"key\":\"" + std::string(500'000, 'a') + "\",\"name\":\"b\",\"streams\":[]}"));
    CHECK_FALSE(parseSensorMap("{\"key\":\"a\",\"name\":\"\xff\xfe\",\"streams\":[]}"));
    CHECK_FALSE(parseSensorMap("null"));
    CHECK_FALSE(parseSensorMap("[]"));
}

TEST_CASE("What this version does not know is kept when a map is written", "[sensor][map]")
{
    auto document = included("int16-counter16");
    document["author"] = "somebody";
    document["streams"][0]["colour"] = Json::array({1, 2.5});
    document["streams"][0]["sampleFields"][2]["why"] = "because";
    document["traits"]["weight"] = 12;
    auto map = parseSensorMap(jsonText(document));
    REQUIRE(map);
    CHECK(*parseJson(sensorMapText(*map)) == document);

    // Changed since: what changed is written, what is not known stays beside it, in its place.
    map->name = "Another name";
    std::swap(map->streams[0].binary.sampleFields[2], map->streams[0].binary.sampleFields[1]);
    map->streams[0].binary.sampleFields[1].scale = 0.25;
    const auto written = *parseJson(sensorMapText(*map));
    CHECK(written["author"] == "somebody");
    CHECK(written["name"] == "Another name");
    const auto& field = written["streams"][0]["sampleFields"][1];
    CHECK(field["channel"] == "accelerometerZ");
    CHECK(field["why"] == "because");
    CHECK(field["unit"] == "m/s2");
    CHECK(field["scale"] == 0.25);
    CHECK(parseSensorMap(jsonText(written))->streams == map->streams);
}

TEST_CASE("Random maps of every form are read back as they were written", "[sensor][map][property]")
{
    const std::uint64_t seed = 5'001;
    CAPTURE(seed);
    RandomMap random(seed);
    for (int i = 0; i < 600; ++i) {
        auto map = random.make();
        const auto problem = checkSensorMap(map);
        CAPTURE(i, sensorMapText(map));
        if (problem)
            FAIL(describe(*problem));
        const auto read = parseSensorMap(sensorMapText(map));
        if (!read)
            FAIL(describe(read.error()));
        CHECK(read->key == map.key);
        CHECK(read->name == map.name);
        CHECK(read->start == map.start);
        CHECK(read->stop == map.stop);
        CHECK(read->traits.accelerometerRange == map.traits.accelerometerRange);
        REQUIRE(read->streams == map.streams);
        REQUIRE(sensorMapText(*read) == sensorMapText(map));
        // A map of one sensor written over the document of another keeps nothing of the other's form.
        auto over = random.make();
        over.original = read->original;
        const auto again = parseSensorMap(sensorMapText(over));
        if (!again)
            FAIL(describe(again.error()));
        REQUIRE(again->streams == over.streams);
    }
}

// What `pattern` says to other programs, the reader must say by itself: the schema's check leaves patterns out.
TEST_CASE("The published schema is sound, and says of a breach where it is and what is needed", "[sensor][map]")
{
    const JsonSchema schema(sensorMapSchema());
    for (const auto& file : mapFiles())
        CHECK_FALSE(schema.check(*parseJson(file.text)));
    const auto breach = schema.check(*parseJson(R"({"key": "a", "name": "b", "streams": [{"service": 1}]})"));
    REQUIRE(breach);
    CHECK(breach->place.starts_with("streams[0]"));
    const JsonSchema unsound(R"({"type": 7})");
    CHECK(unsound.check(Json::object()));
    CHECK(JsonSchema("{").check(Json::object()));
}

TEST_CASE("The example for contributors is a sound map", "[sensor][map]")
{
    std::ifstream file(FLEETRUNG_SOURCE "/DEVELOPERS.md");
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    const auto begin = text.find("```json\n");
    REQUIRE(begin != std::string::npos);
    const auto end = text.find("```", begin + 8);
    const auto map = parseSensorMap(text.substr(begin + 8, end - begin - 8));
    if (!map)
        FAIL(describe(map.error()));
    CHECK(map->hasGyroscope());
    CHECK(map->start.size() == 1);
}
