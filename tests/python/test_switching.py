# SPDX-License-Identifier: MIT
"""Wirings of a switched point against a simulator that knows no roles: a graph of terminals, wires and closed contacts.

    python tests/python/test_switching.py [N]     # N random points; prints what was held against what

Every case: a wiring is drawn, readings are drawn from what the graph allows, and the wirings that the library returns must be exactly
those that brute force over all graphs finds. So the true one is always among them, and none is returned that the graph contradicts.
"""

from __future__ import annotations

import itertools
import math
import random
import sys
from typing import Any, Iterator

import pytest

import makegood

E = makegood.electrical
POSITIONS = {"one_way": ("off", "on"), "double_pole": ("off", "on")}


def positions_of(kind: str) -> tuple[str, str]:
    return POSITIONS.get(kind, ("1", "2"))


# ---------------------------------------------------------------------------------------------------------- the simulator


class Graph:
    """Terminals joined by wires, and by contacts in some positions. `ends`: where a conductor may come from, as the library calls it."""

    def __init__(self) -> None:
        self.wires: list[tuple[Any, Any]] = []
        self.contacts: list[tuple[str, int, Any, Any]] = []  # closed while this switch stands at this position
        self.neon: list[tuple[Any, Any]] = []
        self.ends: dict[str, Any] = {}
        self.known: dict[Any, Any] = {}
        self.groups: dict[Any, dict[Any, frozenset[Any]]] = {}

    def copy(self) -> Graph:
        g = Graph()
        g.wires, g.contacts, g.neon, g.ends = [*self.wires], [*self.contacts], [*self.neon], dict(self.ends)
        return g

    def joined(self, edges: list[tuple[Any, Any]], start: Any) -> frozenset[Any]:
        """All that these edges join to a node; remembered for each list of edges."""
        groups = self.groups.get(key := tuple(edges))
        if groups is None:
            groups = self.groups[key] = {}
            for a, b in edges:
                both = groups.get(a, frozenset((a,))) | groups.get(b, frozenset((b,)))
                for x in both:
                    groups[x] = both
        return groups.get(start) or frozenset((start,))

    def metal(self, state: dict[str, int]) -> list[tuple[Any, Any]]:
        return self.wires + [(a, b) for s, p, a, b in self.contacts if state[s] == p]

    def live(self, state: dict[str, int], node: Any) -> bool:
        return "L" in self.joined(self.metal(state), node)


def instances(node: Any) -> list[Any]:
    """Two ends in other circuits may be in one circuit or in two."""
    return [(node, 0), (node, 1)] if node in ("N2", "L2") else [node]


def voltage(g: Graph, state: dict[str, int], a: Any, b: Any, r: dict[str, Any]) -> set[str]:
    seen: set[str] = set()
    edges = g.metal(state)
    low = r["meter"] == "low_impedance"
    for x, y in itertools.product(instances(a)[:1], instances(b)):
        for phases in itertools.product((1, 2), repeat=2) if "L2" in (a, b) else [(1, 1)]:
            sources: dict[Any, int] = {"N": 0, "E": 0, ("N2", 0): 0, ("N2", 1): 0}
            if r["supply"] == "on":
                sources["L"] = 1
            if r["supply"] != "all_isolated":
                sources[("L2", 0)], sources[("L2", 1)] = phases
            gx, gy = g.joined(edges, x), g.joined(edges, y)
            px = next((v for k, v in sources.items() if k in gx), None)
            py = next((v for k, v in sources.items() if k in gy), None)
            if y in gx:
                seen.add("dead")
            elif px is not None and py is not None:
                seen.add("live" if px != py else "dead")
            else:
                seen.add("dead")
                lamps = edges + g.neon
                fed = any(p is None and any(sources.get(k) for k in g.joined(lamps, z)) for p, z in ((px, x), (py, y)))
                if not low:
                    seen |= {"live", "ghost"}
                elif fed:
                    seen.add("ghost")
    return seen


