#include "mobile/views/track_view_model.hpp"

#include <algorithm>

#include "engine/season/rules.hpp"
#include "mobile/logbook/track_log.hpp"
#include "mobile/views/run_form.hpp"
#include "mobile/views/run_rows.hpp"
#include "mobile/views/track_words.hpp"

namespace fleetrung::views
{
namespace
{

constexpr std::size_t pageSize = 30;

/// Each group of words on a line of its own; empty groups take none.
QString lines(const QList<QStringList>& groups)
{
    QStringList filled;
    for (const auto& group : groups)
        if (!group.isEmpty())
            filled += group.join(QStringLiteral(" · "));
    return filled.join(QLatin1Char('\n'));
}

template <class T> QList<QVariantMap> latestFirst(const std::vector<T>& all, std::size_t most, auto rowOf)
{
    QList<QVariantMap> rows;
    for (auto it = all.rbegin(); it != all.rend() && static_cast<std::size_t>(rows.size()) < most; ++it)
        rows.append(rowOf(*it));
    return rows;
}

} // namespace

TrackViewModel::TrackViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), splits_(preferences), jumpEntry_(preferences), fit_(preferences),
      page_(pageSize), runRows_({"key", "title", "value", "detail"}, this),
      bestRows_({"key", "title", "value", "detail"}, this), jumpRows_({"key", "title", "value", "detail"}, this),
      boxRows_({"title", "value", "detail", "best", "slow"}, this)
{
    connect(&jumpEntry_, &JumpEntry::added, this, &TrackViewModel::jumpsAdded);
    connect(&fit_, &RunFitViewModel::asked, this, &TrackViewModel::runOpened);
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showRows();
        emit changed();
    });
}

void TrackViewModel::show(const QString& athlete, CivilDate today, std::vector<store::Sprint> runs,
                          std::vector<store::Jump> jumps)
{
    athlete_ = athlete;
    today_ = today;
    const std::string shown = test_ > 0 ? bests_[test_ - 1].test : std::string();
    runs_ = std::move(runs);
    bests_ = track::personalBests(testRuns(runs_));
    const auto same = std::ranges::find(bests_, shown, &track::PersonalBest::test);
    test_ = same == bests_.end() ? 0 : static_cast<std::size_t>(same - bests_.begin()) + 1;
    findWanted();
    jumps_ = std::move(jumps);
    showRows();
    emit changed();
}

void TrackViewModel::findWanted()
{
    wanted_.clear();
    const auto tests = testRuns(runs_);
    for (std::size_t run = 0; run < runs_.size(); ++run)
        if (test_ == 0 || tests[run].test == bests_[test_ - 1].test)
            wanted_.push_back(run);
}

QStringList TrackViewModel::tests() const
{
    QStringList names{tr("All")};
    for (const auto& best : bests_)
        names += testName(runs_.at(best.best.value_or(best.windAided.value_or(0))), preferences_->units());
    return names;
}

void TrackViewModel::setTest(int test)
{
    if (test < 0 || static_cast<std::size_t>(test) > bests_.size() || static_cast<std::size_t>(test) == test_)
        return;
    test_ = static_cast<std::size_t>(test);
    page_ = pageSize;
    findWanted();
    showRows();
    emit changed();
}

void TrackViewModel::showRows()
{
    const Units units = preferences_->units();
    const auto isBest = [this](std::size_t run) {
        return std::ranges::find(bests_, run, &track::PersonalBest::best) != bests_.end();
    };
    QList<QVariantMap> rows;
    for (auto run = wanted_.rbegin(); run != wanted_.rend() && static_cast<std::size_t>(rows.size()) < page_; ++run)
        rows.append(runRow(runs_[*run], units, isBest(*run)));
    runRows_.show(rows);
    QList<QVariantMap> bests;
    for (const auto& best : bests_)
        if (test_ == 0 || &best == &bests_[test_ - 1])
            bests.append(bestRow(best, runs_, units));
    bestRows_.show(bests);
    jumpRows_.show(latestFirst(jumps_, page_, [this](const store::Jump& jump) { return jumpRow(jump); }));
    showBoxes();
}

