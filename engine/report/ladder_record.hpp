// The story of one ladder in one season: where the plan went, where the athlete went, on what evidence, and why.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "engine/report/training_log.hpp"
#include "engine/strength/load_velocity.hpp"

namespace fleetrung::report
{

/// From ... to, both included.
struct Band {
    double from = 0;
    double to = 0;
};

struct Rung {
    std::string key;  ///< of the lift, "half-squat"
    std::string name; ///< "Half squat"
    std::optional<Band>
        targetBand; ///< s: where the rung should lead (TPV, or contact time); for show, it gates nothing
};

/// A stretch of days on one rung.
struct Stay {
    std::size_t rung = 0; ///< index into the ladder's rungs
    CivilDate first{};
    CivilDate last{};
};

/// A session's value of the probe set: the median of its three repetitions.
struct EvidencePoint {
    Identifier session;
    CivilDate day{};
    std::size_t rung = 0;
    Side side = Side::Both;
    Measurement time;     ///< s: TPV, or what the ladder's `evidenceName` says
    Measurement velocity; ///< m/s: the rung's evidence metric
    std::optional<double> loadKg;
};

/// The fastest measured repetition at each load of one session on a rung, warm-ups too.
struct SessionLoads {
    CivilDate day{};
    std::size_t rung = 0;
    Side side = Side::Both;
    std::string lift;                                ///< key, names the velocity at 1RM
    std::vector<strength::LoadVelocityPoint> points; ///< lightest first
};

struct Ladder {
    std::string key;                                    ///< "squat"
    std::string name;                                   ///< "Squat"
    std::string evidenceName = "time to peak velocity"; ///< "contact time" for drop jumps
    double typicalErrorShare = 0.08;      ///< prior typical error as a share of the entry baseline: data of the ladder
    std::vector<Rung> rungs;              ///< longest range first
    std::vector<Stay> planned;            ///< in order of days
    std::vector<Stay> taken;              ///< in order of days
    std::vector<EvidencePoint> evidence;  ///< in order of days; different rungs are never joined or compared
    std::vector<SessionLoads> loads = {}; ///< in order of days
};

/// One number a decision rested on, copied by value when it was taken.
struct Evidence {
    std::string name; ///< "entry baseline", "mean of the last 3"
    std::string unit; ///< "s", "m/s", "kg", "" for counts
    double value = 0;
    std::optional<double> uncertainty; ///< standard, same unit
    std::string allowed;               ///< "at most 0.018", "" where there is no limit
    std::optional<bool> met;           ///< empty where nothing was asked of it
};

/// What the athlete did with a decision.
enum class Answer { Open, Followed, Changed };

struct Decision {
    Identifier id;
    CivilDate day{};
    std::string ladder; ///< name; empty for a decision about the whole day
    std::string kind;   ///< step, must step, hold, step back, ease, rest
    std::string rule;   ///< "step for evidence"
    std::string from;   ///< rung it was taken on
    std::string to;     ///< rung it leads to; the same where nothing moves
    std::string reason; ///< plain words
    std::vector<Evidence> evidence;
    Answer answer = Answer::Open;
    std::string changedTo; ///< where it was not followed
    std::string why;
};

} // namespace fleetrung::report
