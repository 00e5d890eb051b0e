#!/usr/bin/env python3
"""How often the step and ease rules of the season are right and wrong, by Monte Carlo.

  /usr/bin/python3 tests/reference/step_statistics.py [--stays 100000] [--seed 4]     (Debian: python3-numpy)

A session value is the true value plus normal noise with standard deviation 1 (everything is in typical errors, TE). A stay is
the sequence of session values on one rung; after each session from the sixth on the rule is looked at once. TE itself is
estimated as in engine/statistics/reliability.cpp from the stay's own differences and a prior worth six sessions.
Nothing here reads the engine: it is the check from outside of the numbers in engine/season/rules.json.
"""

import argparse
import math

import numpy as np

LEN = 16


def typical_error(x, prior, weight=6.0):
    """TE estimate after k sessions, for k = 0 .. n: differences winsorised at 3 MAD (1.4826 x the raw median deviation)."""
    n = x.shape[1]
    out = np.full((x.shape[0], n + 1), prior)
    for k in range(2, n + 1):
        d = np.diff(x[:, :k], axis=1)
        centre = np.median(d, axis=1, keepdims=True)
        reach = 3 * 1.4826 * np.median(np.abs(d - centre), axis=1, keepdims=True)
        d = np.where(reach > 0, np.clip(d, centre - reach, centre + reach), d)
        out[:, k] = np.sqrt((weight * prior**2 + (d**2).sum(axis=1) / 2) / (weight + k - 1))
    return out


class Rule:
    """Any of its windows: (sessions of the baseline at most, sessions of the recent mean, threshold in TE)."""

    def __init__(self, name, windows, centre=np.median, first=6, confirm=1, spend=None):
        self.name, self.windows, self.centre, self.first, self.confirm = name, windows, centre, first, confirm
        self.spend = spend or (lambda k: 1.0)

    def looks(self, x, te):
        """met[:, k]: the rule is met at the look after k sessions. Values that fall are gains."""
        n = x.shape[1]
        met = np.zeros((x.shape[0], n + 1), bool)
        for k in range(self.first, n + 1):
            for base, recent, threshold in self.windows:
                b = min(base, k - recent)
                if b < 3:
                    continue
                gain = self.centre(x[:, :b], axis=1) - x[:, k - recent:k].mean(axis=1)
                met[:, k] |= gain >= threshold * self.spend(k) * te[:, k]
        out = met.copy()
        for j in range(1, self.confirm):
            out[:, self.first + j:] &= met[:, self.first:n + 1 - j]
            out[:, self.first:self.first + j] = False
        return out


def first_step(met):
    """Session count at the first look that is met; a large number where none is."""
    return np.where(met.any(axis=1), met.argmax(axis=1), 99)


def noise(rng, stays, kind):
    x = rng.standard_normal((stays, LEN))
    if kind == "tails":  # one session in twelve three times as wide: a bad day
        x *= np.where(rng.random(x.shape) < 1 / 12, 3.0, 1.0)
        x /= math.sqrt(11 / 12 + 9 / 12)
    return x


def course(kind, size, after):
    """True value by session (0 is the first), falling by `size` after `after` sessions."""
    t = np.arange(LEN)
    if kind == "sudden":
        return -size * (t >= after)
    return -size * np.clip((t - after + 1) / 3, 0, 1)  # gradual: full size at the third session


class Study:
    def __init__(self, stays, seed, prior=1.0, kind="normal"):
        self.rng = np.random.default_rng(seed)
        self.prior = prior
        self.base = noise(self.rng, stays, kind)
        self.cache = {}

    def play(self, key, truth):
        if key not in self.cache:
            x = self.base + truth
            self.cache[key] = (x, typical_error(x, self.prior))
        return self.cache[key]

    def first(self, rule, key, truth):
        return first_step(rule.looks(*self.play(key, truth)))

    def false_look(self, rule):
        x, te = self.play("none", np.zeros(LEN))
        return rule.looks(x, te)[:, [8, 10, 12]].mean()

    def false_stay(self, rule, n):
        return (self.first(rule, "none", np.zeros(LEN)) <= n).mean()

    def found(self, rule, size, within, kind="sudden", after=6):
        """Of the stays that had not stepped before the change: share that step within so many sessions of it."""
        step = self.first(rule, (kind, size, after), course(kind, size, after))
        at = step > after
        return (step[at] <= after + within).mean()

    def mix(self, rule, seed=11):
        """Evidence steps of a plausible mix: one rung in four without response, else a gain of 0.5-4 TE approached with a
        time constant of 2-6 sessions; the phase ends the stay after 8-14 sessions. Share of steps whose true gain was < 0.3
        TE; of stays that step; of stays with a true gain of 1.5 TE or more at their end that step; of stays without response
        that step; median session of a step."""
        if "mix" not in self.cache:
            rng = np.random.default_rng(seed)
            n = self.base.shape[0]
            size = np.where(rng.random(n) < 0.25, 0.0, rng.uniform(0.5, 4.0, n))
            tau = rng.uniform(2, 6, n)
            end = rng.integers(8, 15, n)
            t = np.arange(LEN)
            truth = -size[:, None] * (1 - np.exp(-t[None, :] / tau[:, None]))
            x = self.base + truth
            self.cache["mix"] = (x, typical_error(x, self.prior), truth, end, size)
        x, te, truth, end, size = self.cache["mix"]
        step = first_step(rule.looks(x, te))
        steps = step <= end
        gain = -truth[np.arange(len(step)), np.minimum(step, LEN) - 1]  # as the last session saw it
        false = steps & (gain < 0.3)  # since entry, where the truth is 0
        large = -truth[np.arange(len(step)), end - 1] >= 1.5
        null = size == 0
        return false.sum() / steps.sum(), steps.mean(), (steps & large).sum() / large.sum(), (steps & null).sum() / null.sum(), np.median(step[steps])


