#include "mobile/views/log_thread.hpp"

#include <QCoreApplication>

#include "mobile/views/new_identifier.hpp"

namespace fleetrung::views
{

LogThread::LogThread(const store::StorePaths& paths, const Identifier& device, QObject* parent)
    : QObject(parent), device_(device), there_(new QObject)
{
    there_->moveToThread(&thread_);
    connect(&thread_, &QThread::finished, there_, &QObject::deleteLater);
    thread_.setObjectName(QStringLiteral("logbook"));
    thread_.start();
    reopen(paths);
}

void LogThread::reopen(const store::StorePaths& paths)
{
    post([this, paths] {
        logbook_.reset(); // closed before the other is opened
        openError_.reset();
        auto opened = logbook::Logbook::open(paths, device_, newIdentifier);
        if (opened)
            logbook_.emplace(std::move(*opened));
        else
            openError_ = opened.error();
        deliver([] {});
    });
}

LogThread::~LogThread()
{
    // Blocking: what was asked for before is done first, then the files are closed, then the thread ends.
    QMetaObject::invokeMethod(
        there_, [this] { logbook_.reset(); }, Qt::BlockingQueuedConnection);
    thread_.quit();
    thread_.wait();
}

void LogThread::post(std::function<void()> work)
{
    ++waiting_;
    QMetaObject::invokeMethod(there_, std::move(work), Qt::QueuedConnection);
}

void LogThread::deliver(std::function<void()> answer)
{
    QMetaObject::invokeMethod(
        this,
        [this, answer = std::move(answer)] {
            --waiting_;
            answer();
        },
        Qt::QueuedConnection);
}

void LogThread::settle()
{
    while (waiting_ > 0)
        QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 50);
}

} // namespace fleetrung::views
