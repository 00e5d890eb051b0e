#include "mobile/plot/words.hpp"

#include "engine/base/numbers.hpp"

namespace fleetrung::plot
{

std::string numberText(double value, int decimals)
{
    const auto text = fixedText(value, decimals);
    return text.starts_with('-') ? "\xE2\x88\x92" + text.substr(1) : text;
}

std::string signedText(double value, int decimals)
{
    const auto text = numberText(value, decimals);
    const bool isZero = text.find_first_not_of("0.") == std::string::npos;
    return value > 0 && !isZero ? "+" + text : text;
}

std::string sideText(Side side)
{
    switch (side) {
    case Side::Left:
        return "left";
    case Side::Right:
        return "right";
    case Side::Both:
        break;
    }
    return {};
}

} // namespace fleetrung::plot
