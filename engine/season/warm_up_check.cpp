#include "engine/season/warm_up_check.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"
#include "engine/season/load_correction.hpp"
#include "engine/season/session_parts.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::size_t pointsNeeded = 2;

/// Velocity at one load in one session: of the load nearest to it, brought there by the correction.
std::optional<double> velocityAt(const SessionEvidence& session, double loadKg, const LoadSlopes& slopes,
                                 const Rules& rules)
{
    const LoadPoint* nearest = nullptr;
    for (const auto& point : session.loads)
        if (point.velocity &&
            (nearest == nullptr || std::abs(point.loadKg - loadKg) < std::abs(nearest->loadKg - loadKg)))
            nearest = &point;
    if (nearest == nullptr)
        return std::nullopt;
    const auto moved = corrected(*nearest->velocity, nearest->loadKg, loadKg, slopes.velocity, rules);
    return moved ? std::optional(moved->value) : std::nullopt;
}

/// Median over the stay's sessions; nothing where too few say anything of that load.
std::optional<double> usualVelocity(const LadderDay& day, double loadKg, const LoadSlopes& slopes)
{
    std::vector<double> values;
    for (const auto& session : day.stay)
        if (const auto velocity = velocityAt(session, loadKg, slopes, day.data.rules))
            values.push_back(*velocity);
    if (static_cast<double>(values.size()) < day.data.rules.warmUpSessions)
        return std::nullopt;
    return statistics::median(values);
}

EvidenceLine pointLine(double loadKg, double lower, double error, const Rules& rules)
{
    const double limit = roundTo(rules.warmUpLow * error, 1000);
    return line("slower than usual at " + shortestText(loadKg) + " kg", lower, "m/s", "at most " + fixedText(limit, 3),
                lower <= limit, error);
}

void lighten(DayAdjustment& adjustment, double least, double error, const Rules& rules)
{
    if (least > roundTo(rules.warmUpVeryLow * error, 1000)) {
        adjustment.loadFactor = 1 - rules.warmUpStrongLoad;
        adjustment.setFactor = 1 - rules.warmUpStrongSets;
        adjustment.reason =
            "Both warm-up loads moved much slower than usual: " + fixedText(rules.warmUpStrongLoad * 100, 0) +
            " % less load and half the sets today.";
    } else if (least > roundTo(rules.warmUpLow * error, 1000)) {
        adjustment.loadFactor = 1 - rules.warmUpLoad;
        adjustment.setsOff = static_cast<int>(rules.warmUpSetsOff);
        adjustment.reason = "Both warm-up loads moved slower than usual: " + fixedText(rules.warmUpLoad * 100, 0) +
                            " % less load and one set less today.";
    } else {
        adjustment.reason = "The warm-up moved as usual: the session stays as planned. It is never made heavier.";
    }
}

} // namespace

DayAdjustment warmUpCheck(const DayInput& input, std::string_view ladderKey, std::span<const WarmUpPoint> today,
                          const SeasonData& data)
{
    DayAdjustment adjustment;
    adjustment.ladder = ladderKey;
    const auto* ladder = findLadder(data.ladders, ladderKey);
    const auto day = ladder == nullptr ? std::nullopt : lookAt(*ladder, input, data);
    if (!day) {
        adjustment.reason = "This ladder is not part of the season.";
        return adjustment;
    }
    if (today.size() < pointsNeeded) {
        adjustment.reason = "Lift two warm-up sets with full intent, at about 60 and 70 % of the day's load.";
        return adjustment;
    }
    const auto error = roundTo(velocityError(*day), 1000);
    const auto slopes = loadSlopes(day->stay, data.rules);
    std::optional<double> least; // of the two heaviest: both must be slow
    std::vector<WarmUpPoint> points(today.begin(), today.end());
    std::sort(points.begin(), points.end(), [](const auto& a, const auto& b) { return a.loadKg > b.loadKg; });
    points.resize(pointsNeeded);
    for (const auto& point : points) {
        const auto usual = usualVelocity(*day, point.loadKg, slopes);
        if (!usual) {
            adjustment.reason = "At " + shortestText(point.loadKg) + " kg fewer than " +
                                fixedText(data.rules.warmUpSessions, 0) +
                                " sessions on this rung say what is usual: nothing is taken off.";
            return adjustment;
        }
        const double lower = roundTo(*usual - point.velocity, 1000);
        adjustment.evidence.push_back(pointLine(point.loadKg, lower, error, data.rules));
        least = std::min(least.value_or(lower), lower);
    }
    adjustment.known = true;
    lighten(adjustment, *least, error, data.rules);
    return adjustment;
}

SessionPlan adjusted(SessionPlan session, const DayAdjustment& adjustment)
{
    if (!adjustment.known || (adjustment.loadFactor >= 1 && adjustment.setFactor >= 1 && adjustment.setsOff == 0))
        return session;
    for (auto& lift : session.lifts) {
        if (lift.ladder != adjustment.ladder || lift.work.empty())
            continue;
        const auto sets = static_cast<double>(lift.work.size()) * adjustment.setFactor - adjustment.setsOff;
        lift.work.resize(static_cast<std::size_t>(std::max(1.0, std::ceil(sets))));
        for (auto& set : lift.work)
            if (set.loadKg)
                set.loadKg = toPlates(*set.loadKg * adjustment.loadFactor);
        lift.maintenance.reset(); // nothing heavy is added to a day that was lightened
        lift.why.push_back({"warm-up", adjustment.reason});
    }
    return session;
}

Json dayAdjustmentJson(const DayAdjustment& adjustment)
{
    Json json{{"ladder", adjustment.ladder},
              {"known", adjustment.known},
              {"load_factor", adjustment.loadFactor},
              {"sets_off", adjustment.setsOff},
              {"set_factor", adjustment.setFactor}};
    json["evidence"] = Json::array();
    for (const auto& item : adjustment.evidence)
        json["evidence"].push_back(evidenceLineJson(item));
    json["reason"] = adjustment.reason;
    return json;
}

Expected<DayAdjustment> dayAdjustmentFromJson(const Json& json)
{
    ReadProblem problem;
    ObjectReader reader(json, "", problem);
    DayAdjustment adjustment;
    adjustment.ladder = reader.text("ladder");
    adjustment.known = reader.boolean("known");
    adjustment.loadFactor = reader.number("load_factor", 0, 1);
    adjustment.setsOff = reader.integer("sets_off", 0, 20);
    adjustment.setFactor = reader.number("set_factor", 0, 1);
    reader.eachObject("evidence", [&](ObjectReader& item) { adjustment.evidence.push_back(readEvidenceLine(item)); });
    adjustment.reason = reader.text("reason");
    reader.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return adjustment;
}

} // namespace fleetrung::season
