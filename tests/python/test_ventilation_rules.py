# SPDX-License-Identifier: MIT
"""Rulebooks of ventilation, what they ask for, how they decide, and outlets held against each other; reckoned again in plain Python.

`python tests/python/test_ventilation_rules.py N` draws N fans and outlets and prints how often the stated probability is right.
"""

from __future__ import annotations

import math
import random
import sys

import pytest

import makegood
from makegood import Accuracy, Measured, Reading, air as A

ENGLAND, FINLAND = "england-adf-2021", "finland-1009-2017"


def bath(**more):
    return {"kind": "bathroom", "name": "bath"} | more


# ---- what is asked for -----------------------------------------------------------------------------------------------


def test_the_greater_of_two_rules_governs():
    for volume, flow, by in ((10, 15, "kind of room"), (13.4, 15, "kind of room"), (13.6, 13.6 * 4 / 3.6, "air changes"), (27, 30, "air changes")):
        r = A.ventilation_required([bath(volume_m3=volume, outside_wall=False)], ENGLAND).rooms[0]
        assert r["flow_l_per_s"] == pytest.approx(flow, rel=1e-12) and r["governs"] == by
        assert r["overrun_min"] == 15 and len(r["flows"]) == 2
    with_wall = A.ventilation_required([bath(volume_m3=27)], ENGLAND).rooms[0]
    assert with_wall["flow_l_per_s"] == 15 and with_wall["overrun_min"] is None
    unknown = A.ventilation_required([bath(outside_wall=False)], ENGLAND).rooms[0]
    assert any("volume" in m for m in unknown["missing"])  # never silently the smaller of the two
    # a continuous fan has no such rule
    steady = A.ventilation_required([bath(continuous=True, outside_wall=False)], ENGLAND).rooms[0]
    assert steady["flow_l_per_s"] == 8 and steady["missing"] == [] and steady["overrun_min"] is None


def test_the_whole_dwelling():
    for bedrooms in range(1, 9):
        for area in (20, 60, 77, 150, 300):
            d = A.ventilation_required([], ENGLAND, bedrooms, area).dwelling
            wanted = max({1: 19, 2: 25, 3: 31, 4: 37, 5: 43}.get(bedrooms, 43 + 6 * (bedrooms - 5)), 0.3 * area)
            assert d["flow_l_per_s"] == pytest.approx(wanted, rel=1e-12)
            assert d["governs"] == ("area" if 0.3 * area > 13 + 6 * bedrooms else "number")
            v = A.check_whole_dwelling(Measured(wanted, 0.1), "bedrooms", ENGLAND, bedrooms, area)
            assert v.limit == pytest.approx(wanted, rel=1e-12)
            # the American rule adds what the English one compares
            us = A.ventilation_required([], "ashrae-62.2", bedrooms, area).dwelling
            assert us["flow_l_per_s"] == pytest.approx(0.15 * area + 3.5 * (bedrooms + 1), rel=1e-12)
            assert A.check_whole_dwelling(Measured(50, 0.1), "bedrooms_and_area", "ashrae-62.2", bedrooms, area).limit == pytest.approx(us["flow_l_per_s"], rel=1e-12)
    assert A.ventilation_required([], ENGLAND, 3).dwelling["missing"]  # the area is missing and that is said
    for persons in range(1, 8):
        assert A.ventilation_required([], FINLAND, persons=persons).dwelling["flow_l_per_s"] == max(18, 6 * persons)
        assert A.ventilation_required([], "ireland-tgd-f-2019", persons=persons).dwelling["flow_l_per_s"] == 5 + 4 * persons


def test_continuous_rooms_together_make_the_dwellings_rate():
    rooms = [bath(continuous=True), {"kind": "kitchen_hood", "continuous": True}, {"kind": "sanitary", "continuous": True}]
    d = A.ventilation_required(rooms, ENGLAND, 4, 100).dwelling
    assert d["continuous_l_per_s"] == 8 + 13 + 6 and d["extra_l_per_s"] == 37 - 27
    assert A.ventilation_required(rooms, ENGLAND, 1, 50).dwelling["extra_l_per_s"] == 0


