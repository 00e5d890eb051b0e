#include "mobile/views/season_lifts_view_model.hpp"

#include <algorithm>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/form_keys.hpp"
#include "mobile/views/forms.hpp"
#include "mobile/views/new_identifier.hpp"
#include "mobile/views/rung_form.hpp"
#include "mobile/views/season_form.hpp"
#include "mobile/views/wellness_form.hpp"

namespace fleetrung::views
{
namespace
{

constexpr std::size_t keyLength = 8; // of a new ladder's identifier: enough to tell a season's few apart

QVariantList placesIn(const std::vector<std::string>& keys, const std::vector<std::string>& chosen)
{
    QVariantList places;
    for (std::size_t i = 0; i < keys.size(); ++i)
        if (std::ranges::find(chosen, keys[i]) != chosen.end())
            places.append(static_cast<int>(i));
    return places;
}

QString daysText(const std::vector<int>& days, const Units& units)
{
    QStringList names;
    for (const int day : days)
        names += units.weekday(day);
    return names.join(QStringLiteral(" "));
}

} // namespace

SeasonLiftsViewModel::SeasonLiftsViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), ladders_({"title", "detail", "chosen", "own", "first"}, this),
      secondary_({"title", "detail"}, this), own_(preferences)
{
    connect(preferences, &Preferences::unitsChanged, this, &SeasonLiftsViewModel::showRows);
    connect(&own_, &OwnLadderViewModel::saved, this, &SeasonLiftsViewModel::saveOwn);
}

void SeasonLiftsViewModel::show(std::optional<SeasonShown> season)
{
    season_ = std::move(season);
    problem_.clear();
    showRows();
}

void SeasonLiftsViewModel::showRows()
{
    keys_.clear();
    QList<QVariantMap> rows;
    const auto add = [&](const season::Ladder& ladder) {
        const bool chosen = keys_.size() < setup().ladders.size();
        rows.append({{QStringLiteral("title"), engineText(ladder.name)},
                     {QStringLiteral("detail"), ladderDetail(ladder, keys_.size())},
                     {QStringLiteral("chosen"), chosen},
                     {QStringLiteral("own"), isOwn(ladder.key)},
                     {QStringLiteral("first"), keys_.empty()}});
        keys_.push_back(ladder.key);
    };
    if (season_) {
        for (const auto& key : setup().ladders)
            add(*season::ladderOf(setup(), season::standardSeasonData(), key));
        for (const auto* all : {&setup().ownLadders, &season::standardSeasonData().ladders})
            for (const auto& ladder : *all)
                if (std::ranges::find(keys_, ladder.key) == keys_.end())
                    add(ladder);
    }
    ladders_.show(rows);
    rows.clear();
    if (season_)
        for (const auto& lift : setup().secondary)
            rows.append({{QStringLiteral("title"), QString::fromStdString(lift.name)},
                         {QStringLiteral("detail"),
                          tr("%1 × %2 · %3").arg(lift.sets).arg(lift.repetitions).arg(daysText(lift.days, units()))}});
    secondary_.show(rows);
    emit changed();
}

QString SeasonLiftsViewModel::ladderDetail(const season::Ladder& ladder, std::size_t place) const
{
    const auto state = std::ranges::find(season_->states, ladder.key, &season::LadderState::ladder);
    if (place >= setup().ladders.size() || state == season_->states.end())
        return tr("%1 rungs, from %2 to %3")
            .arg(ladder.rungs.size())
            .arg(engineText(ladder.rungs.front().name), engineText(ladder.rungs.back().name));
    const auto rung = ladder.indexOf(state->rung()).value_or(0);
    return tr("rung %1 of %2: %3")
        .arg(rung + 1)
        .arg(ladder.rungs.size())
        .arg(engineText(season::rungName(ladder.rungs[static_cast<std::size_t>(rung)], setup())));
}

QString SeasonLiftsViewModel::chosenText() const
{
    QStringList names;
    if (season_)
        for (const auto& key : setup().ladders)
            names += engineText(season::ladderOf(setup(), season::standardSeasonData(), key)->name);
    return names.join(QStringLiteral(" · "));
}

