# SPDX-License-Identifier: MIT
"""Which sensor is it: the model against a simulator that shares nothing with it but the numbers of the trade. And the other models of heating.

The simulator is plain NumPy: it draws a sensor, a fault, the errors of meter and thermometer, and what the meter shows. Stated probabilities
are then held against how often they are right. `python tests/python/test_sensors_and_heating.py N` prints the figures of record.
"""

from __future__ import annotations

import math
import sys
from typing import Any

import numpy as np
import pytest

from makegood import RangeError, RelationError, heating, sensing

# name: kind, numbers, tolerance %, tolerance of beta %, weight; rules of the trade
SENSORS: dict[str, tuple[str, tuple[float, ...], float, float, float]] = {
    "NTC 10 kΩ": ("ntc", (10000, 3950), 5, 4, 0.40),
    "NTC 10 kΩ, low beta": ("ntc", (10000, 3435), 5, 4, 0.10),
    "NTC 12 kΩ": ("ntc", (12000, 3850), 5, 4, 0.13),
    "NTC 15 kΩ": ("ntc", (15000, 3850), 5, 4, 0.07),
    "NTC 6.8 kΩ": ("ntc", (6800, 3850), 5, 4, 0.07),
    "NTC 33 kΩ": ("ntc", (33000, 3950), 5, 4, 0.05),
    "Pt100": ("rtd", (100,), 0.3, 0, 0.05),
    "Pt1000": ("rtd", (1000,), 0.3, 0, 0.06),
    "silicon 1 kΩ": ("silicon", (1000,), 2, 0, 0.04),
    "silicon 2 kΩ": ("silicon", (2000,), 2, 0, 0.03),
}
FAULTS = {"sound": 0.70, "shunt": 0.05, "two_in_parallel": 0.02, "series": 0.05, "temperature_wrong": 0.06, "open": 0.06, "short_circuit": 0.03, "digital": 0.03}
NONE = 0.05


def curve(kind: str, numbers: tuple[float, ...], beta_more: float, t: float) -> float:
    if kind == "ntc":
        return numbers[0] * math.exp((numbers[1] + beta_more) * (1 / (t + 273.15) - 1 / 298.15))
    if kind == "rtd":
        return numbers[0] * (1 + 3.9083e-3 * t - 5.775e-7 * t * t + (-4.183e-12 * (t - 100) * t**3 if t < 0 else 0.0))
    return numbers[0] * (1 + 7.88e-3 * (t - 25) + 1.937e-5 * (t - 25) ** 2)


def log_uniform(random: np.random.Generator, low: float, high: float) -> float:
    return float(low * (high / low) ** random.random())


def drawn(random: np.random.Generator, temperatures: tuple[float, ...], doubt_k: float) -> tuple[str | None, str, list[dict[str, Any]]]:
    """The sensor, the fault, and what is read at temperatures that are believed; one thermometer, one meter of 1 %."""
    names, weights = list(SENSORS), np.array([s[4] for s in SENSORS.values()])
    name: str | None = names[random.choice(len(names), p=weights / weights.sum())]
    faults, shares = list(FAULTS), np.array(list(FAULTS.values()))
    fault = "none_of_these" if random.random() < NONE else faults[random.choice(len(faults), p=shares / shares.sum())]
    kind, numbers, tolerance, beta_tolerance, _ = SENSORS[name]
    factor = 1 + random.uniform(-tolerance, tolerance) / 100
    beta_more = numbers[1] * random.uniform(-beta_tolerance, beta_tolerance) / 100 if kind == "ntc" else 0.0
    size = numbers[0]
    shunt, series, offset = log_uniform(random, 0.1 * size, 30 * size), log_uniform(random, 0.01 * size, 3 * size), random.normal(0, 8)
    error = random.normal(0, doubt_k)
    steady = {"open": log_uniform(random, 3e5, 1e8), "short_circuit": log_uniform(random, 0.02, 30), "digital": log_uniform(random, 300, 5e6)}
    scatter = {"open": 0.4, "short_circuit": 0.2, "digital": 0.15}
    above = {"open": 0.7, "short_circuit": 0.0, "digital": 0.2, "none_of_these": 0.1}
    gain = 1 + random.uniform(-0.01, 0.01)
    readings = []
    for believed in temperatures:
        over = random.random() < above.get(fault, 0.0)
        if fault in steady:
            ohm = steady[fault] * abs(1 + random.normal(0, scatter[fault]))
        elif fault == "none_of_these":
            ohm = log_uniform(random, 0.01, 1e8)
        else:
            ohm = factor * curve(kind, numbers, beta_more, believed + error + (offset if fault == "temperature_wrong" else 0.0))
            if fault == "shunt":
                ohm = ohm * shunt / (ohm + shunt)
            elif fault == "two_in_parallel":
                ohm /= 2
            elif fault == "series":
                ohm += series
        shown = ohm / gain * (1 + random.normal(0, 0.005))  # contacts, the sensor's own heat
        reading: Any = {"above": 1e8} if over or shown > 1e8 else {"value": shown, "percent": 1.0}
        readings.append({"resistance_ohm": reading, "temperature_c": believed, "temperature_doubt_k": doubt_k, "thermometer": "one"})
    return (None if fault in (*steady, "none_of_these") else name), fault, readings


