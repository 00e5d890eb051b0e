#include "mobile/logbook/add.hpp"
#include "mobile/logbook/facts.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/ladder_walk.hpp"

namespace fleetrung::logbook
{
namespace
{

/// The setup with the athlete's facts of today, checked; and the row it is kept in.
Expected<store::Season> rowOf(const store::Athlete& athlete, season::SeasonSetup setup)
{
    setup.athlete = factsOf(athlete, setup.athlete.growthPerMonth);
    const auto plan = season::planSeason(setup); // checks the setup, and knows its last day
    if (!plan)
        return failure(plan);
    store::Season row;
    row.athlete = athlete.id;
    row.name = setup.name;
    row.start = setup.start;
    row.finish = plan->end;
    row.setup = jsonText(season::setupJson(setup));
    return row;
}

Expected<SeasonRecord> read(const store::Store& store, const store::Season& row)
{
    const auto athlete = store.find<store::Athlete>(row.athlete);
    if (!athlete)
        return failure(athlete);
    return seasonRecord(row, *athlete);
}

} // namespace

Expected<SeasonRecord> seasonRecord(const store::Season& row, const store::Athlete& athlete)
{
    auto setup = season::parseSetup(row.setup);
    if (!setup)
        return failure(setup);
    setup->athlete = factsOf(athlete, setup->athlete.growthPerMonth);
    return SeasonRecord{row, std::move(*setup)};
}

Expected<Identifier> Logbook::addSeason(const Identifier& athlete, const season::SeasonSetup& setup,
                                        const Identifier& id)
{
    const auto owner = store_->find<store::Athlete>(athlete);
    if (!owner)
        return failure(owner);
    auto row = rowOf(*owner, setup);
    if (!row)
        return failure(row);
    row->id = id;
    return add(std::move(*row));
}

Expected<void> Logbook::changeSeason(const Identifier& season, const season::SeasonSetup& setup)
{
    const auto stored = store_->find<store::Season>(season);
    if (!stored)
        return failure(stored);
    const auto owner = store_->find<store::Athlete>(stored->athlete);
    if (!owner)
        return failure(owner);
    auto row = rowOf(*owner, setup);
    if (!row)
        return failure(row);
    row->id = season;
    return store_->update(*row);
}

Expected<void> Logbook::deleteSeason(const Identifier& season)
{
    return store_->setDeleted<store::Season>(season, true);
}

Expected<SeasonRecord> Logbook::season(const Identifier& id) const
{
    const auto row = store_->find<store::Season>(id);
    if (!row)
        return failure(row);
    return read(*store_, *row);
}

Expected<std::vector<SeasonRecord>> Logbook::seasons(const Identifier& athlete) const
{
    const auto rows = store_->list<store::Season>({.athlete = athlete});
    if (!rows)
        return failure(rows);
    std::vector<SeasonRecord> seasons;
    for (const auto& row : *rows) {
        auto record = read(*store_, row);
        if (!record)
            return failure(record);
        seasons.push_back(std::move(*record));
    }
    return seasons;
}

Expected<SeasonRecord> Logbook::seasonOn(const Identifier& athlete, CivilDate day) const
{
    const auto rows = store_->list<store::Season>({.athlete = athlete});
    if (!rows)
        return failure(rows);
    for (auto row = rows->rbegin(); row != rows->rend(); ++row) // the one begun last, where two overlap
        if (row->start <= day && day <= row->finish)
            return read(*store_, *row);
    return fail(Code::NotFound, "season", "no season holds " + dateText(day) + "; plan one from its main competition");
}

Expected<std::vector<season::LadderState>> Logbook::states(const Identifier& season, CivilDate day) const
{
    const auto walk = LadderWalk::read(*this, season);
    if (!walk)
        return failure(walk);
    return walk->before(day);
}

Expected<season::SeasonPlan> Logbook::plan(const Identifier& season, CivilDate today) const
{
    const auto walk = LadderWalk::read(*this, season);
    if (!walk)
        return failure(walk);
    return season::replanSeason(walk->setup(), walk->before(today), today, walk->data());
}

} // namespace fleetrung::logbook
