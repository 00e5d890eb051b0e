#include "engine/motion/vertical_motion.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <Eigen/Cholesky>
#include <Eigen/LU>

#include "engine/motion/gravity.hpp"
#include "engine/motion/stillness.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double keyframeSpacing = 0.1; // s
// Standard deviations of a held bar's velocity in a still window [m/s]: breathing lifts it less than balance sways it.
const Eigen::Vector3d stillSpeed(0.015, 0.015, 0.006);
constexpr double gateLimit = 16.3;      // chi-square, 3 degrees of freedom, 0.1 %
constexpr double gateFloor = 0.006;     // m/s: the gate never trusts its own prediction more than this
constexpr double stillLimit = 25.0;     // chi-square beyond which a still window is switched off
constexpr double returnLimit = 16.0;    // the same for a top or bottom that should have returned to its height
constexpr double correlationTime = 2.0; // s over which the weak bounds on height and speed say the same thing
constexpr double longestEvenMotion = 5.0; // s: nobody moves a bar evenly for longer
constexpr std::size_t longestSpan = 10; // keyframes that are judged together
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

/// One capture being solved: keyframes, their states, what lies between them.
class Solver
{
public:
    Solver(const Recording& recording, const Knowledge& knowledge)
        : recording_(recording), samples_(recording.samples), knowledge_(knowledge)
    {
        placeKeyframes();
        quiet_ = findQuiet(recording, keyframes_);
        spans_ = quietSpans(quiet_, longestSpan);
        stillWeight_.assign(keyframes_.size(), 0.0);
        returnWeight_.assign(knowledge.returns.size(), 1.0);
        states_.resize(keyframes_.size());
        intervals_.resize(keyframes_.size() - 1);
    }

    Expected<VerticalMotion> solve()
    {
        if (!startStates())
            return fail(Code::NotAvailable, "",
                        "the readings never come near gravity; check the units of the accelerometer");
        linearise();
        gate();
        for (int round = 0; round < linearisations; ++round) {
            if (round > 0)
                linearise();
            for (int pass = 0; pass < reweightings; ++pass) {
                solution_ = KeyframeSolution(normalEquations());
                if (!solution_.ok())
                    return fail(Code::NotConverged, "", "the motion could not be solved; record the set again");
                reweigh();
            }
            for (std::size_t k = 0; k < states_.size(); ++k)
                states_[k] = moved(states_[k], solution_.correction(k));
        }
        return trace();
    }

private:
    struct Interval {
        StateMatrix transition;
        StateVector defect;
        StateMatrix noise;
    };
    struct ReturnRow {
        StateRow row;
        double height;
    };

    void placeKeyframes()
    {
        keyframes_.push_back(0);
        for (std::size_t i = 1; i < samples_.size(); ++i)
            if (samples_[i].time - samples_[keyframes_.back()].time >= keyframeSpacing - 1e-9)
                keyframes_.push_back(i);
        if (keyframes_.back() + 1 != samples_.size()) {
            // A last short interval joins the one before it.
            if (keyframes_.size() > 1)
                keyframes_.pop_back();
            keyframes_.push_back(samples_.size() - 1);
        }
    }

    bool startStates()
    {
        const auto firstQuiet = std::find_if(quiet_.begin(), quiet_.end(), [](const Quietness& q) { return q.quiet; });
        State state;
        Eigen::Vector3d up = Eigen::Vector3d::Zero();
        if (firstQuiet != quiet_.end()) {
            const auto k = static_cast<std::size_t>(firstQuiet - quiet_.begin());
            state.gyroscopeBias = quietBias(k);
            up = gravityInFirstFrame(state.gyroscopeBias, keyframes_[k], keyframes_[k], firstQuiet->meanForce);
        } else {
            up = gravityInFirstFrame(state.gyroscopeBias, 0, samples_.size() - 1, std::nullopt);
        }
        if (up.norm() < 0.5 * standardGravity || up.norm() > 1.5 * standardGravity)
            return false;
        state.attitude = Eigen::Quaterniond::FromTwoVectors(up, Eigen::Vector3d::UnitZ());
        for (std::size_t k = 0; k < keyframes_.size(); ++k) {
            states_[k] = state;
            if (k + 1 < keyframes_.size())
                state.attitude =
                    (state.attitude * turnOver(keyframes_[k], keyframes_[k + 1], state.gyroscopeBias)).normalized();
        }
        return true;
    }

