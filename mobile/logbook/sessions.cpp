#include "mobile/logbook/add.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/training.hpp"

namespace fleetrung::logbook
{

Expected<Identifier> Logbook::openSession(const Identifier& athlete, const std::string& kind, const Moment& now)
{
    const auto today =
        store_->list<store::Session>({.athlete = athlete, .from = now.trainingDay, .to = now.trainingDay});
    if (!today)
        return failure(today);
    for (const auto& session : *today)
        if (session.kind == kind)
            return session.id;
    store::Session session;
    session.athlete = athlete;
    session.begun = now;
    session.kind = kind;
    const auto season = seasonOn(athlete, now.trainingDay);
    if (season)
        session.season = season->row.id;
    else if (season.error().code != Code::NotFound)
        return failure(season);
    return add(std::move(session));
}

Expected<void> Logbook::changeSession(const store::Session& session)
{
    return store_->update(session);
}

Expected<void> Logbook::deleteSession(const Identifier& id)
{
    return store_->setDeleted<store::Session>(id, true);
}

Expected<void> Logbook::restoreSession(const Identifier& id)
{
    return store_->setDeleted<store::Session>(id, false);
}

Expected<std::vector<store::Session>> Logbook::sessions(const Identifier& athlete, std::optional<CivilDate> from,
                                                        std::optional<CivilDate> to) const
{
    return store_->list<store::Session>({.athlete = athlete, .from = from, .to = to});
}

Expected<SessionView> Logbook::session(const Identifier& id) const
{
    auto found = readTraining(*store_, {.session = id});
    if (!found)
        return failure(found);
    if (found->empty())
        return fail(Code::NotFound, "session", "there is no such session; it may have been deleted");
    return std::move(found->front());
}

Expected<std::vector<SetView>> Logbook::sets(const Identifier& session) const
{
    return this->session(session).map([](SessionView&& view) { return std::move(view.sets); });
}

Expected<SetView> Logbook::set(const Identifier& id) const
{
    const auto row = store_->find<store::LiftSet>(id);
    if (!row)
        return failure(row);
    auto all = sets(row->session);
    if (!all)
        return failure(all);
    for (auto& view : *all)
        if (view.row.id == id)
            return std::move(view);
    return fail(Code::NotFound, "set", "the set was deleted; restore it first");
}

Expected<void> Logbook::changeSet(const store::LiftSet& set)
{
    return store_->update(set);
}

Expected<void> Logbook::deleteSet(const Identifier& id)
{
    return store_->setDeleted<store::LiftSet>(id, true);
}

Expected<void> Logbook::restoreSet(const Identifier& id)
{
    return store_->setDeleted<store::LiftSet>(id, false);
}

} // namespace fleetrung::logbook
