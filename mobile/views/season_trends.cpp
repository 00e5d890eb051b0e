#include "mobile/views/season_trends.hpp"

#include <algorithm>

#include "engine/report/did_it_work.hpp"
#include "mobile/views/season_pictures.hpp"

namespace fleetrung::views
{
namespace
{

SetThen setDone(const report::Set& set)
{
    SetThen done{.kind = set.kind,
                 .side = static_cast<plot::Side>(set.side),
                 .loadKg = set.loadKg,
                 .repetitions = set.repetitionsDone,
                 .fastest = {},
                 .velocityLoss = set.velocityLoss,
                 .effort = set.effort,
                 .note = set.note};
    for (const auto& repetition : set.repetitions)
        if (repetition.accepted && repetition.meanVelocity.value)
            done.fastest = std::max(done.fastest.value_or(0), *repetition.meanVelocity.value);
    return done;
}

void putSession(LiftPoint& point, const Identifier& id, const report::Ladder& ladder,
                const report::SeasonReport& report)
{
    const auto session = std::ranges::find(report.sessions, id, &report::Session::id);
    if (session == report.sessions.end())
        return;
    point.note = session->note;
    for (const auto& set : session->sets)
        if (set.ladder == ladder.name)
            point.sets.push_back(setDone(set));
}

void putJumps(LiftPoint& point, const report::SeasonReport& report)
{
    for (const auto& jump : report.jumps)
        if (jump.day == point.day && jump.kind == "drop jump")
            point.jumps.push_back(
                {jump.boxHeightM, jump.contactTime.value, jump.flightTime.value, jump.reactiveStrength.value});
}

LadderTrend ladderTrend(const report::Ladder& ladder, const report::SeasonReport& report)
{
    LadderTrend trend{.name = ladder.name, .quantity = ladder.evidenceName, .points = {}};
    for (const auto& evidence : ladder.evidence) {
        if (!evidence.time.value || evidence.rung >= ladder.rungs.size())
            continue;
        const auto& rung = ladder.rungs[evidence.rung];
        LiftPoint point;
        point.day = evidence.day;
        point.rung = shortName(rung.name, ladder.name);
        if (rung.targetBand)
            point.targetBand = plot::Span{rung.targetBand->from, rung.targetBand->to};
        point.seconds = *evidence.time.value;
        point.uncertainty = evidence.time.uncertainty;
        point.side = static_cast<plot::Side>(evidence.side);
        point.loadKg = evidence.loadKg;
        putSession(point, evidence.session, ladder, report);
        if (ladder.evidenceName != report::Ladder{}.evidenceName)
            putJumps(point, report);
        trend.points.push_back(std::move(point));
    }
    return trend;
}

RunPoint runPoint(const report::Sprint& sprint)
{
    return {.day = sprint.day,
            .seconds = sprint.timeS,
            .windMps = sprint.windMps,
            .timing = sprint.timing,
            .surface = sprint.surface,
            .shoes = sprint.shoes,
            .runIn = sprint.runInM,
            .competition = sprint.competition,
            .note = sprint.note};
}

} // namespace

SeasonTrends seasonTrends(const report::SeasonReport& report, CivilDate today)
{
    SeasonTrends trends{
        .name = report.seasonName, .span = spanOf(report, today), .ladders = {}, .tests = {}, .loads = {}};
    for (const auto& ladder : report.ladders) {
        trends.ladders.push_back(ladderTrend(ladder, report));
        if (auto sides = report::loadVelocities(ladder); !sides.empty()) {
            const auto& rung = ladder.rungs[sides.front().rung].name;
            trends.loads.push_back({ladder.name, rung, std::move(sides)});
        }
    }
    for (const auto& sprint : report.sprints) {
        auto test = std::ranges::find(trends.tests, sprint.test, &TestTrend::name);
        if (test == trends.tests.end())
            test = trends.tests.insert(test, {.name = sprint.test, .points = {}});
        test->points.push_back(runPoint(sprint));
    }
    return trends;
}

Expected<TrendsData> trendsPage(const logbook::Logbook& logbook, const logbook::SeasonRecord& season,
                                const report::SeasonReport& report, CivilDate today)
{
    const auto seasons = logbook.seasons(season.row.athlete);
    if (!seasons)
        return tl::unexpected(seasons.error());
    TrendsData data;
    data.season = seasonTrends(report, today);
    data.hasEarlier =
        std::ranges::any_of(*seasons, [&](const auto& other) { return other.row.finish < season.row.start; });
    data.didItWork = report::didItWork(report);
    return data;
}

Expected<std::vector<SeasonTrends>> earlierTrends(const logbook::Logbook& logbook, const Identifier& athlete,
                                                  CivilDate today)
{
    const auto current = logbook.seasonOn(athlete, today);
    const auto seasons = logbook.seasons(athlete);
    if (!current || !seasons)
        return tl::unexpected(!current ? current.error() : seasons.error());
    std::vector<SeasonTrends> earlier;
    for (const auto& season : *seasons) {
        if (season.row.finish >= current->row.start)
            continue;
        const auto report = logbook.seasonReport(athlete, season.row.id, today);
        if (!report)
            return tl::unexpected(report.error());
        earlier.push_back(seasonTrends(*report, today));
    }
    std::ranges::sort(earlier, {}, [](const SeasonTrends& season) { return season.span.first; });
    return earlier;
}

} // namespace fleetrung::views
