# SPDX-License-Identifier: MIT
"""Ring tests and records of tests against a simulator of their own: nodal analysis of the wires, instruments with errors.

Nothing here is taken from the library's code: wires are resistors between nodes, faults are changes of the network, and a record is
what an honest tester would write down, or that with a named corruption. As a script, with a number of cases, it prints the tables:

    PYTHONPATH=build/dev/python python tests/python/test_circuit_tests.py 400
"""

from __future__ import annotations

import math
import sys
from typing import Any

import numpy as np
import pytest

import makegood
from makegood import electrical

OPEN = math.inf


class Wires:
    """Resistors between named nodes; the resistance between two of them by Kirchhoff's laws."""

    def __init__(self) -> None:
        self.parts: list[tuple[Any, Any, float]] = []

    def join(self, a: Any, b: Any, ohm: float) -> None:
        if ohm != OPEN:
            self.parts.append((a, b, max(ohm, 1e-9)))

    def between(self, a: Any, b: Any) -> float:
        nodes: dict[Any, int] = {}
        for p, q, _ in self.parts:
            for n in (p, q):
                nodes.setdefault(n, len(nodes))
        if a not in nodes or b not in nodes:
            return OPEN
        # only what hangs together with a
        near: dict[Any, list[Any]] = {n: [] for n in nodes}
        for p, q, _ in self.parts:
            near[p].append(q)
            near[q].append(p)
        reach, edge = {a}, [a]
        while edge:
            for n in near[edge.pop()]:
                if n not in reach:
                    reach.add(n)
                    edge.append(n)
        if b not in reach:
            return OPEN
        index = {n: i for i, n in enumerate(n for n in nodes if n in reach and n != b)}
        g = np.zeros((len(index), len(index)))
        for p, q, ohm in self.parts:
            if p not in reach:
                continue
            for n, m in ((p, q), (q, p)):
                if n in index:
                    g[index[n], index[n]] += 1.0 / ohm
                    if m in index:
                        g[index[n], index[m]] -= 1.0 / ohm
        i = np.zeros(len(index))
        i[index[a]] = 1.0
        return float(np.linalg.solve(g, i)[index[a]])


class Ring:
    """A ring of three conductors, its outlets at metres along it."""

    def __init__(self, length_m: float, outlets_m: list[float], per_m: dict[str, float], contact_ohm: float = 0.0) -> None:
        self.length, self.outlets, self.per_m, self.contact = length_m, list(outlets_m), dict(per_m), contact_ohm
        self.broken: tuple[str, int] | None = None          # conductor, segment
        self.joint: tuple[str, int, float] | None = None
        self.bridge: tuple[int, int, float] | None = None   # two outlets and the metres of cable between them
        self.spurs: dict[int, float] = {}
        self.changed: dict[int, tuple[str, str]] = {}
        self.loose: set[int] = set()

    def wires(self) -> Wires:
        w = Wires()
        places = [0.0, *self.outlets, self.length]
        for c, ohm_per_m in self.per_m.items():
            for k in range(len(places) - 1):
                ohm = (places[k + 1] - places[k]) * ohm_per_m + self.contact
                if self.broken == (c, k):
                    ohm = OPEN
                if self.joint and self.joint[:2] == (c, k):
                    ohm += self.joint[2]
                w.join((c, k), (c, k + 1), ohm)
            if self.bridge:
                i, j, metres = self.bridge
                w.join((c, i + 1), (c, j + 1), metres * ohm_per_m + 2 * self.contact)
            for k in range(len(self.outlets)):
                if k in self.loose:
                    continue
                terminal = c
                if k in self.changed and c in self.changed[k]:
                    a, b = self.changed[k]
                    terminal = b if c == a else a
                w.join((c, k + 1), ("terminal", terminal, k), self.spurs.get(k, 0.0) * ohm_per_m + self.contact)
        return w

    def end_to_end(self, c: str) -> float:
        return self.wires().between((c, 0), (c, len(self.outlets) + 1))

    def at_outlet(self, k: int, other: str, straight: bool = False, linked: bool = True) -> float:
        w = self.wires()
        last = len(self.outlets) + 1
        if not linked:
            return w.between(("terminal", "L", k), ("terminal", other, k))
        w.join(("L", 0), (other, 0 if straight else last), 1e-4)
        w.join(("L", last), (other, last if straight else 0), 1e-4)
        return w.between(("terminal", "L", k), ("terminal", other, k))


class Meter:
    """One instrument: a gain error common to its readings, counts of its own for each, a display that rounds."""

    def __init__(self, rng: np.random.Generator, name: str, percent: float, counts: float, step: float, end: float = 20.0) -> None:
        self.rng, self.name, self.percent, self.counts, self.step, self.end = rng, name, percent, counts, step, end
        self.gain = 1.0 + rng.uniform(-1, 1) * percent / 100
        self.statement = makegood.Accuracy(percent=percent, counts=counts, resolution=step)

    def read(self, true: float, contact: float = 0.0) -> dict[str, Any]:
        x = true * self.gain + self.rng.uniform(-1, 1) * self.counts * self.step + contact
        if x > self.end:
            return {"above": self.end, "instrument": self.name, "accuracy": self.statement}
        return {"value": round(max(0.0, x) / self.step) * self.step, "instrument": self.name, "accuracy": self.statement}


CABLES = {"2.5/1.5": (7.41, 12.1), "2.5/1.0": (7.41, 18.1), "4/1.5": (4.61, 12.1), "2.5/2.5": (7.41, 7.41), "1.5/1.0": (12.1, 18.1)}
FAULTS = ("intact", "line_broken", "neutral_broken", "cpc_broken", "interconnected", "spur", "line_joint", "neutral_joint", "cpc_joint", "wrong_links",
          "changed_over", "not_on_ring", "other_cable")


