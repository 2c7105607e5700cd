# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""What is wrong, which test is next, and what to do: families of hypotheses, tests and acts. One inquiry step by step: makegood.Session."""

from collections.abc import Sequence
from typing import Any, Final, final

from ._core import Formula, Rulebook
from ._slow import Result

@final
class _Diagnose(Formula):
    """What is wrong, from readings: the faults of a family with their probabilities, and what each reading says."""

    def __call__(
        self,
        family: str | dict[str, Any],
        given: dict[str, Any] | None = None,
        readings: dict[str, Any] | None = None,
        standing: Sequence[str] | None = None,
        patch: dict[str, Any] | None = None,
        costs: dict[str, Any] | None = None,
    ) -> Result:
        """What is wrong, from readings: the faults of a family with their probabilities, and what each reading says."""

@final
class _NextTest(Formula):
    """Which test to make next, or what to do: the value of each test in money and minutes, danger before money, never a live test where a dead one tells."""

    def __call__(
        self,
        family: str | dict[str, Any],
        given: dict[str, Any] | None = None,
        readings: dict[str, Any] | None = None,
        standing: Sequence[str] | None = None,
        patch: dict[str, Any] | None = None,
        costs: dict[str, Any] | None = None,
    ) -> Result:
        """Which test to make next, or what to do: the value of each test in money and minutes, danger before money, never a live test where a dead one tells."""

@final
class _NotifiableWork(Formula):
    """Whether a kind of electrical work in a dwelling has to be notified by the rules of a country, and who is told, before or after. A kind of which the book says nothing is "not_known"."""

    def __call__(self, work: str, rulebook: str | Rulebook) -> Result:
        """Whether a kind of electrical work in a dwelling has to be notified by the rules of a country, and who is told, before or after. A kind of which the book says nothing is "not_known"."""

@final
class _OrderOfWork(Formula):
    """What is done in the time and in which order, so that the most risk is removed, and as early as it can be; exact for up to 14 tasks, what must be done first, what is left out and why."""

    def __call__(
        self,
        tasks: Sequence[dict[str, Any]],
        available_min: float,
        groups: Sequence[dict[str, Any]] | None = None,
        travel_min: float | None = None,
    ) -> Result:
        """What is done in the time and in which order, so that the most risk is removed, and as early as it can be; exact for up to 14 tasks, what must be done first, what is left out and why."""

diagnose: Final[_Diagnose]
next_test: Final[_NextTest]
notifiable_work: Final[_NotifiableWork]
order_of_work: Final[_OrderOfWork]

__all__ = [
    "diagnose",
    "next_test",
    "notifiable_work",
    "order_of_work",
]
