// The logbook on a thread of its own: pages ask, answers come back on the thread of the interface. Nothing that touches
// the disk or analyses a set ever runs where the screen is drawn.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <utility>

#include <QObject>
#include <QPointer>
#include <QThread>

#include "mobile/logbook/logbook.hpp"

namespace fleetrung::views
{

class LogThread : public QObject
{
    Q_OBJECT

public:
    /// Opening happens on the thread, too; where it fails every later work is answered with that error.
    LogThread(const store::StorePaths& paths, const Identifier& device, QObject* parent = nullptr);
    ~LogThread() override;

    /// `work(Logbook&)` gives an Expected<T> on the thread of the logbook; `done(Expected<T>)` gets it here. Works are
    /// done in the order in which they were asked for. Nothing is called once `receiver` is gone.
    template <class Work, class Done> void run(QObject* receiver, Work work, Done done)
    {
        QPointer<QObject> guard(receiver);
        post([this, guard, work = std::move(work), done = std::move(done)]() mutable {
            auto answer = std::make_shared<decltype(work(*logbook_))>(attempt(work));
            deliver([guard, answer, done = std::move(done)]() mutable {
                if (guard)
                    done(std::move(*answer));
            });
        });
    }

    /// Another logbook from now on; what was asked for before is done in the one before.
    void reopen(const store::StorePaths& paths);

    /// Waits until everything asked so far is done and answered: for tests, pictures and the end of the program.
    void settle();

private:
    template <class Work> auto attempt(Work& work) -> decltype(work(std::declval<logbook::Logbook&>()))
    {
        if (!logbook_)
            return tl::unexpected<Error>(*openError_);
        return work(*logbook_);
    }
    void post(std::function<void()> work);
    void deliver(std::function<void()> answer);

    Identifier device_;
    QThread thread_;
    QObject* there_; ///< lives on thread_: what is posted to it runs there
    std::optional<logbook::Logbook> logbook_;
    std::optional<Error> openError_;
    int waiting_ = 0;
};

} // namespace fleetrung::views
