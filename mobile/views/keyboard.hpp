// How much of the window the on-screen keyboard covers, so that nothing being typed is ever behind it.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace fleetrung::views
{

class Keyboard : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(double height READ height NOTIFY heightChanged FINAL) ///< from the window's lower edge; 0: none

public:
    /// Follows the keyboard of the device.
    explicit Keyboard(QObject* parent = nullptr);

    double height() const { return height_; }
    /// Takes a keyboard of that height for granted; for tests and pictures.
    Q_INVOKABLE void setHeight(double height);

signals:
    void heightChanged();

private:
    void look();

    double height_ = 0;
};

} // namespace fleetrung::views
