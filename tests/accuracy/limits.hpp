// What the accuracy report is held to. The one place to tighten.
#pragma once

namespace fleetrung::accuracy
{

/// Class A, all lifts and parts of one rate together. Nothing may be missed or invented.
struct Limits {
    double rate;             ///< Hz
    double meanVelocity;     ///< m/s, rms
    double peakVelocity;     ///< m/s, rms
    double timeToPeakMoving; ///< s, rms, after a counter-movement
    double timeToPeakRest;   ///< s, rms, from a dead stop in tremor
    double range;            ///< m, rms
    double timeToPeakBias;   ///< s, after a counter-movement: no filter may move a time to peak
};

inline constexpr Limits classA[] = {
    {100, 0.030, 0.040, 0.015, 0.025, 0.030, 0.004},
    {200, 0.030, 0.040, 0.015, 0.025, 0.030, 0.004},
    {400, 0.030, 0.040, 0.015, 0.025, 0.030, 0.004},
    {1000, 0.030, 0.040, 0.015, 0.025, 0.030, 0.004},
};

/// Share of repetitions whose stated 95 % interval must hold the truth: each metric, each fault of class A and B.
inline constexpr double leastCoverage = 0.80;

/// Share of sets of class C that must be refused by name, or whose repetitions must all be flagged.
inline constexpr double leastRefused = 0.95;

} // namespace fleetrung::accuracy
