# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
from collections.abc import Sequence
from typing import Any, Literal, NoReturn, TypeAlias, final, overload

import numpy as np
import numpy.typing as npt

from ._measured import MeasuredArray
from ._rows import Readings

__version__: str

# What a formula takes for an array: of numbers, never of texts.
_Array: TypeAlias = npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | Sequence[float] | Sequence[Sequence[float]]
# What a check takes: a number, one with doubt, a reading, or None where nothing was measured.
_Given: TypeAlias = float | Measured | Reading | None
# What a check over rows takes: columns of readings. A list may hold readings and None.
_Rows: TypeAlias = _Array | Readings | MeasuredArray | Sequence[float | Reading | None] | npt.NDArray[np.object_]
_Outcome: TypeAlias = Literal["pass", "fail", "undecided"]

class Error(Exception):
    """Base of every error of the library."""

class RangeError(Error, ValueError):
    """An argument is outside its permitted range, or not one of the listed words."""

class RelationError(Error, ValueError):
    """Two arguments contradict each other."""

class DocumentError(Error, ValueError):
    """A document has problems; `problems` lists (path, text) of all of them."""

    problems: list[tuple[str, str]]

class RuleError(Error, LookupError):
    """A rulebook is unknown."""

class ConvergenceError(Error, ArithmeticError):
    """A solver did not reach the accuracy asked for."""

@final
class Measured:
    """A number with its named error sources; goes into every formula and check and comes out again."""

    @overload
    def __new__(cls, value: float, standard_uncertainty: float, source: str = "stated", dof: float = ...) -> Measured: ...
    @overload
    def __new__(  # type: ignore
        cls, value: float | _Array, standard_uncertainty: float | _Array, source: str = "stated", dof: float = ...
    ) -> MeasuredArray: ...
    @staticmethod
    def exact(value: float) -> Measured: ...
    @property
    def dof(self) -> float: ...
    def coverage_factor(self, probability: float = 0.95) -> float: ...
    def interval(self, probability: float = 0.95) -> tuple[float, float]: ...
    @property
    def value(self) -> float: ...
    @property
    def standard_uncertainty(self) -> float: ...
    @property
    def expanded_uncertainty(self) -> float: ...
    @property
    def sources(self) -> dict[str, float]: ...
    @property
    def assumed(self) -> bool: ...

@final
class Distribution:
    """What is known of a quantity, as a distribution; made by the functions of makegood.distribution."""

    @property
    def mean(self) -> float: ...
    @property
    def standard_uncertainty(self) -> float: ...

@final
class MonteCarlo:
    """What the trials of a Monte Carlo calculation say."""

    @property
    def mean(self) -> float: ...
    @property
    def standard_uncertainty(self) -> float: ...
    @property
    def median(self) -> float: ...
    @property
    def interval(self) -> tuple[float, float]: ...
    @property
    def shortest_interval(self) -> tuple[float, float]: ...
    @property
    def probability(self) -> float: ...
    @property
    def trials(self) -> int: ...
    @property
    def refused(self) -> int: ...
    @property
    def seed(self) -> int: ...
    @property
    def converged(self) -> bool: ...
    @property
    def tolerance(self) -> float: ...
    @property
    def doubt(self) -> dict[str, float]: ...
    def histogram(self) -> tuple[npt.NDArray[np.uint32], float, float]: ...

@final
class Propagated:
    """A result with its uncertainty, by the first order where Monte Carlo confirms it, else by Monte Carlo."""

    @property
    def value(self) -> float: ...
    @property
    def standard_uncertainty(self) -> float: ...
    @property
    def interval(self) -> tuple[float, float]: ...
    @property
    def method(self) -> Literal["first order", "Monte Carlo"]: ...
    @property
    def validated(self) -> bool: ...
    @property
    def word(self) -> str: ...
    @property
    def first_order(self) -> Measured: ...
    @property
    def monte_carlo(self) -> MonteCarlo: ...

class Accuracy:
    """What is stated of one function of an instrument: limits of error, or U with its coverage factor."""

    def __init__(
        self,
        percent: float = 0.0,
        counts: float = 0.0,
        resolution: float = 0.0,
        limit: float = 0.0,
        standard_uncertainty: float = 0.0,
        coverage_factor: float = 0.0,
    ) -> None: ...
    @property
    def percent(self) -> float: ...
    @property
    def counts(self) -> float: ...
    @property
    def resolution(self) -> float: ...
    @property
    def limit(self) -> float: ...
    @property
    def standard_uncertainty(self) -> float: ...
    @property
    def coverage_factor(self) -> float: ...

class Reading:
    """A reading as taken: a value, above or below the range, no trip, not measured, pending."""

    def __init__(self, value: float, accuracy: Accuracy | None = None, instrument: str = "") -> None: ...
    @staticmethod
    def above(limit: float) -> Reading: ...
    @staticmethod
    def below(limit: float) -> Reading: ...
    @staticmethod
    def no_trip() -> Reading: ...
    @staticmethod
    def not_measured() -> Reading: ...
    @staticmethod
    def pending() -> Reading: ...
    @property
    def state(self) -> Literal["value", "above", "below", "no_trip", "not_measured", "pending"]: ...
    @property
    def number(self) -> float | None: ...
    @property
    def instrument(self) -> str: ...

