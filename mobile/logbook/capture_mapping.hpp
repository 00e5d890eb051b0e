// A recording of the engine as the samples and the description the store keeps, and back (private to mobile/logbook).
#pragma once

#include <string>

#include "engine/motion/sample.hpp"
#include "engine/store/capture_codec.hpp"

namespace fleetrung::logbook
{

/// Minus zero becomes zero (no count of a sensor gives it); every other value stays bit for bit.
[[nodiscard]] store::CaptureSamples samplesOf(const motion::Recording& recording);
[[nodiscard]] motion::Recording recordingOf(const store::CaptureSamples& samples, bool hasGyroscope,
                                            const motion::SensorTraits& sensor);

/// One count of a 16-bit sensor of that range; 0 where the range is not known.
[[nodiscard]] store::CountScales scalesOf(const motion::SensorTraits& sensor);

[[nodiscard]] std::string traitsText(const motion::SensorTraits& sensor);
[[nodiscard]] Expected<motion::SensorTraits> parseTraits(const std::string& text);

} // namespace fleetrung::logbook
