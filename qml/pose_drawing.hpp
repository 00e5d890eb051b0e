// How a sensor is to lie, turn or be raised, drawn as a small box. Its main side is coloured and has a dot near one
// corner, so that each of the six ways to lie looks different. `words` names the pose for a screen reader.
#pragma once

#include <QColor>
#include <QtQml/qqmlregistration.h>
#include <QtQuick/QQuickPaintedItem>

namespace fleetrung::ui
{

class PoseDrawing : public QQuickPaintedItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(Pose pose READ pose WRITE setPose NOTIFY changed FINAL)
    Q_PROPERTY(QString words READ words NOTIFY changed FINAL)
    Q_PROPERTY(QColor body READ body WRITE setBody NOTIFY changed FINAL)
    Q_PROPERTY(QColor mark READ mark WRITE setMark NOTIFY changed FINAL)    ///< of the main side
    Q_PROPERTY(QColor dot READ dot WRITE setDot NOTIFY changed FINAL)       ///< on the main side
    Q_PROPERTY(QColor line READ line WRITE setLine NOTIFY changed FINAL)    ///< edges and arrows
    Q_PROPERTY(QColor table READ table WRITE setTable NOTIFY changed FINAL) ///< what it lies on

public:
    /// In the order of the steps of teaching.
    enum Pose {
        MainSideUp,
        MainSideDown,
        LongEdge,
        OtherLongEdge,
        ShortEnd,
        OtherShortEnd,
        TurnFlat,
        TurnOnEdge,
        TurnOnEnd,
        Raise,
        RaiseAgain
    };
    Q_ENUM(Pose)

    explicit PoseDrawing(QQuickItem* parent = nullptr);

    void paint(QPainter* painter) override;

    Pose pose() const { return m_pose; }
    void setPose(Pose pose);
    QString words() const;
    QColor body() const { return m_body; }
    void setBody(const QColor& colour) { setColour(m_body, colour); }
    QColor mark() const { return m_mark; }
    void setMark(const QColor& colour) { setColour(m_mark, colour); }
    QColor dot() const { return m_dot; }
    void setDot(const QColor& colour) { setColour(m_dot, colour); }
    QColor line() const { return m_line; }
    void setLine(const QColor& colour) { setColour(m_line, colour); }
    QColor table() const { return m_table; }
    void setTable(const QColor& colour) { setColour(m_table, colour); }

signals:
    void changed();

private:
    void setColour(QColor& own, const QColor& colour);

    Pose m_pose = MainSideUp;
    QColor m_body, m_mark, m_dot, m_line, m_table;
};

} // namespace fleetrung::ui
