# SPDX-License-Identifier: MIT
"""Heated floors against simulators that share nothing with the library: dense matrices and eigenvectors where all is linear, small
explicit steps on an own grid where it is not.

    python tests/python/test_floor.py [N]     # N random floors; prints the worst differences, and how often warm_up_evidence is right
"""

from __future__ import annotations

import json
import math
import os
import pathlib
import random
import subprocess
import sys
from typing import Any

import numpy as np
import pytest

import makegood

H = makegood.heating

TILE = {"thickness_mm": 10, "conductivity_w_per_mk": 1.3, "density_kg_per_m3": 2300, "specific_heat_j_per_kgk": 840}
SCREED = {"material": "cement_screed", "thickness_mm": 60}
FLOOR: list[dict[str, Any]] = [
    {"material": "ceramic_tile", "thickness_mm": 10},
    {"material": "mortar", "thickness_mm": 5},
    {"material": "extruded_foam", "thickness_mm": 10},
    {"name": "contact", "resistance_m2k_per_w": 0.02},
    {"material": "cement_screed", "thickness_mm": 60},
]
MATERIALS = {"ceramic_tile": (1.3, 2300, 840), "mortar": (1.0, 1800, 1000), "extruded_foam": (0.033, 35, 1450), "cement_screed": (1.4, 2000, 1000), "timber": (0.13, 500, 1600),
             "vinyl": (0.25, 1700, 1400)}  # fmt: skip


# ------------------------------------------------------------------------------------------------------- own simulators


class Grid:
    """Cells of at most `step` metres with their nodes in the middle (the library has them at the ends); contacts between them."""

    def __init__(self, layers: list[dict[str, Any]], heater_after: int, step: float) -> None:
        self.capacity: list[float] = []
        self.half: list[float] = []  # resistance of half a cell
        self.contact: list[float] = []  # resistance between cell i and i+1 beside the halves
        self.first: list[int] = []  # first cell of layer i
        waiting = 0.0
        for layer in layers:
            self.first.append(len(self.capacity))
            if "resistance_m2k_per_w" in layer:
                waiting += layer["resistance_m2k_per_w"]
                continue
            k, density, heat = MATERIALS[layer["material"]] if "material" in layer else tuple(layer[n] for n in ("conductivity_w_per_mk", "density_kg_per_m3", "specific_heat_j_per_kgk"))
            d = layer["thickness_mm"] / 1000
            n = max(4, math.ceil(d / step))
            for i in range(n):
                if self.capacity:
                    self.contact.append(waiting)
                waiting = 0.0
                self.capacity.append(d / n * density * heat)
                self.half.append(d / n / 2 / k)
        self.last = waiting
        self.first.append(len(self.capacity))
        self.n = len(self.capacity)
        g = [1 / (self.half[i] + self.contact[i] + self.half[i + 1]) for i in range(self.n - 1)]
        self.g = np.array(g)
        # a source at an interface between cells a and a+1 goes to both as a current does
        b = self.first[heater_after]
        self.source = np.zeros(self.n)
        if b == 0:
            self.source[0] = 1.0
        elif b == self.n:
            self.source[-1] = 1.0
        else:
            up, down = self.half[b - 1], self.contact[b - 1] + self.half[b]  # the tests put contacts below the heater alone
            self.source[b - 1], self.source[b] = down / (up + down), up / (up + down)
            self.up, self.down = up, down
        self.b = b

    def interface(self, t: np.ndarray, layer: int) -> float:
        """Between two layers that touch, away from the source."""
        b = self.first[layer]
        up, down = self.half[b - 1], self.half[b]
        return float((t[b - 1] / up + t[b] / down) / (1 / up + 1 / down))

    def heater(self, t: np.ndarray, power: float) -> np.ndarray:
        a, b = t[..., self.b - 1], t[..., self.b]
        return (a / self.up + b / self.down + power) / (1 / self.up + 1 / self.down)


def by_eigenvectors(layers, heater_after, power, initial, room, coefficient, below, cover, times, step=2e-4):
    """Surface and heater at the times: exact in time, for a linear surface loss."""
    grid = Grid(layers, heater_after, step)
    a = np.zeros((grid.n, grid.n))
    for i, g in enumerate(grid.g):
        a[i, i] += g
        a[i + 1, i + 1] += g
        a[i, i + 1] -= g
        a[i + 1, i] -= g
    top = 1 / (grid.half[0] + cover + 1 / coefficient)
    a[0, 0] += top
    into = grid.source * power
    into[0] += top * room
    if below:
        bottom = 1 / (grid.half[-1] + grid.last + below[0])
        a[-1, -1] += bottom
        into[-1] += bottom * below[1]
    root = np.sqrt(np.array(grid.capacity))
    values, vectors = np.linalg.eigh(a / np.outer(root, root))
    rest = np.linalg.solve(a, into)
    start = vectors.T @ (root * (initial - rest))
    surface, heater = [], []
    for t in times:
        u = rest + (vectors @ (np.exp(-values * t) * start)) / root
        flux = top * (u[0] - room)
        surface.append(u[0] - flux * grid.half[0])
        heater.append(float(grid.heater(u, power)))
    return np.array(surface), np.array(heater)


