#include "demo/sensor/bluez/packet_faults.hpp"

#include <utility>

namespace fleetrung::demo
{

PacketFaults::PacketFaults(std::function<void(const sensor::RawPacket&)> deliver, std::uint64_t seed)
    : deliver_(std::move(deliver)), dice_(seed)
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
    if (silence != Silence::None || happens(lose)) {
        return;
    }
    if (happens(garble)) {
        packet.bytes.resize(1 + dice_() % 20);
        for (auto& byte : packet.bytes) {
            byte = static_cast<std::uint8_t>(dice_());
        }
    }
    const bool again = happens(twice);
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

bool PacketFaults::happens(double share)
{
    // Top 53 bits as 0..1: the same on every machine, which a standard distribution is not.
    return static_cast<double>(dice_() >> 11U) * 0x1p-53 < share;
}

} // namespace fleetrung::demo
