"""The season PDF, read by others: poppler's pdfinfo, pdftotext and pdffonts, and the bytes themselves."""

import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest
import zlib

PROGRAM = sys.argv.pop(1)


def output(*command):
    return subprocess.run(command, check=True, capture_output=True, text=True, encoding="utf-8").stdout


def write(path, *options):
    return subprocess.run([PROGRAM, str(path), *options], capture_output=True, text=True, encoding="utf-8")


def streams(data):
    """Every stream of the file that inflates, as text."""
    for match in re.finditer(rb"stream\r?\n", data):
        try:
            yield zlib.decompressobj().decompress(data[match.end():]).decode("latin-1")
        except zlib.error:
            pass


class SeasonPdf(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.root = pathlib.Path(cls.folder.name)
        cls.a4 = cls.root / "a4.pdf"
        cls.letter = cls.root / "letter.pdf"
        for path, options in ((cls.a4, ()), (cls.letter, ("letter",))):
            run = write(path, *options)
            assert run.returncode == 0, run.stderr
        cls.text = output("pdftotext", "-layout", str(cls.a4), "-")
        cls.info = output("pdfinfo", str(cls.a4))

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def pages(self, info=None):
        return int(re.search(r"Pages:\s+(\d+)", info or self.info).group(1))

    def test_it_has_pages_of_the_size_asked_for_and_a_title(self):
        self.assertGreaterEqual(self.pages(), 2)
        self.assertIn("(A4)", self.info)
        self.assertIn("(letter)", output("pdfinfo", str(self.letter)))
        self.assertRegex(self.info, r"Title:\s+Season report: Ottoline Vårdhaug · Outdoor 2026")

    def test_it_says_it_is_pdf_a_1b_with_embedded_fonts_and_an_output_intent(self):
        data = self.a4.read_bytes()
        self.assertTrue(data.startswith(b"%PDF-1.4"))
        self.assertRegex(data, rb"pdfaid:part[=>][\"']?1")
        self.assertRegex(data, rb"pdfaid:conformance[=>][\"']?B")
        self.assertIn(b"/OutputIntent", data)
        self.assertNotIn(b"/Encrypt", data)
        fonts = output("pdffonts", str(self.a4)).splitlines()[2:]
        self.assertTrue(fonts)
        for font in fonts:
            self.assertRegex(font, r"\byes (yes|no) +yes\b")

    def test_nothing_is_transparent(self):
        data = self.a4.read_bytes()
        everything = data.decode("latin-1") + "".join(streams(data))
        values = re.findall(r"/(?:ca|CA)\s+([0-9.]+)", everything)
        self.assertTrue(values)
        self.assertEqual({float(value) for value in values}, {1.0})
        self.assertNotIn("/SMask /", everything.replace("/SMask /None", ""))

    def test_pictures_are_vectors(self):
        self.assertEqual(len(output("pdfimages", "-list", str(self.a4)).splitlines()), 2)

    def test_every_part_of_the_season_is_there(self):
        for part in ("Ottoline Vårdhaug", "What happened", "Competitions", "Cautions", "Squat ladder", "Step-up ladder",
                     "Time to peak velocity against the target band", "Within each rung", "Sprint times", "Flying 20 m",
                     "100 m from blocks", "Jumps", "Decisions and their reasons", "Planned against done", "Days lost",
                     "Pain noted", "illness", "left hamstring", "no medical advice",
                     "Regional championships, Ostermoor", "general preparation", "main one"):
            with self.subTest(part):
                self.assertIn(part, self.text)

    def test_a_decision_stands_with_its_evidence_and_its_answer(self):
        flat = " ".join(output("pdftotext", str(self.a4), "-").split())
        self.assertIn("gain in time to peak velocity 61 ± 9 ms (at least 38: met)", flat)
        self.assertNotIn("sessions on the rung 10", flat)  # of a hold only what was not met
        self.assertIn("stepped to the quarter squat", flat)

    def test_whether_it_worked_is_told_and_called_no_proof(self):
        flat = " ".join(output("pdftotext", str(self.a4), "-").split())
        self.assertRegex(flat, r"Did it work\? .* Not enough: \d+ more tests .*This is no proof of cause\.")

    def test_the_line_of_loads_says_what_it_points_to_or_what_is_missing(self):
        flat = " ".join(output("pdftotext", str(self.a4), "-").split())
        # The invented squat stands on a rung without a published velocity at 1RM.
        self.assertRegex(flat, r"Quarter squat: load and velocity The fastest repetition at each load of \d+ sessions "
                               r"on this rung, \d+ points, a robust line\. No velocity at 1RM is published")
        self.assertRegex(flat, r"25 cm: load and velocity No line: lift at two loads at least 10 % apart")

    def test_holds_in_a_row_stand_in_one_line(self):
        self.assertRegex(self.text, r"11 May – +Squat +Hold at quarter +Soon enough")
        self.assertEqual(self.text.count("(3 times)"), 1)
        self.assertNotIn("Too few sessions", self.text)
        self.assertIn("Soon enough, but not yet steady.", self.text)

    def test_wind_and_surface_stand_beside_each_time(self):
        self.assertRegex(self.text, r"26 May 2026 +2\.05 s +−0\.2 m/s +track +spikes +gates +30 m +2\.06 \(\+1\.4\), 2\.06 \(−1\.6\)")
        self.assertRegex(self.text, r"23 May 2026, race +12\.04 s +\+0\.4 m/s")

    def test_the_track_stands_by_week_with_its_fast_metres_and_the_week_that_was_too_much(self):
        self.assertIn("Track by week", self.text)
        self.assertRegex(self.text, r"week 10, 9 Mar +2 of 2 +840 .*40 % more metres")
        self.assertRegex(self.text, r"week 3, 19 Jan +1 of 2 +600 +120 \* +120")
        self.assertRegex(" ".join(self.text.split()), r"Resisted 4 × 30 m, sled 9 kg")
        self.assertIn("Part of it is estimated", self.text)

    def test_every_page_is_numbered(self):
        pages = self.pages()
        for page in range(1, pages + 1):
            text = output("pdftotext", "-f", str(page), "-l", str(page), str(self.a4), "-")
            self.assertIn(f"page {page} of {pages}", text)

    def test_numbers_follow_no_locale(self):
        self.assertNotRegex(self.text, r"\d,\d")
        self.assertNotRegex(self.text, "[\u0660-\u0669\u066b]")

    def test_pounds_and_inches_where_asked_for(self):
        text = output("pdftotext", "-layout", str(self.letter), "-")
        self.assertIn("135.6 lb", text)  # 61.5 kg / 0.45359237 (exact by definition of the pound) = 135.58
        self.assertIn("7.9 in", text)  # 0.20 m / 0.0254
        self.assertNotRegex(text, r"\d kg\b")

    def test_the_same_report_gives_the_same_text(self):
        again = self.root / "again.pdf"
        self.assertEqual(write(again).returncode, 0)
        self.assertEqual(output("pdftotext", "-layout", str(again), "-"), self.text)

    def assert_nothing_is_cut(self, path, least_words):
        boxes = output("pdftotext", "-bbox", str(path), "-")
        words = re.findall(r'<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)"', boxes)
        self.assertGreater(len(words), least_words)
        for word in words:
            left, top, right, bottom = map(float, word)
            self.assertGreater(left, 40)
            self.assertLess(right, 595 - 40)
            self.assertGreater(top, 30)
            self.assertLess(bottom, 842 - 25)

    def test_no_text_is_cut_at_the_edge_of_the_page(self):
        self.assert_nothing_is_cut(self.a4, 500)

    def test_a_season_in_which_nothing_happened_is_a_report_too(self):
        empty = self.root / "empty.pdf"
        self.assertEqual(write(empty, "empty").returncode, 0)
        text = output("pdftotext", "-layout", str(empty), "-")
        self.assertIn("Week 1 of 29", text)
        self.assertIn("Cautions", text)
        self.assertNotIn("Decisions", text)
        self.assert_nothing_is_cut(empty, 50)

    def test_long_names_and_many_decisions_are_not_cut_and_every_page_has_its_table_head(self):
        crowded = self.root / "crowded.pdf"
        self.assertEqual(write(crowded, "crowded").returncode, 0)
        self.assert_nothing_is_cut(crowded, 5000)
        texts = [page for page in output("pdftotext", "-layout", str(crowded), "-").split("\f") if "followed" in page]
        self.assertGreater(len(texts), 5)
        for page in texts[1:]:
            self.assertIn("Reason and evidence", page)

    def test_a_place_that_cannot_be_written_is_said_and_nothing_is_left(self):
        missing = self.root / "nowhere" / "season.pdf"
        run = write(missing)
        self.assertEqual(run.returncode, 1)
        self.assertIn("nowhere", run.stderr)
        self.assertFalse(missing.parent.exists())

    def test_an_older_report_survives_a_failure(self):
        folder = self.root / "taken.pdf"
        folder.mkdir(exist_ok=True)
        (folder / "kept").write_text("kept")
        self.assertEqual(write(folder).returncode, 1)
        self.assertEqual(os.listdir(folder), ["kept"])
        self.assertEqual([name for name in os.listdir(self.root) if name.startswith("taken.pdf")], ["taken.pdf"])


if __name__ == "__main__":
    unittest.main()
