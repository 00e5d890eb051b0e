#include "demo/sensor/bluez/movement.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::demo
{

PlayedMovement::PlayedMovement(motion::Recording recording, double stillSeconds, double pause)
    : recording_(std::move(recording)), rate_(motion::samplingRate(recording_)), pause_(pause)
{
    const auto still = static_cast<std::size_t>(std::max(stillSeconds * rate_, 1.0));
    stillSamples_ = std::min(still, recording_.samples.size());
    stillLeft_ = static_cast<std::size_t>(std::max(pause_, 0.0) * rate_);
}

motion::Sample PlayedMovement::next()
{
    if (!playing_ && pause_ >= 0 && stillLeft_-- == 0) {
        playing_ = true;
        at_ = 0;
    }
    const auto sample = recording_.samples[at_];
    ++at_;
    if (playing_ && at_ == recording_.samples.size()) {
        playing_ = false;
        stillLeft_ = static_cast<std::size_t>(std::max(pause_, 0.0) * rate_);
    }
    if (!playing_ && at_ >= stillSamples_) {
        at_ = 0;
    }
    return sample;
}

Expected<void> PlayedMovement::command(const std::string& words)
{
    if (words != "go") {
        return fail(Code::InvalidArgument, words, "this sensor plays a set: it knows \"move go\" only");
    }
    playing_ = true;
    at_ = 0;
    return {};
}

Expected<simulator::SimulatedSet> simulatedSet(const LiftPlan& plan, bool hasGyroscope)
{
    simulator::SetPlan set;
    set.lift = plan.lift;
    set.repetitions = plan.repetitions;
    set.stillBefore = set.stillAfter = restSeconds;
    set.onShoe = plan.onShoe;
    simulator::SensorPlan sensor;
    sensor.rate = plan.rate;
    sensor.randomMounting = plan.anyMounting;
    sensor.hasGyroscope = hasGyroscope;
    return simulator::simulateSet(set, sensor, plan.seed);
}

} // namespace fleetrung::demo
