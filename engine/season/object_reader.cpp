#include "engine/season/object_reader.hpp"

#include <cmath>
#include <utility>

#include "engine/base/numbers.hpp"

namespace fleetrung::season
{

void ReadProblem::note(std::string place, std::string message, Code code)
{
    if (!first)
        first = Error{code, std::move(place), std::move(message)};
}

ObjectReader::ObjectReader(const Json& value, std::string where, ReadProblem& problems)
    : json(value), path(std::move(where)), problem(problems)
{
    if (!json.is_object())
        problem.note(path, "an object { ... } is needed here");
}

std::string ObjectReader::at(std::string_view key) const
{
    return path.empty() ? std::string(key) : path + '.' + std::string(key);
}

bool ObjectReader::has(std::string_view key) const
{
    return json.is_object() && json.find(std::string(key)) != json.end();
}

void ObjectReader::refuse(std::string_view key, std::string message)
{
    problem.note(at(key), std::move(message));
}

const Json* ObjectReader::find(std::string_view key)
{
    asked.emplace(key);
    if (!json.is_object())
        return nullptr;
    const auto found = json.find(std::string(key));
    return found == json.end() || found->is_null() ? nullptr : &*found;
}

const Json* ObjectReader::require(std::string_view key)
{
    const auto* value = find(key);
    if (value == nullptr)
        refuse(key, "this key is missing");
    return value;
}

double ObjectReader::checkedNumber(const Json& value, const std::string& place, double low, double high)
{
    if (!value.is_number()) {
        problem.note(place, "a number is needed here");
        return low;
    }
    const auto number = value.get<double>();
    if (!(number >= low && number <= high)) {
        problem.note(place, "a number from " + shortestText(low) + " to " + shortestText(high) + " is needed here");
        return low;
    }
    return number;
}

double ObjectReader::number(std::string_view key, double low, double high)
{
    const auto* value = require(key);
    return value == nullptr ? low : checkedNumber(*value, at(key), low, high);
}

std::optional<double> ObjectReader::optionalNumber(std::string_view key, double low, double high)
{
    const auto* value = find(key);
    if (value == nullptr)
        return std::nullopt;
    return checkedNumber(*value, at(key), low, high);
}

int ObjectReader::integer(std::string_view key, int low, int high)
{
    const double value = number(key, low, high);
    if (value != std::floor(value))
        refuse(key, "a whole number is needed here");
    return static_cast<int>(value);
}

int ObjectReader::integerOr(std::string_view key, int fallback, int low, int high)
{
    return find(key) == nullptr ? fallback : integer(key, low, high);
}

bool ObjectReader::boolean(std::string_view key)
{
    const auto* value = require(key);
    if (value == nullptr)
        return false;
    if (!value->is_boolean()) {
        refuse(key, "true or false is needed here");
        return false;
    }
    return value->get<bool>();
}

bool ObjectReader::booleanOr(std::string_view key, bool fallback)
{
    return find(key) == nullptr ? fallback : boolean(key);
}

std::string ObjectReader::text(std::string_view key)
{
    const auto* value = require(key);
    if (value == nullptr)
        return {};
    if (!value->is_string() || value->get_ref<const std::string&>().empty()) {
        refuse(key, "text is needed here");
        return {};
    }
    return value->get<std::string>();
}

std::string ObjectReader::textOr(std::string_view key, std::string fallback)
{
    const auto* value = find(key);
    if (value == nullptr)
        return fallback;
    if (!value->is_string()) {
        refuse(key, "text is needed here");
        return fallback;
    }
    return value->get<std::string>();
}

CivilDate ObjectReader::date(std::string_view key)
{
    const auto written = text(key);
    const auto parsed = parseDate(written);
    if (!parsed)
        refuse(key, "a day of the calendar written like 2026-03-30 is needed here");
    return parsed.value_or(CivilDate{});
}

std::optional<CivilDate> ObjectReader::optionalDate(std::string_view key)
{
    if (find(key) == nullptr)
        return std::nullopt;
    return date(key);
}

std::vector<std::string> ObjectReader::texts(std::string_view key)
{
    std::vector<std::string> result;
    const auto* value = find(key);
    if (value == nullptr)
        return result;
    if (!value->is_array()) {
        refuse(key, "a list [ ... ] is needed here");
        return result;
    }
    for (std::size_t i = 0; i < value->size(); ++i) {
        if (!(*value)[i].is_string())
            problem.note(at(key) + '[' + integerText(static_cast<std::int64_t>(i)) + ']', "text is needed here");
        else
            result.push_back((*value)[i].get<std::string>());
    }
    return result;
}

std::vector<double> ObjectReader::numbers(std::string_view key, double low, double high)
{
    std::vector<double> result;
    const auto* value = find(key);
    if (value == nullptr)
        return result;
    if (!value->is_array()) {
        refuse(key, "a list [ ... ] is needed here");
        return result;
    }
    for (std::size_t i = 0; i < value->size(); ++i)
        result.push_back(
            checkedNumber((*value)[i], at(key) + '[' + integerText(static_cast<std::int64_t>(i)) + ']', low, high));
    return result;
}

void ObjectReader::eachObject(std::string_view key, const std::function<void(ObjectReader&)>& read)
{
    const auto* value = require(key);
    if (value == nullptr)
        return;
    if (!value->is_array()) {
        refuse(key, "a list [ ... ] is needed here");
        return;
    }
    for (std::size_t i = 0; i < value->size() && !problem.first; ++i) {
        ObjectReader reader((*value)[i], at(key) + '[' + integerText(static_cast<std::int64_t>(i)) + ']', problem);
        read(reader);
        reader.finish();
    }
}

void ObjectReader::object(std::string_view key, const std::function<void(ObjectReader&)>& read)
{
    const auto* value = find(key);
    if (value == nullptr)
        return;
    ObjectReader reader(*value, at(key), problem);
    read(reader);
    reader.finish();
}

void ObjectReader::finish()
{
    if (!json.is_object())
        return;
    for (const auto& [key, value] : json.items())
        if (!asked.contains(key))
            refuse(key, "there is no such key; check its spelling");
}

} // namespace fleetrung::season
