// Hand-moved recordings of a motion sensor with optical truth.
//
// Data, no part of this checkout (FLEETRUNG_DATA names the folder): Laidig, Caruso, Cereatti, Seel (2021), BROAD - A
// Benchmark for Robust Inertial Orientation Estimation, Data 6(7):72, doi:10.3390/data6070072; CC BY 4.0;
// github.com/dlaidig/broad. The table of up-strokes was derived from its positions: low-pass of 10 Hz without phase,
// speed by central differences, from trough to peak of height, at least 0.15 m and at most 3 s.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <limits>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <Eigen/Geometry>

#include "engine/base/numbers.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::tests
{

inline const std::string opticalFolder = FLEETRUNG_DATA "/imu-optical-translation/";

inline const std::array<const char*, 7> opticalTrials{
    "10_undisturbed_slow_translation_A",
    "12_undisturbed_slow_translation_C",
    "14_undisturbed_slow_translation_with_breaks_B",
    "15_undisturbed_fast_translation_A",
    "25_disturbed_tapping_B",
    "18_undisturbed_fast_translation_with_breaks_B",
    "08_undisturbed_fast_rotation_with_breaks_A",
};

inline bool opticalDataIsHere()
{
    return std::filesystem::exists(opticalFolder);
}

/// A line of the table of up-strokes.
struct UpStroke {
    double trough, top;     ///< s, between which the height rises
    double started, ended;  ///< s, first and last instant at more than 0.05 m/s
    double rise, peakSpeed; ///< m, m/s
    double timeToPeak;      ///< s, from `started`

    [[nodiscard]] double peakTime() const { return started + timeToPeak; }
};

struct OpticalTrial {
    motion::Recording recording;
    std::vector<double> time;                            ///< s, one entry a sample
    std::vector<double> height;                          ///< m, filled in where the cameras lost it
    std::vector<double> speed;                           ///< m/s, made as the table's
    std::vector<std::optional<Eigen::Quaterniond>> turn; ///< sensor to East-North-Up, where the cameras saw it
    std::vector<bool> seen;                              ///< the height is measured, not filled in
    std::vector<bool> moving;                            ///< off the start stand
    std::vector<UpStroke> strokes;

    [[nodiscard]] std::size_t sampleAt(double instant) const
    {
        const auto at = std::lower_bound(time.begin(), time.end(), instant - 1e-9) - time.begin();
        return std::min(static_cast<std::size_t>(at), time.size() - 1);
    }
};

namespace optical
{

/// Cells of a gzipped table without its header.
class Rows
{
public:
    explicit Rows(const std::string& path)
    {
        const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(("gzip -dcf '" + path + "'").c_str(), "r"), pclose);
        std::array<char, 65536> buffer{};
        for (std::size_t got = 0; pipe && (got = fread(buffer.data(), 1, buffer.size(), pipe.get())) > 0;)
            text_.append(buffer.data(), got);
        at_ = std::min(text_.find('\n'), text_.size() - 1) + 1;
    }

    /// False at the end.
    bool next(std::vector<std::string_view>& cells)
    {
        cells.clear();
        if (at_ >= text_.size())
            return false;
        const std::size_t end = std::min(text_.find('\n', at_), text_.size());
        const std::string_view line(text_.data() + at_, end - at_);
        for (std::size_t from = 0; from <= line.size();) {
            const std::size_t comma = std::min(line.find(',', from), line.size());
            cells.push_back(line.substr(from, comma - from));
            from = comma + 1;
        }
        at_ = end + 1;
        return true;
    }

private:
    std::string text_;
    std::size_t at_ = 0;
};

inline double number(std::string_view cell)
{
    const auto value = parseNumber(cell); // "nan" is none
    return value && std::isfinite(*value) ? *value : std::numeric_limits<double>::quiet_NaN();
}

/// Linear between what was seen; the nearest before the first and after the last.
inline void fillIn(std::vector<double>& values, const std::vector<bool>& seen)
{
    std::size_t last = values.size();
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (!seen[i])
            continue;
        const std::size_t from = last == values.size() ? 0 : last + 1;
        for (std::size_t k = from; k < i; ++k) {
            const double share = last == values.size() ? 1 : static_cast<double>(k - last) / double(i - last);
            values[k] = values[i] * share + (share < 1 ? values[last] * (1 - share) : 0);
        }
        last = i;
    }
    for (std::size_t k = last + 1; k < values.size(); ++k)
        values[k] = values[last];
}

/// Second-order low-pass (Butterworth by the bilinear transform), forwards and backwards.
inline std::vector<double> smooth(std::vector<double> values, double cutHz, double rateHz)
{
    const double k = std::tan(3.14159265358979324 * cutHz / rateHz);
    const double norm = 1 / (1 + std::sqrt(2.0) * k + k * k);
    const double b = k * k * norm, a1 = 2 * (k * k - 1) * norm, a2 = (1 - std::sqrt(2.0) * k + k * k) * norm;
    for (int pass = 0; pass < 2; ++pass) {
        double x1 = values.front(), x2 = x1, y1 = x1, y2 = x1;
        for (double& value : values) {
            const double y = b * (value + 2 * x1 + x2) - a1 * y1 - a2 * y2;
            x2 = x1, x1 = value, y2 = y1, y1 = y;
            value = y;
        }
        std::reverse(values.begin(), values.end());
    }
    return values;
}

} // namespace optical

inline OpticalTrial readOpticalTrial(const std::string& name)
{
    OpticalTrial trial;
    std::vector<std::string_view> cells;
    for (optical::Rows rows(opticalFolder + name + ".csv.gz"); rows.next(cells);) {
        std::array<double, 15> v{};
        for (std::size_t i = 0; i < v.size() && i < cells.size(); ++i)
            v[i] = optical::number(cells[i]);
        trial.recording.samples.push_back({v[0], {v[1], v[2], v[3]}, {v[4], v[5], v[6]}});
        trial.time.push_back(v[0]);
        trial.height.push_back(v[13]);
        trial.seen.push_back(!std::isnan(v[13]));
        trial.turn.push_back(std::isnan(v[7]) ? std::nullopt
                                              : std::optional(Eigen::Quaterniond(v[7], v[8], v[9], v[10])));
        trial.moving.push_back(v[14] > 0);
    }
    optical::fillIn(trial.height, trial.seen);
    const double rate = motion::samplingRate(trial.recording);
    const auto even = optical::smooth(trial.height, 10, rate);
    trial.speed.assign(even.size(), 0);
    for (std::size_t i = 1; i + 1 < even.size(); ++i)
        trial.speed[i] = (even[i + 1] - even[i - 1]) / 2 * rate;
    for (optical::Rows rows(opticalFolder + "vertical_upstrokes.csv"); rows.next(cells);) {
        if (cells.front() != name)
            continue;
        std::array<double, 9> v{};
        for (std::size_t i = 1; i < v.size() && i < cells.size(); ++i)
            v[i] = optical::number(cells[i]);
        trial.strokes.push_back({v[1], v[2], v[3], v[4], v[5], v[6], v[8]});
    }
    return trial;
}

} // namespace fleetrung::tests
