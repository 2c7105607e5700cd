# SPDX-License-Identifier: MIT
"""Tables, devices, sizes, demand, earthing and isolation: against plain Python and against the words that a user gets."""

from __future__ import annotations

import math

import numpy as np
import pytest

from makegood import RangeError, RelationError, electrical

AREA = (1, 1.5, 2.5, 4, 6, 10, 16)
CAPACITY = {
    "100": (13, 16, 21, 27, 34, 45, 57),
    "101": (10.5, 13, 17, 22, 27, 36, 46),
    "102": (13, 16, 21, 27, 35, 47, 63),
    "103": (8, 10, 13.5, 17.5, 23.5, 32, 42.5),
    "C": (16, 20, 27, 37, 47, 64, 85),
    "A": (11.5, 14.5, 20, 26, 32, 44, 57),
}
DROP = (44, 29, 18, 11, 7.3, 4.4, 2.8)
LOOP = (36.2, 30.2, 19.51, 16.71, 10.49, 6.44, 4.23)
PROTECTIVE = (1, 1, 1.5, 1.5, 2.5, 4, 6)


def of(model, *args, **kwargs):
    """The result of a model as plain objects."""

    def plain(x):
        return {k: plain(v) for k, v in x.to_dict().items()} if hasattr(x, "to_dict") else [plain(v) for v in x] if isinstance(x, (list, tuple)) else x

    return plain(model(*args, **kwargs))


def by_hand(method, rating, design, length, correction, drop_limit, external, loop_limit, energy):
    """The size of each condition, one cable after another."""
    tests = {
        "capacity": lambda i: CAPACITY[method][i] * correction >= rating,
        "voltage drop": lambda i: DROP[i] * design * length / 1000 <= drop_limit,
        "loop impedance": lambda i: external + 1.2 * LOOP[i] * length / 1000 <= loop_limit,
        "fault energy": lambda i: energy <= (115 * PROTECTIVE[i]) ** 2,
    }
    return {name: next((AREA[i] for i in range(7) if serves(i)), None) for name, serves in tests.items()}


def circuits(n: int, seed: int = 3) -> list[tuple]:
    r = np.random.default_rng(seed)
    rows = []
    for _ in range(n):
        rating = float(r.choice([6, 10, 16, 20, 32, 40, 50]))
        rows.append((str(r.choice(list(CAPACITY))), rating, rating * float(r.uniform(0.2, 1)), float(r.uniform(1, 90)), float(r.uniform(0.5, 1.1)),
                     float(r.choice([6.9, 11.5])), float(r.uniform(0.05, 0.8)), 230 * 0.95 / (5 * rating), float(r.uniform(500, 60000))))
    return rows


def test_cable_size_says_which_condition_ruled():
    seen = set()
    for row in circuits(2000):
        sizes = by_hand(*row)
        found = of(electrical.cable_size, *row)
        assert [found["by_condition"][k] for k in ("capacity_mm2", "drop_mm2", "loop_mm2", "energy_mm2")] == list(sizes.values())
        if None in sizes.values():
            assert found["size_mm2"] is None and found["unmet"] == [k for k, v in sizes.items() if v is None]
            with pytest.raises(RelationError):
                electrical.smallest_size(*row)
            continue
        assert found["size_mm2"] == max(sizes.values()) == electrical.smallest_size(*row)
        assert found["ruled_by"] == [k for k, v in sizes.items() if v == max(sizes.values())]
        seen |= set(found["ruled_by"])
    assert seen == {"capacity", "voltage drop", "loop impedance", "fault energy"}


def test_smallest_size_over_arrays():
    rows = circuits(4000, 4)
    columns = [np.array(c) for c in zip(*rows)]
    sizes = electrical.smallest_size(*columns, errors="nan")
    assert np.isnan(sizes).any() and not np.isnan(sizes).all()
    for row, size in zip(rows, sizes):
        wanted = by_hand(*row).values()
        assert math.isnan(size) if None in wanted else size == max(wanted)


