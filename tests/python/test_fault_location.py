# SPDX-License-Identifier: MIT
"""Places of faults against cables that are solved as networks and as lines, without the library's equations.

    python tests/python/test_fault_location.py [N]     # a table of the error of each method, and coverage over N simulated jobs

Bridges and resistances: every core is a ladder of resistors with leakage, solved node by node, and the bridge is balanced by search.
Capacitance: a ladder of R, L, G and C at one frequency. Reflection: the exact equations of a line at every frequency, and the pulse
that comes back in time. The joint estimate: least squares once more in NumPy with slopes by differences.
"""

from __future__ import annotations

import math
import random
import sys
from dataclasses import dataclass
from typing import Any

import numpy as np
import pytest

import makegood

E = makegood.electrical
LIGHT_M_PER_NS = 0.299792458
SECTIONS = 20  # of each piece of a core

# ------------------------------------------------------------------------------------------------------------ networks


class Network:
    """Resistors between named nodes; "earth" is at 0 V."""

    def __init__(self) -> None:
        self.nodes: dict[Any, int] = {}
        self.parts: list[tuple[int, int, float]] = []
        self.same: dict[Any, Any] = {}  # nodes that are one, with no resistance between them

    def node(self, name: Any) -> int:
        name = self.same.get(name, name)
        return -1 if name == "earth" else self.nodes.setdefault(name, len(self.nodes))

    def add(self, a: Any, b: Any, ohm: float) -> None:
        """A resistor; of 0 ohm: before anything else is added, `a` becomes another name of `b`."""
        if ohm == 0.0:
            assert a not in self.nodes and b not in self.same
            self.same[a] = b
        else:
            self.parts.append((self.node(a), self.node(b), 1.0 / ohm))

    def volts(self, into: Any, out: Any = "earth") -> dict[Any, float]:
        """With 1 A driven in at one node and out at another."""
        n = len(self.nodes)
        g = np.zeros((n, n))
        i = np.zeros(n)
        for a, b, s in self.parts:
            for x, y in ((a, b), (b, a)):
                if x >= 0:
                    g[x, x] += s
                    if y >= 0:
                        g[x, y] -= s
        for name, sign in ((into, 1.0), (out, -1.0)):
            if self.node(name) >= 0:
                i[self.node(name)] += sign
        v = np.linalg.solve(g, i)
        volts = {name: float(v[k]) for name, k in self.nodes.items()}
        return {**volts, **{a: volts[b] for a, b in self.same.items() if b in volts}}


def ladder(net: Network, name: str, lengths: list[float], ohm_per_m: float, leak_ohm_m: float, sections: int = SECTIONS) -> list[Any]:
    """A core of pieces of these lengths, each of as many sections; returns the nodes where the pieces meet."""
    ends = [(name, 0)]
    k = 0
    for length in lengths:
        for _ in range(sections):
            step = length / sections
            net.add((name, k), (name, k + 1), ohm_per_m * step)
            for side in ((name, k), (name, k + 1)):
                if math.isfinite(leak_ohm_m):
                    net.add(side, "earth", 2 * leak_ohm_m / step)
            k += 1
        ends.append((name, k))
    return ends


def balance(error: Any, low: float, high: float) -> float:
    """The setting at which the galvanometer shows nothing, by a secant that keeps the place between its two ends (Illinois)."""
    a, b, fa, fb = low, high, error(low), error(high)
    assert fa * fb <= 0
    for _ in range(40):
        c = (a * fb - b * fa) / (fb - fa) if fb != fa else b
        fc = error(c)
        if fc * fb <= 0:
            a, fa = b, fb
        else:
            fa *= 0.5
        done = abs(c - b) <= 1e-13 * abs(high)
        b, fb = c, fc
        if done or fc == 0.0:
            break
    return b


@dataclass
class Cable:
    length_m: float
    fault_m: float
    faulty_ohm_per_m: float = 0.0121
    return_ohm_per_m: float = 0.0121
    fault_ohm: float = 1.0
    leak_ohm_m: float = 1e10
    contact_ohm: float = 0.0
    link_ohm: float = 0.0


FAULTY_FAR, SOUND_FAR = ("faulty", 2 * SECTIONS), ("sound", SECTIONS)


def bridge_network(c: Cable, earthed: bool = True) -> tuple[Network, Any, Any]:
    """Both cores joined at the far end, with or without the fault and the leakage; and the near terminals."""
    net = Network()
    net.add("F", ("faulty", 0), c.contact_ohm)
    net.add(SOUND_FAR, FAULTY_FAR, c.link_ohm)
    leak = c.leak_ohm_m if earthed else math.inf
    faulty = ladder(net, "faulty", [c.fault_m, c.length_m - c.fault_m], c.faulty_ohm_per_m, leak)
    sound = ladder(net, "sound", [c.length_m], c.return_ohm_per_m, leak)
    if earthed:
        net.add(faulty[1], "earth", c.fault_ohm)
    return net, "F", sound[0]


