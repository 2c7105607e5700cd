# SPDX-License-Identifier: MIT
"""A heated floor of 150 nodes over 500 implicit steps: ours, alone and eight at a time, against numba with factors made beforehand and
against SciPy's banded solution in every step. All take the same steps on the same nodes."""

from __future__ import annotations

from typing import Any, Callable

import numpy as np
from measuring import library

import makegood as mg

NODES, STEPS, OUTPUTS = 150, 500, 10
DAMPED = 4  # half steps of backward Euler in place of the first two steps
DEPTH, K, DENSITY, HEAT = 0.1, 1.4, 2000.0, 1000.0
BELOW, COEFFICIENT, DURATION = 0.5, 10.8, 14400.0
EIGHT: dict[str, Any] = {
    "power_density_w_per_m2": [100.0 + 12.5 * i for i in range(8)],
    "initial_c": [15.0 + 0.5 * i for i in range(8)],
    "room_c": [18.0 + 0.4 * i for i in range(8)],
    "below_c": [5.0 + i for i in range(8)],
    "cover_m2k_per_w": [0.02 * i for i in range(8)],
}
LAYERS = [{"thickness_mm": 1000 * DEPTH, "conductivity_w_per_mk": K, "density_kg_per_m3": DENSITY, "specific_heat_j_per_kgk": HEAT}]
COMMON: dict[str, Any] = dict(layers=LAYERS, heater_after_layer=1, duration_s=DURATION, below_resistance_m2k_per_w=BELOW, coefficient_w_per_m2k=COEFFICIENT,
                              nodes_count=NODES, steps_count=STEPS, outputs_count=OUTPUTS)  # fmt: skip


def matrices(i: int) -> tuple[np.ndarray, np.ndarray, np.ndarray, float]:
    """Diagonal and side of I + θK for the unknown √C·T, what flows in over half a step, and 1/√C of node 0, for scenario i."""
    n, cell = NODES, DEPTH / (NODES - 1)
    capacity = np.full(n, DENSITY * HEAT * cell)
    capacity[[0, -1]] *= 0.5
    g = np.zeros(n)
    g[:-1] += K / cell
    g[1:] += K / cell
    top = 1 / (1 / COEFFICIENT + EIGHT["cover_m2k_per_w"][i])
    g[0] += top
    g[-1] += 1 / BELOW
    half = 0.5 * DURATION / STEPS
    into = np.zeros(n)
    into[0] = top * EIGHT["room_c"][i]
    into[-1] = EIGHT["power_density_w_per_m2"][i] + EIGHT["below_c"][i] / BELOW
    root = np.sqrt(capacity)
    return 1 + half * g / capacity, -half * K / cell / (root[:-1] * root[1:]), half * into / root, 1 / root[0]


def surface(z: float, i: int, scale: float) -> float:
    cover = EIGHT["cover_m2k_per_w"][i]
    flux = (z * scale - EIGHT["room_c"][i]) / (1 / COEFFICIENT + cover)
    return EIGHT["room_c"][i] + flux * (1 / COEFFICIENT + cover)


def by_numba(i: int) -> Callable[[], float] | None:
    numba = library("numba")
    if numba is None:
        return None

    @numba.njit
    def march(z, s, lower, inverse, y, steps, damped):
        n = z.size
        for step in range(steps):
            y[0] = z[0] + s[0]
            for k in range(1, n):
                y[k] = z[k] + s[k] - lower[k] * y[k - 1]
            x = inverse[n - 1] * y[n - 1]
            z[n - 1] = x if step < damped else x + x - z[n - 1]
            for k in range(n - 2, -1, -1):
                x = inverse[k] * y[k] - lower[k + 1] * x
                z[k] = x if step < damped else x + x - z[k]

    diagonal, side, s, scale = matrices(i)
    lower, inverse = np.zeros(NODES), np.zeros(NODES)
    inverse[0] = 1 / diagonal[0]
    for k in range(1, NODES):
        lower[k] = side[k - 1] * inverse[k - 1]
        inverse[k] = 1 / (diagonal[k] - side[k - 1] * lower[k])
    start = EIGHT["initial_c"][i] / scale * np.r_[1.0, np.full(NODES - 2, np.sqrt(2.0)), 1.0]
    y = np.empty(NODES)

    def call() -> float:
        z = start.copy()
        march(z, s, lower, inverse, y, STEPS + DAMPED // 2, DAMPED)
        return surface(float(z[0]), i, scale)

    return call


def by_scipy(i: int) -> Callable[[], float] | None:
    linalg = library("scipy.linalg")
    if linalg is None:
        return None
    diagonal, side, s, scale = matrices(i)
    bands = np.zeros((3, NODES))
    bands[0, 1:], bands[1], bands[2, :-1] = side, diagonal, side
    start = EIGHT["initial_c"][i] / scale * np.r_[1.0, np.full(NODES - 2, np.sqrt(2.0)), 1.0]
    solve = linalg.solve_banded

    def call() -> float:
        z = start.copy()
        for step in range(STEPS + DAMPED // 2):
            x = solve((1, 1), bands, z + s, check_finite=False)
            z = x if step < DAMPED else 2 * x - z
        return surface(float(z[0]), i, scale)

    return call


def ours(i: int) -> Callable[[], float]:
    given = COMMON | {k: v[i] for k, v in EIGHT.items()}
    return lambda: mg.heating.floor_scenarios(**given).surface_c[0][-1]


def eight() -> list[float]:
    return [one[-1] for one in mg.heating.floor_scenarios(**COMMON, **EIGHT).surface_c]


def calls() -> dict[str, Callable[[], Any]]:
    there = {"ours, one floor": ours(3), "ours, eight floors": eight, "numba, factors made beforehand": by_numba(3), "SciPy, banded solution in each step": by_scipy(3)}
    return {k: v for k, v in there.items() if v is not None}


def disagreement() -> float:
    """Largest difference of the last surface temperature, in K."""
    together = eight()
    worst = 0.0
    for i in range(8):
        others = [by_scipy(i)] + ([by_numba(i)] if i == 3 else [])
        for value in [ours(i)(), *(f() for f in others if f is not None)]:
            worst = max(worst, abs(value - together[i]))
    return worst
