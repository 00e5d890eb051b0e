#!/usr/bin/env python3
"""Makes packets.json: maps, packets as Python packs them, and the numbers that went in. tests/engine/sensor/reference_test.cpp
decodes the packets and compares.

  python3 tests/reference/make_packets.py

Whole numbers and floats by struct (format letters b h i e f, big-endian ">" and little-endian "<"), 24 bits by
int.to_bytes, 12 bits as one large number: big-endian its digits in order, little-endian the first reading lowest.
"""

import json
import math
import pathlib
import random
import struct

FOLDER = pathlib.Path(__file__).parent
LETTERS = {"int8": "b", "uint8": "B", "int16": "h", "uint16": "H", "int32": "i", "uint32": "I", "float16": "e", "float32": "f"}
BITS = {"int8": 8, "uint8": 8, "int12": 12, "uint12": 12, "int16": 16, "uint16": 16, "int24": 24, "uint24": 24, "int32": 32,
        "uint32": 32, "float16": 16, "float32": 32}
CHANNELS = [f"accelerometer{axis}" for axis in "XYZ"] + [f"gyroscope{axis}" for axis in "XYZ"]


def pack(kind, order, values):
    """Bytes of a row of readings of one type."""
    if kind in LETTERS:
        return struct.pack((">" if order == "big" else "<") + LETTERS[kind] * len(values), *values)
    if BITS[kind] == 24:
        return b"".join(value.to_bytes(3, order, signed=kind == "int24") for value in values)
    number = 0
    for value in values if order == "big" else reversed(values):
        number = number << 12 | (value & 0xFFF)
    size = (12 * len(values) + 7) // 8
    spare = 8 * size - 12 * len(values)
    return (number << spare if order == "big" else number).to_bytes(size, order)


def readings(kind, chance):
    """Six readings that the type holds exactly."""
    if kind.startswith("float"):
        letter = LETTERS[kind]
        return [struct.unpack("<" + letter, struct.pack("<" + letter, chance.uniform(-100, 100)))[0] for _ in range(6)]
    low, high = (0, 2 ** BITS[kind] - 1) if kind.startswith("u") else (-(2 ** (BITS[kind] - 1)), 2 ** (BITS[kind] - 1) - 1)
    return [low, high] + [chance.randint(low, high) for _ in range(4)]


def case(kind, order, chance):
    scales = [chance.choice([0.25, 0.001, -2.5]), chance.choice([0.0625, 3.0])]
    offsets = [chance.choice([0, -128]), 0]
    whole = BITS[kind] % 8 == 0
    stream = {
        "service": "180f", "characteristic": "2a19", "form": "binary", "mark": "5a",
        "packetFields": [{"channel": "counter", "type": "uint16", "byte": 1, "byteOrder": order},
                         {"channel": "stamp", "type": "uint32", "byte": 3, "byteOrder": order, "unit": "us"}],
        "firstByte": 7, "sampleBits": BITS[kind] * 6, "samples": 0,
        "sampleFields": [{"channel": name, "type": kind, "byteOrder": order, "bit": i * BITS[kind],
                          "unit": "m/s2" if i < 3 else "rad/s", "scale": scales[i // 3], "offset": offsets[i // 3]}
                         for i, name in enumerate(CHANNELS)],
    }
    packets, samples = [], []
    counter, stamp = 65530, 2**32 - 25_000  # both wrap on the way
    for _ in range(6):
        rows = [readings(kind, chance) for _ in range(chance.randint(1, 3) if whole else 2)]
        head = struct.pack(">HI" if order == "big" else "<HI", counter % 65536, stamp % 2**32)
        body = b"".join(pack(kind, order, row) for row in rows) if whole else pack(kind, order, sum(rows, []))
        packets.append((b"\x5a" + head + body).hex(" "))
        for index, row in enumerate(rows):
            samples.append({"counter": counter - 65530, "stamp": stamp * 1e-6 if index == 0 else None,
                            "values": [(value + offsets[i // 3]) * scales[i // 3] for i, value in enumerate(row)]})
            counter += 1
        stamp += 10_000
    document = {"key": f"{kind}-{order}", "name": f"{kind}, {order}", "streams": [stream]}
    return {"map": document, "packets": packets, "samples": samples}


def main():
    chance = random.Random(5)
    cases = [case(kind, order, chance) for kind in BITS for order in ("little", "big")]
    assert all(math.isfinite(value) for one in cases for sample in one["samples"] for value in sample["values"])
    text = json.dumps(cases, indent=None, separators=(",", ":")).replace('{"map"', '\n{"map"')
    (FOLDER / "packets.json").write_text(text + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
