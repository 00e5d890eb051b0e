#include "mobile/logbook/documents.hpp"

#include "mobile/logbook/failure.hpp"

namespace fleetrung::logbook
{

Expected<Identifier> keepDocument(store::Store& store, store::DocumentKind kind, const Json& content,
                                  std::optional<Identifier> athlete, std::optional<CivilDate> day)
{
    store::Document document;
    document.kind = kind;
    document.content.text = jsonText(content);
    document.athlete = athlete;
    document.day = day;
    document.id = store::documentId(document);
    const auto id = document.id;
    return store.insert(std::move(document)).map([&](bool) { return id; });
}

Expected<store::Document> checkDocument(store::Document document)
{
    if (store::documentId(document) != document.id)
        return fail(Code::StoreCorrupt, "document " + identifierText(document.id),
                    "its content is no longer the one it was named after");
    return document;
}

Expected<store::Document> readDocument(const store::Store& store, const Identifier& id)
{
    return store.find<store::Document>(id).and_then(checkDocument);
}

} // namespace fleetrung::logbook
