// A bench for tests: a private bus, the simulated sensor on it, and its commands. Ends with the test: both programs are
// told by the kernel when the test dies, and the sensor ends with its bus.
#pragma once

#include <QDBusConnection>
#include <QProcess>
#include <QStringList>
#include <QTemporaryDir>
#include <QVariantMap>

namespace fleetrung::demo
{

/// The bus. To be made in main() before anything touches Qt's system bus: it sets the environment that sends Qt
/// Bluetooth here (DBUS_SYSTEM_BUS_ADDRESS, BLUETOOTH_FORCE_DBUS_LE_VERSION).
class PrivateBus
{
public:
    PrivateBus();
    ~PrivateBus();
    [[nodiscard]] bool running() const { return daemon_.state() == QProcess::Running; } ///< false: no dbus-daemon here
    [[nodiscard]] const QString& address() const { return address_; }

private:
    QTemporaryDir folder_;
    QString address_;
    QProcess daemon_;
};

class SensorBench
{
public:
    /// Starts fleetrung-sensor (its file) with these options and waits until it is ready.
    SensorBench(const QString& program, const PrivateBus& bus, const QStringList& options);
    ~SensorBench();

    [[nodiscard]] bool ready() const { return ready_; }
    [[nodiscard]] QString complaint(); ///< what it wrote when it gave up
    /// One line (commands.hpp): its answer.
    QString operator()(const QString& line);
    /// What the centrals did to that sensor (counts.hpp).
    qint64 count(const QString& name, int sensor = 0);
    /// The notifications of that characteristic as they went out.
    QList<QByteArray> sent(const QString& characteristic, int sensor = 0);

private:
    QDBusMessage ask(const QString& method, const QVariantList& arguments);

    QProcess sensor_;
    QDBusConnection bus_;
    bool ready_ = false;
};

} // namespace fleetrung::demo
