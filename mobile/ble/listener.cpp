#include "mobile/ble/listener.hpp"

#include <utility>

namespace fleetrung::ble
{

Listener::Listener(const Timing& timing, Events events) : timing_(timing), events_(std::move(events)) {}

void Listener::packet(std::size_t source, std::span<const std::uint8_t> bytes, std::int64_t arrival)
{
    packets_.push_back({.source = source, .arrival = arrival, .bytes = {bytes.begin(), bytes.end()}});
    if (arrival - lastTelling_ >= std::chrono::nanoseconds(timing_.batch).count())
        tell(arrival);
}

std::optional<TroubleKind> Listener::check(std::int64_t now)
{
    tell(now); // what came before it fell silent
    return std::nullopt;
}

void Listener::tell(std::int64_t now)
{
    lastTelling_ = now;
    if (!packets_.empty())
        events_.raw(std::exchange(packets_, {}));
}

} // namespace fleetrung::ble
