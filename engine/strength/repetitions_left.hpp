// How many repetitions the athlete could still have done, from how much slower the bar has become. A guess with a
// width: athletes differ, and no published table is at hand. Stopping a set rests on the loss itself
// (velocity_loss.hpp), never on this.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "engine/base/error.hpp"

namespace fleetrung::strength
{

/// A set whose repetitions left the athlete told (effort 8 of 10 = 2 left; common practice, no source).
struct ToldSet {
    int repetitions = 0;
    double loss = 0; ///< share, of the last repetition from the fastest
    int left = 0;
};

struct RepetitionsLeft {
    double left = 0;
    double low = 0, high = 0; ///< the range in which it likely lies
    bool own = false;         ///< from the athlete's own sets
};

/// Share of velocity lost at which half of the possible repetitions are done: 0.20 on squats, hinges and pulls, 0.30 on
/// presses (from memory, unsure; starting values).
[[nodiscard]] double lossAtHalf(std::string_view lift);

/// The same from the athlete's own sets of that lift, the median; none with fewer than five that lost 5 % or more.
[[nodiscard]] std::optional<double> ownLossAtHalf(std::span<const ToldSet> sets);

/// Share done = loss / lossAtHalf / 2, at most 1; left = done (1 / share - 1). The range is the share +- 0.15 (+- 0.10
/// from own sets); starting values of this project. NotAvailable below 5 % loss: such a set says nothing of its end.
/// InvalidInput for fewer than two repetitions or a loss outside 0..1.
[[nodiscard]] Expected<RepetitionsLeft> repetitionsLeft(int repetitions, double loss, std::string_view lift,
                                                        std::optional<double> own = {});

} // namespace fleetrung::strength
