// Repetitions of the engine against strokes that motion capture saw: pairs, errors, coverage, and one table a
// recording.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <limits>
#include <string>
#include <vector>

#include "engine/reps/analyse.hpp"
#include "tests/engine/motion/optical.hpp"

namespace fleetrung::tests
{

inline constexpr double fastest = 3.0;    // m/s: beyond it no bar is lifted
inline constexpr double leastRise = 0.05; // m: what the lift "free" counts

struct Errors {
    std::vector<double> error, stated;

    void add(double value, double truth, double uncertainty = 0)
    {
        error.push_back(value - truth);
        stated.push_back(uncertainty);
    }
    void append(const Errors& other)
    {
        error.insert(error.end(), other.error.begin(), other.error.end());
        stated.insert(stated.end(), other.stated.begin(), other.stated.end());
    }
    [[nodiscard]] double rms() const
    {
        double sum = 0;
        for (const double e : error)
            sum += e * e;
        return error.empty() ? 0 : std::sqrt(sum / static_cast<double>(error.size()));
    }
    [[nodiscard]] double bias() const
    {
        double sum = 0;
        for (const double e : error)
            sum += e;
        return error.empty() ? 0 : sum / static_cast<double>(error.size());
    }
    /// Of the absolute errors; 1 is the worst.
    [[nodiscard]] double quantile(double share) const
    {
        std::vector<double> sizes;
        for (const double e : error)
            sizes.push_back(std::abs(e));
        std::sort(sizes.begin(), sizes.end());
        return sizes.empty() ? 0 : sizes[static_cast<std::size_t>(share * static_cast<double>(sizes.size() - 1))];
    }
    /// Share of truths inside the 95 % interval.
    [[nodiscard]] double coverage() const
    {
        std::size_t inside = 0;
        for (std::size_t i = 0; i < error.size(); ++i)
            inside += std::abs(error[i]) <= 1.96 * stated[i] ? 1 : 0;
        return error.empty() ? 0 : static_cast<double>(inside) / static_cast<double>(error.size());
    }
};

struct Score {
    std::size_t listed = 0, missed = 0, unlisted = 0;
    std::size_t acrossLine = 0; ///< not listed, and rose by less than 5 cm, which was measured as more
    std::size_t phantoms = 0;   ///< not listed, and rose by less than 5 cm and half of what was measured
    std::size_t faster = 0, fasterMissed = 0;
    Errors peak, rise, listedRise, stroke, cutStroke, instant, clearInstant, shortOfPeak, height;
    Errors fasterPeak, fasterRise, unlistedRise;

