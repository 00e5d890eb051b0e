// The other direction of a sensor map: samples to the notifications that a sensor of that map would send. Invented
// sensors only; tests and the simulated sensor share it.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "engine/motion/sample.hpp"
#include "engine/sensor/packet.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::demo
{

/// Encodes a recording by a map, packet by packet. Readings are rounded to counts and clipped at the end of the type's
/// range. Counter and stamp go on from call to call.
class PacketEncoder
{
public:
    explicit PacketEncoder(const sensor::SensorMap& map, int payload = 244); ///< bytes a notification may hold

    /// All packets that these samples complete, in order; `RawPacket::arrival` is the sensor time of the packet's last
    /// sample [ns]: the radio adds its lateness. A last packet that is not full waits for the next call; a byte stream
    /// and lines of text are cut at the payload, wherever that falls.
    std::vector<sensor::RawPacket> encode(std::span<const motion::Sample> samples);
    /// Samples that never leave the sensor: the counter goes on.
    void skip(std::size_t samples);
    /// Switched off and on: counter and stamp begin anew.
    void restart();

private:
    /// One characteristic: its samples on the way to a packet, and its bytes on the way to a notification.
    struct Outlet {
        std::size_t source;
        sensor::StreamForm form;
        int payload;
        std::vector<motion::Sample> waiting;
        std::vector<std::uint8_t> bytes; ///< of a byte stream or of lines
        std::int64_t samples = 0, packets = 0;
        double first = 0; ///< s: the sensor's clock began then
        bool begun = false;

        void add(const motion::Sample& sample, std::vector<sensor::RawPacket>& packets);
        void send(std::vector<sensor::RawPacket>& packets);
        void sendBytes(std::int64_t arrival, std::vector<sensor::RawPacket>& packets);
        [[nodiscard]] std::size_t samplesAPacket() const;
        [[nodiscard]] std::vector<std::uint8_t> binaryPacket() const;
        [[nodiscard]] std::string line() const;
        [[nodiscard]] double counterOf(std::size_t index) const;
        [[nodiscard]] double stampOf(std::size_t index) const;
        [[nodiscard]] double valueOf(sensor::Channel channel, std::size_t index) const;
    };

    std::vector<Outlet> outlets_;
};

} // namespace fleetrung::demo
