#include "mobile/views/map_fit.hpp"

#include <algorithm>
#include <optional>

#include "engine/sensor/packet_decoder.hpp"

namespace fleetrung::views
{
namespace
{

std::optional<std::size_t> streamOf(const sensor::SensorMap& map, const sensor::Notifier& notifier)
{
    const auto found = std::ranges::find_if(map.streams, [&notifier](const sensor::StreamForm& stream) {
        return stream.service == notifier.service && stream.characteristic == notifier.characteristic;
    });
    if (found == map.streams.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - map.streams.begin());
}

} // namespace

bool applies(const sensor::SensorMap& map, const std::vector<sensor::Notifier>& notifiers)
{
    return std::ranges::all_of(map.streams, [&notifiers](const sensor::StreamForm& stream) {
        return std::ranges::any_of(notifiers, [&stream](const sensor::Notifier& notifier) {
            return stream.service == notifier.service && stream.characteristic == notifier.characteristic;
        });
    });
}

double fitOf(const sensor::SensorMap& map, const std::vector<sensor::Notifier>& notifiers,
             const std::vector<sensor::RawPacket>& packets)
{
    if (!applies(map, notifiers))
        return 0;
    std::vector<sensor::RawPacket> ours;
    for (const auto& packet : packets) {
        if (packet.source >= notifiers.size())
            continue;
        if (const auto stream = streamOf(map, notifiers[packet.source])) {
            ours.push_back(packet);
            ours.back().source = *stream;
        }
    }
    return ours.empty() ? 0 : sensor::fitOf(map, ours);
}

} // namespace fleetrung::views
