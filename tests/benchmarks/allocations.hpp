// How often this program asked for memory, through whatever: operator new, malloc, Eigen's own allocator.
#pragma once

#include <cstddef>

namespace fleetrung::benchmarks
{

/// Requests of all threads since the start of the program. Stays 0 under sanitizers, which need malloc for themselves.
[[nodiscard]] std::size_t allocations();
/// False under sanitizers.
[[nodiscard]] bool allocationsAreCounted();

} // namespace fleetrung::benchmarks
