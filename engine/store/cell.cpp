#include "engine/store/cell.hpp"

#include <cstring>
#include <sqlite3.h>

#include "engine/base/json.hpp"
#include "engine/store/packed_text.hpp"

namespace fleetrung::store
{
namespace
{

constexpr std::array<std::string_view, 4> momentColumns{"_utc_s", "_offset_min", "_zone", "_day"};

std::string splitsText(const std::vector<Split>& splits)
{
    Json list = Json::array();
    for (const auto& split : splits)
        list.push_back({split.distance, split.time});
    return jsonText(list);
}

std::optional<std::vector<Split>> parseSplits(const std::string& text)
{
    const auto list = parseJson(text);
    if (!list || !list->is_array())
        return std::nullopt;
    std::vector<Split> splits;
    for (const auto& pair : *list) {
        if (!pair.is_array() || pair.size() != 2 || !pair[0].is_number() || !pair[1].is_number())
            return std::nullopt;
        splits.push_back({pair[0].get<double>(), pair[1].get<double>()});
    }
    return splits;
}

} // namespace

void bindCell(SQLite::Statement& statement, int index, const Cell& cell)
{
    if (const auto* whole = std::get_if<std::int64_t>(&cell))
        statement.bind(index, *whole);
    else if (const auto* real = std::get_if<double>(&cell))
        statement.bind(index, *real);
    else if (const auto* text = std::get_if<std::string>(&cell))
        statement.bind(index, *text);
    else if (const auto* id = std::get_if<Identifier>(&cell))
        statement.bind(index, id->bytes.data(), static_cast<int>(id->bytes.size()));
    else if (const auto* bytes = std::get_if<Bytes>(&cell))
        statement.bind(index, bytes->data(), static_cast<int>(bytes->size()));
    else
        statement.bind(index);
}

void ColumnNames::operator()(std::string_view name, const Moment&)
{
    for (const auto suffix : momentColumns)
        names.push_back(std::string(name).append(suffix));
}

void ColumnNames::operator()(std::string_view name, const Metric&)
{
    names.emplace_back(name);
    names.push_back(std::string(name) + "_u");
}

void CellWriter::operator()(std::string_view name, const Moment& value)
{
    (*this)(name, value.utcSeconds);
    (*this)(name, value.offsetMinutes);
    (*this)(name, value.zone);
    (*this)(name, value.trainingDay);
}

void CellWriter::operator()(std::string_view name, const Metric& value)
{
    (*this)(name, value.value);
    (*this)(name, value.uncertainty);
}

void CellWriter::operator()(std::string_view, const std::vector<Split>& value)
{
    cells.emplace_back(splitsText(value));
}

void CellWriter::operator()(std::string_view, const PackedText& value)
{
    cells.emplace_back(packText(value.text));
}

void RowReader::operator()(std::string_view name, Identifier& value)
{
    const auto column = next();
    if (column.getBytes() != static_cast<int>(value.bytes.size()))
        damaged(name);
    std::memcpy(value.bytes.data(), column.getBlob(), value.bytes.size());
}

void RowReader::operator()(std::string_view name, CivilDate& value)
{
    const auto day = parseDate(next().getString());
    if (!day)
        damaged(name);
    value = *day;
}

void RowReader::operator()(std::string_view name, Moment& value)
{
    (*this)(name, value.utcSeconds);
    (*this)(name, value.offsetMinutes);
    (*this)(name, value.zone);
    (*this)(name, value.trainingDay);
}

void RowReader::operator()(std::string_view name, Metric& value)
{
    (*this)(name, value.value);
    (*this)(name, value.uncertainty);
}

void RowReader::operator()(std::string_view name, std::vector<Split>& value)
{
    auto splits = parseSplits(next().getString());
    if (!splits)
        damaged(name);
    value = std::move(*splits);
}

void RowReader::operator()(std::string_view name, PackedText& value)
{
    const auto column = next();
    auto text =
        unpackText({static_cast<const std::uint8_t*>(column.getBlob()), static_cast<std::size_t>(column.getBytes())});
    if (!text)
        damaged(name);
    value.text = std::move(*text);
}

void RowReader::damaged(std::string_view name)
{
    throw SQLite::Exception("the value of " + std::string(name) + " cannot be read", SQLITE_CORRUPT);
}

} // namespace fleetrung::store
