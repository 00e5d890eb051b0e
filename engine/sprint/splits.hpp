// Split times to the sprint's model, with standard errors, residuals, and what was left out.
//
// The start decides what can be known. Where the clock starts at the first movement, or at a gun with a known reaction,
// the model has two unknowns; where it does not (a gun and an unknown reaction, a falling start), the offset is a third
// one, and that needs five splits, one within 10 m, the last at 30 m or more (rules of this project). Where the clock
// starts when the athlete breaks a beam some way in front of the start, the way to the beam is part of the model. A
// flying start has no acceleration to see: see flying.hpp.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/sprint/model.hpp"

namespace fleetrung::sprint
{

struct Split {
    double distance; ///< m from the start line
    double time;     ///< s of the clock
};

enum class Clock {
    FirstMovement, ///< starts with the athlete's first movement
    Gun,           ///< starts with the signal; `reaction` known or free
    Beam,          ///< starts when the athlete, from standing, breaks a beam `beamDistance` in front of the start
    Unknown        ///< falling, rolling, by hand at the first step: the offset is free
};

struct Start {
    Clock clock = Clock::FirstMovement;
    std::optional<double> reaction = {}; ///< s, of a gun start
    double beamDistance = 0;             ///< m, start line to the beam; splits count from the beam then
};

/// Times by hand from a gun come short: 0.24 s are added (the difference that World Athletics' rules use for distances
/// up to 300 m; from memory). From other starts nothing is added: no published value is known.
enum class Timing { Electronic, Hand };

struct SplitOptions {
    Start start = {};
    Timing timing = Timing::Electronic;
    bool keepAfterPeak = false; ///< also use the splits after the speed has begun to fall
    bool keepSuspects = false;  ///< also use a gate that contradicts all others
};

struct SplitResidual {
    Split split;
    double residual = 0; ///< s, measured minus fitted
    bool used = true;
    std::string why; ///< why it was not used
};

struct SprintFit {
    Model model;
    double startOffset = 0; ///< s of the clock at the first movement; fitted where `offsetFree`
    bool offsetFree = false;
    double vmaxError = 0, tauError = 0, offsetError = 0; ///< standard errors; 0 where nothing is left to judge by
    double vmaxTauCorrelation = 0;
    double residualRms = 0;               ///< s, of the used splits
    double residualDeviation = 0;         ///< s, by degrees of freedom
    std::vector<SplitResidual> residuals; ///< all splits, in order of distance
    std::vector<std::string> notes;       ///< what was left out or assumed, in sentences
};

/// Fails with InvalidInput for splits that cannot be (times that do not rise, a speed beyond 15 m/s), with NotAvailable
/// where too few or badly placed splits do not carry the model (the message says what is missing), and with
/// NotConverged.
[[nodiscard]] Expected<SprintFit> fitSplits(std::span<const Split> splits, const SplitOptions& options = {});

} // namespace fleetrung::sprint
