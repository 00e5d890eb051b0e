// Estimated one-repetition maximum (e1RM) of a set typed by hand. An estimate: at 80 % of the maximum athletes differ
// by many repetitions. Published formulas, from memory: Epley B, Poundage chart, 1985; Brzycki M, JOPERD
// 1993;64(1):88-90; Lander J, NSCA J 1985;6(6):60-61; Lombardi, O'Conner, Mayhew and Wathen as compared by LeSuer DA
// et al., J Strength Cond Res 1997;11(4):211-213.
#pragma once

#include <array>
#include <vector>

#include "engine/base/error.hpp"

namespace fleetrung::strength
{

/// w (1 + r / 30); one repetition is the load itself.
[[nodiscard]] Expected<double> epley(double loadKg, int repetitions);

/// 36 w / (37 - r). Fails with InvalidInput from 37 repetitions on.
[[nodiscard]] Expected<double> brzycki(double loadKg, int repetitions);

enum class Formula { Epley, Brzycki, Lander, Lombardi, OConner, Mayhew, Wathen };
inline constexpr std::array allFormulas{Formula::Epley,   Formula::Brzycki, Formula::Lander, Formula::Lombardi,
                                        Formula::OConner, Formula::Mayhew,  Formula::Wathen};

/// One repetition is the load itself in each of them (some of them as printed would add to it). Fails with
/// InvalidInput, Brzycki's and Lander's also where their denominator ends (37 repetitions).
[[nodiscard]] Expected<double> maximumBy(Formula formula, double loadKg, int repetitions);

/// What the formulas together say: how far they differ is the least of what is not known.
struct MaximumRange {
    double low = 0, high = 0; ///< kg
};
/// Over all formulas; 1 to 10 repetitions, else NotAvailable.
[[nodiscard]] Expected<MaximumRange> maximumRange(double loadKg, int repetitions);

/// What the program shows for a typed set: Brzycki up to ten repetitions (where it meets Epley), NotAvailable beyond.
/// `repetitionsLeft` = repetitions the athlete could still have done (effort 10 = 0, effort 8 = 2; common practice).
[[nodiscard]] Expected<double> estimatedMaximum(double loadKg, int repetitions, int repetitionsLeft = 0);

/// Share of 1RM for a number of repetitions, 1..10 and 12 (NSCA training load chart); NotAvailable for any other.
[[nodiscard]] Expected<double> chartShare(int repetitions);

struct ChartRow {
    int repetitions = 0;
    double share = 0;  ///< of 1RM
    double loadKg = 0; ///< for that maximum
};
/// The chart for one maximum: loads for 1 to 10 and 12 repetitions. InvalidInput for a maximum that is not above zero.
[[nodiscard]] Expected<std::vector<ChartRow>> loadChart(double maximumKg);

} // namespace fleetrung::strength
