# SPDX-License-Identifier: MIT
"""What is done in the time there is, and in which order: held to every order of every subset (tests/cpp holds the kernel to many more)."""

from __future__ import annotations

import itertools
import random
from typing import Any

import pytest

import makegood

order_of_work = makegood.job.order_of_work
GROUPS = [
    {"id": "hatch", "title": "Loft hatch", "setup_min": 8, "close_min": 5},
    {"id": "lights", "title": "Lights", "setup_min": 10, "close_min": 4, "isolates": True},
]


def minutes_and_delay(order: list[dict[str, Any]]) -> tuple[float, float]:
    """All minutes with opening and closing, and the sum of risk × time of its removal."""
    cost = {g["id"]: (g["setup_min"], g["close_min"]) for g in GROUPS} | {"": (0, 0)}
    now, delay, place, off = 0.0, 0.0, "", ""
    for t in order:
        for was, wanted in ((place, t.get("access", "")), (off, t.get("circuit", ""))):
            if was != wanted:
                now += cost[was][1] + cost[wanted][0]
        place, off = t.get("access", ""), t.get("circuit", "")
        now += t["minutes"]
        delay += t["risk"] * now
    return now + cost[place][1] + cost[off][1], delay


@pytest.mark.parametrize("seed", range(20))
def test_the_best_of_every_order_of_every_subset(seed: int) -> None:
    draw = random.Random(seed)
    tasks: list[dict[str, Any]] = []
    for name in "abcde":
        t: dict[str, Any] = {"id": name, "minutes": draw.randint(1, 30), "risk": draw.randint(1, 9)}
        if draw.random() < 0.5:
            t["access"] = "hatch"
        if draw.random() < 0.5:
            t |= {"state": "dead", "circuit": "lights"}
        tasks.append(t)
    available = draw.randint(20, 120)
    best = (0.0, 0.0)
    for n in range(len(tasks) + 1):
        for order in itertools.permutations(tasks, n):
            minutes, delay = minutes_and_delay(list(order))
            if minutes <= available:
                best = max(best, (sum(t["risk"] for t in order), -delay))
    r = order_of_work(tasks, available, GROUPS).to_dict()
    done = [next(t for t in tasks if t["id"] == s["id"]) for s in r["steps"]]
    minutes, delay = minutes_and_delay(done)
    assert (r["risk_removed"], -delay) == best
    assert r["used_min"] == minutes <= available and r["exact"]
    assert {s["id"] for s in r["steps"]} | {x["id"] for x in r["left_out"]} == set("abcde")


def test_what_must_be_done_comes_first_and_what_is_left_out_says_why() -> None:
    tasks = [
        {"id": "cover", "title": "Cover the live parts", "minutes": 10, "risk": 1, "must": True},
        {"id": "joint", "title": "Make the joint again", "minutes": 15, "low": 10, "high": 30, "risk": 9, "access": "hatch", "state": "dead", "circuit": "lights"},
        {"id": "fan", "minutes": 60, "risk": 4, "access": "hatch"},
        {"id": "try", "minutes": 5, "risk": 1, "needs": ["fan"]},
        {"id": "paint", "minutes": 5},
    ]
    r = order_of_work(tasks, 60, GROUPS, 40).to_dict()
    assert [s["id"] for s in r["steps"]] == ["cover", "joint"]
    assert r["used_min"] == 10 + 10 + 8 + 15 + 5 + 4
    assert {x["id"]: x["reason"] for x in r["left_out"]} == {"fan": "does_not_fit", "paint": "no_risk", "try": "needs"}
    assert r["later_min"] == 8 + 60 + 5 + 5 + 40
    # 60 - 37 leaves 23 min for the joint: 1 - (30 - 23)² / (20 · 15)
    assert r["fits_probability"] == pytest.approx(1 - 7**2 / (20 * 15), abs=1e-3)
    assert 'Isolate "Lights": switch off, lock off, label, prove dead (10 min).' in r["text"]


def test_what_is_refused() -> None:
    with pytest.raises(makegood.RangeError, match='did you mean "hatch"'):
        order_of_work([{"id": "a", "minutes": 5, "access": "hutch"}], 60, GROUPS)
    with pytest.raises(makegood.RangeError, match='did you mean "minutes"'):
        order_of_work([{"id": "a", "minuts": 5}], 60)
    with pytest.raises(makegood.RangeError, match="available_min"):
        order_of_work([], -1)
    with pytest.raises(makegood.RelationError, match="need each other"):
        order_of_work([{"id": "a", "minutes": 5, "needs": ["b"]}, {"id": "b", "minutes": 5, "needs": ["a"]}], 60)
