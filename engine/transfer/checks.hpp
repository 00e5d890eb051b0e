// What cannot be used (private to engine/transfer).
#pragma once

#include "engine/transfer/transfer.hpp"

namespace fleetrung::transfer
{

/// The first result that cannot be used, and why.
[[nodiscard]] std::optional<Error> wrongIn(std::span<const BarResult> bar, std::span<const SprintResult> sprints);

} // namespace fleetrung::transfer
