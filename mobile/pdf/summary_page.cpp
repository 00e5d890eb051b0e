#include <algorithm>
#include <set>

#include "engine/report/summary.hpp"
#include "engine/report/words.hpp"
#include "mobile/pdf/report_pages.hpp"

namespace fleetrung::pdf
{
namespace
{

using report::numberText;

QString sublineOf(const report::SeasonReport& report, Units units)
{
    QStringList parts{qtText(report.seasonName)};
    if (!report.athlete.event.empty())
        parts << qtText(report.athlete.event);
    if (report.athlete.born) {
        const std::chrono::year_month_day born(*report.athlete.born);
        parts << QStringLiteral("born %1").arg(static_cast<int>(born.year()));
    }
    if (report.athlete.bodyMassKg)
        parts << massText(*report.athlete.bodyMassKg, units);
    parts << QStringLiteral("up to ") + qtText(report::dayText(std::min(report.upTo, report.last)));
    return parts.join(QStringLiteral(" · "));
}

std::vector<Figure> figuresOf(const report::SeasonReport& report)
{
    std::set<CivilDate> planned;
    std::set<CivilDate> done;
    for (const auto& line : report.plan) {
        if (line.day > report.upTo)
            continue;
        planned.insert(line.day);
        if (line.state == report::PlanState::Done || line.state == report::PlanState::Changed)
            done.insert(line.day);
    }
    int repetitions = 0;
    for (const auto& session : report.sessions)
        for (const auto& set : session.sets)
            repetitions += set.repetitionsDone;

    std::vector<Figure> figures;
    figures.push_back({QStringLiteral("%1 of %2")
                           .arg(report::weekOf(report, std::min(report.upTo, report.last)))
                           .arg(report::weekOf(report, report.last)),
                       QStringLiteral("weeks of the season")});
    if (!planned.empty())
        figures.push_back({QStringLiteral("%1 of %2").arg(done.size()).arg(planned.size()),
                           QStringLiteral("planned training days done")});
    figures.push_back({QString::number(report.sessions.size()), QStringLiteral("sessions in the log")});
    figures.push_back({QString::number(repetitions), QStringLiteral("repetitions in the log")});
    figures.push_back({QString::number(report.lostDays.size()), QStringLiteral("days lost")});
    return figures;
}

void setCompetitions(PageFlow& flow, const report::SeasonReport& report)
{
    if (report.competitions.empty())
        return;
    flow.section(QStringLiteral("Competitions"));
    std::vector<QStringList> rows;
    for (const auto& race : report.competitions)
        rows.push_back({qtText(report::dayText(race.day)), qtText(race.name),
                        qtText(race.grade) + (race.main ? QStringLiteral(", main") : QString()),
                        race.result.empty() ? (race.day > report.upTo ? QStringLiteral("ahead") : notKnown())
                                            : qtText(race.result)});
    flow.table({{QStringLiteral("Day"), 1.4},
                {QStringLiteral("Competition"), 3},
                {QStringLiteral("Grade"), 1},
                {QStringLiteral("Result"), 2}},
               rows);
}

} // namespace

QString massText(double kilograms, Units units)
{
    const bool metric = units == Units::Metric;
    const double value = metric ? kilograms : kilograms / 0.45359237; // exact by definition of the pound
    auto text = numberText(value, 1);
    if (text.ends_with(".0"))
        text.resize(text.size() - 2);
    return qtText(text) + (metric ? QStringLiteral(" kg") : QStringLiteral(" lb"));
}

QString heightText(double metres, Units units)
{
    const bool metric = units == Units::Metric;
    auto text = numberText(metric ? metres * 100 : metres / 0.0254, 1); // exact by definition of the inch
    if (text.ends_with(".0"))
        text.resize(text.size() - 2);
    return qtText(text) + (metric ? QStringLiteral(" cm") : QStringLiteral(" in"));
}

QString notKnown()
{
    return QStringLiteral("–");
}

void setSummary(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    flow.title(QStringLiteral("SEASON REPORT"), qtText(report.athlete.name), sublineOf(report, units));
    flow.figures(figuresOf(report));

    flow.section(QStringLiteral("What happened"));
    std::vector<QString> sentences;
    for (const auto& sentence : report::whatHappened(report))
        sentences.push_back(qtText(sentence));
    flow.points(sentences);

    setCompetitions(flow, report);

    std::vector<QString> cautions;
    for (const auto& caution : report.cautions)
        cautions.push_back(qtText(caution));
    for (const auto caution : report::standingCautions())
        cautions.push_back(qtText(caution));
    flow.box(QStringLiteral("Cautions"), cautions);
}

} // namespace fleetrung::pdf
