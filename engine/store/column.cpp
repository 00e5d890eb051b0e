#include "engine/store/column.hpp"

#include <array>
#include <bit>
#include <cmath>

namespace fleetrung::store
{
namespace
{

using Words = std::vector<std::uint64_t>; // differences wrap around: no overflow, and exactly undone

constexpr int mostDecimals = 9;
constexpr double largestExactInteger = 9007199254740992.0; // 2^53

double powerOfTen(int exponent)
{
    double power = 1; // exact up to 10^22
    for (int i = 0; i < exponent; ++i)
        power *= 10;
    return power;
}

double meant(Meaning meaning, double parameter, std::int64_t number)
{
    switch (meaning) {
    case Meaning::Bits:
        return std::bit_cast<double>(number);
    case Meaning::Counts:
        return static_cast<double>(number) * parameter;
    case Meaning::Decimals:
        return static_cast<double>(number) / powerOfTen(static_cast<int>(parameter));
    case Meaning::Integers:
        break;
    }
    return static_cast<double>(number);
}

/// The whole numbers that give back every value bit for bit; nothing where there are none.
std::optional<Words> asNumbers(std::span<const double> values, Meaning meaning, double parameter)
{
    const double perUnit = meaning == Meaning::Counts ? 1 / parameter : powerOfTen(static_cast<int>(parameter));
    Words words;
    words.reserve(values.size());
    for (const double value : values) {
        const double number = std::nearbyint(value * perUnit);
        if (!(std::abs(number) <= largestExactInteger))
            return std::nullopt;
        const auto whole = static_cast<std::int64_t>(number);
        if (std::bit_cast<std::uint64_t>(meant(meaning, parameter, whole)) != std::bit_cast<std::uint64_t>(value))
            return std::nullopt; // also minus zero, which no count gives
        words.push_back(static_cast<std::uint64_t>(whole));
    }
    return words;
}

void difference(Words& words)
{
    for (std::size_t i = words.size(); i-- > 1;)
        words[i] -= words[i - 1];
}

void sum(Words& words)
{
    for (std::size_t i = 1; i < words.size(); ++i)
        words[i] += words[i - 1];
}

std::uint64_t folded(std::uint64_t word) // 0, -1, 1, -2, ... -> 0, 1, 2, 3, ...
{
    return (word << 1U) ^ (0 - (word >> 63U));
}

std::uint64_t unfolded(std::uint64_t word)
{
    return (word >> 1U) ^ (0 - (word & 1U));
}

std::vector<std::uint8_t> planesOf(const Words& words, std::uint8_t width)
{
    std::vector<std::uint8_t> planes;
    planes.reserve(words.size() * width);
    for (unsigned byte = 0; byte < width; ++byte)
        for (const auto word : words)
            planes.push_back(static_cast<std::uint8_t>(folded(word) >> (8 * byte)));
    return planes;
}

/// Bits that an ideal coder of single bytes would need for each plane: what the choice of `order` goes by.
double cost(std::span<const std::uint8_t> planes, std::size_t count)
{
    double bits = 0;
    for (std::size_t begin = 0; begin < planes.size(); begin += count) {
        std::array<std::size_t, 256> seen{};
        for (const auto byte : planes.subspan(begin, count))
            ++seen[byte];
        for (const auto times : seen)
            if (times > 0)
                bits -= static_cast<double>(times) * std::log2(static_cast<double>(times) / static_cast<double>(count));
    }
    return bits;
}

PackedColumn pack(Words words, Meaning meaning, double parameter)
{
    PackedColumn best;
    double bestCost = 0;
    for (std::uint8_t order = 0; order <= 2; ++order) {
        if (order > 0)
            difference(words);
        std::uint64_t all = 0;
        for (const auto word : words)
            all |= folded(word);
        const auto width = static_cast<std::uint8_t>(std::max<int>(1, (static_cast<int>(std::bit_width(all)) + 7) / 8));
        auto planes = planesOf(words, width);
        const double itsCost = cost(planes, words.size());
        if (order == 0 || itsCost < bestCost) {
            best = PackedColumn{meaning, parameter, order, width, std::move(planes)};
            bestCost = itsCost;
        }
    }
    return best;
}

std::optional<Words> unpack(const PackedColumn& column, std::size_t count)
{
    if (column.width < 1 || column.width > 8 || column.order > 2 || column.planes.size() / column.width != count ||
        column.planes.size() % column.width != 0)
        return std::nullopt;
    Words words(count, 0);
    for (unsigned byte = 0; byte < column.width; ++byte)
        for (std::size_t i = 0; i < count; ++i)
            words[i] |= static_cast<std::uint64_t>(column.planes[byte * count + i]) << (8 * byte);
    for (auto& word : words)
        word = unfolded(word);
    for (int i = 0; i < column.order; ++i)
        sum(words);
    return words;
}

} // namespace

PackedColumn packDoubles(std::span<const double> values, double scale)
{
    if (scale > 0)
        if (auto words = asNumbers(values, Meaning::Counts, scale))
            return pack(std::move(*words), Meaning::Counts, scale);
    for (int decimals = 0; decimals <= mostDecimals; ++decimals)
        if (auto words = asNumbers(values, Meaning::Decimals, decimals))
            return pack(std::move(*words), Meaning::Decimals, decimals);
    Words words;
    words.reserve(values.size());
    for (const double value : values)
        words.push_back(std::bit_cast<std::uint64_t>(value));
    return pack(std::move(words), Meaning::Bits, 0);
}

PackedColumn packIntegers(std::span<const std::int64_t> values)
{
    return pack(Words(values.begin(), values.end()), Meaning::Integers, 0);
}

std::optional<std::vector<double>> unpackDoubles(const PackedColumn& column, std::size_t count)
{
    const bool known =
        column.meaning == Meaning::Bits || column.meaning == Meaning::Counts ||
        (column.meaning == Meaning::Decimals && column.parameter >= 0 && column.parameter <= mostDecimals);
    const auto words = known ? unpack(column, count) : std::nullopt;
    if (!words)
        return std::nullopt;
    std::vector<double> values;
    values.reserve(count);
    for (const auto word : *words)
        values.push_back(meant(column.meaning, column.parameter, static_cast<std::int64_t>(word)));
    return values;
}

std::optional<std::vector<std::int64_t>> unpackIntegers(const PackedColumn& column, std::size_t count)
{
    const auto words = column.meaning == Meaning::Integers ? unpack(column, count) : std::nullopt;
    if (!words)
        return std::nullopt;
    return std::vector<std::int64_t>(words->begin(), words->end());
}

} // namespace fleetrung::store
