# SPDX-License-Identifier: MIT
"""Writes the typed stubs of the package (bindings/makegood/*.pyi) from the built module.

    python bindings/make_stubs.py

The module is found on PYTHONPATH or, if it is not there, in the newest build/*/python. The doors of a subject follow from
their descriptors; classes and functions are written out below and held against the module, so that a member that is new,
gone or has other parameters ends this script with its name. tests/python/test_stubs.py fails when the files are behind.
"""

from __future__ import annotations

import ast
import inspect
import pathlib
import re
import sys
import textwrap
from typing import Any

ROOT = pathlib.Path(__file__).resolve().parents[1]
FOLDER = ROOT / "bindings" / "makegood"
SUBJECTS = ("electrical", "sensing", "heating", "air", "setting_out", "lighting", "price", "decision", "job")
WIDTH = 120
HEAD = "# SPDX-License-Identifier: MIT\n# Written by bindings/make_stubs.py from the built module: do not edit.\n"


class Behind(Exception):
    """What is written here and what the module holds do not agree."""


# ---------------------------------------------------------------------------------------------------------------- _core

CORE_HEAD = '''\
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
'''

# Bodies of the classes; a docstring is the first line of the module's own.
CLASSES = {
    "Error": ("Exception", ""),
    "RangeError": ("Error, ValueError", ""),
    "RelationError": ("Error, ValueError", ""),
    "DocumentError": ("Error, ValueError", "problems: list[tuple[str, str]]"),
    "RuleError": ("Error, LookupError", ""),
    "ConvergenceError": ("Error, ArithmeticError", ""),
    "Measured": (
        "",
        """
        @overload
        def __new__(  # type: ignore
            cls, value: float, standard_uncertainty: float, source: str = "stated", dof: float = ...
        ) -> Measured: ...
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
        """,
    ),
    "Distribution": (
        "",
        """
        @property
        def mean(self) -> float: ...
        @property
        def standard_uncertainty(self) -> float: ...
        """,
    ),
    "MonteCarlo": (
        "",
        """
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
        """,
    ),
    "Propagated": (
        "",
        """
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
        """,
    ),
    "Accuracy": (
        "",
        """
        def __init__(
            self,
            percent: float = 0.0,
            counts: float = 0.0,
            resolution: float = 0.0,
            limit: float = 0.0,
            standard_uncertainty: float = 0.0,
            coverage_factor: float = 0.0,
            range: float = 0.0,
            leads_ohm: float = 0.0,
            leads_standard_uncertainty_ohm: float = 0.0,
            nulled: bool = True,
            leads_left_in: bool = False,
            common_offset: bool = False,
            basis: Literal["stated", "operating_2019", "operating_error_limit"] = "stated",
        ) -> None: ...
        @staticmethod
        def operating(percent: float, edition: int) -> Accuracy: ...
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
        @property
        def range(self) -> float: ...
        @property
        def leads_ohm(self) -> float: ...
        @property
        def leads_standard_uncertainty_ohm(self) -> float: ...
        @property
        def nulled(self) -> bool: ...
        @property
        def leads_left_in(self) -> bool: ...
        @property
        def common_offset(self) -> bool: ...
        @property
        def basis(self) -> str: ...
        """,
    ),
    "Instrument": (
        "",
        """
        def __init__(self, id: str, functions: dict[str, Accuracy | Sequence[Accuracy]]) -> None: ...
        @property
        def id(self) -> str: ...
        def statement(self, reads: str, number: float) -> Accuracy | None: ...
        def measured(self, reads: str, number: float, label: str = "") -> Measured: ...
        def to_dict(self) -> dict[str, Any]: ...
        """,
    ),
    "DecisionRule": (
        "",
        """
        def __init__(self, name: str) -> None: ...
        @staticmethod
        def jcgm106(probability: float) -> DecisionRule: ...
        @staticmethod
        def guard_band(factor: float) -> DecisionRule: ...
        @property
        def name(self) -> str: ...
        @property
        def text(self) -> str: ...
        @property
        def kind(self) -> Literal["probability", "guard band"]: ...
        @property
        def accept(self) -> float: ...
        @property
        def reject(self) -> float: ...
        @property
        def source(self) -> str: ...
        @property
        def grade(self) -> str: ...
        """,
    ),
    "Reading": (
        "",
        """
        def __init__(
            self,
            value: float,
            accuracy: Accuracy | None = None,
            instrument: str | Instrument = "",
            test_voltage_v: float = ...,
            circuit_state: str = "",
            time: str = "",
            supersedes: str = "",
        ) -> None: ...
        @staticmethod
        def above(limit: float, instrument: str | Instrument = "") -> Reading: ...
        @staticmethod
        def below(limit: float, instrument: str | Instrument = "") -> Reading: ...
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
        def accuracy(self) -> Accuracy | None: ...
        @property
        def test_voltage_v(self) -> float | None: ...
        @property
        def circuit_state(self) -> str: ...
        @property
        def time(self) -> str: ...
        @property
        def supersedes(self) -> str: ...
        @property
        def instrument(self) -> str: ...
        """,
    ),
    "Rulebook": (
        "",
        """
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
        """,
    ),
    "Verdict": (
        "",
        """
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
        def better(self) -> dict[str, Any] | None: ...
        @property
        def rule(self) -> str: ...
        @property
        def statement(self) -> str: ...
        @property
        def notes(self) -> list[str]: ...
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
        def which_settle(self, instruments: Sequence[Instrument]) -> list[str]: ...
        def to_dict(self) -> dict[str, Any]: ...
        def __bool__(self) -> NoReturn: ...
        """,
    ),
    "Visit": (
        "",
        """
        @property
        def title(self) -> str: ...
        @property
        def place(self) -> str: ...
        @property
        def date(self) -> str: ...
        @property
        def invented(self) -> bool: ...
        """,
    ),
    "Finding": (
        "",
        """
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
        def kind(self) -> str: ...
        @property
        def call(self) -> str: ...
        @property
        def electrician(self) -> str: ...
        @property
        def consequence(self) -> str: ...
        @property
        def caution(self) -> str: ...
        @property
        def circuit(self) -> str: ...
        @property
        def danger(self) -> str: ...
        @property
        def outcome(self) -> str: ...
        @property
        def verdict(self) -> Verdict: ...
        """,
    ),
    "Assessment": (
        "",
        """
        @property
        def title(self) -> str: ...
        @property
        def rulebook(self) -> str: ...
        @property
        def decision_rule(self) -> str: ...
        @property
        def findings(self) -> list[Finding]: ...
        @property
        def cautions(self) -> list[str]: ...
        def to_dict(self) -> dict[str, Any]: ...
        """,
    ),
    "Formula": (
        "",
        """
        __name__: str
        __qualname__: str
        @property
        def kind(self) -> Literal["formula", "check", "model"]: ...
        @property
        def argument_names(self) -> tuple[str, ...]: ...
        def describe(self) -> dict[str, Any]: ...
        """,
    ),
}
# Members that the stub of a class leaves to the stubs of its doors: only a formula has them, a check or a model raises.
LEFT_TO_THE_DOORS = {"Formula": {"worked", "equation", "sensitivities", "bounds", "monte_carlo", "propagate"}}
# Documentation that the module itself does not carry.
DOCS = {"Formula": "A formula, check or model of the catalogue, to be called by its arguments."}

