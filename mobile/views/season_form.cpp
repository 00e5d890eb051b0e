#include "mobile/views/season_form.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QRegularExpression>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/form_keys.hpp"
#include "mobile/views/forms.hpp"

namespace fleetrung::views
{
namespace
{

struct SeasonFormWords {
    Q_DECLARE_TR_FUNCTIONS(SeasonFormWords)
};

/// Chosen indices below `count`, ascending, each once.
std::vector<std::size_t> chosen(const QVariantMap& form, const QString& field, std::size_t count)
{
    std::vector<std::size_t> indices;
    for (const auto& value : form.value(field).toList())
        if (const int index = value.toInt(); index >= 0 && static_cast<std::size_t>(index) < count)
            indices.push_back(static_cast<std::size_t>(index));
    std::ranges::sort(indices);
    indices.erase(std::unique(indices.begin(), indices.end()), indices.end());
    return indices;
}

std::vector<int> chosenDays(const QVariantMap& form, const QString& field)
{
    std::vector<int> days;
    for (const std::size_t index : chosen(form, field, 7))
        days.push_back(static_cast<int>(index) + 1);
    return days;
}

void readBoxes(FormReader& reader, const QVariantMap& form, const Units& units,
               std::vector<season::EnteredLength>& heights)
{
    const QString field = QStringLiteral("boxes");
    const auto words =
        form.value(field).toString().split(QRegularExpression(QStringLiteral("[\\s;]+")), Qt::SkipEmptyParts);
    for (const QString& word : words) {
        const auto height = units.parseEntered(word);
        if (!height || !isBoxHeight(*height))
            return reader.problem(field, SeasonFormWords::tr("\"%1\" is no height of a box.").arg(word));
        heights.push_back(*height);
    }
    std::ranges::sort(heights, {}, &season::EnteredLength::metres);
}

} // namespace

bool isBoxHeight(const season::EnteredLength& height)
{
    return height.metres() >= 0.02 && height.metres() <= 1.2;
}

QStringList weekdayNames(const Units& units)
{
    QStringList names;
    for (int day = 1; day <= 7; ++day)
        names += units.weekday(day);
    return names;
}

tl::expected<season::SeasonSetup, QVariantMap> readSeasonForm(const QVariantMap& form, CivilDate start,
                                                              CivilDate raceDay, const Units& units,
                                                              const season::AthleteFacts& athlete)
{
    const auto& all = season::standardSeasonData().ladders;
    FormReader reader(form, units);
    season::SeasonSetup setup;
    setup.athlete = athlete;
    const QString race = reader.text(QStringLiteral("race"), true);
    if (raceDay <= start)
        reader.problem(QStringLiteral("raceDay"),
                       SeasonFormWords::tr("The competition comes after the season's first day."));
    setup.trainingDays = chosenDays(form, QStringLiteral("liftDays"));
    setup.sprintDays = chosenDays(form, QStringLiteral("sprintDays"));
    for (const std::size_t index : chosen(form, QStringLiteral("ladders"), all.size()))
        setup.ladders.push_back(all[index].key);
    for (const std::size_t index : chosen(form, QStringLiteral("equipment"), roomKeys.size()))
        setup.equipment.emplace_back(roomKeys[index]);
    readBoxes(reader, form, units, setup.boxHeights);
    if (setup.trainingDays.empty())
        reader.problem(QStringLiteral("liftDays"), SeasonFormWords::tr("Choose at least one day."));
    if (setup.ladders.empty())
        reader.problem(QStringLiteral("ladders"), SeasonFormWords::tr("Choose at least one lift."));
    if (!reader.sound())
        return tl::unexpected(reader.problems());

    setup.start = start;
    setup.competitions = {{.date = raceDay, .name = race.toStdString(), .priority = season::Priority::A, .main = true}};
    setup.name = race.toStdString();
    if (const auto checked = season::checkSetup(setup); !checked) {
        reader.problem(QStringLiteral("all"), units.withLocalDates(engineText(checked.error().message)));
        return tl::unexpected(reader.problems());
    }
    return setup;
}

} // namespace fleetrung::views
