#include "engine/sensor/teach_running.hpp"

#include <algorithm>
#include <cmath>

#include "engine/sensor/bits.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

// Starting values of this project, chosen on random layouts (tests/teach).
constexpr double evenEnough = 0.35;   // of a step
constexpr double mostlyEven = 0.93;   // share of the steps
constexpr double evenLines = 0.85;    // likewise of lines, of which a loss breaks two
constexpr double mostlySingle = 0.75; // share of the steps that jump over nothing
constexpr double mostInOne = 12;      // records that may be lost without a pause
constexpr double fewestInARound = 4;  // steps before it wraps
constexpr double brokenLines = 0.01;  // share of lines that two halves make up, by which a number may be any

std::vector<double> seriesAt(const Table& table, const Place& place)
{
    std::vector<double> series(table.size());
    for (std::size_t i = 0; i < table.size(); ++i) {
        series[i] = table.at(i, place);
    }
    return series;
}

double medianOf(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

double stepOf(double from, double to, double wrap)
{
    const double step = to - from;
    return wrap > 0 ? step - wrap * std::floor(step / wrap) : step;
}

std::vector<double> stepsOf(const std::vector<double>& series, double wrap)
{
    std::vector<double> steps;
    for (std::size_t i = 1; i < series.size(); ++i) {
        steps.push_back(stepOf(series[i - 1], series[i], wrap));
    }
    return steps;
}

/// Every byte must have moved, a lower one no less often than the one above it.
bool bytesRunLikeOne(const Table& table, const Place& place)
{
    if (table.isText() || isFloat(place.type)) {
        return true;
    }
    const int bytes = bitsOf(place.type) / 8;
    std::size_t below = 0;
    for (int byte = 0; byte < bytes; ++byte) {
        const int at = place.order == ByteOrder::Little ? byte : bytes - 1 - byte;
        const auto offset = static_cast<std::size_t>(place.bit / 8 + at);
        std::size_t moves = 0;
        for (std::size_t i = 1; i < table.size(); ++i) {
            moves += table.bytes[i * table.width + offset] != table.bytes[(i - 1) * table.width + offset] ? 1 : 0;
        }
        if (moves == 0 || (byte > 0 && moves > below + below / 50 + 2)) {
            return false;
        }
        below = moves;
    }
    return true;
}

/// Where most of the steps that do not fit say the same: the value after which it begins anew.
double earlierWrap(const std::vector<double>& series, const std::vector<double>& steps, double step, double wrap,
                   double mostAbove)
{
    std::vector<double> rounds;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const double down = series[i] - series[i + 1];
        if (down > 0 && std::abs(steps[i] - step) > evenEnough * step) {
            rounds.push_back(down + step);
        }
    }
    if (rounds.size() < 2) {
        return 0;
    }
    const double round = medianOf(rounds);
    const auto same = std::count_if(rounds.begin(), rounds.end(),
                                    [&](double other) { return std::abs(other - round) <= evenEnough * step; });
    double highest = 0, above = 0;
    for (const double value : series) {
        highest = value < round ? std::max(highest, value) : highest;
        above += value < round ? 0 : 1;
    }
    const bool fits = static_cast<double>(same) > 0.7 * static_cast<double>(rounds.size()) &&
                      above <= mostAbove * static_cast<double>(series.size()) && round <= highest + 2 * step &&
                      (wrap == 0 || round < wrap - step / 2);
    return fits ? round : 0;
}

/// So many records may be lost from one to the next: more the longer the pause was.
double mostSteps(const Table& table, std::size_t step)
{
    return mostInOne + 2 * (table.arrival[step + 1] - table.arrival[step]) / table.interval();
}

/// Counts from the first record on.
std::vector<double> unwrapped(const Table& table, const std::vector<double>& steps, double step)
{
    std::vector<double> counts{0};
    for (std::size_t i = 0; i < steps.size(); ++i) {
        // What is no whole number of steps, or too many, is a broken record: taken as one step.
        const double by = steps[i], whole = std::round(by / step);
        const bool good =
            whole >= 1 && whole <= mostSteps(table, i) && std::abs(by - whole * step) <= evenEnough * step;
        counts.push_back(counts.back() + (good ? by : step));
    }
    return counts;
}

/// A straight line: s a count, and s at count 0.
struct Line {
    double tick = 0, begin = 0;
    double off = 0; ///< s, rms
};
Line lineThrough(const std::vector<double>& counts, const std::vector<double>& arrival)
{
    const auto n = static_cast<double>(counts.size());
    double x = 0, y = 0, product = 0, square = 0, left = 0;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        x += counts[i] / n;
        y += arrival[i] / n;
    }
    for (std::size_t i = 0; i < counts.size(); ++i) {
        product += (arrival[i] - y) * (counts[i] - x);
        square += (counts[i] - x) * (counts[i] - x);
    }
    Line line{square > 0 ? product / square : 0, 0, 0};
    line.begin = y - line.tick * x;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        const double off = arrival[i] - line.begin - line.tick * counts[i];
        left += off * off / n;
    }
    line.off = std::sqrt(left);
    return line;
}

