// org.fleetrung.Simulated at /org/fleetrung/simulated: the commands and what the centrals did, for tests.
#pragma once

#include <QDBusContext>

#include "demo/sensor/bluez/commands.hpp"

namespace fleetrung::demo
{

class Control : public QObject, protected QDBusContext
{
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.fleetrung.Simulated")

public:
    Control(Simulation& simulation, Commands& commands) : simulation_(simulation), commands_(commands) {}

    static constexpr const char* path = "/org/fleetrung/simulated";
    static constexpr const char* service = "org.fleetrung.Simulated";

public slots:
    QString Do(const QString& line) { return commands_.run(line); }
    /// Of the sensor of that number, from 0: "pairCalls" -> 0, ...
    QVariantMap Counts(int sensor);
    /// Its notifications as they went out: characteristic (text) and value (bytes) in turn, at most the latest 50000.
    QVariantList Sent(int sensor);

private:
    Simulation& simulation_;
    Commands& commands_;
};

} // namespace fleetrung::demo
