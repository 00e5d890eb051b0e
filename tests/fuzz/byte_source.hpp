// Numbers and choices out of the bytes of a fuzzer's input; zeros when they are used up.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <span>
#include <string>
#include <vector>

namespace fleetrung::fuzz
{

class ByteSource
{
public:
    ByteSource(const std::uint8_t* data, std::size_t size) : rest_(data, size) {}

    [[nodiscard]] bool empty() const { return rest_.empty(); }
    std::uint8_t byte()
    {
        if (rest_.empty())
            return 0;
        const auto first = rest_.front();
        rest_ = rest_.subspan(1);
        return first;
    }
    bool flag() { return byte() % 2 == 1; }
    int below(int end) { return byte() % end; }
    /// Little-endian.
    std::uint32_t word(int bytes)
    {
        std::uint32_t value = 0;
        for (int i = 0; i < bytes; ++i)
            value |= static_cast<std::uint32_t>(byte()) << static_cast<unsigned>(8 * i);
        return value;
    }
    std::vector<std::uint8_t> bytes(std::size_t count)
    {
        const auto taken = rest_.first(std::min(count, rest_.size()));
        rest_ = rest_.subspan(taken.size());
        return {taken.begin(), taken.end()};
    }

private:
    std::span<const std::uint8_t> rest_;
};

/// A property that must hold for any input.
inline void require(bool holds)
{
    if (!holds)
        std::abort();
}

} // namespace fleetrung::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
