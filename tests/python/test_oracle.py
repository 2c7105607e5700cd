# SPDX-License-Identifier: MIT
"""Every formula against its equation from the literature, written once more in 50-digit arithmetic (oracle.py).

Points: seeded random ones where ordinary jobs lie, the ends of what is permitted, those where terms cancel, a branch changes or a
result passes zero, and others that climb by themselves to where terms cancel. The error is relative to the result or, if that is larger, to a small natural scale of the
quantity (accuracy.SCALE_BY_UNIT, accuracy.SCALE, each with its reason).
"""

from __future__ import annotations

import importlib.util
import math

import pytest

import accuracy
import makegood

pytestmark = pytest.mark.skipif(importlib.util.find_spec("mpmath") is None, reason="mpmath is not installed")

NAMES = accuracy.formulas()
DEFAULT = 1e-14
EPSILON = 2.0**-52

_OFFSET = "t + 273.15 and back rounds to half a unit in the last place of 300 K, 3e-14 K, and so do one or two terms between"
_EXPONENT = "the exponent is a sum of terms up to 50 in size, each rounded: exp makes of that a relative error"

# The bound, and why the default does not hold.
BOUNDS = {
    "electrical.adiabatic_final_temperature": (3e-13, "exp of an exponent E, less beta; a result of 1e300 °C is not refused, so E goes up to 700, and rounding it is E 2^-53 and more of the result"),
    "electrical.insulation_at_temperature": (3e-14, "exp of an exponent up to 173 at the ends (250 K, halved for each 1 K), rounded"),
    "sensing.ntc_resistance": (3e-14, "exp of an exponent up to 60 at the ends of the temperatures"),
    "sensing.ntc_temperature": (1e-13, _OFFSET),
    "sensing.steinhart_hart_temperature": (2e-13, _OFFSET),
    "sensing.steinhart_hart_resistance": (5e-14, "exp of ln R, which is 10 for a usual sensor and 75 at the ends of the coefficients"),
    "air.saturation_pressure": (5e-14, _EXPONENT),
    "air.saturation_pressure_ice": (5e-14, _EXPONENT),
    "air.vapour_pressure": (5e-14, _EXPONENT),
    "air.relative_humidity": (1e-13, _EXPONENT + "; two pressures"),
    "air.saturation_pressure_sonntag": (5e-14, _EXPONENT),
    "air.saturation_temperature": (5e-13, _EXPONENT + ", and the root passes it on to a temperature (about 20 K for a factor e)"),
    "air.relative_humidity_from_humidity_ratio": (5e-14, _EXPONENT),
    "air.vapour_concentration": (5e-14, _EXPONENT),
    "air.moisture_removed": (5e-14, _EXPONENT + "; two pressures"),
    "air.humidity_ratio_from_wet_bulb": (5e-14, _EXPONENT),
    "air.relative_humidity_from_wet_bulb": (5e-14, _EXPONENT + "; two pressures"),
    "air.wet_bulb": (5e-13, _OFFSET + "; and the saturation pressure in the balance, whose exponent is a sum of terms up to 50"),
    "air.dew_point": (5e-13, _EXPONENT + ", and the root passes it on to a temperature (about 20 K for a factor e)"),
}

_cache: dict[str, tuple[list[accuracy.Error], list[accuracy.Point]]] = {}


def errors(name: str) -> tuple[list[accuracy.Error], list[accuracy.Point]]:
    import oracle

    if name not in oracle.ORACLE:
        pytest.fail(f"{name} has no oracle: write its equation, from the literature, into tests/python/oracle.py")
    if name not in _cache:
        _cache[name] = accuracy.errors(name)
    return _cache[name]


def bound(name: str) -> float:
    return BOUNDS.get(name, (DEFAULT, ""))[0]


def excused(name: str, e: accuracy.Error) -> bool:
    """At the end of what is accepted a formula may have a pole or a turning point: there it magnifies any rounding of an argument,
    and no arithmetic does better. Four roundings are allowed for."""
    return e.kind == "edge" and e.scaled <= 4 * EPSILON / 2 * accuracy.condition(name, e.point)


