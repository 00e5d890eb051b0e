// Leave to use Bluetooth on Android: "nearby devices" (BLUETOOTH_SCAN, BLUETOOTH_CONNECT) from Android 12 on, location
// before. Not built on the development machines.
#include "mobile/ble/permission.hpp"

#include <utility>

#include <QCoreApplication>

#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
#include <QPermission>
#else
#include <QFuture>
#include <QStringList>
#include <QtCore/private/qandroidextras_p.h>
#endif

namespace fleetrung::ble
{
namespace
{

QString why()
{
    return QCoreApplication::translate(
        "Sensor", "Fleetrung reads your motion sensor over Bluetooth. Allow \"Nearby devices\" (on older phones "
                  "\"Location\") in the settings of Fleetrung; your place is never looked up or stored.");
}

#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)

class Asked : public Permission
{
public:
    void ask(std::function<void(bool)> answer) override
    {
        QBluetoothPermission bluetooth;
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
    }
    [[nodiscard]] QString reason() const override { return why(); }
};

#else

constexpr int androidTwelve = 31; // API level

QStringList needed()
{
    if (QNativeInterface::QAndroidApplication::sdkVersion() >= androidTwelve)
        return {QStringLiteral("android.permission.BLUETOOTH_SCAN"),
                QStringLiteral("android.permission.BLUETOOTH_CONNECT")};
    return {QStringLiteral("android.permission.ACCESS_FINE_LOCATION")};
}

class Asked : public Permission
{
public:
    void ask(std::function<void(bool)> answer) override { askFrom(needed(), std::move(answer)); }
    [[nodiscard]] QString reason() const override { return why(); }

private:
    /// One after another; the first refusal ends it.
    static void askFrom(QStringList permissions, std::function<void(bool)> answer)
    {
        if (permissions.isEmpty())
            return answer(true);
        const QString first = permissions.takeFirst();
        if (QtAndroidPrivate::checkPermission(first).result() == QtAndroidPrivate::Authorized)
            return askFrom(permissions, std::move(answer));
        QtAndroidPrivate::requestPermission(first).then(
            qApp, [permissions, answer = std::move(answer)](QtAndroidPrivate::PermissionResult result) {
                if (result == QtAndroidPrivate::Authorized)
                    askFrom(permissions, answer);
                else
                    answer(false);
            });
    }
};

#endif

} // namespace

std::unique_ptr<Permission> devicePermission()
{
    return std::make_unique<Asked>();
}

} // namespace fleetrung::ble