def ring_case(rng: np.random.Generator, fault: str, outlets: int | None = None) -> tuple[dict[str, Any], Ring]:
    """The arguments of ring_tests for a ring with one fault, as a tester would read them."""
    n = outlets or int(rng.integers(5, 10))
    length = rng.uniform(35, 95)
    places = np.sort(rng.uniform(0.03, 0.97, n)) * length
    cable = "2.5/1.5" if fault != "other_cable" else str(rng.choice([c for c in CABLES if c != "2.5/1.5"]))
    line, cpc = CABLES[cable]
    warm = 1 + 0.00393 * (rng.uniform(14, 26) - 20)
    low = 1 - rng.uniform(0.01, 0.03)
    per_m = {"L": line * low * warm / 1000, "N": line * low * warm * (1 + rng.uniform(-0.007, 0.007)) / 1000,
        "E": cpc * low * warm * (1 + rng.uniform(-0.015, 0.015)) / 1000}
    ring = Ring(length, list(places), per_m, contact_ohm=rng.uniform(0.0005, 0.002))
    straight: set[str] = set()
    apart: set[str] = set()
    if fault.endswith("_broken"):
        ring.broken = ({"line": "L", "neutral": "N", "cpc": "E"}[fault[:-7]], int(rng.integers(0, n + 1)))
    elif fault.endswith("_joint"):
        ring.joint = ({"line": "L", "neutral": "N", "cpc": "E"}[fault[:-6]], int(rng.integers(0, n + 1)), float(rng.uniform(0.1, 1.0)))
    elif fault == "spur":
        ring.spurs[int(rng.integers(0, n))] = float(rng.uniform(3, 10))
    elif fault == "interconnected":
        i = int(rng.integers(0, n - 3))
        j = int(rng.integers(i + 3, n)) if i + 3 < n else n - 1
        ring.bridge = (i, j, float(rng.uniform(0.4, 1.0) * (places[j] - places[i])))
    elif fault == "wrong_links":
        chosen = [{"N"}, {"E"}, {"N", "E"}][int(rng.integers(0, 3))]
        straight, apart = (chosen, apart) if rng.uniform() < 0.7 else (straight, chosen)
    elif fault == "changed_over":
        ring.changed[int(rng.integers(0, n))] = [("L", "N"), ("L", "E"), ("N", "E")][int(rng.integers(0, 3))]
    elif fault == "not_on_ring":
        ring.loose.add(int(rng.integers(0, n)))
    meter = Meter(rng, "meter", 2, 2, 0.01)
    read = lambda ohm: meter.read(ohm, contact=rng.uniform(0, 0.006))
    order = rng.permutation(n)  # a tester does not know the order along the ring
    arguments: dict[str, Any] = {
        "line_end_to_end_ohm": read(ring.end_to_end("L")),
        "neutral_end_to_end_ohm": read(ring.end_to_end("N")),
        "cpc_end_to_end_ohm": read(ring.end_to_end("E")),
        "points": [{"name": f"outlet {k + 1}", "line_neutral_ohm": read(ring.at_outlet(k, "N", "N" in straight, "N" not in apart)),
                    "line_cpc_ohm": read(ring.at_outlet(k, "E", "E" in straight, "E" not in apart))} for k in order],
        "line_mohm_per_m": 7.41,
        "cpc_mohm_per_m": 12.1,
        "conductor_temperature_c": 20,
    }
    if fault == "interconnected" or rng.uniform() < 0.3:
        arguments["expected_length_m"] = round(length * rng.uniform(0.85, 1.15))
    return arguments, ring


def ring_table(cases: int, seed: int = 1) -> dict[str, dict[str, float]]:
    rows: dict[str, dict[str, float]] = {}
    stated, right = [], []
    for f, fault in enumerate(FAULTS):
        first = third = share = 0.0
        for k in range(cases):
            arguments, _ = ring_case(np.random.default_rng([seed, f, k]), fault)
            result = electrical.ring_tests(**arguments)
            kinds = [h["kind"] for h in result.kinds]
            first += kinds[0] == fault
            third += fault in kinds[:3]
            share += next((h["probability"] for h in result.kinds if h["kind"] == fault), 0.0)
            stated.append(result.probability)
            right.append(kinds[0] == fault)
        rows[fault] = {"first": first / cases, "among three": third / cases, "probability of the truth": share / cases}
    rows["all"] = {key: float(np.mean([rows[f][key] for f in FAULTS])) for key in ("first", "among three", "probability of the truth")}
    rows["stated against right"] = {"first": float(np.mean(right)), "among three": float("nan"), "probability of the truth": float(np.mean(stated))}
    return rows


# ---------------------------------------------------------------------------------------------------------------- published figures


def test_the_simulator_reproduces_published_figures():
    """The simulator stands on its own: figures of the derivation sheet and of the ledger of rings."""
    ring = Ring(30.0, [15.0], {"L": 7.41e-3, "N": 7.41e-3, "E": 12.1e-3})
    assert ring.end_to_end("L") == pytest.approx(0.2223, abs=1e-6)
    assert ring.end_to_end("E") == pytest.approx(0.3630, abs=1e-6)
    assert ring.at_outlet(0, "E") == pytest.approx(0.146325, abs=2e-4)  # (r1 + r2)/4; the links have 0.1 mΩ
    assert ring.at_outlet(0, "N") == pytest.approx(0.5 * 0.2223, abs=2e-4)
    # line broken at the middle, read at a quarter: one way is left
    ring = Ring(1.0, [0.25, 0.75], {"L": 0.5, "N": 0.5, "E": 0.835})
    ring.broken = ("L", 1)
    assert ring.at_outlet(0, "E") == pytest.approx(0.75125, abs=2e-4)
    # a bridge of a tenth between a quarter and three quarters
    ring = Ring(1.0, [0.25, 0.75], {"L": 1.0, "N": 1.0, "E": 1.0})
    ring.bridge = (0, 1, 0.1)
    assert ring.end_to_end("L") == pytest.approx(0.583333, abs=1e-6)


@pytest.mark.parametrize("place", [0.05, 0.25, 0.5, 0.8])
def test_cross_connected_resistance_against_the_network(place):
    ring = Ring(1.0, [place], {"L": 0.5, "N": 0.5, "E": 0.835})
    assert electrical.cross_connected_resistance(0.5, 0.835, place) == pytest.approx(ring.at_outlet(0, "E"), abs=2e-4)


def plain(x: float) -> dict[str, Any]:
    return {"value": x, "instrument": "meter", "accuracy": makegood.Accuracy(percent=2, counts=2, resolution=0.01)}