def surface_of(first, half, room):
    """Surface temperature with (first - surface) / half = q(surface), the base characteristic: by Newton from above, for numbers and arrays."""
    d = np.maximum(first - room, 0.0)  # warmer than the room
    warm = d.copy() if isinstance(d, np.ndarray) else float(d)
    for _ in range(8):
        q = 8.92 * half * np.power(warm, 0.1) if isinstance(warm, np.ndarray) else 8.92 * half * warm**0.1
        warm = warm - (warm + q * warm - d) / (1 + 1.1 * q)
    cold = (first - room) / (1 + 7.0 * half)
    return room + (np.where(first > room, warm, cold) if isinstance(warm, np.ndarray) else warm if first > room else cold)


def by_small_steps(layers, heater_after, power, initial, room, below, times, thermostat=None, step=2e-3, lumped=None):
    """Surface and heater by explicit steps (Heun), with the base characteristic, a thermostat by floor and a room that warms. The probe of
    the thermostat lies under the second layer: a cell's width from the source there is no jump when it is switched."""
    grid = Grid(layers, heater_after, step)
    capacity = np.array(grid.capacity)
    dt = 0.4 * float(np.min(capacity[1:-1] / (grid.g[:-1] + grid.g[1:])))
    dt = min(dt, 0.4 * capacity[0] / (1 / grid.half[0] + grid.g[0]), 2.0)
    u, on, now, air = np.full(grid.n, float(initial)), True, 0.0, float(room)
    surface, heater, rooms, switched = [], [], [], []

    def rates(u, air, p):
        into = grid.source * p
        q = grid.g * (u[:-1] - u[1:])
        into[:-1] -= q
        into[1:] += q
        s = surface_of(float(u[0]), grid.half[0], air)
        up = (u[0] - s) / grid.half[0]
        into[0] -= up
        if below:
            into[-1] -= (u[-1] - below[1]) / (grid.half[-1] + grid.last + below[0])
        warming = (float(up) - lumped["loss"] * (air - lumped["outside"])) / lumped["capacity"] if lumped else 0.0
        return into / capacity, warming, s

    for t in times:
        while now < t - 1e-9:
            h = min(dt, t - now)
            p = power if on else 0.0
            if thermostat and min(abs(grid.interface(u, 2) - x) for x in thermostat) < 0.02:
                h = min(h, 0.1)  # so that it does not switch late
            k1, a1, _ = rates(u, air, p)
            k2, a2, _ = rates(u + h * k1, air + h * a1, p)
            before = grid.interface(u, 2) if thermostat else 0.0
            u = u + 0.5 * h * (k1 + k2)
            air += 0.5 * h * (a1 + a2)
            now += h
            if thermostat:
                probe = grid.interface(u, 2)
                if (on and probe >= thermostat[1]) or (not on and probe <= thermostat[0]):
                    limit = thermostat[1] if on else thermostat[0]
                    switched.append(now - h * (probe - limit) / (probe - before) if probe != before else now)
                    on = not on
        surface.append(float(rates(u, air, 0.0)[2]))
        heater.append(float(grid.heater(u, power if on else 0.0)))
        rooms.append(air)
    return np.array(surface), np.array(heater), np.array(rooms), switched


# ------------------------------------------------------------------------------------------------------------ floor_warm_up


def linear_case(r: random.Random, step: float = 4e-4) -> float:
    """One random floor with a linear loss against eigenvectors: the worst difference over the error asked for."""
    layers = [dict(layer, thickness_mm=layer["thickness_mm"] * r.uniform(0.6, 1.6)) if "thickness_mm" in layer else dict(layer) for layer in FLOOR]
    if r.random() < 0.5:
        layers[0] = {"material": r.choice(["timber", "vinyl"]), "thickness_mm": r.uniform(4, 15)}
    power, initial, room, coefficient = r.uniform(50, 250), r.uniform(5, 25), r.uniform(10, 25), r.uniform(5, 15)
    below = (r.uniform(0.05, 3), r.uniform(0, 20))
    cover = r.uniform(0.02, 0.4)
    times = sorted(r.uniform(120, 20000) for _ in range(5))
    asked = 10 ** r.uniform(-2.5, -1)
    found = H.floor_warm_up(
        layers, power, initial, room, 2, below={"resistance_m2k_per_w": below[0], "temperature_c": below[1]}, cover={"resistance_m2k_per_w": cover, "area_ratio": 0.3},
        upper_loss={"law": "linear", "coefficient_w_per_m2k": coefficient}, times_s=times, error_k=asked,
    )  # fmt: skip
    surface, heater = by_eigenvectors(layers, 2, power, initial, room, coefficient, below, 0.0, times, step)
    under, _ = by_eigenvectors(layers, 2, power, initial, room, coefficient, below, cover, times, step)
    assert found.error_k <= asked and found.balance_ratio < 1e-6
    worst = max(np.max(np.abs(np.array(a) - b)) for a, b in ((found.surface_c, surface), (found.heater_c, heater), (found.covered_surface_c, under)))
    return worst / (asked + 2e-3)  # what the simulator's own cells may leave


