#include "demo/sensor/bluez/bench.hpp"

#include <csignal>

#include <QDBusArgument>
#include <QDBusMessage>
#include <QFile>

#ifdef __linux__
#include <sys/prctl.h>
#endif

namespace fleetrung::demo
{
namespace
{

const char* const busConfiguration = R"(<!DOCTYPE busconfig PUBLIC "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN"
 "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig>
  <type>session</type>
  <listen>unix:path=%1/bus</listen>
  <auth>EXTERNAL</auth>
  <policy context="default">
    <allow send_destination="*" eavesdrop="true"/>
    <allow eavesdrop="true"/>
    <allow own="*"/>
  </policy>
</busconfig>
)";

/// The child ends with its parent, also where that crashes.
void endWithParent(QProcess& process)
{
    process.setChildProcessModifier([] {
#ifdef __linux__
        ::prctl(PR_SET_PDEATHSIG, SIGTERM);
#endif
    });
}

void end(QProcess& process)
{
    if (process.state() != QProcess::NotRunning) {
        process.terminate();
        if (!process.waitForFinished(3000)) {
            process.kill();
            process.waitForFinished();
        }
    }
}

} // namespace

PrivateBus::PrivateBus() : address_("unix:path=" + folder_.path() + "/bus")
{
    qputenv("DBUS_SYSTEM_BUS_ADDRESS", address_.toUtf8());
    qputenv("BLUETOOTH_FORCE_DBUS_LE_VERSION", "5.66");
    QFile file(folder_.filePath("bus.conf"));
    if (!file.open(QIODevice::WriteOnly)) {
        return;
    }
    file.write(QString(busConfiguration).arg(folder_.path()).toUtf8());
    file.close();
    endWithParent(daemon_);
    daemon_.start("dbus-daemon", {"--config-file=" + file.fileName(), "--nofork", "--nopidfile", "--print-address"});
    if (daemon_.waitForStarted(5000)) {
        daemon_.waitForReadyRead(5000);
    }
}

PrivateBus::~PrivateBus()
{
    end(daemon_);
}

SensorBench::SensorBench(const QString& program, const PrivateBus& bus, const QStringList& options)
    : bus_(QDBusConnection::connectToBus(bus.address(), "bench"))
{
    endWithParent(sensor_);
    sensor_.start(program, QStringList{"--bus", bus.address()} + options);
    ready_ = sensor_.waitForStarted(5000) && sensor_.waitForReadyRead(20000) &&
             sensor_.readAllStandardOutput().startsWith("ready");
}

SensorBench::~SensorBench()
{
    end(sensor_);
    QDBusConnection::disconnectFromBus("bench");
}

QString SensorBench::complaint()
{
    return QString::fromUtf8(sensor_.readAllStandardError());
}

QDBusMessage SensorBench::ask(const QString& method, const QVariantList& arguments)
{
    auto call = QDBusMessage::createMethodCall("org.fleetrung.Simulated", "/org/fleetrung/simulated",
                                               "org.fleetrung.Simulated", method);
    call.setArguments(arguments);
    return bus_.call(call, QDBus::Block, 5000);
}

QString SensorBench::operator()(const QString& line)
{
    const auto answer = ask("Do", {line});
    return answer.type() == QDBusMessage::ReplyMessage ? answer.arguments().value(0).toString()
                                                       : "error: " + answer.errorMessage();
}

qint64 SensorBench::count(const QString& name, int sensor)
{
    const auto counts = qdbus_cast<QVariantMap>(ask("Counts", {sensor}).arguments().value(0));
    return counts.value(name, -1).toLongLong();
}

QList<QByteArray> SensorBench::sent(const QString& characteristic, int sensor)
{
    const auto all = qdbus_cast<QVariantList>(ask("Sent", {sensor}).arguments().value(0));
    QList<QByteArray> bytes;
    for (qsizetype i = 0; i + 1 < all.size(); i += 2) {
        if (all[i].toString() == characteristic) {
            bytes << all[i + 1].toByteArray();
        }
    }
    return bytes;
}

} // namespace fleetrung::demo