def simulated(n: int, temperatures: tuple[float, ...], doubt_k: float, seed: int) -> dict[str, np.ndarray]:
    random = np.random.default_rng(seed)
    top, hit, curve_top, curve_hit, fault_top, fault_hit, of_truth = ([] for _ in range(7))
    for _ in range(n):
        name, fault, readings = drawn(random, temperatures, doubt_k)
        r = sensing.identify_sensor(readings, with_next=False)
        first = r.explanations[0]
        top.append(first["posterior"])
        hit.append(first["curve"] == name and first["fault"] == fault)
        of_truth.append(next(e["posterior"] for e in r.explanations if e["curve"] == name and e["fault"] == fault))
        best = max(r.curves, key=lambda c: c["posterior"])
        no_curve = 1 - sum(c["posterior"] for c in r.curves)
        curve_top.append(max(best["posterior"], no_curve))
        curve_hit.append((best["name"] if best["posterior"] >= no_curve else None) == name)
        likeliest = max(r.faults, key=lambda f: f["posterior"])
        fault_top.append(likeliest["posterior"])
        fault_hit.append(likeliest["id"] == fault)
    return {k: np.array(v, dtype=float) for k, v in
            dict(top=top, hit=hit, curve_top=curve_top, curve_hit=curve_hit, fault_top=fault_top, fault_hit=fault_hit, of_truth=of_truth).items()}


@pytest.mark.parametrize("temperatures, doubt_k", [((21.0,), 2.0), ((21.0, 33.0), 1.0)])
def test_stated_probabilities_are_right_as_often_as_they_say(temperatures, doubt_k):
    n = 80
    x = simulated(n, temperatures, doubt_k, 20261126)
    for stated, right in (("top", "hit"), ("curve_top", "curve_hit"), ("fault_top", "fault_hit")):
        p = x[stated]
        spread = math.sqrt(float(np.sum(p * (1 - p)))) / n  # of the share that is right, if the probabilities are
        assert abs(float(np.mean(x[right])) - float(np.mean(p))) < 3.5 * spread + 0.01, stated
    assert np.mean(x["hit"]) > (0.45 if len(temperatures) == 1 else 0.5)


def one(ohm: Any, t: float = 21.0, **more: Any) -> dict[str, Any]:
    return {"resistance_ohm": ohm, "temperature_c": t, **more}


def of(r: Any, fault: str) -> float:
    return next(f["posterior"] for f in r.faults if f["id"] == fault)


def test_one_reading_is_never_certain():
    for ohm in (12.0, 1080.0, 11974.06, 5987.0, 33000.0, {"above": 2e7}, 0.3, 300.0):
        r = sensing.identify_sensor([one(ohm)], with_next=False)
        assert sum(e["posterior"] for e in r.explanations) == pytest.approx(1, abs=1e-12)
        assert sum(f["posterior"] for f in r.faults) == pytest.approx(1, abs=1e-12)
        assert of(r, "none_of_these") > 0
        assert r.explanations[0]["posterior"] < 0.999
        assert any("One reading" in t for t in r.text)


def test_what_is_plain_comes_first():
    first = lambda *readings: sensing.identify_sensor(list(readings), with_next=False).explanations[0]  # noqa: E731
    assert (first(one(11974.06))["curve"], first(one(11974.06))["fault"]) == ("NTC 10 kΩ", "sound")
    assert (first(one(1081.9))["curve"], first(one(1081.9))["fault"]) == ("Pt1000", "sound")
    assert first(one(0.4))["fault"] == "short_circuit"
    assert first(one({"above": 2e7}))["fault"] == "open"
    assert first(one(11974.06 / 2))["fault"] == "two_in_parallel"
    # another resistance the other way round: no plain sensor does that
    turned = sensing.identify_sensor([one(40000.0, reversed_ohm=900000.0)], with_next=False)
    plain = sensing.identify_sensor([one(40000.0, reversed_ohm=40000.0)], with_next=False)
    assert of(turned, "digital") > 0.5 > of(plain, "digital")


