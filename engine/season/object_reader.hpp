// Reads JSON objects key by key and keeps the first thing that is wrong, with its key path. Private to engine/season.
#pragma once

#include <functional>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/base/error.hpp"
#include "engine/base/json.hpp"

namespace fleetrung::season
{

struct ReadProblem {
    std::optional<Error> first;

    void note(std::string place, std::string message, Code code = Code::InvalidInput);
};

/// After a problem, values are defaults: the caller looks at `ReadProblem::first` once, at the end.
class ObjectReader
{
public:
    ObjectReader(const Json& json, std::string path, ReadProblem& problem);

    [[nodiscard]] const std::string& place() const { return path; } ///< key path of the object itself
    [[nodiscard]] std::string at(std::string_view key) const;       ///< key path
    [[nodiscard]] bool has(std::string_view key) const;
    /// Notes a problem at this key: for checks that only the caller knows.
    void refuse(std::string_view key, std::string message);

    double number(std::string_view key, double low, double high);
    std::optional<double> optionalNumber(std::string_view key, double low, double high);
    int integer(std::string_view key, int low, int high);
    int integerOr(std::string_view key, int fallback, int low, int high);
    bool boolean(std::string_view key);
    bool booleanOr(std::string_view key, bool fallback);
    std::string text(std::string_view key); ///< not empty
    std::string textOr(std::string_view key, std::string fallback);
    CivilDate date(std::string_view key);
    std::optional<CivilDate> optionalDate(std::string_view key);
    std::vector<std::string> texts(std::string_view key);
    std::vector<double> numbers(std::string_view key, double low, double high);
    void eachObject(std::string_view key, const std::function<void(ObjectReader&)>& read);
    void object(std::string_view key, const std::function<void(ObjectReader&)>& read);
    /// The value as it is, for a reader of its own; null, and a problem, where it is missing.
    const Json* value(std::string_view key) { return require(key); }
    /// The same; null, and no problem, where it is missing.
    const Json* optionalValue(std::string_view key) { return find(key); }

    /// Refuses keys that nobody asked for: a misspelt key must not be passed over in silence.
    void finish();

private:
    const Json* find(std::string_view key);
    const Json* require(std::string_view key);
    double checkedNumber(const Json& value, const std::string& place, double low, double high);

    const Json& json;
    std::string path;
    ReadProblem& problem;
    std::set<std::string, std::less<>> asked;
};

} // namespace fleetrung::season
