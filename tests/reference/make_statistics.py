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
