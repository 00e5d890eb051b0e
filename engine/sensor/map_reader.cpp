// A map from its JSON text.
#include <utility>

#include "engine/base/json_schema.hpp"
#include "engine/base/numbers.hpp"
#include "engine/sensor/gatt.hpp"
#include "engine/sensor/hexadecimal.hpp"
#include "engine/sensor/map_words.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{
namespace
{

/// Reads a document that has passed the schema, so that types and limits hold; notes the first thing that is wrong.
class MapReader
{
public:
    Expected<SensorMap> read(const Json& json)
    {
        SensorMap map;
        map.key = textOf(json, "key");
        map.name = textOf(json, "name");
        map.start = writes(json, "start");
        map.stop = writes(json, "stop");
        each(json, "streams", "streams",
             [&](const Json& one, const std::string& place) { map.streams.push_back(stream(one, place)); });
        if (const auto* traits = find(json, "traits"))
            map.traits = traitsOf(*traits);
        map.original = json;
        if (problem_)
            return tl::unexpected(*problem_);
        return map;
    }

private:
    static const Json* find(const Json& json, const std::string& key)
    {
        const auto found = json.find(key);
        return found == json.end() ? nullptr : &*found;
    }
    template <class T> static T valueOr(const Json& json, const std::string& key, T fallback)
    {
        const auto* value = find(json, key);
        return value == nullptr ? fallback : value->get<T>();
    }
    static std::string textOf(const Json& json, const std::string& key) { return valueOr(json, key, std::string()); }
    template <class T, std::size_t size>
    static T wordOr(const Json& json, const std::string& key, const std::array<Word<T>, size>& words, T fallback)
    {
        return meaningOf(words, textOf(json, key)).value_or(fallback);
    }

    void refuse(std::string place, std::string message)
    {
        if (!problem_)
            problem_ = Error{Code::InvalidInput, std::move(place), std::move(message)};
    }

    template <class Read>
    static void each(const Json& json, const std::string& key, const std::string& place, const Read& read)
    {
        const auto* list = find(json, key);
        for (std::size_t i = 0; list != nullptr && i < list->size(); ++i)
            read((*list)[i], place + '[' + integerText(static_cast<std::int64_t>(i)) + ']');
    }

    std::string uuid(const Json& json, const std::string& key, const std::string& place)
    {
        auto read = gatt::parseUuid(textOf(json, key));
        if (!read)
            refuse(place + '.' + key, read.error().message);
        return std::move(read).value_or(std::string());
    }

    std::vector<std::uint8_t> bytes(const Json& json, const std::string& key, const std::string& place)
    {
        auto read = parseHexadecimal(textOf(json, key));
        if (!read)
            refuse(place + '.' + key, "write each byte as two hexadecimal digits, at most one space between them");
        return std::move(read).value_or(std::vector<std::uint8_t>());
    }

    std::vector<CharacteristicWrite> writes(const Json& json, const std::string& key)
    {
        std::vector<CharacteristicWrite> all;
        each(json, key, key, [&](const Json& one, const std::string& place) {
            all.push_back({uuid(one, "service", place), uuid(one, "characteristic", place), bytes(one, "bytes", place),
                           valueOr(one, "withResponse", true)});
        });
        return all;
    }

    StreamForm stream(const Json& json, const std::string& place)
    {
        StreamForm form;
        form.service = uuid(json, "service", place);
        form.characteristic = uuid(json, "characteristic", place);
        form.text = textOf(json, "form") == "text";
        if (form.text)
            form.lines = lines(json, place);
        else
            form.binary = binary(json, place);
        form.counts = wordOr(json, "counts", countsWords, form.counts);
        form.counterWrap = valueOr(json, "counterWrap", form.counterWrap);
        form.stampWrap = valueOr(json, "stampWrap", form.stampWrap);
        form.stampOf = wordOr(json, "stampOf", stampOfWords, form.stampOf);
        form.rate = valueOr(json, "rate", form.rate);
        return form;
    }

    BinaryForm binary(const Json& json, const std::string& place)
    {
        BinaryForm form;
        form.mark = bytes(json, "mark", place);
        form.stream = valueOr(json, "byteStream", false);
        form.length = valueOr(json, "length", 0);
        form.packetFields = fields(json, "packetFields", place);
        form.samples = valueOr(json, "samples", 1);
        form.firstBit = bits(json, "firstByte", "firstBit", place);
        form.sampleBits = bits(json, "sampleBytes", "sampleBits", place);
        if (form.sampleBits == 0)
            refuse(place + ".sampleBytes", "this key is missing");
        form.sampleFields = fields(json, "sampleFields", place);
        return form;
    }

