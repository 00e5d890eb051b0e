#include "mobile/views/live_session.hpp"

#include <algorithm>
#include <utility>

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

    Running(const MakeSource& make, const reps::Lift& lift, const std::vector<MakeSource>& beside, Tell tell)
        : source_(make()), set_(lift, source_->traits(), source_->hasGyroscope()), tell_(std::move(tell))
    {
        for (const auto& other : beside)
            beside_.push_back(std::make_unique<Beside>(other));
        source_->start(
            {.stateChanged = [this](sensor::LinkState state) { onState(state); },
             .sample = [this](const motion::Sample& sample,
                              const motion::Receipt& receipt) { onSample(sample, receipt); },
             .failed =
                 [this](const Error& error) {
                     tell_([text = QString::fromStdString(describe(error))](LiveSession& s) { emit s.failed(text); });
                 }});
    }
    ~Running() { source_->stop(); }

    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;

    [[nodiscard]] motion::Recording recording() const
    {
        return recordingOf(set_.recording().samples, receipts_, *source_);
    }
    [[nodiscard]] std::vector<motion::Recording> besides() const
    {
        std::vector<motion::Recording> all;
        for (const auto& other : beside_)
            all.push_back(other->recording());
        return all;
    }

private:
    void onState(sensor::LinkState state)
    {
        tell_([state](LiveSession& session) { emit session.stateChanged(state); });
    }

    void onSample(const motion::Sample& sample, const motion::Receipt& receipt)
    {
        const auto& samples = set_.recording().samples;
        const std::size_t before = samples.size();
        for (const auto& repetition : set_.add(sample))
            tell_([repetition](LiveSession& session) { emit session.repetitionFound(repetition); });
        if (samples.size() > before) // a late one is left out
            receipts_.push_back(receipt);
        if (!samples.empty() && samples.back().time - samples[kept_].time >= 1.0)
            handPiece();
    }

    void handPiece()
    {
        const auto& samples = set_.recording().samples;
        const auto from = static_cast<std::ptrdiff_t>(kept_);
        kept_ = samples.size() - 1; // the last one begins the next piece
        const motion::Recording piece = recordingOf({samples.begin() + from, samples.end() - 1},
                                                    {receipts_.begin() + from, receipts_.end() - 1}, *source_);
        tell_([ordinal = pieces_++, piece](LiveSession& session) { emit session.pieceReady(ordinal, piece); });
    }

    std::unique_ptr<sensor::SampleSource> source_;
    reps::LiveSet set_;
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
    post([make = std::move(make), &lift, beside = std::move(beside),
          tell = std::move(tell)](std::unique_ptr<Running>& running) {
        running.reset();
        running = std::make_unique<Running>(make, lift, beside, tell);
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