def ease_looks(x, te, threshold, recent=2, before=6, first=None):
    n = x.shape[1]
    met = np.zeros((x.shape[0], n + 1), bool)
    for k in range(recent + before if first is None else first, n + 1):
        b = min(before, k - recent)
        met[:, k] = x[:, k - recent:k].mean(axis=1) - np.median(x[:, k - recent - b:k - recent], axis=1) > threshold * te[:, k]
    return met


RULES = [
    ("median of first 3 - mean of last 3 >= 1.35 (the first value)", [(3, 3, 1.35)], np.median, 1),
    ("the same, 1.45 (5 % a look)", [(3, 3, 1.45)], np.median, 1),
    ("the same, 1.60", [(3, 3, 1.60)], np.median, 1),
    ("the same, 1.75", [(3, 3, 1.75)], np.median, 1),
    ("mean of first 3 - mean of last 3 >= 1.35", [(3, 3, 1.35)], np.mean, 1),
    ("the same, 1.65", [(3, 3, 1.65)], np.mean, 1),
    ("the same, 1.85 (the engine)", [(3, 3, 1.85)], np.mean, 1),
    ("mean of first 3..6 - mean of last 3 >= 1.35", [(6, 3, 1.35)], np.mean, 1),
    ("the same, 1.60", [(6, 3, 1.60)], np.mean, 1),
    ("mean of first 3 - mean of last 2 >= 1.35", [(3, 2, 1.35)], np.mean, 1),
    ("mean of first 3 - mean of last 5 >= 1.20", [(3, 5, 1.20)], np.mean, 1),
    ("mean of first 3: last 2 >= 1.8 or last 5 >= 1.2", [(3, 2, 1.8), (3, 5, 1.2)], np.mean, 1),
    ("mean of first 3..6: last 2 >= 1.6 or last 4 >= 1.2", [(6, 2, 1.6), (6, 4, 1.2)], np.mean, 1),
    ("mean of first 3..6: last 2 >= 1.5 or last 5 >= 1.1", [(6, 2, 1.5), (6, 5, 1.1)], np.mean, 1),
    ("median of first 3 - mean of last 3 >= 1.2, two looks in a row", [(3, 3, 1.2)], np.median, 2),
    ("mean of first 3 - mean of last 3 >= 1.2, two looks in a row", [(3, 3, 1.2)], np.mean, 2),
    ("mean of first 3 - mean of last 3 >= 1.3, two looks in a row", [(3, 3, 1.3)], np.mean, 2),
]


def percent(value):
    return f"{100 * value:.1f}"


def table(head, rows):
    print("| " + " | ".join(head) + " |\n|" + " --- |" * len(head))
    for row in rows:
        print("| " + " | ".join(row) + " |")
    print()


def standard_errors(rng, stays):
    x = rng.standard_normal((stays, 6))
    pairs = [("mean", np.mean, 3, 3), ("median", np.median, 3, 3), ("mean", np.mean, 3, 2), ("median", np.median, 6, 2), ("mean", np.mean, 6, 3)]
    return [(f"{name} of {count} - mean of {recent}",
             f"{np.std(centre(x[:, :count], axis=1) - rng.standard_normal((stays, recent)).mean(axis=1)):.3f}")
            for name, centre, count, recent in pairs]


