#!/usr/bin/env python3
"""Values of SciPy that tests/engine/statistics checks against.

  /usr/bin/python3 tests/reference/make_statistics.py        (Debian: python3-scipy)

Prints them; they stand in tests/engine/statistics/rank_correlation_test.cpp and robust_test.cpp.
"""

import numpy as np
import scipy
from scipy import stats

print("SciPy", scipy.__version__)
X = np.array([1.0, 2.0, 3.0, 4.0, 5.0, 6.0])
Y = np.array([2.1, 3.9, 6.2, 7.8, 10.1, 30.0])
print("theilslopes, the example of robust_test:", stats.theilslopes(Y, X, 0.95, method="joint"))

# Twenty sessions of a time to peak [ms] with ties in both, invented.
DAYS = np.array([0, 3, 7, 10, 14, 17, 21, 21, 24, 28, 31, 35, 38, 42, 45, 49, 52, 56, 59, 63], dtype=float)
TIMES = np.array([212, 209, 214, 208, 207, 209, 203, 206, 204, 199, 203, 201, 196, 198, 199, 193, 196, 190, 194, 191], dtype=float)
print("theilslopes, twenty sessions:", stats.theilslopes(TIMES, DAYS, 0.95))
print("spearmanr, twenty sessions:", repr(stats.spearmanr(DAYS, TIMES)[0]))
SPRINTS = np.array([3.02, 2.98, 3.05, 3.01, 3.0, 2.99, 2.97, 3.03, 2.96, 2.98, 2.95, 3.0, 2.94, 2.97, 2.99, 2.93, 2.96, 2.95, 2.94, 2.96])
print("spearmanr, sprints against times:", repr(stats.spearmanr(SPRINTS, TIMES)[0]))
boot = stats.bootstrap((SPRINTS, TIMES), lambda a, b: stats.spearmanr(a, b)[0], paired=True, vectorized=False,
                       n_resamples=20000, method="percentile", random_state=np.random.default_rng(1))
print("bootstrap of it, percentile, 20000:", boot.confidence_interval)

print("t, two-sided 95 %, 1 to 30:", [round(stats.t.ppf(0.975, n), 6) for n in range(1, 31)])
print("t, beyond:", [(n, stats.t.ppf(0.975, n)) for n in (31, 40, 60, 120, 1000)])

# Load and velocity of one session (the four loads of load_velocity_test): where the line meets 0.30 m/s, with Fieller's
# interval.
LOADS, VELOCITIES, LOWEST = np.array([60, 80, 100, 120.0]), np.array([1.0, 0.8, 0.62, 0.45]), 0.30
line = stats.linregress(LOADS, VELOCITIES)
rest = VELOCITIES - line.intercept - line.slope * LOADS
variance = rest @ rest / (len(LOADS) - 2)
spread = ((LOADS - LOADS.mean()) ** 2).sum()
t = stats.t.ppf(0.975, len(LOADS) - 2)
below = LOWEST - VELOCITIES.mean()
roots = np.roots([line.slope**2 - t * t * variance / spread, -2 * line.slope * below, below**2 - t * t * variance / len(LOADS)])
print("load at 0.30 m/s:", LOADS.mean() + below / line.slope, "Fieller:", sorted(roots + LOADS.mean()))

# Three sessions that share a slope (pooled_load_velocity_test), by ordinary least squares with one column a session.
SESSIONS = [([60, 80, 100], [0.98, 0.80, 0.63]), ([65, 85, 105], [0.97, 0.80, 0.59]), ([110], [0.57])]
rows = [(load, velocity, number) for number, (l, v) in enumerate(SESSIONS) for load, velocity in zip(l, v)]
design = np.array([[load] + [1.0 if k == number else 0.0 for k in range(3)] for load, _, number in rows])
speed = np.array([velocity for _, velocity, _ in rows])
solution, residual, *_ = np.linalg.lstsq(design, speed, rcond=None)
freedom = len(rows) - 4
covariance = np.linalg.inv(design.T @ design) * residual[0] / freedom
print("pooled slope:", solution[0], "+-", np.sqrt(covariance[0, 0]), "deviation", np.sqrt(residual[0] / freedom))
for k in range(3):
    load = (LOWEST - solution[1 + k]) / solution[0]
    gradient = np.zeros(4)
    gradient[0], gradient[1 + k] = load, 1.0
    print("  session", k, "1RM", load, "+-", np.sqrt(gradient @ covariance @ gradient) / abs(solution[0]))
