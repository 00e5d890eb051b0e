// What a number of seasons shows, and the table that the docs quote.
#pragma once

#include <array>
#include <map>
#include <string>

#include "tests/seasons/checks.hpp"
#include "tests/seasons/stays.hpp"

namespace fleetrung::seasons
{

/// Shares that the issue asks for.
inline constexpr double largestFalseShare = 0.05, largeFound = 0.90, smallFound = 0.80;
inline constexpr double noTrueGain = 0.3; ///< typical errors: a step on less than this is a false one

struct CheckTally {
    std::size_t breaches = 0, seasons = 0;
    std::string example; ///< the first
};

/// Planted stays of one kind.
struct StayTally {
    std::size_t stays = 0, steps = 0, seenAtAll = 0, looks = 0, told = 0;
    std::array<std::size_t, sessionsAfter + 1> seenWithin{}; ///< by sessions after the change
    std::array<std::size_t, stayLength + 1> steppedBy{};     ///< by sessions of the stay
};

struct Tally {
    std::size_t seasons = 0, days = 0, decisions = 0, sessions = 0;
    std::size_t evidenceSteps = 0, falseSteps = 0;
    Ends ends;
    std::map<std::string, std::size_t> rules; ///< decisions by rule
    std::map<std::string, CheckTally> checks;
    std::map<double, StayTally> stays; ///< by change in typical errors, negative is sooner

    void add(const Played& played);
    void addStay(double change, const Stay& stay);
    void add(const Tally& other);

    [[nodiscard]] std::size_t breaches() const;
    [[nodiscard]] double falseShare() const;
    [[nodiscard]] double foundWithin(double change, int sessions) const;
    /// Every check holds and every share is reached.
    [[nodiscard]] bool reached() const;
};

/// Plays the seasons `first` to `first + count - 1`, and as many planted stays of each kind, on so many threads.
[[nodiscard]] Tally playSeasons(std::uint64_t first, std::size_t count, unsigned threads);

/// Markdown, as engine/season/simulated_seasons.md shows it.
[[nodiscard]] std::string tallyText(const Tally& tally);

} // namespace fleetrung::seasons