    /// Mean rate over the quiet keyframes that follow k without a break, shrunk towards the data sheet's zero.
    Eigen::Vector3d quietBias(std::size_t k) const
    {
        Eigen::Vector3d sum = Eigen::Vector3d::Zero();
        double count = 0;
        for (; k < quiet_.size() && quiet_[k].quiet && count < 20; ++k, ++count)
            sum += quiet_[k].meanRate;
        return recording_.hasGyroscope ? Eigen::Vector3d(sum / (count + 1)) : Eigen::Vector3d::Zero();
    }

    Eigen::Quaterniond turnOver(std::size_t from, std::size_t to, const Eigen::Vector3d& bias) const
    {
        Eigen::Quaterniond turn = Eigen::Quaterniond::Identity();
        for (std::size_t i = from; i < to; ++i) {
            const Eigen::Vector3d angle = (0.5 * (samples_[i].angularRate + samples_[i + 1].angularRate) - bias) *
                                          (samples_[i + 1].time - samples_[i].time);
            const double size = angle.norm();
            if (size > 0)
                turn = turn * Eigen::Quaterniond(Eigen::AngleAxisd(size, angle / size));
        }
        return turn.normalized();
    }

    /// Mean specific force over [from, to] (or the given one) turned into the sensor axes of the first sample: over a
    /// long stretch a body that stays in the room averages gravity alone.
    Eigen::Vector3d gravityInFirstFrame(const Eigen::Vector3d& bias, std::size_t from, std::size_t to,
                                        std::optional<Eigen::Vector3d> force) const
    {
        Eigen::Quaterniond attitude = turnOver(0, from, bias);
        if (force)
            return attitude * *force;
        Eigen::Vector3d sum = Eigen::Vector3d::Zero();
        for (std::size_t i = from; i <= to; ++i) {
            sum += attitude * samples_[i].specificForce;
            if (i < to)
                attitude = attitude * turnOver(i, i + 1, bias);
        }
        return sum / static_cast<double>(to - from + 1);
    }

    void linearise()
    {
        returnRows_.assign(knowledge_.returns.size(), ReturnRow{});
        for (std::size_t k = 0; k + 1 < keyframes_.size(); ++k) {
            Propagation propagation(states_[k], samples_[keyframes_[k]]);
            for (std::size_t i = keyframes_[k]; i < keyframes_[k + 1]; ++i) {
                noteReturns(i, propagation);
                propagation.step(samples_[i + 1]);
            }
            intervals_[k] = {propagation.transition(), difference(states_[k + 1], propagation.state()),
                             noiseOf(propagation)};
        }
    }

    void noteReturns(std::size_t sample, const Propagation& propagation)
    {
        for (std::size_t r = 0; r < knowledge_.returns.size(); ++r)
            if (knowledge_.returns[r].sample == sample)
                returnRows_[r] = {propagation.heightRow(), propagation.state().height};
    }

    StateMatrix noiseOf(const Propagation& propagation) const
    {
        const auto& sensor = recording_.sensor;
        const double t = propagation.duration();
        // Scale errors act on what moves: a share of the angle turned and of the speed gained.
        double tilt = squared(sensor.gyroscopeNoise) * t / 2 +
                      squared(sensor.gyroscopeScaleError * propagation.turned()) + squared(1e-5) * t;
        if (!recording_.hasGyroscope)
            tilt += squared(0.15) * t; // a held bar that nobody watches turns by some degrees each second
        const double speed = squared(sensor.accelerometerNoise) * t / 2 +
                             squared(0.5 * sensor.accelerometerScaleError * propagation.acceleratedTravel()) + 1e-8 * t;
        StateMatrix q = StateMatrix::Zero();
        q.diagonal().segment<2>(at::tilt).setConstant(tilt);
        q.diagonal().segment<3>(at::velocity).setConstant(speed);
        q(at::height, at::height) = speed * t * t / 3 + 1e-10;
        q(at::height, at::velocity + 2) = q(at::velocity + 2, at::height) = speed * t / 2;
        q.diagonal().segment<3>(at::gyroscopeBias).setConstant(squared(2e-5) * t);
        q.diagonal().segment<3>(at::accelerometerBias).setConstant(squared(5e-4) * t);
        q(at::top, at::top) = q(at::bottom, at::bottom) = squared(1e-3) * t;
        return q;
    }

    StateVector priorSpread() const
    {
        StateVector spread;
        const double tilt = recording_.hasGyroscope ? 0.1 : 0.2;
        spread << tilt, tilt, 1.5, 1.5, 1.5, 2.0, StateVector::Constant(recording_.sensor.gyroscopeBias).head<3>(),
            StateVector::Constant(recording_.sensor.accelerometerBias).head<3>(), 2.0, 2.0;
        return spread;
    }

