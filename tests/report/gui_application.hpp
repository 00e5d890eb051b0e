// One QGuiApplication for tests that need fonts; drawn nowhere.
#pragma once

#include <QGuiApplication>

namespace fleetrung
{

inline void needGuiApplication()
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    static int count = 1;
    static char name[] = "pictures_tests";
    static char* arguments[] = {name, nullptr};
    static const auto* application = new QGuiApplication(count, arguments); // outlives what other statics hold
    Q_UNUSED(application)
}

} // namespace fleetrung
