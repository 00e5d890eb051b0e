#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

#include "engine/statistics/rank_correlation.hpp"
#include "engine/transfer/rotation.hpp"

using namespace fleetrung;
using fleetrung::transfer::Pairs;

namespace
{

double largest(const std::vector<double>& bar, const std::vector<Pairs>& lags)
{
    double most = -1e9;
    for (const auto& lag : lags) {
        std::vector<double> beside;
        for (const auto place : lag.bar)
            beside.push_back(bar[place]);
        const double r = statistics::rankCorrelation(beside, lag.sprint);
        most = std::max(most, std::isnan(r) ? 0 : r * std::sqrt(static_cast<double>(beside.size() - 1)));
    }
    return most;
}

/// By the definition: every turn of weeks 0-2, 3-5 and 6-9, with the plain rank correlation.
double chanceByHand(const std::vector<double>& bar, const std::vector<Pairs>& lags)
{
    int all = 0, asLarge = 0;
    for (int a = 0; a < 3; ++a)
        for (int b = 0; b < 3; ++b)
            for (int c = 0; c < 4; ++c) {
                auto turned = bar;
                std::rotate(turned.begin(), turned.begin() + a, turned.begin() + 3);
                std::rotate(turned.begin() + 3, turned.begin() + 3 + b, turned.begin() + 6);
                std::rotate(turned.begin() + 6, turned.begin() + 6 + c, turned.end());
                ++all;
                asLarge += largest(turned, lags) >= largest(bar, lags) - 1e-9 ? 1 : 0;
            }
    CHECK(all == 36);
    return static_cast<double>(asLarge) / all;
}

} // namespace

TEST_CASE("The chance is the share of all turns of the three blocks, ties among the weeks", "[transfer]")
{
    const std::vector<double> bar{0.5, -1, 0.2, 0.2, 1.4, -0.3, 0, 0.9, -1, 0.7};
    const std::vector<Pairs> lags{{{0, 1, 2, 3, 4, 5, 6, 7, 8, 9}, {1, -2, 0.5, 0.5, 3, -1, 0.1, 0.2, -3, 2}},
                                  {{0, 2, 3, 4, 6, 8, 9}, {-2, 0.5, 1, -1, 0.1, 2, -3}}};
    CHECK(transfer::chanceOf(bar, lags, 0.04).share == Approx(chanceByHand(bar, lags)).margin(1e-12));
    CHECK(transfer::chanceOf(bar, lags, 0.04).share == Approx(1.0 / 36).margin(1e-12)); // no turn does as well
    const std::vector<Pairs> other{lags.back()};
    CHECK(transfer::chanceOf(bar, other, 0.04).share == Approx(chanceByHand(bar, other)).margin(1e-12));
    CHECK(transfer::chanceOf(bar, other, 0.04).share > 0.3);
}

TEST_CASE("Where one side does not vary, chance always does as well", "[transfer]")
{
    const std::vector<double> bar{1, 2, 3, 4, 5, 6};
    CHECK(transfer::chanceOf(bar, std::vector<Pairs>{{{0, 1, 2, 3}, {7, 7, 7, 7}}}, 0.04).share == 1);
    CHECK(transfer::chanceOf(std::vector<double>(6, 2.0), std::vector<Pairs>{{{0, 1, 2}, {1, 2, 3}}}, 0.04).share == 1);
}

TEST_CASE("What chance reaches is gone beyond in no more of the turns than was asked for", "[transfer]")
{
    const std::vector<double> bar{0.5, -1, 0.2, 0.2, 1.4, -0.3, 0, 0.9, -1, 0.7};
    const std::vector<Pairs> lags{{{0, 1, 2, 3, 4, 5, 6, 7, 8, 9}, {1, -2, 0.5, 0.5, 3, -1, 0.1, 0.2, -3, 2}}};
    const double found = largest(bar, lags);
    // The series as it was goes beyond all turns: one of 36 may, and it is the one.
    CHECK(transfer::chanceOf(bar, lags, 1.0 / 36).reach < found);
    CHECK(transfer::chanceOf(bar, lags, 0.0).reach == Approx(found).margin(1e-12));
    CHECK(transfer::chanceOf(bar, lags, 0.5).reach < transfer::chanceOf(bar, lags, 0.1).reach);
}
