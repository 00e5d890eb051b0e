#include "mobile/views/season_changes.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/stair_steps.hpp"

namespace fleetrung::views
{
namespace
{

struct SeasonChangesWords {
    Q_DECLARE_TR_FUNCTIONS(SeasonChangesWords)
};

QVariantMap row(const QString& text, bool caution = false)
{
    return {{QStringLiteral("text"), text}, {QStringLiteral("caution"), caution}};
}

QString daysText(int days)
{
    return days == 1 ? SeasonChangesWords::tr("1 day") : SeasonChangesWords::tr("%1 days").arg(days);
}

template <class Range, class Same> const auto* counterpart(const Range& range, const Same& same)
{
    const auto found = std::ranges::find_if(range, same);
    return found == range.end() ? nullptr : &*found;
}

void sayPhases(QList<QVariantMap>& rows, const season::SeasonPlan& before, const season::SeasonPlan& after,
               const Units& units)
{
    for (const auto& span : after.phases) {
        const auto* was = counterpart(before.phases, [&span](const season::PhaseSpan& other) {
            return other.kind == span.kind && other.macrocycle == span.macrocycle;
        });
        if (was && was->from == span.from && was->to == span.to)
            continue;
        QString text =
            SeasonChangesWords::tr("%1: %2 to %3")
                .arg(engineText(std::string(season::phaseName(span.kind))), units.day(span.from), units.day(span.to));
        text[0] = text[0].toUpper();
        const int longer = was ? daysBetween(span.from, span.to) - daysBetween(was->from, was->to) : 0;
        if (longer != 0)
            text += (longer > 0 ? SeasonChangesWords::tr(", %1 longer") : SeasonChangesWords::tr(", %1 shorter"))
                        .arg(daysText(std::abs(longer)));
        else if (!was)
            text += SeasonChangesWords::tr(", new");
        rows.append(row(text));
    }
    for (const auto& was : before.phases)
        if (!counterpart(after.phases, [&was](const season::PhaseSpan& other) {
                return other.kind == was.kind && other.macrocycle == was.macrocycle;
            }))
            rows.append(row(
                SeasonChangesWords::tr("No more %1").arg(engineText(std::string(season::phaseName(was.kind)))), true));
}

void saySteps(QList<QVariantMap>& rows, const season::SeasonPlan& before, const season::SeasonPlan& after,
              CivilDate today, const Units& units)
{
    for (const auto& ladder : after.ladders) {
        const auto* plan = season::ladderOf(after.setup, season::standardSeasonData(), ladder.ladder);
        const auto* old = season::findLadderPlan(before, ladder.ladder);
        if (!old)
            continue;
        const QString name = engineText(plan ? plan->name : ladder.ladder);
        for (std::size_t i = 0; i < ladder.rungs.size(); ++i) {
            const auto& rung = ladder.rungs[i];
            if (rung.from <= today || goesOn(ladder.rungs, i))
                continue;
            const QString title =
                SeasonChangesWords::tr("%1, %2").arg(name, engineText(rungName(after.setup, ladder.ladder, rung.rung)));
            const auto* was = counterpart(old->rungs, [&rung](const season::PlannedRung& other) {
                return other.rung == rung.rung && other.macrocycle == rung.macrocycle;
            });
            if (was && was->from != rung.from)
                rows.append(row(SeasonChangesWords::tr("%1: %2 instead of %3")
                                    .arg(title, units.day(rung.from), units.day(was->from))));
            else if (!was)
                rows.append(row(SeasonChangesWords::tr("%1: %2, new").arg(title, units.day(rung.from))));
        }
        for (const auto& was : old->rungs)
            if (was.from > today && !counterpart(ladder.rungs, [&was](const season::PlannedRung& other) {
                    return other.rung == was.rung && other.macrocycle == was.macrocycle;
                }))
                rows.append(row(SeasonChangesWords::tr("%1, %2: no longer planned")
                                    .arg(name, engineText(rungName(after.setup, ladder.ladder, was.rung))),
                                true));
    }
}

} // namespace

QList<QVariantMap> seasonChanges(const season::SeasonPlan& before, const season::SeasonPlan& after, CivilDate today,
                                 const Units& units)
{
    QList<QVariantMap> rows;
    for (const auto& note : after.notes)
        if (std::ranges::find(before.notes, note) == before.notes.end())
            rows.append(row(units.withLocalDates(engineText(note)), true));
    sayPhases(rows, before, after, units);
    saySteps(rows, before, after, today, units);
    return rows;
}

} // namespace fleetrung::views
