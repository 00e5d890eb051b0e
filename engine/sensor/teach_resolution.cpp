#include <cmath>

#include "engine/sensor/bits.hpp"
#include "engine/sensor/teach_faces.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

constexpr double enough = 0.15; // of the next byte's share in the number's bends
constexpr std::size_t mostRecords = 20'000;

/// Where the bytes so far bend (second difference), a byte that goes on below them bends the other way and takes the
/// bend back; a byte of something else does not know of it. 1: the next byte explains every bend; 0: none.
struct NextByte {
    double explained = 0, bends = 0;
    int count = 0;

    void add(double before, double here, double after, double unit)
    {
        const auto high = [&](double value) { return std::floor(value / (256 * unit)); };
        const auto low = [&](double value) { return std::floor(value / unit) - 256 * high(value); };
        const double bend = high(before) - 2 * high(here) + high(after);
        if (bend == 0 || std::abs(bend) > 3) {
            return;
        }
        explained -= bend * (low(before) - 2 * low(here) + low(after)) / 256;
        bends += bend * bend;
        ++count;
    }
    [[nodiscard]] bool goesOn() const
    {
        return count > 0 && explained / bends > std::max(enough, 4 * 0.7 / std::sqrt(count));
    }
};

std::vector<double> seriesOf(const Table& table, const Triad& triad, std::size_t axis)
{
    std::vector<double> series;
    const auto records = std::min(table.size(), mostRecords / static_cast<std::size_t>(triad.samples) + 1);
    const auto step = std::max<std::size_t>(1, table.size() / records);
    // Neighbours must stay neighbours: whole stretches of records, spread over the recording.
    constexpr std::size_t stretch = 200;
    for (std::size_t from = 0; from < table.size(); from += stretch * step) {
        for (auto i = from; i < std::min(table.size(), from + stretch); ++i) {
            for (int sample = 0; sample < triad.samples; ++sample) {
                series.push_back(table.at(i, triad.of(axis, sample)));
            }
        }
    }
    return series;
}

/// The bit behind a number's lowest byte, in the direction of its order.
int lowestBit(const Table& table, const Place& place)
{
    return place.order == ByteOrder::Little ? place.bit : place.bit + table.widthOf(place);
}

} // namespace

bool jumpsOver(const Table& table, const Triad& triad)
{
    const auto type = triad.places[0].type;
    if (table.isText() || isFloat(type)) {
        return false;
    }
    const double far = 0.6 * std::ldexp(1.0, bitsOf(type));
    std::size_t jumps = 0, all = 0;
    for (std::size_t axis = 0; axis < 3; ++axis) {
        const auto series = seriesOf(table, triad, axis);
        for (std::size_t i = 1; i < series.size(); ++i) {
            jumps += std::abs(series[i] - series[i - 1]) > far ? 1 : 0;
        }
        all += series.size();
    }
    return jumps > 2 + all / 20'000; // a broken record now and then
}

bool plainer(const Table& table, const Triad& a, const Triad& b)
{
    const auto &first = a.places[0], &second = b.places[0];
    const auto packed = [&](const Place& place) { return !table.isText() && bitsOf(place.type) == 12; };
    if (packed(first) != packed(second)) {
        return !packed(first);
    }
    const int wider = table.widthOf(first) - table.widthOf(second);
    const bool sameEnd = first.order == second.order && lowestBit(table, first) == lowestBit(table, second);
    return sameEnd ? wider > 0 : wider < 0;
}

double resolutionOf(const Table& table, const Triad& triad)
{
    const auto type = triad.places[0].type;
    if (table.isText() || isFloat(type)) {
        return 0;
    }
    const int bytes = bitsOf(type) / 8;
    if (bitsOf(type) % 8 != 0 || bytes < 2) {
        return 1;
    }
    std::vector<NextByte> next(static_cast<std::size_t>(bytes - 1));
    for (std::size_t axis = 0; axis < 3; ++axis) {
        const auto series = seriesOf(table, triad, axis);
        for (std::size_t i = 1; i + 1 < series.size(); ++i) {
            for (std::size_t byte = 0; byte < next.size(); ++byte) {
                const double unit = std::ldexp(1.0, 8 * (bytes - 2 - static_cast<int>(byte)));
                next[byte].add(series[i - 1], series[i], series[i + 1], unit);
            }
        }
    }
    int telling = 1;
    for (const auto& byte : next) {
        if (!byte.goesOn()) {
            break;
        }
        ++telling;
    }
    return std::ldexp(1.0, 8 * (bytes - telling));
}

} // namespace fleetrung::sensor::teaching
