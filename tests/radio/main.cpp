#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <cstring>

#include <QCoreApplication>

#include "tests/radio/radio_bench.hpp"

int main(int argc, char* argv[])
{
    QCoreApplication application(argc, argv);
    // ctest asks for the names of the tests: no bus for that.
    const bool listing = argc > 1 && std::strncmp(argv[1], "--list", 6) == 0;
    const auto bus = listing ? nullptr : std::make_unique<fleetrung::demo::PrivateBus>();
    fleetrung::ble::theBus() = bus.get();
    return Catch::Session().run(argc, argv);
}
