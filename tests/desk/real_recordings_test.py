"""Recordings of a real inertial sensor moved by hand, against optical motion capture: found, missed, invented, and the
errors of peak velocity, rise and instant of the peak, as they are.

Data: Laidig, Caruso, Cereatti, Seel 2021, "BROAD - A Benchmark for Robust Inertial Orientation Estimation",
doi:10.3390/data6070072 (CC BY 4.0); the list of up-strokes is derived from its optical positions. It is no part of this
checkout: FLEETRUNG_DATA names the folder, and without it the test is skipped.

Like with like: the list's time to peak starts at 0.05 m/s, so the *instant* of the peak is compared. The list joins strokes
across dips of less than 0.15 m, where we see two: beside the listed rise, the optical rise over our own stroke is compared.
And where the top of a stroke's velocity is flat, its instant is chance: strokes with a clear peak are also told apart.

The list holds strokes of 0.15 m and more. A stroke that only we find is looked up in the optical positions: it is invented
where the sensor did not rise by 3 cm, and not judged where the cameras had lost it.
"""

import bisect
import csv
import gzip
import json
import math
import os
import pathlib
import sys

from desk import SKIPPED, DeskTest, main

DATA = pathlib.Path(os.environ.get("FLEETRUNG_DATA", "../shared/data")) / "imu-optical-translation"
TRIALS = ("10_undisturbed_slow_translation_A", "12_undisturbed_slow_translation_C",
          "14_undisturbed_slow_translation_with_breaks_B")
COLUMNS = ("time_s=t_s,acc_x_mps2=acc_x,acc_y_mps2=acc_y,acc_z_mps2=acc_z,"
           "gyr_x_radps=gyr_x,gyr_y_radps=gyr_y,gyr_z_radps=gyr_z")
INVENTED_BELOW_M = 0.03

# What is compared, and what the project wants to reach on these recordings.
WANTED = {"peak velocity [m/s]": 0.05, "rise, as listed [m]": 0.02, "rise over our stroke [m]": 0.02,
          "instant of peak [s]": 0.015, "instant of a clear peak [s]": 0.015}


