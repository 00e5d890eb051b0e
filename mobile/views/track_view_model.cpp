#include "mobile/views/track_view_model.hpp"

#include <algorithm>

#include "mobile/views/forms.hpp"

namespace fleetrung::views
{
namespace
{

constexpr std::size_t pageSize = 30;
const std::vector<std::string> startKeys{"block", "standing", "flying"};
const std::vector<std::string> timingKeys{"hand", "gates", "video", "electronic"};
const std::vector<std::string> surfaceKeys{"track", "indoor", "grass"};
const std::vector<std::string> jumpKeys{"drop-jump", "counter-movement", "squat-jump", "standing-long", "bounds"};

std::string chosen(const std::vector<std::string>& keys, int index)
{
    return keys[static_cast<std::size_t>(std::clamp(index, 0, static_cast<int>(keys.size()) - 1))];
}

/// The words of a key that is kept in the store.
QString wordOf(const std::string& key)
{
    static const std::vector<std::pair<std::string, const char*>> words{
        {"block", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "blocks")},
        {"standing", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "standing start")},
        {"flying", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "flying")},
        {"rolling", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "rolling start")},
        {"hand", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "hand timed")},
        {"gates", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "gates")},
        {"video", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "video")},
        {"electronic", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "electronic")},
        {"track", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "track")},
        {"indoor", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "indoor")},
        {"grass", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "grass")},
        {"drop-jump", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "Drop jump")},
        {"counter-movement", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "Counter-movement jump")},
        {"squat-jump", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "Squat jump")},
        {"standing-long", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "Standing long jump")},
        {"long-jump", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "Long jump")},
        {"bounds", QT_TRANSLATE_NOOP("fleetrung::views::TrackViewModel", "Bounds")},
    };
    const auto found = std::ranges::find(words, key, &std::pair<std::string, const char*>::first);
    if (found != words.end())
        return TrackViewModel::tr(found->second);
    QString word = QString::fromStdString(key).replace(QLatin1Char('-'), QLatin1Char(' '));
    return word.left(1).toUpper() + word.mid(1);
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
    : QObject(parent), preferences_(preferences), page_(pageSize), runRows_({"key", "title", "value", "detail"}, this),
      jumpRows_({"key", "title", "value", "detail"}, this)
{
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
    runs_ = std::move(runs);
    jumps_ = std::move(jumps);
    showRows();
    emit changed();
}

void TrackViewModel::showRows()
{
    runRows_.show(latestFirst(runs_, page_, [this](const store::Sprint& run) { return runRow(run); }));
    jumpRows_.show(latestFirst(jumps_, page_, [this](const store::Jump& jump) { return jumpRow(jump); }));
}

QVariantMap TrackViewModel::runRow(const store::Sprint& run) const
{
    const Units units = preferences_->units();
    QStringList first{units.day(run.run.trainingDay)};
    if (run.competition)
        first += tr("competition");
    if (run.windMps)
        first += tr("wind %1").arg(units.signedNumber(*run.windMps, 1));
    QStringList second;
    if (run.start == "flying" && run.runIn > 0)
        second += tr("run-in %1").arg(units.distance(run.runIn));
    else if (!run.start.empty() && run.start != "flying")
        second += wordOf(run.start);
    if (!run.surface.empty())
        second += wordOf(run.surface);
    if (!run.timing.empty())
        second += wordOf(run.timing);
    const QString distance = units.distance(run.distance);
    return {{QStringLiteral("key"), QString::fromStdString(identifierText(run.id))},
            {QStringLiteral("title"), run.start == "flying" ? tr("Flying %1").arg(distance) : distance},
            {QStringLiteral("value"), units.sprintTime(run.time)},
            {QStringLiteral("detail"), twoLines(first, second)}};
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
            {QStringLiteral("title"), wordOf(jump.kind)},
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
    return (jumpsShown_ ? jumps_.size() : runs_.size()) > page_;
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

QVariantMap TrackViewModel::addRun(const QVariantMap& form)
{
    const Units units = preferences_->units();
    FormReader reader(form, units);
    store::Sprint run;
    // Bounds of sense: what lies beyond is a slip of the finger. Starting values of this project.
    run.distance = reader.number(QStringLiteral("distance"), 5, 1000, true).value_or(0);
    run.time = reader.number(QStringLiteral("time"), 0.4, 600, true).value_or(0);
    run.start = chosen(startKeys, reader.choice(QStringLiteral("start")));
    run.windMps = reader.number(QStringLiteral("wind"), -20, 20, false);
    run.surface = chosen(surfaceKeys, reader.choice(QStringLiteral("surface")));
    run.timing = chosen(timingKeys, reader.choice(QStringLiteral("timing")));
    if (run.start == "flying")
        run.runIn = reader.number(QStringLiteral("runIn"), 5, 100, true).value_or(0);
    run.run.trainingDay = readDay(reader);
    if (reader.sound() && run.distance / run.time > 13) // m/s; nobody has run faster (from memory: 12.4 m/s)
        reader.problem(QStringLiteral("time"), tr("That is faster than anyone has run. Check distance and time."));
    if (!reader.sound())
        return reader.problems();
    emit runAdded(run);
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

void TrackViewModel::remove(const QString& key)
{
    if (jumpsShown_)
        emit jumpRemoved(key);
    else
        emit runRemoved(key);
}

} // namespace fleetrung::views
