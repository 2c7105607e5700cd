# SPDX-License-Identifier: MIT
"""The rows of tests/published, as Python sees them."""

from __future__ import annotations

import csv
import json
import pathlib
from typing import Any, Iterator

FOLDER = pathlib.Path(__file__).parents[1] / "published"


def rows() -> Iterator[dict[str, Any]]:
    for name in ("electrical", "sensing", "heating", "air", "setting_out", "lighting", "price", "decision", "decision_rules"):
        with (FOLDER / f"{name}.csv").open(newline="", encoding="utf-8") as file:
            for row in csv.DictReader(file):
                row["inputs"] = json.loads(row["inputs"])
                yield row


def tolerance(row: dict[str, Any], expected: float) -> float:
    return max(float(row["tol_abs"] or 0), float(row["tol_rel"] or 0) * abs(expected))
