# SPDX-License-Identifier: MIT
"""Zones of bathrooms against a brute force of its own, equipment in them, cable zones of walls and holes. Run alone with a number of rooms for the figures."""

from __future__ import annotations

import json
import math
import sys
import time
from typing import Any

import numpy as np
import pytest

import makegood
from makegood import setting_out

BOOK = "bs7671:2018+a2"
BATH = {"name": "bath", "kind": "bath", "outline": [[0, 0], [1.7, 0], [1.7, 0.7], [0, 0.7]], "rim_m": 0.55}
ROOM = {"outline": [[0, 0], [4, 0], [4, 3], [0, 3]], "ceiling_m": 2.4, "fixtures": [BATH]}


def room_with(**more: Any) -> dict[str, Any]:
    return {**ROOM, **more}


def zone(p: Any, room: Any = ROOM, book: str = BOOK, **more: Any) -> Any:
    return setting_out.bathroom_zone(p, room, book, **more)


# ---- the shortest string, worked out another way: every wall and partition is a thick bar, the nodes stand round its ends --------------------------

THICK = 1e-4


def gap(a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> np.ndarray:
    """Least distance of segments ab from segment cd, by sampling nothing: ends against segments, 0 where they cross."""

    def to(p: np.ndarray, q: np.ndarray, r: np.ndarray) -> np.ndarray:
        u = r - q
        t = np.clip(((p - q) * u).sum(-1) / np.maximum((u * u).sum(-1), 1e-300), 0, 1)
        return np.hypot(*np.moveaxis(p - (q + t[..., None] * u), -1, 0))

    def side(p: np.ndarray, q: np.ndarray, r: np.ndarray) -> np.ndarray:
        return (q[..., 0] - p[..., 0]) * (r[..., 1] - p[..., 1]) - (q[..., 1] - p[..., 1]) * (r[..., 0] - p[..., 0])

    crossing = (side(a, b, c) * side(a, b, d) < 0) & (side(c, d, a) * side(c, d, b) < 0)
    return np.where(crossing, 0.0, np.minimum.reduce([to(a, c, d), to(b, c, d), to(c, a, b), to(d, a, b)]))


def within(polygon: np.ndarray, p: np.ndarray) -> np.ndarray:
    """Even-odd rule; edges do not matter here, no point lies on one."""
    inside = np.zeros(p.shape[:-1], bool)
    for (x0, y0), (x1, y1) in zip(polygon, np.roll(polygon, -1, axis=0)):
        if y0 != y1:
            cut = (y0 > p[..., 1]) != (y1 > p[..., 1])
            inside ^= cut & (p[..., 0] < x0 + (p[..., 1] - y0) / (y1 - y0) * (x1 - x0))
    return inside


class Brute:
    def __init__(self, outline: Any, partitions: list[Any], target: Any) -> None:
        self.outline = np.array(outline, float)
        self.bars = [*zip(self.outline, np.roll(self.outline, -1, axis=0)), *((np.array(a, float), np.array(b, float)) for a, b in partitions)]
        ends = np.concatenate([np.array([a, b]) for a, b in self.bars])
        angle = np.linspace(0, 2 * math.pi, 17)[:-1]
        ring = 1.2 * THICK / math.cos(math.pi / 16) * np.stack([np.cos(angle), np.sin(angle)], -1)
        nodes = (ends[:, None] + ring).reshape(-1, 2)
        self.nodes = nodes[within(self.outline, nodes) & (self.clear(nodes, nodes) > THICK)]
        target = np.array(target, float)
        if len(target) == 1:
            self.targets = self.near(target[0])
        else:
            feet = []
            for a, b in zip(target, np.roll(target, -1, axis=0)):
                u = b - a
                inward = np.array([-u[1], u[0]]) / np.hypot(*u) * 3 * THICK
                end = 4 * THICK / np.hypot(*u)
                t = np.clip(((self.nodes - a) @ u) / (u @ u), end, 1 - end)
                t = np.concatenate([t, np.linspace(end, 1 - end, max(3, int(np.hypot(*u) / 0.02)))])
                feet.append(a + t[:, None] * u + inward)
            self.targets = np.concatenate(feet)
        self.polygon = target
        self.from_target = self.shortest()

    def clear(self, a: np.ndarray, b: np.ndarray) -> np.ndarray:
        return np.minimum.reduce([gap(a, b, c, d) for c, d in self.bars])

    def near(self, p: Any) -> np.ndarray:
        """The place itself, or places round it where it lies on a wall."""
        p = np.array(p, float)
        if self.clear(p[None], p[None])[0] > THICK:
            return p[None]
        angle = np.linspace(0, 2 * math.pi, 33)[:-1]
        ring = p + 3 * THICK * np.stack([np.cos(angle), np.sin(angle)], -1)
        return ring[within(self.outline, ring) & (self.clear(ring, ring) > THICK)]

    def seen(self, a: np.ndarray, b: np.ndarray) -> np.ndarray:
        """Lengths of straight strings between two lists of places; infinite where a bar stops them."""
        aa, bb = np.broadcast_arrays(a[:, None], b[None])
        length = np.hypot(*np.moveaxis(bb - aa, -1, 0))
        return np.where(self.clear(aa, bb) > THICK, length, np.inf)

    def shortest(self) -> np.ndarray:
        known = self.seen(self.nodes, self.targets).min(axis=1, initial=np.inf)
        ways = self.seen(self.nodes, self.nodes)
        for _ in range(len(self.nodes)):
            better = np.minimum(known, (ways + known[None]).min(axis=1, initial=np.inf))
            if np.array_equal(better, known):
                break
            known = better
        return known

    def string(self, p: Any) -> float:
        if len(self.polygon) > 1 and within(self.polygon, np.array(p, float)):
            return 0.0
        at = self.near(p)
        targets = self.targets
        if len(self.polygon) > 1:  # its own feet too
            feet = []
            for a, b in zip(self.polygon, np.roll(self.polygon, -1, axis=0)):
                u = b - a
                inward = np.array([-u[1], u[0]]) / np.hypot(*u) * 3 * THICK
                end = 4 * THICK / np.hypot(*u)
                t = np.clip(((at - a) @ u) / (u @ u), end, 1 - end)
                feet.append(a + t[:, None] * u + inward)
            targets = np.concatenate([targets, *feet])
        straight = self.seen(at, targets).min(initial=np.inf)
        return float(min(straight, (self.seen(at, self.nodes) + self.from_target[None]).min(initial=np.inf)))


def some_room(rng: np.random.Generator) -> tuple[list[list[float]], list[Any], Any, list[Any]]:
    """A star-shaped plan (mostly concave) or an L, a bath turned anyhow or an outlet, partitions from walls or free, points."""
    while True:
        if rng.random() < 0.3:
            w, h, a, b = rng.uniform(3, 5), rng.uniform(3, 5), rng.uniform(1, 2), rng.uniform(1, 2)
            outline = [[0, 0], [w, 0], [w, b], [a, b], [a, h], [0, h]]
        else:
            n = int(rng.integers(4, 9))
            angle = np.sort(rng.uniform(0, 2 * math.pi, n))
            if np.max(np.diff(np.append(angle, angle[0] + 2 * math.pi))) > 2.6 or np.min(np.diff(np.append(angle, angle[0] + 2 * math.pi))) < 0.15:
                continue
            r = rng.uniform(0.9, 3.0, n)
            outline = np.stack([r * np.cos(angle), r * np.sin(angle)], -1).round(3).tolist()
        plan = np.array(outline)
        walls = list(zip(plan, np.roll(plan, -1, axis=0)))
        low, high = plan.min(0), plan.max(0)

        def free(a: Any, b: Any, others: list[Any], keep: float) -> bool:
            return all(gap(np.array(a)[None], np.array(b)[None], np.array(c), np.array(d))[0] > keep for c, d in others)

        def inside_point() -> np.ndarray:
            while True:
                p = rng.uniform(low, high)
                if within(plan, p[None])[0] and free(p, p, walls, 0.02):
                    return p

        partitions: list[Any] = []
        for _ in range(int(rng.integers(0, 4))):
            for _ in range(20):
                to = inside_point()
                touches: int | None = None
                if rng.random() < 0.6:
                    touches = int(rng.integers(len(walls)))
                    c, d = walls[touches]
                    start = c + rng.uniform(0.1, 0.9) * (d - c)
                else:
                    start = inside_point()
                others = [w for k, w in enumerate(walls) if k != touches] + partitions
                middle = 0.5 * (start + to)
                if np.hypot(*(to - start)) > 0.2 and free(start, to, others, 0.02) and within(plan, middle[None])[0] and free(to, middle, walls, 0.02):
                    partitions.append((start, to))
                    break
        target: Any = None
        for _ in range(200):
            if rng.random() < 0.3:
                target = [inside_point().tolist()]
                if free(target[0], target[0], partitions, 0.02):
                    break
                target = None
                continue
            turn, w, h, c = rng.uniform(0, 2 * math.pi), rng.uniform(0.5, 1.2), rng.uniform(0.4, 0.8), inside_point()
            spin = np.array([[math.cos(turn), -math.sin(turn)], [math.sin(turn), math.cos(turn)]])
            corners = (c + np.array([[-w, -h], [w, -h], [w, h], [-w, h]]) / 2 @ spin.T)
            if within(plan, corners).all() and all(free(corners[k], corners[k - 1], walls + partitions, 0.02) for k in range(4)):
                if not any(within(corners, np.array(e)[None])[0] for p in partitions for e in p):
                    target = corners.tolist()
                    break
        if target is None:
            continue
        points = []
        while len(points) < 6:
            p = inside_point()
            if free(p, p, partitions, 0.01):
                points.append(p.tolist())
        c, d = walls[int(rng.integers(len(walls)))]
        on_wall = c + rng.uniform(0.05, 0.95) * (d - c)
        if free(on_wall, on_wall, partitions, 0.05):
            points.append(on_wall.tolist())
        return outline, partitions, target, points


def as_room(outline: Any, partitions: Any, target: Any) -> dict[str, Any]:
    fixture = {"kind": "shower_without_basin", "outlet": target[0]} if len(target) == 1 else {"kind": "bath", "outline": target, "rim_m": 0.5}
    return {"outline": outline, "fixtures": [fixture], "partitions": [{"from": list(a), "to": list(b)} for a, b in partitions]}


def worst_of(seeds: Any) -> tuple[float, int, int, int]:
    """Largest disagreement, points, points whose string bends, points that are shut out."""
    worst, points, bent, shut = 0.0, 0, 0, 0
    for seed in seeds:
        outline, partitions, target, places = some_room(np.random.default_rng(seed))
        brute = Brute(outline, partitions, target)
        got = [zone([*p, 1.0], as_room(outline, partitions, target)) for p in places]
        for p, g in zip(places, got):
            wanted = brute.string(p)
            points += 1
            if g.string_m is None or math.isinf(wanted):
                assert g.string_m is None and math.isinf(wanted), (seed, p, g.string_m, wanted)
                shut += 1
                continue
            bent += len(g.path) > 2
            if abs(g.string_m - wanted) > 1.5e-3:
                raise AssertionError((seed, p, g.string_m, wanted, g.path))
            worst = max(worst, abs(g.string_m - wanted))
    return worst, points, bent, shut


def test_the_string_is_that_of_a_brute_force():
    worst, points, bent, _ = worst_of(range(30))
    assert points > 170 and bent > 30
    assert worst < 1.5e-3  # bars of 0.2 mm and feet 0.4 mm from corners


@pytest.mark.parametrize("seed", range(10))
def test_the_string_does_not_know_where_the_room_lies(seed):
    rng = np.random.default_rng(1000 + seed)
    outline, partitions, target, points = some_room(rng)
    turn, shift, flip = rng.uniform(0, 6.28), rng.uniform(-20, 20, 2), rng.choice([-1.0, 1.0])
    moved = np.array([[math.cos(turn), -math.sin(turn)], [math.sin(turn), math.cos(turn)]]) @ np.diag([1.0, flip])

    def move(p: Any) -> list[float]:
        return (moved @ np.array(p) + shift).tolist()

    other = as_room([move(p) for p in outline], [(move(a), move(b)) for a, b in partitions], [move(p) for p in target])
    for p in points:
        a, b = zone([*p, 1.0], as_room(outline, partitions, target)), zone([*move(p), 1.0], other)
        assert (a.string_m is None) == (b.string_m is None)
        if a.string_m is not None:
            assert a.string_m == pytest.approx(b.string_m, abs=1e-9)


@pytest.mark.parametrize("seed", range(60))
def test_over_a_low_partition(seed):
    """One low partition in a room without corners: both ways are short enough to write down, the crossing is swept every 0.2 mm."""
    rng = np.random.default_rng(seed)
    top, z = rng.uniform(0.6, 2.2), rng.uniform(0.0, 2.2)
    a, b = rng.uniform([1.75, 0.05], [2.3, 0.4]), rng.uniform([1.75, 0.8], [2.6, 2.9])
    p = rng.uniform([2.0, 0.05], [3.2, 1.6])
    s = np.linspace(0, 1, 20001)[:, None] * (b - a) + a
    side = np.array([[0, 0], [1.7, 0.7]])

    def to_bath(q: np.ndarray) -> np.ndarray:
        return np.hypot(*np.moveaxis(np.maximum(np.maximum(side[0] - q, q - side[1]), 0), -1, 0))

    foot = np.clip(p, *side)
    crossed = gap(p[None], foot[None], a, b)[0] < 1e-9
    wanted = float(to_bath(p[None])[0])
    if crossed and z < top:
        round_ends = min(float(to_bath(e[None])[0]) + np.hypot(*(p - e)) for e in (a, b))
        # past an end the string also bends nowhere else: from the end straight to the bath, which lies to one side of the partition or is seen past it
        over = float((to_bath(s) + np.sqrt(((s - p) ** 2).sum(-1) + (top - z) ** 2)).min())
        feet = [e for e in np.linspace(0, 1, 4001)[:, None] * [[1.7, 0.0]] + [[0.0, 0.7]]] + [e for e in np.linspace(0, 1, 2001)[:, None] * [[0.0, 0.7]] + [[1.7, 0.0]]]
        feet = np.array(feet)
        straight = np.where(gap(np.broadcast_to(p, feet.shape), feet, a, b) > 0, np.hypot(*(feet - p).T), np.inf).min()
        wanted = min(round_ends, over, float(straight))
    r = zone([*p, z], room_with(partitions=[{"name": "screen", "from": a.tolist(), "to": b.tolist(), "top_m": top}]))
    assert r.string_m == pytest.approx(wanted, abs=2e-4)
    if r.fixtures[0]["passes"]:
        assert r.fixtures[0]["passes"] == 'over "screen"'
        legs = np.diff(np.array(r.path), axis=0)
        assert np.sqrt((legs**2).sum(-1)).sum() == pytest.approx(r.string_m, abs=1e-9)


@pytest.mark.parametrize("seed", range(5))
def test_over_a_low_partition_beside_full_ones(seed):
    """The same brute force for both legs, at 150 places of the low partition's top; the point lies lower than that."""
    rng = np.random.default_rng(500 + seed)
    outline = [[0, 0], [4, 0], [4, 3], [0, 3]]
    low = (np.array([2.0, 0.0]), np.array([rng.uniform(1.9, 2.2), rng.uniform(1.5, 2.9)]))
    full = [((1.8, 3.0), (1.8, rng.uniform(0.3, 1.2))), ((2.6, 0.0), (2.6, rng.uniform(0.3, 1.6)))]
    top, z, p = rng.uniform(1.0, 2.0), rng.uniform(0.3, 0.9), [rng.uniform(2.7, 3.2), rng.uniform(0.2, 1.5)]
    to_bath, to_point = Brute(outline, full, BATH["outline"]), Brute(outline, full, [p])
    around = Brute(outline, [low, *full], BATH["outline"]).string(p)
    over = min(to_bath.string(q) + math.hypot(to_point.string(q), top - z) for q in np.linspace(0.001, 1, 150)[:, None] * (low[1] - low[0]) + low[0])
    partitions = [{"name": "low", "from": low[0].tolist(), "to": low[1].tolist(), "top_m": top}, *({"from": list(a), "to": list(b)} for a, b in full)]
    r = zone([*p, z], {"outline": outline, "fixtures": [BATH], "partitions": partitions})
    assert r.string_m == pytest.approx(min(around, over), abs=1.5e-3)
    assert bool(r.fixtures[0]["passes"]) == (over < around)


def test_under_a_screen_with_a_gap():
    screen = {"name": "glass", "from": [1.7, 0], "to": [1.7, 1.5], "bottom_m": 0.6}
    assert zone([1.9, 0.35, 0.5], room_with(partitions=[screen])).string_m == pytest.approx(0.2)
    r = zone([1.9, 0.35, 0.75], room_with(partitions=[screen]))
    assert r.string_m == pytest.approx(math.hypot(0.2, 0.15), abs=1e-6) and r.fixtures[0]["passes"] == 'under "glass"'


ORDER = {"0": 0, "1": 1, "2": 2, "outside": 3}


@pytest.mark.parametrize("seed", range(40))
def test_zones_follow_each_other_along_a_ray(seed):
    rng = np.random.default_rng(seed)
    turn, height = rng.uniform(0, 2 * math.pi), rng.uniform(0.6, 2.2)
    bath = {"name": "bath", "kind": "bath", "outline": [[-0.85, -0.35], [0.85, -0.35], [0.85, 0.35], [-0.85, 0.35]], "rim_m": 0.5}
    fixture = bath if seed % 2 else {"name": "rose", "kind": "shower_without_basin", "outlet": [0, 0]}
    room = {"outline": [[-4, -4], [4, -4], [4, 4], [-4, 4]], "fixtures": [fixture]}
    r = setting_out.bathroom_zones([[t * math.cos(turn), t * math.sin(turn), height] for t in np.linspace(0, 3.5, 300)], room, BOOK)
    numbers = [ORDER[z] for z in r.zone]
    assert numbers == sorted(numbers) and set(r.zone) == ({"1", "2", "outside"} if seed % 2 else {"1", "outside"})
    assert all(b >= a - 1e-12 for a, b in zip(r.from_zone_1_m, r.from_zone_1_m[1:]))
    one = [zone([t * math.cos(turn), t * math.sin(turn), height], room).zone for t in np.linspace(0, 3.5, 300)[::37]]
    assert one == r.zone[::37]


def test_heights_and_edges():
    assert zone([0.5, 0.3, 2.25]).zone == "1"
    assert zone([0.5, 0.3, 2.2501]).zone == "outside"
    assert zone([2.3, 0.35, 2.25]).zone == "2"
    assert zone([2.3001, 0.35, 1.0]).zone == "outside"
    assert zone([0.5, 0.3, 0.55]).zone == "0" and zone([0.5, 0.3, 0.56]).zone == "1"
    tall = room_with(fixtures=[{**BATH, "outlet_height_m": 2.35}])
    assert zone([0.5, 0.3, 2.3], tall).zone == "1" and zone([2.0, 0.3, 2.3], tall).zone == "2"
    raised = {**tall, "floor_m": 1.0, "ceiling_m": 3.4}
    assert zone([0.5, 0.3, 3.3], raised).zone == "1"
    under = {**BATH, "bottom_m": 0.2}
    assert zone([0.5, 0.3, 0.1], room_with(fixtures=[under])).zone == "1"
    assert zone([0.5, 0.3, 0.1], room_with(fixtures=[{**under, "under_needs_tool": True}])).zone == "outside"
    rose = room_with(fixtures=[{"kind": "shower_without_basin", "outlet": [0, 1.5], "outlet_height_m": 2.1}])
    assert [zone([x, 1.5, h], rose).zone for x, h in ((0.5, 0.1), (0.5, 0.11), (1.2, 1.0), (1.201, 1.0), (1.0, 2.3))] == ["0", "1", "1", "outside", "outside"]
    assert zone([0.5, 0.3, 2.35], room_with(fixtures=[{**BATH, "bottom_m": 0.15}]), "nfc15100:2015").zone == "1"
    assert zone([0.5, 0.3, 2.35], room_with(fixtures=[{**BATH, "bottom_m": 0.15}])).zone == "outside"


def test_screens_stop_the_string_at_the_edge_where_they_stand():
    screen = {"name": "screen", "from": [1.7, 0], "to": [1.7, 0.7]}
    shut = room_with(partitions=[screen])
    r = zone([1.8, 0.1, 1.0], shut)
    assert r.string_m == pytest.approx(math.hypot(0.1, 0.6)) and len(r.path) >= 2
    assert zone([1.8, 0.0, 1.0], shut).string_m == pytest.approx(math.hypot(0.1, 0.7))  # on the same wall, past the joint
    assert zone([1.8, 0.1, 1.0], room_with(partitions=[{**screen, "from": [1.7, 0.0008]}])).string_m == pytest.approx(r.string_m, abs=1e-3)  # joined within 1 mm
    assert zone([1.8, 0.1, 1.0], room_with(partitions=[{**screen, "from": [1.7, 0.05]}])).string_m == pytest.approx(0.1, abs=0.02)  # a gap of 50 mm
    cubicle = room_with(partitions=[screen, {"name": "door", "kind": "door", "from": [1.7, 0.7], "to": [0, 0.7]}])
    shut_out = zone([1.8, 0.1, 1.0], cubicle)
    assert shut_out.zone == "outside" and shut_out.string_m is None and "shut the place out" in " ".join(shut_out.text)
    assert zone([1.8, 0.1, 1.0], cubicle, "nfc15100:2015").string_m == pytest.approx(r.string_m)  # there a door limits nothing
    assert zone([1.8, 0.1, 1.0], room_with(partitions=[{**screen, "kind": "curtain"}])).string_m == pytest.approx(0.1)
    low = room_with(partitions=[{**screen, "to": [1.7, 1.5], "top_m": 1.2}])
    assert zone([1.8, 0.1, 1.0], low).zone == "2" and zone([1.8, 0.1, 1.0], low, "nfc15100:2015").string_m == pytest.approx(0.1)


def test_sloping_ceilings_end_the_room():
    sloping = room_with(slopes=[[[0, 0, 1.2], [4, 0, 1.2], [0, 3, 4.2]]])
    assert zone([1.9, 0.5, 1.6], sloping).ceiling_m == pytest.approx(1.7)
    assert zone([1.9, 0.5, 1.6], sloping).zone == "2"
    with pytest.raises(makegood.RangeError, match="above the ceiling, which is 1.7 m there"):
        zone([1.9, 0.5, 1.8], sloping)
    assert zone([1.9, 2.9, 2.3], sloping).ceiling_m == pytest.approx(2.4)


@pytest.mark.parametrize("d", [0.55, 0.59, 0.6, 0.605, 0.64])
def test_the_tape_is_believed_as_far_as_it_goes(d):
    """Against simulated tapes: a normal error of one string and of one height."""
    rng = np.random.default_rng(7)
    height, tape = 2.24, 0.02
    r = zone([1.7 + d, 0.35, height], tape_m=tape)
    u = tape / math.sqrt(3)
    n = 400_000
    held = (d + rng.normal(0, u, n) <= 0.6) & (height + rng.normal(0, u, n) <= 2.25)
    assert r.probabilities["zone_2"] == pytest.approx(held.mean(), abs=0.004)
    assert r.zone == ("2" if d <= 0.6 else "outside")
    assert r.zone_doubtful == (max(held.mean(), 1 - held.mean()) < 0.95) and r.strictest_zone == ("2" if held.mean() > 0.05 else "outside")
    assert sum(r.probabilities.values()) == pytest.approx(1)


def test_the_tape_that_nobody_described():
    r = zone([2.29, 0.35, 1.0])
    assert r.zone_doubtful and r.assumed and r.tape_m == pytest.approx(max(0.01, 0.02 * 0.59)) and any("cannot tell" in t for t in r.text)
    exact = zone([2.29, 0.35, 1.0], tape_m=0)
    assert exact.zone == "2" and not exact.zone_doubtful and exact.probability == 1 and not exact.assumed
    wall = zone([0.5, 0.0, 1.0])
    assert wall.zone == "1" and not wall.zone_doubtful  # on the wall over the bath: that edge is no edge of the zone


def test_editions():
    old = zone([3.5, 0.35, 1.0], book="bs7671:2001")
    assert old.zone == "3" and old.probabilities["zone_3"] > 0.99
    assert zone([3.5, 0.35, 1.0]).zone == "outside" and zone([3.5, 0.35, 1.0], book="bs7671:2008").zone == "outside"
    assert (zone([1, 1, 1], book="bs7671:2008").limits["socket_distance_m"], zone([1, 1, 1]).limits["socket_distance_m"], zone([1, 1, 1], book="iec60364").limits["socket_distance_m"]) == (3.0, 2.5, None)
    none = zone([1, 1, 1], book="common-practice")
    assert none.zone == "no rule in book" and none.missing and not none.zone_doubtful
    rose = room_with(fixtures=[{"kind": "shower_without_basin", "outlet": [0, 1.5]}])
    assert zone([1, 1, 1], rose, "bs7671:2001").zone == "no rule in book"
    assert zone([1.9, 0.35, 1.0], book="bs7671:2018+a2,england-adp-2013").notifiable == "yes"
    assert zone([3.9, 0.35, 1.0], book="bs7671:2018+a2,england-adp-2013").notifiable == "no"
    assert zone([3.9, 0.35, 1.0]).special_location is None


def test_two_fixtures_and_a_thousand_points():
    two = room_with(fixtures=[BATH, {"name": "rose", "kind": "shower_without_basin", "outlet": [4, 2]}])
    assert zone([3.2, 2, 1.0], two).fixture == "rose" and zone([1.8, 0.5, 1.0], two).fixture == "bath"
    rng = np.random.default_rng(3)
    points = rng.uniform([0, 0, 0], [4, 3, 2.4], (1000, 3))
    started = time.perf_counter()
    r = setting_out.bathroom_zones(points, two, BOOK)
    assert time.perf_counter() - started < 2.0
    assert len(r.zone) == 1000 and set(r.zone) == {"0", "1", "2", "outside"}
    for k in range(0, 1000, 97):
        one = zone(points[k].tolist(), two)
        assert (one.zone, one.probability, one.string_m) == (r.zone[k], r.probability[k], r.string_m[k])


def test_worked_steps_add_up():
    wall = {"name": "wall", "from": [1.7, 0], "to": [1.7, 1.1]}
    r = zone([1.9, 0.9, 1.0], room_with(partitions=[wall]))
    assert r.string_m == pytest.approx(0.4 + math.hypot(0.2, 0.2))
    first, second = r.steps
    assert first["substituted"].startswith("0.4 m + 0.283 m") and first["result"] == "0.683 m"
    assert second["value"] == pytest.approx(0.6 - r.string_m)
    assert r.path[0][:2] == [1.7, 0.7] and r.path[-1] == [1.9, 0.9, 1.0]


def test_remark_on_a_bath_drawn_off_its_wall():
    off = {**BATH, "outline": [[0, 0.02], [1.7, 0.02], [1.7, 0.72], [0, 0.72]]}
    assert any("off a wall" in t for t in zone([1, 1, 1], room_with(fixtures=[off])).text)
    assert not any("off a wall" in t for t in zone([1, 1, 1]).text)


@pytest.mark.parametrize(
    "room, words",
    [
        (room_with(outline=[[0, 0], [4, 0], [0, 3], [4, 3]]), "edge 2 from (4, 0) to (0, 3) and edge 4 from (4, 3) to (0, 0) cross or touch"),
        (room_with(outline=[[0, 0], [4, 0], [4, 3], [4, 1], [0, 3]]), "lie on each other"),
        (room_with(outline=[[0, 0], [4, 0], [2, 0]]), "lie on each other"),
        (room_with(outline=[[0, 0], [4, 0]]), "2 corners; at least 3"),
        (room_with(outline=[[0, 0], [4000, 0], [4000, 3000]]), "if it was in mm, write 4 m"),
        (room_with(outline=[[0, 0], [4, 0], [4, 0.00001], [0, 0.00001]]), "shorter than 1 mm"),
        (room_with(fixtures=[{**BATH, "outline": [[0, 0], [4.5, 0], [4.5, 0.7], [0, 0.7]]}]), 'fixture "bath": (4.5, 0) lies outside the room, 0.5 m'),
        (room_with(fixtures=[{**BATH, "outline": [[0, 0], [1.7, 0.7], [1.7, 0], [0, 0.7]]}]), 'fixture "bath": edge'),
        (room_with(fixtures=[{"kind": "bath", "outline": BATH["outline"]}]), "rim_m is missing"),
        (room_with(fixtures=[{**BATH, "rim_m": 550}]), "if it was in mm, write 0.55 m"),
        (room_with(fixtures=[{**BATH, "bottom_m": 0.9}]), "above its rim"),
        (room_with(fixtures=[{"name": "rose", "kind": "shower_without_basin", "outlet": [5, 1]}]), 'fixture "rose": outlet: (5, 1) lies outside the room'),
        (room_with(fixtures=[]), "at least one bath or shower"),
        (room_with(fixtures=[{**BATH, "kind": "pool"}]), 'is not one of "bath", "shower_tray", "shower_without_basin"'),
        (room_with(partitions=[{"name": "a", "from": [2, 1], "to": [3, 2]}, {"name": "b", "from": [2, 2], "to": [3, 1]}]), 'partitions "a" and "b" cross'),
        (room_with(partitions=[{"name": "a", "from": [2, 1], "to": [5, 2]}]), 'partition "a": (5, 2) lies outside the room'),
        (room_with(partitions=[{"name": "a", "from": [2, 1], "to": [2, 1]}]), 'partition "a" is shorter than 1 mm'),
        (room_with(partitions=[{"name": "a", "from": [2, 1], "to": [3, 1], "top_m": 0.5, "bottom_m": 0.5}]), "is not above bottom_m"),
        (room_with(slopes=[[[0, 0, 1], [1, 0, 1], [2, 0, 1]]]), "lie on one line"),
        (room_with(door="left"), 'no argument "door"'),
    ],
)
def test_bad_rooms_say_which_part_is_to_blame(room, words):
    with pytest.raises(ValueError) as e:
        zone([2, 2, 1], room)
    assert words in str(e.value) and str(e.value).startswith("bathroom_zone")


def test_a_partition_through_the_notch_of_an_l_is_refused():
    ell = room_with(outline=[[0, 0], [4, 0], [4, 1], [2, 1], [2, 3], [0, 3]], partitions=[{"name": "a", "from": [3, 0.5], "to": [1, 2.5]}])
    with pytest.raises(ValueError, match='partition "a" crosses edge'):
        zone([1, 1, 1], ell)


@pytest.mark.parametrize(
    "point, words",
    [([5, 1, 1], "point (5, 1) lies outside the room, 1 m from its outline"), ([1, 1, 2.5], "above the ceiling"), ([1, 1, -0.1], "below the floor"), ([1900, 350, 1200], "if it was in mm, write 1.9 m"), ([1, 1], "must be"), ([1, 1, float("nan")], "")],
)
def test_bad_points(point, words):
    with pytest.raises(ValueError) as e:
        zone(point)
    assert words in str(e.value)


def test_a_point_of_many_is_named():
    with pytest.raises(ValueError, match=r"points\[1\] \(9, 1\) lies outside the room"):
        setting_out.bathroom_zones([[1, 1, 1], [9, 1, 1]], ROOM, BOOK)


# ---- equipment ------------------------------------------------------------------------------------------------------------------

PROVED = {"ip": "IPX4", "fixed": True, "maker_suits_zone": True, "residual_current_ma": 30, "supplementary_bonding": True}


def judged(where: Any, book: str = BOOK, **e: Any) -> Any:
    return setting_out.check_equipment_in_zone({**PROVED, **e}, where, book)


def item(r: Any, name: str) -> Any:
    return next(f for f in r.findings if f["item"] == name)


@pytest.mark.parametrize(
    "where, equipment, outcome, reason",
    [
        ("1", {"kind": "fan"}, "pass", ""),
        ("1", {"kind": "fan", "ip": "IP24"}, "pass", ""),
        ("1", {"kind": "fan", "ip": "IP21"}, "fail", ""),
        ("1", {"kind": "fan", "ip": "IPX7"}, "pass", ""),
        ("1", {"kind": "fan", "ip": ""}, "undecided", "needs maker's figure"),
        ("1", {"kind": "fan", "ip": "IP2X"}, "undecided", "needs maker's figure"),
        ("1", {"kind": "fan", "maker_suits_zone": None}, "undecided", "needs maker's figure"),
        ("1", {"kind": "fan", "fixed": False}, "fail", ""),
        ("1", {"kind": "fan", "water_jets": True}, "fail", ""),
        ("1", {"kind": "fan", "water_jets": True, "ip": "IPX5"}, "pass", ""),
        ("1", {"kind": "fan", "water_jets": True, "ip": "IPX7"}, "undecided", "needs maker's figure"),
        ("1", {"kind": "fan", "water_jets": True, "ip": "IPX5/IPX7"}, "pass", ""),
        ("0", {"kind": "luminaire"}, "fail", ""),
        ("0", {"kind": "luminaire", "system": "selv", "voltage_v": 12, "ip": "IPX7", "source_outside": True}, "pass", ""),
        ("0", {"kind": "luminaire", "system": "selv", "voltage_v": 12, "ip": "IPX6", "source_outside": True}, "fail", ""),
        ("0", {"kind": "luminaire", "system": "selv", "voltage_v": 24, "ip": "IPX7", "source_outside": True}, "fail", ""),
        ("0", {"kind": "luminaire", "system": "selv", "voltage_v": 24, "current": "dc", "ip": "IPX7", "source_outside": True}, "pass", ""),
        ("0", {"kind": "luminaire", "system": "selv", "ip": "IPX7", "source_outside": True}, "undecided", "not measured"),
        ("0", {"kind": "luminaire", "system": "selv", "voltage_v": 12, "ip": "IPX7", "source_outside": False}, "fail", ""),
        ("1", {"kind": "switch"}, "fail", ""),
        ("1", {"kind": "switch", "system": "selv", "voltage_v": 12, "source_outside": True}, "pass", ""),
        ("1", {"kind": "switch", "system": "selv", "voltage_v": 24, "source_outside": True}, "fail", ""),
        ("1", {"kind": "pull_cord"}, "pass", ""),
        ("2", {"kind": "switch"}, "fail", ""),
        ("outside", {"kind": "switch", "ip": ""}, "pass", ""),
        ("2", {"kind": "socket"}, "fail", ""),
        ("2", {"kind": "shaver_supply", "ip": "IP20", "direct_spray": False}, "pass", ""),
        ("2", {"kind": "shaver_supply", "direct_spray": True}, "fail", ""),
        ("2", {"kind": "shaver_supply", "direct_spray": None}, "undecided", "not measured"),
        ("2", {"kind": "mirror", "ip": "IP44"}, "pass", ""),
        ("1", {"kind": "mirror", "ip": "IP44"}, "fail", ""),
        ("2", {"kind": "towel_rail", "residual_current_ma": 100}, "fail", ""),
        ("2", {"kind": "towel_rail", "residual_current_ma": 0}, "fail", ""),
        ("2", {"kind": "towel_rail", "residual_current_ma": None}, "undecided", "not measured"),
        ("2", {"kind": "junction_box"}, "pass", ""),
        ("1", {"kind": "junction_box"}, "fail", ""),
        ("outside", {"kind": "floor_heating", "earthed_grid": True}, "pass", ""),
        ("1", {"kind": "floor_heating", "earthed_grid": False}, "fail", ""),
        ("1", {"kind": "floor_heating"}, "undecided", "not measured"),
        ("2", {"kind": "fan", "supplementary_bonding": False, "disconnection_proved": True, "rcd_on_all_circuits": True, "main_bonding_proved": True}, "pass", ""),
        ("2", {"kind": "fan", "supplementary_bonding": False, "disconnection_proved": True, "rcd_on_all_circuits": False, "main_bonding_proved": True}, "fail", ""),
        ("2", {"kind": "fan", "supplementary_bonding": None}, "undecided", "precondition missing"),
    ],
)
def test_equipment(where, equipment, outcome, reason):
    r = judged(where, **equipment)
    assert (r.outcome, r.reason) == (outcome, reason), r.findings


def test_editions_differ():
    free = {"kind": "fan", "supplementary_bonding": False, "disconnection_proved": True, "rcd_on_all_circuits": True, "main_bonding_proved": True}
    assert judged("2", "iec60364", **free).outcome == "fail"  # only named countries leave it out
    assert judged("2", "bs7671:2001", kind="fan").reason == "no rule in book"
    assert judged("1", "iec60364", kind="junction_box").outcome == "pass"
    assert judged("1", "dinvde0100-701:2008", kind="luminaire").outcome == "fail"


@pytest.mark.parametrize("x, new, old", [(4.15, "fail", "fail"), (4.4, "pass", "fail"), (4.8, "pass", "pass")])
def test_sockets_keep_their_distance_from_zone_1(x, new, old):
    wide = room_with(outline=[[0, 0], [6, 0], [6, 3], [0, 3]])
    for book, outcome in ((BOOK, new), ("bs7671:2008", old)):
        where = zone([x, 0.35, 0.4], wide, book, tape_m=0.01).to_dict()
        r = judged(where, book, kind="socket")
        assert r.outcome == outcome and item(r, "distance")["value"] == pytest.approx(x - 1.7)
    assert judged("outside", kind="socket").reason == "not measured"
    assert judged(zone([4.2, 0.35, 0.4], wide, tape_m=0.02).to_dict(), kind="socket").reason == "straddles limit"


def test_sockets_that_no_string_reaches():
    wall = {"name": "wall", "from": [2.5, 0], "to": [2.5, 3]}
    where = zone([3, 1, 0.4], room_with(partitions=[wall])).to_dict()
    assert judged(where, kind="socket").outcome == "pass"


def test_a_doubtful_zone_is_judged_by_the_stricter():
    where = zone([2.304, 0.35, 1.0], tape_m=0.02).to_dict()
    assert where["zone"] == "outside" and where["zone_doubtful"]
    r = judged(where, kind="switch")
    assert r.judged_as == "2" and r.outcome == "fail" and any("cannot tell" in t for t in r.text)
    assert judged({**where, "zone_doubtful": False}, kind="switch").outcome == "pass"


@pytest.mark.parametrize(
    "equipment, where, words",
    [
        ({"kind": "toaster"}, "1", 'kind = "toaster" is not one of'),
        ({"kind": "fan", "ip": "X4"}, "1", "is no IP code"),
        ({"kind": "fan", "ip": "IP77"}, "1", "is no IP code"),
        ({"kind": "fan"}, "4", 'zone = "4" is not one of "0", "1", "2", "3", "outside"'),
        ({"kind": "fan", "system": "selv", "voltage_v": 230}, "1", "above what SELV or PELV can be"),
        ({"kind": "fan", "residual_current_ma": -1}, "1", "residual_current_ma"),
        ({"kind": "fan", "fixed": "yes"}, "1", '"fixed" must be true or false'),
        ({"kind": "fan", "earthed": True}, "1", 'no argument "earthed"'),
    ],
)
def test_bad_equipment(equipment, where, words):
    with pytest.raises(ValueError) as e:
        judged(where, **equipment)
    assert words in str(e.value)


# ---- cables in walls ------------------------------------------------------------------------------------------------------------

WALL = {"width_mm": 3000, "height_mm": 2400, "thickness_mm": 150}
SWITCH = {"name": "switch", "x_mm": 1500, "y_mm": 1200, "width_mm": 86, "height_mm": 86}


def box(s: Any) -> tuple[float, float, float, float]:
    return s["x_mm"], s["y_mm"], s["width_mm"], s["height_mm"]


def test_strips_of_a_wall():
    r = setting_out.cable_zones(WALL, [SWITCH], BOOK)
    assert [(s["rule"], *box(s)) for s in r.strips] == [
        ("top", 0, 2250, 3000, 150),
        ("left_corner", 0, 0, 150, 2400),
        ("right_corner", 2850, 0, 150, 2400),
        ("accessory_vertical", 1457, 0, 86, 2400),
        ("accessory_horizontal", 0, 1157, 3000, 86),
    ]
    assert r.depth_mm == 50 and r.residual_current_ma == 30 and not r.far_side_counts and "a choice" in " ".join(r.text)
    wide = setting_out.cable_zones(WALL, [SWITCH], BOOK, 25)
    assert box(wide.strips[3]) == (1432, 0, 136, 2400)
    bare = setting_out.cable_zones({**WALL, "left": "external", "right": "none", "ceiling": False}, [], BOOK)
    assert not bare.strips and "External corners" in " ".join(bare.text)


def test_thin_walls_carry_the_zones_of_the_other_face():
    far = {**SWITCH, "name": "behind", "x_mm": 600, "side": "far"}
    assert not any(s["side"] == "far" for s in setting_out.cable_zones(WALL, [SWITCH, far], BOOK).strips)
    thin = setting_out.cable_zones({**WALL, "thickness_mm": 100}, [SWITCH, far], BOOK)
    assert [s["accessory"] for s in thin.strips if s["side"] == "far"] == ["behind", "behind"] and not thin.far_side_unknown
    assert setting_out.cable_zones({**WALL, "thickness_mm": 100}, [SWITCH], BOOK).far_side_unknown
    assert not setting_out.cable_zones({**WALL, "thickness_mm": 100, "far_side_seen": True}, [SWITCH], BOOK).far_side_unknown
    assert setting_out.cable_zones({"width_mm": 3000, "height_mm": 2400}, [SWITCH], BOOK).far_side_unknown


def test_installation_zones_abroad():
    r = setting_out.cable_zones({**WALL, "right": "external"}, [SWITCH], "din18015-3")
    assert [(s["rule"], *box(s)) for s in r.strips] == [
        ("top", 0, 1950, 3000, 300),
        ("bottom", 0, 150, 3000, 300),
        ("left_corner", 100, 0, 200, 2400),
        ("right_corner", 2700, 0, 200, 2400),
        ("accessory_vertical", 1457, 0, 86, 2400),
    ]
    assert setting_out.cable_zones(WALL, [], "common-practice").missing


def hole(x: float, y: float, detector: Any = None, wall: Any = WALL, accessories: Any = (SWITCH,), book: str = BOOK, **more: Any) -> Any:
    h = {"x_mm": x, "y_mm": y, "diameter_mm": 8, "depth_mm": 45, **more}
    return setting_out.check_hole_outside_cable_zones(h, wall, list(accessories), book, detector)


DEAD = {"reading": "nothing_found", "proved_dead": True}


def test_the_rule_alone_proves_no_hole_clear():
    r = hole(800, 800)
    assert r.rule_outcome == "pass" and r.outcome == "undecided" and r.reason == "precondition missing"
    assert any(f.startswith("not proved clear: isolate and detect") for f in r.findings)
    for detector in ({"reading": "not_used", "proved_dead": True}, {"reading": "nothing_found"}, {"reading": "nothing_found", "proved_dead": False}):
        r = hole(800, 800, detector)
        assert r.outcome == "undecided" and any("not proved clear" in f for f in r.findings)
    r = hole(800, 800, DEAD)
    assert r.outcome == "pass" and not r.findings and "Neither proves that nothing is there." in " ".join(r.text)
    assert hole(800, 800, {"reading": "found", "proved_dead": True}).outcome == "fail"
    assert hole(800, 1200, DEAD).outcome == "fail"


def test_tolerance_and_depth_of_a_hole():
    assert hole(1453, 800, DEAD).clearance_mm == pytest.approx(0) and hole(1453, 800, DEAD).rule_outcome == "pass"
    assert hole(1453, 800, DEAD, tolerance_mm=1).rule_outcome == "fail"
    assert hole(800, 800, DEAD, depth_mm=50).outcome == "pass"
    deep = hole(800, 800, DEAD, depth_mm=50, depth_tolerance_mm=3)
    assert deep.outcome == "undecided" and deep.reason == "outside validity" and any("below 50 mm cables may run anywhere" in f for f in deep.findings)
    assert hole(800, 800, DEAD, wall={**WALL, "thickness_mm": 90}).reason == "precondition missing"
    assert hole(800, 800, DEAD, book="common-practice").reason == "no rule in book"


@pytest.mark.parametrize("seed", range(30))
def test_clearance_against_points_of_the_circle(seed):
    rng = np.random.default_rng(seed)
    accessories = [{"x_mm": float(rng.integers(100, 2900)), "y_mm": float(rng.integers(100, 2300)), "width_mm": 86.0, "height_mm": float(rng.choice([86, 146]))} for _ in range(3)]
    x, y, d, t = float(rng.integers(20, 2980)), float(rng.integers(20, 2380)), float(rng.integers(4, 20)), float(rng.integers(0, 5))
    r = hole(x, y, DEAD, accessories=accessories, diameter_mm=d, tolerance_mm=t)
    a = np.linspace(0, 2 * math.pi, 721)
    inside = set()
    for k, s in enumerate(r.strips):
        for radius in (0.0, 0.5 * (d / 2 + t), (d / 2 + t) * (1 - 1e-12)):
            px, py = x + radius * np.cos(a), y + radius * np.sin(a)
            if ((px > s["x_mm"]) & (px < s["x_mm"] + s["width_mm"]) & (py > s["y_mm"]) & (py < s["y_mm"] + s["height_mm"])).any():
                inside.add(k)
    assert [r.strips[k] for k in sorted(inside)] == r.inside and (r.rule_outcome == "fail") == bool(inside) and (r.clearance_mm < 0) == bool(inside)


def test_cautions_of_a_hole():
    said = " ".join(hole(800, 800).cautions)
    for word in ("Isolate", "Pipes", "waterproof", "heated", "asbestos", "hollow", "Metal"):
        assert word in said
    known = setting_out.check_hole_outside_cable_zones({"x_mm": 800, "y_mm": 800, "diameter_mm": 8, "depth_mm": 40}, WALL, [], BOOK, None, None, {"old_board": True, "membrane": False, "pipes": False, "heated": False, "partition": False, "metal": False})
    assert known.cautions == ["Isolate and prove dead what may be in the wall before drilling.", "The board may hold asbestos: do not drill; have it sampled first."]


@pytest.mark.parametrize(
    "call, words",
    [
        (lambda: hole(4000, 800), "is not on the wall"),
        (lambda: hole(800, 800, diameter_mm=0), "hole.diameter_mm"),
        (lambda: hole(800, 800, depth_mm=5000), "hole.depth_mm"),
        (lambda: hole(800, 800, {"reading": "nothing"}), 'is not one of "not_used", "nothing_found", "found"'),
        (lambda: setting_out.cable_zones({"width_mm": 3, "height_mm": 2400}, [], BOOK), "if it was in m, write 3000 mm"),
        (lambda: setting_out.cable_zones(WALL, [{**SWITCH, "x_mm": 3100}], BOOK), '"switch" at (3100, 1200) mm is not on the wall'),
        (lambda: setting_out.cable_zones({**WALL, "left": "open"}, [], BOOK), 'corner "open" is not one of'),
        (lambda: setting_out.cable_zones(WALL, [{**SWITCH, "side": "top"}], BOOK), 'is not one of "near", "far"'),
        (lambda: setting_out.cable_zones(WALL, [], "din18015"), "no rulebook"),
    ],
)
def test_bad_walls_and_holes(call, words):
    with pytest.raises((ValueError, LookupError)) as e:
        call()
    assert words in str(e.value)


def test_nothing_is_called_safe():
    said = [zone([1.9, 0.35, 1.2]), zone([3.9, 2.9, 1.2]), judged("1", kind="fan"), judged("outside", kind="switch"), hole(800, 800, DEAD), hole(800, 800), setting_out.cable_zones(WALL, [SWITCH], BOOK)]
    for r in said:
        assert "safe" not in json.dumps(r.to_dict()).lower()
    for name in ("bathroom_zone", "bathroom_zones", "check_equipment_in_zone", "cable_zones", "check_hole_outside_cable_zones"):
        assert "safe" not in getattr(setting_out, name).__doc__.lower()


if __name__ == "__main__":
    rooms = int(sys.argv[1]) if len(sys.argv) > 1 else 300
    largest, points, bent, shut = worst_of(range(rooms))
    print(f"{rooms} rooms, {points} points, {bent} strings bend, {shut} shut out; largest disagreement {1000 * largest:.3f} mm with bars of {2e3 * THICK} mm")
    THICK /= 4  # the disagreement is that of the bars if it shrinks with them
    print(f"a quarter of these rooms: {1000 * worst_of(range(rooms // 4))[0]:.3f} mm with bars of {2e3 * THICK} mm")
    walls = [{"name": f"w{k}", "from": [2.0 + 0.4 * k, 0.0 if k % 2 else 3.0], "to": [2.0 + 0.4 * k, 2.0 if k % 2 else 1.0], "top_m": 1.5 if k == 0 else None} for k in range(4)]
    places = np.random.default_rng(1).uniform([0, 0, 0], [4, 3, 2.4], (1000, 3))
    for label, many in (("bare", ROOM), ("four partitions, one low", room_with(partitions=walls))):
        started = time.perf_counter()
        for _ in range(5):
            setting_out.bathroom_zones(places, many, BOOK)
        print(f"{label}: {(time.perf_counter() - started) / 5 * 1e3:.2f} ms for 1000 points")
