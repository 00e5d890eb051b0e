// Any bytes as what was recorded while a sensor was taught: no crash, sureness between 0 and 1, and a map that comes
// out is a sound one.
#include "engine/sensor/teach.hpp"
#include "engine/sensor/packet_decoder.hpp"
#include "tests/fuzz/byte_source.hpp"
#include "tests/teach/session.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using fuzz::ByteSource;

namespace
{

constexpr std::int64_t millisecond = 1'000'000;

/// Packets of one shape whose bytes the input gives by rules: constant, counting, or as they come. So a few bytes make
/// many packets.
class Shape
{
public:
    explicit Shape(ByteSource& in) : length_(in.below(40))
    {
        for (int i = 0; i < length_; ++i) {
            rules_.push_back(in.byte());
            values_.push_back(in.byte());
        }
    }
    std::vector<std::uint8_t> next(ByteSource& in, int step)
    {
        std::vector<std::uint8_t> bytes;
        for (std::size_t i = 0; i < rules_.size(); ++i) {
            const int rule = rules_[i] % 6;
            if (rule == 0)
                values_[i] = static_cast<std::uint8_t>(values_[i] + 1);
            else if (rule == 1)
                values_[i] = in.byte();
            else if (rule == 2)
                values_[i] = static_cast<std::uint8_t>(step * (1 + rules_[i] / 8));
            bytes.push_back(values_[i]);
        }
        return bytes;
    }

private:
    int length_;
    std::vector<std::uint8_t> rules_, values_;
};

TeachRecording shapedRecording(ByteSource& in)
{
    TeachRecording recording;
    recording.raiseHeight = in.below(30) * 0.1;
    const int notifiers = in.below(3);
    std::vector<Shape> shapes;
    for (int i = 0; i < notifiers; ++i) {
        recording.notifiers.push_back(
            {"0000fff0-0000-1000-8000-00805f9b34fb",
             "0000fff" + std::string(1, static_cast<char>('1' + i)) + "-0000-1000-8000-00805f9b34fb"});
        shapes.emplace_back(in);
    }
    const std::int64_t interval = (1 + in.below(60)) * millisecond;
    const int inStep = 1 + in.below(60);
    std::int64_t now = static_cast<std::int64_t>(in.word(4)) * millisecond;
    int turned = 0;
    const auto send = [&](int step) {
        for (std::size_t i = 0; i < shapes.size(); ++i)
            if (turned++ % 17 != 16)
                recording.packets.push_back({i, now, shapes[i].next(in, step)});
        now += interval;
    };
    for (int step = 0; step < static_cast<int>(teachSteps); ++step) {
        const auto begin = now;
        for (int i = 0; i < inStep; ++i)
            send(step);
        recording.spans.push_back({static_cast<TeachStep>(step), begin, now});
        send(step);
    }
    while (!in.empty() && recording.packets.size() < 2000) { // what no shape would make
        const auto length = in.word(2) % 520;
        recording.packets.push_back(
            {static_cast<std::size_t>(in.below(4)), now += in.byte() * millisecond, in.bytes(length)});
        if (in.below(16) == 0)
            recording.spans.push_back({static_cast<TeachStep>(in.below(teachSteps)),
                                       static_cast<std::int64_t>(in.word(4)) * millisecond, now});
    }
    return recording;
}

/// A simulated sensor of a random layout in a person's hand: kept, because it takes longer than teaching does. Slow
/// ones and small packets, of which many are taught in a minute.
const TeachRecording& simulated(int number)
{
    static std::array<std::optional<TeachRecording>, 4> kept;
    auto& recording = kept.at(static_cast<std::size_t>(number));
    if (!recording) {
        constexpr double raiseHeight = 0.5; // m
        simulator::Random random(static_cast<std::uint64_t>(number));
        auto layout = tests::randomLayout(random);
        while (layout.rate > 30 || layout.map.streams.front().binary.length > 30)
            layout = tests::randomLayout(random);
        tests::Device device(layout, random);
        tests::Hand hand(random, raiseHeight);
        hand.doSteps({});
        recording = tests::recordTeaching(device, hand, raiseHeight);
    }
    return *recording;
}

/// One thing goes wrong with packets or steps.
void spoil(TeachRecording& recording, ByteSource& in)
{
    auto& packets = recording.packets;
    if (packets.empty())
        return;
    const int kind = in.below(8);
    const auto at = in.word(3) % packets.size();
    const auto length = std::min<std::size_t>(in.word(2), packets.size() - at);
    const auto value = in.byte();
    const auto first = packets.begin() + static_cast<std::ptrdiff_t>(at);
    const auto last = first + static_cast<std::ptrdiff_t>(length);
    switch (kind) {
    case 0:
        packets.erase(first, last);
        break;
    case 1:
        std::for_each(first, last,
                      [&](auto& packet) { packet.bytes.resize(std::min<std::size_t>(packet.bytes.size(), value)); });
        break;
    case 2:
        std::for_each(first, last, [&](auto& packet) { packet.bytes.push_back(value); });
        break;
    case 3:
        std::for_each(first, last, [&](auto& packet) {
            if (!packet.bytes.empty())
                packet.bytes.at(value % packet.bytes.size()) ^= value;
        });
        break;
    case 4:
        std::for_each(first, last, [&](auto& packet) { packet.arrival += value * 10 * millisecond; });
        break;
    case 5:
        std::for_each(first, last, [&](auto& packet) { packet.source = value % 3U; });
        break;
    case 6:
        std::for_each(first, last, [&](auto& packet) { packet.bytes = first->bytes; });
        break;
    default:
        if (!recording.spans.empty()) {
            auto& span = recording.spans.at(value % recording.spans.size());
            span.to = span.from + static_cast<std::int64_t>(at) * millisecond;
        }
    }
}

TeachRecording recordingFrom(ByteSource& in)
{
    if (in.flag())
        return shapedRecording(in);
    auto recording = simulated(in.below(4));
    for (int i = 0; i < 8 && !in.empty(); ++i)
        spoil(recording, in);
    return recording;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    ByteSource in(data, size);
    const auto recording = recordingFrom(in);
    const auto taught = teach(recording);
    fuzz::require(taught.sure >= 0 && taught.sure <= 1);
    for (const auto& one : taught.sureness)
        fuzz::require(one.sure >= 0 && one.sure <= 1);
    fuzz::require(taught.map || !taught.why.empty());
    if (!taught.map)
        return 0;
    fuzz::require(!checkSensorMap(*taught.map));
    const auto again = parseSensorMap(sensorMapText(*taught.map));
    fuzz::require(again && again->streams == taught.map->streams);
    return 0;
}
