#include <algorithm>
#include <cmath>

#include "engine/sensor/teach_faces.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

constexpr double lateness = 0.12;        // s: a notification may come that late
constexpr double trimmed = 0.1;          // share of the records at either end that may be broken
constexpr std::size_t mostRecords = 400; // of one face: enough for its mean

struct Level {
    double mean, spread;
};

std::optional<Level> levelOf(const Table& table, const Records& records, const Place& place)
{
    std::vector<double> values;
    const auto step = std::max<std::size_t>(1, records.size() / mostRecords);
    for (auto i = records.from; i < records.to; i += step) {
        if (const double value = table.at(i, place); std::isfinite(value) && std::abs(value) < 1e12) {
            values.push_back(value);
        }
    }
    if (values.size() < 3 || values.size() * step * 10 < records.size() * 9) {
        return std::nullopt;
    }
    std::sort(values.begin(), values.end());
    const auto cut = static_cast<std::size_t>(trimmed * static_cast<double>(values.size()));
    double sum = 0, squares = 0;
    for (auto i = cut; i < values.size() - cut; ++i) {
        sum += values[i];
    }
    const auto count = static_cast<double>(values.size() - 2 * cut);
    const double mean = sum / count;
    for (auto i = cut; i < values.size() - cut; ++i) {
        squares += (values[i] - mean) * (values[i] - mean);
    }
    return Level{mean, 1.3 * std::sqrt(squares / count)}; // 1.3: what the trimming takes from a normal spread
}

} // namespace

Records recordsBetween(const Table& table, double from, double to)
{
    const auto first = std::lower_bound(table.arrival.begin(), table.arrival.end(), from);
    const auto last = std::upper_bound(first, table.arrival.end(), to);
    return {static_cast<std::size_t>(first - table.arrival.begin()),
            static_cast<std::size_t>(last - table.arrival.begin())};
}

Records recordsOfStep(const Table& table, const Steps& steps, std::size_t step)
{
    const auto& span = steps.of(step);
    const double held = std::min(table.interval(), 0.3 * (span.to - span.from));
    return recordsBetween(table, span.from + lateness + held, span.to);
}

std::optional<FaceValues> overFaces(const Table& table, const std::array<Records, faces>& records, const Place& place,
                                    const Used& used)
{
    FaceValues values;
    values.place = place;
    std::vector<double> spreads, means;
    for (std::size_t face = 0; face < faces; ++face) {
        if (!used.at(face)) {
            continue;
        }
        const auto level = levelOf(table, records.at(face), place);
        if (!level) {
            return std::nullopt;
        }
        values.mean.at(face) = level->mean;
        values.spread.at(face) = level->spread;
        spreads.push_back(level->spread);
        means.push_back(level->mean);
    }
    std::sort(spreads.begin(), spreads.end());
    values.noise = spreads[spreads.size() / 2];
    const auto [least, most] = std::minmax_element(means.begin(), means.end());
    values.range = *most - *least;
    return values;
}

} // namespace fleetrung::sensor::teaching
