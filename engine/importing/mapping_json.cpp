// A mapping as JSON, and what the file leaves open or told, in words.
#include "engine/base/json.hpp"
#include "engine/base/numbers.hpp"
#include "engine/importing/runs.hpp"

namespace fleetrung::importing
{
namespace
{

constexpr int version = 1;

tl::unexpected<Error> damaged(const std::string& key)
{
    return fail(Code::InvalidInput, key, "is missing or holds what no mapping has; make the mapping anew");
}

std::optional<Meaning> meaningNamed(const std::string& key)
{
    for (int i = 0; i < meaningCount; ++i)
        if (meaningKey(static_cast<Meaning>(i)) == key)
            return static_cast<Meaning>(i);
    return std::nullopt;
}

std::optional<Unit> unitOfKey(const std::string& key)
{
    for (int i = 0; i <= static_cast<int>(Unit::MetrePerSecond); ++i)
        if (unitKey(static_cast<Unit>(i)) == key)
            return static_cast<Unit>(i);
    return std::nullopt;
}

std::optional<std::string> textOf(const Json& json, const char* key)
{
    const auto found = json.find(key);
    return found != json.end() && found->is_string() ? std::optional(found->get<std::string>()) : std::nullopt;
}

Json columnJson(const ColumnMeaning& column)
{
    Json json{{"meaning", meaningKey(column.meaning)}};
    if (column.unit != Unit::None)
        json["unit"] = unitKey(column.unit);
    if (column.distance > 0)
        json["distance_m"] = column.distance;
    if (column.from > 0)
        json["from_m"] = column.from;
    return json;
}

std::optional<double> metresOf(const Json& json, const char* key)
{
    const auto found = json.find(key);
    if (found == json.end())
        return 0;
    if (!found->is_number() || found->get<double>() < 0 || found->get<double>() > 1000)
        return std::nullopt;
    return found->get<double>();
}

std::optional<ColumnMeaning> columnOf(const Json& json)
{
    if (!json.is_object())
        return std::nullopt;
    const auto meaning = meaningNamed(textOf(json, "meaning").value_or(""));
    const auto unit = unitOfKey(textOf(json, "unit").value_or(""));
    const auto distance = metresOf(json, "distance_m"), from = metresOf(json, "from_m");
    if (!meaning || !unit || !distance || !from)
        return std::nullopt;
    return ColumnMeaning{*meaning, *unit, *distance, *from};
}

Expected<std::map<std::string, std::string>> wordsOf(const Json& json, const char* key)
{
    std::map<std::string, std::string> words;
    const auto found = json.find(key);
    if (found == json.end())
        return words;
    if (!found->is_object())
        return damaged(key);
    for (const auto& [word, value] : found->items()) {
        if (!value.is_string())
            return damaged(std::string(key) + "." + word);
        words[word] = value.get<std::string>();
    }
    return words;
}

/// One of two words to one of two values; none where the key is absent.
template <class T>
Expected<std::optional<T>> choice(const Json& json, const char* key, std::pair<const char*, T> one,
                                  std::pair<const char*, T> other)
{
    if (!json.contains(key))
        return std::optional<T>();
    const auto word = textOf(json, key).value_or("");
    if (word == one.first)
        return std::optional<T>(one.second);
    if (word == other.first)
        return std::optional<T>(other.second);
    return damaged(key);
}

Expected<void> readChoices(const Json& json, Mapping& mapping)
{
    const auto kind = choice<Kind>(json, "kind", {"runs", Kind::Runs}, {"sets", Kind::Sets});
    const auto mark = choice<char>(json, "decimal_mark", {".", '.'}, {",", ','});
    const auto order =
        choice<DateOrder>(json, "date_order", {"day-month", DateOrder::DayMonth}, {"month-day", DateOrder::MonthDay});
    const auto form = choice<RowForm>(json, "row", {"run", RowForm::RunPerRow}, {"split", RowForm::SplitPerRow});
    const auto splits =
        choice<SplitForm>(json, "splits", {"cumulative", SplitForm::Cumulative}, {"interval", SplitForm::Interval});
    const auto load = choice<Unit>(json, "load", {"kg", Unit::Kilogram}, {"lb", Unit::Pound});
    for (const auto* error :
         {kind ? nullptr : &kind.error(), mark ? nullptr : &mark.error(), order ? nullptr : &order.error(),
          form ? nullptr : &form.error(), splits ? nullptr : &splits.error(), load ? nullptr : &load.error()})
        if (error != nullptr)
            return tl::unexpected(*error);
    if (!*kind)
        return damaged("kind");
    mapping.kind = **kind;
    mapping.decimalMark = *mark;
    mapping.dateOrder = *order;
    mapping.form = form->value_or(RowForm::RunPerRow);
    mapping.splits = splits->value_or(SplitForm::Cumulative);
    mapping.load = load->value_or(Unit::None);
    mapping.start = textOf(json, "start").value_or(mapping.start);
    mapping.timing = textOf(json, "timing").value_or(mapping.timing);
    return {};
}

} // namespace

std::string mappingText(const Mapping& mapping)
{
    Json json{{"version", version}, {"kind", mapping.kind == Kind::Runs ? "runs" : "sets"}};
    json["columns"] = Json::array();
    for (const auto& column : mapping.columns)
        json["columns"].push_back(columnJson(column));
    if (mapping.decimalMark)
        json["decimal_mark"] = std::string(1, *mapping.decimalMark);
    if (mapping.dateOrder)
        json["date_order"] = *mapping.dateOrder == DateOrder::DayMonth ? "day-month" : "month-day";
    if (mapping.kind == Kind::Runs) {
        json["row"] = mapping.form == RowForm::RunPerRow ? "run" : "split";
        json["splits"] = mapping.splits == SplitForm::Cumulative ? "cumulative" : "interval";
        json["start"] = mapping.start;
        json["timing"] = mapping.timing;
    }
    if (mapping.load != Unit::None)
        json["load"] = unitKey(mapping.load);
    if (mapping.day)
        json["day"] = dateText(*mapping.day);
    if (!mapping.lifts.empty())
        json["lifts"] = mapping.lifts;
    if (!mapping.athletes.empty())
        json["athletes"] = mapping.athletes;
    return jsonText(json);
}

Expected<Mapping> parseMapping(std::string_view text)
{
    const auto json = parseJson(text);
    if (!json)
        return tl::unexpected(json.error());
    if (!json->is_object() || !json->contains("version") || (*json)["version"] != version)
        return damaged("version");
    Mapping mapping;
    if (auto read = readChoices(*json, mapping); !read)
        return tl::unexpected(read.error());
    const auto columns = json->find("columns");
    if (columns == json->end() || !columns->is_array() || columns->size() > mostColumns)
        return damaged("columns");
    for (const auto& column : *columns) {
        const auto read = columnOf(column);
        if (!read || !belongsTo(read->meaning, mapping.kind))
            return damaged("columns[" + integerText(static_cast<std::int64_t>(mapping.columns.size())) + "]");
        mapping.columns.push_back(*read);
    }
    if (json->contains("day")) {
        mapping.day = parseDate(textOf(*json, "day").value_or(""));
        if (!mapping.day)
            return damaged("day");
    }
    auto lifts = wordsOf(*json, "lifts"), athletes = wordsOf(*json, "athletes");
    if (!lifts || !athletes)
        return tl::unexpected(lifts ? athletes.error() : lifts.error());
    mapping.lifts = std::move(*lifts);
    mapping.athletes = std::move(*athletes);
    return mapping;
}

} // namespace fleetrung::importing
