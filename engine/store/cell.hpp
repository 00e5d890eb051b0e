// A record's fields to the cells of its row and back. Each record lists its fields once (table.hpp); what one field is
// in columns stands here.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "engine/store/connection.hpp"
#include "engine/store/records.hpp"

namespace fleetrung::store
{

using Bytes = std::vector<std::uint8_t>;
using Cell = std::variant<std::monostate, std::int64_t, double, std::string, Identifier, Bytes>;

void bindCell(SQLite::Statement& statement, int index, const Cell& cell);

/// Texts of an enumeration, in the order of its values.
template <class Choice> struct Texts;
template <> struct Texts<Side> {
    static constexpr std::array<std::string_view, 3> all{"both", "left", "right"};
};
template <> struct Texts<SetKind> {
    static constexpr std::array<std::string_view, 4> all{"warm-up", "probe", "work", "maintenance"};
};
template <> struct Texts<EditKind> {
    static constexpr std::array<std::string_view, 4> all{"delete", "undelete", "relabel", "add"};
};
template <> struct Texts<Answer> {
    static constexpr std::array<std::string_view, 3> all{"none", "followed", "changed"};
};

template <> struct Texts<DocumentKind> {
    static constexpr std::array<std::string_view, 3> all{"day-input", "season-data", "warm-up-check"};
};

/// Visits fields and collects the names of their columns.
class ColumnNames
{
public:
    std::vector<std::string> names;

    template <class Field> void operator()(std::string_view name, const Field&) { names.emplace_back(name); }
    void operator()(std::string_view name, const Moment&);
    void operator()(std::string_view name, const Metric&);
};

/// Visits fields and collects their values.
class CellWriter
{
public:
    std::vector<Cell> cells;

    void operator()(std::string_view, std::int64_t value) { cells.emplace_back(value); }
    void operator()(std::string_view, int value) { cells.emplace_back(std::int64_t{value}); }
    void operator()(std::string_view, bool value) { cells.emplace_back(std::int64_t{value ? 1 : 0}); }
    void operator()(std::string_view, double value) { cells.emplace_back(value); }
    void operator()(std::string_view, const std::string& value) { cells.emplace_back(value); }
    void operator()(std::string_view, const Identifier& value) { cells.emplace_back(value); }
    void operator()(std::string_view, CivilDate value) { cells.emplace_back(dateText(value)); }
    void operator()(std::string_view name, const Moment& value);
    void operator()(std::string_view name, const Metric& value);
    void operator()(std::string_view, const std::vector<Split>& value);
    void operator()(std::string_view, const PackedText& value);
    template <class Choice>
    requires std::is_enum_v<Choice>
    void operator()(std::string_view, Choice value)
    {
        cells.emplace_back(std::string(Texts<Choice>::all.at(static_cast<std::size_t>(value))));
    }
    template <class Field> void operator()(std::string_view name, const std::optional<Field>& value)
    {
        if (value)
            (*this)(name, *value);
        else
            cells.emplace_back();
    }
};

/// Visits fields and fills them from the row the statement stands on. Throws SQLite::Exception (SQLITE_CORRUPT) where a
/// text is no day, no choice, no list of splits, or cannot be unpacked.
class RowReader
{
public:
    explicit RowReader(SQLite::Statement& statement) : statement_(statement) {}

    void operator()(std::string_view, std::int64_t& value) { value = next().getInt64(); }
    void operator()(std::string_view, int& value) { value = next().getInt(); }
    void operator()(std::string_view, bool& value) { value = next().getInt() != 0; }
    void operator()(std::string_view, double& value) { value = next().getDouble(); }
    void operator()(std::string_view, std::string& value) { value = next().getString(); }
    void operator()(std::string_view, Identifier& value);
    void operator()(std::string_view, CivilDate& value);
    void operator()(std::string_view name, Moment& value);
    void operator()(std::string_view name, Metric& value);
    void operator()(std::string_view, std::vector<Split>& value);
    void operator()(std::string_view, PackedText& value);
    template <class Choice>
    requires std::is_enum_v<Choice>
    void operator()(std::string_view name, Choice& value)
    {
        const auto& all = Texts<Choice>::all;
        const auto found = std::ranges::find(all, next().getString());
        if (found == all.end())
            damaged(name);
        value = static_cast<Choice>(found - all.begin());
    }
    template <class Field> void operator()(std::string_view name, std::optional<Field>& value)
    {
        if (statement_.isColumnNull(index_)) {
            value.reset();
            ++index_;
        } else {
            (*this)(name, value.emplace());
        }
    }

private:
    SQLite::Column next() { return statement_.getColumn(index_++); }
    [[noreturn]] static void damaged(std::string_view name);

    SQLite::Statement& statement_;
    int index_ = 0;
};

} // namespace fleetrung::store
