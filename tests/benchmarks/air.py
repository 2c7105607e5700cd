# SPDX-License-Identifier: MIT
"""Fans and networks: many operating points against NumPy with SciPy's monotone cubics, and the global gradient method against SciPy's sparse solver.

Both sides work the same method to the same end: false position with the weights of Anderson and Björck from the same bracket; flows and
pressures together, from the same first step, until no branch is off by more than 1e-9 of the largest pressure.
"""

from __future__ import annotations

import ctypes
import math
import shutil
import subprocess
from typing import Any, Callable

import numpy as np

import makegood as mg
from measuring import compiled, library, pointer

# ------------------------------------------------------------------------------------------------- many operating points

RHO, MU = 1.2, 1.8e-5
FANS, POINTS = 50, 8


def pairs(n: int) -> tuple[list[dict[str, Any]], tuple[np.ndarray, ...]]:
    r = np.random.default_rng(5)
    share = np.linspace(0, 1, POINTS)
    fans = []
    for _ in range(FANS):
        q0, p0, bow = r.uniform(20, 100), r.uniform(20, 220), r.uniform(1.5, 2.5)
        fans.append({"points": [[float(q0 * s), float(p0 * (1 - s**bow))] for s in share], "pressure": "total"})
    return fans, (r.integers(0, FANS, n).astype(float), r.uniform(80, 200, n), r.uniform(1, 20, n), r.uniform(0, 1, n), r.uniform(1, 6, n))


def colebrook(reynolds: np.ndarray, relative: np.ndarray) -> np.ndarray:
    """Haaland's start and two steps of Newton's: 1e-12 of the root."""
    x = -1.8 * np.log10((relative / 3.7) ** 1.11 + 6.9 / reynolds)
    share, wall = 2.51 / reynolds, relative / 3.7
    for _ in range(2):
        inside = wall + share * x
        x -= (x + 2 * np.log10(inside)) / (1 + 0.8685889638065037 * share / inside)
    return 1 / (x * x)


class ByNumPy:
    """All rows at once; those that are done are left out of the next step."""

    def __init__(self, n: int) -> None:
        fans, (which, d, length, rough, k) = pairs(n)
        interpolate = library("scipy.interpolate")
        # (fan, piece, power) and the points
        self.cubic = np.array([interpolate.PchipInterpolator(*zip(*f["points"])).c.T for f in fans])
        self.flow = np.array([[p[0] for p in f["points"]] for f in fans])
        self.value = np.array([[p[1] for p in f["points"]] for f in fans])
        self.given = which.astype(int), d, length, rough, k

    def __call__(self) -> np.ndarray:
        which, d, length, rough, k = self.given
        n = len(which)
        per_flow = 1e-3 / (math.pi / 4 * 1e-6 * d * d)
        pv = 0.5 * RHO * per_flow**2
        reynolds, straight, local, relative = RHO * per_flow * 1e-3 * d / MU, pv * length / (1e-3 * d), pv * k, rough / d
        at_4000 = colebrook(np.full(n, 4000.0), relative)

        def system(rows: np.ndarray, q: np.ndarray) -> np.ndarray:
            re = reynolds[rows] * q
            f = 64 / np.maximum(re, 1e-300)
            between = re > 2300
            f[between] = 64 / 2300 + (at_4000[rows[between]] - 64 / 2300) / 1700 * (re[between] - 2300)
            turbulent = re >= 4000
            f[turbulent] = colebrook(re[turbulent], relative[rows[turbulent]])
            return (straight[rows] * f + local[rows]) * q * q

        piece = np.full(n, POINTS - 1)
        rows = np.arange(n)
        a, b, fa, fb = (np.zeros(n) for _ in range(4))
        b[:] = self.flow[which, -1]
        fb[:] = self.value[which, -1] - system(rows, b)
        rows = rows[fb <= 0]
        while len(rows):
            q = self.flow[which[rows], piece[rows] - 1]
            rest = self.value[which[rows], piece[rows] - 1] - system(rows, q)
            found = rest > 0
            a[rows[found]], fa[rows[found]] = q[found], rest[found]
            rows, q, rest = rows[~found], q[~found], rest[~found]
            b[rows], fb[rows] = q, rest
            piece[rows] -= 1
            rows = rows[piece[rows] > 0]
        flow = np.full(n, np.nan)
        rows = np.flatnonzero((fa > 0) & (fb <= 0))
        cubic, start = self.cubic[which, np.maximum(piece - 1, 0)], self.flow[which, np.maximum(piece - 1, 0)]
        for _ in range(60):
            if not len(rows):
                break
            q = (a[rows] * fb[rows] - b[rows] * fa[rows]) / (fb[rows] - fa[rows])
            t, c = q - start[rows], cubic[rows]
            here = ((c[:, 0] * t + c[:, 1]) * t + c[:, 2]) * t + c[:, 3] - system(rows, q)
            flow[rows] = q
            same = (here > 0) == (fb[rows] > 0)
            m = 1 - here / np.where(fb[rows] == 0, 1, fb[rows])
            fa[rows] = np.where(same, fa[rows] * np.where(m > 0, m, 0.5), fb[rows])
            a[rows] = np.where(same, a[rows], b[rows])
            moved = abs(q - b[rows])
            b[rows], fb[rows] = q, here
            rows = rows[(here != 0) & (moved > 1e-13 * q) & (abs(a[rows] - q) > 1e-13 * q)]
        return flow


