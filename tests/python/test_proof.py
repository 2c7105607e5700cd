# SPDX-License-Identifier: MIT
"""Whether the answers can be believed: simulated visits with known faults, of every family.

The visits come from visits.py, which knows nothing of the engine's forward models; costs and best policies are worked out in proof.py.
MAKEGOOD_VISITS: visits a family, 300 unless given, half of them with all tests read, half with some; from 1000 on visits of all families
are played against the checklist, with fewer those of the first.

    python tests/python/test_proof.py 100000            # that many visits over all families in equal parts, and a table
    python tests/python/test_proof.py 100000 fan ring   # of these families
    python tests/python/test_proof.py cost 2000         # visits played by the advice and by a fixed sheet, and what they cost

It goes on where it was stopped: build/proof/512/ has a file for each family, written anew every hundred visits. The family with the fewest
visits is next, so that whatever is there is spread evenly; with 0 visits it prints what is there. The sums have 512 points there, the roughest
that the engine offers: four times the visits in the same time. MAKEGOOD_POINTS: 512, 2048 (the usual, and here in the tests) or 4096.
MAKEGOOD_ERRORS=rectangular, MAKEGOOD_DISPLAY=1: instruments with errors of that shape, and with displays that round.

Bounds. With few visits a figure differs from its true value by chance alone, and by how much is known: were the stated probabilities p
right, each visit's score would have the mean and the variance that p itself gives it. A figure is held to the wider of the bound that is
asked of the engine (slope 0.95 to 1.05, ECE below 0.02) and four of these standard deviations: right probabilities fail one such test in
16 000, and where there are many visits the bound that is asked is the wider one.
"""

from __future__ import annotations

import itertools
import json
import math
import os
import sys
import time
from functools import lru_cache
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
import pytest

from makegood import RangeError, decision, session
from proof import COSTS, Costs, Scores, Small, checklist, chi_square_p, enter, highest_first_pit, invented, pit, play, scores
from visits import GIVEN, PHYSICS, UNLISTED, Visits, as_floats, is_real, listed, number, rounded, separable, shown_by_each, some_tests_only, visits

