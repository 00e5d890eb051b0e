// What a coach says of a season before it begins, and its JSON form (SEASON.json of the desk program).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/base/error.hpp"
#include "engine/base/json.hpp"
#include "engine/season/rules.hpp"

namespace fleetrung::season
{

enum class Priority { A, B, C };

struct Competition {
    CivilDate date;
    std::string name;
    Priority priority = Priority::C;
    bool main = false; ///< a macrocycle is laid backwards from it
};

struct AthleteFacts {
    std::string name;
    std::optional<CivilDate> birthDate;
    std::optional<double> trainingYears;  ///< years of lifting
    std::optional<double> bodyMassKg;     ///< kg
    std::optional<double> growthPerMonth; ///< m a month
    bool guardianConsent = false;         ///< needed under 18
};

/// Whole years on that day; nothing without a birth date.
[[nodiscard]] std::optional<int> ageOn(const AthleteFacts& athlete, CivilDate day);

struct SeasonSetup {
    std::string name;
    CivilDate start;
    std::optional<CivilDate> end;          ///< last day; the last competition where absent
    std::vector<Competition> competitions; ///< by date, at least one main
    std::vector<int> trainingDays;         ///< ISO weekdays 1..7 with lifts
    std::vector<int> sprintDays;           ///< ISO weekdays 1..7 with sprints
    int sessionMinutes = 90;
    int liftsPerSession = 0;                           ///< primary lifts; 0 = what the minutes allow (default 3)
    std::string liftsPerSessionReason;                 ///< recorded where it is more than the minutes allow
    std::vector<double> boxHeights;                    ///< m
    std::vector<std::string> equipment{"bar", "rack"}; ///< also "pins", "blocks"
    std::vector<std::string> ladders;                  ///< keys; the first matter most
    AthleteFacts athlete;
};

/// Primary lifts a session may hold: from its minutes, or the recorded choice.
[[nodiscard]] int liftCap(const SeasonSetup& setup, const Rules& rules);

/// Reads and checks. InvalidInput with line and column, or the key path ("competitions[1].date"), for what cannot be
/// read; Refused, with the reason, for what must not be done (too many lifts, more than three days or consecutive days
/// under 18, no guardian's consent).
[[nodiscard]] Expected<SeasonSetup> parseSetup(std::string_view json, const SeasonData& data = standardSeasonData());

/// The checks alone, for setups that a form filled in.
[[nodiscard]] Expected<void> checkSetup(const SeasonSetup& setup, const SeasonData& data = standardSeasonData());

[[nodiscard]] Json setupJson(const SeasonSetup& setup);

} // namespace fleetrung::season
