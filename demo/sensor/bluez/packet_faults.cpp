#include "demo/sensor/bluez/packet_faults.hpp"

#include <utility>

namespace fleetrung::demo
{

PacketFaults::PacketFaults(std::function<void(const sensor::RawPacket&)> deliver, std::uint64_t seed)
    : deliver_(std::move(deliver)), random_(seed)
{
    for (auto* timer : {&bunching_, &stalling_}) {
        timer->setTimerType(Qt::PreciseTimer);
        connect(timer, &QTimer::timeout, this, [this] { release(); });
    }
    stalling_.setSingleShot(true);
}

void PacketFaults::bunch(int milliseconds)
{
    if (milliseconds > 0) {
        bunching_.start(milliseconds);
    } else {
        bunching_.stop();
        release();
    }
}

void PacketFaults::stall(int milliseconds)
{
    stalling_.start(milliseconds);
}

void PacketFaults::pass(sensor::RawPacket packet)
{
    if (silence != Silence::None || random_.chance(lose)) {
        return;
    }
    if (random_.chance(garble)) {
        packet.bytes.resize(static_cast<std::size_t>(1 + random_.below(20)));
        for (auto& byte : packet.bytes) {
            byte = static_cast<std::uint8_t>(random_.below(256));
        }
    }
    const bool again = random_.chance(twice);
    waiting_.push_back(packet);
    if (again) {
        waiting_.push_back(std::move(packet));
    }
    if (!bunching_.isActive()) {
        release();
    }
}

void PacketFaults::release()
{
    if (stalling_.isActive()) {
        return;
    }
    for (const auto& packet : std::exchange(waiting_, {})) {
        deliver_(packet);
    }
}

void PacketFaults::linkChanged(bool up)
{
    waiting_.clear();
    if (up && silence == Silence::UntilReconnect) {
        silence = Silence::None;
    }
}

} // namespace fleetrung::demo
