#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <QGuiApplication>

// View models speak through QObject; some ask the application's palette.
int main(int argc, char* argv[])
{
    QGuiApplication application(argc, argv);
    return Catch::Session().run(argc, argv);
}
