#include "tests/benchmarks/allocations.hpp"

#include <atomic>
#include <cerrno>
#include <cstdlib>

#if defined(__SANITIZE_ADDRESS__) || !defined(__GLIBC__)
#define FLEETRUNG_COUNTS_ALLOCATIONS 0
#else
#define FLEETRUNG_COUNTS_ALLOCATIONS 1
#endif

namespace
{
std::atomic<std::size_t> requests = 0;
}

#if FLEETRUNG_COUNTS_ALLOCATIONS
// The C library lets a program bring its own malloc and keeps its own under these names (glibc manual, "Replacing
// malloc"). operator new and Eigen both end here.
extern "C" {
void* __libc_malloc(std::size_t size);
void* __libc_calloc(std::size_t count, std::size_t size);
void* __libc_realloc(void* block, std::size_t size);
void* __libc_memalign(std::size_t alignment, std::size_t size);
void __libc_free(void* block);

void* malloc(std::size_t size) noexcept
{
    requests.fetch_add(1, std::memory_order_relaxed);
    return __libc_malloc(size);
}
void* calloc(std::size_t count, std::size_t size) noexcept
{
    requests.fetch_add(1, std::memory_order_relaxed);
    return __libc_calloc(count, size);
}
void* realloc(void* block, std::size_t size) noexcept
{
    requests.fetch_add(1, std::memory_order_relaxed);
    return __libc_realloc(block, size);
}
void* aligned_alloc(std::size_t alignment, std::size_t size) noexcept
{
    requests.fetch_add(1, std::memory_order_relaxed);
    return __libc_memalign(alignment, size);
}
void* memalign(std::size_t alignment, std::size_t size) noexcept
{
    requests.fetch_add(1, std::memory_order_relaxed);
    return __libc_memalign(alignment, size);
}
int posix_memalign(void** block, std::size_t alignment, std::size_t size) noexcept
{
    requests.fetch_add(1, std::memory_order_relaxed);
    *block = __libc_memalign(alignment, size);
    return *block == nullptr ? ENOMEM : 0;
}
void free(void* block) noexcept
{
    __libc_free(block);
}
}
#endif

namespace fleetrung::benchmarks
{

std::size_t allocations()
{
    return requests.load(std::memory_order_relaxed);
}

bool allocationsAreCounted()
{
    return FLEETRUNG_COUNTS_ALLOCATIONS != 0;
}

} // namespace fleetrung::benchmarks
