#include "mobile/views/found_list.hpp"

#include <algorithm>
#include <tuple>

#include <QCoreApplication>

#include "mobile/views/sensor_words.hpp"

namespace fleetrung::views
{
namespace
{

constexpr double newest = 0.3; // share of the newest signal in the smoothed one

struct FoundWords {
    Q_DECLARE_TR_FUNCTIONS(FoundWords)
};

} // namespace

QString foundName(const ble::FoundSensor& sensor)
{
    const QString name = sensor.name.simplified();
    return name.isEmpty() ? FoundWords::tr("No name (%1)").arg(addressEnd(sensor.address)) : name;
}

void FoundList::hear(const ble::FoundSensor& sensor)
{
    const auto known =
        std::ranges::find_if(heard_, [&sensor](const Heard& heard) { return heard.sensor.address == sensor.address; });
    if (known == heard_.end()) {
        heard_.push_back({sensor, static_cast<double>(sensor.signal)});
        return;
    }
    const QString name = sensor.name.isEmpty() ? known->sensor.name : sensor.name; // some packets lack it
    const QStringList services = sensor.services.isEmpty() ? known->sensor.services : sensor.services;
    const bool toldBefore = known->strength < 0;
    if (sensor.signal != 0)
        known->strength = toldBefore ? known->strength + newest * (sensor.signal - known->strength) : sensor.signal;
    known->sensor = sensor;
    known->sensor.name = name;
    known->sensor.services = services;
}

bool FoundList::isLikely(const ble::FoundSensor& sensor) const
{
    return std::ranges::any_of(sensor.services, [this](const QString& service) { return likely_.contains(service); });
}

const ble::FoundSensor* FoundList::find(const QString& address) const
{
    const auto found =
        std::ranges::find_if(heard_, [&address](const Heard& heard) { return heard.sensor.address == address; });
    return found == heard_.end() ? nullptr : &found->sensor;
}

QList<QVariantMap> FoundList::rows(const QString& filter) const
{
    std::vector<const Heard*> shown;
    const QString wanted = filter.simplified();
    for (const auto& heard : heard_)
        if (wanted.isEmpty() || heard.sensor.name.contains(wanted, Qt::CaseInsensitive) ||
            heard.sensor.address.contains(wanted, Qt::CaseInsensitive))
            shown.push_back(&heard);
    std::ranges::stable_sort(shown, std::greater<>{}, [this](const Heard* heard) {
        return std::tuple{saved_.contains(heard->sensor.address), isLikely(heard->sensor),
                          signalBars(static_cast<int>(heard->strength))};
    });
    QList<QVariantMap> rows;
    for (const Heard* heard : shown) {
        const int bars = signalBars(static_cast<int>(heard->strength));
        QStringList detail{signalText(bars)};
        if (saved_.contains(heard->sensor.address))
            detail.prepend(FoundWords::tr("Saved"));
        else if (isLikely(heard->sensor))
            detail.prepend(FoundWords::tr("Likely a motion sensor"));
        rows += QVariantMap{{QStringLiteral("key"), heard->sensor.address},
                            {QStringLiteral("name"), foundName(heard->sensor)},
                            {QStringLiteral("detail"), detail.join(QStringLiteral(" · "))},
                            {QStringLiteral("bars"), bars},
                            {QStringLiteral("saved"), saved_.contains(heard->sensor.address)}};
    }
    return rows;
}

} // namespace fleetrung::views
