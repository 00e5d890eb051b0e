"""What the tests of the desk program share: running it, and recordings whose repetitions are known in closed form."""

import math
import os
import pathlib
import subprocess
import sys
import tempfile
import unittest

PROGRAM = os.environ.get("FLEETRUNG_DESK", "fleetrung-desk")
SKIPPED = 77  # ctest shows this exit code as "Skipped"

GRAVITY = 9.80665  # m/s2, standard gravity
RATE = 100  # Hz
STROKE_M, STROKE_S = 0.40, 0.80  # every repetition: 0.40 m up in 0.80 s
FIRST_STROKE_S = 2.9  # the first upward stroke begins here: 2 s still, 0.9 s down
PERIOD_S = 0.9 + STROKE_S + 1.0


def run(*arguments, environment=None, **options):
    return subprocess.run([PROGRAM, *map(str, arguments)], capture_output=True, timeout=300,
                          env={**os.environ, **(environment or {})}, **options)


def minimum_jerk_acceleration(time, duration, distance):
    """Second derivative of d (10 s^3 - 15 s^4 + 6 s^5), s = time / duration. Source: Flash and Hogan 1985,
    doi:10.1523/JNEUROSCI.05-07-01688.1985 (from memory; the polynomial is checked by its end conditions)."""
    s = time / duration
    return distance / duration**2 * (60 * s - 180 * s**2 + 120 * s**3) if 0 <= s <= 1 else 0.0


def vertical_acceleration(time, repetitions):
    for index in range(repetitions):
        up = time - (FIRST_STROKE_S + index * PERIOD_S)
        if -0.9 <= up < 0:
            return -minimum_jerk_acceleration(up + 0.9, 0.9, STROKE_M)
        if 0 <= up <= STROKE_S:
            return minimum_jerk_acceleration(up, STROKE_S, STROKE_M)
    return 0.0


def squat_rows(repetitions):
    """(time, three accelerations, three turning rates) of a level sensor, still at both ends."""
    count = round((FIRST_STROKE_S + repetitions * PERIOD_S + 1.0) * RATE)
    for index in range(count):
        time = index / RATE
        # A little noise of fixed pattern, so that no still span is suspiciously dead.
        noise = [0.01 * math.sin(index * step) for step in (1.7, 2.3, 2.9)]
        yield [time, noise[0], noise[1], GRAVITY + vertical_acceleration(time, repetitions) + noise[2],
               1e-3 * noise[1], 1e-3 * noise[2], 1e-3 * noise[0]]


HEADER = ["time_s", "acc_x_mps2", "acc_y_mps2", "acc_z_mps2", "gyr_x_radps", "gyr_y_radps", "gyr_z_radps"]


def squat_csv(repetitions=2, delimiter=",", decimal=".", comments="# lift: half-squat\n# load_kg: 120.5\n"):
    lines = [delimiter.join(HEADER)]
    lines += [delimiter.join(repr(cell).replace(".", decimal) for cell in row) for row in squat_rows(repetitions)]
    return comments + "\n".join(lines) + "\n"


# An invented season of an invented athlete.
SEASON = {
    "name": "Outdoor season", "start": "2026-01-05",
    "competitions": [{"date": "2026-06-14", "name": "Spring meeting", "priority": "C"},
                     {"date": "2026-08-02", "name": "The main race", "priority": "A", "main": True}],
    "training_days": ["mon", "wed", "fri"], "sprint_days": ["mon", "wed", "fri"],
    "box_heights_cm": [45, 35, 25.5, 15, 10, 20], "equipment": ["bar", "rack", "pins", "blocks"],
    "ladders": ["squat", "clean", "drop-jump"],
    "athlete": {"name": "Ylva Test", "birth_date": "2001-04-12", "training_years": 6, "body_mass_kg": 72.5},
}


class DeskTest(unittest.TestCase):
    """Gives every test a folder of its own."""

    def setUp(self):
        self.temporary = tempfile.TemporaryDirectory()
        self.addCleanup(self.temporary.cleanup)
        self.folder = pathlib.Path(self.temporary.name)

    def file(self, name, content):
        path = self.folder / name
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return path

    def output(self, *arguments, **options):
        result = run(*arguments, **options)
        self.assertEqual(result.returncode, 0, result.stderr.decode())
        self.assertEqual(result.stderr, b"")
        return result.stdout.decode()


def main():
    """Runs the tests of the calling file; all skipped counts as skipped."""
    program = unittest.main(exit=False, verbosity=2)
    result = program.result
    if not result.wasSuccessful():
        sys.exit(1)
    sys.exit(SKIPPED if result.testsRun and len(result.skipped) == result.testsRun else 0)