def murray(c: Cable, sound_arm_ohm: float = 1000.0) -> float:
    """The arm beside the faulty core at balance; the battery stands between the arms and earth."""

    def galvanometer(faulty_arm: float) -> float:
        net, f, s = bridge_network(c)
        net.add("arms", s, sound_arm_ohm)
        net.add("arms", f, faulty_arm)
        v = net.volts("arms")
        return v[f] - v[s]

    return balance(galvanometer, 1e-3, 2 * sound_arm_ohm)


def varley(c: Cable, arm_ohm: float = 1000.0) -> tuple[float, float]:
    """Earth reading and loop reading with equal arms: the battery at earth (the fault), and at the near end of the faulty core."""

    def galvanometer(added: float, at_loop: bool) -> float:
        net, f, s = bridge_network(c, earthed=not at_loop)
        net.add("arms", s, arm_ohm)
        net.add("arms", "x", arm_ohm)
        net.add("x", f, added)
        if at_loop:
            net.add(f, "earth", 1.0)
        v = net.volts("arms")
        return v["x"] - v[s]

    whole = c.length_m * (c.faulty_ohm_per_m + c.return_ohm_per_m)
    return balance(lambda r: galvanometer(r, False), 1e-6, 2 * whole), balance(lambda r: galvanometer(r, True), 1e-6, 2 * whole)


def short_reading(c: Cable, from_far: bool = False) -> float:
    """Resistance between the two conductors of a pair with a fault between them, from one end."""
    net = Network()
    ladder(net, "pair", [c.fault_m, c.length_m - c.fault_m], c.faulty_ohm_per_m + c.return_ohm_per_m, c.leak_ohm_m)
    middle, last = ("pair", SECTIONS), ("pair", 2 * SECTIONS)
    net.add(middle, "earth", c.fault_ohm)
    end = last if from_far else ("pair", 0)
    return net.volts(end)[end] + c.contact_ohm


@dataclass
class Line:
    """A pair: per metre and at high frequency."""

    r: float = 0.0242
    l: float = 0.6e-6
    g: float = 1e-10
    c: float = 60e-12
    loss: float = 0.002

    @property
    def velocity_factor(self) -> float:
        return 1 / math.sqrt(self.l * self.c) / 299792458.0


def capacitance(line: Line, length_m: float, hertz: float = 1000.0, beyond_m: float = 0.0, break_ohm: float = 1e12, sections: int = 400) -> float:
    """What a meter reads at one frequency at the end of a ladder, open at its far end; behind a break of some resistance lies the rest. nF."""
    w = 2 * math.pi * hertz
    y = 0.0 + 0.0j
    for length, after in ((beyond_m, break_ohm), (length_m, 0.0)):
        for _ in range(sections if length else 0):
            step = length / sections
            y += 0.5 * step * (line.g + 1j * w * line.c)
            y = 1 / (1 / y + step * (line.r + 1j * w * line.l))
            y += 0.5 * step * (line.g + 1j * w * line.c)
        if after and y:
            y = 1 / (1 / y + after)
    return y.imag / w * 1e9


def reflection(line: Line, length_m: float, fault_m: float, series_ohm: float, shunt_ohm: float, width_ns: float = 4.0, source_ohm: float = 100.0) -> float:
    """Time from the pulse to the first echo at the near end, ns, by the exact equations at every frequency."""
    step_ns = width_ns / 32
    n = 1 << math.ceil(math.log2(max(16 * length_m / (line.velocity_factor * LIGHT_M_PER_NS), 200 * width_ns) / step_ns))
    t = np.arange(n) * step_ns
    begin = 8 * width_ns
    pulse = np.exp(-0.5 * ((t - begin) / (width_ns / 2.355)) ** 2)
    f = np.fft.rfftfreq(n, step_ns * 1e-9)
    w = 2 * np.pi * np.maximum(f, 1.0)
    series = line.r + 1j * w * line.l
    shunt = line.g + w * line.c * (line.loss + 1j)
    gamma, z0 = np.sqrt(series * shunt), np.sqrt(series / shunt)

    def into(load: Any, length: float) -> Any:
        rho = (load - z0) / (load + z0) * np.exp(-2 * gamma * length)
        return z0 * (1 + rho) / (1 - rho)

    rest = into(np.full_like(z0, 1e9), length_m - fault_m) + series_ohm
    there = 1 / (1 / rest + 1 / shunt_ohm)
    spectrum = np.fft.rfft(pulse)
    with_fault = np.fft.irfft(spectrum * (lambda z: z / (z + source_ohm))(into(there, fault_m)), n)
    without = np.fft.irfft(spectrum * z0 / (z0 + source_ohm), n)
    echo = np.abs(with_fault - without)
    big = echo > 0.3 * echo.max()
    peak = next(k for k in range(1, n - 1) if big[k] and echo[k] >= echo[k - 1] and echo[k] > echo[k + 1])
    a, b, c = echo[peak - 1], echo[peak], echo[peak + 1]
    return (peak + 0.5 * (a - c) / (a - 2 * b + c)) * step_ns - begin


