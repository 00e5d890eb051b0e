#include <catch2/catch.hpp>

#include <limits>

#include "tests/engine/jumps/scoring.hpp"

using namespace fleetrung;
using namespace fleetrung::jumps;
using namespace fleetrung::jumps::test;

namespace
{

constexpr std::uint64_t seed = 4;

simulator::SimulatedSet simulated(const simulator::SetPlan& plan, double rate, std::string_view part = "A",
                                  bool gyroscope = true)
{
    simulator::SensorPlan sensor;
    sensor.rate = rate;
    sensor.part = part;
    sensor.randomMounting = true;
    sensor.hasGyroscope = gyroscope;
    auto set = simulator::simulateSet(plan, sensor, seed);
    REQUIRE(set);
    return std::move(*set);
}

simulator::SetPlan dropJumps()
{
    simulator::SetPlan plan;
    plan.lift = "drop-jump";
    plan.repetitions = 4;
    plan.range = 0.30;
    plan.contactTime = 0.210;
    plan.jumpHeight = 0.35745;
    plan.velocityLoss = 0;
    plan.speedScatter = 0;
    return plan;
}

JumpAnalysis analysed(const motion::Recording& recording, const Request& request = {})
{
    auto analysis = analyseJumps(recording, request);
    REQUIRE(analysis);
    return std::move(*analysis);
}

} // namespace

// Contact 0.210 s and flight 0.540 s: h = g t^2 / 8 = 0.35745 m, h / contact = 1.7022 m/s, flight / contact = 2.5714;
// arithmetic with g = 9.80665 m/s2. The two forms: PMC9750644, table 1, and Healy, Kenny, Harrison 2017,
// doi:10.1123/ijspp.2017-0511.
TEST_CASE("A drop jump of known contact and flight has its height and both strength indices, never mixed", "[jumps]")
{
    const auto set = simulated(dropJumps(), 1000, "perfect");
    const auto analysis = analysed(set.recording);
    CHECK(analysis.gravity == 9.80665);
    REQUIRE(analysis.jumps.size() == 4);
    for (const auto& jump : analysis.jumps) {
        CHECK(jump.kind == Kind::Drop);
        CHECK(jump.contact->value == Approx(0.210).margin(0.0007));
        CHECK(jump.flight->value == Approx(0.540).margin(0.0007));
        CHECK(jump.height->value == Approx(0.35745).margin(0.001));
        CHECK(jump.rsi->value == Approx(1.7022).epsilon(0.005));
        CHECK(jump.flightContactRatio->value == Approx(2.5714).epsilon(0.005));
        CHECK(jump.height->value == Approx(heightFromFlight(jump.flight->value, 9.80665)));
        CHECK(jump.rsi->value == Approx(jump.height->value / jump.contact->value));
        CHECK(jump.flightContactRatio->value == Approx(jump.flight->value / jump.contact->value));
        CHECK(stretchShortening(jump.contact->value) == StretchShortening::Fast);
        CHECK(jump.effectiveDrop->value == Approx(0.30).margin(0.03));
        CHECK(jump.flags == 0);
    }
}

TEST_CASE("The stated uncertainty follows from the instants: a late take-off lengthens contact and shortens flight",
          "[jumps]")
{
    const auto set = simulated(dropJumps(), 200);
    const auto jump = analysed(set.recording).jumps.at(0);
    const double c = jump.contact->value;
    const double t = jump.flight->value;
    const double rsi = jump.rsi->value;
    const double first = jump.landing->uncertainty;
    const double off = jump.takeoff.uncertainty;
    const double second = jump.secondLanding->uncertainty;
    // RSI = g t^2 / (8 c) with c = takeoff - landing, t = second - takeoff, differentiated by hand.
    const double byFirst = rsi / c;
    const double byOff = -2 * rsi / t - rsi / c;
    const double bySecond = 2 * rsi / t;
    CHECK(jump.rsi->uncertainty ==
          Approx(std::sqrt(std::pow(byFirst * first, 2) + std::pow(byOff * off, 2) + std::pow(bySecond * second, 2))));
    CHECK(jump.contact->uncertainty == Approx(std::hypot(first, off)));
}

TEST_CASE("A drop from another height than the box is flagged", "[jumps]")
{
    const auto set = simulated(dropJumps(), 200);
    Request request;
    request.box = 0.31;
    for (const auto& jump : analysed(set.recording, request).jumps)
        CHECK_FALSE(has(jump.flags, Flag::DropHeightOff));
    request.box = 0.45;
    for (const auto& jump : analysed(set.recording, request).jumps)
        CHECK(has(jump.flags, Flag::DropHeightOff));
}

