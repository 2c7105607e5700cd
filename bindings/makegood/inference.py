# SPDX-License-Identifier: MIT
"""From readings to the probabilities of what may be wrong.

Hypotheses are forward models: parameters with distributions, and for each test what it would show. All readings are taken together: named
error sources that two readings share are one error. "none_of_these" is always among the answers.

    from makegood.inference import Explanations, Hypothesis, Observation, Test, formula, normal

    mat = {"tolerance": normal(1, 0.03)}
    e = Explanations(
        [Test("r", 10, 1000)],
        [
            Hypothesis("sound", 0.8, mat, {"r": formula("heating.element_resistance", power_w=450, voltage_v=230, times="tolerance")}),
            Hypothesis("one_of_three_open", 0.1, mat, {"r": lambda tolerance: 1.5 * 117.6 * tolerance}),
            Hypothesis("open", 0.1, {}, {"r": {"above": 0.98}}),
        ],
    )
    e.explain([Observation("r", 124.9, sources={"meter": 0.12}, gains={"meter": 0.0046})]).posterior

Values are in the unit of the test, whichever it is; priors are weights; probabilities are 0 to 1; likelihoods and entropies are natural
logarithms. Bad input raises RangeError; readings that cannot occur together raise RelationError.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from typing import Any, NamedTuple, Union

from . import _core
from ._core import Measured, Reading

Distribution = tuple[Any, ...]


def normal(mean: float, sd: float) -> Distribution:
    """Normal distribution; the standard deviation is above 0."""
    return ("normal", mean, sd)


def log_normal(median: float, sd_of_log: float) -> Distribution:
    """Normal in the natural logarithm; both above 0."""
    return ("log_normal", median, sd_of_log)


def uniform(low: float, high: float) -> Distribution:
    """Every value between two ends alike."""
    return ("uniform", low, high)


def log_uniform(low: float, high: float) -> Distribution:
    """Every order of magnitude between two ends alike; the low end is above 0."""
    return ("log_uniform", low, high)


def triangular(low: float, most_likely: float, high: float) -> Distribution:
    """Rising to the most likely value, then falling."""
    return ("triangular", low, most_likely, high)


class Formula(NamedTuple):
    """A formula of the catalogue as a prediction; made by formula()."""

    name: str
    arguments: dict[str, Any]
    times: tuple[Any, ...]
    plus: tuple[Any, ...]


def formula(name: str, *, times: Any = (), plus: Any = (), **arguments: Any) -> Formula:
    """A formula by its full name ("heating.element_resistance"), with exact slopes and at the speed of C++.

    Each argument is a number, a word of a choice, or the name of a parameter of the hypothesis. `times` and `plus` are numbers or
    parameters (one, or a sequence) that the result is multiplied by, and that are then added to it.
    """

    def several(x: Any) -> tuple[Any, ...]:
        return (x,) if isinstance(x, (str, float, int)) else tuple(x)

    return Formula(name, dict(arguments), several(times), several(plus))


Real = Union[float, Formula, Callable[..., float]]
Outcomes = Mapping[str, float]
# A value, probabilities of outcomes by name, or both.
Prediction = Union[Real, Outcomes, tuple[Real, Outcomes]]


class Test(NamedTuple):
    """A test that can be made, and what it may show when nothing is known.

    `low` to `high` is the range of the instrument (both 0: categories alone). Without knowledge, values are uniform in the logarithm
    (or uniform), and "above", "below" and the categories together have `outcomes_share`.
    """

    id: str
    low: float = 0.0
    high: float = 0.0
    categories: Sequence[str] = ()
    title: str = ""
    broad: str = "log_uniform"
    outcomes_share: float = 0.2


class Hypothesis(NamedTuple):
    """One explanation, exclusive of the others.

    `predictions`: for each test a number, a formula(), a callable of the parameters in their order (slopes by central differences), a dict
    of outcomes with their probabilities ("above", "below", categories), or a pair of value and outcomes. Of a test that is not there it
    says nothing. `danger`: "none", "property" or "life".
    """

    id: str
    prior: float
    parameters: Mapping[str, Distribution]
    predictions: Mapping[str, Prediction]
    title: str = ""
    danger: str = "none"


class Observation:
    """One reading of a test, with its error sources by name (standard uncertainties in the unit of the test).

    `gains` are parts of the true value (0.005: half a per cent). A Measured brings its sources, a Reading its instrument and then needs
    `reads`, the kind of reading ("resistance", "continuity", ...). `resolution` is one count of a display that rounds.
    """

    __slots__ = ("as_tuple",)

    def __init__(
        self,
        test: str,
        value: float | Measured | Reading,
        *,
        sources: Mapping[str, float] | None = None,
        gains: Mapping[str, float] | None = None,
        resolution: float = 0.0,
        reads: str = "",
        kind: str = "value",
    ) -> None:
        self.as_tuple: tuple[Any, ...]
        if isinstance(value, Reading):
            self.as_tuple = (test, "reading", value, reads)
            return
        found = dict(value.sources) if isinstance(value, Measured) else {}
        number = value.value if isinstance(value, Measured) else value
        for name, u in (sources or {}).items():
            found[name] = found.get(name, 0.0) + u
        self.as_tuple = (test, kind, float(number), found, dict(gains or {}), resolution, "")

    @classmethod
    def above(cls, test: str, limit: float | Measured, **how: Any) -> Observation:
        """Over range: the value is above a limit."""
        return cls(test, limit, kind="above", **how)

    @classmethod
    def below(cls, test: str, limit: float | Measured, **how: Any) -> Observation:
        """Under range: the value is below a limit."""
        return cls(test, limit, kind="below", **how)

    @classmethod
    def outcome(cls, test: str, category: str) -> Observation:
        """A category of the test ("no_trip")."""
        made = cls(test, 0.0)
        made.as_tuple = (test, "category", 0.0, {}, {}, 0.0, category)
        return made


class Explained(NamedTuple):
    """What the readings make of the hypotheses; "none_of_these" is the last key."""

    posterior: dict[str, float]
    prior: dict[str, float]
    log_likelihood: dict[str, float]
    method: dict[str, str]  # "first_order", "quasi_random", or "bounded": hopeless beside another one, and not summed
    effective_points: dict[str, float]  # of the quasi-random sum; below about 50 it is rough
    log_evidence: float
    leading: str
    robust: bool  # the leading one stays in front when any prior is halved or doubled
    overturned_by: str


class Conflict(NamedTuple):
    """Whether the readings look like readings of the leading listed hypothesis."""

    conflict: bool
    log_density: float
    log_density_1pc: float  # the simulated 1 % quantile
    share_below: float
    leading: str
    text: str


class Predicted(NamedTuple):
    """A value that was read, against what a hypothesis predicts (first order)."""

    reading: int
    mean: float
    standard_uncertainty_of_prediction: float
    standard_uncertainty: float
    distance: float


class Parameter(NamedTuple):
    """A parameter after the readings; `below`: the probability that it is at most the value asked for."""

    mean: float
    sd: float
    below: float


class Explanations:
    """Tests and hypotheses, set up once; then readings come and go.

    `none_prior` (0.02 or more) is the prior of "none of these"; `points` (512, 2048 or 4096) those of the quasi-random sums; `method` is
    "automatic", "first_order" or "quasi_random". What even at its best parameters has less than `hopeless` of the leading one's weight is
    not summed (0: all are). At most 24 readings together and 12 parameters of a hypothesis.
    """

    def __init__(
        self,
        tests: Sequence[Test],
        hypotheses: Sequence[Hypothesis],
        *,
        none_prior: float = 0.05,
        points: int = 4096,
        method: str = "automatic",
        hopeless: float = 1e-12,
    ) -> None:
        def split(p: Any) -> tuple[Any, dict[str, float]]:
            if isinstance(p, Mapping):
                return None, dict(p)
            if isinstance(p, tuple) and not isinstance(p, Formula):
                return real(p[0]), dict(p[1])
            return real(p), {}

        def real(p: Any) -> Any:
            return tuple(p) if isinstance(p, Formula) else p

        self._of: Any = getattr(_core, "_Explanations")(
            [(t.id, t.title, t.low, t.high, list(t.categories), t.broad, t.outcomes_share) for t in tests],
            [
                (h.id, h.title, h.prior, dict(h.parameters), [(test, *split(p)) for test, p in h.predictions.items()], h.danger)
                for h in hypotheses
            ],
            {"none_prior": none_prior, "points": points, "method": method, "hopeless": hopeless},
        )

    def explain(self, readings: Sequence[Observation]) -> Explained:
        """The table for these readings, in place of earlier ones."""
        rows, evidence, leading, robust, overturned = self._of.explain([r.as_tuple for r in readings])
        columns = [{row[0]: row[k] for row in rows} for k in range(1, 6)]
        prior, log_likelihood, posterior, how, points = columns
        return Explained(posterior, prior, log_likelihood, how, points, evidence, leading, robust, overturned)

    def conflict(self) -> Conflict:
        """Compares the readings of the last explain() with simulated ones."""
        return Conflict(*self._of.conflict())

    def predicted(self, hypothesis: str) -> list[Predicted]:
        """The values of the last explain() against what a hypothesis predicts."""
        return [Predicted(*p) for p in self._of.predicted(hypothesis)]

    def parameter(self, hypothesis: str, parameter: str, value: float = math.nan) -> Parameter:
        """A parameter of a hypothesis after the readings of the last explain()."""
        return Parameter(*self._of.parameter(hypothesis, parameter, value))


__all__ = [
    "Conflict", "Explained", "Explanations", "Formula", "Hypothesis", "Observation", "Parameter", "Predicted", "Test", "formula", "log_normal",
    "log_uniform", "normal", "triangular", "uniform",
]  # fmt: skip