def continuity(g: Graph, state: dict[str, int], a: Any, b: Any, r: dict[str, Any]) -> set[str]:
    seen: set[str] = set()
    metal = g.metal(state)
    # what may or may not be joined beyond the circuit: at the origin, in loads of other circuits, on a bar
    beyond = [("E", "O"), (("N2", 0), "O"), (("N2", 1), "O"), (("L2", 0), ("N2", 0)), (("L2", 1), ("N2", 1)), (("L2", 0), ("L2", 1))]
    if r["neutral"] == "connected":
        beyond.append(("N", "O"))
    for x, y in itertools.product(instances(a)[:1], instances(b)):
        gx, gy = g.joined(metal, x), g.joined(metal, y)
        beyond_both = all(any(k in group for edge in beyond for k in edge) for group in (gx, gy))
        for joined in itertools.product((False, True), repeat=len(beyond)) if beyond_both else [()]:
            edges = metal + [e for e, use in zip(beyond, joined) if use]
            seen.add("continuous" if y in g.joined(edges, x) else "open")
        if r["loads"] == "connected" and y not in gx:
            seen |= {"continuous", "open"}
    return seen


def states(switches: list[dict[str, Any]], positions: dict[str, str]) -> Iterator[dict[str, int]]:
    choices = []
    for s in switches:
        words = positions_of(s["kind"])
        choices.append([words.index(positions[s["name"]])] if s["name"] in positions else [0, 1])
    for some in itertools.product(*choices):
        yield {s["name"]: p for s, p in zip(switches, some)}


def allowed(g: Graph, switches: list[dict[str, Any]], a: Any, b: Any, r: dict[str, Any]) -> set[str]:
    """Everything that a reading may show between two nodes; a position that is not known may be any."""
    key = (a, b, "voltage" in r, *sorted(r["positions"].items()), r.get("supply"), r.get("meter"), r.get("neutral"), r.get("loads"))
    if key not in g.known:
        found: set[str] = set()
        for state in states(switches, r["positions"]):
            found |= (voltage if "voltage" in r else continuity)(g, state, a, b, r)
        g.known[key] = found
    return g.known[key]


MADE: dict[str, list[Graph]] = {}


def graphs(switches: list[dict[str, Any]]) -> list[Graph]:
    """Every way in which these switches may be wired; of two whose ends are joined alike in every state, one. Made once."""
    if (made := MADE.get(repr(switches))) is not None:
        return made
    found = {}
    for g in all_graphs(switches):
        ends = sorted(g.ends)
        alike = tuple(
            (key, frozenset(k for k in ends if g.ends[k] in g.joined(g.metal(state), g.ends[key])), bool(g.neon)) for state in states(switches, {}) for key in ends
        )
        found.setdefault(alike, g)
    return MADE.setdefault(repr(switches), list(found.values()))


def all_graphs(switches: list[dict[str, Any]]) -> list[Graph]:
    """From the terminals of the switches; and what each end is called."""
    base = Graph()
    base.ends = {"permanent_line": "L", "other_line": "L2", "neutral": "N", "other_neutral": "N2", "earth": "E", "unused": "unused"}
    made = [base]
    for s in switches:
        name, kind = s["name"], s["kind"]
        if kind in ("two_way", "intermediate"):
            continue
        nexts = []
        for g in made:
            for closed in (1,) if positions_of(kind)[0] == "off" else (0, 1):
                h = g.copy()
                tail = "" if positions_of(kind)[0] == "off" else f":{closed + 1}"
                poles = (("line", "L"), ("neutral", "N")) if kind.startswith("double") else (("line", "L"),)
                for pole, source in poles:
                    h.contacts.append((name, closed, source, (name, pole)))
                    h.ends[f"switched_{pole}:{name}{tail}"] = (name, pole)
                if s.get("neon"):
                    h.neon.append(("L", (name, "line")))
                    if len(poles) == 2:
                        h.neon.append(((name, "line"), (name, "neutral")))
                nexts.append(h)
        made = nexts
    two_way = [s for s in switches if s["kind"] == "two_way"]
    between = [s for s in switches if s["kind"] == "intermediate"]
    if not two_way:
        return made
    found = []
    for g in made:
        if not between:
            h = g.copy()
            for s in two_way:
                n = s["name"]
                for p in (0, 1):
                    h.contacts.append((n, p, "L", (n, p)))
                    h.ends[f"throw:{n}:{p + 1}"] = (n, p)
                if s.get("neon"):
                    h.neon.append(((n, 0), (n, 1)))
            found.append(h)
        if len(two_way) < 2:
            continue
        flips = list(itertools.product((0, 1), repeat=2 + len(between)))
        for order in itertools.permutations(between):
            for first, last in (two_way, two_way[::-1]):
                for flip in flips:
                    found.append(chain(g, first["name"], last["name"], [s["name"] for s in order], flip, any(s.get("neon") for s in two_way + between)))
        if not between:
            for p, q in itertools.product((0, 1), repeat=2):
                found.append(three_wire(g, two_way[0]["name"], two_way[1]["name"], p, q, any(s.get("neon") for s in two_way)))
    return found