/// Most places are none: a look at the first records says so.
bool mayRun(const Table& table, const Place& place)
{
    constexpr std::size_t few = 65;
    const double wrap = table.isText() || isFloat(place.type) ? 0 : std::ldexp(1.0, bitsOf(place.type));
    std::vector<double> steps;
    for (std::size_t i = 1; i < std::min(few, table.size()); ++i) {
        steps.push_back(stepOf(table.at(i - 1, place), table.at(i, place), wrap));
    }
    if (!std::all_of(steps.begin(), steps.end(), [](double v) { return std::isfinite(v); })) {
        return table.isText();
    }
    const double step = medianOf(steps);
    const auto good = std::count_if(steps.begin(), steps.end(), [&](double by) {
        return std::abs(by - std::max(1.0, std::round(by / step)) * step) <= evenEnough * step;
    });
    return step > 0 && static_cast<double>(good) > 0.8 * static_cast<double>(steps.size());
}

std::optional<Running> runningAt(const Table& table, const Place& place)
{
    if (!mayRun(table, place)) {
        return std::nullopt;
    }
    const auto series = seriesAt(table, place);
    if (!std::all_of(series.begin(), series.end(), [](double v) { return std::isfinite(v) && std::abs(v) < 1e15; })) {
        return std::nullopt;
    }
    const bool wraps = !table.isText() && !isFloat(place.type);
    const double byType = wraps ? std::ldexp(1.0, bitsOf(place.type)) : 0;
    auto steps = stepsOf(series, byType);
    Running running;
    running.place = place;
    running.step = medianOf(steps);
    if (!(running.step > 0) || (wraps && running.step * fewestInARound > byType)) {
        return std::nullopt;
    }
    running.wrap = earlierWrap(series, steps, running.step, byType, table.isText() ? brokenLines : 0);
    if (running.wrap > 0) {
        steps = stepsOf(series, running.wrap);
    }
    int single = 0;
    double sum = 0, squares = 0;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const double by = steps[i], whole = std::round(by / running.step);
        const double off = std::abs(by - whole * running.step) / running.step;
        if (whole >= 1 && whole <= mostSteps(table, i) && off <= evenEnough) {
            single += whole == 1 ? 1 : 0;
            running.lost += static_cast<int>(whole) - 1;
            sum += whole == 1 ? by : 0;
            squares += off * off;
            ++running.kept;
        }
    }
    const auto all = static_cast<double>(steps.size());
    running.steady = running.kept / all;
    if (running.steady < (table.isText() ? evenLines : mostlyEven) || single < mostlySingle * all ||
        !bytesRunLikeOne(table, place)) {
        return std::nullopt;
    }
    running.step = sum / single;
    running.unevenness = std::sqrt(squares / running.kept);
    running.tick = lineThrough(unwrapped(table, steps, running.step), table.arrival).tick;
    if (isFloat(place.type) && !table.isText()) {
        // Any four bytes are a float: believed in whole units only.
        const double unit = std::round(std::log10(running.tick));
        if (unit < -6 || unit > 0 || std::abs(running.tick / std::pow(10.0, unit) - 1) > 0.003) {
            return std::nullopt;
        }
    }
    return running.tick > 0 ? std::optional(running) : std::nullopt;
}

/// Whether every sample of a packet has one of its own, each a sample's step on.
bool standsInEverySample(const Table& table, const Running& running, const Triad& triad)
{
    if (triad.samples < 2) {
        return false;
    }
    const double step = running.step / triad.samples;
    std::size_t good = 0, all = 0;
    for (int sample = 1; sample < triad.samples; ++sample) {
        auto before = running.place, here = running.place;
        before.bit += (sample - 1) * triad.stride;
        here.bit += sample * triad.stride;
        if (!table.holds(here)) {
            return false;
        }
        const double wrap = table.isText() || isFloat(running.place.type) ? 0
                            : running.wrap > 0                            ? running.wrap
                                                                          : std::ldexp(1.0, bitsOf(running.place.type));
        for (std::size_t i = 0; i < table.size(); ++i) {
            const double by = stepOf(table.at(i, before), table.at(i, here), wrap);
            good += std::abs(by - step) <= std::max(evenEnough * step, 1.01) && by > 0 ? 1 : 0;
            ++all;
        }
    }
    return good * 100 > all * 95;
}

struct Taken {
    int from, to; ///< bits
};

bool isFree(const Table& table, const Place& place, const std::vector<Taken>& taken)
{
    const int end = place.bit + table.widthOf(place);
    return std::none_of(taken.begin(), taken.end(),
                        [&](const Taken& other) { return place.bit < other.to && other.from < end; });
}

