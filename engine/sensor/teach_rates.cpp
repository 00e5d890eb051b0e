#include "engine/sensor/teach_rates.hpp"

#include <algorithm>
#include <cmath>

#include "engine/statistics/robust.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

// Starting values of this project, chosen on random layouts (tests/teach).
constexpr double aboveDrift = 5;     // activity / spread of the means at rest
constexpr double aboveNoise = 3;     // activity / noise of one reading at rest
constexpr double window = 0.5;       // s
constexpr double alikeEnough = 0.93; // correlation of two samples of one packet
constexpr std::size_t mostChannels = 16;

bool overlaps(const Table& table, const Place& place, const Triad& triad)
{
    const int width = table.widthOf(place);
    for (std::size_t axis = 0; axis < 3; ++axis) {
        for (int sample = 0; sample < triad.samples; ++sample) {
            const auto other = triad.of(axis, sample);
            if (place.bit < other.bit + table.widthOf(other) && other.bit < place.bit + width) {
                return true;
            }
        }
    }
    return false;
}

/// Windows of the whole recording: where each begins.
std::vector<std::size_t> windowsOf(const Table& table)
{
    std::vector<std::size_t> begins{0};
    for (std::size_t i = 1; i < table.size(); ++i) {
        if (table.arrival[i] - table.arrival[begins.back()] >= window) {
            begins.push_back(i);
        }
    }
    begins.push_back(table.size());
    return begins;
}

std::vector<double> windowMiddles(const Table& table, const std::vector<std::size_t>& begins, const Place& place)
{
    std::vector<double> middles;
    for (std::size_t w = 0; w + 1 < begins.size(); ++w) {
        std::vector<double> values;
        const auto step = std::max<std::size_t>(1, (begins[w + 1] - begins[w]) / 16);
        for (auto i = begins[w]; i < begins[w + 1]; i += step) {
            const double value = table.at(i, place);
            if (std::isfinite(value) && std::abs(value) < 1e12) {
                values.push_back(value);
            }
        }
        middles.push_back(values.empty() ? 0 : statistics::median(values));
    }
    return middles;
}

struct Candidate {
    RateChannel channel;
    std::vector<double> means; ///< above the bias
    std::vector<int> bits;     ///< of the samples of a packet
    std::vector<double> last;  ///< means of the latest of them
};

double rms(const std::vector<double>& values)
{
    double squares = 0;
    for (const double value : values) {
        squares += value * value;
    }
    return std::sqrt(squares / static_cast<double>(std::max<std::size_t>(1, values.size())));
}

bool alike(const std::vector<double>& a, const std::vector<double>& b)
{
    double product = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        product += a[i] * b[i];
    }
    product /= static_cast<double>(a.size());
    const double sizeA = rms(a), sizeB = rms(b);
    return product > alikeEnough * sizeA * sizeB && sizeA < 1.2 * sizeB && sizeB < 1.2 * sizeA;
}

/// Nothing where it drifts at rest as much as it moves.
std::optional<Candidate> candidateAt(const Table& table, const std::array<Records, faces>& records,
                                     const std::vector<std::size_t>& windows, const Place& place)
{
    constexpr Used all{true, true, true, true, true, true};
    const auto values = overFaces(table, records, place, all);
    if (!values) {
        return std::nullopt;
    }
    Candidate candidate;
    double squares = 0;
    for (const double mean : values->mean) {
        candidate.channel.bias += mean / faces;
    }
    for (const double mean : values->mean) {
        squares += (mean - candidate.channel.bias) * (mean - candidate.channel.bias) / faces;
    }
    candidate.means = windowMiddles(table, windows, place);
    for (auto& mean : candidate.means) {
        mean -= candidate.channel.bias;
    }
    candidate.channel.place = place;
    candidate.channel.noise = values->noise;
    candidate.channel.activity = rms(candidate.means);
    candidate.bits = {place.bit};
    candidate.last = candidate.means;
    const double least = std::max(aboveDrift * std::sqrt(squares), aboveNoise * values->noise);
    if (!(candidate.channel.activity > least) || !(candidate.channel.activity > 1e-9)) {
        return std::nullopt;
    }
    return candidate;
}

/// Its samples as far as they lie at one stride.
void takeSamples(const Table& table, Candidate& candidate)
{
    auto& channel = candidate.channel;
    if (candidate.bits.size() > 1) {
        channel.stride = candidate.bits[1] - candidate.bits[0];
        while (static_cast<std::size_t>(channel.samples) < candidate.bits.size() &&
               candidate.bits[static_cast<std::size_t>(channel.samples)] ==
                   candidate.bits[0] + channel.samples * channel.stride) {
            ++channel.samples;
        }
    }
    const Triad alone{{channel.place, channel.place, channel.place}, channel.samples, channel.stride};
    channel.integral = Integral(sampleTimes(table, channel.samples), turningOf(table, alone, 0, channel.bias));
}

} // namespace

std::vector<double> turningOf(const Table& table, const Triad& triad, std::size_t axis, double bias)
{
    constexpr double usual = 0.98; // share of the values that broken records leave alone by far
    auto values = samplesOf(table, triad, axis);
    std::vector<double> sizes;
    for (auto& value : values) {
        value -= bias;
        sizes.push_back(std::abs(value));
    }
    const auto place = static_cast<std::ptrdiff_t>(usual * static_cast<double>(sizes.size() - 1));
    std::nth_element(sizes.begin(), sizes.begin() + place, sizes.end());
    mendSpikes(values, sizes[static_cast<std::size_t>(place)]);
    return values;
}

std::vector<RateChannel> rateChannels(const Table& table, const PlaceGroup& group, const Steps& steps,
                                      const Triad* accelerometer)
{
    std::array<Records, faces> records;
    for (std::size_t face = 0; face < faces; ++face) {
        records.at(face) = recordsOfStep(table, steps, face);
    }
    const auto windows = windowsOf(table);
    std::vector<Candidate> candidates;
    for (const auto& place : group) {
        if (accelerometer != nullptr && overlaps(table, place, *accelerometer)) {
            continue;
        }
        auto candidate = candidateAt(table, records, windows, place);
        if (!candidate) {
            continue;
        }
        const auto same = std::find_if(candidates.begin(), candidates.end(),
                                       [&](const Candidate& other) { return alike(other.last, candidate->means); });
        if (same != candidates.end()) {
            same->bits.push_back(place.bit);
            same->last = candidate->means;
        } else if (candidates.size() < mostChannels) {
            candidates.push_back(std::move(*candidate));
        }
    }
    std::vector<RateChannel> channels;
    for (auto& candidate : candidates) {
        takeSamples(table, candidate);
        channels.push_back(std::move(candidate.channel));
    }
    return channels;
}

} // namespace fleetrung::sensor::teaching
