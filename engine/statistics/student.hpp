// The width of 95 % where the spread itself had to be estimated.
#pragma once

namespace fleetrung::statistics
{

/// Two-sided 95 % point of Student's t (Student, The probable error of a mean, Biometrika 1908;6:1-25) with that many
/// degrees of freedom: 12.706 with 1, 1.960 with very many. NaN for fewer than 1.
[[nodiscard]] double studentT95(int degreesOfFreedom);

} // namespace fleetrung::statistics
