"""Split times: the keys of the JSON, published splits, every start, what is refused and how."""

import json

from desk import DeskTest, main, run

KEYS = ["vmax_mps", "tau_s", "start_offset_s", "f0_n", "v0_mps", "pmax_w", "rf_max", "drf_per_mps", "residual_rms_s",
        "standard_error"]
# Vmax 10 m/s, tau 1.25 s, in closed form (Lambert's function).
EXACT = "distance_m,time_s\n5,1.312620\n10,1.997029\n15,2.592955\n20,3.149375\n30,4.206817\n40,5.230968\n"


class Sprint(DeskTest):
    def splits(self, text):
        return self.file("splits.csv", text)

    def test_exact_splits_give_the_sprint_with_force_and_power(self):
        result = json.loads(self.output("sprint", self.splits(EXACT), "--mass", "75", "--stature", "1.8", "--json"))
        self.assertEqual([key for key in KEYS if key not in result], [])
        self.assertAlmostEqual(result["vmax_mps"], 10, delta=1e-3)
        self.assertAlmostEqual(result["tau_s"], 1.25, delta=1e-3)
        self.assertAlmostEqual(result["f0_n"], 592.57, delta=3)
        self.assertAlmostEqual(result["pmax_w"], 1549.6, delta=8)

    def test_without_body_mass_there_is_no_force(self):
        result = json.loads(self.output("sprint", self.splits(EXACT), "--json"))
        self.assertEqual((result["f0_n"], result["pmax_w"]), (None, None))

    def test_decimal_commas_are_read(self):
        text = EXACT.replace(",", ";").replace(".", ",")
        self.assertAlmostEqual(json.loads(self.output("sprint", self.splits(text), "--json"))["vmax_mps"], 10, delta=1e-3)

    def test_people_get_top_speed_and_what_was_left_out(self):
        text = self.output("sprint", self.splits(EXACT.replace("2.592955", "2.752955")))
        self.assertIn("top speed 10.0", text)
        self.assertIn("check this gate", text)

    def test_bad_input_is_refused_with_its_place(self):
        for text, options, place in (
                ("distance_m,time\n10,2\n", [], "line 1"),
                ("distance_m,time_s\n10,2\n20,fast\n", [], "line 3, column time_s"),
                ("distance_m,time_s\n10,2\n20,3\n", [], "3 splits"),
                (EXACT, ["--start", "jump"], "--start"),
                (EXACT, ["--start", "beam"], "--beam"),
                (EXACT, ["--mass", "75"], "--stature"),
                (EXACT, ["--mass", "75", "--stature", "180"], "--stature")):
            with self.subTest(place):
                result = run("sprint", self.splits(text), *options)
                self.assertEqual((result.returncode, result.stdout), (2, b""))
                self.assertIn(place, result.stderr.decode())


if __name__ == "__main__":
    main()
