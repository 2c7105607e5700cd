# SPDX-License-Identifier: MIT
"""Visits with known faults, made without the library: whatever the engine believes, here it is known.

A family's document gives its weights, its distributions and its costs: they are data. What a test would show is computed here from circuits
and other physics of their own (nodal analysis, bisection), never by the forward models of the document. Signs that people see (words) are
drawn by the chances of the document, as the weights are: they are judgement on both sides.

    made = visits(family("heating_element"), {"power_w": 600}, 1000, np.random.default_rng(1))
    made.truth, made.readings["element_ohm"]
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import Any, NamedTuple

import numpy as np

# Limits of error of an instrument that is not named, by what it reads: part of the reading, and an amount in the unit of the reading.
# (IEC 61557 for the installation tester, recalled; the others common practice.)
LIMITS = {
    "continuity": (0.30, 0.0),
    "insulation": (0.30, 0.0),
    "loop_impedance": (0.30, 0.0),
    "rcd_time": (0.10, 0.0),
    "resistance": (0.02, 0.0),
    "temperature": (0.0, 2.0),
    "airflow": (0.10, 0.0),
    "length": (0.02, 0.0),
    "voltage": (0.02, 0.0),
    "current": (0.05, 0.0),
}
# Displays that round: the smallest step, and how many steps a range has (the next one has steps ten times as large).
DISPLAYS = {
    "continuity": (0.01, 2000),
    "insulation": (0.001, 2000),
    "loop_impedance": (0.01, 2000),
    "rcd_time": (0.1, 4000),
    "resistance": (0.01, 4000),
    "temperature": (0.1, 10000),
    "airflow": (0.1, 10000),
    "length": (0.001, 1e9),
    "voltage": (0.1, 4000),
    "current": (0.01, 4000),
}
ROOT_3 = math.sqrt(3.0)
UNLISTED = -1
Arrays = dict[str, Any]


class Visits(NamedTuple):
    """`truth`: the place of the fault among `ids`, UNLISTED for one that is on no list. Readings: NaN not made, ±inf beyond the range."""

    ids: list[str]
    truth: np.ndarray
    readings: Arrays
    sigma: dict[str, np.ndarray]  #: standard uncertainty of each reading's own errors, at its true value
    weights: np.ndarray  #: of the ids before any reading, together 1


# ---- what a document says, as numbers ------------------------------------------------------------------------------------


class Named:
    def __init__(self, **of: Any) -> None:
        self.__dict__.update(of)


def number(x: Any, names: Mapping[str, Any]) -> float:
    """A number of a document, or its expression of what is given."""
    if not isinstance(x, str):
        return float(x)
    known = {
        "max": max,
        "min": min,
        "abs": abs,
        "sqrt": math.sqrt,
        "exp": math.exp,
        "log": math.log,
        "if_above": lambda x, limit, then, other: then if x > limit else other,
        "parallel": lambda a, b: 1 / (1 / a + 1 / b),
        "electrical": Named(resistance_at_temperature=lambda ohm, celsius: ohm * (1 + 0.00393 * (celsius - 20))),
    }
    return float(eval(x.replace("^", "**"), {"__builtins__": {}}, {**known, **names}))  # noqa: S307


def given_of(document: Mapping[str, Any], given: Mapping[str, Any]) -> dict[str, Any]:
    out: dict[str, Any] = {}
    for name, said in document.get("given", {}).items():
        x = given.get(name, said.get("default"))
        out[name] = x if said.get("list") else math.nan if x is None else number(x, out)
    for name, table in document.get("tables", {}).items():
        out[name] = lambda at, table=table: float(np.interp(at, table["x"], table["y"]))
    if document.get("prepare") == "fan":  # ends of its instruments' ranges: twice what the fan can do
        out["flow_top_l_per_s"] = 2 * max(q for q, _ in out["curve"])
        out["pressure_top_pa"] = 2 * max(pa for _, pa in out["curve"])
    return out


def listed(document: Mapping[str, Any], given: Mapping[str, Any]) -> tuple[list[dict[str, Any]], np.ndarray]:
    """The hypotheses that can be, and their weights (together 1)."""
    names = given_of(document, given)
    weights = np.array([number(h.get("prior", 1), names) for h in document["hypotheses"]])
    keep = [h for h, w in zip(document["hypotheses"], weights) if w > 0]
    return keep, weights[weights > 0] / weights.sum()


def draw(shape: list[Any], names: Mapping[str, float], n: int, rng: np.random.Generator) -> np.ndarray:
    kind, *ends = shape
    a, b, *c = (number(x, names) for x in ends)
    if kind == "normal":
        return rng.normal(a, b, n)
    if kind == "log_normal":
        return a * np.exp(rng.normal(0, b, n))
    if kind == "uniform":
        return rng.uniform(a, b, n)
    if kind == "log_uniform":
        return np.exp(rng.uniform(math.log(a), math.log(b), n))
    if kind == "triangular":  # low, most likely, high
        return rng.triangular(a, b, c[0], n)
    raise ValueError(kind)


# ---- circuits by nodal analysis ------------------------------------------------------------------------------------------


def voltages(nodes: int, branches: list[tuple[int, int, Any]], held: Mapping[int, Any]) -> list[Any]:
    """Voltage of every node; branches (a, b, conductance), conductances and held voltages as arrays over visits or numbers."""
    n = max(np.size(x) for x in [*(g for _, _, g in branches), *held.values()])
    free = [k for k in range(nodes) if k not in held and any(k in (a, b) for a, b, _ in branches)]
    place = {k: i for i, k in enumerate(free)}
    matrix = np.zeros((n, len(free), len(free)))
    right = np.zeros((n, len(free)))
    for a, b, g in branches:
        for me, other in ((a, b), (b, a)):
            if me not in place:
                continue
            matrix[:, place[me], place[me]] += g
            if other in place:
                matrix[:, place[me], place[other]] -= g
            else:
                right[:, place[me]] += np.asarray(g) * held[other]
    solved = np.linalg.solve(matrix, right[..., None])[..., 0] if free else np.zeros((n, 0))
    return [solved[:, place[k]] if k in place else held.get(k, 0.0) for k in range(nodes)]


def current_into(nodes: int, branches: list[tuple[int, int, Any]], held: Mapping[int, Any], into: int) -> np.ndarray:
    """Current that flows into a held node from its branches."""
    volt = voltages(nodes, branches, held)
    total = np.asarray(0.0)
    for a, b, g in branches:
        if into in (a, b):
            total = total + np.asarray(g) * (volt[b if a == into else a] - volt[into])
    return total


def ohms(nodes: int, branches: list[tuple[int, int, Any]], one: Any, other: int) -> np.ndarray:
    """What an ohmmeter shows between a node (or several joined) and another."""
    joined = one if isinstance(one, tuple) else (one,)
    with np.errstate(divide="ignore"):
        return 1.0 / np.maximum(current_into(nodes, branches, {**dict.fromkeys(joined, 1.0), other: 0.0}, other), 1e-13)


NEVER = 1e-12  # conductance of what is open, in siemens


def heating_element(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """Tails, wire in two parts with one place that leaks to the screen, the screen's joint to earth."""
    tail_l, tail_n, wire_l, place, wire_n, screen, earth = range(7)
    one = np.ones(n)
    power = given["power_w"] * p.get("ratio", one)
    runs = given["runs"]
    whole = given["voltage_v"] * given["voltage_v"] / power * p.get("part", one) * p.get("left", one)
    if fault == "run_open":  # the other runs are left in parallel, each of `runs` times the whole
        each = whole * runs
        whole = each / (runs - 1)
    along = p.get("along", rng.uniform(0.0, 1.0, n))
    leak = p["contact"] if fault == "to_screen" else 1e6 * p["insulation"]
    first, second = 1 / (whole * np.maximum(along, 1e-6)), 1 / (whole * np.maximum(1 - along, 1e-6))
    if fault == "open":  # on one side of the leaking place or the other
        side = rng.random(n) < 0.5
        first, second = np.where(side, NEVER, first), np.where(side, second, NEVER)
    tail = one / max(given["lead_ohm"] / 2, 1e-9)
    branches = [(tail_l, wire_l, tail), (wire_l, place, first), (place, wire_n, second), (wire_n, tail_n, tail), (place, screen, 1 / leak)]
    live = [*branches, (screen, earth, 1 / p["joint"])]
    # an insulation tester with both tails joined; no part of the screen's joint is in the way
    return {
        "element_ohm": ohms(7, branches, tail_l, tail_n),
        "insulation_mohm": ohms(7, branches, (tail_l, tail_n), screen) / 1e6,
        "screen_ohm": p["joint"],
        "line_screen_ohm": ohms(7, branches, tail_l, screen),
        "neutral_screen_ohm": ohms(7, branches, tail_n, screen),
        "current_a": -current_into(7, live, {tail_l: given["voltage_v"], tail_n: 0.0, earth: 0.0}, tail_l),
    }