def test_linear_floors_against_eigenvectors():
    r = random.Random(11)
    assert max(linear_case(r) for _ in range(4)) < 1.0


@pytest.mark.parametrize("below", [None, (0.5, 8.0)])
def test_base_characteristic_and_thermostat_against_small_steps(below):
    times = [300, 900, 1800, 3600]
    layers = [dict(layer) for layer in FLOOR]
    given = {"below": {"resistance_m2k_per_w": below[0], "temperature_c": below[1]}} if below else {}
    found = H.floor_warm_up(layers, 180, 14, 18, 2, times_s=times, error_k=0.002, **given)
    surface, heater, _, _ = by_small_steps(layers, 2, 180, 14, 18, below, times)
    assert np.max(np.abs(np.array(found.surface_c) - surface)) < 0.02
    assert np.max(np.abs(np.array(found.heater_c) - heater)) < 0.02
    half = dict(FLOOR[1], thickness_mm=2.5)
    layers[1:2] = [half, half]
    held = H.floor_warm_up(
        layers, 180, 14, 18, 3, times_s=times, error_k=0.002, probe_after_layer=2, thermostat={"senses": "floor", "set_point_c": 24, "hysteresis_k": 2}, **given
    )
    _, _, _, switched = by_small_steps(layers, 3, 180, 14, 18, below, times, thermostat=(23, 25), step=1e-3)
    assert len(held.switched_s) == len(switched) > 2
    assert np.max(np.abs(np.array(held.switched_s) - switched)) < 1.0  # seconds; what the cells of the simulator leave


def test_a_room_that_warms_against_small_steps():
    times = [600, 1800, 3600, 7200]
    room = {"temperature_c": 15, "heat_loss_w_per_k": 24, "outside_c": 2, "capacity_kj_per_k": 200, "heated_area_m2": 4}
    found = H.floor_warm_up(FLOOR, 180, 14, room, 2, times_s=times, error_k=0.005)
    surface, _, air, _ = by_small_steps(FLOOR, 2, 180, 14, 15, None, times, lumped={"loss": 6.0, "outside": 2.0, "capacity": 50000.0})
    assert np.max(np.abs(np.array(found.surface_c) - surface)) < 0.03
    assert np.max(np.abs(np.array(found.room_c) - air)) < 0.03


def test_what_a_result_says():
    floor = H.floor_warm_up(FLOOR, 150, 18, 20, 2, below={"resistance_m2k_per_w": 0.5, "temperature_c": 10}, target_c=27)
    assert len(floor.times_s) == len(floor.surface_c) == 49 and floor.covered_surface_c == []
    assert floor.error_k <= floor.error_asked_k == 0.02
    assert floor.supplied_j_per_m2 == pytest.approx(150 * 14400)
    assert floor.supplied_j_per_m2 == pytest.approx(floor.up_j_per_m2 + floor.down_j_per_m2 + floor.stored_j_per_m2, rel=1e-6)
    i = next(i for i, x in enumerate(floor.surface_c) if x > 27)
    assert floor.times_s[i - 1] < floor.target_s <= floor.times_s[i]
    assert floor.passages[0]["limit_c"] == 29 and floor.passages[0]["uncovered_s"] > floor.target_s
    assert any("refined" in line for line in floor.text)
    assert any("insulation, screen, resistance and RCD" in line for line in floor.cautions)
    cold = H.floor_warm_up(FLOOR, 30, 18, 20, 2, target_c=29)
    assert cold.target_s is None and any("never reached" in f for f in cold.findings)
    hot = H.floor_warm_up(FLOOR, 30, 60, 20, 2, below={"resistance_m2k_per_w": 0.5, "temperature_c": 10})
    assert any("hotter than its heater" in f for f in hot.findings)
    endless = H.floor_warm_up(FLOOR, 30, 18, 20, 2, upper_loss={"law": "linear", "coefficient_w_per_m2k": 0})
    assert any("Nothing carries the heat away" in f for f in endless.findings) and endless.steady["surface_c"] is None
    assert not any("safe" in line.lower() for line in floor.text + floor.cautions + floor.assumptions)


