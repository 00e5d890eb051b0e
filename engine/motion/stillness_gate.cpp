// A forward filter decides which quiet spans may be zero velocity before any of them bends the solve: it is carried
// through the span on its own, and the mean velocity it predicts there must be nothing within its error.
#include "engine/motion/keyframe_chain.hpp"

#include <Eigen/Cholesky>

namespace fleetrung::motion
{
namespace
{

constexpr double gateLimit = 16.3;        // chi-square, 3 degrees of freedom, 0.1 %
constexpr double gateFloor = 0.006;       // m/s: the gate never trusts its own prediction more than this
constexpr double longestEvenMotion = 5.0; // s: nobody moves a bar evenly for longer

class Filter
{
public:
    explicit Filter(const Chain& chain)
        : chain_(chain), error_(-chain.priorOffset()),
          covariance_(chain.priorSpread().array().square().matrix().asDiagonal())
    {
    }

    void predict(std::size_t k)
    {
        const Interval& interval = chain_.intervals[k];
        error_ = interval.transition * error_ - interval.defect;
        covariance_ = interval.transition * covariance_ * interval.transition.transpose() + interval.noise;
    }

    void useStillness(std::size_t k)
    {
        const State& state = chain_.states[k];
        for (int axis = 0; axis < 3; ++axis)
            update(at::velocity + axis, -state.velocity[axis], stillSpeed[axis] * stillSpeed[axis]);
        for (int axis = 0; axis < 3 && chain_.recording.hasGyroscope; ++axis)
            update(at::gyroscopeBias + axis, chain_.quiet[k].meanRate[axis] - state.gyroscopeBias[axis],
                   1 / rateWeight(chain_.quiet[k]));
    }

    [[nodiscard]] Eigen::Vector3d velocityAt(std::size_t k) const
    {
        return chain_.states[k].velocity + error_.segment<3>(at::velocity);
    }

    [[nodiscard]] double chiSquare(const Eigen::Vector3d& speed) const
    {
        Eigen::Matrix3d spread = covariance_.block<3, 3>(at::velocity, at::velocity);
        spread.diagonal().array() += stillSpeed.array().square() + gateFloor * gateFloor;
        return speed.dot(spread.ldlt().solve(speed));
    }

private:
    void update(int component, double value, double variance)
    {
        const StateVector gain = covariance_.col(component) / (covariance_(component, component) + variance);
        error_ += gain * (value - error_[component]);
        covariance_ -= gain * covariance_.row(component).eval();
    }

    const Chain& chain_;
    StateVector error_;
    StateMatrix covariance_;
};

/// Carries a copy through the span without using it.
bool standsStill(Filter filter, const QuietSpan& span)
{
    Eigen::Vector3d speed = Eigen::Vector3d::Zero();
    for (std::size_t k = span.first; k <= span.last; ++k) {
        speed += filter.velocityAt(k);
        if (k < span.last)
            filter.predict(k);
    }
    return filter.chiSquare(speed / static_cast<double>(span.last - span.first + 1)) < gateLimit;
}

} // namespace

std::vector<double> gateStillness(const Chain& chain)
{
    std::vector<double> weights(chain.keyframes.size(), 0.0);
    Filter filter(chain);
    std::size_t k = 0;
    bool moving = false;
    double movingSince = 0;
    for (const auto& span : chain.spans) {
        for (; k < span.first; ++k)
            filter.predict(k);
        const bool movesOn = moving && span.continues && chain.timeOf(k) - movingSince < longestEvenMotion;
        const bool still = !movesOn && standsStill(filter, span);
        if (!still && !movesOn)
            movingSince = chain.timeOf(k);
        moving = !still;
        while (still && k <= span.last) {
            weights[k] = 1.0;
            filter.useStillness(k);
            if (k == span.last)
                break;
            filter.predict(k++);
        }
    }
    return weights;
}

} // namespace fleetrung::motion
