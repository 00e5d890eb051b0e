// The port through which a running sensor reaches the rest: radio, replay of a stored capture and simulator implement
// it, and nothing behind it can tell them apart.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "engine/base/error.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::sensor
{

enum class LinkState { Idle, Searching, Connecting, Streaming, Lost };

/// Called on the thread that owns the source; none is called after stop().
struct SourceEvents {
    std::function<void(LinkState)> stateChanged;
    std::function<void(const motion::Sample&, const motion::Receipt&)>
        sample;                               ///< an empty receipt where the time came with the data
    std::function<void(const Error&)> failed; ///< the source keeps trying unless it says Idle
};

class SampleSource
{
public:
    virtual ~SampleSource() = default;

    virtual void start(SourceEvents events) = 0;
    virtual void stop() = 0;

    [[nodiscard]] virtual std::string name() const = 0; ///< as the athlete named it
    /// JSON text of how times were made (motion/stream_clock.hpp); empty where they came with the data.
    [[nodiscard]] virtual std::string clockFit() const { return {}; }
    [[nodiscard]] virtual motion::SensorTraits traits() const = 0;
    [[nodiscard]] virtual bool hasGyroscope() const = 0;
    [[nodiscard]] virtual std::optional<int> batteryPercent() const = 0;
};

} // namespace fleetrung::sensor
