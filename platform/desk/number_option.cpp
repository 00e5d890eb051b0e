#include "platform/desk/number_option.hpp"

#include "engine/base/numbers.hpp"

namespace fleetrung::desk
{

Result<std::optional<double>> numberIn(const std::optional<std::string>& text, const char* option, double least,
                                       double greatest, const char* unit)
{
    if (!text)
        return std::optional<double>();
    const auto value = parseNumber(*text);
    if (!value || *value < least || *value > greatest)
        return refuse(std::string(option) + ": \"" + *text + "\" cannot be; give " + unit + " from " +
                      shortestText(least) + " to " + shortestText(greatest) + ", with a decimal point");
    return value;
}

} // namespace fleetrung::desk
