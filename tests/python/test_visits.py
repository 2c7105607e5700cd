# SPDX-License-Identifier: MIT
"""Whole visits: published worked examples must come out as published, and the demo visit must show every kind of answer."""

from __future__ import annotations

import json
import math
from pathlib import Path

import pytest

import makegood

ROOT = Path(__file__).resolve().parents[2]
VISITS = ROOT / "tests" / "visits"
DEMO = ROOT / "notebooks" / "demo_visit.json"
DEMO_RULES = "bs7671:2018+a2,england-adf-2021"
FIELDS = {"value", "limit", "margin", "outcome"}
GRADES = {"worked-example", "derived", "handbook", "standard", "regulation", "dataset", "memory", "common-practice", "paper"}

NAMES = sorted(p.name.removesuffix(".expected.json") for p in VISITS.glob("*.expected.json"))


def expectation(name: str) -> dict:
    return json.loads((VISITS / f"{name}.expected.json").read_text(encoding="utf-8"))


ROWS = [(name, k) for name in NAMES for k in range(len(expectation(name)["expected"]))]
_done: dict[str, dict] = {}


def assessed(name: str) -> dict:
    if name not in _done:
        visit = makegood.load_visit(VISITS / f"{name}.json")
        _done[name] = makegood.assess(visit, rules=expectation(name)["rules"]).to_dict()
    return _done[name]


def test_visits_and_expectations_come_in_pairs():
    visits = {p.stem for p in VISITS.glob("*.json") if not p.name.endswith(".expected.json")}
    assert visits == set(NAMES)
    assert len(NAMES) >= 3


@pytest.mark.parametrize("name", NAMES)
def test_rows_are_whole(name):
    """Every row names its source and says how near is near enough."""
    for row in expectation(name)["expected"]:
        assert row["field"] in FIELDS and row["grade"] in GRADES and row["source"], row
        assert isinstance(row["locator"], str)
        if row["field"] == "outcome":
            assert row["expected"] in ("pass", "fail") and "tol_abs" not in row and "tol_rel" not in row, row
        else:
            assert ("tol_abs" in row) != ("tol_rel" in row), row
            assert 0 <= row.get("tol_abs", row.get("tol_rel")) < max(abs(row["expected"]), 1), row
    note = json.loads((VISITS / f"{name}.json").read_text(encoding="utf-8"))["note"]
    assert len(note) > 40


@pytest.mark.parametrize(("name", "k"), ROWS, ids=[f"{n}-{k}" for n, k in ROWS])
def test_published_answer(name, k):
    row = expectation(name)["expected"][k]
    found = [f for f in assessed(name)["findings"] if f["path"] == row["path"] and f["verdict"]["check"] == row["check"]]
    assert len(found) == 1, f"{row['path']} has {len(found)} answers of {row['check']}"
    f = found[0]
    got = f["outcome"] if row["field"] == "outcome" else f["verdict"][row["field"]]
    where = f"{row['source']}, {row['locator']}: {row['path']} {row['check']} {row['field']}: wanted {row['expected']}, got {got}"
    if row["field"] == "outcome":
        assert got == row["expected"], where
        assert f["verdict"]["outcome"] == got
        return
    assert isinstance(got, float) and math.isfinite(got), where
    tolerance = row["tol_abs"] if "tol_abs" in row else row["tol_rel"] * abs(row["expected"])
    assert abs(got - row["expected"]) <= tolerance, f"{where}, off by {got - row['expected']:g}, allowed {tolerance:g}"


@pytest.mark.parametrize("name", NAMES)
def test_published_numbers_are_exact_inputs(name):
    """The instrument "printed" states an accuracy of nothing: no doubt is made up for a printed number."""
    for f in assessed(name)["findings"]:
        v = f["verdict"]
        if v["value"] is not None:
            assert v["assumed"] is False and v["expanded_uncertainty"] == 0.0, (f["path"], v["check"])


# ------------------------------------------------------------------------------------------------------------- the demo


@pytest.fixture(scope="module")
def demo() -> dict:
    return makegood.assess(makegood.load_visit(DEMO), rules=DEMO_RULES).to_dict()


def one(demo, path, check):
    (f,) = [f for f in demo["findings"] if f["path"] == path and f["verdict"]["check"] == check]
    return f


def test_demo_says_that_it_is_invented(demo):
    assert demo["invented"] is True
    source = json.loads(DEMO.read_text(encoding="utf-8"))
    assert source["invented"] is True and "invented" in source["note"].lower() and "invented" in source["place"].lower()


def test_demo_shows_every_kind_of_answer(demo):
    assert {f["outcome"] for f in demo["findings"]} == {"pass", "fail", "undecided"}
    reasons = {f["reason"] for f in demo["findings"]}
    assert reasons >= {"", "not measured", "straddles limit", "needs maker's figure", "outside validity", "no rule in book"}
    for f in demo["findings"]:
        assert (f["outcome"] == "undecided") == (f["reason"] != ""), f["path"]
        assert f["plain"] and f["question"] and f["subject"]
        assert bool(f["next"]) == (f["outcome"] == "undecided"), (f["path"], f["question"], f["next"])
    assert demo["summary"] == {o: sum(f["outcome"] == o for f in demo["findings"]) for o in ("pass", "fail", "undecided")}


