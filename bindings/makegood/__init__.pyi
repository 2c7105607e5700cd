# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
import os
from collections.abc import Callable, Sequence
from typing import Any, Literal

from . import air as air
from . import decision as decision
from . import distribution as distribution
from . import electrical as electrical
from . import heating as heating
from . import job as job
from . import lighting as lighting
from . import price as price
from . import sensing as sensing
from . import setting_out as setting_out
from ._core import (
    Accuracy as Accuracy,
    Assessment as Assessment,
    ConvergenceError as ConvergenceError,
    DecisionRule as DecisionRule,
    Distribution as Distribution,
    DocumentError as DocumentError,
    Error as Error,
    Finding as Finding,
    Instrument as Instrument,
    Measured as Measured,
    MonteCarlo as MonteCarlo,
    Propagated as Propagated,
    RangeError as RangeError,
    Reading as Reading,
    RelationError as RelationError,
    RuleError as RuleError,
    Rulebook as Rulebook,
    Verdict as Verdict,
    Visit as Visit,
    __version__ as __version__,
    assess as assess,
    correlation as correlation,
    covariance as covariance,
    coverage_factor as coverage_factor,
    decision_rules as decision_rules,
    measured_together as measured_together,
    measured_with_covariance as measured_with_covariance,
    operating_limits as operating_limits,
    read_visit as read_visit,
    rulebooks as rulebooks,
    visit_schema as visit_schema,
    words as words,
)

from ._measured import MeasuredArray as MeasuredArray
from ._slow import CurvatureWarning as CurvatureWarning
from .session import Session as Session
from ._rows import Readings as Readings
from ._rows import Verdicts as Verdicts
from ._many import Findings

def get_include() -> str:
    """The folder of the C++ headers: `#include <makegood/makegood.hpp>`."""

def get_cmake_dir() -> str:
    """The folder of the CMake package, for `find_package(makegood)`."""

def catalogue() -> list[dict[str, Any]]:
    """Every formula, check and model, as its descriptor says it."""

def load_visit(path: str | os.PathLike[str]) -> Visit:
    """The visit in a JSON file. DocumentError lists every problem with its path in the document."""

def assess_many(
    visits: Sequence[Visit | dict[str, Any]],
    *,
    rules: str | Rulebook,
    rule: str | DecisionRule | None = None,
    threads: int = 1,
    inquiries: bool = False,
    progress: bool | Callable[[int], None] = False,
) -> Findings:
    """The findings of many visits in columns, on one thread or more: the same as assess() gives of each."""

def report(assessment: Assessment | dict[str, Any], audience: Literal["client", "record", "quote"] = "record") -> str:
    """A page of an assessment: one HTML file that opens offline and prints on paper."""

def message(assessment: Assessment | dict[str, Any], limit: int = 480) -> str:
    """What is dangerous tonight, what works and what does not, what is next: a text for a phone, of `limit` characters at most."""

__all__ = [
    "Accuracy",
    "Assessment",
    "ConvergenceError",
    "CurvatureWarning",
    "DecisionRule",
    "Distribution",
    "DocumentError",
    "Error",
    "Finding",
    "Instrument",
    "Measured",
    "MeasuredArray",
    "MonteCarlo",
    "Propagated",
    "RangeError",
    "Reading",
    "Readings",
    "RelationError",
    "RuleError",
    "Rulebook",
    "Session",
    "Verdict",
    "Verdicts",
    "Visit",
    "__version__",
    "air",
    "assess",
    "assess_many",
    "catalogue",
    "correlation",
    "covariance",
    "coverage_factor",
    "decision",
    "decision_rules",
    "distribution",
    "electrical",
    "get_cmake_dir",
    "get_include",
    "heating",
    "job",
    "lighting",
    "load_visit",
    "measured_together",
    "measured_with_covariance",
    "message",
    "operating_limits",
    "price",
    "read_visit",
    "report",
    "rulebooks",
    "sensing",
    "setting_out",
    "visit_schema",
    "words",
]
