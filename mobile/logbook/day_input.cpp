#include "mobile/logbook/day_input.hpp"

#include <cmath>

#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/training.hpp"

namespace fleetrung::logbook
{
namespace
{

std::optional<int> wholeOf(const std::optional<double>& value)
{
    return value ? std::optional(static_cast<int>(std::lround(*value))) : std::nullopt;
}

bool speaksOfPain(const store::Wellness& entry)
{
    return entry.pain || entry.sharpPain || entry.limping || entry.newHamstringPain;
}

} // namespace

season::Wellness wellnessOf(const std::vector<store::Wellness>& entries)
{
    season::Wellness today;
    for (const auto& entry : entries) {
        if (entry.sleepHours)
            today.sleepHours = entry.sleepHours;
        if (entry.soreness)
            today.soreness = wholeOf(entry.soreness);
        if (entry.pain) {
            today.pain = wholeOf(entry.pain);
            today.painRegion = entry.painWhere;
        }
        if (speaksOfPain(entry)) {
            today.sharpPain = entry.sharpPain;
            today.limping = entry.limping;
            today.newHamstringPain = entry.newHamstringPain;
            today.refused = entry.refused;
        }
        today.refused = today.refused || entry.refused;
    }
    return today;
}

Expected<SeasonHistory> readHistory(const Logbook& logbook, const store::Season& season, CivilDate before)
{
    const auto last = std::min(season.finish, before - std::chrono::days{1});
    auto training = readTraining(logbook.rows(), {.athlete = season.athlete, .from = season.start, .to = last});
    if (!training)
        return failure(training);
    auto jumps = logbook.jumps(season.athlete, season.start, last);
    if (!jumps)
        return failure(jumps);
    auto sprints = logbook.sprints(season.athlete, season.start, last);
    if (!sprints)
        return failure(sprints);
    return SeasonHistory{std::move(*training), std::move(*jumps), std::move(*sprints)};
}

Expected<DaySources> readDay(const Logbook& logbook, const Identifier& season, CivilDate today,
                             const std::vector<std::string>& stepByExposure)
{
    auto record = logbook.season(season);
    if (!record)
        return failure(record);
    const auto history = readHistory(logbook, record->row, today);
    if (!history)
        return failure(history);
    const auto entries = logbook.wellness(record->row.athlete, today, today);
    if (!entries)
        return failure(entries);
    auto walk = LadderWalk::read(logbook, std::move(*record), history->training);
    if (!walk)
        return failure(walk);

    season::DayInput input;
    input.states = walk->before(today);
    auto plan = season::replanSeason(walk->setup(), input.states, today, walk->data());
    if (!plan)
        return failure(plan);
    input.plan = std::move(*plan);
    const auto evidence = evidenceOf(*walk, history->training, history->jumps, today);
    for (const auto& session : evidence)
        input.history.push_back(session.value);
    input.log = trainingLogOf(*walk, *history, evidence, today);
    input.wellness = wellnessOf(*entries);
    input.today = today;
    input.stepByExposure = stepByExposure;
    return DaySources{std::move(*walk), std::move(input)};
}

} // namespace fleetrung::logbook
