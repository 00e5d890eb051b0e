// The result in plain words (private to engine/transfer).
#pragma once

#include "engine/transfer/pairs.hpp"

namespace fleetrung::transfer
{

/// The z-value of a rank correlation: without any relation its standard deviation is 1 / sqrt(pairs - 1), so that a lag
/// with few pairs is not the strongest by chance. 0 where there is no correlation.
[[nodiscard]] double strengthOf(const Lag& lag);

struct Extremes {
    const Lag& best;
    const Lag& worst;
};
[[nodiscard]] Extremes extremesOf(const Transfer& transfer);

[[nodiscard]] std::string notEnoughText(const Missing& missing);
/// `conditions`: those of the sprints that were compared.
[[nodiscard]] std::string judgedText(const Transfer& transfer, const std::vector<std::string>& conditions);
[[nodiscard]] std::string premiseText();

} // namespace fleetrung::transfer
