"""`fleetrung-desk import` into a small invented store (make_store.cpp)."""

import csv
import json
import os
import sqlite3
import subprocess

from desk import SEASON, DeskTest, main, run

MAKE_STORE = os.environ["FLEETRUNG_MAKE_STORE"]
RUNS = ("Athlet;Datum;Uhrzeit;10 m;20 m;30 m;Wind\n"
        "Ylva Test;1.3.2026;17:05;1,85;2,98;4,02;+0,8\n"
        "ylva test;1.3.2026;17:12;1,84;2,96;3,99;\n"
        "Nobody;1.3.2026;17:15;1,90;3,05;4,12;\n"
        "Ylva Test;1.3.2026;17:20;1,85;abc;4,02;\n")
SETS = ("Athlete,Date,Lift,Load (lb),Reps,Mean Velocity (m/s)\n"
        "Ylva Test,2026-03-02,Half squat,225,5,0.61\nYlva Test,2026-03-02,Half squat,225,5,0.60\n"
        "Ylva Test,2026-03-02,Sled push,100,5,\n")


class Import(DeskTest):
    def setUp(self):
        super().setUp()
        self.store = self.folder / "store"
        self.store.mkdir()
        subprocess.run([MAKE_STORE, self.store, self.file("season.json", json.dumps(SEASON))], check=True)

    def imported(self, kind, text, *options):
        return json.loads(self.output("import", kind, self.file("in.csv", text), "--store", self.store, "--json",
                                      *options))

    def refused(self, kind, text, *options):
        result = run("import", kind, self.file("in.csv", text), "--store", self.store, *options)
        self.assertEqual((result.returncode, result.stdout), (2, b""), result.stderr.decode())
        return result.stderr.decode()

    def rows(self, sql):
        with sqlite3.connect(self.store / "athletes.fleetrung") as connection:
            found = connection.execute(sql).fetchall()
        connection.close()
        return found

    def test_runs_are_added_once_and_bad_rows_are_named(self):
        before = self.rows("SELECT count(*) FROM sprint")[0][0]
        self.assertEqual(self.imported("runs", RUNS, "--skip-unknown", "--dry-run")["added"], 2)
        self.assertEqual(self.rows("SELECT count(*) FROM sprint")[0][0], before)
        said = self.imported("runs", RUNS, "--skip-unknown")
        self.assertEqual((said["added"], said["duplicates"], said["left_out"]), (2, 0, 1))
        bad, = said["bad"]
        self.assertEqual((bad["line"], bad["column"], bad["cell"]), (5, "20 m", "abc"))
        self.assertIn("decimal comma, as in", " ".join(said["notes"]))
        again = self.imported("runs", RUNS, "--skip-unknown")
        self.assertEqual((again["added"], again["duplicates"]), (0, 2))
        self.assertEqual(self.rows("SELECT count(*) FROM sprint")[0][0], before + 2)

    def test_who_is_not_in_the_store_is_asked_for_and_can_be_added_or_matched(self):
        self.assertIn("not in the store: Nobody; say who they are", self.refused("runs", RUNS))
        self.assertEqual(self.imported("runs", RUNS, "--match", "Nobody=Ylva Test")["added"], 3)
        self.assertEqual(self.imported("runs", RUNS, "--add")["added"], 1)
        self.assertEqual(self.rows("SELECT count(*) FROM athlete WHERE name = 'Nobody'"), [(1,)])

    def test_rows_without_a_name_are_whose_they_are_said_to_be(self):
        text = "Date,30 m\n2026-03-01,4.21\n"
        self.assertIn("--athlete: no column of the file names an athlete", self.refused("runs", text))
        self.assertEqual(self.imported("runs", text, "--athlete", "Ylva Test")["added"], 1)
        self.assertIn("no one athlete \"Twin\"", self.refused("runs", text, "--athlete", "Twin"))

    def test_sets_are_added_with_pounds_as_kilograms(self):
        self.assertIn("lifts not known: Sled push", self.refused("sets", SETS))
        said = self.imported("sets", SETS, "--lift", "Sled push=free")
        self.assertEqual(said["added"], 3)
        # 225 lb, NIST SP 811 (2008), appendix B: 1 lb = 0.453 592 37 kg
        loads = self.rows("SELECT load_kg, lift FROM lift_set WHERE lift = 'half-squat'")
        self.assertEqual([round(load, 3) for load, _ in loads], [102.058, 102.058])
        self.assertEqual(self.rows("SELECT note FROM lift_set WHERE lift = 'free'"), [("Sled push",)])

    def test_what_the_file_leaves_open_is_asked_with_the_option_that_answers_it(self):
        text = "Name;Date;30 m\nYlva Test;3/4/2026;4,215\n"
        self.assertIn("--decimal point or --decimal comma", self.refused("runs", text))
        self.assertIn("--dates day-month", self.refused("runs", text, "--decimal", "comma"))
        self.assertEqual(self.imported("runs", text, "--decimal", "comma", "--dates", "month-day")["added"], 1)
        self.assertIn("--day 2026-03-30", self.refused("runs", "Name,30 m\nYlva Test,4.21\n"))
        self.assertIn("--load kg", self.refused("sets", "Name,Date,Lift,Load,Reps\nYlva Test,2026-03-02,Squat,9,5\n"))

    def test_a_printed_map_is_taken_back(self):
        file = self.file("odd.csv", "a,b,c\nYlva Test,2026-03-01,4.21\n")
        printed = json.loads(self.output("import", "runs", file, "--print-map"))
        for column, meaning in enumerate(("athlete", "date")):
            printed["columns"][column] = {"meaning": meaning}
        printed["columns"][2] = {"meaning": "split", "unit": "s", "distance_m": 30}
        chosen = self.file("map.json", json.dumps(printed))
        self.assertEqual(self.imported("runs", file.read_text(), "--map", chosen)["added"], 1)
        self.assertIn("columns", self.refused("runs", file.read_text(), "--map", self.file(
            "bad.json", json.dumps({**printed, "columns": [{"meaning": "nonsense"}]}))))

    def test_exported_tables_come_back_as_duplicates_here_and_as_runs_elsewhere(self):
        tables = self.folder / "tables"
        self.output("report", "--store", self.store, "--athlete", "Ylva Test", "--day", "2026-01-10", "--csv", tables)
        with open(tables / "sprints.csv", encoding="utf-8", newline="") as file:
            sprints = len(list(csv.DictReader(file)))
        self.assertEqual(sprints, 3)
        said = json.loads(self.output("import", "runs", tables / "sprints.csv", "--store", self.store, "--json"))
        self.assertEqual((said["added"], said["duplicates"], said["bad"]), (0, sprints, []))
        said = json.loads(self.output("import", "sets", tables / "sets.csv", "--store", self.store, "--json"))
        self.assertEqual((said["added"], said["duplicates"], said["bad"]), (0, 3, []))
        said = json.loads(self.output("import", "runs", tables / "sprints.csv", "--store", self.store, "--json",
                                      "--match", "Ylva Test=" + self.rows("SELECT lower(hex(id)) FROM athlete "
                                                                          "WHERE event = '60 m'")[0][0]))
        self.assertEqual(said["added"], sprints)

    def test_no_table_no_store_and_a_binary_file_are_refused(self):
        for content in (b"", b"\x00\x01\x02\x03" * 50, b"Name,Note\nA,b\n", b"Name\n1\n"):
            self.assertIn("in.csv", self.refused("runs", content))
        result = run("import", "runs", self.file("in.csv", RUNS), "--store", self.folder / "absent")
        self.assertEqual(result.returncode, 2)


if __name__ == "__main__":
    main()
