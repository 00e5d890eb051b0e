// A Linux desktop asks nobody for leave to use Bluetooth.
#include "mobile/ble/permission.hpp"

#include <QCoreApplication>

namespace fleetrung::ble
{
namespace
{

class NotNeeded : public Permission
{
public:
    void ask(std::function<void(bool)> answer) override { answer(true); }
    [[nodiscard]] QString reason() const override
    {
        return QCoreApplication::translate("Sensor", "Bluetooth is used to find and read your motion sensor.");
    }
};

} // namespace

std::unique_ptr<Permission> devicePermission()
{
    return std::make_unique<NotNeeded>();
}

} // namespace fleetrung::ble
