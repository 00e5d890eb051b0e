#include "mobile/views/trend_points.hpp"

#include <algorithm>

namespace fleetrung::views
{
namespace
{

template <class Trend> void addTo(std::vector<Trend>& all, const std::vector<Trend>& more)
{
    for (const auto& trend : more) {
        const auto known = std::ranges::find(all, trend.name, &Trend::name);
        if (known == all.end())
            all.push_back(trend);
        else
            known->points.insert(known->points.end(), trend.points.begin(), trend.points.end());
    }
}

} // namespace

SeasonTrends together(const std::vector<const SeasonTrends*>& seasons)
{
    if (seasons.size() == 1)
        return *seasons.front();
    SeasonTrends all;
    for (const auto* season : seasons) {
        all.name = season->name;
        all.loads = season->loads; // those of the last
        addTo(all.ladders, season->ladders);
        addTo(all.tests, season->tests);
        all.span.first = season == seasons.front() ? season->span.first : all.span.first;
        all.span.last = season->span.last;
        all.span.today = season->span.today;
        all.span.phases.push_back({season->name, season->span.first, season->span.last});
        all.span.races.insert(all.span.races.end(), season->span.races.begin(), season->span.races.end());
    }
    return all;
}

} // namespace fleetrung::views
