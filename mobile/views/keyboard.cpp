#include "mobile/views/keyboard.hpp"

#include <algorithm>

#include <QGuiApplication>
#include <QInputMethod>
#include <QWindow>

namespace fleetrung::views
{

Keyboard::Keyboard(QObject* parent) : QObject(parent)
{
    const auto* input = QGuiApplication::inputMethod();
    connect(input, &QInputMethod::visibleChanged, this, &Keyboard::look);
    connect(input, &QInputMethod::keyboardRectangleChanged, this, &Keyboard::look);
}

void Keyboard::look()
{
    const auto* input = QGuiApplication::inputMethod();
    double height = input->isVisible() ? input->keyboardRectangle().height() : 0;
#ifdef Q_OS_ANDROID
    // Qt 6 tells the rectangle of Android's keyboard in pixels of the screen (from memory; no phone was within reach).
    if (const auto* window = QGuiApplication::focusWindow())
        height /= window->devicePixelRatio();
#endif
    setHeight(height);
}

void Keyboard::setHeight(double height)
{
    height = std::max(0.0, height);
    if (height == height_)
        return;
    height_ = height;
    emit heightChanged();
}

} // namespace fleetrung::views
