#!/usr/bin/env python3
"""Makes rotation.csv and stroke.csv: what SciPy makes of rates and forces. tests/engine/motion/reference_test.cpp compares.

  /usr/bin/python3 tests/reference/make_motion.py     (Debian: python3-numpy python3-scipy)

rotation.csv: a rate history that cones, and the attitude by scipy.spatial.transform.Rotation: products of turns by the mean
of neighbouring rates (fine: the same history in steps 64 times as short, without the sensor's sampling).
stroke.csv: rest, one lift of 0.6 m in 1.1 s while the sensor turns about two axes, rest. Specific force and rate are exact;
attitude by Rotation as above, velocity and height by scipy.integrate.cumulative_trapezoid of the levelled force.
"""

import pathlib

import numpy as np
import scipy
from scipy.integrate import cumulative_trapezoid
from scipy.spatial.transform import Rotation

FOLDER = pathlib.Path(__file__).parent
GRAVITY = 9.80665


def integrated(rate, time, first=None):
    """Attitude at each instant, sensor to world."""
    attitude = [first or Rotation.identity()]
    for i in range(1, len(time)):
        turn = Rotation.from_rotvec(0.5 * (rate[i - 1] + rate[i]) * (time[i] - time[i - 1]))
        attitude.append(attitude[-1] * turn)
    return Rotation.concatenate(attitude)


def write(name, columns):
    names = list(columns)
    values = np.column_stack([columns[key] for key in names])
    with open(FOLDER / name, "w", encoding="utf-8", newline="") as file:
        file.write(f"# made by make_motion.py with NumPy {np.__version__} and SciPy {scipy.__version__}\r\n")
        file.write(",".join(names) + "\r\n")
        for row in values:
            file.write(",".join(repr(round(float(value), 12) + 0.0) for value in row) + "\r\n")


def named(prefix, suffixes, values):
    return {f"{prefix}_{suffix}": values[:, i] for i, suffix in enumerate(suffixes)}


def coning(time):
    return np.column_stack([3.0 * np.cos(7 * time), 3.0 * np.sin(7 * time), 0.8 + 0.5 * np.sin(2 * time)])


def rotation():
    hz, seconds, finer = 200, 2, 64
    time = np.arange(hz * seconds + 1) / hz
    fine_time = np.arange(hz * seconds * finer + 1) / (hz * finer)
    rate = np.round(coning(time), 12)
    write("rotation.csv", {"time_s": time, **named("rate", "xyz", rate),
                           **named("q", "xyzw", integrated(rate, time).as_quat()),
                           **named("fine", "xyzw", integrated(coning(fine_time), fine_time)[::finer].as_quat())})


def quintic(s):
    """10 s^3 - 15 s^4 + 6 s^5 and its first two derivatives, resting outside 0..1."""
    s = np.clip(s, 0, 1)
    return (10 * s**3 - 15 * s**4 + 6 * s**5, 30 * s**2 - 60 * s**3 + 30 * s**4, 60 * s - 180 * s**2 + 120 * s**3)


def stroke():
    hz, rest, lift = 200, 1.2, 1.1
    time = np.arange(int(hz * (2 * rest + lift)) + 1) / hz
    share, slope, bend = quintic((time - rest) / lift)
    rise, sway, turn, roll = 0.6, 0.04, 0.7, 0.15  # m, m, rad, rad
    acceleration = np.column_stack([sway * bend, 0.3 * sway * bend, rise * bend]) / lift**2
    pitch = Rotation.from_rotvec(np.outer(turn * share, [0, 1, 0]))
    tilt = Rotation.from_rotvec(np.outer(roll * share, [1, 0, 0]))
    mounting = Rotation.from_euler("xyz", [0.4, -0.9, 1.3])
    # world <- pitch <- tilt <- mounting: sensor axes to world
    attitude = pitch * tilt * mounting
    rate = (tilt.inv().apply(np.outer(turn * slope / lift, [0, 1, 0])) + np.outer(roll * slope / lift, [1, 0, 0]))
    rate = np.round(mounting.inv().apply(rate), 12)
    force = np.round(attitude.inv().apply(acceleration + [0, 0, GRAVITY]), 12)

    found = integrated(rate, time, attitude[0])
    levelled = found.apply(force) - [0, 0, GRAVITY]
    velocity = cumulative_trapezoid(levelled, time, axis=0, initial=0)
    write("stroke.csv", {"time_s": time, **named("force", "xyz", force), **named("rate", "xyz", rate),
                         **named("q", "xyzw", found.as_quat()), **named("velocity", "xyz", velocity),
                         "height": cumulative_trapezoid(velocity[:, 2], time, initial=0)})
    print("end of stroke: velocity", velocity[-1], "height", cumulative_trapezoid(velocity[:, 2], time)[-1])
    fine = found.inv() * attitude
    print("attitude against the closed form, largest angle [rad]", fine.magnitude().max())


if __name__ == "__main__":
    rotation()
    stroke()
