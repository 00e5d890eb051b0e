// What Trends shows of one season, as plain values: each point with the session behind it, in SI units.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/report/load_velocity.hpp"
#include "mobile/plot/pictures.hpp"

namespace fleetrung::views
{

/// One set of the session behind a point.
struct SetThen {
    std::string kind; ///< warm-up, probe, work, maintenance
    plot::Side side = plot::Side::Both;
    std::optional<double> loadKg; ///< 0: body mass
    int repetitions = 0;
    std::optional<double> fastest;      ///< m/s, mean velocity of the fastest repetition
    std::optional<double> velocityLoss; ///< share
    std::optional<double> effort;       ///< 1-10
    std::string note;
};

/// One drop jump of the day behind a point.
struct JumpThen {
    std::optional<double> boxHeight, contact, flight, reactiveStrength; ///< m, s, s, m/s
};

struct LiftPoint {
    CivilDate day{};
    std::string rung;
    std::optional<plot::Span> targetBand; ///< s
    double seconds = 0;
    std::optional<double> uncertainty; ///< s, standard
    plot::Side side = plot::Side::Both;
    std::optional<double> loadKg;
    std::string note; ///< of the session
    std::vector<SetThen> sets;
    std::vector<JumpThen> jumps;
};

struct LadderTrend {
    std::string name;     ///< "Squat"
    std::string quantity; ///< "time to peak velocity"
    std::vector<LiftPoint> points;
};

/// The lines of velocity against load on the rung of today, one a side.
struct LadderLoads {
    std::string ladder; ///< name
    std::string rung;   ///< name
    std::vector<report::LoadVelocity> sides;
};

struct RunPoint {
    CivilDate day{};
    double seconds = 0;
    std::optional<double> windMps; ///< tail wind positive
    std::string timing;            ///< gates, hand, video, electronic
    std::string surface;
    std::string shoes;
    std::optional<double> runIn; ///< m
    bool competition = false;
    std::string note;
};

struct TestTrend {
    std::string name; ///< "flying 20 m"
    std::vector<RunPoint> points;
};

struct SeasonTrends {
    std::string name;
    plot::SeasonSpan span;
    std::vector<LadderTrend> ladders; ///< those without a point may be among them
    std::vector<TestTrend> tests;
    std::vector<LadderLoads> loads = {}; ///< of the ladders that have a load
};

enum class TrendPeriod { Season, LastWeeks, AllSeasons };
constexpr int lastWeeks = 8;

/// Seasons in order of time as one: points of one ladder or test together, one phase a season. The last one's name.
[[nodiscard]] SeasonTrends together(const std::vector<const SeasonTrends*>& seasons);

} // namespace fleetrung::views
