# SPDX-License-Identifier: MIT
"""Loads along radials and rings against a nodal analysis; a ring and its spurs held to rules; tests of residual current devices by edition."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest

import makegood
from makegood import electrical

BOOK = "bs7671:2018+a2"


def nodal(z: float, length: float | None, loads: list[dict[str, Any]], spread: float = 0.0, pieces: int = 400) -> tuple[float, list[float], float]:
    """Current that leaves the board by the near leg, drop at each load and the largest along the circuit: nodes on a line, a linear system."""
    end = length if length is not None else max(x["distance_m"] for x in loads)
    places = sorted({0.0, end, *(x["distance_m"] for x in loads), *(np.linspace(0, end, pieces + 1) if spread else ())})
    index = {x: k for k, x in enumerate(places)}
    ring = length is not None
    n = len(places)
    drawn = np.zeros(n)
    for x in loads:
        drawn[index[x["distance_m"]]] += x["current_a"]
    if spread:  # half of each piece's current at each of its ends
        for k in range(n - 1):
            share = spread * (places[k + 1] - places[k]) / end / 2
            drawn[k] += share
            drawn[k + 1] += share
    g = np.zeros((n, n))
    for k in range(n - 1):
        y = 1000.0 / (z * (places[k + 1] - places[k]))
        for a, b in ((k, k + 1), (k + 1, k)):
            g[a, a] += y
            g[a, b] -= y
    fed = [0, n - 1] if ring else [0]
    free = [k for k in range(n) if k not in fed]
    drop = np.zeros(n)
    drop[free] = np.linalg.solve(g[np.ix_(free, free)], drawn[free])
    near = drawn[0] + drop[1] * 1000.0 / (z * (places[1] - places[0]))
    return near, [float(drop[index[x["distance_m"]]]) for x in loads], float(drop.max())


@pytest.mark.parametrize("seed", range(12))
@pytest.mark.parametrize("ring", [True, False])
def test_point_loads_against_a_nodal_analysis(ring, seed):
    rng = np.random.default_rng(seed)
    length = float(rng.uniform(30, 110))
    loads = [{"distance_m": float(rng.uniform(0.5, length - 0.5)), "current_a": float(rng.uniform(0, 13)), "spur_length_m": float(rng.choice([0.0, 4.0]))} for _ in range(int(rng.integers(1, 9)))]
    z = float(rng.uniform(5, 40))
    near, drops, largest = nodal(z, length if ring else None, loads)
    r = electrical.point_loads(kind="ring" if ring else "radial", resistance_mohm_per_m=z, loads=loads, **({"ring_length_m": length} if ring else {}))
    assert r.near_leg_a == pytest.approx(near, rel=1e-9)
    assert r.total_a == pytest.approx(sum(x["current_a"] for x in loads))
    if ring:
        assert r.far_leg_a == pytest.approx(r.total_a - near, rel=1e-9, abs=1e-9)
        assert r.highest_leg_a == max(r.near_leg_a, r.far_leg_a)
    for d, x, wanted in zip(r.drops, loads, drops):
        assert d["drop_v"] == pytest.approx(wanted, rel=1e-9)
        assert d["with_spur_v"] == pytest.approx(wanted + z * x["spur_length_m"] * x["current_a"] / 1000)
    assert r.largest_drop_v == pytest.approx(max(largest, *(d["with_spur_v"] for d in r.drops)), rel=1e-9)
    assert r.sections[0]["from_a"] == r.near_leg_a
    for a, b in zip(r.sections, r.sections[1:]):
        assert a["to_m"] == b["from_m"]
    if ring:
        assert r.sections[-1]["to_a"] == pytest.approx(-r.far_leg_a, abs=1e-9)


@pytest.mark.parametrize("seed", range(6))
def test_spread_loads_against_a_nodal_analysis(seed):
    rng = np.random.default_rng([3, seed])
    length, z, spread = 80.0, 18.0, float(rng.uniform(4, 20))
    loads = [{"distance_m": float(rng.uniform(1, 79)), "current_a": float(rng.uniform(0, 10))} for _ in range(int(rng.integers(0, 4)))]
    near, drops, largest = nodal(z, length, loads, spread)
    r = electrical.point_loads(kind="ring", resistance_mohm_per_m=z, loads=loads, ring_length_m=length, spread_current_a=spread)
    assert r.near_leg_a == pytest.approx(near, rel=1e-4)
    assert [d["drop_v"] for d in r.drops] == pytest.approx(drops, rel=1e-4)
    assert r.largest_drop_v == pytest.approx(largest, rel=1e-4)
    if loads:
        near, drops, largest = nodal(z, None, loads, spread)
        r = electrical.point_loads(kind="radial", resistance_mohm_per_m=z, loads=loads, spread_current_a=spread)
        assert r.near_leg_a == pytest.approx(near, rel=1e-4)
        assert [d["drop_v"] for d in r.drops] == pytest.approx(drops, rel=1e-3)


def test_the_convention_for_a_ring_of_32_a():
    """20 A in the middle and 12 A spread: 26 A in the middle, by superposition."""
    r = electrical.point_loads(kind="ring", resistance_mohm_per_m=18, loads=[{"distance_m": 49.145299, "current_a": 20}], ring_length_m=98.290598, spread_current_a=12)
    assert r.largest_drop_v == pytest.approx(11.5, rel=1e-7) and r.lowest_point_m == pytest.approx(49.145299)
    assert r.near_leg_a == pytest.approx(16) == r.far_leg_a
    alone = electrical.point_loads(kind="ring", resistance_mohm_per_m=18, ring_length_m=80, spread_current_a=32)
    assert alone.largest_drop_v == pytest.approx(5.76) and alone.lowest_point_m == pytest.approx(40) and alone.largest_at == ""


def finding(r: Any, item: str) -> dict[str, Any]:
    return next(f for f in r.findings if f["item"] == item)


def test_a_large_load_near_the_board():
    loads = [{"name": "heater", "distance_m": 4, "current_a": 13}, {"name": "oven", "distance_m": 8, "current_a": 13}]
    r = electrical.spur_load(ring_length_m=80, loads=loads, rulebook=BOOK, capacity_a=20)
    assert r.near_leg_a == pytest.approx(13 * 76 / 80 + 13 * 72 / 80)
    assert finding(r, "leg")["outcome"] == "fail" == r.outcome and finding(r, "leg")["limit"] == 20
    assert finding(r, "capacity")["outcome"] == "pass" and finding(r, "capacity")["source"]["grade"] == "seen"
    assert finding(r, "total")["outcome"] == "pass"
    middle = electrical.spur_load(ring_length_m=80, loads=[{**x, "distance_m": 40} for x in loads], rulebook=BOOK, capacity_a=20)
    assert middle.outcome == "pass" and middle.highest_leg_a == pytest.approx(13)


def test_spurs():
    spur = {"distance_m": 40, "current_a": 10, "spur_length_m": 5}
    ask = lambda loads, **more: electrical.spur_load(ring_length_m=80, loads=loads, rulebook=BOOK, capacity_a=27, **more)
    fine = ask([spur])
    assert fine.outcome == "pass" and finding(fine, "spur_outlets")["limit"] == 1
    two = ask([{**spur, "outlets": 2}])
    assert two.outcome == "fail" == finding(two, "spur_outlets")["outcome"]
    # with a fuse of its own, it may feed more; the fuse guards the cable
    fused = ask([{**spur, "outlets": 3, "fuse_a": 13, "spur_capacity_a": 13.5}])
    assert fused.outcome == "pass" and not any(f["item"] == "spur_outlets" for f in fused.findings)
    assert ask([{**spur, "current_a": 15, "fuse_a": 13}]).outcome == "fail"
    thin = ask([{**spur, "fuse_a": 13, "spur_capacity_a": 10}])
    assert finding(thin, "spur_cable")["outcome"] == "fail"
    # two from one point, one finding; two from two points, none
    both = ask([spur, {**spur, "distance_m": 40.02}])
    assert [f["value"] for f in both.findings if f["item"] == "spurs_from_one_point"] == [2] and both.outcome == "fail"
    assert ask([spur, {**spur, "distance_m": 50}]).outcome == "pass"
    assert ask([spur], floor_area_m2=120).outcome == "fail"
    assert ask([spur], floor_area_m2=100).outcome == "pass"


def test_what_was_not_stated_stays_undecided():
    r = electrical.spur_load(ring_length_m=80, loads=[{"distance_m": 40, "current_a": 10, "spur_length_m": 5}], rulebook=BOOK)
    assert r.outcome == "undecided"
    assert {f["item"] for f in r.findings if f["outcome"] == "undecided"} == {"leg", "capacity", "spur_cable"}
    r = electrical.spur_load(ring_length_m=80, loads=[{"distance_m": 40, "current_a": 10, "spur_length_m": 5}], rulebook="iec60364", capacity_a=27)
    assert r.outcome == "undecided" and "no rule in book" in finding(r, "spur_outlets")["text"]
    assert "safe" not in str([f["text"] for f in r.findings])


@pytest.mark.parametrize(
    "arguments, says",
    [
        ({"kind": "star"}, "kind"),
        ({"kind": "ring"}, "ring_length_m"),
        ({"kind": "ring", "ring_length_m": 30.0}, r"loads\[0\].distance_m"),
        ({"kind": "radial", "ring_length_m": 30.0}, "belongs to a ring"),
        ({"kind": "radial", "loads": []}, "at least one"),
        ({"kind": "radial", "loads": [{"distance_m": 4}]}, "current_a are needed"),
        ({"kind": "radial", "loads": [{"distance_m": 4, "current_a": -1}]}, "current_a"),
        ({"kind": "radial", "loads": [{"distance_m": 4, "current": 1}]}, "did you mean"),
        ({"kind": "radial", "loads": [{"distance_m": float("nan"), "current_a": 1}]}, "must be a number"),
        ({"kind": "radial", "loads": [{"distance_m": 4, "current_a": 1}] * 501}, "at most 500"),
        ({"kind": "radial", "resistance_mohm_per_m": -1.0}, "resistance_mohm_per_m"),
        ({"kind": "radial", "spread_current_a": float("inf")}, "spread_current_a"),
    ],
)
def test_odd_loads_are_refused(arguments, says):
    with pytest.raises(makegood.RangeError, match=says):
        electrical.point_loads(**{"resistance_mohm_per_m": 18.0, "loads": [{"distance_m": 40, "current_a": 10}], **arguments})


@pytest.mark.parametrize("arguments, says", [({"capacity_a": 0.0}, "capacity_a"), ({"rating_a": 0.0}, "rating_a"), ({"floor_area_m2": -1.0}, "floor_area_m2"), ({"ring_length_m": 0.0}, "ring_length_m")])
def test_odd_rings_are_refused(arguments, says):
    with pytest.raises(makegood.RangeError, match=says):
        electrical.spur_load(**{"ring_length_m": 80.0, "loads": [], "spread_current_a": 10.0, "rulebook": BOOK, **arguments})


# ---------------------------------------------------------------------------------------------------------------- tests of RCDs


def asked(residual_ma: float, book: str, **more: str) -> dict[str, dict[str, Any]]:
    return {t["test"]: t for t in electrical.required_rcd_tests(residual_current_ma=residual_ma, rulebook=book, **more).tests}


def test_which_tests_an_edition_asks_for():
    now, before, old = (asked(30, b) for b in (BOOK, "bs7671:2008", "bs7671:2001"))
    assert [t for t in now if now[t]["required"]] == ["1x"]
    assert [t for t in before if before[t]["required"]] == ["half", "1x", "5x"] == [t for t in old if old[t]["required"]]
    assert not asked(100, "bs7671:2008")["5x"]["required"]
    assert now["5x"]["most_ms"] == 40 and now["5x"]["current_ma"] == 150 and now["half"]["current_ma"] == 15
    assert (now["ramp"]["least_ma"], now["ramp"]["most_ma"]) == (15, 30)
    assert asked(30, BOOK, rcd_type="A")["ramp"]["most_ma"] is None and "type A" in asked(30, BOOK, rcd_type="A")["ramp"]["text"]
    selective = asked(100, BOOK, rcd_kind="selective")["1x"]
    assert (selective["least_ms"], selective["most_ms"]) == (130, 500)
    assert asked(30, BOOK, rcd_kind="bs4293")["1x"]["most_ms"] == 200
    assert all(t["source"]["grade"] == "memory" for t in now.values())
    other = asked(30, "iec60364")
    assert all(t["required"] is None for t in other.values()) and other["1x"]["most_ms"] == 300
    for wrong in ({"rcd_kind": "slow"}, {"rcd_type": "C"}):
        with pytest.raises(makegood.RangeError, match="is not one of"):
            asked(30, BOOK, **wrong)
    with pytest.raises(makegood.RangeError, match="residual_current_ma"):
        asked(0, BOOK)


def test_a_rising_current():
    ramp = electrical.check_rcd_ramp
    assert ramp(makegood.Measured(21, 0.5), 30, "AC", BOOK).outcome == "pass"
    assert ramp(makegood.Measured(12, 0.5), 30, "AC", BOOK).outcome == "fail"
    assert ramp(makegood.Measured(34, 0.5), 30, "AC", BOOK).outcome == "fail"
    assert ramp(15, 30, "AC", BOOK).plain == "pass" == ramp(30, 30, "AC", BOOK).plain
    assert ramp(math.nextafter(15, 0), 30, "AC", BOOK).plain == "fail" == ramp(math.nextafter(30, 99), 30, "AC", BOOK).plain
    v = ramp(21, 30, "A", BOOK)
    assert v.outcome == "undecided" and v.reason == "no rule in book"


# ---------------------------------------------------------------------------------------------------------------- older editions


def test_an_installation_is_judged_by_the_edition_it_was_built_to():
    """1.40 ohm behind 32 A type B: right in 2008, not since 2015; 0.8 megohm: right in 2001 alone."""
    loop = {b: electrical.check_loop_impedance(makegood.Measured(1.40, 0.005), 230, 160, b) for b in ("bs7671:2001", "bs7671:2008", "bs7671:2008+a3", BOOK)}
    assert [v.outcome for v in loop.values()] == ["pass", "pass", "fail", "fail"]
    insulation = {b: electrical.check_insulation(makegood.Measured(0.8, 0.02), "up_to_500_v", b).outcome for b in ("bs7671:2001", "bs7671:2008", BOOK)}
    assert list(insulation.values()) == ["pass", "fail", "fail"]
    drop = {b: electrical.check_voltage_drop(makegood.Measured(8.0, 0.05), 230, "lighting", b).outcome for b in ("bs7671:2001", "bs7671:2008", BOOK)}
    assert list(drop.values()) == ["pass", "fail", "fail"]
    # the older edition gave no addition for length
    long = electrical.check_voltage_drop(makegood.Measured(12.0, 0.05), 230, "other", "bs7671:2008", 160)
    assert long.outcome == "fail" and electrical.check_voltage_drop(makegood.Measured(12.0, 0.05), 230, "other", BOOK, 160).outcome == "pass"
    # what nobody read is not made up
    gone = electrical.check_disconnection_time(0.3, "tn_final", "bs7671:2001")
    assert gone.outcome == "undecided" and gone.reason == "no rule in book"
    assert electrical.check_loop_impedance(1.0, 230, 160, "iec60364").reason == "no rule in book"


def test_later_books_change_what_they_say_they_change():
    """The rows of Amendment 3 are those of 2008 but for the share of the voltage."""
    for name, arguments in {"check_insulation": (2, "up_to_500_v"), "check_rcd_trip": (28, "general"), "check_disconnection_time": (0.3, "tt_final")}.items():
        a, b = (getattr(electrical, name)(*arguments, book) for book in ("bs7671:2008", "bs7671:2008+a3"))
        assert (a.limit, a.outcome) == (b.limit, b.outcome)
