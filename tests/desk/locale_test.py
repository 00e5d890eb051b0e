"""The same bytes under every locale. LOCPATH must hold the locales of tests/support/make_locales.py."""

import json
import os
import pathlib

from desk import SEASON, DeskTest, main, squat_csv

LOCALES = ("C", "de_DE.UTF-8", "ar_EG.UTF-8", "ps_AF.UTF-8")


class Locales(DeskTest):
    def same_under_every_locale(self, *arguments):
        outputs = {name: self.output(*arguments, environment={"LC_ALL": name, "LANG": name}) for name in LOCALES}
        self.assertEqual(len(set(outputs.values())), 1, outputs)
        return outputs["C"]

    def test_the_locales_are_there(self):
        for name in LOCALES[1:]:
            self.assertTrue((pathlib.Path(os.environ["LOCPATH"]) / name).is_dir(), name)

    def test_analyse_gives_the_same_bytes(self):
        plain = self.file("plain.csv", squat_csv(repetitions=1))
        self.assertIn("82.5 kg", self.same_under_every_locale("analyse", plain, "--load", "82.5"))
        commas = self.file("commas.csv", squat_csv(repetitions=1, delimiter=";", decimal=","))
        self.assertIn('"load_kg": 120.5', self.same_under_every_locale("analyse", commas, "--json"))

    def test_plan_gives_the_same_bytes(self):
        season = self.file("season.json", json.dumps(SEASON))  # a box of 25.5 cm, a body mass of 72.5 kg
        self.same_under_every_locale("plan", season)
        self.same_under_every_locale("plan", season, "--json")


if __name__ == "__main__":
    main()
