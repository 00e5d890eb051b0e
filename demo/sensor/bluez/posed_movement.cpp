#include "demo/sensor/bluez/posed_movement.hpp"

#include <cmath>
#include <numbers>
#include <sstream>

namespace fleetrung::demo
{
namespace
{

constexpr double gravity = 9.80665; // m/s2
constexpr double faceTime = 1.5, turnTime = 4, raiseTime = 1.2;

/// Minimum jerk (Flash and Hogan 1985) from 0 to 1 over u = 0..1, and its derivatives by u.
struct Course {
    double way, speed, acceleration;
};
Course courseAt(double u)
{
    return {u * u * u * (10 + u * (-15 + 6 * u)), 30 * u * u * (1 - u) * (1 - u), 60 * u * (1 - u) * (1 - 2 * u)};
}

/// "+x" .. "-z"; zero where it is none.
Eigen::Vector3d axisNamed(const std::string& name)
{
    Eigen::Vector3d axis = Eigen::Vector3d::Zero();
    if (name.size() == 2 && (name[0] == '+' || name[0] == '-') && name[1] >= 'x' && name[1] <= 'z') {
        axis[name[1] - 'x'] = name[0] == '+' ? 1 : -1;
    }
    return axis;
}

} // namespace

PosedMovement::PosedMovement(double rate, std::uint64_t seed) : rate_(rate), random_(seed)
{
    const motion::SensorTraits traits; // a common part
    for (int axis = 0; axis < 3; ++axis) {
        accelerometerOffset_[axis] = random_.normal(0, traits.accelerometerBias);
        gyroscopeOffset_[axis] = random_.normal(0, traits.gyroscopeBias);
    }
    accelerometerNoise_ = traits.accelerometerNoise * std::sqrt(rate / 2);
    gyroscopeNoise_ = traits.gyroscopeNoise * std::sqrt(rate / 2);
}

motion::Sample PosedMovement::next()
{
    Eigen::Vector3d turning = Eigen::Vector3d::Zero();
    Eigen::Vector3d force(0, 0, gravity);
    auto attitude = attitude_;
    if (!acts_.empty()) {
        const auto& act = acts_.front();
        const auto course = courseAt(std::min(time_ / act.duration, 1.0));
        attitude = Eigen::AngleAxisd(act.angle * course.way, act.axis) * attitude_;
        turning = act.axis * (act.angle * course.speed / act.duration);
        force.z() += act.height * course.acceleration / (act.duration * act.duration);
        time_ += 1 / rate_;
        if (time_ >= act.duration) {
            attitude_ = (Eigen::AngleAxisd(act.angle, act.axis) * attitude_).normalized();
            acts_.pop_front();
            time_ = 0;
        }
    }
    motion::Sample sample{0, attitude.inverse() * force + accelerometerOffset_,
                          attitude.inverse() * turning + gyroscopeOffset_};
    for (int axis = 0; axis < 3; ++axis) {
        sample.specificForce[axis] += random_.normal(0, accelerometerNoise_);
        sample.angularRate[axis] += random_.normal(0, gyroscopeNoise_);
    }
    return sample;
}

void PosedMovement::add(const Act& act)
{
    lastAttitude_ = (Eigen::AngleAxisd(act.angle, act.axis) * lastAttitude_).normalized();
    acts_.push_back(act);
}

void PosedMovement::face(const Eigen::Vector3d& up)
{
    const auto turn =
        Eigen::AngleAxisd(Eigen::Quaterniond::FromTwoVectors(lastAttitude_ * up, Eigen::Vector3d::UnitZ()));
    add({faceTime, turn.axis(), turn.angle()});
}

void PosedMovement::teach(double stillSeconds)
{
    for (const char* name : {"+x", "-x", "+y", "-y", "+z", "-z"}) {
        face(axisNamed(name));
        add({stillSeconds});
    }
    for (const char* name : {"+x", "+y", "+z"}) {
        face(axisNamed(name));
        add({stillSeconds});
        add({turnTime, Eigen::Vector3d::UnitZ(), 2 * std::numbers::pi});
        add({stillSeconds});
    }
    for (int raise = 0; raise < 2; ++raise) {
        add({raiseTime, Eigen::Vector3d::UnitZ(), 0, 0.5});
        add({stillSeconds});
        add({raiseTime, Eigen::Vector3d::UnitZ(), 0, -0.5});
        add({stillSeconds});
    }
}

Expected<void> PosedMovement::command(const std::string& words)
{
    std::istringstream text(words);
    std::string verb;
    std::string word;
    text >> verb >> word;
    std::istringstream digits(word);
    double number = 0;
    const bool isNumber = static_cast<bool>(digits >> number) && std::abs(number) <= 60;
    if (verb == "face" && axisNamed(word) != Eigen::Vector3d::Zero()) {
        face(axisNamed(word));
    } else if (verb == "turn") {
        add({turnTime, Eigen::Vector3d::UnitZ(), 2 * std::numbers::pi});
    } else if (verb == "raise" && isNumber) {
        add({raiseTime, Eigen::Vector3d::UnitZ(), 0, number});
    } else if (verb == "still" && isNumber && number > 0) {
        add({number});
    } else if (verb == "teach") {
        teach(3);
    } else {
        return fail(
            Code::InvalidArgument, words,
            "this sensor is posed: it knows face +x (or another axis), turn, raise METRES, still SECONDS, teach");
    }
    return {};
}

} // namespace fleetrung::demo
