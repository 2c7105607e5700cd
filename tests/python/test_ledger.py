# SPDX-License-Identifier: MIT
"""Every published value comes out, through the Python door, dispatched by name alone."""

import pytest

import ledger
import makegood

ROWS = list(ledger.rows())


@pytest.mark.parametrize("row", ROWS, ids=[f"{r['function']}-{i}" for i, r in enumerate(ROWS)])
def test_published_value(row):
    subject, name = row["function"].split(".")
    result = getattr(getattr(makegood, subject), name)(**row["inputs"])
    if row["field"]:
        for part in row["field"].split("."):  # "posterior.0": a field, or the place in a list
            result = result[int(part)] if isinstance(result, list) else result[part] if isinstance(result, dict) else getattr(result, part)
    if isinstance(result, str):
        assert result == row["expected"]
        return
    expected = float(row["expected"])
    slack = ledger.tolerance(row, expected) * (1 + 1e-9) + 1e-12 * abs(expected)
    assert abs(result - expected) <= slack, f"wanted {expected}, got {result}, tolerance {slack} {row['unit']}; {row['source']}, {row['locator']}"


def is_number(text):
    try:
        float(text)
    except ValueError:
        return False
    return True


def test_rows_are_whole():
    assert len(ROWS) > 400
    for row in ROWS:
        assert row["grade"] and row["seen"] in ("seen", "computed", "memory"), row
        assert row["source"] or row["grade"] == "common-practice", row
        if row["seen"] != "memory" and is_number(row["expected"]) and row["field"] not in ("outcome", "plain", "statement", "text"):
            assert row["tol_abs"] or row["tol_rel"], row


def test_descriptions_say_how_they_are_proved():
    seen = {}
    for row in ROWS:
        counts = row["seen"] == "seen" and row["grade"] != "memory"
        seen[row["function"]] = seen.get(row["function"], 0) + counts
    for d in makegood.catalogue():
        assert d["proof"]["seen"] == seen.get(d["name"], 0), d["name"]
        assert d["status"] == ("proved" if seen.get(d["name"], 0) else "unproved")
        subject, name = d["name"].split(".")
        assert ("unproved" in getattr(getattr(makegood, subject), name).__doc__) == (d["status"] == "unproved")