def ideal(ring: Ring, points: int, **more: Any) -> dict[str, Any]:
    """Readings without error."""
    value = lambda ohm: plain(ohm) if ohm < 20 else {"above": 20, "instrument": "meter"}
    return {
        "line_end_to_end_ohm": value(ring.end_to_end("L")), "neutral_end_to_end_ohm": value(ring.end_to_end("N")), "cpc_end_to_end_ohm": value(ring.end_to_end("E")),
        "points": [{"name": f"{k}", "line_neutral_ohm": value(ring.at_outlet(k, "N")), "line_cpc_ohm": value(ring.at_outlet(k, "E"))}
            for k in range(points)],
        "line_mohm_per_m": 7.41, "cpc_mohm_per_m": 12.1, "conductor_temperature_c": 20, **more,
    }


def test_the_length_carries_the_bias_of_tabulated_resistances():
    """Cable that measures 2 % below the table: the length comes out right, its interval holds 1 and 3 % as well."""
    for low in (0.97, 0.98, 0.99):
        ring = Ring(60.0, [10, 20, 30, 40, 50], {"L": 7.41e-3 * low, "N": 7.41e-3 * low, "E": 12.1e-3 * low})
        r = electrical.ring_tests(**ideal(ring, 5))
        assert r.leading == "intact"
        assert r.length_low_m < 60 < r.length_high_m
        assert r.length_m == pytest.approx(60 * low / 0.98, rel=0.01)
        assert r.length_standard_uncertainty_m > 60 * 0.02 / math.sqrt(3)  # the gain of the instrument is in it
        assert any("upper limits" in a and "recalled" in a for a in r.assumptions)


def test_a_spur_is_found_with_its_length():
    ring = Ring(60.0, [8, 16, 27, 38, 50], {"L": 7.41e-3 * 0.98, "N": 7.41e-3 * 0.98, "E": 12.1e-3 * 0.98})
    ring.spurs[2] = 6.0
    r = electrical.ring_tests(**ideal(ring, 5))
    assert r.leading == "spur" and r.hypotheses[0]["points"] == [3]
    spur = r.points[2]
    assert spur["spur_probability"] > 0.8 and "spur" in spur["text"]
    assert abs(spur["spur_length_m"] - 6.0) < 2 * spur["spur_length_standard_uncertainty_m"] < 3
    assert all(p["spur_probability"] < 0.1 for k, p in enumerate(r.points) if k != 2)


def test_a_stated_place_is_used():
    """With places of the outlets known, a broken line is told from its mirror image."""
    ring = Ring(60.0, [6, 18, 30, 42, 54], {"L": 7.3e-3, "N": 7.3e-3, "E": 11.9e-3})
    ring.broken = ("L", 4)
    arguments = ideal(ring, 5)
    for p, place in zip(arguments["points"], ring.outlets):
        p["position_ratio"] = place / 60
    r = electrical.ring_tests(**arguments)
    assert r.leading == "line_broken" and r.probability > 0.9
    assert not r.conflict


# ---------------------------------------------------------------------------------------------------------------- rings, simulated


def test_the_right_fault_is_found():
    rows = ring_table(4, seed=7)
    assert rows["all"]["first"] >= 0.75, rows
    assert rows["all"]["among three"] >= 0.9, rows
    # what is stated is not far above what is right
    assert rows["stated against right"]["probability of the truth"] <= rows["stated against right"]["first"] + 0.12, rows


def test_two_faults_at_once_are_no_certainty():
    """An unlisted fault shows: what one fault cannot explain is said, and the probabilities step back."""
    for case in range(6):
        rng = np.random.default_rng([5, case])
        _, ring = ring_case(rng, "intact", outlets=7)
        ring.spurs[1] = 8.0
        if case % 3 == 0:
            ring.broken = ("L", 3)
        elif case % 3 == 1:
            ring.joint = ("E", 2, 0.5)
        else:
            ring.broken, ring.changed, ring.spurs = ("N", 2), {2: ("L", "E")}, {}
        r = electrical.ring_tests(**ideal(ring, 7))
        assert r.conflict and not r.robust and "not that alone" in r.text, (case, r.text)
        assert r.probability < 0.7
        assert next(k["probability"] for k in r.kinds if k["kind"] == "none_of_these") >= 0.4
        assert any(p["text"] != "fits" for p in r.points)


def test_few_readings_are_no_certainty():
    one = electrical.ring_tests(line_end_to_end_ohm=0.44)
    assert one.probability < 0.75 and not one.robust or one.kinds[1]["probability"] > 0.05
    assert any("Only 1 reading" in c for c in one.cautions)
    three = electrical.ring_tests(line_end_to_end_ohm=0.44, neutral_end_to_end_ohm=0.44, cpc_end_to_end_ohm=0.72)
    assert three.leading == "intact" and three.probability < 0.9  # neither a spur nor a bridge could show
    assert {"spur", "interconnected"} <= {k["kind"] for k in three.kinds[:4]}
    for result in (one, three):
        assert all(0 < h["probability"] < 1 for h in result.hypotheses)
        assert sum(h["probability"] for h in result.hypotheses) == pytest.approx(1)
        assert sum(h["probability"] for h in result.kinds) == pytest.approx(1)


def test_next_reading_tells_the_leading_ones_apart():
    """Line and neutral read alike, the protective conductor was not read: it is asked for, or a point is."""
    r = electrical.ring_tests(line_end_to_end_ohm=plain(0.44), neutral_end_to_end_ohm=plain(0.44), points=[{"line_neutral_ohm": plain(0.22)}])
    assert {n["reading"] for n in r.next} == {"cpc_end_to_end_ohm", "points[0].line_cpc_ohm"}
    assert r.next == sorted(r.next, key=lambda n: -n["information_bits"])
    assert r.next[0]["information_bits"] > 0.01
    full = electrical.ring_tests(**ring_case(np.random.default_rng(3), "intact")[0])
    assert full.next == []


def test_order_of_outlets_changes_nothing():
    arguments, _ = ring_case(np.random.default_rng(11), "spur", outlets=6)
    a = electrical.ring_tests(**arguments)
    arguments["points"] = arguments["points"][::-1]
    b = electrical.ring_tests(**arguments)
    for x, y in zip(a.kinds, b.kinds):
        assert x["kind"] == y["kind"] and x["probability"] == pytest.approx(y["probability"], abs=0.01)
    names = {p["name"]: p["spur_probability"] for p in a.points}
    assert {p["name"]: pytest.approx(p["spur_probability"], abs=0.02) for p in b.points} == names


