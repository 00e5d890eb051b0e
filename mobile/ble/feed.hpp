// What is done with the notifications of one link. On the radio's thread.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "mobile/ble/radio.hpp"

namespace fleetrung::ble
{

class Feed
{
public:
    virtual ~Feed() = default;

    virtual void packet(std::size_t source, std::span<const std::uint8_t> bytes, std::int64_t arrival) = 0;
    virtual void streaming(const std::vector<sensor::Notifier>& notifiers) = 0;
    virtual void state(sensor::LinkState state) = 0;
    virtual void info(const SensorInfo& info) = 0;
    /// The link was lost; it may come back.
    virtual void lost() = 0;
    /// Once a second while it streams: what is wrong with what comes, if anything.
    virtual std::optional<TroubleKind> check(std::int64_t now) = 0;
    /// Silence means that the link is dead: connect anew. False: the sensor may have nothing to say.
    [[nodiscard]] virtual bool alwaysFlows() const = 0;
};

} // namespace fleetrung::ble
