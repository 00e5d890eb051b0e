// What a schema cannot say of a map.
#include <algorithm>
#include <cmath>

#include "engine/sensor/gatt.hpp"
#include "engine/sensor/map_check_parts.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr std::size_t longestKey = 64;

void checkIdentity(const SensorMap& map, MapProblem& problem)
{
    const auto plain = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
    if (map.key.empty() || map.key.size() > longestKey || !std::all_of(map.key.begin(), map.key.end(), plain))
        problem.refuse("key", "write 1 to 64 lower-case letters, digits and hyphens");
    if (map.name.empty())
        problem.refuse("name", "a name is needed");
}

void checkUuid(const std::string& text, const std::string& place, MapProblem& problem)
{
    const auto whole = gatt::parseUuid(text);
    if (!whole)
        problem.refuse(place, whole.error().message);
    else if (*whole != text)
        problem.refuse(place, "a UUID has 36 lower-case characters inside the program");
}

void checkWrites(const std::vector<CharacteristicWrite>& all, std::string_view list, MapProblem& problem)
{
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto place = indexed(list, i);
        checkUuid(all[i].service, place + ".service", problem);
        checkUuid(all[i].characteristic, place + ".characteristic", problem);
        if (all[i].bytes.empty() || all[i].bytes.size() > gatt::longestValue)
            problem.refuse(place + ".bytes", "a write has 1 to 512 bytes");
    }
}

void checkStream(const StreamForm& form, const std::string& place, MapProblem& problem)
{
    checkUuid(form.service, place + ".service", problem);
    checkUuid(form.characteristic, place + ".characteristic", problem);
    ChannelCheck channels(problem);
    (form.text ? checkLines : checkBinary)(form, place, channels, problem);
    channels.complete(place);
    if (!(form.rate >= 0 && std::isfinite(form.rate)))
        problem.refuse(place + ".rate", "samples per second, or 0 where they are not known");
}

bool carries(const StreamForm& form, Channel channel)
{
    const auto isIt = [&](const auto& field) { return field.channel == channel; };
    if (form.text)
        return std::any_of(form.lines.columns.begin(), form.lines.columns.end(), isIt);
    return std::any_of(form.binary.sampleFields.begin(), form.binary.sampleFields.end(), isIt);
}

/// Accelerometer and gyroscope each come once.
void checkTogether(const SensorMap& map, MapProblem& problem)
{
    if (map.streams.size() == 2 && map.streams[0].service == map.streams[1].service &&
        map.streams[0].characteristic == map.streams[1].characteristic)
        problem.refuse("streams[1].characteristic", "two streams of one characteristic; describe it once");
    int force = 0, turning = 0;
    for (const auto& form : map.streams) {
        force += carries(form, Channel::AccelerometerX) ? 1 : 0;
        turning += carries(form, Channel::GyroscopeX) ? 1 : 0;
    }
    if (force == 0)
        problem.refuse("streams", "no stream carries the accelerometer (channels accelerometerX, Y and Z)");
    if (force > 1 || turning > 1)
        problem.refuse("streams[1]", std::string(force > 1 ? "the accelerometer" : "the gyroscope") +
                                         " comes in both streams; keep one");
}

} // namespace

std::optional<Error> checkSensorMap(const SensorMap& map)
{
    MapProblem problem;
    checkIdentity(map, problem);
    checkWrites(map.start, "start", problem);
    checkWrites(map.stop, "stop", problem);
    if (map.streams.empty() || map.streams.size() > 2)
        problem.refuse("streams", "a map has one or two streams");
    for (std::size_t i = 0; i < map.streams.size(); ++i)
        checkStream(map.streams[i], indexed("streams", i), problem);
    checkTogether(map, problem);
    return problem.first();
}

} // namespace fleetrung::sensor