def test_a_second_temperature_tells_more():
    """A 12 kΩ sensor in a floor that is believed 4 K too cold reads as a 10 kΩ one would; a reading at another, known temperature tells."""
    at = lambda t: 12000 * math.exp(3850 * (1 / (t + 273.15) - 1 / 298.15))  # noqa: E731
    p = lambda r: next(c["posterior"] for c in r.curves if c["name"] == "NTC 12 kΩ")  # noqa: E731
    early = sensing.identify_sensor([one(at(25.0), 21.5)], with_next=False)
    late = sensing.identify_sensor([one(at(25.0), 21.5), one(at(25.0), 25.0, temperature_doubt_k=0.3)], with_next=False)
    assert p(early) < 0.5 < p(late)


def test_the_next_reading_is_the_one_that_tells():
    half = sensing.identify_sensor([one(11974.06 / 2)])
    assert half.next[0]["id"] == "lift_one_end" and half.next[0]["bits"] > 0.3
    assert half.next[0]["expected_by_first"] == pytest.approx(11974, rel=0.03)
    between = sensing.identify_sensor([one(12000.0, 25.0)])
    assert between.next[0]["id"] == "measure_the_room"
    assert all(n["bits"] >= 0 for n in between.next)
    assert [n["bits"] for n in between.next] == sorted((n["bits"] for n in between.next), reverse=True)


def test_order_of_candidates_and_readings_does_not_matter():
    c = [{"name": "a", "kind": "ntc", "reference_ohm": 10000, "reference_c": 25, "beta_k": 3950}, {"name": "b", "kind": "rtd", "r0_ohm": 1000}]
    r = [one(11974.06), one(8100.0, 30.0)]
    p = {e["text"]: e["posterior"] for e in sensing.identify_sensor(r, c, with_next=False).explanations}
    q = {e["text"]: e["posterior"] for e in sensing.identify_sensor(r, c[::-1], with_next=False).explanations}
    assert p == pytest.approx(q, rel=1e-9)


def test_bad_input_is_named():
    good = {"name": "a", "kind": "ntc", "reference_ohm": 10000, "reference_c": 25, "beta_k": 3950}
    with pytest.raises(RangeError, match="not above absolute zero"):
        sensing.identify_sensor([one(10000, -300.0)])
    with pytest.raises(RangeError, match="no temperature is exact"):
        sensing.identify_sensor([one(10000, temperature_doubt_k=0)])
    with pytest.raises(RelationError, match='candidate "x": its curve does not rise or fall steadily'):
        sensing.identify_sensor([one(10000)], [good, {"name": "x", "kind": "steinhart_hart", "a": 1e-3, "b": 1e-4, "c": -3e-7}])
    with pytest.raises(RangeError, match="stands twice"):
        sensing.identify_sensor([one(10000)], [good, good])
    with pytest.raises(RangeError, match="1 to 6 readings"):
        sensing.identify_sensor([])
    with pytest.raises(RangeError, match="is not one of"):
        sensing.identify_sensor([one(10000)], [{"name": "x", "kind": "thermocouple"}])
    with pytest.raises(RangeError, match='"readings" must be a list'):
        sensing.identify_sensor(10000)  # type: ignore[arg-type]
    # a copied set of coefficients that misses its own points: found, not believed
    copied = {"name": "copied", "kind": "steinhart_hart", "a": 1.75e-3, "b": 3.399e-4, "c": 3.089e-7, "points": [[-50, 2045], [25, 100], [100, 15]]}
    assert any("misses" in f or "miss its own points" in f for f in sensing.identify_sensor([one(10000)], [good, copied], with_next=False).findings)


def test_a_curve_is_held_against_its_points():
    # the magazine's set misses its own three points by 0.17, 0.76 and 0.46 K
    r = sensing.curve_against_points({"kind": "steinhart_hart", "a": 1.75e-3, "b": 3.399e-4, "c": 3.089e-7}, [(-50, 2045), (25, 100), (100, 15)])
    assert [round(abs(m), 2) for m in r.miss_k] == [0.17, 0.76, 0.46] and not r.holds and r.steady
    exact = sensing.fit_steinhart_hart([(-50, 2045), (25, 100), (100, 15)])
    r = sensing.curve_against_points({"kind": "steinhart_hart", "a": exact.a, "b": exact.b, "c": exact.c}, [(-50, 2045), (25, 100), (100, 15)])
    assert r.holds and r.worst_k < 1e-9
    assert sensing.curve_against_points({"kind": "rtd", "r0_ohm": 100}, [(0, 100), (100, 138.51)]).worst_k < 0.02
    assert not sensing.curve_against_points({"kind": "ntc", "reference_ohm": 10, "reference_c": 25, "beta_k": 3950}, [(25, 10000)]).holds
    with pytest.raises(RangeError, match="absolute zero"):
        sensing.curve_against_points({"kind": "rtd", "r0_ohm": 100}, [(-300, 100)])


