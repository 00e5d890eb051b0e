#include "qml/pose_drawing.hpp"

#include <cmath>

#include <QPainter>
#include <QPainterPath>

#include "qml/pose_box.hpp"

namespace fleetrung::ui
{
namespace
{

constexpr double pi = 3.14159265358979;
/// How much is in sight, in units of the box.
constexpr double view = 3.5;
constexpr double viewOfTurn = 4.2;
constexpr double around = 1.45;

bool turns(PoseDrawing::Pose pose)
{
    return pose >= PoseDrawing::TurnFlat && pose <= PoseDrawing::TurnOnEnd;
}

bool raises(PoseDrawing::Pose pose)
{
    return pose >= PoseDrawing::Raise;
}

/// Which of the six ways it lies in: turns are flat, on the long edge and on the short end; raises are flat.
int faceOf(PoseDrawing::Pose pose)
{
    if (pose == PoseDrawing::TurnOnEdge)
        return PoseDrawing::LongEdge;
    if (pose == PoseDrawing::TurnOnEnd)
        return PoseDrawing::ShortEnd;
    return pose < PoseDrawing::TurnFlat ? pose : PoseDrawing::MainSideUp;
}

QColor lit(const QColor& colour, double light)
{
    return QColor::fromRgbF(static_cast<float>(colour.redF() * light), static_cast<float>(colour.greenF() * light),
                            static_cast<float>(colour.blueF() * light));
}

void arrowHead(QPainter& painter, const QPointF& tip, const QPointF& towards, double size)
{
    const double length = std::hypot(towards.x(), towards.y());
    const QPointF along = towards / length * size;
    const QPointF across{-along.y() * 0.6, along.x() * 0.6};
    QPainterPath head(tip + along * 0.5);
    head.lineTo(tip - along * 0.6 + across);
    head.lineTo(tip - along * 0.6 - across);
    head.closeSubpath();
    painter.fillPath(head, painter.pen().color());
}

void drawArc(QPainter& painter, double from, double to, bool head)
{
    const QPolygonF points = circleSeen(around, 0, from, to);
    painter.drawPolyline(points);
    if (head)
        arrowHead(painter, points.last(), points.last() - points[points.size() - 2], 0.34);
}

void drawBox(QPainter& painter, const PoseDrawing& drawing, const BoxSeen& box)
{
    const QColor& line = drawing.line();
    painter.setPen(QPen(line, 0.05, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (const auto& side : box.sides) {
        painter.setBrush(lit(side.main ? drawing.mark() : drawing.body(), side.light));
        painter.drawPolygon(side.outline);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(drawing.dot());
    painter.drawPolygon(box.dot);
    painter.setBrush(Qt::NoBrush);
}

} // namespace

PoseDrawing::PoseDrawing(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setImplicitSize(160, 160);
    setAntialiasing(true);
    connect(this, &PoseDrawing::changed, this, [this] { update(); });
}

void PoseDrawing::paint(QPainter* painter)
{
    QPainter& p = *painter;
    const double scale = std::min(width(), height()) / (turns(m_pose) ? viewOfTurn : view);
    p.setRenderHint(QPainter::Antialiasing);
    p.translate(width() / 2, height() / 2);
    p.scale(scale, scale);
    const double raised = raises(m_pose) ? 1.2 : 0;
    const BoxSeen box = boxSeen(lying(faceOf(m_pose)), raised);
    p.translate(0, (box.height + raised) / 2 + 0.05); // what stands is as much in the middle as what lies

    p.setPen(Qt::NoPen);
    p.setBrush(m_table);
    p.drawPolygon(circleSeen(turns(m_pose) ? around + 0.25 : around - 0.05, 0, 0, 2 * pi));
    p.setBrush(Qt::NoBrush);
    const QPen arrow(m_line, 0.11, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);

    if (raises(m_pose)) {
        p.setPen(QPen(m_line, 0.04, Qt::DashLine));
        for (const auto& side : boxSeen(lying(PoseDrawing::MainSideUp), 0).sides)
            p.drawPolygon(side.outline);
    }
    if (turns(m_pose)) { // the far part first: the box stands before it
        p.setPen(arrow);
        drawArc(p, 0.80 * pi, 1.75 * pi, false);
    }
    drawBox(p, *this, box);
    if (turns(m_pose)) {
        p.setPen(arrow);
        drawArc(p, -0.25 * pi, 0.62 * pi, true);
    }
    if (raises(m_pose)) {
        p.setPen(arrow);
        const QPointF foot = seen({-1.0, 1.0, 0.1});
        const QPointF tip = seen({-1.0, 1.0, raised + 0.5});
        p.drawLine(foot, tip);
        arrowHead(p, tip, tip - foot, 0.34);
    }
}

QString PoseDrawing::words() const
{
    switch (m_pose) {
    case MainSideUp:
        return tr("Main side up");
    case MainSideDown:
        return tr("Main side down");
    case LongEdge:
        return tr("On a long edge");
    case OtherLongEdge:
        return tr("On the other long edge");
    case ShortEnd:
        return tr("On a short end");
    case OtherShortEnd:
        return tr("On the other short end");
    case TurnFlat:
        return tr("Main side up, one turn to the left");
    case TurnOnEdge:
        return tr("On a long edge, one turn to the left");
    case TurnOnEnd:
        return tr("On a short end, one turn to the left");
    case Raise:
    case RaiseAgain:
        return tr("Raised straight up");
    }
    return {};
}

void PoseDrawing::setPose(Pose pose)
{
    if (pose == m_pose)
        return;
    m_pose = pose;
    emit changed();
}

void PoseDrawing::setColour(QColor& own, const QColor& colour)
{
    if (colour == own)
        return;
    own = colour;
    emit changed();
}

} // namespace fleetrung::ui
