// fleetrung-sensor: simulated sensors behind org.bluez on a private D-Bus bus. Never on a system's own bus.
#include <cstdlib>
#include <exception>
#include <iostream>

#include <CLI/CLI.hpp>
#include <QCoreApplication>
#include <QSocketNotifier>

#include <unistd.h>

#include "demo/sensor/bluez/control.hpp"
#include "demo/sensor/bluez/options.hpp"

using namespace fleetrung::demo;

namespace
{

int fault(const std::string& text)
{
    std::cerr << "fleetrung-sensor: " << text << "\n";
    return 2;
}

/// Reads commands line by line; the end of standard input is no end of the program.
class Terminal : public QObject
{
public:
    explicit Terminal(Commands& commands) : commands_(commands), input_(STDIN_FILENO, QSocketNotifier::Read)
    {
        connect(&input_, &QSocketNotifier::activated, this, [this] { read(); });
    }

private:
    void read()
    {
        char bytes[512];
        const auto count = ::read(STDIN_FILENO, bytes, sizeof bytes);
        if (count <= 0) {
            input_.setEnabled(false);
            return;
        }
        text_.append(bytes, static_cast<qsizetype>(count));
        for (auto end = text_.indexOf('\n'); end >= 0; end = text_.indexOf('\n')) {
            run(QString::fromUtf8(text_.left(end)).trimmed());
            text_.remove(0, end + 1);
        }
    }

    void run(const QString& line)
    {
        if (line == "quit") {
            QCoreApplication::quit();
        } else if (!line.isEmpty()) {
            std::cout << commands_.run(line).toStdString() << std::endl;
        }
    }

    Commands& commands_;
    QSocketNotifier input_;
    QByteArray text_;
};

void addOptions(CLI::App& app, Options& options, std::string& address)
{
    app.add_option("--bus", address, "D-Bus address; else DBUS_SYSTEM_BUS_ADDRESS");
    app.add_option("--map", options.map, "sensor map (JSON); without it plain counts at 100 Hz");
    app.add_option("--second", options.second, "map of a second sensor, on the shoe");
    app.add_option("--recording", options.recording, "recording CSV to play instead of a simulated set");
    app.add_option("--lift", options.lift.lift, "lift key");
    app.add_option("--repetitions", options.lift.repetitions, "0-30");
    app.add_option("--seed", options.lift.seed, "the same seed gives the same set and the same faults");
    app.add_flag("--any-mounting", options.lift.anyMounting, "sensor turned any way");
    app.add_flag("--posed", options.posed,
                 "lies in a hand: \"move face +x\", \"move turn\", \"move raise 0.5\", \"move teach\"");
    app.add_option("--rate", options.rate, "Hz; without it the map's");
    app.add_option("--pause", options.pause, "s between two sets; below 0: a set begins on \"move go\"");
    app.add_option("--skew", options.skew, "ppm by which the sensor's clock runs fast");
    app.add_option("--payload", options.payload, "bytes a notification may hold");
    app.add_flag("!--alone", options.neighbours, "nothing else advertises");
    app.add_flag("--connected-before", options.connectedBefore, "still connected from before");
    app.add_option("--do", options.commands, "a command to carry out at the start; may be given again");
}

int run(int argc, char** argv)
{
    CLI::App app{"Simulated sensors behind org.bluez on a private D-Bus bus.\nCommands on standard input:\n" +
                 Commands::help().toStdString()};
    Options options;
    std::string address;
    addOptions(app, options, address);
    CLI11_PARSE(app, argc, argv);
    if (address.empty()) {
        const char* const told = std::getenv("DBUS_SYSTEM_BUS_ADDRESS");
        if (told == nullptr) {
            return fault("give --bus or set DBUS_SYSTEM_BUS_ADDRESS to a private bus");
        }
        address = told;
    }

    QCoreApplication application(argc, argv);
    auto bus = QDBusConnection::connectToBus(QString::fromStdString(address), "air");
    if (!bus.isConnected()) {
        return fault("no bus at " + address);
    }
    // The bus is gone: nobody is left to serve.
    bus.connect({}, "/org/freedesktop/DBus/Local", "org.freedesktop.DBus.Local", "Disconnected", &application,
                SLOT(quit()));
    Simulation simulation(bus);
    if (const auto filled = populate(simulation, options); !filled) {
        return fault(fleetrung::describe(filled.error()));
    }
    Commands commands(simulation);
    Control control(simulation, commands);
    bus.registerObject(Control::path, &control, QDBusConnection::ExportAllSlots);
    for (const auto& command : options.commands) {
        const auto answer = commands.run(QString::fromStdString(command));
        if (answer.startsWith("error")) {
            return fault(answer.toStdString());
        }
    }
    if (!bus.registerService(Control::service) || !bus.registerService("org.bluez")) {
        return fault("org.bluez is taken on this bus: it is no private one, or another sensor runs on it");
    }
    Terminal terminal(commands);
    std::cout << "ready" << std::endl;
    return QCoreApplication::exec();
}

} // namespace

int main(int argc, char** argv)
{
    try {
        return run(argc, argv);
    } catch (const std::exception& error) {
        return fault(error.what());
    }
}
