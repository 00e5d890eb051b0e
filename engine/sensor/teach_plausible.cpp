#include <cmath>
#include <limits>
#include <numbers>

#include "engine/sensor/bits.hpp"
#include "engine/sensor/teach_map.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

/// The nearest of many values, by ratio.
class Nearest
{
public:
    Nearest(double value, double within) : value_(value), within_(within) {}

    void offer(double candidate)
    {
        const double off = std::abs(value_ / candidate - 1);
        if (off < off_) {
            off_ = off;
            best_ = candidate;
        }
    }
    [[nodiscard]] double value() const { return off_ <= within_ ? best_ : value_; }

private:
    double value_, within_;
    double best_ = 0, off_ = std::numeric_limits<double>::infinity();
};

} // namespace

// Steps that data sheets print: common practice, no source.

double plausibleCountsPerGravity(double counts, double gravity)
{
    Nearest nearest(counts, 0.01);
    for (int power = 0; power <= 28; ++power) {
        nearest.offer(std::ldexp(1.0, power));
    }
    for (int power = -1; power <= 7; ++power) {
        nearest.offer(std::pow(10.0, power));
        nearest.offer(gravity * std::pow(10.0, power));
    }
    for (const double milliGravity : {0.061, 0.122, 0.244, 0.488, 0.732, 0.976}) {
        nearest.offer(1000 / milliGravity);
    }
    return nearest.value();
}

double plausibleCountsPerRate(double counts)
{
    constexpr double degrees = 180 / std::numbers::pi; // counts per degree/s -> counts per rad/s
    Nearest nearest(counts, 0.01);
    for (int power = 0; power <= 24; ++power) {
        nearest.offer(std::ldexp(1.0, power));
        nearest.offer(degrees * std::ldexp(1.0, power));
    }
    for (int power = -1; power <= 7; ++power) {
        nearest.offer(std::pow(10.0, power));
        nearest.offer(degrees * std::pow(10.0, power));
    }
    for (const double perDegree : {131.072, 131.0, 65.536, 65.5, 32.768, 32.8, 16.384, 16.4}) {
        nearest.offer(degrees * perDegree);
    }
    for (const double milliDegree : {4.375, 8.75, 17.5, 35.0, 70.0, 140.0}) {
        nearest.offer(degrees * 1000 / milliDegree);
    }
    return nearest.value();
}

double plausibleTick(double tick)
{
    Nearest nearest(tick, 0.003);
    for (int power = -9; power <= 0; ++power) {
        nearest.offer(std::pow(10.0, power));
    }
    for (int power = 5; power <= 20; ++power) {
        nearest.offer(std::ldexp(1.0, -power));
    }
    return nearest.value();
}

double plausibleRate(double rate, double within)
{
    Nearest nearest(rate, within);
    for (const double common : {10.0,  12.5,  20.0,  25.0,  26.0,  30.0,  40.0,  50.0,  52.0,  60.0,  62.5,  64.0,
                                75.0,  80.0,  100.0, 104.0, 119.0, 120.0, 125.0, 128.0, 150.0, 160.0, 200.0, 208.0,
                                225.0, 240.0, 250.0, 256.0, 300.0, 400.0, 416.0, 500.0, 512.0, 800.0, 833.0, 1000.0}) {
        nearest.offer(common);
    }
    const double value = nearest.value();
    return value == rate ? std::round(rate * 1000) / 1000 : value;
}

double plausibleOffset(const Table& table, const Place& place, double center, double countsPerUnit)
{
    // The bias of the sensor itself is calibration, not map.
    constexpr double bias = 0.15;
    if (std::abs(center) < bias * countsPerUnit) {
        return 0;
    }
    if (!table.isText() && !isFloat(place.type) && !isSigned(place.type)) {
        const double half = std::ldexp(1.0, bitsOf(place.type) - 1);
        if (std::abs(center - half) < bias * countsPerUnit) {
            return -half;
        }
    }
    for (int power = 7; power <= 31; ++power) {
        if (const double half = std::ldexp(1.0, power); std::abs(center - half) < bias * countsPerUnit) {
            return -half;
        }
    }
    return -center;
}

} // namespace fleetrung::sensor::teaching
