#include "engine/track/weeks.hpp"

#include <algorithm>
#include <map>

#include "engine/base/numbers.hpp"

namespace fleetrung::track
{
namespace
{

constexpr std::chrono::days aWeek{7};

CivilDate mondayOf(CivilDate day)
{
    return day - std::chrono::days{isoWeekday(day) - 1};
}

void addFast(Week& week, const FastMetres& fast)
{
    week.fast90 += fast.at90;
    week.fast95 += fast.at95;
    week.estimated = week.estimated || (fast.basis == Basis::Estimated && fast.at90 > 0);
}

void addWork(Week& week, const Work& work)
{
    week.runs += work.repetitions;
    week.metres += work.metres();
    week.resisted += work.kind == WorkKind::Resisted ? work.metres() : 0;
    week.hill += work.kind == WorkKind::Hill ? work.metres() : 0;
}

/// The days are many and the best speed changes seldom, but it is asked for once a day only.
class BestOfDay
{
public:
    explicit BestOfDay(std::span<const KnownRun> runs) : runs_(runs) {}

    const std::optional<TopSpeed>& on(CivilDate day)
    {
        const auto [place, isNew] = known_.try_emplace(day);
        if (isNew)
            place->second = bestSpeed(runs_, day);
        return place->second;
    }

private:
    std::span<const KnownRun> runs_;
    std::map<CivilDate, std::optional<TopSpeed>> known_;
};

double meanBefore(const std::map<CivilDate, Week>& byWeek, CivilDate monday, double Week::*value)
{
    double sum = 0;
    for (int back = 1; back <= weeksBefore; ++back)
        if (const auto found = byWeek.find(monday - back * aWeek); found != byWeek.end())
            sum += found->second.*value;
    return sum / weeksBefore;
}

void compare(Week& week, const std::map<CivilDate, Week>& byWeek)
{
    if (byWeek.empty() || byWeek.begin()->first > week.monday - weeksBefore * aWeek)
        return;
    week.usualMetres = meanBefore(byWeek, week.monday, &Week::metres);
    week.usualFastMetres = meanBefore(byWeek, week.monday, &Week::fast90);
    week.muchMore = week.metres >= leastMetres && week.metres > weekLimit * *week.usualMetres;
    week.muchFaster = week.fast90 >= leastFastMetres && week.fast90 > weekLimit * *week.usualFastMetres;
}

std::string moreText(double value, double usual, const std::string& what)
{
    if (usual <= 0)
        return what + " after four weeks without";
    return fixedText(100 * (value / usual - 1), 0) + " % more " + what + " than the mean of the four weeks before";
}

} // namespace

std::vector<Week> weeks(std::span<const KnownRun> runs, std::span<const Work> work, std::span<const Contacts> contacts,
                        CivilDate from, CivilDate to)
{
    std::map<CivilDate, Week> byWeek;
    BestOfDay best(runs);
    for (const auto& known : runs) {
        if (known.run.day > to)
            continue;
        auto& week = byWeek[mondayOf(known.run.day)];
        ++week.runs;
        week.metres += known.run.distance + (known.run.flying ? known.run.runIn : 0);
        addFast(week, fastMetres(known, best.on(known.run.day)));
    }
    for (const auto& one : work) {
        if (one.day > to)
            continue;
        auto& week = byWeek[mondayOf(one.day)];
        addWork(week, one);
        addFast(week, fastMetres(one, best.on(one.day)));
    }
    for (const auto& [day, count] : contacts)
        if (day <= to)
            byWeek[mondayOf(day)].contacts += count;

    std::vector<Week> result;
    for (auto monday = mondayOf(from); monday <= to; monday += aWeek) {
        const auto found = byWeek.find(monday);
        auto week = found == byWeek.end() ? Week{} : found->second;
        week.monday = monday;
        compare(week, byWeek);
        result.push_back(week);
    }
    return result;
}

std::string flagText(const Week& week)
{
    if (week.muchFaster)
        return moreText(week.fast90, *week.usualFastMetres, "fast metres");
    return week.muchMore ? moreText(week.metres, *week.usualMetres, "metres") : std::string();
}

} // namespace fleetrung::track
