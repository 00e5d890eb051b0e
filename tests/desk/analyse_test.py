"""`fleetrung-desk analyse` on recordings whose repetitions are known in closed form."""

import json

from desk import (FIRST_STROKE_S, PERIOD_S, STROKE_M, STROKE_S, DeskTest, main, squat_csv)

REPETITION_KEYS = [
    "index", "eccentric_start_s", "concentric_start_s", "peak_velocity_at_s", "concentric_end_s", "mean_velocity_mps",
    "mean_propulsive_velocity_mps", "peak_velocity_mps", "time_to_peak_velocity_ms", "range_m", "displacement_to_peak_m",
    "concentric_duration_ms", "v100_mps", "v200_mps", "eccentric_peak_velocity_mps", "eccentric_duration_ms",
    "reversal_time_ms", "mean_acceleration_50ms_mps2", "mean_acceleration_100ms_mps2", "mean_acceleration_150ms_mps2",
    "mean_acceleration_200ms_mps2", "peak_acceleration_mps2", "peak_reversal_acceleration_mps2", "braking_slope_mps3",
    "drop_stop_time_ms", "stop_depth_m", "second_pull_time_ms", "other_peak_velocity_mps", "other_peak_time_ms",
    "peak_force_n", "mean_force_n", "mean_force_to_peak_n", "impulse_50ms_n_s", "impulse_100ms_n_s", "impulse_150ms_n_s",
    "impulse_200ms_n_s", "net_impulse_50ms_n_s", "net_impulse_100ms_n_s", "net_impulse_150ms_n_s", "net_impulse_200ms_n_s",
    "rfd_50ms_n_per_s", "rfd_100ms_n_per_s", "rfd_150ms_n_per_s", "rfd_200ms_n_per_s", "mean_power_w", "peak_power_w",
    "braking_force_slope_n_per_s", "uncertainty", "flags"]
METRICS = REPETITION_KEYS[5:-2]
# At 100 Hz a half squat with a counter-movement has no 50 ms window, no RFD, no second pull, and it is no drop squat.
ABSENT = [metric for metric in METRICS if "_50ms_" in metric or metric.startswith(("rfd", "second_pull", "other_peak"))
          or metric in ("drop_stop_time_ms", "stop_depth_m")]
FORCE = METRICS[METRICS.index("peak_force_n"):]
SYSTEM_KG = 120.5 + 0.878 * 80  # all of the body but shanks and feet (segment masses: engine/reps/body_share.hpp)

# Closed form of a minimum-jerk stroke of distance D in time T: mean D/T, peak 1.875 D/T at T/2 and D/2.
# Allowed: the errors that the first form of the program has to keep.
CLOSED_FORM = [
    ("mean_velocity_mps", STROKE_M / STROKE_S, 0.03),
    ("peak_velocity_mps", 1.875 * STROKE_M / STROKE_S, 0.03),
    ("time_to_peak_velocity_ms", 1000 * STROKE_S / 2, 15),
    ("range_m", STROKE_M, 0.03),
    ("displacement_to_peak_m", STROKE_M / 2, 0.03),
    ("eccentric_peak_velocity_mps", -1.875 * STROKE_M / 0.9, 0.03),
]


