#include "engine/report/load_velocity.hpp"

#include <map>

namespace fleetrung::report
{

std::vector<LoadVelocity> loadVelocities(const Ladder& ladder)
{
    if (ladder.taken.empty() || ladder.evidenceName != Ladder{}.evidenceName)
        return {};
    const auto rung = ladder.taken.back().rung;
    if (rung >= ladder.rungs.size())
        return {};
    const auto empty = [rung](Side side) {
        return LoadVelocity{.rung = rung, .side = side, .sessions = 0, .days = {}, .points = {}, .curve = {}};
    };
    std::map<Side, LoadVelocity> sides;
    std::string lift = ladder.rungs[rung].key;
    for (const auto& loads : ladder.loads) {
        if (loads.rung != rung || loads.points.empty())
            continue;
        auto& side = sides.try_emplace(loads.side, empty(loads.side)).first->second;
        ++side.sessions;
        lift = loads.lift;
        side.points.insert(side.points.end(), loads.points.begin(), loads.points.end());
        side.days.insert(side.days.end(), loads.points.size(), loads.day);
    }
    if (sides.empty())
        sides.try_emplace(Side::Both, empty(Side::Both));
    std::vector<LoadVelocity> all;
    for (auto& [side, found] : sides) {
        found.curve = strength::loadVelocityCurve(found.points, lift);
        all.push_back(std::move(found));
    }
    return all;
}

} // namespace fleetrung::report
