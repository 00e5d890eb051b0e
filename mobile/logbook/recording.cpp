#include "engine/base/numbers.hpp"
#include "engine/reps/lift.hpp"
#include "mobile/logbook/add.hpp"
#include "mobile/logbook/capture_mapping.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/repetition_mapping.hpp"

namespace fleetrung::logbook
{
namespace
{

/// Ids of what follows from something else are hashes of it: made twice, on whatever device, they are the same rows.
template <class... Parts> Identifier idOf(const Parts&... parts)
{
    const std::array<std::string, sizeof...(parts)> texts{std::string(parts)...};
    std::array<std::string_view, sizeof...(parts)> views{};
    std::ranges::copy(texts, views.begin());
    return hashIdentifier(views);
}

Expected<const reps::Lift*> liftOf(const std::string& key)
{
    if (const auto* lift = reps::findLift(key))
        return lift;
    return fail(Code::InvalidArgument, key, "is no lift this program knows; choose one of its lifts, or \"free\"");
}

/// Everything of a lift that an analysis depends on.
std::string settingsHash(const reps::Lift& lift)
{
    std::string text(lift.key);
    for (const double value : {lift.minimumRange, lift.maximumRange, lift.typicalRange})
        text += ' ' + shortestText(value);
    for (const int value :
         {static_cast<int>(lift.start), static_cast<int>(lift.metric), static_cast<int>(lift.returns.top),
          static_cast<int>(lift.returns.bottom), static_cast<int>(lift.ballistic)})
        text += ' ' + integerText(value);
    return identifierText(idOf(text));
}

store::Analysis analysisRow(const Identifier& set, const Identifier& capture, const reps::Lift& lift, double rate)
{
    store::Analysis row;
    row.set = set;
    row.capture = capture;
    row.engineVersion = std::string(reps::analysisVersion);
    row.settingsHash = settingsHash(lift);
    row.samplingRateHz = rate;
    row.id = idOf("analysis", identifierText(capture), row.engineVersion, row.settingsHash);
    return row;
}

Expected<void> insertAnalysis(store::Store& store, const store::Analysis& analysis, store::Side side,
                              const std::vector<store::Repetition>& repetitions)
{
    if (auto added = store.insert(analysis); !added)
        return failure(added);
    int ordinal = 0;
    for (auto row : repetitions) {
        row.analysis = analysis.id;
        row.ordinal = ++ordinal;
        row.side = side;
        row.id = idOf("repetition", identifierText(analysis.id), integerText(ordinal));
        if (auto added = store.insert(std::move(row)); !added)
            return failure(added);
    }
    return {};
}

std::vector<store::Repetition> rowsOf(const reps::SetAnalysis& analysis)
{
    std::vector<store::Repetition> rows;
    for (const auto& repetition : analysis.repetitions)
        rows.push_back(rowOf(repetition));
    return rows;
}

store::Capture captureRow(const Identifier& set, const motion::Recording& recording, const RecordingSource& source)
{
    store::Capture capture;
    capture.id = idOf("capture", identifierText(set), source.sensor, source.placement);
    capture.set = set;
    capture.sensor = source.sensor;
    capture.placement = source.placement;
    capture.samples = static_cast<std::int64_t>(recording.samples.size());
    capture.hasGyroscope = recording.hasGyroscope;
    capture.traits = traitsText(recording.sensor);
    capture.clockFit = recording.clockFit;
    return capture;
}

Expected<bool> insertCapture(store::Store& store, store::Capture capture, const motion::Recording& recording)
{
    auto hash = store.putSamples(samplesOf(recording), scalesOf(recording.sensor));
    if (!hash)
        return failure(hash);
    capture.contentHash = *hash;
    return store.insert(std::move(capture));
}

Expected<store::Capture> captureOf(const store::Store& store, const Identifier& set)
{
    const auto captures = store.list<store::Capture>({.set = set});
    if (!captures)
        return failure(captures);
    if (captures->empty())
        return fail(Code::NotFound, "recording", "this set was not recorded by a sensor, or it was deleted");
    return captures->front();
}

Expected<motion::Recording> readRecording(const store::Store& store, const store::Capture& capture)
{
    const auto sensor = parseTraits(capture.traits);
    if (!sensor)
        return failure(sensor);
    return store.samples(capture.contentHash).map([&](const store::CaptureSamples& samples) {
        auto recording = recordingOf(samples, capture.hasGyroscope, *sensor);
        recording.clockFit = capture.clockFit;
        return recording;
    });
}

} // namespace

Expected<void> Logbook::completeSet(store::LiftSet& set, const Moment& now) const
{
    if (set.done.zone.empty() && set.done.utcSeconds == 0)
        set.done = now;
    if (set.ordinal > 0)
        return {};
    const auto others = store_->list<store::LiftSet>({.session = set.session, .deletedToo = true});
    if (!others)
        return failure(others);
    for (const auto& other : *others)
        set.ordinal = std::max(set.ordinal, other.ordinal);
    ++set.ordinal;
    return {};
}

Expected<RecordedSet> Logbook::recordSet(store::LiftSet set, const motion::Recording& recording,
                                         const RecordingSource& source, const Moment& now,
                                         std::span<const BesideRecording> beside)
{
    auto recorded = storeRecording(std::move(set), recording, source, now, beside);
    if (!recorded)
        return recorded;
    if (auto dropped = store_->dropPieces(recorded->set); !dropped)
        return failure(dropped);
    return recorded;
}

Expected<RecordedSet> Logbook::storeRecording(store::LiftSet set, const motion::Recording& recording,
                                              const RecordingSource& source, const Moment& now,
                                              std::span<const BesideRecording> beside)
{
    const auto lift = liftOf(set.lift);
    if (!lift)
        return failure(lift);
    auto analysis = reps::analyseSet(recording, **lift);
    if (!analysis)
        return failure(analysis);
    for (const auto& other : beside)
        if (other.recording.samples.empty())
            return fail(Code::InvalidInput, "recording", "a second one holds no sample; nothing was kept");
    if (set.id == Identifier{})
        set.id = newIdentifier_();
    RecordedSet recorded{set.id, true, std::move(*analysis)};

    const auto capture = captureRow(set.id, recording, source);
    const auto stored = inTransaction([&]() -> Expected<void> {
        if (auto complete = completeSet(set, now); !complete)
            return complete;
        auto added = store_->insert(set);
        if (!added)
            return failure(added);
        recorded.added = *added;
        if (!recorded.added)
            return {};
        if (auto put = insertCapture(*store_, capture, recording); !put)
            return failure(put);
        for (const auto& other : beside)
            if (auto put = insertCapture(*store_, captureRow(set.id, other.recording, other.source), other.recording);
                !put)
                return failure(put);
        return insertAnalysis(*store_, analysisRow(set.id, capture.id, **lift, recorded.analysis.samplingRate),
                              set.side, rowsOf(recorded.analysis));
    });
    if (!stored)
        return failure(stored);
    return recorded;
}

Expected<Identifier> Logbook::typeSet(store::LiftSet set, const TypedRepetitions& typed, const Moment& now)
{
    if (typed.count < 0 || typed.count > 1000)
        return fail(Code::InvalidInput, "repetitions", "give how many repetitions were done, from 0 to 1000");
    if (set.id == Identifier{})
        set.id = newIdentifier_();
    set.repetitionsDone = typed.count;
    const bool anyValue = typed.meanVelocity || typed.peakVelocity || typed.timeToPeak || typed.range;
    const auto stored = inTransaction([&]() -> Expected<void> {
        if (auto complete = completeSet(set, now); !complete)
            return complete;
        const auto added = store_->insert(set);
        if (!added)
            return failure(added);
        if (!*added || !anyValue)
            return {};
        store::Analysis analysis;
        analysis.id = idOf("typed", identifierText(set.id));
        analysis.set = set.id;
        analysis.engineVersion = "typed";
        std::vector<store::Repetition> rows;
        for (int ordinal = 1; ordinal <= typed.count; ++ordinal)
            rows.push_back(typedRow(typed, ordinal));
        return insertAnalysis(*store_, analysis, set.side, rows);
    });
    if (!stored)
        return failure(stored);
    return set.id;
}

Expected<motion::Recording> Logbook::recording(const Identifier& set) const
{
    return captureOf(*store_, set).and_then([&](const store::Capture& capture) {
        return readRecording(*store_, capture);
    });
}

Expected<std::vector<KeptCapture>> Logbook::recordings(const Identifier& set) const
{
    return store_->list<store::Capture>({.set = set}).map([](const std::vector<store::Capture>& rows) {
        std::vector<KeptCapture> kept;
        for (const auto& row : rows)
            kept.push_back({row.id, {row.sensor, row.placement}, row.samples});
        return kept;
    });
}

Expected<motion::Recording> Logbook::captureRecording(const Identifier& capture) const
{
    return store_->find<store::Capture>(capture).and_then(
        [&](const store::Capture& row) { return readRecording(*store_, row); });
}

Expected<bool> Logbook::reanalyse(const Identifier& set)
{
    const auto row = store_->find<store::LiftSet>(set);
    if (!row)
        return failure(row);
    const auto lift = liftOf(row->lift);
    if (!lift)
        return failure(lift);
    const auto capture = captureOf(*store_, set);
    if (!capture)
        return failure(capture);
    auto earlier = store_->list<store::Analysis>({.set = set});
    if (!earlier)
        return failure(earlier);
    auto fresh = analysisRow(set, capture->id, **lift, 0);
    for (const auto& analysis : *earlier)
        if (analysis.id == fresh.id && analysis.accepted)
            return false;

    const auto recorded = readRecording(*store_, *capture);
    if (!recorded)
        return failure(recorded);
    const auto analysis = reps::analyseSet(*recorded, **lift);
    if (!analysis)
        return failure(analysis);
    fresh.samplingRateHz = analysis->samplingRate;
    const auto stored = inTransaction([&]() -> Expected<void> {
        for (auto& other : *earlier) {
            other.accepted = other.id == fresh.id;
            if (auto changed = store_->update(other); !changed)
                return changed;
        }
        return insertAnalysis(*store_, fresh, row->side, rowsOf(*analysis));
    });
    if (!stored)
        return failure(stored);
    return true;
}

} // namespace fleetrung::logbook
