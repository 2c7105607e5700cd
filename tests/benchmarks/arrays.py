# SPDX-License-Identifier: MIT
"""Ten formulas over arrays, as makegood and as others calculate them. Run by run.py.

Each is written as somebody who knows the tool writes it, with the same algebra: whole powers by what the tool does best, and in
Colebrook-White the same start and the same four steps. All return or fill a new array; no other than ours checks ranges. Before
anything is timed, every result is compared with ours.
"""

from __future__ import annotations

import ctypes
import math
from dataclasses import dataclass
from typing import Any, Callable

import numpy as np

import makegood as mg
from measuring import compiled, library, pointer

LN_10 = math.log(10)
A, B, C = 1.135e-3, 2.329e-4, 9.41e-8  # Steinhart-Hart, a sensor of 10 kΩ

# ------------------------------------------------------- one element at a time: plain Python, and what numba compiles


def voltage_drop(drop, current, length):
    return drop * current * length / 1000


def adiabatic_area(current, seconds, k):
    return math.sqrt(current * current * seconds) / k


def ntc_temperature(ohm, reference_ohm, reference_c, beta):
    return 1 / (1 / (reference_c + 273.15) + math.log(ohm / reference_ohm) / beta) - 273.15


def ntc_resistance(t, reference_ohm, reference_c, beta):
    return reference_ohm * math.exp(beta * (1 / (t + 273.15) - 1 / (reference_c + 273.15)))


def steinhart_hart_temperature(ohm, a, b, c):
    x = math.log(ohm)
    return 1 / (a + x * (b + c * x * x)) - 273.15


def friction_factor_churchill(re, rough):
    a = (-2.457 * math.log((7 / re) ** 0.9 + 0.27 * rough)) ** 16
    s = a + (37530 / re) ** 16
    return 8 * ((8 / re) ** 12 + 1 / (s * math.sqrt(s))) ** (1 / 12)


def friction_factor_colebrook(re, rough):
    wall = rough / 3.7
    slope = 2.51 / re
    x = -1.8 / LN_10 * math.log(wall + 6.9 / re)
    for _ in range(4):
        inside = wall + slope * x
        x -= (x + 2 / LN_10 * math.log(inside)) / (1 + 2 / LN_10 * slope / inside)
    return 1 / (x * x)


def saturation_pressure(t):
    T = t + 273.15
    if t < 0:
        return math.exp(
            -5674.5359 / T + 6.3925247 + T * (-0.009677843 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) + 4.1635019 * math.log(T)
        )
    return math.exp(-5800.2206 / T + 1.3914993 + T * (-0.048640239 + T * (4.1764768e-5 - T * 1.4452093e-8)) + 6.5459673 * math.log(T))


def dew_point_magnus(t, humidity):
    g = math.log(humidity / 100) + 17.62 * t / (243.12 + t)
    return 243.12 * g / (17.62 - g)


def element_resistance(power, voltage):
    return voltage * voltage / power


# ---------------------------------------------------------- NumPy: where two ways are usual, both; the faster one counts


def np_churchill_powers(re, rough):
    a = (2.457 * np.log(1 / ((7 / re) ** 0.9 + 0.27 * rough))) ** 16
    b = (37530 / re) ** 16
    return 8 * ((8 / re) ** 12 + (a + b) ** -1.5) ** (1 / 12)


def np_churchill_squares(re, rough):
    def fourth(x):
        x = x * x
        return x * x

    s = fourth(fourth(-2.457 * np.log((7 / re) ** 0.9 + 0.27 * rough))) + fourth(fourth(37530 / re))
    laminar = fourth(8 / re)
    return 8 * (laminar * laminar * laminar + 1 / (s * np.sqrt(s))) ** (1 / 12)


def np_colebrook(re, rough):
    wall = rough / 3.7
    slope = 2.51 / re
    x = -1.8 / LN_10 * np.log(wall + 6.9 / re)
    for _ in range(4):
        inside = wall + slope * x
        x = x - (x + 2 / LN_10 * np.log(inside)) / (1 + 2 / LN_10 * slope / inside)
    return 1 / (x * x)


def np_saturation_powers(t):
    T = t + 273.15
    ice = -5674.5359 / T + 6.3925247 - 0.009677843 * T + 6.2215701e-7 * T**2 + 2.0747825e-9 * T**3 - 9.484024e-13 * T**4 + 4.1635019 * np.log(T)
    water = -5800.2206 / T + 1.3914993 - 0.048640239 * T + 4.1764768e-5 * T**2 - 1.4452093e-8 * T**3 + 6.5459673 * np.log(T)
    return np.exp(np.where(t < 0, ice, water))


def np_saturation_nested(t):
    T = t + 273.15
    log, by = np.log(T), 1 / T
    ice = -5674.5359 * by + 6.3925247 + T * (-0.009677843 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) + 4.1635019 * log
    water = -5800.2206 * by + 1.3914993 + T * (-0.048640239 + T * (4.1764768e-5 - T * 1.4452093e-8)) + 6.5459673 * log
    return np.exp(np.where(t < 0, ice, water))


