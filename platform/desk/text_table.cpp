#include "platform/desk/text_table.hpp"

#include <algorithm>

namespace fleetrung::desk
{
namespace
{

/// Code points of UTF-8: what a terminal shows side by side for the letters and signs we print.
std::size_t widthOf(const std::string& text)
{
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

} // namespace

void TextTable::addColumn(std::string name, std::string unit, Align align)
{
    columns_.push_back({std::move(name), std::move(unit), align});
}

void TextTable::addRow(std::vector<std::string> cells)
{
    rows_.push_back(std::move(cells));
}

std::string TextTable::text() const
{
    std::vector<std::size_t> shown;
    std::vector<std::size_t> widths(columns_.size());
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        widths[i] = std::max(widthOf(columns_[i].name), widthOf(columns_[i].unit));
        for (const auto& row : rows_)
            widths[i] = std::max(widths[i], widthOf(row[i]));
        if (std::any_of(rows_.begin(), rows_.end(), [i](const auto& row) { return !row[i].empty(); }))
            shown.push_back(i);
    }

    std::string text;
    const auto addLine = [&](const auto& cellOf) {
        std::string line;
        for (const auto i : shown) {
            const std::string& cell = cellOf(i);
            const std::string padding(widths[i] - widthOf(cell), ' ');
            line += (line.empty() ? "" : "  ") + (columns_[i].align == Align::Right ? padding + cell : cell + padding);
        }
        text += line.substr(0, line.find_last_not_of(' ') + 1) + '\n';
    };
    addLine([&](std::size_t i) -> const std::string& { return columns_[i].name; });
    addLine([&](std::size_t i) -> const std::string& { return columns_[i].unit; });
    for (const auto& row : rows_)
        addLine([&](std::size_t i) -> const std::string& { return row[i]; });
    return text;
}

} // namespace fleetrung::desk