    void append(const Score& other)
    {
        listed += other.listed, missed += other.missed, unlisted += other.unlisted;
        acrossLine += other.acrossLine, phantoms += other.phantoms;
        faster += other.faster, fasterMissed += other.fasterMissed;
        for (const auto errors : {&Score::peak, &Score::rise, &Score::listedRise, &Score::stroke, &Score::cutStroke,
                                  &Score::instant, &Score::clearInstant, &Score::shortOfPeak, &Score::height,
                                  &Score::fasterPeak, &Score::fasterRise, &Score::unlistedRise})
            (this->*errors).append(other.*errors);
    }
};

inline double valueAt(const OpticalTrial& trial, const std::vector<double>& values, double instant)
{
    const std::size_t i = std::max<std::size_t>(trial.sampleAt(instant), 1);
    const double share = (instant - trial.time[i - 1]) / (trial.time[i] - trial.time[i - 1]);
    return values[i - 1] * (1 - share) + values[i] * share;
}

/// The optical speed has no other maximum within a tenth of the peak: else millimetres per second decide which is it.
inline bool hasClearPeak(const OpticalTrial& trial, const UpStroke& stroke)
{
    const auto& v = trial.speed;
    int high = 0;
    for (std::size_t i = trial.sampleAt(stroke.started) + 1; i < trial.sampleAt(stroke.ended); ++i)
        high += v[i] > v[i - 1] && v[i] >= v[i + 1] && v[i] >= reps::twoPeakedShare * stroke.peakSpeed ? 1 : 0;
    return high <= 1;
}

/// Deviation of our height from the optical one along a stroke, but for a common offset.
inline double heightDeviation(const OpticalTrial& trial, const std::vector<double>& height, const UpStroke& stroke)
{
    const std::size_t from = trial.sampleAt(stroke.trough), to = trial.sampleAt(stroke.top);
    double sum = 0, squares = 0;
    for (std::size_t i = from; i <= to; ++i) {
        const double off = height[i] - trial.height[i];
        sum += off;
        squares += off * off;
    }
    const auto count = static_cast<double>(to - from + 1);
    return std::sqrt(std::max(0.0, squares / count - sum * sum / (count * count)));
}

/// Greatest rise of the optical height from a tenth of a second before a repetition to one after it.
inline double opticalRise(const OpticalTrial& trial, const reps::Repetition& rep)
{
    double low = std::numeric_limits<double>::infinity(), rise = 0;
    for (auto i = trial.sampleAt(rep.concentricStart - 0.1); i <= trial.sampleAt(rep.concentricEnd + 0.1); ++i) {
        low = std::min(low, trial.height[i]);
        rise = std::max(rise, trial.height[i] - low);
    }
    return rise;
}

inline double opticalRange(const OpticalTrial& trial, const reps::Repetition& rep)
{
    return valueAt(trial, trial.height, rep.concentricEnd) - valueAt(trial, trial.height, rep.concentricStart);
}

inline void scoreListed(Score& score, const OpticalTrial& trial, const reps::SetAnalysis& analysis,
                        const UpStroke& stroke, const reps::Repetition& rep)
{
    if (stroke.peakSpeed > fastest) {
        score.fasterPeak.add(rep.peakVelocity.value, stroke.peakSpeed, rep.peakVelocity.uncertainty);
        score.fasterRise.add(rep.range.value, opticalRange(trial, rep), rep.range.uncertainty);
        return;
    }
    const auto& height = analysis.trace.height;
    score.peak.add(rep.peakVelocity.value, stroke.peakSpeed, rep.peakVelocity.uncertainty);
    score.rise.add(rep.range.value, opticalRange(trial, rep), rep.range.uncertainty);
    score.listedRise.add(valueAt(trial, height, stroke.top) - valueAt(trial, height, stroke.trough), stroke.rise);
    const bool cut = rep.concentricStart - stroke.trough > 0.1 || stroke.top - rep.concentricEnd > 0.1;
    (cut ? score.cutStroke : score.stroke).add(rep.range.value, stroke.rise, rep.range.uncertainty);
    score.instant.add(rep.peakTime, stroke.peakTime());
    if (hasClearPeak(trial, stroke))
        score.clearInstant.add(rep.peakTime, stroke.peakTime());
    score.shortOfPeak.add(valueAt(trial, trial.speed, rep.peakTime), stroke.peakSpeed);
    score.height.add(heightDeviation(trial, height, stroke), 0);
}

inline Score scoreTrial(const OpticalTrial& trial, const reps::SetAnalysis& analysis)
{
    Score score;
    auto left = analysis.repetitions;
    for (const auto& stroke : trial.strokes) {
        const auto offPeak = [&](const reps::Repetition& rep) {
            const bool inside = rep.peakTime >= stroke.trough && rep.peakTime <= stroke.top;
            return inside ? std::abs(rep.peakTime - stroke.peakTime()) : std::numeric_limits<double>::infinity();
        };
        const auto best = std::min_element(left.begin(), left.end(),
                                           [&](const auto& a, const auto& b) { return offPeak(a) < offPeak(b); });
        const bool found = best != left.end() && std::isfinite(offPeak(*best));
        (stroke.peakSpeed > fastest ? score.faster : score.listed) += 1;
        if (!found) {
            (stroke.peakSpeed > fastest ? score.fasterMissed : score.missed) += 1;
            std::printf("  missed: %.2f to %.2f s, %.3f m\n", stroke.trough, stroke.top, stroke.rise);
            continue;
        }
        scoreListed(score, trial, analysis, stroke, *best);
        left.erase(best);
    }
    for (const auto& rep : left) {
        ++score.unlisted;
        score.unlistedRise.add(rep.range.value, opticalRange(trial, rep), rep.range.uncertainty);
        const double rise = opticalRise(trial, rep);
        if (rise >= leastRise)
            continue;
        (rise < rep.range.value / 2 ? score.phantoms : score.acrossLine) += 1;
        std::printf("  no 5 cm in the optics: %.2f to %.2f s, %.3f m (stated to %.3f), optical rise %.3f m\n",
                    rep.concentricStart, rep.concentricEnd, rep.range.value, rep.range.uncertainty, rise);
    }
    return score;
}

inline void printRow(const char* what, const Errors& errors, double scale, bool stated)
{
    if (errors.error.empty())
        return;
    std::printf("  %-44s %4zu %9.1f %+9.1f %9.1f %9.1f", what, errors.error.size(), scale * errors.rms(),
                scale * errors.bias(), scale * errors.quantile(0.5), scale * errors.quantile(1));
    if (stated)
        std::printf(" %9.0f", 100 * errors.coverage());
    std::printf("\n");
}

inline void print(const std::string& name, const Score& score)
{
    std::printf("%s: %zu strokes up to 3 m/s, %zu missed; %zu faster, %zu missed; %zu not listed, %zu of them under 5 "
                "cm, %zu phantoms\n",
                name.c_str(), score.listed, score.missed, score.faster, score.fasterMissed, score.unlisted,
                score.acrossLine, score.phantoms);
    std::printf("  %-44s %4s %9s %9s %9s %9s %9s\n", "error of", "n", "rms", "mean", "median", "most", "in 95 %");
    printRow("peak velocity, mm/s", score.peak, 1e3, true);
    printRow("rise between our own instants, mm", score.rise, 1e3, true);
    printRow("rise between the listed instants, mm", score.listedRise, 1e3, false);
    printRow("our range against the listed rise, mm", score.stroke, 1e3, true);
    printRow("the same, ours over 0.1 s shorter, mm", score.cutStroke, 1e3, true);
    printRow("height along the stroke, mm", score.height, 1e3, false);
    printRow("instant of the peak, ms", score.instant, 1e3, false);
    printRow("instant of the peak where it is clear, ms", score.clearInstant, 1e3, false);
    printRow("optical speed there, mm/s off its peak", score.shortOfPeak, 1e3, false);
    printRow("faster strokes: peak velocity, mm/s", score.fasterPeak, 1e3, true);
    printRow("faster strokes: rise, mm", score.fasterRise, 1e3, true);
    printRow("not listed: rise between our instants, mm", score.unlistedRise, 1e3, true);
}

} // namespace fleetrung::tests
