// A set that begins when the bar moves and ends when it has rested, with nobody at the phone.
#include <QCoreApplication>
#include <QElapsedTimer>
#include <catch2/catch.hpp>

#include "demo/simulator/simulator.hpp"
#include "engine/reps/lift.hpp"
#include "mobile/views/live_session.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace
{

/// Hands over a recording at once, and then waits as a sensor does that goes on sending nothing new.
class Bar : public sensor::SampleSource
{
public:
    explicit Bar(motion::Recording recording) : recording_(std::move(recording)) {}

    void start(sensor::SourceEvents events) override
    {
        for (const auto& sample : recording_.samples)
            events.sample(sample, {});
    }
    void stop() override {}
    [[nodiscard]] std::string name() const override { return "Bar sensor"; }
    [[nodiscard]] std::string clockFit() const override { return {}; }
    [[nodiscard]] motion::SensorTraits traits() const override { return recording_.sensor; }
    [[nodiscard]] bool hasGyroscope() const override { return recording_.hasGyroscope; }
    [[nodiscard]] std::optional<int> batteryPercent() const override { return std::nullopt; }

private:
    motion::Recording recording_;
};

struct Before {
    double rest;         ///< s on the rack
    int repetitions = 3; ///< of a half squat
    double after = 20;   ///< s
};

simulator::SimulatedSet set(const Before& before)
{
    simulator::SetPlan plan;
    plan.lift = "half-squat";
    plan.repetitions = before.repetitions;
    plan.stillBefore = before.rest;
    plan.stillAfter = before.after;
    const auto made = simulator::simulateSet(plan, {}, 23);
    REQUIRE(made);
    return *made;
}

/// One behind the other, the second with the time of the first behind it.
motion::Recording behind(motion::Recording first, const motion::Recording& second)
{
    const double shift = first.samples.back().time - second.samples.front().time + 0.005;
    for (auto sample : second.samples) {
        sample.time += shift;
        first.samples.push_back(sample);
    }
    return first;
}

struct Heard {
    std::vector<reps::Repetition> repetitions;
    int rests = 0;
    int pieces = 0;
    motion::Recording recording;
};

Heard listen(const motion::Recording& recording, double restToEnd)
{
    Heard heard;
    bool over = false;
    LiveSession session;
    QObject::connect(&session, &LiveSession::repetitionFound, &session,
                     [&](const reps::Repetition& repetition) { heard.repetitions.push_back(repetition); });
    QObject::connect(&session, &LiveSession::barRested, &session, [&] { ++heard.rests; });
    QObject::connect(&session, &LiveSession::pieceReady, &session, [&] { ++heard.pieces; });
    QObject::connect(&session, &LiveSession::recorded, &session,
                     [&](const motion::Recording& recorded, const std::vector<motion::Recording>&) {
                         heard.recording = recorded;
                         over = true;
                     });
    session.endAfterRest(restToEnd);
    session.listen([&] { return std::make_unique<Bar>(recording); }, *reps::findLift("half-squat"));
    QElapsedTimer since;
    // What the session's thread says of the samples is in the queue before end() asks for the recording.
    for (since.start(); since.elapsed() < 3000 && (heard.repetitions.empty() || heard.rests == 0);)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    session.end();
    for (since.start(); !over && since.elapsed() < 10000;)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    REQUIRE(over);
    return heard;
}

} // namespace

TEST_CASE("A set that nobody started is measured as one that was started, from three seconds before the bar moved")
{
    const auto made = set({.rest = 40});
    const auto heard = listen(made.recording, 15);
    REQUIRE(heard.repetitions.size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        const auto& truth = made.truth[i].sensor;
        CAPTURE(i, truth.timeToPeakVelocity, heard.repetitions[i].timeToPeakVelocity.value);
        CHECK(std::abs(heard.repetitions[i].timeToPeakVelocity.value - truth.timeToPeakVelocity) < 0.02);
        CHECK(std::abs(heard.repetitions[i].meanVelocity.value - truth.meanVelocity) < 0.05);
    }
    const double lead = made.truth.front().sensor.eccentricStart - heard.recording.samples.front().time;
    CAPTURE(lead);
    CHECK(lead > 2);
    CHECK(lead < 4);
    CHECK(heard.rests == 1);
    CHECK(heard.pieces > 5);
}

TEST_CASE("A bump that is no set leaves nothing behind, and the set after it is found")
{
    motion::Recording bumped = set({.rest = 20, .repetitions = 0, .after = 20}).recording;
    for (auto& sample : bumped.samples) // plates are pushed on
        if (sample.time > 8 && sample.time < 8.4)
            sample.specificForce.x() += 3 * std::sin(60 * sample.time);
    const auto made = set({.rest = 10});
    const auto heard = listen(behind(bumped, made.recording), 15);
    REQUIRE(heard.repetitions.size() == 3);
    const double lead = heard.repetitions.front().eccentricStart - heard.recording.samples.front().time;
    CAPTURE(lead);
    CHECK(lead < 4); // not from the bump on
    CHECK(heard.rests == 1);
}

TEST_CASE("A bar that only hangs there begins nothing, and its rest is not told")
{
    const auto heard = listen(set({.rest = 30, .repetitions = 0, .after = 30}).recording, 15);
    CHECK(heard.repetitions.empty());
    CHECK(heard.rests == 0);
    CHECK(heard.pieces == 0);
    CHECK(heard.recording.samples.empty());
}

TEST_CASE("Where sets do not end by themselves the rest is not told")
{
    const auto heard = listen(set({.rest = 10}).recording, 0);
    CHECK(heard.repetitions.size() == 3);
    CHECK(heard.rests == 0);
}