# ------------------------------------------------------------------------------------------------- errors of the methods


def errors() -> list[tuple[str, str, float, float]]:
    """(method, case, distance, error in metres) over cables and faults."""
    found = []
    for length in (10.0, 25.0, 300.0):
        for share in (0.1, 0.5, 0.85):
            x = share * length
            for fault_ohm in (0.1, 1e3, 1e6):
                c = Cable(length, x, fault_ohm=fault_ohm)
                found.append(("murray", f"fault {fault_ohm:g} ohm", x, E.murray_loop_distance(1000.0, murray(c), length) - x))
                found.append(("murray, insulation 10 Mohm m", f"fault {fault_ohm:g} ohm", x, E.murray_loop_distance(1000.0, murray(Cable(length, x, fault_ohm=fault_ohm, leak_ohm_m=1e7)), length) - x))
            c = Cable(length, x, 0.0181, 0.0121)
            found.append(("murray_unequal", "cpc faulty", x, E.murray_loop_distance_unequal(1000.0, murray(c), length, 18.1, 12.1) - x))
            found.append(("murray on unequal cores, taken as equal", "cpc faulty", x, E.murray_loop_distance(1000.0, murray(c), length) - x))
            c = Cable(length, x, contact_ohm=0.01)
            found.append(("murray, contact 10 mohm, not known", "", x, E.murray_loop_distance(1000.0, murray(c), length) - x))
            known = E.locate_fault(
                {"length_m": {"value": length, "limit": 0.01}, "core_mohm_per_m": 12.1},
                [{"method": "murray", "sound_arm_ohm": 1000.0, "faulty_arm_ohm": murray(c), "contact_ohm": 0.01}],
            )
            found.append(("murray, contact 10 mohm, known", "", x, known.distance_m - x))
            earth, loop = varley(Cable(length, x))
            found.append(("varley", "", x, E.varley_loop_distance(earth, loop, length) - x))
            for fault_ohm in (1e-6, 0.05):
                c = Cable(length, x, fault_ohm=fault_ohm)
                near, far = short_reading(c), short_reading(c, from_far=True)
                found.append(("resistance", f"fault {fault_ohm:g} ohm", x, E.resistance_short_distance(near, 24.2) - x))
                found.append(("resistance_both_ends", f"fault {fault_ohm:g} ohm", x, E.resistance_short_distance_both_ends(near, far, length, 24.2) - x))
            line = Line()
            for break_ohm in (1e12, 1e7):
                near, far = capacitance(line, x, beyond_m=length - x, break_ohm=break_ohm), capacitance(line, length - x, beyond_m=x, break_ohm=break_ohm)
                found.append(("capacitance", f"break {break_ohm:g} ohm", x, E.capacitance_break_distance(near, far, length) - x))
                whole = capacitance(line, length)
                found.append(("capacitance_sound_core", f"break {break_ohm:g} ohm", x, E.capacitance_break_distance_sound_core(near, whole, length) - x))
            for series, shunt, what in ((1e9, 1e12, "break"), (0.0, 1e-3, "short"), (0.0, 30.0, "30 ohm between")):
                t = reflection(line, length, x, series, shunt)
                found.append(("reflection", what, x, E.reflection_distance(line.velocity_factor, t) - x))
    return found


@pytest.fixture(scope="module")
def measured_errors():
    return errors()


def of(found, method, case=None):
    some = [(x, e) for m, c, x, e in found if m == method and (case is None or c == case)]
    assert some, method
    return some


LENGTHS = np.repeat((10.0, 25.0, 300.0), 3)


def test_bridges_do_not_see_the_fault_resistance_but_the_leakage_beside_it(measured_errors):
    """Leakage of both cores is a second fault whose centre of gravity is the far end: the place is the mean by conductances."""
    for method, leak_ohm_m in (("murray", 1e10), ("murray, insulation 10 Mohm m", 1e7)):
        for fault_ohm in (0.1, 1e3, 1e6):
            for length, (x, e) in zip(LENGTHS, of(measured_errors, method, f"fault {fault_ohm:g} ohm"), strict=True):
                leak_s = 2 * length / leak_ohm_m
                drawn = (x / fault_ohm + length * leak_s) / (1 / fault_ohm + leak_s) - x
                # with a fault of 0.1 ohm the potential along the loop is not one: the leakage counts a little otherwise
                assert abs(e - drawn) < (2e-3 * abs(drawn) + 1e-3 if fault_ohm > 1 else 0.01), (method, fault_ohm, length, x, e, drawn)
    for x, e in of(measured_errors, "murray_unequal") + of(measured_errors, "varley"):
        assert abs(e) < 1e-3, (x, e)


