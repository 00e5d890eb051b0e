// What was lifted, jumped and run, as far as loads, limits and decisions rest on it. Plain values; the caller gathers
// them from its own records.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/base/error.hpp"
#include "engine/base/json.hpp"

namespace fleetrung::season
{

/// The work of one session on one rung: its heaviest work or maintenance set.
struct WorkDone {
    CivilDate day;
    std::string ladder;
    std::string rung;
    double loadKg = 0;
    int targetRepetitions = 0; ///< 0 where nothing was planned
    int doneRepetitions = 0;
    std::optional<double> effort; ///< 1..10
    bool eased = false;           ///< a lighter day by decision: says nothing of what a full day may carry
    bool maintenance = false;     ///< a maintenance set of a rung that was left
};

/// Drop-jump contacts of one day.
struct ContactsDone {
    CivilDate day;
    int contacts = 0;
};

/// A known or estimated one-repetition maximum.
struct KnownMaximum {
    CivilDate day;
    std::string ladder;
    std::string rung;
    double loadKg = 0;
};

/// The best run of one test day under one set of conditions.
struct SpeedTest {
    CivilDate day;
    std::string conditions; ///< zone, run-in, timing, surface and shoes: only equal texts are compared
    double seconds = 0;
    std::optional<double> windMps;
};

/// Each list by day.
struct TrainingLog {
    std::vector<WorkDone> work;
    std::vector<ContactsDone> contacts;
    std::vector<KnownMaximum> maxima;
    std::vector<SpeedTest> tests;
};

[[nodiscard]] Json trainingLogJson(const TrainingLog& log);
[[nodiscard]] Expected<TrainingLog> trainingLogFromJson(const Json& json);

} // namespace fleetrung::season
