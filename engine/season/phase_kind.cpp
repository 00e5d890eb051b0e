#include "engine/season/phase_kind.hpp"

#include <array>

namespace fleetrung::season
{
namespace
{

struct PhaseNames {
    std::string_view key;
    std::string_view name;
};

constexpr std::array<PhaseNames, 6> names{{{"transition", "transition"},
                                           {"general-preparation", "general preparation"},
                                           {"special-preparation", "special preparation"},
                                           {"pre-competition", "pre-competition"},
                                           {"competition", "competition"},
                                           {"taper", "taper"}}};

} // namespace

std::string_view phaseKey(PhaseKind kind)
{
    return names[static_cast<std::size_t>(kind)].key;
}

std::string_view phaseName(PhaseKind kind)
{
    return names[static_cast<std::size_t>(kind)].name;
}

std::optional<PhaseKind> phaseFromKey(std::string_view key)
{
    for (std::size_t i = 0; i < names.size(); ++i)
        if (names[i].key == key)
            return static_cast<PhaseKind>(i);
    return std::nullopt;
}

} // namespace fleetrung::season
