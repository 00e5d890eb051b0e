// New identifiers of rows: 128 random bits of the operating system. The engine draws none itself.
#pragma once

#include "engine/base/identifier.hpp"

namespace fleetrung::views
{

[[nodiscard]] Identifier newIdentifier();

} // namespace fleetrung::views
