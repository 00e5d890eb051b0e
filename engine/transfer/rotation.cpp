#include "engine/transfer/rotation.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <limits>
#include <utility>

#include "engine/statistics/rank_correlation.hpp"

namespace fleetrung::transfer
{
namespace
{

constexpr std::size_t blockCount = 3;
constexpr double same = 1e-9; // sums in another order differ in the last digits

/// For each value how many smaller ones there are among all: equal values share a level.
std::vector<std::size_t> levelsOf(std::span<const double> values)
{
    std::vector<double> sorted(values.begin(), values.end());
    std::ranges::sort(sorted);
    std::vector<std::size_t> levels;
    for (const double value : values)
        levels.push_back(static_cast<std::size_t>(std::ranges::lower_bound(sorted, value) - sorted.begin()));
    return levels;
}

/// One lag, with the sprint's side of the rank correlation worked out once for all turns.
class Judge
{
public:
    explicit Judge(const Pairs& pairs) : places_(pairs.bar), sprint_(statistics::ranks(pairs.sprint))
    {
        const double middle = middleRank();
        double squares = 0;
        for (double& rank : sprint_) {
            rank -= middle;
            squares += rank * rank;
        }
        for (double& rank : sprint_)
            rank = squares > 0 ? rank / std::sqrt(squares) : 0;
    }

    /// rankCorrelation x sqrt(pairs - 1), the ranks of the bar's side told by counting; 0 where that side is all one.
    double operator()(std::span<const std::size_t> levels)
    {
        upTo_.assign(levels.size() + 1, 0);
        for (const auto place : places_)
            ++upTo_[levels[place] + 1];
        for (std::size_t level = 0; level < levels.size(); ++level)
            upTo_[level + 1] += upTo_[level];
        double product = 0, squares = 0;
        for (std::size_t i = 0; i < places_.size(); ++i) {
            const auto level = levels[places_[i]];
            const double rank = static_cast<double>(upTo_[level] + upTo_[level + 1] + 1) / 2 - middleRank();
            product += rank * sprint_[i];
            squares += rank * rank;
        }
        return squares > 0 ? product / std::sqrt(squares) * std::sqrt(static_cast<double>(places_.size() - 1)) : 0;
    }

private:
    [[nodiscard]] double middleRank() const { return static_cast<double>(places_.size() + 1) / 2; }

    std::span<const std::size_t> places_;
    std::vector<double> sprint_;    ///< centred ranks of length 1
    std::vector<std::size_t> upTo_; ///< pairs on lower levels
};

/// All combinations of turns of the blocks, one after the other.
class Turns
{
public:
    explicit Turns(std::vector<std::size_t> series) : series_(std::move(series))
    {
        for (std::size_t block = 0; block <= blockCount; ++block)
            begin_[block] = block * series_.size() / blockCount;
    }

    [[nodiscard]] std::span<const std::size_t> series() const { return series_; }

    /// Like a counter: a block that has come all the way round carries to the next. False: all have come round.
    bool next()
    {
        for (std::size_t block = 0; block < blockCount; ++block) {
            const auto length = begin_[block + 1] - begin_[block];
            if (length == 0)
                continue;
            const auto from = series_.begin() + static_cast<std::ptrdiff_t>(begin_[block]);
            std::rotate(from, from + 1, from + static_cast<std::ptrdiff_t>(length));
            turned_[block] = (turned_[block] + 1) % length;
            if (turned_[block] != 0)
                return true;
        }
        return false;
    }

private:
    std::vector<std::size_t> series_;
    std::array<std::size_t, blockCount + 1> begin_{};
    std::array<std::size_t, blockCount> turned_{};
};

double largest(std::vector<Judge>& judges, std::span<const std::size_t> levels)
{
    double most = -std::numeric_limits<double>::infinity();
    for (auto& judge : judges)
        most = std::max(most, judge(levels));
    return most;
}

} // namespace

Chance chanceOf(std::span<const double> bar, std::span<const Pairs> lags, double mostAbove)
{
    std::vector<Judge> judges(lags.begin(), lags.end());
    Turns turns(levelsOf(bar));
    std::vector<double> reached;
    do {
        reached.push_back(largest(judges, turns.series()));
    } while (turns.next());
    const double found = reached.front() - same; // no turn comes first
    const auto asLarge = std::ranges::count_if(reached, [found](double one) { return one >= found; });
    const auto all = static_cast<double>(reached.size());
    const auto above = reached.begin() + static_cast<std::ptrdiff_t>(mostAbove * all + same);
    std::ranges::nth_element(reached, above, std::greater{});
    return {.share = static_cast<double>(asLarge) / all, .reach = *above};
}

} // namespace fleetrung::transfer
