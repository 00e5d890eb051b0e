#include "mobile/app/photographer.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QImage>
#include <QQuickItem>

namespace fleetrung::app
{
namespace
{

constexpr int sheetMoves = 350; // ms

} // namespace

void settle(int milliseconds)
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < milliseconds)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
}

void Photographer::take(const QString& name)
{
    save(name + QStringLiteral("-dark"), views::Preferences::Dark, 1);
    save(name + QStringLiteral("-light"), views::Preferences::Light, 1);
    save(name + QStringLiteral("-large"), views::Preferences::Dark, 2);
}

void Photographer::place(int index)
{
    window_.setProperty("place", index);
    settle();
}

void Photographer::part(int index)
{
    if (auto* squad = window_.findChild<QObject*>(QStringLiteral("squadPage")))
        squad->setProperty("part", index);
    settle(200);
}

bool Photographer::call(const QString& object, const char* method)
{
    auto* sheet = window_.findChild<QObject*>(object);
    if (!sheet)
        return false;
    QMetaObject::invokeMethod(sheet, method);
    settle(sheetMoves);
    return true;
}

void Photographer::takePart(const QString& object, const QString& name)
{
    part_ = object;
    take(name);
    part_.clear();
    scrollTo(object, true);
}

void Photographer::scrollTo(const QString& object, bool back)
{
    auto* item = window_.findChild<QQuickItem*>(object);
    for (auto* above = item; above != nullptr; above = above->parentItem()) {
        const auto content = above->property("contentItem").value<QQuickItem*>();
        if (content == nullptr || !above->property("contentY").isValid())
            continue;
        const double last = std::max(0.0, above->property("contentHeight").toDouble() - above->height());
        above->setProperty("contentY", back ? 0 : std::min(last, item->mapToItem(content, QPointF(0, 0)).y() - 8));
        settle(200);
        return;
    }
}

void Photographer::tap(const QString& object)
{
    call(object, "clicked");
}

void Photographer::openSheet(const QString& object)
{
    call(object, "open");
}

void Photographer::closeSheet(const QString& object)
{
    call(object, "close");
}

void Photographer::takeSheet(const QString& object, const QString& name)
{
    if (!call(object, "open"))
        return;
    take(name);
    closeSheet(object);
}

void Photographer::takeSheetOver(const QString& below, const QString& object, const QString& name)
{
    if (!call(below, "open"))
        return;
    takeSheet(object, name);
    closeSheet(below);
}

void Photographer::takeFormOver(const QString& below, const QString& object, int row, const QString& name)
{
    auto* sheet = window_.findChild<QObject*>(object);
    if (!sheet || !call(below, "open"))
        return;
    QMetaObject::invokeMethod(sheet, "edit", Q_ARG(int, row));
    settle(sheetMoves);
    take(name);
    closeSheet(object);
    closeSheet(below);
}

void Photographer::save(const QString& name, views::Preferences::Appearance appearance, double textScale)
{
    app_.preferences()->setAppearance(appearance);
    app_.preferences()->setTextScale(textScale);
    settle();
    if (!part_.isEmpty())
        scrollTo(part_);
    if (window_.grabWindow().save(QDir(folder_).filePath(name + QStringLiteral(".png"))))
        ++saved_;
}

} // namespace fleetrung::app
