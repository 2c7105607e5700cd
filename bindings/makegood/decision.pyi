# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Decisions: probabilities of states, entropy, order of repairs, value of information, scores of stated probabilities."""

from collections.abc import Sequence
from typing import Any, Final, final

import numpy as np
import numpy.typing as npt

from ._core import Formula
from ._slow import Result

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
