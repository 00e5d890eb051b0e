#include "mobile/views/live_session.hpp"

#include <utility>

namespace fleetrung::views
{

/// What lives on the session's thread.
class LiveSession::Running
{
public:
    /// `tell` brings a call to the thread of the interface.
    using Tell = std::function<void(std::function<void(LiveSession&)>)>;

    Running(const MakeSource& make, const reps::Lift& lift, Tell tell)
        : source_(make()), set_(lift, source_->traits(), source_->hasGyroscope()), tell_(std::move(tell))
    {
        source_->start(
            {.stateChanged = [this](sensor::LinkState state) { onState(state); },
             .sample = [this](const motion::Sample& sample, const motion::Receipt&) { onSample(sample); },
             .failed =
                 [this](const Error& error) {
                     tell_([text = QString::fromStdString(describe(error))](LiveSession& s) { emit s.failed(text); });
                 }});
    }
    ~Running() { source_->stop(); }

    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;

    [[nodiscard]] const motion::Recording& recording() const { return set_.recording(); }

private:
    void onState(sensor::LinkState state)
    {
        tell_([state](LiveSession& session) { emit session.stateChanged(state); });
    }

    void onSample(const motion::Sample& sample)
    {
        for (const auto& repetition : set_.add(sample))
            tell_([repetition](LiveSession& session) { emit session.repetitionFound(repetition); });
        const auto& samples = set_.recording().samples;
        if (!samples.empty() && samples.back().time - samples[kept_].time >= 1.0)
            handPiece();
    }

    void handPiece()
    {
        const auto& all = set_.recording();
        motion::Recording piece{
            .samples = {all.samples.begin() + static_cast<std::ptrdiff_t>(kept_), all.samples.end()},
            .hasGyroscope = all.hasGyroscope,
            .sensor = all.sensor};
        kept_ = all.samples.size() - 1;
        piece.samples.pop_back(); // the last one begins the next piece
        tell_([ordinal = pieces_++, piece = std::move(piece)](LiveSession& session) {
            emit session.pieceReady(ordinal, piece);
        });
    }

    std::unique_ptr<sensor::SampleSource> source_;
    reps::LiveSet set_;
    Tell tell_;
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

void LiveSession::begin(MakeSource make, const reps::Lift& lift)
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
    post([make = std::move(make), &lift, tell = std::move(tell)](std::unique_ptr<Running>& running) {
        running.reset();
        running = std::make_unique<Running>(make, lift, tell);
    });
}

void LiveSession::end()
{
    const int turn = ++*turn_;
    post([this, turn, now = turn_](std::unique_ptr<Running>& running) {
        if (!running)
            return;
        const motion::Recording recording = running->recording();
        running.reset();
        QMetaObject::invokeMethod(
            this,
            [this, turn, now, recording] {
                if (turn == *now)
                    emit recorded(recording);
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
