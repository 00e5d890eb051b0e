#include "demo/sensor/bluez/commands.hpp"

#include <optional>

namespace fleetrung::demo
{
namespace
{

const QString done = QStringLiteral("ok");

QString wrong(const QString& why)
{
    return "error: " + why;
}

} // namespace

/// A command and its words. `number` counts from 0 and remembers whether a word was missing or no number.
struct Commands::Line {
    QString verb;
    QStringList words;
    mutable QString complaint;

    [[nodiscard]] QString word(int index) const { return words.value(index); }
    [[nodiscard]] double number(int index, double least, double greatest) const
    {
        bool isNumber = false;
        const double value = word(index).toDouble(&isNumber);
        if (!isNumber || !(value >= least && value <= greatest)) {
            complaint = QString("%1 wants a number from %2 to %3").arg(verb).arg(least).arg(greatest);
            return least;
        }
        return value;
    }
    [[nodiscard]] int whole(int index, int least, int greatest) const
    {
        return static_cast<int>(number(index, least, greatest));
    }
    /// The value that the word stands for.
    template <class Value> Value choice(int index, const std::map<QString, Value>& choices) const
    {
        const auto found = choices.find(word(index));
        if (found == choices.end()) {
            QStringList names;
            for (const auto& [name, value] : choices) {
                names << name;
            }
            complaint = verb + " wants one of " + names.join(", ");
            return choices.begin()->second;
        }
        return found->second;
    }
    [[nodiscard]] bool onOff(int index) const { return choice<bool>(index, {{"on", true}, {"off", false}}); }
};

Commands::Commands(Simulation& simulation) : simulation_(simulation) {}

QString Commands::help()
{
    return "link      drop | drop TIMES SECONDS | refuse N|all|none | vanish | return | connecting SECONDS | slow "
           "SECONDS | out-of-reach SECONDS\n"
           "pairing   pairing none|demanded|fails | stale-bond on|off\n"
           "packets   lose SHARE | twice SHARE | garble SHARE | bunch MS | stall MS | silence off|on|until-reconnect\n"
           "sensor    battery PERCENT | restart | move go (the next set begins) | move face +x, turn, raise M, still "
           "S, teach (--posed)\n"
           "adapter   power on|off | adapter in|out\n"
           "and       counts | help | quit;  \"second\" in front: of the second sensor\n";
}

QString Commands::run(const QString& text)
{
    Line line{{}, text.split(' ', Qt::SkipEmptyParts), {}};
    std::size_t number = 0;
    if (line.word(0) == "second") {
        number = 1;
        line.words.removeFirst();
    }
    if (line.words.isEmpty()) {
        return wrong("empty line");
    }
    line.verb = line.words.takeFirst();
    if (line.verb == "help") {
        return help();
    }
    auto* const sensor = simulation_.sensor(number);
    if (sensor == nullptr) {
        return wrong("there is no such sensor");
    }
    for (const auto& answer :
         {onAdapter(line), onLink(line, *sensor), onPackets(line, *sensor), onSensor(line, *sensor)}) {
        if (!line.complaint.isEmpty()) {
            return wrong(line.complaint);
        }
        if (!answer.isEmpty()) {
            return answer;
        }
    }
    return wrong("no such command: " + line.verb);
}

QString Commands::onAdapter(const Line& line)
{
    auto& adapter = simulation_.adapter();
    if (line.verb == "power") {
        const bool on = line.onOff(0);
        if (line.complaint.isEmpty()) {
            adapter.setPowered(on);
        }
        return done;
    }
    if (line.verb == "adapter") {
        const bool in = line.choice<bool>(0, {{"in", true}, {"out", false}});
        if (line.complaint.isEmpty()) {
            in ? adapter.plugIn() : adapter.plugOut();
        }
        return done;
    }
    return {};
}

QString Commands::onLink(const Line& line, Sensor& sensor)
{
    auto& device = sensor.device();
    auto& faults = device.faults();
    if (line.verb == "drop") {
        if (line.words.isEmpty()) {
            device.drop();
            return done;
        }
        const int times = line.whole(0, 1, 100000);
        const double seconds = line.number(1, 0.001, 3600);
        if (line.complaint.isEmpty()) {
            dropAgain(device, times, seconds);
        }
        return done;
    }
    if (line.verb == "refuse") {
        faults.refuse = line.word(0) == "all" ? -1 : line.word(0) == "none" ? 0 : line.whole(0, 0, 1000);
    } else if (line.verb == "vanish") {
        device.vanish();
    } else if (line.verb == "return") {
        device.comeBack();
    } else if (line.verb == "slow") {
        faults.discovering = static_cast<int>(1000 * line.number(0, 0, 3600));
    } else if (line.verb == "connecting") {
        faults.connecting = static_cast<int>(1000 * line.number(0, 0, 3600));
    } else if (line.verb == "out-of-reach") {
        faults.outOfReach = static_cast<int>(1000 * line.number(0, 0, 3600));
    } else if (line.verb == "pairing") {
        faults.pairing = line.choice<PairingFault>(
            0, {{"none", PairingFault::None}, {"demanded", PairingFault::Demanded}, {"fails", PairingFault::Fails}});
    } else if (line.verb == "stale-bond") {
        faults.staleBond = line.onOff(0);
    } else {
        return {};
    }
    return done;
}

QString Commands::onPackets(const Line& line, Sensor& sensor)
{
    auto& packets = sensor.packets();
    if (line.verb == "lose") {
        packets.lose = line.number(0, 0, 1);
    } else if (line.verb == "twice") {
        packets.twice = line.number(0, 0, 1);
    } else if (line.verb == "garble") {
        packets.garble = line.number(0, 0, 1);
    } else if (line.verb == "bunch") {
        packets.bunch(line.whole(0, 0, 60000));
    } else if (line.verb == "stall") {
        packets.stall(line.whole(0, 0, 60000));
    } else if (line.verb == "silence") {
        packets.silence = line.choice<Silence>(
            0, {{"off", Silence::None}, {"on", Silence::On}, {"until-reconnect", Silence::UntilReconnect}});
    } else {
        return {};
    }
    return done;
}

QString Commands::onSensor(const Line& line, Sensor& sensor)
{
    if (line.verb == "battery") {
        const int percent = line.whole(0, 0, 100);
        if (line.complaint.isEmpty()) {
            sensor.setBattery(percent);
        }
        return done;
    }
    if (line.verb == "restart") {
        sensor.restart();
        return done;
    }
    if (line.verb == "move") {
        const auto moved = sensor.movement().command(line.words.join(' ').toStdString());
        return moved ? done : wrong(QString::fromStdString(describe(moved.error())));
    }
    if (line.verb == "counts") {
        QStringList all;
        const auto counts = sensor.device().counts().byName();
        for (auto each = counts.begin(); each != counts.end(); ++each) {
            all << QString("%1 %2").arg(each.key()).arg(each.value());
        }
        return all.join(", ");
    }
    return {};
}

/// Every so many seconds the link is lost, if it is up, until it was lost so many times.
void Commands::dropAgain(Device& device, int times, double seconds)
{
    auto* const timer = new QTimer(this);
    const qint64 until = device.counts().linksLost + times;
    connect(timer, &QTimer::timeout, this, [&device, timer, until] {
        device.drop();
        if (device.counts().linksLost >= until) {
            timer->deleteLater();
        }
    });
    timer->start(static_cast<int>(seconds * 1000));
}

} // namespace fleetrung::demo
