// Hand-moved strokes against optical motion capture (source: tests/engine/motion/optical.hpp), as the lift "free".
//
// Goals for strokes up to 3 m/s: none missed, peak velocity 0.05 m/s, rise 0.02 m, instant of the peak 15 ms rms. The
// limits below are what was found with a modest margin; where they are wider than a goal, it is not reached, and the
// comment there says why.
#include <catch2/catch.hpp>

#include <map>

#include "engine/reps/analyse.hpp"
#include "tests/engine/reps/optical_score.hpp"

using namespace fleetrung;
using namespace fleetrung::tests;

namespace
{

/// Noise of the board as its first five seconds on the stand show it: mean spread within half seconds, per root Hz.
void tellNoise(motion::Recording& recording)
{
    constexpr std::size_t window = 143, windows = 10;
    const double perRootHz = std::sqrt(motion::samplingRate(recording) / 2);
    double force = 0, turning = 0; // variances, mean of the axes
    for (std::size_t w = 0; w < windows; ++w) {
        Eigen::Matrix<double, 6, 1> sum = Eigen::Matrix<double, 6, 1>::Zero(), squares = sum;
        for (std::size_t i = 0; i < window; ++i) {
            const auto& sample = recording.samples[w * window + i];
            Eigen::Matrix<double, 6, 1> reading;
            reading << sample.specificForce, sample.angularRate;
            sum += reading;
            squares += reading.cwiseAbs2();
        }
        const Eigen::Matrix<double, 6, 1> variance = squares / window - (sum / window).cwiseAbs2();
        force += variance.head<3>().mean() / windows;
        turning += variance.tail<3>().mean() / windows;
    }
    recording.sensor.accelerometerNoise = std::sqrt(force) / perRootHz;
    recording.sensor.gyroscopeNoise = std::sqrt(turning) / perRootHz;
}

const std::array<std::string, 7> opticalKeys{"10", "12", "14", "15", "25", "18", "08"};

std::map<std::string, Score> scoreAll(bool noiseTold)
{
    std::printf("\nStrokes against motion capture, %s\n",
                noiseTold ? "with the board's noise as measured at rest" : "with the default sensor");
    std::map<std::string, Score> scores;
    for (const std::string name : opticalTrials) {
        auto trial = readOpticalTrial(name);
        if (noiseTold)
            tellNoise(trial.recording);
        const auto analysis = reps::analyseSet(trial.recording, *reps::findLift("free"));
        REQUIRE(analysis);
        CHECK(analysis->refused.empty());
        const auto key = name.substr(0, 2);
        print(name, scores[key] = scoreTrial(trial, *analysis));
        if (key == "10" || key == "12" || key == "14" || key == "15")
            scores["lifts"].append(scores[key]);
    }
    print("10, 12, 14 and 15 together", scores["lifts"]);
    return scores;
}

bool skipped()
{
    if (!opticalDataIsHere())
        WARN("skipped: " << opticalFolder << " is not here");
    return !opticalDataIsHere();
}

} // namespace

