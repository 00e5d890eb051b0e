// A recorded set: kept as it was, analysed once, and never stored twice.
#include "logbook_helper.hpp"

#include <bit>

#include "engine/reps/lift.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

/// Minus zero is kept as zero; everything else bit for bit.
bool sameNumber(double a, double b)
{
    return std::bit_cast<std::uint64_t>(a + 0.0) == std::bit_cast<std::uint64_t>(b + 0.0);
}

bool sameSamples(const motion::Recording& a, const motion::Recording& b)
{
    return std::ranges::equal(a.samples, b.samples, [](const motion::Sample& x, const motion::Sample& y) {
        bool same = sameNumber(x.time, y.time);
        for (Eigen::Index i = 0; i < 3; ++i)
            same = same && sameNumber(x.specificForce[i], y.specificForce[i]) &&
                   sameNumber(x.angularRate[i], y.angularRate[i]);
        return same;
    });
}

} // namespace

TEST_CASE("a recorded set is analysed, stored with its repetitions, and played back sample for sample")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto session = good(logbook.openSession(athlete, "strength", at(date("2025-12-01"))));
    const auto simulatedSet = simulated("full-squat", 4, 11);
    const auto recorded = good(logbook.recordSet(squat(session, store::SetKind::Work, 90), simulatedSet.recording, {},
                                                 at(date("2025-12-01"))));
    CHECK(recorded.added);
    REQUIRE(recorded.analysis.repetitions.size() == 4);

    const auto set = good(logbook.set(recorded.set));
    CHECK(set.measured);
    CHECK(set.row.ordinal == 1);
    CHECK(set.done == 4);
    REQUIRE(set.repetitions.size() == 4);
    for (std::size_t i = 0; i < 4; ++i) {
        const auto& stored = set.repetitions[i].row;
        const auto& analysed = recorded.analysis.repetitions[i];
        CHECK(stored.timeToPeakVelocity.value == analysed.timeToPeakVelocity.value);
        CHECK(stored.meanVelocity.uncertainty == analysed.meanVelocity.uncertainty);
        CHECK(stored.meanVelocity.value == Approx(simulatedSet.truth[i].sensor.meanVelocity).margin(0.03));
        const auto back = engineRepetition(stored);
        CHECK(back.range.value == analysed.range.value);
        CHECK(back.reversalTime.has_value() == analysed.reversalTime.has_value());
        CHECK(back.flags == analysed.flags);
    }

    const auto replayed = good(logbook.recording(recorded.set));
    CHECK(sameSamples(replayed, simulatedSet.recording));
    CHECK(replayed.sensor.accelerometerRange == simulatedSet.recording.sensor.accelerometerRange);
    CHECK(replayed.sensor.gyroscopeNoise == simulatedSet.recording.sensor.gyroscopeNoise);
    const auto again = good(reps::analyseSet(replayed, *reps::findLift("full-squat")));
    REQUIRE(again.repetitions.size() == 4);
    CHECK(again.repetitions[2].timeToPeakVelocity.value == recorded.analysis.repetitions[2].timeToPeakVelocity.value);
    CHECK(good(logbook.verify()).empty());
}

TEST_CASE("the same set a second time adds nothing")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto session = good(logbook.openSession(athlete, "strength", at(date("2025-12-01"))));
    const auto recording = simulated("full-squat", 2, 12).recording;
    auto set = squat(session, store::SetKind::Work, 90);
    set.id = numbered(0xABC); // an import names its sets by what it read
    CHECK(good(logbook.recordSet(set, recording, {}, at(date("2025-12-01")))).added);
    CHECK_FALSE(good(logbook.recordSet(set, recording, {}, at(date("2025-12-01")))).added);
    const auto sets = good(logbook.sets(session));
    REQUIRE(sets.size() == 1);
    CHECK(sets[0].repetitions.size() == 2);
}

TEST_CASE("a recording that cannot be read stores nothing")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto session = good(logbook.openSession(athlete, "strength", at(date("2025-12-01"))));
    auto recording = simulated("full-squat", 2, 13).recording;
    auto unknown = squat(session, store::SetKind::Work, 90);
    unknown.lift = "handstand";
    CHECK(codeOf(logbook.recordSet(unknown, recording, {}, at(date("2025-12-01")))) == Code::InvalidArgument);
    recording.samples.resize(10);
    CHECK_FALSE(logbook.recordSet(squat(session, store::SetKind::Work, 90), recording, {}, at(date("2025-12-01"))));
    auto lost = squat(numbered(0xDEAD), store::SetKind::Work, 90); // no such session
    CHECK_FALSE(logbook.recordSet(lost, simulated("full-squat", 1, 14).recording, {}, at(date("2025-12-01"))));
    CHECK(good(logbook.sets(session)).empty());
    CHECK(good(logbook.rows().list<store::Capture>({.deletedToo = true})).empty());
}