def test_leakage_that_is_known_is_taken_out():
    for length, x, fault_ohm in ((25.0, 5.0, 1e6), (300.0, 30.0, 1e4)):
        for own, back, method in ((0.0121, 0.0121, "murray"), (0.0181, 0.0121, "murray_unequal")):
            c = Cable(length, x, own, back, fault_ohm=fault_ohm, leak_ohm_m=1e8)
            r = E.locate_fault(
                {"length_m": {"value": length, "limit": 0.1}, "core_mohm_per_m": 12.1} | ({"faulty_mohm_per_m": 18.1, "return_mohm_per_m": 12.1} if own != back else {}),
                [{"method": method, "sound_arm_ohm": 1000.0, "faulty_arm_ohm": murray(c), "fault_mohm": fault_ohm / 1e6, "rest_mohm": {"value": 1e2 / (2 * length), "limit_percent": 10.0}}],
            )
            assert r.distance_m == pytest.approx(x, abs=2e-3), (length, method)
            assert not any("mean place" in line for line in r.text)
            # by how much it was drawn is in doubt as the insulation of the rest is
            drawn = E.murray_loop_distance(1000.0, murray(c), length) - x if own == back else None
            if drawn is not None:
                share = next(s["effect_m"] for s in r.methods[0]["shares"] if s["source"] == "murray, insulation of the rest")
                assert share == pytest.approx(drawn * 0.1 / math.sqrt(3), rel=0.01)


def test_a_contact_is_metres(measured_errors):
    for length, (x, e) in zip(LENGTHS, of(measured_errors, "murray, contact 10 mohm, not known"), strict=True):
        share = (x * 0.0121 + 0.01) / (2 * length * 0.0121 + 0.01)
        assert e == pytest.approx((1 - share) * 0.01 / 0.0121, rel=1e-3)
    for x, e in of(measured_errors, "murray, contact 10 mohm, known"):
        assert abs(e) < 1e-3
    for x, e in of(measured_errors, "murray on unequal cores, taken as equal"):
        assert abs(e) > 0.1 * x, "the unequal cores are no small matter"


def test_resistance(measured_errors):
    for x, e in of(measured_errors, "resistance", "fault 1e-06 ohm") + of(measured_errors, "resistance_both_ends"):
        assert abs(e) < 1e-3
    for x, e in of(measured_errors, "resistance", "fault 0.05 ohm"):
        assert e == pytest.approx(0.05 / 0.0242, rel=1e-3)  # the fault's own resistance counts as length


def test_capacitance(measured_errors):
    for method in ("capacitance", "capacitance_sound_core"):
        for x, e in of(measured_errors, method, "break 1e+12 ohm"):
            assert abs(e) < 2e-3 * max(1.0, x), (method, x, e)


def test_reflection(measured_errors):
    for case in ("break", "short", "30 ohm between"):
        for x, e in of(measured_errors, "reflection", case):
            if x > 2.0:  # nearer than the pulse is long, it and its echo are one
                assert abs(e) < 0.01 * x + 0.02, (case, x, e)


# ------------------------------------------------------------------------------------------------------- joint estimates

FORMULAS = {
    "murray": lambda q: 2 * q["length_m"] * q["faulty_arm_ohm"] / (q["sound_arm_ohm"] + q["faulty_arm_ohm"])
    + (q["faulty_arm_ohm"] * q["link_ohm"] - q["sound_arm_ohm"] * q["contact_ohm"]) / (q["sound_arm_ohm"] + q["faulty_arm_ohm"]) * 1000 / q["core_mohm_per_m"],
    "reflection": lambda q: q["velocity_factor"] * LIGHT_M_PER_NS * q["round_trip_ns"] / 2,
    "resistance_both_ends": lambda q: (q["length_m"] + 1000 * (q["near_reading_ohm"] - q["far_reading_ohm"]) / q["loop_mohm_per_m"]) / 2,
    "resistance": lambda q: 1000 * (q["loop_reading_ohm"] - q["lead_ohm"]) / q["loop_mohm_per_m"],
    "capacitance": lambda q: q["length_m"] * q["near_nf"] / (q["near_nf"] + q["far_nf"]),
}
READS = {"murray": "faulty_arm_ohm", "reflection": "round_trip_ns", "resistance_both_ends": "near_reading_ohm", "resistance": "loop_reading_ohm", "capacitance": "near_nf"}
SHARED = ("length_m", "velocity_factor", "core_mohm_per_m", "loop_mohm_per_m")


