#include "engine/base/json.hpp"

#include <iterator>
#include <optional>
#include <set>
#include <vector>

#include <locale.h>

#include "engine/base/json_place.hpp"
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

/// Characters of the text, with a note of how far the library has read: its callback does not say where it stands.
class NotingIterator
{
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    NotingIterator(const char* at, const char*& furthest) : at_(at), furthest_(&furthest) {}
    reference operator*() const { return *at_; }
    NotingIterator& operator++()
    {
        *furthest_ = ++at_;
        return *this;
    }
    bool operator==(const NotingIterator& other) const { return at_ == other.at_; }

private:
    const char* at_;
    const char** furthest_;
};

/// Gathers what the library takes without a word: keys that stand twice, and nesting without end.
class Watch
{
public:
    explicit Watch(std::string_view text) : text_(text), furthest_(text.data()) {}

    void see(int depth, Json::parse_event_t event, const Json& parsed)
    {
        if (refusal_)
            return;
        const auto read = static_cast<std::size_t>(furthest_ - text_.data());
        if (depth > maximumDepth)
            refuse(read - 1, "nested deeper than " + integerText(maximumDepth) + " levels; make it flatter");
        else if (event == Json::parse_event_t::object_start)
            openObjects_.emplace_back();
        else if (event == Json::parse_event_t::object_end)
            openObjects_.pop_back();
        else if (event == Json::parse_event_t::key && !openObjects_.back().insert(parsed.get<std::string>()).second)
            refuse(text_.rfind('"', read - 2),
                   "the key \"" + parsed.get<std::string>() + "\" stands twice in one object; keep one");
    }
    [[nodiscard]] const std::optional<Error>& refusal() const { return refusal_; }
    [[nodiscard]] NotingIterator begin() { return {text_.data(), furthest_}; }
    [[nodiscard]] NotingIterator end() { return {text_.data() + text_.size(), furthest_}; }

private:
    void refuse(std::size_t position, std::string message)
    {
        refusal_ = Error{Code::InvalidInput, placeInText(text_, position), std::move(message)};
    }

    std::string_view text_;
    const char* furthest_;
    std::vector<std::set<std::string>> openObjects_;
    std::optional<Error> refusal_;
};

} // namespace

Expected<Json> parseJson(std::string_view text)
{
    Watch watch(text);
    const NumbersOfJson locale;
    try {
        auto value =
            Json::parse(watch.begin(), watch.end(), [&](int depth, Json::parse_event_t event, const Json& parsed) {
                watch.see(depth, event, parsed);
                return true;
            });
        if (watch.refusal())
            return tl::unexpected(*watch.refusal());
        return value;
    } catch (const Json::parse_error& error) {
        return fail(Code::InvalidInput, placeInText(text, error.byte == 0 ? 0 : error.byte - 1),
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
