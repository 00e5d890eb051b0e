// The signs of the interface, drawn for this project on a grid of 24 by 24. A sign always stands beside words.
#pragma once

#include <QColor>
#include <QtQml/qqmlregistration.h>
#include <QtQuick/QQuickPaintedItem>

namespace fleetrung::ui
{

class Glyph : public QQuickPaintedItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(Sign sign READ sign WRITE setSign NOTIFY changed FINAL)
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY changed FINAL)
    Q_PROPERTY(double thickness READ thickness WRITE setThickness NOTIFY changed FINAL)

public:
    enum Sign {
        Bench,
        Ladder,
        Track,
        Trends,
        Squad,
        Check,
        Dash,
        Cross,
        Plus,
        Back,
        Forward,
        Undo,
        Stop,
        Pencil,
        Bin,
        Sensor,
        Caution,
        Down
    };
    Q_ENUM(Sign)

    explicit Glyph(QQuickItem* parent = nullptr);

    void paint(QPainter* painter) override;

    Sign sign() const { return m_sign; }
    void setSign(Sign sign);
    QColor color() const { return m_color; }
    void setColor(const QColor& color);
    double thickness() const { return m_thickness; }
    void setThickness(double thickness);

signals:
    void changed();

private:
    Sign m_sign = Check;
    QColor m_color;
    double m_thickness = 2.2;
};

} // namespace fleetrung::ui
