#include "mobile/views/wellness_form.hpp"

#include <set>

#include <QCoreApplication>

#include "engine/season/rules.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/forms.hpp"

namespace fleetrung::views
{
namespace
{

struct WellnessWords {
    Q_DECLARE_TR_FUNCTIONS(WellnessWords)
};

std::optional<double> grade(const QVariantMap& form, const QString& field)
{
    const int said = form.value(field, -1).toInt();
    return said >= 0 && said <= 10 ? std::optional(static_cast<double>(said)) : std::nullopt;
}

} // namespace

std::vector<std::string> painRegions()
{
    std::set<std::string> regions;
    for (const auto& ladder : season::standardSeasonData().ladders)
        regions.insert(ladder.regions.begin(), ladder.regions.end());
    return {regions.begin(), regions.end()};
}

QStringList painRegionNames()
{
    QStringList names;
    for (const auto& region : painRegions())
        names += engineText(region);
    names += WellnessWords::tr("somewhere else");
    return names;
}

tl::expected<store::Wellness, QVariantMap> readWellness(const QVariantMap& form, const Units& units)
{
    FormReader reader(form, units);
    store::Wellness wellness;
    wellness.sleepHours = reader.number(QStringLiteral("sleep"), 0, 16, false);
    wellness.soreness = grade(form, QStringLiteral("soreness"));
    wellness.pain = grade(form, QStringLiteral("pain"));
    wellness.bodyMassKg = reader.mass(QStringLiteral("mass"), 25, 250, false);
    wellness.sharpPain = form.value(QStringLiteral("sharp")).toBool();
    wellness.limping = form.value(QStringLiteral("limping")).toBool();
    wellness.newHamstringPain = form.value(QStringLiteral("hamstring")).toBool();
    wellness.refused = form.value(QStringLiteral("refused")).toBool();
    const auto regions = painRegions();
    const int region = form.value(QStringLiteral("region"), -1).toInt();
    if (wellness.pain.value_or(0) > 0) {
        if (region < 0)
            reader.problem(QStringLiteral("region"), WellnessWords::tr("Say where it hurts."));
        else if (static_cast<std::size_t>(region) < regions.size())
            wellness.painWhere = regions[static_cast<std::size_t>(region)];
    }
    if (!reader.sound())
        return tl::unexpected(reader.problems());
    return wellness;
}

QString wellnessWords(const store::Wellness& wellness, const Units& units)
{
    QStringList parts;
    if (wellness.refused)
        parts += WellnessWords::tr("does not want to lift");
    if (wellness.sleepHours)
        parts += WellnessWords::tr("slept %1 h").arg(units.number(*wellness.sleepHours, 1));
    if (wellness.soreness)
        parts += WellnessWords::tr("soreness %1").arg(units.number(*wellness.soreness, 0));
    if (wellness.pain)
        parts += *wellness.pain == 0 ? WellnessWords::tr("no pain")
                 : wellness.painWhere.empty()
                     ? WellnessWords::tr("pain %1").arg(units.number(*wellness.pain, 0))
                     : WellnessWords::tr("pain %1, %2")
                           .arg(units.number(*wellness.pain, 0), QString::fromStdString(wellness.painWhere));
    if (wellness.sharpPain)
        parts += WellnessWords::tr("sharp pain");
    if (wellness.limping)
        parts += WellnessWords::tr("limping");
    if (wellness.newHamstringPain)
        parts += WellnessWords::tr("new hamstring pain");
    if (wellness.bodyMassKg)
        parts += units.mass(*wellness.bodyMassKg);
    return parts.join(QStringLiteral(" · "));
}

} // namespace fleetrung::views