@pytest.mark.parametrize("given", [2.5, "2.5", np.float64(2.5)])
def test_a_size_is_a_word_or_a_number(given):
    assert electrical.conductor_resistance_20("copper", 2, given) == 7.41
    assert electrical.flat_twin_capacity("C", given) == 27
    assert electrical.check_flex_for_fuse(13, given, 30, "iec60364").limit == 25


def test_sizes_as_arrays_and_in_errors():
    np.testing.assert_array_equal(electrical.conductor_resistance_20("copper", 5, np.array([[0.75, 1.5], [4, 10]])), [[26, 13.3], [4.95, 1.91]])
    assert electrical.flat_twin_voltage_drop(np.array([1, 4])).tolist() == [44, 11]
    with pytest.raises(RangeError, match='area_mm2 = "3" is not one of'):
        electrical.flat_twin_capacity("C", 3)
    with pytest.raises(RangeError, match='area_mm2 = "3.5" is not one of'):
        electrical.conductor_resistance_20("copper", 2, np.array([2.5, 3.5]))
    with pytest.raises(TypeError):
        electrical.flat_twin_capacity("C", True)
    with pytest.raises(TypeError):
        electrical.adiabatic_k(3, 70, 160)  # no word of that table is a number
    with pytest.raises(RelationError, match="aluminium is tabulated from 10 mm²$"):
        electrical.conductor_resistance_20("aluminium", 2, 6)
    with pytest.raises(RelationError, match="metal-coated copper in 5"):
        electrical.conductor_resistance_20("copper_metal_coated", 1, 2.5)


def test_tables_by_two_ways_agree():
    """The rows of smallest_size are the columns of the two tables that are printed; R1 + R2 is the sum of two resistances."""
    for i, area in enumerate(AREA):
        assert [electrical.flat_twin_capacity(m, area) for m in CAPACITY] == [c[i] for c in CAPACITY.values()]
        total = electrical.conductor_resistance_20("copper", 1, area) + electrical.conductor_resistance_20("copper", 1, PROTECTIVE[i])
        assert total == pytest.approx(LOOP[i], rel=1e-12)


def test_protective_device():
    b = of(electrical.protective_device, "breaker_b", 32, 6000)
    assert (b["holding_a"], b["operating_a"], b["conventional_operating_a"], b["let_through_a2s"]) == (96, 160, 46.4, None)
    assert any("needs maker's figure" in n for n in b["notes"])  # a limit that was not read is not guessed
    assert of(electrical.protective_device, "breaker_c", 10, 10000)["let_through_a2s"] == 84000
    assert [t["current_a"] for t in b["operating_in_time"]] == [160] * 5
    d = of(electrical.protective_device, "breaker_d", 20)
    assert d["let_through_a2s"] is None and any("needs maker's figure" in n for n in d["notes"])
    f = of(electrical.protective_device, "bs3036", 30)
    assert f["operating_in_time"][2]["current_a"] == pytest.approx(230 / 1.09)
    assert [t["current_a"] for t in f["operating_in_time"]][:2] == [None, None]
    g = of(electrical.protective_device, "gg", 32)
    assert (g["prearcing_min_a2s"], g["prearcing_max_a2s"]) == (1800, 5000)
    assert of(electrical.protective_device, "bs1361", 45)["operating_in_time"][2]["current_a"] is None
    for wrong in (("fuse", 3), ("gg", -1), ("gg", math.nan), ("breaker_b", 32, -5)):
        with pytest.raises(RangeError):
            of(electrical.protective_device, *wrong)