def job(rng: random.Random) -> tuple[float, dict[str, Any], list[dict[str, Any]]]:
    """A cable with what is believed of it, and measurements with errors drawn by the doubts that they state."""
    true = {"length_m": rng.uniform(15, 60), "velocity_factor": rng.uniform(0.55, 0.7), "core_mohm_per_m": 12.1, "loop_mohm_per_m": 24.2}
    doubt = {"length_m": 0.01 * true["length_m"], "velocity_factor": 0.02, "core_mohm_per_m": 0.2, "loop_mohm_per_m": 0.4}
    x = rng.uniform(0.2, 0.8) * true["length_m"]
    meter = rng.gauss(0, 0.01)  # a gain that all resistances of one meter share

    def stated(value: float, u: float) -> dict[str, Any]:
        return {"value": value + rng.gauss(0, u), "standard_uncertainty": u}

    def ohms(value: float, u: float) -> dict[str, Any]:
        seen = value * (1 + meter) + rng.gauss(0, u)
        return {"value": seen, "sources": {"meter, gain": 0.01 * seen, f"reading {rng.random()}": u}}

    cable = {k: {"value": true[k] + rng.gauss(0, u), "standard_uncertainty": u} for k, u in doubt.items()}
    contact = rng.gauss(0, 0.005)
    share = (x * 12.1e-3 + contact) / (2 * true["length_m"] * 12.1e-3 + contact)
    measurements = [
        {"method": "murray", "sound_arm_ohm": 1000.0, "faulty_arm_ohm": stated(1000 * share / (1 - share), 1.0), "contact_ohm": {"value": 0.0, "standard_uncertainty": 0.005}},
        {"method": "reflection", "round_trip_ns": stated(2 * x / true["velocity_factor"] / LIGHT_M_PER_NS, 2.0)},
        {"method": "resistance_both_ends", "near_reading_ohm": ohms(0.3 + x * 24.2e-3, 0.005), "far_reading_ohm": ohms(0.3 + (true["length_m"] - x) * 24.2e-3, 0.005)},
        {"method": "capacitance", "near_nf": stated(0.06 * x, 0.03), "far_nf": stated(0.06 * (true["length_m"] - x), 0.03)},
    ]
    return x, cable, measurements


def least_squares(cable: dict[str, Any], measurements: list[dict[str, Any]]) -> tuple[float, float, float]:
    """(estimate, standard uncertainty, chi-square) in NumPy: slopes by differences, where the estimate lies."""
    values, sources = [], []
    for m in measurements:
        q, u = {"link_ohm": 0.0, "contact_ohm": 0.0, "lead_ohm": 0.0}, {}
        for name, given in {**{k: cable[k] for k in SHARED if k in cable}, **m}.items():
            if name in ("method", "label"):
                continue
            q[name] = given if isinstance(given, float) else given["value"]
            if isinstance(given, dict):
                u[name] = given.get("sources") or {name if name in SHARED else f"{m['method']} {name}": given["standard_uncertainty"]}
        values.append(q)
        sources.append(u)
    f = [FORMULAS[m["method"]] for m in measurements]
    y = np.array([g(q) for g, q in zip(f, values)])
    names = sorted({s for u in sources for parts in u.values() for s in parts})
    at = [dict(q) for q in values]
    for _ in range(8):
        jacobian = np.zeros((len(y), len(names)))
        for i, (g, q) in enumerate(zip(f, at)):
            for name, parts in sources[i].items():
                h = 1e-6 * (abs(q[name]) or 1.0)
                slope = (g({**q, name: q[name] + h}) - g({**q, name: q[name] - h})) / (2 * h)
                for s, size in parts.items():
                    jacobian[i, names.index(s)] += slope * size
        inverse = np.linalg.inv(jacobian @ jacobian.T)
        ones = np.ones(len(y))
        estimate = float(ones @ inverse @ y / (ones @ inverse @ ones))
        for i, (g, m) in enumerate(zip(f, measurements)):
            read = READS[m["method"]]
            for _ in range(30):
                h = 1e-6 * abs(at[i][read])
                slope = (g({**at[i], read: at[i][read] + h}) - g({**at[i], read: at[i][read] - h})) / (2 * h)
                at[i][read] += (estimate - g(at[i])) / slope
    rest = y - estimate
    return estimate, float(1 / math.sqrt(ones @ inverse @ ones)), float(rest @ inverse @ rest)


def test_joint_estimate_is_the_least_squares_of_numpy():
    rng = random.Random(20)
    for _ in range(60):
        _, cable, measurements = job(rng)
        r = E.locate_fault(cable, measurements)
        estimate, u, chi_square = least_squares(cable, measurements)
        assert r.chi_square == pytest.approx(chi_square, rel=2e-4, abs=1e-6)
        if r.conclusion == "consistent":
            assert r.distance_m == pytest.approx(estimate, abs=1e-4)
            assert r.standard_uncertainty_m == pytest.approx(u, rel=1e-4)


def coverage(jobs: int, seed: int = 7) -> dict[str, float]:
    rng = random.Random(seed)
    inside = alarms = unresolved = 0
    own: dict[str, int] = {}
    for _ in range(jobs):
        x, cable, measurements = job(rng)
        r = E.locate_fault(cable, measurements)
        alarms += r.conclusion != "consistent"
        for m in r.methods:
            own[m["label"]] = own.get(m["label"], 0) + (m["low_m"] <= x <= m["high_m"])
        if r.low_m is None:
            unresolved += 1
            inside += any(s["from_m"] <= x <= s["to_m"] for s in r.search)
        else:
            inside += r.low_m <= x <= r.high_m
    return {"joint": inside / jobs, "false alarms": alarms / jobs, "unresolved": unresolved / jobs, **{f"{k} alone": v / jobs for k, v in own.items()}}


