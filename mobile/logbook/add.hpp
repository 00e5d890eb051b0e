// Logbook::add for every record (private to mobile/logbook).
#pragma once

#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{

template <class R> Expected<Identifier> Logbook::add(R row)
{
    if (row.id == Identifier{})
        row.id = newIdentifier_();
    const Identifier id = row.id;
    return store_->insert(std::move(row)).map([&](bool) { return id; });
}

} // namespace fleetrung::logbook
