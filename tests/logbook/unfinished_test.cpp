// How samples came, second sensors, and sets that the program did not live to finish.
#include "logbook_helper.hpp"

#include "engine/motion/stream_clock.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

/// As a radio would have brought it: ten samples a notification.
motion::Recording received(const std::string& lift, int repetitions, std::uint64_t seed)
{
    auto recording = simulated(lift, repetitions, seed).recording;
    recording.clockFit =
        motion::clockFitText({motion::ClockFit::By::Counter, 0.005, 17.25, 1.00003, 400, 0.004, 1'000'000'000'000});
    for (std::size_t i = 0; i < recording.samples.size(); ++i)
        recording.receipts.push_back(
            {static_cast<std::int64_t>(401 + i), 1'017'300'000'000 + static_cast<std::int64_t>(i / 10) * 50'123'457});
    return recording;
}

SetUnderWay underWay(const Identifier& athlete, const motion::Recording& recording)
{
    SetUnderWay under;
    under.athlete = athlete;
    under.set = squat({}, store::SetKind::Probe, 92.5);
    under.set.id = numbered(0xF01);
    under.set.repetitionsPlanned = 3;
    under.set.boxHeightM = 0.3;
    under.source = {"C0:FF:EE:00:00:01", "bar"};
    under.sensor = recording.sensor;
    under.begun = at(date("2025-12-01"));
    return under;
}

void keepInPieces(Logbook& logbook, const Identifier& set, const motion::Recording& recording)
{
    constexpr std::size_t aSecond = 200;
    int ordinal = 0;
    for (std::size_t from = 0; from < recording.samples.size(); from += aSecond) {
        const auto to = std::min(from + aSecond, recording.samples.size());
        const auto cut = [&](const auto& all) {
            return std::remove_cvref_t<decltype(all)>(all.begin() + static_cast<std::ptrdiff_t>(from),
                                                      all.begin() + static_cast<std::ptrdiff_t>(to));
        };
        auto piece = recording;
        piece.samples = cut(recording.samples);
        piece.receipts = cut(recording.receipts);
        good(logbook.keepPiece(set, ordinal++, piece));
    }
}

bool same(const motion::Recording& a, const motion::Recording& b)
{
    if (a.samples.size() != b.samples.size() || a.receipts != b.receipts || a.clockFit != b.clockFit ||
        a.hasGyroscope != b.hasGyroscope || a.sensor.accelerometerNoise != b.sensor.accelerometerNoise)
        return false;
    for (std::size_t i = 0; i < a.samples.size(); ++i)
        if (a.samples[i].time != b.samples[i].time || a.samples[i].specificForce != b.samples[i].specificForce ||
            a.samples[i].angularRate != b.samples[i].angularRate)
            return false;
    return true;
}

} // namespace

TEST_CASE("counters, arrivals and the clock's fit of a recording come back bit for bit")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto now = at(date("2025-12-01"));
    const auto session = good(logbook.openSession(athlete, "strength", now));
    const auto recording = received("full-squat", 2, 31);
    const auto recorded = good(logbook.recordSet(squat(session, store::SetKind::Work, 80), recording, {}, now));
    CHECK(same(good(logbook.recording(recorded.set)), recording));
}

TEST_CASE("a second sensor's recording stands beside the first and changes no number of the set")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto now = at(date("2025-12-01"));
    const auto session = good(logbook.openSession(athlete, "strength", now));
    const auto bar = received("full-squat", 2, 32), shoe = received("full-squat", 2, 33);
    const auto record = [&](const motion::Recording& second) {
        const std::array beside{logbook::BesideRecording{{"second", "shoe"}, second}};
        return logbook.recordSet(squat(session, store::SetKind::Work, 80), bar, {"first", "bar"}, now, beside);
    };
    CHECK(codeOf(record({})) == Code::InvalidInput);
    CHECK(good(logbook.sets(session)).empty());
    const auto set = good(record(shoe)).set;
    const auto kept = good(logbook.recordings(set));
    REQUIRE(kept.size() == 2);
    CHECK(kept[0].source.placement == "bar");
    CHECK(kept[1].source.sensor == "second");
    CHECK(kept[1].source.placement == "shoe");
    CHECK(same(good(logbook.captureRecording(kept[1].capture)), shoe));
    CHECK(same(good(logbook.recording(set)), bar));
    CHECK(good(logbook.set(set)).repetitions.size() == 2);
    CHECK_FALSE(good(logbook.reanalyse(set)));
}

