// A stored run as the engine's sprint: which start it had, its fit, its force and power, and the athlete's earlier runs
// beside it. Nothing is stored: it is worked out from the run whenever it is asked for.
#pragma once

#include <optional>
#include <span>

#include "engine/sprint/flying.hpp"
#include "engine/sprint/force_velocity.hpp"
#include "engine/sprint/history.hpp"
#include "engine/sprint/splits.hpp"
#include "engine/store/records.hpp"

namespace fleetrung::logbook
{

/// Blocks: the clock starts with the gun, the reaction known where it was typed. Standing, by gates or video: with the
/// first movement, or at a beam; by a gun's clock: as blocks. By hand, falling, rolling: not known, the offset is free.
[[nodiscard]] sprint::SplitOptions splitOptions(const store::Sprint& run);

struct ForceProfile {
    sprint::ForceVelocity forceVelocity;
    double massKg = 0;
    sprint::Air air;
    bool assumedTemperature = false, assumedAltitude = false, assumedWind = false; ///< 20 degrees, the sea, still air
};

struct RunFit {
    sprint::SprintFit fit;
    sprint::SplitOptions options;
    Expected<ForceProfile> force = fail(Code::NotAvailable, "", "not worked out"); ///< else why there is none
};

/// `useAll`: also the splits that contradict the others, and those after the peak of speed. Fails as sprint::fitSplits
/// does, and with NotAvailable for a flying start.
[[nodiscard]] Expected<RunFit> fitRun(const store::Sprint& run, const store::Athlete& athlete, bool useAll = false);

/// Standard error of one end of a timed stretch [s]: gates and electronic 0.005, video of 240 pictures a second 0.004,
/// by hand 0.1 (starting values of this project; common practice, no source).
[[nodiscard]] double timingError(const store::Sprint& run);

struct FlyingRun {
    sprint::FlyingSpeed speed;
    sprint::HistoryComparison history; ///< flying runs before it over any zone
};
[[nodiscard]] Expected<FlyingRun> flyingRun(const store::Sprint& run, std::span<const store::Sprint> all);

/// Top speed against the earlier runs of the same start that carry a fit. `all` is in order of days.
[[nodiscard]] sprint::HistoryComparison compareRun(const store::Sprint& run, const RunFit& fit,
                                                   std::span<const store::Sprint> all, const store::Athlete& athlete);

/// All that can be said of one run.
struct RunStory {
    store::Sprint run;
    bool usesAll = false;                               ///< as `useAll` of fitRun
    std::optional<Expected<RunFit>> fit;                ///< none for a flying start
    std::optional<Expected<FlyingRun>> flying;          ///< of a flying start
    std::optional<sprint::HistoryComparison> topSpeeds; ///< where there is a fit
};
[[nodiscard]] RunStory runStory(const store::Sprint& run, std::span<const store::Sprint> all,
                                const store::Athlete& athlete, bool useAll);

} // namespace fleetrung::logbook