def by_brentq(n: int) -> Callable[[], np.ndarray]:
    """One pair at a time, as one would first write it; for a few rows."""
    optimize, interpolate = library("scipy.optimize"), library("scipy.interpolate")
    fans, columns = pairs(n)
    curves = [interpolate.PchipInterpolator(*zip(*f["points"])) for f in fans]

    def friction(re: float, rough: float) -> float:
        if re < 4000:
            return 64 / max(re, 1e-300) if re <= 2300 else 64 / 2300 + (friction(4000.0, rough) - 64 / 2300) / 1700 * (re - 2300)
        x = -1.8 * math.log10((rough / 3.7) ** 1.11 + 6.9 / re)
        for _ in range(2):
            inside = rough / 3.7 + 2.51 / re * x
            x -= (x + 2 * math.log10(inside)) / (1 + 0.8685889638065037 * 2.51 / re / inside)
        return 1 / (x * x)

    def solve() -> np.ndarray:
        out = []
        for which, d, length, rough, k in zip(*(c[:200] for c in columns)):
            curve = curves[int(which)]
            per_flow = 1e-3 / (math.pi / 4 * 1e-6 * d * d)
            pv, re = 0.5 * RHO * per_flow**2, RHO * per_flow * 1e-3 * d / MU
            out.append(optimize.brentq(lambda q: float(curve(q)) - pv * (friction(re * q, rough / d) * length / (1e-3 * d) + k) * q * q, curve.x[0], curve.x[-1], xtol=1e-13, rtol=1e-13))
        return np.array(out)

    return solve


def operating_calls(n: int) -> dict[str, Callable[[], Any]]:
    fans, columns = pairs(n)
    ours = {"ours": lambda: mg.air.operating_flows(fans, *columns).flow_l_per_s}
    return ours | ({"NumPy": ByNumPy(n)} if library("scipy.interpolate") else {})


def operating_disagreement(n: int) -> float:
    """The largest relative difference."""
    calls = operating_calls(n)
    ours = np.array(calls["ours"]())
    return max((float(np.nanmax(abs(f() / ours - 1))) for name, f in calls.items() if name != "ours"), default=0.0)


# ------------------------------------------------------------------------------------------------------------- networks


def solver() -> ctypes.CDLL | None:
    """The C++ solver, where a compiler and Eigen are."""
    flags = subprocess.run(["pkg-config", "--cflags", "eigen3"], capture_output=True, text=True).stdout.split() if shutil.which("pkg-config") else []
    try:
        lib = compiled("network.cpp", "-O3", "-DNDEBUG", "-fno-math-errno", "-fno-trapping-math", "-ffp-contract=off", *(flags or ["-I/usr/include/eigen3"]))
    except subprocess.CalledProcessError:
        return None
    if lib:
        lib.network_new.restype = ctypes.c_void_p
        lib.network_solve.argtypes = lib.network_delete.argtypes = None
    return lib


