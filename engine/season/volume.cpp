// How much is done on a day: the phase's share, and less before competitions.
#include <algorithm>
#include <cmath>

#include "engine/season/phases.hpp"

namespace fleetrung::season
{
namespace
{

/// Decay k of exp(-k t) over 0 <= t <= 1 whose mean is `meanShare`: (1 - exp(-k)) / k = meanShare, by bisection.
double decayFor(double meanShare)
{
    double low = 1e-6, high = 50;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        ((1 - std::exp(-middle)) / middle > meanShare ? low : high) = middle;
    }
    return (low + high) / 2;
}

double exponentialShare(int day, int length, double cut)
{
    return std::exp(-decayFor(1 - cut) * (day + 0.5) / length);
}

} // namespace

double volumeShare(const SeasonSetup& setup, std::span<const PhaseSpan> spans, const Rules& rules, CivilDate day)
{
    const auto* phase = phaseOn(spans, day);
    if (phase == nullptr)
        return 0;
    const auto& phaseRule = rules.phases[static_cast<std::size_t>(phase->kind)];
    const double usual = phaseRule.volume * (blockOn(setup, Block::Kind::Exam, day) != nullptr ? rules.examVolume : 1);
    double share = usual;
    if (phase->kind == PhaseKind::Taper)
        return share * exponentialShare(daysBetween(phase->from, day), daysBetween(phase->from, phase->to) + 1,
                                        rules.taperVolume);
    for (const auto& competition : setup.competitions) {
        const int away = daysBetween(day, competition.date);
        if (away < 0 || competition.main)
            continue;
        const int taper = static_cast<int>(rules.taperDays);
        if (competition.priority == Priority::A && away < taper)
            share = std::min(share, usual * exponentialShare(taper - 1 - away, taper, rules.taperVolume));
        if (competition.priority == Priority::B && away <= rules.minorTaperDays)
            share = std::min(share, usual * (1 - rules.minorTaperVolume));
    }
    return share;
}

} // namespace fleetrung::season