TEST_CASE("Only the kind asked for is shown, and a given gravity is used for heights", "[jumps]")
{
    const auto set = simulated(dropJumps(), 200);
    Request request;
    for (const auto kind : {Kind::CounterMovement, Kind::Squat}) {
        request.kind = kind;
        CHECK(analysed(set.recording, request).jumps.empty());
    }
    request.kind = Kind::Drop;
    const double standard = analysed(set.recording, request).jumps.at(0).height->value;
    request.gravity = 9.7803;
    CHECK(analysed(set.recording, request).jumps.at(0).height->value == Approx(standard * 9.7803 / 9.80665));
}

TEST_CASE("Lifts, walking and standing hold no jump", "[jumps]")
{
    for (const std::string lift :
         {"full-squat", "half-squat", "quarter-squat", "step-up", "hinge", "calf-raise", "bench-press", "drop-squat"}) {
        simulator::SetPlan plan;
        plan.lift = lift;
        plan.rackWork = true;
        plan.loadShare = 0.3;
        CHECK(analysed(simulated(plan, 200).recording).jumps.empty());
    }
    for (const bool onShoe : {false, true}) {
        simulator::SetPlan walk;
        walk.lift = "counter-movement-jump";
        walk.approach = true;
        walk.repetitions = 0;
        walk.onShoe = onShoe;
        Request request;
        request.worn = onShoe ? Worn::Shoe : Worn::Waist;
        CHECK(analysed(simulated(walk, 200).recording, request).jumps.empty());
    }
}

TEST_CASE("A sensor without gyroscope on the waist still finds every jump, and says that it had none", "[jumps]")
{
    auto plan = dropJumps();
    const auto set = simulated(plan, 200, "A", false);
    const auto result = score(analysed(set.recording), set, plan);
    CHECK(result.missed == 0);
    CHECK(result.invented == 0);
    CHECK(result.contact.worst() < 0.005);
    CHECK(result.flight.worst() < 0.005);
    CHECK(result.speed.coverage() == 1);
    for (const auto& [jump, truth] : result.pairs)
        CHECK(has(jump.flags, Flag::NoGyroscope));
}

TEST_CASE("A landing lost in a gap is flagged, and its instant is as uncertain as the gap is long", "[jumps]")
{
    auto set = simulated(dropJumps(), 200);
    const double lost = set.jumps[1].secondLanding;
    std::erase_if(set.recording.samples,
                  [lost](const motion::Sample& sample) { return std::abs(sample.time - lost) < 0.04; });
    const auto jumps = analysed(set.recording).jumps;
    REQUIRE(jumps.size() == 4);
    CHECK_FALSE(has(jumps[0].flags, Flag::Gap));
    CHECK(has(jumps[1].flags, Flag::Gap));
    REQUIRE(jumps[1].secondLanding);
    CHECK(jumps[1].secondLanding->uncertainty > 0.015);
    CHECK(std::abs(jumps[1].secondLanding->value - lost) < 2 * jumps[1].secondLanding->uncertainty);
}

TEST_CASE("Clipped impacts are flagged, and contact and flight stay", "[jumps]")
{
    auto plan = dropJumps();
    auto set = simulated(plan, 200);
    set.recording.sensor.accelerometerRange = 30;
    for (auto& sample : set.recording.samples)
        sample.specificForce = sample.specificForce.cwiseMin(30).cwiseMax(-30);
    const auto result = score(analysed(set.recording), set, plan);
    CHECK(result.missed == 0);
    CHECK(result.contact.worst() < 0.005);
    for (const auto& [jump, truth] : result.pairs)
        CHECK(has(jump.flags, Flag::Clipped));
}

TEST_CASE("What cannot be analysed is refused, with what to do", "[jumps]")
{
    const auto set = simulated(dropJumps(), 200);
    const auto codeOf = [](const motion::Recording& recording, const Request& request = {}) {
        const auto analysis = analyseJumps(recording, request);
        REQUIRE_FALSE(analysis);
        CHECK_FALSE(analysis.error().message.empty());
        return analysis.error().code;
    };
    CHECK(codeOf({}) == Code::InvalidInput);
    auto broken = set.recording;
    broken.samples[100].specificForce.x() = std::numeric_limits<double>::quiet_NaN();
    CHECK(codeOf(broken) == Code::InvalidInput);
    broken = set.recording;
    broken.samples[100].time = broken.samples[99].time;
    CHECK(codeOf(broken) == Code::InvalidInput);
    CHECK(codeOf(simulated(dropJumps(), 50).recording) == Code::NotAvailable);

    Request onShoe;
    onShoe.worn = Worn::Shoe;
    CHECK(codeOf(simulated(dropJumps(), 200, "A", false).recording, onShoe) == Code::NotAvailable);
    motion::Recording restless;
    for (int i = 0; i < 400; ++i)
        restless.samples.push_back({i / 200.0, {0, 0, 10 + 3 * std::sin(0.3 * i)}, {0, 0, 0}});
    CHECK(codeOf(restless, onShoe) == Code::NotAvailable);
    CHECK(analysed(restless).jumps.empty());
}
