#include "mobile/logbook/training.hpp"

#include <unordered_map>

#include "engine/reps/lift.hpp"
#include "engine/statistics/robust.hpp"
#include "engine/strength/velocity_loss.hpp"
#include "mobile/logbook/edits.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{
namespace
{

struct HashOfIdentifier {
    std::size_t operator()(const Identifier& id) const // an id is a hash, or random: any eight bytes of it will do
    {
        std::size_t value = 0;
        for (std::size_t i = 0; i < sizeof value; ++i)
            value = value << 8U | id.bytes[id.bytes.size() - 1 - i];
        return value;
    }
};
template <class Value> using ById = std::unordered_map<Identifier, Value, HashOfIdentifier>;

std::optional<double> meanOf(const std::vector<double>& values)
{
    return values.empty() ? std::nullopt : std::optional(statistics::mean(values));
}

/// What the set says as a whole, from the repetitions that count.
void summarise(SetView& set)
{
    const auto* lift = reps::findLift(set.row.lift);
    const bool peak = lift != nullptr && lift->metric == reps::EvidenceMetric::PeakVelocity;
    std::vector<double> velocities, times;
    int counted = 0;
    int analysed = 0; // the others were added by the user
    for (const auto& view : set.repetitions) {
        analysed += view.row.analysis != Identifier{} ? 1 : 0;
        if (view.deleted)
            continue;
        ++counted;
        if (const auto velocity = (peak ? view.row.peakVelocity : view.row.meanVelocity).value)
            velocities.push_back(*velocity);
        if (const auto time = view.row.timeToPeakVelocity.value)
            times.push_back(*time);
    }
    // A typed set may have a count and no repetitions of its own.
    set.done = set.measured ? counted : set.row.repetitionsDone.value_or(analysed) + counted - analysed;
    set.meanTimeToPeak = meanOf(times);
    if (set.measured && velocities.size() > 1)
        set.velocityLoss = strength::velocityLoss(velocities);
}

struct Rows {
    std::vector<store::Session> sessions;
    std::vector<store::LiftSet> sets;
    std::vector<store::Capture> captures;
    std::vector<store::Analysis> analyses;
    std::vector<store::Repetition> repetitions;
    std::vector<store::EditEvent> edits;
};

Expected<Rows> readRows(const store::Store& store, store::Filter filter)
{
    Rows rows;
    const auto read = [&]<class R>(std::vector<R>& into) -> Expected<void> {
        return store.list<R>(filter).map([&](std::vector<R>&& found) { into = std::move(found); });
    };
    filter.acceptedOnly = true;
    return read(rows.sessions)
        .and_then([&] { return read(rows.sets); })
        .and_then([&] { return read(rows.captures); })
        .and_then([&] { return read(rows.analyses); })
        .and_then([&] { return read(rows.repetitions); })
        .and_then([&] { return read(rows.edits); })
        .map([&] { return std::move(rows); });
}

} // namespace

Expected<std::vector<SessionView>> readTraining(const store::Store& store, const store::Filter& filter)
{
    auto rows = readRows(store, filter);
    if (!rows)
        return failure(rows);

    std::vector<SetView> sets;
    ById<std::size_t> setOf, setOfAnalysis; // places in `sets`
    for (auto& row : rows->sets) {
        setOf[row.id] = sets.size();
        sets.emplace_back().row = std::move(row);
    }
    for (const auto& capture : rows->captures)
        sets[setOf.at(capture.set)].measured = true;
    for (const auto& analysis : rows->analyses) {
        setOfAnalysis[analysis.id] = setOf.at(analysis.set);
        sets[setOf.at(analysis.set)].samplingRateHz = analysis.samplingRateHz;
    }
    for (auto& row : rows->repetitions) {
        const auto side = row.side;
        sets[setOfAnalysis.at(row.analysis)].repetitions.push_back({std::move(row), side});
    }
    std::vector<std::vector<store::EditEvent>> edits(sets.size());
    for (auto& event : rows->edits)
        edits[setOf.at(event.set)].push_back(std::move(event));
    for (std::size_t i = 0; i < sets.size(); ++i) {
        applyEdits(sets[i].repetitions, std::move(edits[i]));
        summarise(sets[i]);
    }

    std::vector<SessionView> sessions;
    ById<std::size_t> sessionOf;
    for (auto& row : rows->sessions) {
        sessionOf[row.id] = sessions.size();
        sessions.emplace_back().row = std::move(row);
    }
    for (auto& set : sets)
        sessions[sessionOf.at(set.row.session)].sets.push_back(std::move(set));
    return sessions;
}

std::vector<reps::Repetition> countedRepetitions(const SetView& set)
{
    std::vector<reps::Repetition> counted;
    for (const auto& view : set.repetitions)
        if (!view.deleted)
            counted.push_back(engineRepetition(view.row));
    return counted;
}

} // namespace fleetrung::logbook
