// From what was found to a sensor map. Private to engine/sensor.
#pragma once

#include <optional>
#include <vector>

#include "engine/sensor/teach_running.hpp"
#include "engine/sensor/teach_turns.hpp"

namespace fleetrung::sensor::teaching
{

/// The nearest plausible counts per gravity: whole powers of two, of ten, per m/s2, and steps that data sheets print;
/// the value itself where none lies within 1 %.
[[nodiscard]] double plausibleCountsPerGravity(double counts, double gravity);
/// Likewise counts per rad/s.
[[nodiscard]] double plausibleCountsPerRate(double counts);
/// Likewise s a count, within 0.3 %.
[[nodiscard]] double plausibleTick(double tick);
/// Likewise samples a second, within `within` (relative).
[[nodiscard]] double plausibleRate(double rate, double within);
/// What is added to a count so that rest is 0: half the range of an unsigned type, else what was measured.
[[nodiscard]] double plausibleOffset(const Table& table, const Place& place, double center, double countsPerUnit);

struct Stream {
    RunningNumbers running;
    double rate = 0; ///< samples a second
};

struct Findings {
    Accelerometer accelerometer;
    std::optional<Gyroscope> gyroscope;
    Stream accelerometerStream, gyroscopeStream; ///< the same where one characteristic carries both
};

[[nodiscard]] SensorMap mapOf(const TeachRecording& recording, const std::vector<Table>& tables,
                              const Findings& findings);

} // namespace fleetrung::sensor::teaching