TEST_CASE("a set that the program did not live to finish is finished at the next start, its repetitions there once")
{
    const Folder folder;
    const auto recording = received("full-squat", 3, 34);
    Identifier athlete;
    {
        auto logbook = openLogbook(folder);
        athlete = fill(logbook).athlete;
        good(logbook.beginRecording(underWay(athlete, recording)));
        keepInPieces(logbook, numbered(0xF01), recording);
    } // killed here: nothing was said to be over
    auto logbook = openLogbook(folder, 1000);
    const auto unfinished = good(logbook.unfinishedRecordings());
    REQUIRE(unfinished.size() == 1);
    REQUIRE(unfinished[0].facts);
    const auto& facts = *unfinished[0].facts;
    CHECK(facts.athlete == athlete);
    CHECK(facts.set.id == numbered(0xF01));
    CHECK(facts.set.lift == "full-squat");
    CHECK(facts.set.rung == "full");
    CHECK(facts.set.kind == store::SetKind::Probe);
    CHECK(facts.set.loadKg == 92.5);
    CHECK(facts.set.boxHeightM == 0.3);
    CHECK(facts.source.sensor == "C0:FF:EE:00:00:01");
    CHECK(same(good(logbook.unfinishedRecording(numbered(0xF01))), recording));

    const auto finished = good(logbook.finishRecording(numbered(0xF01)));
    CHECK(finished.added);
    CHECK(finished.analysis.repetitions.size() == 3);
    CHECK(good(logbook.unfinishedRecordings()).empty());
    const auto sessions = good(logbook.sessions(athlete));
    REQUIRE(sessions.size() == 1);
    CHECK(sessions[0].begun.trainingDay == date("2025-12-01"));
    const auto sets = good(logbook.sets(sessions[0].id));
    REQUIRE(sets.size() == 1);
    CHECK(sets[0].repetitions.size() == 3);
    CHECK(same(good(logbook.recording(numbered(0xF01))), recording));
    CHECK(codeOf(logbook.finishRecording(numbered(0xF01))) == Code::NotFound);
}

TEST_CASE("killed after a set was stored and before its pieces went, finishing it again adds nothing")
{
    const Folder folder;
    const auto recording = received("full-squat", 3, 35);
    Identifier athlete;
    {
        auto logbook = openLogbook(folder);
        athlete = fill(logbook).athlete;
        const auto under = underWay(athlete, recording);
        auto set = under.set;
        set.session = good(logbook.openSession(athlete, "strength", under.begun));
        good(logbook.recordSet(set, recording, under.source, under.begun));
        good(logbook.beginRecording(under));
        keepInPieces(logbook, set.id, recording);
    }
    auto logbook = openLogbook(folder, 1000);
    CHECK_FALSE(good(logbook.finishRecording(numbered(0xF01))).added);
    CHECK(good(logbook.unfinishedRecordings()).empty());
    const auto sessions = good(logbook.sessions(athlete));
    REQUIRE(sessions.size() == 1);
    const auto sets = good(logbook.sets(sessions[0].id));
    REQUIRE(sets.size() == 1);
    CHECK(sets[0].repetitions.size() == 3);
}

TEST_CASE("a recording too short to be read stays as it was, without a session made for it, and can be dropped")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto athlete = fill(logbook).athlete;
    auto recording = received("full-squat", 1, 36);
    recording.samples.resize(12);
    recording.receipts.resize(12);
    good(logbook.beginRecording(underWay(athlete, recording)));
    keepInPieces(logbook, numbered(0xF01), recording);
    CHECK_FALSE(logbook.finishRecording(numbered(0xF01)));
    CHECK(good(logbook.sessions(athlete)).empty());
    CHECK(good(logbook.unfinishedRecordings()).size() == 1);
    good(logbook.dropRecording(numbered(0xF01)));
    CHECK(good(logbook.unfinishedRecordings()).empty());
}
