// Leave to use Bluetooth on iOS. From Qt 6.5 on the program asks; before, the system asks by itself at the first scan,
// with the text of Info.plist. Not built on the development machines.
#include "mobile/ble/permission.hpp"

#include <utility>

#include <QCoreApplication>

#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
#include <QPermission>
#endif

namespace fleetrung::ble
{
namespace
{

class Asked : public Permission
{
public:
    void ask(std::function<void(bool)> answer) override
    {
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
        const QBluetoothPermission bluetooth;
        switch (qApp->checkPermission(bluetooth)) {
        case Qt::PermissionStatus::Granted:
            return answer(true);
        case Qt::PermissionStatus::Denied:
            return answer(false);
        case Qt::PermissionStatus::Undetermined:
            break;
        }
        qApp->requestPermission(bluetooth, qApp, [answer = std::move(answer)](const QPermission& permission) {
            answer(permission.status() == Qt::PermissionStatus::Granted);
        });
#else
        answer(true);
#endif
    }
    [[nodiscard]] QString reason() const override
    {
        return QCoreApplication::translate("Sensor",
                                           "Fleetrung reads your motion sensor over Bluetooth. Allow Bluetooth "
                                           "for Fleetrung in the system's settings.");
    }
};

} // namespace

std::unique_ptr<Permission> devicePermission()
{
    return std::make_unique<Asked>();
}

} // namespace fleetrung::ble