def test_a_floor_limit_holds_what_air_alone_does_not():
    given = dict(layers=FLOOR, power_density_w_per_m2=180, initial_c=18, room=18, heater_after_layer=2, duration_s=14400, error_k=0.05,
                 below={"resistance_m2k_per_w": 1.0, "temperature_c": 15})  # fmt: skip
    air = H.floor_warm_up(**given, thermostat={"senses": "air", "set_point_c": 22})
    both = H.floor_warm_up(**given, thermostat={"senses": "air_with_floor_limit", "set_point_c": 22, "floor_limit_c": 28})
    assert air.on_ratio == 1.0 and air.highest_surface_c > 30
    assert both.on_ratio < 0.9 and max(both.probe_c) <= 28 + 0.05
    assert any("Air alone" in c for c in air.cautions)
    offset = H.floor_warm_up(**given, thermostat={"senses": "air", "set_point_c": 22, "air_offset_k": 6})
    assert offset.on_ratio == 0.0
    elsewhere = H.floor_warm_up(**given, thermostat={"senses": "air", "set_point_c": 22, "air_elsewhere_c": 23})
    assert elsewhere.on_ratio == 0.0


REFUSED = [
    (dict(initial_c=-274), "absolute zero"),
    (dict(room=-300), "absolute zero"),
    (dict(below={"resistance_m2k_per_w": 1, "temperature_c": -280}), "absolute zero"),
    (dict(layers=[{"material": "timber", "thickness_mm": 0}]), "without thickness"),
    (dict(layers=[{"material": "timber", "thickness_mm": float("nan")}]), "thickness_mm"),
    (dict(layers=[{"material": "timbre", "thickness_mm": 9}]), 'did you mean "timber"'),
    (dict(layers=[{"thickness_mm": 9}]), "conductivity_w_per_mk"),
    (dict(layers=[]), "layers"),
    (dict(layers=[{"resistance_m2k_per_w": 0}]), "resistance_m2k_per_w"),
    (dict(layers=[{"resistance_m2k_per_w": 0.1}]), "store heat"),
    (dict(layers=["timber"]), "must be an object"),
    (dict(heater_after_layer=1.5), "whole number"),
    (dict(heater_after_layer=9), "whole number"),
    (dict(power_density_w_per_m2=float("inf")), "not a number"),
    (dict(power_density_w_per_m2=-5), "power_density"),
    (dict(duration_s=0), "duration_s"),
    (dict(times_s=[10, 5]), "rise"),
    (dict(times_s=[10, float("nan")]), "times_s"),
    (dict(cover={"resistance_m2k_per_w": 0.1, "area_ratio": 1.2}), "area_ratio"),
    (dict(thermostat={"senses": "feet", "set_point_c": 22}), "feet"),
    (dict(thermostat={"senses": "air", "set_point_c": 22, "hysteresis_k": 0}), "hysteresis"),
    (dict(thermostat={"senses": "air_with_floor_limit", "set_point_c": 22}), "floor_limit_c"),
    (dict(thermostat={"senses": "floor", "set_point_c": 22, "probe_covered": True}), "cover"),
    (dict(upper_loss={"law": "quadratic"}), "quadratic"),
    (dict(room={"temperature_c": 20, "heat_loss_w_per_k": 30, "outside_c": 0, "capacity_kj_per_k": 100, "heated_area_m2": 0}), "heated_area_m2"),
    (dict(room={"temperature_c": 20, "colour": 3}), "colour"),
    (dict(error_k=0), "error_k"),
]


@pytest.mark.parametrize("wrong, word", REFUSED, ids=[w for _, w in REFUSED])
def test_floor_warm_up_refuses_nonsense(wrong, word):
    given = dict(layers=FLOOR, power_density_w_per_m2=150, initial_c=18, room=20, heater_after_layer=1, duration_s=600)
    with pytest.raises(makegood.RangeError, match=word):
        H.floor_warm_up(**(given | wrong))


def test_an_error_that_cannot_be_met_is_said():
    with pytest.raises(makegood.ConvergenceError, match="was not reached"):
        H.floor_warm_up([{"material": "granite", "thickness_mm": 4000}], 1e5, 20, 20, 0, times_s=[0.01], error_k=1e-6)


def test_materials():
    timber = H.floor_material("timber")
    assert timber.effusivity_w_s05_per_m2k == pytest.approx(math.sqrt(0.13 * 500 * 1600))
    assert timber.diffusivity_m2_per_s == pytest.approx(0.13 / (500 * 1600))
    assert H.floor_material("cement_screed").grade == "memory"
    with pytest.raises(makegood.RangeError, match="did you mean"):
        H.floor_material("plywod")


# ------------------------------------------------------------------------------------------------------ without_floor_limit