CORE_FUNCTIONS = '''
def read_visit(document: dict[str, Any]) -> Visit: ...
def assess(visit: Visit, *, rules: str | Rulebook, rule: str | DecisionRule | None = None) -> Assessment: ...
def words() -> dict[str, Any]: ...
def decision_rules() -> list[dict[str, Any]]: ...
def rulebooks() -> list[dict[str, str]]: ...
def visit_schema() -> dict[str, Any]: ...
def covariance(a: Measured, b: Measured) -> float: ...
def correlation(a: Measured, b: Measured) -> float: ...
def coverage_factor(probability: float, dof: float = ...) -> float: ...
def measured_together(readings: Sequence[Sequence[float]], name: str = "together") -> list[Measured]: ...
def measured_with_covariance(
    values: Sequence[float], covariance: Sequence[Sequence[float]], name: str = "together", dof: float = ...
) -> list[Measured]: ...
'''
# Functions of a subject's Python file that are no entries of the catalogue; held against their signatures.
CORE_VARIABLES = {
    "instruction_set": "str",
    "subjects": "dict[str, dict[str, Formula]]",
    "outcomes": "tuple[str, ...]",
    "reasons": "tuple[str, ...]",
    "states": "tuple[str, ...]",
    "operating_limits": "tuple[dict[str, Any], ...]",
}
ROWS_CLASSES = ("Readings", "Verdicts")  # of _rows.py
OTHER_CLASSES = {"MeasuredArray": "_measured", "CurvatureWarning": "_slow", "Session": "session"}

# ----------------------------------------------------------------------------------------------------- the whole package