def test_coverage_of_the_intervals():
    jobs = 2000
    found = coverage(jobs)
    slack = 4 * math.sqrt(0.95 * 0.05 / jobs)
    for what in ("murray alone", "reflection alone", "resistance_both_ends alone", "capacitance alone"):
        assert abs(found[what] - 0.95) < slack, found
    # the interval after the test of agreement loses a little to false alarms (5 % of the jobs, in which the one named may be right)
    assert 0.95 - slack - 0.01 < found["joint"] < 0.95 + slack, found
    assert abs(found["false alarms"] - 0.05) < slack, found


def test_a_common_doubt_in_proportion_does_not_pull_to_the_smaller():
    """Two readings of 10 and 12 with 15 % each (limits) and a common 20 %: the estimate lies between them (it would not, with slopes where each lies)."""
    r = E.locate_fault(
        {"velocity_factor": {"value": 0.6, "standard_uncertainty": 0.12}},
        [{"method": "reflection", "label": k, "round_trip_ns": {"value": 20 * d / 0.6 / 2.99792458, "limit_percent": 15.0}} for k, d in (("a", 10.0), ("b", 12.0))],
    )
    low, high = sorted(m["distance_m"] for m in r.methods)
    assert low < r.distance_m < high
    assert r.weakest_link == "cable, velocity factor"


# ------------------------------------------------------------------------------------------------------------- findings


def three(wrong: float = 0.0) -> Any:
    cable = {"length_m": {"value": 30.0, "standard_uncertainty": 0.2}, "velocity_factor": {"value": 0.66, "standard_uncertainty": 0.01}, "loop_mohm_per_m": 24.2}
    x = 12.0
    return E.locate_fault(
        cable,
        [
            {"method": "murray", "label": "bridge", "sound_arm_ohm": 1000.0, "faulty_arm_ohm": {"value": 250.0, "standard_uncertainty": 4.0}},
            {"method": "reflection", "label": "pulse", "round_trip_ns": {"value": 2 * (x + wrong) / 0.66 / LIGHT_M_PER_NS, "standard_uncertainty": 1.0}},
            {"method": "resistance", "label": "ohms", "loop_reading_ohm": {"value": x * 24.2e-3, "standard_uncertainty": 0.008}},
        ],
    )


def test_the_method_that_disagrees_is_named():
    good = three()
    assert good.conclusion == "consistent" and good.disagrees is None and abs(good.distance_m - 12.0) < 0.05
    bad = three(wrong=6.0)
    assert bad.conclusion == "one disagrees" and bad.disagrees == "pulse" and bad.suspects == ["pulse"]
    assert abs(bad.distance_m - 12.0) < 0.1, "the wrong one is not averaged in"
    assert any("no average" in line for line in bad.text)
    assert len(bad.search) == 2 and bad.search[1]["from_m"] < 18.0 < bad.search[1]["to_m"]


def test_two_that_disagree_give_no_place():
    r = E.locate_fault(
        {"length_m": {"value": 30.0, "limit": 0.1}},
        [
            {"method": "murray", "sound_arm_ohm": 1000.0, "faulty_arm_ohm": {"value": 250.0, "standard_uncertainty": 1.0}},
            {"method": "capacitance", "near_nf": {"value": 1.5, "standard_uncertainty": 0.01}, "far_nf": 0.5},
        ],
    )
    assert r.conclusion == "unresolved" and r.distance_m is None and r.low_m is None and r.disagrees is None
    assert len(r.search) == 2 and any("third" in line for line in r.text)
    assert any("a leak to earth; capacitance: a break" in line for line in r.text)  # and they look for different faults
    assert any("1 degree of freedom" in line for line in r.text) and any("mean place of all leakage" in line for line in r.text)
    for answer in (r, three(), three(6.0)):
        assert "safe" not in " ".join(answer.text).lower() and "prove dead" in answer.text[-1]


def test_the_weakest_link():
    r = E.locate_fault(
        {"length_m": {"value": 20.0, "standard_uncertainty": 0.02}, "core_mohm_per_m": 12.1},
        [{"method": "murray", "sound_arm_ohm": 1000.0, "faulty_arm_ohm": 500.0, "contact_ohm": {"value": 0.0, "standard_uncertainty": 0.01}}],
    )
    assert r.weakest_link == "murray, contact resistance"
    assert r.standard_uncertainty_m == pytest.approx(math.hypot(2 / 3 * 10e-3 / 12.1e-3, 2 / 3 * 0.02), rel=1e-6)
    assert r.conclusion == "one method" and any("nothing confirms" in line for line in r.text)
    warm = E.locate_fault(
        {"loop_mohm_per_m": 24.2, "temperature_c": {"value": 35.0, "standard_uncertainty": 10.0}},
        [{"method": "resistance", "loop_reading_ohm": {"value": 2.0, "standard_uncertainty": 0.01}}],
    )
    assert warm.weakest_link == "cable, temperature"
    assert warm.distance_m == pytest.approx(2.0 / (0.0242 * (1 + 0.00393 * 15)), rel=1e-12)


