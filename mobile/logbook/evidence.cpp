#include "mobile/logbook/evidence.hpp"

#include <map>
#include <tuple>

#include "engine/base/numbers.hpp"
#include "engine/reps/lift.hpp"
#include "engine/statistics/robust.hpp"
#include "engine/strength/load_velocity.hpp"
#include "engine/strength/repetition_maximum.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/repetition_mapping.hpp"
#include "mobile/logbook/training.hpp"

namespace fleetrung::logbook
{
namespace
{

constexpr double gravity = 9.80665;        // m/s2
constexpr double maximumErrorShare = 0.04; // of e1RM where a line of two loads gives no error: the prior of the rules

constexpr double fullIntentShare = 0.6; // of the day's work load; rules: warm-up loads of 60 and 70 % are full intent

using Place = std::tuple<std::string, std::string, store::Side>; // ladder, rung, side

/// One session's sets on one rung and side.
struct Group {
    Identifier session;
    CivilDate day;
    std::vector<const SetView*> sets;
};

struct Stay {
    std::string rung;
    std::optional<double> probeLoadKg;
};

/// Repetitions that may count as evidence; for a rung that is judged by the time of its drop, that time in TPV's place.
std::vector<reps::Repetition> judged(const SetView& set, season::Metric metric)
{
    std::vector<reps::Repetition> found;
    for (const auto& view : set.repetitions) {
        if (view.deleted || !view.evidence)
            continue;
        auto repetition = engineRepetition(view.row);
        if (metric == season::Metric::DropTime) {
            if (!repetition.reversalTime)
                continue;
            repetition.timeToPeakVelocity = *repetition.reversalTime;
        }
        found.push_back(repetition);
    }
    return found;
}

/// The set that speaks for the session: the probe set, else the first work set.
const SetView* speakerOf(const Group& group)
{
    for (const auto kind : {store::SetKind::Probe, store::SetKind::Work})
        for (const auto* set : group.sets)
            if (set->row.kind == kind)
                return set;
    return nullptr;
}

std::vector<strength::LoadVelocityPoint> loadVelocityPoints(const Group& group)
{
    std::map<double, double> fastest; // load -> best mean velocity
    for (const auto* set : group.sets)
        for (const auto& view : set->repetitions)
            if (!view.deleted && set->measured && set->row.loadKg > 0 && view.row.meanVelocity.value)
                fastest[set->row.loadKg] = std::max(fastest[set->row.loadKg], *view.row.meanVelocity.value);
    std::vector<strength::LoadVelocityPoint> points;
    for (const auto& [load, velocity] : fastest)
        points.push_back({load, velocity});
    return points;
}

std::optional<season::Measured> maximumFromLoads(const Group& group)
{
    const auto slowest = strength::velocityAtMaximum(group.sets.front()->row.lift);
    if (!slowest)
        return std::nullopt;
    const auto line = strength::fitLoadVelocity(loadVelocityPoints(group), slowest->velocity);
    if (!line)
        return std::nullopt;
    const double error = line->standardError > 0 ? line->standardError : maximumErrorShare * line->estimatedMaximum;
    return season::Measured{roundTo(line->estimatedMaximum, 10), roundTo(error, 10)};
}

std::optional<season::Measured> maximumFromEffort(const SetView& set)
{
    if (!set.row.effort || !set.row.repetitionsDone)
        return std::nullopt;
    const auto left = static_cast<int>(std::lround(10 - *set.row.effort));
    const auto maximum = strength::estimatedMaximum(set.row.loadKg, set.done, left);
    if (!maximum)
        return std::nullopt;
    return season::Measured{roundTo(*maximum, 10), roundTo(maximumErrorShare * *maximum, 10)};
}

/// A typed value has no error of a sensor: what it wanders from day to day is in the typical error.
std::optional<season::Measured> typedMedian(const SetView& set, store::Metric store::Repetition::*metric)
{
    std::vector<double> values;
    for (const auto& view : set.repetitions)
        if (const auto value = (view.row.*metric).value; value && !view.deleted && view.evidence)
            values.push_back(*value);
    if (values.empty())
        return std::nullopt;
    return season::Measured{roundTo(statistics::median(values), 1000), 0};
}

std::optional<season::SessionEvidence> typedEvidence(const SetView& set, const Stay& stay, const season::Rules& rules)
{
    if (stay.probeLoadKg &&
        std::abs(set.row.loadKg - *stay.probeLoadKg) > rules.loadCorrectionLimit * *stay.probeLoadKg + 1e-9)
        return std::nullopt;
    season::SessionEvidence evidence;
    evidence.source = season::EvidenceSource::Typed;
    evidence.loadKg = set.row.loadKg;
    evidence.timeToPeak = typedMedian(set, &store::Repetition::timeToPeakVelocity);
    evidence.meanVelocity = typedMedian(set, &store::Repetition::meanVelocity);
    evidence.peakVelocity = typedMedian(set, &store::Repetition::peakVelocity);
    evidence.range = typedMedian(set, &store::Repetition::range);
    return evidence;
}

std::optional<season::SessionEvidence> measuredEvidence(const Group& group, const SetView& speaker, const Stay& stay,
                                                        std::vector<reps::Repetition>& accepted, season::Metric metric,
                                                        const season::Rules& rules)
{
    season::ProbeSet probe;
    std::vector<reps::Repetition> first, others;
    for (const auto* set : group.sets) {
        if (set->row.kind == store::SetKind::WarmUp)
            continue;
        const auto repetitions = judged(*set, metric);
        auto& into = set == &speaker ? first : others;
        into.insert(into.end(), repetitions.begin(), repetitions.end());
        accepted.insert(accepted.end(), repetitions.begin(), repetitions.end());
    }
    probe.source = speaker.row.kind == store::SetKind::Probe ? season::EvidenceSource::Probe
                                                             : season::EvidenceSource::FirstWorkSet;
    probe.loadKg = speaker.row.loadKg;
    probe.probeLoadKg = stay.probeLoadKg;
    probe.repetitions = first;
    probe.others = others;
    probe.ownRange = season::ownRange(accepted);
    const auto evidence = season::evidenceFromProbe(probe, rules);
    return evidence ? std::optional(*evidence) : std::nullopt; // no evidence is no failure
}

bool byPeak(season::Metric metric)
{
    return metric == season::Metric::PeakVelocity;
}

/// Of sensor sets the first valid repetitions, of typed ones what was typed.
std::optional<season::LoadPoint> loadPoint(const std::vector<const SetView*>& sets, std::optional<double> ownRange,
                                           season::Metric metric, const season::Rules& rules)
{
    std::vector<reps::Repetition> valid;
    for (const auto* set : sets)
        if (set->measured)
            for (const auto& repetition : judged(*set, metric))
                if (season::isValid(repetition, ownRange, rules))
                    valid.push_back(repetition);
    season::LoadPoint point;
    point.loadKg = sets.front()->row.loadKg;
    if (valid.size() >= 2) {
        season::ProbeSet first;
        first.repetitions = valid;
        if (const auto evidence = season::evidenceFromProbe(first, rules)) {
            point.timeToPeak = evidence->timeToPeak;
            point.velocity = byPeak(metric) ? evidence->peakVelocity : evidence->meanVelocity;
        }
    }
    for (const auto* set : sets) {
        if (set->measured)
            continue;
        if (!point.timeToPeak)
            point.timeToPeak = typedMedian(*set, &store::Repetition::timeToPeakVelocity);
        if (!point.velocity)
            point.velocity =
                typedMedian(*set, byPeak(metric) ? &store::Repetition::peakVelocity : &store::Repetition::meanVelocity);
    }
    return point.timeToPeak || point.velocity ? std::optional(point) : std::nullopt;
}

/// Every load of the session on the rung; of the warm-up those near enough to the work to be done with full intent.
std::vector<season::LoadPoint> loadPoints(const Group& group, std::optional<double> ownRange, season::Metric metric,
                                          const season::Rules& rules)
{
    double work = 0;
    for (const auto* set : group.sets)
        if (set->row.kind == store::SetKind::Work)
            work = std::max(work, set->row.loadKg);
    std::map<double, std::vector<const SetView*>> byLoad;
    for (const auto* set : group.sets)
        if (set->row.loadKg > 0 &&
            (set->row.kind != store::SetKind::WarmUp || set->row.loadKg >= fullIntentShare * work - 1e-9))
            byLoad[set->row.loadKg].push_back(set);
    std::vector<season::LoadPoint> points;
    for (const auto& [load, sets] : byLoad)
        if (const auto point = loadPoint(sets, ownRange, metric, rules))
            points.push_back(*point);
    return points;
}

std::optional<season::Measured> maximumOf(const Group& group, const SetView& speaker)
{
    return speaker.measured ? maximumFromLoads(group) : maximumFromEffort(speaker);
}

/// Goes through the sessions in their order and remembers each rung's stay and each rung's own range.
class Gatherer
{
public:
    Gatherer(std::vector<SessionEvidence>& into, const season::SeasonData& data) : into_(into), data_(data) {}

