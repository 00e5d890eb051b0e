// What a table's own cells say of its decimal mark and order of dates. Internal to this folder.
#pragma once

#include "engine/importing/mapping.hpp"

namespace fleetrung::importing
{

struct MarkFound {
    std::optional<char> mark; ///< none: open, or the file uses both
    bool sure = false;        ///< some cell leaves no doubt
    std::string example;
};
[[nodiscard]] MarkFound decimalOf(const Table& table, const Mapping& mapping);

struct OrderFound {
    std::optional<DateOrder> order;
    bool sure = false; ///< a day beyond 12
    bool open = false; ///< dates of that form, and none of them tells
    std::string example;
};
[[nodiscard]] OrderFound dateOrderOf(const Table& table, const Mapping& mapping);

} // namespace fleetrung::importing
