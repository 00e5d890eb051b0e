#include "mobile/views/season_view_model.hpp"

#include <algorithm>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/season_changes.hpp"
#include "mobile/views/season_form.hpp"
#include "mobile/views/wellness_form.hpp"

namespace fleetrung::views
{
namespace
{

const QString all = QStringLiteral("all");

/// "competitions[1].date" -> the field of the form that is at fault.
QString fieldOf(const std::string& place)
{
    if (place.ends_with(".date") || place.ends_with(".from") || place.ends_with(".to"))
        return QStringLiteral("day");
    return place.ends_with(".name") ? QStringLiteral("name") : all;
}

QVariantMap consequence(const QString& text, bool caution)
{
    return {{QStringLiteral("text"), text}, {QStringLiteral("caution"), caution}};
}

QString blockTitle(season::Block::Kind kind)
{
    switch (kind) {
    case season::Block::Kind::Travel:
        return SeasonViewModel::tr("Travel");
    case season::Block::Kind::Exam:
        return SeasonViewModel::tr("Exams");
    case season::Block::Kind::Illness:
        return SeasonViewModel::tr("Illness");
    case season::Block::Kind::Injury:
        return SeasonViewModel::tr("Injury");
    }
    return {};
}

} // namespace

SeasonViewModel::SeasonViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), competitions_({"title", "detail", "main"}, this),
      blocks_({"title", "detail"}, this), day_(preferences), firstDay_(preferences), lastDay_(preferences),
      consequences_({"text", "caution"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showRows();
        emit changed();
    });
    connect(&day_, &DayPicker::moved, this, [this] {
        draft_.date = day_.day();
        weigh();
    });
    connect(&firstDay_, &DayPicker::moved, this, [this] {
        const auto length = block_.to - block_.from; // the block moves as a whole
        block_.from = firstDay_.day();
        block_.to = block_.from + length;
        lastDay_.show(block_.to, season_->today);
        weigh();
    });
    connect(&lastDay_, &DayPicker::moved, this, [this] {
        block_.to = lastDay_.day();
        weigh();
    });
}

void SeasonViewModel::show(std::optional<SeasonShown> season)
{
    season_ = std::move(season);
    showRows();
    emit changed();
}

void SeasonViewModel::showRows()
{
    QList<QVariantMap> rows;
    if (season_)
        for (const auto& competition : season_->plan.setup.competitions) {
            const int days = daysBetween(season_->today, competition.date);
            const QString priority = QStringLiteral("ABC").at(static_cast<int>(competition.priority));
            QStringList detail{units().dayWithWeekday(competition.date), tr("priority %1").arg(priority)};
            if (competition.main)
                detail += tr("main");
            if (days >= 0)
                detail += days == 0   ? tr("today")
                          : days < 14 ? tr("in %1 days").arg(days)
                                      : tr("in %1 weeks").arg(days / 7);
            rows.append({{QStringLiteral("title"), QString::fromStdString(competition.name)},
                         {QStringLiteral("detail"), detail.join(QStringLiteral(" · "))},
                         {QStringLiteral("main"), competition.main}});
        }
    competitions_.show(rows);
    rows.clear();
    if (season_)
        for (const auto& block : season_->plan.setup.blocks) {
            const int days = daysBetween(block.from, block.to) + 1;
            QString title = blockTitle(block.kind);
            if (!block.region.empty())
                title = tr("%1: %2").arg(title, engineText(block.region));
            rows.append({{QStringLiteral("title"), title},
                         {QStringLiteral("detail"), tr("%1 to %2 · %3")
                                                        .arg(units().day(block.from), units().day(block.to),
                                                             days == 1 ? tr("1 day") : tr("%1 days").arg(days))}});
        }
    blocks_.show(rows);
}

