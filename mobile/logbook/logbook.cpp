#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{

Logbook::Logbook(store::Store store, NewIdentifier newIdentifier)
    : store_(std::make_unique<store::Store>(std::move(store))), newIdentifier_(std::move(newIdentifier))
{
}

Expected<Logbook> Logbook::open(const store::StorePaths& paths, const Identifier& device, NewIdentifier newIdentifier)
{
    return store::Store::open(paths, device).map([&](store::Store&& opened) {
        return Logbook(std::move(opened), std::move(newIdentifier));
    });
}

Expected<Logbook> Logbook::openReadOnly(const store::StorePaths& paths)
{
    return store::Store::openReadOnly(paths).map(
        [](store::Store&& opened) { return Logbook(std::move(opened), [] { return Identifier{}; }); });
}

Expected<void> Logbook::inTransaction(const std::function<Expected<void>()>& work)
{
    return store_->inTransaction(work);
}

Expected<std::vector<std::string>> Logbook::verify() const
{
    return store_->verify();
}

} // namespace fleetrung::logbook
