#include "engine/jumps/jump.hpp"

#include <array>
#include <utility>

namespace fleetrung::jumps
{
namespace
{

constexpr std::array<std::string_view, 10> names{
    "flat-landing", "bent-landing", "raised-landing", "double-bounce", "no-second-landing", "drop-height-off",
    "clipped",      "gap",          "no-stillness",   "no-gyroscope"};

constexpr std::array<std::pair<Kind, std::string_view>, 4> kinds{
    {{Kind::Drop, "drop"}, {Kind::CounterMovement, "counter-movement"}, {Kind::Squat, "squat"}, {Kind::Hop, "hops"}}};

} // namespace

std::string_view nameOf(Kind kind)
{
    for (const auto& [key, name] : kinds)
        if (key == kind)
            return name;
    return {};
}

std::optional<Kind> kindNamed(std::string_view text)
{
    for (const auto& [key, name] : kinds)
        if (name == text)
            return key;
    return std::nullopt;
}

std::vector<std::string_view> flagNames(Flags flags)
{
    std::vector<std::string_view> present;
    for (std::size_t i = 0; i < names.size(); ++i)
        if ((flags >> i & 1U) != 0)
            present.push_back(names[i]);
    return present;
}

} // namespace fleetrung::jumps