def true_strokes(trial):
    with open(DATA / "vertical_upstrokes.csv", encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            if row["trial"] == trial:
                values = {key: float(value) for key, value in row.items() if key != "trial"}
                yield {"from": values["t_trough_s"], "to": values["t_peak_s"], "rise": values["rise_m"],
                       "peak": values["peak_v_mps"], "at": values["t_v_above_0p05_s"] + values["time_to_peak_v_s"]}


def optical_heights(text):
    """(time, height) of every row; nan where the cameras had lost the sensor."""
    rows = csv.reader(text.splitlines())
    header = next(rows)
    time, height = header.index("t_s"), header.index("pos_z")
    return [(float(row[time]), float(row[height])) for row in rows]


def optical_rise(heights, start, end):
    """Largest rise from an earlier to a later instant; None where the cameras had lost the sensor in between."""
    rise, lowest = 0.0, math.inf
    for time, height in heights:
        if start <= time <= end:
            if math.isnan(height):
                return None
            lowest = min(lowest, height)
            rise = max(rise, height - lowest)
    return rise


def optical_velocity(heights, time):
    """m/s, over 0.07 s around the instant."""
    before, after = (bisect.bisect_left(heights, (time + shift,)) for shift in (-0.035, 0.035))
    return (heights[after][1] - heights[before][1]) / (heights[after][0] - heights[before][0])


def has_clear_peak(heights, stroke):
    """False where the velocity still reaches 98 % of its peak a tenth of the stroke's duration away from it."""
    peak, duration = optical_velocity(heights, stroke["at"]), stroke["to"] - stroke["from"]
    instants = (stroke["from"] + duration * step / 100 for step in range(100))
    return all(abs(time - stroke["at"]) <= 0.1 * duration or optical_velocity(heights, time) < 0.98 * peak
               for time in instants)


def matched(strokes, repetitions):
    """Pairs of a true stroke and the repetition whose peak lies inside it (the nearest where there are two)."""
    free = list(repetitions)
    for stroke in strokes:
        inside = [rep for rep in free if stroke["from"] <= rep["peak_velocity_at_s"] <= stroke["to"]]
        best = min(inside, key=lambda rep: abs(rep["peak_velocity_at_s"] - stroke["at"]), default=None)
        if best:
            free.remove(best)
        yield stroke, best


def rms(values):
    return math.sqrt(sum(value * value for value in values) / len(values)) if values else math.nan


class RealRecordings(DeskTest):
    def judge(self, trial):
        text = gzip.decompress((DATA / f"{trial}.csv.gz").read_bytes()).decode()
        recording = self.file("recording.csv", text)
        analysis = json.loads(self.output("analyse", recording, "--columns", COLUMNS, "--lift", "free", "--json"))
        strokes = list(true_strokes(trial))
        pairs = list(matched(strokes, analysis["reps"]))
        found = [(stroke, rep) for stroke, rep in pairs if rep]
        others = [rep for rep in analysis["reps"] if all(rep is not pair for _, pair in found)]
        heights = optical_heights(text)
        rises = [(rep, optical_rise(heights, rep["concentric_start_s"], rep["concentric_end_s"])) for rep in others]
        return {
            "strokes": len(strokes), "found": len(found), "missed": [stroke for stroke, rep in pairs if not rep],
            "invented": [(rep, rise) for rep, rise in rises if rise is not None and rise < INVENTED_BELOW_M],
            "further": sum(rise is not None and rise >= INVENTED_BELOW_M for _, rise in rises),
            "unseen": sum(rise is None for _, rise in rises),
            "peak velocity [m/s]": [rep["peak_velocity_mps"] - stroke["peak"] for stroke, rep in found],
            "rise, as listed [m]": [rep["range_m"] - stroke["rise"] for stroke, rep in found],
            "rise over our stroke [m]": [rep["range_m"] - optical_rise(heights, rep["concentric_start_s"],
                                                                       rep["concentric_end_s"]) for _, rep in found],
            "instant of peak [s]": [rep["peak_velocity_at_s"] - stroke["at"] for stroke, rep in found],
            "instant of a clear peak [s]": [rep["peak_velocity_at_s"] - stroke["at"] for stroke, rep in found
                                            if has_clear_peak(heights, stroke)],
        }

    def test_no_up_stroke_of_the_optical_list_is_missed_and_none_is_invented(self):
        results = {trial: self.judge(trial) for trial in TRIALS}
        print("\n\ntrial  strokes  found  missed  invented  further, optics agree  further, optics blind")
        for trial, result in results.items():
            print(f'{trial[:2]:>5}  {result["strokes"]:7}  {result["found"]:5}  {len(result["missed"]):6}  '
                  f'{len(result["invented"]):8}  {result["further"]:21}  {result["unseen"]:21}')
        print(f'\n{"error":28}  rms     mean     largest  strokes  wanted (rms)')
        for name, wanted in WANTED.items():
            errors = [error for result in results.values() for error in result[name]]
            print(f"{name:28}  {rms(errors):.4f}  {sum(errors) / max(1, len(errors)):+.4f}  "
                  f"{max(map(abs, errors), default=math.nan):7.4f}  {len(errors):7}  {wanted}")
        sys.stdout.flush()
        for trial, result in results.items():
            with self.subTest(trial):
                self.assertGreater(result["strokes"], 0)
                self.assertEqual(result["missed"], [])
                self.assertEqual(result["invented"], [])
                self.assertLess(rms(result["peak velocity [m/s]"]), WANTED["peak velocity [m/s]"])


if __name__ == "__main__":
    if not DATA.is_dir():
        print(f"skipped: no recordings in {DATA}")
        sys.exit(SKIPPED)
    main()
