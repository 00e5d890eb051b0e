#include "engine/sensor/sensor_map.hpp"

#include <algorithm>

namespace fleetrung::sensor
{
namespace
{

bool turns(Channel channel)
{
    return channel == Channel::GyroscopeX || channel == Channel::GyroscopeY || channel == Channel::GyroscopeZ;
}

bool hasTurns(const auto& fields)
{
    return std::any_of(fields.begin(), fields.end(), [](const auto& field) { return turns(field.channel); });
}

} // namespace

int bitsOf(NumberType type)
{
    switch (type) {
    case NumberType::Int8:
    case NumberType::UInt8:
        return 8;
    case NumberType::Int12:
    case NumberType::UInt12:
        return 12;
    case NumberType::Int16:
    case NumberType::UInt16:
    case NumberType::Float16:
        return 16;
    case NumberType::Int24:
    case NumberType::UInt24:
        return 24;
    case NumberType::Int32:
    case NumberType::UInt32:
    case NumberType::Float32:
        return 32;
    }
    return 0;
}

bool SensorMap::hasGyroscope() const
{
    return std::any_of(streams.begin(), streams.end(), [](const StreamForm& form) {
        return form.text ? hasTurns(form.lines.columns)
                         : hasTurns(form.binary.packetFields) || hasTurns(form.binary.sampleFields);
    });
}

} // namespace fleetrung::sensor
