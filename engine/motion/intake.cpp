#include "engine/motion/intake.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "engine/base/numbers.hpp"
#include "engine/motion/intake_parts.hpp"

namespace fleetrung::motion
{
namespace
{

// Starting values of this project; a sensor's own clock may be two percent off its nominal rate.
constexpr double lowestRate = 25 * 0.98;   // Hz
constexpr double fullRate = 100 * 0.98;    // Hz
constexpr double highestRate = 2000 * 1.1; // Hz
constexpr double missing = 1.75;           // periods between neighbours: at least one sample is missing
constexpr double mostClipped = 0.1;        // share of samples
constexpr std::size_t partCount = 4;       // an axis that sticks on the way is stuck in a later quarter

std::string sampleName(std::size_t i)
{
    return "sample " + integerText(static_cast<std::int64_t>(i));
}

/// Median interval of some hundred samples spread over the recording.
double usualPeriod(const std::vector<Sample>& samples)
{
    std::array<double, 512> steps{};
    const std::size_t stride = samples.size() / steps.size() + 1;
    std::size_t count = 0;
    for (std::size_t i = 1; i < samples.size(); i += stride)
        steps[count++] = samples[i].time - samples[i - 1].time;
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(count / 2);
    std::nth_element(steps.begin(), middle, steps.begin() + static_cast<std::ptrdiff_t>(count));
    return *middle;
}

/// Everything that one pass over the samples tells.
struct FirstPass {
    std::vector<Extremes> parts;
    std::vector<Span> gaps;
    std::size_t shortGaps = 0;
    Span firstShortGap{}, lastShortGap{};
    double longestShortGap = 0;
    double regularTime = 0;
    std::size_t regularSteps = 0;

