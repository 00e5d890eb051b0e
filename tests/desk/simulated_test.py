"""Simulated sets from file to repetitions, against the truth that the simulator writes beside them.

The allowed errors are those of the project's first form (rms over a set): mean velocity 0.03 m/s, time to peak 15 ms, range 3 cm.
"""

import csv
import json
import math
import os
import subprocess

from desk import DeskTest, main

SIMULATE = os.environ["FLEETRUNG_SIMULATE"]
ALLOWED = {"mean_velocity_mps": 0.03, "time_to_peak_velocity_ms": 15, "range_m": 0.03}

# Eccentric-first and concentric-first, touch-and-go and paused, plain and with everything around a set.
SETS = [
    ("half-squat", ["--rate", 100]),
    ("half-squat", ["--rate", 200, "--bottom-pause", 1.0, "--any-mounting"]),
    ("parallel-squat", ["--rate", 200, "--rack-work"]),
    ("bench-press", ["--rate", 100, "--top-pause", 0]),
    ("block-pull", ["--rate", 200]),
    ("floor-power-clean", ["--rate", 400, "--repetitions", 3]),
]


class Simulated(DeskTest):
    def simulated(self, lift, options):
        path = self.folder / "set.csv"
        subprocess.run([SIMULATE, path, "--lift", lift, "--load", "80", "--seed", "7", *map(str, options)], check=True,
                       capture_output=True)
        with open(self.folder / "set.truth.csv", encoding="utf-8", newline="") as file:
            truth = [row for row in csv.DictReader(file) if row["point"] == "sensor"]
        for row in truth:
            row["time_to_peak_velocity_ms"] = 1000 * float(row["time_to_peak_velocity_s"])
        return json.loads(self.output("analyse", path, "--json")), truth

    def test_every_repetition_is_found_none_is_invented_and_the_numbers_are_near_the_truth(self):
        for lift, options in SETS:
            with self.subTest(lift=lift, options=options):
                result, truth = self.simulated(lift, options)
                self.assertEqual((result["lift"], result["load_kg"]), (lift, 80))
                self.assertGreater(len(truth), 0)
                self.assertEqual(len(result["reps"]), len(truth))
                for metric, allowed in ALLOWED.items():
                    errors = [rep[metric] - float(row[metric]) for rep, row in zip(result["reps"], truth)]
                    rms = math.sqrt(sum(error**2 for error in errors) / len(errors))
                    self.assertLess(rms, allowed, f"{metric}: {errors}")
                for rep, row in zip(result["reps"], truth):
                    self.assertLess(float(row["concentric_start_s"]), rep["peak_velocity_at_s"])
                    self.assertLess(rep["peak_velocity_at_s"], float(row["concentric_end_s"]))

    def test_a_set_without_repetitions_has_none(self):
        result, truth = self.simulated("half-squat", ["--rate", 100, "--repetitions", 0, "--rack-work"])
        self.assertEqual((len(truth), result["reps"]), (0, []))


if __name__ == "__main__":
    main()
