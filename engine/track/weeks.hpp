// The track log by week (Monday to Sunday): metres, fast metres, jumps; and whether a week grew too fast.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/track/fast_metres.hpp"

namespace fleetrung::track
{

/// Contacts with the ground in jumps of one day: a drop jump is one, three bounds are three.
struct Contacts {
    CivilDate day{};
    int contacts = 0;
};

struct Week {
    CivilDate monday{};
    int runs = 0;                          ///< timed runs and runs of work
    double metres = 0;                     ///< m of all runs, run-ins of timed flying runs among them
    double fast90 = 0, fast95 = 0;         ///< m
    bool estimated = false;                ///< part of the fast metres is estimated
    double resisted = 0, hill = 0;         ///< m
    int contacts = 0;                      ///< of jumps
    std::optional<double> usualMetres;     ///< mean of the four weeks before; none before the fifth week
    std::optional<double> usualFastMetres; ///< the same of `fast90`
    bool muchMore = false;                 ///< metres above the limit
    bool muchFaster = false;               ///< fast metres above the limit

    [[nodiscard]] bool flagged() const { return muchMore || muchFaster; }
};

/// A week is flagged above 1.3 times the mean of the four weeks before it (starting value of this project; the worth of
/// such ratios is disputed). Weeks under 500 m, or 60 m of fast running, never are (starting values): a ratio of little
/// to nearly nothing says nothing.
constexpr double weekLimit = 1.3;
constexpr int weeksBefore = 4;
constexpr double leastMetres = 500, leastFastMetres = 60;

/// Every week from that of `from` to that of `to`, the empty ones too. Runs before `from` serve for best speed and for
/// the mean; what stands after `to` is left out.
[[nodiscard]] std::vector<Week> weeks(std::span<const KnownRun> runs, std::span<const Work> work,
                                      std::span<const Contacts> contacts, CivilDate from, CivilDate to);

/// "62 % more fast metres than the mean of the four weeks before"; empty where the week is not flagged.
[[nodiscard]] std::string flagText(const Week& week);

} // namespace fleetrung::track
