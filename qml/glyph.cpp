#include "qml/glyph.hpp"

#include <QPainter>
#include <QPainterPath>

namespace fleetrung::ui
{
namespace
{

/// A sign is lines and dots; both take the same colour.
struct Drawing {
    QPainterPath lines;
    QPainterPath dots;
};

void line(QPainterPath& path, std::initializer_list<QPointF> points)
{
    const QPointF* point = points.begin();
    path.moveTo(*point);
    for (++point; point != points.end(); ++point)
        path.lineTo(*point);
}

/// An arch from `from` to `to`, as high as `height` above them.
void arch(QPainterPath& path, QPointF from, QPointF to, double height)
{
    const double lift = height * 4 / 3;
    path.moveTo(from);
    path.cubicTo(from.x() + 2, from.y() - lift, to.x() - 2, to.y() - lift, to.x(), to.y());
}

Drawing drawing(Glyph::Sign sign)
{
    Drawing d;
    switch (sign) {
    case Glyph::Bench:
        line(d.lines, {{1, 12}, {23, 12}});
        line(d.lines, {{5, 6}, {5, 18}});
        line(d.lines, {{19, 6}, {19, 18}});
        break;
    case Glyph::Ladder:
        line(d.lines, {{2, 5}, {9, 5}, {9, 12}, {16, 12}, {16, 19}, {23, 19}});
        break;
    case Glyph::Track:
        arch(d.lines, {2, 19}, {22, 19}, 14);
        arch(d.lines, {7.5, 19}, {16.5, 19}, 7.5);
        break;
    case Glyph::Trends:
        d.dots.addEllipse(QPointF{4, 6}, 2.4, 2.4);
        d.dots.addEllipse(QPointF{12, 12}, 2.4, 2.4);
        d.dots.addEllipse(QPointF{20, 18}, 2.4, 2.4);
        break;
    case Glyph::Squad:
        d.dots.addEllipse(QPointF{7, 7.5}, 3.4, 3.4);
        d.dots.addEllipse(QPointF{17, 7.5}, 3.4, 3.4);
        arch(d.lines, {1.5, 19}, {11.2, 19}, 5.5);
        arch(d.lines, {12.8, 19}, {22.5, 19}, 5.5);
        break;
    case Glyph::Check:
        line(d.lines, {{4, 12.5}, {9.5, 18}, {20, 6}});
        break;
    case Glyph::Dash:
        line(d.lines, {{4, 12}, {20, 12}});
        break;
    case Glyph::Cross:
        line(d.lines, {{6, 6}, {18, 18}});
        line(d.lines, {{18, 6}, {6, 18}});
        break;
    case Glyph::Plus:
        line(d.lines, {{12, 4}, {12, 20}});
        line(d.lines, {{4, 12}, {20, 12}});
        break;
    case Glyph::Back:
        line(d.lines, {{15, 4}, {7, 12}, {15, 20}});
        break;
    case Glyph::Forward:
        line(d.lines, {{9, 4}, {17, 12}, {9, 20}});
        break;
    case Glyph::Down:
        line(d.lines, {{5, 9}, {12, 16}, {19, 9}});
        break;
    case Glyph::Undo:
        line(d.lines, {{9, 4}, {4, 9}, {9, 14}});
        d.lines.moveTo(4, 9);
        d.lines.lineTo(14, 9);
        d.lines.cubicTo(23, 9, 23, 20, 14, 20);
        d.lines.lineTo(9, 20);
        break;
    case Glyph::Stop:
        line(d.lines,
             {{8, 2.5}, {16, 2.5}, {21.5, 8}, {21.5, 16}, {16, 21.5}, {8, 21.5}, {2.5, 16}, {2.5, 8}, {8, 2.5}});
        line(d.lines, {{7.5, 12}, {16.5, 12}});
        break;
    case Glyph::Pencil:
        line(d.lines, {{4, 20}, {5, 15}, {16, 4}, {20, 8}, {9, 19}, {4, 20}});
        break;
    case Glyph::Bin:
        line(d.lines, {{3, 6}, {21, 6}});
        line(d.lines, {{9, 6}, {9, 3}, {15, 3}, {15, 6}});
        line(d.lines, {{5.5, 6}, {6.5, 21}, {17.5, 21}, {18.5, 6}});
        break;
    case Glyph::Sensor:
        d.dots.addEllipse(QPointF{12, 17}, 2.6, 2.6);
        arch(d.lines, {7, 13}, {17, 13}, 4);
        arch(d.lines, {3, 9}, {21, 9}, 5.5);
        break;
    case Glyph::Caution:
        line(d.lines, {{12, 3}, {22, 20.5}, {2, 20.5}, {12, 3}});
        line(d.lines, {{12, 9.5}, {12, 14}});
        d.dots.addEllipse(QPointF{12, 17.3}, 1.1, 1.1);
        break;
    }
    return d;
}

} // namespace

Glyph::Glyph(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setImplicitSize(24, 24);
    setAntialiasing(true);
    connect(this, &Glyph::changed, this, [this] { update(); });
}

void Glyph::paint(QPainter* painter)
{
    const Drawing picture = drawing(m_sign);
    const double scale = std::min(width(), height()) / 24;
    painter->setRenderHint(QPainter::Antialiasing);
    painter->translate((width() - 24 * scale) / 2, (height() - 24 * scale) / 2);
    painter->scale(scale, scale);
    painter->setPen(QPen(m_color, m_thickness, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->drawPath(picture.lines);
    painter->fillPath(picture.dots, m_color);
}

void Glyph::setSign(Sign sign)
{
    if (sign == m_sign)
        return;
    m_sign = sign;
    emit changed();
}

void Glyph::setColor(const QColor& color)
{
    if (color == m_color)
        return;
    m_color = color;
    emit changed();
}

void Glyph::setThickness(double thickness)
{
    if (thickness == m_thickness)
        return;
    m_thickness = thickness;
    emit changed();
}

} // namespace fleetrung::ui
