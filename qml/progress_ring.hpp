// A ring that fills as time passes, around what it is about.
#pragma once

#include <QColor>
#include <QtQml/qqmlregistration.h>
#include <QtQuick/QQuickPaintedItem>

namespace fleetrung::ui
{

class ProgressRing : public QQuickPaintedItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double share READ share WRITE setShare NOTIFY changed FINAL) ///< 0 to 1
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY changed FINAL)
    Q_PROPERTY(QColor track READ track WRITE setTrack NOTIFY changed FINAL) ///< of what is still to come

public:
    explicit ProgressRing(QQuickItem* parent = nullptr);

    void paint(QPainter* painter) override;

    double share() const { return m_share; }
    void setShare(double share);
    QColor color() const { return m_color; }
    void setColor(const QColor& color);
    QColor track() const { return m_track; }
    void setTrack(const QColor& track);

signals:
    void changed();

private:
    double m_share = 0;
    QColor m_color, m_track;
};

} // namespace fleetrung::ui