def np_steinhart(ohm, a, b, c):
    x = np.log(ohm)
    return 1 / (a + x * (b + c * x * x)) - 273.15


def np_dew(t, humidity):
    g = np.log(humidity / 100) + 17.62 * t / (243.12 + t)
    return 243.12 * g / (17.62 - g)


NUMPY: dict[str, list[Callable]] = {
    "voltage_drop": [lambda drop, current, length: drop * current * length / 1000, lambda drop, current, length: drop * current * length * 0.001],
    "adiabatic_area": [lambda current, seconds, k: np.sqrt(current * current * seconds) / k],
    "ntc_temperature": [lambda ohm, r, t, beta: 1 / (1 / (t + 273.15) + np.log(ohm / r) / beta) - 273.15],
    "ntc_resistance": [lambda t, r, t_0, beta: r * np.exp(beta * (1 / (t + 273.15) - 1 / (t_0 + 273.15)))],
    "steinhart_hart_temperature": [np_steinhart],
    "friction_factor_churchill": [np_churchill_powers, np_churchill_squares],
    "friction_factor_colebrook": [np_colebrook],
    "saturation_pressure": [np_saturation_powers, np_saturation_nested],
    "dew_point_magnus": [np_dew],
    "element_resistance": [lambda power, voltage: voltage * voltage / power],
}

# ------------------------------------------- numexpr: steps (name, expression); the last is the result, a, b, c, d the arguments

_ICE = "-5674.5359/T + 6.3925247 + T*(-0.009677843 + T*(6.2215701e-7 + T*(2.0747825e-9 - T*9.484024e-13))) + 4.1635019*log(T)"
_WATER = "-5800.2206/T + 1.3914993 + T*(-0.048640239 + T*(4.1764768e-5 - T*1.4452093e-8)) + 6.5459673*log(T)"
_STEP = f"x - (x + {2 / LN_10!r}*log(b/3.7 + 2.51/a*x)) / (1 + {2 / LN_10!r}*(2.51/a)/(b/3.7 + 2.51/a*x))"
_FOURTH = "s*s*s*s"
NUMEXPR: dict[str, list[tuple[str, str]]] = {
    "voltage_drop": [("", "a*b*c/1000")],
    "adiabatic_area": [("", "sqrt(a*a*b)/c")],
    "ntc_temperature": [("", "1/(1/(c + 273.15) + log(a/b)/d) - 273.15")],
    "ntc_resistance": [("", "b*exp(d*(1/(a + 273.15) - 1/(c + 273.15)))")],
    "steinhart_hart_temperature": [("", "1/(b + log(a)*(c + d*log(a)*log(a))) - 273.15")],
    "friction_factor_churchill": [
        ("s", "(-2.457*log((7/a)**0.9 + 0.27*b))**16 + (37530/a)**16"),
        ("", f"8*((8/a)**12 + 1/(s*sqrt(s)))**{1 / 12!r}"),
    ],
    "friction_factor_colebrook": [("x", f"{-1.8 / LN_10!r}*log(b/3.7 + 6.9/a)"), *[("x", _STEP)] * 4, ("", "1/(x*x)")],
    "saturation_pressure": [("T", "a + 273.15"), ("", f"exp(where(a < 0, {_ICE}, {_WATER}))")],
    "dew_point_magnus": [("g", "log(b/100) + 17.62*a/(243.12 + a)"), ("", "243.12*g/(17.62 - g)")],
    "element_resistance": [("", "b*b/a")],
}

SCALARS = {
    f.__name__: f
    for f in (
        voltage_drop, adiabatic_area, ntc_temperature, ntc_resistance, steinhart_hart_temperature, friction_factor_churchill,
        friction_factor_colebrook, saturation_pressure, dew_point_magnus, element_resistance,
    )
}  # fmt: skip
SUBJECT = {
    "voltage_drop": "electrical", "adiabatic_area": "electrical", "ntc_temperature": "sensing", "ntc_resistance": "sensing",
    "steinhart_hart_temperature": "sensing", "friction_factor_churchill": "air", "friction_factor_colebrook": "air",
    "saturation_pressure": "air", "dew_point_magnus": "air", "element_resistance": "heating",
}  # fmt: skip


def arguments(n: int) -> dict[str, tuple[Any, ...]]:
    """The same for every candidate. Temperatures of the air are a series as a logger writes it, so that a branch is foreseen."""
    r = np.random.default_rng(1)

    def u(low, high):
        return r.uniform(low, high, n)

    outside = 10 + 20 * np.sin(np.arange(n) * (2 * np.pi / 1000)) + u(-3, 3)
    return {
        "voltage_drop": (u(1, 44), u(1, 60), u(1, 60)),
        "adiabatic_area": (u(100, 3000), u(0.1, 5), u(50, 140)),
        "ntc_temperature": (u(3000, 30000), 10000.0, 25.0, 3950.0),
        "ntc_resistance": (u(5, 60), 10000.0, 25.0, 3950.0),
        "steinhart_hart_temperature": (u(3000, 30000), A, B, C),
        "friction_factor_churchill": (u(5e3, 5e5), u(1e-5, 5e-3)),
        "friction_factor_colebrook": (u(5e3, 5e5), u(1e-5, 5e-3)),
        "saturation_pressure": (outside,),
        "dew_point_magnus": (u(5, 35), u(30, 95)),
        "element_resistance": (u(100, 3000), 230.0),
    }


