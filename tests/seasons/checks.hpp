// What must hold in every season, computed from the season played and not from the rules' own code.
#pragma once

#include <string>
#include <vector>

#include "tests/seasons/season.hpp"

namespace fleetrung::seasons
{

struct Breach {
    std::string check; ///< short name
    CivilDate day;
    std::string what;
};

/// The checks by name, in the order of the table, with what each says.
struct Check {
    const char* name;
    const char* says;
};
[[nodiscard]] const std::vector<Check>& allChecks();

/// Ladders before a main competition. "Where time allows" is what is left after the reasons that excuse, the first that
/// holds counts.
struct Ends {
    std::size_t peaks = 0;         ///< ladders x main competitions
    std::size_t reached = 0;       ///< of all: stood on the last rung
    std::size_t notFollowed = 0;   ///< the athlete did not follow every decision
    std::size_t away = 0;          ///< came to less than 6 of 7 days, stayed away for ten days, or had pain
    std::size_t sparse = 0;        ///< more than eight days from one turn of the ladder to the next
    std::size_t told = 0;          ///< the plan said that the time is too short
    std::size_t judged = 0;        ///< the others: the last rung has to be reached
    std::size_t judgedReached = 0; ///< and was
};

struct Report {
    std::vector<Breach> breaches;
    Ends ends;
};

[[nodiscard]] Report judge(const Played& played);

} // namespace fleetrung::seasons