def test_what_measured_numbers_share_stays_shared():
    length = makegood.Measured(30.0, 0.3, "tape")
    far = [
        {"method": "reflection", "label": "near", "round_trip_ns": {"value": 100.0, "limit": 1.0}, "velocity_factor": 0.66},
        {"method": "reflection", "label": "far", "from": "far", "round_trip_ns": {"value": 203.0, "limit": 1.0}, "velocity_factor": 0.66, "length_m": length},
    ]
    r = E.locate_fault({}, far)
    assert [s["source"] for s in r.methods[1]["shares"]][0] == "tape"
    assert r.methods[1]["distance_m"] == pytest.approx(30.0 - 0.66 * LIGHT_M_PER_NS * 203.0 / 2)


def test_a_heating_element_with_both_ends_at_hand():
    """12 ohm over 30 m, solved as a network: contacts of 30 and 10 mohm, the fault in the second half."""
    ohm_per_m, x, length = 0.4, 21.0, 30.0

    def galvanometer(faulty_arm: float) -> float:
        net = Network()
        ends = ladder(net, "element", [x, length - x], ohm_per_m, math.inf)
        net.add("F", ends[0], 0.03)
        net.add("S", ends[-1], 0.01)
        net.add(ends[1], "earth", 500.0)
        net.add("arms", "F", faulty_arm)
        net.add("arms", "S", 1000.0)
        v = net.volts("arms")
        return v["F"] - v["S"]

    r = E.locate_fault(
        {"length_m": {"value": length, "limit": 0.1}, "core_mohm_per_m": 400.0},
        [{"method": "murray_element", "sound_arm_ohm": 1000.0, "faulty_arm_ohm": balance(galvanometer, 1.0, 10000.0), "contact_ohm": 0.03, "link_ohm": 0.01}],
    )
    assert r.distance_m == pytest.approx(x, abs=1e-6) and r.methods[0]["on_the_cable"]


def test_calibration_gives_the_velocity_factor():
    r = E.locate_fault({"calibration": {"length_m": {"value": 20.0, "limit": 0.1}, "round_trip_ns": 202.0}}, [{"method": "reflection", "round_trip_ns": 101.0}])
    assert r.distance_m == pytest.approx(10.0)
    assert r.weakest_link == "calibration, length"


def test_a_place_beyond_the_cable_is_said():
    r = E.locate_fault({"length_m": {"value": 20.0, "limit": 0.1}, "velocity_factor": 0.66}, [{"method": "reflection", "round_trip_ns": {"value": 400.0, "limit": 1.0}}])
    assert not r.methods[0]["on_the_cable"] and r.search[0]["from_m"] == r.search[0]["to_m"] == 20.0
    assert any("not on the cable" in line for line in r.text)


# -------------------------------------------------------------------------------------------------- insulation of parts


def test_parallel_insulation():
    r = E.parallel_insulation([1.5, 3.0, 3.0], ["kitchen", "bath", "hall"], 1.0)
    assert r.total_mohm == pytest.approx(0.75) and r.outcome == "fail" and r.dominant == "kitchen" and r.dominant_share_ratio == pytest.approx(0.5)
    assert r.splitting_helps and r.circuits_count == 2 and r.failing_alone == []
    for group in r.circuits:
        assert group["resistance_mohm"] >= 1.0 - 1e-12
    poor = E.parallel_insulation([0.4, 300, 300], limit_mohm=1.0)
    assert not poor.splitting_helps and poor.failing_alone == ["part 1"] and poor.circuits == []
    assert E.parallel_insulation([2.0, 2.0], limit_mohm=1.0).outcome == "pass"  # the limit itself
    assert E.parallel_insulation([2.0, math.nextafter(2.0, 0) - 1e-9], limit_mohm=1.0).outcome == "fail"
    over = E.parallel_insulation([{"above": 1.5}, 3.0], limit_mohm=1.1)
    assert over.outcome == "undecided" and over.total_mohm == pytest.approx(1.0) and over.total_at_most_mohm == pytest.approx(3.0) and over.dominant == "part 2"
    perfect = E.parallel_insulation([{"above": 500}, {"above": 500}])
    assert perfect.dominant is None and perfect.total_at_most_mohm is None and perfect.outcome == "not judged"


def test_fewest_circuits_by_trying_all():
    rng = random.Random(5)

    def partitions(items):
        if not items:
            yield []
            return
        for rest in partitions(items[1:]):
            for k in range(len(rest)):
                yield rest[:k] + [[items[0], *rest[k]]] + rest[k + 1 :]
            yield [[items[0]], *rest]

    for _ in range(40):
        parts = [round(rng.uniform(1.0, 6.0), 2) for _ in range(rng.randint(2, 7))]
        r = E.parallel_insulation(parts, limit_mohm=1.0)
        if r.outcome == "pass":
            continue
        best = min(len(p) for p in partitions(parts) if all(sum(1 / x for x in g) <= 1.0 + 1e-12 for g in p))
        assert r.circuits_count == best, parts
        assert sorted(n for g in r.circuits for n in g["names"]) == sorted(f"part {i + 1}" for i in range(len(parts)))


