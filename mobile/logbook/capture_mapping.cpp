#include "mobile/logbook/capture_mapping.hpp"

#include <cmath>

#include "engine/base/json.hpp"
#include "mobile/logbook/failure.hpp"

namespace fleetrung::logbook
{
namespace
{

struct Trait {
    const char* key;
    double motion::SensorTraits::*value;
};

constexpr std::array<Trait, 8> traits{{
    {"accelerometer_noise_mps2_per_root_hz", &motion::SensorTraits::accelerometerNoise},
    {"gyroscope_noise_radps_per_root_hz", &motion::SensorTraits::gyroscopeNoise},
    {"accelerometer_bias_mps2", &motion::SensorTraits::accelerometerBias},
    {"gyroscope_bias_radps", &motion::SensorTraits::gyroscopeBias},
    {"accelerometer_scale_error", &motion::SensorTraits::accelerometerScaleError},
    {"gyroscope_scale_error", &motion::SensorTraits::gyroscopeScaleError},
    {"accelerometer_range_mps2", &motion::SensorTraits::accelerometerRange},
    {"gyroscope_range_radps", &motion::SensorTraits::gyroscopeRange},
}};

constexpr double countsPerRange = 32768; // 16 bits, signed

} // namespace

store::CaptureSamples samplesOf(const motion::Recording& recording)
{
    store::CaptureSamples samples;
    const std::size_t channels = recording.hasGyroscope ? 6 : 3;
    for (const auto& sample : recording.samples) {
        samples.time.push_back(sample.time + 0.0); // minus zero and zero are one
        for (std::size_t i = 0; i < channels; ++i) {
            const auto axis = static_cast<Eigen::Index>(i % 3);
            samples.channels[i].push_back((i < 3 ? sample.specificForce[axis] : sample.angularRate[axis]) + 0.0);
        }
    }
    for (const auto& receipt : recording.receipts) {
        samples.counters.push_back(receipt.counter);
        samples.arrivals.push_back(receipt.arrival);
    }
    return samples;
}

motion::Recording recordingOf(const store::CaptureSamples& samples, bool hasGyroscope,
                              const motion::SensorTraits& sensor)
{
    motion::Recording recording;
    recording.hasGyroscope = hasGyroscope;
    recording.sensor = sensor;
    const auto value = [&](std::size_t channel, std::size_t i) {
        return samples.channels[channel].empty() ? 0.0 : samples.channels[channel][i];
    };
    for (std::size_t i = 0; i < samples.time.size(); ++i)
        recording.samples.push_back(
            {samples.time[i], {value(0, i), value(1, i), value(2, i)}, {value(3, i), value(4, i), value(5, i)}});
    for (std::size_t i = 0; i < samples.counters.size() && i < samples.arrivals.size(); ++i)
        recording.receipts.push_back({samples.counters[i], samples.arrivals[i]});
    return recording;
}

store::CountScales scalesOf(const motion::SensorTraits& sensor)
{
    const auto scale = [](double range) { return std::isfinite(range) ? range / countsPerRange : 0; };
    return {scale(sensor.accelerometerRange), scale(sensor.gyroscopeRange)};
}

std::string traitsText(const motion::SensorTraits& sensor)
{
    Json json = Json::object();
    for (const auto& trait : traits)
        if (std::isfinite(sensor.*trait.value)) // a range without end is left out
            json[trait.key] = sensor.*trait.value;
    return jsonText(json);
}

Expected<motion::SensorTraits> parseTraits(const std::string& text)
{
    const auto json = parseJson(text);
    if (!json)
        return failure(json);
    motion::SensorTraits sensor;
    for (const auto& trait : traits) {
        if (!json->is_object() || !json->contains(trait.key))
            continue;
        const auto& value = (*json)[trait.key];
        if (!value.is_number())
            return fail(Code::StoreCorrupt, trait.key, "the sensor's description is damaged; restore a backup");
        sensor.*trait.value = value.get<double>();
    }
    return sensor;
}

} // namespace fleetrung::logbook
