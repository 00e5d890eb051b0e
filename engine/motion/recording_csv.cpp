#include "engine/motion/recording_csv.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/csv_table.hpp"
#include "engine/base/numbers.hpp"
#include "engine/motion/recording_columns.hpp"

namespace fleetrung::motion
{
namespace
{

/// Turns rows into samples.
class RecordingReader
{
public:
    explicit RecordingReader(const ColumnMap& map) : map_(map) {}

    Expected<void> readHead(const CsvHead& head)
    {
        canHaveDecimalComma_ = head.delimiter == ';';
        headerLine_ = head.header.line;
        for (const auto& comment : head.comments)
            if (auto read = readComment(comment); !read)
                return read;
        const ColumnFinder finder(head.header, map_);
        if (auto found = findTime(finder); !found)
            return found;
        for (std::size_t axis = 0; axis < 3; ++axis) {
            auto column = finder.require(accelerometerNames(axis), ", or map it with a column map");
            if (!column)
                return tl::unexpected(std::move(column.error()));
            accelerometer_[axis] = std::move(*column);
        }
        return findGyroscope(finder);
    }

    Expected<void> readRow(const CsvRow& row)
    {
        Sample sample{0, Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero()};
        if (auto read = readTime(row, sample.time); !read)
            return read;
        for (std::size_t axis = 0; axis < 3; ++axis) {
            const auto index = static_cast<Eigen::Index>(axis);
            if (auto read = readCell(row, accelerometer_[axis], sample.specificForce[index]); !read)
                return read;
            if (!result_.recording.hasGyroscope)
                continue;
            if (auto read = readCell(row, gyroscope_[axis], sample.angularRate[index]); !read)
                return read;
        }
        result_.recording.samples.push_back(sample);
        lines_.push_back(row.line);
        return {};
    }

    Expected<ImportedRecording> finish()
    {
        if (result_.recording.samples.empty())
            return fail(Code::InvalidInput, placeOf(headerLine_), "there are no samples below the header row");
        auto ordered = putInOrder(std::move(result_.recording.samples), [this](std::size_t index) {
            return placeOf(lines_[index], time_ ? std::string_view(time_->name) : std::string_view());
        });
        if (!ordered)
            return tl::unexpected(std::move(ordered.error()));
        result_.recording.samples = std::move(ordered->samples);
        result_.findings = std::move(ordered->findings);
        return std::move(result_);
    }

private:
    Expected<void> readComment(const CsvComment& comment)
    {
        const auto colon = comment.text.find(':');
        if (colon == std::string::npos)
            return {};
        const std::string_view text = comment.text;
        const auto key = trimmed(text.substr(0, colon));
        const auto value = trimmed(text.substr(colon + 1));
        if (key == "lift")
            result_.lift = std::string(value);
        else if (key == "athlete")
            result_.athlete = std::string(value);
        else if (key == "started")
            result_.started = std::string(value);
        else if (key == "load_kg")
            return readSetting(comment.line, key, value, 0, result_.loadKg);
        else if (key == "rate_hz")
            return readSetting(comment.line, key, value, 1e-3, rate_);
        return {};
    }

    Expected<void> readSetting(int line, std::string_view key, std::string_view text, double least,
                               std::optional<double>& value) const
    {
        const bool comma = canHaveDecimalComma_ && text.find(',') != std::string_view::npos;
        const auto number = parseNumber(text, comma ? ',' : '.');
        if (!number || *number < least || *number > 1e6)
            return fail(Code::InvalidInput, placeOf(line),
                        std::string(key) + " needs a number from " + shortestText(least) + " to 1000000, and " +
                            inQuotes(text) + " is none");
        value = number;
        return {};
    }

    Expected<void> findTime(const ColumnFinder& finder)
    {
        auto time = finder.find(timeNames());
        if (!time)
            return tl::unexpected(std::move(time.error()));
        time_ = std::move(*time);
        if (time_)
            return {};
        if (!rate_) {
            auto required = finder.require(timeNames(), ", or put a line \"# rate_hz: 200\" above the header");
            return tl::unexpected(std::move(required.error()));
        }
        auto counter = finder.find(sampleNames());
        if (!counter)
            return tl::unexpected(std::move(counter.error()));
        time_ = std::move(*counter);
        if (time_)
            time_->toSi = 1 / *rate_;
        return {};
    }

