// The week and the weight room of the season that stands: each change is kept at once, with its undo.
#include <algorithm>
#include <array>
#include <iterator>

#include "mobile/views/form_keys.hpp"
#include "mobile/views/forms.hpp"
#include "mobile/views/season_form.hpp"
#include "mobile/views/season_view_model.hpp"

namespace fleetrung::views
{
namespace
{

QVariantList places(const std::vector<int>& isoWeekdays)
{
    QVariantList found;
    for (const int day : isoWeekdays)
        found.append(day - 1);
    return found;
}

void toggleDay(std::vector<int>& days, int isoWeekday)
{
    if (std::erase(days, isoWeekday) == 0)
        days.push_back(isoWeekday);
    std::ranges::sort(days);
}

} // namespace

QStringList SeasonViewModel::weekdays() const
{
    return weekdayNames(units());
}

QVariantList SeasonViewModel::liftDays() const
{
    return season_ ? places(season_->plan.setup.trainingDays) : QVariantList();
}

QVariantList SeasonViewModel::sprintDays() const
{
    return season_ ? places(season_->plan.setup.sprintDays) : QVariantList();
}

QVariantList SeasonViewModel::equipment() const
{
    QVariantList found;
    if (!season_)
        return found;
    const auto& has = season_->plan.setup.equipment;
    for (std::size_t i = 0; i < roomKeys.size(); ++i)
        if (std::ranges::find(has, roomKeys[i]) != has.end())
            found.append(static_cast<int>(i));
    return found;
}

QString SeasonViewModel::sessionMinutes() const
{
    return season_ ? units().number(season_->plan.setup.sessionMinutes, 0) : QString();
}

void SeasonViewModel::toggleLiftDay(int day)
{
    if (!season_ || day < 0 || day > 6)
        return;
    season::SeasonSetup setup = season_->plan.setup;
    toggleDay(setup.trainingDays, day + 1);
    keepIfSound(setup, tr("The days with lifts are changed."));
}

void SeasonViewModel::toggleSprintDay(int day)
{
    if (!season_ || day < 0 || day > 6)
        return;
    season::SeasonSetup setup = season_->plan.setup;
    toggleDay(setup.sprintDays, day + 1);
    keepIfSound(setup, tr("The days with sprints are changed."));
}

void SeasonViewModel::toggleEquipment(int index)
{
    if (!season_ || index < 0 || static_cast<std::size_t>(index) >= roomKeys.size())
        return;
    season::SeasonSetup setup = season_->plan.setup;
    const auto& key = roomKeys[static_cast<std::size_t>(index)];
    if (std::erase(setup.equipment, key) == 0)
        setup.equipment.push_back(key);
    keepIfSound(setup, tr("What the weight room has is changed."));
}

QString SeasonViewModel::setSessionMinutes(const QString& minutes)
{
    if (!season_)
        return {};
    const QVariantMap form{{QStringLiteral("minutes"), minutes}};
    const Units shown = units();
    FormReader reader(form, shown);
    const auto typed = reader.wholeNumber(QStringLiteral("minutes"), 20, 240, true);
    if (!typed)
        return reader.problems().value(QStringLiteral("minutes")).toString();
    season::SeasonSetup setup = season_->plan.setup;
    if (setup.sessionMinutes == *typed)
        return {};
    setup.sessionMinutes = *typed;
    keepIfSound(setup, tr("The length of a session is changed."));
    return problem();
}

} // namespace fleetrung::views
