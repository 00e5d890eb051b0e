#include "mobile/logbook/warm_up.hpp"

#include <map>

#include "engine/season/evidence.hpp"
#include "mobile/logbook/day_input.hpp"
#include "mobile/logbook/documents.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/training.hpp"

namespace fleetrung::logbook
{
namespace
{

/// The fastest valid repetition at each warm-up load of the ladder on that day, lightest first.
std::vector<season::WarmUpPoint> pointsOf(const std::vector<SessionView>& sessions, const season::Ladder& ladder,
                                          const season::SeasonData& data)
{
    std::map<double, double> fastest;
    for (const auto& session : sessions)
        for (const auto& set : session.sets) {
            const auto* rung = set.row.ladder == ladder.key ? ladder.find(set.row.rung) : nullptr;
            if (rung == nullptr || set.row.kind != store::SetKind::WarmUp || set.row.loadKg <= 0)
                continue;
            for (const auto& view : set.repetitions) {
                const auto& metric =
                    rung->metric == season::Metric::PeakVelocity ? view.row.peakVelocity : view.row.meanVelocity;
                if (view.deleted || !view.evidence || !metric.value ||
                    (set.measured && !season::isValid(engineRepetition(view.row), {}, data.rules)))
                    continue;
                auto& best = fastest[set.row.loadKg];
                best = std::max(best, *metric.value);
            }
        }
    std::vector<season::WarmUpPoint> points;
    for (const auto& [load, velocity] : fastest)
        points.push_back({load, velocity});
    return points;
}

bool takesOff(const season::DayAdjustment& adjustment)
{
    return adjustment.known && (adjustment.loadFactor < 1 || adjustment.setFactor < 1 || adjustment.setsOff > 0);
}

Expected<std::vector<Json>> checksOf(const std::vector<store::Document>& documents)
{
    std::map<int, Json> byOrdinal; // those of one transaction have one counter
    for (const auto& document : documents) {
        if (document.kind != store::DocumentKind::WarmUpCheck)
            continue;
        auto json = checkDocument(document).and_then(
            [](const store::Document& whole) { return parseJson(whole.content.text); });
        if (!json)
            return failure(json);
        const int ordinal = json->value("ordinal", 0);
        byOrdinal[ordinal] = std::move(*json);
    }
    std::vector<Json> checks;
    for (auto& [ordinal, json] : byOrdinal)
        checks.push_back(std::move(json));
    return checks;
}

Expected<std::vector<store::Document>> documentsOn(const store::Store& store, const Identifier& athlete, CivilDate day)
{
    return store.list<store::Document>({.athlete = athlete, .from = day, .to = day});
}

} // namespace

Expected<std::vector<season::DayAdjustment>> adjustmentsOf(const std::vector<store::Document>& documents)
{
    const auto checks = checksOf(documents);
    if (!checks)
        return failure(checks);
    std::map<std::string, season::DayAdjustment> last;
    for (const auto& check : *checks) {
        auto adjustment = season::dayAdjustmentFromJson(check.at("adjustment"));
        if (!adjustment)
            return failure(adjustment);
        last[adjustment->ladder] = std::move(*adjustment);
    }
    std::vector<season::DayAdjustment> found;
    for (auto& [ladder, adjustment] : last)
        found.push_back(std::move(adjustment));
    return found;
}

Expected<std::vector<season::DayAdjustment>> keptAdjustments(const store::Store& store, const Identifier& athlete,
                                                             CivilDate day)
{
    return documentsOn(store, athlete, day).and_then(adjustmentsOf);
}

Expected<season::DayAdjustment> Logbook::warmUpCheck(const Identifier& season, const std::string& ladderKey,
                                                     const Moment& now)
{
    const auto today = now.trainingDay;
    const auto sources = readDay(*this, season, today);
    if (!sources)
        return failure(sources);
    const auto& athlete = sources->walk.record().row.athlete;
    const auto sessions = readTraining(*store_, {.athlete = athlete, .from = today, .to = today});
    if (!sessions)
        return failure(sessions);
    const auto& data = sources->walk.data();
    const auto* ladder = season::findLadder(data.ladders, ladderKey);
    const auto points = ladder == nullptr ? std::vector<season::WarmUpPoint>() : pointsOf(*sessions, *ladder, data);
    auto adjustment = season::warmUpCheck(sources->input, ladderKey, points, data);

    const auto kept = documentsOn(*store_, athlete, today).and_then(checksOf);
    if (!kept)
        return failure(kept);
    const auto json = season::dayAdjustmentJson(adjustment);
    const Json* standing = nullptr;
    for (const auto& check : *kept)
        if (check.value("ladder", "") == ladderKey)
            standing = &check;
    // One that takes nothing off is kept only where it replaces one that did.
    if (standing == nullptr ? !takesOff(adjustment) : (*standing)["adjustment"] == json)
        return adjustment;
    Json check{{"format", 1}, {"ordinal", kept->size() + 1}, {"ladder", ladderKey}};
    check["warm_up"] = Json::array();
    for (const auto& point : points)
        check["warm_up"].push_back({{"load_kg", point.loadKg}, {"velocity_mps", point.velocity}});
    check["adjustment"] = json;
    if (const auto added = keepDocument(*store_, store::DocumentKind::WarmUpCheck, check, athlete, today); !added)
        return failure(added);
    return adjustment;
}

} // namespace fleetrung::logbook
