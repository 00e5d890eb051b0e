// Teaching: a map for a sensor nobody described, from raw notifications recorded while the athlete goes through guided
// steps. Works on bytes alone. Which bytes are accelerometer follows from six still faces (three fields move between
// +g and -g), which are gyroscope, their scale and sign from three whole turns, the rate and the stamp's tick from
// arrivals and are checked by two raises of known height.
#pragma once

#include <array>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/sensor/packet.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{

/// Six faces in any order: the next face is any that has not been up yet. Turns: lying flat, one whole turn
/// counter-clockwise seen from above, about each axis in turn. Raises: straight up by the known height and held there.
enum class TeachStep : std::uint8_t {
    FaceOne,
    FaceTwo,
    FaceThree,
    FaceFour,
    FaceFive,
    FaceSix,
    TurnOne,
    TurnTwo,
    TurnThree,
    RaiseOne,
    RaiseTwo
};
inline constexpr std::size_t teachSteps = 11;
/// How long one step is recorded [s]; faces must lie still all the while, turns and raises begin and end still.
[[nodiscard]] double secondsOf(TeachStep step);

/// A characteristic that notifies; RawPacket::source is its index.
struct Notifier {
    std::string service, characteristic; ///< UUIDs
};

struct TeachSpan {
    TeachStep step;
    std::int64_t from, to; ///< ns, arrivals
};

/// Everything that came from the first step to the last, also between steps (while it is moved from face to face: that
/// tells a left-handed frame from a right-handed one).
struct TeachRecording {
    std::vector<Notifier> notifiers;
    std::vector<RawPacket> packets; ///< in order of arrival
    std::vector<TeachSpan> spans;   ///< each step once; done again: the later span counts
    double raiseHeight = 0.5;       ///< m
    double gravity = 9.80665;       ///< m/s2
};

/// How sure one thing is, 0 to 1, and in words why.
struct Sureness {
    std::string what; ///< "accelerometer", "gyroscope", "counter", "time stamp", "rate", "packet form"
    double sure = 0;
    std::string why;
};

struct Taught {
    std::optional<SensorMap> map; ///< none: see `repeat` and `why`
    std::vector<Sureness> sureness;
    double sure = 0;                 ///< of the whole: the least of them
    std::optional<TeachStep> repeat; ///< the step to do again; none with no map: the sensor cannot be taught
    std::string why;                 ///< what was wrong with it, one sentence
};

/// `progress` gets 0..1; where it gives false the answer is one without map and step ("stopped").
[[nodiscard]] Taught teach(const TeachRecording& recording, const std::function<bool(double)>& progress = {});

} // namespace fleetrung::sensor