@dataclass
class Candidate:
    name: str
    call: Callable[[], Any]
    elements: int  # of one call


def _python(f: Callable, given: tuple[Any, ...], n: int) -> Candidate:
    few = min(n, 2048)
    lists = [x[:few].tolist() if isinstance(x, np.ndarray) else [x] * few for x in given]
    return Candidate("Python", lambda: [f(*row) for row in zip(*lists)], few)


def _numba(f: Callable, given: tuple[Any, ...], n: int, fast: bool) -> Candidate | None:
    numba = library("numba")
    if numba is None:
        return None
    names = "abcd"[: len(given)]
    taken = ", ".join(f"{x}[i]" if isinstance(v, np.ndarray) else x for x, v in zip(names, given))
    inner = numba.njit(f, fastmath=fast, error_model="numpy")
    space = {"np": np, "inner": inner}
    exec(f"def loop({', '.join(names)}):\n  out = np.empty_like(a)\n  for i in range(a.size):\n    out[i] = inner({taken})\n  return out", space)
    loop = numba.njit(space["loop"], fastmath=fast, error_model="numpy")
    return Candidate("numba fastmath" if fast else "numba", lambda: loop(*given), n)


def _numexpr(name: str, given: tuple[Any, ...], n: int) -> Candidate | None:
    numexpr = library("numexpr")
    if numexpr is None:
        return None
    numexpr.set_num_threads(1)
    steps = []
    for to, text in NUMEXPR[name]:
        used = sorted(set(numexpr.NumExpr(text).input_names))
        steps.append((to, numexpr.NumExpr(text, [(x, np.float64) for x in used]), used))
    values = dict(zip("abcd", given))

    def call():
        here = dict(values)
        for to, f, used in steps:
            here[to] = f(*[here[x] for x in used])
        return here[""]

    return Candidate("numexpr", call, n)


def _cpp(name: str, given: tuple[Any, ...], n: int) -> Candidate | None:
    made = compiled("scalar.cpp", "-O2")
    if made is None:
        return None
    out = np.empty(n)
    f = getattr(made, name)
    f.restype = None
    packed = [pointer(x) if isinstance(x, np.ndarray) else ctypes.c_double(x) for x in given] + [pointer(out), ctypes.c_size_t(n)]

    def call():
        f(*packed)
        return out

    call.keep = given  # type: ignore[attr-defined]
    return Candidate("C++ scalar", call, n)


OTHERS = ("Python", "NumPy", "numba", "numba fastmath", "numexpr", "C++ scalar")


def candidates(name: str, n: int, only: tuple[str, ...] = OTHERS) -> dict[str, list[Candidate]]:
    """Ours first; a list, since NumPy may have two. Those that are not installed are left out."""
    given = arguments(n)[name]
    door = getattr(getattr(mg, SUBJECT[name]), name)
    f = SCALARS[name]
    found: dict[str, list[Candidate | None]] = {"ours": [Candidate("ours", lambda: door(*given), n)]}
    if "Python" in only:
        found["Python"] = [_python(f, given, n)]
    if "NumPy" in only:
        found["NumPy"] = [Candidate("NumPy", lambda g=g: g(*given), n) for g in NUMPY[name]]
    if "numba" in only:
        found["numba"] = [_numba(f, given, n, False)]
    if "numba fastmath" in only:
        found["numba fastmath"] = [_numba(f, given, n, True)]
    if "numexpr" in only:
        found["numexpr"] = [_numexpr(name, given, n)]
    if "C++ scalar" in only:
        found["C++ scalar"] = [_cpp(name, given, n)]
    there = {k: [c for c in v if c is not None] for k, v in found.items()}
    return {k: v for k, v in there.items() if v}


def disagreement(name: str, n: int, only: tuple[str, ...] = OTHERS) -> dict[str, float]:
    """The largest difference from ours, to the result or (temperatures may be 0) to 1."""
    several = candidates(name, n, only)
    ours = np.asarray(several["ours"][0].call())
    worst = {}
    for who, list_ in several.items():
        for c in list_:
            y = np.asarray(c.call())
            size = np.maximum(np.abs(ours[: len(y)]), 1.0 if "temperature" in name or "dew" in name else 0.0)
            worst[who] = max(worst.get(who, 0.0), float(np.max(np.abs(y - ours[: len(y)]) / size)))
    return worst


AGREE = 1e-11  # what a different order of the same operations may change; 1e-12 where no exponential follows
