# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Conformity: probabilities, guard bands, risks of consumer and producer, what an instrument's statement is worth; states, tests and scores."""

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

@final
class _NoisyOr(Formula):
    """Probability of a symptom that several causes can bring about, each on its own: 1 - (1 - leak) ∏(1 - p)."""

    def __call__(
        self,
        probabilities: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        leak: float | None = None,
    ) -> Result:
        """Probability of a symptom that several causes can bring about, each on its own: 1 - (1 - leak) ∏(1 - p)."""

@final
class _NoisyOrCauses(Formula):
    """Probability of each of several independent causes when their common symptom is there, by all states of them; at most 20 causes."""

    def __call__(
        self,
        priors: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        probabilities: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        leak: float | None = None,
    ) -> Result:
        """Probability of each of several independent causes when their common symptom is there, by all states of them; at most 20 causes."""

@final
class _NaiveBayes(Formula):
    """Probability after independent tests of one question: prior odds times the likelihood ratios."""

    def __call__(
        self,
        prior: float,
        likelihood_ratios: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
    ) -> Result:
        """Probability after independent tests of one question: prior odds times the likelihood ratios."""

@final
class _PosteriorOfStates(Formula):
    """Probabilities of exclusive states after observations that are independent given the state."""

    def __call__(
        self,
        prior: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        likelihoods: Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]],
    ) -> Result:
        """Probabilities of exclusive states after observations that are independent given the state."""

@final
class _Entropy(Formula):
    """Entropy of a distribution over exclusive states, in bits and in nats; a state of probability 0 adds nothing."""

    def __call__(
        self,
        probabilities: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
    ) -> Result:
        """Entropy of a distribution over exclusive states, in bits and in nats; a state of probability 0 adds nothing."""

@final
class _InformationGain(Formula):
    """By how much a test is expected to lower the entropy over exclusive states (mutual information)."""

    def __call__(
        self,
        prior: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        outcomes: Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]],
    ) -> Result:
        """By how much a test is expected to lower the entropy over exclusive states (mutual information)."""

@final
class _RepairOrder(Formula):
    """In which order to look at components when one of them is the fault (numbered from 1), by probability over cost, and the expected cost."""

    def __call__(
        self,
        probabilities: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        costs: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
    ) -> Result:
        """In which order to look at components when one of them is the fault (numbered from 1), by probability over cost, and the expected cost."""

@final
class _ValueOfInformation(Formula):
    """What it is worth to know the state before acting (evpi), and what a test is worth (evsi, without its price); acts are numbered from 1."""

    def __call__(
        self,
        prior: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        costs: Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]],
        outcomes: Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]] | None = None,
    ) -> Result:
        """What it is worth to know the state before acting (evpi), and what a test is worth (evsi, without its price); acts are numbered from 1."""

@final
class _BrierScore(Formula):
    """Brier score of two classes, the mean of (p - y)²: from 0 (best) to 1."""

    def __call__(
        self,
        outcomes: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        probabilities: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
    ) -> Result:
        """Brier score of two classes, the mean of (p - y)²: from 0 (best) to 1."""

@final
class _BrierScoreClasses(Formula):
    """Brier score of several classes, the mean over cases of Σ(p_k - y_k)²: from 0 (best) to 2; of two classes twice brier_score."""

    def __call__(
        self,
        truth: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        probabilities: Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]],
    ) -> Result:
        """Brier score of several classes, the mean over cases of Σ(p_k - y_k)²: from 0 (best) to 2; of two classes twice brier_score."""

@final
class _LogScore(Formula):
    """Mean of -ln p of what was true, in nats; a probability below 1e-12 counts as 1e-12, and how many did is said."""

    def __call__(
        self,
        probabilities_of_truth: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
    ) -> Result:
        """Mean of -ln p of what was true, in nats; a probability below 1e-12 counts as 1e-12, and how many did is said."""

@final
class _Reliability(Formula):
    """Stated probabilities against what happened, in bins of equal width, and the expected calibration error."""

    def __call__(
        self,
        outcomes: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        probabilities: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        bins_count: float | None = None,
    ) -> Result:
        """Stated probabilities against what happened, in bins of equal width, and the expected calibration error."""

@final
class _RankUniformity(Formula):
    """Whether counts are those of equally likely bins (ranks of a simulation): χ² and the probability of one at least as large."""

    def __call__(
        self,
        counts: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
    ) -> Result:
        """Whether counts are those of equally likely bins (ranks of a simulation): χ² and the probability of one at least as large."""

@final
class _ChiSquareQuantile(Formula):
    """The value that χ² stays below with a probability."""

    def __call__(self, p: float, degrees_of_freedom: float) -> Result:
        """The value that χ² stays below with a probability."""

@final
class _MinimalDiagnoses(Formula):
    """The least sets of faulty components that explain every conflict; the smaller first, then by name."""

    def __call__(self, conflicts: Sequence[Sequence[str]]) -> Result:
        """The least sets of faulty components that explain every conflict; the smaller first, then by name."""

conformity_probability: Final[_ConformityProbability]
guard_band: Final[_GuardBand]
conformity_statement: Final[_ConformityStatement]
global_risk: Final[_GlobalRisk]
acceptance_limit: Final[_AcceptanceLimit]
instrument_uncertainty: Final[_InstrumentUncertainty]
operating_uncertainty: Final[_OperatingUncertainty]
operating_limit: Final[_OperatingLimit]
proving_reading: Final[_ProvingReading]
noisy_or: Final[_NoisyOr]
noisy_or_causes: Final[_NoisyOrCauses]
naive_bayes: Final[_NaiveBayes]
posterior_of_states: Final[_PosteriorOfStates]
entropy: Final[_Entropy]
information_gain: Final[_InformationGain]
repair_order: Final[_RepairOrder]
value_of_information: Final[_ValueOfInformation]
brier_score: Final[_BrierScore]
brier_score_classes: Final[_BrierScoreClasses]
log_score: Final[_LogScore]
reliability: Final[_Reliability]
rank_uniformity: Final[_RankUniformity]
chi_square_quantile: Final[_ChiSquareQuantile]
minimal_diagnoses: Final[_MinimalDiagnoses]

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
    "noisy_or",
    "noisy_or_causes",
    "naive_bayes",
    "posterior_of_states",
    "entropy",
    "information_gain",
    "repair_order",
    "value_of_information",
    "brier_score",
    "brier_score_classes",
    "log_score",
    "reliability",
    "rank_uniformity",
    "chi_square_quantile",
    "minimal_diagnoses",
]