@pytest.mark.parametrize("name", NAMES)
def test_formula(name):
    found, refused = errors(name)
    assert sum(e.kind == "usual" for e in found) == accuracy.RANDOM_POINTS, "ordinary arguments are refused"
    assert not [p for p in refused if p[""] == "special"], "a point of accuracy.SPECIAL is refused"
    assert len(refused) < len(found) / 50  # ends are looked for; only a whole number is met by chance
    assert all(math.isfinite(e.value) and math.isfinite(e.exact) for e in found)
    e = max((e for e in found if not excused(name, e)), key=lambda e: e.scaled / bound(name))
    assert e.scaled <= bound(name), f"off by {e.scaled:.2g}, allowed {bound(name):.2g} ({e.ulp:.3g} ulp): {e}"


def test_the_catalogue_is_covered():
    import oracle

    assert len(NAMES) > 60
    missing = [n for n in NAMES if n not in oracle.ORACLE]
    assert not missing, f"without an oracle: {', '.join(missing)}"
    known = {d["name"] for d in makegood.catalogue()}
    for table, what in ((oracle.ORACLE, "oracle.ORACLE"), (BOUNDS, "BOUNDS"), (accuracy.SCALE, "SCALE"), (accuracy.SPECIAL, "SPECIAL")):
        assert set(table) <= known, f"{what} speaks of {set(table) - known}, which is not in the catalogue"
    assert set(oracle.POINTS) == set(oracle.ORACLE)


@pytest.mark.parametrize("name", sorted(BOUNDS))
def test_no_bound_is_wider_than_it_need_be(name):
    found, _ = errors(name)
    nearest = max(e.scaled / bound(name) for e in found)
    assert nearest > 0.05, f"the worst is {nearest:.2g} of what BOUNDS allows: narrow it"
    assert max(e.scaled for e in found) > DEFAULT / 3, "the default would do: take it out of BOUNDS"


@pytest.mark.parametrize("name", NAMES)
def test_a_slip_would_be_seen(name):
    """An equation that is off by a millionth is told from the right one at nearly every usual point."""
    found, _ = errors(name)
    usual = [e for e in found if e.kind == "usual" and e.exact]
    seen = [e for e in usual if abs(e.value * (1 + 1e-6) - e.exact) / max(abs(e.exact), e.scale) > bound(name)]
    assert len(seen) > 0.95 * len(usual)


def test_errors_are_counted_right():
    e = accuracy.Error("usual", {}, accuracy.up(1.0), 1.0, EPSILON, 1e-300)
    assert (e.ulp, e.relative, e.scaled) == (1.0, EPSILON, EPSILON)
    e = accuracy.Error("usual", {}, 1e-3, 0.0, 1e-3, 1.0)
    assert e.scaled == 1e-3 and math.isinf(e.relative)


def test_fit_is_the_least_squares_solution():
    """The model of the Steinhart-Hart coefficients against 50-digit normal equations: curves, not coefficients, are compared."""
    import oracle

    mp = oracle.mp
    curve = [mp.mpf(x) for x in (1.129241e-3, 2.341077e-4, 8.775468e-8)]
    for count, noise in ((3, 0.0), (7, 0.0), (7, 1e-3), (25, 1e-3)):
        points = []
        for i in range(count):
            t = -10.0 + 90.0 * i / (count - 1)
            exact = oracle.steinhart_hart_resistance(t, *curve)
            points.append((t, float(exact) * (1 + noise * math.sin(17.0 * i))))
        fit = makegood.sensing.fit_steinhart_hart(points)
        rows = mp.matrix([[1, mp.log(r), mp.log(r) ** 3] for _, r in points])
        right = mp.matrix([1 / (mp.mpf(t) + oracle.ZERO_CELSIUS_K) for t, _ in points])
        a, b, c = mp.lu_solve(rows.T * rows, rows.T * right)
        for t, r in points:
            mine = oracle.steinhart_hart_temperature(r, *(mp.mpf(x) for x in (fit.a, fit.b, fit.c)))
            best = oracle.steinhart_hart_temperature(r, a, b, c)
            assert abs(mine - best) < 1e-9, (count, noise, t)  # kelvin; a meter reads to 0.01 K
