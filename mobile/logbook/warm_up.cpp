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

Expected<std::vector<WarmUpAnswer>> answersOf(const std::vector<store::Document>& documents)
{
    const auto checks = checksOf(documents);
    if (!checks)
        return failure(checks);
    std::map<std::string, WarmUpAnswer> last;
    for (const auto& check : *checks) {
        auto adjustment = season::dayAdjustmentFromJson(check.at("adjustment"));
        if (!adjustment)
            return failure(adjustment);
        const std::string ladder = adjustment->ladder;
        last[ladder] = {std::move(*adjustment), check.value("accepted", true), check.value("why", "")};
    }
    std::vector<WarmUpAnswer> found;
    for (auto& [ladder, answer] : last)
        found.push_back(std::move(answer));
    return found;
}

} // namespace

Expected<std::vector<season::DayAdjustment>> adjustmentsOf(const std::vector<store::Document>& documents)
{
    return answersOf(documents).map([](std::vector<WarmUpAnswer>&& answers) {
        std::vector<season::DayAdjustment> made;
        for (auto& answer : answers)
            if (answer.accepted)
                made.push_back(std::move(answer.adjustment));
        return made;
    });
}

Expected<std::vector<WarmUpAnswer>> keptAnswers(const store::Store& store, const Identifier& athlete, CivilDate day)
{
    return documentsOn(store, athlete, day).and_then(answersOf);
}

namespace
{

struct Measured {
    Identifier athlete;
    std::vector<season::WarmUpPoint> points;
    season::DayAdjustment adjustment;
};

Expected<Measured> measure(const Logbook& logbook, const store::Store& store, const Identifier& season,
                           const std::string& ladderKey, CivilDate today)
{
    const auto sources = readDay(logbook, season, today);
    if (!sources)
        return failure(sources);
    Measured measured;
    measured.athlete = sources->walk.record().row.athlete;
    const auto sessions = readTraining(store, {.athlete = measured.athlete, .from = today, .to = today});
    if (!sessions)
        return failure(sessions);
    const auto& data = sources->walk.data();
    if (const auto* ladder = season::findLadder(data.ladders, ladderKey))
        measured.points = pointsOf(*sessions, *ladder, data);
    measured.adjustment = season::warmUpCheck(sources->input, ladderKey, measured.points, data);
    return measured;
}

} // namespace

Expected<season::DayAdjustment> Logbook::proposedAdjustment(const Identifier& season, const std::string& ladder,
                                                            CivilDate today) const
{
    return measure(*this, *store_, season, ladder, today).map([](Measured&& found) { return found.adjustment; });
}

Expected<season::DayAdjustment> Logbook::warmUpCheck(const Identifier& season, const std::string& ladder,
                                                     const Moment& now)
{
    return answerWarmUpCheck(season, ladder, true, {}, now);
}

Expected<season::DayAdjustment> Logbook::answerWarmUpCheck(const Identifier& season, const std::string& ladderKey,
                                                           bool accepted, const std::string& why, const Moment& now)
{
    const auto today = now.trainingDay;
    auto measured = measure(*this, *store_, season, ladderKey, today);
    if (!measured)
        return failure(measured);
    const auto kept = documentsOn(*store_, measured->athlete, today).and_then(checksOf);
    if (!kept)
        return failure(kept);
    const auto json = season::dayAdjustmentJson(measured->adjustment);
    const Json* standing = nullptr;
    for (const auto& check : *kept)
        if (check.value("ladder", "") == ladderKey)
            standing = &check;
    // One that takes nothing off is kept only where it replaces one that did.
    const bool stands = standing != nullptr && (*standing)["adjustment"] == json &&
                        standing->value("accepted", true) == accepted && standing->value("why", "") == why;
    if (standing == nullptr ? !takesOff(measured->adjustment) : stands)
        return measured->adjustment;
    Json check{{"format", 1}, {"ordinal", kept->size() + 1}, {"ladder", ladderKey}};
    check["warm_up"] = Json::array();
    for (const auto& point : measured->points)
        check["warm_up"].push_back({{"load_kg", point.loadKg}, {"velocity_mps", point.velocity}});
    check["adjustment"] = json;
    check["accepted"] = accepted;
    check["why"] = why;
    if (const auto added = keepDocument(*store_, store::DocumentKind::WarmUpCheck, check, measured->athlete, today);
        !added)
        return failure(added);
    return measured->adjustment;
}

} // namespace fleetrung::logbook