    void add(const Place& place, const Group& group)
    {
        const auto& [ladderKey, rungKey, side] = place;
        const auto* ladder = season::findLadder(data_.ladders, ladderKey);
        const auto* rung = ladder == nullptr ? nullptr : ladder->find(rungKey);
        const auto* speaker = speakerOf(group);
        if (rung == nullptr || speaker == nullptr)
            return;
        auto& stay = stays_[{ladderKey, side}];
        if (stay.rung != rungKey)
            stay = {rungKey, std::nullopt};
        auto evidence = speaker->measured
                            ? measuredEvidence(group, *speaker, stay, accepted_[place], rung->metric, data_.rules)
                            : typedEvidence(*speaker, stay, data_.rules);
        if (speaker->row.kind == store::SetKind::Probe && !stay.probeLoadKg && speaker->row.loadKg > 0)
            stay.probeLoadKg = speaker->row.loadKg;
        if (!evidence)
            return;
        evidence->day = group.day;
        evidence->ladder = ladderKey;
        evidence->rung = rungKey;
        evidence->side = seasonSide(side);
        evidence->estimatedMaximum = maximumOf(group, *speaker);
        evidence->loads = loadPoints(group, season::ownRange(accepted_[place]), rung->metric, data_.rules);
        if (evidence->timeToPeak || evidence->meanVelocity || evidence->peakVelocity || evidence->estimatedMaximum)
            into_.push_back({std::move(*evidence), group.session});
    }

private:
    std::vector<SessionEvidence>& into_;
    const season::SeasonData& data_;
    std::map<std::pair<std::string, store::Side>, Stay> stays_;
    std::map<Place, std::vector<reps::Repetition>> accepted_;
};

std::map<Place, Group> groupsOf(const SessionView& session)
{
    std::map<Place, Group> groups;
    for (const auto& set : session.sets)
        if (!set.row.ladder.empty()) {
            auto& group = groups[{set.row.ladder, set.row.rung, set.row.side}];
            group.session = session.row.id;
            group.day = session.row.begun.trainingDay;
            group.sets.push_back(&set);
        }
    return groups;
}

/// The rung of a drop from that box: the one the athlete stands on where its box is that high, else the first that is.
const season::Rung* dropRung(const season::Ladder& ladder, const std::vector<season::LadderState>& states, double box)
{
    const auto fits = [&](const season::Rung* rung) {
        return rung != nullptr && rung->boxHeight() && std::abs(*rung->boxHeight() - box) <= season::boxTolerance;
    };
    for (const auto& state : states)
        if (state.ladder == ladder.key && fits(ladder.find(state.rung())))
            return ladder.find(state.rung());
    for (const auto& rung : ladder.rungs)
        if (fits(&rung))
            return &rung;
    return nullptr;
}

std::optional<double> heightOf(const store::Jump& jump)
{
    if (jump.height.value || !jump.flight.value)
        return jump.height.value;
    return gravity * *jump.flight.value * *jump.flight.value / 8;
}

season::SessionEvidence dropEvidence(const std::vector<const store::Jump*>& jumps)
{
    std::vector<double> contacts, contactErrors, indices;
    for (const auto* jump : jumps) {
        contacts.push_back(*jump->contact.value);
        contactErrors.push_back(jump->contact.uncertainty.value_or(0));
        if (const auto height = heightOf(*jump))
            indices.push_back(*height / *jump->contact.value);
    }
    season::SessionEvidence evidence;
    evidence.timeToPeak = {roundTo(statistics::median(contacts), 1000),
                           roundTo(statistics::median(contactErrors), 1000)};
    if (!indices.empty())
        evidence.reactiveStrength = {roundTo(statistics::median(indices), 1000), 0};
    return evidence;
}

void addDrops(std::vector<SessionEvidence>& into, const LadderWalk& walk, const std::vector<store::Jump>& jumps)
{
    const auto* ladder = season::findLadder(walk.data().ladders, "drop-jump");
    if (ladder == nullptr)
        return;
    std::map<std::tuple<CivilDate, std::string, store::Side>, std::vector<const store::Jump*>> groups;
    for (const auto& jump : jumps) {
        if (jump.kind != ladder->key || !jump.contact.value || !jump.boxHeightM)
            continue;
        const auto day = jump.done.trainingDay;
        if (const auto* rung = dropRung(*ladder, walk.on(day), *jump.boxHeightM))
            groups[{day, rung->key, jump.side}].push_back(&jump);
    }
    for (const auto& [place, group] : groups) {
        auto evidence = dropEvidence(group);
        evidence.ladder = ladder->key;
        evidence.day = std::get<0>(place);
        evidence.rung = std::get<1>(place);
        evidence.side = seasonSide(std::get<2>(place));
        into.push_back({std::move(evidence), group.front()->session.value_or(Identifier{})});
    }
}

} // namespace

std::vector<SessionEvidence> evidenceOf(const LadderWalk& walk, const std::vector<SessionView>& training,
                                        const std::vector<store::Jump>& jumps, CivilDate before)
{
    std::vector<SessionEvidence> all;
    Gatherer gatherer(all, walk.data());
    for (const auto& session : training)
        for (const auto& [place, group] : groupsOf(session))
            gatherer.add(place, group);
    addDrops(all, walk, jumps);
    std::erase_if(all, [&](const auto& evidence) { return evidence.value.day >= before; });
    std::ranges::stable_sort(all, {}, [](const auto& evidence) { return evidence.value.day; });
    return all;
}

std::optional<season::Measured> maximumOf(const SessionView& session, const std::string& ladder,
                                          const std::string& rung)
{
    std::optional<season::Measured> found;
    for (const auto& [place, group] : groupsOf(session))
        if (std::get<0>(place) == ladder && std::get<1>(place) == rung)
            if (const auto* speaker = speakerOf(group))
                found = maximumOf(group, *speaker);
    return found;
}

std::vector<SessionLoads> loadsOf(const std::vector<SessionView>& training)
{
    std::vector<SessionLoads> all;
    for (const auto& session : training)
        for (const auto& [place, group] : groupsOf(session)) {
            const auto& [ladder, rung, side] = place;
            all.push_back({group.day, ladder, rung, side, group.sets.front()->row.lift, loadVelocityPoints(group)});
        }
    return all;
}

Expected<std::vector<SessionEvidence>> readEvidence(const Logbook& logbook, const LadderWalk& walk, CivilDate before)
{
    const auto& row = walk.record().row;
    const auto last = std::min(row.finish, before - std::chrono::days{1});
    const auto training = readTraining(logbook.rows(), {.athlete = row.athlete, .from = row.start, .to = last});
    if (!training)
        return failure(training);
    const auto jumps = logbook.jumps(row.athlete, row.start, last);
    if (!jumps)
        return failure(jumps);
    return evidenceOf(walk, *training, *jumps, before);
}

Expected<std::vector<season::SessionEvidence>> Logbook::evidence(const Identifier& season, CivilDate before,
                                                                 const std::string& ladder) const
{
    const auto walk = LadderWalk::read(*this, season);
    if (!walk)
        return failure(walk);
    return readEvidence(*this, *walk, before).map([&](std::vector<SessionEvidence>&& all) {
        std::vector<season::SessionEvidence> values;
        for (auto& evidence : all)
            if (ladder.empty() || evidence.value.ladder == ladder)
                values.push_back(std::move(evidence.value));
        return values;
    });
}

} // namespace fleetrung::logbook