class Rulebook:
    """Limits as data, with edition and clause. Rulebook("bs7671:2018+a2,england-adf-2021")"""

    def __init__(self, ids: str) -> None: ...
    @property
    def id(self) -> str: ...
    def override(
        self,
        name: str,
        limit: str,
        condition: str,
        comparator: Literal["<=", "≤", "<", ">=", "≥", ">", "within"],
        numbers: Sequence[float],
        reason: str,
    ) -> Rulebook: ...
    def rows(self) -> list[dict[str, Any]]: ...

@final
class Verdict:
    """The outcome of a check: pass, fail or undecided with a reason; value, limit, margin, doubt, source, working."""

    @property
    def outcome(self) -> _Outcome: ...
    @property
    def reason(self) -> str: ...
    @property
    def plain(self) -> Literal["pass", "fail", "undecided", ""]: ...
    @property
    def detail(self) -> str: ...
    @property
    def value(self) -> float | None: ...
    @property
    def limit(self) -> float | None: ...
    @property
    def lower(self) -> float | None: ...
    @property
    def upper(self) -> float | None: ...
    @property
    def margin(self) -> float | None: ...
    @property
    def probability(self) -> float | None: ...
    @property
    def comparator(self) -> str: ...
    @property
    def standard_uncertainty(self) -> float: ...
    @property
    def expanded_uncertainty(self) -> float: ...
    @property
    def assumed(self) -> bool: ...
    @property
    def censored(self) -> str: ...
    @property
    def settle(self) -> str: ...
    @property
    def unit(self) -> str: ...
    @property
    def caution(self) -> str: ...
    @property
    def check(self) -> str: ...
    @property
    def rulebook(self) -> str: ...
    @property
    def overrides(self) -> list[str]: ...
    @property
    def source(self) -> str: ...
    @property
    def grade(self) -> str: ...
    def worked(self) -> list[dict[str, Any]]: ...
    def to_dict(self) -> dict[str, Any]: ...
    def __bool__(self) -> NoReturn: ...

@final
class Visit:
    """What was found, read and measured in one place. Made by load_visit() or read_visit()."""

    @property
    def title(self) -> str: ...
    @property
    def place(self) -> str: ...
    @property
    def date(self) -> str: ...
    @property
    def invented(self) -> bool: ...

@final
class Finding:
    """One question asked of one thing, and its answer."""

    @property
    def path(self) -> str: ...
    @property
    def subject(self) -> str: ...
    @property
    def question(self) -> str: ...
    @property
    def plain(self) -> str: ...
    @property
    def next(self) -> str: ...
    @property
    def verdict(self) -> Verdict: ...

@final
class Assessment:
    """The findings of a visit under a rulebook."""

    @property
    def title(self) -> str: ...
    @property
    def rulebook(self) -> str: ...
    @property
    def findings(self) -> list[Finding]: ...
    @property
    def cautions(self) -> list[str]: ...
    def to_dict(self) -> dict[str, Any]: ...

class Formula:
    """A formula, check or model of the catalogue, to be called by its arguments."""

    __name__: str
    __qualname__: str
    @property
    def kind(self) -> Literal["formula", "check", "model"]: ...
    @property
    def argument_names(self) -> tuple[str, ...]: ...
    def describe(self) -> dict[str, Any]: ...

def read_visit(document: dict[str, Any]) -> Visit:
    """A visit from a dict; DocumentError lists all problems with their paths."""

def assess(visit: Visit, *, rules: str | Rulebook) -> Assessment:
    """Every check that the readings allow, and what is still to be measured."""

def rulebooks() -> list[dict[str, str]]:
    """The rulebooks that the library ships."""

def visit_schema() -> dict[str, Any]:
    """JSON Schema (2020-12) of a visit."""

def covariance(a: Measured, b: Measured) -> float:
    """The covariance of two numbers by the sources that they share."""

def correlation(a: Measured, b: Measured) -> float:
    """Between -1 and 1; NaN where one has no uncertainty."""

def coverage_factor(probability: float, dof: float = ...) -> float:
    """The factor of Student's distribution (normal without end of freedom) on both sides."""

def measured_together(readings: Sequence[Sequence[float]], name: str = "together") -> list[Measured]:
    """The means of quantities that were read at the same times (a list of readings for each), correlated as the readings are."""

def measured_with_covariance(
    values: Sequence[float], covariance: Sequence[Sequence[float]], name: str = "together", dof: float = ...
) -> list[Measured]:
    """Numbers with a covariance between them, row by row."""

instruction_set: str
subjects: dict[str, dict[str, Formula]]
outcomes: tuple[str, ...]
reasons: tuple[str, ...]
states: tuple[str, ...]