bool isCounter(const Running& running, int samples)
{
    const bool whole = running.unevenness < 1e-6;
    return whole && (std::abs(running.step - 1) < 1e-6 || std::abs(running.step - samples) < 1e-6);
}

/// The upper bytes of a stamp may go up by one or two from packet to packet: as a counter they tell more losses than
/// there are.
bool isPartOfStamp(const Table& table, const Running& counter, const std::vector<Running>& found, int samples)
{
    return std::any_of(found.begin(), found.end(), [&](const Running& stamp) {
        const bool over = stamp.place.bit < counter.place.bit + table.widthOf(counter.place) &&
                          counter.place.bit < stamp.place.bit + table.widthOf(stamp.place);
        return over && !isCounter(stamp, samples) && stamp.lost + 2 < 0.7 * counter.lost;
    });
}

/// Steadier, else more even, else wider: a byte that has nothing to do with it breaks the steps at every round.
bool moreEven(const Table& table, const Running& a, const Running& b)
{
    if (std::abs(a.steady - b.steady) > 0.001) {
        return a.steady > b.steady;
    }
    if (a.unevenness > 1.3 * b.unevenness + 0.004 || b.unevenness > 1.3 * a.unevenness + 0.004) {
        return a.unevenness < b.unevenness;
    }
    return table.widthOf(a.place) > table.widthOf(b.place);
}

/// By a running number, else by breaks.
std::vector<double> countsOf(const Table& table, const std::optional<Running>& running)
{
    if (!running) {
        return table.count;
    }
    const bool whole = !table.isText() && !isFloat(running->place.type);
    const double byType = whole ? std::ldexp(1.0, bitsOf(running->place.type)) : 0;
    const auto steps = stepsOf(seriesAt(table, running->place), running->wrap > 0 ? running->wrap : byType);
    return unwrapped(table, steps, running->step);
}

} // namespace

RunningNumbers findRunning(const Table& table, const std::vector<Triad>& triads)
{
    std::vector<Taken> taken;
    int begin = table.room(), end = 0;
    for (const auto& triad : triads) {
        for (std::size_t axis = 0; axis < 3; ++axis) {
            for (int sample = 0; sample < triad.samples; ++sample) {
                const auto place = triad.of(axis, sample);
                taken.push_back({place.bit, place.bit + table.widthOf(place)});
                begin = std::min(begin, taken.back().from);
                end = std::max(end, taken.back().to);
            }
        }
    }
    std::vector<Running> found;
    const auto triad = triads.empty() ? Triad{} : triads.front();
    for (const auto& group : placesOf(table)) {
        const bool usable = table.isText() || (!isSigned(group.empty() ? NumberType::Int8 : group.front().type));
        for (const auto& place : group) {
            const bool odd = !table.isText() && (bitsOf(place.type) == 12 || place.type == NumberType::Float16);
            if (!usable || odd || !isFree(table, place, taken)) {
                continue;
            }
            auto running = runningAt(table, place);
            if (!running) {
                continue;
            }
            running->perSample = standsInEverySample(table, *running, triad);
            // Among the samples only what every sample has; and of that the first.
            const bool inside = triad.samples > 1 && place.bit > begin && place.bit < end;
            if (!inside || (running->perSample && place.bit < begin + triad.stride)) {
                found.push_back(*running);
            }
        }
    }
    RunningNumbers numbers;
    const auto keepBetter = [&](std::optional<Running>& best, const Running& running) {
        if (!best || moreEven(table, running, *best)) {
            best = running;
        }
    };
    for (const auto& running : found) {
        if (isCounter(running, triad.samples) && !isPartOfStamp(table, running, found, triad.samples)) {
            keepBetter(numbers.counter, running);
        }
    }
    if (numbers.counter) {
        // A wider number over the counter's bytes also runs, as its fraction: it is no stamp.
        const auto& place = numbers.counter->place;
        taken.push_back({place.bit, place.bit + table.widthOf(place)});
    }
    for (const auto& running : found) {
        if (!isCounter(running, triad.samples) && isFree(table, running.place, taken)) {
            keepBetter(numbers.stamp, running);
        }
    }
    return numbers;
}

void retime(Table& table)
{
    constexpr double believable = 0.3; // s rms that arrivals may lie off
    const auto numbers = findRunning(table, {});
    const auto counts = countsOf(table, numbers.stamp ? numbers.stamp : numbers.counter);
    if (counts.empty()) {
        return;
    }
    const auto line = lineThrough(counts, table.arrival);
    if (line.tick > 0 && line.off < believable) {
        for (std::size_t i = 0; i < counts.size(); ++i) {
            table.time[i] = line.begin + line.tick * counts[i];
        }
    }
}

} // namespace fleetrung::sensor::teaching
