#include "qml/progress_ring.hpp"

#include <algorithm>

#include <QPainter>

namespace fleetrung::ui
{
namespace
{

constexpr double thickness = 9;

} // namespace

ProgressRing::ProgressRing(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setImplicitSize(220, 220);
    setAntialiasing(true);
    connect(this, &ProgressRing::changed, this, [this] { update(); });
}

void ProgressRing::paint(QPainter* painter)
{
    const double side = std::min(width(), height()) - thickness;
    const QRectF circle((width() - side) / 2, (height() - side) / 2, side, side);
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(m_track, thickness));
    painter->drawEllipse(circle);
    painter->setPen(QPen(m_color, thickness, Qt::SolidLine, Qt::RoundCap));
    constexpr int degree = 16; // of drawArc
    if (m_share > 0)
        painter->drawArc(circle, 90 * degree, static_cast<int>(-360 * degree * std::clamp(m_share, 0.0, 1.0)));
}

void ProgressRing::setShare(double share)
{
    if (share == m_share)
        return;
    m_share = share;
    emit changed();
}

void ProgressRing::setColor(const QColor& color)
{
    if (color == m_color)
        return;
    m_color = color;
    emit changed();
}

void ProgressRing::setTrack(const QColor& track)
{
    if (track == m_track)
        return;
    m_track = track;
    emit changed();
}

} // namespace fleetrung::ui
