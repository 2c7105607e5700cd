# SPDX-License-Identifier: MIT
"""One call from Python: a formula, an error, a check, and the import. Run by run.py."""

from __future__ import annotations

import dataclasses
import math
import statistics
import subprocess
import sys

import makegood as mg
from measuring import median_snippets


@dataclasses.dataclass(frozen=True, slots=True)
class Judged:
    """What a check by hand would return."""

    outcome: str
    value: float
    limit: float
    margin: float
    source: str


def drop_by_hand(drop_v: float, nominal_v: float, load: str) -> Judged:
    limit = nominal_v * (3 if load == "lighting" else 5) / 100
    return Judged("pass" if drop_v <= limit else "fail", drop_v, limit, limit - drop_v, "Appendix 4, Table 4Ab")


def refuse_by_hand(drop: float, current: float, length: float) -> float:
    if length > 100000.0:
        raise ValueError(f"voltage_drop: length_m: {length:g} m is above 100000 m; if it was in mm, write {length / 1000:g} m")
    return drop * current * length / 1000


CALLS = {
    "math.sqrt": "sqrt(2.0)",
    "voltage_drop, 3 positional": "drop(44.0, 16.0, 22.0)",
    "ntc_temperature, 4 positional": "ntc(11200.0, 10000.0, 25.0, 3950.0)",
    "ntc_temperature, 4 keywords": "ntc(resistance_ohm=11200.0, reference_ohm=10000.0, reference_c=25.0, beta_k=3950.0)",
    "4 positional in Python": "by_hand(11200.0, 10000.0, 25.0, 3950.0)",
}
ERRORS = {
    "voltage_drop raises": "try: drop(18.0, 16.0, 150000.0)\nexcept ValueError: pass",
    "a Python function raises, same words": "try: refuse(18.0, 16.0, 150000.0)\nexcept ValueError: pass",
}
CHECKS = {
    "check_voltage_drop": "check(8.9, 230.0, 'other', 'bs7671:2018+a2')",
    "check_voltage_drop, the rulebook at hand": "check(8.9, 230.0, 'other', book)",
    "Python to a frozen dataclass": "judge(8.9, 230.0, 'other')",
}


def ntc_by_hand(ohm: float, reference_ohm: float, reference_c: float, beta: float) -> float:
    return 1 / (1 / (reference_c + 273.15) + math.log(ohm / reference_ohm) / beta) - 273.15


def _space() -> dict:
    return {
        "sqrt": math.sqrt,
        "drop": mg.electrical.voltage_drop,
        "ntc": mg.sensing.ntc_temperature,
        "by_hand": ntc_by_hand,
        "refuse": refuse_by_hand,
        "check": mg.electrical.check_voltage_drop,
        "judge": drop_by_hand,
        "book": mg.Rulebook("bs7671:2018+a2"),
    }


def seconds(snippets: dict[str, str], rounds: int, number: int) -> dict[str, float]:
    return median_snippets(snippets, _space(), rounds, number)


def disagreement() -> list[str]:
    """What would make the comparison unfair: other results on the two sides."""
    wrong = []
    space = _space()
    ours, theirs = (eval(CALLS[k], space) for k in ("ntc_temperature, 4 keywords", "4 positional in Python"))
    if abs(ours - theirs) > 1e-10:
        wrong.append("ntc_temperature")
    a, b, c = (eval(text, space) for text in CHECKS.values())
    if not (a.outcome == b.outcome == c.outcome and abs(a.limit - c.limit) < 1e-12 and abs(a.margin - c.margin) < 1e-12):
        wrong.append("check_voltage_drop")
    for call in (space["drop"], space["refuse"]):
        try:
            call(18.0, 16.0, 150000.0)
            wrong.append("an error is not raised")
        except ValueError:
            pass
    return wrong


def imports(rounds: int) -> dict[str, float]:
    """Seconds of the processor for an import, each in a process of its own."""
    code = "import time; t = time.process_time(); import {}; print(time.process_time() - t)"
    times: dict[str, list[float]] = {m: [] for m in ("makegood", "json", "numpy")}
    for _ in range(rounds):
        for module, found in times.items():
            out = subprocess.run([sys.executable, "-c", code.format(module)], capture_output=True, text=True, check=True).stdout
            found.append(float(out))
    return {module: statistics.median(found) for module, found in times.items()}
