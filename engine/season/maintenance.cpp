// Heavy sets of a longer rung that was left, so that its strength stays.
#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/season/session_parts.hpp"
#include "engine/season/stair.hpp"

namespace fleetrung::season
{
namespace
{

constexpr int heavyRepetitions = 3; // common practice, no source

/// The last time the rung, or a longer one of the ladder, was lifted in full.
struct Exposure {
    CivilDate day;
    double loadKg = 0; ///< on the rung itself
};

std::optional<Exposure> lastExposure(const LiftDay& lift, int place)
{
    std::optional<Exposure> last;
    for (const auto& done : lift.log.work) {
        const auto at = lift.ladder.indexOf(done.rung);
        if (done.ladder != lift.ladder.key || !at || *at > place || done.day >= lift.day || done.eased)
            continue;
        if (*at == place && done.loadKg > 0)
            last = Exposure{done.day, done.loadKg};
        else if (last)
            last->day = std::max(last->day, done.day);
    }
    return last;
}

bool nearMainCompetition(const LiftDay& lift)
{
    const auto& competitions = lift.plan.setup.competitions;
    return std::any_of(competitions.begin(), competitions.end(), [&](const Competition& competition) {
        const int away = daysBetween(lift.day, competition.date);
        return competition.main && away >= 0 && away < static_cast<int>(lift.data.rules.maintenanceClearDays);
    });
}

/// The longest usable rung above today's that the phase still allows.
const Rung* longestAllowed(const LiftDay& lift)
{
    const auto usable = usableRungs(lift.ladder, lift.plan.setup, lift.data.rules);
    for (const auto* rung : usable.rungs) {
        if (rung->key == lift.rung.key)
            return nullptr;
        if (rung->latest >= lift.phase.kind && rung->probeShare > 0 && !rung->climbs)
            return rung;
    }
    return nullptr;
}

} // namespace

std::optional<MaintenanceSets> maintenanceFor(const LiftDay& lift)
{
    const auto& rules = lift.data.rules;
    const bool eased = lift.decision != nullptr && (lift.decision->loadFactor < 1 || lift.decision->setFactor < 1);
    const auto* rung = lift.ladder.heavy && !eased ? longestAllowed(lift) : nullptr;
    const auto last = rung == nullptr ? std::nullopt : lastExposure(lift, *lift.ladder.indexOf(rung->key));
    if (!last || nearMainCompetition(lift))
        return std::nullopt;
    const bool lost = lift.decision != nullptr && lift.decision->strengthLost;
    const bool halved = lift.decision != nullptr && lift.decision->speedNotFollowing;
    const int ago = daysBetween(last->day, lift.day);
    if (ago < static_cast<int>(lost ? rules.maintenanceLostDays : rules.maintenanceDays))
        return std::nullopt;
    MaintenanceSets sets;
    sets.rung = rung->key;
    sets.sets.assign(halved ? 1 : 2, PlannedSet{std::min(heavyRepetitions, rung->repetitions), toPlates(last->loadKg)});
    sets.reason = rungName(*rung, lift.plan.setup) + " was last lifted " + integerText(ago) + " days ago" +
                  (ago > static_cast<int>(rules.maintenanceLatestDays) ? ", longer than it should be" : "") +
                  (lost ? " and strength is down: " : ": ") + (halved ? "one heavy set" : "two heavy sets") +
                  " keep its strength" + (halved ? ", halved because strength is up and speed is not." : ".");
    return sets;
}

} // namespace fleetrung::season
