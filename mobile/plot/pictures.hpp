// Our pictures, made from plain values: nothing here knows a store, a season or a screen. Times in s, velocities in
// m/s.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/sprint/splits.hpp"
#include "mobile/plot/plot.hpp"

namespace fleetrung::plot
{

struct Span {
    double from = 0;
    double to = 0;
};

enum class Side { Both, Left, Right };

// --- Strike line: a time axis in ms from concentric onset; each repetition a mark at its time to peak velocity.

struct StrikeRepetition {
    int number = 1;
    double timeToPeak = 0;  ///< s
    double uncertainty = 0; ///< s, standard
    Side side = Side::Both;
    bool counts = true; ///< false: shown as a cross, it is no evidence
};

struct ContactBand {
    std::string name;
    Span seconds;
};

/// Ground contact of a sprint stride: first steps and near top speed. For scale, not a goal: time to peak velocity of a
/// bar is not the force peak of a stance. Common practice, no source.
[[nodiscard]] std::vector<ContactBand> sprintContactBands();

struct StrikeLineInput {
    std::vector<StrikeRepetition> repetitions; ///< in order; the last one is the latest
    std::optional<Span> targetBand;            ///< s
    std::vector<ContactBand> contactBands = sprintContactBands();
};
[[nodiscard]] Plot strikeLine(const StrikeLineInput& input);

// --- Stair: weeks across, rungs down (longest range at the top), planned path as a line, the path taken as steps.

struct StairStay {
    std::size_t rung = 0;
    CivilDate first{};
    CivilDate last{}; ///< included
};

struct SeasonPart {
    std::string name; ///< "general preparation"
    CivilDate first{};
    CivilDate last{};
};

struct RaceDay {
    CivilDate day{};
    std::string name;
    bool main = false;
};

struct SeasonSpan {
    CivilDate first{}; ///< week 1 begins here
    CivilDate last{};
    std::optional<CivilDate> today;
    std::vector<SeasonPart> phases;
    std::vector<RaceDay> races;
    std::optional<CivilDate> shownFrom = std::nullopt; ///< the weeks before it are not drawn; they count on
    std::optional<CivilDate> shownTo = std::nullopt;   ///< included
};

struct StairInput {
    std::string ladder;             ///< "Squat"
    std::vector<std::string> rungs; ///< longest range first; short names
    std::vector<StairStay> planned; ///< in order of days
    std::vector<StairStay> taken;   ///< in order of days
    SeasonSpan season;
};
[[nodiscard]] Plot stair(const StairInput& input);

struct StairHit {
    bool taken = false;   ///< of `taken`, else of `planned`
    std::size_t stay = 0; ///< index
};
/// The stay that a finger at that place of the picture means (weeks across, rungs down): the nearest within reach, the
/// path taken before the planned one where both are equally near.
[[nodiscard]] std::optional<StairHit> stairHit(const StairInput& input, Point place);

// --- Time to peak velocity by week against the target band. The line breaks at each change of rung: times of different
//     rungs are never joined, because a shorter range is quicker anyway.

struct TrendPoint {
    CivilDate day{};
    double seconds = 0;
    double uncertainty = 0; ///< s, standard
    Side side = Side::Both;
};

struct TrendStay {
    std::string rung;
    std::optional<Span> targetBand; ///< s
    std::vector<TrendPoint> points; ///< in order of days
};

struct TpvTrendInput {
    std::string lift;                               ///< "Squat"
    std::string quantity = "time to peak velocity"; ///< "contact time" for drop jumps
    std::vector<TrendStay> stays;                   ///< in order of days
    SeasonSpan season;
};

struct TpvHit {
    std::size_t stay = 0;  ///< index
    std::size_t point = 0; ///< index within the stay
};
/// The point that a finger at that place of the picture means (weeks across, ms up): the nearest within reach.
[[nodiscard]] std::optional<TpvHit> tpvHit(const TpvTrendInput& input, Point place);

/// `chosen`: the point that stands out, with its value.
[[nodiscard]] Plot tpvTrend(const TpvTrendInput& input, std::optional<TpvHit> chosen = {});

// --- Times of one sprint test over the season: every run a mark, the best of each day joined. Tests of different
// distance
//     or start are different pictures.

struct SprintPoint {
    CivilDate day{};
    double seconds = 0;
    std::optional<double> windMps; ///< tail wind positive; written beside the mark
};

struct SprintSeries {
    std::string test;                ///< "flying 20 m"
    std::vector<SprintPoint> points; ///< in order of days
};

struct SprintTrendInput {
    std::vector<SprintSeries> tests;
    SeasonSpan season;
};
/// The point of that test that a finger at that place of the picture means (weeks across, seconds up).
[[nodiscard]] std::optional<std::size_t> sprintHit(const SprintTrendInput& input, std::size_t which, Point place);

/// The picture of one of the tests. `chosen`: the run that stands out, with its time.
[[nodiscard]] Plot sprintTrend(const SprintTrendInput& input, std::size_t which = 0,
                               std::optional<std::size_t> chosen = {});

// --- Vertical velocity of the bar over one set, concentric phases shaded, peaks marked.

struct VelocityTraceInput {
    std::vector<double> time;      ///< s
    std::vector<double> velocity;  ///< m/s, same size
    std::vector<Span> concentric;  ///< s
    std::vector<double> peakTimes; ///< s, one a repetition
    std::size_t mostPoints = 800;  ///< the trace is thinned to about this many, keeping the extremes
};
[[nodiscard]] Plot velocityTrace(const VelocityTraceInput& input);

// --- One sprint by its splits: the fitted speed over the way, with the mean speed of each stretch; and how far each
// split
//     lies from the fit.

struct SprintStretch {
    Span metres;         ///< from one split to the next
    double speed = 0;    ///< m/s, mean
    double residual = 0; ///< s, measured less fitted, of the split at its end
    bool used = true;    ///< false: left out of the fit
};

struct SprintCurveInput {
    std::vector<Point> curve; ///< metres, m/s; in order
    std::vector<SprintStretch> stretches;
    double topSpeed = 0;          ///< m/s, of the model
    double residualDeviation = 0; ///< s; 0 where unknown
};
/// `beam`: m from the start line to the beam from which the splits count; 0 where they count from the start.
[[nodiscard]] SprintCurveInput sprintCurveInput(const sprint::SprintFit& fit, double beam);
[[nodiscard]] Plot sprintCurve(const SprintCurveInput& input);
[[nodiscard]] Plot splitResiduals(const SprintCurveInput& input);

} // namespace fleetrung::plot