QString SeasonLiftsViewModel::turnsText() const
{
    if (!season_)
        return {};
    const int cap = season::liftCap(setup(), season::standardSeasonData().rules);
    return static_cast<int>(setup().ladders.size()) > cap
               ? tr("A session holds %1 of them; they take turns. A few that stay all season bring more than many.")
                     .arg(cap)
               : tr("A session holds %1 of them.").arg(cap);
}

QStringList SeasonLiftsViewModel::weekdays() const
{
    return weekdayNames(units());
}

QStringList SeasonLiftsViewModel::motions() const
{
    return QStringList{tr("Nothing the sensor knows")} + motionNames();
}

const season::Ladder* SeasonLiftsViewModel::ladderAt(int row) const
{
    if (!season_ || row < 0 || static_cast<std::size_t>(row) >= keys_.size())
        return nullptr;
    return season::ladderOf(setup(), season::standardSeasonData(), keys_[static_cast<std::size_t>(row)]);
}

bool SeasonLiftsViewModel::isOwn(const std::string& key) const
{
    return season::findLadder(setup().ownLadders, key) != nullptr;
}

std::set<std::string> SeasonLiftsViewModel::stoodOn(const std::string& ladder) const
{
    std::set<std::string> rungs;
    for (const auto& state : season_->states)
        for (const auto& stay : state.path)
            if (state.ladder == ladder)
                rungs.insert(stay.rung);
    return rungs;
}

void SeasonLiftsViewModel::toggleLadder(int row)
{
    const auto* ladder = ladderAt(row);
    if (ladder == nullptr)
        return;
    season::SeasonSetup changed = setup();
    const bool out = std::erase(changed.ladders, ladder->key) > 0;
    std::erase_if(changed.ladderStarts, [ladder](const auto& start) { return start.ladder == ladder->key; });
    if (!out) {
        changed.ladders.push_back(ladder->key);
        if (season_->today > changed.start)
            changed.ladderStarts.push_back({ladder->key, season_->today});
    }
    const QString name = engineText(ladder->name);
    keep(changed, out ? tr("%1 is out of the season. Its sets stay in the log.").arg(name)
                      : tr("%1 is in the season from today on.").arg(name));
}

void SeasonLiftsViewModel::raiseLadder(int row)
{
    if (row <= 0 || !season_ || static_cast<std::size_t>(row) >= setup().ladders.size())
        return;
    season::SeasonSetup changed = setup();
    std::swap(changed.ladders[static_cast<std::size_t>(row)], changed.ladders[static_cast<std::size_t>(row) - 1]);
    keep(changed, tr("The order of the ladders is changed."));
}

// --- Ladders of the user's own

void SeasonLiftsViewModel::beginOwn(int row)
{
    const auto* from = ladderAt(row);
    if (from == nullptr)
        return;
    season::Ladder copy = *from;
    copy.key = "own-" + identifierText(newIdentifier()).substr(0, keyLength);
    copy.name = tr("%1, own").arg(engineText(from->name)).toStdString();
    for (auto& rung : copy.rungs)
        rung.origin = "user";
    own_.begin(std::move(copy), true, {});
}

void SeasonLiftsViewModel::editOwn(int row)
{
    if (const auto* ladder = ladderAt(row); ladder != nullptr && isOwn(ladder->key))
        own_.begin(*ladder, false, stoodOn(ladder->key));
}

void SeasonLiftsViewModel::saveOwn()
{
    if (!season_)
        return;
    const auto& ladder = own_.ladder();
    season::SeasonSetup changed = setup();
    const auto known = std::ranges::find(changed.ownLadders, ladder.key, &season::Ladder::key);
    if (known != changed.ownLadders.end()) {
        *known = ladder;
    } else {
        changed.ownLadders.push_back(ladder);
        changed.ladders.push_back(ladder.key);
        if (season_->today > changed.start)
            changed.ladderStarts.push_back({ladder.key, season_->today});
    }
    const QString name = engineText(ladder.name);
    own_.setProblem(keep(changed, own_.isNew() ? tr("%1 is in the season from today on.").arg(name)
                                               : tr("%1 is changed.").arg(name)));
    if (own_.problem().isEmpty())
        emit ownKept();
}