    [[nodiscard]] double period() const
    {
        return regularSteps > 0 ? regularTime / static_cast<double>(regularSteps) : 0;
    }
};

/// Extremes of neighbouring samples; false where a reading is no number.
bool addPart(std::span<const Sample> samples, std::vector<Extremes>& parts)
{
    Eigen::Array3d leastForce = samples.front().specificForce, greatestForce = leastForce;
    Eigen::Array3d leastRate = samples.front().angularRate, greatestRate = leastRate;
    Eigen::Array3d forceSum = Eigen::Array3d::Zero(), rateSum = Eigen::Array3d::Zero();
    for (const auto& sample : samples) {
        const auto force = sample.specificForce.array();
        const auto rate = sample.angularRate.array();
        leastForce = leastForce.min(force);
        greatestForce = greatestForce.max(force);
        leastRate = leastRate.min(rate);
        greatestRate = greatestRate.max(rate);
        forceSum += force;
        rateSum += rate;
    }
    Extremes part{samples, {}, {}};
    for (std::size_t axis = 0; axis < 3; ++axis) {
        const auto i = static_cast<Eigen::Index>(axis);
        part.least[axis] = leastForce[i];
        part.greatest[axis] = greatestForce[i];
        part.least[axis + 3] = leastRate[i];
        part.greatest[axis + 3] = greatestRate[i];
    }
    parts.push_back(part);
    return forceSum.isFinite().all() && rateSum.isFinite().all(); // one that is none spoils its sum
}

void noteShortGap(const Span& gap, FirstPass& pass)
{
    if (pass.shortGaps++ == 0)
        pass.firstShortGap = gap;
    pass.lastShortGap = gap;
    pass.longestShortGap = std::max(pass.longestShortGap, gap.to - gap.from);
}

Expected<void> readClock(const std::vector<Sample>& samples, FirstPass& pass)
{
    const double regular = missing * usualPeriod(samples);
    for (std::size_t i = 1; i < samples.size(); ++i) {
        const Span step{samples[i - 1].time, samples[i].time};
        const double length = step.to - step.from;
        if (!(length > 0 && std::isfinite(length)))
            return fail(Code::InvalidInput, sampleName(i), "time does not increase");
        if (length <= regular) {
            pass.regularTime += length;
            ++pass.regularSteps;
        } else if (length <= longestBridge) {
            noteShortGap(step, pass);
        }
        if (length > longestBridge)
            pass.gaps.push_back(step);
    }
    return {};
}

tl::unexpected<Error> noNumber(const std::vector<Sample>& samples)
{
    std::size_t i = 0;
    while (i + 1 < samples.size() && samples[i].specificForce.allFinite() && samples[i].angularRate.allFinite())
        ++i;
    return fail(Code::InvalidInput, sampleName(i), "a reading is no number");
}

Expected<FirstPass> passOver(const std::vector<Sample>& samples)
{
    FirstPass pass;
    if (auto read = readClock(samples, pass); !read)
        return tl::unexpected(std::move(read.error()));
    const std::span<const Sample> all(samples);
    const std::size_t parts = samples.size() < 64 ? 1 : partCount;
    for (std::size_t part = 0; part < parts; ++part) {
        const std::size_t first = samples.size() * part / parts;
        const std::size_t last = samples.size() * (part + 1) / parts;
        if (!addPart(all.subspan(first, last - first), pass.parts))
            return noNumber(samples);
    }
    return pass;
}

Extremes wholeOf(const std::vector<Sample>& samples, const std::vector<Extremes>& parts)
{
    Extremes whole = parts.front();
    whole.samples = samples;
    for (const auto& part : parts)
        for (std::size_t axis = 0; axis < axisCount; ++axis) {
            whole.least[axis] = std::min(whole.least[axis], part.least[axis]);
            whole.greatest[axis] = std::max(whole.greatest[axis], part.greatest[axis]);
        }
    return whole;
}

std::optional<Error> rateRefusal(double rate)
{
    if (rate < lowestRate)
        return Error{Code::NotAvailable, "",
                     "the sensor sends " + fixedText(rate, 1) + " samples a second; 25 or more are needed"};
    if (rate > highestRate)
        return Error{Code::NotAvailable, "",
                     "the time stamps say " + fixedText(rate, 0) +
                         " samples a second; up to 2000 are read: check the unit of time"};
    return std::nullopt;
}

std::optional<Error> axisRefusal(const Recording& recording, const std::vector<Extremes>& parts, const Extremes& whole)
{
    const auto stuck = [](int axis) {
        return Error{Code::NotAvailable, axisName(axis),
                     "this axis keeps one reading while the others move: it is stuck; restart the sensor, or have it "
                     "mended"};
    };
    if (const auto axis = findStuckAxis(whole, false))
        return stuck(*axis);
    if (const auto axis = findFrozenAxis(recording, samplingRate(recording)))
        return stuck(*axis);
    for (const auto& part : parts)
        if (const auto axis = findStuckAxis(part, true))
            return stuck(*axis);
    const auto misfit = findMisfit(recording, whole);
    if (!misfit)
        return std::nullopt;
    if (misfit->silent)
        return Error{Code::NotAvailable, "gyroscope",
                     "it reads nothing at all while the sensor turns; leave its columns out, or restart the sensor"};
    std::string axes;
    for (int axis = 0; axis < 3; ++axis)
        if (misfit->swapped[static_cast<std::size_t>(axis)])
            axes += (axes.empty() ? "gyroscope " : ", ") + std::string(1, static_cast<char>('x' + axis));
    return Error{
        Code::NotAvailable, axes,
        "it turns the wrong way against the direction of gravity; swap its sign in the sensor map or the file"};
}

void nameGaps(const FirstPass& pass, Screening& screening)
{
    const auto number = [](std::size_t count) { return integerText(static_cast<std::int64_t>(count)); };
    if (pass.shortGaps > 0)
        screening.findings.push_back({Fault::Gap, Quality::A, "",
                                      number(pass.shortGaps) + " short gaps, up to " +
                                          fixedText(1e3 * pass.longestShortGap, 0) + " ms, are bridged",
                                      pass.firstShortGap.from, pass.lastShortGap.to});
    if (pass.gaps.empty())
        return;
    double together = 0;
    for (const auto& gap : pass.gaps)
        together += gap.to - gap.from;
    const auto& first = pass.gaps.front();
    const auto size = number(pass.gaps.size());
    const bool one = pass.gaps.size() == 1;
    screening.findings.push_back({Fault::Gap, Quality::B, "",
                                  size + (one ? " gap" : " gaps") + " longer than 60 ms, " + fixedText(together, 2) +
                                      " s together" + (one ? ", at " : ", the first at ") + fixedText(first.from, 3) +
                                      " s: the motion in it is unknown (lost packets, or a clock that stepped forward)",
                                  first.from, pass.gaps.back().to});
}

void nameClipping(const ClippedAxes& clipped, double period, Screening& screening)
{
    for (int axis = 0; axis < axisCount; ++axis)
        if (const auto count = clipped.samples[static_cast<std::size_t>(axis)]; count > 0)
            screening.findings.push_back({Fault::Clipped, Quality::B, axisName(axis),
                                          "the end of the range was reached for " +
                                              fixedText(1e3 * period * static_cast<double>(count), 0) +
                                              " ms together; set a wider range",
                                          clipped.spans.front().from, clipped.spans.back().to});
}

} // namespace

std::string_view qualityName(Quality quality)
{
    constexpr std::array<std::string_view, 3> names{"A", "B", "C"};
    return names[static_cast<std::size_t>(quality)];
}

std::string_view faultName(Fault fault)
{
    constexpr std::array<std::string_view, 7> names{"doubled",  "late",    "clock-step",  "gap",
                                                    "low-rate", "clipped", "no-gyroscope"};
    return names[static_cast<std::size_t>(fault)];
}

double sharedTime(const std::vector<Span>& spans, double from, double to)
{
    double shared = 0;
    for (const auto& span : spans)
        shared += std::max(0.0, std::min(span.to, to) - std::max(span.from, from));
    return shared;
}

Expected<Screening> screen(const Recording& recording)
{
    const auto& samples = recording.samples;
    if (samples.size() < 2)
        return fail(Code::InvalidInput, "", "there are fewer than two samples; record the whole set");
    const auto pass = passOver(samples);
    if (!pass)
        return tl::unexpected(pass.error());
    Screening screening;
    screening.rate = pass->period() > 0 ? 1 / pass->period() : 0;
    if (auto refused = rateRefusal(screening.rate))
        return tl::unexpected(std::move(*refused));
    const auto whole = wholeOf(samples, pass->parts);
    if (auto refused = axisRefusal(recording, pass->parts, whole))
        return tl::unexpected(std::move(*refused));
    const auto clipped = findClipping(recording, whole, pass->period());
    if (static_cast<double>(clipped.anyAxis) > mostClipped * static_cast<double>(samples.size()))
        return fail(Code::NotAvailable,
                    axisName(static_cast<int>(std::max_element(clipped.samples.begin(), clipped.samples.end()) -
                                              clipped.samples.begin())),
                    "more than a tenth of the readings lie at the end of the range; set a wider range");

    const double start = samples.front().time, end = samples.back().time;
    if (screening.rate < fullRate)
        screening.findings.push_back(
            {Fault::LowRate, Quality::B, "",
             fixedText(screening.rate, 1) + " samples a second: below 100 the metrics are less certain", start, end});
    if (!recording.hasGyroscope)
        screening.findings.push_back({Fault::NoGyroscope, Quality::B, "gyroscope",
                                      "without a gyroscope the sensor is taken not to turn", start, end});
    nameGaps(*pass, screening);
    nameClipping(clipped, pass->period(), screening);
    screening.gaps = pass->gaps;
    screening.clipped = clipped.spans;
    for (const auto& finding : screening.findings)
        screening.quality = std::max(screening.quality, finding.quality);
    return screening;
}

} // namespace fleetrung::motion
