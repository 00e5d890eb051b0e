// Leave to use Bluetooth, as the system of the device asks for it. Implemented in platform/, one file a system.
#pragma once

#include <functional>
#include <memory>

#include <QString>

namespace fleetrung::ble
{

class Permission
{
public:
    virtual ~Permission() = default;
    /// Asks the user where the system wants it, giving the reason first; `answer` comes on the calling thread, at once
    /// where leave was given before or is not needed.
    virtual void ask(std::function<void(bool given)> answer) = 0;
    /// Why the program asks, and where leave is given later: shown when it was refused.
    [[nodiscard]] virtual QString reason() const = 0;
};

/// The one of this device.
[[nodiscard]] std::unique_ptr<Permission> devicePermission();

} // namespace fleetrung::ble
