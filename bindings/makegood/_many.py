# SPDX-License-Identifier: MIT
"""Many visits in one call: their findings in columns."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import TYPE_CHECKING, Any, NamedTuple, Union

from . import _core
from ._core import DecisionRule, Rulebook, Visit
from ._progress import steps

if TYPE_CHECKING:
    import numpy as np
    import numpy.typing as npt

_inner: Any = _core  # what stands behind this module has no stubs

OUTCOMES = ("pass", "fail", "undecided")
REASONS = ("", "not measured", "outside validity", "straddles limit", "needs maker's figure", "no rule in book", "precondition missing")
DANGERS = ("", "investigate", "improve", "potential", "now")


class Findings(NamedTuple):
    """The findings of many visits, one a row. `assess(visits[i], rules=...)` has the words and the working of each."""

    visit: npt.NDArray[np.uint32]  #: place among the visits
    path: npt.NDArray[np.uint32]  #: place in `paths`
    call: npt.NDArray[np.uint32]  #: place in `calls`: the check behind it
    outcome: npt.NDArray[np.uint8]  #: place in OUTCOMES
    reason: npt.NDArray[np.uint8]  #: place in REASONS
    danger: npt.NDArray[np.uint8]  #: place in DANGERS; a suggestion, no certificate or condition report
    value: npt.NDArray[np.float64]  #: NaN where there is none
    limit: npt.NDArray[np.float64]
    margin: npt.NDArray[np.float64]
    probability: npt.NDArray[np.float64]
    paths: list[str]
    calls: list[str]

    def counts(self) -> dict[str, int]:
        """How many findings of each outcome."""
        return {name: int((self.outcome == k).sum()) for k, name in enumerate(OUTCOMES)}


def assess_many(
    visits: Sequence[Union[Visit, Mapping[str, Any]]],
    *,
    rules: Union[str, Rulebook],
    rule: Union[str, DecisionRule, None] = None,
    threads: int = 1,
    inquiries: bool = True,
    progress: bool | Callable[[int], None] = False,
) -> Findings:
    """The findings of many visits under one rulebook, on one thread or more: the same as assess() gives of each.

    `visits`: from load_visit() or read_visit(), or dicts. `inquiries=False`: without what is wrong with what does not work, which takes about half of the time.
    `progress`: True draws a bar on stderr, a callable gets the visits done.
    What follows from the findings (options, order of work, the next test of an inquiry) is asked of assess().
    """
    return Findings(*_inner._assess_many([dict(v) if isinstance(v, Mapping) else v for v in visits], rules, rule, threads, inquiries, steps(progress, len(visits))))
