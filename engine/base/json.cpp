#include "engine/base/json.hpp"

#include <algorithm>
#include <set>
#include <vector>

#include <locale.h>

#include "engine/base/numbers.hpp"

namespace fleetrung
{
namespace
{

constexpr int maximumDepth = 64;

/// The library reads numbers by strtod, which follows the locale of the thread, and aborts where the decimal mark has
/// more than one byte (Pashto). While this lives, the thread reads numbers as JSON writes them.
class NumbersOfJson
{
public:
    NumbersOfJson() : neutral_(newlocale(LC_ALL_MASK, "C", nullptr)), before_(uselocale(neutral_)) {}
    ~NumbersOfJson()
    {
        uselocale(before_);
        freelocale(neutral_);
    }
    NumbersOfJson(const NumbersOfJson&) = delete;
    NumbersOfJson& operator=(const NumbersOfJson&) = delete;

private:
    locale_t neutral_;
    locale_t before_;
};

std::string placeOf(std::string_view text, std::size_t position)
{
    const auto upTo = text.substr(0, std::min(position, text.size()));
    const auto line = 1 + std::count(upTo.begin(), upTo.end(), '\n');
    const auto lineStart = upTo.rfind('\n');
    const auto column = lineStart == std::string_view::npos ? upTo.size() : upTo.size() - lineStart - 1;
    return "line " + integerText(line) + ", column " + integerText(static_cast<std::int64_t>(column));
}

} // namespace

Expected<Json> parseJson(std::string_view text)
{
    std::vector<std::set<std::string>> openObjects;
    std::string refusal;
    const auto watch = [&](int depth, Json::parse_event_t event, Json& parsed) {
        if (depth > maximumDepth && refusal.empty())
            refusal = "nested deeper than " + integerText(maximumDepth) + " levels";
        if (event == Json::parse_event_t::object_start)
            openObjects.emplace_back();
        else if (event == Json::parse_event_t::object_end)
            openObjects.pop_back();
        else if (event == Json::parse_event_t::key && !openObjects.back().insert(parsed.get<std::string>()).second &&
                 refusal.empty())
            refusal = "the key \"" + parsed.get<std::string>() + "\" stands twice in one object";
        return true;
    };
    const NumbersOfJson locale;
    try {
        auto value = Json::parse(text.begin(), text.end(), watch);
        if (!refusal.empty())
            return fail(Code::InvalidInput, "", refusal);
        return value;
    } catch (const Json::parse_error& error) {
        return fail(Code::InvalidInput, placeOf(text, error.byte),
                    "this is not valid JSON; check the text just before");
    } catch (const Json::exception& error) {
        return fail(Code::InvalidInput, "", error.what());
    }
}

std::string jsonText(const Json& value, int indent)
{
    return value.dump(indent, ' ', false, Json::error_handler_t::replace);
}

} // namespace fleetrung
