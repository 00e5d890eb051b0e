"""What a competent user would write with NumPy and SciPy to get repetitions from one inertial recording.

Gravity and gyroscope offset from the first still second; attitude by integrating the gyroscope; vertical acceleration,
low-passed without phase; velocity by the trapezoidal rule, detrended between the spans that stand still by their
variance; repetitions are peaks of velocity with enough rise between the crossings of a small threshold.

Its constants were chosen by `compare --tune --seed 1001 --sets 68`, on other simulated sets than the comparison's; the
high-pass is the one tuned value that was moved (0.05 there, 0.15 costs little there and helps on the optical recordings).
"""

import numpy as np
from scipy.integrate import cumulative_trapezoid
from scipy.ndimage import binary_opening, find_objects, label, uniform_filter1d
from scipy.signal import butter, find_peaks, sosfiltfilt
from scipy.spatial.transform import Rotation

SETTINGS = {
    "low_pass_hz": 6.0,
    "still_force": 0.05,  # m/s2, standard deviation of the length of the force over the window
    "still_rate": 0.02,  # rad/s, the same of the angular rate's length
    "still_s": 0.2,
    "least_peak": 0.25,  # m/s
    "start_speed": 0.01,  # m/s
    "longest_s": 20.0,  # without anything still: then the velocity is high-passed
    "high_pass_hz": 0.15,
}

LONGEST_STROKE = 3.0  # s, to each side of its peak


def attitudes(rate, time):
    """Products of all turns up to each sample, by doubling: a loop in Python would cost far more."""
    step = np.diff(time, prepend=time[0])
    middle = 0.5 * (rate + np.vstack([rate[:1], rate[:-1]]))
    turns = Rotation.from_rotvec(middle * step[:, None])
    reach = 1
    while reach < len(time):
        joined = turns[:-reach] * turns[reach:]
        turns = Rotation.concatenate([turns[:reach], joined])
        reach *= 2
    return turns


def spread(values, width):
    mean = uniform_filter1d(values, width, axis=0, mode="nearest")
    square = uniform_filter1d(values * values, width, axis=0, mode="nearest")
    return np.sqrt(np.maximum(square - mean * mean, 0))


def first_still_second(force, rate, count):
    """The first second that is quiet, else the quietest."""
    unrest = spread(force, count).max(axis=1) + spread(rate, count).max(axis=1)
    half = count // 2
    inside = unrest[half:len(unrest) - half]
    quiet = np.flatnonzero(inside < 0.2)
    start = quiet[0] if len(quiet) else (int(np.argmin(inside)) if len(inside) else 0)
    return slice(start, start + count)


def level(force, rate, time, settings):
    """Vertical acceleration with gravity taken off, and what stands still."""
    hz = 1 / np.median(np.diff(time))
    rest = first_still_second(force, rate, int(round(hz)))
    rate = rate - rate[rest].mean(axis=0)
    gravity = force[rest].mean(axis=0)
    turned = attitudes(rate, time)
    at_rest = turned[(rest.start + min(rest.stop, len(time))) // 2]
    up = at_rest.apply(gravity / np.linalg.norm(gravity))
    vertical = turned.apply(force) @ up - np.linalg.norm(gravity)
    cut = min(settings["low_pass_hz"], 0.4 * hz)
    vertical = sosfiltfilt(butter(4, cut, fs=hz, output="sos"), vertical)
    width = max(3, int(settings["still_s"] * hz))
    length = np.linalg.norm(force, axis=1)
    quiet = ((spread(length, width) < settings["still_force"])
             & (spread(np.linalg.norm(rate, axis=1), width) < settings["still_rate"])
             & (np.abs(length - np.linalg.norm(gravity)) < 0.5))
    return vertical, binary_opening(quiet, np.ones(width))


def detrended(velocity, time, still, settings):
    """Takes off what the velocity shows where it should be nothing, linearly in between; where nothing stands still for
    long, what is slower than any stroke."""
    spans, _ = label(still)
    at, drift = [], []
    for (span,) in find_objects(spans):
        at += [time[span.start], time[span.stop - 1]]
        drift += [velocity[span.start:span.stop].mean()] * 2
    if at:
        velocity = np.where(still, 0.0, velocity - np.interp(time, at, drift))
    edges = [0, *np.searchsorted(time, at), len(time)]
    high_pass = butter(2, settings["high_pass_hz"], "highpass", fs=1 / np.median(np.diff(time)), output="sos")
    for first, last in zip(edges[::2], edges[1::2], strict=True):
        if last > first + 1 and time[last - 1] - time[first] > settings["longest_s"]:
            velocity[first:last] = sosfiltfilt(high_pass, velocity[first:last])
    return velocity


def crossing(time, velocity, peak, step, threshold):
    """Instant at which the velocity falls to the threshold, walking away from its peak for as long as a stroke lasts."""
    i = peak
    while 0 < i < len(time) - 1 and velocity[i] > threshold and abs(time[i] - time[peak]) < LONGEST_STROKE:
        i += step
    a, b = i, i - step
    if velocity[a] > threshold or velocity[b] == velocity[a]:  # it never falls so far
        return time[a]
    return time[a] + (threshold - velocity[a]) / (velocity[b] - velocity[a]) * (time[b] - time[a])


def repetitions(time, force, rate, least_range, greatest_range, settings=SETTINGS):
    """One dictionary a repetition; seconds, metres."""
    vertical, still = level(force, rate, time, settings)
    velocity = detrended(cumulative_trapezoid(vertical, time, initial=0), time, still, settings)
    height = cumulative_trapezoid(velocity, time, initial=0)
    peaks, _ = find_peaks(velocity, height=settings["least_peak"], prominence=settings["least_peak"])
    found = []
    for peak in peaks:
        start = crossing(time, velocity, peak, -1, settings["start_speed"])
        end = crossing(time, velocity, peak, 1, settings["start_speed"])
        if found and start <= found[-1]["start"]:  # two peaks of one stroke
            if velocity[peak] <= found[-1]["peak_velocity"]:
                continue
            found.pop()
        rise = float(np.interp(end, time, height) - np.interp(start, time, height))
        if least_range <= rise <= greatest_range:
            found.append({"start": float(start), "peak_at": float(time[peak]), "end": float(end),
                          "mean_velocity": rise / float(end - start), "peak_velocity": float(velocity[peak]),
                          "time_to_peak": float(time[peak] - start), "range": rise})
    return found