def test_work_on_an_existing_dwelling():
    never = A.ventilation_required([bath(work="never_had_fan")], ENGLAND)
    assert never.rooms[0]["fan_required"].startswith("no") and never.rooms[0]["work"][0]["source"]["clause"] == "3.31"
    replaced = A.ventilation_required([bath(work="fan_replaced")], ENGLAND).rooms[0]
    assert replaced["notifiable"] == "no" and replaced["flow_l_per_s"] == 15 and [w["source"]["clause"] for w in replaced["work"]] == ["3.30", "3.32"]
    added = A.ventilation_required([bath(work="added")], ENGLAND).rooms[0]
    assert added["fan_required"] == "yes" and added["background_ventilator_mm2"] == 5000
    elsewhere = A.ventilation_required([bath(work="fan_replaced")], "australia-ncc-2019").rooms[0]
    assert any("no rule for such work" in m for m in elsewhere["missing"]) and elsewhere["notifiable"] == ""


def test_what_no_book_holds_is_missing():
    r = A.ventilation_required([{"kind": "utility"}], FINLAND)
    assert r.rooms[0]["flow_l_per_s"] is None and "no extract rate" in r.rooms[0]["missing"][0]
    assert r.dwelling["flow_l_per_s"] is None and r.dwelling["missing"]
    assert A.check_overrun(30, "no_window", ENGLAND).reason == "no rule in book"  # the edition asks for it without an outside wall
    book = makegood.Rulebook(ENGLAND).override("landlord", "extract_rate", "bathroom", ">=", [20], "agreed in writing")
    mine = A.ventilation_required([bath()], book).rooms[0]
    assert mine["flow_l_per_s"] == 20 and mine["flows"][0]["override"] == "landlord: agreed in writing"


def test_every_rate_of_the_model_is_the_limit_of_the_check():
    kinds = ("kitchen", "kitchen_hood", "utility", "bathroom", "sanitary")
    found = 0
    for book in makegood.rulebooks():
        for kind in kinds:
            for steady in (False, True):
                room = A.ventilation_required([{"kind": kind, "continuous": steady, "volume_m3": 0.001}], book["id"]).rooms[0]
                word = kind.removesuffix("_hood" if steady else "") + ("_continuous" if steady else "")
                v = A.check_extract(1000, word, book["id"])
                if v.reason == "no rule in book":
                    assert not any(f["by"] == "kind of room" for f in room["flows"])
                else:
                    assert room["flow_l_per_s"] == v.limit
                    assert room["flows"][0]["source"]["clause"] in v.source
                    found += 1
    assert found >= 25


# ---- how it is decided --------------------------------------------------------------------------------------------------


def test_england_compares_the_reading_and_finland_the_reading_with_its_doubt():
    for value in (11.0, 11.7, 11.9, 12.1, 12.5, 14.9, 15.0, 15.1, 17.7, 17.9, 18.1):
        for u in (0.01, 0.2, 1.0):
            flow = Measured(value, u, "hood")
            assert A.commissioned_flow(flow, 15, ENGLAND).outcome == ("pass" if value >= 15 else "fail")
            inside = value - 2 * u >= 12 and value + 2 * u <= 18
            assert A.commissioned_flow(flow, 15, FINLAND).outcome == ("pass" if inside else "fail"), (value, u)
    assert A.commissioned_flow(Measured(14.9, 0.05), 15, ENGLAND).outcome == "fail" and A.commissioned_flow(Measured(14.9, 0.05), 15, FINLAND).outcome == "pass"
    # small flows: at least 1 l/s; a dwelling: a tenth
    assert A.commissioned_flow(Measured(3.1, 0.04), 4, FINLAND).outcome == "pass" and A.commissioned_flow(Measured(2.9, 0.04), 4, FINLAND).outcome == "fail"
    assert A.commissioned_flow(Measured(36.5, 0.1), 40, FINLAND, "dwelling").outcome == "pass" and A.commissioned_flow(Measured(35.5, 0.1), 40, FINLAND, "dwelling").outcome == "fail"
    # a reading at the limit proves nothing, and that is said beside what the rulebook accepts
    r = A.commissioned_flow(Reading(15.2, Accuracy(percent=5)), 15, ENGLAND)
    assert r.outcome == "pass" and r.default_outcome == "undecided" and any("need not be proved" in t for t in r.text)
    assert A.commissioned_flow(15, 15, "iso-13788").outcome == "undecided"
    assert A.commissioned_flow(None, 15, ENGLAND).outcome == "undecided"


# ---- where the air goes -----------------------------------------------------------------------------------------------------