def test_without_floor_limit_is_never_a_pass():
    below = {"resistance_m2k_per_w": 1.0, "temperature_c": 15}
    found = H.without_floor_limit(FLOOR, 150, 24, heater_after_layer=2, below=below)
    assert found.outcome == "fail" and found.passes_limit
    assert [c["finish"] for c in found.cases] == ["tile", "timber", "vinyl"] and found.cases[0]["as_laid"]
    for power in (1, 10, 40, 150):
        for permission in (False, True):
            for finish in ("tile", "timber", "vinyl"):
                r = H.without_floor_limit(FLOOR, power, 20, finish, 2, below=below, written_permission=permission)
                assert r.outcome in ("fail", "undecided") and r.outcome == ("fail" if r.passes_limit else "undecided")
                assert len(r.acts) == 3 and "Isolate" in r.acts[0] and "floor limit" in r.acts[1] and "written permission" in r.acts[2]
                assert any("permission is stated" in t for t in r.text) == permission
                assert not any(word in t.lower().split() for t in r.text + r.cautions for word in ("safe", "passes.", "pass."))


def rest_of(layers, power, room, below, cover):
    """Surface at rest by halving, resistances in series: another way than the library's."""
    r = [layer.get("resistance_m2k_per_w") or layer["thickness_mm"] / 1000 / MATERIALS[layer["material"]][0] for layer in layers]
    up, down = r[0] + r[1], sum(r[2:]) + below[0]
    low, high = room - 50, room + 500
    for _ in range(200):
        top = 0.5 * (low + high)
        q = 8.92 * (top - room) ** 1.1 if top > room else 7.0 * (top - room)
        heater = top + q * (cover + up)
        if q + (heater - below[1]) / down > power:
            high = top
        else:
            low = top
    return top + q * cover, top + q * cover + q * r[0]


def test_rest_without_floor_limit():
    below = (1.0, 15.0)
    found = H.without_floor_limit(FLOOR, 150, 22, heater_after_layer=2, below={"resistance_m2k_per_w": below[0], "temperature_c": below[1]},
                                  cover={"resistance_m2k_per_w": 0.2, "area_ratio": 0.3}, worst_power_ratio=1.3)  # fmt: skip
    for case in found.cases:
        layers = [dict(layer) for layer in FLOOR]
        if not case["as_laid"]:
            layers[0] = {"material": case["finish"], "thickness_mm": {"timber": 14, "vinyl": 4}[case["finish"]]}
        for name, power, cover in (("usual", 150, 0.0), ("usual_covered", 150, 0.2), ("worst", 195, 0.0), ("worst_covered", 195, 0.2)):
            surface, bond = rest_of(layers, power, 22, below, cover)
            assert case[name]["surface_c"] == pytest.approx(surface, abs=1e-6) and case[name]["bond_c"] == pytest.approx(bond, abs=1e-6), (case["finish"], name)
        # limits are passed in the order of their height, and sooner under the cover
        times = [p["uncovered_s"] for p in case["passages"][:3] if p["uncovered_s"] is not None]
        assert times == sorted(times)
        for p in case["passages"]:
            rest = case["worst_covered"]["bond_c" if p["at_bond"] else "surface_c"]
            assert (p["covered_s"] is not None) == (rest > p["limit_c"]) or abs(rest - p["limit_c"]) < 0.5
            if p["uncovered_s"] is not None:
                assert p["covered_s"] < p["uncovered_s"]
    rises = [b["surface_high_c"] - a["surface_high_c"] for a, b in zip(found.reliance, found.reliance[1:])]
    assert all(1.5 < x < 2.1 for x in rises)  # two kelvin on the dial
    low, high = found.reliance[2]["surface_low_c"], found.reliance[2]["surface_high_c"]
    assert high - low > 8 and 0.8 < found.surface_per_offset_ratio <= 1.0


def test_a_thermostat_in_another_room():
    room = {"temperature_c": 20, "heat_loss_w_per_k": 12, "outside_c": 0, "capacity_kj_per_k": 300, "heated_area_m2": 4}
    given = dict(layers=FLOOR, power_density_w_per_m2=150, set_point_c=22, heater_after_layer=2, room=room)
    own = H.without_floor_limit(**given)
    cold = H.without_floor_limit(**given, air_elsewhere_c=18)
    warm = H.without_floor_limit(**given, air_elsewhere_c=23)
    assert not own.never_off and cold.never_off and warm.never_on
    assert own.room_c == 22 and cold.room_c > 35  # the bathroom goes where its losses carry the heat away
    assert any("never switched off" in t for t in cold.text)
    assert cold.cases[0]["worst"]["surface_c"] > own.cases[0]["worst"]["surface_c"] + 10


@pytest.mark.parametrize(
    "wrong, word",
    [
        (dict(finish="glass"), "is not one of"),
        (dict(set_point_c=60), "set_point_c"),
        (dict(set_point_c=float("nan")), "not a number"),
        (dict(power_density_w_per_m2=0), "above 0"),
        (dict(worst_power_ratio=0.9), "worst_power_ratio"),
        (dict(written_permission="yes"), "true or false"),
        (dict(heater_after_layer=0), "finish lies above"),
        (dict(air_elsewhere_c=-400), "absolute zero"),
        (dict(thermostat={}), "thermostat"),
    ],
)
def test_without_floor_limit_refuses_nonsense(wrong, word):
    with pytest.raises((makegood.RangeError, TypeError), match=word):
        H.without_floor_limit(**(dict(layers=FLOOR, power_density_w_per_m2=150, set_point_c=22) | wrong))


