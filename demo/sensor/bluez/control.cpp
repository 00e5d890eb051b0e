#include "demo/sensor/bluez/control.hpp"

namespace fleetrung::demo
{

QVariantMap Control::Counts(int sensor)
{
    auto* const found = simulation_.sensor(static_cast<std::size_t>(sensor));
    if (found == nullptr) {
        sendErrorReply(QDBusError::InvalidArgs, "there is no such sensor");
        return {};
    }
    QVariantMap all;
    const auto counts = found->device().counts().byName();
    for (auto each = counts.begin(); each != counts.end(); ++each) {
        all[each.key()] = each.value();
    }
    return all;
}

QVariantList Control::Sent(int sensor)
{
    auto* const found = simulation_.sensor(static_cast<std::size_t>(sensor));
    if (found == nullptr) {
        sendErrorReply(QDBusError::InvalidArgs, "there is no such sensor");
        return {};
    }
    QVariantList all;
    for (const auto& packet : found->sent()) {
        all << packet.characteristic << packet.bytes;
    }
    return all;
}

} // namespace fleetrung::demo
