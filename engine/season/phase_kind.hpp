// The phases of a macrocycle, in the order in which they are lived.
#pragma once

#include <optional>
#include <string_view>

namespace fleetrung::season
{

enum class PhaseKind { Transition, GeneralPreparation, SpecialPreparation, PreCompetition, Competition, Taper };

[[nodiscard]] std::string_view phaseKey(PhaseKind kind);  ///< "general-preparation"
[[nodiscard]] std::string_view phaseName(PhaseKind kind); ///< "general preparation"
[[nodiscard]] std::optional<PhaseKind> phaseFromKey(std::string_view key);

} // namespace fleetrung::season