def at_rest(switches: list[tuple[str, int, Any, Any]]) -> dict[str, int]:
    return {s: 0 for s, *_ in switches}


def chain(g: Graph, first: str, last: str, order: list[str], flip: tuple[int, ...], neon: bool) -> Graph:
    h = g.copy()
    for p in (0, 1):
        h.contacts.append((first, p ^ flip[0], "L", ("strap", 0, p)))
        h.contacts.append((last, p ^ flip[1], (last, "common"), ("strap", len(order), p)))
        for k, name in enumerate(order):
            straight = flip[2 + k]
            h.contacts.append((name, straight, ("strap", k, p), ("strap", k + 1, p)))
            h.contacts.append((name, 1 - straight, ("strap", k, p), ("strap", k + 1, 1 - p)))
    if neon:
        h.neon += [(("strap", 0, 0), ("strap", 0, 1))]
    rest = at_rest(h.contacts)
    h.ends[f"two_way_line:{0 if h.live(rest, (last, 'common')) else 1}"] = (last, "common")
    for k in range(len(order) + 1):
        for p in (0, 1):
            number = 1 if h.live(rest, ("strap", k, p)) else 2  # called after the one that is live with every switch at "1"
            h.ends[f"strapper:{first}:{'+'.join(sorted(order[:k]))}:{number}"] = ("strap", k, p)
    return h


def three_wire(g: Graph, first: str, second: str, p: int, q: int, neon: bool) -> Graph:
    h = g.copy()
    for name, toward in ((first, p), (second, q)):  # at this position the common is on the line
        h.contacts.append((name, toward, "common", "L"))
        h.contacts.append((name, 1 - toward, "common", "lamp"))
    if neon:
        h.neon += [("L", "lamp"), ("L", "common"), ("common", "lamp")]
    h.ends[f"three_wire_line:{0 if h.live(at_rest(h.contacts), 'lamp') else 1}"] = "lamp"
    h.ends[f"three_wire_common:{p}{q}"] = "common"
    return h


REFERENCES = {"earth": "E", "board_neutral": "N", "board_line": "L"}


def explained(every: list[Graph], switches: list[dict[str, Any]], conductors: list[str], readings: list[dict[str, Any]]) -> set[tuple[str, ...]]:
    """Brute force: all graphs, all ends for all conductors."""
    found = set()
    for g in every:
        fits = []
        for c in conductors:
            some = []
            for key, node in g.ends.items():
                at = (node, c) if node == "unused" else node
                if all(
                    (r.get("voltage") or r.get("continuity")) in allowed(g, switches, at if r["from"] == c else REFERENCES[r["from"]], at if r["to"] == c else REFERENCES[r["to"]], r)
                    for r in readings
                    if c in (r["from"], r["to"]) and (r["from"] in REFERENCES or r["to"] in REFERENCES)
                ):
                    some.append((key, at))
            fits.append(some)
        pairs = [r for r in readings if r["from"] in conductors and r["to"] in conductors]
        for choice in itertools.product(*fits):
            at = {c: node for c, (_, node) in zip(conductors, choice)}
            if all((r.get("voltage") or r.get("continuity")) in allowed(g, switches, at[r["from"]], at[r["to"]], r) for r in pairs):
                found.add(tuple(key for key, _ in choice))
    return found


# ------------------------------------------------------------------------------------------------------------ random points


def random_switches(rng: random.Random) -> list[dict[str, Any]]:
    some: list[dict[str, Any]] = []
    kind = rng.choice(["none", "one", "one", "pair", "pair", "more", "chain", "alone"])
    if kind in ("one", "more"):
        some += [{"name": f"S{k}", "kind": rng.choice(["one_way", "pull_cord", "double_pole", "double_pole_pull_cord"])} for k in range(1 if kind == "one" else 2)]
    if kind in ("pair", "chain"):
        some += [{"name": "T1", "kind": "two_way"}, {"name": "T2", "kind": "two_way"}]
    if kind == "chain":
        some.append({"name": "I1", "kind": "intermediate"})
        if rng.random() < 0.3:
            some.append({"name": "I2", "kind": "intermediate"})
    if kind == "alone":
        some.append({"name": "T1", "kind": "two_way"})
        if rng.random() < 0.5:
            some.append({"name": "S1", "kind": rng.choice(["one_way", "pull_cord"])})
    for s in some:
        if rng.random() < 0.2:
            s["neon"] = True
    return some


