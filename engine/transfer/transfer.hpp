// Did it work? Whether the time to peak velocity of the bar (TPV) within a rung and the sprint times move together.
//
// Across a season TPV falls because the plan shortens the range, and speed rises because summer comes: raw values
// always go together and are never compared here. What is compared are the ups and downs that are left:
//   bar     z = (TPV - B) / TE within one stay on a rung. B is the stay's own line over days (Theil-Sen): neither a
//   step
//           nor adaptation on the rung is evidence. TE by statistics::typicalErrorWithPrior.
//   sprint  (time - line) / line, the line (Theil-Sen) over the days of one condition. A bent season leaves its bend in
//           there; the lines taken out of the bar's stays leave little for it to go along with.
//   weeks   means of each ISO week; the bar's week w is paired with the sprint's week w + lag, lag 0 ... 4.
// Judged by a circular-shift permutation within blocks, its statistic the largest of the five lags: the bar's weeks are
// cut into three blocks, each is turned round on itself, all turns of all blocks are counted. (Shifting the whole
// season at once gives too few shifts for five lags, as each peak fills five of them.) Limits and counts are starting
// values of this project; what they do on seasons without and with a relation is measured in tests/engine/transfer.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/base/error.hpp"

namespace fleetrung::transfer
{

constexpr int longestLag = 4;   ///< weeks, season rules
constexpr int fewestPairs = 12; ///< that every lag needs, season rules
constexpr int fewestRungs = 3;  ///< that they are from, season rules
/// A relation is claimed up to this p-value. Turning the weeks breaks some of what a week keeps of the last, so chance
/// is a little larger than counted: one in 25 leaves room up to the 5 % that may be claimed without any relation.
constexpr double claimAt = 0.04;

/// One session's evidence on a rung. Left and right are different rungs: say so in `rung`.
struct BarResult {
    CivilDate day{};
    std::string ladder, rung;
    double timeToPeak = 0;         ///< s
    std::optional<double> loadKg;  ///< another load (by more than 3 %) begins another stay
    double priorErrorShare = 0.08; ///< typical error of a session as a share of TPV before there are sessions to tell
};

/// A day's time in one condition, best or mean of its trials.
struct SprintResult {
    CivilDate day{};
    std::string conditions; ///< distance, run-in, timing, surface, shoes: only results of the same text are compared
    double seconds = 0;
};

struct Lag {
    int weeks = 0; ///< the sprint is that much later than the bar
    int pairs = 0; ///< weeks with both
    int rungs = 0; ///< on which these bar results were made
    /// Spearman, of bar against sprint: above zero, quicker bar and quicker sprint go together. Empty below 3 pairs,
    /// and where one does not vary.
    std::optional<double> correlation;
    /// 95 %, bootstrap of the pairs, as if weeks were independent: for show, nothing is decided on it.
    std::optional<double> low, high;
    /// The correlation that chance alone goes beyond in no more than `claimAt` of all turns, all lags together; beyond
    /// 1 no correlation is enough. Empty where there was not enough to judge.
    std::optional<double> chanceReaches;
};

enum class Verdict { NotEnough, NotShown, MovedTogether };

struct Transfer {
    Verdict verdict = Verdict::NotEnough;
    std::vector<Lag> lags;        ///< 0 ... 4 weeks, always all
    std::optional<int> strongest; ///< lag in weeks, the largest correlation x sqrt(pairs - 1); empty: not enough
    std::optional<double> chance; ///< p-value, one-sided; empty: not enough
    bool otherWay = false;        ///< the strongest relation is quicker bar with slower sprint; never a success
    int testsMissing = 0;         ///< sprint tests, each in a further week with bar results up to 4 weeks before
    int rungsMissing = 0;         ///< that these tests have to bring
    std::string sentence;         ///< the result in plain words, English
    std::string premise;          ///< what holds whatever the result is
};

/// Of one season (at most 60 weeks), results in any order. InvalidInput, naming the result, for times and loads that
/// are no positive numbers, missing names, two results of one rung or condition on a day, or more than 60 weeks.
/// `resamples` is of the interval only.
[[nodiscard]] Expected<Transfer> didItWork(std::span<const BarResult> bar, std::span<const SprintResult> sprints,
                                           int resamples = 2000);

} // namespace fleetrung::transfer
