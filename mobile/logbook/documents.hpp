// What decisions were made from, kept by value (private to mobile/logbook).
#pragma once

#include "engine/base/json.hpp"
#include "engine/store/store.hpp"

namespace fleetrung::logbook
{

/// Gives its name; the same content a second time adds nothing.
[[nodiscard]] Expected<Identifier> keepDocument(store::Store& store, store::DocumentKind kind, const Json& content,
                                                std::optional<Identifier> athlete = {},
                                                std::optional<CivilDate> day = {});

/// StoreCorrupt where its content is no longer the one it was named after.
[[nodiscard]] Expected<store::Document> checkDocument(store::Document document);

/// NotFound where it is missing, StoreCorrupt where its content is no longer the one it was named after.
[[nodiscard]] Expected<store::Document> readDocument(const store::Store& store, const Identifier& id);

} // namespace fleetrung::logbook
