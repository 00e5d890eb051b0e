#include "mobile/views/squad_day_view_model.hpp"

#include <algorithm>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/stair_steps.hpp"

namespace fleetrung::views
{

SquadDayViewModel::SquadDayViewModel(Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), dueRows_({"key", "name", "group", "lifts"}, this),
      turnRows_({"round", "title", "names"}, this), sharingRows_({"key", "name", "detail", "chosen"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, &SquadDayViewModel::showRows);
}

void SquadDayViewModel::show(std::vector<season::DueAthlete> due)
{
    due_ = std::move(due);
    known_ = true;
    group_ = std::min(group_, static_cast<int>(groups().size()) - 1);
    showRows();
}

void SquadDayViewModel::showSquad(std::vector<Sharer> squad)
{
    squad_ = std::move(squad);
    std::erase_if(picked_, [this](const std::string& key) {
        return std::ranges::find(squad_, key, &Sharer::key) == squad_.end();
    });
    known_ = false; // the day may have changed with it
    showSharing();
}

void SquadDayViewModel::ask()
{
    if (!known_)
        emit asked();
}

QStringList SquadDayViewModel::groups() const
{
    std::set<std::string> names;
    for (const auto& athlete : due_)
        if (!athlete.group.empty())
            names.insert(athlete.group);
    QStringList groups{tr("All")};
    for (const auto& name : names)
        groups += QString::fromStdString(name);
    return groups;
}

std::vector<season::DueAthlete> SquadDayViewModel::inGroup() const
{
    if (group_ <= 0)
        return due_;
    const std::string name = groups().at(group_).toStdString();
    std::vector<season::DueAthlete> some;
    std::ranges::copy_if(due_, std::back_inserter(some),
                         [&name](const season::DueAthlete& athlete) { return athlete.group == name; });
    return some;
}

std::string SquadDayViewModel::nameOf(const std::string& key) const
{
    for (const auto& athlete : due_)
        if (identifierText(athlete.athlete) == key)
            return athlete.name;
    const auto found = std::ranges::find(squad_, key, &Sharer::key);
    return found == squad_.end() ? std::string() : found->name;
}

QString SquadDayViewModel::liftsOf(const season::SessionPlan& session) const
{
    QStringList lifts;
    for (const auto& lift : session.lifts) {
        QString text = engineText(rungName({}, lift.ladder, lift.rung));
        if (!lift.work.empty() && lift.work.front().loadKg.value_or(0) > 0)
            text += QStringLiteral(" ") + preferences_->units().mass(*lift.work.front().loadKg);
        lifts += text;
    }
    return lifts.join(QStringLiteral(" · "));
}

void SquadDayViewModel::showRows()
{
    const auto due = inGroup();
    QList<QVariantMap> rows;
    for (const auto& athlete : due)
        rows.append({{QStringLiteral("key"), QString::fromStdString(identifierText(athlete.athlete))},
                     {QStringLiteral("name"), QString::fromStdString(athlete.name)},
                     {QStringLiteral("group"), QString::fromStdString(athlete.group)},
                     {QStringLiteral("lifts"), liftsOf(athlete.session)}});
    dueRows_.show(rows);

    turnsNow_ = season::shareRacks(due, racks());
    rows.clear();
    for (const auto& turn : turnsNow_) {
        QStringList names;
        for (const auto& athlete : turn.athletes)
            names += QString::fromStdString(nameOf(identifierText(athlete)));
        const QString lift = engineText(rungName({}, turn.ladder, turn.rung));
        rows.append({{QStringLiteral("round"), tr("Round %1").arg(turn.round + 1)},
                     {QStringLiteral("title"),
                      turn.rack < 0 ? tr("No rack: %1").arg(lift) : tr("Rack %1: %2").arg(turn.rack + 1).arg(lift)},
                     {QStringLiteral("names"), names.join(QStringLiteral(", "))}});
    }
    turnRows_.show(rows);
    showSharing();
    emit changed();
    emit sharersChanged();
}

void SquadDayViewModel::showSharing()
{
    QList<QVariantMap> rows;
    const auto add = [&](const std::string& key, const std::string& name, const QString& detail) {
        rows.append({{QStringLiteral("key"), QString::fromStdString(key)},
                     {QStringLiteral("name"), QString::fromStdString(name)},
                     {QStringLiteral("detail"), detail},
                     {QStringLiteral("chosen"), picked_.contains(key)}});
    };
    std::set<std::string> shown;
    for (const auto& athlete : due_) {
        const std::string key = identifierText(athlete.athlete);
        shown.insert(key);
        add(key, athlete.name, liftsOf(athlete.session));
    }
    for (const auto& athlete : squad_)
        if (!shown.contains(athlete.key))
            add(athlete.key, athlete.name, known_ ? tr("no lifts today") : QString());
    sharingRows_.show(rows);
}

QString SquadDayViewModel::countText() const
{
    const qsizetype count = dueRows_.count();
    return count == 0 ? QString() : count == 1 ? tr("1 athlete lifts today") : tr("%1 athletes lift today").arg(count);
}

QString SquadDayViewModel::emptyText() const
{
    return known_ ? tr("Nobody has lifts today. Each athlete's next session stands on Ladder.")
                  : tr("The plans are being read.");
}

QString SquadDayViewModel::racksText() const
{
    return racks() == 1 ? tr("1 rack") : tr("%1 racks").arg(racks());
}

void SquadDayViewModel::chooseGroup(int index)
{
    if (index < 0 || index >= groups().size())
        return;
    group_ = index;
    showRows();
}

void SquadDayViewModel::moveRacks(int more)
{
    preferences_->setRacks(racks() + more);
    showRows();
}

void SquadDayViewModel::choose(const QString& key)
{
    emit chosen(key);
}

void SquadDayViewModel::toggleSharer(const QString& key)
{
    const std::string athlete = key.toStdString();
    if (!picked_.erase(athlete))
        picked_.insert(athlete);
    showSharing();
    emit changed();
    emit sharersChanged();
}

void SquadDayViewModel::shareByRack()
{
    picked_.clear();
    showSharing();
    emit changed();
    emit sharersChanged();
}

std::vector<Sharer> SquadDayViewModel::sharersOf(const std::string& athlete, const std::string& ladder) const
{
    std::vector<Sharer> sharers;
    if (!picked_.empty()) {
        for (const auto& key : picked_)
            sharers.push_back({key, nameOf(key)});
        if (!picked_.contains(athlete))
            sharers.push_back({athlete, nameOf(athlete)});
        std::ranges::sort(sharers, {}, &Sharer::name);
    } else {
        const season::RackTurn* shared = nullptr;
        for (const auto& turn : turnsNow_) {
            const bool among = std::ranges::any_of(
                turn.athletes, [&athlete](const Identifier& id) { return identifierText(id) == athlete; });
            if (among && (!shared || (turn.ladder == ladder && shared->ladder != ladder)))
                shared = &turn;
        }
        if (shared)
            for (const auto& id : shared->athletes)
                sharers.push_back({identifierText(id), nameOf(identifierText(id))});
    }
    if (sharers.size() < 2)
        sharers.clear();
    return sharers;
}

} // namespace fleetrung::views
