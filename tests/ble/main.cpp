#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <QCoreApplication>

#include "tests/ble/bench_test.hpp"

namespace fleetrung::ble
{

const demo::PrivateBus& privateBus()
{
    static const demo::PrivateBus bus;
    return bus;
}

} // namespace fleetrung::ble

// The private bus comes first: Qt opens the system's bus once and keeps it.
int main(int argc, char* argv[])
{
    const QCoreApplication application(argc, argv);
    fleetrung::ble::privateBus();
    return Catch::Session().run(argc, argv);
}
