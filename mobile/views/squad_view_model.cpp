#include "mobile/views/squad_view_model.hpp"

#include <algorithm>

#include "engine/season/setup.hpp"
#include "mobile/views/forms.hpp"

namespace fleetrung::views
{
namespace
{

/// First letters of the first and the last word of a name.
QString initialsOf(const QString& name)
{
    const QStringList words = name.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (words.isEmpty())
        return {};
    return words.size() == 1 ? words.first().left(1).toUpper()
                             : (words.first().left(1) + words.last().left(1)).toUpper();
}

} // namespace

SquadViewModel::SquadViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), rows_({"key", "name", "initials", "detail", "here"}, this),
      archivedRows_({"key", "name", "detail"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] { showRows(); });
}

void SquadViewModel::show(std::vector<AthleteShown> athletes, std::vector<AthleteShown> archived,
                          const std::string& current, CivilDate today)
{
    athletes_ = std::move(athletes);
    archived_ = std::move(archived);
    current_ = current;
    today_ = today;
    showRows();
    emit changed();
}

std::optional<int> SquadViewModel::ageOf(const AthleteShown& athlete) const
{
    season::AthleteFacts facts;
    facts.birthDate = athlete.born;
    return season::ageOn(facts, today_);
}

QString SquadViewModel::detailOf(const AthleteShown& athlete) const
{
    QStringList detail;
    if (const auto age = ageOf(athlete))
        detail += tr("%1 years").arg(*age);
    if (!athlete.event.empty())
        detail += QString::fromStdString(athlete.event);
    if (!athlete.group.empty())
        detail += tr("group %1").arg(QString::fromStdString(athlete.group));
    if (athlete.bodyMassKg)
        detail += preferences_->units().mass(*athlete.bodyMassKg);
    return detail.join(QStringLiteral(" · "));
}

void SquadViewModel::showRows()
{
    QList<QVariantMap> rows;
    for (const auto& athlete : athletes_) {
        const QString name = QString::fromStdString(athlete.name);
        rows.append({{QStringLiteral("key"), QString::fromStdString(athlete.key)},
                     {QStringLiteral("name"), name},
                     {QStringLiteral("initials"), initialsOf(name)},
                     {QStringLiteral("detail"), detailOf(athlete)},
                     {QStringLiteral("here"), athlete.key == current_}});
    }
    rows_.show(rows);
    QList<QVariantMap> archived;
    for (const auto& athlete : archived_)
        archived.append({{QStringLiteral("key"), QString::fromStdString(athlete.key)},
                         {QStringLiteral("name"), QString::fromStdString(athlete.name)},
                         {QStringLiteral("detail"), detailOf(athlete)}});
    archivedRows_.show(archived);
}

const AthleteShown* SquadViewModel::find(const QString& key) const
{
    const auto found = std::ranges::find(athletes_, key.toStdString(), &AthleteShown::key);
    return found == athletes_.end() ? nullptr : &*found;
}

QString SquadViewModel::countText() const
{
    if (athletes_.empty())
        return {};
    return athletes_.size() == 1 ? tr("1 athlete") : tr("%1 athletes").arg(athletes_.size());
}

void SquadViewModel::choose(const QString& key)
{
    emit chosen(key);
}

QVariantMap SquadViewModel::form(const QString& key) const
{
    const Units units = preferences_->units();
    const AthleteShown* athlete = find(key);
    const AthleteShown shown = athlete ? *athlete : AthleteShown{};
    return {{QStringLiteral("name"), QString::fromStdString(shown.name)},
            {QStringLiteral("born"), shown.born ? units.dayNumber(*shown.born) : QString()},
            {QStringLiteral("mass"), shown.bodyMassKg ? units.massNumber(*shown.bodyMassKg) : QString()},
            {QStringLiteral("stature"), shown.statureM ? units.lengthNumber(*shown.statureM) : QString()},
            {QStringLiteral("years"), shown.trainingYears ? units.number(*shown.trainingYears, 0) : QString()},
            {QStringLiteral("event"), QString::fromStdString(shown.event)},
            {QStringLiteral("group"), QString::fromStdString(shown.group)},
            {QStringLiteral("consent"), shown.guardianConsent}};
}

QVariantMap SquadViewModel::save(const QString& key, const QVariantMap& form)
{
    const Units units = preferences_->units();
    FormReader reader(form, units);
    const AthleteShown* before = find(key);
    AthleteShown athlete = before ? *before : AthleteShown{};
    athlete.name = reader.text(QStringLiteral("name"), true).toStdString();
    athlete.born = reader.day(QStringLiteral("born"), true);
    if (athlete.born && (*athlete.born > today_ || daysBetween(*athlete.born, today_) > 110 * 365))
        reader.problem(QStringLiteral("born"), tr("Check the year."));
    athlete.bodyMassKg = reader.mass(QStringLiteral("mass"), 25, 250, false);
    athlete.statureM = reader.length(QStringLiteral("stature"), 1.0, 2.4, false);
    athlete.trainingYears = reader.number(QStringLiteral("years"), 0, 80, false);
    athlete.event = reader.text(QStringLiteral("event"), false).toStdString();
    athlete.group = reader.text(QStringLiteral("group"), false).toStdString();
    athlete.guardianConsent = form.value(QStringLiteral("consent")).toBool();
    const auto age = ageOf(athlete);
    if (reader.sound() && age && *age < 18 && !athlete.guardianConsent)
        reader.problem(QStringLiteral("consent"), tr("Under 18, a guardian's consent is needed first."));
    if (!reader.sound())
        return reader.problems();
    emit saved(athlete);
    return {};
}

void SquadViewModel::remove(const QString& key)
{
    if (const AthleteShown* athlete = find(key))
        emit removed(key, QString::fromStdString(athlete->name));
}

void SquadViewModel::bringBack(const QString& key)
{
    const auto found = std::ranges::find(archived_, key.toStdString(), &AthleteShown::key);
    if (found != archived_.end())
        emit broughtBack(key, QString::fromStdString(found->name));
}

} // namespace fleetrung::views
