# SPDX-License-Identifier: MIT
"""The table of measured errors that is shipped (tests/published/accuracy.csv, describe()["measured_error_ulp"]) is complete and true.

Other points than those of the table, and fewer, must not be worse than the table says by more than FACTOR. Where this fails
because a formula was changed: python tests/python/accuracy.py --write, and look at what became worse.
"""

from __future__ import annotations

import importlib.util
import math
import json

import pytest

import accuracy
import makegood

# The table's figure is the worst of some hundred roundings; the worst of other points lies a little above it as often as below.
FACTOR, SLACK_ULP = 2.0, 1.0
# At the end of what is accepted there may be a pole, where an error of this many units in an argument alone makes the error of the
# result; the condition number there is a matter of chance.
ROUNDINGS = 2.0

pytestmark = pytest.mark.skipif(importlib.util.find_spec("mpmath") is None, reason="mpmath is not installed")
TABLE = {(r["function"], r["kind"]): r for r in accuracy.table()}


def test_every_formula_has_every_kind():
    assert set(TABLE) == {(name, kind) for name in accuracy.formulas() for kind in accuracy.KINDS}
    assert len(TABLE) == len(accuracy.table())
    for r in TABLE.values():
        words = [len(a["one_of"]) if "one_of" in a else math.inf for a in accuracy.door(r["function"]).describe()["arguments"]]
        edges = min(6, math.prod(words))  # the edge of a table is every row
        assert r["points"] >= {"random": accuracy.RANDOM_POINTS, "boundary": edges, "cancellation": accuracy.CLIMBS}[r["kind"]], r
        assert r["ulp"] >= 0 and r["absolute"] >= 0 and r["unit"] == accuracy.door(r["function"]).describe()["unit"]


@pytest.mark.parametrize("name", accuracy.formulas())
def test_other_points_are_no_worse(name):
    found, _ = accuracy.errors(name, seed="other ", share=0.3)
    for again in accuracy.rows(name, found):
        r = TABLE[name, again["kind"]]
        at_a_pole = again["kind"] == "boundary" and again["ulp"] <= ROUNDINGS * again["condition"]
        text = f"{again['kind']}: {again['ulp']} ulp at {again['worst']}, the table says {r['ulp']}"
        assert at_a_pole or again["ulp"] <= FACTOR * r["ulp"] + SLACK_ULP, text


@pytest.mark.parametrize("name", accuracy.formulas())
def test_worst_points_are_as_the_table_says(name):
    for kind in accuracy.KINDS:
        r = TABLE[name, kind]
        e = accuracy.error_at(name, kind, json.loads(r["worst"]))
        assert e is not None, "the worst point is refused"
        assert r["ulp"] / FACTOR - SLACK_ULP <= e.scaled_ulp <= FACTOR * r["ulp"] + SLACK_ULP


def test_a_worse_formula_would_be_seen():
    name = "electrical.voltage_drop"
    found, _ = accuracy.errors(name, seed="other ", share=0.3)
    spoilt = [accuracy.Error(e.kind, e.point, e.value, e.exact, e.absolute + 4e-15 * abs(e.exact), e.scale) for e in found]
    assert all(r["ulp"] > FACTOR * TABLE[name, r["kind"]]["ulp"] + SLACK_ULP for r in accuracy.rows(name, spoilt))


def test_descriptions_carry_the_table():
    for d in makegood.catalogue():
        if d["kind"] != "formula":
            assert "measured_error_ulp" not in d
            continue
        for kind in accuracy.KINDS:
            r = TABLE[d["name"], kind]
            assert d["measured_error_ulp"][kind] == r["ulp"] and d["measured_error_absolute"][kind] == r["absolute"]