# ---------------------------------------------------------------------------------------------------------------- hostile

LENGTH = {"length_m": {"value": 20.0, "limit": 0.1}}
BRIDGE = {"method": "murray", "sound_arm_ohm": 1000.0, "faulty_arm_ohm": {"value": 300.0, "limit": 3.0}}


@pytest.mark.parametrize(
    "cable, measurements, said",
    [
        ({}, [], "one measurement or more"),
        ({}, [5], "must be an object"),
        (5, [BRIDGE], "must be an object"),
        ({}, [BRIDGE], 'needs "length_m"'),
        (LENGTH, [{"method": "guess"}], "is not one of"),
        (LENGTH, [{"sound_arm_ohm": 1.0}], '"method" is missing'),
        (LENGTH, [{**BRIDGE, "colour": "red"}], 'no argument "colour"'),
        ({**LENGTH, "colour": "red"}, [BRIDGE], 'no argument "colour"'),
        (LENGTH, [{**BRIDGE, "faulty_arm_ohm": float("nan")}], "not a number"),
        (LENGTH, [{**BRIDGE, "faulty_arm_ohm": {"value": float("inf")}}], 'needs a "value"'),
        (LENGTH, [{**BRIDGE, "faulty_arm_ohm": -999.0}], "missing value"),
        (LENGTH, [{**BRIDGE, "faulty_arm_ohm": "300"}], "a number or an object"),
        (LENGTH, [{**BRIDGE, "faulty_arm_ohm": {"value": 300.0, "limit": -1.0}}], "must be 0 or more"),
        (LENGTH, [{**BRIDGE, "faulty_arm_ohm": {"value": 300.0, "limit": 1.0, "standard_uncertainty": 1.0}}], "one of"),
        (LENGTH, [{**BRIDGE, "faulty_arm_ohm": {"value": 300.0, "limits": 1.0}}], 'no argument "limits"'),
        (LENGTH, [{**BRIDGE, "from": "middle"}], '"near" or "far"'),
        (LENGTH, [{**BRIDGE, "contact_ohm": 0.01}], 'needs "core_mohm_per_m"'),
        (LENGTH, [{**BRIDGE, "fault_mohm": 1.0}], 'needs "rest_mohm"'),
        (LENGTH, [{**BRIDGE, "fault_mohm": 1.0, "rest_mohm": 0.0}], "must be above 0"),
        (LENGTH, [BRIDGE, BRIDGE], "a \"label\" of its own"),
        ({"length_m": 20.0}, [{**BRIDGE, "faulty_arm_ohm": 300.0}], "no doubt at all"),
        (LENGTH, [{**BRIDGE, "faulty_arm_ohm": 300.0, "label": k} for k in "ab"], "shares every doubt"),
        ({}, [{"method": "resistance", "loop_reading_ohm": 0.1, "lead_ohm": {"value": 0.2, "limit": 0.1}, "loop_mohm_per_m": 24.2}], "leads and contacts"),
        ({}, [{"method": "reflection", "round_trip_ns": 100.0, "calibration": {"length_m": {"value": 20.0, "limit": 1.0}, "round_trip_ns": 10.0}}], "faster than light"),
    ],
)
def test_hostile(cable, measurements, said):
    with pytest.raises((makegood.RangeError, makegood.RelationError), match=said):
        E.locate_fault(cable, measurements)


@pytest.mark.parametrize("values", [[], [0.0], [-1.0], [float("nan")], ["1"], [None], [{"below": 1}], [1e30], 5])
def test_hostile_insulation(values):
    with pytest.raises((makegood.RangeError, TypeError)):
        E.parallel_insulation(values)


def test_hostile_insulation_limits():
    for limit in (0.0, -1.0, float("nan"), float("inf")):
        with pytest.raises(makegood.RangeError):
            E.parallel_insulation([1.0], limit_mohm=limit)
    with pytest.raises(makegood.RangeError):
        E.parallel_insulation([1.0], ["a", "b"])


# ------------------------------------------------------------------------------------------------------------------ table


def main(arguments: list[str]) -> int:
    table: dict[tuple[str, str], list[tuple[float, float]]] = {}
    for method, case, x, e in errors():
        table.setdefault((method, case), []).append((x, e))
    print("Error of each method against the simulated cable (10, 25 and 300 m, fault at 0.1, 0.5 and 0.85 of the length):\n")
    print(f"{'method':42}{'case':20}{'worst, m':>12}{'at, m':>9}{'worst, % of the distance':>28}")
    for (method, case), some in table.items():
        x, e = max(some, key=lambda p: abs(p[1]))
        print(f"{method:42}{case:20}{e:12.5f}{x:9.1f}{max(abs(e) / x for x, e in some):27.3%}")
    jobs = int(arguments[0]) if arguments else 5000
    print(f"\nCoverage of the 95 % intervals over {jobs} simulated jobs with four methods and shared errors:")
    for what, share in coverage(jobs).items():
        print(f"  {what:32}{share:8.4f}")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