MEASURED = '''\
from collections.abc import Iterator
from typing import Any

import numpy as np
import numpy.typing as npt

from ._core import Measured, _Array

class MeasuredArray:
    """Columns of numbers with their named error sources."""

    value: npt.NDArray[np.float64]
    sources: dict[str, npt.NDArray[np.float64]]
    assumed: bool
    def __init__(self, value: float | _Array, standard_uncertainty: float | _Array, source: str = "stated", dof: float = ...) -> None: ...
    @property
    def standard_uncertainty(self) -> npt.NDArray[np.float64]: ...
    @property
    def expanded_uncertainty(self) -> npt.NDArray[np.float64]: ...
    @property
    def shape(self) -> tuple[int, ...]: ...
    @property
    def ndim(self) -> int: ...
    @property
    def size(self) -> int: ...
    def __len__(self) -> int: ...
    def __getitem__(self, index: Any) -> Any: ...
    def __iter__(self) -> Iterator[Measured | MeasuredArray]: ...
'''

DISTRIBUTION = '''\
"""What is known of a quantity, as a distribution: arguments of a formula's monte_carlo() and propagate()."""

from ._core import Distribution as Distribution

def arcsine(low: float, high: float) -> Distribution: ...
def exponential(mean: float) -> Distribution: ...
def normal(mean: float, standard_uncertainty: float) -> Distribution: ...
def rectangular(low: float, high: float) -> Distribution: ...
def student(mean: float, scale: float, dof: float) -> Distribution: ...
def trapezoidal(low: float, high: float, top: float) -> Distribution: ...
def triangular(low: float, high: float) -> Distribution: ...

__all__ = ["Distribution", "arcsine", "exponential", "normal", "rectangular", "student", "trapezoidal", "triangular"]
'''

SLOW = '''\
from typing import Any

class CurvatureWarning(UserWarning): ...

class Result:
    """The result of a model: its fields as attributes, and as a mapping by `to_dict()`."""

    def __init__(self, fields: dict[str, Any]) -> None: ...
    def __getattr__(self, name: str) -> Any: ...
    def to_dict(self) -> dict[str, Any]: ...
    def __eq__(self, other: object) -> bool: ...

class Worked:
    """Worked steps: a list of dicts in `steps`, text by `str()`, LaTeX by `latex()`; a notebook shows the LaTeX."""

    steps: list[dict[str, Any]]
    value: float
    unit: str
    def __init__(self, fields: dict[str, Any]) -> None: ...
    def latex(self) -> str: ...
    def _repr_latex_(self) -> str: ...
'''

ROWS = '''\
from collections.abc import Iterator, Sequence
from typing import Any, ClassVar, Literal, NoReturn, TypeAlias

import numpy as np
import numpy.typing as npt

from ._core import Accuracy, Instrument, Reading, Verdict

_Numbers: TypeAlias = npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | Sequence[float]
_Column: TypeAlias = npt.NDArray[np.float64]
_Codes: TypeAlias = npt.NDArray[np.int8]
_Mask: TypeAlias = npt.NDArray[np.bool_]

class Readings:
    """One argument of a check over many rows, with what is known of the instrument."""

    values: _Column
    states: _Codes | None
    standard_uncertainty: _Column | None
    accuracy: Accuracy | None
    instrument: str | Instrument
    exact: bool
    def __init__(
        self,
        values: _Numbers | Sequence[float | Reading | None] | npt.NDArray[np.object_],
        *,
        states: Sequence[str] | Sequence[int] | npt.NDArray[np.str_] | npt.NDArray[np.integer[Any]] | None = None,
        standard_uncertainty: float | _Numbers | None = None,
        accuracy: Accuracy | None = None,
        instrument: str | Instrument = "",
        exact: bool = False,
    ) -> None: ...

class Verdicts:
    """The outcomes of a check over many rows, in columns; v[i] is the Verdict of one row, with its words and worked steps."""

    outcomes: ClassVar[tuple[str, ...]]
    reasons: ClassVar[tuple[str, ...]]
    shape: tuple[int, ...]
    assumed: bool
    outcome: _Codes
    reason: _Codes
    plain: _Codes
    value: _Column
    lower: _Column
    upper: _Column
    margin: _Column
    standard_uncertainty: _Column
    probability: _Column
    @property
    def check(self) -> str: ...
    @property
    def rule(self) -> str: ...
    @property
    def limit(self) -> _Column: ...
    @property
    def expanded_uncertainty(self) -> _Column: ...
    @property
    def passed(self) -> _Mask: ...
    @property
    def failed(self) -> _Mask: ...
    @property
    def undecided(self) -> _Mask: ...
    def words(self, column: Literal["outcome", "reason", "plain"]) -> npt.NDArray[np.str_]: ...
    def count(self) -> dict[str, int]: ...
    def to_dict(self) -> dict[str, npt.NDArray[Any]]: ...
    def __len__(self) -> int: ...
    def __bool__(self) -> NoReturn: ...
    def __getitem__(self, index: int | tuple[int, ...]) -> Verdict: ...
    def __iter__(self) -> Iterator[Verdict]: ...
'''