def test_many_outlets():
    arguments, ring = ring_case(np.random.default_rng(5), "spur", outlets=30)
    r = electrical.ring_tests(**arguments)
    assert len(r.points) == 30 and sum(p["in_likelihood"] for p in r.points) == 8
    assert any("8 of 30 points" in c for c in r.cautions)
    assert r.leading in ("spur", "interconnected")
    assert r.points[int(r.kinds[0]["points"][0]) - 1]["name"] == f"outlet {next(iter(ring.spurs)) + 1}"
    for p in arguments["points"]:
        p["polarity"] = "right"
    again = electrical.ring_tests(**arguments)
    assert again.probability == pytest.approx(r.probability, abs=1e-9)
    over = {"above": 2000}
    for name in ("reversed", "right"):  # every outlet odd in every way: no more readings at once than the likelihood takes
        odd = [{"name": str(k), "line_neutral_ohm": over, "line_cpc_ohm": over, "polarity": name} for k in range(9)]
        r = electrical.ring_tests(0.44, 0.44, 0.72, points=odd, expected_length_m=60)
        assert sum(h["probability"] for h in r.hypotheses) == pytest.approx(1)
        assert r.leading == ("wrong_links" if name == "right" else r.leading)
    with pytest.raises(makegood.RangeError, match="at most 60"):
        electrical.ring_tests(points=[{"line_neutral_ohm": 0.2}] * 61)


@pytest.mark.parametrize(
    "arguments, says",
    [
        ({}, "no reading at all"),
        ({"line_end_to_end_ohm": float("nan")}, "line_end_to_end_ohm is no number"),
        ({"line_end_to_end_ohm": -0.1}, "not negative"),
        ({"line_end_to_end_ohm": 440.0}, "mΩ"),
        ({"line_end_to_end_ohm": {"above": float("inf")}}, "number up to 1e7"),
        ({"line_end_to_end_ohm": {"state": "no_trip"}}, "no_trip"),
        ({"line_end_to_end_ohm": "0.44"}, "a reading is a number"),
        ({"line_end_to_end_ohm": 0.4, "line_mohm_per_m": 0}, "line_mohm_per_m"),
        ({"line_end_to_end_ohm": 0.4, "line_mohm_per_m": float("nan")}, "line_mohm_per_m"),
        ({"line_end_to_end_ohm": 0.4, "conductor_temperature_c": 900}, "conductor_temperature_c"),
        ({"line_end_to_end_ohm": 0.4, "expected_length_m": 0}, "expected_length_m"),
        ({"points": 3}, "list of objects"),
        ({"points": [3]}, r"points\[0\] must be an object"),
        ({"points": [{"line_neutral": 0.2}]}, "did you mean"),
        ({"points": [{"line_neutral_ohm": 0.2, "position_ratio": 1.2}]}, "position_ratio"),
        ({"points": [{"line_neutral_ohm": 0.2, "polarity": "wrong"}]}, "polarity"),
        ({"points": [{"line_neutral_ohm": float("nan")}]}, r"points\[0\].line_neutral_ohm"),
        ({"points": [{"name": "empty"}]}, "no reading at all"),
    ],
)
def test_odd_readings_of_a_ring_are_refused(arguments, says):
    with pytest.raises(makegood.RangeError, match=says):
        electrical.ring_tests(**arguments)


@pytest.mark.parametrize("value", [0.0, 1e-9, 5e-324, 0.001, 50.0, 100.0])
def test_extreme_readings_of_a_ring_give_a_result(value):
    r = electrical.ring_tests(line_end_to_end_ohm=value, neutral_end_to_end_ohm=value, cpc_end_to_end_ohm=value,
        points=[{"line_neutral_ohm": value, "line_cpc_ohm": 0.3}])
    assert sum(h["probability"] for h in r.hypotheses) == pytest.approx(1)
    assert r.leading != "intact" or r.probability < 0.9
    everything = {"above": 20}
    r = electrical.ring_tests(line_end_to_end_ohm=everything, neutral_end_to_end_ohm=everything, cpc_end_to_end_ohm=everything,
        points=[{"line_neutral_ohm": everything}])
    assert r.leading == "none_of_these" and r.length_m is None


# ---------------------------------------------------------------------------------------------------------------- records

LOOP, CONTINUITY, INSULATION, TIME = (5, 3, 0.01), (2, 2, 0.01), (5, 2, 0.1), (2, 1, 1.0)


