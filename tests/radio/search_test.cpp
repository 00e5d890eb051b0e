#include <catch2/catch.hpp>

#include "tests/radio/radio_bench.hpp"

using namespace fleetrung;
using namespace fleetrung::ble;

// subsurface#2974, subsurface#4626: the sensor is missing from the list unless a hidden switch is set.
TEST_CASE("every device that advertises is listed with its signal, nameless ones too, without any switch")
{
    Air air;
    Watched w;
    w.radio.scan();
    REQUIRE(waitUntil([&] { return w.told.found.size() >= 5; }));
    CHECK(w.told.scanning);
    CHECK(w.told.found.at(barSensor).name == "Bar sensor");
    CHECK(w.told.found.at("4A:10:20:30:40:01").name.isEmpty());
    CHECK(w.told.found.at("4A:10:20:30:40:03").name == "Kitchen scale");
    for (const auto& [address, sensor] : w.told.found) {
        CAPTURE(address.toStdString());
        CHECK(sensor.signal < 0);
    }
    REQUIRE(w.told.found.at(barSensor).services.size() == 1);
    CHECK(w.told.found.at(barSensor).services.front() == "3f5a0001-61c4-4c1e-9b0d-7d2e8c64a510");

    // It goes on: the signal of the same sensor is told again.
    const int before = w.told.found.at(barSensor).signal;
    CHECK(waitUntil([&] { return w.told.found.at(barSensor).signal != before; }));
    w.radio.stopScan();
    CHECK(waitUntil([&] { return !w.told.scanning; }));
}

// subsurface#1896: scanning is refused because a check of the local adapter is wrong.
TEST_CASE("the search goes on by itself whatever the adapter was before, and says what to do meanwhile")
{
    Air air({"--do", "power off"});
    Watched w;
    w.radio.scan();
    REQUIRE(waitUntil([&] { return w.told.inTrouble(TroubleKind::BluetoothOff, {}); }));
    CHECK_FALSE(w.told.scanning);
    air("power on");
    REQUIRE(waitUntil([&] { return w.told.found.contains(barSensor); }));
    CHECK(w.told.trouble.empty());
    CHECK(w.told.scanning);

    air("adapter out");
    REQUIRE(waitUntil([&] { return w.told.inTrouble(TroubleKind::NoAdapter, {}); }));
    w.told.found.clear();
    air("adapter in");
    REQUIRE(waitUntil([&] { return w.told.found.contains(barSensor); }));
    CHECK(w.told.trouble.empty());
}

TEST_CASE("without any Bluetooth service the search says so and does not end")
{
    Watched w; // nobody owns org.bluez on this bus
    w.radio.scan();
    REQUIRE(waitUntil([&] { return w.told.inTrouble(TroubleKind::NoAdapter, {}); }));
    Air air; // it comes up later
    CHECK(waitUntil([&] { return w.told.found.contains(barSensor); }));
    CHECK(w.told.trouble.empty());
}

namespace
{

class Refusing : public Permission
{
public:
    explicit Refusing(std::shared_ptr<bool> given) : given_(std::move(given)) {}
    void ask(std::function<void(bool)> answer) override { answer(*given_); }
    [[nodiscard]] QString reason() const override { return QStringLiteral("for the sensor"); }

private:
    std::shared_ptr<bool> given_;
};

} // namespace

TEST_CASE("where leave to use Bluetooth is refused nothing is done and the reason is told, until it is given")
{
    Air air;
    const auto given = std::make_shared<bool>(false);
    Watched w(shortTiming(), std::make_unique<Refusing>(given));
    w.radio.keep(known());
    w.radio.scan();
    REQUIRE(w.told.inTrouble(TroubleKind::NotAllowed, {}));
    CHECK(w.told.troubles.front().second.text == "for the sensor");
    CHECK_FALSE(waitUntil([&] { return !w.told.found.empty() || air.count("connectCalls") > 0; }, 500));
    *given = true;
    w.radio.scan();
    CHECK(waitUntil([&] { return w.told.found.contains(barSensor) && w.told.streaming(); }));
    CHECK(waitUntil([&] { return w.told.trouble.empty(); }));
}

TEST_CASE("every trouble has a text of two sentences at most that names the sensor where it is about one")
{
    for (int kind = 0; kind <= static_cast<int>(TroubleKind::TooSlow); ++kind) {
        const QString text = troubleText(static_cast<TroubleKind>(kind), "Otto");
        CAPTURE(text.toStdString());
        CHECK(text.count(". ") <= 1);
        CHECK(text.endsWith('.'));
        CHECK_FALSE(text.contains('%'));
        CHECK(text.contains("Otto") == (kind > static_cast<int>(TroubleKind::NotAllowed)));
    }
    CHECK(troubleText(TroubleKind::BondStale, "Otto").contains("forget"));
}