INIT_FUNCTIONS = '''
def get_include() -> str: ...
def get_cmake_dir() -> str: ...
def catalogue() -> list[dict[str, Any]]: ...
def load_visit(path: str | os.PathLike[str]) -> Visit: ...
def assess_many(
    visits: Sequence[Visit | dict[str, Any]],
    *,
    rules: str | Rulebook,
    rule: str | DecisionRule | None = None,
    threads: int = 1,
    inquiries: bool = False,
    progress: bool | Callable[[int], None] = False,
) -> Findings: ...
def report(assessment: Assessment | dict[str, Any], audience: Literal["client", "record", "quote"] = "record") -> str: ...
def message(assessment: Assessment | dict[str, Any], limit: int = 480) -> str: ...
'''

MODEL_ARGUMENTS = {
    "list": "Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]]",
    "reading": "float | Measured | Reading | dict[str, Any] | None",
    "rulebook": "str | Rulebook",
    "number": "float",
    "numbers": "Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]]",
    "table": "Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]]",
    "names": "Sequence[Sequence[str]]",
    "texts": "Sequence[str]",
    "readings": "Sequence[float | Measured | Reading | dict[str, Any]] | npt.NDArray[np.floating[Any]]",
    "objects": "Sequence[dict[str, Any]]",
    "object": "dict[str, Any]",
    "family": "str | dict[str, Any]",
    "number or numbers": "float | Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]]",
    "number or object": "float | dict[str, Any]",
    "text": "str",
    "text or object": "str | dict[str, Any]",
    "groups": "Sequence[dict[str, Any]]",
    "bool": "bool",
    "accuracy": "Accuracy | dict[str, Any]",
    "rule": "str | DecisionRule",
    "amount": "str | int | Decimal",
    "text or object": "str | dict[str, Any]",
}

# Functions and classes of a subject beside its doors: what they need imported, and their text.
BESIDE_DOORS = {
    "setting_out": (
        {"Any", "Sequence", "Result"},
        """
def draw_wall(
    wall: dict[str, Any],
    placed: Result | dict[str, Any] | None = None,
    hole_diameter_mm: float = 6.0,
    keep_outs: Sequence[dict[str, Any]] = (),
    zones: Sequence[dict[str, Any]] = (),
    title: str = "Where to drill",
) -> str: ...
""",
    ),
    "price": (
        {"Any", "NamedTuple", "Sequence", "np", "npt"},
        '''
_Whole: TypeAlias = int | Sequence[int] | npt.NDArray[np.integer[Any]]

class InvoiceTotals(NamedTuple):
    """One number an invoice, in whole minor units: NumPy arrays of int64."""

    net_minor: npt.NDArray[np.int64]
    vat_minor: npt.NDArray[np.int64]
    total_minor: npt.NDArray[np.int64]

def invoice_totals(
    invoice: _Whole,
    quantity: _Whole,
    unit_price: _Whole,
    rate: _Whole,
    *,
    quantity_digits: int = 0,
    price_digits: int = 0,
    rate_digits: int = 2,
    rounding: str = "rate_half_up",
    line_mode: str = "half_up",
) -> InvoiceTotals:
    """Net, VAT and total of many invoices at once, exactly: the same numbers as `quote` gives one by one."""
''',
    ),
}

# ---------------------------------------------------------------------------------------------------- holding it against


def first_line(text: str | None) -> str:
    """The first sentence of a documentation; of pybind11's, without the line of the signature."""
    lines = [line.strip() for line in (text or "").strip().splitlines() if line.strip()]
    if lines and re.match(r"\w+\(", lines[0]):
        lines = lines[1:]
    return lines[0] if lines else ""


def parameters_of(node: ast.FunctionDef) -> list[str]:
    a = node.args
    return [p.arg for p in (*a.posonlyargs, *a.args, *a.kwonlyargs) if p.arg != "self"]


def parameters_said(doc: str | None) -> list[str] | None:
    """Names of the parameters in the first line of pybind11's documentation; None where there is none."""
    found = re.match(r"\w+\((.*)\) -> ", (doc or "").split("\n")[0])
    if not found:
        return None
    names, depth, word = [], 0, ""
    for c in found.group(1) + ",":
        depth += (c in "[({") - (c in "])}")
        if c == "," and depth == 0:
            name = word.split(":")[0].split("=")[0].strip()
            if name and name not in ("self", "*") and not re.fullmatch(r"arg\d+", name):
                names.append(name)
            word = ""
        else:
            word += c
    return names


