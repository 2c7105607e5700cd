# SPDX-License-Identifier: MIT
"""Smallest cable of many circuits: ours over arrays against the same by NumPy, tables looked up and conditions as masks."""

from __future__ import annotations

from typing import Any, Callable

import numpy as np

import makegood as mg

AREA = np.array([1, 1.5, 2.5, 4, 6, 10, 16])
CAPACITY_C = np.array([16, 20, 27, 37, 47, 64, 85.0])
DROP = np.array([44, 29, 18, 11, 7.3, 4.4, 2.8])
LOOP = np.array([36.2, 30.2, 19.51, 16.71, 10.49, 6.44, 4.23])
BEARS = (115 * np.array([1, 1, 1.5, 1.5, 2.5, 4, 6])) ** 2


def arguments(n: int) -> tuple[Any, ...]:
    r = np.random.default_rng(5)
    rating = r.choice([6.0, 10.0, 16.0, 20.0, 32.0, 40.0], n)
    return (rating, rating * r.uniform(0.3, 1.0, n), r.uniform(2, 25, n), r.uniform(0.85, 1.0, n), np.full(n, 11.5), r.uniform(0.1, 0.35, n), 230 * 0.95 / (5 * rating), r.uniform(500, 13000, n))


def by_numpy(rating, design, length, correction, drop_limit, external, loop_limit, energy):
    """Sizes of each condition by bisection of the tables, which are monotone; the largest of the four."""
    size = np.searchsorted(CAPACITY_C, rating / correction)
    size = np.maximum(size, np.searchsorted(-DROP, -(drop_limit * 1000 / (design * length))))
    size = np.maximum(size, np.searchsorted(-LOOP, -((loop_limit - external) * 1000 / (1.2 * length))))
    size = np.maximum(size, np.searchsorted(BEARS, energy))
    return AREA[size]


def by_masks(rating, design, length, correction, drop_limit, external, loop_limit, energy):
    """The same by one mask a size."""
    amp_metres, warm = design * length / 1000, 1.2 * length / 1000
    out = np.full(rating.shape, np.nan)
    for area, capacity, drop, loop, bears in zip(AREA[::-1], CAPACITY_C[::-1], DROP[::-1], LOOP[::-1], BEARS[::-1]):
        good = (capacity * correction >= rating) & (drop * amp_metres <= drop_limit) & (external + loop * warm <= loop_limit) & (energy <= bears)
        out[good] = area
    return out


def calls(n: int) -> dict[str, Callable[[], Any]]:
    given = arguments(n)
    return {
        "ours": lambda: mg.electrical.smallest_size("C", *given),
        "NumPy, bisection": lambda: by_numpy(*given),
        "NumPy, masks": lambda: by_masks(*given),
    }


def disagreement(n: int) -> int:
    """Circuits for which one of the others says something else."""
    ours, *others = (f() for f in calls(n).values())
    return max(int(np.sum(ours != other)) for other in others)
