#include "engine/season/progress.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/statistics/reliability.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double perSecond = 1000; // ms
constexpr std::size_t recentSessions = 3;
constexpr std::size_t changeRecent = 2;
constexpr std::size_t changeBefore = 6;
constexpr std::size_t strengthGroup = 4;
constexpr double meanOfFourError = 0.71; // typical errors: standard error of a mean of four minus a mean of four
constexpr double levelConfidence = 0.84; // standard errors: one-sided 80 %

/// One measure of several sessions, with the day of each.
struct Series {
    std::vector<CivilDate> days;
    std::vector<double> values;
    std::vector<double> uncertainties;
};

template <class Pick> Series seriesOf(const std::vector<SessionEvidence>& sessions, double scale, Pick pick)
{
    Series series;
    for (const auto& session : sessions)
        if (const std::optional<Measured>& measured = pick(session)) {
            series.days.push_back(session.day);
            series.values.push_back(measured->value * scale);
            series.uncertainties.push_back(measured->uncertainty * scale);
        }
    return series;
}

Series timesOf(const std::vector<SessionEvidence>& sessions)
{
    return seriesOf(
        sessions, perSecond, [](const SessionEvidence& s) -> const auto& { return s.timeToPeak; });
}

std::vector<SessionEvidence> everOnRung(const LadderDay& day)
{
    std::vector<SessionEvidence> sessions;
    std::copy_if(day.sessions.begin(), day.sessions.end(), std::back_inserter(sessions),
                 [&](const SessionEvidence& session) { return session.rung == day.rung().key; });
    return sessions;
}

double errorOf(const Series& series, double prior, const Rules& rules)
{
    std::vector<double> differences;
    for (std::size_t i = 1; i < series.values.size(); ++i)
        if (daysBetween(series.days[i - 1], series.days[i]) <= static_cast<int>(rules.maximumGapDays))
            differences.push_back(series.values[i] - series.values[i - 1]);
    return statistics::typicalErrorWithPrior(differences, prior, rules.priorSessions);
}

std::span<const double> last(const std::vector<double>& values, std::size_t count)
{
    return std::span(values).last(count);
}

/// The sensor's uncertainty of the last three sessions, as a root mean square.
double sensorError(const Series& series)
{
    double sum = 0;
    for (const double uncertainty : last(series.uncertainties, recentSessions))
        sum += uncertainty * uncertainty;
    return std::sqrt(sum / static_cast<double>(recentSessions));
}

} // namespace

std::string milliseconds(double value)
{
    return fixedText(value, 0) + " ms";
}

const std::optional<Measured>& velocityOf(const SessionEvidence& session, Metric metric)
{
    return metric == Metric::PeakVelocity ? session.peakVelocity : session.meanVelocity;
}

double timeError(const LadderDay& day, double baselineMs)
{
    const auto& rules = day.data.rules;
    const double prior = day.rung().metric == Metric::ContactTime
                             ? rules.contactError * perSecond
                             : std::max(rules.typicalErrorFloor * perSecond, day.ladder.typicalErrorShare * baselineMs);
    return errorOf(timesOf(everOnRung(day)), prior, rules);
}

std::optional<RecentChange> recentChange(const LadderDay& day)
{
    const auto times = timesOf(day.stay);
    if (times.values.size() < changeRecent + changeBefore)
        return std::nullopt;
    const auto window = last(times.values, changeRecent + changeBefore);
    const double before = roundTo(statistics::median(window.first(changeBefore)), 1);
    RecentChange change;
    change.later = roundTo(statistics::mean(window.last(changeRecent)), 1) - before;
    change.error = roundTo(timeError(day, before), 1);
    change.limit = roundTo(day.data.rules.easeGain * change.error, 1);
    return change;
}

std::optional<TimeProgress> timeProgress(const LadderDay& day)
{
    const auto baselineCount = static_cast<std::size_t>(day.data.rules.baselineSessions);
    const auto times = timesOf(day.stay);
    if (times.values.size() < std::max(baselineCount, recentSessions))
        return std::nullopt;
    TimeProgress progress;
    progress.sessions = static_cast<int>(times.values.size());
    progress.baseline = roundTo(statistics::mean(std::span(times.values).first(baselineCount)), 1);
    progress.recent = roundTo(statistics::mean(last(times.values, recentSessions)), 1);
    progress.gain = progress.baseline - progress.recent;
    progress.error = roundTo(std::hypot(timeError(day, progress.baseline), sensorError(times)), 1);
    return progress;
}

double velocityError(const LadderDay& day)
{
    const auto& rules = day.data.rules;
    const auto metric = day.rung().metric;
    const double prior = metric == Metric::PeakVelocity ? rules.peakVelocityError : rules.meanVelocityError;
    return errorOf(
        seriesOf(
            everOnRung(day), 1, [&](const SessionEvidence& s) -> const auto& { return velocityOf(s, metric); }),
        prior, rules);
}

std::optional<VelocityProgress> velocityProgress(const LadderDay& day)
{
    const auto& rules = day.data.rules;
    const auto metric = day.rung().metric;
    const auto pick = [&](const SessionEvidence& s) -> const auto&
    {
        return velocityOf(s, metric);
    };
    const auto baselineCount = static_cast<std::size_t>(rules.baselineSessions);
    const auto velocities = seriesOf(day.stay, 1, pick);
    if (velocities.values.size() < std::max(baselineCount, recentSessions))
        return std::nullopt;
    VelocityProgress progress;
    progress.change = roundTo(statistics::mean(last(velocities.values, recentSessions)) -
                                  statistics::mean(std::span(velocities.values).first(baselineCount)),
                              1000);
    progress.error = roundTo(std::hypot(velocityError(day), sensorError(velocities)), 1000);
    return progress;
}

std::optional<StrengthTrend> strengthTrend(const LadderDay& day)
{
    const auto& rules = day.data.rules;
    const auto metric = day.rung().metric;
    auto strength = seriesOf(
        day.stay, 1, [](const SessionEvidence& s) -> const auto& { return s.estimatedMaximum; });
    const bool byMaximum =
        day.rung().strength == StrengthMeasure::OneRepetitionMaximum && strength.values.size() == day.stay.size();
    if (!byMaximum)
        strength = seriesOf(
            day.stay, 1, [&](const SessionEvidence& s) -> const auto& { return velocityOf(s, metric); });
    if (strength.values.size() < std::max(static_cast<std::size_t>(rules.strengthSessions), 2 * strengthGroup) ||
        daysBetween(strength.days.front(), strength.days.back()) < static_cast<int>(rules.strengthDays))
        return std::nullopt;
    const double before = statistics::mean(std::span(strength.values).first(strengthGroup));
    const double after = statistics::mean(last(strength.values, strengthGroup));
    if (!(before > 0))
        return std::nullopt;
    const double velocityError = metric == Metric::PeakVelocity ? rules.peakVelocityError : rules.meanVelocityError;
    const double prior = byMaximum ? rules.strengthError * before : velocityError;
    StrengthTrend trend;
    trend.change = roundTo(after / before - 1, 1000);
    trend.standardError = roundTo(meanOfFourError * errorOf(strength, prior, rules) / before, 1000);
    trend.lost = trend.change <= -rules.strengthLost;
    trend.levelled = !trend.lost && trend.change + levelConfidence * trend.standardError < rules.strengthLevel;
    return trend;
}

} // namespace fleetrung::season
