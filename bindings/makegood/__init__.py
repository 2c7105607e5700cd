# SPDX-License-Identifier: MIT
"""makegood: from the readings of one electrician in a place that somebody else wired, to verdicts that can be defended.

Not a substitute for a competent person. Local codes and licensed practice come first; prove dead before touching.
Verdicts are suggestions, not a certificate or condition report.
"""

from . import _core
from ._core import (
    Accuracy,
    Assessment,
    ConvergenceError,
    DecisionRule,
    Distribution,
    DocumentError,
    Error,
    Finding,
    Instrument,
    Measured,
    MonteCarlo,
    Propagated,
    RangeError,
    Reading,
    RelationError,
    Rulebook,
    RuleError,
    Verdict,
    Visit,
    __version__,
    assess,
    decision_rules,
    operating_limits,
    correlation,
    covariance,
    coverage_factor,
    measured_together,
    measured_with_covariance,
    read_visit,
    rulebooks,
    visit_schema,
    words,
)
from . import air, decision, distribution, electrical, heating, job, lighting, price, sensing, setting_out


def _found(*parts: str) -> str:
    """The first of the package's folders that holds it (an editable install has two)."""
    import os

    folders = [os.path.join(root, *parts) for root in __path__]
    return next((folder for folder in folders if os.path.isdir(folder)), folders[0])


class _MeasuredType(type(Measured)):
    """Measured(array, array) makes an array of them."""

    def __call__(cls, *args, **kwargs):
        for x in (*args[:2], kwargs.get("value"), kwargs.get("standard_uncertainty")):
            if type(x) is not float and (isinstance(x, list) or getattr(x, "ndim", 0)):
                from ._measured import MeasuredArray

                return MeasuredArray(*args, **kwargs)
        return super().__call__(*args, **kwargs)


Measured.__class__ = _MeasuredType


def get_include() -> str:
    """The folder of the C++ headers: `#include <makegood/makegood.hpp>`."""
    return _found("include")


def get_cmake_dir() -> str:
    """The folder of the CMake package, for `find_package(makegood)`."""
    return _found("lib", "cmake", "makegood")


def catalogue() -> list[dict]:
    """Every formula, check and model, as its descriptor says it."""
    return [f.describe() for subject in _core.subjects.values() for f in subject.values()]


def load_visit(path):
    """The visit in a JSON file. DocumentError lists every problem with its path in the document."""
    from ._visit import load_visit as load

    return load(path)


def assess_many(visits, *, rules, rule=None, threads=1, inquiries=True, progress=False):
    """The findings of many visits in columns, on one thread or more: the same as assess() gives of each."""
    from ._many import assess_many as many

    return many(visits, rules=rules, rule=rule, threads=threads, inquiries=inquiries, progress=progress)


def report(assessment, audience="record"):
    """A page of an assessment: one HTML file that opens offline and prints on paper.

    audience: "record" (every reading, limit, source and worked step), "client" (for the person who lives there) or "quote".
    """
    from ._page import report as page

    return page(assessment, audience)


def message(assessment, limit=480):
    """What is dangerous tonight, what works and what does not, what is next: a text for a phone, of `limit` characters at most."""
    from ._message import message as short

    return short(assessment, limit)


def __getattr__(name):
    """What needs NumPy is loaded when it is first asked for."""
    if name in ("Readings", "Verdicts"):
        from . import _rows

        return getattr(_rows, name)
    if name == "MeasuredArray":
        from . import _measured

        return _measured.MeasuredArray
    if name == "CurvatureWarning":
        from . import _slow

        return _slow.CurvatureWarning
    if name == "Session":
        from . import session

        return session.Session
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


__all__ = [
    "Accuracy", "Assessment", "ConvergenceError", "CurvatureWarning", "DecisionRule", "Distribution", "DocumentError", "Error", "Finding",
    "Instrument", "Measured", "MeasuredArray", "MonteCarlo", "Propagated", "RangeError", "Reading", "Readings", "RelationError",
    "RuleError", "Rulebook", "Session", "Verdict", "Verdicts", "Visit", "__version__", "air", "assess", "assess_many", "catalogue", "correlation", "covariance",
    "coverage_factor", "decision", "decision_rules", "distribution", "electrical", "get_cmake_dir", "get_include", "heating", "job", "lighting", "load_visit",
    "measured_together", "measured_with_covariance", "message", "operating_limits", "price", "read_visit", "report", "rulebooks", "sensing", "setting_out",
    "visit_schema", "words",
]  # fmt: skip
