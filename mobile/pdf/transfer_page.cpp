#include "engine/report/did_it_work.hpp"
#include "engine/report/words.hpp"
#include "mobile/pdf/report_pages.hpp"
#include "mobile/plot/lag_picture.hpp"

namespace fleetrung::pdf
{
namespace
{

constexpr double lagHeight = 165; // points

QString correlationText(const std::optional<double>& correlation)
{
    return correlation ? qtText(report::signedText(*correlation, 2)) : notKnown();
}

QString intervalText(const transfer::Lag& lag)
{
    return lag.low && lag.high ? correlationText(lag.low) + QStringLiteral(" to ") + correlationText(lag.high)
                               : notKnown();
}

QStringList lagRow(const transfer::Lag& lag, bool judged)
{
    const auto pairs = QString::number(lag.pairs);
    const auto rungs = QString::number(lag.rungs);
    const auto when = lag.weeks == 0   ? QStringLiteral("the same week")
                      : lag.weeks == 1 ? QStringLiteral("1 week later")
                                       : QStringLiteral("%1 weeks later").arg(lag.weeks);
    if (!judged) // how far it is, and no number that would mislead
        return {when, pairs, QString::number(transfer::fewestPairs), rungs, QString::number(transfer::fewestRungs)};
    return {
        when, pairs, rungs, correlationText(lag.correlation), intervalText(lag), correlationText(lag.chanceReaches)};
}

void setLagTable(PageFlow& flow, const transfer::Transfer& found)
{
    const bool judged = found.verdict != transfer::Verdict::NotEnough;
    std::vector<QStringList> rows;
    for (const auto& lag : found.lags)
        rows.push_back(lagRow(lag, judged));
    const TableColumn sprint{QStringLiteral("Sprint"), 1.6};
    const TableColumn pairs{QStringLiteral("Weeks with both"), 1.5, true};
    const TableColumn needed{QStringLiteral("needed"), 0.9, true};
    const TableColumn rungs{QStringLiteral("Rungs"), 0.8, true};
    if (judged)
        flow.table({sprint,
                    pairs,
                    rungs,
                    {QStringLiteral("Rank correlation"), 1.5, true},
                    {QStringLiteral("95 %, for show"), 1.7, true},
                    {QStringLiteral("Chance reaches"), 1.4, true}},
                   rows);
    else
        flow.table({sprint, pairs, needed, rungs, needed}, rows);
}

} // namespace

void setDidItWork(PageFlow& flow, const report::SeasonReport& report)
{
    flow.section(QStringLiteral("Did it work?"));
    const auto found = report::didItWork(report);
    if (!found) {
        flow.quiet(QStringLiteral("Not judged: ") + qtText(describe(found.error())));
        return;
    }
    flow.lead(
        QStringLiteral("The bar within each rung beside the sprint against the season's trend, week by week. Times "
                       "as they are would always go together: ranges grow shorter and summer comes."));
    flow.points({qtText(found->sentence)});
    if (found->verdict != transfer::Verdict::NotEnough)
        flow.picture(plot::lagPicture(found->lags), lagHeight);
    setLagTable(flow, *found);
    flow.quiet(QStringLiteral("This is no proof of cause. ") + qtText(found->premise));
}

} // namespace fleetrung::pdf
