// Makes the demo's logbook on a thread of its own, to be watched and cancelled.
#pragma once

#include <atomic>

#include <QObject>
#include <QThread>

#include "mobile/views/demo_hand.hpp"

namespace fleetrung::views
{

class DemoMaker : public QObject
{
    Q_OBJECT

public:
    explicit DemoMaker(QObject* parent = nullptr) : QObject(parent) {}
    ~DemoMaker() override;

    /// Nothing where one is being made already. What was left of an earlier attempt is removed first.
    void start(const DemoHand& hand);
    void cancel() { cancelled_ = true; }
    [[nodiscard]] bool running() const { return static_cast<bool>(thread_); }

    [[nodiscard]] static store::StorePaths pathsIn(const QString& folder);
    static void remove(const QString& folder);

signals:
    void progressed(int percent);
    void made(fleetrung::CivilDate day);
    void failed(const fleetrung::Error& error); ///< Code::Cancelled where that was asked for

private:
    void finish(const Expected<CivilDate>& day);

    std::unique_ptr<QThread> thread_;
    std::atomic<bool> cancelled_{false};
    QString folder_;
};

} // namespace fleetrung::views