# --------------------------------------------------------------------------------------------------------- warm_up_evidence

PROVED = {"insulation": True, "screen": True, "resistance": True, "rcd": True}
BUILD_UP: dict[str, Any] = {"layers": FLOOR, "power_density_w_per_m2": 150, "heater_after_layer": 2, "below": {"resistance_m2k_per_w": 1.0, "temperature_c": 18}}


class Displays:
    """Floors in two dimensions, many at once: the heater as lines 75 mm apart, half of that wide by symmetry, the base characteristic on top.
    The probe lies anywhere between two lines. Nothing of it is the library's."""

    def __init__(self, r: np.random.Generator, n: int, minutes: int) -> None:
        self.kind = r.choice(3, n, p=[0.55, 0.2, 0.25])  # whole, part, not heating
        self.share = np.where(self.kind == 0, r.normal(1.0, 0.04, n), np.where(self.kind == 1, r.uniform(0.1, 0.9, n), 0.0))
        self.start = r.uniform(14, 22, n)
        self.room_told = np.round(self.start + r.uniform(-1, 4, n), 1)
        room = self.room_told + r.normal(0, 1.0, n)
        wide, dx, dz = 15, 0.0025, 0.0025
        kinds = [("ceramic_tile", 4), ("mortar", 2), ("extruded_foam", 4), ("cement_screed", 24)]
        k = np.empty((n, 34))
        c = np.empty((n, 34))
        z = 0
        for name, cells in kinds:
            a, density, heat = MATERIALS[name]
            k[:, z : z + cells] = (a * np.exp(r.normal(0, 0.12, n)))[:, None]
            c[:, z : z + cells] = (density * heat * dz * np.exp(r.normal(0, 0.12, n)))[:, None]
            z += cells
        down = 1 / (dz / (2 * k[:, :-1]) + dz / (2 * k[:, 1:]))  # W/(m²K) between cells one above the other
        contact = 0.02 * np.exp(r.normal(0, 0.5, n))
        down[:, 9] = 1 / (1 / down[:, 9] + contact)
        bottom = 1 / (dz / (2 * k[:, -1]) + 1.0)
        half = dz / (2 * k[:, 0])
        beside = k * dz / dx / dx  # W/(m²K) by the area of a cell seen from above, per cell beside
        source = 150 * self.share * wide  # all of a half spacing comes in at its first column, as the line lies there
        dt = 0.75
        column = r.integers(0, wide, n)
        probe = np.empty((minutes + 1, n))
        u = np.repeat(np.repeat(self.start[:, None, None], 34, 1), wide, 2)
        at = np.arange(n)
        probe[0] = self.start
        for step in range(int(minutes * 60 / dt)):
            f = np.zeros_like(u)
            q = down[:, :, None] * (u[:, :-1] - u[:, 1:])
            f[:, :-1] -= q
            f[:, 1:] += q
            q = beside[:, :, None] * (u[:, :, :-1] - u[:, :, 1:])
            f[:, :, :-1] -= q
            f[:, :, 1:] += q
            s = surface_of(u[:, 0], half[:, None], room[:, None])
            f[:, 0] -= (u[:, 0] - s) / half[:, None]
            f[:, -1] -= bottom[:, None] * (u[:, -1] - 18.0)
            f[:, 5, 0] += source  # in the adhesive, at its bottom
            u += dt / c[:, :, None] * f
            if (step + 1) * dt % 60 == 0:
                probe[round((step + 1) * dt / 60)] = u[at, 5, column]
        self.probe = probe
        self.r = r

    def read(self, i: int, minutes: list[float], resolution: float = 0.5, timing: float = 30.0) -> list[float]:
        t = np.clip(np.array(minutes) + self.r.uniform(-timing, timing, len(minutes)) / 60, 0, len(self.probe) - 1)
        true = np.interp(t, np.arange(len(self.probe)), self.probe[:, i])
        return [float(x) for x in resolution * np.round(true / resolution)]


