#include <algorithm>
#include <cmath>

#include "engine/sensor/teach_running.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

constexpr double steadyGaps = 0.2; // of the interval: below it a lost packet is seen in its gap
constexpr double mostLoss = 0.07;
constexpr int windowPackets = 150;  // over which few enough are lost that some windows lose next to none
constexpr double fullWindows = 0.9; // quantile of the windows' rates that stands for those
constexpr double aboveFull = 0.015; // by how much the rate may lie above it
constexpr double together = 0.0015; // s between packets of one radio event
constexpr double segmentLength = 4; // s over which the phase of the packets is followed
constexpr std::size_t mostSegments = 16;

/// Packets that came in one event of the radio.
struct Event {
    double time;
    int packets;
};

std::vector<Event> eventsOf(const Table& table)
{
    std::vector<Event> events;
    double last = -1;
    for (const double arrival : table.arrival) {
        if (events.empty() || arrival - last > together) {
            events.push_back({arrival, 0});
        }
        ++events.back().packets;
        last = arrival;
    }
    return events;
}

/// How badly a rate explains the packets of a segment's events, with the phase that suits it best. Without loss an
/// event brings what was sent since the one before: floor(rate x time - phase) counts it.
double misfit(const Event* events, std::size_t count, double rate)
{
    constexpr std::size_t phases = 16;
    std::array<double, phases + 1> change{}; // of the misfit from one phase to the next
    double atZero = 0;
    double before = rate * events[0].time;
    for (std::size_t i = 1; i < count; ++i) {
        const double here = rate * events[i].time;
        const double expected = std::floor(here) - std::floor(before);
        const auto cost = [&](double by) { return std::min(2.0, std::abs(expected + by - events[i].packets)); };
        const double first = before - std::floor(before), second = here - std::floor(here);
        // A phase above its fraction takes one from either count.
        const auto bin = [](double fraction) { return static_cast<std::size_t>(fraction * phases) + 1; };
        atZero += cost(0);
        if (first < second) {
            change.at(std::min(bin(first), phases)) += cost(1) - cost(0);
            change.at(std::min(bin(second), phases)) -= cost(1) - cost(0);
        } else {
            change.at(std::min(bin(second), phases)) += cost(-1) - cost(0);
            change.at(std::min(bin(first), phases)) -= cost(-1) - cost(0);
        }
        before = here;
    }
    double best = atZero, now = atZero;
    for (std::size_t phase = 1; phase < phases; ++phase) {
        now += change.at(phase);
        best = std::min(best, now);
    }
    return best;
}

/// What the fullest windows brought [packets/s]; 0 where there are too few. A loss only ever makes a window emptier.
double rateOfFullWindows(const std::vector<Event>& events)
{
    std::vector<double> rates;
    int packets = 0;
    for (std::size_t begin = 0, end = 0; end + 1 < events.size();) {
        packets += events[++end].packets;
        if (packets < windowPackets) {
            continue;
        }
        rates.push_back(packets / (events[end].time - events[begin].time));
        while (packets >= windowPackets) {
            packets -= events[++begin].packets;
        }
    }
    if (rates.size() < 20) {
        return 0;
    }
    const auto place = rates.begin() + static_cast<std::ptrdiff_t>(fullWindows * static_cast<double>(rates.size()));
    std::nth_element(rates.begin(), place, rates.end());
    return *place;
}

/// The rate that explains most of the events, from the one received upwards.
double rateByEvents(const std::vector<Event>& events, double received)
{
    std::vector<std::size_t> begins{0};
    for (std::size_t i = 1; i < events.size(); ++i) {
        if (events[i].time - events[begins.back()].time >= segmentLength) {
            begins.push_back(i);
        }
    }
    begins.resize(std::min(begins.size(), mostSegments + 1));
    const double step = std::clamp(0.15 / (segmentLength * received), 1e-4, 2e-3);
    const double full = rateOfFullWindows(events);
    const double most = full > 0 ? std::min(mostLoss, full * (1 + aboveFull) / received - 1) : mostLoss;
    double best = received, least = 1e300;
    for (double more = -0.002; more < most; more += step) {
        double sum = 0;
        for (std::size_t s = 0; s + 1 < begins.size(); ++s) {
            sum += misfit(&events[begins[s]], begins[s + 1] - begins[s], received * (1 + more));
        }
        if (sum < least) {
            least = sum;
            best = received * (1 + more);
        }
    }
    return best;
}

} // namespace

PacketRate packetRateOf(const Table& table)
{
    std::vector<double> gaps;
    for (std::size_t i = 1; i < table.size(); ++i) {
        gaps.push_back(table.arrival[i] - table.arrival[i - 1]);
    }
    const double duration = std::max(table.arrival.back() - table.arrival.front(), 1e-9);
    const double received = static_cast<double>(gaps.size()) / duration;
    if (!table.count.empty()) {
        const double sent = table.count.back() - table.count.front();
        return {sent / duration, 1 - static_cast<double>(gaps.size()) / sent};
    }
    auto sorted = gaps;
    std::nth_element(sorted.begin(), sorted.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2), sorted.end());
    const double middle = std::max(sorted[gaps.size() / 2], 1e-6);
    double off = 0, missing = 0;
    for (const double gap : gaps) {
        const double whole = std::max(1.0, std::round(gap / middle));
        off += std::abs(gap / middle - whole) / static_cast<double>(gaps.size());
        missing += std::min(whole, 50.0) - 1;
    }
    const auto sent = static_cast<double>(gaps.size()) + missing;
    if (off < steadyGaps && missing < mostLoss * static_cast<double>(gaps.size())) {
        return {sent / duration, missing / sent};
    }
    const double rate = received < 5000 ? rateByEvents(eventsOf(table), received) : received;
    return {rate, 1 - received / rate};
}

} // namespace fleetrung::sensor::teaching
