// Numbers of Bluetooth's attribute protocol: UUIDs, assigned numbers, and how much a packet carries.
// Source: Bluetooth SIG, Assigned Numbers, and Core Specification Vol 3 Part B 2.5.1 (base UUID), Part F (attributes),
// Part G 3.3.3.3 (client characteristic configuration), Vol 6 Part B (link layer); from memory.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "engine/base/error.hpp"

namespace fleetrung::sensor::gatt
{

/// An assigned number (16 or 32 bits) as a whole UUID: xxxxxxxx-0000-1000-8000-00805f9b34fb, lower case.
[[nodiscard]] std::string uuidOf(std::uint32_t assigned);

/// "180f", "0x180F", "0000180f" or a whole UUID (with hyphens in their places, or with none; braces allowed) as 36
/// lower-case characters. InvalidInput for anything else.
[[nodiscard]] Expected<std::string> parseUuid(std::string_view text);

/// The assigned number of a UUID that stands on the base UUID.
[[nodiscard]] std::optional<std::uint32_t> assignedNumber(std::string_view uuid);

inline constexpr std::uint16_t genericAccess = 0x1800;
inline constexpr std::uint16_t genericAttribute = 0x1801;
inline constexpr std::uint16_t batteryService = 0x180F;
inline constexpr std::uint16_t batteryLevel = 0x2A19; ///< one byte, 0-100 %
inline constexpr std::uint16_t deviceInformation = 0x180A;
inline constexpr std::uint16_t modelNumber = 0x2A24; ///< this and the following: UTF-8 text
inline constexpr std::uint16_t serialNumber = 0x2A25;
inline constexpr std::uint16_t firmwareRevision = 0x2A26;
inline constexpr std::uint16_t hardwareRevision = 0x2A27;
inline constexpr std::uint16_t softwareRevision = 0x2A28;
inline constexpr std::uint16_t manufacturerName = 0x2A29;
/// The descriptor that switches notifications on; two bytes, little-endian.
inline constexpr std::uint16_t clientConfiguration = 0x2902;
inline constexpr std::uint16_t notifyBit = 0x0001, indicateBit = 0x0002;

inline constexpr int defaultMtu = 23, largestMtu = 517;
/// Bytes of a notification beside its value: one of the operation, two of the handle.
inline constexpr int notificationHeader = 3;
/// Of an attribute's value, whatever the MTU.
inline constexpr int longestValue = 512;
/// Bytes of the logical link's header in front of what the attribute protocol sends.
inline constexpr int logicalLinkHeader = 4;
/// Bytes that one packet of the link layer carries: without data length extension, and at most with it.
inline constexpr int linkPacketDefault = 27, linkPacketLargest = 251;

/// Bytes a notification carries: MTU - 3, at most 512.
[[nodiscard]] int payloadOf(int mtu);
/// The largest MTU whose notifications go into one packet of the link layer: what it carries - 4.
[[nodiscard]] int mtuOfOnePacket(int linkPacket);
/// Packets of the link layer for one notification of `payload` bytes.
[[nodiscard]] int linkPackets(int payload, int linkPacket);

} // namespace fleetrung::sensor::gatt
