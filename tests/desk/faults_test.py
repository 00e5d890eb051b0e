"""Recordings as a real sensor and a real radio give them: what is mended is told, what cannot be measured is refused."""

import json
import os
import subprocess

from desk import DeskTest, main, run

SIMULATE = os.environ["FLEETRUNG_SIMULATE"]


class Faults(DeskTest):
    def simulated(self, *options):
        path = self.folder / "set.csv"
        subprocess.run([SIMULATE, path, "--lift", "half-squat", "--rate", "200", "--seed", "7", *map(str, options)],
                       check=True, capture_output=True)
        return path

    def analysed(self, *options):
        result = run("analyse", self.simulated(*options), "--json")
        self.assertEqual(result.returncode, 0, result.stderr.decode())
        return json.loads(result.stdout), result.stderr.decode()

    def test_a_clean_recording_is_class_a_and_nothing_is_said(self):
        result, notes = self.analysed()
        self.assertEqual((result["class"], result["findings"], result["refused"], notes), ("A", [], [], ""))

    def test_packets_off_the_air_are_put_in_order_and_give_the_same_numbers(self):
        clean, _ = self.analysed()
        result, notes = self.analysed("--doubled", 0.1, "--swapped", 0.1, "--as-received")
        self.assertEqual([finding["fault"] for finding in result["findings"]], ["doubled", "late"])
        self.assertEqual((result["class"], result["reps"]), ("A", clean["reps"]))
        self.assertEqual(notes.count(": note: "), 2)

    def test_a_clock_that_stepped_back_is_named(self):
        result, notes = self.analysed("--clock-step", -2, "--clock-step-at", 1, "--as-received")
        self.assertEqual([finding["fault"] for finding in result["findings"]], ["clock-step"])
        self.assertEqual((result["class"], len(result["reps"])), ("B", 5))
        self.assertIn("stepped back by 2.000 s", notes)

    def test_a_repetition_with_a_gap_inside_is_refused_by_name(self):
        result, notes = self.analysed("--burst-loss", 0.3, "--burst-repetition", 2)
        self.assertEqual((result["class"], len(result["reps"]), len(result["refused"])), ("B", 4, 1))
        self.assertEqual(result["refused"][0]["fault"], "gap")
        self.assertIn("is refused: samples are missing inside the concentric phase", notes)

    def test_a_sensor_that_cannot_be_trusted_is_refused_with_its_axis(self):
        for options, place in [(["--stuck-axis", "accelerometer-y"], "accelerometer y: "),
                               (["--stuck-axis", "gyroscope-z"], "gyroscope z: "),
                               (["--wobble", 0.6, "--swapped-sign", "y"], "gyroscope y: ")]:
            with self.subTest(place):
                path = self.simulated(*options)
                result = run("analyse", path)
                self.assertEqual((result.returncode, result.stdout), (2, b""))
                self.assertTrue(result.stderr.decode().startswith(f"{path}:{place}"), result.stderr.decode())


if __name__ == "__main__":
    main()
