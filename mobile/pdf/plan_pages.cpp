#include <set>

#include "engine/report/words.hpp"
#include "mobile/pdf/report_pages.hpp"

namespace fleetrung::pdf
{
namespace
{

/// Planned against done between two days, up to the day the report knows.
QStringList phaseRow(const report::SeasonReport& report, const report::Phase& phase)
{
    std::set<CivilDate> planned;
    std::set<CivilDate> done;
    int setsPlanned = 0;
    int setsDone = 0;
    for (const auto& line : report.plan) {
        if (line.day < phase.first || line.day > phase.last || line.day > report.upTo)
            continue;
        planned.insert(line.day);
        setsPlanned += line.sets;
        setsDone += line.setsDone;
        if (line.state == report::PlanState::Done || line.state == report::PlanState::Changed)
            done.insert(line.day);
    }
    const auto count = [&](auto number) { return planned.empty() ? notKnown() : QString::number(number); };
    return {qtText(phase.name),
            qtText(report::shortDayText(phase.first)) + QStringLiteral(" – ") +
                qtText(report::shortDayText(phase.last)),
            count(planned.size()),
            count(done.size()),
            count(setsPlanned),
            count(setsDone)};
}

void setLostDays(PageFlow& flow, const report::SeasonReport& report)
{
    if (report.lostDays.empty())
        return;
    flow.subsection(QStringLiteral("Days lost"));
    std::vector<QStringList> rows;
    for (const auto& lost : report.lostDays)
        rows.push_back({qtText(report::dayText(lost.day)), lost.why.empty() ? notKnown() : qtText(lost.why)});
    flow.table({{QStringLiteral("Day"), 1}, {QStringLiteral("Why"), 3}}, rows);
}

void setPain(PageFlow& flow, const report::SeasonReport& report)
{
    std::vector<QStringList> rows;
    for (const auto& entry : report.wellness)
        if (entry.pain && *entry.pain > 0)
            rows.push_back({qtText(report::dayText(entry.day)),
                            qtText(report::numberText(*entry.pain, 0)) + QStringLiteral(" of 10"),
                            entry.painWhere.empty() ? notKnown() : qtText(entry.painWhere), qtText(entry.note)});
    if (rows.empty())
        return;
    flow.subsection(QStringLiteral("Pain noted"));
    flow.table({{QStringLiteral("Day"), 1},
                {QStringLiteral("Pain"), 0.7},
                {QStringLiteral("Where"), 1},
                {QStringLiteral("Note"), 2}},
               rows);
}

} // namespace

void setPlanAgainstDone(PageFlow& flow, const report::SeasonReport& report)
{
    if (report.phases.empty() && report.lostDays.empty())
        return;
    flow.section(QStringLiteral("Planned against done"));
    std::vector<QStringList> rows;
    for (const auto& phase : report.phases)
        rows.push_back(phaseRow(report, phase));
    if (!rows.empty())
        flow.table({{QStringLiteral("Phase"), 1.8},
                    {QStringLiteral("From – to"), 1.6},
                    {QStringLiteral("Days planned"), 1.1, true},
                    {QStringLiteral("Days done"), 1, true},
                    {QStringLiteral("Sets planned"), 1.1, true},
                    {QStringLiteral("Sets done"), 1, true}},
                   rows);
    setLostDays(flow, report);
    setPain(flow, report);
}

} // namespace fleetrung::pdf
