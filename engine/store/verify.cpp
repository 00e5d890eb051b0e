#include "engine/base/numbers.hpp"
#include "engine/store/cell.hpp"
#include "engine/store/store_state.hpp"

namespace fleetrung::store
{
namespace
{

void checkPages(Connection& connection, std::vector<std::string>& wrong)
{
    auto check = connection.prepared("PRAGMA integrity_check");
    while (check->executeStep())
        if (const auto said = check->getColumn(0).getString(); said != "ok")
            wrong.push_back(connection.path() + ": " + said);
}

void checkReferences(Connection& connection, std::vector<std::string>& wrong)
{
    auto check = connection.prepared("PRAGMA foreign_key_check");
    while (check->executeStep())
        wrong.push_back(connection.path() + ": row " + integerText(check->getColumn(1).getInt64()) + " of " +
                        check->getColumn(0).getString() + " belongs to a missing " + check->getColumn(2).getString());
}

/// Documents are named after their content.
void checkDocuments(const Store& store, Connection& connection, std::vector<std::string>& wrong)
{
    auto all = connection.prepared("SELECT id FROM document ORDER BY id");
    while (all->executeStep()) {
        Identifier id;
        RowReader reader(*all);
        reader("id", id);
        const auto document = store.find<Document>(id);
        if (!document)
            wrong.push_back("document " + identifierText(id) + ": " + document.error().message);
        else if (documentId(*document) != id)
            wrong.push_back("document " + identifierText(id) + ": its content is no longer the one it was named after");
    }
}

} // namespace

Expected<std::vector<std::string>> Store::verify() const
{
    std::vector<std::string> wrong;
    auto looked = guarded(state_->rows->path(), [&]() -> Expected<void> {
        checkPages(*state_->rows, wrong);
        checkReferences(*state_->rows, wrong);
        checkPages(state_->captures->connection(), wrong);
        checkDocuments(*this, *state_->rows, wrong);
        auto wanted = state_->rows->prepared("SELECT DISTINCT content_hash FROM capture ORDER BY content_hash");
        while (wanted->executeStep()) {
            const auto hash = wanted->getColumn(0).getString();
            if (const auto found = samples(hash); !found)
                wrong.push_back("recording " + hash + ": " + found.error().message);
        }
        return {};
    });
    if (!looked)
        wrong.push_back(describe(looked.error()));
    return wrong;
}

} // namespace fleetrung::store