// "lifts" are the four recordings of strokes up to 3 m/s without taps: 130 strokes in two minutes of moving each.
// Reached of the goals: none missed, peak velocity, rise. Not reached: the instant of the peak over all strokes, 19 ms
// for 15. A quarter of the strokes have two maxima within a tenth of each other, and then a few mm/s decide which is
// the peak: at our instants the optical speed is at most 9 mm/s short of its own, also where they are 163 ms apart.
// Where the optics show one maximum, the instant is good to 8 ms.
//
// The worst rises and velocities are those of 15 between 125 and 136 s and of 12 as a whole: nothing stands still
// between strokes, so for two minutes the bound on height alone holds the velocity, which wanders by 2 cm/s (12) and
// 6 cm/s (15). A lever between the sensor and the optical point explains none of it (fitted: from 16.1 to 15.8 mm).
//
// Rises are compared between the same two instants. Our range against the listed rise as it stands is 30 mm rms off,
// for 12 of the 130 are shorter by over 0.1 s: the table goes on over halts and dips of less than 0.15 m, we begin anew
// (the optical speed is within 0.06 m/s of nothing at all twelve cuts). The other 118 are 14 mm off.
//
// What is not listed has less than 0.15 m, lasts too long, or lies where the cameras were blind; the optics say whether
// it rose. Seven of 136 rose by 43 to 50 mm and were measured as 51 to 84 mm: across the 5 cm line. One is a phantom:
// 0.71 m in 25, from the finger tap at 61.0 s to the one at 63.7 s. A tap is a blow of up to 155 m/s2 over a few
// samples of 3.5 ms, which miss so much of it that the velocity steps by up to 0.4 m/s; what hardly moves between two
// of them then seems to rise. The stated uncertainty of 0.17 m does not cover that either. No tap itself is counted.
TEST_CASE("Hand-moved strokes against motion capture, of a sensor that nothing is known of", "[reps][real]")
{
    if (skipped())
        return;
    const auto scores = scoreAll(false);
    const Score& lifts = scores.at("lifts");
    CHECK(lifts.listed == 130);
    CHECK(lifts.peak.rms() < 0.028);           // found: 0.024 m/s; goal 0.05
    CHECK(lifts.rise.rms() < 0.018);           // found: 0.015 m; goal 0.02
    CHECK(lifts.listedRise.rms() < 0.020);     // found: 0.017 m; goal 0.02
    CHECK(lifts.stroke.rms() < 0.018);         // found: 0.014 m
    CHECK(lifts.cutStroke.error.size() <= 15); // found: 12
    CHECK(lifts.height.rms() < 0.006);         // found: 0.005 m
    CHECK(lifts.instant.rms() < 0.023);        // found: 0.019 s; goal 0.015: NOT reached
    CHECK(lifts.clearInstant.rms() < 0.010);   // found: 0.008 s
    CHECK(lifts.shortOfPeak.quantile(1) < 0.012);
    for (const auto& [key, score] : scores) {
        CAPTURE(key);
        CHECK(score.missed == 0);
        CHECK(score.fasterMissed == 0); // up to 5.6 m/s
    }
    for (const auto& key : opticalKeys) {
        CAPTURE(key);
        CHECK(scores.at(key).phantoms <= (key == "25" ? 1U : 0U));   // goal none: NOT reached with taps
        CHECK(scores.at(key).acrossLine <= (key == "08" ? 4U : 2U)); // found: 3, and up to 2
    }
    CHECK(scores.at("25").peak.rms() < 0.035);         // found: 0.028 m/s
    CHECK(scores.at("25").rise.rms() < 0.029);         // found: 0.023 m; goal 0.02: NOT reached with taps
    CHECK(scores.at("18").peak.rms() < 0.045);         // found: 0.038 m/s, sensor thrown about at up to 10 g
    CHECK(scores.at("18").fasterPeak.rms() < 0.045);   // found: 0.038 m/s
    CHECK(scores.at("18").fasterRise.rms() < 0.011);   // found: 0.009 m
    CHECK(scores.at("08").unlistedRise.rms() < 0.021); // found: 0.017 m, turned at up to 23 rad/s; none is listed there

    // Stated uncertainties are those of the default sensor. This board's accelerometer is three times noisier, so the
    // 95 % intervals hold 76 and 78 % of the truths: NOT the 90 to 99 % they should. Next test: with the noise told.
    CHECK(lifts.peak.coverage() > 0.70);
    CHECK(lifts.rise.coverage() > 0.72);
}

// The noise is measured on the first five seconds on the stand, without the optics: 0.45 mg and 0.009 deg/s per root
// Hz. Then what is measured is better, and the intervals hold the truth, but for 12: two minutes without
// standing, and what then errs is probably not noise alone but what changes with the attitude.
TEST_CASE("Hand-moved strokes against motion capture, of a sensor whose noise is told: stated uncertainties hold",
          "[reps][real]")
{
    if (skipped())
        return;
    const auto scores = scoreAll(true);
    const Score& lifts = scores.at("lifts");
    CHECK(lifts.listed == 130);
    for (const auto& [key, score] : scores) {
        CAPTURE(key);
        CHECK(score.missed == 0);
        CHECK(score.fasterMissed == 0);
    }
    CHECK(lifts.peak.rms() < 0.024);       // found: 0.020 m/s; goal 0.05
    CHECK(lifts.rise.rms() < 0.014);       // found: 0.012 m; goal 0.02
    CHECK(lifts.listedRise.rms() < 0.016); // found: 0.013 m
    CHECK(lifts.instant.rms() < 0.023);    // found: 0.019 s; goal 0.015: NOT reached, for the reason above
    CHECK(lifts.clearInstant.rms() < 0.010);
    CHECK(lifts.peak.coverage() > 0.90); // found: 0.93; goal 0.90 to 0.99
    CHECK(lifts.rise.coverage() > 0.90); // found: 0.95
    for (const std::string key : {"10", "14", "15", "18", "25"}) {
        CAPTURE(key);
        CHECK(scores.at(key).peak.coverage() > 0.90); // found: 0.95 to 1
        CHECK(scores.at(key).rise.coverage() > 0.90);
    }
    CHECK(scores.at("12").peak.coverage() > 0.70); // found: 0.76: NOT reached
    CHECK(scores.at("12").rise.coverage() > 0.75); // found: 0.82: NOT reached
}
