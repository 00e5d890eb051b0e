// Where the sensor may be standing still. A proposal only: a bar that moves slowly and evenly looks just as quiet, so
// the tracker tests every proposal against the velocity it predicts.
#pragma once

#include <optional>
#include <vector>

#include "engine/motion/sample.hpp"

namespace fleetrung::motion
{

struct Quietness {
    bool quiet = false;
    bool supported = false; ///< hardly more than the sensor's own noise: the bar lies on something
    Eigen::Vector3d meanForce = Eigen::Vector3d::Zero(); ///< m/s2 over the window
    Eigen::Vector3d meanRate = Eigen::Vector3d::Zero();  ///< rad/s
    double rateSpread = 0;                               ///< rad/s, root of the summed variances of three axes
};

inline constexpr double quietHalfWindow = 0.08; ///< s to each side (at least 3 samples)

/// Whether the window about a sample reaches as far as it should to the right of it.
[[nodiscard]] bool windowIsComplete(const std::vector<Sample>& samples, std::size_t sample);

/// Looks at the window about one sample. Quiet: the spread of both sensors is that of a held bar at most, turning is
/// under 0.15 rad/s beyond `gyroscopeBias`, and the force has the length of gravity within 0.5 m/s2. These limits are
/// starting values of this project.
[[nodiscard]] Quietness lookForQuiet(const Recording& recording, std::size_t sample);

/// Neighbouring quiet windows that are either all still or all moving evenly: [first, last] of the windows.
struct QuietSpan {
    std::size_t first;
    std::size_t last;
    bool continues; ///< no change of force since the span before it: both are still, or both move at one speed
};

/// Splits runs of quiet windows where the mean force changes (the bar sets off gently there) and after `longest`
/// windows, so that one wrong judgement never carries far. Fed window by window.
class QuietSpans
{
public:
    explicit QuietSpans(std::size_t longest) : longest_(longest) {}

    /// The span that ended before window k, if one did: it is to be judged now.
    std::optional<QuietSpan> add(std::size_t k, const Quietness& window);
    /// The span still open at the end.
    std::optional<QuietSpan> finish();
    /// First window of the open span, if one is open.
    [[nodiscard]] std::optional<std::size_t> open() const;

private:
    std::optional<QuietSpan> close(bool change);

    std::size_t longest_;
    QuietSpan span_{};
    std::size_t count_ = 0; ///< windows in the open span
    double force_ = 0;      ///< sum over the open span
    bool afterChange_ = false;
};

} // namespace fleetrung::motion
