#include "mobile/views/work_form.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include <QCoreApplication>

#include "mobile/views/form_keys.hpp"
#include "mobile/views/forms.hpp"

namespace fleetrung::views
{
namespace
{

struct WorkFormWords {
    Q_DECLARE_TR_FUNCTIONS(WorkFormWords)
};

// In the order of the form's choices.
const std::vector<std::string> kindKeys{"sprints", "flying", "resisted", "hill", "easy"};

constexpr double secondsAMinute = 60;

/// Faster than anyone has run, or slower than a walk: a slip of the finger.
void checkSpeed(FormReader& reader, const store::TrackWork& work)
{
    const QString field = QStringLiteral("bestTime");
    const double speed = work.distance / *work.bestTimeS;
    if (speed > 13) // m/s; from memory: nobody has run faster than 12.4 m/s
        reader.problem(field, WorkFormWords::tr("That is faster than anyone has run. Check distance and time."));
    else if (speed < 1)
        reader.problem(field, WorkFormWords::tr("That is slower than walking. Check distance and time."));
}

} // namespace

tl::expected<store::TrackWork, QVariantMap> readWork(const QVariantMap& form, CivilDate today, const Units& units)
{
    FormReader reader(form, units);
    store::TrackWork work;
    work.kind = chosenKey(kindKeys, reader.choice(QStringLiteral("kind")));
    // Bounds of sense: what lies beyond is a slip of the finger. Starting values of this project.
    work.repetitions = reader.wholeNumber(QStringLiteral("repetitions"), 1, 60, true).value_or(1);
    work.distance = reader.number(QStringLiteral("distance"), 5, 1000, true).value_or(0);
    work.bestTimeS = reader.number(QStringLiteral("bestTime"), 0.4, 600, false);
    if (work.bestTimeS)
        work.timing = chosenKey(timingKeys, reader.choice(QStringLiteral("timing")));
    work.effort = reader.number(QStringLiteral("effort"), 1, 10, false);
    if (const auto minutes = reader.number(QStringLiteral("rest"), 0.1, 60, false))
        work.restS = *minutes * secondsAMinute;
    if (work.kind == "resisted")
        work.loadKg = reader.mass(QStringLiteral("load"), 0.5, 200, false);
    if (work.kind == "hill")
        work.slopePercent = reader.number(QStringLiteral("slope"), 0.5, 40, false);
    work.windMps = reader.number(QStringLiteral("wind"), -20, 20, false);
    work.surface = chosenKey(surfaceKeys, reader.choice(QStringLiteral("surface")));
    work.shoes = chosenKey(shoeKeys, reader.choice(QStringLiteral("shoes")));
    work.note = reader.text(QStringLiteral("note"), false).toStdString();
    const auto day = reader.day(QStringLiteral("day"), true);
    if (day && *day > today)
        reader.problem(QStringLiteral("day"), WorkFormWords::tr("That day has not come yet."));
    work.done.trainingDay = day.value_or(today);
    if (reader.sound() && work.bestTimeS)
        checkSpeed(reader, work);
    if (!reader.sound())
        return tl::unexpected(reader.problems());
    return work;
}

QVariantMap workDefaults(std::span<const store::TrackWork> work, const Units& units)
{
    store::TrackWork last;
    last.repetitions = 0;
    last.shoes = "spikes";
    if (!work.empty())
        last = work.back();
    const auto number = [&units](std::optional<double> value) {
        return value && *value > 0 ? units.number(*value, *value == std::floor(*value) ? 0 : 2) : QString();
    };
    return {{QStringLiteral("kind"), indexOfKey(kindKeys, last.kind)},
            {QStringLiteral("repetitions"), number(last.repetitions)},
            {QStringLiteral("distance"), number(last.distance)},
            {QStringLiteral("timing"), indexOfKey(timingKeys, last.timing)},
            {QStringLiteral("rest"), number(last.restS.value_or(0) / secondsAMinute)},
            {QStringLiteral("load"), last.loadKg ? units.massNumber(*last.loadKg) : QString()},
            {QStringLiteral("slope"), number(last.slopePercent)},
            {QStringLiteral("surface"), indexOfKey(surfaceKeys, last.surface)},
            {QStringLiteral("shoes"), indexOfKey(shoeKeys, last.shoes)}};
}

} // namespace fleetrung::views
