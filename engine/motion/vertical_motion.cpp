#include "engine/motion/vertical_motion.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "engine/motion/keyframe_chain.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double stillLimit = 25.0;     // chi-square beyond which a still span is switched off
constexpr double returnLimit = 16.0;    // the same for a top or bottom that should have returned to its height
constexpr double correlationTime = 2.0; // s over which the weak bounds on height and speed say the same thing
constexpr int linearisations = 3;
constexpr int reweightings = 3;

double squared(double x)
{
    return x * x;
}

/// Tukey's biweight: near 1 for small residuals, exactly nothing beyond the limit, so that many wrong ones cannot pull
/// together.
double robustWeight(double chiSquare, double limit)
{
    return chiSquare < limit ? squared(1.0 - chiSquare / limit) : 0.0;
}

/// One capture being solved: the chain, and how much each piece of knowledge is believed.
class Solver
{
public:
    Solver(Chain chain, const Knowledge& knowledge)
        : chain_(std::move(chain)), knowledge_(knowledge), returnWeight_(knowledge.returns.size(), 1.0)
    {
    }

    Expected<VerticalMotion> solve()
    {
        linearise();
        stillWeight_ = gateStillness(chain_);
        for (int round = 0; round < linearisations; ++round) {
            if (round > 0)
                linearise();
            for (int pass = 0; pass < reweightings; ++pass) {
                solution_ = KeyframeSolution(normalEquations());
                if (!solution_.ok())
                    return fail(Code::NotConverged, "", "the motion could not be solved; record the set again");
                reweigh();
            }
            for (std::size_t k = 0; k < chain_.states.size(); ++k)
                chain_.states[k] = moved(chain_.states[k], solution_.correction(k));
        }
        return trace();
    }

private:
    struct ReturnRow {
        StateRow row = StateRow::Zero();
        double height = 0;
    };

    void linearise()
    {
        const auto& samples = chain_.recording.samples;
        returnRows_.assign(knowledge_.returns.size(), ReturnRow{});
        for (std::size_t k = 0; k + 1 < chain_.keyframes.size(); ++k) {
            Propagation propagation(chain_.states[k], samples[chain_.keyframes[k]]);
            for (std::size_t i = chain_.keyframes[k]; i < chain_.keyframes[k + 1]; ++i) {
                noteReturns(i, propagation);
                propagation.step(samples[i + 1]);
            }
            chain_.intervals[k] = {propagation.transition(), difference(chain_.states[k + 1], propagation.state()),
                                   intervalNoise(chain_.recording, propagation)};
        }
    }

    void noteReturns(std::size_t sample, const Propagation& propagation)
    {
        for (std::size_t r = 0; r < knowledge_.returns.size(); ++r)
            if (knowledge_.returns[r].sample == sample)
                returnRows_[r] = {propagation.heightRow(), propagation.state().height};
    }

    KeyframeProblem normalEquations() const
    {
        KeyframeProblem problem(chain_.keyframes.size());
        const StateVector offset = chain_.priorOffset();
        const StateVector spread = chain_.priorSpread();
        for (int i = 0; i < stateSize; ++i)
            problem.addMeasurement(0, StateRow::Unit(i), -offset[i], 1 / squared(spread[i]));
        for (std::size_t k = 0; k < chain_.intervals.size(); ++k)
            problem.addDynamics(k, chain_.intervals[k].transition, chain_.intervals[k].defect,
                                chain_.intervals[k].noise);
        for (std::size_t k = 0; k < chain_.keyframes.size(); ++k) {
            addStillness(problem, k);
            addWeakBounds(problem, k);
        }
        for (std::size_t r = 0; r < returnRows_.size(); ++r)
            addReturn(problem, r);
        return problem;
    }

    void addStillness(KeyframeProblem& problem, std::size_t k) const
    {
        const double weight = stillWeight_[k];
        if (weight < 1e-6)
            return;
        const State& state = chain_.states[k];
        const Quietness& quiet = chain_.quiet[k];
        for (int axis = 0; axis < 3; ++axis)
            problem.addMeasurement(k, StateRow::Unit(at::velocity + axis), -state.velocity[axis],
                                   weight / squared(stillSpeed[axis]));
        for (int axis = 0; axis < 3 && chain_.recording.hasGyroscope; ++axis)
            problem.addMeasurement(k, StateRow::Unit(at::gyroscopeBias + axis),
                                   quiet.meanRate[axis] - state.gyroscopeBias[axis], weight * rateWeight(quiet));
    }

    void addWeakBounds(KeyframeProblem& problem, std::size_t k) const
    {
        const std::size_t next = std::min(k + 1, chain_.keyframes.size() - 1);
        const double share = (chain_.timeOf(next) - chain_.timeOf(next - 1)) / correlationTime;
        const State& state = chain_.states[k];
        problem.addMeasurement(k, StateRow::Unit(at::height), -state.height, share / squared(knowledge_.heightSpread));
        for (int axis = 0; axis < 2; ++axis)
            problem.addMeasurement(k, StateRow::Unit(at::velocity + axis), -state.velocity[axis],
                                   share / squared(knowledge_.speedSpread));
    }

    double returnSpread(std::size_t r) const
    {
        return knowledge_.returns[r].top ? knowledge_.topSpread : knowledge_.bottomSpread;
    }

    /// By how much a turning point misses the level that it should return to, and the row of that gap.
    double returnGap(std::size_t r, const State& state) const
    {
        return returnRows_[r].height - (knowledge_.returns[r].top ? state.top : state.bottom);
    }

    StateRow returnRow(std::size_t r) const
    {
        StateRow row = returnRows_[r].row;
        row[knowledge_.returns[r].top ? at::top : at::bottom] -= 1;
        return row;
    }

