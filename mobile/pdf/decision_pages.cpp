#include <map>

#include "engine/report/words.hpp"
#include "mobile/pdf/report_pages.hpp"

namespace fleetrung::pdf
{
namespace
{

/// As the rules print their numbers.
int decimalsOf(const std::string& unit)
{
    if (unit == "m/s" || unit == "s")
        return 3;
    return unit == "kg" || unit == "cm" || unit == "h" ? 1 : 0;
}

QString valueText(const report::Evidence& number, Units units)
{
    if (number.unit == "kg" && units != Units::Metric)
        return massText(number.value, units);
    const int decimals = decimalsOf(number.unit);
    auto text = qtText(report::numberText(number.value, decimals));
    if (number.uncertainty && *number.uncertainty > 0)
        text += QStringLiteral(" ± ") + qtText(report::numberText(*number.uncertainty, decimals));
    const bool isCount = number.unit.empty() || number.name.starts_with(number.unit); // "sessions on this rung 5"
    return isCount ? text : text + QLatin1Char(' ') + qtText(number.unit);
}

/// "gain in time to peak velocity 61 ± 9 ms (at least 38: met)".
QString evidenceText(const report::Evidence& number, Units units)
{
    QString text = qtText(number.name) + QLatin1Char(' ') + valueText(number, units);
    if (number.allowed.empty())
        return text;
    text += QStringLiteral(" (") + qtText(number.allowed);
    if (number.met)
        text += *number.met ? QStringLiteral(": met") : QStringLiteral(": not met");
    return text + QLatin1Char(')');
}

QString reasonText(const report::Decision& decision, Units units)
{
    QString text = qtText(decision.reason);
    QStringList numbers;
    for (const auto& number : decision.evidence)
        numbers << evidenceText(number, units);
    if (!numbers.isEmpty())
        text += QStringLiteral(" Evidence: ") + numbers.join(QStringLiteral("; ")) + QLatin1Char('.');
    return text;
}

QString answerText(const report::Decision& decision)
{
    switch (decision.answer) {
    case report::Answer::Open:
        return QStringLiteral("open");
    case report::Answer::Followed:
        return QStringLiteral("followed");
    case report::Answer::Changed:
        break;
    }
    QString text = decision.changedTo.empty() ? QStringLiteral("changed") : qtText(decision.changedTo);
    if (!decision.why.empty())
        text += QStringLiteral(": ") + qtText(decision.why);
    return text;
}

QString whatText(const report::Decision& decision)
{
    const QString text = qtText(report::capitalised(decision.kind));
    if (decision.from.empty())
        return text;
    if (decision.to.empty() || decision.from == decision.to)
        return text + QStringLiteral(" at ") + qtText(report::inSentence(decision.from));
    return text + QStringLiteral(", ") + qtText(report::inSentence(decision.from)) + QStringLiteral(" to ") +
           qtText(report::inSentence(decision.to));
}

/// Decisions that stand in one line: a single one, or holds (or rests) in a row on one rung by one rule that were
/// answered alike.
struct Run {
    const report::Decision* first;
    const report::Decision* last;
    int count = 1;
};

bool continues(const Run& run, const report::Decision& decision)
{
    const bool isQuiet = decision.kind == "hold" || decision.kind == "rest";
    return isQuiet && run.last->kind == decision.kind && run.last->rule == decision.rule &&
           run.last->from == decision.from && run.last->to == decision.to && run.last->answer == decision.answer &&
           decision.answer != report::Answer::Changed;
}

/// In order of first days; a run belongs to its ladder, whatever other ladders did meanwhile.
std::vector<Run> runsOf(const std::vector<report::Decision>& decisions)
{
    std::vector<Run> runs;
    std::map<std::string, std::size_t> lastOfLadder;
    for (const auto& decision : decisions) {
        const auto known = lastOfLadder.find(decision.ladder);
        if (known != lastOfLadder.end() && continues(runs[known->second], decision)) {
            runs[known->second].last = &decision;
            ++runs[known->second].count;
            continue;
        }
        lastOfLadder[decision.ladder] = runs.size();
        runs.push_back({&decision, &decision});
    }
    return runs;
}

QString daysText(const Run& run)
{
    const auto first = qtText(report::shortDayText(run.first->day));
    return run.first->day == run.last->day
               ? first
               : first + QStringLiteral(" – ") + qtText(report::shortDayText(run.last->day));
}

} // namespace

void setDecisions(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    if (report.decisions.empty())
        return;
    flow.section(QStringLiteral("Decisions and their reasons"));
    const auto runs = runsOf(report.decisions);
    if (runs.size() < report.decisions.size())
        flow.lead(QStringLiteral(
            "Holds and rests in a row stand in one line, with the reason and the evidence of the last of them. "
            "Every decision stands in the tables."));
    std::vector<QStringList> rows;
    for (const auto& run : runs) {
        auto what = whatText(*run.last);
        if (run.count > 1)
            what += QStringLiteral(" (%1 times)").arg(run.count);
        rows.push_back(
            {daysText(run), qtText(run.last->ladder), what, reasonText(*run.last, units), answerText(*run.last)});
    }
    flow.table({{QStringLiteral("Day"), 0.95},
                {QStringLiteral("Ladder"), 0.85},
                {QStringLiteral("Decision"), 1.8},
                {QStringLiteral("Reason and evidence"), 4},
                {QStringLiteral("What the athlete did"), 1.8}},
               rows);
}

} // namespace fleetrung::pdf
