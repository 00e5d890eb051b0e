#include "engine/motion/recording_columns.hpp"

#include <algorithm>
#include <numbers>
#include <vector>

#include "engine/base/numbers.hpp"

namespace fleetrung::motion
{
namespace
{

// m/s2 in one g, exact by definition: 3rd General Conference on Weights and Measures, 1901.
constexpr double gravity = 9.80665;
constexpr double degree = std::numbers::pi / 180;

constexpr std::array<ColumnName, 3> times{{{"time_s", 1}, {"time_ms", 1e-3}, {"time_us", 1e-6}}};
constexpr std::array<ColumnName, 1> samples{{{"sample", 1}}};
constexpr std::array<std::array<ColumnName, 2>, 3> accelerometer{{{{{"acc_x_mps2", 1}, {"acc_x_g", gravity}}},
                                                                  {{{"acc_y_mps2", 1}, {"acc_y_g", gravity}}},
                                                                  {{{"acc_z_mps2", 1}, {"acc_z_g", gravity}}}}};
constexpr std::array<std::array<ColumnName, 2>, 3> gyroscope{{{{{"gyr_x_radps", 1}, {"gyr_x_dps", degree}}},
                                                              {{{"gyr_y_radps", 1}, {"gyr_y_dps", degree}}},
                                                              {{{"gyr_z_radps", 1}, {"gyr_z_dps", degree}}}}};

} // namespace

ColumnNames timeNames()
{
    return times;
}

ColumnNames sampleNames()
{
    return samples;
}

ColumnNames accelerometerNames(std::size_t axis)
{
    return accelerometer[axis];
}

ColumnNames gyroscopeNames(std::size_t axis)
{
    return gyroscope[axis];
}

bool isColumnName(std::string_view name)
{
    std::vector<ColumnNames> all{times, samples};
    all.insert(all.end(), accelerometer.begin(), accelerometer.end());
    all.insert(all.end(), gyroscope.begin(), gyroscope.end());
    return std::any_of(all.begin(), all.end(), [&](ColumnNames names) {
        return std::any_of(names.begin(), names.end(), [&](const ColumnName& one) { return one.text == name; });
    });
}

std::string listed(ColumnNames names)
{
    std::string text;
    for (const auto& name : names)
        text += (text.empty() ? "" : " or ") + std::string(name.text);
    return text;
}

Expected<std::optional<Column>> ColumnFinder::find(ColumnNames names) const
{
    std::optional<Column> found;
    for (const auto& [ours, toSi] : names) {
        const auto theirs = nameInFile(ours, names);
        for (std::size_t i = 0; i < header_.cells.size(); ++i) {
            if (theirs.empty() || trimmed(header_.cells[i]) != theirs)
                continue;
            if (found)
                return fail(Code::InvalidInput, placeOf(header_.line, theirs),
                            "the same quantity stands here and in column " + printable(found->name, 80) +
                                "; keep one, or name the one to read in the column map");
            found = Column{i, toSi, std::string(theirs)};
        }
    }
    if (const auto mapped = mappedName(names); !found && !mapped.empty())
        return fail(Code::InvalidInput, placeOf(header_.line, mapped),
                    "the column map names this column and the header does not; the header has: " + headerText());
    return found;
}

Expected<Column> ColumnFinder::require(ColumnNames names, std::string_view advice) const
{
    auto found = find(names);
    if (!found)
        return tl::unexpected(std::move(found.error()));
    if (!*found)
        return fail(Code::InvalidInput, placeOf(header_.line, names.front().text),
                    "this column is missing; name it " + listed(names) + std::string(advice) +
                        ". The header has: " + headerText());
    return std::move(**found);
}

std::string_view ColumnFinder::mappedName(ColumnNames names) const
{
    for (const auto& name : names)
        if (const auto entry = map_.find(std::string(name.text)); entry != map_.end())
            return entry->second;
    return {};
}

/// Where the map speaks of a quantity, only the map decides on it.
std::string_view ColumnFinder::nameInFile(std::string_view ours, ColumnNames names) const
{
    if (mappedName(names).empty())
        return ours;
    const auto entry = map_.find(std::string(ours));
    return entry == map_.end() ? std::string_view() : entry->second;
}

std::string ColumnFinder::headerText() const
{
    std::string text;
    for (const auto& cell : header_.cells)
        text += (text.empty() ? "" : ", ") + std::string(trimmed(cell));
    return printable(text, 200);
}

std::string printable(std::string_view text, std::size_t longest)
{
    const auto continues = [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; };
    std::size_t size = std::min(text.size(), longest);
    while (size > 0 && size < text.size() && continues(text[size]))
        --size;
    std::string shown(text.substr(0, size));
    std::replace_if(
        shown.begin(), shown.end(), [](char c) { return (c >= '\0' && c < ' ') || c == '\x7F'; }, '?');
    return size < text.size() ? shown + "..." : shown;
}

std::string inQuotes(std::string_view text)
{
    return '"' + printable(text, 40) + '"';
}

std::string placeOf(int line, std::string_view column)
{
    return "line " + integerText(line) + (column.empty() ? "" : ", column " + printable(column, 80));
}

std::string_view trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string_view()
                                           : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

} // namespace fleetrung::motion
