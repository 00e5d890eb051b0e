// The way to the radio's thread, safe from any thread and also after the radio is gone: then nothing happens.
#pragma once

#include <functional>
#include <memory>
#include <mutex>

#include <QObject>

namespace fleetrung::ble
{

class Central;

class Board
{
public:
    /// `there` lives on the radio's thread; `central` is touched on that thread alone.
    Board(QObject* there, std::shared_ptr<std::unique_ptr<Central>> central)
        : there_(there), central_(std::move(central))
    {
    }

    void post(std::function<void(Central&)> work)
    {
        const std::scoped_lock lock(mutex_);
        if (there_)
            QMetaObject::invokeMethod(
                there_,
                [central = central_, work = std::move(work)] {
                    if (*central)
                        work(**central);
                },
                Qt::QueuedConnection);
    }
    void close()
    {
        const std::scoped_lock lock(mutex_);
        there_ = nullptr;
    }

private:
    std::mutex mutex_;
    QObject* there_;
    std::shared_ptr<std::unique_ptr<Central>> central_;
};

} // namespace fleetrung::ble
