// The athlete's own line of velocity against load on one lift, and the 1RM it points to. Own lines only: published
// general equations for the squat differ from each other by more than 10 % of 1RM.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"

namespace fleetrung::strength
{

struct LoadVelocityPoint {
    double loadKg = 0;   ///< kg
    double velocity = 0; ///< m/s, mean velocity of the best repetition at that load
};

struct LoadVelocityProfile {
    double slope = 0;            ///< m/s per kg, negative
    double velocityAtZero = 0;   ///< m/s (v0)
    double loadAtZero = 0;       ///< kg (L0), where the line reaches zero velocity
    double estimatedMaximum = 0; ///< kg, e1RM: load at `velocityAtMaximum`
    double standardError = 0;    ///< kg, of e1RM; 0 with two loads
    double velocityAtMaximum = 0;
    int points = 0;
    /// kg, where e1RM lies with 95 % confidence (Fieller EC, Some problems in interval estimation, J R Stat Soc B
    /// 1954;16:175-185); none with two loads, or where the slope itself is not beyond doubt.
    std::optional<double> maximumLow, maximumHigh;
};

/// Robust: Theil and Sen's line, which one odd load does not bend; its errors come from the median absolute deviation.
enum class LineMethod { LeastSquares, Robust };

/// Needs two loads at least 10 % apart, with velocity falling as load grows: else NotAvailable, and the message says
/// what to lift next. InvalidInput for numbers that cannot be (negative load, velocity <= 0).
[[nodiscard]] Expected<LoadVelocityProfile> fitLoadVelocity(std::span<const LoadVelocityPoint> points,
                                                            double velocityAtMaximum,
                                                            LineMethod method = LineMethod::LeastSquares);

/// Lines of several sessions of one athlete, lift and rung that share their slope: each session has its own height (the
/// day), the slope is the season's. So a session with one load tells a maximum too.
struct PooledLoadVelocity {
    struct Session {
        double estimatedMaximum = 0; ///< kg
        double standardError = 0;    ///< kg
        int points = 0;              ///< 0: the session had none, the other numbers say nothing
    };
    double slope = 0;             ///< m/s per kg, negative
    double slopeError = 0;        ///< standard error
    double residualDeviation = 0; ///< m/s
    std::vector<Session> sessions;
};

/// Ordinary least squares with one column a session. Fails as fitLoadVelocity; within a session the loads must differ
/// by 10 % at least once, and two points more than unknowns are needed.
[[nodiscard]] Expected<PooledLoadVelocity> poolLoadVelocity(std::span<const std::vector<LoadVelocityPoint>> sessions,
                                                            double velocityAtMaximum);

struct MaximumVelocity {
    std::string_view lift; ///< lift key
    double velocity;       ///< m/s, mean (propulsive) velocity of the repetition at 1RM
    double spread;         ///< m/s, between athletes
    std::string_view source;
};

/// Velocity at 1RM by lift, each with its source; none for lifts without a published value.
[[nodiscard]] std::optional<MaximumVelocity> velocityAtMaximum(std::string_view lift);

} // namespace fleetrung::strength
