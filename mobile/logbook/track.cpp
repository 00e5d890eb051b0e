#include "mobile/logbook/add.hpp"

namespace fleetrung::logbook
{

Expected<Identifier> Logbook::addSprint(store::Sprint sprint)
{
    return add(std::move(sprint));
}

Expected<Identifier> Logbook::addJump(store::Jump jump)
{
    return add(std::move(jump));
}

Expected<Identifier> Logbook::addTrackWork(store::TrackWork work)
{
    return add(std::move(work));
}

Expected<Identifier> Logbook::addWellness(store::Wellness wellness)
{
    return add(std::move(wellness));
}

Expected<Identifier> Logbook::addLostDay(store::LostDay day)
{
    return add(std::move(day));
}

Expected<void> Logbook::changeSprint(const store::Sprint& sprint)
{
    return store_->update(sprint);
}

Expected<void> Logbook::changeJump(const store::Jump& jump)
{
    return store_->update(jump);
}

Expected<void> Logbook::setSprintDeleted(const Identifier& id, bool deleted)
{
    return store_->setDeleted<store::Sprint>(id, deleted);
}

Expected<void> Logbook::setJumpDeleted(const Identifier& id, bool deleted)
{
    return store_->setDeleted<store::Jump>(id, deleted);
}

Expected<void> Logbook::setTrackWorkDeleted(const Identifier& id, bool deleted)
{
    return store_->setDeleted<store::TrackWork>(id, deleted);
}

Expected<std::vector<store::Sprint>> Logbook::sprints(const Identifier& athlete, std::optional<CivilDate> from,
                                                      std::optional<CivilDate> to) const
{
    return store_->list<store::Sprint>({.athlete = athlete, .from = from, .to = to});
}

Expected<std::vector<store::Jump>> Logbook::jumps(const Identifier& athlete, std::optional<CivilDate> from,
                                                  std::optional<CivilDate> to) const
{
    return store_->list<store::Jump>({.athlete = athlete, .from = from, .to = to});
}

Expected<std::vector<store::TrackWork>> Logbook::trackWork(const Identifier& athlete, std::optional<CivilDate> from,
                                                           std::optional<CivilDate> to) const
{
    return store_->list<store::TrackWork>({.athlete = athlete, .from = from, .to = to});
}

Expected<std::vector<store::Wellness>> Logbook::wellness(const Identifier& athlete, std::optional<CivilDate> from,
                                                         std::optional<CivilDate> to) const
{
    return store_->list<store::Wellness>({.athlete = athlete, .from = from, .to = to});
}

Expected<std::vector<store::LostDay>> Logbook::lostDays(const Identifier& athlete, std::optional<CivilDate> from,
                                                        std::optional<CivilDate> to) const
{
    return store_->list<store::LostDay>({.athlete = athlete, .from = from, .to = to});
}

} // namespace fleetrung::logbook