def test_the_verdict_on_a_void_carries_the_country():
    places = ("outside", "roof_void", "vented_roof_void", "soffit", "ridge_vent", "crawl_space", "other_room", "recirculated")
    for book in (ENGLAND, "us-irc", "australia-ncc-2022"):
        assert [A.check_discharge_outside(p, book).outcome for p in places] == ["pass"] + ["fail"] * 7
    assert [A.check_discharge_outside(p, "australia-ncc-2019").outcome for p in places[:3]] == ["pass", "fail", "pass"]
    assert A.check_discharge_outside("roof_void", FINLAND).reason == "no rule in book"
    forbidden = A.roof_void_condensation(15, 5, rulebook=ENGLAND, discharge_to="vented_roof_void", open_area_m2=1, ceiling_area_m2=60, ridge_area_m2=1)
    assert forbidden.discharge["outcome"] == "fail"
    australia = dict(rulebook="australia-ncc-2019", discharge_to="vented_roof_void")
    assert A.roof_void_condensation(15, 5, **australia).discharge["reason"] == "precondition missing"
    assert A.roof_void_condensation(15, 5, **australia, open_area_m2=0.25, ceiling_area_m2=60, ridge_area_m2=0.07).discharge["outcome"] == "pass"
    assert A.roof_void_condensation(15, 5, **australia, open_area_m2=0.15, ceiling_area_m2=60, ridge_area_m2=0.07).discharge["outcome"] == "fail"
    assert A.roof_void_condensation(15, 5, **australia, open_area_m2=0.25, ceiling_area_m2=60, ridge_area_m2=0.05).discharge["outcome"] == "fail"
    assert A.roof_void_condensation(15, 5, **australia, open_area_m2=0.25, ceiling_area_m2=60, ridge_area_m2=0.15, pitch="to_22_degrees").discharge["outcome"] == "fail"
    assert A.roof_void_condensation(15, 5, rulebook="australia-ncc-2019").discharge["outcome"] == "fail"  # a void without its openings


def test_criteria_of_mould_are_named_and_differ():
    book = f"{ENGLAND},iso-13788"
    wet = A.roof_void_condensation(15, 5, rulebook=book)
    assert [(c["rulebook"], c["period"], c["limit_percent"]) for c in wet.criteria] == [(ENGLAND, "month", 75), (ENGLAND, "week", 85), (ENGLAND, "day", 95), ("iso-13788", "month", 80)]
    assert all(c["outcome"] == "fail" for c in wet.criteria)
    # 22 °C and 60 % against a surface of 18 °C: 77 % there; nothing condenses
    between = A.roof_void_condensation(15, 18, room_humidity_percent=60, rulebook=book)
    p = lambda t: 610.5 * math.exp(17.269 * t / (237.3 + t))
    assert between.surface_humidity_percent == pytest.approx(60 * p(22) / p(18), rel=1e-12)
    assert [c["outcome"] for c in between.criteria] == ["undecided", "pass", "pass", "pass"]  # the mean of a month may be anything below
    assert A.roof_void_condensation(15, 5).criteria == []
    # the same surface by two criteria
    values = (Measured(13.2, 0.05), Measured(20, 0.05), Measured(50, 0.1), "month")
    assert A.check_surface_mould(*values, "iso-13788").outcome == "pass" and A.check_surface_mould(*values, ENGLAND).outcome == "fail"
    assert A.check_surface_mould(15, 20, 50, "week", "iso-13788").reason == "no rule in book"


def test_surface_formulas_turn_round():
    for t in (-20.0, -3.0, 0.0, 5.0, 21.0, 40.0):
        for humidity in (20.0, 50.0, 90.0):
            for critical in (75.0, 80.0, 100.0):
                cold = A.critical_surface_temperature(t, humidity, critical)
                if -60 <= cold <= 60:
                    assert A.surface_relative_humidity(cold, t, humidity) == pytest.approx(critical, rel=1e-12)
    for f in (0.0, 0.3, 0.75, 1.0):
        assert A.temperature_factor(A.surface_temperature(-5, 20, f), 20, -5) == pytest.approx(f, abs=1e-14)
    # warmer surfaces, drier air: less
    assert A.surface_relative_humidity(14, 20, 50) < A.surface_relative_humidity(13, 20, 50) < A.surface_relative_humidity(13, 20, 55)


# ---- outlets -----------------------------------------------------------------------------------------------------------------

FAN = {"points": [[0, 60], [10, 52], [20, 34], [30, 0]], "pressure": "total"}