    /// Distance of the first state from what is believed beforehand: at rest, level, unbiased.
    StateVector priorOffset() const
    {
        State believed;
        believed.attitude = states_[0].attitude; // the accelerometer has already been used for it
        return difference(states_[0], believed);
    }

    /// A forward filter decides which quiet spans may be zero velocity before any of them bends the solve: it is
    /// carried through the span on its own, and the mean velocity it predicts there must be nothing within its error.
    void gate()
    {
        Filter filter{-priorOffset(), priorSpread().array().square().matrix().asDiagonal()};
        std::size_t k = 0;
        bool moving = false;
        double movingSince = 0;
        for (const auto& span : spans_) {
            for (; k < span.first; ++k)
                predict(filter, k);
            const double now = samples_[keyframes_[k]].time;
            const bool movesOn = moving && span.continues && now - movingSince < longestEvenMotion;
            const bool still = !movesOn && standsStill(filter, span);
            if (!still && !movesOn)
                movingSince = now;
            moving = !still;
            if (still) {
                for (;; ++k) {
                    stillWeight_[k] = 1.0;
                    useStillness(filter, k);
                    if (k == span.last)
                        break;
                    predict(filter, k);
                }
            }
        }
    }

    struct Filter {
        StateVector error;
        StateMatrix covariance;
    };

    void predict(Filter& filter, std::size_t k) const
    {
        const auto& interval = intervals_[k];
        filter.error = interval.transition * filter.error - interval.defect;
        filter.covariance = interval.transition * filter.covariance * interval.transition.transpose() + interval.noise;
    }

    bool standsStill(Filter filter, const QuietSpan& span) const
    {
        Eigen::Vector3d speed = Eigen::Vector3d::Zero();
        for (std::size_t k = span.first;; ++k) {
            speed += states_[k].velocity + filter.error.segment<3>(at::velocity);
            if (k == span.last)
                break;
            predict(filter, k);
        }
        speed /= static_cast<double>(span.last - span.first + 1);
        Eigen::Matrix3d spread = filter.covariance.block<3, 3>(at::velocity, at::velocity);
        spread.diagonal().array() += stillSpeed.array().square() + squared(gateFloor);
        return speed.dot(spread.ldlt().solve(speed)) < gateLimit;
    }

    void useStillness(Filter& filter, std::size_t k) const
    {
        for (int axis = 0; axis < 3; ++axis)
            update(filter, at::velocity + axis, -states_[k].velocity[axis], squared(stillSpeed[axis]));
        for (int axis = 0; axis < 3 && recording_.hasGyroscope; ++axis)
            update(filter, at::gyroscopeBias + axis, quiet_[k].meanRate[axis] - states_[k].gyroscopeBias[axis],
                   1 / rateWeight(quiet_[k]));
    }

    static void update(Filter& filter, int component, double value, double variance)
    {
        const StateVector gain =
            filter.covariance.col(component) / (filter.covariance(component, component) + variance);
        filter.error += gain * (value - filter.error[component]);
        filter.covariance -= gain * filter.covariance.row(component).eval();
    }

    /// How well a quiet window shows the gyroscope's bias: less so the more the hand moves.
    static double rateWeight(const Quietness& quiet) { return 1.0 / squared(std::max(0.003, quiet.rateSpread)); }

