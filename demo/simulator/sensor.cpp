#include "demo/simulator/sensor.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace fleetrung::simulator
{
namespace
{

using Eigen::Vector3d;

constexpr double standardGravity = 9.80665; // m/s2, the g of data sheets
constexpr double degree = std::numbers::pi / 180;

/// One triad: gain and offset of each axis, white noise, range, counts.
struct Triad {
    Vector3d gain, offset;
    double noise; // standard deviation of a sample
    double range; // infinite where there is none
    double step;  // 0 where it is not quantised

    [[nodiscard]] Vector3d read(const Vector3d& truth, Random& random) const
    {
        Vector3d reading;
        for (int axis = 0; axis < 3; ++axis) {
            double value = gain[axis] * truth[axis] + offset[axis] + noise * random.normal();
            value = std::clamp(value, -range, range);
            if (step > 0) {
                value = std::clamp(std::round(value / step), -32768.0, 32767.0) * step;
            }
            reading[axis] = value;
        }
        return reading;
    }
};

Vector3d normals(Random& random, double mean, double deviation)
{
    const double x = random.normal(mean, deviation);
    const double y = random.normal(mean, deviation);
    const double z = random.normal(mean, deviation);
    return {x, y, z};
}

double orUnlimited(double range)
{
    return range > 0 ? range : std::numeric_limits<double>::infinity();
}

/// The part as set to the plan's range: 16 bits over a wider range are coarser.
Part ranged(Part part, const SensorPlan& plan)
{
    if (plan.accelerometerRange > 0) {
        if (part.accelerometerRange > 0) {
            part.accelerometerStep *= plan.accelerometerRange / part.accelerometerRange;
        }
        part.accelerometerRange = plan.accelerometerRange;
    }
    return part;
}

motion::SensorTraits traitsOf(const Part& part)
{
    motion::SensorTraits traits;
    traits.accelerometerNoise = part.accelerometerNoise * 1e-6 * standardGravity;
    traits.gyroscopeNoise = part.gyroscopeNoise * 1e-3 * degree;
    traits.accelerometerBias = part.accelerometerBias * 1e-3 * standardGravity;
    traits.gyroscopeBias = part.gyroscopeBias * degree;
    traits.accelerometerScaleError = part.accelerometerScaleError;
    traits.gyroscopeScaleError = part.gyroscopeScaleError;
    traits.accelerometerRange = orUnlimited(part.accelerometerRange * standardGravity);
    traits.gyroscopeRange = orUnlimited(part.gyroscopeRange * degree);
    return traits;
}

Eigen::Quaterniond anyMounting(Random& random)
{
    const auto axes = normals(random, 0, 1);
    const double w = random.normal();
    return Eigen::Quaterniond(w, axes.x(), axes.y(), axes.z()).normalized();
}

/// Angular velocity in bar axes: the skew part of R^T R'.
Vector3d angularRate(const Pose& pose)
{
    const Eigen::Matrix3d skew = pose.attitude.transpose() * pose.attitudeRate;
    return {skew(2, 1), skew(0, 2), skew(1, 0)};
}

/// One reading that an axis keeps from an instant on.
class StuckAxis
{
public:
    explicit StuckAxis(const SensorFaults& faults) : axis_(faults.stuckAxis), from_(faults.stuckFrom) {}

    void apply(motion::Sample& sample)
    {
        if (!axis_ || sample.time < from_) {
            return;
        }
        double& reading = *axis_ < 3 ? sample.specificForce[*axis_] : sample.angularRate[*axis_ - 3];
        kept_ = kept_.value_or(reading);
        reading = *kept_;
    }

private:
    std::optional<int> axis_;
    double from_;
    std::optional<double> kept_;
};

template <class T> void keep(std::vector<T>& all, const std::vector<bool>& kept)
{
    std::size_t next = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (kept[i]) {
            all[next++] = all[i];
        }
    }
    all.resize(next);
}

} // namespace

