// How an invented athlete's body answers training: what is true on a day, before any sensor looks at it.
#pragma once

#include <map>
#include <string>
#include <utility>

#include "demo/simulator/random.hpp"
#include "demo/simulator/simulator.hpp"
#include "demo/squad/performer.hpp"
#include "engine/season/ladder.hpp"

namespace fleetrung::squad
{

class Body
{
public:
    Body(const Performer& performer, std::uint64_t seed);

    /// A new day: how the athlete feels drifts from day to day.
    void wake(CivilDate day);
    /// A session on that rung was done: the next one finds the body adapted a little more.
    void adapt(const std::string& ladder, const std::string& rung);

    /// Share of the season's gain that is there today, 0-1.
    [[nodiscard]] double progress() const { return seasonShare; }
    /// 1 = as usual, below = tired.
    [[nodiscard]] double form() const { return formToday; }
    [[nodiscard]] double sleepHours() const { return sleep; }
    /// kg today; 0 for a ladder without load.
    [[nodiscard]] double maximum(const season::Ladder& ladder, const season::Rung& rung) const;

    /// The set as it would be lifted today; repetitions, load and kind are the caller's.
    [[nodiscard]] simulator::SetPlan set(const season::Ladder& ladder, const season::Rung& rung, double loadKg,
                                         int repetitions, bool fullIntent);

    /// Seconds for `distance` from standing, first movement to chest.
    [[nodiscard]] double standingTime(double distance) const;
    [[nodiscard]] double topSpeed() const;

    simulator::Random random;

private:
    const Performer& who;
    CivilDate first;
    double seasonDays;
    double seasonShare = 0;
    double formToday = 1;
    double drift = 0;
    double quicknessToday = 1;
    double sleep = 8;
    std::map<std::pair<std::string, std::string>, int> sessions;
};

} // namespace fleetrung::squad