def must_agree(what: str, written: list[str], found: list[str] | None) -> None:
    if found is not None and written != found:
        raise Behind(f"{what} takes ({', '.join(found)}); make_stubs.py has ({', '.join(written)})")


SIMPLE = ("str", "float", "bool", "int")


def class_text(module: Any, name: str) -> str:
    bases, body = CLASSES[name]
    cls = getattr(module, name)
    tree = ast.parse(textwrap.dedent(body))
    functions = {n.name: n for n in tree.body if isinstance(n, ast.FunctionDef)}
    written = set(functions) | {n.target.id for n in tree.body if isinstance(n, ast.AnnAssign) and isinstance(n.target, ast.Name)}
    found = {k for k in vars(cls) if not k.startswith("_")}
    lines = textwrap.dedent(body).strip("\n").splitlines() if body.strip() else []
    for extra in sorted(found - written - LEFT_TO_THE_DOORS.get(name, set())):
        said = re.search(r"-> (\w+)\s*$", getattr(getattr(vars(cls)[extra], "fget", None), "__doc__", "") or "")
        if not said or said.group(1) not in SIMPLE:
            raise Behind(f"{name}.{extra} is new: write it into CLASSES of make_stubs.py")
        lines += ["@property", f"def {extra}(self) -> {said.group(1)}: ..."]
    gone = {k for k in written if not k.startswith("_")} - found - ({"problems"} if name == "DocumentError" else set())
    if gone:
        raise Behind(f"{name} has no {', '.join(sorted(gone))} any more: take it out of CLASSES of make_stubs.py")
    for method, node in functions.items():
        member = vars(cls).get(method)
        doc = getattr(getattr(member, "__func__", member), "__doc__", None)
        if not isinstance(member, property):
            must_agree(f"{name}.{method}", parameters_of(node), parameters_said(doc))
    document = DOCS.get(name) or first_line(cls.__doc__)
    if not document:
        raise Behind(f"{name} says nothing of itself: write it into DOCS of make_stubs.py")
    fixed = "__init__" not in functions and "Error" not in name and name != "Formula"  # the doors' stubs inherit from it
    out = ["@final" if fixed else "", f"class {name}{f'({bases})' if bases else ''}:", f'    """{document}"""']
    if lines:
        out += [""] + [f"    {line}" if line else "" for line in lines]
    return "\n".join(out if out[0] else out[1:]) + "\n"


def functions_text(module: Any, written: str, signature: bool) -> str:
    out = []
    for node in ast.parse(written).body:
        assert isinstance(node, ast.FunctionDef)
        f = getattr(module, node.name, None)
        if f is None:
            raise Behind(f"there is no {node.name}() any more: take it out of make_stubs.py")
        found = list(inspect.signature(f).parameters) if signature else parameters_said(f.__doc__)
        must_agree(f"{node.name}()", parameters_of(node), found)
        head = ast.get_source_segment(written, node)
        assert head is not None
        document = first_line(f.__doc__)
        out.append(head.removesuffix(" ...") + f'\n    """{document}"""\n' if document else head + "\n")
    return "\n".join(out)


def core_stub(core: Any) -> str:
    public = {n for n in vars(core) if not n.startswith("_")}
    functions = {n.name for n in ast.parse(CORE_FUNCTIONS).body if isinstance(n, ast.FunctionDef)}
    unknown = public - set(CLASSES) - functions - set(CORE_VARIABLES)
    if unknown:
        raise Behind(f"_core holds {', '.join(sorted(unknown))}: write it into make_stubs.py")
    text = HEAD + CORE_HEAD + "\n"
    text += "\n".join(class_text(core, name) for name in CLASSES) + "\n"
    text += functions_text(core, CORE_FUNCTIONS, signature=False) + "\n"
    return text + "".join(f"{name}: {type_}\n" for name, type_ in CORE_VARIABLES.items())


