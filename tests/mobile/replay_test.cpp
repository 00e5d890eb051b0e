// A set over a bad radio, stored and streamed again: nothing behind the port can tell it from the first time.
#include <bit>
#include <cmath>
#include <random>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <catch2/catch.hpp>

#include "demo/sensor/packet_encoder.hpp"
#include "engine/sensor/stream.hpp"
#include "mobile/views/live_session.hpp"
#include "mobile/views/replay_source.hpp"
#include "tests/engine/sensor/map_forms.hpp"
#include "tests/logbook/logbook_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::views;
namespace forms = fleetrung::sensor::forms;
namespace book = fleetrung::logbook::test;

namespace
{

constexpr std::int64_t zero = 5'000'000'000; // ns
constexpr double rate = 200;                 // Hz
constexpr double restBefore = 10;            // s

struct Streamed {
    std::vector<sensor::StreamSample> samples;
    motion::ClockFit fit;
};

/// A set as packets over a radio whose connection events come 37.5 ms apart, with one stall of half a second.
Streamed overTheAir(const std::vector<sensor::Field>& header, const motion::Recording& set)
{
    std::vector<motion::Sample> samples;
    for (int i = 0; i < static_cast<int>(restBefore * rate); ++i) {
        samples.push_back(set.samples[static_cast<std::size_t>(i) % static_cast<std::size_t>(rate)]);
        samples.back().time = i / rate;
    }
    for (const auto& sample : set.samples)
        samples.push_back(
            {sample.time - set.samples.front().time + restBefore, sample.specificForce, sample.angularRate});
    auto map = forms::binary(header,
                             forms::readings(sensor::NumberType::Int16, sensor::ByteOrder::Little, 6,
                                             forms::gravity / 2048, forms::degree / 16),
                             4);
    map.streams.front().rate = rate;
    demo::PacketEncoder encoder(map);
    sensor::Stream stream(map, {}, zero);
    std::mt19937_64 random(7);
    std::exponential_distribution<> late(1 / 0.5e-3);
    Streamed streamed;
    bool inSet = false;
    for (const auto& packet : encoder.encode(samples)) {
        const double sent = 1e-9 * static_cast<double>(packet.arrival) * (1 + 200e-6);
        double arrival = std::ceil(sent / 0.0375) * 0.0375 + late(random);
        if (arrival > restBefore + 4 && arrival < restBefore + 4.5)
            arrival = restBefore + 4.5;
        if (!inSet && sent > restBefore) {
            stream.setBegins();
            inSet = true;
        }
        for (const auto& fresh : stream.add(0, packet.bytes, zero + static_cast<std::int64_t>(1e9 * arrival)))
            if (inSet)
                streamed.samples.push_back(fresh);
    }
    streamed.fit = stream.fit();
    return streamed;
}

/// Hands over what the radio brought.
class Brought : public sensor::SampleSource
{
public:
    Brought(const Streamed& streamed, const motion::SensorTraits& traits) : streamed_(streamed), traits_(traits) {}