def test_maximum_demand():
    loads = [
        {"kind": "lighting", "currents_a": [2, 1.5]},
        {"kind": "cooker", "currents_a": [30, 12], "socket": True},
        {"kind": "heating", "currents_a": [8, 6]},
        {"kind": "floor_warming", "currents_a": [3.2]},
        {"kind": "instantaneous_water", "currents_a": [40, 30, 20]},
        {"kind": "socket_circuits", "currents_a": [32, 20, 20]},
    ]
    r = of(electrical.maximum_demand, loads, 100)
    wanted = [0.66 * 3.5, 10 + 0.3 * 32 + 5, 10 + 2, 3.2, 70 + 5, 32 + 16]
    assert [x["demand_a"] for x in r["lines"]] == pytest.approx(wanted)
    assert r["demand_a"] == pytest.approx(sum(wanted)) and r["spare_a"] == pytest.approx(100 - sum(wanted))
    assert of(electrical.maximum_demand, [])["demand_a"] == 0
    for wrong in ([{"kind": "sauna", "currents_a": [1]}], [{"kind": "lighting", "currents_a": [-1]}], [{"kind": "lighting", "currents_a": [math.nan]}], [3]):
        with pytest.raises(RangeError):
            of(electrical.maximum_demand, wrong)


def test_earthing_arrangement():
    nothing = of(electrical.earthing_arrangement)
    assert nothing["outcome"] == "undecided" and not any(f["outcome"] == "pass" for f in nothing["findings"])
    good = of(electrical.earthing_arrangement, arrangement="tn_c_s", external_ohm=0.22, line_mm2=25, earthing_conductor_mm2=16, bonding_mm2=[10, 10], bonding_complete=True)
    assert good["outcome"] == "pass"
    thin = of(electrical.earthing_arrangement, arrangement="tn_c_s", external_ohm=0.22, line_mm2=25, earthing_conductor_mm2=16, bonding_mm2=[6, 10], bonding_complete=True)
    assert thin["outcome"] == "fail"
    tt = dict(arrangement="tt", electrode_ohm=120, line_mm2=16, earthing_conductor_mm2=16, bonding_mm2=[10], bonding_complete=True)
    assert of(electrical.earthing_arrangement, **tt)["outcome"] == "fail"  # nothing disconnects a fault
    assert of(electrical.earthing_arrangement, **tt, residual_current_ma=100)["outcome"] == "pass"
    assert of(electrical.earthing_arrangement, **{**tt, "electrode_ohm": 600}, residual_current_ma=100)["outcome"] == "fail"
    assert of(electrical.earthing_arrangement, **{**tt, "electrode_ohm": 400}, residual_current_ma=30)["outcome"] == "undecided"  # not stable
    with pytest.raises(RangeError):
        of(electrical.earthing_arrangement, arrangement="it")


def test_proof_of_isolation_is_a_record_and_no_promise():
    steps = dict(point="spur of the towel rail", isolated_at="main switch", means_of_locking="padlock", indicator="two-pole indicator, number 7",
                 indicator_proved_before=True, indicator_proved_after=True, tested_between=["L-N", "L-E", "N-E"], read_v=[0, 0, 0])
    whole = of(electrical.proof_of_isolation, **steps)
    assert whole["record_complete"] and not whole["missing"]
    assert "does not say that anything is safe" in whole["caution"]
    for left_out in steps:
        if left_out == "read_v":
            continue
        rest = {k: v for k, v in steps.items() if k != left_out}
        if left_out == "tested_between":
            rest.pop("read_v")
        assert not of(electrical.proof_of_isolation, **rest)["record_complete"], left_out
    live = of(electrical.proof_of_isolation, **{**steps, "read_v": [0, 231, 0]})
    assert live["found_live"] and not live["record_complete"]
    assert not of(electrical.proof_of_isolation)["record_complete"]
    assert "safe" not in str(live["missing"])


def test_checks_of_devices():
    assert electrical.check_rcd_type_for_load("AC", "single_phase_electronics", "iec60364").outcome == "fail"
    assert electrical.check_rcd_type_for_load("A", "single_phase_electronics", "iec60364").outcome == "pass"
    assert electrical.check_rcd_type_for_load("F", "three_phase_rectifier", "iec60364").outcome == "fail"
    assert electrical.check_rcd_trip_at(90.0, "selective_1x", "iec60364").outcome == "fail"  # too early
    assert electrical.check_overload(32, 26, 27, "iec60364").outcome == "fail"
    assert electrical.check_overload(32, 26, 33, "iec60364").outcome == "pass"
    assert electrical.check_standing_leakage(12.0, 30, "iec60364").reason == "no rule in book"