def init_stub(package: Any) -> str:
    functions = {n.name for n in ast.parse(INIT_FUNCTIONS).body if isinstance(n, ast.FunctionDef)}
    names = sorted(set(package.__all__))
    lost = functions - set(names)
    if lost:
        raise Behind(f"{', '.join(sorted(lost))} is not in __all__ any more: take it out of INIT_FUNCTIONS of make_stubs.py")
    modules = [n for n in names if n in SUBJECTS or n == "distribution"]
    from_core = [n for n in names if n not in functions and n not in modules and n not in ROWS_CLASSES and n not in OTHER_CLASSES]
    for n in from_core:
        if not hasattr(package._core, n):
            raise Behind(f"makegood.{n} is new: write it into INIT_FUNCTIONS of make_stubs.py")
    text = HEAD + "import os\nfrom collections.abc import Callable, Sequence\nfrom typing import Any, Literal\n\n"
    text += "".join(f"from . import {n} as {n}\n" for n in modules)
    text += "from ._core import (\n" + "".join(f"    {n} as {n},\n" for n in from_core) + ")\n\n"
    text += "".join(f"from .{place} import {n} as {n}\n" for n, place in OTHER_CLASSES.items())
    text += "".join(f"from ._rows import {n} as {n}\n" for n in ROWS_CLASSES)
    text += "from ._many import Findings\n\n"
    text += functions_text(package, INIT_FUNCTIONS, signature=True)
    return text + "\n__all__ = [\n" + "".join(f'    "{n}",\n' for n in names) + "]\n"


# ------------------------------------------------------------------------------------------------------------- the doors


def camel(name: str) -> str:
    return "_" + "".join(word[:1].upper() + word[1:] for word in name.split("_"))


def number(x: float) -> str:
    return repr(float(x))


def definition(name: str, arguments: list[str], result: str, indent: str = "    ", document: str = "") -> str:
    """A method, on one line or one argument a line."""
    tail = f") -> {result}:"
    end = f'\n{indent}    """{document}"""\n' if document else " ...\n"
    line = f"{indent}def {name}(self" + "".join(f", {a}" for a in arguments) + tail
    if len(line) + (0 if document else 4) <= WIDTH:
        return line + end
    return f"{indent}def {name}(\n{indent}    self,\n" + "".join(f"{indent}    {a},\n" for a in arguments) + indent + tail + end


def of_numbers(words: Any) -> bool:
    """Words that are numbers (sizes, ratings) may be given as numbers."""
    return words[0][0].isdigit()


