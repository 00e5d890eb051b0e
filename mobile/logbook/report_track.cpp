// The report's part of the track: runs, work, weeks, jumps.
#include <algorithm>
#include <set>

#include "engine/base/numbers.hpp"
#include "mobile/logbook/report_parts.hpp"
#include "mobile/logbook/run_fit.hpp"

namespace fleetrung::logbook
{
namespace
{

/// "flying 20 m", "30 m from blocks": runs of one name may be compared.
std::string testName(const store::Sprint& sprint)
{
    const std::string distance = shortestText(sprint.distance) + " m";
    if (sprint.start == "flying")
        return "flying " + distance;
    if (sprint.start == "block")
        return distance + " from blocks";
    return sprint.start.empty() ? distance : distance + " " + sprint.start;
}

/// "drop jump", "standing long jump", "3 bounds": jumps of one name may be compared.
std::string jumpName(const store::Jump& jump)
{
    if (jump.kind == "bounds" && jump.repetitions > 1)
        return integerText(jump.repetitions) + " bounds";
    std::string name = jump.kind == "standing-long" ? "standing long jump" : jump.kind;
    std::ranges::replace(name, '-', ' ');
    return name;
}

std::optional<report::SpeedCurve> curveOf(const store::Sprint& row, const store::Athlete& athlete)
{
    if (row.start == "flying" || row.splits.empty())
        return std::nullopt;
    report::SpeedCurve curve;
    auto fitted = fitRun(row, athlete);
    if (!fitted) {
        curve.noFit = fitted.error().message;
        return curve;
    }
    curve.fit = std::move(fitted->fit);
    curve.beamM = fitted->options.start.beamDistance;
    if (fitted->force) {
        curve.force = fitted->force->forceVelocity;
        curve.massKg = fitted->force->massKg;
    } else {
        curve.noForce = fitted->force.error().message;
    }
    return curve;
}

/// A value without a known uncertainty has none, not zero.
report::Measurement measured(const std::optional<jumps::Measured>& value)
{
    if (!value)
        return {};
    return {value->value, value->uncertainty > 0 ? std::optional(value->uncertainty) : std::nullopt};
}

} // namespace

report::Moment reportMoment(const Moment& moment)
{
    return {moment.utcSeconds * 1000, moment.offsetMinutes};
}

report::Sprint reportSprint(const store::Sprint& row, const TrackLog& log, const store::Athlete& athlete)
{
    report::Sprint sprint;
    sprint.id = row.id;
    sprint.day = row.run.trainingDay;
    sprint.at = reportMoment(row.run);
    sprint.test = testName(row);
    sprint.distanceM = row.distance;
    if (row.start == "flying")
        sprint.runInM = row.runIn;
    sprint.timeS = row.time;
    sprint.start = row.start;
    sprint.timing = row.timing;
    sprint.surface = row.surface;
    sprint.shoes = row.shoes;
    sprint.windMps = row.windMps;
    sprint.temperatureC = row.temperatureC;
    sprint.competition = row.competition;
    sprint.trial = row.test;
    sprint.fast = log.fastOf(row);
    sprint.contactTimeS = row.contactS;
    sprint.stepLengthM = row.stepLengthM;
    for (const auto& split : row.splits)
        sprint.splits.push_back({split.distance, split.time});
    sprint.curve = curveOf(row, athlete);
    sprint.note = row.note;
    return sprint;
}

report::Jump reportJump(const store::Jump& row)
{
    report::Jump jump;
    jump.id = row.id;
    jump.day = row.done.trainingDay;
    jump.at = reportMoment(row.done);
    jump.kind = jumpName(row);
    jump.side = static_cast<report::Side>(row.side);
    jump.boxHeightM = row.boxHeightM;
    jump.distanceM = row.distance.value;
    jump.contactTime = {row.contact.value, row.contact.uncertainty};
    jump.flightTime = {row.flight.value, row.flight.uncertainty};
    const auto values = valuesOf(row);
    jump.height = measured(values.height);
    jump.reactiveStrength = measured(values.rsi);
    jump.trial = row.test;
    jump.surface = row.surface;
    jump.shoes = row.shoes;
    jump.note = row.note;
    return jump;
}

report::TrackWork reportWork(const store::TrackWork& row, const TrackLog& log)
{
    report::TrackWork work;
    work.id = row.id;
    work.day = row.done.trainingDay;
    work.at = reportMoment(row.done);
    work.kind = row.kind;
    work.distanceM = row.distance;
    work.repetitions = row.repetitions;
    work.bestTimeS = row.bestTimeS;
    work.restS = row.restS;
    work.effort = row.effort;
    work.loadKg = row.loadKg;
    work.slopePercent = row.slopePercent;
    work.windMps = row.windMps;
    work.timing = row.timing;
    work.surface = row.surface;
    work.shoes = row.shoes;
    work.fast = log.fastOf(row);
    work.note = row.note;
    return work;
}

std::vector<report::TrackWeek> reportWeeks(const TrackLog& log, const std::vector<int>& sprintDays, CivilDate from,
                                           CivilDate to)
{
    std::set<CivilDate> done;
    for (const auto& known : log.runs)
        done.insert(known.run.day);
    for (const auto& work : log.work)
        done.insert(work.day);
    std::vector<report::TrackWeek> weeks;
    for (const auto& week : track::weeks(log.runs, log.work, log.contacts, from, to)) {
        report::TrackWeek entry{week, 0, 0};
        for (auto day = std::max(from, week.monday); day <= std::min(to, week.monday + std::chrono::days{6});
             day += std::chrono::days{1}) {
            entry.sprintDaysPlanned += static_cast<int>(std::ranges::count(sprintDays, isoWeekday(day)));
            entry.sprintDaysDone += static_cast<int>(done.count(day));
        }
        weeks.push_back(entry);
    }
    return weeks;
}

} // namespace fleetrung::logbook