def run_of(length, diameter=100, bends=1):
    return [{"kind": "fitting", "fitting": "entry_sharp"}, {"kind": "round", "name": "duct", "diameter_mm": diameter, "length_m": length}] + [{"kind": "fitting", "fitting": "mitre_90", "name": f"bend {i + 1}"} for i in range(bends)] + [
        {"kind": "fitting", "fitting": "exit"}
    ]


OPTIONS = [
    {"name": "long", "segments": run_of(60, 80, 4), "cost": 100},
    {"name": "wall", "segments": run_of(4), "cost": 180, "cold_void_m": 2},
    {"name": "tile", "segments": run_of(2), "cost": 240},
    {"name": "void", "segments": run_of(1, bends=0), "discharge_to": "roof_void", "cost": 10},
    {"name": "soffit", "segments": run_of(2), "discharge_to": "soffit", "cost": 60},
]


def test_outlets_are_ranked_and_a_void_never_is():
    r = A.outlet_options(FAN, OPTIONS, ENGLAND, room=bath(), insulation_cost_per_m=15)
    assert r.required_l_per_s == 15 and r.ranked_by == "cost" and r.best == "wall"
    assert [o["name"] for o in r.options] == ["wall", "tile", "long"] and [o["name"] for o in r.not_suggested] == ["void", "soffit"]
    assert [o["cost"] for o in r.options] == [180 + 2 * 15, 240 + 2 * 15, 100 + 60 * 15]
    assert all("1.17" in o["why_not"] and o["why_not"].startswith("forbidden") for o in r.not_suggested)
    for o in r.options:
        given = next(x for x in OPTIONS if x["name"] == o["name"])
        point = A.operating_point(FAN, {"segments": given["segments"]})
        assert o["flow_l_per_s"] == pytest.approx(point.flow_l_per_s, rel=1e-12) and o["standard_uncertainty_l_per_s"] == pytest.approx(point.standard_uncertainty_l_per_s, rel=1e-9)
        run = A.duct_run(given["segments"], o["flow_l_per_s"])
        assert o["run_pa"] == pytest.approx(run.pressure_pa, rel=1e-12) and o["worst"] == run.worst
        z = (o["flow_l_per_s"] - 15) / o["standard_uncertainty_l_per_s"]
        assert o["probability"] == pytest.approx(0.5 * math.erfc(-z / math.sqrt(2)), abs=1e-12)
        assert o["run_at_required_pa"] == pytest.approx(A.duct_run(given["segments"], 15).pressure_pa, rel=1e-12)
    assert r.options[1]["insulate_assumed"] and r.options[1]["insulate_m"] == 2 and not r.options[0]["insulate_assumed"]
    # without costs: by flow; without a book a void is still not suggested
    plain = A.outlet_options(FAN, [{k: v for k, v in o.items() if k != "cost"} for o in OPTIONS], required_l_per_s=15)
    assert plain.ranked_by == "flow" and plain.best == "tile"
    assert "no named rulebook" in plain.not_suggested[0]["why_not"]
    vented = A.outlet_options(FAN, [OPTIONS[1], {"name": "v", "segments": run_of(1), "discharge_to": "vented_roof_void"}], "australia-ncc-2019", 15)
    assert vented.best == "wall" and "not suggested" in vented.not_suggested[0]["why_not"]
    assert A.outlet_options(FAN, OPTIONS[3:], ENGLAND, 15).best is None  # nothing but voids


def test_an_outlet_that_is_cheap_but_not_proved_does_not_lead():
    r = A.outlet_options(FAN, OPTIONS[:3], ENGLAND, room={"kind": "bathroom", "outside_wall": False, "volume_m3": 16.2})
    assert r.required_l_per_s == pytest.approx(18) and r.options[-1]["name"] == "long" and r.options[-1]["outcome"] == "fail"
    none = A.outlet_options(FAN, OPTIONS[:1], ENGLAND, 25)
    assert none.best is None and any("No option is proved" in t for t in none.text)


