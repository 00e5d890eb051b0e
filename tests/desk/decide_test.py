"""`fleetrung-desk decide`: the rules, a day out of a store, a day's input as a file."""

import json
import os
import subprocess

from desk import SEASON, DeskTest, main, run

MAKE_STORE = os.environ["FLEETRUNG_MAKE_STORE"]
DAY = "2026-01-12"
LOCALES = ("C", "de_DE.UTF-8", "ar_EG.UTF-8")

# The day's input as it is kept with stored decisions.
INPUT = {
    "format": 1, "today": DAY, "setup": SEASON,
    "states": [{"ladder": "squat", "path": [{"rung": "full", "from": "2026-01-05"}], "work_load_kg": 100}],
    "history": [], "log": {"work": [], "contacts": [], "maxima": [], "tests": []},
    "wellness": {"pain": 7, "pain_region": "knee"}, "step_by_exposure": [],
}


class Decide(DeskTest):
    def refused(self, *options):
        result = run("decide", *options)
        error = result.stderr.decode()
        self.assertEqual((result.returncode, result.stdout), (2, b""), error)
        return error

    def test_every_rule_stands_in_its_precedence_with_numbers_and_origin(self):
        text = self.output("decide", "--explain")
        rules = json.loads(self.output("decide", "--explain", "--json"))
        titles = [rule["title"] for rule in rules["rules"] if rule["group"] == "decision"]
        places = [text.index(f". {title} [") for title in titles]
        self.assertEqual(places, sorted(places))
        order = [rule["key"] for rule in rules["rules"] if rule["group"] == "decision"]
        # rules.md: pain or refusal > layoff > competition rest > ease > must step > step > hold
        wanted = ["pain", "layoff", "competition-rest", "ease", "must-step", "step-for-evidence", "hold"]
        self.assertEqual([key for key in order if key in wanted], wanted)
        for number in rules["numbers"]:
            self.assertTrue(number["origin"].startswith(
                ("published", "common practice", "from memory", "starting value of this project")), number)
        self.assertIn("starting value of this project", text)

    def test_a_file_is_decided_and_pain_comes_first(self):
        path = self.file("day.json", json.dumps(INPUT))
        day = json.loads(self.output("decide", path, "--json"))
        squat = next(decision for decision in day["decisions"] if decision["ladder"] == "squat")
        self.assertEqual((squat["rule"], squat["kind"]), ("pain", "rest"))
        self.assertIn("Pain", self.output("decide", "--explain"))
        text = self.output("decide", path)
        self.assertIn("Squat: rest", text)
        self.assertIn("No sprints today", text)
        self.assertEqual(text, self.output("decide", path))

    def test_a_file_that_cannot_be_used_is_refused_with_its_place(self):
        good = json.dumps(INPUT, indent=1)
        today = next(number for number, line in enumerate(good.splitlines(), 1) if '"today"' in line)
        for wrong, place in [("{", "line 1, column "), (good.replace(f'"{DAY}"', '"12.1.2026"'), f"line {today}, column "),
                             (good.replace('"pain": 7', '"pain": 70'), "wellness.pain"),
                             (good.replace('"format": 1', '"format": 9'), "format")]:
            with self.subTest(wrong[:40], place=place):
                path = self.file("day.json", wrong)
                error = self.refused(path)
                self.assertTrue(error.startswith(f"{path}:line "), error)
                self.assertIn(place, error)

    def test_one_source_is_named(self):
        self.assertIn("--explain", self.refused())
        self.assertIn("one of", self.refused("--explain", self.file("day.json", json.dumps(INPUT))))
        self.refused("--store", self.folder)  # whose?


class DecideFromStore(DeskTest):
    def setUp(self):
        super().setUp()
        self.store = self.folder / "store"
        self.store.mkdir()
        subprocess.run([MAKE_STORE, self.store, self.file("season.json", json.dumps(SEASON))], check=True)
        self.options = ("--store", self.store, "--athlete", "Ylva Test", "--day", DAY)

    def test_the_day_is_decided_and_planned(self):
        day = json.loads(self.output("decide", *self.options, "--json"))
        self.assertEqual(day["day"], DAY)
        self.assertEqual([decision["ladder"] for decision in day["decisions"]], SEASON["ladders"])
        lifts = {lift["ladder"]: lift for lift in day["session"]["lifts"]}
        self.assertIn("squat", lifts)
        text = self.output("decide", *self.options)
        self.assertIn("Squat: hold, Full squat [hold]", text)
        self.assertIn("sessions", text)  # evidence
        self.assertNotIn("why this", text)
        self.assertIn("why this", self.output("decide", *self.options, "--why"))

    def test_reading_leaves_the_store_as_it_was_and_is_the_same_under_every_locale(self):
        before = (self.store / "athletes.fleetrung").read_bytes()
        outputs = {self.output("decide", *self.options, "--why", environment={"LC_ALL": name}) for name in LOCALES}
        self.assertEqual(len(outputs), 1)
        self.assertEqual((self.store / "athletes.fleetrung").read_bytes(), before)

    def test_who_cannot_be_found_is_said(self):
        result = run("decide", "--store", self.store, "--athlete", "Nobody", "--day", DAY)
        self.assertEqual((result.returncode, result.stdout), (2, b""))
        self.assertIn("Ylva Test", result.stderr.decode())


if __name__ == "__main__":
    main()