def random_reading(rng: random.Random, conductors: list[str], switches: list[dict[str, Any]]) -> dict[str, Any]:
    positions = {s["name"]: rng.choice(positions_of(s["kind"])) for s in switches if rng.random() < 0.9}
    a = rng.choice(conductors)
    others = [c for c in conductors if c != a]
    if rng.random() < 0.55:
        b = rng.choice(others) if others and rng.random() < 0.35 else "earth"
        r: dict[str, Any] = {"voltage": "", "supply": rng.choice(["on", "on", "on", "isolated", "all_isolated"]), "meter": rng.choice(["low_impedance", "low_impedance", "high_impedance"])}
    else:
        b = rng.choice(others) if others and rng.random() < 0.4 else rng.choice(["earth", "board_neutral", "board_line"])
        r = {"continuity": "", "neutral": rng.choice(["connected", "disconnected"]), "loads": rng.choice(["disconnected", "disconnected", "connected"])}
    ends = (a, b) if rng.random() < 0.7 or b == "earth" else (b, a)
    return {**r, "from": ends[0], "to": ends[1], "positions": positions}


def random_case(rng: random.Random, mistake: float = 0.0) -> tuple[Any, ...]:
    switches = random_switches(rng)
    every = graphs(switches)
    conductors = ["brown", "blue", "grey", "bare"][: rng.choice([1, 2, 2, 3] if len(switches) > 2 else [1, 2, 3, 3, 4])]
    g = rng.choice(every)
    truth = {c: rng.choice(list(g.ends)) for c in conductors}
    nodes = {c: (g.ends[k], c) if k == "unused" else g.ends[k] for c, k in truth.items()} | REFERENCES
    readings = []
    for _ in range(rng.randint(0, 12) if len(conductors) < 3 else rng.randint(len(conductors) + 2, 14)):
        r = random_reading(rng, conductors, switches)
        kind = "voltage" if "voltage" in r else "continuity"
        r[kind] = rng.choice(sorted(allowed(g, switches, nodes[r["from"]], nodes[r["to"]], r)))
        if rng.random() < mistake:
            r[kind] = rng.choice(["live", "dead", "ghost"] if kind == "voltage" else ["continuous", "open"])
        readings.append(r)
    return conductors, switches, readings, tuple(truth[c] for c in conductors), every


def held(seed: int, cases: int, mistake: float = 0.0) -> dict[str, int]:
    rng = random.Random(seed)
    count = {"cases": 0, "wirings": 0, "one wiring": 0, "none": 0, "cut off": 0}
    for _ in range(cases):
        conductors, switches, readings, truth, every = random_case(rng, mistake)
        r = E.switched_feed_logic(conductors, switches, readings, listed_count=10000)
        count["cases"] += 1
        if not r.complete:
            count["cut off"] += 1
            assert r.count == 10000
            continue
        mine = {tuple(w[c] for c in conductors) for w in r.wirings}
        assert len(mine) == r.count == len(r.wirings)
        if not mistake:
            assert truth in mine, (conductors, switches, readings, truth)
        brute = explained(every, switches, conductors, readings)
        assert mine == brute, (conductors, switches, readings, sorted(mine - brute)[:3], sorted(brute - mine)[:3])
        count["wirings"] += len(mine)
        count["one wiring"] += len(mine) == 1
        count["none"] += not mine
        speaks_right(r)
        if not mine:
            conflict_is_irreducible(r, every, switches, conductors, readings)
    return count


def speaks_right(r: Any) -> None:
    """No result says that anything is safe; each names the isolation point, all poles and the proving unit."""
    text = " ".join(r.text).lower()
    assert "safe" not in text
    assert "isolation point: " in text and "all poles: " in text and "before and immediately after" in text
    assert len(r.precautions) == 3 and r.isolation_point


