# SPDX-License-Identifier: MIT
"""Bounds of a formula: what goes in, what comes out, what is refused."""

import math
import random

import numpy as np
import pytest

import makegood
from makegood import air, electrical, heating, sensing


def test_a_band_from_pairs_and_numbers():
    low, high = electrical.voltage_drop.bounds(44, (15, 16), (20, 22))
    assert type(low) is float and type(high) is float
    assert low == pytest.approx(44 * 15 * 20 / 1000, rel=1e-14)
    assert high == pytest.approx(44 * 16 * 22 / 1000, rel=1e-14)
    assert low <= electrical.voltage_drop(44, 15, 20) and electrical.voltage_drop(44, 16, 22) <= high
    assert electrical.voltage_drop.bounds(44, length_m=[20, 22], current_a=(15, 16)) == (low, high)
    assert electrical.voltage_drop.bounds(np.float64(44), (np.int64(15), np.float32(16)), (20, 22)) == (low, high)


def test_a_falling_argument():
    # 230²/P: the resistance is lowest at the highest power
    low, high = heating.element_resistance.bounds((950, 1050), 230)
    assert low == pytest.approx(230**2 / 1050, rel=1e-14) and low <= 230**2 / 1050
    assert high == pytest.approx(230**2 / 950, rel=1e-14) and high >= 230**2 / 950


def test_words_and_defaults():
    low, high = electrical.adiabatic_k.bounds("copper", (30, 70), 160)
    assert low <= electrical.adiabatic_k("copper", 70, 160) < electrical.adiabatic_k("copper", 30, 160) <= high
    low, high = electrical.resistance_at_temperature.bounds(7.41, (20, 70))
    assert low <= 7.41 <= electrical.resistance_at_temperature(7.41, 70) <= high


def test_a_number_alone_gives_the_value():
    low, high = sensing.steinhart_hart_resistance.bounds(25, 1.1e-3, 2.4e-4, 8e-8)
    value = sensing.steinhart_hart_resistance(25, 1.1e-3, 2.4e-4, 8e-8)
    assert low <= value <= high and high - low <= 1e-12 * value


def test_not_monotone():
    # z I x (1 - x/L) is highest in the middle of the ring
    assert electrical.ring_voltage_drop.bounds(20, 80, (10, 70), 10)[1] == pytest.approx(4.0, rel=1e-9)


@pytest.mark.parametrize("formula", [air.dew_point, air.friction_factor_colebrook, sensing.rtd_temperature], ids=lambda f: f.__name__)
def test_roots(formula):
    draw = random.Random(3)
    usual = [a["usual"] for a in formula.describe()["arguments"]]
    for _ in range(20):
        pairs = [sorted(draw.uniform(*u) for _ in range(2)) for u in usual]
        low, high = formula.bounds(*map(tuple, pairs))
        for _ in range(50):
            assert low <= formula(*(draw.uniform(*p) for p in pairs)) <= high


@pytest.mark.parametrize(
    ("arguments", "error", "text"),
    [
        ((44, 16, (-4, 10)), makegood.RangeError, "length_m: -4 m is below 0 m"),
        ((44, 16, (10, 150000)), makegood.RangeError, "if it was in mm, write 150 m"),
        ((44, 16, (math.nan, 10)), makegood.RangeError, "length_m: not a number"),
        ((44, 16, (10, math.inf)), makegood.RangeError, "length_m: inf"),
        ((44, 16, (10, 10**400)), makegood.RangeError, "length_m is too large a number"),
        ((44, 16, (22, 20)), makegood.RelationError, "length_m: the lower bound 22 m is above the upper bound 20 m"),
        ((44, 16, (20, 21, 22)), TypeError, r"length_m: bounds are a pair \(low, high\), not 3 numbers"),
        ((44, 16, (20, "22")), TypeError, "length_m must be a number in m, not str"),
        ((44, 16, (20, None)), TypeError, "length_m must be a number in m, not NoneType"),
        ((44, 16, (True, 22)), TypeError, "length_m must be a number in m, not bool"),
        ((44, 16, np.array([20.0, 22.0])), TypeError, "length_m must be a number in m, not ndarray"),
        ((44, 16), TypeError, "missing argument 'length_m'"),
    ],
)
def test_what_is_refused(arguments, error, text):
    with pytest.raises(error, match=text):
        electrical.voltage_drop.bounds(*arguments)


def test_what_else_is_refused():
    with pytest.raises(makegood.RelationError, match="further along"):
        electrical.ring_voltage_drop.bounds(20, 80, (10, 81), 10)
    with pytest.raises(makegood.RangeError, match="arguments without a result"):
        sensing.beta_from_two_points.bounds(20, 10000, (10, 30), 5000)
    with pytest.raises(makegood.RangeError, match="not one of"):
        electrical.adiabatic_k.bounds("gold", 30, 160)
    with pytest.raises(TypeError, match="material must be one of"):
        electrical.adiabatic_k.bounds(("copper", "lead"), 30, 160)
    with pytest.raises(TypeError, match="only a formula has bounds"):
        electrical.check_loop_impedance.bounds(1, 2, 3)
    with pytest.raises(TypeError, match='did you mean "length_m"'):
        electrical.voltage_drop.bounds(44, 16, lenght_m=(20, 22))