Readings readScene(const Scene& scene, const SensorPlan& plan, const Part& asSold, double gravity, Random& random)
{
    const auto part = ranged(asSold, plan);
    Readings readings;
    auto& recording = readings.recording;
    recording.sensor = traitsOf(part);
    recording.hasGyroscope = plan.hasGyroscope;

    const auto& traits = recording.sensor;
    const double bandwidth = std::sqrt(plan.rate / 2); // white noise up to half the rate
    const auto accelerometerGain = normals(random, 1, traits.accelerometerScaleError);
    const auto accelerometerOffset = normals(random, 0, traits.accelerometerBias);
    const auto gyroscopeGain = normals(random, 1, traits.gyroscopeScaleError);
    const auto gyroscopeOffset = normals(random, 0, traits.gyroscopeBias);
    const Triad accelerometer{accelerometerGain, accelerometerOffset, traits.accelerometerNoise * bandwidth,
                              traits.accelerometerRange, part.accelerometerStep * 1e-3 * standardGravity};
    const Triad gyroscope{gyroscopeGain, gyroscopeOffset, traits.gyroscopeNoise * bandwidth, traits.gyroscopeRange,
                          part.gyroscopeStep * 1e-3 * degree};
    const auto mounting = plan.randomMounting ? anyMounting(random) : plan.mounting;
    const Eigen::Matrix3d toSensor = mounting.normalized().toRotationMatrix().transpose();

    Vector3d sense = Vector3d::Ones(); // of turning
    for (int axis = 0; axis < 3; ++axis) {
        if (plan.faults.swappedSign[static_cast<std::size_t>(axis)]) {
            sense[axis] = -1;
        }
    }
    StuckAxis stuck(plan.faults);

    const double pace = 1 + plan.clockSkew;
    const auto count = static_cast<std::size_t>(scene.duration() * pace * plan.rate) + 1;
    recording.samples.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        const double stamp = static_cast<double>(i) / plan.rate;
        double time = stamp / pace;
        if (plan.timingJitter > 0) {
            time += std::clamp(random.normal(), -3.0, 3.0) * plan.timingJitter;
        }
        const auto pose = scene.at(time);
        const Vector3d acceleration =
            pose.acceleration + pose.attitudeAcceleration * plan.lever + gravity * Vector3d::UnitZ();
        const Vector3d force = toSensor * (pose.attitude.transpose() * acceleration);
        const Vector3d rate = toSensor * angularRate(pose);
        const Vector3d forceReading = accelerometer.read(force, random);
        const Vector3d rateReading = sense.cwiseProduct(gyroscope.read(rate, random));
        recording.samples.push_back(
            {plan.startTime + stamp, forceReading, plan.hasGyroscope ? rateReading : Vector3d::Zero().eval()});
        stuck.apply(recording.samples.back());

        readings.motion.height.push_back(pose.position.z() + pose.attitude.row(2).dot(plan.lever));
        readings.motion.velocity.push_back(pose.velocity.z() + pose.attitudeRate.row(2).dot(plan.lever));
        readings.motion.acceleration.push_back(acceleration.z() - gravity);
    }
    return readings;
}

std::vector<Packet> transmit(Readings& readings, const SensorPlan& plan, double burstAt, Random& random)
{
    auto& samples = readings.recording.samples;
    const auto& faults = plan.faults;
    const auto size = static_cast<std::size_t>(plan.samplesPerPacket);
    std::vector<Packet> packets;
    std::vector<bool> kept(samples.size(), true);
    for (std::size_t first = 0; first < samples.size(); first += size) {
        const auto last = std::min(first + size, samples.size());
        const double delay = random.uniform(0.010, 0.040); // radio and scheduling: starting value
        const bool lost = random.chance(plan.lossShare);
        const bool doubled = random.chance(plan.doubledShare);
        const bool swapped = random.chance(plan.swappedShare);
        Packet packet{static_cast<std::uint32_t>(first), samples[last - 1].time / (1 + plan.clockSkew) + delay, {}};
        for (std::size_t i = first; i < last; ++i) {
            const double time = samples[i].time;
            kept[i] = !lost && (time < burstAt || time >= burstAt + faults.burstLoss);
            if (kept[i]) {
                packet.samples.push_back(samples[i]);
                packet.samples.back().time += time < faults.clockStepAt ? 0.0 : faults.clockStep;
            }
        }
        if (packet.samples.empty()) {
            continue;
        }
        packets.push_back(packet);
        if (doubled) {
            packets.push_back(packet);
        }
        const auto here = packets.size() - 1;
        if (swapped && here > 0) {
            std::swap(packets[here].counter, packets[here - 1].counter);
            std::swap(packets[here].samples, packets[here - 1].samples);
        }
    }
    std::stable_sort(packets.begin(), packets.end(),
                     [](const Packet& a, const Packet& b) { return a.arrival < b.arrival; });
    keep(samples, kept);
    keep(readings.motion.height, kept);
    keep(readings.motion.velocity, kept);
    keep(readings.motion.acceleration, kept);
    return packets;
}

} // namespace fleetrung::simulator
