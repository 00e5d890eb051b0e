#include "mobile/views/live_session.hpp"

#include <algorithm>
#include <deque>
#include <optional>
#include <utility>

#include "engine/reps/bar_watch.hpp"
#include "mobile/views/engine_words.hpp"

namespace fleetrung::views
{

namespace
{

/// Samples and how they came, as one recording; without receipts where the times came with the data.
motion::Recording recordingOf(std::vector<motion::Sample> samples, std::vector<motion::Receipt> receipts,
                              const sensor::SampleSource& source)
{
    motion::Recording recording;
    recording.samples = std::move(samples);
    recording.hasGyroscope = source.hasGyroscope();
    recording.sensor = source.traits();
    recording.clockFit = source.clockFit();
    if (std::ranges::any_of(receipts, [](const motion::Receipt& one) { return one != motion::Receipt{}; }))
        recording.receipts = std::move(receipts);
    return recording;
}

/// Records what a sensor beside the set's own sends.
class Beside
{
public:
    explicit Beside(const LiveSession::MakeSource& make) : source_(make())
    {
        source_->start({.stateChanged = [](sensor::LinkState) {},
                        .sample =
                            [this](const motion::Sample& sample, const motion::Receipt& receipt) {
                                if (!samples_.empty() && sample.time <= samples_.back().time)
                                    return;
                                samples_.push_back(sample);
                                receipts_.push_back(receipt);
                            },
                        .failed = [](const Error&) {}}); // the set goes on without it
    }
    ~Beside() { source_->stop(); }

    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;

    [[nodiscard]] motion::Recording recording() const { return recordingOf(samples_, receipts_, *source_); }
    /// Forgets what came longer ago than that.
    void keepLast(double seconds)
    {
        const auto old = [&](const motion::Sample& s) { return s.time < samples_.back().time - seconds; };
        const auto gone = std::ranges::find_if_not(samples_, old) - samples_.begin();
        samples_.erase(samples_.begin(), samples_.begin() + gone);
        receipts_.erase(receipts_.begin(), receipts_.begin() + gone);
    }

private:
    std::unique_ptr<sensor::SampleSource> source_;
    std::vector<motion::Sample> samples_;
    std::vector<motion::Receipt> receipts_;
};

} // namespace

/// What lives on the session's thread.
class LiveSession::Running
{
public:
    /// `tell` brings a call to the thread of the interface.
    using Tell = std::function<void(std::function<void(LiveSession&)>)>;

    /// Listening: the set begins when the bar moves.
    Running(const MakeSource& make, const reps::Lift& lift, const std::vector<MakeSource>& beside, bool listening,
            double restToEnd, Tell tell)
        : source_(make()), lift_(lift), listening_(listening), restToEnd_(restToEnd), tell_(std::move(tell))
    {
        for (const auto& other : beside)
            beside_.push_back(std::make_unique<Beside>(other));
        if (!listening_)
            beginSet();
        source_->start({.stateChanged = [this](sensor::LinkState state) { onState(state); },
                        .sample = [this](const motion::Sample& sample,
                                         const motion::Receipt& receipt) { onSample(sample, receipt); },
                        .failed =
                            [this](const Error& error) {
                                tell_([text = errorText(error)](LiveSession& s) { emit s.failed(text); });
                            }});
    }
    ~Running() { source_->stop(); }

    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;

    [[nodiscard]] motion::Recording recording() const
    {
        return recordingOf(set_ ? set_->recording().samples : std::vector<motion::Sample>(), receipts_, *source_);
    }
    [[nodiscard]] std::vector<motion::Recording> besides() const
    {
        std::vector<motion::Recording> all;
        for (const auto& other : beside_)
            all.push_back(other->recording());
        return all;
    }
    void endAfterRest(double seconds) { restToEnd_ = seconds; }

private:
    static constexpr double leadIn = 3.0;         // s before the bar moved: stillness to measure from
    static constexpr double restWithoutSet = 5.0; // s; what moved the bar was no set

    void onState(sensor::LinkState state)
    {
        tell_([state](LiveSession& session) { emit session.stateChanged(state); });
    }

    void onSample(const motion::Sample& sample, const motion::Receipt& receipt)
    {
        watch_.add(sample);
        if (set_)
            return addToSet(sample, receipt);
        waiting_.emplace_back(sample, receipt);
        while (waiting_.front().first.time < sample.time - leadIn)
            waiting_.pop_front();
        if (!watch_.moves())
            return;
        beginSet();
        for (const auto& [earlier, itsReceipt] : waiting_)
            addToSet(earlier, itsReceipt);
        waiting_.clear();
    }

    void beginSet()
    {
        set_.emplace(lift_, source_->traits(), source_->hasGyroscope());
        for (const auto& other : beside_)
            other->keepLast(leadIn);
    }

    void forgetSet()
    {
        set_.reset();
        receipts_.clear();
        kept_ = 0;
    }

