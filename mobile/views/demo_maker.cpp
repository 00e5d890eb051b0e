#include "mobile/views/demo_maker.hpp"

#include <QDir>
#include <QMetaObject>

namespace fleetrung::views
{

DemoMaker::~DemoMaker()
{
    if (!thread_)
        return;
    cancelled_ = true;
    thread_->wait();
}

store::StorePaths DemoMaker::pathsIn(const QString& folder)
{
    const QDir dir(folder);
    return {.rows = dir.filePath(QStringLiteral("athletes.fleetrung")).toStdString(),
            .captures = dir.filePath(QStringLiteral("captures.fleetrung")).toStdString()};
}

void DemoMaker::remove(const QString& folder)
{
    if (!folder.isEmpty())
        QDir(folder).removeRecursively();
}

void DemoMaker::start(const DemoHand& hand)
{
    if (thread_ || !hand.make)
        return;
    folder_ = hand.folder;
    cancelled_ = false;
    remove(folder_);
    if (!QDir().mkpath(folder_)) {
        emit failed({.code = Code::StoreFailed, .place = folder_.toStdString(), .message = "cannot be made"});
        return;
    }
    thread_.reset(QThread::create([this, make = hand.make, paths = pathsIn(folder_)] {
        const auto day = make(paths, [this](double share) {
            emit progressed(static_cast<int>(share * 100));
            return !cancelled_;
        });
        QMetaObject::invokeMethod(
            this, [this, day] { finish(day); }, Qt::QueuedConnection);
    }));
    thread_->start();
}

void DemoMaker::finish(const Expected<CivilDate>& day)
{
    thread_->wait();
    thread_.reset();
    if (day)
        return emit made(*day);
    remove(folder_); // nothing half made stays
    emit failed(day.error());
}

} // namespace fleetrung::views
