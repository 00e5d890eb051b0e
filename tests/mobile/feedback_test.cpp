// What the athlete hears and feels on Bench, with a speaker and a body that only take down what they are told.
#include <cmath>
#include <cstdlib>

#include <catch2/catch.hpp>

#include "bench_day.hpp"
#include "mobile/views/bench_feedback.hpp"

using namespace fleetrung;
using namespace fleetrung::views;
using feedback::Cue;

namespace
{

struct Told {
    std::vector<Cue> tones;
    QStringList words;
    int shakes = 0;
    bool awake = false;
};

class SpeakerHere : public feedback::Speaker
{
public:
    SpeakerHere(Told* told, bool voice) : told_(told), voice_(voice) {}
    void play(Cue cue) override { told_->tones.push_back(cue); }
    void say(const QString& words) override { told_->words += words; }
    [[nodiscard]] bool hasVoice() const override { return voice_; }

private:
    Told* told_;
    bool voice_;
};

class BodyHere : public feedback::DeviceBody
{
public:
    explicit BodyHere(Told* told) : told_(told) {}
    [[nodiscard]] bool canShake() const override { return true; }
    void shake(const std::vector<int>& pattern) override { told_->shakes += pattern.empty() ? 0 : 1; }
    void keepAwake(bool awake) override { told_->awake = awake; }

private:
    Told* told_;
};

struct Heard : Bench {
    Told told;
    BenchFeedback feedback;

    explicit Heard(bool voice = true)
        : feedback(&view, &preferences, std::make_unique<SpeakerHere>(&told, voice), std::make_unique<BodyHere>(&told))
    {
    }
};

} // namespace

TEST_CASE("A repetition inside the band, sooner and later are three different sounds", "[feedback]")
{
    Heard bench;
    bench.view.addRepetition(repetition(0.286, 0.62));
    bench.view.addRepetition(repetition(0.200, 0.62));
    bench.view.addRepetition(repetition(0.324, 0.62));
    CHECK(bench.told.tones == std::vector{Cue::Inside, Cue::Sooner, Cue::Later});
    CHECK(bench.told.words.isEmpty());
    CHECK(bench.told.shakes == 3);
}

TEST_CASE("The voice says the time, and what is wrong with it", "[feedback]")
{
    Heard bench;
    bench.preferences.setSound(Preferences::Voice);
    bench.view.addRepetition(repetition(0.286, 0.62));
    bench.view.addRepetition(repetition(0.324, 0.62));
    CHECK(bench.told.words == QStringList{QStringLiteral("286"), QStringLiteral("324, later")});
    CHECK(bench.told.tones.empty());
}

TEST_CASE("The stop is told once, by tone and voice, and not with a number", "[feedback]")
{
    Heard bench;
    bench.preferences.setSound(Preferences::Voice);
    bench.view.addRepetition(repetition(0.286, 0.62));
    bench.view.addRepetition(repetition(0.286, 0.40));
    REQUIRE(bench.view.stopNow());
    bench.view.addRepetition(repetition(0.286, 0.40));
    CHECK(bench.told.tones == std::vector{Cue::Stop});
    CHECK(bench.told.words == QStringList{QStringLiteral("286"), QStringLiteral("Stop the set")});
}

TEST_CASE("A lost sensor is heard, the beginning of a set too", "[feedback]")
{
    Heard bench;
    bench.view.showSensor(BenchViewModel::Ready);
    bench.view.showSensor(BenchViewModel::Streaming);
    bench.view.showSensor(BenchViewModel::Lost);
    bench.view.showSensor(BenchViewModel::Lost);
    bench.view.showSensor(BenchViewModel::Streaming); // found again: the set goes on
    CHECK(bench.told.tones == std::vector{Cue::Begun, Cue::Lost});
}

TEST_CASE("Who wants silence hears nothing, and who wants no shakes feels none", "[feedback]")
{
    Heard bench;
    bench.preferences.setSound(Preferences::Silent);
    bench.preferences.setShakes(false);
    bench.view.addRepetition(repetition(0.286, 0.62));
    CHECK(bench.told.tones.empty());
    CHECK(bench.told.words.isEmpty());
    CHECK(bench.told.shakes == 0);
}

TEST_CASE("Where the device has no voice, tones stand in for it", "[feedback]")
{
    Heard bench(false);
    bench.preferences.setSound(Preferences::Voice);
    bench.view.addRepetition(repetition(0.286, 0.62));
    CHECK(bench.told.tones == std::vector{Cue::Inside});
    CHECK(bench.told.words.isEmpty());
}

TEST_CASE("The screen stays on while a lift is open, and no longer", "[feedback]")
{
    Heard bench;
    bench.view.showSensor(BenchViewModel::Ready);
    CHECK(bench.told.awake);
    bench.view.leaveLift();
    CHECK_FALSE(bench.told.awake);
}

TEST_CASE("Cues are short, begin and end in silence, are not clipped, and no two are the same", "[feedback]")
{
    std::vector<std::vector<std::int16_t>> tones;
    for (const auto cue : {Cue::Inside, Cue::Sooner, Cue::Later, Cue::NoEvidence, Cue::Stop, Cue::Begun, Cue::Lost}) {
        const auto samples = feedback::tone(cue);
        REQUIRE(samples.size() > 1000);
        CHECK(samples.size() < 0.7 * feedback::toneRate);
        CHECK(std::abs(samples.front()) < 100);
        CHECK(std::abs(samples.back()) < 100);
        int loudest = 0;
        for (const auto sample : samples)
            loudest = std::max(loudest, std::abs(static_cast<int>(sample)));
        CHECK(loudest > 10000);
        CHECK(loudest < 32767);
        CHECK(std::ranges::find(tones, samples) == tones.end());
        tones.push_back(samples);
        CHECK_FALSE(feedback::shakes(cue).empty());
    }
}

TEST_CASE("The device's own speaker does no harm where there is no loudspeaker and no voice", "[feedback]")
{
    const auto speaker = feedback::deviceSpeaker();
    speaker->play(Cue::Stop);
    speaker->play(Cue::Inside); // before the first has ended
    WARN("this machine has " << (speaker->hasVoice() ? "a voice" : "no voice"));
    speaker->say(QStringLiteral("286"));
    SUCCEED("a crash would have failed it");
}
