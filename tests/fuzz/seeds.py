#!/usr/bin/env python3
"""Writes the first inputs of the corpora from the included maps: what a fuzzer cannot find by chance within a minute.

  python3 tests/fuzz/seeds.py
"""

import json
import pathlib
import struct

FOLDER = pathlib.Path(__file__).parent
MAPS = sorted((FOLDER.parent.parent / "engine/sensor/maps").glob("*.json"))


def packet(index, payload):
    """As packet_decoder.cpp reads it; every ninth comes 0.27 s late."""
    late = bytes([6]) + struct.pack("<I", 1 << 24)
    return (late if index % 9 == 8 else bytes([0])) + struct.pack("<H", len(payload)) + payload


def payloads(document):
    """A second of rest and swinging, cut as the map wants it."""
    stream = document["streams"][0]
    for i in range(40):
        force, turning = [0.1 * (i % 7), -0.2, 9.8], [0.01 * i, 0, -1.5]
        if stream["form"] == "text":
            named = [column.get("key", "") for column in stream["columns"]]
            values = {"stamp": 10 * i}
            values |= {f"accelerometer{axis}": force[j] for j, axis in enumerate("XYZ")}
            values |= {f"gyroscope{axis}": turning[j] for j, axis in enumerate("XYZ")}
            cells = [values[column["channel"]] for column in stream["columns"]]
            yield (",".join((key + "=" if key else "") + str(cell) for key, cell in zip(named, cells)) + "\n").encode()
        elif stream["sampleFields"][0]["type"] == "float32":
            yield struct.pack("<6f", *force, *turning)
        else:
            counter = "<I" if stream["packetFields"][0]["type"] == "uint32" else "<H"
            counts = [int(value * 200) for value in force + turning]
            yield struct.pack(counter, i) + struct.pack("<6h", *counts) * (3 if stream.get("samples") == 0 else 1)


def main():
    for folder in ("map_parser", "packet_decoder"):
        (FOLDER / "corpus" / folder).mkdir(parents=True, exist_ok=True)
    for index, path in enumerate(MAPS):
        document = json.loads(path.read_text(encoding="utf-8"))
        small = json.dumps(document, separators=(",", ":"))
        (FOLDER / "corpus/map_parser" / path.stem).write_text(small, encoding="utf-8")
        packets = b"".join(packet(i, payload) for i, payload in enumerate(payloads(document)))
        (FOLDER / "corpus/packet_decoder" / path.stem).write_bytes(bytes([index]) + packets)


if __name__ == "__main__":
    main()
