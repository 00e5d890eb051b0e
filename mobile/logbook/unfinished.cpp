#include "mobile/logbook/add.hpp"
#include "mobile/logbook/capture_mapping.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/set_under_way.hpp"

namespace fleetrung::logbook
{

Expected<void> Logbook::beginRecording(const SetUnderWay& set)
{
    if (set.set.id == Identifier{} || set.athlete == Identifier{})
        return fail(Code::InvalidArgument, "recording", "needs the set's id and the athlete before it begins");
    return store_->beginRecording(set.set.id, setUnderWayText(set));
}

Expected<void> Logbook::keepPiece(const Identifier& set, int ordinal, const motion::Recording& piece)
{
    if (auto put = store_->putPiece(set, ordinal, samplesOf(piece)); !put)
        return put;
    return piece.clockFit.empty() ? Expected<void>{} : store_->keepClockFit(set, piece.clockFit);
}

Expected<std::vector<UnfinishedSet>> Logbook::unfinishedRecordings() const
{
    const auto kept = store_->unfinishedRecordings();
    if (!kept)
        return failure(kept);
    std::vector<UnfinishedSet> unfinished;
    for (const auto& one : *kept) {
        auto& set = unfinished.emplace_back(UnfinishedSet{one.recording, std::nullopt});
        if (one.facts.empty())
            continue;
        auto facts = parseSetUnderWay(one.facts);
        if (!facts)
            return failure(facts);
        facts->set.id = one.recording;
        set.facts = std::move(*facts);
    }
    return unfinished;
}

Expected<motion::Recording> Logbook::unfinishedRecording(const Identifier& set) const
{
    const auto pieces = store_->pieces(set);
    if (!pieces)
        return failure(pieces);
    const auto unfinished = store_->unfinishedRecordings();
    if (!unfinished)
        return failure(unfinished);
    motion::Recording whole;
    whole.hasGyroscope = !pieces->empty() && !pieces->front().channels[3].empty();
    for (const auto& one : *unfinished) {
        if (one.recording != set)
            continue;
        whole.clockFit = one.clockFit;
        if (one.facts.empty())
            continue;
        const auto facts = parseSetUnderWay(one.facts);
        if (!facts)
            return failure(facts);
        whole.sensor = facts->sensor;
        whole.hasGyroscope = facts->hasGyroscope;
    }
    for (const auto& piece : *pieces) {
        const auto part = recordingOf(piece, whole.hasGyroscope, whole.sensor);
        whole.samples.insert(whole.samples.end(), part.samples.begin(), part.samples.end());
        whole.receipts.insert(whole.receipts.end(), part.receipts.begin(), part.receipts.end());
    }
    if (whole.receipts.size() != whole.samples.size())
        whole.receipts.clear();
    return whole;
}

Expected<RecordedSet> Logbook::finishRecording(const Identifier& set)
{
    const auto unfinished = unfinishedRecordings();
    if (!unfinished)
        return failure(unfinished);
    const auto found = std::ranges::find(*unfinished, set, &UnfinishedSet::recording);
    if (found == unfinished->end())
        return fail(Code::NotFound, "recording", "there is no unfinished recording of that set");
    if (!found->facts)
        return fail(Code::NotAvailable, "recording", "what was lifted was not kept; the recording can only be dropped");
    const auto recording = unfinishedRecording(set);
    if (!recording)
        return failure(recording);
    const SetUnderWay& facts = *found->facts;
    // Session and set are stored together; the pieces go only after that is on the disk.
    std::optional<RecordedSet> recorded;
    const auto stored = inTransaction([&]() -> Expected<void> {
        auto row = facts.set;
        if (row.session == Identifier{}) {
            const auto session = openSession(facts.athlete, "strength", facts.begun);
            if (!session)
                return failure(session);
            row.session = *session;
        }
        auto put = storeRecording(std::move(row), *recording, facts.source, facts.begun);
        if (!put)
            return failure(put);
        recorded = std::move(*put);
        return {};
    });
    if (!stored)
        return failure(stored);
    if (auto dropped = store_->dropPieces(set); !dropped)
        return failure(dropped);
    return std::move(*recorded);
}

Expected<void> Logbook::dropRecording(const Identifier& set)
{
    return store_->dropPieces(set);
}

} // namespace fleetrung::logbook
