"""`fleetrung-desk plan` on an invented season."""

import datetime
import json

from desk import SEASON, DeskTest, main, run


class Plan(DeskTest):
    def planned(self, season):
        return json.loads(self.output("plan", self.file("season.json", json.dumps(season)), "--json"))

    def refused(self, text):
        path = self.file("season.json", text)
        for options in ([], ["--json"]):
            result = run("plan", path, *options)
            error = result.stderr.decode()
            self.assertEqual((result.returncode, result.stdout), (2, b""), error)
            self.assertEqual(error.count("\n"), 1, error)
        return error.removeprefix(str(path) + ":")

    def test_the_phases_cover_every_day_once_and_end_with_the_taper(self):
        plan = self.planned(SEASON)
        day = datetime.date.fromisoformat(SEASON["start"])
        for phase in plan["phases"]:
            self.assertEqual(datetime.date.fromisoformat(phase["from"]), day)
            day = datetime.date.fromisoformat(phase["to"]) + datetime.timedelta(days=1)
            self.assertEqual((day - datetime.date.fromisoformat(phase["from"])).days, phase["days"])
        self.assertEqual(plan["phases"][-1]["phase"], "taper")
        self.assertEqual(plan["phases"][-1]["to"], SEASON["competitions"][-1]["date"])

    def test_the_same_season_gives_the_same_bytes(self):
        path = self.file("season.json", json.dumps(SEASON))
        for options in ([], ["--json"]):
            self.assertEqual(self.output("plan", path, *options), self.output("plan", path, *options))

    def test_the_table_names_phases_ladders_and_competitions(self):
        text = self.output("plan", self.file("season.json", json.dumps(SEASON)))
        for word in ("general preparation", "taper", "Squat ladder", SEASON["competitions"][0]["name"], "2026-08-02"):
            self.assertIn(word, text)

    def test_a_season_that_cannot_be_read_is_refused_with_line_and_column(self):
        lines = json.dumps(SEASON, indent=1)
        start = next(number for number, line in enumerate(lines.splitlines(), 1) if '"start"' in line)
        for wrong, place in [
            ("", "line 1, column 1: "),
            ("{", "line 1, column "),
            (lines.replace('"2026-01-05"', "2026-01-05"), f"line {start}, column "),
            (lines.replace('"2026-01-05"', '"2026-02-30"'), f"line {start}, column 2: start: "),
            (lines.replace('"2026-01-05"', "NaN"), f"line {start}, column "),
            (lines.replace('"start"', '"start": "2026-01-05",\n "start"'), f"line {start + 1}, column 2: "),
            (lines.replace('"start"', '"begin"'), "line "),
        ]:
            with self.subTest(wrong[:60], place=place):
                self.assertIn(place, self.refused(wrong))
                self.assertTrue(self.refused(wrong).startswith("line "))

    def test_what_the_rules_do_not_allow_is_refused_with_its_reason(self):
        young = {**SEASON, "athlete": {**SEASON["athlete"], "birth_date": "2010-05-01"}}
        self.assertIn("guardian", self.refused(json.dumps(young)))


if __name__ == "__main__":
    main()
