# SPDX-License-Identifier: MIT
"""One inquiry into one thing that does not work, step by step, and thousands of them as arrays.

    from makegood import Session

    s = Session("heating_element", {"power_w": 600, "voltage_v": 230})
    print(s.explain())
    s.read("element_ohm", 91.3)
    s.next()["test"], s.probabilities()

A family is data: family() gives it as a dict, extended() lays a patch over it (objects field by field, lists by "id", "remove": True takes
one out), and the result goes into Session() or many(). Weights before readings are judgement: they are in the family, and can be replaced.
Costs are invented; give your own. Nothing here says that something is safe: isolating, securing and labelling is always an act.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import TYPE_CHECKING, Any, NamedTuple, Union

from . import _core
from ._core import Instrument, Measured, Reading, Visit
from ._progress import steps

if TYPE_CHECKING:
    import numpy as np
    import numpy.typing as npt

_inner: Any = _core  # what stands behind this module has no stubs

Family = Union[str, Mapping[str, Any]]


def families() -> list[str]:
    """Ids of the families that come with the library."""
    return list(_inner._family_ids())


def family(id: str) -> dict[str, Any]:
    """A family as a dict of its own, conditions and acts that all families share included. RangeError: there is none of that id."""
    return dict(_inner._family(id))


def extended(family: Family, patch: Mapping[str, Any]) -> dict[str, Any]:
    """A family with a patch laid over it; the family itself stays as it is."""
    whole = _inner._family(family) if isinstance(family, str) else dict(family)
    return dict(_inner._extended(whole, dict(patch)))


class Session:
    """Readings in as they are taken; at any time: what is wrong, which test next, what to do.

    `given`: the numbers that the family asks for. `costs`: money_per_hour (45), fault_left (150), loss_of_use (60), danger_limit (0.001).
    `instruments`: those that readings are taken with; without one a reading has the worst case of its class. `none_prior`: weight of
    "none of these", from 0.02. `points`: of the sums over parameters that bend a prediction, 512, 2048 or 4096; None: as many as the family asks for. Bad input raises RangeError, readings that cannot both be raise RelationError, and the step is not taken.
    """

    __slots__ = ("_of",)

    def __init__(
        self,
        family: Family,
        given: Mapping[str, Any] | None = None,
        *,
        costs: Mapping[str, float] | None = None,
        instruments: Sequence[Instrument] | None = None,
        none_prior: float = 0.05,
        points: int | None = None,
    ) -> None:
        self._of: Any = _inner._Session(
            family if isinstance(family, str) else dict(family),
            None if given is None else dict(given),
            None if costs is None else dict(costs),
            None if instruments is None else list(instruments),
            none_prior,
            points or 0,
        )

    def read(self, test: str, value: float | str | Measured | Reading | Mapping[str, Any], *, label: str = "", supersedes: str = "") -> str:
        """A reading of a test: a number, a Reading, {"above": 999}, or the word of an outcome. Returns its label.

        `supersedes`: the label of the reading that it replaces; two readings that supersede nothing both count.
        """
        return str(self._of.read(test, dict(value) if isinstance(value, Mapping) else value, label, supersedes))

    def withdraw(self, label: str) -> None:
        """Takes a reading back."""
        self._of.withdraw(label)

    def stands(self, condition: str, now: bool = True) -> None:
        """A condition has been brought about ("isolated"), or no longer stands."""
        self._of.stands(condition, now)

    def undo(self) -> bool:
        """Takes the last step back; False: there is none."""
        return bool(self._of.undo())

    @property
    def steps(self) -> int:
        """Steps taken and not undone."""
        return int(self._of.steps())

    @property
    def standing(self) -> list[str]:
        """Conditions that stand now."""
        return list(self._of.standing())

    def probabilities(self) -> dict[str, float]:
        """Of each hypothesis, and of none_of_these; they add up to 1."""
        return dict(self._of.probabilities())

    def next(self) -> dict[str, Any]:
        """Everything as a dict: advice ("test", "must_test", "act", "nothing_left"), test, act, explain, hypotheses, predicted, tests, acts, findings.

        `predicted`: every reading against what the leading explanation expects of it once it knows the others: `predicted` is the middle,
        95 % lie from `low` to `high`, `z` is the place of the reading there as a standard score; `chance` that of a word, or of a value at all.
        """
        return dict(self._of.to_dict())

    def explain(self) -> list[str]:
        """Two sentences: what is next, and why."""
        return list(self._of.explain())

    def __repr__(self) -> str:
        return f"<makegood session: {self._of.explain()[0]}>"


def inquiries(visit: Visit) -> dict[str, dict[str, Any]]:
    """What Session.next() says of each inquiry of a visit, by its id; "name" is what people call the thing."""
    return {id: {"name": name, **said} for id, name, said in _inner._inquiries(visit)}


class Many(NamedTuple):
    """Results of many inquiries, one a row."""

    hypotheses: list[str]
    tests: list[str]
    acts: list[str]
    probabilities: npt.NDArray[np.float64]  #: row by hypothesis, none_of_these last
    leading: npt.NDArray[np.intp]  #: place in `hypotheses`
    advice: npt.NDArray[np.intp]  #: 0 test, 1 must_test, 2 act, 3 nothing_left
    test: npt.NDArray[np.intp]  #: place in `tests`; -1 where an act is next
    act: npt.NDArray[np.intp]  #: place in `acts`: the best as things are


def many(
    family: Family,
    given: Mapping[str, Any] | None = None,
    readings: Mapping[str, Any] | None = None,
    *,
    costs: Mapping[str, float] | None = None,
    instruments: Sequence[Instrument] | None = None,
    none_prior: float = 0.05,
    points: int | None = None,
    threads: int = 1,
    plan: bool = True,
    progress: bool | Callable[[int], None] = False,
) -> Many:
    """Thousands of inquiries of one family at once: the same results as one Session each, on one thread or more.

    `readings`: by test an array of numbers (NaN: not measured; +inf, -inf: over and under range, beyond the ends of the test) or a list of words (None: not
    made). `plan=False` leaves the next test out and is faster, so do fewer `points`. `progress`: True draws a bar on stderr, a callable gets the rows done.
    """
    import numpy as np

    whole = family if isinstance(family, str) else dict(family)
    document = _inner._family(whole) if isinstance(whole, str) else whole
    tests = {t["id"]: t for t in document.get("tests", ())}
    columns: dict[str, tuple[Any, Any, bool, Any]] = {}
    rows = None
    for name, column in (readings or {}).items():
        if name not in tests:
            raise _core.RangeError(f'many: there is no test "{name}"')
        words = list(tests[name].get("outcomes", ()))
        said = [w if isinstance(w, str) else None for w in column]
        if unknown := {w for w in said if w is not None} - set(words):
            raise _core.RangeError(f'many: "{name}" has no outcome "{min(unknown)}"; it shows one of {", ".join(words)}')
        if "high" not in tests[name] and len(column) and all(w is None or isinstance(w, str) for w in column):
            values = np.array([np.nan if w is None else words.index(w) for w in said])
            columns[name] = (values.tolist(), None, True, None)
        else:
            values = np.array([np.nan if x is None or w is not None else x for x, w in zip(column, said)], dtype=float)
            columns[name] = (values.tolist(), None, False, [-1 if w is None else words.index(w) for w in said] if any(said) else None)
        if values.ndim != 1 or (rows is not None and len(values) != rows):
            raise _core.RangeError(f'many: "{name}": one value a row, as many as the other columns')
        rows = len(values)
    count = rows or 0
    return Many(*_inner._many(whole, None if given is None else dict(given), columns, count, None if costs is None else dict(costs),
                             None if instruments is None else list(instruments), none_prior, points or 0, threads, plan, steps(progress, count)))
