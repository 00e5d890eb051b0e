// One set of the report looked at closely.
#pragma once

#include <cstdint>
#include <string>

namespace fleetrung::accuracy
{

/// Prints plan, truth and analysis of the set; writes its recording CSV where a path is given. 0, or 2 for a bad name.
int showSingle(const std::string& lift, const std::string& fault, double rate, std::uint64_t seed,
               const std::string& path);

} // namespace fleetrung::accuracy
