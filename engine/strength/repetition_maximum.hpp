// Estimated one-repetition maximum (e1RM) of a set typed by hand. An estimate: at 80 % of the maximum athletes differ
// by many repetitions. Published formulas, from memory: Epley B, Poundage chart, 1985; Brzycki M, JOPERD
// 1993;64(1):88-90.
#pragma once

#include "engine/base/error.hpp"

namespace fleetrung::strength
{

/// w (1 + r / 30); one repetition is the load itself.
[[nodiscard]] Expected<double> epley(double loadKg, int repetitions);

/// 36 w / (37 - r). Fails with InvalidInput from 37 repetitions on.
[[nodiscard]] Expected<double> brzycki(double loadKg, int repetitions);

/// What the program shows for a typed set: Brzycki up to ten repetitions (where it meets Epley), NotAvailable beyond.
/// `repetitionsLeft` = repetitions the athlete could still have done (effort 10 = 0, effort 8 = 2; common practice).
[[nodiscard]] Expected<double> estimatedMaximum(double loadKg, int repetitions, int repetitionsLeft = 0);

/// Share of 1RM for a number of repetitions, 1..10 and 12 (NSCA training load chart); NotAvailable for any other.
[[nodiscard]] Expected<double> chartShare(int repetitions);

} // namespace fleetrung::strength
