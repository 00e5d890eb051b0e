// The forward estimate of a capture, sample by sample: what the live set rests on, and the first pass of the final
// analysis. Places keyframes, carries the nominal motion between them, looks for stillness, judges every quiet span as
// a whole against the velocity predicted there, and uses it only then.
//
// Between samples nothing is allocated as long as `reserve` made room for the capture.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "engine/motion/keyframe_filter.hpp"
#include "engine/motion/knowledge.hpp"
#include "engine/motion/stillness.hpp"

namespace fleetrung::motion
{

struct Keyframe {
    std::size_t sample = 0;
    State nominal;                             ///< from which the interval to the next keyframe starts
    WholeVector assumed = WholeVector::Zero(); ///< biases and scale errors of that interval
    LocalVector reset = LocalVector::Zero();   ///< nominal minus the end of the interval before it
    Quietness quiet;
    double stillWeight = 0; ///< how much it is believed that the sensor stood still here, 0..1
};

/// What the tracker and the final solve share: the recording, and how its pieces are weighed.
struct Weighing {
    const Recording& recording;
    Knowledge knowledge;

    [[nodiscard]] Belief prior(double tiltSpread) const;
    [[nodiscard]] WholeInformation wholePrior() const;
    /// Data sheet noise, what the trapezoid may have missed, and what nobody saw where samples are missing or clipped
    /// between two samples.
    [[nodiscard]] LocalMatrix noise(const Propagation& propagation, std::size_t from, std::size_t to) const;
    /// Weak bounds on height and horizontal velocity at every few keyframes.
    void bound(Belief& belief, WholeInformation& information, std::size_t k, const Keyframe& keyframe) const;
    /// Zero velocity, and the turning rate as the gyroscope's bias.
    void still(Belief& belief, WholeInformation& information, const Keyframe& keyframe) const;
    [[nodiscard]] double clippedTime(std::size_t from, std::size_t to) const;
};

/// Standard deviations of velocity in a still window [m/s]: breathing lifts a held bar less than balance sways it.
[[nodiscard]] Eigen::Vector3d stillSpeed(const Quietness& quiet);

/// What is predicted of a quiet span, and how well.
struct SpanMotion {
    Eigen::Vector3d velocity; ///< m/s, mean over the span
    Eigen::Matrix3d velocityCovariance;
    double acceleration; ///< m/s2, upwards, mean over the span
    double accelerationVariance;
    double turning; ///< chi-square (3 degrees of freedom) of its mean rate against the gyroscope's bias
};

/// The acceleration and the turning of a quiet span as its mean readings give them, with the biases and scale errors
/// known so far.
void addReadings(SpanMotion& motion, const std::vector<Keyframe>& keyframes, const QuietSpan& span,
                 const WholeVector& whole, const WholeMatrix& wholeCovariance);

/// Twice the logarithm of how much likelier the motion is of a bar that stands than of one that moves evenly; nothing
/// where it is too much for one that stands.
[[nodiscard]] std::optional<double> supportForStanding(const SpanMotion& motion, const Quietness& quiet);

inline constexpr double longGap = 0.06;         ///< s; a longer one is not bridged
inline constexpr double keyframeSpacing = 0.15; ///< s

class Tracker
{
public:
    /// The recording may grow between calls of `advance`; it must outlive the tracker.
    Tracker(const Recording& recording, const Knowledge& knowledge);

    /// Attitude at the first sample, how well it is known [rad], and the gyroscope's bias there. Without this call the
    /// first samples' mean force is taken for up.
    void start(const Eigen::Quaterniond& attitude, double tiltSpread, const Eigen::Vector3d& gyroscopeBias);
    void reserve(std::size_t keyframes);

    /// Takes in the samples that have come since.
    void advance();
    /// Takes in one of them: `open()` then stands at that sample. False where there is none.
    bool advanceOne();
    /// Nothing more will come: judges what is still open.
    void finish();

    [[nodiscard]] const std::vector<Keyframe>& keyframes() const { return keyframes_; }
    [[nodiscard]] const std::vector<Link>& links() const { return links_; }
    /// Gives the keyframes and links away, at the end.
    [[nodiscard]] std::pair<std::vector<Keyframe>, std::vector<Link>> release();
    [[nodiscard]] const std::vector<QuietSpan>& spans() const { return spans_; }
    [[nodiscard]] const WholeInformation& information() const { return information_; }
    /// Keyframes whose measurements have been used; those after are predicted only.
    [[nodiscard]] std::size_t ripe() const { return ripe_; }
    [[nodiscard]] const Propagation* open() const { return propagation_ ? &*propagation_ : nullptr; }
    /// Predicts the beliefs of the keyframes that are not ripe, so that links can be smoothed to the last one; and the
    /// belief at the newest sample, which closes the last link.
    [[nodiscard]] Belief predictToNow();
    /// Smooths keyframes [first, last] and, after them, the newest sample, which must not be a keyframe itself.
    [[nodiscard]] bool smoothToNow(std::size_t first, Smoothing& smoothing, bool withCovariance);
    /// Estimated error of the nominal motion at the last keyframe.
    [[nodiscard]] LocalVector newestError() const;

private:
    void begin();
    void step(std::size_t sample);
    void closeInterval(std::size_t sample);
    void reset(Keyframe& keyframe);
    [[nodiscard]] LocalVector errorAt(std::size_t keyframe, const WholeVector& whole) const;
    void ripen();
    void judge(const QuietSpan& span, std::size_t upTo);
    [[nodiscard]] bool standsStill(const QuietSpan& span) const;
    void predictTo(std::size_t k);
    [[nodiscard]] double timeOf(std::size_t k) const { return recording_.samples[keyframes_[k].sample].time; }

    const Recording& recording_;
    Weighing weighing_;
    std::size_t next_ = 0; ///< first sample not taken in
    std::optional<Propagation> propagation_;
    std::vector<Keyframe> keyframes_;
    std::vector<Link> links_; ///< as many as keyframes; the last one's interval is open
    std::vector<QuietSpan> spans_;
    WholeInformation information_;
    WholeInformation beforeSpan_; ///< as it stood when the open span began
    QuietSpans quietSpans_;
    std::size_t ripe_ = 0;
    double stoodAt_ = 0; ///< s, end of the last stillness; the beginning where there was none
    bool moving_ = false;
    double movingSince_ = 0;
    bool resetDue_ = false;
    double lastReset_ = 0;
    double firstTiltSpread_ = 0;
};

} // namespace fleetrung::motion
