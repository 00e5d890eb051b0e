#include "mobile/views/bench_feedback.hpp"

namespace fleetrung::views
{
namespace
{

feedback::Cue cueOf(BenchViewModel::Verdict verdict)
{
    switch (verdict) {
    case BenchViewModel::Inside:
        return feedback::Cue::Inside;
    case BenchViewModel::Sooner:
        return feedback::Cue::Sooner;
    case BenchViewModel::Later:
        return feedback::Cue::Later;
    case BenchViewModel::None:
    case BenchViewModel::NoEvidence:
        break;
    }
    return feedback::Cue::NoEvidence;
}

} // namespace

BenchFeedback::BenchFeedback(const BenchViewModel* bench, const Preferences* preferences,
                             std::unique_ptr<feedback::Speaker> speaker, std::unique_ptr<feedback::DeviceBody> body,
                             QObject* parent)
    : QObject(parent), bench_(bench), preferences_(preferences), speaker_(std::move(speaker)), body_(std::move(body)),
      before_(bench->sensor())
{
    connect(bench, &BenchViewModel::repetitionAdded, this, &BenchFeedback::tellRepetition);
    connect(bench, &BenchViewModel::stopReached, this, [this] { give(feedback::Cue::Stop, tr("Stop the set")); });
    connect(bench, &BenchViewModel::setChanged, this, &BenchFeedback::watchSensor);
}

void BenchFeedback::tellRepetition()
{
    if (bench_->stopNow()) // the stop is told by itself, and alone
        return;
    const QString number = bench_->number();
    switch (bench_->verdict()) {
    case BenchViewModel::NoEvidence:
        return give(feedback::Cue::NoEvidence, tr("no evidence"));
    case BenchViewModel::Sooner:
        return give(cueOf(bench_->verdict()), tr("%1, sooner").arg(number));
    case BenchViewModel::Later:
        return give(cueOf(bench_->verdict()), tr("%1, later").arg(number));
    case BenchViewModel::Inside:
    case BenchViewModel::None:
        break;
    }
    give(cueOf(bench_->verdict()), number); // inside the band the number alone is good news
}

void BenchFeedback::watchSensor()
{
    const auto now = bench_->sensor();
    if (now != before_) {
        if (now == BenchViewModel::Lost)
            give(feedback::Cue::Lost, tr("Sensor lost"));
        else if (now == BenchViewModel::Streaming && before_ == BenchViewModel::Ready)
            give(feedback::Cue::Begun, tr("Begin"));
        before_ = now;
    }
    body_->keepAwake(bench_->liftOpen());
}

void BenchFeedback::give(feedback::Cue cue, const QString& words)
{
    if (preferences_->shakes())
        body_->shake(feedback::shakes(cue));
    if (preferences_->sound() == Preferences::Silent)
        return;
    // A voice says what a tone would, and two sounds at once are understood by nobody: only warnings have both.
    const bool warns = cue == feedback::Cue::Stop || cue == feedback::Cue::Lost;
    const bool speaks = preferences_->sound() == Preferences::Voice && speaker_->hasVoice();
    if (!speaks || warns)
        speaker_->play(cue);
    if (speaks)
        speaker_->say(words);
}

} // namespace fleetrung::views
