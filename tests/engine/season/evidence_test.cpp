#include <catch2/catch.hpp>

#include "tests/engine/season/example.hpp"

using namespace fleetrung;
using namespace fleetrung::season;
using namespace fleetrung::season::example;
using reps::Repetition;

namespace
{

const Rules& rules()
{
    return standardSeasonData().rules;
}

Repetition repetition(double timeToPeak, double range = 0.40, double meanVelocity = 0.70)
{
    Repetition result;
    result.timeToPeakVelocity = {timeToPeak, 0.004};
    result.range = {range, 0.005};
    result.meanVelocity = {meanVelocity, 0.01};
    result.peakVelocity = {meanVelocity * 1.6, 0.02};
    return result;
}

ProbeSet probeOf(const std::vector<Repetition>& repetitions)
{
    ProbeSet probe;
    probe.day = on("2026-02-02");
    probe.ladder = "squat";
    probe.rung = "half";
    probe.loadKg = 100;
    probe.probeLoadKg = 100;
    probe.repetitions = repetitions;
    probe.ownRange = 0.40;
    return probe;
}

} // namespace

TEST_CASE("A session's value is the median of the probe's three repetitions", "[season][evidence]")
{
    const std::vector repetitions{repetition(0.3104), repetition(0.2901), repetition(0.2956)};
    const auto evidence = evidenceFromProbe(probeOf(repetitions), rules());
    REQUIRE(evidence);
    CHECK(evidence->timeToPeak->value == 0.296); // rounded to 1 ms
    CHECK(evidence->meanVelocity->value == 0.70);
    CHECK(evidence->validShare == 1);
}

TEST_CASE("Only the first three repetitions of a set are evidence", "[season][evidence]")
{
    const std::vector repetitions{repetition(0.300), repetition(0.300), repetition(0.300), repetition(0.200),
                                  repetition(0.200)};
    CHECK(evidenceFromProbe(probeOf(repetitions), rules())->timeToPeak->value == 0.300);
}

TEST_CASE("A repetition cut short is no evidence: depth must stay within 7 % of the athlete's own",
          "[season][evidence]")
{
    CHECK(isValid(repetition(0.3, 0.372), 0.40, rules())); // 7 % of 40 cm are 2.8 cm
    CHECK_FALSE(isValid(repetition(0.3, 0.371), 0.40, rules()));
    CHECK(isValid(repetition(0.3, 0.12), 0.14, rules())); // 2 cm are always allowed
    CHECK_FALSE(isValid(repetition(0.3, 0.117), 0.14, rules()));
    CHECK(isValid(repetition(0.3, 0.20), std::nullopt, rules())); // the first six make the athlete's own range
    const std::vector repetitions{repetition(0.250, 0.34), repetition(0.300), repetition(0.310)};
    const auto evidence = evidenceFromProbe(probeOf(repetitions), rules());
    CHECK(evidence->timeToPeak->value == Approx(0.305));
    CHECK(evidence->validShare == Approx(0.667));
    const std::vector cut{repetition(0.250, 0.34), repetition(0.260, 0.34), repetition(0.310)};
    CHECK(evidenceFromProbe(probeOf(cut), rules()).error().code == Code::NotAvailable);
}

TEST_CASE("The athlete's own range is the median of the first six repetitions", "[season][evidence]")
{
    std::vector<Repetition> accepted;
    for (const double range : {0.40, 0.41, 0.39, 0.42, 0.38})
        accepted.push_back(repetition(0.3, range));
    CHECK_FALSE(ownRange(accepted));
    accepted.push_back(repetition(0.3, 0.60));
    CHECK(*ownRange(accepted) == Approx(0.405));
    accepted.push_back(repetition(0.3, 0.90));
    CHECK(*ownRange(accepted) == Approx(0.405));
}

TEST_CASE("A two-peaked repetition gives velocity, but no time to peak", "[season][evidence]")
{
    std::vector repetitions{repetition(0.300), repetition(0.310), repetition(0.320)};
    repetitions[0].flags = reps::Flags{} | reps::Flag::TwoPeaked;
    CHECK(evidenceFromProbe(probeOf(repetitions), rules())->timeToPeak->value == Approx(0.315));
    repetitions[1].flags = reps::Flags{} | reps::Flag::TwoPeaked;
    const auto evidence = evidenceFromProbe(probeOf(repetitions), rules());
    REQUIRE(evidence);
    CHECK_FALSE(evidence->timeToPeak);
    CHECK(evidence->meanVelocity);
}

TEST_CASE("Clipped repetitions and those with a gap are not valid", "[season][evidence]")
{
    auto clipped = repetition(0.3);
    clipped.flags = reps::Flags{} | reps::Flag::Clipped;
    CHECK_FALSE(isValid(clipped, std::nullopt, rules()));
    auto gap = repetition(0.3);
    gap.flags = reps::Flags{} | reps::Flag::Gap;
    CHECK_FALSE(isValid(gap, std::nullopt, rules()));
}

TEST_CASE("A set more than 15 % off the probe load is no evidence, whatever is known of load", "[season][evidence]")
{
    const std::vector repetitions{repetition(0.300), repetition(0.310), repetition(0.320)};
    auto probe = probeOf(repetitions);
    probe.loadKg = 115; // beyond 3 % the load correction decides
    CHECK(evidenceFromProbe(probe, rules()));
    probe.loadKg = 116;
    const auto refused = evidenceFromProbe(probe, rules());
    REQUIRE_FALSE(refused);
    CHECK(refused.error().message.find("116.0 kg is more than 15 % off the probe load of 100.0 kg") !=
          std::string::npos);
    probe.source = EvidenceSource::FirstWorkSet; // in the place of a probe set: within 3 %
    probe.loadKg = 103;
    CHECK(evidenceFromProbe(probe, rules()));
    probe.loadKg = 104;
    CHECK_FALSE(evidenceFromProbe(probe, rules()));
    probe.probeLoadKg.reset(); // the first session of a stay sets the load
    CHECK(evidenceFromProbe(probe, rules()));
}

TEST_CASE("Evidence is kept by value: written and read back it is the same", "[season][evidence]")
{
    auto evidence = session(on("2026-02-02"), "half", 296);
    evidence.reactiveStrength = reps::Measured{1.702, 0.05};
    evidence.side = Side::Left;
    const auto text = jsonText(evidenceJson(evidence));
    const auto back = evidenceFromJson(*parseJson(text));
    REQUIRE(back);
    CHECK(jsonText(evidenceJson(*back)) == text);
    CHECK_FALSE(evidenceFromJson(*parseJson("{\"day\": \"2026-02-02\"}")));
}
