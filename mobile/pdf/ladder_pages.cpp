#include <algorithm>
#include <cmath>

#include "engine/report/load_velocity.hpp"
#include "engine/report/rung_change.hpp"
#include "engine/report/words.hpp"
#include "mobile/pdf/report_pages.hpp"
#include "mobile/pdf/report_pictures.hpp"
#include "mobile/plot/load_velocity_picture.hpp"

namespace fleetrung::pdf
{
namespace
{

constexpr double trendHeight = 180; // points
constexpr double loadsHeight = 165;

double stairHeight(const report::Ladder& ladder)
{
    return 72 + 18.5 * static_cast<double>(ladder.rungs.size() + 1);
}

QString staysText(const std::vector<report::Stay>& stays, std::size_t rung)
{
    QStringList parts;
    for (const auto& stay : stays)
        if (stay.rung == rung)
            parts << qtText(report::shortDayText(stay.first)) + QStringLiteral(" – ") +
                         qtText(report::shortDayText(stay.last));
    return parts.isEmpty() ? notKnown() : parts.join(QStringLiteral(", "));
}

/// Sets, repetitions and loads done on one rung.
struct RungWork {
    int sets = 0;
    int repetitions = 0;
    std::optional<double> lightest, heaviest;
};

RungWork workOn(const report::SeasonReport& report, const report::Ladder& ladder, const report::Rung& rung)
{
    RungWork work;
    for (const auto& session : report.sessions)
        for (const auto& set : session.sets) {
            if (set.ladder != ladder.name || set.rung != rung.name)
                continue;
            ++work.sets;
            work.repetitions += set.repetitionsDone;
            if (!set.loadKg || set.kind == "warm-up")
                continue;
            work.lightest = std::min(work.lightest.value_or(*set.loadKg), *set.loadKg);
            work.heaviest = std::max(work.heaviest.value_or(*set.loadKg), *set.loadKg);
        }
    return work;
}

QString loadsText(const RungWork& work, Units units)
{
    if (!work.lightest)
        return notKnown();
    if (*work.heaviest <= 0)
        return QStringLiteral("body mass");
    const auto heaviest = massText(*work.heaviest, units);
    return *work.lightest == *work.heaviest
               ? heaviest
               : massText(*work.lightest, units).section(QLatin1Char(' '), 0, 0) + QStringLiteral(" – ") + heaviest;
}

QString bandText(const std::optional<report::Band>& band)
{
    return band ? qtText(report::millisecondsText(band->from) + "–" + report::millisecondsText(band->to) + " ms")
                : notKnown();
}

void setRungTable(PageFlow& flow, const report::SeasonReport& report, const report::Ladder& ladder, Units units)
{
    std::vector<QStringList> rows;
    for (std::size_t i = 0; i < ladder.rungs.size(); ++i) {
        const auto work = workOn(report, ladder, ladder.rungs[i]);
        rows.push_back({qtText(ladder.rungs[i].name), staysText(ladder.planned, i), staysText(ladder.taken, i),
                        work.sets > 0 ? QString::number(work.sets) : notKnown(),
                        work.sets > 0 ? QString::number(work.repetitions) : notKnown(), loadsText(work, units)});
    }
    flow.table({{QStringLiteral("Rung"), 2.1},
                {QStringLiteral("Planned"), 1.9},
                {QStringLiteral("Taken"), 1.9},
                {QStringLiteral("Sets"), 0.7, true},
                {QStringLiteral("Repetitions"), 1.1, true},
                {QStringLiteral("Load"), 1.6, true}},
               rows);
}

QString loadsLead(const report::LoadVelocity& found, Units units)
{
    const auto& curve = *found.curve;
    auto text = QStringLiteral("The fastest repetition at each load of %1 %2 on this rung, %3 points, a robust line.")
                    .arg(found.sessions)
                    .arg(found.sessions == 1 ? QStringLiteral("session") : QStringLiteral("sessions"))
                    .arg(found.points.size());
    if (!curve.slowest)
        return text + QStringLiteral(" No velocity at 1RM is published for this lift: it points to no 1RM.");
    text += QStringLiteral(" Estimated 1RM ") + massText(std::round(curve.line.estimatedMaximum), units);
    if (curve.line.maximumLow)
        text += QStringLiteral(" (95 %: ") + massText(std::round(*curve.line.maximumLow), units) +
                QStringLiteral(" to ") + massText(std::round(*curve.line.maximumHigh), units) + QLatin1Char(')');
    return text + QStringLiteral(", where the line meets ") + qtText(report::numberText(curve.slowest->velocity, 2)) +
           QStringLiteral(" m/s (") + qtText(curve.slowest->source) + QStringLiteral("). An estimate is an estimate.");
}

void setChanges(PageFlow& flow, const report::Ladder& ladder)
{
    const auto changes = report::rungChanges(ladder);
    if (changes.empty())
        return;
    flow.subsection(QStringLiteral("Within each rung"));
    flow.lead(QStringLiteral(
        "Entry: mean of the first three sessions; latest: mean of the last three; a change is called one from 1.35 "
        "typical errors on."));
    std::vector<QStringList> rows;
    for (const auto& change : changes) {
        const auto& rung = ladder.rungs[change.rung];
        rows.push_back({qtText(rung.name) + qtText(report::sideWords(change.side)), QString::number(change.sessions),
                        qtText(report::millisecondsText(change.entry)) + QStringLiteral(" ms"),
                        qtText(report::millisecondsText(change.latest)) + QStringLiteral(" ms"),
                        qtText(report::signedMillisecondsText(change.latest - change.entry)) + QStringLiteral(" ms"),
                        qtText(report::millisecondsText(change.typicalError)) + QStringLiteral(" ms"),
                        bandText(rung.targetBand),
                        change.quicker()  ? QStringLiteral("quicker")
                        : change.slower() ? QStringLiteral("slower")
                                          : QStringLiteral("no clear change")});
    }
    flow.table({{QStringLiteral("Rung"), 1.9},
                {QStringLiteral("Sessions"), 0.9, true},
                {QStringLiteral("Entry"), 0.95, true},
                {QStringLiteral("Latest"), 0.95, true},
                {QStringLiteral("Change"), 0.95, true},
                {QStringLiteral("Typical error"), 1.25, true},
                {QStringLiteral("Target band"), 1.35, true},
                {QStringLiteral("Verdict"), 1.6}},
               rows);
}

void setLoads(PageFlow& flow, const report::Ladder& ladder, Units units)
{
    const plot::LoadUnit unit = units == Units::Metric
                                    ? plot::LoadUnit{}
                                    : plot::LoadUnit{"lb", "pounds", 0.45359237}; // exact by definition of the pound
    for (const auto& found : report::loadVelocities(ladder)) {
        const auto name = qtText(ladder.rungs[found.rung].name) + qtText(report::sideWords(found.side));
        flow.subsection(name + QStringLiteral(": load and velocity"));
        if (!found.curve) {
            flow.quiet(QStringLiteral("No line: ") + qtText(found.curve.error().message) + QLatin1Char('.'));
            continue;
        }
        flow.lead(loadsLead(found, units));
        flow.picture(plot::loadVelocityPicture(ladder.rungs[found.rung].name, found.points, &*found.curve, unit),
                     loadsHeight);
    }
}

} // namespace

void setLadders(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    for (const auto& ladder : report.ladders) {
        flow.section(qtText(ladder.name) + QStringLiteral(" ladder"));
        flow.picture(stairOf(report, ladder), stairHeight(ladder));
        setRungTable(flow, report, ladder, units);
        flow.subsection(qtText(report::capitalised(ladder.evidenceName)) + QStringLiteral(" against the target band"));
        flow.picture(trendOf(report, ladder), trendHeight);
        setChanges(flow, ladder);
        setLoads(flow, ladder, units);
    }
}

} // namespace fleetrung::pdf
