"""`fleetrung-desk report` on a small invented store (make_store.cpp)."""

import csv
import json
import os
import shutil
import subprocess

from desk import SEASON, DeskTest, main, run

MAKE_STORE = os.environ["FLEETRUNG_MAKE_STORE"]
HAS_PDF = os.environ["FLEETRUNG_HAS_PDF"] == "1"
DAY = "2026-01-12"
LOCALES = ("C", "de_DE.UTF-8", "ar_EG.UTF-8")


class Report(DeskTest):
    def setUp(self):
        super().setUp()
        self.store = self.folder / "store"
        self.store.mkdir()
        subprocess.run([MAKE_STORE, self.store, self.file("season.json", json.dumps(SEASON))], check=True)

    def report(self, *options, athlete="Ylva Test", store=None, environment=None):
        return run("report", "--store", store or self.store / "athletes.fleetrung", "--athlete", athlete, "--day", DAY,
                   *options, environment=environment)

    def refused(self, *options, code=2, **settings):
        result = self.report(*options, **settings)
        error = result.stderr.decode()
        self.assertEqual((result.returncode, result.stdout), (code, b""), error)
        self.assertEqual(error.count("\n"), 1, error)
        return error

    def tables(self, name="tables", **settings):
        folder = self.folder / name
        result = self.report("--csv", folder, **settings)
        self.assertEqual((result.returncode, result.stderr), (0, b""))
        return {path.name: path.read_bytes() for path in folder.iterdir()}

    def test_every_table_is_rfc_4180_and_in_the_data_dictionary(self):
        tables = self.tables()
        read = {name: list(csv.reader(data.decode("utf-8").splitlines(keepends=True), strict=True))
                for name, data in tables.items()}
        described = {(row[0], row[1]) for row in read["data_dictionary.csv"][1:]}
        for name, rows in read.items():
            with self.subTest(name):
                self.assertTrue(tables[name].endswith(b"\r\n"))
                self.assertEqual({len(row) for row in rows}, {len(rows[0])})
                for column in rows[0]:
                    self.assertIn((name, column), described)
        self.assertEqual(len(read["repetitions.csv"]), 1 + 9)
        self.assertEqual(len(read["sprints.csv"]), 1 + 3)

    def test_text_is_guarded_against_spreadsheets_and_numbers_stay_numbers(self):
        tables = self.tables()
        notes = [row["note"] for row in csv.DictReader(tables["sets.csv"].decode().splitlines(keepends=True))]
        self.assertEqual(set(notes), {"'=1+1, \"quoted\"\nsecond line"})
        winds = [row["wind_mps"] for row in csv.DictReader(tables["sprints.csv"].decode().splitlines(keepends=True))]
        self.assertEqual(set(winds), {"-0.4"})

    def test_the_tables_are_the_same_bytes_under_every_locale(self):
        outputs = [self.tables(f"tables-{name}", environment={"LC_ALL": name}) for name in LOCALES]
        for other in outputs[1:]:
            self.assertEqual(other, outputs[0])

    def test_the_folder_of_the_store_will_do_for_its_file(self):
        self.assertEqual(self.tables("a", store=self.store), self.tables("b"))

    def test_the_season_is_found_by_name_or_day(self):
        self.assertEqual(self.report("--csv", self.folder / "t", "--season", SEASON["name"]).returncode, 0)
        self.assertIn(SEASON["name"], self.refused("--csv", self.folder / "u", "--season", "Winter"))

    def test_who_and_what_cannot_be_found_is_said_with_what_there_is(self):
        self.assertIn("Ylva Test", self.refused("--csv", self.folder / "t", athlete="Nobody"))
        self.assertIn("more than once", self.refused("--csv", self.folder / "t", athlete="Twin"))
        self.assertIn("--pdf", self.refused())
        self.assertIn("no date", run("report", "--store", self.store, "--athlete", "Ylva Test", "--day", "12.1.2026",
                                     "--csv", self.folder / "t").stderr.decode())
        self.assertFalse((self.folder / "t").exists())

    def test_a_store_that_is_none_is_refused_and_left_alone(self):
        self.refused("--csv", self.folder / "t", store=self.folder / "absent.fleetrung")
        content = b"not a store\n" * 500
        wrong = self.file("wrong.fleetrung", content)
        self.assertIn(str(wrong), self.refused("--csv", self.folder / "t", store=wrong))
        self.assertEqual(wrong.read_bytes(), content)
        self.assertFalse((self.folder / "t").exists())
        self.assertFalse((self.folder / "absent.fleetrung").exists())

    def test_an_empty_file_is_no_store(self):
        empty = self.file("empty.fleetrung", "")
        self.assertIn("is empty", self.refused("--csv", self.folder / "t", store=empty))

    def test_reading_leaves_the_store_as_it_was(self):
        before = {path.name: path.read_bytes() for path in self.store.iterdir() if path.suffix == ".fleetrung"}
        self.tables()
        after = {path.name: path.read_bytes() for path in self.store.iterdir() if path.suffix == ".fleetrung"}
        self.assertEqual(after, before)

    def test_a_place_that_takes_no_files_is_said(self):
        self.refused("--csv", self.file("file", ""))
        self.assertIn("/dev/null/t", self.refused("--csv", "/dev/null/t", code=1))

    def test_the_pdf_is_written_or_clearly_refused(self):
        path = self.folder / "report.pdf"
        if not HAS_PDF:
            self.assertIn("this build has no PDF", self.refused("--pdf", path))
            self.assertFalse(path.exists())
            return
        result = self.report("--pdf", path)
        self.assertEqual((result.returncode, result.stderr), (0, b""))
        self.assertTrue(path.read_bytes().startswith(b"%PDF-1.4"))
        self.assertEqual(self.report("--pdf", "/dev/null/report.pdf").returncode, 1)
        if shutil.which("pdftotext"):
            text = subprocess.run(["pdftotext", path, "-"], capture_output=True, check=True).stdout.decode()
            self.assertIn("Ylva Test", text)


if __name__ == "__main__":
    main()
