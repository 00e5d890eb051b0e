#include "engine/importing/run_form.hpp"

#include <algorithm>
#include <map>

#include "engine/base/numbers.hpp"

namespace fleetrung::importing
{
namespace
{

constexpr double fastest = 13;       // m/s
constexpr std::size_t looked = 2000; // rows by which the form is told

struct Point {
    double distance, time;
};

std::optional<double> plain(const Table& table, const Mapping& mapping, std::size_t row, int column)
{
    const auto& cells = table.rows[row].cells;
    if (column < 0 || static_cast<std::size_t>(column) >= cells.size())
        return std::nullopt;
    const auto cell = numberCell(cells[static_cast<std::size_t>(column)], mapping.decimalMark.value_or('.'));
    if (!cell)
        return std::nullopt;
    const Unit unit = cell->unit != Unit::None ? cell->unit : mapping.columns[static_cast<std::size_t>(column)].unit;
    return cell->value * siFactor(unit);
}

/// The gates of one run as the file gives them.
std::vector<std::vector<Point>> pointsOf(const Table& table, const Mapping& mapping)
{
    const Places places(mapping);
    std::vector<std::vector<Point>> all;
    if (mapping.form == RowForm::SplitPerRow) {
        for (const auto& rows : runsOfRows(table, mapping)) {
            auto& points = all.emplace_back();
            for (const auto row : rows) {
                const auto distance = plain(table, mapping, row, places.of(Meaning::Distance));
                const auto time = plain(table, mapping, row, places.of(Meaning::Time));
                if (distance && time && *distance > 0)
                    points.push_back({*distance, *time});
            }
            if (all.size() == looked)
                break;
        }
        return all;
    }
    for (std::size_t row = 0; row < std::min(table.rows.size(), looked); ++row) {
        auto& points = all.emplace_back();
        for (const int split : places.splits) {
            const auto time = plain(table, mapping, row, split);
            const double distance = mapping.columns[static_cast<std::size_t>(split)].distance;
            if (time && distance > 0 && (*time > 0 || !points.empty()))
                points.push_back({distance, *time});
        }
    }
    return all;
}

bool couldCountFromStart(const std::vector<Point>& points)
{
    Point before{0, 0};
    for (const auto& point : points) {
        if (point.time <= before.time || point.distance - before.distance > fastest * (point.time - before.time))
            return false;
        before = point;
    }
    return true;
}

std::string timesOf(const std::vector<Point>& points)
{
    std::string text;
    for (std::size_t i = 0; i < std::min<std::size_t>(points.size(), 4); ++i)
        text += (text.empty() ? "" : ", ") + shortestText(roundTo(points[i].time, 1000));
    return text;
}

} // namespace

std::vector<std::vector<std::size_t>> runsOfRows(const Table& table, const Mapping& mapping)
{
    const Places places(mapping);
    struct Open {
        std::size_t run;
        double distance;
    };
    std::map<std::string, Open> open;
    std::vector<std::vector<std::size_t>> runs;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const RowReader reader(table, mapping, places, table.rows[row]);
        std::string key;
        for (const auto meaning : {Meaning::Athlete, Meaning::AthleteKey, Meaning::Date, Meaning::Clock, Meaning::Key,
                                   Meaning::Attempt, Meaning::Test})
            key += std::string(reader.text(meaning)) + '\n';
        const double distance = plain(table, mapping, row, places.of(Meaning::Distance)).value_or(0);
        const auto found = open.find(key);
        if (found != open.end() && distance > found->second.distance) {
            found->second.distance = distance;
            runs[found->second.run].push_back(row);
            continue;
        }
        open[key] = {runs.size(), distance};
        runs.push_back({row});
    }
    return runs;
}

RowForm rowForm(const Table& table, const Mapping& mapping)
{
    const Places places(mapping);
    if (!places.splits.empty() || places.of(Meaning::Distance) < 0 || places.of(Meaning::Time) < 0)
        return RowForm::RunPerRow;
    std::size_t joined = 0;
    for (const auto& run : runsOfRows(table, mapping))
        if (run.size() > 1)
            joined += run.size();
    return 2 * joined > table.rows.size() ? RowForm::SplitPerRow : RowForm::RunPerRow;
}

FormFound splitForm(const Table& table, const Mapping& mapping)
{
    FormFound cumulative, interval;
    interval.form = SplitForm::Interval;
    const bool named = std::ranges::any_of(
        mapping.columns, [](const auto& column) { return column.meaning == Meaning::Split && column.from > 0; });
    for (const auto& points : pointsOf(table, mapping)) {
        if (points.size() < 2)
            continue;
        auto& found = couldCountFromStart(points) ? cumulative : interval;
        if (found.rows++ == 0)
            found.example = timesOf(points);
    }
    const bool even = interval.rows == cumulative.rows;
    return interval.rows > cumulative.rows || (even && named) ? interval : cumulative;
}

} // namespace fleetrung::importing
