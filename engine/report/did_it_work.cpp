#include "engine/report/did_it_work.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "engine/report/columns.hpp"
#include "engine/report/words.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::report
{
namespace
{

constexpr double mostWindMps = 1; // season rules: times are comparable within 1 m/s of wind

void addBar(std::vector<transfer::BarResult>& into, const Ladder& ladder)
{
    struct Day {
        std::vector<double> times;
        std::optional<double> loadKg;
    };
    std::map<std::tuple<CivilDate, std::size_t, Side>, Day> days;
    for (const auto& point : ladder.evidence)
        if (point.time.value && point.rung < ladder.rungs.size()) {
            auto& day = days[{point.day, point.rung, point.side}];
            day.times.push_back(*point.time.value);
            day.loadKg = point.loadKg;
        }
    for (const auto& [key, day] : days) {
        const auto& [date, rung, side] = key;
        into.push_back({date, ladder.key, ladder.rungs[rung].key + std::string(sideWords(side)),
                        statistics::median(day.times), day.loadKg, ladder.typicalErrorShare});
    }
}

std::string conditionsOf(const Sprint& sprint)
{
    std::string text = sprint.test;
    if (sprint.runInM)
        text += ", run-in " + shortestText(*sprint.runInM) + " m";
    for (const auto& part : {sprint.start, sprint.timing, sprint.surface, sprint.shoes})
        text += part.empty() ? "" : ", " + part;
    return text + (sprint.competition ? ", race" : "");
}

std::vector<transfer::SprintResult> sprintsOf(const SeasonReport& report)
{
    std::map<std::pair<CivilDate, std::string>, double> best;
    for (const auto& sprint : report.sprints) {
        if (std::abs(sprint.windMps.value_or(0)) > mostWindMps)
            continue;
        const auto [found, first] = best.try_emplace({sprint.day, conditionsOf(sprint)}, sprint.timeS);
        found->second = std::min(found->second, sprint.timeS);
    }
    std::vector<transfer::SprintResult> results;
    for (const auto& [key, seconds] : best)
        results.push_back({key.first, key.second, seconds});
    return results;
}

struct LagRow {
    const SeasonReport& report;
    transfer::Transfer transfer;
    transfer::Lag lag;
};

std::string verdictCell(transfer::Verdict verdict)
{
    if (verdict == transfer::Verdict::NotEnough)
        return "not enough";
    return verdict == transfer::Verdict::NotShown ? "not shown" : "moved together";
}

std::vector<LagRow> rowsOf(std::span<const SeasonReport> reports)
{
    std::vector<LagRow> rows;
    for (const auto& report : reports) {
        auto found = didItWork(report);
        if (!found) { // no number, but the reason
            transfer::Transfer none;
            none.sentence = "Not judged: " + describe(found.error());
            none.lags.resize(1);
            found = std::move(none);
        }
        for (const auto& lag : found->lags)
            rows.push_back({report, *found, lag});
    }
    return rows;
}

} // namespace

Expected<transfer::Transfer> didItWork(const SeasonReport& report)
{
    std::vector<transfer::BarResult> bar;
    for (const auto& ladder : report.ladders)
        if (ladder.evidenceName == Ladder{}.evidenceName)
            addBar(bar, ladder);
    return transfer::didItWork(bar, sprintsOf(report));
}

DescribedTable transferTable(std::span<const SeasonReport> reports)
{
    using Row = LagRow;
    return describe<Row>(
        "did_it_work.csv",
        {{"season_id", "", "season, as in seasons.csv",
          [](const Row& row) { return identifierText(row.report.season); }},
         {"athlete_id", "", "athlete, as in athletes.csv",
          [](const Row& row) { return identifierText(row.report.athlete.id); }},
         {"lag_weeks", "1", "the sprint is that many weeks later than the bar",
          [](const Row& row) { return integerText(row.lag.weeks); }},
         {"pairs", "1", "weeks with both: the bar within a rung, the sprint beside the season's trend",
          [](const Row& row) { return integerText(row.lag.pairs); }},
         {"rungs", "1", "rungs on which these bar results were made",
          [](const Row& row) { return integerText(row.lag.rungs); }},
         {"rank_correlation", "1", "Spearman; above zero: quicker bar, quicker sprint",
          [](const Row& row) { return numberCell(row.lag.correlation); }},
         {"rank_correlation_low", "1", "lower end of its 95 % bootstrap interval, weeks taken as independent",
          [](const Row& row) { return numberCell(row.lag.low); }},
         {"rank_correlation_high", "1", "upper end of it", [](const Row& row) { return numberCell(row.lag.high); }},
         {"strongest", "", "yes for the lag with the strongest relation above zero",
          [](const Row& row) { return yesNo(row.transfer.strongest == row.lag.weeks); }},
         {"p_value", "1", "of the largest of all lags, by turning the weeks; the same in all rows of a season",
          [](const Row& row) { return numberCell(row.transfer.chance); }},
         {"verdict", "", "not enough, not shown or moved together",
          [](const Row& row) { return verdictCell(row.transfer.verdict); }},
         {"result", "", "the result in plain words", [](const Row& row) { return guardedText(row.transfer.sentence); }},
         {"premise", "", "what holds whatever the result is",
          [](const Row& row) { return guardedText(row.transfer.premise); }}},
        rowsOf(reports));
}

} // namespace fleetrung::report
