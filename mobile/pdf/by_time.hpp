// Rows of a table gathered by day, or by week where the days are many. Internal to this folder.
#pragma once

#include <map>
#include <vector>

#include "engine/report/summary.hpp"
#include "engine/report/words.hpp"
#include "mobile/pdf/report_pages.hpp"

namespace fleetrung::pdf
{

constexpr std::size_t mostDays = 16; // more are gathered by week

template <class Thing> struct TimeGroup {
    QString when; ///< "23 May 2026", or "week 25"
    std::vector<const Thing*> things;
};

template <class Thing>
std::vector<TimeGroup<Thing>> byTime(const report::SeasonReport& report, const std::vector<const Thing*>& things)
{
    std::map<CivilDate, std::vector<const Thing*>> days;
    for (const auto* thing : things)
        days[thing->day].push_back(thing);
    std::vector<TimeGroup<Thing>> groups;
    int lastWeek = 0;
    for (const auto& [day, ofDay] : days) {
        const int week = report::weekOf(report, day);
        if (days.size() <= mostDays)
            groups.push_back({qtText(report::dayText(day)), {}});
        else if (groups.empty() || week != lastWeek)
            groups.push_back({QStringLiteral("week %1").arg(week), {}});
        lastWeek = week;
        auto& into = groups.back().things;
        into.insert(into.end(), ofDay.begin(), ofDay.end());
    }
    return groups;
}

} // namespace fleetrung::pdf