    int bits(const Json& json, const std::string& inBytes, const std::string& inBits, const std::string& place)
    {
        if (find(json, inBytes) != nullptr && find(json, inBits) != nullptr)
            refuse(place + '.' + inBits, "it stands beside " + inBytes + "; keep one of the two");
        return valueOr(json, inBytes, 0) * 8 + valueOr(json, inBits, 0);
    }

    std::vector<Field> fields(const Json& json, const std::string& key, const std::string& place)
    {
        std::vector<Field> all;
        each(json, key, place + '.' + key, [&](const Json& one, const std::string& at) {
            Field field;
            field.channel = wordOr(one, "channel", channelWords, field.channel);
            field.type = wordOr(one, "type", typeWords, field.type);
            field.order = wordOr(one, "byteOrder", orderWords, field.order);
            field.bit = bits(one, "byte", "bit", at);
            field.offset = valueOr(one, "offset", 0.0);
            field.scale = scale(one, field.channel, at);
            all.push_back(field);
        });
        return all;
    }

    double scale(const Json& json, Channel channel, const std::string& place)
    {
        const auto quantity = quantityOf(channel);
        const auto* word = find(json, "unit");
        if (word == nullptr && quantity != Quantity::Number)
            refuse(place + ".unit", "this key is missing; the channel " + std::string(wordOf(channelWords, channel)) +
                                        " needs a unit: " + unitsOf(quantity));
        if (word == nullptr)
            return valueOr(json, "scale", 1.0);
        const auto unit = meaningOf(unitWords, word->get<std::string>()).value_or(Unit{quantity, 1});
        if (unit.quantity != quantity)
            refuse(place + ".unit", "the channel " + std::string(wordOf(channelWords, channel)) +
                                        " needs another unit: " + unitsOf(quantity));
        return valueOr(json, "scale", 1.0) * unit.size;
    }

    static std::string unitsOf(Quantity quantity)
    {
        std::string names;
        for (const auto& [name, unit] : unitWords)
            if (unit.quantity == quantity)
                names.append(names.empty() ? "" : " or ").append(name);
        return names;
    }

    TextForm lines(const Json& json, const std::string& place)
    {
        TextForm form;
        const auto separator = valueOr(json, "separator", std::string(1, form.separator));
        if (separator.size() != 1)
            refuse(place + ".separator", "one plain character (ASCII) is needed here");
        form.separator = separator.front();
        form.prefix = textOf(json, "prefix");
        each(json, "columns", place + ".columns", [&](const Json& one, const std::string& at) {
            TextColumn column;
            column.channel = wordOr(one, "channel", channelWords, column.channel);
            column.column = valueOr(one, "column", 0);
            column.key = textOf(one, "key");
            column.offset = valueOr(one, "offset", 0.0);
            column.scale = scale(one, column.channel, at);
            if ((find(one, "column") == nullptr) == column.key.empty())
                refuse(at + ".column", "give either the column's number or the key that stands before its value");
            form.columns.push_back(std::move(column));
        });
        return form;
    }

    static motion::SensorTraits traitsOf(const Json& json)
    {
        motion::SensorTraits traits;
        for (const auto& [name, member] : traitWords)
            traits.*member = valueOr(json, std::string(name), traits.*member);
        return traits;
    }

    std::optional<Error> problem_;
};

} // namespace

Expected<SensorMap> parseSensorMap(std::string_view json)
{
    if (json.size() > largestMapBytes)
        return fail(Code::InvalidInput, "", "this is larger than 1 MB and no sensor map; choose another file");
    const auto document = parseJson(json);
    if (!document)
        return tl::unexpected(document.error());
    static const JsonSchema schema(sensorMapSchema());
    if (const auto breach = schema.check(*document))
        return tl::unexpected(*breach);
    auto map = MapReader().read(*document);
    if (!map)
        return map;
    if (const auto problem = checkSensorMap(*map))
        return tl::unexpected(*problem);
    return map;
}

} // namespace fleetrung::sensor
