#include <QRegularExpression>
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

/// Limits come from the rules with a hyphen for a minus.
QString allowedText(const std::string& allowed)
{
    static const QRegularExpression minus(QStringLiteral("(^| )-(?=\\d)"));
    return qtText(allowed).replace(minus, QStringLiteral("\\1\u2212"));
}

/// "gain in time to peak velocity 61 ± 9 ms (at least 38: met)".
QString evidenceText(const report::Evidence& number, Units units)
{
    QString text = qtText(number.name) + QLatin1Char(' ') + valueText(number, units);
    if (number.allowed.empty())
        return text;
    text += QStringLiteral(" (") + allowedText(number.allowed);
    if (number.met)
        text += *number.met ? QStringLiteral(": met") : QStringLiteral(": not met");
    return text + QLatin1Char(')');
}

/// What a decision hung on: of a hold what was not met, of any other all that was asked. The rest stands in the tables.
bool isTold(const report::Decision& decision, const report::Evidence& number)
{
    return number.met && (decision.kind != "hold" || !*number.met);
}

QString reasonText(const report::Decision& decision, Units units)
{
    QString text = qtText(decision.reason);
    QStringList numbers;
    for (const auto& number : decision.evidence)
        if (isTold(decision, number))
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

/// Decisions that stand in one line: a single one, or holds (or rests by one rule) in a row on one rung. One that the
/// athlete changed stands alone.
struct Run {
    const report::Decision* first;
    const report::Decision* last;
    int followed = 0;
    int count = 0;

    void add(const report::Decision& decision)
    {
        last = &decision;
        followed += decision.answer == report::Answer::Followed ? 1 : 0;
        ++count;
    }
};

bool continues(const Run& run, const report::Decision& decision)
{
    const auto& last = *run.last;
    const bool isQuiet = decision.kind == "hold" || (decision.kind == "rest" && decision.rule == last.rule);
    return isQuiet && last.kind == decision.kind && last.from == decision.from && last.to == decision.to &&
           last.answer != report::Answer::Changed && decision.answer != report::Answer::Changed;
}

/// In order of first days; a run belongs to its ladder, whatever other ladders did meanwhile.
std::vector<Run> runsOf(const std::vector<report::Decision>& decisions)
{
    std::vector<Run> runs;
    std::map<std::string, std::size_t> lastOfLadder;
    for (const auto& decision : decisions) {
        const auto known = lastOfLadder.find(decision.ladder);
        if (known != lastOfLadder.end() && continues(runs[known->second], decision)) {
            runs[known->second].add(decision);
            continue;
        }
        lastOfLadder[decision.ladder] = runs.size();
        runs.push_back({&decision, &decision});
        runs.back().add(decision);
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

QString answersText(const Run& run)
{
    if (run.count == 1)
        return answerText(*run.last);
    if (run.followed == 0 || run.followed == run.count)
        return run.followed == 0 ? QStringLiteral("open") : QStringLiteral("followed");
    return QStringLiteral("%1 followed, %2 open").arg(run.followed).arg(run.count - run.followed);
}

} // namespace

void setDecisions(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    if (report.decisions.empty())
        return;
    flow.section(QStringLiteral("Decisions and their reasons"));
    const auto runs = runsOf(report.decisions);
    flow.lead(QStringLiteral(
        "Holds and rests in a row stand in one line, with the reason of the last; of a hold only what was "
        "not met is shown. Every decision with all its numbers stands in the tables."));
    std::vector<QStringList> rows;
    for (const auto& run : runs) {
        auto what = whatText(*run.last);
        if (run.count > 1)
            what += QStringLiteral(" (%1 times)").arg(run.count);
        rows.push_back({daysText(run), qtText(run.last->ladder), what, reasonText(*run.last, units), answersText(run)});
    }
    flow.table({{QStringLiteral("Day"), 0.95},
                {QStringLiteral("Ladder"), 0.75},
                {QStringLiteral("Decision"), 1.75},
                {QStringLiteral("Reason and evidence"), 4.9},
                {QStringLiteral("Answer"), 1.35}},
               rows);
}

} // namespace fleetrung::pdf
