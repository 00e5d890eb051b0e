// Jumps found against jumps known: pairs, errors, coverage.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "demo/simulator/simulator.hpp"
#include "engine/jumps/analyse.hpp"

namespace fleetrung::jumps::test
{

struct Errors {
    std::vector<double> error, stated;

    void add(const std::optional<Measured>& found, double truth)
    {
        if (found) {
            error.push_back(found->value - truth);
            stated.push_back(found->uncertainty);
        }
    }
    [[nodiscard]] double rms() const
    {
        double sum = 0;
        for (const double e : error)
            sum += e * e;
        return error.empty() ? 0 : std::sqrt(sum / static_cast<double>(error.size()));
    }
    [[nodiscard]] double bias() const
    {
        double sum = 0;
        for (const double e : error)
            sum += e;
        return error.empty() ? 0 : sum / static_cast<double>(error.size());
    }
    [[nodiscard]] double worst() const
    {
        double most = 0;
        for (const double e : error)
            most = std::max(most, std::abs(e));
        return most;
    }
    /// Share of truths inside the 95 % interval.
    [[nodiscard]] double coverage() const
    {
        std::size_t inside = 0;
        for (std::size_t i = 0; i < error.size(); ++i)
            inside += std::abs(error[i]) <= 1.96 * stated[i] ? 1 : 0;
        return error.empty() ? 1 : static_cast<double>(inside) / static_cast<double>(error.size());
    }
    void append(const Errors& other)
    {
        error.insert(error.end(), other.error.begin(), other.error.end());
        stated.insert(stated.end(), other.stated.begin(), other.stated.end());
    }
};

struct Score {
    int known = 0, missed = 0, invented = 0, wrongKind = 0;
    Errors contact, flight, height, speed, drop;
    std::vector<std::pair<Jump, simulator::TrueJump>> pairs;

    void append(const Score& other)
    {
        known += other.known;
        missed += other.missed;
        invented += other.invented;
        wrongKind += other.wrongKind;
        contact.append(other.contact);
        flight.append(other.flight);
        height.append(other.height);
        speed.append(other.speed);
        drop.append(other.drop);
        pairs.insert(pairs.end(), other.pairs.begin(), other.pairs.end());
    }
};

inline Kind kindOf(const std::string& lift)
{
    if (lift == "drop-jump")
        return Kind::Drop;
    if (lift == "ankle-hop")
        return Kind::Hop;
    return lift == "squat-jump" ? Kind::Squat : Kind::CounterMovement;
}

/// A found jump is the known one whose take-off lies within 0.06 s.
inline Score score(const JumpAnalysis& analysis, const simulator::SimulatedSet& set, const simulator::SetPlan& plan)
{
    Score result;
    result.known = static_cast<int>(set.jumps.size());
    auto free = analysis.jumps;
    for (const auto& truth : set.jumps) {
        const auto found = std::find_if(free.begin(), free.end(), [&](const Jump& jump) {
            return std::abs(jump.takeoff.value - truth.takeoff) < 0.06;
        });
        if (found == free.end()) {
            ++result.missed;
            continue;
        }
        const bool told = !plan.onShoe || !truth.fromStanding; // a foot stands through both kinds of push-off
        result.wrongKind += !told || found->kind == kindOf(plan.lift) ? 0 : 1;
        if (!truth.fromStanding)
            result.contact.add(found->contact, truth.takeoff - truth.landing);
        if (truth.secondLanding > 0)
            result.flight.add(found->flight, truth.secondLanding - truth.takeoff);
        result.speed.add(found->takeoffVelocity, truth.takeoffSpeed);
        result.height.add(found->height, truth.takeoffSpeed * truth.takeoffSpeed / (2 * plan.gravity));
        if (truth.landingSpeed > 0)
            result.drop.add(found->effectiveDrop, truth.landingSpeed * truth.landingSpeed / (2 * plan.gravity));
        result.pairs.emplace_back(*found, truth);
        free.erase(found);
    }
    result.invented = static_cast<int>(free.size());
    return result;
}

} // namespace fleetrung::jumps::test
