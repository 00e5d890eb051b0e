// A sensor that is being taught: everything it sends, as it comes.
#pragma once

#include <functional>
#include <vector>

#include "mobile/ble/feed.hpp"
#include "mobile/ble/timing.hpp"

namespace fleetrung::ble
{

class Listener : public Feed
{
public:
    struct Events {
        std::function<void(const std::vector<sensor::Notifier>&)> learning;
        std::function<void(const std::vector<sensor::RawPacket>&)> raw;
    };

    Listener(const Timing& timing, Events events);

    void packet(std::size_t source, std::span<const std::uint8_t> bytes, std::int64_t arrival) override;
    void streaming(const std::vector<sensor::Notifier>& notifiers) override { events_.learning(notifiers); }
    void state(sensor::LinkState) override {}
    void info(const SensorInfo&) override {}
    void lost() override {}
    std::optional<TroubleKind> check(std::int64_t now) override;
    [[nodiscard]] bool alwaysFlows() const override { return false; }

private:
    void tell(std::int64_t now);

    Timing timing_;
    Events events_;
    std::vector<sensor::RawPacket> packets_;
    std::int64_t lastTelling_ = 0;
};

} // namespace fleetrung::ble
