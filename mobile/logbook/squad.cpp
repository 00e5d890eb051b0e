#include <map>

#include "mobile/logbook/add.hpp"
#include "mobile/logbook/facts.hpp"
#include "mobile/logbook/failure.hpp"

namespace fleetrung::logbook
{
namespace
{

/// The season that holds the day, else the latest. `seasons` by start.
std::optional<store::Season> seasonToShow(const std::vector<store::Season>& seasons, const Identifier& athlete,
                                          CivilDate today)
{
    std::optional<store::Season> shown;
    for (const auto& season : seasons)
        if (season.athlete == athlete && (!shown || shown->finish < today || season.start <= today))
            shown = season;
    return shown;
}

} // namespace

Expected<std::vector<AthleteSummary>> Logbook::squad(CivilDate today) const
{
    const auto athletes = store_->list<store::Athlete>();
    if (!athletes)
        return failure(athletes);
    const auto seasons = store_->list<store::Season>();
    if (!seasons)
        return failure(seasons);
    const auto activity = store_->activity();
    if (!activity)
        return failure(activity);
    std::map<Identifier, store::Activity> active;
    for (const auto& line : *activity)
        active[line.athlete] = line;

    std::vector<AthleteSummary> squad;
    for (const auto& athlete : *athletes) {
        auto& summary = squad.emplace_back();
        summary.athlete = athlete;
        summary.season = seasonToShow(*seasons, athlete.id, today);
        summary.age = season::ageOn(factsOf(athlete), today);
        if (const auto found = active.find(athlete.id); found != active.end()) {
            summary.sessions = static_cast<int>(found->second.sessions);
            summary.lastDay = found->second.lastDay;
        }
    }
    return squad;
}

Expected<std::vector<store::Athlete>> Logbook::deletedAthletes() const
{
    auto athletes = store_->list<store::Athlete>({.deletedToo = true});
    if (athletes)
        std::erase_if(*athletes, [](const auto& athlete) { return !athlete.deleted; });
    return athletes;
}

Expected<store::Athlete> Logbook::athlete(const Identifier& id) const
{
    return store_->find<store::Athlete>(id);
}

Expected<Identifier> Logbook::addAthlete(store::Athlete athlete)
{
    return add(std::move(athlete));
}

Expected<void> Logbook::changeAthlete(const store::Athlete& athlete)
{
    return store_->update(athlete);
}

Expected<void> Logbook::deleteAthlete(const Identifier& id)
{
    return store_->setDeleted<store::Athlete>(id, true);
}

Expected<void> Logbook::restoreAthlete(const Identifier& id)
{
    return store_->setDeleted<store::Athlete>(id, false);
}

} // namespace fleetrung::logbook
