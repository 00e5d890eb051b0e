#include <algorithm>
#include <array>

#include <catch2/catch.hpp>

#include "tests/radio/radio_bench.hpp"

using namespace fleetrung;
using namespace fleetrung::ble;

namespace
{

enum class Act { SensorOn, BluetoothOn, ProgramOpen };

std::string nameOf(Act act)
{
    return act == Act::SensorOn ? "sensor on" : act == Act::BluetoothOn ? "Bluetooth on" : "program open";
}

} // namespace

// subsurface#4626: connecting needs a ritual in the right order.
TEST_CASE("sensor on, Bluetooth on and program open lead to a stream in any of the six orders")
{
    std::array order{Act::SensorOn, Act::BluetoothOn, Act::ProgramOpen};
    do {
        CAPTURE(nameOf(order[0]), nameOf(order[1]), nameOf(order[2]));
        Air air({"--alone", "--do", "vanish", "--do", "out-of-reach 0.3", "--do", "power off"});
        std::unique_ptr<Watched> w;
        for (const Act act : order) {
            if (act == Act::SensorOn)
                air("return");
            else if (act == Act::BluetoothOn)
                air("power on");
            else {
                w = std::make_unique<Watched>();
                w->radio.keep(known());
            }
            waitUntil([] { return false; }, 300); // a person takes a moment
        }
        REQUIRE(waitUntil([&] { return w->told.streaming() && w->told.samples[barSensor].size() > 10; }));
        CHECK(w->told.trouble.empty());
    } while (std::ranges::next_permutation(order).found);
}
