#include "mobile/views/sensor_words.hpp"

#include <algorithm>

#include <QCoreApplication>

namespace fleetrung::views
{
namespace
{

struct SensorWords {
    Q_DECLARE_TR_FUNCTIONS(SensorWords)
};

// Limits of class A (motion/intake), and starting values of this project for what has none there.
constexpr double leastRate = 100;        // Hz
constexpr double rateKept = 0.95;        // of what the sensor promises
constexpr double mostLost = 0.02;        // share; starting value
constexpr double mostLate = 0.060;       // s: how far notifications are bunched before times suffer
constexpr double longestStall = 0.5;     // s
constexpr int leastBattery = 20;         // percent; starting value
constexpr double soonEnoughZeroed = 600; // s; starting value

enum Mark { Met, NotMet, ForShow };

QVariantMap row(const QString& name, const QString& value, const QString& allowed, Mark mark)
{
    return {{QStringLiteral("name"), name},
            {QStringLiteral("value"), value},
            {QStringLiteral("allowed"), allowed},
            {QStringLiteral("mark"), static_cast<int>(mark)}};
}

QString percent(double share, const Units& units)
{
    return SensorWords::tr("%1 %").arg(units.number(share * 100, share > 0 && share < 0.1 ? 1 : 0));
}

} // namespace

std::string placeKey(SensorPlace place)
{
    switch (place) {
    case SensorPlace::Shoe:
        return "shoe";
    case SensorPlace::Waist:
        return "waist";
    case SensorPlace::Bar:
        break;
    }
    return "bar";
}

SensorPlace placeOf(const std::string& key)
{
    for (const SensorPlace place : {SensorPlace::Shoe, SensorPlace::Waist})
        if (key == placeKey(place))
            return place;
    return SensorPlace::Bar;
}

QString placeText(SensorPlace place)
{
    return place == SensorPlace::Bar    ? SensorWords::tr("On the bar")
           : place == SensorPlace::Shoe ? SensorWords::tr("On the shoe")
                                        : SensorWords::tr("At the waist");
}

QString placeName(SensorPlace place)
{
    return place == SensorPlace::Bar    ? SensorWords::tr("Bar sensor")
           : place == SensorPlace::Shoe ? SensorWords::tr("Shoe sensor")
                                        : SensorWords::tr("Waist sensor");
}

QStringList placeChoices()
{
    return {SensorWords::tr("Bar"), SensorWords::tr("Shoe"), SensorWords::tr("Waist")};
}

QString linkText(sensor::LinkState state)
{
    switch (state) {
    case sensor::LinkState::Idle:
        return SensorWords::tr("Not looked for");
    case sensor::LinkState::Searching:
        return SensorWords::tr("Looking for it");
    case sensor::LinkState::Connecting:
        return SensorWords::tr("Connecting");
    case sensor::LinkState::Streaming:
        return SensorWords::tr("Streaming");
    case sensor::LinkState::Lost:
        return SensorWords::tr("Lost, looking for it");
    }
    return {};
}

int signalBars(int dBm)
{
    if (dBm >= 0) // 0: not told
        return 0;
    return dBm >= -55 ? 4 : dBm >= -67 ? 3 : dBm >= -80 ? 2 : 1;
}

QString signalText(int bars)
{
    switch (bars) {
    case 1:
        return SensorWords::tr("Far away");
    case 2:
        return SensorWords::tr("Across the room");
    case 3:
        return SensorWords::tr("Close");
    case 4:
        return SensorWords::tr("Very close");
    default:
        return SensorWords::tr("Signal not told");
    }
}

QString addressEnd(const QString& address)
{
    const qsizetype kept = address.contains(QLatin1Char(':')) ? 5 : 6;
    return address.right(kept).toUpper();
}

QString agoText(double seconds)
{
    if (seconds < 60)
        return SensorWords::tr("just now");
    if (seconds < 3600)
        return SensorWords::tr("%1 min ago").arg(static_cast<int>(seconds / 60));
    return SensorWords::tr("%1 h ago").arg(static_cast<int>(seconds / 3600));
}

QList<QVariantMap> healthRows(const SensorFacts& facts, const Units& units)
{
    const auto hertz = [&units](double rate) { return SensorWords::tr("%1 Hz").arg(units.number(rate, 0)); };
    const auto milliseconds = [&units](double seconds) { return units.milliseconds(seconds); };
    const sensor::Health& health = facts.health;
    const double rateWanted = health.expectedRate > 0 ? health.expectedRate * rateKept : leastRate;
    QList<QVariantMap> rows{row(SensorWords::tr("Rate"), hertz(health.rate),
                                SensorWords::tr("at least %1").arg(units.number(rateWanted, 0)),
                                health.rate >= rateWanted ? Met : NotMet),
                            row(SensorWords::tr("Lost on the way"), percent(health.lossShare, units),
                                SensorWords::tr("at most %1").arg(units.number(mostLost * 100, 0)),
                                health.lossShare <= mostLost ? Met : NotMet),
                            row(SensorWords::tr("Lateness"), milliseconds(health.jitter),
                                SensorWords::tr("at most %1").arg(units.number(mostLate * 1000, 0)),
                                health.jitter <= mostLate ? Met : NotMet),
                            row(SensorWords::tr("Longest pause"), milliseconds(health.longestStall),
                                SensorWords::tr("at most %1").arg(units.number(longestStall * 1000, 0)),
                                health.longestStall <= longestStall ? Met : NotMet)};
    if (facts.battery)
        rows += row(SensorWords::tr("Battery"), SensorWords::tr("%1 %").arg(*facts.battery),
                    SensorWords::tr("at least %1").arg(leastBattery), *facts.battery >= leastBattery ? Met : NotMet);
    else
        rows += row(SensorWords::tr("Battery"), SensorWords::tr("not told"), {}, ForShow);
    if (facts.hasGyroscope)
        rows +=
            facts.sinceZeroed
                ? row(SensorWords::tr("Zeroed"), agoText(*facts.sinceZeroed), SensorWords::tr("within 10 min"),
                      *facts.sinceZeroed <= soonEnoughZeroed ? Met : NotMet)
                : row(SensorWords::tr("Zeroed"), SensorWords::tr("not yet"), SensorWords::tr("lay it still"), NotMet);
    else
        rows += row(SensorWords::tr("Turning"), SensorWords::tr("not measured"), SensorWords::tr("wider ± values"),
                    ForShow);
    if (health.badPackets > 0) {
        QString cause = SensorWords::tr("none");
        if (health.lastBad)
            cause = QString::fromUtf8(sensor::badPacketName(*health.lastBad).data(),
                                      static_cast<qsizetype>(sensor::badPacketName(*health.lastBad).size()));
        rows +=
            row(SensorWords::tr("Unreadable"), units.number(static_cast<double>(health.badPackets), 0), cause, NotMet);
    }
    if (health.gaps > 0)
        rows += row(SensorWords::tr("Times lost"), units.number(health.gaps, 0), SensorWords::tr("since it was found"),
                    ForShow);
    return rows;
}

QString healthLine(const SensorFacts& facts, const Units& units)
{
    QStringList parts{SensorWords::tr("%1 Hz").arg(units.number(facts.health.rate, 0))};
    if (facts.battery)
        parts += SensorWords::tr("battery %1 %").arg(*facts.battery);
    if (facts.health.lossShare >= 0.0005)
        parts += SensorWords::tr("%1 lost").arg(percent(facts.health.lossShare, units));
    return parts.join(QStringLiteral(" · "));
}

} // namespace fleetrung::views
