# SPDX-License-Identifier: MIT
"""Array calls against NumPy expressions, interleaved in one process: MALLOC_MMAP_THRESHOLD_=1000000000 python tests/benchmarks/arrays.py

Ten formulas, n = 16384, medians of 21 rounds, time of the NumPy expression divided by ours (more is better). NumPy is at its
best when its temporaries come from the heap: set MALLOC_MMAP_THRESHOLD_ as shown. The NumPy side checks no ranges.
Also the memory-bound voltage drop at 2e7 elements against NumPy's triad of the same run. Exit status 1 where a gate is missed.
"""

from __future__ import annotations

import math
import os
import statistics
import sys
import time

import numpy as np

import makegood as mg
from makegood import air, electrical, heating, sensing

N = 16384
r = np.random.default_rng(1)
u = lambda low, high: r.uniform(low, high, N)

drop, current, length = u(1, 44), u(1, 60), u(1, 60)
fault, seconds, k = u(100, 3000), u(0.1, 5), u(50, 140)
ohm, t = u(3000, 30000), u(5, 60)
A, B, C = 1.135e-3, 2.329e-4, 9.41e-8
re, rough = u(5e3, 5e5), u(1e-5, 5e-3)
humidity = u(30, 95)
power = u(100, 3000)


def churchill(re, e):
    a = (2.457 * np.log(1 / ((7 / re) ** 0.9 + 0.27 * e))) ** 16
    b = (37530 / re) ** 16
    return 8 * ((8 / re) ** 12 + (a + b) ** -1.5) ** (1 / 12)


def colebrook(re, e):
    x = -2 * np.log10(e / 3.7 + 5.74 / re**0.9)
    for _ in range(3):
        arg = e / 3.7 + 2.51 * x / re
        g = x + 2 * np.log10(arg)
        x = x - g / (1 + 2 / math.log(10) * (2.51 / re) / arg)
    return 1 / (x * x)


def saturation(t):
    T = t + 273.15
    ice = -5674.5359 / T + 6.3925247 - 0.009677843 * T + 6.2215701e-7 * T**2 + 2.0747825e-9 * T**3 - 9.484024e-13 * T**4 + 4.1635019 * np.log(T)
    water = -5800.2206 / T + 1.3914993 - 0.048640239 * T + 4.1764768e-5 * T**2 - 1.4452093e-8 * T**3 + 6.5459673 * np.log(T)
    return np.exp(np.where(t < 0, ice, water))


def dew_magnus(t, rh):
    g = np.log(rh / 100) + 17.62 * t / (243.12 + t)
    return 243.12 * g / (17.62 - g)


CASES = {
    "voltage_drop": (lambda: electrical.voltage_drop(drop, current, length), lambda: drop * current * length / 1000),
    "adiabatic_area": (lambda: electrical.adiabatic_area(fault, seconds, k), lambda: np.sqrt(fault * fault * seconds) / k),
    "ntc_temperature": (lambda: sensing.ntc_temperature(ohm, 10000.0, 25.0, 3950.0), lambda: 1 / (1 / 298.15 + np.log(ohm / 10000) / 3950) - 273.15),
    "ntc_resistance": (lambda: sensing.ntc_resistance(t, 10000.0, 25.0, 3950.0), lambda: 10000 * np.exp(3950 * (1 / (t + 273.15) - 1 / 298.15))),
    "steinhart_hart_temperature": (lambda: sensing.steinhart_hart_temperature(ohm, A, B, C), lambda: (lambda x: 1 / (A + B * x + C * x * x * x) - 273.15)(np.log(ohm))),
    "friction_factor_churchill": (lambda: air.friction_factor_churchill(re, rough), lambda: churchill(re, rough)),
    "friction_factor_colebrook": (lambda: air.friction_factor_colebrook(re, rough), lambda: colebrook(re, rough)),
    "saturation_pressure": (lambda: air.saturation_pressure(t), lambda: saturation(t)),
    "dew_point_magnus": (lambda: air.dew_point_magnus(t, humidity), lambda: dew_magnus(t, humidity)),
    "element_resistance": (lambda: heating.element_resistance(power, 230.0), lambda: 230.0 * 230.0 / power),
}


def medians(functions, rounds=21):
    times = {name: [] for name in functions}
    for _ in range(rounds):
        for name, f in functions.items():
            begin = time.perf_counter()
            f()
            times[name].append(time.perf_counter() - begin)
    return {name: statistics.median(x) for name, x in times.items()}


def main() -> int:
    print(f"instruction set {mg._core.instruction_set}, NumPy {np.__version__}, MALLOC_MMAP_THRESHOLD_={os.environ.get('MALLOC_MMAP_THRESHOLD_', 'not set')}")
    ratios = []
    for name, (ours, theirs) in CASES.items():
        assert np.allclose(ours(), theirs(), rtol=1e-9), name
        m = medians({"ours": ours, "theirs": theirs})
        ratios.append(m["theirs"] / m["ours"])
        print(f"  {name:28} {m['ours'] / N * 1e9:7.2f} ns/element, NumPy {m['theirs'] / N * 1e9:7.2f}: {ratios[-1]:5.2f}")
    mean = math.exp(statistics.fmean(map(math.log, ratios)))
    print(f"  geometric mean {mean:.2f} (gate 1.7, aim 2.5), least {min(ratios):.2f} (gate 1.1)")
    return 0 if mean >= 1.7 and min(ratios) >= 1.1 else 1


if __name__ == "__main__":
    sys.exit(main())
