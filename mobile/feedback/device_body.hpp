// What the phone's body does and Qt has no word for. Implemented in platform/, one file a system.
#pragma once

#include <memory>
#include <vector>

namespace fleetrung::feedback
{

class DeviceBody
{
public:
    virtual ~DeviceBody() = default;
    [[nodiscard]] virtual bool canShake() const = 0;
    /// Lengths in ms, shake and pause in turn; nothing happens where it cannot.
    virtual void shake(const std::vector<int>& pattern) = 0;
    /// Keeps the screen from going dark until told otherwise; at the program's end it is as before.
    virtual void keepAwake(bool awake) = 0;
};

/// The one of this device.
[[nodiscard]] std::unique_ptr<DeviceBody> deviceBody();

} // namespace fleetrung::feedback