def calibration(n: int, seed: int, batch: int = 200) -> dict[str, float]:
    """How often what is named is right, how probable the truth was held to be, and how often the interval holds the power."""
    r = np.random.default_rng(seed)
    named = right = held = told = undecided = 0
    probability = brier = waited = better = 0.0
    names = ("whole", "part", "not_heating")
    done = 0
    while done < n:
        size = min(batch, n - done)
        d = Displays(r, size, 60)
        for i in range(size):
            count = int(r.integers(2, 6))
            minutes = [0.0] + sorted(float(x) for x in r.choice(np.arange(4, 50), count - 1, replace=False))
            given = dict(build_up=BUILD_UP | {"room": float(d.room_told[i])}, proved=PROVED)
            times = [60 * m for m in minutes]
            shown = d.read(i, minutes)
            e = H.warm_up_evidence(times, shown, **given)
            truth = names[d.kind[i]]
            told += 1
            probability += e.probabilities[truth]
            brier += sum((e.probabilities[k] - (k == truth)) ** 2 for k in names)
            held += e.power_low_w_per_m2 - 0.5 <= 150 * d.share[i] <= e.power_high_w_per_m2 + 0.5
            if e.decided:
                named += 1
                right += e.leading == truth
            elif e.next_reading_s and minutes[-1] + e.next_reading_s / 60 <= 60:
                undecided += 1
                waited += e.next_probability
                later = minutes + [minutes[-1] + e.next_reading_s / 60]
                again = H.warm_up_evidence([60 * m for m in later], shown + d.read(i, later[-1:]), **given)
                better += again.probabilities[truth]
        done += size
    return {
        "named": named / told, "right": right / max(1, named), "probability": probability / told, "brier": brier / told, "interval": held / told,
        "predicted after waiting": waited / max(1, undecided), "found after waiting": better / max(1, undecided),
    }  # fmt: skip


def test_evidence_is_calibrated():
    found = calibration(25, 3)
    assert found["named"] > 0.4, found
    assert found["right"] >= 0.85, found
    assert found["interval"] >= 0.85, found


def test_evidence_says_what_it_must():
    given = dict(build_up=BUILD_UP | {"room": 20}, proved=PROVED)
    course = H.floor_warm_up(FLOOR, 150, 18, 20, 2, below=BUILD_UP["below"], times_s=[0, 900, 1800, 3600])
    shown = [round(2 * x) / 2 for x in course.probe_c]
    whole = H.warm_up_evidence([0, 900, 1800, 3600], shown, **given)
    assert whole.decided and whole.finding == "whole mat heating" and whole.probabilities["whole"] > 0.9
    assert whole.power_low_w_per_m2 < 150 < whole.power_high_w_per_m2
    assert sum(whole.probabilities.values()) == pytest.approx(1)
    assert [x["whole_c"] > x["not_heating_c"] for x in whole.readings] == [False, True, True, True]
    cold = H.warm_up_evidence([0, 900, 1800], [18.0, 18.0, 18.5], **given)
    assert cold.decided and cold.finding.startswith("not heating") and cold.power_high_w_per_m2 < 40
    early = H.warm_up_evidence([0, 60], [18.0, 18.0], **given)
    assert not early.decided and early.finding.startswith("cannot tell yet: read again in") and early.next_reading_s >= 120
    hot = H.warm_up_evidence([0, 900, 1800], [18.0, 40.0, 60.0], **given)
    assert not hot.decided and hot.too_hot and any("more than this heater" in t for t in hot.text)
    for r in (whole, cold, early, hot):
        assert not any("safe" in t.lower() for t in r.text + r.cautions) and any("not of insulation" in c for c in r.cautions)


@pytest.mark.parametrize("which", list(PROVED))
def test_nothing_is_concluded_before_it_is_proved(which):
    e = H.warm_up_evidence([0, 1800], [18, 26], BUILD_UP | {"room": 20}, PROVED | {which: False})
    assert not e.judged and not e.decided and e.finding.startswith("not judged") and len(e.not_proved) == 1
    assert set(e.probabilities.values()) == {None} and e.power_w_per_m2 is None
    missing = {k: v for k, v in PROVED.items() if k != which}
    assert not H.warm_up_evidence([0, 1800], [18, 26], BUILD_UP | {"room": 20}, missing).judged


@pytest.mark.parametrize(
    "wrong, word",
    [
        (dict(times_s=[0], temperatures_c=[18]), "two readings"),
        (dict(times_s=[0, 0]), "rise"),
        (dict(times_s=[-20, -10]), "after the heater was switched on"),
        (dict(times_s=[0, float("nan")]), "times_s"),
        (dict(temperatures_c=[18, -300]), "absolute zero"),
        (dict(temperatures_c=[18, 300]), "temperatures_c"),
        (dict(temperatures_c=[18]), "as many"),
        (dict(times_s=list(range(17)), temperatures_c=[18] * 17), "at most 16"),
        (dict(resolution_k=0), "resolution_k"),
        (dict(heater_spacing_mm=0), "heater_spacing_mm"),
        (dict(proved={"insulation": 1.0}), "true or false"),
        (dict(proved={"colour": True}), "colour"),
        (dict(build_up={"layers": FLOOR}), "power_density"),
        (dict(build_up=BUILD_UP | {"room": 20, "layers": [{"material": "timber", "thickness_mm": 0}, *FLOOR]}), "without thickness"),
        (dict(build_up=BUILD_UP | {"room": 20, "power_density_w_per_m2": 0}), "above 0"),
    ],
)
def test_evidence_refuses_nonsense(wrong, word):
    with pytest.raises(makegood.RangeError, match=word):
        H.warm_up_evidence(**(dict(times_s=[0, 1800], temperatures_c=[18, 24], build_up=BUILD_UP | {"room": 20}, proved=PROVED) | wrong))