def honest_board(rng: np.random.Generator, circuits: int = 12, alike: bool = False) -> tuple[list[dict[str, Any]], dict[str, Any]]:
    """What an honest tester writes down: real cable, parallel earth paths, instruments with errors, times that scatter."""
    loop, ohm = Meter(rng, "loop", *LOOP, end=2000), Meter(rng, "ohm", *CONTINUITY, end=200)
    megohm, timer = Meter(rng, "insulation", *INSULATION, end=500), Meter(rng, "timer", *TIME, end=2000)
    ze = rng.uniform(0.12, 0.5)
    low = lambda: 1 - rng.uniform(0.01, 0.03)
    records, truth = [], []
    rcd = rng.uniform(18, 35)
    aside = np.random.default_rng(int(1e9 * ze))  # so that what follows leaves the stream of the rest alone
    beside = Meter(aside, "insulation", *INSULATION, end=500)
    beside.gain = megohm.gain
    trips_at = aside.uniform(18, 27)
    for k in range(circuits):
        ring = k < 3
        line, cpc = CABLES["2.5/1.5"] if ring or rng.uniform() < 0.5 else CABLES["1.5/1.0"]
        length = rng.uniform(25, 90) if ring else rng.uniform(6, 40)
        if alike and not ring:
            (line, cpc), length = CABLES["2.5/1.5"], 14.0
        m = low() * (1 + 0.00393 * rng.uniform(-4, 4)) / 1000
        c: dict[str, Any] = {"name": f"circuit {k + 1}", "kind": "ring" if ring else "radial", "line_mohm_per_m": line, "cpc_mohm_per_m": cpc,
            "polarity": "right", "rcd": "general",
                             "loop_method": "high_current"}
        if ring:
            r1, rn, r2 = line * length * m, line * length * m * (1 + rng.uniform(-0.007, 0.007)), cpc * length * m * (1 + rng.uniform(-0.015, 0.015))
            c |= {"line_end_to_end_ohm": ohm.read(r1, 0.003), "neutral_end_to_end_ohm": ohm.read(rn, 0.003), "cpc_end_to_end_ohm": ohm.read(r2, 0.003)}
            r12 = 0.25 * (r1 + r2) + (rng.uniform(2, 6) * (line + cpc) * m if rng.uniform() < 0.3 else 0.0)
            cpc_part = 0.25 * r2
        else:
            cpc_part = cpc * length * m * (1 + rng.uniform(-0.015, 0.015))
            r12 = line * length * m + cpc_part
            c["cpc_ohm"] = ohm.read(cpc_part * (rng.uniform(0.3, 1) if rng.uniform() < 0.2 else 1), 0.003)
        c["line_plus_cpc_ohm"] = ohm.read(r12, 0.003)
        c["length_m"] = round(length * rng.uniform(0.85, 1.15))
        parallel = rng.uniform(0, 0.6) * cpc_part if rng.uniform() < 0.3 else 0.0
        zs = ze + r12 - parallel
        c["loop_ohm"] = loop.read(zs, rng.normal(0, 0.004))
        current = 230 * rng.uniform(0.97, 1.03) / (zs * loop.gain)
        c["fault_current_a"] = {"value": round(current), "instrument": "loop", "accuracy": makegood.Accuracy(percent=5)}
        insulation = float(np.exp(rng.uniform(math.log(3), math.log(2000))))
        if alike:
            insulation = float(60 * np.exp(0.3 * aside.normal()))
        truth.append(insulation)
        c["insulation_line_cpc_mohm"] = megohm.read(insulation)
        for name in ("insulation_line_neutral_mohm", "insulation_neutral_cpc_mohm"):
            c[name] = beside.read(insulation * float(np.exp(0.5 * aside.normal())))
        trip = rcd + rng.uniform(0, 6)
        c["rcd_trip_1x_ms"], c["rcd_trip_5x_ms"] = timer.read(trip), timer.read(trip * rng.uniform(0.4, 0.75))
        c |= {"rcd_residual_ma": 30, "rcd_trip_half_ms": {"state": "no_trip"},
              "rcd_ramp_ma": {"value": 1.5 * round(trips_at / 1.5 + aside.uniform(-0.5, 0.5)), "instrument": "timer", "accuracy": makegood.Accuracy(percent=5)}}
        records.append(c)
    whole = 1 / sum(1 / r for r in truth)
    board = {"external_loop_ohm": loop.read(ze), "insulation_line_cpc_mohm": megohm.read(whole * rng.uniform(0.7, 1.0)), "earthing": "TN-C-S",
             "earth_fault_current_a": {"value": round(230 * rng.uniform(0.97, 1.03) / ze / loop.gain), "instrument": "loop",
                 "accuracy": makegood.Accuracy(percent=5)}}
    return records, board


def board_at_the_limit(rng: np.random.Generator, circuits: int = 12) -> tuple[list[dict[str, Any]], dict[str, Any]]:
    """Honest, and as hard as it can be: true values on the very edge of the one-sided relations, normal errors as large as stated."""
    def read(true: float, u: float, what: str) -> dict[str, Any]:
        return {"value": max(0.0, true + u * rng.normal()), "instrument": what, "accuracy": makegood.Accuracy(standard_uncertainty=u)}

    ze = rng.uniform(0.3, 0.5)
    records = []
    for k in range(circuits):
        length = rng.uniform(30, 90)
        r1, r2 = 7.41e-3 * 0.98 * length, 12.1e-3 * 0.98 * length
        c: dict[str, Any] = {"kind": "radial", "line_mohm_per_m": 7.41, "cpc_mohm_per_m": 12.1, "conductor_temperature_c": 20,
            "loop_method": "high_current",
                             "line_plus_cpc_ohm": read(r1 + r2, 0.02, "ohm"), "cpc_ohm": read(r2, 0.02, "ohm"), "loop_ohm": read(ze + r1 + r2, 0.03,
                                 "loop"),
                             "length_m": read(length, 3.0, "tape"), "rcd_trip_1x_ms": read(30, 3, "timer"), "rcd_trip_5x_ms": read(30, 3, "timer")}
        c |= {"rcd_residual_ma": 30, "rcd_ramp_ma": read(15 if k % 2 else 30, 1, "timer"),
              "rcd_trip_half_ms": {"state": "no_trip"} if k % 2 else read(30, 3, "timer")}
        if k < 4:
            del c["cpc_ohm"], c["loop_ohm"]
            c |= {"kind": "ring", "line_end_to_end_ohm": read(r1, 0.02, "ohm"), "neutral_end_to_end_ohm": read(r1, 0.02, "ohm"),
                "cpc_end_to_end_ohm": read(r2, 0.02, "ohm"),
                  "line_plus_cpc_ohm": read(r1 * r2 / (r1 + r2), 0.02, "ohm")}
        records.append(c)
    return records, {"external_loop_ohm": read(ze, 0.005, "loop")}


def alike_board(rng: np.random.Generator) -> tuple[list[dict[str, Any]], dict[str, Any]]:
    """Honest, and every radial is the same cable of the same length, with insulation of like size: as in a row of rooms."""
    return honest_board(rng, alike=True)


def value(record: dict[str, Any], name: str) -> float:
    return record[name]["value"]


def put(record: dict[str, Any], name: str, x: float, step: float = 0.01) -> None:
    record[name] = {**record[name], "value": round(x / step) * step}


