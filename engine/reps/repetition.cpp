#include "engine/reps/repetition.hpp"

#include <array>
#include <utility>

namespace fleetrung::reps
{

std::vector<std::string_view> flagNames(Flags flags)
{
    constexpr std::array<std::pair<Flag, std::string_view>, 7> names{{{Flag::Clipped, "clipped"},
                                                                      {Flag::Gap, "gap"},
                                                                      {Flag::NoStillness, "no-stillness"},
                                                                      {Flag::ShortRange, "short-range"},
                                                                      {Flag::Bounced, "bounced"},
                                                                      {Flag::TwoPeaked, "two-peaked"},
                                                                      {Flag::NoGyroscope, "no-gyroscope"}}};
    std::vector<std::string_view> found;
    for (const auto& [flag, name] : names)
        if (has(flags, flag))
            found.push_back(name);
    return found;
}

} // namespace fleetrung::reps