TEST_CASE("a recording that the program did not live to finish is found again, whole")
{
    const Folder folder;
    const auto recording = simulated("full-squat", 2, 15).recording;
    const auto half = recording.samples.size() / 2;
    {
        auto logbook = openLogbook(folder);
        auto first = recording, second = recording;
        first.samples.resize(half);
        second.samples.erase(second.samples.begin(), second.samples.begin() + static_cast<std::ptrdiff_t>(half));
        good(logbook.keepPiece(numbered(0xF00), 1, first));
        good(logbook.keepPiece(numbered(0xF00), 2, second));
    }
    auto logbook = openLogbook(folder);
    const auto unfinished = good(logbook.unfinishedRecordings());
    REQUIRE(unfinished.size() == 1);
    CHECK(unfinished[0].recording == numbered(0xF00));
    CHECK_FALSE(unfinished[0].facts);
    CHECK(codeOf(logbook.finishRecording(numbered(0xF00))) == Code::NotAvailable);
    auto found = good(logbook.unfinishedRecording(numbered(0xF00)));
    CHECK(sameSamples(found, recording));

    const auto [athlete, season] = fill(logbook);
    const auto session = good(logbook.openSession(athlete, "strength", at(date("2025-12-01"))));
    auto set = squat(session, store::SetKind::Work, 90);
    set.id = numbered(0xF00);
    good(logbook.recordSet(set, found, {}, at(date("2025-12-01"))));
    CHECK(good(logbook.unfinishedRecordings()).empty());
}

TEST_CASE("what the user said of a repetition holds for a new analysis of the same recording")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto now = at(date("2025-12-01"));
    const auto session = good(logbook.openSession(athlete, "strength", now));
    const auto recorded = good(logbook.recordSet(squat(session, store::SetKind::Probe, 80),
                                                 simulated("full-squat", 4, 16).recording, {}, now));
    const auto before = good(logbook.set(recorded.set));
    good(logbook.deleteRepetition(before.repetitions.at(1).row.id, now));
    good(logbook.relabelSide(before.repetitions.at(2).row.id, store::Side::Left, now));
    good(logbook.relabelEvidence(before.repetitions.at(3).row.id, false, now));

    CHECK_FALSE(good(logbook.reanalyse(recorded.set))); // of this engine already
    // An older engine's analysis in its place: as after an update of the program.
    auto old = good(logbook.rows().list<store::Analysis>({.set = recorded.set})).at(0);
    old.accepted = false;
    good(logbook.rows().update(old));
    store::Analysis older = old;
    older.id = numbered(0xE1);
    older.engineVersion = "0";
    older.accepted = true;
    good(logbook.rows().insert(older));
    CHECK(good(logbook.set(recorded.set)).repetitions.empty());
    CHECK(good(logbook.reanalyse(recorded.set)));

    const auto after = good(logbook.set(recorded.set));
    REQUIRE(after.repetitions.size() == 4);
    CHECK(after.done == 3);
    CHECK(after.repetitions[1].deleted);
    CHECK(after.repetitions[2].side == store::Side::Left);
    CHECK_FALSE(after.repetitions[3].evidence);

    good(logbook.restoreRepetition(after.repetitions[1].row.id, now));
    CHECK(good(logbook.set(recorded.set)).done == 4);
}

TEST_CASE("a repetition the sensor missed is added by hand, and may be struck out again")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto now = at(date("2025-12-01"));
    const auto session = good(logbook.openSession(athlete, "strength", now));
    const auto recorded = good(
        logbook.recordSet(squat(session, store::SetKind::Work, 80), simulated("full-squat", 2, 17).recording, {}, now));
    TypedRepetitions seen;
    seen.meanVelocity = 0.61;
    const auto added = good(logbook.addRepetition(recorded.set, 300.0, seen, now));
    auto set = good(logbook.set(recorded.set));
    REQUIRE(set.repetitions.size() == 3);
    CHECK(set.done == 3);
    CHECK(set.repetitions[2].row.meanVelocity.value == 0.61);
    good(logbook.deleteRepetition(added, now));
    CHECK(good(logbook.set(recorded.set)).done == 2);
}

TEST_CASE("a set without a sensor keeps what was typed, a deleted set comes back")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto session = typedSession(logbook, athlete, date("2025-12-01"), 0.55, 0.5);
    auto sets = good(logbook.sets(session));
    REQUIRE(sets.size() == 4);
    CHECK_FALSE(sets[0].measured);
    CHECK(sets[0].done == 3);
    CHECK(sets[0].meanTimeToPeak == Approx(0.55));
    CHECK(sets[3].row.ordinal == 4);
    CHECK(sets[3].done == 5);
    CHECK(sets[3].repetitions.empty());
    CHECK(codeOf(logbook.recording(sets[0].row.id)) == Code::NotFound);

    good(logbook.deleteSet(sets[1].row.id));
    CHECK(good(logbook.sets(session)).size() == 3);
    CHECK(codeOf(logbook.set(sets[1].row.id)) == Code::NotFound);
    good(logbook.restoreSet(sets[1].row.id));
    CHECK(good(logbook.sets(session)).size() == 4);
}
