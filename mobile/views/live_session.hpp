// A running set: the source and the repetition finder on a thread of their own, repetitions announced on the thread of
// the interface. Other sensors that stream beside it (a shoe's) are recorded with it.
#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <vector>

#include <QObject>
#include <QThread>

#include "engine/reps/live_set.hpp"
#include "engine/sensor/sample_source.hpp"

namespace fleetrung::views
{

class LiveSession : public QObject
{
    Q_OBJECT

public:
    using MakeSource = std::function<std::unique_ptr<sensor::SampleSource>()>;

    explicit LiveSession(QObject* parent = nullptr);
    ~LiveSession() override;

    /// The source is made, started and stopped on the session's thread, and so are those `beside` it. A set under way
    /// is dropped first.
    void begin(MakeSource make, const reps::Lift& lift, std::vector<MakeSource> beside = {});
    /// Listens to the bar, and begins the set by itself: what was sent from 3 s before it moved is part of it. Nothing
    /// is said of it before the first repetition; where the bar comes to rest without one it listens again.
    void listen(MakeSource make, const reps::Lift& lift, std::vector<MakeSource> beside = {});
    /// From now on `barRested` is said once the bar has rested for that long [s]; 0: never.
    void endAfterRest(double seconds);
    /// Stops the source and hands over what was recorded (signal `recorded`).
    void end();
    /// Stops the source and forgets.
    void drop();

signals:
    void stateChanged(fleetrung::sensor::LinkState state);
    void repetitionFound(const fleetrung::reps::Repetition& repetition);
    void pieceReady(int ordinal, const fleetrung::motion::Recording& piece); ///< about once a second of signal
    /// `beside`: one for each of the sensors beside it, in their order; empty where nothing came.
    void recorded(const fleetrung::motion::Recording& recording,
                  const std::vector<fleetrung::motion::Recording>& beside);
    void failed(const QString& message);
    void barRested(); ///< after at least one repetition; once a rest

private:
    class Running;

    void run(MakeSource make, const reps::Lift& lift, std::vector<MakeSource> beside, bool listening);
    void post(std::function<void(std::unique_ptr<Running>&)> work);

    QThread thread_;
    QObject* there_;
    std::shared_ptr<std::unique_ptr<Running>> running_; ///< touched on thread_ alone
    double restToEnd_ = 0;                              ///< s
    std::shared_ptr<std::atomic<int>> turn_;            ///< what an earlier set still has on its way is not shown
};

} // namespace fleetrung::views
