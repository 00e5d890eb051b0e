"""The demo's seasons, played by a release and a debug build without Qt: files, decisions and their kept inputs.

same_bytes.py SOURCE DEBUG_BUILD_FOLDER RELEASE_PLAYER RELEASE_DESK: builds the debug programs, plays, writes plan and tables with
the programs of the same build, and compares every file byte for byte.
"""

import datetime
import json
import os
import pathlib
import sqlite3
import subprocess
import sys
import tempfile

DAYS = 5  # of the debug build, which is slow
LONG_DAYS = 60  # twice by the release build, the second time under another locale
ATHLETES = 3


def run(*command, locale="C"):
    result = subprocess.run([str(part) for part in command], capture_output=True, env={**os.environ, "LC_ALL": locale})
    if result.returncode != 0:
        sys.exit(f"{' '.join(map(str, command))}\n{result.stdout.decode()}{result.stderr.decode()}")
    return result.stdout


def build(source, folder):
    run("cmake", "-S", source, "--preset", "debug", "-B", folder, "-DFLEETRUNG_PHONE=OFF")
    run("cmake", "--build", folder, "-j2", "--target", "fleetrung-demo-season", "fleetrung-desk")
    return folder / "demo/squad/fleetrung-demo-season", folder / "platform/desk/fleetrung-desk"


def decisions(store):
    """Every decision as stored, and the names of what it was made from: hashes of the whole content."""
    with sqlite3.connect(store) as connection:
        rows = connection.execute("SELECT id, day, ladder, ordinal, evidence, input, rules FROM decision"
                                  " ORDER BY season, day, ladder, ordinal").fetchall()
        kept = connection.execute("SELECT id FROM document ORDER BY id").fetchall()
    connection.close()
    assert rows and kept and all(row[5] and row[6] for row in rows), store
    return repr(rows + kept).encode()


def play(player, desk, folder, days, locale="C"):
    """Every file that a person would keep: name -> bytes."""
    run(player, folder, "--days", days, locale=locale)
    files = {path.name: path.read_bytes() for path in folder.iterdir() if path.suffix in (".json", ".csv")}
    seasons = sorted(folder.glob("*.season.json"))
    assert len(seasons) == ATHLETES, seasons
    store = folder / "athletes.fleetrung"
    files["decisions and their inputs"] = decisions(store)
    files["verify"] = run(desk, "verify", store, locale=locale)
    for season in seasons:
        files[f"{season.name} as a plan"] = run(desk, "plan", season, "--json", locale=locale)
        setup = json.loads(season.read_text(encoding="utf-8"))
        start = datetime.date.fromisoformat(setup["start"])
        day = start + datetime.timedelta(days=days - 1)
        tables = folder / f"tables of {season.name}"
        run(desk, "report", "--store", folder / "athletes.fleetrung", "--athlete", setup["athlete"]["name"], "--day", day,
            "--csv", tables, locale=locale)
        files[f"{season.name} decided"] = run(desk, "decide", "--store", store, "--athlete", setup["athlete"]["name"],
                                              "--day", day, "--json", locale=locale)
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
        same = compare("two runs of the release build", play(player, desk, folder / "first", LONG_DAYS),
                       play(player, desk, folder / "second", LONG_DAYS, "de_DE.UTF-8"))
        same &= compare("release and debug build", play(player, desk, folder / "short", DAYS),
                        play(debugPlayer, debugDesk, folder / "debug", DAYS))
    sys.exit(0 if same else 1)


if __name__ == "__main__":
    main()