class Subject:
    def __init__(self, name: str, doors: dict[str, Any]) -> None:
        self.name = name
        self.doors = doors
        self.aliases: dict[str, tuple[str, ...]] = {}
        self.used: set[str] = set()

    def choice(self, argument: dict[str, Any]) -> str:
        words = tuple(argument["one_of"])
        alias = name = camel(argument["name"])
        n = 2
        while self.aliases.setdefault(alias, words) != words:
            alias, n = f"{name}{n}", n + 1
        return alias

    @staticmethod
    def default(argument: dict[str, Any]) -> str:
        if "default" not in argument:
            return ""
        given = argument["default"]
        return f' = "{given}"' if isinstance(given, str) else f" = {number(given)}"

    def arguments(self, described: list[dict[str, Any]], a_number: str, a_word: str = "{}") -> list[str]:
        def word(a: dict[str, Any]) -> str:
            return a_word.format(self.choice(a)) + (" | _Array" if "Sequence" in a_word and of_numbers(a["one_of"]) else "")

        return [f"{a['name']}: {word(a) if 'one_of' in a else a_number}{self.default(a)}" for a in described]

    def formula(self, name: str, door: Any) -> str:
        d = door.describe()
        described = d["arguments"]
        taken = {a["name"] for a in described} & {"out", "where", "errors", "threads", "order", "trials", "digits", "probability", "seed", "most", "refused_share"}
        if taken:
            raise Behind(f"{self.name}.{name}: an argument is called {', '.join(taken)}, as one of the keywords of arrays")
        errors = 'errors: Literal["raise", "nan"] = "raise"'
        has_numbers = any("one_of" not in a for a in described)
        numbers = self.arguments(described, "float")
        doubtful = self.arguments(described, "float | Measured")
        words = "{0} | Sequence[{0}] | npt.NDArray[np.str_] | npt.NDArray[np.object_]"
        arrays = self.arguments(described, "float | _Array", words)
        out = "out: npt.NDArray[np.float64] | None = None"
        threads = "threads: int = 1"
        where = "where: bool | npt.NDArray[np.bool_] = True"
        self.used |= {"Literal", "Sequence", "Measured", "MeasuredArray", "Distribution", "MonteCarlo", "Propagated", "Worked", "_Array", "overload", "np", "npt"}
        # A plain number is among what the later overloads take, and they return something else: the first that fits is
        # taken. mypy calls that an overlap, by a name that differs between its versions.
        text = ""
        for method in (
            definition("__call__", [*numbers, "*", errors], "float", document=d["summary"]),
            *([definition("__call__", [*doubtful, "*", "order: Literal[1, 2] = 1"], "Measured")] if has_numbers else []),
        ):
            first, rest = method.split("\n", 1)
            text += f"    @overload\n{first}  # type: ignore\n{rest}"
        first, rest = definition("__call__", [*arrays, "*", out, where, errors, threads], "npt.NDArray[np.float64]").split("\n", 1)
        text += f"    @overload\n{first}{'  # type: ignore' if has_numbers else ''}\n{rest}"
        if has_numbers:
            mixed = self.arguments(described, "float | _Array | Measured | MeasuredArray", words)
            if all("one_of" in a or self.default(a) for a in described):  # nothing but words is no array of doubts: a number is given
                mixed = [a.partition(" = ")[0] for a in mixed]
            text += "    @overload\n" + definition("__call__", [*mixed, "*", errors, threads], "MeasuredArray")
        text += definition("worked", doubtful, "Worked")
        text += definition("equation", ["latex: bool = False"], "str")
        first, rest = definition("sensitivities", doubtful, "dict[str, float]").split("\n", 1)
        text += f"    @overload\n{first}  # type: ignore\n{rest}"
        text += "    @overload\n" + definition("sensitivities", [*arrays, "*", errors, threads], "dict[str, npt.NDArray[np.float64]]")
        text += definition("bounds", self.arguments(described, "float | tuple[float, float]"), "tuple[float, float]")
        drawn = [*self.arguments(described, "float | Measured | Distribution"), "*", "trials: int | None = None", "digits: int = 2", "probability: float = 0.95", "seed: int = 1", threads,
                 "most: int = 5_000_000", "refused_share: float = 0.001"]  # fmt: skip
        return text + definition("monte_carlo", drawn, "MonteCarlo") + definition("propagate", drawn, "Propagated")

    def check(self, name: str, door: Any) -> str:
        d = door.describe()
        self.used |= {"_Given", "_Rows", "DecisionRule", "Verdict", "Verdicts", "Rulebook", "Literal", "Sequence", "overload", "np", "npt"}
        by_name = {a["name"]: a for a in d["arguments"]}
        words = "{0} | Sequence[{0}] | npt.NDArray[np.str_] | npt.NDArray[np.object_]"
        one: list[str] = []
        rows: list[str] = []
        for p in inspect.signature(door).parameters.values():
            if p.kind == p.KEYWORD_ONLY:  # the decision rule
                continue
            if p.name == "rulebook" and p.name not in by_name:
                book = "rulebook: str | Rulebook" + (" | None = None" if p.default is None else "")
                one.append(book)
                rows.append(book)
            else:
                one += self.arguments([by_name[p.name]], "_Given")
                rows += self.arguments([by_name[p.name]], "_Given | _Rows", words)
        rule = "rule: str | DecisionRule | None = None"
        how = ["*", 'errors: Literal["raise", "nan"] = "raise"', "threads: int = 1", rule]
        first, rest = definition("__call__", [*one, "*", rule], "Verdict", document=d["summary"]).split("\n", 1)
        return f"    @overload\n{first}  # type: ignore\n{rest}    @overload\n" + definition("__call__", [*rows, *how], "Verdicts")

    def model(self, name: str, door: Any) -> str:
        d = door.describe()
        result = d["returns"]
        self.used.add(result)
        arguments = []
        for a in d["arguments"]:
            if a["type"] not in MODEL_ARGUMENTS:
                raise Behind(f"{self.name}.{name}: {a['name']} is of type {a['type']}: write it into MODEL_ARGUMENTS of make_stubs.py")
            type_ = MODEL_ARGUMENTS[a["type"]]
            self.used |= {w for w in ("Sequence", "np", "npt", "Any", "Decimal", "Accuracy", "DecisionRule", "Measured", "Reading", "Rulebook") if re.search(rf"\b{w}\b", type_)}
            optional = "" if not a["optional"] else (" = None" if "None" in type_ else " | None = None")
            arguments.append(f"{a['name']}: {type_}{optional}")
        return definition("__call__", arguments, result, document=d["summary"])

    def stub(self, document: str, module: Any) -> str:
        classes, variables = [], []
        needed, beside = BESIDE_DOORS.get(self.name, (set(), ""))
        self.used |= needed
        for node in ast.parse(beside).body:
            if isinstance(node, ast.FunctionDef):
                must_agree(f"{self.name}.{node.name}()", parameters_of(node), list(inspect.signature(getattr(module, node.name)).parameters))
        others = [n for n in module.__all__ if n not in self.doors]
        for n in others:
            if f" {n}(" not in beside:
                raise Behind(f"{self.name}.{n} is new: write it into BESIDE_DOORS of make_stubs.py")
        for name, door in self.doors.items():
            body = getattr(self, door.kind)(name, door)
            summary = door.describe()["summary"]
            classes.append(f'@final\nclass {camel(name)}(Formula):\n    """{summary}"""\n\n{body}')
            variables.append(f"{name}: Final[{camel(name)}]\n")
        aliases = "".join(
            (
                f"{alias}: TypeAlias = Literal[{', '.join(f'{chr(34)}{w}{chr(34)}' for w in words)}]"
                if len(alias) + sum(len(w) + 4 for w in words) + 30 <= WIDTH
                else f"{alias}: TypeAlias = Literal[\n" + "".join(f'    "{w}",\n' for w in words) + "]"
            )
            + (" | float\n" if of_numbers(words) else "\n")
            for alias, words in self.aliases.items()
        )
        typing = {"Final", "final"} | (self.used & {"Any", "Literal", "NamedTuple", "overload"})
        if aliases or "TypeAlias" in beside:
            typing |= {"TypeAlias"}
        if aliases:
            typing |= {"Literal", "TypeAlias"}
        core = sorted({"Formula"} | (self.used & {"Accuracy", "DecisionRule", "Distribution", "Measured", "MonteCarlo", "Propagated", "Reading", "Rulebook", "Verdict", "_Array", "_Given", "_Rows"}))
        slow = sorted(self.used & {"Result", "Worked"})
        text = HEAD + f'"""{document}"""\n\n'
        text += "from collections.abc import Sequence\n" if "Sequence" in self.used else ""
        text += "from decimal import Decimal\n" if "Decimal" in self.used else ""
        text += f"from typing import {', '.join(sorted(sorted(typing), key=str.lower))}\n\n"
        text += "import numpy as np\nimport numpy.typing as npt\n\n" if "np" in self.used else ""
        text += f"from ._core import {', '.join(core)}\n"
        text += "from ._measured import MeasuredArray\n" if "MeasuredArray" in self.used else ""
        text += "from ._rows import Verdicts\n" if "Verdicts" in self.used else ""
        text += f"from ._slow import {', '.join(slow)}\n" if slow else ""
        text += f"\n{aliases}" if aliases else ""
        text += "\n" + "\n".join(classes) + "\n" + "".join(variables)
        text += f"\n{beside.strip()}\n" if beside else ""
        return text + "\n__all__ = [\n" + "".join(f'    "{n}",\n' for n in [*self.doors, *others]) + "]\n"