    Expected<void> findGyroscope(const ColumnFinder& finder)
    {
        std::array<std::optional<Column>, 3> found;
        for (std::size_t axis = 0; axis < 3; ++axis) {
            auto column = finder.find(gyroscopeNames(axis));
            if (!column)
                return tl::unexpected(std::move(column.error()));
            found[axis] = std::move(*column);
        }
        result_.recording.hasGyroscope = found[0] || found[1] || found[2];
        for (std::size_t axis = 0; result_.recording.hasGyroscope && axis < 3; ++axis) {
            if (!found[axis])
                return fail(Code::InvalidInput, placeOf(headerLine_, gyroscopeNames(axis).front().text),
                            "this column is missing while other gyroscope columns are there; name it " +
                                listed(gyroscopeNames(axis)) + ", or leave all three out");
            gyroscope_[axis] = std::move(*found[axis]);
        }
        return {};
    }

    Expected<void> readTime(const CsvRow& row, double& time)
    {
        if (!time_) {
            time = static_cast<double>(result_.recording.samples.size()) / *rate_;
            return {};
        }
        return readCell(row, *time_, time);
    }

    Expected<void> readCell(const CsvRow& row, const Column& column, double& value)
    {
        const auto& cell = row.cells[column.index];
        const auto number = parseNumber(cell, decimalMarkFor(cell));
        if (!number)
            return fail(Code::InvalidInput, placeOf(row.line, column.name),
                        trimmed(cell).empty() ? "the cell is empty; every sample needs a number here, so remove the row"
                                              : inQuotes(cell) + " is no finite number; correct it, or remove the row");
        value = *number * column.toSi;
        return {};
    }

    /// The first decimal mark met in a semicolon file holds for all of it: a mixture is an error, not a guess.
    char decimalMarkFor(std::string_view cell)
    {
        if (canHaveDecimalComma_ && decimalMark_ == '\0')
            if (const auto mark = cell.find_first_of(",."); mark != std::string_view::npos)
                decimalMark_ = cell[mark];
        return decimalMark_ == ',' ? ',' : '.';
    }

    const ColumnMap& map_;
    ImportedRecording result_;
    std::optional<double> rate_; // Hz
    std::optional<Column> time_; // the clock, or the counter; neither where rows are counted
    std::array<Column, 3> accelerometer_, gyroscope_;
    std::vector<int> lines_; // of the samples
    int headerLine_ = 0;
    bool canHaveDecimalComma_ = false;
    char decimalMark_ = '\0';
};

} // namespace

Expected<ColumnMap> parseColumnMap(std::string_view text)
{
    ColumnMap map;
    while (!text.empty()) {
        const auto entry = text.substr(0, text.find(','));
        text.remove_prefix(std::min(text.size(), entry.size() + 1));
        const auto equals = entry.find('=');
        const auto ours = trimmed(entry.substr(0, equals));
        const auto theirs = equals == std::string_view::npos ? std::string_view() : trimmed(entry.substr(equals + 1));
        if (theirs.empty())
            return fail(Code::InvalidInput, "column map",
                        inQuotes(entry) + " is no pair; write ours=theirs, for example acc_x_mps2=ax");
        if (!isColumnName(ours))
            return fail(Code::InvalidInput, "column map",
                        inQuotes(ours) +
                            " is none of our column names: time_s, time_ms, time_us, sample, acc_x_mps2 or "
                            "acc_x_g, gyr_x_radps or gyr_x_dps, and the same with y and z");
        if (!map.emplace(ours, theirs).second)
            return fail(Code::InvalidInput, "column map", inQuotes(ours) + " is mapped twice; keep one");
    }
    return map;
}

Expected<ImportedRecording> importRecording(std::string_view bytes, const ColumnMap& columns)
{
    RecordingReader reader(columns);
    auto read = readCsv(
        bytes, [&](const CsvHead& head) { return reader.readHead(head); },
        [&](const CsvRow& row) { return reader.readRow(row); });
    if (!read)
        return tl::unexpected(std::move(read.error()));
    return reader.finish();
}

} // namespace fleetrung::motion