@pytest.mark.parametrize(
    "call, said",
    [
        (lambda: A.ventilation_required([{"kind": "cellar"}], ENGLAND), "kind"),
        (lambda: A.ventilation_required([bath(volume_m3=-1)], ENGLAND), "volume_m3"),
        (lambda: A.ventilation_required([bath(volume_m3=float("nan"))], ENGLAND), "volume_m3"),
        (lambda: A.ventilation_required([bath(work="painted")], ENGLAND), "work"),
        (lambda: A.ventilation_required([bath(outside_wall=1)], ENGLAND), "outside_wall"),
        (lambda: A.ventilation_required([bath(colour="white")], ENGLAND), "colour"),
        (lambda: A.ventilation_required([], ENGLAND, 2.5), "bedrooms"),
        (lambda: A.ventilation_required([], ENGLAND, -1), "bedrooms"),
        (lambda: A.ventilation_required([], ENGLAND, 2, 77e9), "floor_area_m2"),
        (lambda: A.commissioned_flow(15, 15, ENGLAND, "house"), "extent"),
        (lambda: A.commissioned_flow(15, -15, ENGLAND), "design_flow_l_per_s"),
        (lambda: A.commissioned_flow(15, float("nan"), ENGLAND), "design_flow_l_per_s"),
        (lambda: A.outlet_options(FAN, [], ENGLAND, 15), "options"),
        (lambda: A.outlet_options(FAN, OPTIONS, ENGLAND), "required_l_per_s"),
        (lambda: A.outlet_options(FAN, OPTIONS, ENGLAND, 15, bath()), "required_l_per_s"),
        (lambda: A.outlet_options(FAN, OPTIONS, ENGLAND, -15), "required_l_per_s"),
        (lambda: A.outlet_options(FAN, [OPTIONS[1] | {"cost": -1}], ENGLAND, 15), "cost"),
        (lambda: A.outlet_options(FAN, [OPTIONS[1] | {"cold_void_m": 5}], ENGLAND, 15), "cold_void_m"),
        (lambda: A.outlet_options(FAN, [OPTIONS[1] | {"discharge_to": "moon"}], ENGLAND, 15), "discharge_to"),
        (lambda: A.outlet_options(FAN, OPTIONS, ENGLAND, 15, fan_percent=90), "fan_percent"),
        (lambda: A.roof_void_condensation(15, 5, discharge_to="cellar"), "discharge_to"),
        (lambda: A.roof_void_condensation(15, 5, pitch="steep"), "pitch"),
        (lambda: A.temperature_factor(15, 20, 20), "warmer"),
    ],
)
def test_nonsense_is_refused(call, said):
    with pytest.raises((makegood.RangeError, makegood.RelationError), match=said):
        call()


def test_a_room_that_cannot_be_reckoned_gives_no_outlet():
    with pytest.raises(makegood.Error, match="volume"):
        A.outlet_options(FAN, OPTIONS, ENGLAND, room=bath(outside_wall=False))
    with pytest.raises(makegood.Error, match="no extract rate"):
        A.outlet_options(FAN, OPTIONS, FINLAND, room=bath())


# ---- how often the stated probability is right -----------------------------------------------------------------------------------


def system_flow(fan_factor: float, quadratic: float) -> float:
    """Where fan_factor (60 - 0.06 q²) meets quadratic q²."""
    return math.sqrt(60 * fan_factor / (quadratic + 0.06 * fan_factor))


def calibration(draws: int, seed: int = 1) -> tuple[float, float, int]:
    """Mean stated probability, share of true ones, number; fan and loss each with its own rectangular error. Stated between 10 and 90 %."""
    rng = random.Random(seed)
    fan = {"points": [[q, 60 - 0.06 * q * q] for q in range(0, 31)], "pressure": "total"}
    stated = true = number = 0.0
    for _ in range(draws):
        k, wanted = rng.uniform(2, 30), rng.uniform(8, 28)
        segments = [{"kind": "fitting", "loss_coefficient": k, "loss_low": 0.8 * k, "loss_high": 1.2 * k, "diameter_mm": 100}]
        p = A.outlet_options(fan, [{"name": "a", "segments": segments}], required_l_per_s=wanted).options[0]["probability"]
        if p is None or not 0.1 < p < 0.9:
            continue
        area = math.pi * 0.1**2 / 4
        quadratic = k * 0.6 * (1e-3 / area) ** 2
        hit = system_flow(1 + rng.uniform(-0.1, 0.1), quadratic * (1 + rng.uniform(-0.2, 0.2))) >= wanted
        stated, true, number = stated + p, true + hit, number + 1
    return stated / number, true / number, int(number)


def test_the_stated_probability_is_kept():
    stated, true, n = calibration(3000)
    assert n > 150 and abs(stated - true) < 4 * math.sqrt(0.25 / n) + 0.01


if __name__ == "__main__":
    stated, true, n = calibration(int(sys.argv[1]) if len(sys.argv) > 1 else 20000)
    print(f"outlets whose rate is met with a stated probability of 10 to 90 %: {n}; stated on average {stated:.4f}, true {true:.4f}")
