// What is wrong with a recording, before anything is measured in it: found, mended where that is safe, and named.
//
// Classes (a recording has the worst of its findings):
// A: gaps up to 60 ms, nothing clipped, both sensors, 100 Hz or more; doubled and late packets are put right and stay
// A. B: longer gaps, clipping, 25 to 100 Hz, no gyroscope, a clock that stepped back: measured with wider uncertainty.
// A
//    gap or clipping inside a concentric phase is the caller's to judge: see `gaps` and `clipped`.
// C: refused by name: time stamps that contradict each other, fewer than 25 samples a second, a stuck axis, a gyroscope
//    that turns the wrong way, clipping without end. Refusals are errors: the place names sensor and axis.
// All limits are starting values of this project. Times are on the recording's own clock [s].
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::motion
{

enum class Quality : std::uint8_t { A, B, C };
/// "A", "B", "C".
[[nodiscard]] std::string_view qualityName(Quality quality);

enum class Fault : std::uint8_t { Doubled, Late, ClockStep, Gap, LowRate, Clipped, NoGyroscope };
/// "doubled", "late", "clock-step", "gap", "low-rate", "clipped", "no-gyroscope".
[[nodiscard]] std::string_view faultName(Fault fault);

struct Finding {
    Fault fault;
    Quality quality;     ///< the class that this finding alone gives a recording
    std::string place;   ///< "accelerometer z", "clock"; may be empty
    std::string message; ///< one sentence
    double from, to;     ///< the first instant concerned and the last
};

struct Span {
    double from, to;
};
/// Time that the spans (in order) share with [from, to].
[[nodiscard]] double sharedTime(const std::vector<Span>& spans, double from, double to);

/// A gap that is bridged at most; the tolerance lets a gap of 60 ms on a rounded clock be one.
inline constexpr double longestBridge = 0.060 + 0.001;

struct Ordered {
    std::vector<Sample> samples; ///< times increase
    std::vector<Finding> findings;
};
/// The place of a received sample in the words of its source, for errors.
using PlaceOf = std::function<std::string(std::size_t index)>;

/// Puts samples as they came (packets doubled, late by up to 2 s, a clock that stepped) in order of time. A late packet
/// fills a hole and the stream returns to where it was; a clock that stepped back goes on over times that are taken
/// already: from there on times are shifted so that time goes on by one usual period. A step forward stays a gap.
/// Fails with InvalidInput where samples of one time contradict each other, and where time runs back again and again.
[[nodiscard]] Expected<Ordered> putInOrder(std::vector<Sample> received, const PlaceOf& placeOf = {});

struct Screening {
    Quality quality = Quality::A;
    double rate = 0; ///< Hz, mean over intervals that are no gap
    std::vector<Finding> findings;
    std::vector<Span> gaps;    ///< longer than 60 ms
    std::vector<Span> clipped; ///< readings at the end of the range, half a period to both sides
};

/// Screens a recording whose samples are in order. Fails with InvalidInput for readings that are no numbers and times
/// that do not increase, and with NotAvailable for what class C names.
[[nodiscard]] Expected<Screening> screen(const Recording& recording);

} // namespace fleetrung::motion