class Analyse(DeskTest):
    def analysed(self, content, *options):
        return json.loads(self.output("analyse", self.file("recording.csv", content), "--json", *options))

    plain_result = None

    def plain(self):
        if Analyse.plain_result is None:
            Analyse.plain_result = self.analysed(squat_csv())
        return Analyse.plain_result

    def test_the_object_has_the_stated_keys(self):
        result = self.plain()
        self.assertEqual(list(result), ["lift", "load_kg", "body_mass_kg", "system_mass_kg", "rate_hz", "class",
                                        "findings", "refused", "analysis_version", "reps", "set"])
        self.assertEqual((result["lift"], result["load_kg"]), ("half-squat", 120.5))
        self.assertAlmostEqual(result["rate_hz"], 100, places=6)
        for number, repetition in enumerate(result["reps"], 1):
            self.assertEqual(list(repetition), REPETITION_KEYS)
            self.assertEqual(list(repetition["uncertainty"]), METRICS)
            self.assertEqual(repetition["index"], number)
            self.assertEqual(repetition["flags"], [])
            for metric in METRICS:
                if metric in ABSENT or metric in FORCE:
                    self.assertIsNone(repetition[metric], metric)
                    self.assertIsNone(repetition["uncertainty"][metric], metric)
                else:
                    self.assertGreater(repetition["uncertainty"][metric], 0, metric)
        self.assertEqual(list(result["set"]["uncertainty"]), ["velocity_loss_share", "time_to_peak_drift_share"])

    def test_with_load_and_body_mass_there_is_force_and_power(self):
        result = self.analysed(squat_csv(), "--body-mass", "80")
        self.assertAlmostEqual(result["system_mass_kg"], SYSTEM_KG)
        for repetition in result["reps"]:
            for metric in FORCE:
                self.assertEqual(repetition[metric] is None, metric in ABSENT, metric)
            # From rest to rest the mean force is the weight, the mean power the weight's times the mean velocity.
            weight = SYSTEM_KG * 9.80665
            self.assertAlmostEqual(repetition["mean_force_n"] / weight, 1, delta=0.005)
            self.assertAlmostEqual(repetition["mean_power_w"] / (weight * repetition["mean_velocity_mps"]), 1, delta=0.005)
            # Greatest acceleration of a minimum-jerk stroke: 5.7735 D / T^2.
            peak = SYSTEM_KG * (9.80665 + 5.7735 * STROKE_M / STROKE_S**2)
            self.assertAlmostEqual(repetition["peak_force_n"] / peak, 1, delta=0.01)

    def test_all_tables_show_force_or_say_what_it_needs(self):
        path = self.file("recording.csv", squat_csv())
        self.assertIn("give body mass", self.output("analyse", path, "--all"))
        text = self.output("analyse", path, "--all", "--body-mass", "80")
        for word in ("mean acc 100", "reversal acc", "peak force", "impulse 200", "190.7 kg"):
            self.assertIn(word, text)

    def test_minimum_jerk_repetitions_have_the_numbers_of_the_closed_form(self):
        result = self.analysed(squat_csv(repetitions=3))
        self.assertEqual(len(result["reps"]), 3)
        for index, repetition in enumerate(result["reps"]):
            for metric, truth, allowed in CLOSED_FORM:
                self.assertAlmostEqual(repetition[metric], truth, delta=allowed, msg=f"{metric} of repetition {index + 1}")
            start = FIRST_STROKE_S + index * PERIOD_S
            self.assertAlmostEqual(repetition["concentric_start_s"], start, delta=0.015)
            self.assertAlmostEqual(repetition["peak_velocity_at_s"], start + STROKE_S / 2, delta=0.015)

    def test_the_command_line_goes_before_the_file(self):
        result = self.analysed(squat_csv(), "--lift", "parallel-squat", "--load", "80")
        self.assertEqual((result["lift"], result["load_kg"]), ("parallel-squat", 80))

    def test_without_a_lift_any_stroke_counts_and_has_no_lowering(self):
        result = self.analysed(squat_csv(comments=""))
        self.assertEqual((result["lift"], result["load_kg"], len(result["reps"])), ("free", None, 2))
        self.assertIsNone(result["reps"][0]["eccentric_peak_velocity_mps"])
        self.assertIsNone(result["reps"][0]["uncertainty"]["eccentric_peak_velocity_mps"])

    def test_no_repetition_is_no_error(self):
        result = self.analysed(squat_csv(repetitions=0))
        self.assertEqual(result["reps"], [])
        self.assertIsNone(result["set"]["velocity_loss_share"])
        text = self.output("analyse", self.file("still.csv", squat_csv(repetitions=0)))
        self.assertIn("0 repetitions", text)
        self.assertIn("--lift free", text)

    def test_semicolons_and_decimal_commas_give_the_same_numbers(self):
        self.assertEqual(self.analysed(squat_csv(delimiter=";", decimal=",")), self.plain())

    def test_another_program_s_columns_are_mapped(self):
        renamed = squat_csv().replace("time_s", "t").replace("acc_", "a_").replace("gyr_", "w_")
        mapping = "time_s=t," + ",".join(
            f"acc_{axis}_mps2=a_{axis}_mps2,gyr_{axis}_radps=w_{axis}_radps" for axis in "xyz")
        self.assertEqual(self.analysed(renamed, "--columns", mapping), self.plain())

    def test_the_table_shows_what_the_object_holds(self):
        path = self.file("recording.csv", squat_csv())
        result = self.plain()
        lines = self.output("analyse", path).splitlines()
        self.assertEqual(lines[0], "Half squat, 120.5 kg, 100.0 Hz: 2 repetitions")
        rows = [line.split() for line in lines if line.strip()[:1].isdigit()]
        self.assertEqual(len(rows), 2)
        for row, repetition in zip(rows, result["reps"]):
            self.assertEqual(row[0], str(repetition["index"]))
            self.assertAlmostEqual(float(row[2]), repetition["mean_velocity_mps"], delta=0.00051)
            self.assertIn(f'±{repetition["uncertainty"]["mean_velocity_mps"]:.3f}', row[3])


if __name__ == "__main__":
    main()
