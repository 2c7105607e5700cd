# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""What is wrong, which test is next, and what to do: families of hypotheses, tests and acts. One inquiry step by step: makegood.Session."""

from collections.abc import Sequence
from typing import Any, Final, final

from ._core import Formula
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

diagnose: Final[_Diagnose]
next_test: Final[_NextTest]

__all__ = [
    "diagnose",
    "next_test",
]
