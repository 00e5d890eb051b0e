// A map as JSON text. It is written over the document it was read from, so that keys of a later version, the order of
// keys and the units a person chose stay as they are.
#include <cmath>

#include "engine/sensor/gatt.hpp"
#include "engine/sensor/hexadecimal.hpp"
#include "engine/sensor/map_words.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{
namespace
{

/// Nothing where there is no such key.
const Json* find(const Json* json, const std::string& key)
{
    if (json == nullptr || !json->is_object())
        return nullptr;
    const auto found = json->find(key);
    return found == json->end() ? nullptr : &*found;
}

std::string textAt(const Json* json, const std::string& key)
{
    const auto* value = find(json, key);
    return value != nullptr && value->is_string() ? value->get<std::string>() : std::string();
}

double numberAt(const Json& json, const std::string& key, double fallback)
{
    const auto* value = find(&json, key);
    return value != nullptr && value->is_number() ? value->get<double>() : fallback;
}

/// Whole numbers without ".0".
Json number(double value)
{
    constexpr double exact = 9007199254740992.0; // 2^53
    return value == std::floor(value) && std::abs(value) < exact ? Json(static_cast<std::int64_t>(value)) : Json(value);
}

Json begun(const Json* original)
{
    return original != nullptr && original->is_object() ? *original : Json::object();
}

void put(Json& to, const std::string& key, Json value)
{
    if (to[key] != value)
        to[key] = std::move(value);
}

/// What is left out means `usual`; left out it stays where it was.
void putUnlessUsual(Json& to, const std::string& key, Json value, const Json& usual)
{
    if (to.contains(key) || value != usual)
        put(to, key, std::move(value));
}

void putUuid(Json& to, const std::string& key, const std::string& uuid)
{
    const auto before = gatt::parseUuid(textAt(&to, key));
    if (!before || *before != uuid)
        to[key] = uuid;
}

void putBytes(Json& to, const std::string& key, const std::vector<std::uint8_t>& bytes)
{
    const auto* before = find(&to, key);
    if ((before == nullptr && !bytes.empty()) || parseHexadecimal(textAt(&to, key)) != bytes)
        to[key] = hexadecimalText(bytes);
}

/// In bytes, where it is whole ones and was not written in bits.
void putPlace(Json& to, const std::string& inBytes, const std::string& inBits, int bit, bool needed)
{
    if (to.contains(inBits) || bit % 8 != 0) {
        to.erase(inBytes);
        put(to, inBits, bit);
    } else if (needed) {
        put(to, inBytes, bit / 8);
    } else {
        putUnlessUsual(to, inBytes, bit / 8, 0);
    }
}

/// The unit it was written in stays while it says the same.
void putScale(Json& to, Channel channel, double scale, double offset)
{
    const auto quantity = quantityOf(channel);
    const auto word = textAt(&to, "unit");
    const auto unit = meaningOf(unitWords, word);
    const bool same = (unit ? unit->quantity == quantity : word.empty() && quantity == Quantity::Number) &&
                      numberAt(to, "scale", 1) * (unit ? unit->size : 1) == scale;
    if (!same) {
        for (const auto& [name, size] : unitWords)
            if (size.quantity == quantity && size.size == 1)
                putUnlessUsual(to, "unit", name, "count");
        putUnlessUsual(to, "scale", number(scale), 1);
    }
    putUnlessUsual(to, "offset", number(offset), 0);
}

Json fieldJson(const Field& field, const Json* original)
{
    auto to = begun(original);
    put(to, "channel", wordOf(channelWords, field.channel));
    put(to, "type", wordOf(typeWords, field.type));
    putUnlessUsual(to, "byteOrder", wordOf(orderWords, field.order), "little");
    putPlace(to, "byte", "bit", field.bit, false);
    putScale(to, field.channel, field.scale, field.offset);
    return to;
}

Json columnJson(const TextColumn& column, const Json* original)
{
    auto to = begun(original);
    put(to, "channel", wordOf(channelWords, column.channel));
    to.erase(column.key.empty() ? "key" : "column");
    if (column.key.empty())
        put(to, "column", column.column);
    else
        put(to, "key", column.key);
    putScale(to, column.channel, column.scale, column.offset);
    return to;
}

/// The entry of a list that was this one before, by what tells it from the others.
template <class Is> const Json* entryOf(const Json* list, const Is& is)
{
    if (list != nullptr && list->is_array())
        for (const auto& entry : *list)
            if (is(entry))
                return &entry;
    return nullptr;
}

template <class All, class Write>
void putChannels(Json& to, const std::string& key, const All& all, const Write& write, bool needed)
{
    auto list = Json::array();
    for (const auto& one : all)
        list.push_back(write(one, entryOf(find(&to, key), [&](const Json& entry) {
                                 return textAt(&entry, "channel") == wordOf(channelWords, one.channel);
                             })));
    if (needed)
        put(to, key, std::move(list));
    else
        putUnlessUsual(to, key, std::move(list), Json::array());
}

bool sameUuid(const Json& entry, const std::string& key, const std::string& uuid)
{
    const auto written = gatt::parseUuid(textAt(&entry, key));
    return written && *written == uuid;
}

void putBinary(Json& to, const BinaryForm& form)
{
    for (const auto* key : {"separator", "prefix", "columns"})
        to.erase(key);
    putBytes(to, "mark", form.mark);
    putUnlessUsual(to, "byteStream", form.stream, false);
    putUnlessUsual(to, "length", form.length, 0);
    putChannels(to, "packetFields", form.packetFields, fieldJson, false);
    putUnlessUsual(to, "samples", form.samples, 1);
    putPlace(to, "firstByte", "firstBit", form.firstBit, false);
    putPlace(to, "sampleBytes", "sampleBits", form.sampleBits, true);
    putChannels(to, "sampleFields", form.sampleFields, fieldJson, true);
}

void putLines(Json& to, const TextForm& form)
{
    for (const auto* key : {"mark", "byteStream", "length", "packetFields", "samples", "firstByte", "firstBit",
                            "sampleBytes", "sampleBits", "sampleFields"})
        to.erase(key);
    putUnlessUsual(to, "separator", std::string(1, form.separator), ",");
    putUnlessUsual(to, "prefix", form.prefix, "");
    putChannels(to, "columns", form.columns, columnJson, true);
}

Json streamJson(const StreamForm& form, const Json* original)
{
    auto to = begun(original);
    putUuid(to, "service", form.service);
    putUuid(to, "characteristic", form.characteristic);
    put(to, "form", form.text ? "text" : "binary");
    if (form.text)
        putLines(to, form.lines);
    else
        putBinary(to, form.binary);
    putUnlessUsual(to, "counts", wordOf(countsWords, form.counts), "samples");
    putUnlessUsual(to, "counterWrap", form.counterWrap, 0);
    putUnlessUsual(to, "stampWrap", number(form.stampWrap), 0);
    putUnlessUsual(to, "stampOf", wordOf(stampOfWords, form.stampOf), "first");
    putUnlessUsual(to, "rate", number(form.rate), 0);
    return to;
}

void putWrites(Json& to, const std::string& key, const std::vector<CharacteristicWrite>& all)
{
    auto list = Json::array();
    const auto* before = find(&to, key);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool known = before != nullptr && before->is_array() && i < before->size();
        auto one = begun(known ? &(*before)[i] : nullptr);
        putUuid(one, "service", all[i].service);
        putUuid(one, "characteristic", all[i].characteristic);
        putBytes(one, "bytes", all[i].bytes);
        putUnlessUsual(one, "withResponse", all[i].withResponse, true);
        list.push_back(std::move(one));
    }
    putUnlessUsual(to, key, std::move(list), Json::array());
}

void putTraits(Json& to, const motion::SensorTraits& traits)
{
    const motion::SensorTraits usual;
    auto written = begun(find(&to, "traits"));
    for (const auto& [name, member] : traitWords) {
        if (std::isfinite(traits.*member))
            putUnlessUsual(written, std::string(name), number(traits.*member), number(usual.*member));
        else
            written.erase(std::string(name));
    }
    if (!written.empty())
        put(to, "traits", std::move(written));
}

} // namespace

std::string sensorMapText(const SensorMap& map)
{
    auto to = begun(&map.original);
    put(to, "key", map.key);
    put(to, "name", map.name);
    putWrites(to, "start", map.start);
    putWrites(to, "stop", map.stop);
    auto streams = Json::array();
    for (const auto& form : map.streams)
        streams.push_back(streamJson(form, entryOf(find(&to, "streams"), [&](const Json& entry) {
                                         return sameUuid(entry, "service", form.service) &&
                                                sameUuid(entry, "characteristic", form.characteristic);
                                     })));
    put(to, "streams", std::move(streams));
    putTraits(to, map.traits);
    return jsonText(to, 2) + '\n';
}

} // namespace fleetrung::sensor
