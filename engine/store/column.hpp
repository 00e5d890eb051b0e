// One column of a capture as small whole numbers, and back. Exact: what cannot be written small is written whole.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace fleetrung::store
{

/// What a column's whole numbers mean.
enum class Meaning : std::uint8_t {
    Bits = 0,     ///< the 64 bits of each double
    Counts = 1,   ///< value = number * parameter
    Decimals = 2, ///< value = number / 10^parameter
    Integers = 3  ///< the numbers themselves
};

/// The wire form: `order` times differenced (0..2), signs folded in, then the lowest bytes of all numbers, the next,
/// ...
struct PackedColumn {
    Meaning meaning = Meaning::Bits;
    double parameter = 0;
    std::uint8_t order = 0;
    std::uint8_t width = 0; ///< bytes a number, 1..8
    std::vector<std::uint8_t> planes;

    template <class Archive> void serialize(Archive& archive) { archive(meaning, parameter, order, width, planes); }
};

/// Takes the scale where every value is a whole count of it, else decimals, else the bits.
[[nodiscard]] PackedColumn packDoubles(std::span<const double> values, double scale);
[[nodiscard]] PackedColumn packIntegers(std::span<const std::int64_t> values);

/// Nothing where the column is not of `count` numbers or of another meaning.
[[nodiscard]] std::optional<std::vector<double>> unpackDoubles(const PackedColumn& column, std::size_t count);
[[nodiscard]] std::optional<std::vector<std::int64_t>> unpackIntegers(const PackedColumn& column, std::size_t count);

} // namespace fleetrung::store
