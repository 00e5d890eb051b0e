#include "engine/report/words.hpp"
#include "mobile/pdf/report_pages.hpp"

namespace fleetrung::pdf
{
namespace
{

int decimalsOf(const std::string& unit)
{
    if (unit == "m/s" || unit == "s")
        return unit == "s" ? 3 : 2;
    return unit == "kg" ? 1 : 0;
}

QString valueText(const report::Evidence& number, Units units)
{
    if (number.unit == "kg" && units != Units::Metric)
        return massText(number.value, units);
    const int decimals = decimalsOf(number.unit);
    auto text = qtText(report::numberText(number.value, decimals));
    if (number.uncertainty && *number.uncertainty > 0)
        text += QStringLiteral(" ± ") + qtText(report::numberText(*number.uncertainty, decimals));
    return number.unit.empty() ? text : text + QLatin1Char(' ') + qtText(number.unit);
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
    QString text = qtText(decision.kind);
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    if (decision.from.empty())
        return text;
    if (decision.to.empty() || decision.from == decision.to)
        return text + QStringLiteral(" at ") + qtText(report::inSentence(decision.from));
    return text + QStringLiteral(", ") + qtText(report::inSentence(decision.from)) + QStringLiteral(" to ") +
           qtText(report::inSentence(decision.to));
}

} // namespace

void setDecisions(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    if (report.decisions.empty())
        return;
    flow.section(QStringLiteral("Decisions and their reasons"));
    std::vector<QStringList> rows;
    for (const auto& decision : report.decisions)
        rows.push_back({qtText(report::shortDayText(decision.day)), qtText(decision.ladder), whatText(decision),
                        reasonText(decision, units), answerText(decision)});
    flow.table({{QStringLiteral("Day"), 0.75},
                {QStringLiteral("Ladder"), 0.85},
                {QStringLiteral("Decision"), 1.8},
                {QStringLiteral("Reason and evidence"), 4},
                {QStringLiteral("What the athlete did"), 1.8}},
               rows);
}

} // namespace fleetrung::pdf