    void start(sensor::SourceEvents events) override
    {
        for (const auto& one : streamed_.samples)
            events.sample(one.sample, one.receipt);
        events.stateChanged(sensor::LinkState::Idle);
    }
    void stop() override {}
    [[nodiscard]] std::string name() const override { return "Bar sensor"; }
    [[nodiscard]] std::string clockFit() const override { return motion::clockFitText(streamed_.fit); }
    [[nodiscard]] motion::SensorTraits traits() const override { return traits_; }
    [[nodiscard]] bool hasGyroscope() const override { return true; }
    [[nodiscard]] std::optional<int> batteryPercent() const override { return std::nullopt; }

private:
    const Streamed& streamed_;
    motion::SensorTraits traits_;
};

struct Taken {
    motion::Recording recording;
    std::vector<reps::Repetition> announced;
};

/// A set with that source, from its first sample to its last.
Taken lift(const LiveSession::MakeSource& make, const reps::Lift& of)
{
    Taken taken;
    bool ended = false;
    LiveSession session;
    QObject::connect(&session, &LiveSession::repetitionFound, &session,
                     [&](const reps::Repetition& repetition) { taken.announced.push_back(repetition); });
    QObject::connect(&session, &LiveSession::stateChanged, &session, [&](sensor::LinkState state) {
        if (state == sensor::LinkState::Idle)
            session.end();
    });
    QObject::connect(&session, &LiveSession::recorded, &session,
                     [&](const motion::Recording& recording, const std::vector<motion::Recording>&) {
                         taken.recording = recording;
                         ended = true;
                     });
    session.begin(make, of);
    QElapsedTimer since;
    for (since.start(); !ended && since.elapsed() < 20000;)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    REQUIRE(ended);
    return taken;
}

bool sameBits(double a, double b)
{
    return std::bit_cast<std::uint64_t>(a + 0.0) == std::bit_cast<std::uint64_t>(b + 0.0);
}

bool sameBits(const Eigen::Vector3d& a, const Eigen::Vector3d& b)
{
    return sameBits(a.x(), b.x()) && sameBits(a.y(), b.y()) && sameBits(a.z(), b.z());
}

void checkSame(const motion::Recording& a, const motion::Recording& b)
{
    REQUIRE(a.samples.size() == b.samples.size());
    int other = 0;
    for (std::size_t i = 0; i < a.samples.size(); ++i)
        other += sameBits(a.samples[i].time, b.samples[i].time) &&
                         sameBits(a.samples[i].specificForce, b.samples[i].specificForce) &&
                         sameBits(a.samples[i].angularRate, b.samples[i].angularRate)
                     ? 0
                     : 1;
    CHECK(other == 0);
    CHECK(a.receipts == b.receipts);
    CHECK(a.clockFit == b.clockFit);
}

void checkSame(const std::vector<reps::Repetition>& a, const std::vector<reps::Repetition>& b)
{
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        CHECK(sameBits(a[i].concentricStart, b[i].concentricStart));
        CHECK(sameBits(a[i].concentricEnd, b[i].concentricEnd));
        CHECK(sameBits(a[i].timeToPeakVelocity.value, b[i].timeToPeakVelocity.value));
        CHECK(sameBits(a[i].peakVelocity.value, b[i].peakVelocity.value));
        CHECK(sameBits(a[i].peakVelocity.uncertainty, b[i].peakVelocity.uncertainty));
        CHECK(sameBits(a[i].range.value, b[i].range.value));
        CHECK(a[i].flags == b[i].flags);
    }
}

} // namespace

TEST_CASE("A stored set streamed again gives the same times, repetitions and record, bit for bit", "[replay]")
{
    const std::vector<std::vector<sensor::Field>> headers{
        {}, {forms::counter(sensor::NumberType::UInt16)}, {forms::stamp(sensor::NumberType::UInt32, 1e-6)}};
    const auto set = book::simulated("full-squat", 4, 31).recording;
    const auto& squat = *reps::findLift("full-squat");
    for (const auto& header : headers) {
        CAPTURE(header.size());
        const auto streamed = overTheAir(header, set);
        const auto live = lift([&] { return std::make_unique<Brought>(streamed, set.sensor); }, squat);
        CHECK(live.announced.size() == 4);
        REQUIRE(live.recording.receipts.size() == live.recording.samples.size());

        const book::Folder folder;
        auto logbook = book::openLogbook(folder);
        const auto day = book::at(book::date("2025-12-01"));
        const auto [athlete, season] = book::fill(logbook);
        const auto session = book::good(logbook.openSession(athlete, "strength", day));
        const auto record = [&](const motion::Recording& recording) {
            return book::good(
                logbook.recordSet(book::squat(session, store::SetKind::Work, 90), recording, {"bar", "bar"}, day));
        };
        const auto first = record(live.recording);
        const auto stored = book::good(logbook.recording(first.set));
        checkSame(live.recording, stored);

        // Each time again follows from its receipt and the fit.
        const auto fit = book::good(motion::parseClockFit(stored.clockFit));
        int unlike = 0;
        for (std::size_t i = 0; i < stored.samples.size(); ++i)
            unlike += sameBits(fit.timeOf(stored.receipts[i].counter), stored.samples[i].time) ? 0 : 1;
        CHECK(unlike == 0);

        const auto again = lift([&] { return std::make_unique<ReplaySource>(stored, "stored recording", 0); }, squat);
        checkSame(live.recording, again.recording);
        checkSame(live.announced, again.announced);
        const auto second = record(again.recording);
        checkSame(first.analysis.repetitions, second.analysis.repetitions);
    }
}