    KeyframeProblem normalEquations() const
    {
        KeyframeProblem problem(keyframes_.size());
        const StateVector offset = priorOffset();
        const StateVector spread = priorSpread();
        for (int i = 0; i < stateSize; ++i)
            problem.addMeasurement(0, StateRow::Unit(i), -offset[i], 1 / squared(spread[i]));
        for (std::size_t k = 0; k + 1 < keyframes_.size(); ++k)
            problem.addDynamics(k, intervals_[k].transition, intervals_[k].defect, intervals_[k].noise);
        for (std::size_t k = 0; k < keyframes_.size(); ++k) {
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
        for (int axis = 0; axis < 3; ++axis)
            problem.addMeasurement(k, StateRow::Unit(at::velocity + axis), -states_[k].velocity[axis],
                                   weight / squared(stillSpeed[axis]));
        for (int axis = 0; axis < 3 && recording_.hasGyroscope; ++axis)
            problem.addMeasurement(k, StateRow::Unit(at::gyroscopeBias + axis),
                                   quiet_[k].meanRate[axis] - states_[k].gyroscopeBias[axis],
                                   weight * rateWeight(quiet_[k]));
    }

    void addWeakBounds(KeyframeProblem& problem, std::size_t k) const
    {
        const double share = keyframeSpacing / correlationTime;
        problem.addMeasurement(k, StateRow::Unit(at::height), -states_[k].height,
                               share / squared(knowledge_.heightSpread));
        for (int axis = 0; axis < 2; ++axis)
            problem.addMeasurement(k, StateRow::Unit(at::velocity + axis), -states_[k].velocity[axis],
                                   share / squared(knowledge_.speedSpread));
    }

    std::size_t keyframeBefore(std::size_t sample) const
    {
        const auto after = std::upper_bound(keyframes_.begin(), keyframes_.end(), sample);
        const auto k = static_cast<std::size_t>(after - keyframes_.begin()) - 1;
        return std::min(k, keyframes_.size() - 2);
    }

    double returnSpread(std::size_t r) const
    {
        return knowledge_.returns[r].top ? knowledge_.topSpread : knowledge_.bottomSpread;
    }

    double returnLevel(std::size_t r, const State& state) const
    {
        return knowledge_.returns[r].top ? state.top : state.bottom;
    }

    StateRow returnRow(std::size_t r) const
    {
        StateRow row = returnRows_[r].row;
        row[knowledge_.returns[r].top ? at::top : at::bottom] -= 1;
        return row;
    }

    void addReturn(KeyframeProblem& problem, std::size_t r) const
    {
        const std::size_t k = keyframeBefore(knowledge_.returns[r].sample);
        const double gap = returnRows_[r].height - returnLevel(r, states_[k]);
        problem.addMeasurement(k, returnRow(r), -gap, returnWeight_[r] / squared(returnSpread(r)));
    }

    void reweigh()
    {
        for (const auto& span : spans_) {
            Eigen::Vector3d speed = Eigen::Vector3d::Zero();
            for (std::size_t k = span.first; k <= span.last; ++k)
                speed += states_[k].velocity + solution_.correction(k).segment<3>(at::velocity);
            speed /= static_cast<double>(span.last - span.first + 1);
            const double weight = robustWeight(speed.cwiseQuotient(stillSpeed).squaredNorm(), stillLimit);
            for (std::size_t k = span.first; k <= span.last; ++k)
                stillWeight_[k] = weight;
        }
        for (std::size_t r = 0; r < returnRows_.size(); ++r) {
            const std::size_t k = keyframeBefore(knowledge_.returns[r].sample);
            const double gap =
                returnRows_[r].height - returnLevel(r, states_[k]) + returnRow(r).dot(solution_.correction(k));
            returnWeight_[r] = robustWeight(squared(gap / returnSpread(r)), returnLimit);
        }
    }

    VerticalMotion trace() const
    {
        VerticalMotion motion;
        motion.keyframes = keyframes_;
        motion.solution = solution_;
        for (std::size_t k = 0; k + 1 < keyframes_.size(); ++k) {
            Propagation whole(states_[k], samples_[keyframes_[k]]);
            for (std::size_t i = keyframes_[k]; i < keyframes_[k + 1]; ++i)
                whole.step(samples_[i + 1]);
            const StateVector defect = difference(states_[k + 1], whole.state());
            const bool still = stillWeight_[k] > 0.5;
            Propagation propagation(states_[k], samples_[keyframes_[k]]);
            const bool lastInterval = k + 2 == keyframes_.size();
            for (std::size_t i = keyframes_[k]; i < keyframes_[k + 1] + (lastInterval ? 1 : 0); ++i) {
                const double share = propagation.duration() / whole.duration();
                motion.time.push_back(samples_[i].time);
                motion.acceleration.push_back(propagation.acceleration().z() +
                                              defect[at::velocity + 2] / whole.duration());
                motion.velocity.push_back(propagation.state().velocity.z() + share * defect[at::velocity + 2]);
                motion.height.push_back(propagation.state().height + share * defect[at::height]);
                motion.still.push_back(share < 0.5 ? still : stillWeight_[k + 1] > 0.5);
                if (i + 1 < samples_.size())
                    propagation.step(samples_[i + 1]);
            }
        }
        return motion;
    }

    const Recording& recording_;
    const std::vector<Sample>& samples_;
    const Knowledge& knowledge_;
    std::vector<std::size_t> keyframes_;
    std::vector<Quietness> quiet_;
    std::vector<QuietSpan> spans_;
    std::vector<double> stillWeight_;
    std::vector<double> returnWeight_;
    std::vector<ReturnRow> returnRows_;
    std::vector<State> states_;
    std::vector<Interval> intervals_;
    KeyframeSolution solution_;
};

} // namespace

Expected<VerticalMotion> solveVerticalMotion(const Recording& recording, const Knowledge& knowledge)
{
    return Solver(recording, knowledge).solve();
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
