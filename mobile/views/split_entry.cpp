#include "mobile/views/split_entry.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::views
{
namespace
{

constexpr double usualStep = 10; // m
constexpr double farthest = 400; // m, as the engine reads splits
constexpr double fastest = 15;   // m/s over any stretch, likewise
constexpr int mostKeys = 6;      // 100.00
constexpr QLatin1Char mark('.');

} // namespace

SplitEntry::SplitEntry(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), rows_({"words"}, this)
{
}

void SplitEntry::begin(std::vector<double> usual)
{
    usual_ = std::move(usual);
    run_ = 0;
    splits_.clear();
    keys_.clear();
    show();
}

void SplitEntry::setRun(const QString& distance)
{
    run_ = Units::parse(distance).value_or(0);
    show();
}

double SplitEntry::nextDistance() const
{
    const double last = splits_.empty() ? 0 : splits_.back().distance;
    const auto usual = std::ranges::find_if(usual_, [last](double distance) { return distance > last; });
    const double next = usual == usual_.end() ? last + usualStep : *usual;
    return run_ > last ? std::min(next, run_) : next;
}

QString SplitEntry::distance() const
{
    const double next = nextDistance();
    return preferences_->units().number(next, next == std::floor(next) ? 0 : 2);
}

QString SplitEntry::point() const
{
    return preferences_->units().number(0.5, 1).mid(1, 1);
}

/// Without a point the last two digits are hundredths, as a stopwatch shows them.
QString SplitEntry::time() const
{
    if (keys_.contains(mark))
        return QString(keys_).replace(mark, point());
    return preferences_->units().number(keys_.toDouble() / 100, 2);
}

void SplitEntry::press(const QString& key)
{
    const QChar pressed = key == point() ? QChar(mark) : key.isEmpty() ? QChar() : key.front();
    if (!(pressed.isDigit() || pressed == mark) || keys_.size() >= mostKeys ||
        (pressed == mark && keys_.contains(mark)))
        return;
    if (keys_.isEmpty() && pressed == mark)
        keys_ = QStringLiteral("0");
    keys_ += pressed;
    timeProblem_.clear();
    emit changed();
}

void SplitEntry::erase()
{
    keys_.chop(1);
    timeProblem_.clear();
    emit changed();
}

bool SplitEntry::add(const QString& distance)
{
    distanceProblem_.clear();
    timeProblem_.clear();
    const store::Split before = splits_.empty() ? store::Split{} : splits_.back();
    const double way = Units::parse(distance).value_or(0);
    const double seconds = keys_.contains(mark) ? keys_.toDouble() : keys_.toDouble() / 100;
    if (!(way > 0 && way <= farthest))
        distanceProblem_ = tr("A distance from the start line, up to 400 m.");
    else if (way <= before.distance)
        distanceProblem_ = tr("It must lie beyond the last split.");
    else if (run_ > 0 && way > run_)
        distanceProblem_ = tr("It lies beyond the run.");
    else if (!(seconds > 0))
        timeProblem_ = tr("Press the digits of the watch.");
    else if (seconds <= before.time)
        timeProblem_ = tr("It must be later than the last split.");
    else if ((way - before.distance) / (seconds - before.time) > fastest)
        timeProblem_ = tr("That is faster than 15 m/s. Check distance and time.");
    const bool taken = distanceProblem_.isEmpty() && timeProblem_.isEmpty();
    if (!taken) {
        emit changed();
        return false;
    }
    splits_.push_back({way, seconds});
    keys_.clear();
    show();
    return true;
}

void SplitEntry::takeOffLast()
{
    if (!splits_.empty())
        splits_.pop_back();
    show();
}

QString SplitEntry::text(const store::Split& split) const
{
    return tr("%1 in %2")
        .arg(preferences_->units().distance(split.distance), preferences_->units().sprintTime(split.time));
}

QString SplitEntry::last() const
{
    return splits_.empty() ? tr("Counted from the start line, as the watch shows them.") : text(splits_.back());
}

QString SplitEntry::summary() const
{
    if (splits_.empty())
        return tr("None: with five, top speed and acceleration can be seen");
    return splits_.size() == 1 ? text(splits_.back())
                               : tr("%1 splits, the last %2").arg(splits_.size()).arg(text(splits_.back()));
}

void SplitEntry::show()
{
    distanceProblem_.clear();
    timeProblem_.clear();
    QList<QVariantMap> rows;
    for (auto split = splits_.rbegin(); split != splits_.rend(); ++split)
        rows.append({{QStringLiteral("words"), text(*split)}});
    rows_.show(rows);
    emit changed();
}

} // namespace fleetrung::views
