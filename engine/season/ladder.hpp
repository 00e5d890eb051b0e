// Ladders as data: the variants of one lift, longest range first. The starting set is ladders.json beside this file.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"
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

struct Rung {
    std::string key;  ///< "half": unique on its ladder
    std::string name; ///< "Half squat"
    std::string lift; ///< lift key of the repetition finder: "half-squat"
    Metric metric = Metric::MeanVelocity;
    Band range;      ///< m, target range of motion (ballistic rungs: displacement from onset to peak velocity)
    Band targetBand; ///< s, where the rung should lead: TPV, drop time or contact time by `metric`. For show; never
                     ///< gates.
    PhaseKind earliest = PhaseKind::GeneralPreparation; ///< not entered before this phase
    PhaseKind latest = PhaseKind::Taper;                ///< left, at the latest, on the last day of this phase
    int sets = 3;
    int repetitions = 5;
    double restSeconds = 180;
    double loadRatio = 1;              ///< first load here <= ratio x last load on the rung before
    double probeShare = 0.7;           ///< probe load as a share of what the rung allows; 0 = body mass only
    std::optional<double> boxHeight;   ///< m, where the rung needs a box of this height
    std::vector<std::string> needs;    ///< equipment keys: "bar", "rack", "pins", "blocks"
    std::vector<std::string> cautions; ///< caution keys
    bool climbs = false;               ///< drop jump: on the way up, before the ladder goes down
};

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

[[nodiscard]] const Ladder* findLadder(const std::vector<Ladder>& ladders, std::string_view key);

} // namespace fleetrung::season
