"""`fleetrung-desk verify` on a small invented store (make_store.cpp)."""

import json
import os
import sqlite3
import subprocess

from desk import SEASON, DeskTest, main, run

MAKE_STORE = os.environ["FLEETRUNG_MAKE_STORE"]
DECISIONS = 3 * len(SEASON["ladders"])


class Verify(DeskTest):
    def setUp(self):
        super().setUp()
        self.store = self.folder / "store"
        self.store.mkdir()
        subprocess.run([MAKE_STORE, self.store, self.file("season.json", json.dumps(SEASON))], check=True)

    def tamper(self, sql):
        with sqlite3.connect(self.store / "athletes.fleetrung") as connection:
            changed = connection.execute(sql).rowcount
        connection.close()
        self.assertEqual(changed, 1)

    def verify(self, *options, code):
        result = run("verify", self.store, *options)
        self.assertEqual((result.returncode, result.stderr), (code, b""), result.stdout.decode())
        return result.stdout.decode()

    def test_a_store_as_it_was_written_is_well(self):
        self.assertIn(f"{DECISIONS} decisions of 1 season taken again, 0 differences; the files are whole",
                      self.verify(code=0))
        found = json.loads(self.verify("--json", code=0))
        self.assertEqual((found["all_well"], found["decisions_checked"], found["differences"]), (True, DECISIONS, []))

    def test_a_decision_that_was_changed_is_named_on_one_line(self):
        self.tamper("UPDATE decision SET evidence = replace(evidence, '\"to\":\"full\"', '\"to\":\"half\"'),"
                    " rung_to = 'half' WHERE ladder = 'squat' AND day = '2026-01-07'")
        lines = self.verify(code=1).splitlines()
        self.assertEqual(lines[0], "differs: Ylva Test, 2026-01-07, squat, to: stored \"half\", derived \"full\"")
        self.assertEqual(len(lines), 2)
        difference, = json.loads(self.verify("--json", code=1))["differences"]
        self.assertEqual((difference["day"], difference["ladder"], difference["field"], difference["stored"],
                          difference["derived"]), ("2026-01-07", "squat", "to", "half", "full"))

    def test_a_kept_input_that_was_changed_is_named_as_file_and_with_its_decisions(self):
        self.tamper("UPDATE document SET content = (SELECT content FROM document WHERE day = '2026-01-05')"
                    " WHERE day = '2026-01-09'")
        lines = self.verify(code=1).splitlines()
        self.assertIn("no longer the one it was named after", lines[0])
        self.assertTrue(lines[0].startswith("files: document "))
        named = [line for line in lines if line.startswith("differs: ") and "2026-01-09" in line]
        self.assertEqual(len(named), len(SEASON["ladders"]))
        self.assertTrue(all("kept input" in line for line in named))

    def test_decisions_from_before_inputs_were_kept_are_counted_and_no_fault(self):
        with sqlite3.connect(self.store / "athletes.fleetrung") as connection:
            connection.execute("UPDATE decision SET input = NULL, rules = NULL")
        connection.close()
        self.assertIn(f"not checked: {DECISIONS} decisions: no inputs kept (made before", self.verify(code=0))

    def test_the_store_is_left_as_it_was(self):
        before = (self.store / "athletes.fleetrung").read_bytes()
        self.verify(code=0)
        self.assertEqual((self.store / "athletes.fleetrung").read_bytes(), before)

    def test_what_is_no_store_is_refused(self):
        for path in (self.folder / "absent.fleetrung", self.file("wrong.fleetrung", b"not a store\n" * 500)):
            result = run("verify", path)
            self.assertEqual((result.returncode, result.stdout), (2, b""))
            self.assertIn(str(path), result.stderr.decode())


if __name__ == "__main__":
    main()