    void addToSet(const motion::Sample& sample, const motion::Receipt& receipt)
    {
        const auto& samples = set_->recording().samples;
        const std::size_t before = samples.size();
        for (const auto& repetition : set_->add(sample))
            tell_([repetition](LiveSession& session) { emit session.repetitionFound(repetition); });
        if (samples.size() > before) // a late one is left out
            receipts_.push_back(receipt);
        const bool any = !set_->announced().empty();
        if (listening_ && !any) {
            if (watch_.rested() > restWithoutSet)
                forgetSet();
            return; // nothing is kept of what may be no set
        }
        if (!samples.empty() && samples.back().time - samples[kept_].time >= 1.0)
            handPiece();
        tellRest(any);
    }

    void tellRest(bool any)
    {
        const bool rests = any && restToEnd_ > 0 && watch_.rested() >= restToEnd_;
        if (rests && !toldRest_)
            tell_([](LiveSession& session) { emit session.barRested(); });
        toldRest_ = rests;
    }

    void handPiece()
    {
        const auto& samples = set_->recording().samples;
        const auto from = static_cast<std::ptrdiff_t>(kept_);
        kept_ = samples.size() - 1; // the last one begins the next piece
        const motion::Recording piece = recordingOf({samples.begin() + from, samples.end() - 1},
                                                    {receipts_.begin() + from, receipts_.end() - 1}, *source_);
        tell_([ordinal = pieces_++, piece](LiveSession& session) { emit session.pieceReady(ordinal, piece); });
    }

    std::unique_ptr<sensor::SampleSource> source_;
    const reps::Lift& lift_;
    std::optional<reps::LiveSet> set_; ///< none while the bar is listened to
    reps::BarWatch watch_;
    std::deque<std::pair<motion::Sample, motion::Receipt>> waiting_; ///< the last `leadIn` before the set
    bool listening_;
    bool toldRest_ = false;
    double restToEnd_;
    Tell tell_;
    std::vector<motion::Receipt> receipts_; ///< one a sample of the set
    std::vector<std::unique_ptr<Beside>> beside_;
    std::size_t kept_ = 0;
    int pieces_ = 0;
};

LiveSession::LiveSession(QObject* parent)
    : QObject(parent), there_(new QObject), running_(std::make_shared<std::unique_ptr<Running>>()),
      turn_(std::make_shared<std::atomic<int>>(0))
{
    there_->moveToThread(&thread_);
    connect(&thread_, &QThread::finished, there_, &QObject::deleteLater);
    thread_.setObjectName(QStringLiteral("live set"));
    thread_.start();
}

LiveSession::~LiveSession()
{
    // Blocking: the source has timers, which must end on their own thread.
    QMetaObject::invokeMethod(
        there_, [this] { running_->reset(); }, Qt::BlockingQueuedConnection);
    thread_.quit();
    thread_.wait();
}

void LiveSession::post(std::function<void(std::unique_ptr<Running>&)> work)
{
    QMetaObject::invokeMethod(
        there_, [running = running_, work = std::move(work)] { work(*running); }, Qt::QueuedConnection);
}

void LiveSession::begin(MakeSource make, const reps::Lift& lift, std::vector<MakeSource> beside)
{
    run(std::move(make), lift, std::move(beside), false);
}

void LiveSession::listen(MakeSource make, const reps::Lift& lift, std::vector<MakeSource> beside)
{
    run(std::move(make), lift, std::move(beside), true);
}

void LiveSession::endAfterRest(double seconds)
{
    if (seconds == restToEnd_)
        return;
    restToEnd_ = seconds;
    post([seconds](std::unique_ptr<Running>& running) {
        if (running)
            running->endAfterRest(seconds);
    });
}

void LiveSession::run(MakeSource make, const reps::Lift& lift, std::vector<MakeSource> beside, bool listening)
{
    const int turn = ++*turn_;
    auto tell = [this, turn, now = turn_](std::function<void(LiveSession&)> call) {
        QMetaObject::invokeMethod(
            this,
            [this, turn, now, call = std::move(call)] {
                if (turn == *now)
                    call(*this);
            },
            Qt::QueuedConnection);
    };
    post([make = std::move(make), &lift, beside = std::move(beside), listening, rest = restToEnd_,
          tell = std::move(tell)](std::unique_ptr<Running>& running) {
        running.reset();
        running = std::make_unique<Running>(make, lift, beside, listening, rest, tell);
    });
}

void LiveSession::end()
{
    const int turn = ++*turn_;
    post([this, turn, now = turn_](std::unique_ptr<Running>& running) {
        if (!running)
            return;
        const motion::Recording recording = running->recording();
        const auto beside = running->besides();
        running.reset();
        QMetaObject::invokeMethod(
            this,
            [this, turn, now, recording, beside] {
                if (turn == *now)
                    emit recorded(recording, beside);
            },
            Qt::QueuedConnection);
    });
}

void LiveSession::drop()
{
    ++*turn_;
    post([](std::unique_ptr<Running>& running) { running.reset(); });
}

} // namespace fleetrung::views