@pytest.mark.parametrize(
    ("path", "check", "outcome", "reason"),
    [
        ("circuits[0]", "check_voltage_drop", "fail", ""),  # 30 A · 38 m · 11 mV/(A·m) = 12.54 V, above 5 % of 230 V
        ("circuits[1]", "check_loop_impedance", "undecided", "straddles limit"),
        ("circuits[1]", "check_rcd_trip", "fail", ""),
        ("circuits[2]", "check_loop_impedance", "undecided", "needs maker's figure"),
        ("circuits[2]", "check_insulation", "undecided", "not measured"),
        ("circuits[2]", "check_rcd_trip", "undecided", "not measured"),  # pending
        ("circuits[4]", "check_voltage_drop", "undecided", "not measured"),
        ("appliances[0]", "check_element_resistance", "undecided", "no rule in book"),
        ("appliances[1]", "check_element_resistance", "pass", ""),
        ("appliances[2]", "check_element_resistance", "fail", ""),  # one of three elements is open: 23/2 Ω instead of 23/3 Ω
        ("sensors[1]", "check_ntc_sensor", "fail", ""),
        ("fans[0]", "check_extract", "undecided", "straddles limit"),
        ("fans[0]", "check_duct_pressure", "undecided", "outside validity"),
        ("fans[1]", "check_extract", "fail", ""),
    ],
)
def test_demo_answers(demo, path, check, outcome, reason):
    f = one(demo, path, check)
    assert (f["outcome"], f["reason"]) == (outcome, reason), f["plain"]


def test_demo_readings_out_of_range(demo):
    insulation = one(demo, "circuits[0]", "check_insulation")["verdict"]
    assert insulation["censored"] == "above" and insulation["outcome"] == "pass" and insulation["probability"] is None
    assert one(demo, "circuits[1]", "check_rcd_trip")["verdict"]["censored"] == "no trip"
    assert one(demo, "circuits[3]", "check_insulation")["verdict"]["censored"] == "below"
    assert one(demo, "circuits[3]", "check_insulation")["outcome"] == "fail"


def test_demo_statements_and_assumptions(demo):
    assert one(demo, "fans[0]", "check_extract")["verdict"]["assumed"] is True
    assert one(demo, "circuits[4]", "check_rcd_trip")["verdict"]["assumed"] is True
    assert one(demo, "circuits[1]", "check_loop_impedance")["verdict"]["assumed"] is False
    assert one(demo, "fans[0]", "check_extract")["verdict"]["plain"] == "fail"
    assert one(demo, "circuits[1]", "check_loop_impedance")["verdict"]["plain"] == "pass"


def test_demo_makers_tolerance_is_named(demo):
    v = one(demo, "appliances[1]", "check_element_resistance")["verdict"]
    assert v["overrides"] and "maker" in v["overrides"][0]
    # 230 V squared over 2000 W, less 5 % and plus 10 %
    assert v["lower"] == pytest.approx(230 * 230 / 2000 * 0.95, rel=1e-12)
    assert v["upper"] == pytest.approx(230 * 230 / 2000 * 1.10, rel=1e-12)


def test_demo_with_the_rules_of_the_trade_judges_the_cable():
    a = makegood.assess(makegood.load_visit(DEMO), rules=DEMO_RULES + ",common-practice").to_dict()
    f = one(a, "appliances[0]", "check_element_resistance")
    assert f["reason"] != "no rule in book" and f["verdict"]["source"]["grade"] == "common-practice"


def test_demo_page_and_text(demo):
    from makegood._page import report, text

    page, shown = report(demo), text(demo)
    assert page.count("<article") == len(demo["findings"]) and page.count("<details>") >= sum(bool(f["verdict"]["steps"]) for f in demo["findings"])
    assert "invented demonstration" in page and "invented demonstration" in shown
    assert max(map(len, shown.splitlines())) <= 100
    for f in demo["findings"]:
        assert f["subject"] in shown


def test_where_a_fan_blows_and_how_long_it_runs_on(tmp_path):
    def findings(rules, **fan):
        visit = {
            "format": "makegood-visit-1", "title": "t", "supply": {"earthing": "unknown", "nominal_voltage_v": 230},
            "rooms": [{"id": "r", "name": "inner bathroom", "kind": "bathroom", "volume_m3": 10, "outside_wall": False}],
            "fans": [{"id": "f", "name": "fan", "room": "r"} | fan],
        }  # fmt: skip
        path = tmp_path / "visit.json"
        path.write_text(json.dumps(visit), encoding="utf-8")
        return {f["verdict"]["check"]: f["verdict"] for f in makegood.assess(makegood.load_visit(path), rules=rules).to_dict()["findings"]}

    england = findings("england-adf-2021", discharge_to="roof_void", overrun_min=5)
    assert england["check_discharge_outside"]["outcome"] == "fail" and england["check_overrun"]["outcome"] == "fail"
    assert findings("england-adf-2021", discharge_to="outside", overrun_min=15)["check_overrun"]["outcome"] == "pass"
    assert findings("australia-ncc-2019", discharge_to="vented_roof_void")["check_discharge_outside"]["outcome"] == "pass"
    assert findings("bs7671:2018+a2", discharge_to="roof_void")["check_discharge_outside"]["reason"] == "no rule in book"
    assert not {"check_discharge_outside", "check_overrun"} & set(findings("england-adf-2021"))  # not looked at: nothing is said