def test_points_of_two_sensors_are_refused():
    with pytest.raises(RelationError, match="turns between them"):
        sensing.fit_steinhart_hart([(0, 32650), (25, 10000), (50, 12000)])


# ---- heating ---------------------------------------------------------------------------------------------------------


def test_mats_that_fit_by_brute_force():
    random = np.random.default_rng(7)
    areas = [1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0]
    for _ in range(50):
        length, width, fixed = random.uniform(1.5, 5), random.uniform(1.2, 4), random.uniform(0, 1.5)
        r = heating.mats_that_fit(length, width, fixed)
        free = length * width - fixed
        strips = max(math.floor(width / 0.5) * 0.5 * length, math.floor(length / 0.5) * 0.5 * width) - fixed
        assert r.free_m2 == pytest.approx(free) and r.strips_m2 == pytest.approx(max(strips, 0))
        best = max([a + b for a in [0.0, *areas] for b in areas if a + b <= strips + 1e-9], default=None)
        if best is None:
            assert r.sets == []
        else:
            first = r.sets[0]
            assert first["total_m2"] == pytest.approx(best) and first["power_w"] == pytest.approx(150 * best) and first["current_a"] == pytest.approx(150 * best / 230)
    with pytest.raises(RelationError):
        heating.mats_that_fit(2, 2, 5)
    with pytest.raises(RangeError):
        heating.mats_that_fit(2, 2, 0, 0, [-1])


def test_formulas_that_belong_together():
    """What goes in comes out: pairs that are inverse to each other, and balances."""
    random = np.random.default_rng(3)
    for _ in range(100):
        r0, t = random.uniform(50, 1000), random.uniform(-50, 150)
        for metal in ("copper", "nickel"):
            assert sensing.metal_temperature(metal, sensing.metal_resistance(metal, t, r0), r0) == pytest.approx(t, abs=1e-9)
        assert sensing.alloy_resistance_20("CuNi6", t, sensing.alloy_resistance("CuNi6", t, r0)) == pytest.approx(r0, rel=1e-14)
        shunt = random.uniform(1e3, 1e6)
        assert sensing.shunt_resistance(10000, sensing.shunted_resistance(10000, shunt)) == pytest.approx(shunt, rel=1e-9)
        p, up, down = random.uniform(80, 200), random.uniform(0.1, 0.3), random.uniform(0.4, 3)
        q = heating.upward_flux(p, up, down, 21, 12)
        assert q + heating.downward_flux(q, up, down, 21, 12) == pytest.approx(p, rel=1e-12)
        assert heating.radiator_output(400, heating.rail_surface_temperature(p, 400, 20) - 20) == pytest.approx(p, rel=1e-12)
        time = heating.mirror_clear_time(p, 0.3, 4, 10, 18, 22)
        assert heating.pad_temperature_rise(p, 0.3, 4, 10, time) == pytest.approx(4, rel=1e-10)
        loss = random.uniform(8, 15)
        assert heating.warm_up_time(1e6, 1000, loss, 15, 20, 0) < heating.warm_up_time(1e6, 900, loss, 15, 20, 0)
        assert heating.steady_temperature(loss * 20, loss, 1) == pytest.approx(21)
    # the place of a short to the screen does not depend on the fault's own resistance, nor on the tails
    for fault in (0.0, 100.0, 5000.0):
        x, element, tail = 0.3, 117.6, 0.2
        assert heating.screen_fault_position(element + 2 * tail, tail + x * element + fault, tail + (1 - x) * element + fault, tail) == pytest.approx(x, rel=1e-12)
    assert heating.missing_parallel_mats(230**2 / 450, 450, 230, 2) == pytest.approx(1)


def main(n: int) -> None:
    for temperatures, doubt in (((21.0,), 2.0), ((21.0, 33.0), 1.0), ((21.0, 33.0), 0.3)):
        x = simulated(n, temperatures, doubt, 1)
        print(f"{len(temperatures)} reading(s), thermometer {doubt} K, {n} sensors:")
        for stated, right, what in (("top", "hit", "curve and fault"), ("curve_top", "curve_hit", "curve"), ("fault_top", "fault_hit", "fault")):
            p, h = x[stated], x[right]
            print(f"  {what:16s} right {100 * h.mean():5.1f} %, stated {100 * p.mean():5.1f} % on average (± {100 * math.sqrt(float(np.sum(p * (1 - p)))) / n:.1f})")
            for low, high in ((0.0, 0.5), (0.5, 0.8), (0.8, 0.95), (0.95, 1.01)):
                m = (p >= low) & (p < high)
                if m.sum():
                    print(f"      stated {100 * low:3.0f} to {100 * min(high, 1):3.0f} %: {int(m.sum()):5d} sensors, stated {100 * p[m].mean():5.1f} %, right {100 * h[m].mean():5.1f} %")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 1000)