def conflict_is_irreducible(r: Any, every: list[Graph], switches: Any, conductors: Any, readings: Any) -> None:
    some = [readings[int(i) - 1] for i in r.conflict]
    assert some and not explained(every, switches, conductors, some)
    for k in range(len(some)):
        assert explained(every, switches, conductors, some[:k] + some[k + 1 :]), "a reading too many"
    for i in range(len(readings)):
        assert bool(explained(every, switches, conductors, readings[:i] + readings[i + 1 :])) == (i + 1 in r.suspects)


@pytest.mark.parametrize("seed", range(5))
def test_exactly_the_wirings_of_brute_force(seed):
    count = held(seed, 200)
    assert count["none"] == 0 and count["one wiring"] > 2, count
    assert count["cut off"] < 0.2 * count["cases"], count


def test_exactly_those_with_mistaken_readings_too():
    count = held(99, 250, mistake=0.3)
    assert count["none"] > 20, count


# ----------------------------------------------------------------------------------------------------------- the next reading


def test_the_proposed_reading_by_brute_force():
    """Expected number of wirings and expected entropy, from all outcomes of the graph; and that no other listed reading is better."""
    rng = random.Random(3)
    tried = 0
    while tried < 25:
        conductors, switches, readings, _, every = random_case(rng)
        r = E.switched_feed_logic(conductors, switches, readings, listed_count=10000)
        if not r.complete or not 2 <= r.count <= 60 or not r.next_readings:
            continue
        tried += 1
        wirings = [tuple(w[c] for c in conductors) for w in r.wirings]
        before = [n["expected_remaining_count"] for n in r.next_readings]
        assert before == sorted(before) and before[0] < r.count
        for n in r.next_readings[:2]:
            one = {"from": n["from"], "to": n["to"], "positions": n["positions"]}
            if n["kind"] == "continuity":
                one |= {"continuity": "", "neutral": n["neutral"], "loads": "disconnected"}
                words = ["continuous", "open"]
            else:
                # the meter of the readings at hand; without any, the cautious one
                high = not readings or any(x.get("meter") == "high_impedance" for x in readings)
                one |= {"voltage": "", "supply": n["supply"], "meter": "high_impedance" if high else "low_impedance"}
                words = ["live", "dead", "ghost"]
            may = {}
            for w in wirings:
                for g in every:  # any graph that has these ends together
                    if all(k in g.ends for k in w):
                        nodes = {c: (g.ends[k], c) if k == "unused" else g.ends[k] for c, k in zip(conductors, w)} | REFERENCES
                        if all((x.get("voltage") or x.get("continuity")) in allowed(g, switches, nodes[x["from"]], nodes[x["to"]], x) for x in readings):
                            may[w] = allowed(g, switches, nodes[one["from"]], nodes[one["to"]], one)
                            break
            expected = entropy = 0.0
            for word in words:
                q = [1 / len(wirings) / len(may[w]) for w in wirings if word in may[w]]
                if q:
                    expected += sum(q) * len(q)
                    entropy += sum(q) * -sum(x / sum(q) * math.log2(x / sum(q)) for x in q)
            assert n["expected_remaining_count"] == pytest.approx(expected, rel=1e-9)
            assert n["expected_entropy_bits"] == pytest.approx(entropy, rel=1e-9, abs=1e-9)


def test_following_the_proposals_ends_at_the_truth():
    """Reading what is proposed, as the graph answers, comes to wirings that no reading at the point tells apart."""
    rng = random.Random(11)
    for _ in range(25):
        conductors, switches, _, truth, every = random_case(rng)
        g = next(g for g in every if all(k in g.ends for k in truth))
        nodes = {c: (g.ends[k], c) if k == "unused" else g.ends[k] for c, k in zip(conductors, truth)} | REFERENCES
        rest = [{"voltage": "", "from": c, "to": "earth", "supply": s, "meter": "low_impedance", "positions": {}} for c in conductors for s in ("on", "isolated")]
        if switches:
            rest = [{**r, "positions": {s["name"]: positions_of(s["kind"])[p[i]] for i, s in enumerate(switches)}} for r in rest for p in itertools.product((0, 1), repeat=len(switches))]
        readings = []
        for r in rest:
            readings.append({**r, "voltage": "dead" if "dead" in allowed(g, switches, nodes[r["from"]], "E", r) else "live"})
        left = None
        for _ in range(40):
            r = E.switched_feed_logic(conductors, switches, readings, "low_impedance", listed_count=10000)
            assert r.complete and truth in {tuple(w[c] for c in conductors) for w in r.wirings}
            assert left is None or r.count <= left
            left = r.count
            if not r.next_readings:
                break
            n = r.next_readings[0]
            one = {"from": n["from"], "to": n["to"], "positions": n["positions"]}
            one |= {"continuity": "", "neutral": n["neutral"], "loads": "disconnected"} if n["kind"] == "continuity" else {"voltage": "", "supply": n["supply"], "meter": "low_impedance"}
            kind = "continuity" if n["kind"] == "continuity" else "voltage"
            readings.append({**one, kind: rng.choice(sorted(allowed(g, switches, nodes[one["from"]], nodes[one["to"]], one)))})
        assert not r.next_readings or left == 1 or len(readings) > 40


