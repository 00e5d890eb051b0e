// One thread puts in, one other takes out, and neither waits: a queue of fixed room without locks. What does not fit is
// dropped and counted. Memory is asked for in the constructor only.
#pragma once

#include <atomic>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace fleetrung
{

template <class T> class Ring
{
public:
    /// Holds at least `room` items (the next power of two).
    explicit Ring(std::size_t room) : items_(std::bit_ceil(room < 1 ? std::size_t{1} : room)), mask_(items_.size() - 1)
    {
    }

    /// Of the one thread that puts in. False: full, the item was dropped and counted.
    bool push(const T& item)
    {
        const auto at = pushed_.load(std::memory_order_relaxed);
        if (at - popped_.load(std::memory_order_acquire) == items_.size()) {
            lost_.fetch_add(1, std::memory_order_relaxed);
            return false;
        }
        items_[at & mask_] = item;
        pushed_.store(at + 1, std::memory_order_release);
        return true;
    }

    /// Of the one thread that takes out; in order.
    std::optional<T> pop()
    {
        const auto at = popped_.load(std::memory_order_relaxed);
        if (at == pushed_.load(std::memory_order_acquire))
            return std::nullopt;
        std::optional<T> item(items_[at & mask_]);
        popped_.store(at + 1, std::memory_order_release);
        return item;
    }

    /// Items dropped since the start; of any thread.
    [[nodiscard]] std::int64_t lost() const { return lost_.load(std::memory_order_relaxed); }
    [[nodiscard]] std::size_t room() const { return items_.size(); }

private:
    static constexpr std::size_t cacheLine = 64; ///< bytes: the two threads do not write to one line

    std::vector<T> items_;
    std::size_t mask_;
    alignas(cacheLine) std::atomic<std::size_t> pushed_{0};
    alignas(cacheLine) std::atomic<std::size_t> popped_{0};
    alignas(cacheLine) std::atomic<std::int64_t> lost_{0};
};

} // namespace fleetrung
