// What a season report contains: plain values, no store, no clock. The PDF and the CSV tables are made from this alone.
// Who fills it: mobile/logbook from the store. SI units; loads in kg; order of every list is by day, then by time.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/report/ladder_record.hpp"
#include "engine/report/training_log.hpp"

namespace fleetrung::report
{

struct Athlete {
    Identifier id;
    std::string name;
    std::optional<CivilDate> born;
    std::string event; ///< "200 m", "long jump"
    std::optional<double> bodyMassKg;
    std::optional<double> statureM;
};

struct Phase {
    std::string name; ///< "general preparation"
    CivilDate first{};
    CivilDate last{};
};

struct Competition {
    CivilDate day{};
    std::string name;
    std::string grade; ///< "A", "B" or "C"
    bool main = false;
    std::string result; ///< empty before it was run
};

enum class PlanState { Ahead, Done, Changed, Lost };

/// One lift of one planned day, against what became of it.
struct PlanLine {
    CivilDate day{};
    std::string phase;
    std::string ladder;
    std::string rung;
    int sets = 0;
    int repetitions = 0; ///< a set
    std::optional<double> loadKg;
    PlanState state = PlanState::Ahead;
    int setsDone = 0;
    std::string why; ///< of a changed or lost line: "illness", "travel"
};

struct LostDay {
    CivilDate day{};
    std::string why;
};

struct SeasonReport {
    Athlete athlete;
    Identifier season;
    std::string seasonName; ///< "Outdoor 2026"
    CivilDate first{};
    CivilDate last{};
    CivilDate upTo{}; ///< the last day this report knows of
    std::vector<Phase> phases;
    std::vector<Competition> competitions;
    std::vector<Ladder> ladders;
    std::vector<Decision> decisions;
    std::vector<Wellness> wellness;
    std::vector<Session> sessions;
    std::vector<Sprint> sprints;
    std::vector<TrackWork> trackWork;
    std::vector<TrackWeek> trackWeeks; ///< all of the season up to `upTo`
    std::vector<Jump> jumps;
    std::vector<PlanLine> plan;
    std::vector<LostDay> lostDays;
    std::vector<std::string>
        cautions; ///< of this season (an override, a refusal); the standing ones are added by the writer
};

} // namespace fleetrung::report
