// How sure teaching is of each thing, and what to do again where it is not. Private to engine/sensor.
#pragma once

#include "engine/sensor/teach_checks.hpp"
#include "engine/sensor/teach_map.hpp"

namespace fleetrung::sensor::teaching
{

/// `decoded`: share of the records that the map reads back. Where the least is not sure enough, the answer says which
/// step to do again.
[[nodiscard]] Taught judge(const std::vector<Table>& tables, const Findings& findings, bool somethingTurns,
                           const Raises& raises, double decoded);

} // namespace fleetrung::sensor::teaching
