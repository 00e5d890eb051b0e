#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <string_view>

#include "engine/base/numbers.hpp"
#include "engine/sensor/teach_table.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

constexpr std::size_t longestLine = 512;
constexpr std::size_t mostCells = 64;

struct Line {
    std::string text;
    double arrival;
    std::size_t bytes; ///< with its end
};

std::vector<Line> linesOf(const Notifications& notifications)
{
    std::vector<Line> lines;
    std::string line;
    for (std::size_t i = 0; i < notifications.packets.size(); ++i) {
        for (const auto byte : notifications.packets[i]->bytes) {
            if (byte != '\n') {
                line += static_cast<char>(byte);
                continue;
            }
            const auto bytes = line.size() + 1;
            while (!line.empty() && (line.back() == '\r' || line.back() == ' ')) {
                line.pop_back();
            }
            if (!line.empty() && line.size() <= longestLine) {
                lines.push_back({line, notifications.arrivalOf(i), bytes});
            }
            line.clear();
        }
        if (line.size() > longestLine) {
            line.clear();
        }
    }
    return lines;
}

bool beginsNumber(char c)
{
    return (c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.';
}

/// What most lines begin with, up to their first number or key.
std::string prefixOf(const std::vector<Line>& lines)
{
    std::map<std::string, std::size_t> counts;
    for (const auto& line : lines) {
        const auto number = std::find_if(line.text.begin(), line.text.end(), beginsNumber);
        std::string begin(line.text.begin(), number);
        if (const auto equals = begin.find('='); equals != std::string::npos) {
            const auto separator = begin.find_last_of(",; \t|", equals);
            begin.resize(separator == std::string::npos ? 0 : separator + 1);
        }
        if (counts.size() < 64 || counts.contains(begin)) {
            ++counts[begin];
        }
    }
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == counts.end() ? std::string() : most->first;
}

std::vector<std::string_view> cellsOf(std::string_view text, char separator)
{
    std::vector<std::string_view> cells;
    while (cells.size() < mostCells) {
        const auto end = text.find(separator);
        cells.push_back(text.substr(0, end));
        if (end == std::string_view::npos) {
            break;
        }
        text.remove_prefix(end + 1);
        while (separator == ' ' && text.starts_with(' ')) {
            text.remove_prefix(1);
        }
    }
    return cells;
}

std::string_view keyOf(std::string_view cell)
{
    const auto equals = cell.find('=');
    if (equals == std::string_view::npos) {
        return {};
    }
    cell = cell.substr(0, equals);
    const auto first = cell.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string_view{} : cell.substr(first);
}

double numberOf(std::string_view cell)
{
    const auto equals = cell.find('=');
    const auto number = parseNumber(equals == std::string_view::npos ? cell : cell.substr(equals + 1));
    return number.value_or(std::numeric_limits<double>::quiet_NaN());
}

std::vector<std::string> keysOf(const std::vector<std::string_view>& cells)
{
    std::vector<std::string> keys;
    for (const auto cell : cells) {
        keys.emplace_back(keyOf(cell));
    }
    return keys;
}

/// Lines put together from two halves, where a loss fell in between: no number in a column of numbers.
void dropBroken(Table& table, const std::vector<double>& numbers)
{
    constexpr double ofNumbers = 0.9; // of the lines
    Table whole = table;
    whole.arrival.clear();
    whole.cells.clear();
    whole.count.clear();
    for (std::size_t line = 0; line < table.size(); ++line) {
        const auto* cells = &table.cells[line * table.width];
        bool good = true;
        for (std::size_t i = 0; i < table.width; ++i) {
            good = good && (std::isfinite(cells[i]) || numbers[i] < ofNumbers * static_cast<double>(table.size()));
        }
        if (good) {
            whole.arrival.push_back(table.arrival[line]);
            whole.count.push_back(table.count[line]);
            whole.cells.insert(whole.cells.end(), cells, cells + table.width);
        }
    }
    table = std::move(whole);
}

/// Lines of the commonest shape (number of cells and keys).
Table tableBy(const std::vector<Line>& lines, const std::string& prefix, char separator)
{
    std::map<std::vector<std::string>, std::size_t> shapes;
    const auto rest = [&](const Line& line) { return std::string_view(line.text).substr(prefix.size()); };
    for (const auto& line : lines) {
        if (line.text.starts_with(prefix) && (shapes.size() < 256)) {
            ++shapes[keysOf(cellsOf(rest(line), separator))];
        }
    }
    Table table;
    if (shapes.empty()) {
        return table;
    }
    const auto shape = std::max_element(shapes.begin(), shapes.end(), [](const auto& a, const auto& b) {
                           return a.second < b.second;
                       })->first;
    table.carrier = Carrier::Lines;
    table.separator = separator;
    table.prefix = prefix;
    table.width = shape.size();
    if (std::any_of(shape.begin(), shape.end(), [](const auto& key) { return !key.empty(); })) {
        table.keys = shape;
    }
    std::vector<double> numbers(shape.size()); // in each column
    for (std::size_t k = 0; k < lines.size(); ++k) {
        const auto& line = lines[k];
        if (!line.text.starts_with(prefix)) {
            continue;
        }
        const auto cells = cellsOf(rest(line), separator);
        if (keysOf(cells) == shape) {
            table.arrival.push_back(line.arrival);
            table.count.push_back(static_cast<double>(k));
            for (std::size_t i = 0; i < cells.size(); ++i) {
                table.cells.push_back(numberOf(cells[i]));
                numbers[i] += std::isfinite(table.cells.back()) ? 1 : 0;
            }
        }
    }
    dropBroken(table, numbers);
    table.share = static_cast<double>(table.size()) / static_cast<double>(lines.size());
    return table;
}

/// Where lines go on from notification to notification, each broken line has one missing. Two halves look like a whole
/// line as often as a line's cells have it.
void countLost(Table& table, const std::vector<Line>& lines, const Notifications& notifications)
{
    const auto ends = std::count_if(notifications.packets.begin(), notifications.packets.end(),
                                    [](const RawPacket* packet) { return packet->bytes.back() == '\n'; });
    if (2 * static_cast<std::size_t>(ends) > notifications.packets.size()) {
        table.count.clear();
        return;
    }
    std::vector<double> bytes;
    for (const auto& line : lines) {
        bytes.push_back(static_cast<double>(line.bytes));
    }
    const double lost =
        notifications.meanBytes() / statistics::mean(bytes) * (1 + 1 / static_cast<double>(table.width));
    double before = table.count.front(), now = 0;
    for (auto& count : table.count) {
        now += (count - before) + std::max(0.0, count - before - 1) * lost;
        before = count;
        count = now;
    }
}

double numbersIn(const Table& table)
{
    return static_cast<double>(std::count_if(table.cells.begin(), table.cells.end(), [](double v) { return v == v; }));
}

} // namespace

std::vector<Table> lineTables(const Notifications& notifications)
{
    const auto lines = linesOf(notifications);
    if (lines.size() < fewestRecords) {
        return {};
    }
    const auto prefix = prefixOf(lines);
    Table best;
    for (const char separator : {',', ';', '\t', '|', ' '}) {
        auto table = tableBy(lines, prefix, separator);
        if (numbersIn(table) > numbersIn(best)) {
            best = std::move(table);
        }
    }
    best.notifier = notifications.notifier;
    if (best.size() < fewestRecords) {
        return {};
    }
    countLost(best, lines, notifications);
    return {std::move(best)};
}

} // namespace fleetrung::sensor::teaching
