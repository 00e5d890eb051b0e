// How far a measure wanders by itself from day to day, and how much of a change is more than that.
// Source of typical error: Hopkins WG, Measures of reliability in sports medicine and science, Sports Med
// 2000;30(1):1-15.
#pragma once

#include <span>

namespace fleetrung::statistics
{

/// Sample standard deviation (n - 1). NaN for fewer than two values.
[[nodiscard]] double sampleDeviation(std::span<const double> values);

/// Typical error from two trials of the same people: standard deviation of the differences / sqrt 2 (Hopkins 2000).
[[nodiscard]] double typicalError(std::span<const double> first, std::span<const double> second);

/// Typical error of one athlete from differences d of successive sessions, starting from a prior value:
/// TE^2 = (weight prior^2 + sum d^2 / 2) / (weight + n), d winsorised at 3 median absolute deviations.
/// The prior's weight of 6 sessions is a starting value of this project. No differences give the prior.
[[nodiscard]] double typicalErrorWithPrior(std::span<const double> differences, double prior, double weight = 6);

/// Smallest change of one athlete that lies beyond error with 95 % confidence: 1.96 sqrt 2 TE.
[[nodiscard]] double minimalDetectableChange(double typicalError);

/// 0.2 of the spread between athletes, with the instrument's own spread taken out first: 0.2 sqrt(SD^2 - error^2).
/// Source: Hopkins 2004, How to interpret changes in an athletic performance test, Sportscience 8:1-7 (from memory).
[[nodiscard]] double smallestWorthwhileChange(double deviationBetween, double instrumentError = 0);

} // namespace fleetrung::statistics
