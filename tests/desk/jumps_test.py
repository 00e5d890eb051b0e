"""Jumps from a recording: the keys of the JSON, the numbers against the simulator's truth, the table, and bad input."""

import csv
import json
import os
import subprocess

from desk import GRAVITY, DeskTest, main, run

SIMULATE = os.environ["FLEETRUNG_SIMULATE"]
KEYS = ["landing_s", "takeoff_s", "second_landing_s", "contact_s", "flight_s", "height_m", "rsi_mps",
        "flight_contact_ratio", "uncertainty", "flags"]


class Jumps(DeskTest):
    def simulated(self, lift, *options):
        path = self.folder / "jumps.csv"
        subprocess.run([SIMULATE, path, "--lift", lift, "--rate", "400", "--repetitions", "4", "--seed", "11", "--any-mounting",
                        *map(str, options)], check=True, capture_output=True)
        with open(self.folder / "jumps.jumps.csv", encoding="utf-8", newline="") as file:
            return path, list(csv.DictReader(file))

    def test_drop_jumps_have_contact_flight_height_and_both_indices(self):
        for worn, options in (("waist", []), ("shoe", ["--on-shoe"])):
            with self.subTest(worn):
                path, truth = self.simulated("drop-jump", "--range", 0.30, "--contact", 0.21, "--jump-height", 0.35, *options)
                result = json.loads(self.output("jumps", path, "--worn", worn, "--kind", "drop", "--box", 0.3, "--json"))
                self.assertEqual((result["gravity_mps2"], result["gravity_source"]), (GRAVITY, "standard"))
                self.assertEqual(len(result["jumps"]), len(truth))
                for jump, row in zip(result["jumps"], truth):
                    self.assertEqual([key for key in KEYS if key not in jump], [])
                    contact = float(row["takeoff_s"]) - float(row["landing_s"])
                    flight = float(row["second_landing_s"]) - float(row["takeoff_s"])
                    self.assertAlmostEqual(jump["contact_s"], contact, delta=0.007)
                    self.assertAlmostEqual(jump["flight_s"], flight, delta=0.007)
                    self.assertAlmostEqual(jump["height_m"], GRAVITY * jump["flight_s"]**2 / 8)
                    self.assertAlmostEqual(jump["rsi_mps"], jump["height_m"] / jump["contact_s"])
                    self.assertAlmostEqual(jump["flight_contact_ratio"], jump["flight_s"] / jump["contact_s"])
                    self.assertGreater(jump["uncertainty"]["contact_s"], 0)
                    self.assertEqual(jump["stretch_shortening"], "fast")

    def test_jumps_from_standing_have_no_contact(self):
        path, truth = self.simulated("counter-movement-jump")
        result = json.loads(self.output("jumps", path, "--json"))
        self.assertEqual([jump["kind"] for jump in result["jumps"]], ["counter-movement"] * len(truth))
        for jump in result["jumps"]:
            self.assertEqual((jump["landing_s"], jump["contact_s"], jump["rsi_mps"]), (None, None, None))
            self.assertGreater(jump["takeoff_velocity_mps"], 1)

    def test_a_jump_that_ends_with_the_recording_has_no_flight(self):
        path, _ = self.simulated("drop-jump", "--mishap", "ends-in-flight")
        last = json.loads(self.output("jumps", path, "--json"))["jumps"][-1]
        self.assertEqual((last["flight_s"], last["height_m"]), (None, None))
        self.assertIn("no-second-landing", last["flags"])
        self.assertIsNotNone(last["contact_s"])

    def test_people_get_a_table(self):
        path, truth = self.simulated("ankle-hop")
        text = self.output("jumps", path, "--kind", "hops")
        self.assertIn(f"{len(truth)} jumps", text)
        self.assertIn("standard g of 9.80665", text)
        self.assertIn("No jump was found", self.output("jumps", path, "--kind", "drop"))

    def test_the_given_gravity_is_used_and_named(self):
        path, _ = self.simulated("drop-jump")
        result = json.loads(self.output("jumps", path, "--gravity", "9.78", "--json"))
        self.assertEqual((result["gravity_mps2"], result["gravity_source"]), (9.78, "given"))

    def test_bad_input_is_refused_with_what_to_do(self):
        path, _ = self.simulated("drop-jump")
        for options, word in ((["--kind", "cartwheel"], "--kind: "), (["--worn", "hat"], "--worn: "),
                              (["--box", "30"], "--box: "), (["--box", "high"], "--box: "),
                              (["--gravity", "1.62"], "--gravity: "), (["--columns", "speed=v"], "--columns: ")):
            with self.subTest(options):
                result = run("jumps", path, *options)
                self.assertEqual((result.returncode, result.stdout), (2, b""))
                self.assertIn(word, result.stderr.decode())
                self.assertEqual(result.stderr.count(b"\n"), 1)
        broken = self.file("broken.csv", "time_s,acc_x_mps2,acc_y_mps2,acc_z_mps2\n0,0,0,9.8\n0.01,0,fast,9.8\n")
        result = run("jumps", broken, "--json")
        self.assertEqual((result.returncode, result.stdout), (2, b""))
        self.assertIn(f"{broken}:line 3, column acc_y_mps2: ", result.stderr.decode())
        self.assertEqual(run("jumps", self.folder / "absent.csv").returncode, 2)


if __name__ == "__main__":
    main()