def ntc(celsius: Any, ohm: Any, at_c: float, beta: Any) -> Any:
    """A thermistor's resistance by its slope, integrated: d ln R / dT = -B/T², Simpson's rule over 64 steps between the two temperatures."""
    cold, warm = at_c + 273.15, np.asarray(celsius) + 273.15
    steps = 64
    h = (warm - cold) / steps
    total = 0.0
    for k in range(steps + 1):
        total = total + (1 if k in (0, steps) else 4 if k % 2 else 2) / (cold + k * h) ** 2
    return ohm * np.exp(-beta * h / 3 * total)


def ntc_celsius(r: Any, ohm: Any, at_c: float, beta: Any) -> np.ndarray:
    """The temperature of a resistance, by bisection."""
    r = np.asarray(r, dtype=float)
    low, high = np.full(r.shape, -150.0), np.full(r.shape, 900.0)
    for _ in range(50):
        middle = 0.5 * (low + high)
        colder = ntc(middle, ohm, at_c, beta) > r
        low, high = np.where(colder, middle, low), np.where(colder, high, middle)
    return 0.5 * (low + high)


def floor_sensor(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """The probe as a thermistor with what lies in series and across it; the thermostat turns the resistance at its terminals into a temperature."""
    r0, t0, beta = given["reference_ohm"], given["reference_c"], given["beta_k"]
    one = np.ones(n)
    ratio, bend = p.get("ratio", one), p.get("bend", one)
    out: Arrays = {"surface_c": p["floor"]}
    meant = (r0 * ratio, t0, beta * bend) if fault == "other_setting" else (r0, t0, beta)
    own = (r0, t0, beta) if fault == "other_setting" else (r0 * ratio, t0, beta * bend)
    inside = 1 / p["inside"] if "inside" in p else NEVER * one

    def shows(ohm: Any) -> np.ndarray:
        return ntc_celsius(1 / (1 / ohm + inside), *meant)

    out["shown_resistor_c"] = shows(r0 * one)
    if fault in ("open", "absent"):
        out.update({"probe_ohm": np.full(n, math.inf), "probe_warm_ohm": np.full(n, math.inf)})
    elif fault == "short":
        out.update({"probe_ohm": p["bridge"], "probe_warm_ohm": p["bridge"]})
    else:

        def at_the_wires(celsius: Any, second: Any) -> np.ndarray:
            terminal, probe, back = range(3)
            element = 1 / (ntc(celsius, *own) * p["part"])
            branches = [(terminal, probe, 1 / p["joint"] if "joint" in p else 1e9 * one), (probe, back, element)]
            if "shunt" in p:
                branches.append((terminal, back, 1 / p["shunt"]))
            if fault == "parallel":  # the second probe lies in the unheated floor
                branches.append((terminal, back, 1 / (ntc(second, *own) * p["part"])))
            return 1 / current_into(3, branches, {terminal: 1.0, back: 0.0}, back)

        lies = p.get("there", p["floor"])
        out["probe_ohm"] = at_the_wires(lies, p["floor"])
        out["probe_warm_ohm"] = at_the_wires(lies if fault == "misplaced" else p["warm"], p["floor"])
        if fault != "not_connected":
            out["shown_c"] = shows(out["probe_ohm"])
    if fault != "absent":
        out["probe_earth_mohm"] = p.get("leak", p.get("insulation"))
    return out


def thermostat(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """Board, one conductor each way, a contact in the line, the load; a voltmeter of 10 MΩ."""
    board_l, board_n, in_l, in_n, out_l, out_n, earth = range(7)
    one = np.ones(n)
    load = given["voltage_v"] ** 2 / given["load_w"] * p.get("part", one)
    run = 1 / p.get("run", given["run_ohm"] * one)
    open_load = fault == "load_open"
    out: Arrays = {}
    broken = math.inf * one
    out["line_run_ohm"] = broken if fault in ("line_missing", "polarity", "exchanged") else p["run"]
    out["neutral_run_ohm"] = broken if fault in ("neutral_missing", "polarity", "exchanged") else p["run"]
    out["contact_ohm"] = p["weld"] if fault == "relay_welded" else broken
    out["load_ohm"] = broken if open_load or fault == "exchanged" else load
    out["insulation_mohm"] = p.get("leak", p.get("insulation"))
    volt = p.get("supply", given["voltage_v"] * one)
    board = {board_l: 0.0 * one if fault == "device_off" else volt, board_n: 0.0 * one, earth: 0.0 * one}
    if fault == "polarity":
        board[board_l], board[board_n] = board[board_n], board[board_l]

    def volts(call: bool, across: tuple[int, int]) -> np.ndarray:
        powered = fault not in ("device_off", "line_missing", "neutral_missing", "exchanged", "dead")
        closed = fault == "relay_welded" or (call and powered and fault != "relay_open")
        contact = (1 / p["weld"] if fault == "relay_welded" else 50.0 * one) if closed else NEVER * one
        feed, back = (out_l, out_n) if fault == "exchanged" else (in_l, in_n)
        far, near = (in_l, in_n) if fault == "exchanged" else (out_l, out_n)
        branches = [
            (board_l, feed, NEVER * one if fault == "line_missing" else run),
            (board_n, back, NEVER * one if fault == "neutral_missing" else run),
            (in_l, out_l, contact),
            (far, near, NEVER * one if open_load else 1 / load),
            (*across, 1e-7 * one),
        ]
        if fault != "exchanged":
            branches.append((in_n, out_n, 100.0 * one))
        at = voltages(7, branches, board)
        return np.abs(at[across[0]] - at[across[1]])

    if fault != "neutral_missing":  # a wire without an end: what a voltmeter shows there is nobody's to say
        out["supply_v"] = volts(False, (in_l, in_n))
        out["load_call_v"] = volts(True, (out_l, out_n))
        out["load_off_v"] = volts(False, (out_l, out_n))
    out["line_earth_v"] = volts(False, (in_l, earth))
    return out


def lit_mirror(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """Board, wall switch, feed, contact, pad; another circuit's neutral. Broken wires conduct next to nothing."""
    board_l, mirror_l, lamp, board_n, mirror_n, other_n = range(6)
    one = np.ones(n)
    no = NEVER * one
    run = 1 / p["run"] if "run" in p else no
    own_broken = fault in ("neutral_missing", "neutral_borrowed", "polarity")

    def wires(wall: bool, contact: bool) -> list[tuple[int, int, Any]]:
        line = no if fault in ("feed_missing", "polarity") or (fault == "feed_switched" and not wall) else run
        closed = fault != "contact_open" and (contact or fault == "contact_welded")
        return [
            (board_l, mirror_l, line),
            (mirror_l, lamp, 1 / p["contact"] if closed else no),
            (board_n, mirror_n, no if own_broken else run),
            (other_n, mirror_n, 1 / p["other"] if "other" in p else no),
            (board_n, other_n, no),
            (mirror_l, mirror_n, no),
        ]

    pad = given["voltage_v"] ** 2 / given["pad_w"] * p.get("part", one) * p.get("left", one)
    out: Arrays = {
        "neutral_own_ohm": ohms(6, wires(False, False), board_n, mirror_n),
        "neutral_other_ohm": ohms(6, wires(False, False), other_n, mirror_n),
        "feed_off_ohm": ohms(6, wires(False, False), board_l, mirror_l),
        "feed_on_ohm": ohms(6, wires(True, False), board_l, mirror_l),
        "earth_ohm": p.get("gap", p.get("earth")),
        "insulation_mohm": p.get("leak", p.get("insulation")),
        "pad_ohm": math.inf * one if fault == "pad_open" else pad,
        "lamp_pad_ohm": p["contact"] if fault == "joined" else math.inf * one,
        "switch_on_ohm": ohms(6, wires(False, True), mirror_l, lamp),
        "switch_off_ohm": ohms(6, wires(False, False), mirror_l, lamp),
    }
    if "level" in p or "rise" in p:
        out["driver_out_v"] = given["driver_v"] * p.get("level", p.get("rise"))
    return out


def joint(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """Source, board, point, load; a joint in the line, in the neutral or before the board; cold joints conduct better."""
    source, board_l, point_l, point_n, board_n = range(5)
    one = np.ones(n)
    cold = p.get("cold", one)
    times = p.get("times", one)
    cable = p["run"] * (times if fault == "other_cable" else 1)
    load = p["load"] / (times if fault == "more_current" else 1)
    line, neutral = cable * p["share"], cable * (1 - p["share"])
    in_line = p["joint"] if fault in ("line_joint", "both_joints") else 0 * one
    in_neutral = p["joint"] if fault == "neutral_joint" else p["second"] if fault == "both_joints" else 0 * one
    supply = p["supply"] + (p["joint"] if fault == "supply_joint" else p["rest"] if fault == "supply_neutral" else 0)

    def of(ohm_line: Any, ohm_neutral: Any, ohm_load: Any) -> list[tuple[int, int, Any]]:
        return [(source, board_l, 1 / supply), (board_l, point_l, 1 / ohm_line), (point_n, board_n, 1 / ohm_neutral), (point_l, point_n, 1 / ohm_load)]

    warm = of(line + in_line, neutral + in_neutral, load)
    held = {source: given["voltage_v"] * one, board_n: 0 * one}
    v = voltages(5, warm, held)
    shift = p.get("shift", 0 * one)
    link = 1e-7
    return {
        # dead: line and neutral linked at the board, read at the point; the source is away
        "loop_ohm": 1 / current_into(5, [(board_l, point_l, 1 / (line + in_line * cold)), (board_l, board_n, one / link), (board_n, point_n, 1 / (neutral + in_neutral * cold))], {point_l: 1.0, point_n: 0.0}, point_n),
        "line_ohm": line + in_line * cold,
        "neutral_ohm": neutral + in_neutral * cold,
        "insulation_mohm": p["insulation"],
        "point_drop_v": held[source] - (v[point_l] - v[point_n]) + shift,
        "board_drop_v": held[source] - v[board_l] + shift,
        "line_drop_v": v[board_l] - v[point_l],
        "neutral_drop_v": v[point_n] - v[board_n],
        "current_a": current_into(5, warm, held, board_n),
        # a loop tester draws a current of its own: the source's volts over what flows into a dead short
        "point_loop_ohm": 1 / current_into(5, of(line + in_line, neutral + in_neutral, 1e-9 * one), {source: 1.0, board_n: 0.0}, board_n),
        "board_loop_ohm": supply,
    }  # fmt: skip


def like_contact(n: int, rng: np.random.Generator) -> np.ndarray:
    """Another contact of the same kind: each has a resistance of its own."""
    return np.exp(rng.uniform(math.log(0.01), math.log(0.3), n))


def rail_heater(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """Board, spur with fuse and switch, cord, control, element. Every contact has a resistance of its own."""
    board, spur, after_switch, after_fuse, control, end, board_n = range(7)
    one = np.ones(n)
    no = NEVER * one
    broken = math.inf * one
    element = given["voltage_v"] ** 2 / given["power_w"] * p.get("part", one)
    fuse, switch, inner = p["contact"], like_contact(n, rng), like_contact(n, rng)
    blown = fault == "fuse_open"
    of_element = no if fault == "element_open" else 1 / element
    of_control = no if fault == "control_open" else 1 / inner
    of_switch = no if fault == "switch_open" else 1 / switch
    run = 1 / p["run"] if "run" in p else 1 / (given["run_ohm"] * one)
    live = [
        (board, spur, no if fault == "line_missing" else run),
        (spur, after_switch, of_switch),
        (after_switch, after_fuse, no if blown else 1 / fuse),
        (after_fuse, control, of_control),
        (control, end, of_element),
        (end, board_n, no if fault == "neutral_missing" else run),
    ]
    volt = p.get("supply", given["voltage_v"] * one)
    held = {board: volt, board_n: 0 * one}
    out: Arrays = {
        "fuse_ohm": broken if blown else fuse,
        "switch_ohm": broken if fault == "switch_open" else switch,
        "heater_ohm": ohms(7, live[3:5], after_fuse, end),
        "element_ohm": ohms(7, live[4:5], control, end),
        "control_ohm": ohms(7, live[3:4], after_fuse, control),
        "body_earth_ohm": p.get("gap") if fault == "cord_earth_open" else p["flex"],
        "spur_earth_ohm": p.get("gap") if fault == "circuit_earth_open" else p["earth"],
        "line_run_ohm": broken if fault in ("line_missing", "polarity") else p["run"],
        "neutral_run_ohm": broken if fault in ("neutral_missing", "polarity") else p["run"],
        "current_a": current_into(7, live, held, board_n),
    }
    if fault != "earth_fault":
        out["insulation_mohm"] = p.get("leak", p.get("insulation"))
    if fault not in ("line_missing", "neutral_missing"):
        out["supply_v"] = volt
    return out


def lighting_point(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """Board, first switch, strappers, last switch, drop, lampholder; another circuit's neutral."""
    one = np.ones(n)
    broken = math.inf * one
    crossed = fault == "polarity"
    own = broken if crossed or fault in ("neutral_missing", "neutral_borrowed") else p["run"]
    out: Arrays = {
        "holder_ohm": p.get("burnt", p.get("holder")),
        "line_ohm": broken if crossed or fault == "line_missing" else p["run"],
        "neutral_own_ohm": own,
        "neutral_other_ohm": p.get("other", broken),
        "cross_ohm": p["run"] if crossed else broken,
        "drop_ohm": p.get("drop", broken),
        "strapper_ohm": broken if fault == "strapper_broken" else p["strap"],
        "contact_ohm": p.get("worn", p.get("contact")),
        "gap_ohm": like_contact(n, rng) if fault == "switch_welded" else broken,
        "earth_ohm": p.get("gap", p.get("earth")),
        "insulation_mohm": p.get("leak", p.get("insulation")),
    }
    if "supply" in p:
        out["point_v"] = p["supply"]
    return out


def leakage(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """Three insulations to earth, a standing leakage, a device that trips by what its load side leaves of it."""
    out: Arrays = {"line_mohm": p["line"], "neutral_mohm": p["neutral"], "appliance_mohm": p["appliance"], "leakage_ma": p["leakage"], "ramp_ma": p["trips"]}
    out["ne_other_ohm"] = p["between"] if "between" in p else np.full(n, math.inf)
    # the tester's current and the leakage are not in phase: of the leakage eight tenths count
    out["ramp_connected_ma"] = np.maximum(p["trips"] - 0.8 * p["leakage"], 0.02 * given["residual_current_ma"])
    return out


FAN_TOP_PA, FAN_END = 60.0, 40.0  #: a fan's pressure without flow, and its flow without pressure in l/s


def fan_pa(flow: Any) -> Any:
    return FAN_TOP_PA * (1 - (flow / FAN_END) ** 2)


def fan(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """Fan against run: the flow at which the fan's pressure is what the run takes, by bisection."""
    one = np.ones(n)
    out: Arrays = {"insulation_mohm": p["insulation"]}
    if fault != "motor_open":
        out["motor_ohm"] = p["winding"]
    if "supply" in p or "ghost" in p:
        out["switched_v"] = p.get("supply", p.get("ghost"))
        out["feed_v"] = p.get("ghost", p.get("supply"))
    if "fan" not in p:
        return {**out, "grille_flow": p["draught"], "outlet_flow": p["draught"], "fan_pressure": 0.2 * p["draught"]}
    before = given["before_fan_ratio"]
    strength = p["fan"] * p.get("part", one)
    per_flow = p["run"] * given["run_pa"] / given["run_flow_l_per_s"] ** 2
    if fault in ("added_resistance", "closed_shutter"):
        per_flow = per_flow * p["times"]
    elif fault == "crushed_flexible":
        per_flow = per_flow * (1 - given["flexible_ratio"]) + per_flow * given["flexible_ratio"] * p["times"]
    elif fault == "leak_after_fan":
        per_flow = per_flow * before + per_flow * (1 - before) * p["open"]
    elif fault == "leak_before_fan":
        per_flow = per_flow * (1 - before) + per_flow * before * p["open"]
    elif fault == "no_outlet":
        per_flow = per_flow * p["of_run"]
    speed = p.get("speed", one)
    low, high = 0 * one, FAN_END * speed
    for _ in range(60):  # the curve of a slower fan: flow in proportion to its speed, pressure to the square of it
        flow = 0.5 * (low + high)
        more = strength * speed**2 * fan_pa(flow / speed) > per_flow * flow**2
        low, high = np.where(more, flow, low), np.where(more, high, flow)
    pa = per_flow * flow**2
    sign = -1 if fault == "reversed_standing" else 1
    return {
        **out,
        "grille_flow": sign * flow * p.get("comes", one),
        "outlet_flow": p["draught"] if fault == "no_outlet" else sign * flow * p.get("reaches", one),
        "fan_pressure": sign * pa,
    }


def ring(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """Three conductors from end A at the board round to end B, cut where the outlet is, where a bridge leaves and comes back, and at the fault.

    Each reading is a network of its own: the outlet's place in the order of the cuts differs from visit to visit, so a piece of cable that a
    visit does not have conducts nothing.
    """
    one = np.ones(n)
    ends, leaves, back, here, spur_end = range(5)  # of each conductor: A, bridge leaves, bridge comes back, outlet, B's number follows
    core = {"l": 0, "n": 6, "e": 12}  # first node of each conductor; node 5 of each is end B
    whole = {"l": p["line"], "n": p["line"] * p["match"], "e": p["line"] * p["ratio"] * p.get("size", one)} if "line" in p else {c: 0.5 * one for c in core}
    broken = {"line_broken": "l", "neutral_broken": "n", "cpc_broken": "e", "two_radials": "lne"}.get(fault, "")
    loose = {"line_joint": "l", "neutral_joint": "n", "cpc_joint": "e"}.get(fault, "")
    at = p.get("at", rng.uniform(0.0, 1.0, n))
    round_ = 1 + p.get("more", 0 * one)  # the other ring's cable lies between the last outlet of this one and end B
    start = 0.5 * (1 - p["span"]) if fault == "bridged" else 0.5 * one
    stop = 0.5 * (1 + p["span"]) if fault == "bridged" else 0.5 * one

    def branches(place: Any, branch: Any = None) -> list[tuple[int, int, Any]]:
        """Cable with an outlet at a place; `branch`: loop resistance of a spur that leaves there."""
        out: list[tuple[int, int, Any]] = []
        for c, first in core.items():

            def cable(a: int, b: int, x: Any, y: Any, there: Any, first: int = first, c: str = c) -> None:
                ohm = whole[c] * np.maximum(y - x, 1e-7)
                faulty = (x < at) & (at <= y)
                if c in loose:
                    ohm = ohm + np.where(faulty, p["joint"], 0.0)
                g = np.where(faulty & (c in broken), NEVER, 1 / ohm)
                out.append((first + a, first + b, np.where(there, g, 0.0)))

            cuts = [(ends, 0 * one), (leaves, start), (back, stop), (5, round_)]
            for (a, x), (b, y) in zip(cuts, cuts[1:]):
                inside = (x < place) & (place <= y)
                cable(a, b, x, y, ~inside)
                cable(a, here, x, place, inside)
                cable(here, b, place, y, inside)
            if fault == "bridged":
                out.append((first + leaves, first + back, 1 / (whole[c] * p["bridge"])))
            if branch is not None:
                out.append((first + here, first + spur_end, 2 / branch))
        return out

    def reads(other: str, place: Any, branch: Any = None) -> np.ndarray:
        """Line to another conductor at an outlet, the ends linked at the board."""
        to = core[other]
        links = [(ends, 5), (5, ends)] if fault != "wrong_links" else [(ends, ends), (5, 5)]
        linked = [*branches(place, branch), *((a, to + b, 1e6 * one) for a, b in links)]
        joined = [x for x in linked if x[0] < 6 or to <= x[0] < to + 6]
        node = spur_end if branch is not None else here
        return ohms(18, joined, node, to + node)

    def end_to_end(c: str) -> np.ndarray:
        first = core[c]
        return ohms(18, [x for x in branches(0.5 * one) if first <= x[0] < first + 6], first + ends, first + 5)

    places = {name: p.get(name, given[f"{name}_ratio"] * one) for name in ("near", "middle", "far")}
    if fault == "bridged":  # the middle outlet is on the stretch that the bridge passes by
        places["middle"] = start + p["span"] * p["along"]
    out: Arrays = {"r1": end_to_end("l"), "rn": end_to_end("n"), "r2": end_to_end("e"), "other_circuit_ohm": p.get("through", math.inf * one)}
    for name, place in places.items():
        out[f"ln_{name}"], out[f"lc_{name}"] = reads("n", place), reads("e", place)
    top = p.get("top", one)
    if fault == "bridged":  # the highest lies near the middle of that stretch
        out["ln_highest"] = reads("n", start + p["span"] * 0.5 * (1 + np.sqrt(1 - top)))
    else:
        high = np.minimum(0.5 * round_, 0.95)  # no outlet of this circuit lies in the other ring
        out["ln_highest"] = reads("n", high) * top
        if "spur" in p:
            out["ln_highest"] = reads("n", high, p["spur"]) - (1 - top) * reads("n", high)
    return out


#: Figures of a record that stand in each other's place: read with one instrument, written in the field of another.
WRITTEN: dict[tuple[str, str], tuple[str, str]] = {
    ("circuit_record", "exchanged"): ("rec_r1r2", "rec_zs"),
    ("circuit_record", "rcd_setting"): ("rec_rcd_1", "rec_rcd_5"),
}


def circuit_record(given: Mapping[str, float], fault: str, p: Arrays, n: int, rng: np.random.Generator) -> Arrays:
    """The circuit that is there, and the one that was read for the record, as networks; what the person then wrote is in WRITTEN."""
    source, board_l, point_l, point_e, joint_, board_e = range(6)

    def circuit(factor: Any = 1.0, beside: Any = None, bad: Any = 1e-7, linked: bool = True) -> list[tuple[int, int, Any]]:
        line, cpc = p["line"] * p["long"] * factor, p["cpc"] * p["long"] * factor
        out = [(board_l, point_l, 1 / line), (point_e, joint_, 1 / cpc), (joint_, board_e, np.ones(n) / bad)]
        if linked:
            out.append((point_l, point_e, 1e7 * np.ones(n)))
        if beside is not None:  # pipes and bonds from the point's earth to the board's
            out.append((point_e, board_e, 1 / beside))
        return out

    def figures(beside: Any = None, **of: Any) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """R1 + R2, R2, and the loop at the farthest point. Impedances add as vectors and earths lie beside: a loop reads a little less
        than the sum, but for a way beside that is in the network already, and for a break that leaves no other way."""
        loop = [(source, board_l, 1 / p["outside"]), *circuit(beside=beside, **of)]
        less = 1.0 if beside is not None or "bad" in of else p["lower"]
        alone = circuit(beside=beside, linked=False, **of)[1:]
        return ohms(6, circuit(beside=beside, **of), board_l, board_e), ohms(6, alone, point_e, board_e), ohms(6, loop, source, board_e) * less

    there = {"factor": p["factor"]} if fault == "wrong_size" else {}
    was = {"factor": p["factor"]} if fault in ("wrong_size", "other_circuit", "copied") else {}
    r1r2, r2, zs = figures(beside=p.get("beside"), **was)
    if "leads" in p:  # two leads in one reading; the long one added in the other
        r1r2, r2 = r1r2 + p["leads"], r2 + 1.5 * p["leads"]
    now = figures(bad=p["bad"]) if "bad" in p else figures(**there)
    return {
        "rec_r1r2": r1r2, "rec_r2": r2, "rec_zs": zs, "rec_ze": p["outside"], "rec_rcd_1": p["once"], "rec_rcd_5": p["five"], "insulation_mohm": p["insulation"],
        "again_r1r2": now[0],  # with every way beside taken off
        "again_zs": zs if "beside" in p else now[2], "again_rcd": p["once"],
    }  # fmt: skip


PHYSICS: dict[str, Callable[..., Arrays]] = {
    "heating_element": heating_element,
    "floor_sensor": floor_sensor,
    "thermostat": thermostat,
    "lit_mirror": lit_mirror,
    "fan": fan,
    "joint": joint,
    "rail_heater": rail_heater,
    "lighting_point": lighting_point,
    "leakage": leakage,
    "ring": ring,
    "circuit_record": circuit_record,
}
#: Numbers given for the visits of each family.
GIVEN: dict[str, list[dict[str, Any]]] = {
    "heating_element": [{"power_w": 600, "voltage_v": 230}, {"power_w": 1200, "voltage_v": 230, "runs": 2, "tolerance_percent": 8, "lead_ohm": 0.3}],
    "floor_sensor": [{"reference_ohm": 10000, "beta_k": 3950}],
    "thermostat": [{"load_w": 900}],
    "lit_mirror": [{"pad_w": 40}],
    "fan": [{"curve": [[x, fan_pa(x)] for x in np.linspace(0, FAN_END, 17).tolist()], "run_pa": 20, "run_flow_l_per_s": 25, "flexible_ratio": 0.3}],
    "joint": [{"length_m": 25}],
    "rail_heater": [{"power_w": 800}],
    "lighting_point": [{}],
    "leakage": [{}],
    "ring": [{"length_m": 62}],
    "circuit_record": [{"length_m": 24}],
}


# ---- visits --------------------------------------------------------------------------------------------------------------


def is_real(t: Mapping[str, Any]) -> bool:
    return "reads" in t


def as_floats(x: np.ndarray) -> np.ndarray:
    """A column's numbers; NaN for words and for what was not made."""
    return x if x.dtype != object else np.array([v if isinstance(v, float) else math.nan for v in x], dtype=float)


def true_values(document: Mapping[str, Any], given: Mapping[str, Any], h: Mapping[str, Any] | None, n: int, rng: np.random.Generator) -> Arrays:
    """What the tests of a family would show without any error, n times, where one hypothesis holds (None: none of these)."""
    names = given_of(document, given)
    shown: Arrays = {}
    if h is not None:
        parameters = {k: draw(shape, names, n, rng) for k, shape in h.get("parameters", {}).items()}
        shown = PHYSICS[document["id"]](names, h["id"], parameters, n, rng)
    return {t["id"]: shown_by(t, h.get("shows", {}).get(t["id"], {}) if h else {}, shown.get(t["id"]), names, n, rng) for t in document["tests"]}


def shown_by(t: Mapping[str, Any], says: Any, value: np.ndarray | None, names: Mapping[str, float], n: int, rng: np.random.Generator) -> np.ndarray:
    """A value of its own physics, where there is one. Words, and what no physics tells, by the chances of the document (all of them data:
    judgement of what people see); what these leave goes to the broad distribution of the test."""
    chances = says if isinstance(says, Mapping) else {}
    if value is None and (not isinstance(says, Mapping) or "value" in says):
        raise ValueError(f"{t['id']}: a value needs a physics of its own")
    words = list(t.get("outcomes", []))
    real = is_real(t)
    kinds: list[Any] = ([math.inf, -math.inf] if real else []) + words
    p = np.array([number(chances.get({math.inf: "above", -math.inf: "below"}.get(k, k), 0), names) for k in kinds])
    if value is not None and "value" not in chances:
        p = np.zeros(len(kinds))  # the physics alone says
    if value is None:
        p = p + max(0.0, 1 - p.sum()) * (t.get("outcomes_share", 0.2) if real else 1.0) / len(kinds)
    which = rng.choice(len(kinds) + 1, n, p=[*p / max(1.0, p.sum()), max(0.0, 1 - p.sum())]) if len(kinds) else np.zeros(n, dtype=int)
    if not real:
        return np.array(words, dtype=object)[np.minimum(which, len(kinds) - 1)]
    if value is None:
        low, high, u = number(t["low"], names), number(t["high"], names), rng.random(n)
        value = low + u * (high - low) if t.get("broad") == "uniform" else low * (high / low) ** u
    out = np.array(value, dtype=float) if not words else np.array([float(x) for x in value], dtype=object)
    for i, k in enumerate(kinds):
        out[which == i] = k
    return out


def as_written(document: Mapping[str, Any], h: Mapping[str, Any] | None, columns: Arrays, rows: Any = slice(None)) -> None:
    """Puts figures where they were written, in the rows where this hypothesis holds."""
    if h is None or (document["id"], h["id"]) not in WRITTEN:
        return
    a, b = (columns[name] for name in WRITTEN[document["id"], h["id"]])
    a[rows], b[rows] = b[rows].copy(), a[rows].copy()


def sigma_of(t: Mapping[str, Any], names: Mapping[str, float], x: np.ndarray, limits: Mapping[str, tuple[float, float]] = LIMITS) -> np.ndarray:
    part, amount = limits[t["reads"]]
    own = number(t.get("own_ratio", 0.01), names) * np.abs(x) + number(t.get("own_fixed", 0), names)
    return np.sqrt((part / ROOT_3 * x) ** 2 + (amount / ROOT_3) ** 2 + own**2)


def rounded(y: np.ndarray, least: float, steps: float) -> np.ndarray:
    """What a display of that many steps a range shows."""
    range_ = np.ceil(np.log10(np.maximum(np.abs(y) / (least * steps), 1.0)) - 1e-12)
    step = least * 10.0**range_
    return step * np.floor(y / step + 0.5)


def read_with_errors(
    document: Mapping[str, Any], given: Mapping[str, Any], true: Arrays, rng: np.random.Generator, errors: str = "normal", display: bool = False
) -> tuple[Arrays, dict[str, np.ndarray]]:
    """The displays of instruments: their gain and offset are common to all readings of one kind, each reading has errors of its own.

    `errors`: "normal", or "rectangular": all of them, with the same standard uncertainty. `display`: it rounds, see DISPLAYS.
    """
    if errors not in ("normal", "rectangular"):
        raise ValueError(errors)

    def errs(*shape: int) -> np.ndarray:
        return rng.normal(size=shape) if errors == "normal" else rng.uniform(-ROOT_3, ROOT_3, shape)

    names = given_of(document, given)
    n = len(next(iter(true.values())))
    common = {}
    for kind, (part, amount) in sorted(LIMITS.items()):
        z = errs(2, n)
        common[kind] = (part / ROOT_3 * z[0], amount / ROOT_3 * z[1])
    out: Arrays = {}
    sigma: dict[str, np.ndarray] = {}
    for t in document["tests"]:
        column = true[t["id"]]
        if not is_real(t):
            out[t["id"]] = column
            continue
        x = as_floats(column)
        gain, offset = common[t["reads"]]
        z = errs(n)
        known = np.isfinite(x)
        v = np.where(known, x, 0.0)
        sigma[t["id"]] = np.where(known, sigma_of(t, names, v), 0.0)
        y = v * (1 + gain) + offset + (number(t.get("own_ratio", 0.01), names) * v + number(t.get("own_fixed", 0), names)) * z
        if display:
            y = rounded(y, *DISPLAYS[t["reads"]])
        y = np.where(known, y, x)
        y = np.where(y > number(t["high"], names), math.inf, np.where(y < number(t["low"], names), -math.inf, y))
        if column.dtype == object:
            column = column.copy()
            says_value = ~np.isnan(x)
            column[says_value] = [float(v) for v in y[says_value]]
            y = column
        out[t["id"]] = y
    return out, sigma


def may_be_made(document: Mapping[str, Any], readings: Arrays) -> Arrays:
    """Which tests the readings of the others allow: nobody energises what no test has proved."""
    n = len(next(iter(readings.values())))
    conditions = {c["id"]: c for c in document.get("conditions", [])}

    def stands(name: str) -> np.ndarray:
        c = conditions.get(name, {})
        if c.get("by_test"):
            proved = np.zeros(n, dtype=bool)
            any_test = False
            for t in document["tests"]:
                p = t.get("proves", {})
                if p.get("condition") != name:
                    continue
                any_test = True
                x = readings[t["id"]]
                if "outcome" in p:
                    proved |= np.array([w == p["outcome"] for w in x])
                else:
                    x = as_floats(x)
                    proved |= (x >= p.get("from", -math.inf)) & (x <= p.get("to", math.inf))
            return proved if any_test else np.ones(n, dtype=bool)  # what the one who is there says: found as it was left
        all_of = np.ones(n, dtype=bool)
        for need in c.get("needs", []):
            all_of &= stands(need)
        return all_of

    out = {}
    for t in document["tests"]:
        allowed = np.ones(n, dtype=bool)
        for need in t.get("needs", []):
            allowed &= stands(need)
        out[t["id"]] = allowed
    return out


def blank(x: np.ndarray, keep: np.ndarray) -> np.ndarray:
    out = x.copy()
    out[~keep] = None if x.dtype == object else math.nan
    return out


def visits(
    document: Mapping[str, Any],
    given: Mapping[str, Any],
    n: int,
    rng: np.random.Generator,
    *,
    none_prior: float = 0.05,
    none_as_listed: bool = False,
    errors: str = "normal",
    unlisted: float = 0.0,
    display: bool = False,
    every_test: bool = False,
) -> Visits:
    """n visits. `none_as_listed`: "none of these" is drawn too, with its weight, and shows anything (the broad distributions).

    `unlisted`: part of the visits whose fault is on no list: another fault's readings with one or two quantities moved by what no list knows.
    Tests that no earlier result allows are not made, unless `every_test`.
    """
    hypotheses, weights = listed(document, given)
    ids = [h["id"] for h in hypotheses] + ["none_of_these"]
    part = none_prior if none_as_listed else 0.0
    p = np.array([*weights * (1 - part), part])
    truth = rng.choice(len(ids), n, p=p / p.sum())
    fault = truth.copy()
    names = given_of(document, given)
    true: Arrays = {}
    for k, h in enumerate([*hypotheses, None]):
        rows = np.flatnonzero(truth == k)
        if len(rows) == 0:
            continue
        some = true_values(document, given, h, len(rows), rng)
        for name, x in some.items():
            if name not in true:
                true[name] = np.empty(n, dtype=x.dtype)
            true[name][rows] = x
    if unlisted > 0:
        odd = np.flatnonzero(rng.random(n) < unlisted)
        truth[odd] = UNLISTED
        real = [t["id"] for t in document["tests"] if is_real(t)]
        low = {t["id"]: number(t["low"], names) for t in document["tests"] if t["id"] in real}
        high = {t["id"]: number(t["high"], names) for t in document["tests"] if t["id"] in real}
        for i in odd:
            for name in rng.choice(real, min(2, len(real)), replace=False):
                factor = math.exp(rng.uniform(math.log(2), math.log(30))) ** rng.choice([-1, 1])
                x = true[name][i]
                if isinstance(x, str):
                    continue
                x = high[name] if x == math.inf else low[name] if x == -math.inf else min(max(x, low[name]), high[name])
                true[name][i] = x * factor if x > 0 else x + (high[name] - low[name]) * rng.uniform(0.2, 0.8)
    readings, sigma = read_with_errors(document, given, true, rng, errors, display)
    for k, h in enumerate(hypotheses):
        for columns in (readings, sigma):
            as_written(document, h, columns, fault == k)
    allowed = may_be_made(document, readings)
    readings = {name: blank(x, allowed[name] | every_test) for name, x in readings.items()}
    return Visits(ids, truth, readings, sigma, p / p.sum())


def some_tests_only(made: Visits, rng: np.random.Generator, part: float = 0.5) -> Visits:
    """The same visits with a part of the tests made, which ones is drawn for each visit."""
    return made._replace(readings={name: blank(x, rng.random(len(x)) < part) for name, x in made.readings.items()})


class Shown(NamedTuple):
    """What a hypothesis shows without errors: values of many draws of its parameters, and the chance of each word of the tests that show words."""

    values: Arrays
    chances: dict[str, dict[str, float]]


def shown_by_each(document: Mapping[str, Any], given: Mapping[str, Any], rng: np.random.Generator, draws: int = 3000) -> list[Shown]:
    names = given_of(document, given)
    out = []
    for h in listed(document, given)[0]:
        values = true_values(document, given, h, draws, rng)
        as_written(document, h, values)
        chances = {}
        for t in document["tests"]:
            if is_real(t):
                continue
            del values[t["id"]]
            says = {w: number(h.get("shows", {}).get(t["id"], {}).get(w, 0), names) for w in t["outcomes"]}
            rest = max(0.0, 1 - sum(says.values())) / len(says)
            chances[t["id"]] = {w: x + rest for w, x in says.items()}
        out.append(Shown(values, chances))
    return out


#: As rare as what lies 3 standard deviations away: a word with less than this chance is not explained.
RARE = 0.0027


def separable(document: Mapping[str, Any], given: Mapping[str, Any], made: Visits, rows: np.ndarray, each: list[Shown], far: float = 3.0) -> np.ndarray:
    """Whether no listed hypothesis explains all readings of a visit: none of the drawn parameters comes within `far` standard uncertainties of all
    values, or a word is rarer than RARE. Words are not drawn: of four words that each show now and then hardly any draw has all four."""
    names = given_of(document, given)
    tests = {t["id"]: t for t in document["tests"]}
    nearest = np.full(len(rows), math.inf)
    for true, chances in each:
        draws = len(next(iter(true.values())))
        for i, row in enumerate(rows):
            worst = np.zeros(draws)
            for name, x in made.readings.items():
                y = x[row]
                if y is None or (isinstance(y, float) and math.isnan(y)):
                    continue
                if name in chances:
                    if chances[name][y] < RARE:
                        worst[:] = math.inf
                        break
                    continue
                v = true[name]
                if isinstance(y, str):
                    worst = np.maximum(worst, np.where(v == y, 0.0, math.inf))
                    continue
                v = as_floats(v)
                t = tests[name]
                low, high = number(t["low"], names), number(t["high"], names)
                known = np.isfinite(v)
                v = np.where(np.isnan(v), 0.0, v)
                at = np.where(known, v, 0.0)
                u = np.maximum(sigma_of(t, names, at), 1e-12)
                if math.isinf(y):
                    end = high if y > 0 else low
                    away = np.maximum(0.0, (end - at) / u if y > 0 else (at - end) / u)
                    worst = np.maximum(worst, np.where(known, away, np.where(v == y, 0.0, math.inf)))
                else:
                    worst = np.maximum(worst, np.where(known, np.abs(y - at) / u, math.inf))
            nearest[i] = min(nearest[i], worst.min())
    return nearest > far
