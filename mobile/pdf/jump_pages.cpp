#include <algorithm>
#include <map>
#include <tuple>

#include "engine/report/words.hpp"
#include "engine/statistics/robust.hpp"
#include "mobile/pdf/by_time.hpp"
#include "mobile/pdf/report_pages.hpp"

namespace fleetrung::pdf
{
namespace
{

using Jumps = std::vector<const report::Jump*>;

/// Jumps that may stand in one row.
using Kind = std::tuple<std::string, report::Side, std::optional<double>>;

template <class Value> std::vector<double> valuesOf(const Jumps& jumps, Value value)
{
    std::vector<double> values;
    for (const auto* jump : jumps)
        if (const auto one = value(*jump))
            values.push_back(*one);
    return values;
}

QString best(const std::vector<double>& values, double scale, int decimals, const QString& unit)
{
    if (values.empty())
        return notKnown();
    return qtText(report::numberText(*std::max_element(values.begin(), values.end()) * scale, decimals)) +
           QLatin1Char(' ') + unit;
}

QStringList jumpRow(const QString& when, const Kind& kind, const Jumps& jumps, Units units)
{
    const auto contacts = valuesOf(jumps, [](const auto& jump) { return jump.contactTime.value; });
    const auto distances = valuesOf(jumps, [](const auto& jump) { return jump.distanceM; });
    const auto heights = valuesOf(jumps, [](const auto& jump) { return jump.height.value; });
    const auto& [name, side, box] = kind;
    const bool metric = units == Units::Metric;
    return {when,
            qtText(name) + qtText(report::sideWords(side)),
            box ? heightText(*box, units) : notKnown(),
            QString::number(jumps.size()),
            contacts.empty() ? notKnown()
                             : qtText(report::millisecondsText(statistics::median(contacts))) + QStringLiteral(" ms"),
            distances.empty()
                ? best(heights, metric ? 100 : 1 / 0.0254, 1, metric ? QStringLiteral("cm") : QStringLiteral("in"))
                : best(distances, 1, 2, QStringLiteral("m")),
            best(valuesOf(jumps, [](const auto& jump) { return jump.reactiveStrength.value; }), 1, 2,
                 QStringLiteral("m/s"))};
}

} // namespace

void setJumps(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    if (report.jumps.empty())
        return;
    Jumps all;
    for (const auto& jump : report.jumps)
        all.push_back(&jump);
    std::vector<QStringList> rows;
    for (const auto& [when, group] : byTime(report, all)) {
        std::map<Kind, Jumps> kinds;
        for (const auto* jump : group)
            kinds[{jump->kind, jump->side, jump->boxHeightM}].push_back(jump);
        for (const auto& [kind, jumps] : kinds)
            rows.push_back(jumpRow(when, kind, jumps, units));
    }
    flow.section(QStringLiteral("Jumps"));
    flow.table({{QStringLiteral("When"), 1.5},
                {QStringLiteral("Jump"), 1.5},
                {QStringLiteral("Box"), 0.7, true},
                {QStringLiteral("Jumps"), 0.7, true},
                {QStringLiteral("Contact, median"), 1.35, true},
                {QStringLiteral("Best height or distance"), 1.9, true},
                {QStringLiteral("Best reactive strength"), 1.8, true}},
               rows);
    flow.quiet(QStringLiteral("Reactive strength: jump height over contact time."));
}

} // namespace fleetrung::pdf
