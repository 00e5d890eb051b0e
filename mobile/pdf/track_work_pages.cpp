// The report's track log: weeks with their fast metres, and the work that was counted.
#include <algorithm>
#include <map>

#include "engine/report/words.hpp"
#include "mobile/pdf/by_time.hpp"
#include "mobile/pdf/report_pages.hpp"

namespace fleetrung::pdf
{
namespace
{

using Works = std::vector<const report::TrackWork*>;

QString metresText(double metres)
{
    return metres > 0 ? qtText(report::numberText(metres, 0)) : notKnown();
}

QStringList weekRow(const report::SeasonReport& report, const report::TrackWeek& entry)
{
    const auto& week = entry.week;
    const auto flag = track::flagText(week);
    return {QStringLiteral("week %1, %2")
                .arg(report::weekOf(report, std::max(week.monday, report.first)))
                .arg(qtText(report::shortDayText(week.monday))),
            QStringLiteral("%1 of %2").arg(entry.sprintDaysDone).arg(entry.sprintDaysPlanned),
            metresText(week.metres),
            metresText(week.fast90) + (week.estimated ? QStringLiteral(" *") : QString()),
            metresText(week.fast95),
            metresText(week.resisted),
            metresText(week.hill),
            week.contacts > 0 ? QString::number(week.contacts) : notKnown(),
            flag.empty() ? notKnown() : qtText(flag)};
}

void setWeeks(PageFlow& flow, const report::SeasonReport& report)
{
    const auto idle = [](const report::TrackWeek& entry) { return entry.week.runs == 0 && entry.week.contacts == 0; };
    if (std::ranges::all_of(report.trackWeeks, idle))
        return;
    flow.section(QStringLiteral("Track by week"));
    flow.lead(
        QStringLiteral("Fast metres: metres at 90 and 95 % of the best speed of the 12 months before. A week above "
                       "1.3 times the mean of the four before it is said."));
    std::vector<QStringList> rows;
    for (const auto& entry : report.trackWeeks)
        rows.push_back(weekRow(report, entry));
    flow.table({{QStringLiteral("Week"), 1.7},
                {QStringLiteral("Sprint days"), 1.1},
                {QStringLiteral("Metres"), 0.8, true},
                {QStringLiteral("At 90 %"), 0.9, true},
                {QStringLiteral("At 95 %"), 0.95, true},
                {QStringLiteral("Resisted"), 0.9, true},
                {QStringLiteral("Hill"), 0.6, true},
                {QStringLiteral("Contacts"), 1.1, true},
                {QStringLiteral("More than usual"), 2.3}},
               rows);
    if (std::ranges::any_of(report.trackWeeks, [](const auto& entry) { return entry.week.estimated; }))
        flow.quiet(QStringLiteral("* Part of it is estimated: runs without splits, or work counted by its effort."));
}

/// "6 × 30 m, sled 10 kg" or "5 × 40 m, 6 % uphill", with a best time, its timing and wind.
QString workText(const report::TrackWork& work, Units units)
{
    auto text = QStringLiteral("%1 × %2 m").arg(work.repetitions).arg(qtText(report::numberText(work.distanceM, 0)));
    if (work.loadKg)
        text += QStringLiteral(", sled ") + massText(*work.loadKg, units);
    if (work.slopePercent)
        text += QStringLiteral(", slope ") + qtText(report::numberText(*work.slopePercent, 0)) + QStringLiteral(" %");
    if (work.bestTimeS)
        text += QStringLiteral(", best ") + qtText(report::numberText(*work.bestTimeS, 2)) + QStringLiteral(" s ") +
                qtText(work.timing);
    if (work.windMps)
        text += QStringLiteral(", wind ") + qtText(report::signedText(*work.windMps, 1)) + QStringLiteral(" m/s");
    return text.trimmed();
}

/// The different words of some rows, in order.
template <class Word> QString together(const Works& works, Word word)
{
    QStringList words;
    for (const auto* work : works)
        if (const QString one = word(*work); !one.isEmpty() && !words.contains(one))
            words << one;
    return words.isEmpty() ? notKnown() : words.join(QStringLiteral("; "));
}

QStringList kindRow(const QString& when, const std::string& kind, const Works& works, Units units)
{
    const auto effort = [](const report::TrackWork& work) {
        return work.effort ? qtText(report::numberText(*work.effort, 0)) : QString();
    };
    return {when,
            qtText(report::capitalised(kind)),
            together(works, [units](const auto& work) { return workText(work, units); }),
            together(works, effort),
            together(works, [](const auto& work) { return qtText(work.surface); }),
            together(works, [](const auto& work) { return qtText(work.shoes); })};
}

void setWork(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    if (report.trackWork.empty())
        return;
    Works all;
    for (const auto& work : report.trackWork)
        all.push_back(&work);
    std::vector<QStringList> rows;
    for (const auto& [when, group] : byTime(report, all)) {
        std::map<std::string, Works> kinds;
        for (const auto* work : group)
            kinds[work->kind].push_back(work);
        for (const auto& [kind, works] : kinds)
            rows.push_back(kindRow(when, kind, works, units));
    }
    flow.section(QStringLiteral("Work on the track"));
    flow.table({{QStringLiteral("When"), 1.3},
                {QStringLiteral("Kind"), 1},
                {QStringLiteral("Runs"), 4},
                {QStringLiteral("Effort"), 0.8},
                {QStringLiteral("Surface"), 1},
                {QStringLiteral("Shoes"), 1}},
               rows);
}

} // namespace

void setTrackWork(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    setWeeks(flow, report);
    setWork(flow, report, units);
}

} // namespace fleetrung::pdf
