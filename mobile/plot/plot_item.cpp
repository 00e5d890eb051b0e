#include "mobile/plot/plot_item.hpp"

#include <QAccessible>
#include <QQmlContext>
#include <QQmlEngine>
#include <QQmlProperty>

#include "mobile/plot/painter.hpp"

namespace fleetrung::plot
{

PlotItem::PlotItem(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &PlotItem::plotChanged, this, &PlotItem::refresh);
    connect(this, &PlotItem::plotChanged, this, &PlotItem::tellScreenReaders);
    connect(this, &PlotItem::lookChanged, this, &PlotItem::refresh);
}

void PlotItem::setPlot(const PlotValue& value)
{
    value_ = value;
    emit plotChanged();
}

void PlotItem::setDark(bool dark)
{
    if (dark == dark_)
        return;
    dark_ = dark;
    emit lookChanged();
}

void PlotItem::setTextSize(qreal size)
{
    if (size == textSize_)
        return;
    textSize_ = size;
    emit lookChanged();
}

QPointF PlotItem::placeAt(qreal x, qreal y) const
{
    const Point place = plot::placeAt(value_.plot, QRectF(0, 0, width(), height()), textSize_, QPointF(x, y));
    return {place.x, place.y};
}

void PlotItem::paint(QPainter* painter)
{
    Look look;
    look.ground = dark_ ? Ground::Dark : Ground::Light;
    look.textSize = textSize_;
    plot::paint(value_.plot, *painter, QRectF(0, 0, width(), height()), look);
}

void PlotItem::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickPaintedItem::geometryChange(now, before);
    if (now.width() != before.width())
        refresh();
}

void PlotItem::componentComplete()
{
    QQuickPaintedItem::componentComplete();
    refresh();
    tellScreenReaders();
}

/// Through the attached property, as a page would write it: its class is private to Qt Quick.
void PlotItem::tellScreenReaders()
{
    auto* context = qmlContext(this);
    if (!isComponentComplete() || context == nullptr)
        return;
    QQmlProperty name(this, QStringLiteral("Accessible.name"), context);
    if (name.read().toString() != told_)
        return;
    told_ = summary();
    name.write(told_);
    QQmlProperty(this, QStringLiteral("Accessible.role"), context).write(QAccessible::Graphic);
}

void PlotItem::refresh()
{
    if (!isComponentComplete())
        return;
    if (width() > 0)
        setImplicitHeight(suitableHeight(value_.plot, width(), textSize_));
    update();
}

} // namespace fleetrung::plot
