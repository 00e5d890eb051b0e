// Reading records of a table (private to engine/store).
#pragma once

#include "engine/store/cell.hpp"
#include "engine/store/table.hpp"

namespace fleetrung::store
{

template <class R> const std::vector<std::string>& columnsOf()
{
    static const std::vector<std::string> names = [] {
        ColumnNames visit;
        const R row{};
        visitRow(row, visit);
        return visit.names;
    }();
    return names;
}

template <class R> R readRow(SQLite::Statement& statement)
{
    R row{};
    RowReader visit(statement);
    visitRow(row, visit);
    return row;
}

template <class R> std::string selectText()
{
    std::string text = "SELECT ";
    for (const auto& column : columnsOf<R>())
        text.append(text.size() > 7 ? ", " : "").append(Table<R>::name).append(".").append(column);
    return text.append(" FROM ").append(Table<R>::name);
}

} // namespace fleetrung::store
