"""The first days of the demo's seasons, played twice by a release build and once by a debug build without Qt.

same_bytes.py SOURCE DEBUG_BUILD_FOLDER RELEASE_PLAYER RELEASE_DESK: builds the debug programs, plays, writes plan and tables with
the programs of the same build, and compares every file byte for byte.
"""

import datetime
import json
import pathlib
import subprocess
import sys
import tempfile

DAYS = 5
ATHLETES = 3


def run(*command):
    result = subprocess.run([str(part) for part in command], capture_output=True)
    if result.returncode != 0:
        sys.exit(f"{' '.join(map(str, command))}\n{result.stdout.decode()}{result.stderr.decode()}")
    return result.stdout


def build(source, folder):
    run("cmake", "-S", source, "--preset", "debug", "-B", folder, "-DFLEETRUNG_PHONE=OFF")
    run("cmake", "--build", folder, "-j2", "--target", "fleetrung-demo-season", "fleetrung-desk")
    return folder / "demo/squad/fleetrung-demo-season", folder / "platform/desk/fleetrung-desk"


def play(player, desk, folder):
    """Every file that a person would keep: name -> bytes."""
    run(player, folder, "--days", DAYS)
    files = {path.name: path.read_bytes() for path in folder.iterdir() if path.suffix in (".json", ".csv")}
    seasons = sorted(folder.glob("*.season.json"))
    assert len(seasons) == ATHLETES, seasons
    for season in seasons:
        files[f"{season.name} as a plan"] = run(desk, "plan", season, "--json")
        setup = json.loads(season.read_text(encoding="utf-8"))
        start = datetime.date.fromisoformat(setup["start"])
        day = start + datetime.timedelta(days=DAYS - 1)
        tables = folder / f"tables of {season.name}"
        run(desk, "report", "--store", folder / "athletes.fleetrung", "--athlete", setup["athlete"]["name"], "--day", day,
            "--csv", tables)
        files |= {f"{tables.name}/{path.name}": path.read_bytes() for path in tables.iterdir()}
    return files


def compare(what, one, other):
    assert one.keys() == other.keys(), what
    different = [name for name in one if one[name] != other[name]]
    print(f"{what}: {len(one)} files, {sum(map(len, one.values()))} bytes, {len(different)} differ")
    for name in different:
        print("  differs:", name)
        for left, right in zip(one[name].splitlines(), other[name].splitlines()):
            if left != right:
                print("   ", left[:300], "\n   ", right[:300])
                break
    return not different


def main():
    source, debugFolder, player, desk = map(pathlib.Path, sys.argv[1:])
    debugPlayer, debugDesk = build(source, debugFolder)
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        first = play(player, desk, folder / "first")
        same = compare("two runs of the release build", first, play(player, desk, folder / "second"))
        same &= compare("release and debug build", first, play(debugPlayer, debugDesk, folder / "debug"))
    sys.exit(0 if same else 1)


if __name__ == "__main__":
    main()