def corrupt(rng: np.random.Generator, how: str, records: list[dict[str, Any]], board: dict[str, Any]) -> None:
    if how == "a value of R1+R2 copied to six circuits":
        first = int(rng.integers(3, len(records) - 6))
        for k in range(first + 1, first + 7):
            records[k]["line_plus_cpc_ohm"] = dict(records[first]["line_plus_cpc_ohm"])
    elif how == "line and protective conductor of a ring exchanged":
        r = records[int(rng.integers(0, 3))]
        r["line_end_to_end_ohm"], r["cpc_end_to_end_ohm"] = r["cpc_end_to_end_ohm"], r["line_end_to_end_ohm"]
    elif how == "R1+R2 of another circuit":
        # of a radial whose reading differs by at least half
        order = sorted(range(3, len(records)), key=lambda k: value(records[k], "line_plus_cpc_ohm"))
        a, b = records[order[0]], records[order[-1]]
        a["line_plus_cpc_ohm"], b["line_plus_cpc_ohm"] = b["line_plus_cpc_ohm"], a["line_plus_cpc_ohm"]
    elif how == "R1+R2 of any other circuit":
        a, b = rng.choice(np.arange(3, len(records)), 2, replace=False)
        records[a]["line_plus_cpc_ohm"] = dict(records[b]["line_plus_cpc_ohm"])
    elif how == "a radial stated as 2.5/1.5 that is 1.5/1.0":
        r = next((r for r in records[3:] if r["line_mohm_per_m"] == 12.1), records[3])
        r["line_mohm_per_m"], r["cpc_mohm_per_m"] = CABLES["2.5/1.5"]
    elif how == "Zs worked out as the sum on every line":
        for r in records:
            put(r, "loop_ohm", value(board, "external_loop_ohm") + value(r, "line_plus_cpc_ohm"))
    elif how == "a ring stated as 4/1.5 that is 2.5/1.5":
        r = records[int(rng.integers(0, 3))]
        r["line_mohm_per_m"], r["cpc_mohm_per_m"] = CABLES["4/1.5"]
    elif how == "Zs rounded to 0.05":
        for r in records:
            put(r, "loop_ohm", value(r, "loop_ohm"), 0.05)
    elif how == "insulation of the board above its worst circuit":
        put(board, "insulation_line_cpc_mohm", 2 * min(c["insulation_line_cpc_mohm"].get("value", 500) for c in records), 0.1)
    elif how == "times at once and five times exchanged":
        r = records[0]
        r["rcd_trip_1x_ms"], r["rcd_trip_5x_ms"] = r["rcd_trip_5x_ms"], r["rcd_trip_1x_ms"]
    elif how == "a whole row copied to another circuit":
        a, b = rng.choice(np.arange(3, len(records)), 2, replace=False)
        for name in ("line_plus_cpc_ohm", "cpc_ohm", "loop_ohm", "fault_current_a", "rcd_trip_1x_ms", "rcd_trip_5x_ms", "rcd_ramp_ma",
                     "insulation_line_cpc_mohm", "insulation_line_neutral_mohm", "insulation_neutral_cpc_mohm"):
            records[b][name] = dict(records[a][name])
    elif how == "times at half and once the current exchanged":
        r = records[int(rng.integers(0, len(records)))]
        r["rcd_trip_half_ms"], r["rcd_trip_1x_ms"] = r["rcd_trip_1x_ms"], r["rcd_trip_half_ms"]
    elif how == "no trip at half the current, and 9 mA of 30 mA while it rose":
        put(records[int(rng.integers(0, len(records)))], "rcd_ramp_ma", 9.0, 1.5)
    elif how == "tripping current of 48 mA written beside a time at 30 mA":
        put(records[int(rng.integers(0, len(records)))], "rcd_ramp_ma", 48.0, 1.5)
    else:
        raise ValueError(how)


CORRUPTIONS = ("a value of R1+R2 copied to six circuits", "line and protective conductor of a ring exchanged", "R1+R2 of another circuit",
    "Zs worked out as the sum on every line",
               "a ring stated as 4/1.5 that is 2.5/1.5", "Zs rounded to 0.05", "insulation of the board above its worst circuit", "times at once and five times exchanged",
               "R1+R2 of any other circuit", "a radial stated as 2.5/1.5 that is 1.5/1.0", "a whole row copied to another circuit",
               "times at half and once the current exchanged", "no trip at half the current, and 9 mA of 30 mA while it rose",
               "tripping current of 48 mA written beside a time at 30 mA")
HONEST = {"honest": honest_board, "honest, true values at the limits": board_at_the_limit, "honest, all radials alike": alike_board}


def record_table(cases: int, seed: int = 1) -> dict[str, float]:
    rates = {}
    for h, how in enumerate((*HONEST, *CORRUPTIONS)):
        found = 0
        for k in range(cases):
            rng = np.random.default_rng([seed, h, k])
            records, board = HONEST.get(how, honest_board)(rng)
            if how in CORRUPTIONS:
                corrupt(rng, how, records, board)
            r = electrical.test_record_consistency(records, board)
            found += r.contradictions + r.patterns > 0
        rates[how] = found / cases
    return rates


@pytest.mark.parametrize("kind", HONEST.values())
def test_honest_records_are_left_alone(kind):
    cases = 250
    alarms = 0
    for k in range(cases):
        records, board = kind(np.random.default_rng([99, k]))
        r = electrical.test_record_consistency(records, board)
        alarms += r.contradictions + r.patterns > 0
    # at most 5 %: the count of a binomial at 5 % exceeds this limit in 1 of 1000 runs
    assert alarms <= 0.05 * cases + 3.1 * math.sqrt(cases * 0.05 * 0.95), alarms / cases


@pytest.mark.parametrize("how, least", [(CORRUPTIONS[0], 0.7), (CORRUPTIONS[1], 0.9), (CORRUPTIONS[2], 0.7), (CORRUPTIONS[3], 0.9),
    (CORRUPTIONS[4], 0.9), (CORRUPTIONS[5], 0.9),
                                        (CORRUPTIONS[6], 0.8), (CORRUPTIONS[9], 0.7), (CORRUPTIONS[10], 0.7),
                                        (CORRUPTIONS[11], 0.9), (CORRUPTIONS[12], 0.9), (CORRUPTIONS[13], 0.9)])
def test_corrupted_records_are_noticed(how, least):
    found = 0
    for k in range(40):
        rng = np.random.default_rng([41, k])
        records, board = honest_board(rng)
        corrupt(rng, how, records, board)
        r = electrical.test_record_consistency(records, board)
        found += r.contradictions + r.patterns > 0
        assert "fak" not in r.text.lower() and "fraud" not in r.text.lower() and "invented" not in r.text.lower()
    assert found >= least * 40, found / 40


