#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <QGuiApplication>
#include <QtGlobal>

// View models speak through QObject; some ask the application's palette.
int main(int argc, char* argv[])
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) // also while ctest lists the tests, where there is no display
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    return Catch::Session().run(argc, argv);
}
