// What all parts of a played season share: the logbook, who plays, and what has been counted.
#pragma once

#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include "demo/squad/body.hpp"
#include "demo/squad/performer.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::squad
{

/// The demo does not go on without its store: the first failure ends it, with its own words.
template <class T> T must(Expected<T> result)
{
    if (!result) {
        throw std::runtime_error(describe(result.error()));
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*result);
    }
}

struct Tally {
    int sessions = 0;
    int sets = 0;
    int measuredSets = 0;
    int lifted = 0; ///< repetitions truly done in measured sets
    int found = 0;  ///< repetitions that the engine found in them
    int daysLost = 0;
    std::map<std::string, int> decisions;               ///< by kind
    std::vector<std::string> steps;                     ///< in words
    std::vector<std::pair<CivilDate, double>> flying20; ///< s
};

struct Diary {
    logbook::Logbook& logbook;
    const Performer& who;
    Identifier athlete;
    Identifier season;
    Body body;
    Tally tally;

    /// `minutes` after midnight, local time. The squad lives at UTC+1 without summer time.
    [[nodiscard]] static logbook::Moment at(CivilDate day, int minutes)
    {
        constexpr int offset = 60;
        const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(day.time_since_epoch()).count();
        return {seconds + 60LL * (minutes - offset), offset, "Africa/Lagos", day};
    }
};

} // namespace fleetrung::squad
