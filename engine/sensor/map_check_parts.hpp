// Parts of the check of a map. Private to engine/sensor.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/numbers.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{

/// Keeps the first thing that is wrong.
class MapProblem
{
public:
    void refuse(std::string place, std::string message)
    {
        if (!first_)
            first_ = Error{Code::InvalidInput, std::move(place), std::move(message)};
    }
    [[nodiscard]] const std::optional<Error>& first() const { return first_; }

private:
    std::optional<Error> first_;
};

/// "fields[3]".
[[nodiscard]] inline std::string indexed(std::string_view list, std::size_t index)
{
    return std::string(list) + '[' + integerText(static_cast<std::int64_t>(index)) + ']';
}

/// The channels of one stream: each once, with a scale that makes sense, all three axes of a sensor or none.
class ChannelCheck
{
public:
    explicit ChannelCheck(MapProblem& problem) : problem_(problem) {}

    void add(Channel channel, double offset, double scale, const std::string& place);
    void complete(const std::string& place);
    [[nodiscard]] bool has(Channel channel) const;

private:
    void checkScale(Channel channel, double offset, double scale, const std::string& place);
    void checkAxes(Channel first, const std::string& sensor, const std::string& place);

    MapProblem& problem_;
    std::vector<Channel> seen_;
};

/// Bits that are taken up, of a packet or a sample: inside, and none twice.
class RoomCheck
{
public:
    RoomCheck(MapProblem& problem, int bits) : problem_(problem), bits_(bits) {}

    void take(int begin, int length, const std::string& place);
    void noOverlap();

private:
    struct Taken {
        int begin, end;
        std::string place;
    };
    MapProblem& problem_;
    int bits_;
    std::vector<Taken> taken_;
};

void checkBinary(const StreamForm& form, const std::string& place, ChannelCheck& channels, MapProblem& problem);
void checkLines(const StreamForm& form, const std::string& place, ChannelCheck& channels, MapProblem& problem);
/// Where counter and stamp begin at 0 again: not beyond what their type holds.
void checkWraps(const StreamForm& form, const std::string& place, MapProblem& problem);

} // namespace fleetrung::sensor
