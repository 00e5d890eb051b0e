#include "demo/sensor/bluez/gatt_layout.hpp"

#include <algorithm>

#include "engine/sensor/gatt.hpp"

namespace fleetrung::demo
{
namespace
{

namespace gatt = sensor::gatt;

/// Finds the element of that UUID, or appends one.
template <class Element> Element& named(std::vector<Element>& elements, const QString& uuid)
{
    const auto found = std::find_if(elements.begin(), elements.end(), [&](const auto& e) { return e.uuid == uuid; });
    if (found != elements.end()) {
        return *found;
    }
    elements.push_back({});
    elements.back().uuid = uuid;
    return elements.back();
}

void addFlag(std::vector<ServiceLayout>& services, const std::string& service, const std::string& characteristic,
             const QString& flag)
{
    auto& flags =
        named(named(services, QString::fromStdString(service)).characteristics, QString::fromStdString(characteristic))
            .flags;
    if (!flags.contains(flag)) {
        flags << flag;
    }
}

QString assigned(std::uint16_t number)
{
    return QString::fromStdString(gatt::uuidOf(number));
}

} // namespace

QByteArray bytesOf(const std::vector<std::uint8_t>& bytes)
{
    return {reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size())};
}

std::vector<ServiceLayout> gattLayout(const sensor::SensorMap& map, int batteryPercent)
{
    std::vector<ServiceLayout> services;
    for (const auto& stream : map.streams) {
        addFlag(services, stream.service, stream.characteristic, "notify");
    }
    for (const auto* writes : {&map.start, &map.stop}) {
        for (const auto& write : *writes) {
            addFlag(services, write.service, write.characteristic,
                    write.withResponse ? "write" : "write-without-response");
        }
    }
    services.push_back({assigned(gatt::deviceInformation),
                        {{assigned(gatt::manufacturerName), {"read"}, "Invented sensors"},
                         {assigned(gatt::modelNumber), {"read"}, QByteArray::fromStdString(map.key)},
                         {assigned(gatt::firmwareRevision), {"read"}, "1.0"}}});
    services.push_back(
        {assigned(gatt::batteryService),
         {{assigned(gatt::batteryLevel), {"read", "notify"}, QByteArray(1, static_cast<char>(batteryPercent))}}});
    return services;
}

} // namespace fleetrung::demo