# --------------------------------------------------------------------------------------------------------------- writing


def stubs(package: Any) -> dict[str, str]:
    """Names of files under bindings/makegood, and their text."""
    core = package._core
    if set(core.subjects) != set(SUBJECTS):
        raise Behind(f"the subjects are {', '.join(core.subjects)}: write them into SUBJECTS of make_stubs.py")
    files = {"_core.pyi": core_stub(core), "_slow.pyi": HEAD + SLOW, "_rows.pyi": HEAD + ROWS, "_measured.pyi": HEAD + MEASURED, "distribution.pyi": HEAD + DISTRIBUTION, "__init__.pyi": init_stub(package)}
    for name in SUBJECTS:
        files[f"{name}.pyi"] = Subject(name, core.subjects[name]).stub(first_line(getattr(package, name).__doc__), getattr(package, name))
    return files


def built_package() -> Any:
    """makegood with its extension: as PYTHONPATH has it, or from the newest build tree."""
    sys.path[:] = [p for p in sys.path if pathlib.Path(p or ".").resolve() != FOLDER.parent]  # the sources have no _core
    try:
        import makegood
    except ImportError:
        built = sorted(ROOT.glob("build/*/python/makegood/_core*"), key=lambda p: p.stat().st_mtime)
        if not built:
            raise SystemExit("make_stubs.py: the module is not built; first: cmake --workflow --preset dev") from None
        sys.path.insert(0, str(built[-1].parents[1]))
        for name in [n for n in sys.modules if n.split(".")[0] == "makegood"]:
            del sys.modules[name]
        import makegood
    return makegood


def main() -> int:
    try:
        files = stubs(built_package())
    except Behind as e:
        print(f"make_stubs.py: {e}", file=sys.stderr)
        return 1
    for name, text in files.items():
        path = FOLDER / name
        if not path.exists() or path.read_text(encoding="utf-8") != text:
            path.write_text(text, encoding="utf-8", newline="\n")
            print(f"written: {path.relative_to(ROOT)}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
