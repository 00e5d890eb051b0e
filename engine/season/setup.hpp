// What a coach says of a season before it begins, and its JSON form (SEASON.json of the desk program).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/base/error.hpp"
#include "engine/base/json.hpp"
#include "engine/season/entered_length.hpp"
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

/// Days on which the season does not go its usual way.
struct Block {
    enum class Kind { Travel, Exam, Illness, Injury };

    Kind kind = Kind::Travel;
    CivilDate from;
    CivilDate to;       ///< inclusive
    std::string region; ///< injury: what must rest, as in `Ladder::regions`; empty = everything
    std::string note;
};
[[nodiscard]] std::string_view blockKey(Block::Kind kind);  ///< "travel", "exam", "illness", "injury"
[[nodiscard]] std::string_view blockName(Block::Kind kind); ///< "Travel", "Exams", "Illness", "Injury"
/// "Illness from 2026-02-03 to 2026-02-09 (flu)".
[[nodiscard]] std::string blockText(const Block& block);

/// A lift that is logged and counted as load, and never laddered: hip thrust, hamstring eccentrics, upper body, throws.
struct SecondaryLift {
    std::string name;
    std::string lift;      ///< lift key of the repetition finder; empty where it knows none
    std::vector<int> days; ///< ISO weekdays 1..7
    int sets = 3;
    int repetitions = 8;
    std::vector<std::string> regions;
};

/// A ladder that joined a season under way: before that day it had no turn, and no stay on a rung.
struct LadderStart {
    std::string ladder;
    CivilDate from;
};

struct SeasonSetup {
    std::string name;
    CivilDate start;
    std::optional<CivilDate> end;          ///< last day; the last competition where absent
    std::vector<Competition> competitions; ///< by date, at least one main
    std::vector<int> trainingDays;         ///< ISO weekdays 1..7 with lifts
    std::vector<int> sprintDays;           ///< ISO weekdays 1..7 with sprints
    int sessionMinutes = 90;
    int liftsPerSession = 0;           ///< primary lifts; 0 = what the minutes allow (default 3)
    std::string liftsPerSessionReason; ///< recorded where it is more than the minutes allow
    std::vector<EnteredLength> boxHeights;
    std::vector<std::string> equipment{"bar", "rack"}; ///< also "pins", "blocks"
    std::vector<std::string> ladders;                  ///< keys; the first matter most
    std::vector<LadderStart> ladderStarts;             ///< of the chosen ones that did not begin with the season
    std::vector<Ladder> ownLadders;                    ///< made by the user; every rung's origin is "user"
    std::vector<Block> blocks;                         ///< by first day
    std::vector<SecondaryLift> secondary;
    int weekStart = 1; ///< ISO weekday on which weeks begin: 1 (Monday) or 7 (Sunday)
    AthleteFacts athlete;
};

/// Primary lifts a session may hold: from its minutes, or the recorded choice.
[[nodiscard]] int liftCap(const SeasonSetup& setup, const Rules& rules);

/// The standard data and the athlete's own ladders; `version` names both. Data that has them already stays as it is.
[[nodiscard]] SeasonData dataFor(const SeasonSetup& setup, const SeasonData& standard = standardSeasonData());

/// One of the athlete's own ladders, or of the data's; null where there is none.
[[nodiscard]] const Ladder* ladderOf(const SeasonSetup& setup, const SeasonData& data, std::string_view key);

/// First day on which the ladder may stand: the season's, or the one on which it joined.
[[nodiscard]] CivilDate ladderStart(const SeasonSetup& setup, std::string_view ladder);

/// The athlete's box that serves a rung: the nearest within `boxTolerance`; null where there is none or no need.
[[nodiscard]] const EnteredLength* boxFor(const Rung& rung, const SeasonSetup& setup);

/// "Step-up, 14 in": the rung named after the box the athlete really has, in the unit wanted.
[[nodiscard]] std::string rungName(const Rung& rung, const SeasonSetup& setup, LengthUnit unit);
/// The same with the box as it was entered: for reasons that are kept.
[[nodiscard]] std::string rungName(const Rung& rung, const SeasonSetup& setup);

/// The first block of that day that stops these regions; illness and travel stop everything, an injury without a region
/// too. Null where nothing is stopped; exams stop nothing.
[[nodiscard]] const Block* restBlockOn(const SeasonSetup& setup, const std::vector<std::string>& regions,
                                       CivilDate day);
/// Any block of that kind on that day; null where there is none.
[[nodiscard]] const Block* blockOn(const SeasonSetup& setup, Block::Kind kind, CivilDate day);

/// Regions of the body that ladders, injuries and secondary lifts may name.
[[nodiscard]] bool isRegion(std::string_view region);

/// Reads and checks. InvalidInput with line and column, or the key path ("competitions[1].date"), for what cannot be
/// read; Refused, with the reason, for what must not be done (too many lifts, more than three days or consecutive days
/// under 18, no guardian's consent, an athlete too young for lifts or drop jumps).
[[nodiscard]] Expected<SeasonSetup> parseSetup(std::string_view json, const SeasonData& data = standardSeasonData());

/// The checks alone, for setups that a form filled in.
[[nodiscard]] Expected<void> checkSetup(const SeasonSetup& setup, const SeasonData& data = standardSeasonData());

[[nodiscard]] Json setupJson(const SeasonSetup& setup);

} // namespace fleetrung::season
