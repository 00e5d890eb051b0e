// The best time of each test. A competition's time with more than 2.0 m/s of wind behind it is wind-aided and is no
// best (World Athletics' technical rules; from memory): it stands beside the best where it is faster. Hand times come
// short: they are a best only where a test was never timed otherwise.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/base/civil_date.hpp"

namespace fleetrung::track
{

struct TestRun {
    std::string test; ///< only runs of one name are compared
    CivilDate day{};
    double time = 0;            ///< s
    std::optional<double> wind; ///< m/s, tail wind positive
    bool competition = false;
    bool byHand = false;

    [[nodiscard]] bool windAided() const;
};

struct PersonalBest {
    std::string test;
    int runs = 0;                         ///< of the test
    std::optional<std::size_t> best;      ///< index of the run; none where all were wind-aided
    std::optional<std::size_t> windAided; ///< the fastest of those, where it is faster than the best
};

/// The test that was run last comes first; of equal times the earlier counts. `runs` in order of days.
[[nodiscard]] std::vector<PersonalBest> personalBests(std::span<const TestRun> runs);

} // namespace fleetrung::track
