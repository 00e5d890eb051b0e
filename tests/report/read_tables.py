"""Python's csv module reads every table of the report back, cell for cell, whatever the locale.

Source of the format: RFC 4180. Source of the reader: Python's csv module, strict.
"""

import csv
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

PROGRAM = sys.argv.pop(1)
ISO_DATE = re.compile(r"\d{4}-\d\d-\d\d$")
ISO_TIME = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{3})?(Z|[+-]\d\d:\d\d)$")
NUMBER = re.compile(r"-?\d+(\.\d+)?(e[+-]\d+)?$")


class Tables(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        run = subprocess.run([PROGRAM, cls.folder.name], check=True, capture_output=True, text=True)
        cls.decimal_mark = run.stdout.strip()
        root = pathlib.Path(cls.folder.name)
        cls.expected = json.loads((root / "expected.json").read_text(encoding="utf-8"))
        cls.bytes = {name: (root / name).read_bytes() for name in cls.expected}

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def rows(self, name):
        text = self.bytes[name].decode("utf-8").splitlines(keepends=True)
        return list(csv.reader(text, strict=True))

    def columns(self):
        """(file, column, unit, cells) as the data dictionary describes them."""
        for file, column, unit, _ in self.rows("data_dictionary.csv")[1:]:
            table = self.rows(file)
            index = table[0].index(column)
            yield file, column, unit, [row[index] for row in table[1:]]

    def test_the_locale_was_in_force(self):
        if os.environ["LC_ALL"].startswith("de_DE"):
            self.assertEqual(self.decimal_mark, ",")

    def test_every_cell_comes_back(self):
        self.assertGreater(len(self.expected), 12)
        for name, table in self.expected.items():
            with self.subTest(name):
                self.assertEqual(self.rows(name), [table["header"], *table["rows"]])

    def test_records_end_with_cr_lf_and_there_is_no_byte_order_mark(self):
        for name, data in self.bytes.items():
            with self.subTest(name):
                self.assertTrue(data.endswith(b"\r\n"))
                self.assertFalse(data.startswith(b"\xef\xbb\xbf"))

    def test_numbers_dates_and_times_have_one_form(self):
        seen = 0
        forms = {"ISO 8601 date": ISO_DATE, "ISO 8601 time": ISO_TIME}
        for file, column, unit, cells in self.columns():
            if not unit:
                continue
            for cell in filter(None, cells):
                seen += 1
                with self.subTest(file=file, column=column, cell=cell):
                    self.assertRegex(cell, forms.get(unit, NUMBER))
        self.assertGreater(seen, 1000)

    def test_numbers_print_as_short_as_they_can(self):
        for file, column, unit, cells in self.columns():
            if unit not in ("s", "m", "m/s", "kg"):
                continue
            for cell in filter(None, cells):
                # repr() of a Python float is the shortest decimal that reads back the same; it writes 20 as 20.0.
                self.assertLessEqual(len(cell), len(repr(float(cell))), (file, column, cell))
                self.assertEqual(repr(float(cell)).removesuffix(".0"), cell, (file, column))

    def test_text_cells_do_not_begin_like_a_formula(self):
        guarded = 0
        for file, column, unit, cells in self.columns():
            if unit:
                continue
            for cell in cells:
                self.assertNotRegex(cell, r"^[=+\-@\t\r]", (file, column))
                guarded += cell.startswith("'=")
        self.assertEqual(guarded, 1)


if __name__ == "__main__":
    unittest.main()