# --------------------------------------------------------------------------------------------------------------- by hand


def read(conductor: str, seen: str, **positions: str) -> dict[str, Any]:
    return {"voltage": seen, "from": conductor, "positions": positions}


def test_two_way_point():
    """Three cores at a two-way plate: one always alternating with the other by T1, and one that follows both switches."""
    readings = []
    for a, b in itertools.product("12", repeat=2):
        readings += [
            read("brown", "live" if (a == b) else "dead", T1=a, T2=b),
            read("grey", "live" if a == "1" else "dead", T1=a, T2=b),
            read("black", "live" if a == "2" else "dead", T1=a, T2=b),
        ]
    r = E.switched_feed_logic(["brown", "grey", "black"], [{"name": k, "kind": "two_way"} for k in ("T1", "T2")], readings, "low_impedance")
    assert r.count == 1
    assert r.wirings[0] == {"brown": "two_way_line:0", "grey": "strapper:T1::1", "black": "strapper:T1::2"}
    assert not r.next_readings


def test_live_with_the_circuit_isolated_is_another_circuit():
    r = E.switched_feed_logic(["blue"], [], [{"voltage": "live", "from": "blue", "supply": "isolated"}], "low_impedance", "circuit 3, way 5")
    assert [w["blue"] for w in r.wirings] == ["other_line"]
    assert "main switch" in r.isolation_point and r.isolation_point.startswith("circuit 3, way 5")
    assert r.text[0].startswith("Stop: live with the supply isolated (reading 1)")
    second_supply = E.switched_feed_logic(["blue"], [], [{"voltage": "live", "from": "blue", "supply": "all_isolated"}], "low_impedance")
    assert second_supply.count == 0 and second_supply.text[0].startswith("Stop: ")
    speaks_right(second_supply)
    assert not any(line.startswith("Stop") for line in E.switched_feed_logic(["blue"], [], [{"voltage": "live", "from": "blue"}]).text)
    clear = E.switched_feed_logic(["blue"], [], [{"continuity": "continuous", "from": "blue", "to": "board_neutral", "neutral": "disconnected"}], isolation_point="way 5")
    assert [w["blue"] for w in clear.wirings] == ["neutral"] and clear.isolation_point == "way 5"


def test_ghosts():
    ghost = [{"voltage": "ghost", "from": "a", "meter": "high_impedance"}]
    assert [w["a"] for w in E.switched_feed_logic(["a"], [], ghost).wirings] == ["unused"]
    # with a low impedance a ghost needs a lamp across a contact
    low = [{"voltage": "ghost", "from": "a", "meter": "low_impedance", "positions": {"S": "off"}}]
    assert E.switched_feed_logic(["a"], [{"name": "S", "kind": "one_way"}], low).count == 0
    assert [w["a"] for w in E.switched_feed_logic(["a"], [{"name": "S", "kind": "one_way", "neon": True}], low).wirings] == ["switched_line:S"]
    # a meter that is not stated is the cautious one: full voltage may be a floating conductor
    assert "unused" in [w["a"] for w in E.switched_feed_logic(["a"], [], [{"voltage": "live", "from": "a"}]).wirings]
    assert any("two-pole tester" in line for line in E.switched_feed_logic(["a"], [], [{"voltage": "live", "from": "a"}]).text)


def test_contradictions_are_a_finding():
    readings = [
        {"voltage": "live", "from": "a", "positions": {"S": "on"}},
        {"voltage": "dead", "from": "a", "positions": {"S": "on"}},
        {"voltage": "dead", "from": "a", "positions": {"S": "off"}},
    ]
    r = E.switched_feed_logic(["a"], [{"name": "S", "kind": "one_way"}], readings, "low_impedance")
    assert not r.explained and r.count == 0 and r.wirings == [] and r.conflict == [1, 2] and r.suspects == [1, 2]
    assert r.text[0].startswith("No listed wiring explains these readings: 1 (")
    speaks_right(r)


