# SPDX-License-Identifier: MIT
"""How far an answer can be believed: scores of probabilities against known faults, visits played to their end, and best policies.

Nothing here asks the library for a cost, a loss or a best plan: these are worked out again from the document.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from functools import lru_cache
from typing import Any, NamedTuple

import numpy as np

from visits import given_of, listed, number

FOUND = frozenset({"found_live"})
COSTS = {"money_per_hour": 45.0, "fault_left": 400.0, "loss_of_use": 60.0, "danger_limit": 1e-3}


# ---- scores --------------------------------------------------------------------------------------------------------------


class Scores(NamedTuple):
    """Each score beside what it would be, and its standard deviation, if the probabilities were right."""

    visits: int
    top_1: float
    top_3: float
    slope: float
    ece: float
    brier: float
    log_score: float
    expected: dict[str, float]
    sd: dict[str, float]
    ece_limit: float  #: passed by 1 in 10 000 where the probabilities are right
    ece_chance: float  #: what chance alone makes of the ECE of so many visits, where the probabilities are right
    clipped: int

    def z(self, name: str) -> float:
        return (getattr(self, name) - self.expected[name]) / max(self.sd[name], 1e-12)


def ece_of(p: np.ndarray, y: np.ndarray, bins: int = 20) -> float:
    """Mean distance between stated and found, over equal bins of the stated probability, weighted by what lies in each."""
    where = np.minimum((p * bins).astype(int), bins - 1)
    stated, found = np.bincount(where, p, bins), np.bincount(where, y, bins)
    return float(np.abs(stated - found).sum() / len(p))


def scores(p: np.ndarray, truth: np.ndarray, rng: np.random.Generator) -> Scores:
    n, k = p.shape
    y = np.zeros_like(p)
    y[np.arange(n), truth] = 1.0
    order = np.argsort(-p, axis=1, kind="stable")
    ranked = np.take_along_axis(p, order, axis=1)
    hit = np.take_along_axis(y, order, axis=1)
    first, third = hit[:, 0], hit[:, :3].sum(axis=1)
    # slope of found on stated over all pairs of visit and hypothesis: exactly 1 expected where the probabilities are right
    away = p - p.mean()
    square = float((away**2).sum())
    slope = 1 + float((away * (y - p)).sum()) / square
    slope_var = float(((p * away**2).sum(axis=1) - (p * away).sum(axis=1) ** 2).sum()) / square**2
    # Brier over all hypotheses, 0 to 2; log score in nats, clipped at 1e-12
    brier_of = 1 - 2 * p + (p**2).sum(axis=1, keepdims=True)  # had it been each of the hypotheses
    log_of = -np.log(np.maximum(p, 1e-12))
    expected, sd = {"slope": 1.0}, {"slope": math.sqrt(slope_var)}
    for name, each in (("brier", brier_of), ("log_score", log_of)):
        mean = (p * each).sum(axis=1)
        expected[name] = float(mean.mean())
        sd[name] = math.sqrt(max(0.0, float(((p * each**2).sum(axis=1) - mean**2).sum()))) / n
    for name, q in (("top_1", ranked[:, 0]), ("top_3", ranked[:, :3].sum(axis=1))):
        expected[name] = float(q.mean())
        sd[name] = math.sqrt(float((q * (1 - np.minimum(q, 1))).clip(0).sum())) / n
    top = ranked[:, 0]
    # what sampling alone makes of the ECE, by drawing faults with the stated probabilities
    trials = np.array([ece_of(top, (rng.random(n) < top).astype(float)) for _ in range(1000)])
    limit, chance = float(trials.mean() + 4 * trials.std()), float(trials.mean())
    taken = p[np.arange(n), truth]
    return Scores(
        n, float(first.mean()), float(third.mean()), slope, ece_of(top, first), float(((p - y) ** 2).sum(axis=1).mean()),
        float(-np.log(np.maximum(taken, 1e-12)).mean()), expected, sd, limit, chance, int((taken < 1e-12).sum()),
    )  # fmt: skip


def pit(p: np.ndarray, truth: np.ndarray, rng: np.random.Generator) -> np.ndarray:
    """Where the truth stands among draws of the posterior, in an order of the hypotheses drawn for each visit, ties broken evenly.

    Uniform on 0..1 where the probabilities are right.
    """
    n, k = p.shape
    order = np.argsort(rng.random((n, k)), axis=1)
    shuffled = np.take_along_axis(p, order, axis=1)
    at = (order == truth[:, None]).argmax(axis=1)
    before = np.concatenate([np.zeros((n, 1)), np.cumsum(shuffled, axis=1)], axis=1)
    rows = np.arange(n)
    return before[rows, at] + rng.random(n) * shuffled[rows, at]


def highest_first_pit(p: np.ndarray, truth: np.ndarray, rng: np.random.Generator) -> np.ndarray:
    """The same with the likeliest hypothesis first: over-confidence piles up at 1, under-confidence at 0."""
    order = np.argsort(-p, axis=1, kind="stable")
    ranked = np.take_along_axis(p, order, axis=1)
    at = (order == truth[:, None]).argmax(axis=1)
    before = np.concatenate([np.zeros((len(p), 1)), np.cumsum(ranked, axis=1)], axis=1)
    rows = np.arange(len(p))
    return before[rows, at] + rng.random(len(p)) * ranked[rows, at]


def chi_square_p(u: np.ndarray, bins: int = 20) -> float:
    """Probability of counts at least as uneven as these, were u uniform (Wilson and Hilferty's cube root: good to three digits from 5 degrees)."""
    found = np.bincount(np.minimum((u * bins).astype(int), bins - 1), minlength=bins)
    x = float(((found - len(u) / bins) ** 2).sum() / (len(u) / bins))
    f = bins - 1
    z = ((x / f) ** (1 / 3) - (1 - 2 / (9 * f))) / math.sqrt(2 / (9 * f))
    return 0.5 * math.erfc(z / math.sqrt(2))


def reliability(p: np.ndarray, truth: np.ndarray, bins: int = 15) -> list[tuple[float, float, float, int]]:
    """(stated, found, standard deviation of found, pairs) over all pairs of visit and hypothesis."""
    y = np.zeros_like(p)
    y[np.arange(len(p)), truth] = 1.0
    p, y = p.ravel(), y.ravel()
    where = np.minimum((p * bins).astype(int), bins - 1)
    out = []
    for b in range(bins):
        q = p[where == b]
        if len(q) * q.mean() * (1 - q.mean()) >= 5 if len(q) else False:
            out.append((float(q.mean()), float(y[where == b].mean()), math.sqrt(float((q * (1 - q)).sum())) / len(q), len(q)))
    return out


# ---- what things cost ----------------------------------------------------------------------------------------------------


class Costs:
    """Tests and acts of a document in money."""

    def __init__(self, document: Mapping[str, Any], given: Mapping[str, Any], costs: Mapping[str, float] = COSTS) -> None:
        self.names = given_of(document, given)
        self.costs = dict(costs)
        self.tests = {t["id"]: t for t in document["tests"]}
        self.conditions = {c["id"]: c for c in document.get("conditions", [])}
        self.accesses = {a["id"]: a for a in document.get("accesses", [])}
        self.acts = {a["id"]: a for a in document["acts"]}
        self.hypotheses = {h["id"]: h for h in listed(document, given)[0]}
        rate = self.costs["money_per_hour"] / 60
        isolating = [a for a, act in self.acts.items() if act.get("isolates")]
        self.rate = rate
        ids = [*self.hypotheses, "none_of_these"]
        self.price = max(self.plain(a, h) for a in isolating for h in ids) / self.costs["danger_limit"]

    def money(self, x: Mapping[str, Any], name: str, otherwise: float = 0.0) -> float:
        return number(x.get(name, otherwise), self.names)

    def plain(self, act: str, h: str) -> float:
        """What an act costs where h holds, and what it leaves; without the price of danger."""
        a = self.acts[act]
        of = self.hypotheses.get(h, {})
        total = self.money(a, "money") + self.money(a, "minutes") * self.rate
        fault = of.get("fault", True)
        if fault and h not in a.get("ends", []):
            total += self.money(of, "left_money", self.costs["fault_left"])
        if a.get("isolates") and not fault:
            total += self.costs["loss_of_use"]
        return total

    def danger(self, act: str, h: str) -> float:
        a = self.acts[act]
        of = self.hypotheses.get(h, {})
        if of.get("danger") != "life" or h in a.get("ends", []):
            return 0.0
        return 0.0 if a.get("isolates") and of.get("isolation_ends", True) else 1.0

    def loss(self, act: str, h: str) -> float:
        return self.plain(act, h) + self.price * self.danger(act, h)

    def way(self, test: str, standing: frozenset[str], opened: frozenset[str]) -> tuple[float, frozenset[str], frozenset[str]] | None:
        """Money of a test from here, conditions and places after it; None: something stands in the way that only a test can prove."""
        t = self.tests[test]
        now = set(standing)
        minutes = self.money(t, "minutes", 2.0)

        def bring(name: str) -> bool:
            nonlocal minutes
            if name in now:
                return True
            c = self.conditions[name]
            if c.get("by_test") or not all(bring(x) for x in c.get("needs", [])):
                return False
            minutes += self.money(c, "minutes")
            now.difference_update(c.get("ends", []))
            now.add(name)
            return True

        if not all(bring(x) for x in t.get("needs", [])):
            return None
        place = t.get("access")
        if place and place not in opened:
            minutes += self.money(self.accesses[place], "minutes")
            opened = opened | {place}
        return minutes * self.rate + self.money(t, "money"), frozenset(now), opened

    def after(self, test: str, shown: Any, standing: frozenset[str]) -> frozenset[str]:
        """Conditions after a result."""
        proof = self.tests[test].get("proves")
        if not proof:
            return standing
        good = shown == proof["outcome"] if "outcome" in proof else proof.get("from", -math.inf) <= shown <= proof.get("to", math.inf)
        return standing | {proof["condition"]} if good else standing - {proof["condition"]}


# ---- visits played to their end ------------------------------------------------------------------------------------------


class Played(NamedTuple):
    cost: float  #: of the tests made
    loss: float  #: of the act, where the true fault is what it is
    danger: float  #: to life, left by the act (0 or 1)
    act: str
    made: list[str]
    right: bool  #: the leading hypothesis is the true one
    premature: bool


def enter(session: Any, costs: Costs, test: str, shown: Any) -> None:
    """Hands a display to a session as an electrician would."""
    if isinstance(shown, float) and math.isinf(shown):
        t = costs.tests[test]
        session.read(test, {"above": number(t["high"], costs.names)} if shown > 0 else {"below": number(t["low"], costs.names)})
    else:
        session.read(test, shown if isinstance(shown, str) else float(shown))


def finish(session: Any, costs: Costs, truth: str, spent: float, made: list[str], said: Mapping[str, Any]) -> Played:
    act = said["act"]
    leading = said["hypotheses"][0]["id"]
    return Played(spent, costs.plain(act, truth), costs.danger(act, truth), act, made, leading == truth, False)


def play(session: Any, costs: Costs, shown: Callable[[str], Any], truth: str, choose: str | list[str] = "next", sure: float = 0.95) -> Played:
    """One visit: by the session's own advice, or by a list of tests in a fixed order until something has `sure` and may be acted upon.

    Whoever goes down a list knows the probabilities that the session knows, and does not stop at a fault while the only act allowed is to
    leave it isolated, or while a test is a must. That is generous: it makes the list cheaper.
    """
    while session.undo():
        pass
    standing: frozenset[str] = frozenset()
    if "found_live" in costs.conditions:  # the visit begins with what was found, and what can be seen before anything is switched off
        session.stands("found_live")
        standing = frozenset({"found_live"})
    opened: frozenset[str] = frozenset()
    spent, made = 0.0, []
    if choose == "next":
        while True:
            said = session.next()
            if said["advice"] not in ("test", "must_test"):
                return finish(session, costs, truth, spent, made, said)
            test = said["test"]
            assert test not in made, "a test is advised once"
            way = costs.way(test, standing, opened)
            assert way is not None, "what is advised can be done"
            spent += way[0]
            standing, opened = costs.after(test, shown(test), way[1]), way[2]
            enter(session, costs, test, shown(test))
            made.append(test)
    for test in choose:
        p = session.probabilities()
        leading = max(p, key=lambda h: p[h])
        if p[leading] >= sure:
            said = session.next()
            ending = [a for a, of in costs.acts.items() if leading in of.get("ends", [])]
            if said["advice"] != "must_test" and (not ending or said["act"] in ending):
                return finish(session, costs, truth, spent, made, said)
        way = costs.way(test, standing, opened)
        if way is None:
            continue
        spent += way[0]
        standing, opened = costs.after(test, shown(test), way[1]), way[2]
        enter(session, costs, test, shown(test))
        made.append(test)
    return finish(session, costs, truth, spent, made, session.next())


#: The order in which a sensible person works down a sheet: what can be asked and seen as it was found, then isolated, the cheap and telling dead
#: tests first, those that open more places after them, what needs the supply last. Judgement of the trade; on a ring the points are proved dead first.
CHECKLISTS: dict[str, tuple[str, ...]] = {
    "heating_element": ("element_ohm", "insulation_mohm", "screen_ohm", "line_screen_ohm", "neutral_screen_ohm", "current_a"),
    "floor_sensor": ("shown_c", "probe_setting", "surface_c", "cables", "probe_ohm", "probe_earth_mohm", "probe_warm_ohm", "shown_resistor_c"),
    "thermostat": ("device", "display", "mode", "program", "load_ohm", "insulation_mohm", "line_run_ohm", "neutral_run_ohm", "contact_ohm", "supply_v", "line_earth_v", "load_call_v",
                   "load_off_v", "hot_probe"),
    "lit_mirror": ("lamp_seen", "pad_seen", "insulation_mohm", "earth_ohm", "feed_off_ohm", "feed_on_ohm", "neutral_own_ohm", "switch_on_ohm", "switch_off_ohm", "pad_ohm", "strip",
                   "lamp_pad_ohm", "neutral_other_ohm", "driver_out_v"),
    "fan": ("running", "direction", "outlet_air", "rotation", "grille_flow", "outlet_flow", "overrun", "fan_pressure", "spin", "isolator_poles", "motor_ohm", "insulation_mohm", "switched_v",
            "feed_v"),
    "joint": ("swing", "point_loop_ohm", "look", "loop_ohm", "line_ohm", "neutral_ohm", "insulation_mohm", "board_loop_ohm", "point_drop_v", "board_drop_v", "current_a", "line_drop_v",
              "neutral_drop_v"),
    "rail_heater": ("device", "fuse_ohm", "fuse_rating", "heater_ohm", "insulation_mohm", "body_earth_ohm", "switch_ohm", "spur_earth_ohm", "line_run_ohm", "neutral_run_ohm", "element_ohm",
                    "control_ohm", "supply_v", "current_a"),
    "lighting_point": ("lamp", "holder_ohm", "insulation_mohm", "earth_ohm", "neutral_own_ohm", "line_ohm", "contact_ohm", "drop_ohm", "closed_share", "strapper_ohm", "gap_ohm",
                       "neutral_other_ohm", "cross_ohm", "point_v"),
    "leakage": ("when", "unplugged", "which", "line_mohm", "neutral_mohm", "appliance_mohm", "neutral_bar", "ne_other_ohm", "ramp_ma", "leakage_ma", "ramp_connected_ma"),
    "ring": ("still_live", "r1", "rn", "r2", "ln_near", "ln_middle", "ln_far", "ln_highest", "lc_near", "lc_middle", "lc_far", "cables_highest", "cables_feeding", "other_circuit_ohm"),
    "circuit_record": ("rec_r1r2", "rec_r2", "rec_zs", "rec_ze", "rec_rcd_1", "rec_rcd_5", "nulling", "row_match", "other_match", "size_seen", "again_r1r2", "insulation_mohm", "again_zs",
                       "again_rcd"),
}  # fmt: skip


def checklist(costs: Costs, name: str) -> list[str]:
    """The tests of the sheet that there are with the numbers given: what takes days in the document is not there."""
    sheet = CHECKLISTS[name]
    assert set(sheet) == set(costs.tests), name
    return [t for t in sheet if costs.money(costs.tests[t], "minutes", 2.0) < 1000]


# ---- the best that can be ------------------------------------------------------------------------------------------------


class Small:
    """A family whose tests show words, small enough to be solved whole."""

    def __init__(self, document: Mapping[str, Any], none_prior: float = 0.05, costs: Mapping[str, float] = COSTS) -> None:
        self.document = document
        self.money = Costs(document, {}, costs)
        hypotheses, weights = listed(document, {})
        self.ids = [h["id"] for h in hypotheses] + ["none_of_these"]
        self.prior = np.array([*weights * (1 - none_prior), none_prior])
        self.words = {t["id"]: list(t["outcomes"]) for t in document["tests"]}
        self.chance = {}
        for t in document["tests"]:
            words = self.words[t["id"]]
            table = np.full((len(self.ids), len(words)), 1 / len(words))
            for k, h in enumerate(hypotheses):
                given = np.array([h["shows"].get(t["id"], {}).get(w, 0.0) for w in words])
                table[k] = given + max(0.0, 1 - given.sum()) / len(words)
            self.chance[t["id"]] = table
        self.losses = np.array([[self.money.loss(a, h) for h in self.ids] for a in self.money.acts])

    def after(self, seen: tuple[tuple[str, int], ...]) -> np.ndarray:
        """Joint weights: their sum is the probability of what has been seen."""
        w = self.prior
        for test, word in seen:
            w = w * self.chance[test][:, word]
        return w

    def best(self) -> float:
        """Least expected cost of any policy: all orders of tests, all outcomes."""

        @lru_cache(maxsize=None)
        def least(seen: frozenset[tuple[str, int]], standing: frozenset[str], opened: frozenset[str]) -> float:
            w = self.after(tuple(sorted(seen)))
            best = float((self.losses @ w).min())
            made = {t for t, _ in seen}
            for test, words in self.words.items():
                way = None if test in made else self.money.way(test, standing, opened)
                if way is None:
                    continue
                total = way[0] * float(w.sum())
                for k in range(len(words)):
                    if total >= best:
                        break
                    total += least(seen | {(test, k)}, self.money.after(test, words[k], way[1]), way[2])
                best = min(best, total)
            return best

        return least(frozenset(), FOUND, frozenset())

    def of_policy(self, advice: Callable[[tuple[tuple[str, int], ...]], tuple[str, str]]) -> float:
        """Expected cost of a policy, over all outcomes: advice(seen) is ("test", id) or ("act", id)."""

        def cost(seen: tuple[tuple[str, int], ...], standing: frozenset[str], opened: frozenset[str]) -> float:
            w = self.after(seen)
            mass = float(w.sum())
            if mass <= 0:
                return 0.0
            what, name = advice(seen)
            if what == "act":
                return float(self.losses[list(self.money.acts).index(name)] @ w)
            way = self.money.way(name, standing, opened)
            assert way is not None, "what is advised can be done"
            return way[0] * mass + sum(cost((*seen, (name, k)), self.money.after(name, word, way[1]), way[2]) for k, word in enumerate(self.words[name]))

        return cost((), FOUND, frozenset())


def invented(seed: int) -> dict[str, Any]:
    """A small family: up to 5 hypotheses, up to 5 tests that show two or three words, one place to open, some to be isolated for."""
    rng = np.random.default_rng(seed)
    hypotheses, tests = int(rng.integers(3, 6)), int(rng.integers(3, 6))
    ids = [f"h{k}" for k in range(hypotheses)]
    out: dict[str, Any] = {"id": f"invented_{seed}", "accesses": [{"id": "cover", "minutes": float(rng.integers(2, 15))}], "tests": [], "hypotheses": [], "acts": []}
    for k in range(tests):
        t: dict[str, Any] = {"id": f"t{k}", "outcomes": ["a", "b", "c"][: int(rng.integers(2, 4))], "minutes": float(rng.integers(1, 40))}
        if rng.random() < 0.5:
            t["access"] = "cover"
        kind = rng.random()
        if kind < 0.6:  # some dead, some only before anything has been switched off: these are lost after the first dead one
            t["needs"] = ["isolated"] if kind < 0.4 else ["found_live"]
        out["tests"].append(t)
    sound = rng.random() < 0.6
    for k, h in enumerate(ids):
        shows = {}
        for t in out["tests"]:
            p = rng.dirichlet(np.full(len(t["outcomes"]), float(rng.choice([0.2, 0.6, 2.0]))))
            p = 0.98 * np.round(p, 3) / max(1.0, np.round(p, 3).sum())
            shows[t["id"]] = {w: float(x) for w, x in zip(t["outcomes"], p)}
        out["hypotheses"].append({"id": h, "prior": float(np.round(rng.uniform(0.5, 10), 2)), "fault": not (sound and k == 0), "shows": shows})
    for k, h in enumerate(ids):
        if rng.random() < 0.8:
            out["acts"].append({"id": f"repair_{h}", "minutes": float(rng.integers(5, 200)), "money": float(rng.integers(0, 200)), "ends": [h]})
    out["acts"].append({"id": "renew", "minutes": 240.0, "money": float(rng.integers(100, 500)), "ends": ids})
    return out