void SeasonViewModel::editCompetition(int index)
{
    if (!season_)
        return;
    draftsBlock_ = false;
    const auto& known = season_->plan.setup.competitions;
    index_ = index >= 0 && static_cast<std::size_t>(index) < known.size() ? index : -1;
    draft_ = index_ >= 0 ? known[static_cast<std::size_t>(index_)] : season::Competition{};
    if (index_ < 0)
        draft_.date = season_->today + std::chrono::days{28};
    day_.show(draft_.date, season_->today);
    weigh();
}

void SeasonViewModel::setDraftName(const QString& name)
{
    if (name == draftName())
        return;
    draft_.name = name.toStdString();
    weigh();
}

void SeasonViewModel::setDraftPriority(int priority)
{
    draft_.priority = static_cast<season::Priority>(std::clamp(priority, 0, 2));
    weigh();
}

void SeasonViewModel::setDraftMain(bool main)
{
    draft_.main = main;
    weigh();
}

QString SeasonViewModel::priorityText() const
{
    switch (draft_.priority) {
    case season::Priority::A:
        return tr("A: volume falls over the two weeks before it, intensity stays.");
    case season::Priority::B:
        return tr("B: a little less volume over the four days before it.");
    case season::Priority::C:
        return tr("C: trained through, with two lighter days before it.");
    }
    return {};
}

season::SeasonSetup SeasonViewModel::drafted() const
{
    season::SeasonSetup setup = season_->plan.setup;
    if (draftsBlock_) {
        if (index_ >= 0)
            setup.blocks[static_cast<std::size_t>(index_)] = block_;
        else
            setup.blocks.push_back(block_);
        std::ranges::stable_sort(setup.blocks, {}, &season::Block::from);
        return setup;
    }
    season::Competition entry = draft_;
    entry.name = draftName().simplified().toStdString();
    if (index_ >= 0)
        setup.competitions[static_cast<std::size_t>(index_)] = entry;
    else
        setup.competitions.push_back(entry);
    std::ranges::stable_sort(setup.competitions, {}, &season::Competition::date);
    return setup;
}

/// What the change would do; planning a season takes milliseconds, so it is done at each touch.
void SeasonViewModel::weigh()
{
    problems_.clear();
    QList<QVariantMap> rows;
    if (season_) {
        const auto setup = drafted();
        if (!draftsBlock_ && draftName().simplified().isEmpty())
            problems_.insert(QStringLiteral("name"), tr("Give it a name."));
        const auto plan = season::replanSeason(setup, season_->states, season_->today);
        if (!plan)
            problems_.insert(fieldOf(plan.error().place), units().withLocalDates(engineText(plan.error().message)));
        else
            rows = seasonChanges(season_->plan, *plan, season_->today, units());
        if (plan && rows.isEmpty())
            rows.append(consequence(tr("Nothing else in the plan moves."), false));
    }
    consequences_.show(rows);
    emit draftChanged();
}

void SeasonViewModel::saveCompetition()
{
    if (season_ && canSave())
        keep(drafted(), isNew() ? tr("%1 is added.").arg(draftName().simplified())
                                : tr("%1 is changed.").arg(draftName().simplified()));
}

void SeasonViewModel::deleteCompetition()
{
    if (!season_ || index_ < 0)
        return;
    season::SeasonSetup setup = season_->plan.setup;
    setup.competitions.erase(setup.competitions.begin() + index_);
    keepIfSound(setup, tr("%1 is deleted.").arg(draftName()));
}

// --- Blocks

void SeasonViewModel::editBlock(int index)
{
    if (!season_)
        return;
    draftsBlock_ = true;
    const auto& known = season_->plan.setup.blocks;
    index_ = index >= 0 && static_cast<std::size_t>(index) < known.size() ? index : -1;
    block_ = index_ >= 0 ? known[static_cast<std::size_t>(index_)] : season::Block{};
    if (index_ < 0) {
        block_.from = season_->today;
        block_.to = season_->today + std::chrono::days{6};
    }
    firstDay_.show(block_.from, season_->today);
    lastDay_.show(block_.to, season_->today);
    weigh();
}