def test_what_rules_out_what():
    r = E.switched_feed_logic(["a"], [], [{"voltage": "dead", "from": "a", "meter": "low_impedance"}, {"continuity": "open", "from": "a", "to": "earth", "neutral": "disconnected"}])
    gone = {x["wiring"]: x["by_readings"] for x in r.conductors[0]["ruled_out"]}
    assert gone["permanent line"] == [1] and gone["earth"] == [2]
    assert {w["a"] for w in r.wirings} == {"neutral", "other_neutral", "unused"}
    assert [e["rules_out_count"] for e in r.readings] == [2, 1]  # without the first the two lines would be left too


def test_a_point_without_readings_is_not_an_error():
    r = E.switched_feed_logic(["a", "b"], [], [])
    assert r.count == 36 and r.complete and r.next_readings
    speaks_right(r)
    many = E.switched_feed_logic([f"c{k}" for k in range(8)], [{"name": "S", "kind": "double_pole"}], [])
    assert not many.complete and not many.next_readings and any("too few readings" in line for line in many.text)
    speaks_right(many)


# ---------------------------------------------------------------------------------------------------------------- hostile

S = [{"name": "S", "kind": "one_way"}]


@pytest.mark.parametrize(
    "arguments, said",
    [
        (([], S, []), "1 to 8 conductors"),
        ((["a"] * 2, S, []), "a name of its own"),
        ((["earth"], S, []), "a name of its own"),
        (([""], S, []), "a name of its own"),
        (([5], S, []), "a conductor is a name"),
        (([f"c{k}" for k in range(9)], S, []), "1 to 8"),
        ((["a"], [{"name": f"S{k}", "kind": "one_way"} for k in range(6)], []), "at most 5"),
        ((["a"], [{"name": "S", "kind": "dimmer"}], []), "is not one of"),
        ((["a"], [{"name": "S"}], []), '"kind" is missing'),
        ((["a"], S + S, []), "a name of its own"),
        ((["a"], [{"name": f"T{k}", "kind": "two_way"} for k in range(3)], []), "at most two two-way"),
        ((["a"], [{"name": "I", "kind": "intermediate"}], []), "between two two-way"),
        ((["a"], [{"name": "S", "kind": "one_way", "neon": 1}], []), "true or false"),
        ((["a"], S, [{"from": "a"}]), 'one of "voltage" and "continuity"'),
        ((["a"], S, [{"voltage": "warm", "from": "a"}]), "is not one of"),
        ((["a"], S, [{"voltage": "live", "from": "b"}]), "no conductor"),
        ((["a"], S, [{"voltage": "live", "from": "a", "to": "a"}]), "two different ends"),
        ((["a"], S, [{"continuity": "open", "from": "earth", "to": "board_line"}]), "one end at least"),
        ((["a"], S, [{"voltage": "live", "from": "a", "to": "board_line"}]), "proved"),
        ((["a"], S, [{"voltage": "live", "from": "a", "positions": {"S": "half"}}]), "position of"),
        ((["a"], S, [{"voltage": "live", "from": "a", "positions": {"S": 1}}]), "position of"),
        ((["a"], S, [{"voltage": "live", "from": "a", "positions": {"T": "on"}}]), "no switch"),
        ((["a"], S, [{"voltage": "live", "from": "a", "supply": "maybe"}]), "is not one of"),
        ((["a"], S, [{"voltage": "live", "from": "a", "safe": True}]), 'no argument "safe"'),
        ((["a"], S, [7]), "must be an object"),
        ((["a"], S, [{"voltage": "dead", "from": "a"}] * 201), "at most 200"),
        ((["a"], S, [], "cheap"), "is not one of"),
        (("a", S, []), "must be a list"),
    ],
)
def test_hostile(arguments, said):
    with pytest.raises(makegood.RangeError, match=said):
        E.switched_feed_logic(*arguments)


def main(arguments: list[str]) -> int:
    cases = int(arguments[0]) if arguments else 2000
    for what, mistake in (("readings as the graph gives them", 0.0), ("three readings in ten drawn at random", 0.3)):
        print(f"{what}: {held(1000, cases, mistake)}; every set equal to that of brute force")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