def grid(k: int) -> tuple[np.ndarray, ...]:
    """k × k junctions, all drawn from but one corner, which is outside: the worst case for the fill of the factor."""
    r = np.random.default_rng(k)
    cell = np.arange(k * k).reshape(k, k)
    start = np.concatenate([cell[:-1].ravel(), cell[:, :-1].ravel()])
    end = np.concatenate([cell[1:].ravel(), cell[:, 1:].ravel()])
    supply = -r.uniform(0, 1, k * k)
    supply[0] = 0
    return start.astype(float), end.astype(float), np.exp(r.uniform(-1, 1, len(start))), supply


class Ours:
    def __init__(self, lib: ctypes.CDLL, network: tuple[np.ndarray, ...]) -> None:
        start, end, resistance, supply = network
        self.lib, self.flow = lib, np.zeros(len(start))
        self.handle = ctypes.c_void_p(lib.network_new(ctypes.c_size_t(len(supply)), ctypes.c_size_t(len(start)), *map(pointer, (start, end, resistance, supply))))
        self.steps = 0

    def __call__(self) -> np.ndarray:
        self.steps = self.lib.network_solve(self.handle, pointer(self.flow))
        return self.flow

    def __del__(self) -> None:
        self.lib.network_delete(self.handle)


class BySciPy:
    """The same steps; the pattern of the matrix is kept, its values are summed into their places. `spsolve` as it comes, or `splu` with
    the ordering and the mode that are best for a symmetric matrix."""

    def __init__(self, network: tuple[np.ndarray, ...], chosen: bool = False) -> None:
        self.chosen = chosen
        sparse = library("scipy.sparse")
        self.linalg = library("scipy.sparse.linalg")
        start, end, self.resistance, supply = network
        n = len(supply)
        self.start, self.end, self.supply = start.astype(int), end.astype(int), supply
        i, j = self.start - 1, self.end - 1  # node 0 is outside
        whole = (i >= 0) & (j >= 0)
        rows = np.concatenate([i[i >= 0], j[j >= 0], i[whole], j[whole]])
        columns = np.concatenate([i[i >= 0], j[j >= 0], j[whole], i[whole]])
        self.parts = (i >= 0, j >= 0, whole)
        pattern = sparse.coo_matrix((np.ones(len(rows)), (rows, columns)), shape=(n - 1, n - 1)).tocsc()
        pattern.sort_indices()
        key = columns.astype(np.int64) * n + rows
        self.place = np.searchsorted(np.repeat(np.arange(n - 1, dtype=np.int64), np.diff(pattern.indptr)) * n + pattern.indices, key)
        self.matrix = pattern
        self.steps = 0

    def step(self, weight: np.ndarray, offset: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        first, second, whole = self.parts
        values = np.concatenate([weight[first], weight[second], -weight[whole], -weight[whole]])
        self.matrix.data[:] = np.bincount(self.place, values, minlength=len(self.matrix.data))
        n = len(self.supply)
        rest = self.supply - np.bincount(self.start, offset, minlength=n) + np.bincount(self.end, offset, minlength=n)
        if self.chosen:
            p = self.linalg.splu(self.matrix, permc_spec="MMD_AT_PLUS_A", diag_pivot_thresh=0.0, options={"SymmetricMode": True}).solve(rest[1:])
        else:
            p = self.linalg.spsolve(self.matrix, rest[1:])
        p = np.concatenate([[0.0], p])
        between = p[self.start] - p[self.end]
        return offset + weight * between, between

    def __call__(self) -> np.ndarray:
        r = self.resistance
        reference = 0.5 * np.sum(abs(self.supply)) / math.sqrt(len(r))
        q, _ = self.step(1 / (r * reference), np.zeros(len(r)))
        self.steps = 1
        for _ in range(60):
            slope = np.maximum(2 * r * abs(q), 1e-4 * 2 * r * reference)
            weight = 1 / slope
            q, between = self.step(weight, q - weight * r * q * abs(q))
            self.steps += 1
            if np.max(abs(between - r * q * abs(q))) <= 1e-9 * np.max(abs(between)):
                break
        return q


SIZES = {10: 3, 1_000: 23, 10_000: 71}  # branches (about) -> side of the grid