void SeasonViewModel::setBlockKind(int kind)
{
    block_.kind = static_cast<season::Block::Kind>(std::clamp(kind, 0, 3));
    if (block_.kind != season::Block::Kind::Injury)
        block_.region.clear();
    weigh();
}

QString SeasonViewModel::blockKindText() const
{
    switch (block_.kind) {
    case season::Block::Kind::Travel:
        return tr("No lifts on these days.");
    case season::Block::Kind::Exam:
        return tr("Training goes on, with less of it.");
    case season::Block::Kind::Illness:
        return tr("No lifts. Come back only when you are well; the plan steps back after a long break.");
    case season::Block::Kind::Injury:
        return tr("Lifts that load the injured place rest. See a clinician; this is not medical advice.");
    }
    return {};
}

QStringList SeasonViewModel::regions() const
{
    return painRegionNames();
}

int SeasonViewModel::blockRegion() const
{
    const auto keys = painRegions();
    const auto found = std::ranges::find(keys, block_.region);
    return static_cast<int>(found - keys.begin()); // the last name stands for everything
}

void SeasonViewModel::setBlockRegion(int region)
{
    const auto keys = painRegions();
    block_.region = region >= 0 && static_cast<std::size_t>(region) < keys.size()
                        ? keys[static_cast<std::size_t>(region)]
                        : std::string();
    weigh();
}

void SeasonViewModel::saveBlock()
{
    if (season_ && canSave())
        keep(drafted(), tr("%1 is in the plan.").arg(blockTitle(block_.kind)));
}

void SeasonViewModel::deleteBlock()
{
    if (!season_ || index_ < 0)
        return;
    season::SeasonSetup setup = season_->plan.setup;
    setup.blocks.erase(setup.blocks.begin() + index_);
    keepIfSound(setup, tr("%1 is taken out of the plan.").arg(blockTitle(block_.kind)));
}

// --- Boxes

QStringList SeasonViewModel::boxes() const
{
    QStringList texts;
    if (season_)
        for (const auto& box : season_->plan.setup.boxHeights)
            texts += units().entered(box);
    return texts;
}

QString SeasonViewModel::addBox(const QString& height)
{
    const auto box = units().parseEntered(height);
    if (!season_ || !box || !isBoxHeight(*box))
        return tr("Type the height of a box, in %1.").arg(lengthUnit());
    season::SeasonSetup setup = season_->plan.setup;
    if (std::ranges::find(setup.boxHeights, *box) != setup.boxHeights.end())
        return tr("This box is there already.");
    setup.boxHeights.push_back(*box);
    std::ranges::stable_sort(setup.boxHeights, {}, &season::EnteredLength::metres);
    keepIfSound(setup, tr("The box of %1 is added.").arg(units().entered(*box)));
    return problems_.value(all).toString();
}

void SeasonViewModel::removeBox(int index)
{
    if (!season_ || index < 0 || static_cast<std::size_t>(index) >= season_->plan.setup.boxHeights.size())
        return;
    season::SeasonSetup setup = season_->plan.setup;
    const QString text = units().entered(setup.boxHeights[static_cast<std::size_t>(index)]);
    setup.boxHeights.erase(setup.boxHeights.begin() + index);
    keepIfSound(setup, tr("The box of %1 is gone.").arg(text));
}

void SeasonViewModel::keepIfSound(const season::SeasonSetup& setup, const QString& said)
{
    problems_.clear();
    if (const auto plan = season::replanSeason(setup, season_->states, season_->today); plan)
        return keep(setup, said);
    else
        problems_.insert(all, units().withLocalDates(engineText(plan.error().message)));
    emit draftChanged();
}

void SeasonViewModel::keep(const season::SeasonSetup& setup, const QString& said)
{
    const auto before = season_->plan.setup;
    season_->plan.setup = setup; // the next tap may come before the logbook has answered
    emit seasonChanged(setup, before, said);
    showRows();
    emit changed();
}

} // namespace fleetrung::views