QVariantMap TrackViewModel::jumpRow(const store::Jump& jump) const
{
    const Units units = preferences_->units();
    const auto words = wordsOf(jump, units);
    QStringList first{units.day(jump.done.trainingDay)};
    if (jump.boxHeightM)
        first += tr("box %1").arg(units.length(*jump.boxHeightM));
    if (jump.test)
        first += tr("test day");
    QStringList beside;
    for (const auto& word : {jump.surface, jump.shoes})
        if (!word.empty())
            beside += trackWord(word);
    if (!jump.note.empty())
        beside += QString::fromStdString(jump.note);
    const QString name = jump.kind == "bounds" && jump.repetitions > 1
                             ? tr("%1 × %2", "number and kind of jumps").arg(jump.repetitions).arg(trackWord(jump.kind))
                             : trackWord(jump.kind);
    return {{QStringLiteral("key"), QString::fromStdString(identifierText(jump.id))},
            {QStringLiteral("title"), name},
            {QStringLiteral("value"), words.value},
            {QStringLiteral("detail"), lines({first, words.parts, beside})}};
}

void TrackViewModel::showBoxes()
{
    const Units units = preferences_->units();
    const double limit = season::standardSeasonData().rules.jumpContactLimit;
    const auto boxes = track::byBox(logbook::dropJumpsOf(jumps_), limit);
    const auto* best = track::bestBox(boxes);
    QList<QVariantMap> rows;
    for (const auto& box : boxes) {
        QStringList values;
        if (box.contact)
            values += tr("contact %1").arg(units.milliseconds(*box.contact));
        if (box.flight)
            values += tr("flight %1").arg(units.milliseconds(*box.flight));
        if (box.height)
            values += tr("height %1").arg(units.length(*box.height));
        const QStringList count{tr("jumps: %1").arg(box.jumps), tr("last %1").arg(units.day(box.lastDay))};
        rows.append({{QStringLiteral("title"), tr("Box %1").arg(units.length(box.box))},
                     {QStringLiteral("value"), box.rsi ? tr("RSI %1").arg(units.number(*box.rsi, 2)) : QString()},
                     {QStringLiteral("detail"), lines({values, count})},
                     {QStringLiteral("best"), best == &box},
                     {QStringLiteral("slow"), box.contact && *box.contact > limit}});
    }
    boxRows_.show(rows);
}

void TrackViewModel::setJumpsShown(bool shown)
{
    if (shown == jumpsShown_)
        return;
    jumpsShown_ = shown;
    emit changed();
}

bool TrackViewModel::hasMore() const
{
    return (jumpsShown_ ? jumps_.size() : wanted_.size()) > page_;
}

void TrackViewModel::showMore()
{
    page_ += pageSize;
    showRows();
    emit changed();
}

QString TrackViewModel::emptyTitle() const
{
    if (!hasAthlete())
        return tr("Nobody to time yet");
    return jumpsShown_ ? tr("No jumps yet") : tr("No runs yet");
}

QString TrackViewModel::emptyText() const
{
    if (!hasAthlete())
        return tr("Add an athlete on Squad. Runs and jumps are kept for each athlete apart.");
    return jumpsShown_ ? tr("Type in drop jumps with contact and flight time, or a standing long jump. On the same "
                            "day, under the "
                            "same conditions, they tell whether strength arrives in time.")
                       : tr("The stopwatch says whether the plan works. Repeat the same test every three to four "
                            "weeks: same zone, "
                            "same run-in, same shoes, and write the wind beside it.");
}

QVariantMap TrackViewModel::beginRun()
{
    splits_.begin(usualSplits(runs_));
    return runDefaults(runs_, preferences_->units());
}

QVariantMap TrackViewModel::addRun(const QVariantMap& form)
{
    const auto run = readRun(form, splits_.splits(), today_, preferences_->units());
    if (!run)
        return run.error();
    emit runAdded(*run);
    return {};
}

QVariantMap TrackViewModel::beginJumps()
{
    return jumpEntry_.begin(jumps_, today_);
}

void TrackViewModel::openRun(const QString& key)
{
    const auto id = parseIdentifier(key.toStdString());
    const auto run = std::ranges::find_if(runs_, [&id](const store::Sprint& one) { return id && one.id == *id; });
    if (run == runs_.end())
        return;
    fit_.show({.run = *run, .usesAll = false, .fit = {}, .flying = {}, .topSpeeds = {}});
    emit runOpened(run->id, false);
}

void TrackViewModel::remove(const QString& key)
{
    if (jumpsShown_)
        emit jumpRemoved(key);
    else
        emit runRemoved(key);
}

} // namespace fleetrung::views
