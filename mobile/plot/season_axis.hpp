// What the pictures of a season share: the week axis, today, races, phases. Internal to this folder.
#pragma once

#include <algorithm>
#include <limits>

#include "mobile/plot/pictures.hpp"

namespace fleetrung::plot
{

/// Weeks since the season's first day: 0 at its start.
[[nodiscard]] double weeksAt(const SeasonSpan& season, CivilDate day);
[[nodiscard]] Axis weekAxis(const SeasonSpan& season);
[[nodiscard]] std::vector<StripPart> phaseStrip(const SeasonSpan& season);
/// The middle of the day, in weeks: where a session stands.
[[nodiscard]] double placeOf(const SeasonSpan& season, CivilDate day);

/// Grows to hold what is shown.
struct Extent {
    double from = std::numeric_limits<double>::infinity();
    double to = -std::numeric_limits<double>::infinity();

    void hold(double low, double high)
    {
        from = std::min(from, low);
        to = std::max(to, high);
    }
    [[nodiscard]] bool isEmpty() const { return from > to; }
};

/// Value axis round what is shown, with a little air; `least` is the smallest stretch, so that noise does not fill the
/// picture.
[[nodiscard]] Axis valueAxis(Extent extent, double least, int decimals);

void addToday(Plot& plot, const SeasonSpan& season);

} // namespace fleetrung::plot