    void addReturn(KeyframeProblem& problem, std::size_t r) const
    {
        const std::size_t k = chain_.keyframeBefore(knowledge_.returns[r].sample);
        problem.addMeasurement(k, returnRow(r), -returnGap(r, chain_.states[k]),
                               returnWeight_[r] / squared(returnSpread(r)));
    }

    /// Both ways: the gate has seen only what came before a span, so one that it refused may come back where the whole
    /// set says so, and one that it took may go.
    void reweigh()
    {
        for (const auto& span : chain_.spans) {
            Eigen::Vector3d speed = Eigen::Vector3d::Zero();
            for (std::size_t k = span.first; k <= span.last; ++k)
                speed += chain_.states[k].velocity + solution_.correction(k).segment<3>(at::velocity);
            speed /= static_cast<double>(span.last - span.first + 1);
            const double weight = robustWeight(speed.cwiseQuotient(stillSpeed).squaredNorm(), stillLimit);
            for (std::size_t k = span.first; k <= span.last; ++k)
                stillWeight_[k] = weight;
        }
        for (std::size_t r = 0; r < returnRows_.size(); ++r) {
            const std::size_t k = chain_.keyframeBefore(knowledge_.returns[r].sample);
            const double gap = returnGap(r, chain_.states[k]) + returnRow(r).dot(solution_.correction(k));
            returnWeight_[r] = robustWeight(squared(gap / returnSpread(r)), returnLimit);
        }
    }

    VerticalMotion trace() const
    {
        const auto& samples = chain_.recording.samples;
        VerticalMotion motion;
        motion.keyframes = chain_.keyframes;
        motion.solution = solution_;
        for (std::size_t k = 0; k + 1 < chain_.keyframes.size(); ++k) {
            Propagation whole(chain_.states[k], samples[chain_.keyframes[k]]);
            for (std::size_t i = chain_.keyframes[k]; i < chain_.keyframes[k + 1]; ++i)
                whole.step(samples[i + 1]);
            const StateVector defect = difference(chain_.states[k + 1], whole.state());
            const bool still = stillWeight_[k] > 0.5;
            Propagation propagation(chain_.states[k], samples[chain_.keyframes[k]]);
            const bool lastInterval = k + 2 == chain_.keyframes.size();
            for (std::size_t i = chain_.keyframes[k]; i < chain_.keyframes[k + 1] + (lastInterval ? 1 : 0); ++i) {
                const double share = propagation.duration() / whole.duration();
                motion.time.push_back(samples[i].time);
                motion.acceleration.push_back(propagation.acceleration().z() +
                                              defect[at::velocity + 2] / whole.duration());
                motion.velocity.push_back(propagation.state().velocity.z() + share * defect[at::velocity + 2]);
                motion.height.push_back(propagation.state().height + share * defect[at::height]);
                motion.still.push_back(share < 0.5 ? still : stillWeight_[k + 1] > 0.5);
                if (i + 1 < samples.size())
                    propagation.step(samples[i + 1]);
            }
        }
        return motion;
    }

    Chain chain_;
    const Knowledge& knowledge_;
    std::vector<double> stillWeight_;
    std::vector<double> returnWeight_;
    std::vector<ReturnRow> returnRows_;
    KeyframeSolution solution_;
};

} // namespace

Expected<VerticalMotion> solveVerticalMotion(const Recording& recording, const Knowledge& knowledge)
{
    auto chain = startChain(recording);
    if (!chain)
        return fail(Code::NotAvailable, "",
                    "the readings never come near gravity; check the units of the accelerometer");
    return Solver(std::move(*chain), knowledge).solve();
}

Eigen::MatrixXd VerticalMotion::covariance(std::span<const std::size_t> wanted) const
{
    // Errors between keyframes are taken as linear in time, as the corrections are.
    struct Place {
        std::size_t keyframe;
        double share;
    };
    std::vector<Place> places;
    for (const std::size_t sample : wanted) {
        const auto after = std::upper_bound(keyframes.begin(), keyframes.end(), sample);
        const auto k = std::min(static_cast<std::size_t>(after - keyframes.begin()) - 1, keyframes.size() - 2);
        const double length = time[keyframes[k + 1]] - time[keyframes[k]];
        places.push_back({k, (time[sample] - time[keyframes[k]]) / length});
    }
    const auto between = [this](std::size_t a, std::size_t b) -> Eigen::Matrix2d {
        const StateMatrix full =
            a <= b ? solution.crossCovariance(a, b) : StateMatrix(solution.crossCovariance(b, a).transpose());
        constexpr std::array<int, 2> rows{at::velocity + 2, at::height};
        Eigen::Matrix2d part;
        for (int i = 0; i < 2; ++i)
            for (int j = 0; j < 2; ++j)
                part(i, j) = full(rows[static_cast<std::size_t>(i)], rows[static_cast<std::size_t>(j)]);
        return part;
    };
    Eigen::MatrixXd result(2 * wanted.size(), 2 * wanted.size());
    for (std::size_t i = 0; i < places.size(); ++i)
        for (std::size_t j = 0; j < places.size(); ++j) {
            const auto& a = places[i];
            const auto& b = places[j];
            result.block<2, 2>(static_cast<Eigen::Index>(2 * i), static_cast<Eigen::Index>(2 * j)) =
                (1 - a.share) * (1 - b.share) * between(a.keyframe, b.keyframe) +
                (1 - a.share) * b.share * between(a.keyframe, b.keyframe + 1) +
                a.share * (1 - b.share) * between(a.keyframe + 1, b.keyframe) +
                a.share * b.share * between(a.keyframe + 1, b.keyframe + 1);
        }
    return result;
}

} // namespace fleetrung::motion