def step_tables(study):
    rules = [Rule(n, w, c, confirm=k) for n, w, c, k in RULES]
    spend = Rule("risk spent evenly: 1.9 at session 6 falling to 1.5 at 14 (median of 3, mean of 3)", [(3, 3, 1.0)], np.median,
                 spend=lambda k: 1.9 - 0.05 * (k - 6))
    rules.append(spend)
    print("### No true change, and a plausible mix\n")
    rows = []
    for rule in rules:
        false, steps, large, null, median = study.mix(rule)
        rows.append([rule.name, percent(study.false_look(rule))] + [percent(study.false_stay(rule, n)) for n in (6, 8, 10, 12, 14)]
                    + [percent(false), percent(large), f"{median:.0f}"])
    table(["rule (thresholds in TE)", "false a look %", "no-change stays that step by session 6 %", "8", "10", "12", "14", "mix: evidence steps with true gain < 0.3 TE %",
           "mix: stays with >= 1.5 TE that step %", "median session of a step"], rows)
    print("### Found after a sudden gain after session 6, % within 1..6 sessions; gain after session 3 and gradual gains\n")
    rows = []
    for rule in rules:
        rows.append([rule.name, " ".join(f"{100 * study.found(rule, 2.5, w):.0f}" for w in range(1, 7)),
                     " ".join(f"{100 * study.found(rule, 1.5, w):.0f}" for w in range(1, 7)),
                     f"{100 * study.found(rule, 2.5, 3, after=3):.0f} / {100 * study.found(rule, 1.5, 5, after=3):.0f}",
                     f"{100 * study.found(rule, 2.5, 4, 'gradual'):.0f} / {100 * study.found(rule, 1.5, 7, 'gradual'):.0f}"])
    table(["rule", "2.5 TE", "1.5 TE", "after session 3: 2.5 within 3 / 1.5 within 5", "over 3 sessions, from completion: 2.5 within 2 / 1.5 within 5"], rows)


def change_table(study):
    """Mean of the last m against the median of the six before, either way."""
    rows = []
    for recent, threshold in [(2, 1.5), (2, 1.45), (2, 1.4), (2, 1.3), (3, 1.35), (3, 1.2)]:
        x, te = study.play("none", np.zeros(LEN))
        none = ease_looks(x, te, threshold, recent)
        row = [f"last {recent}, {threshold}", percent(none[:, [8, 10, 12]].mean()), percent(none[:, :15].any(axis=1).mean())]
        for size in (2.5, 1.5):
            x, te = study.play(("sudden", -size, 8), course("sudden", -size, 8))
            step = first_step(ease_looks(x, te, threshold, recent))
            fresh = step > 8
            row.append(" ".join(f"{100 * (step[fresh] <= 8 + w).mean():.0f}" for w in range(1, 7)))
        for size, within in ((2.5, 5), (1.5, 8)):
            x, te = study.play(("gradual", -size, 8), course("gradual", -size, 8))
            step = first_step(ease_looks(x, te, threshold, recent))
            row.append(f"{100 * (step[step > 8] <= min(8 + within - 1, LEN)).mean():.0f}")
        rows.append(row)
    table(["mean of the last against the median of 6 before, TE", "false a look %", "a stay of 14 without change %", "2.5 TE found within 1..6 %", "1.5 TE found within 1..6 %",
           "2.5 over 3 sessions, within 2 of completion %", "1.5 over 3 sessions, within 5 of completion %"], rows)


def normal_quantile(p):
    low, high = -9.0, 9.0
    for _ in range(80):
        mid = (low + high) / 2
        low, high = (mid, high) if 0.5 * math.erfc(-mid / math.sqrt(2)) < p else (low, mid)
    return low


def limit_table():
    rows = []
    for base in (3, 6):
        for size, within, power in ((2.5, 2, 0.9), (1.5, 5, 0.8)):
            error = math.sqrt(1 / base + 1 / within)
            threshold = size - normal_quantile(power) * error
            rows.append([f"{size} TE, mean of {base} before, mean of {within} after, {100 * power:.0f} %", f"{error:.2f}", f"{threshold:.2f}",
                         percent(0.5 * math.erfc(threshold / error / math.sqrt(2)))])
    table(["one look, TE known, all data used (Neyman-Pearson)", "standard error TE", "threshold TE", "false a look %"], rows)


def main():
    options = argparse.ArgumentParser()
    options.add_argument("--stays", type=int, default=100000)
    options.add_argument("--seed", type=int, default=4)
    given = options.parse_args()
    print(f"{given.stays} stays, seed {given.seed}, NumPy {np.__version__}\n")
    print("### Standard errors (TE)\n")
    table(["difference", "standard error"], standard_errors(np.random.default_rng(given.seed + 1), given.stays))
    print("### What no rule can beat\n")
    limit_table()
    study = Study(given.stays, given.seed)
    step_tables(study)
    print("### A change seen either way (rule 11)\n")
    change_table(study)
    print("### The rule of the engine where the prior TE is wrong, and with bad days (1 session in 12 three times as wide)\n")
    rows = []
    for name, prior, kind in (("prior right", 1.0, "normal"), ("prior 0.7 x true", 0.7, "normal"), ("prior 1.4 x true", 1.4, "normal"), ("bad days", 1.0, "tails")):
        other = Study(given.stays // 2, given.seed, prior, kind)
        for text, rule in (("1.45, median of 3", Rule("", [(3, 3, 1.45)])), ("1.85, mean of 3", Rule("", [(3, 3, 1.85)], np.mean)), ("1.75, median of 3", Rule("", [(3, 3, 1.75)]))):
            false, _, large, _, _ = other.mix(rule)
            rows.append([name, text, percent(other.false_look(rule)), percent(other.false_stay(rule, 14)), percent(false), percent(large)])
    table(["case", "rule", "false a look %", "no-change stay of 14 %", "mix: false %", "mix: found %"], rows)


if __name__ == "__main__":
    main()
