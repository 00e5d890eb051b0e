// What training does to an invented athlete, and what a session of theirs measures.
#pragma once

#include <optional>

#include "engine/season/evidence.hpp"
#include "engine/season/session_plan.hpp"
#include "tests/seasons/athlete.hpp"

namespace fleetrung::seasons
{

class Body
{
public:
    Body(const Athlete& athlete, std::uint64_t seed) : athlete_(athlete), random_(seed) {}

    /// Most that could be lifted once on that rung today [kg].
    [[nodiscard]] double maximumOn(const std::string& ladder, const std::string& rung) const;
    /// Time to peak (drop time, contact) of the fresh athlete at that load, without any noise [s].
    [[nodiscard]] double freshTime(const season::Ladder& ladder, const season::Rung& rung, double loadKg) const;
    /// Standard deviation of a session's value about it [s].
    [[nodiscard]] double sessionNoise(const season::Ladder& ladder, const season::Rung& rung) const;
    /// Repetitions that the load allows before failure.
    [[nodiscard]] int mostRepetitions(const std::string& ladder, const std::string& rung, double loadKg) const;

    /// What the probe of today gives; nothing where it is no evidence. One-sided lifts give two.
    [[nodiscard]] std::vector<season::SessionEvidence> probe(const season::Ladder& ladder, const season::Rung& rung,
                                                             CivilDate day, double loadKg,
                                                             std::optional<double> probeLoadKg);
    /// The stopwatch on a test day [s].
    [[nodiscard]] double flyingTime(int dayOfSeason);

    void rest(int dayCount); ///< fatigue decays, long absence costs
    void train(const season::PlannedLift& lift, double loadKg);

private:
    struct Trained {
        double strength = 0; ///< sessions that built strength
        std::map<std::string, double> rungs;
    };

    /// What one side's repetitions of a session scatter about.
    struct Session {
        double time = 0;     ///< s
        double velocity = 0; ///< m/s, mean
        double range = 0;    ///< m
        double noise = 0;    ///< s, of a session
        bool sloppy = false;
    };

    double measuredTime(const season::Ladder& ladder, const season::Rung& rung, double loadKg, double lean);
    double measuredVelocity(const season::Ladder& ladder, const season::Rung& rung, double loadKg);
    season::SessionEvidence typed(double velocity, double loadKg);
    season::SessionEvidence timed(const season::Ladder& ladder, const season::Rung& rung, double loadKg,
                                  double velocity, double dayNoise);
    std::vector<reps::Repetition> lifted(int count, const Session& session);

    const Athlete& athlete_;
    Random random_;
    std::map<std::string, Trained> trained_;
    double fatigue_ = 0;
};

} // namespace fleetrung::seasons