VISITS = int(os.environ.get("MAKEGOOD_VISITS", "300"))
THREADS = int(os.environ.get("MAKEGOOD_THREADS", "1"))
POINTS = int(os.environ.get("MAKEGOOD_POINTS", "512" if __name__ == "__main__" else "2048"))
PLAYED = int(os.environ.get("MAKEGOOD_PLAYED", min(1000, max(16, VISITS // 20))))  # visits played test by test: each asks for the next test a few times
EXTRA = [Path(p) for p in os.environ.get("MAKEGOOD_FAMILIES", "").split(os.pathsep) if p]  # families that are not built in yet


@lru_cache(maxsize=None)
def document(name: str) -> dict[str, Any]:
    for where in EXTRA:
        if (where / f"{name}.json").exists():
            one = json.loads((where / f"{name}.json").read_text(encoding="utf-8"))
            shared = session.family("heating_element")
            common = {"conditions": shared["conditions"], "acts": [a for a in shared["acts"] if a["id"] in ("isolate", "leave")]}
            return session.extended({**common, "id": name}, one)
    return session.family(name)


FAMILIES = [f for f in PHYSICS if f in session.families() or any((p / f"{f}.json").exists() for p in EXTRA)]
CASES = [(f, k) for f in FAMILIES for k in range(len(GIVEN[f]))]


def posteriors(name: str, given: dict[str, Any], made: Visits, none_prior: float = 0.05) -> np.ndarray:
    """Probabilities of every visit: as columns where all readings are numbers, one by one where a word stands among numbers."""
    doc = document(name)
    n = len(made.truth)
    real = {t["id"] for t in doc["tests"] if is_real(t)}
    alone = np.zeros(n, dtype=bool)
    for t in real & set(made.readings):
        if made.readings[t].dtype == object:
            alone |= np.array([isinstance(x, str) for x in made.readings[t]])
    out = np.full((n, len(made.ids)), math.nan)
    rows = np.flatnonzero(~alone)
    if len(rows):
        columns = {t: as_floats(x)[rows] if t in real else list(x[rows]) for t, x in made.readings.items()}
        columns = {t: x for t, x in columns.items() if not all(v is None or v != v for v in x)}
        if columns:
            found = session.many(doc, given, columns, costs=COSTS, none_prior=none_prior, threads=THREADS, plan=False, points=POINTS)
            assert list(found.hypotheses) == made.ids
            out[rows] = found.probabilities
        else:
            alone[:] = True
    one = session.Session(doc, given, costs=COSTS, none_prior=none_prior, points=POINTS)
    money = Costs(doc, given)
    for i in np.flatnonzero(alone):
        while one.undo():
            pass
        for t, x in made.readings.items():
            if x[i] is not None and x[i] == x[i]:
                enter(one, money, t, x[i])
        p = one.probabilities()
        out[i] = [p[h] for h in made.ids]
    return out


@lru_cache(maxsize=None)
def believed(name: str, k: int, part: float) -> tuple[Visits, np.ndarray]:
    given = GIVEN[name][k]
    rng = np.random.default_rng(list(f"{name}{k}".encode()))
    n = max(VISITS // (2 * len(GIVEN[name])), 150)
    if any(is_real(t) and t.get("outcomes") for t in document(name)["tests"]):
        n = max(n // 4, 30)  # a word among numbers goes through a session, and not through columns
    if name == "ring":
        n = max(n // 5, 30)  # fourteen hypotheses of nine parameters each: ten times the time of another family
    made = visits(document(name), given, n, rng, none_as_listed=True)
    if part < 1:
        made = some_tests_only(made, rng, part)
    return made, posteriors(name, given, made)


def told(name: str, k: int, part: float) -> Scores:
    made, p = believed(name, k, part)
    return scores(p, made.truth, np.random.default_rng(1))


@pytest.mark.parametrize("part", [1.0, 0.5], ids=["all_tests", "half_of_them"])
@pytest.mark.parametrize(("name", "k"), CASES)
def test_probabilities_are_right(name: str, k: int, part: float) -> None:
    made, p = believed(name, k, part)
    s = told(name, k, part)
    assert np.allclose(p.sum(axis=1), 1, atol=1e-12) and (p >= 0).all()
    assert abs(s.slope - 1) < max(0.05, 4 * s.sd["slope"]), s
    assert s.ece < max(0.02, s.ece_limit), s
    # of the probabilities' own opinion of themselves: worse is over-confident, better is doubt that was not needed
    # exchanged figures of a record bring the errors of the other instrument with them, and the family takes them as read with the one of their field:
    # some are found less likely than they are, and that alone makes the mean log score 0.07 to 0.12 worse
    for score, slack in (("brier", 0.02), ("log_score", 0.15 if name == "circuit_record" else 0.05), ("top_1", 0.02), ("top_3", 0.01)):
        assert abs(getattr(s, score) - s.expected[score]) < max(slack, 4 * s.sd[score]), (score, s)


@pytest.mark.parametrize(("name", "k"), CASES)
def test_simulation_based_calibration(name: str, k: int) -> None:
    for part in (1.0, 0.5):
        made, p = believed(name, k, part)
        rng = np.random.default_rng(2)
        for of in (pit, highest_first_pit):
            assert chi_square_p(of(p, made.truth, rng), 20 if len(p) >= 400 else 10) > 0.001, (part, of.__name__)


def of_instruments(name: str, n: int, **how: Any) -> Scores:
    given = GIVEN[name][0]
    made = visits(document(name), given, n, np.random.default_rng(list(f"how {name} {how}".encode())), none_as_listed=True, **how)
    return scores(posteriors(name, given, made), made.truth, np.random.default_rng(1))


#: One of resistances and insulations, and one that is mostly readings of two instruments.
OTHER_INSTRUMENTS = FAMILIES if VISITS >= 1000 else ["heating_element", "circuit_record"]


@pytest.mark.parametrize("how", [{"errors": "rectangular"}, {"display": True}], ids=["rectangular", "display"])
@pytest.mark.parametrize("name", OTHER_INSTRUMENTS)
def test_probabilities_are_right_with_other_instruments(name: str, how: dict[str, Any]) -> None:
    """The engine takes errors as normal ones and does not know the step of a display that nobody described.

    The bounds are the usual ones. A rectangular error has the same standard uncertainty and ends at 1.7 of it, so that a normal one errs to the
    side of doubt there; half a step of a display (0.01 ohm, 1/2000 of a range at most) is below what each reading is taken to scatter by itself.
    """
    s = of_instruments(name, max(VISITS // 4, 75), **how)
    assert abs(s.slope - 1) < max(0.05, 4 * s.sd["slope"]), s
    assert s.ece < max(0.02, s.ece_limit), s
    for score, slack in (("brier", 0.02), ("log_score", 0.15 if name == "circuit_record" else 0.05), ("top_1", 0.02), ("top_3", 0.01)):
        assert abs(getattr(s, score) - s.expected[score]) < max(slack, 4 * s.sd[score]), (score, s)


def test_what_a_display_shows() -> None:
    y = np.array([0.004, 0.006, 19.994, 20.04, 199.96, 2345.0, -0.006])
    assert rounded(y, 0.01, 2000) == pytest.approx([0.0, 0.01, 19.99, 20.0, 200.0, 2350.0, -0.01])


#: Draws of parameters for each hypothesis: six readings that each lie somewhere in three decades are hit by one draw in thousands.
DRAWS = {"leakage": 30000}


@lru_cache(maxsize=None)
def shown(name: str, k: int) -> list[Any]:
    return shown_by_each(document(name), GIVEN[name][k], np.random.default_rng(list(f"shown {name}{k}".encode())), DRAWS.get(name, 3000))


def flags(name: str, k: int, made: Visits) -> tuple[int, np.ndarray]:
    """Of visits whose fault is on no list: how many there are, and whether it is flagged, of those that no listed fault explains."""
    doc, given = document(name), GIVEN[name][k]
    odd = np.flatnonzero(made.truth == UNLISTED)
    clear = odd[separable(doc, given, made, odd, shown(name, k))]
    if len(clear) == 0:
        return len(odd), np.zeros(0, dtype=bool)
    some = made._replace(truth=made.truth[clear], readings={t: x[clear] for t, x in made.readings.items()})
    p = posteriors(name, given, some)
    flagged = p.argmax(axis=1) == len(made.ids) - 1
    one, money = session.Session(doc, given, costs=COSTS, points=POINTS), Costs(doc, given)
    for i in np.flatnonzero(~flagged):
        while one.undo():
            pass
        for t, x in some.readings.items():
            if x[i] is not None and x[i] == x[i]:
                enter(one, money, t, x[i])
        flagged[i] = one.next()["conflict"]
    return len(odd), flagged


@pytest.mark.parametrize(("name", "k"), CASES)
def test_a_fault_on_no_list_is_flagged(name: str, k: int) -> None:
    """One in ten. Of those that no listed fault explains within 3 standard uncertainties, eight in ten are flagged at least."""
    rng = np.random.default_rng(list(f"odd {name}{k}".encode()))
    made = visits(document(name), GIVEN[name][k], min(max(VISITS, 300), 4000), rng, unlisted=0.1)
    odd, flagged = flags(name, k, made)
    least = 0.8 - 3.1 * math.sqrt(0.8 * 0.2 / max(1, len(flagged)))  # one in a thousand lies below where 0.8 is the truth
    assert len(flagged) >= 3 and flagged.mean() >= least, (odd, len(flagged), flagged.mean())


# ---- what a visit costs ----------------------------------------------------------------------------------------------------


def both_ways(name: str, k: int, how_many: int, seed: str = "") -> tuple[list[Any], list[Any], np.ndarray]:
    """Visits played by the session's advice and by the sheet, and what each would have cost who knew the fault."""
    doc, given = document(name), GIVEN[name][k]
    made = visits(doc, given, how_many, np.random.default_rng(list(f"cost {name}{k}{seed}".encode())), every_test=True)
    one, money = session.Session(doc, given, costs=COSTS, points=POINTS), Costs(doc, given)
    sheet = checklist(money, name)
    ways: tuple[list[Any], list[Any]] = ([], [])
    known = []
    for i, h in enumerate(made.truth):
        truth = made.ids[h]
        known.append(min(money.plain(a, truth) for a in money.acts if money.danger(a, truth) == 0))
        for played, choose in zip(ways, ("next", sheet)):
            played.append(play(one, money, lambda t, i=i: made.readings[t][i], truth, choose))
    return *ways, np.array(known)


#: Not shown to be cheaper by a fifth; how much cheaper they were (two standard deviations), and what is known of why.
#: The sheet is played generously: by the session's own probabilities, and not stopped while the act that fits is not allowed.
DEARER = {
    "leakage": "0.155 +- 0.025 of 300 visits",
    "thermostat": "0.12 +- 0.11 of 300 visits; 0.18 +- 0.015 of 200 by the losses that the probabilities expect",
    "circuit_record": "0.04 +- 0.14 of 300 visits: 15.75 of the 27.70 of the sheet is the one reading that the limit of danger asks of every visit",
}
PLAYED_FAMILIES = FAMILIES if VISITS >= 1000 else FAMILIES[:1]
EACH = PLAYED if VISITS >= 1000 else 6  #: visits of each family where all are taken together


class Spent(NamedTuple):
    """What was spent on each visit beyond the act that a person who knew the fault would have chosen: tests, and acts that were not the best."""

    ours: np.ndarray
    theirs: np.ndarray
    danger: np.ndarray  #: to life, left by our act


@lru_cache(maxsize=None)
def spent(name: str, how_many: int) -> Spent:
    ours, theirs, danger = [], [], []
    for k in range(len(GIVEN[name])):
        a, b, known = both_ways(name, k, max(how_many // len(GIVEN[name]), 1))
        ours += [x.cost + x.loss - best for x, best in zip(a, known)]
        theirs += [x.cost + x.loss - best for x, best in zip(b, known)]
        danger += [x.danger for x in a]
    return Spent(np.array(ours), np.array(theirs), np.array(danger))


def together(families: list[tuple[np.ndarray, np.ndarray]], least: float | None = None) -> tuple[float, float]:
    """All families, one visit of each: what was spent by the advice as part of what was by the sheet, and its standard deviation.

    The same visits both ways, so the differences count and not what visits differ by. `least`: about this ratio rather than the one found.
    """
    whole = sum(y.mean() for _, y in families)
    ratio = sum(x.mean() for x, _ in families) / whole
    about = ratio if least is None else least
    return ratio, math.sqrt(sum(float(np.var(x - about * y, ddof=1)) / len(x) for x, y in families)) / whole


@pytest.mark.parametrize("name", [pytest.param(f, marks=pytest.mark.xfail(reason=DEARER[f], strict=False)) if f in DEARER else f for f in PLAYED_FAMILIES])
def test_cheaper_than_a_checklist(name: str) -> None:
    x, y, danger = spent(name, max(PLAYED, 8))
    assert danger.mean() <= COSTS["danger_limit"] + 4 * math.sqrt(COSTS["danger_limit"] / len(danger))
    # at least a fifth cheaper: the mean of ours - 0.8 of theirs is below 0, but for what chance does to the mean of so many visits
    less = x - 0.8 * y
    assert less.mean() < 3.1 * less.std() / math.sqrt(len(less)), (x.mean(), y.mean())


def test_all_families_together_are_cheaper_by_a_fifth() -> None:
    """None is left out, also those that are not shown to be cheaper by themselves."""
    ratio, sd = together([spent(name, EACH)[:2] for name in FAMILIES], 0.8)
    assert ratio < 0.8 + 3.1 * sd, (ratio, sd)
    assert ratio < 1, "dearer than the sheet"


@pytest.mark.parametrize("name", FAMILIES)
def test_the_sheet_has_every_test_once(name: str) -> None:
    for given in GIVEN[name]:
        sheet = checklist(Costs(document(name), given), name)
        assert len(sheet) == len(set(sheet)) >= 5


def test_order_of_repairs_against_all_orders() -> None:
    rng = np.random.default_rng(8)
    for _ in range(20):
        n = int(rng.integers(2, 7))
        p, c = rng.dirichlet(np.ones(n)), rng.uniform(1, 50, n)
        every = {o: sum(c[i] * (1 - sum(p[j] for j in o[:k])) for k, i in enumerate(o)) for o in itertools.permutations(range(n))}
        found = decision.repair_order(p.tolist(), c.tolist())
        assert found.expected_cost == pytest.approx(min(every.values()), rel=1e-9)
        assert every[tuple(int(i) - 1 for i in found.order)] == pytest.approx(min(every.values()), rel=1e-9)


def test_value_of_information_against_every_plan() -> None:
    """Every way to choose an act for each outcome, enumerated."""
    rng = np.random.default_rng(9)
    for _ in range(20):
        states_, acts, words = (int(x) for x in rng.integers(2, 5, 3))
        p, cost, shown = rng.dirichlet(np.ones(states_)), rng.uniform(0, 100, (acts, states_)), rng.dirichlet(np.ones(words), states_)
        plans = [sum(p[s] * shown[s, o] * cost[plan[o], s] for s in range(states_) for o in range(words)) for plan in itertools.product(range(acts), repeat=words)]
        now = (cost @ p).min()
        found = decision.value_of_information(p.tolist(), cost.tolist(), shown.T.tolist())
        assert found.evsi == pytest.approx(now - min(plans), abs=1e-9)
        assert found.evpi == pytest.approx(now - float(p @ cost.min(axis=0)), abs=1e-9)
        assert -1e-12 <= found.evsi <= found.evpi + 1e-12


def advice_of(small: Small) -> Any:
    one = session.Session(small.document, {}, costs=COSTS)

    @lru_cache(maxsize=None)
    def of(seen: tuple[tuple[str, int], ...]) -> tuple[str, str]:
        while one.undo():
            pass
        one.stands("found_live")
        for test, word in seen:
            one.read(test, small.words[test][word])
        said = one.next()
        return ("test", said["test"]) if said["advice"] in ("test", "must_test") else ("act", said["act"])

    return of


SMALL = range(12 if VISITS < 20000 else 200)


def small_case(seed: int) -> tuple[float, float, float]:
    """Expected cost of the planner's policy, of the best there is, and of acting at once."""
    doc = session.extended({"conditions": document(FAMILIES[0])["conditions"], "acts": [a for a in document(FAMILIES[0])["acts"] if a["id"] in ("isolate", "leave")]}, invented(seed))
    small = Small(doc)
    return small.of_policy(advice_of(small)), small.best(), float((small.losses @ small.prior).min())


def test_near_the_best_policy() -> None:
    """Small families solved whole: the planner's mean cost is at most 1.05 of the least that any policy can have, and never below it."""
    cost = np.array([small_case(seed) for seed in SMALL])
    assert (cost[:, 0] >= cost[:, 1] * (1 - 1e-9)).all(), cost
    assert cost[:, 0].sum() <= 1.05 * cost[:, 1].sum(), cost
    assert (cost[:, 0] <= cost[:, 2] * (1 + 1e-9)).all(), "worse than no test at all"
    assert (cost[:, 1] < 0.9 * cost[:, 2]).any(), "tests must matter in some"


# ---- properties ------------------------------------------------------------------------------------------------------------


def states(name: str, k: int, how_many: int) -> Any:
    """Sessions at several states of several visits: nothing read, then test after test in any order."""
    doc, given = document(name), GIVEN[name][k]
    rng = np.random.default_rng(list(f"states {name}{k}".encode()))
    made = visits(doc, given, how_many, rng, none_as_listed=True)
    one, money = session.Session(doc, given, costs=COSTS), Costs(doc, given)
    for i in range(how_many):
        while one.undo():
            pass
        yield one
        for t in rng.permutation([t["id"] for t in doc["tests"]])[: int(rng.integers(1, len(doc["tests"]) + 1))]:
            if made.readings[t][i] is not None and made.readings[t][i] == made.readings[t][i]:
                enter(one, money, t, made.readings[t][i])
                if rng.random() < 0.3:
                    yield one
        yield one


@pytest.mark.parametrize(("name", "k"), CASES)
def test_value_of_a_test_lies_between_nothing_and_knowing_all(name: str, k: int) -> None:
    for one in states(name, k, 2):
        said = one.next()
        bound = said["perfect_information"]
        for t in said["tests"]:
            assert 0 <= t["value"] <= bound + 1e-6 * (1 + bound), (t["id"], t["value"], bound)
            assert t["information_bits"] >= 0
        assert [a["id"] for a in said["acts"] if a["isolates"]], "isolating is always offered"
        if said["advice"] == "act" and any(t["offer"] == "offered" for t in said["tests"]):
            assert all(t["net"] <= 1e-3 for t in said["tests"] if t["offer"] == "offered"), "an act while a test would pay"


def test_a_test_that_tells_nothing_is_worth_nothing() -> None:
    doc = invented(1)
    words = doc["tests"][0]["outcomes"]
    for h in doc["hypotheses"]:
        h["shows"]["t0"] = {w: 1 / len(words) for w in words}
    doc["tests"][0]["minutes"] = 0.0
    said = session.Session(doc, {}, costs=COSTS).next()
    blind = next(t for t in said["tests"] if t["id"] == "t0")
    assert blind["value"] == 0 and blind["information_bits"] == pytest.approx(0, abs=1e-12)
    assert said["test"] != "t0"


@pytest.mark.parametrize(("name", "k"), CASES)
def test_order_changes_nothing_and_undo_restores(name: str, k: int) -> None:
    doc, given = document(name), GIVEN[name][k]
    rng = np.random.default_rng(5)
    made = visits(doc, given, 3, rng)
    money = Costs(doc, given)
    turned = {**doc, "hypotheses": doc["hypotheses"][::-1]}
    for i in range(3):
        tests = [t for t, x in made.readings.items() if x[i] is not None and x[i] == x[i]]
        a, b, c = (session.Session(d, given, costs=COSTS) for d in (doc, doc, turned))
        for t in tests:
            enter(a, money, t, made.readings[t][i])
            enter(c, money, t, made.readings[t][i])
        for t in rng.permutation(tests):
            enter(b, money, t, made.readings[t][i])
        assert a.probabilities() == b.probabilities()
        of_a, of_c = a.probabilities(), c.probabilities()
        assert of_a == {h: of_c[h] for h in of_a}
        again = session.Session(doc, given, costs=COSTS)
        steps = []
        for t in tests[:4]:
            steps.append(json.dumps(again.next()))
            enter(again, money, t, made.readings[t][i])
        for before in reversed(steps):
            assert again.undo() and json.dumps(again.next()) == before
        # superseded readings leave nothing behind; the same input gives the same bits
        real = next((t for t in tests if isinstance(made.readings[t][i], float) and math.isfinite(made.readings[t][i])), None)
        if real is None:
            continue
        d, e = (session.Session(doc, given, costs=COSTS) for _ in range(2))
        label = d.read(real, 1.5 * made.readings[real][i])
        d.read(real, made.readings[real][i], supersedes=label)
        e.read(real, made.readings[real][i])
        assert d.probabilities() == e.probabilities() and [t["value"] for t in d.next()["tests"]] == [t["value"] for t in e.next()["tests"]]
        d.withdraw(f"{real} #2")  # what it superseded counts again
        f = session.Session(doc, given, costs=COSTS)
        f.read(real, 1.5 * made.readings[real][i])
        assert d.probabilities() == f.probabilities()
        d.withdraw(label)
        assert d.probabilities() == session.Session(doc, given, costs=COSTS).probabilities()


@pytest.mark.parametrize(("name", "k"), CASES)
def test_columns_say_what_sessions_say(name: str, k: int) -> None:
    doc, given = document(name), GIVEN[name][k]
    made, p = believed(name, k, 0.5)
    one, money = session.Session(doc, given, costs=COSTS, points=POINTS), Costs(doc, given)
    for i in range(8):
        while one.undo():
            pass
        for t, x in made.readings.items():
            if x[i] is not None and x[i] == x[i]:
                enter(one, money, t, x[i])
        found = one.probabilities()
        assert p[i] == pytest.approx([found[h] for h in made.ids], rel=1e-12, abs=1e-300), i


def test_readings_that_cannot_be_are_said() -> None:
    given = {"power_w": 600}
    one = session.Session("heating_element", given)
    one.read("element_ohm", 88.0)
    one.read("element_ohm", 880.0)  # both count: nothing listed shows both
    said = one.next()
    assert said["conflict"] or said["hypotheses"][0]["id"] == "none_of_these"
    one = session.Session("heating_element", given)
    one.read("current_a", 2.6)  # live, and nothing has proved the insulation
    assert [f for f in one.next()["findings"] if f["kind"] == "precondition"]
    one.stands("energised")
    assert [f for f in one.next()["findings"] if f["kind"] in ("precondition", "danger")]
    for wrong in (
        lambda: one.read("element", 1.0),
        lambda: one.read("element_ohm", "broken"),
        lambda: one.read("element_ohm", math.nan),
        lambda: one.read("element_ohm", 1.0, supersedes="never read"),
        lambda: one.stands("isolatd"),
        lambda: one.withdraw("never read"),
        lambda: session.Session("heating_elment", given),
        lambda: session.Session("heating_element", {"power": 600}),
        lambda: session.Session("heating_element", {"power_w": -1}),
        lambda: session.Session("heating_element", given, costs={"money": 1}),
        lambda: session.Session(session.extended("heating_element", {"acts": [{"id": "commission", "ends": ["nothing_like_it"]}]}), given),
        lambda: session.many("heating_element", given, {"element": [1.0]}),
        lambda: session.many("heating_element", given, {"element_ohm": [1.0], "screen_ohm": [1.0, 2.0]}),
    ):
        steps = one.steps
        with pytest.raises(RangeError):
            wrong()
        assert one.steps == steps
    one = session.Session("heating_element", given)
    one.read("screen_ohm", 0.1)
    before = one.probabilities()
    one.read("element_ohm", {"above": 20000})
    assert one.undo() and one.probabilities() == before


def test_below_the_range_in_columns() -> None:
    """-inf in a column is what {"below": low} is in a session."""
    one = session.Session("heating_element", {"power_w": 600})
    one.read("insulation_mohm", {"below": 0.002})
    p = one.probabilities()
    many = session.many("heating_element", {"power_w": 600}, {"insulation_mohm": [-math.inf]}, plan=False)
    assert many.probabilities[0] == pytest.approx([p[h] for h in many.hypotheses], abs=1e-3)


def figures() -> None:
    """All figures as lines, for the documentation: python test_proof.py"""
    print("family           case tests    n  top1  top3  slope   ECE   Brier (expected) log (expected) PIT p")
    for name, k in CASES:
        for part in (1.0, 0.5):
            made, p = believed(name, k, part)
            s = told(name, k, part)
            rng = np.random.default_rng(2)
            ps = [chi_square_p(of(p, made.truth, rng)) for of in (pit, highest_first_pit)]
            print(
                f"{name:16} {k} {part:4} {s.visits:7} {s.top_1:.3f} {s.top_3:.3f} {s.slope:.3f}±{s.sd['slope']:.3f} {s.ece:.4f} {s.brier:.4f} ({s.expected['brier']:.4f}) "
                f"{s.log_score:.4f} ({s.expected['log_score']:.4f}±{s.sd['log_score']:.4f}) {ps[0]:.3g} {ps[1]:.3g} clipped {s.clipped}",
                flush=True,
            )


def small_figures() -> None:
    cost = np.array([small_case(seed) for seed in SMALL])
    ratio = cost[:, 0] / cost[:, 1]
    print(f"small families: {len(cost)}, planner/best mean {ratio.mean():.4f} of sums {cost[:, 0].sum() / cost[:, 1].sum():.4f} largest {ratio.max():.4f} (seed {ratio.argmax()})")


# ---- the long run ----------------------------------------------------------------------------------------------------------

HOW: dict[str, Any] = {"errors": os.environ.get("MAKEGOOD_ERRORS", "normal"), "display": bool(int(os.environ.get("MAKEGOOD_DISPLAY", "0")))}
HERE = Path(__file__).resolve().parents[2] / "build" / "proof" / "_".join([str(POINTS), *([] if HOW["errors"] == "normal" else [HOW["errors"]]), *(["display"] if HOW["display"] else [])])
PLAYED_LOT = 5
LOT = 100  #: visits worked out between two writes: half with all tests, half with half of them
ODD = 40  #: and with every tenth lot, visits whose fault is on no list


def lot(name: str, which: int) -> dict[str, np.ndarray]:
    """A hundred visits by their number: the same wherever and whenever they are drawn."""
    ids = [h["id"] for h in document(name)["hypotheses"]] + ["none_of_these"]
    k = which % len(GIVEN[name])
    given = GIVEN[name][k]
    out: dict[str, list[np.ndarray]] = {"p": [], "truth": [], "part": []}
    for part in (1.0, 0.5):
        rng = np.random.default_rng(list(f"long {name} {which} {part}".encode()))
        made = visits(document(name), given, LOT // 2, rng, none_as_listed=True, **HOW)
        if part < 1:
            made = some_tests_only(made, rng, part)
        place = np.array([ids.index(h) for h in made.ids])  # what cannot be with these numbers given has a column of zeros
        p = np.zeros((LOT // 2, len(ids)))
        p[:, place] = posteriors(name, given, made)
        out["p"].append(p)
        out["truth"].append(place[made.truth])
        out["part"].append(np.full(LOT // 2, part))
    return {**{x: np.concatenate(y) for x, y in out.items()}, "odd": odd_ones(name, which)}


def odd_ones(name: str, which: int) -> np.ndarray:
    if which % 10 != 0:
        return np.zeros(0)
    k = which % len(GIVEN[name])
    rng = np.random.default_rng(list(f"long odd {name} {which}".encode()))
    return flags(name, k, visits(document(name), GIVEN[name][k], ODD, rng, unlisted=1.0, **HOW))[1].astype(float)


def kept(name: str, where: Path) -> dict[str, np.ndarray]:
    file = where / f"{name}.npz"
    if not file.exists():
        return {"lots": np.array(0)}
    with np.load(file) as of:
        return {x: of[x] for x in of.files}


def played_lot(name: str, which: int) -> dict[str, np.ndarray]:
    """Five visits played both ways by their number. Columns: tests, loss of the act, danger, tests made, whether the leading one is the true one."""
    a, b, known = both_ways(name, which % len(GIVEN[name]), PLAYED_LOT, f" {which}")
    rows = lambda ways: np.array([[w.cost, w.loss, w.danger, len(w.made), w.right] for w in ways], dtype=float)  # noqa: E731
    return {"ours": rows(a), "theirs": rows(b), "known": known}


def cost_table(names: list[str], where: Path) -> None:
    print("money beyond the act that fits the fault best: tests + acts that were not it; against the sheet of proof.CHECKLISTS")
    all_of: list[tuple[np.ndarray, np.ndarray]] = []
    print("family              n  planner (tests, right, danger)      checklist (tests, right, danger)      cheaper by  least (2 sd)")
    for name in names:
        of = kept(name, where)
        if not int(of["lots"]):
            print(f"{name:16} none yet")
            continue
        a, b, known = of["ours"], of["theirs"], of["known"]
        x, y = a[:, 0] + a[:, 1] - known, b[:, 0] + b[:, 1] - known
        all_of.append((x, y))
        (ratio, sd), n = together(all_of[-1:]), len(x)
        f = lambda m, t: f"{t.mean():7.2f} ({m[:, 3].mean():4.1f}, {m[:, 4].mean():.3f}, {m[:, 2].mean():.4f})"  # noqa: E731
        print(f"{name:16} {n:5}  {f(a, x):34}  {f(b, y):36}  {1 - ratio:.3f}±{sd:.3f}  {1 - ratio - 2 * sd:.3f}", flush=True)
    if all_of:
        ratio, sd = together(all_of)
        ours, theirs = (sum(float(one[way].mean()) for one in all_of) for way in (0, 1))
        print(f"{'one of each':16} {sum(len(x) for x, _ in all_of):5}  {ours:7.2f} {'':26}  {theirs:7.2f} {'':28}  {1 - ratio:.3f}±{sd:.3f}  {1 - ratio - 2 * sd:.3f}")


def table(names: list[str], where: Path) -> None:
    print(f"sums of {POINTS} points, {HOW['errors']} errors{', displays that round' if HOW['display'] else ''}")
    print("family              n  top-1  top-3  slope           ECE (by chance)  Brier (expected)  log score (expected)  flagged/clear  PIT p")
    total = 0
    for name in names:
        of = kept(name, where)
        if not int(of["lots"]):
            print(f"{name:16} none yet")
            continue
        rng = np.random.default_rng(2)
        s = scores(of["p"], of["truth"], rng)
        total += s.visits
        ps = [chi_square_p(f(of["p"], of["truth"], rng)) for f in (pit, highest_first_pit)]
        odd = of["odd"]
        print(
            f"{name:16} {s.visits:5}  {s.top_1:.3f}  {s.top_3:.3f}  {s.slope:.4f}±{s.sd['slope']:.4f}  {s.ece:.4f} ({s.ece_chance:.4f})  {s.brier:.4f} ({s.expected['brier']:.4f})   "
            f"{s.log_score:.4f} ({s.expected['log_score']:.4f}±{s.sd['log_score']:.4f})  {int(odd.sum()):4}/{len(odd):<4} {odd.mean() if len(odd) else math.nan:.3f}  {ps[0]:.3f} {ps[1]:.3f}",
            flush=True,
        )
    print(f"{total} visits")


def long_run(total: int, names: list[str], where: Path, size: int, of: Any) -> None:
    """Lots of each family until there are so many visits, the family with the fewest first; each is kept as soon as it is there."""
    where.mkdir(parents=True, exist_ok=True)
    lots = -(-total // (size * len(names)))
    done = {name: int(kept(name, where)["lots"]) for name in names}
    began, first = time.monotonic(), sum(done.values())
    while min(done.values()) < lots:
        name = min(done, key=lambda f: done[f])
        old, new = kept(name, where), of(name, done[name])
        done[name] += 1
        temporary = where / f"{name}.part.npz"
        np.savez(temporary, lots=done[name], **{x: np.concatenate([old[x], new[x]]) if x in old else new[x] for x in new})
        temporary.replace(where / f"{name}.npz")
        have, all_of = sum(min(n, lots) for n in done.values()), lots * len(names)
        left = (time.monotonic() - began) / (have - first) * (all_of - have) if have > first else math.nan
        sys.stderr.write(f"\r{'#' * round(40 * have / all_of):<40} {have * size:7} of {all_of * size} visits, {left / 60:.0f} min left, {name:16}")
        sys.stderr.flush()
    sys.stderr.write("\n")


if __name__ == "__main__":
    asked = [x for x in sys.argv[1:] if not x.isdigit() and x != "cost"] or FAMILIES
    numbers = [int(x) for x in sys.argv[1:] if x.isdigit()]
    if not numbers:
        figures()
        small_figures()
    elif "cost" in sys.argv:
        long_run(numbers[0], asked, HERE / "cost", PLAYED_LOT, played_lot)
        cost_table(asked, HERE / "cost")
    else:
        long_run(numbers[0], asked, HERE, LOT, lot)
        table(asked, HERE)
