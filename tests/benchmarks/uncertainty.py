# SPDX-License-Identifier: MIT
"""Uncertainty beside the plain value, and Monte Carlo beside NumPy. Run by run.py.

Monte Carlo: a million trials of six normal arguments with mean, standard deviation and the quantiles 2.5, 50 and 97.5 %: NumPy's
standard_normal (PCG64), the same expression, np.quantile of all three at once. Both sides return the same within four standard errors.
"""

from __future__ import annotations

import math
from typing import Any, Callable

import numpy as np

import makegood as mg

# The expression is written as somebody who knows NumPy writes it; ours also looks at the permitted range of every argument.
TRIALS = 1_000_000


def six() -> tuple[Any, list[tuple[float, float]], Callable[..., Any]]:
    f = mg.electrical.voltage_drop_impedance
    inputs = [(7.41, 0.05), (0.13, 0.01), (16.0, 0.2), (22.0, 0.3), (0.9, 0.01), (1.732, 0.001)]

    def expression(r: Any, x: Any, current: Any, length: Any, cosine: Any, factor: Any) -> Any:
        return factor * current * length * (r * cosine + x * np.sqrt(1 - cosine * cosine)) / 1000

    return f, inputs, expression


def ours(n: int = TRIALS, threads: int = 1) -> Any:
    f, inputs, _ = six()
    return f.monte_carlo(*(mg.distribution.normal(m, u) for m, u in inputs), trials=n, threads=threads)


def numpy_s(n: int = TRIALS, random: Any = None) -> tuple[float, float, Any]:
    _, inputs, expression = six()
    random = random or np.random.Generator(np.random.PCG64(1))
    columns = []
    for mean, u in inputs:
        x = random.standard_normal(n)
        x *= u
        x += mean
        columns.append(x)
    y = expression(*columns)
    return y.mean(), y.std(), np.quantile(y, (0.025, 0.5, 0.975))


def disagreement(n: int = TRIALS) -> str:
    """Empty, or what differs by more than four standard errors."""
    a, (mean, sd, q) = ours(n), numpy_s(n)
    _, inputs, expression = six()
    f = six()[0]
    assert math.isclose(f(*(m for m, _ in inputs)), float(expression(*(m for m, _ in inputs))), rel_tol=1e-14)
    root = math.sqrt(n)
    found = {
        "mean": (a.mean - mean) / (sd / root),
        "standard deviation": (a.standard_uncertainty - sd) / (sd / root / math.sqrt(2)),
        "median": (a.median - q[1]) / (1.2533 * sd / root),
        "low": (a.interval[0] - q[0]) / (2.67 * sd / root),
        "high": (a.interval[1] - q[2]) / (2.67 * sd / root),
    }
    return ", ".join(f"{k} {v:.1f}" for k, v in found.items() if abs(v) > 4 * math.sqrt(2))


def calls(n: int) -> dict[str, Callable[[], Any]]:
    random = np.random.Generator(np.random.PCG64(1))
    return {"ours": lambda: ours(n), "NumPy": lambda: numpy_s(n, random)}
