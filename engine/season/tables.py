"""The tables of ladders and rules for people, made from the data.

    python3 engine/season/tables.py            writes ladders.md and rules.md beside itself
    python3 engine/season/tables.py --check    says whether they are current; status 1 where they are not
"""

import json
import pathlib
import sys

FOLDER = pathlib.Path(__file__).parent
NOTE = "Made by `tables.py` from `{}`: edit that, then run the script.\n"


def number(value, step):
    """Rounded to whole steps, as the program shows it."""
    return f"{round(value / step) * step:g}"


def table(columns, rows):
    lines = ["| " + " | ".join(columns) + " |", "|" + " --- |" * len(columns)]
    return "\n".join(lines + ["| " + " | ".join(str(cell) for cell in row) + " |" for row in rows]) + "\n"


def rung_row(rung):
    low, high = rung["range_m"]
    return [rung["name"].replace("{box}", rung.get("box", "")), f"{low:g}-{high:g}",
            f"{number(low * 100, 1)}-{number(high * 100, 1)} / {number(low / 0.0254, 0.5)}-{number(high / 0.0254, 0.5)}",
            rung["metric"], rung["strength"], "-".join(f"{value:g}" for value in rung["target_ms"]),
            f"{rung['earliest']} to {rung['latest']}", f"{rung['sets']} x {rung['repetitions']}",
            f"{rung['load_rule']} ({rung['load_ratio']:g})",
            f"{rung['probe_share'] * 100:g} %" if rung["probe_share"] else "body mass",
            ", ".join(rung["cautions"]) or "-", rung["origin"]]


def ladders(data):
    text = "# Ladders\n\n" + NOTE.format("ladders.json") + "\nWhat each column rests on:\n\n"
    text += table(["field", "origin"], data["origin"].items())
    for ladder in data["ladders"]:
        text += f"\n## {ladder['name']}\n\nLoads: {', '.join(ladder['regions'])}.\n\n"
        text += table(["rung", "range, m", "cm / in", "metric", "strength", "target, ms", "phases", "sets x repetitions",
                       "load (ratio)", "probe load", "cautions", "origin of the rung"],
                      [rung_row(rung) for rung in ladder["rungs"]])
    return text


def rules(data):
    text = "# Numbers of the season's rules\n\n" + NOTE.format("rules.json` and `did_it_work.md") + "\n"
    text += table(["number", "value", "unit", "what it does", "origin"],
                  [[key, f"{item['value']:g}", item["unit"], item["about"], item["origin"]]
                   for key, item in data["numbers"].items()])
    text += "\n## Phases\n\n"
    text += table(["phase", "share of the time", "least days", "most days", "set stop", "volume", "what it is", "origin"],
                  [[item["phase"], f"{item['share']:g}", item["minimum_days"], item["maximum_days"] or "no limit",
                    f"{item['set_stop']:g}", f"{item['volume']:g}", item["about"], item["origin"]]
                   for item in data["phases"]])
    return text + "\n" + (FOLDER / "did_it_work.md").read_text(encoding="utf-8")


def main():
    stale = []
    for name, make in (("ladders", ladders), ("rules", rules)):
        text = make(json.loads((FOLDER / f"{name}.json").read_text(encoding="utf-8")))
        path = FOLDER / f"{name}.md"
        if "--check" not in sys.argv:
            path.write_text(text, encoding="utf-8")
        elif not path.exists() or path.read_text(encoding="utf-8") != text:
            stale.append(path.name)
    if stale:
        sys.exit(f"{', '.join(stale)}: not current; run python3 engine/season/tables.py")


if __name__ == "__main__":
    main()
