// What a recording takes on the disk, simulated and real. To reach: 45 % of its size as 16-bit numbers, 12 bytes a
// sample.
#include "logbook_helper.hpp"

#include <filesystem>
#include <memory>
#include <numbers>

#include <stdio.h>

#include "engine/motion/recording_csv.hpp"
#include "mobile/logbook/capture_mapping.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

double shareOf(const motion::Recording& recording)
{
    const auto samples = samplesOf(recording);
    const auto encoded = good(store::encodeCapture(samples, scalesOf(recording.sensor)));
    CHECK(good(store::decodeCapture(encoded.bytes)).samples == samples);
    return static_cast<double>(encoded.bytes.size()) / (12.0 * static_cast<double>(recording.samples.size()));
}

/// What gzip says of a file; empty where it cannot.
std::string unpacked(const std::string& path)
{
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(("gzip -dc '" + path + "'").c_str(), "r"), pclose);
    std::string text;
    std::array<char, 65536> buffer{};
    for (std::size_t got = 0; pipe && (got = fread(buffer.data(), 1, buffer.size(), pipe.get())) > 0;)
        text.append(buffer.data(), got);
    return text;
}

} // namespace

TEST_CASE("recordings of the simulated 16-bit sensor take at most 45 % of their 16-bit size, times included")
{
    const std::string lift = GENERATE("full-squat", "hang-power-clean", "step-up");
    const auto recording = simulated(lift, 8, 41).recording;
    const double share = shareOf(recording);
    INFO(lift << ": " << recording.samples.size() << " samples, share " << share);
    CHECK(share <= 0.45);
}

// The files round to 0.0001 m/s2 and 0.00001 rad/s: finer than the sensor's own counts, and all of it is kept. What the
// program itself records are counts: the same motion as counts of +-16 g and +-2000 degrees a second shows what they
// take.
TEST_CASE("a real recording takes at most 45 % of its 16-bit size as counts, and less than all of it as finer decimals")
{
    const std::string folder = FLEETRUNG_DATA "/imu-optical-translation/";
    const std::string trial = GENERATE("10_undisturbed_slow_translation_A.csv.gz", "25_disturbed_tapping_B.csv.gz");
    if (!std::filesystem::exists(folder + trial)) {
        WARN("skipped: " << folder << " is not here");
        return;
    }
    const auto columns = good(motion::parseColumnMap("time_s=t_s,acc_x_mps2=acc_x,acc_y_mps2=acc_y,acc_z_mps2=acc_z,"
                                                     "gyr_x_radps=gyr_x,gyr_y_radps=gyr_y,gyr_z_radps=gyr_z"));
    auto recording = good(motion::importRecording(unpacked(folder + trial), columns)).recording;
    const double asDecimals = shareOf(recording);

    recording.sensor.accelerometerRange = 16 * 9.80665;
    recording.sensor.gyroscopeRange = 2000 * std::numbers::pi / 180;
    const auto scales = scalesOf(recording.sensor);
    for (auto& sample : recording.samples) {
        sample.specificForce =
            (sample.specificForce / scales.accelerometer).array().round().matrix() * scales.accelerometer;
        sample.angularRate = (sample.angularRate / scales.gyroscope).array().round().matrix() * scales.gyroscope;
    }
    const double asCounts = shareOf(recording);
    INFO(trial << ": " << recording.samples.size() << " samples, as decimals " << asDecimals << ", as counts "
               << asCounts);
    CHECK(asDecimals < 1);
    CHECK(asCounts <= 0.45);
}