def test_gauges():
    """Round trip; twice the diameter is about six gauges down; the printed ends of the gauge."""
    for n in range(-3, 41):
        assert electrical.awg_gauge(electrical.awg_diameter(n)) == pytest.approx(n, abs=1e-12)
    assert electrical.awg_diameter(-3) == pytest.approx(0.46 * 25.4) and electrical.awg_diameter(36) == 0.127
    assert electrical.awg_area(10) / electrical.awg_area(16) == pytest.approx(92 ** (12 / 39))
    hot = electrical.conductor_resistivity("copper", 75)
    assert hot / electrical.conductor_resistivity("copper") == pytest.approx((234.5 + 75) / 254.5)
    assert electrical.resistance_from_resistivity(hot, electrical.awg_area(12)) * 0.3048 == pytest.approx(1.93, abs=0.005)  # ohm per 1000 ft


def test_spread_loads_are_many_small_ones():
    z, length, current, n = 18.0, 80.0, 32.0, 4000
    places = (np.arange(n) + 0.5) * length / n
    ring = electrical.ring_spread_voltage_drop(z, length, current)
    # reciprocity: a load at s drops in the middle what one in the middle drops at s
    assert ring == pytest.approx(float(np.sum(z * current / n * np.minimum(places, length - places) / 2)) / 1000, rel=1e-6)
    assert ring == pytest.approx(electrical.ring_voltage_drop(z, length, length / 2, current) / 2)
    assert electrical.spread_voltage_drop(z, length, current, 10) == pytest.approx(float(np.sum(z * current / n * (10 + places))) / 1000, rel=1e-6)
    for x in (0.1, 0.37):
        assert electrical.ring_spread_voltage_drop(z, length, current, x) == pytest.approx(electrical.ring_spread_voltage_drop(z, length, current, 1 - x))
    assert electrical.ring_leg_current(length, 20, current) + electrical.ring_leg_current(length, 60, current) == pytest.approx(current)


def test_longest_lengths_reach_their_limits():
    assert electrical.voltage_drop(18, 26, electrical.longest_run_by_drop(11.5, 18, 26)) == pytest.approx(11.5)
    length = electrical.longest_ring_by_drop(11.5, 18, electrical.ring_assumed_current(32), 0.92)
    assert electrical.ring_voltage_drop(18 * 0.92, length, length / 2, 26) == pytest.approx(11.5)
    run, ring = electrical.longest_run_by_loop(1.3656, 0.35, 19.51), electrical.longest_ring_by_loop(1.3656, 0.35, 19.51)
    assert 0.35 + electrical.loop_resistance(7.41, 12.1, run, 1.2) == pytest.approx(1.3656) and ring == pytest.approx(4 * run)
    with pytest.raises(RelationError, match="residual current device"):
        electrical.longest_run_by_loop(1.0, 1.2, 19.51)


def test_tabulated_drops_follow_from_resistance():
    """Twice the cold resistance, warm; by √3 between lines. Printed to two digits, up to 1.5 % off."""
    for area in AREA:
        cold = electrical.conductor_resistance_20("copper", 2, area)
        for cable, factor in {"pvc_2": 2 * 1.20, "pvc_3": math.sqrt(3) * 1.20, "xlpe_2": 2 * 1.28, "xlpe_3": math.sqrt(3) * 1.28}.items():
            printed = electrical.tabulated_voltage_drop(cable, area)
            assert printed == pytest.approx(factor * cold, abs=0.6 if printed >= 10 else 0.11), (cable, area)
        assert electrical.tabulated_voltage_drop("pvc_2", area) == electrical.flat_twin_voltage_drop(area)
    with pytest.raises(RelationError, match="was read"):
        electrical.flex_voltage_drop(1.25)
    assert electrical.flex_capacity([0.75, 4.0], "three").tolist() == [6, 25]
    assert electrical.insulation_test_voltage("up_to_500_v") == 500