def relation(result: Any, name: str, circuit: int | None = 1) -> dict[str, Any]:
    return next(r for r in result.relations if r["relation"] == name and r["circuit"] == circuit)


def test_direction_matters():
    stated = lambda x: {"value": x, "accuracy": makegood.Accuracy(standard_uncertainty=0.02), "instrument": "m"}
    base = {"kind": "radial", "line_plus_cpc_ohm": stated(0.45), "loop_method": "high_current"}
    board = {"external_loop_ohm": stated(0.34)}
    below = electrical.test_record_consistency([{**base, "loop_ohm": stated(0.55)}], board)
    above = electrical.test_record_consistency([{**base, "loop_ohm": stated(1.03)}], board)
    assert relation(below, "loop_sum")["outcome"] == "agrees" and relation(below, "loop_sum")["z"] < -3
    assert relation(above, "loop_sum")["outcome"] == "contradiction" and "bad joint" in above.text
    # the scatter of a no-trip test is allowed for
    scatter = electrical.test_record_consistency([{**base, "loop_ohm": stated(0.95), "loop_method": "no_trip"}], board)
    assert relation(scatter, "loop_sum")["outcome"] == "agrees"
    # a protective conductor below the line contradicts a smaller one
    ring = {"kind": "ring", "line_mohm_per_m": 7.41, "cpc_mohm_per_m": 12.1, "line_end_to_end_ohm": stated(0.5), "neutral_end_to_end_ohm": stated(0.5)}
    low = electrical.test_record_consistency([{**ring, "cpc_end_to_end_ohm": stated(0.5)}])
    assert relation(low, "ring_cpc_line")["outcome"] == "contradiction" and "copied" in low.text


def test_holm_adjusts_for_all_relations():
    stated = lambda x: {"value": x, "accuracy": makegood.Accuracy(standard_uncertainty=0.02), "instrument": "m"}
    records = [{"name": str(k), "kind": "radial", "line_plus_cpc_ohm": stated(0.4), "loop_ohm": stated(0.74 + (0.08 if k == 0 else 0.0)),
        "loop_method": "high_current"} for k in range(20)]
    r = electrical.test_record_consistency(records, {"external_loop_ohm": stated(0.34)})
    one = relation(r, "loop_sum")
    assert one["z"] == pytest.approx(0.08 / math.sqrt(3 * 0.02**2))
    assert one["p_value"] == pytest.approx(0.5 * math.erfc(one["z"] / math.sqrt(2)))
    assert one["p_value"] < 0.05 and one["outcome"] == "query"
    p = sorted(x["p_value"] for x in r.relations)
    adjusted = np.maximum.accumulate([min(1.0, (len(p) - i) * x) for i, x in enumerate(p)])
    assert sorted(x["holm_p_value"] for x in r.relations) == pytest.approx(list(adjusted))


def test_half_the_current_and_a_rising_one():
    device = {"rcd": "general", "rcd_residual_ma": 30, "rcd_trip_1x_ms": 25}
    of = lambda **more: electrical.test_record_consistency([{**device, **more}])
    held = {"rcd_trip_half_ms": {"state": "no_trip"}}
    fine = of(**held, rcd_ramp_ma=21)
    assert {relation(fine, n)["outcome"] for n in ("rcd_ramp_low", "rcd_ramp_high")} == {"agrees"} and fine.contradictions == 0
    low = of(**held, rcd_ramp_ma=8)
    assert relation(low, "rcd_ramp_low")["outcome"] == "contradiction" and "leakage" in low.text
    # it did trip at half: then a low current is no contradiction
    assert not any(x["relation"] == "rcd_ramp_low" for x in of(rcd_trip_half_ms=60, rcd_ramp_ma=8).relations)
    assert relation(of(**held, rcd_ramp_ma=45), "rcd_ramp_high")["outcome"] == "contradiction"
    slow = relation(of(rcd_trip_half_ms=90), "rcd_half_time")
    assert slow["outcome"] == "agrees" and slow["residual"] == pytest.approx(65)
    assert relation(of(rcd_trip_half_ms=25, rcd_trip_1x_ms=120), "rcd_half_time")["outcome"] == "contradiction"
    # tripped at half, and not at the whole of it
    never = of(rcd_trip_half_ms=40, rcd_trip_1x_ms={"state": "no_trip"})
    assert relation(never, "rcd_half_time")["outcome"] == "contradiction"
    # no trip at half alone is what a sound device does: nothing to compare
    assert not any(x["relation"].startswith("rcd_") for x in of(**held).relations)


def test_a_copied_row():
    rng = np.random.default_rng(6)
    rows = [{"name": f"c{k}", "line_plus_cpc_ohm": round(float(rng.uniform(0.1, 0.9)), 2), "loop_ohm": round(float(rng.uniform(0.4, 1.4)), 2),
             "insulation_line_cpc_mohm": round(float(np.exp(rng.uniform(1, 6))), 1), "insulation_line_neutral_mohm": round(float(np.exp(rng.uniform(1, 6))), 1)} for k in range(9)]
    copied = lambda r: next(x for x in r.relations if x["relation"] == "rows_copied")
    assert copied(electrical.test_record_consistency(rows))["p_value"] > 0.05
    r = electrical.test_record_consistency([*rows, {**rows[4], "name": "c9"}])
    one = copied(r)
    assert one["outcome"] == "improbable_pattern" and one["residual"] == 4 and one["circuit"] is None
    assert '"c4" and "c9"' in one["column"] and '"c4" and "c9"' in one["text"] and "Read some of them again" in one["text"]
    # resistances alone may be alike where cables are alike; over range is no figure
    for name in ("insulation_line_cpc_mohm", "insulation_line_neutral_mohm"):
        for x in rows:
            x[name] = {"above": 500}
    assert copied(electrical.test_record_consistency([*rows, {**rows[4], "name": "c9"}]))["outcome"] != "improbable_pattern"
    assert not any(x["relation"] == "rows_copied" for x in electrical.test_record_consistency(rows[:3]).relations)


