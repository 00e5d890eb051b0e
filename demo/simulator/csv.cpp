#include <array>

#include "demo/simulator/simulator.hpp"
#include "engine/base/csv_table.hpp"
#include "engine/base/numbers.hpp"

namespace fleetrung::simulator
{
namespace
{

/// A field of the truth and the name of its column.
struct Column {
    const char* name;
    double StrokeTruth::*field;
};

constexpr std::array<Column, 13> columns{{
    {"eccentric_start_s", &StrokeTruth::eccentricStart},
    {"concentric_start_s", &StrokeTruth::concentricStart},
    {"peak_s", &StrokeTruth::peakTime},
    {"concentric_end_s", &StrokeTruth::concentricEnd},
    {"mean_velocity_mps", &StrokeTruth::meanVelocity},
    {"mean_propulsive_velocity_mps", &StrokeTruth::meanPropulsiveVelocity},
    {"peak_velocity_mps", &StrokeTruth::peakVelocity},
    {"time_to_peak_velocity_s", &StrokeTruth::timeToPeakVelocity},
    {"range_m", &StrokeTruth::range},
    {"displacement_to_peak_m", &StrokeTruth::displacementToPeak},
    {"eccentric_peak_velocity_mps", &StrokeTruth::eccentricPeakVelocity},
    {"velocity_at_100ms_mps", &StrokeTruth::velocityAt100ms},
    {"velocity_at_200ms_mps", &StrokeTruth::velocityAt200ms},
}};

void addRow(std::string& text, std::size_t index, const char* point, const StrokeTruth& truth, bool partial)
{
    std::vector<std::string> cells{integerText(static_cast<std::int64_t>(index)), point};
    for (const auto& column : columns) {
        cells.push_back(shortestText(truth.*column.field));
    }
    cells.emplace_back(truth.twoPeaked ? "1" : "0");
    cells.emplace_back(partial ? "1" : "0");
    text += csvRecord(cells);
}

} // namespace

std::string recordingCsv(const motion::Recording& recording, std::string_view lift, double loadKg)
{
    std::string text = "# lift: " + std::string(lift) + "\r\n";
    if (loadKg > 0) {
        text += "# load_kg: " + shortestText(loadKg) + "\r\n";
    }
    std::vector<std::string> cells{"time_s", "acc_x_mps2", "acc_y_mps2", "acc_z_mps2"};
    if (recording.hasGyroscope) {
        cells.insert(cells.end(), {"gyr_x_radps", "gyr_y_radps", "gyr_z_radps"});
    }
    text += csvRecord(cells);
    for (const auto& sample : recording.samples) {
        cells = {shortestText(sample.time)};
        for (int axis = 0; axis < 3; ++axis) {
            cells.push_back(shortestText(sample.specificForce[axis]));
        }
        for (int axis = 0; axis < 3 && recording.hasGyroscope; ++axis) {
            cells.push_back(shortestText(sample.angularRate[axis]));
        }
        text += csvRecord(cells);
    }
    return text;
}

std::string truthCsv(const std::vector<TrueRepetition>& truth)
{
    std::vector<std::string> header{"index", "point"};
    for (const auto& column : columns) {
        header.emplace_back(column.name);
    }
    header.insert(header.end(), {"two_peaked", "partial"});
    std::string text = csvRecord(header);
    for (std::size_t i = 0; i < truth.size(); ++i) {
        addRow(text, i + 1, "sensor", truth[i].sensor, truth[i].partial);
        addRow(text, i + 1, "bar", truth[i].bar, truth[i].partial);
    }
    return text;
}

std::string jumpsCsv(const std::vector<TrueJump>& jumps)
{
    std::vector<std::string> cells{
        "index", "landing_s", "takeoff_s", "second_landing_s", "landing_speed_mps", "takeoff_speed_mps"};
    std::string text = csvRecord(cells);
    const auto unless = [](bool absent, double value) { return absent ? std::string() : shortestText(value); };
    for (std::size_t i = 0; i < jumps.size(); ++i) {
        const auto& jump = jumps[i];
        cells = {integerText(static_cast<std::int64_t>(i + 1)),
                 unless(jump.fromStanding, jump.landing),
                 shortestText(jump.takeoff),
                 unless(jump.secondLanding == 0, jump.secondLanding),
                 unless(jump.fromStanding, jump.landingSpeed),
                 shortestText(jump.takeoffSpeed)};
        text += csvRecord(cells);
    }
    return text;
}

} // namespace fleetrung::simulator