void SeasonLiftsViewModel::deleteOwn()
{
    if (!season_)
        return;
    const auto key = own_.ladder().key;
    season::SeasonSetup changed = setup();
    std::erase_if(changed.ownLadders, [&key](const auto& ladder) { return ladder.key == key; });
    std::erase(changed.ladders, key);
    std::erase_if(changed.ladderStarts, [&key](const auto& start) { return start.ladder == key; });
    own_.setProblem(keep(changed, tr("%1 is deleted. Its sets stay in the log.").arg(own_.name())));
    if (own_.problem().isEmpty())
        emit ownKept();
}

// --- Lifts beside the ladders

QVariantMap SeasonLiftsViewModel::secondaryForm(int index) const
{
    season::SecondaryLift lift;
    if (season_ && index >= 0 && static_cast<std::size_t>(index) < setup().secondary.size())
        lift = setup().secondary[static_cast<std::size_t>(index)];
    else if (season_)
        lift.days = setup().trainingDays;
    QVariantList days;
    for (const int day : lift.days)
        days.append(day - 1);
    return {{QStringLiteral("name"), QString::fromStdString(lift.name)},
            {QStringLiteral("motion"), lift.lift.empty() ? 0 : 1 + indexOfKey(motionKeys(), lift.lift)},
            {QStringLiteral("days"), days},
            {QStringLiteral("sets"), units().number(lift.sets, 0)},
            {QStringLiteral("repetitions"), units().number(lift.repetitions, 0)},
            {QStringLiteral("regions"), placesIn(painRegions(), lift.regions)}};
}

QVariantMap SeasonLiftsViewModel::saveSecondary(int index, const QVariantMap& form)
{
    if (!season_)
        return {};
    const Units shown = units();
    FormReader reader(form, shown);
    season::SecondaryLift lift;
    lift.name = reader.text(QStringLiteral("name"), true).toStdString();
    if (const int motion = reader.choice(QStringLiteral("motion")); motion > 0)
        lift.lift = chosenKey(motionKeys(), motion - 1);
    for (const auto& day : form.value(QStringLiteral("days")).toList())
        lift.days.push_back(day.toInt() + 1);
    if (lift.days.empty())
        reader.problem(QStringLiteral("days"), tr("Choose at least one day."));
    lift.sets = reader.wholeNumber(QStringLiteral("sets"), 1, 12, true).value_or(1);
    lift.repetitions = reader.wholeNumber(QStringLiteral("repetitions"), 1, 30, true).value_or(1);
    const auto regions = painRegions();
    for (const auto& region : form.value(QStringLiteral("regions")).toList())
        lift.regions.push_back(chosenKey(regions, region.toInt()));
    if (!reader.sound())
        return reader.problems();
    season::SeasonSetup changed = setup();
    const bool known = index >= 0 && static_cast<std::size_t>(index) < changed.secondary.size();
    if (known)
        changed.secondary[static_cast<std::size_t>(index)] = lift;
    else
        changed.secondary.push_back(lift);
    const QString name = QString::fromStdString(lift.name);
    const QString refused = keep(changed, known ? tr("%1 is changed.").arg(name) : tr("%1 is added.").arg(name));
    return refused.isEmpty() ? QVariantMap() : QVariantMap{{QStringLiteral("all"), refused}};
}

void SeasonLiftsViewModel::deleteSecondary(int index)
{
    if (!season_ || index < 0 || static_cast<std::size_t>(index) >= setup().secondary.size())
        return;
    season::SeasonSetup changed = setup();
    const QString name = QString::fromStdString(changed.secondary[static_cast<std::size_t>(index)].name);
    changed.secondary.erase(changed.secondary.begin() + index);
    keep(changed, tr("%1 is taken out of the plan.").arg(name));
}

QString SeasonLiftsViewModel::keep(const season::SeasonSetup& changed, const QString& said)
{
    problem_.clear();
    auto states = season_->states; // of ladders that stay
    std::erase_if(states, [&changed](const season::LadderState& state) {
        return std::ranges::find(changed.ladders, state.ladder) == changed.ladders.end();
    });
    const auto before = setup();
    if (const auto plan = season::replanSeason(changed, states, season_->today); plan) {
        season_->plan = *plan; // the next tap may come before the logbook has answered
        emit seasonChanged(changed, before, said);
    } else {
        problem_ = units().withLocalDates(engineText(plan.error().message));
    }
    showRows();
    return problem_;
}

} // namespace fleetrung::views
