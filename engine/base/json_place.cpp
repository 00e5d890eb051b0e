#include "engine/base/json_place.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung
{
namespace
{

/// Walks over a JSON text that is known to be sound and remembers the position of the longest part of the path.
class PathWalker
{
public:
    PathWalker(std::string_view text, std::string_view path) : text_(text), path_(path) {}

    std::size_t find()
    {
        value("");
        return best_;
    }

private:
    void value(const std::string& here)
    {
        skipBlank();
        note(here, at_);
        if (peek() == '{')
            members(here);
        else if (peek() == '[')
            elements(here);
        else if (peek() == '"')
            string();
        else
            at_ = std::min(text_.find_first_of(",]} \t\r\n", at_), text_.size());
    }
    void members(const std::string& here)
    {
        for (++at_; skipBlank(), peek() == '"'; skipComma()) {
            const auto key = at_;
            const auto inside = (here.empty() ? "" : here + ".") + std::string(string());
            skipBlank();
            ++at_; // the colon
            note(inside, key);
            value(inside);
        }
        ++at_;
    }
    void elements(const std::string& here)
    {
        std::int64_t index = 0;
        for (++at_; skipBlank(), peek() != ']' && peek() != '\0'; skipComma())
            value(here + "[" + integerText(index++) + "]");
        ++at_;
    }
    std::string_view string()
    {
        const auto begin = ++at_;
        while (peek() != '"' && peek() != '\0')
            at_ += peek() == '\\' ? 2 : 1;
        const auto found = text_.substr(begin, std::min(at_, text_.size()) - begin);
        ++at_;
        return found;
    }

    /// A parent's path ends where the wanted one goes on with a member or an element.
    void note(const std::string& here, std::size_t position)
    {
        const bool onTheWay =
            path_.substr(0, here.size()) == here &&
            (here.empty() || here.size() == path_.size() || path_[here.size()] == '.' || path_[here.size()] == '[');
        if (!onTheWay || (found_ && here.size() <= length_))
            return;
        found_ = true;
        length_ = here.size();
        best_ = position;
    }

    [[nodiscard]] char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
    void skipBlank() { at_ = std::min(text_.find_first_not_of(" \t\r\n", at_), text_.size()); }
    void skipComma()
    {
        skipBlank();
        if (peek() == ',')
            ++at_;
    }

    std::string_view text_;
    std::string_view path_;
    std::size_t at_ = 0;
    bool found_ = false;
    std::size_t length_ = 0;
    std::size_t best_ = 0;
};

} // namespace

std::string placeInText(std::string_view text, std::size_t position)
{
    const auto before = text.substr(0, std::min(position, text.size()));
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const auto lineStart = before.rfind('\n');
    const auto column = lineStart == std::string_view::npos ? before.size() : before.size() - lineStart - 1;
    return "line " + integerText(line) + ", column " + integerText(static_cast<std::int64_t>(column) + 1);
}

std::string jsonPlace(std::string_view text, std::string_view path)
{
    return placeInText(text, PathWalker(text, path).find());
}

} // namespace fleetrung
