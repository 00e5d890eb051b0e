// Phases laid backwards from each main competition. Every day of the season lies in exactly one.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/season/setup.hpp"

namespace fleetrung::season
{

struct PhaseSpan {
    PhaseKind kind;
    CivilDate from;
    CivilDate to;       ///< inclusive
    int macrocycle = 0; ///< counts from 0
};

struct PhaseLayout {
    std::vector<PhaseSpan> spans;   ///< in order, without gap or overlap
    std::vector<std::string> notes; ///< what was compressed or left out for want of time, in plain words
};

[[nodiscard]] PhaseLayout layPhases(const SeasonSetup& setup, const Rules& rules);

/// Null outside the season.
[[nodiscard]] const PhaseSpan* phaseOn(std::span<const PhaseSpan> spans, CivilDate day);

/// Share of the usual volume on that day: the phase's share, an exponential cut over the taper of a main or A
/// competition (half of the volume in all), a flat cut before a B, none before a C; half of it in exams. Source of the
/// taper: Bosquet et al. 2007, doi:10.1249/mss.0b013e31806010e0 - mostly endurance sport.
[[nodiscard]] double volumeShare(const SeasonSetup& setup, std::span<const PhaseSpan> spans, const Rules& rules,
                                 CivilDate day);

} // namespace fleetrung::season
