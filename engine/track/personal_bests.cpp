#include "engine/track/personal_bests.hpp"

#include <algorithm>

#include "engine/track/best_speed.hpp"

namespace fleetrung::track
{
namespace
{

/// Whether the first is the better time to be a best.
bool beats(const TestRun& one, const TestRun& other)
{
    return one.byHand != other.byHand ? other.byHand : one.time < other.time;
}

} // namespace

bool TestRun::windAided() const
{
    return competition && wind && *wind > strongestWind;
}

std::vector<PersonalBest> personalBests(std::span<const TestRun> runs)
{
    std::vector<PersonalBest> bests;
    for (std::size_t i = runs.size(); i-- > 0;) {
        auto known = std::ranges::find(bests, runs[i].test, &PersonalBest::test);
        if (known == bests.end())
            known = bests.insert(bests.end(), {.test = runs[i].test, .runs = 0, .best = {}, .windAided = {}});
        ++known->runs;
        auto& place = runs[i].windAided() ? known->windAided : known->best;
        if (!place || !beats(runs[*place], runs[i])) // from the last to the first: an earlier equal one takes its place
            place = i;
    }
    for (auto& best : bests)
        if (best.best && best.windAided && !beats(runs[*best.windAided], runs[*best.best]))
            best.windAided.reset();
    return bests;
}

} // namespace fleetrung::track
