// Sums over many sets: one row of the report.
#pragma once

#include <array>
#include <map>
#include <string>

#include "tests/accuracy/score.hpp"

namespace fleetrung::accuracy
{

/// Errors of one metric.
struct Errors {
    std::size_t count = 0, covered = 0;
    double sum = 0, squares = 0;

    void add(const Difference& difference);
    void add(const Errors& other);
    [[nodiscard]] double rms() const { return count == 0 ? 0 : std::sqrt(squares / static_cast<double>(count)); }
    [[nodiscard]] double bias() const { return count == 0 ? 0 : sum / static_cast<double>(count); }
    /// Share of stated 95 % intervals that hold the truth.
    [[nodiscard]] double coverage() const
    {
        return count == 0 ? 1 : static_cast<double>(covered) / static_cast<double>(count);
    }
};

/// A flag against the truth.
struct Flagged {
    std::size_t rightly = 0, wrongly = 0, overlooked = 0;

    void add(bool truth, bool flag);
    void add(const Flagged& other);
};

struct Live {
    std::size_t announced = 0, missed = 0;
    double longestDelay = 0; ///< s
    std::array<std::size_t, metricCount> compared{}, kept{};

    void add(const SetScore& score);
    void add(const Live& other);
};

struct Tally {
    std::size_t sets = 0, repetitions = 0, found = 0, missed = 0, invented = 0;
    std::size_t refused = 0;     ///< seen and named as not measurable: neither found nor missed
    std::size_t refusedSets = 0; ///< nothing given, or every repetition withheld or flagged clipped or with a gap
    std::map<std::string, std::size_t> refusals; ///< by message
    std::array<Errors, metricCount> errors;
    Errors timeToPeakRest, timeToPeakMoving; ///< from a dead stop; after a counter-movement
    Flagged partial, twoPeaked;
    Live live;

    void add(const SetScore& score);
    void add(const Tally& other);
};

} // namespace fleetrung::accuracy