def test_missing_is_not_proved():
    r = electrical.test_record_consistency([{"name": "floor", "kind": "ring"}])
    assert r.compared == 0 and "no pass" in r.text
    items = {m["item"] for m in r.missing}
    assert {"loop_ohm", "polarity", "line_end_to_end_ohm", "cpc_end_to_end_ohm", "insulation_line_neutral_mohm", "rcd", "external_loop_ohm"} <= items
    assert all("not proved" in m["text"] or "not stated" in m["text"] for m in r.missing)
    assert len(r.not_compared) >= 4
    one = electrical.test_record_consistency([{"loop_ohm": 0.8, "line_plus_cpc_ohm": 0.4}], {"external_loop_ohm": 0.35}).relations[0]
    assert "bad joint" in one["above_means"] and "ordinary" in one["below_means"] and one["contradicts"] == "above"


def test_patterns_need_ten_readings():
    records = [{"kind": "radial", "loop_ohm": 0.53} for _ in range(9)]
    assert not any(x["relation"] in ("last_digits", "repeats") for x in electrical.test_record_consistency(records).relations)
    records.append({"kind": "radial", "loop_ohm": 0.97})
    r = electrical.test_record_consistency(records)
    repeats = next(x for x in r.relations if x["relation"] == "repeats" and x["column"] == "loop_ohm")
    assert repeats["residual"] == 8 and repeats["outcome"] == "improbable_pattern"
    assert "pattern improbable under independent measurement (log10 ratio" in repeats["text"]


def test_ordinary_practice_is_no_pattern():
    """One device, whose time stands in every row; a display that steps by 0.1; electrodes of some ten ohms."""
    rng = np.random.default_rng(8)
    rows = [{"kind": "radial", "rcd": "general", "rcd_trip_1x_ms": 24, "rcd_trip_5x_ms": 12, "loop_ohm": round(float(x), 1)}
        for x in rng.uniform(0.4, 6, 14)]
    assert electrical.test_record_consistency(rows).patterns == 0
    rows = [{"kind": "radial", "loop_ohm": round(46 + 0.1 * k % 7, 1), "line_plus_cpc_ohm": round(float(x), 2)} for k,
        x in enumerate(rng.uniform(0.1, 0.9, 14))]
    assert electrical.test_record_consistency(rows, {"external_loop_ohm": 45.3}).patterns == 0


def test_insulation_over_range_counts_for_the_record():
    circuits = [{"insulation_line_cpc_mohm": x} for x in (2.0, {"above": 200}, 50.0)]
    r = electrical.test_record_consistency(circuits, {"insulation_line_cpc_mohm": {"above": 200}})
    assert relation(r, "insulation_parallel", None)["outcome"] == "contradiction"
    assert r.insulation_parallel_mohm == pytest.approx(1 / (1 / 2 + 1 / 50))
    fine = electrical.test_record_consistency([{"insulation_line_cpc_mohm": {"above": 200}}], {"insulation_line_cpc_mohm": {"above": 200}})
    assert fine.compared == 0


@pytest.mark.parametrize(
    "arguments, says",
    [
        ({"circuits": []}, "at least one"),
        ({"circuits": 3}, "list of objects"),
        ({"circuits": [1]}, "must be an object"),
        ({"circuits": [{}] * 201}, "at most 200"),
        ({"circuits": [{"loop_ohm": float("nan")}]}, r"circuits\[0\].loop_ohm is no number"),
        ({"circuits": [{"loop_ohm": -1}]}, "from 0"),
        ({"circuits": [{"loop_ohm": float("inf")}]}, "from 0"),
        ({"circuits": [{"loop_ohm": 1e30}]}, "from 0"),
        ({"circuits": [{"loop_ohms": 1}]}, "did you mean"),
        ({"circuits": [{"kind": "star"}]}, "kind"),
        ({"circuits": [{"line_mohm_per_m": float("nan")}]}, "line_mohm_per_m"),
        ({"circuits": [{"line_mohm_per_m": -7.41}]}, "line_mohm_per_m"),
        ({"circuits": [{"rcd_residual_ma": 0.03}]}, "was it A"),
        ({"circuits": [{"rcd_ramp_ma": -1}]}, "rcd_ramp_ma"),
        ({"circuits": [{"rcd_trip_half_ms": float("nan")}]}, "rcd_trip_half_ms is no number"),
        ({"circuits": [{}], "level": 0}, "level"),
        ({"circuits": [{}], "board": {"nominal_voltage_v": 0}}, "nominal_voltage_v"),
        ({"circuits": [{}], "board": 3}, "must be an object"),
    ],
)
def test_odd_records_are_refused(arguments, says):
    with pytest.raises(makegood.RangeError, match=says):
        electrical.test_record_consistency(**arguments)


def test_zeros_and_extremes_do_not_pass_in_silence():
    zero = {n: 0 for n in ("line_plus_cpc_ohm", "cpc_ohm", "line_end_to_end_ohm", "neutral_end_to_end_ohm", "cpc_end_to_end_ohm", "loop_ohm",
        "insulation_line_cpc_mohm",
                           "fault_current_a", "rcd_trip_1x_ms", "rcd_trip_5x_ms", "rcd_trip_half_ms", "rcd_ramp_ma", "length_m")}
    for record in (zero, {**zero, "line_mohm_per_m": 7.41, "cpc_mohm_per_m": 12.1}, {n: 1e-300 for n in zero}, {n: 9999 for n in zero}):
        r = electrical.test_record_consistency([record], {"external_loop_ohm": 0})
        for x in r.relations:
            assert x["z"] is None or math.isfinite(x["z"])
            assert 0 <= x["p_value"] <= x["holm_p_value"] <= 1
    assert electrical.test_record_consistency([{**zero, "loop_ohm": 0.4}], {"external_loop_ohm": 0.9}).compared > 0


def main() -> None:
    cases = int(sys.argv[1]) if len(sys.argv) > 1 else 50
    print(f"rings, {cases} cases of each kind: share first, among the first three, mean probability of the truth")
    for name, row in ring_table(cases).items():
        print(f"  {name:22s}" + "".join(f"{row[key]:8.3f}" for key in ("first", "among three", "probability of the truth")))
    print(f"records, {10 * cases} boards of 12 circuits each: share with a contradiction or an improbable pattern")
    for name, rate in record_table(10 * cases).items():
        print(f"  {name:52s}{rate:8.4f} ± {math.sqrt(max(rate * (1 - rate), 1e-9) / (10 * cases)):.4f}")


if __name__ == "__main__":
    main()
