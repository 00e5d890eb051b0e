// Commands of a person or a test, one a line: what goes wrong now.
#pragma once

#include <functional>
#include <map>

#include "demo/sensor/bluez/simulation.hpp"

namespace fleetrung::demo
{

class Commands : public QObject
{
public:
    explicit Commands(Simulation& simulation);

    /// "drop", "second battery 12": carries out one line. Gives "ok", what was asked for, or "error: " and why.
    [[nodiscard]] QString run(const QString& line);
    /// All commands with what they do.
    [[nodiscard]] static QString help();

private:
    struct Line;
    void dropAgain(Device& device, int times, double seconds);
    [[nodiscard]] QString onAdapter(const Line& line);
    [[nodiscard]] QString onLink(const Line& line, Sensor& sensor);
    [[nodiscard]] QString onPackets(const Line& line, Sensor& sensor);
    [[nodiscard]] QString onSensor(const Line& line, Sensor& sensor);

    Simulation& simulation_;
};

} // namespace fleetrung::demo
