// Source of the values: Bluetooth SIG Assigned Numbers and Core Specification (base UUID; Vol 3 Parts F and G: MTU 23,
// 3 bytes beside the value, 512 bytes of a value; Vol 6 Part B: 27 and 251 bytes a packet), from memory; "20 bytes is
// typical" is found at lairdconnect.com, FAQ "what factors affect BLE throughput".
#include <catch2/catch.hpp>

#include "engine/sensor/gatt.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;

TEST_CASE("An assigned number expands to a whole UUID on the base UUID", "[sensor][gatt]")
{
    CHECK(gatt::uuidOf(0x180F) == "0000180f-0000-1000-8000-00805f9b34fb");
    CHECK(gatt::uuidOf(gatt::batteryService) == *gatt::parseUuid("180F"));
    CHECK(gatt::uuidOf(0xFFFFFFFF) == "ffffffff-0000-1000-8000-00805f9b34fb");
    CHECK(gatt::assignedNumber("00002902-0000-1000-8000-00805F9B34FB") == gatt::clientConfiguration);
    CHECK_FALSE(gatt::assignedNumber("6e400001-b5a3-f393-e0a9-e50e24dcca9e"));
}

TEST_CASE("A UUID is read in every way people write it, and anything else is refused", "[sensor][gatt]")
{
    for (const auto* text : {"180f", "180F", "0x180F", "0X180f", "0000180f", "0000180F-0000-1000-8000-00805F9B34FB",
                             "{0000180f-0000-1000-8000-00805f9b34fb}", "0000180f00001000800000805f9b34fb"}) {
        CAPTURE(text);
        const auto uuid = gatt::parseUuid(text);
        REQUIRE(uuid);
        CHECK(*uuid == "0000180f-0000-1000-8000-00805f9b34fb");
    }
    for (const auto* text :
         {"", "18", "180", "180g", "0x", "0000180f-0000-1000-8000-00805f9b34f", "0000180f-0000-1000-8000-00805f9b34fbb",
          "0000180f_0000-1000-8000-00805f9b34fb", "0000180-f0000-1000-8000-00805f9b34fb", "{", "{}", " 180f",
          "0000180g00001000800000805f9b34fb", "{180f"}) {
        CAPTURE(text);
        const auto uuid = gatt::parseUuid(text);
        REQUIRE_FALSE(uuid);
        CHECK(uuid.error().code == Code::InvalidInput);
    }
    CHECK_FALSE(gatt::parseUuid(std::string(1'000'000, 'a')));
}

TEST_CASE("A notification carries the MTU less three bytes, and one link packet what it holds less four",
          "[sensor][gatt]")
{
    CHECK(gatt::payloadOf(23) == 20);
    CHECK(gatt::payloadOf(185) == 182);
    CHECK(gatt::payloadOf(247) == 244);
    CHECK(gatt::payloadOf(517) == 512);
    CHECK(gatt::payloadOf(0) == 0);
    CHECK(gatt::mtuOfOnePacket(27) == 23);
    CHECK(gatt::mtuOfOnePacket(251) == 247);
    CHECK(gatt::linkPackets(20, 27) == 1);
    CHECK(gatt::linkPackets(21, 27) == 2);
    CHECK(gatt::linkPackets(244, 251) == 1);
    CHECK(gatt::linkPackets(244, 27) == 10); // 251 bytes in pieces of 27
}

TEST_CASE("The assigned numbers that are used", "[sensor][gatt]")
{
    CHECK(gatt::batteryLevel == 0x2A19);
    CHECK(gatt::deviceInformation == 0x180A);
    CHECK(gatt::manufacturerName == 0x2A29);
    CHECK(gatt::modelNumber == 0x2A24);
    CHECK(gatt::serialNumber == 0x2A25);
    CHECK(gatt::hardwareRevision == 0x2A27);
    CHECK(gatt::firmwareRevision == 0x2A26);
    CHECK(gatt::softwareRevision == 0x2A28);
    CHECK(gatt::notifyBit == 1);
    CHECK(gatt::indicateBit == 2);
}
