// Ladders as data: the variants of one lift, longest range first. The starting set is ladders.json beside this file.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/base/json.hpp"
#include "engine/season/entered_length.hpp"
#include "engine/season/phase_kind.hpp"

namespace fleetrung::season
{

/// A closed interval [low, high], SI.
struct Band {
    double low = 0;
    double high = 0;
};

/// Which number is a rung's evidence of strength beside the time to peak velocity.
enum class Metric { MeanVelocity, PeakVelocity, DropTime, ContactTime };
[[nodiscard]] std::string_view
metricKey(Metric metric); ///< "mean-velocity", "peak-velocity", "drop-time", "contact-time"

/// What tells whether strength on a rung has levelled off: e1RM for full, parallel and half range and hinges; below
/// that, velocity at the probe load.
enum class StrengthMeasure { OneRepetitionMaximum, ProbeVelocity };
[[nodiscard]] std::string_view strengthKey(StrengthMeasure measure); ///< "e1rm", "velocity"

/// A box serves a rung whose box is this much higher or lower: 14 in serves 35 cm. Starting value of this project.
inline constexpr double boxTolerance = 0.01; // m

struct Rung {
    std::string key;     ///< "half": unique on its ladder
    std::string pattern; ///< "Half squat", "Step-up, {box}": the name with a place for the box
    std::string name;    ///< "Half squat", "Step-up, 45 cm": the name with the ladder's own box
    std::string lift;    ///< lift key of the repetition finder: "half-squat"
    Metric metric = Metric::MeanVelocity;
    Band range;      ///< m, target range of motion (ballistic rungs: displacement from onset to peak velocity)
    Band targetBand; ///< s, where the rung should lead: TPV, drop time or contact time by `metric`. For show; never
                     ///< gates.
    PhaseKind earliest = PhaseKind::GeneralPreparation; ///< not entered before this phase
    PhaseKind latest = PhaseKind::Taper;                ///< left, at the latest, on the last day of this phase
    int sets = 3;
    int repetitions = 5;
    double restSeconds = 180;
    double loadRatio = 1;    ///< first load here <= ratio x last load on the rung before
    std::string loadRule;    ///< how its load is found, in plain words
    double probeShare = 0.7; ///< probe load as a share of what the rung allows; 0 = body mass only
    StrengthMeasure strength = StrengthMeasure::OneRepetitionMaximum;
    std::optional<EnteredLength> box;  ///< where the rung needs one of this height, within `boxTolerance`
    std::vector<std::string> needs;    ///< equipment keys: "bar", "rack", "pins", "blocks"
    std::vector<std::string> cautions; ///< caution keys
    bool climbs = false;               ///< drop jump: on the way up, before the ladder goes down
    std::string origin;                ///< where the rung comes from; what its numbers rest on stands in ladders.json

    [[nodiscard]] std::optional<double> boxHeight() const; ///< m
};

/// A rung's name with the height of a box, as entered or in the other unit.
[[nodiscard]] std::string rungNameWith(const Rung& rung, const EnteredLength& box, LengthUnit unit);

struct Ladder {
    std::string key;                  ///< "squat"
    std::string name;                 ///< "Squat"
    bool heavy = true;                ///< at most one heavy ladder steps in 7 days
    bool oneSided = false;            ///< left and right are kept apart
    int order = 0;                    ///< place in a session: fastest first
    double typicalErrorShare = 0.08;  ///< prior typical error of TPV as a share of the entry baseline
    std::vector<std::string> regions; ///< body regions the lift loads: "knee", "hamstring", ...
    std::vector<Rung> rungs;          ///< longest range first

    [[nodiscard]] const Rung* find(std::string_view rungKey) const; ///< null where there is none
    [[nodiscard]] std::optional<int> indexOf(std::string_view rungKey) const;
};

/// Fails with InvalidInput; the place is the key path ("ladders[0].rungs[2].range_m"). Refuses double keys, bands that
/// are upside down, phases in the wrong order, and ranges that grow down the ladder (climbing rungs apart).
[[nodiscard]] Expected<std::vector<Ladder>> parseLadders(std::string_view json);

/// One ladder alone, in the form it has in that list; the same failures.
[[nodiscard]] Expected<Ladder> parseLadder(std::string_view json);
[[nodiscard]] Json ladderJson(const Ladder& ladder);

/// The checks alone, for ladders that a form filled in; `place` stands before the key of an error.
[[nodiscard]] Expected<void> checkLadder(const Ladder& ladder, const std::string& place);

[[nodiscard]] const Ladder* findLadder(const std::vector<Ladder>& ladders, std::string_view key);

} // namespace fleetrung::season
