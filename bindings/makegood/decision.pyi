# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Conformity: probabilities, guard bands, risks of consumer and producer, what an instrument's statement is worth."""

from collections.abc import Sequence
from typing import Any, Final, final

import numpy as np
import numpy.typing as npt

from ._core import Accuracy, DecisionRule, Formula
from ._slow import Result

@final
class _ConformityProbability(Formula):
    """The probability that a measured thing keeps its limits, and its complement, the specific risk."""

    def __call__(
        self,
        value: float,
        standard_uncertainty: float,
        lower: float | None = None,
        upper: float | None = None,
    ) -> Result:
        """The probability that a measured thing keeps its limits, and its complement, the specific risk."""

@final
class _GuardBand(Formula):
    """The guard band of a decision rule, the acceptance limits, and the worst share of wrong acceptance (at the acceptance limit of one side)."""

    def __call__(
        self,
        standard_uncertainty: float,
        rule: str | DecisionRule | None = None,
        lower: float | None = None,
        upper: float | None = None,
    ) -> Result:
        """The guard band of a decision rule, the acceptance limits, and the worst share of wrong acceptance (at the acceptance limit of one side)."""

@final
class _ConformityStatement(Formula):
    """A value against its limits by a named decision rule, with the statement of a non-binary rule beside the three outcomes."""

    def __call__(
        self,
        value: float,
        standard_uncertainty: float,
        rule: str | DecisionRule | None = None,
        lower: float | None = None,
        upper: float | None = None,
    ) -> Result:
        """A value against its limits by a named decision rule, with the statement of a non-binary rule beside the three outcomes."""

@final
class _GlobalRisk(Formula):
    """The consumer's and the producer's risk over everything that is tested, for an acceptance interval."""

    def __call__(
        self,
        prior: dict[str, Any],
        standard_uncertainty: float,
        lower: float | None = None,
        upper: float | None = None,
        acceptance_lower: float | None = None,
        acceptance_upper: float | None = None,
    ) -> Result:
        """The consumer's and the producer's risk over everything that is tested, for an acceptance interval."""

@final
class _AcceptanceLimit(Formula):
    """The acceptance limits that keep a wanted consumer's risk."""

    def __call__(
        self,
        prior: dict[str, Any],
        standard_uncertainty: float,
        consumer_risk: float,
        lower: float | None = None,
        upper: float | None = None,
    ) -> Result:
        """The acceptance limits that keep a wanted consumer's risk."""

@final
class _InstrumentUncertainty(Formula):
    """What the statement of an instrument is worth at a reading: half-width, and standard uncertainty with its parts as sources or as one."""

    def __call__(self, reading: float, accuracy: Accuracy | dict[str, Any]) -> Result:
        """What the statement of an instrument is worth at a reading: half-width, and standard uncertainty with its parts as sources or as one."""

@final
class _OperatingUncertainty(Formula):
    """Operating uncertainty B = |A| + 1.15 √(ΣE²) of an instrument, and the standard uncertainty that its edition makes of it."""

    def __call__(
        self,
        intrinsic: float,
        variations: Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]],
        edition: float | None = None,
    ) -> Result:
        """Operating uncertainty B = |A| + 1.15 √(ΣE²) of an instrument, and the standard uncertainty that its edition makes of it."""

@final
class _OperatingLimit(Formula):
    """The largest operating uncertainty that a part of IEC 61557 lets an instrument have; recalled, not read."""

    def __call__(self, part: float, reads: str | None = None) -> Result:
        """The largest operating uncertainty that a part of IEC 61557 lets an instrument have; recalled, not read."""

@final
class _ProvingReading(Formula):
    """The last reading that proves a limit: the largest below a maximum, the smallest above a minimum."""

    def __call__(
        self,
        limit: float,
        comparator: str,
        accuracy: Accuracy | dict[str, Any],
        rule: str | DecisionRule | None = None,
    ) -> Result:
        """The last reading that proves a limit: the largest below a maximum, the smallest above a minimum."""

conformity_probability: Final[_ConformityProbability]
guard_band: Final[_GuardBand]
conformity_statement: Final[_ConformityStatement]
global_risk: Final[_GlobalRisk]
acceptance_limit: Final[_AcceptanceLimit]
instrument_uncertainty: Final[_InstrumentUncertainty]
operating_uncertainty: Final[_OperatingUncertainty]
operating_limit: Final[_OperatingLimit]
proving_reading: Final[_ProvingReading]

__all__ = [
    "conformity_probability",
    "guard_band",
    "conformity_statement",
    "global_risk",
    "acceptance_limit",
    "instrument_uncertainty",
    "operating_uncertainty",
    "operating_limit",
    "proving_reading",
]
