// What happens to notifications between sensor and phone: held back in bunches, stalled, lost, doubled, garbled. As it
// stands, nothing.
#pragma once

#include <functional>
#include <vector>

#include <QObject>
#include <QTimer>

#include "demo/simulator/random.hpp"
#include "engine/sensor/packet.hpp"

namespace fleetrung::demo
{

enum class Silence { None, On, UntilReconnect };

class PacketFaults : public QObject
{
public:
    explicit PacketFaults(std::function<void(const sensor::RawPacket&)> deliver, std::uint64_t seed);

    double lose = 0, twice = 0, garble = 0; ///< shares of packets
    Silence silence = Silence::None;

    void bunch(int milliseconds); ///< what came in this time is handed on together; 0: at once
    void stall(int milliseconds); ///< nothing is handed on for so long, then all of it
    void pass(sensor::RawPacket packet);
    void linkChanged(bool up); ///< what waits is gone with the link

private:
    void release();

    std::function<void(const sensor::RawPacket&)> deliver_;
    simulator::Random random_;
    std::vector<sensor::RawPacket> waiting_;
    QTimer bunching_, stalling_;
};

} // namespace fleetrung::demo
