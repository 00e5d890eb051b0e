// A bounded queue from one thread to one other, without locks. Memory is asked for in the constructor only; what does
// not fit is refused, and the caller counts it.
#pragma once

#include <atomic>
#include <cstddef>
#include <vector>

namespace fleetrung
{

template <class T> class Ring
{
public:
    explicit Ring(std::size_t capacity) : slots_(capacity + 1) {}

    /// On the one thread that fills it. False: it is full, and nothing was taken.
    [[nodiscard]] bool push(const T& value)
    {
        const std::size_t at = filled_.load(std::memory_order_relaxed);
        const std::size_t next = after(at);
        if (next == emptied_.load(std::memory_order_acquire))
            return false;
        slots_[at] = value;
        filled_.store(next, std::memory_order_release);
        return true;
    }

    /// On the one thread that empties it. False: it is empty.
    [[nodiscard]] bool pop(T& value)
    {
        const std::size_t at = emptied_.load(std::memory_order_relaxed);
        if (at == filled_.load(std::memory_order_acquire))
            return false;
        value = slots_[at];
        emptied_.store(after(at), std::memory_order_release);
        return true;
    }

private:
    [[nodiscard]] std::size_t after(std::size_t at) const { return at + 1 == slots_.size() ? 0 : at + 1; }

    std::vector<T> slots_;                            ///< one more than it holds: full and empty can be told apart
    alignas(64) std::atomic<std::size_t> filled_ = 0; ///< apart from each other: two threads write them
    alignas(64) std::atomic<std::size_t> emptied_ = 0;
};

} // namespace fleetrung