# ---------------------------------------------------------------------------------------------------------- floor_scenarios

SCENARIOS: dict[str, Any] = dict(
    layers=FLOOR,
    power_density_w_per_m2=[60 + 17 * i for i in range(11)],
    initial_c=[14 + 0.3 * i for i in range(11)],
    room_c=[19 + 0.2 * i for i in range(11)],
    cover_m2k_per_w=[0.03 * (i % 4) for i in range(11)],
    below_c=[8 + i for i in range(11)],
    heater_after_layer=2,
    below_resistance_m2k_per_w=0.5,
    duration_s=7200,
)


def one_by_one() -> list[Any]:
    names = ("power_density_w_per_m2", "initial_c", "room_c", "cover_m2k_per_w", "below_c")
    return [H.floor_scenarios(**(SCENARIOS | {n: SCENARIOS[n][i] for n in names})) for i in range(11)]


def test_scenarios_are_the_same_bits_alone_together_and_on_every_instruction_set():
    together = H.floor_scenarios(**SCENARIOS)
    for i, alone in enumerate(one_by_one()):
        assert alone.surface_c[0] == together.surface_c[i] and alone.heater_c[0] == together.heater_c[i]
    code = f"import makegood, json; f = makegood.heating.floor_scenarios(**{SCENARIOS!r}); print(json.dumps([f.surface_c, f.heater_c]))"
    wanted = json.dumps([together.surface_c, together.heater_c])
    for name in ("sse2", "avx2", "avx512"):
        environment = {**os.environ, "MAKEGOOD_INSTRUCTION_SET": name, "PYTHONPATH": str(pathlib.Path(makegood.__file__).parents[1])}
        assert subprocess.run([sys.executable, "-c", code], env=environment, capture_output=True, text=True, check=True).stdout.strip() == wanted, name


def test_scenarios_against_the_refined_floor():
    for i in (0, 5):
        given = {n: SCENARIOS[n][i] for n in ("power_density_w_per_m2", "initial_c", "room_c", "cover_m2k_per_w", "below_c")}
        times = [720 * (k + 1) for k in range(10)]
        cover = {"cover": {"resistance_m2k_per_w": given["cover_m2k_per_w"], "area_ratio": 1}} if given["cover_m2k_per_w"] else {}
        exact = H.floor_warm_up(
            FLOOR, given["power_density_w_per_m2"], given["initial_c"], given["room_c"], 2, below={"resistance_m2k_per_w": 0.5, "temperature_c": given["below_c"]},
            upper_loss={"law": "linear", "coefficient_w_per_m2k": 10.8}, times_s=times, error_k=1e-4, **cover,
        )  # fmt: skip
        worst = []
        for nodes, steps in ((50, 50), (100, 100), (200, 200)):
            found = H.floor_scenarios(**(SCENARIOS | given | {"nodes_count": nodes, "steps_count": steps}))
            assert found.times_s == times
            worst.append(np.max(np.abs(np.array([found.surface_c[0][1:], found.heater_c[0][1:]]) - np.array([exact.surface_c[1:], exact.heater_c[1:]]))))
        assert worst[2] < 0.003 and worst[0] / worst[1] > 3 and worst[1] / worst[2] > 3, worst  # second order, step and cell together


@pytest.mark.parametrize(
    "wrong, word",
    [
        (dict(nodes_count=151), "even"),
        (dict(nodes_count=8), "too few"),
        (dict(steps_count=501), "multiple"),
        (dict(steps_count=0), "whole number"),
        (dict(initial_c=[18] * 4), "another list"),
        (dict(initial_c=[]), "is empty"),
        (dict(initial_c=-300), "absolute zero"),
        (dict(room_c=float("nan")), "not a number"),
        (dict(coefficient_w_per_m2k=0), "linear surface loss"),
        (dict(power_density_w_per_m2=["150"]), "must be a number"),
        (dict(below_resistance_m2k_per_w=0), "below_resistance"),
        (dict(layers=[{"resistance_m2k_per_w": 1}], heater_after_layer=1), "store heat"),
    ],
)
def test_scenarios_refuse_nonsense(wrong, word):
    with pytest.raises(makegood.RangeError, match=word):
        H.floor_scenarios(**(SCENARIOS | wrong))


def main(arguments: list[str]) -> int:
    count = int(arguments[0]) if arguments else 100
    rng = random.Random(5)
    shares = [linear_case(rng) for _ in range(min(count, 100))]
    print(f"{len(shares)} random floors with a linear loss: worst difference {max(shares):.3f} of the error asked for, median {sorted(shares)[len(shares) // 2]:.3f}")
    print(f"{count} displays of floors in two dimensions:")
    for name, x in calibration(count, 1).items():
        print(f"  {name:24}{x:.3f}")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
