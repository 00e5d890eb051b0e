#include "mobile/views/track_view_model.hpp"

#include <algorithm>

#include "mobile/views/forms.hpp"
#include "mobile/views/run_form.hpp"
#include "mobile/views/run_rows.hpp"
#include "mobile/views/track_words.hpp"

namespace fleetrung::views
{
namespace
{

constexpr std::size_t pageSize = 30;
const std::vector<std::string> jumpKeys{"drop-jump", "counter-movement", "squat-jump", "standing-long", "bounds"};

std::string chosen(const std::vector<std::string>& keys, int index)
{
    return keys[static_cast<std::size_t>(std::clamp(index, 0, static_cast<int>(keys.size()) - 1))];
}

QString twoLines(const QStringList& first, const QStringList& second)
{
    const QString dot = QStringLiteral(" · ");
    return second.isEmpty() ? first.join(dot) : first.join(dot) + QLatin1Char('\n') + second.join(dot);
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
    : QObject(parent), preferences_(preferences), splits_(preferences), fit_(preferences), page_(pageSize),
      runRows_({"key", "title", "value", "detail"}, this), bestRows_({"key", "title", "value", "detail"}, this),
      jumpRows_({"key", "title", "value", "detail"}, this)
{
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
}

QVariantMap TrackViewModel::jumpRow(const store::Jump& jump) const
{
    const Units units = preferences_->units();
    QStringList first{units.day(jump.done.trainingDay)};
    QStringList second;
    if (jump.boxHeightM)
        first += tr("box %1").arg(units.length(*jump.boxHeightM));
    if (jump.contact.value)
        second += tr("contact %1").arg(units.milliseconds(*jump.contact.value));
    if (jump.flight.value)
        second += tr("flight %1").arg(units.milliseconds(*jump.flight.value));
    const QString value = jump.distance.value ? units.number(*jump.distance.value, 2) + QStringLiteral(" ") + tr("m")
                          : jump.height.value ? units.length(*jump.height.value)
                                              : QString();
    return {{QStringLiteral("key"), QString::fromStdString(identifierText(jump.id))},
            {QStringLiteral("title"), trackWord(jump.kind)},
            {QStringLiteral("value"), value},
            {QStringLiteral("detail"), twoLines(first, second)}};
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

CivilDate TrackViewModel::readDay(FormReader& reader) const
{
    const auto day = reader.day(QStringLiteral("day"), true);
    if (day && *day > today_)
        reader.problem(QStringLiteral("day"), tr("That day has not come yet."));
    return day.value_or(today_);
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

QVariantMap TrackViewModel::addJump(const QVariantMap& form)
{
    const Units units = preferences_->units();
    FormReader reader(form, units);
    store::Jump jump;
    jump.kind = chosen(jumpKeys, reader.choice(QStringLiteral("kind")));
    jump.done.trainingDay = readDay(reader);
    if (jump.kind == "standing-long" || jump.kind == "bounds") {
        jump.distance.value = reader.number(QStringLiteral("distance"), 0.5, 30, true);
    } else {
        if (jump.kind == "drop-jump") {
            jump.boxHeightM = reader.length(QStringLiteral("box"), 0.05, 1.2, true);
            jump.contact.value = reader.milliseconds(QStringLiteral("contact"), 80, 800, true);
        }
        jump.flight.value = reader.milliseconds(QStringLiteral("flight"), 100, 1000, false);
        jump.height.value = reader.length(QStringLiteral("height"), 0.02, 1.2, false);
        if (reader.isEmpty(QStringLiteral("flight")) && reader.isEmpty(QStringLiteral("height")))
            reader.problem(QStringLiteral("flight"), tr("Type the flight time, or the height."));
    }
    if (!reader.sound())
        return reader.problems();
    emit jumpAdded(jump);
    return {};
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
