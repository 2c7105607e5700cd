# SPDX-License-Identifier: MIT
"""A visit as a whole: calculations, things seen, what was put right, what follows; many visits at once; bad input."""

from __future__ import annotations

import copy
import json
import pathlib
from decimal import Decimal
from typing import Any

import makegood
import pytest

ROOT = pathlib.Path(__file__).resolve().parents[2]
RULES = "bs7671:2018+a2,england-adf-2021,england-adp-2013"


def visit(**more: Any) -> dict[str, Any]:
    """An invented workshop with one circuit."""
    base = {
        "format": "makegood-visit-1",
        "title": "A workshop",
        "invented": True,
        "supply": {"earthing": "TN-S", "nominal_voltage_v": 230, "external_loop_impedance_ohm": 0.3},
        "instruments": [{"id": "tester", "accuracy": [{"reads": "insulation", "percent": 3, "counts": 3, "resolution": 0.01}, {"reads": "loop_impedance", "percent": 5, "counts": 2, "resolution": 0.01}]}],
        "rooms": [{"id": "hall", "name": "Hall", "kind": "other"}, {"id": "wet", "name": "Shower", "kind": "bathroom", "length_m": 2, "width_m": 2, "height_m": 2.4}],
        "circuits": [{"id": "saw", "name": "Saw", "insulation_mohm": {"value": 120, "instrument": "tester", "circuit_state": "disconnected"}}],
    }
    base.update(copy.deepcopy(more))
    return base


def assess(document: dict[str, Any], rules: str = RULES) -> dict[str, Any]:
    return makegood.assess(makegood.read_visit(document), rules=rules).to_dict()


def problems(document: dict[str, Any]) -> dict[str, str]:
    with pytest.raises(makegood.DocumentError) as caught:
        makegood.read_visit(document)
    return dict(caught.value.problems)


def of(a: dict[str, Any], path: str, check: str = "") -> list[dict[str, Any]]:
    return [f for f in a["findings"] if f["path"] == path and (not check or f["call"].endswith("." + check))]


# ---------------------------------------------------------------------------------------------------------- calculations


def test_any_check_of_the_catalogue_by_its_arguments():
    a = assess(visit(calculations=[{"id": "run_on", "name": "Fan", "call": "air.check_overrun", "inputs": {"overrun_min": 6, "overrun_case": "no_outside_wall"}}]))
    (f,) = of(a, "calculations[0]")
    alone = makegood.air.check_overrun(6, "no_outside_wall", RULES)
    assert f["subject"] == "Fan" and f["call"] == "air.check_overrun" and f["question"]
    assert f["verdict"]["limit"] == alone.limit == 15.0 and f["outcome"] == alone.outcome == "fail"  # 15 minutes, Approved Document F 1.51


def test_every_check_of_the_catalogue_can_be_asked_and_has_words():
    said = makegood.words()["checks"]
    asked = 0
    for d in makegood.catalogue():
        if d["kind"] != "check":
            continue
        inputs = {x["name"]: (x["one_of"][0] if "one_of" in x else None if i == 0 else sum(x["usual"]) / 2) for i, x in enumerate(d["arguments"])}
        a = assess(visit(calculations=[{"id": "one", "name": "It", "call": d["name"], "inputs": inputs}]))
        found = of(a, "calculations[0]")
        assert len(found) == 1 and found[0]["call"] == d["name"] and found[0]["question"] == said[d["name"]]["question"]
        assert found[0]["outcome"] != "pass" or "one_of" in d["arguments"][0], d["name"]  # the first argument was not measured
        asked += 1
    assert asked >= 72


def test_a_reading_names_an_instrument_of_the_visit():
    inputs = {"resistance_mohm": {"value": 1.02, "instrument": "tester"}, "circuit_voltage": "up_to_500_v"}
    names = [x["name"] for x in makegood.electrical.check_insulation.describe()["arguments"]]
    a = assess(visit(calculations=[{"id": "one", "call": "electrical.check_insulation", "inputs": dict(zip(names, inputs.values()))}]))
    (f,) = of(a, "calculations[0]")
    # limit of error 3 % of 1.02 and 3 counts of 0.01, rectangular each, independent
    assert f["verdict"]["standard_uncertainty"] == pytest.approx(((0.0306**2 + 0.03**2) / 3) ** 0.5, rel=1e-9)
    assert not f["verdict"]["assumed"] and f["outcome"] == "undecided"
    told = copy.deepcopy(inputs)
    told["resistance_mohm"]["kind"] = "told"
    (f,) = of(assess(visit(calculations=[{"id": "one", "call": "electrical.check_insulation", "inputs": dict(zip(names, told.values()))}])), "calculations[0]")
    assert f["reason"] == "not measured"  # hearsay is no measurement


def test_a_model_stands_beside_the_findings_and_speaks_where_it_decides():
    ring = {"line_end_to_end_ohm": 0.7, "neutral_end_to_end_ohm": 0.7, "cpc_end_to_end_ohm": {"above": 1999}}
    a = assess(visit(calculations=[{"id": "ring", "name": "Ring", "call": "electrical.ring_tests", "inputs": ring},
                                   {"id": "dew", "call": "air.dew_point", "inputs": {"temperature_c": 20, "relative_humidity_percent": 50}}]))
    assert [r["id"] for r in a["results"]] == ["ring", "dew"]
    assert a["results"][0]["result"]["leading"] == "cpc_broken" and a["results"][0]["text"]
    (f,) = of(a, "calculations[0]")
    assert f["kind"] == "check" and f["outcome"] in ("fail", "undecided") and "open" in f["plain"]
    assert a["results"][1]["result"]["value"] == pytest.approx(9.27, abs=0.02) and not of(a, "calculations[1]")  # dew point of 20 °C, 50 %: psychrometric tables


NTC = {"kind": "ntc", "reference_ohm": 10000, "reference_c": 25, "beta_k": 3950, "name": "ten"}
FAN = {"fan": {"points": [[0, 60], [30, 0]]}, "system": {"flow_l_per_s": 15, "pressure_pa": 30}}  # they meet at 15 l/s
LAYERS = {"layers": [{"material": "ceramic_tile", "thickness_mm": 10}, {"material": "cement_screed", "thickness_mm": 60}], "power_density_w_per_m2": 150, "room": 20}
PROVED = {"insulation": True, "screen": True, "resistance": True, "rcd": True}


@pytest.mark.parametrize(
    ("call", "inputs", "outcome", "words"),
    [
        # β = 3950: 10000 exp(3950 (1/288.15 - 1/298.15)) = 15842 Ω at 15 °C, 23360 Ω at 7 °C: three readings of one sound sensor
        ("sensing.identify_sensor", {"readings": [{"resistance_ohm": r, "temperature_c": t} for r, t in ((10000, 25), (15842, 15), (23360, 7))], "candidates": [NTC]}, "pass", "sound"),
        ("sensing.identify_sensor", {"readings": [{"resistance_ohm": {"above": 2e6}, "temperature_c": 21}], "candidates": [NTC]}, "undecided", "open"),
        ("air.fan_diagnosis", {**FAN, "readings": {"grille_l_per_s": 15, "outlet_l_per_s": 15}}, "pass", "curve and dimensions"),
        ("air.fan_diagnosis", {**FAN, "readings": {"grille_l_per_s": 9}}, "undecided", "Most likely"),
        # 7.5 V of the 10 V that are lost along one conductor of 0.1 Ω (0.95 V at 9.5 A): a joint in it
        ("electrical.joint_under_load", {"no_load_v": 236.0, "load_v": 226.0, "current_a": 9.5, "line_drop_v": 7.5, "neutral_drop_v": 0.9, "circuit_ohm": 0.2, "supply_ohm": 0.15}, "fail", "line conductor"),
        ("electrical.joint_under_load", {"no_load_v": 236.0, "load_v": 229.0, "current_a": 9.5}, "undecided", "no joint stands out"),
        ("electrical.unwanted_trips", {"residual_current_ma": 30.0, "when": "at_once", "insulation_neutral_mohm": 0.001, "insulation_line_mohm": {"above": 200}}, "undecided", "neutral"),
        ("heating.warm_up_evidence", {"times_s": [0, 1200], "temperatures_c": [18, 22], "build_up": LAYERS, "proved": {**PROVED, "rcd": False}}, "undecided", "RCD"),
        ("electrical.proof_of_isolation", {}, "undecided", "lacks"),
    ],
)
def test_a_model_that_ranks_explanations_is_a_finding(call, inputs, outcome, words):
    a = assess(visit(calculations=[{"id": "one", "name": "It", "call": call, "inputs": inputs}]))
    (f,) = of(a, "calculations[0]")
    assert f["outcome"] == outcome and words in f["plain"], f["plain"]
    assert (outcome == "undecided") == bool(f["next"]) and f["call"] == call
    code = (f["danger"] or {}).get("code", "")
    assert not code or call.startswith(("electrical.", "heating."))  # the codes of the trade are for electrical danger


def test_a_formula_among_the_calculations_takes_readings_and_shows_its_steps():
    inputs = {"temperature_c": {"value": 20, "accuracy": {"limit": 0.5}}, "relative_humidity_percent": 50}
    (r,) = assess(visit(calculations=[{"id": "dew", "call": "air.dew_point", "inputs": inputs}]))["results"]
    alone = makegood.air.dew_point(20, 50)
    assert r["result"]["value"] == alone and r["result"]["unit"] == "°C"
    assert r["result"]["steps"] and all(s["equation"] and s["result"] for s in r["result"]["steps"])
    # the dew point rises by about 0.95 K for each kelvin at the same relative humidity (Magnus: (Td/T scale)^2 of the slopes of vapour pressure)
    half = (makegood.air.dew_point(20.01, 50) - makegood.air.dew_point(19.99, 50)) / 0.02 * 0.5
    assert r["result"]["standard_uncertainty"] == pytest.approx(half / 3**0.5, rel=1e-3) and "±" in r["text"][0]
    (f,) = of(assess(visit(calculations=[{"id": "dew", "call": "air.dew_point", "inputs": {"temperature_c": {"above": 20}, "relative_humidity_percent": 50}}])), "calculations[0]")
    assert f["outcome"] == "undecided" and "temperature_c" in f["plain"]


def test_each_reading_stands_beside_what_the_others_let_expect():
    # one reading alone: the middle is that of the element as rated, 230² / 600 + 0.1 Ω, and 95 % lie evenly about it
    s = makegood.Session("heating_element", {"power_w": 600})
    s.read("element_ohm", {"value": 84.1, "accuracy": {"standard_uncertainty": 0.5}})
    (r,) = s.next()["predicted"]
    sound = 230**2 / 600 + 0.1
    assert s.next()["hypotheses"][0]["id"] == "sound" and r["predicted"] == pytest.approx(sound, abs=0.01) and r["read"] == 84.1
    assert (r["low"] + r["high"]) / 2 == pytest.approx(sound, abs=0.01)
    assert r["z"] == pytest.approx((84.1 - sound) / ((r["high"] - r["low"]) / 2 / 1.959964), rel=0.01)  # a normal distribution
    # read twice with an instrument of 0.5 Ω: what the first lets expect of the second lies near the first
    s.read("element_ohm", {"value": 84.3, "accuracy": {"standard_uncertainty": 0.5}})
    first, second = s.next()["predicted"]
    assert abs(second["predicted"] - 84.1) < 0.5 < sound - 84.1 and abs(second["z"]) < 1 and first["predicted"] > r["low"]
    assert second["high"] - second["low"] < r["high"] - r["low"]


def test_a_slip_in_the_name_of_an_accuracy_is_no_reading_without_doubt():
    inputs = {"temperature_c": {"value": 20, "accuracy": {"limits": 0.5}}, "relative_humidity_percent": 50}
    (f,) = of(assess(visit(calculations=[{"id": "dew", "call": "air.dew_point", "inputs": inputs}])), "calculations[0]")
    assert f["outcome"] == "undecided" and 'did you mean "limit"' in f["plain"]


def test_numbers_that_cannot_be_end_one_question_not_the_visit():
    a = assess(visit(calculations=[{"id": "bad", "name": "Fan", "call": "air.check_overrun", "inputs": {"overrun_min": -5, "overrun_case": "no_outside_wall"}},
                                   {"id": "good", "name": "Fan", "call": "air.check_overrun", "inputs": {"overrun_min": 20, "overrun_case": "no_outside_wall"}}]))
    (bad,), (good,) = of(a, "calculations[0]"), of(a, "calculations[1]")
    assert bad["outcome"] == "undecided" and "-5 min" in bad["plain"] and good["outcome"] == "pass"


# ---------------------------------------------------------------------------------------- what was seen, what was put right


def test_things_seen_have_words_and_a_suggested_class():
    a = assess(visit(observations=[{"id": "end", "kind": "live_parts_within_reach", "name": "Cable end", "about": "saw"}]))
    (f,) = of(a, "observations[0]")
    assert f["kind"] == "observation" and f["outcome"] == "fail" and f["circuit"] == "saw"
    assert f["danger"]["level"] == "now" and f["danger"]["code"] == "C1" and f["danger"]["note"] == "suggested; not a certificate or condition report"
    (off,) = a["isolate"]
    assert off["circuit"] == "saw" and off["what"] == "Saw" and off["findings"] == [a["findings"].index(f) + 1] and off["how"]
    # a rulebook without published codes suggests none
    (f,) = of(assess(visit(observations=[{"id": "end", "kind": "live_parts_within_reach", "name": "Cable end", "about": "saw"}]), "iec60364"), "observations[0]")
    assert f["danger"]["level"] == "now" and f["danger"]["code"] == ""


def test_before_and_after():
    after = visit(put_right=[{"id": "dried", "about": "saw", "what": "The wet joint was renewed.", "minutes": 30, "work": "repair",
                              "before": {"insulation_mohm": {"value": 0.3, "instrument": "tester", "circuit_state": "disconnected"}}}])
    a = assess(after)
    (c,) = a["changes"]
    (answer,) = c["answers"]
    assert (answer["before"]["outcome"], answer["before"]["value"]) == ("fail", 0.3) and (answer["after"]["outcome"], answer["after"]["value"]) == ("pass", 120)
    assert a["findings"][answer["finding"] - 1]["path"] == "circuits[0]"
    # the findings are those of the visit as it is now, and the same as without the history
    assert a["findings"] == assess(visit())["findings"]
    assert not a["isolate"]
    (n,) = a["notifiable"]
    assert n["answer"] == "not_notifiable" and n["done"] is True


def test_what_is_ended_is_no_finding():
    seen = {"id": "end", "kind": "live_parts_within_reach", "name": "Cable end", "about": "saw"}
    a = assess(visit(observations=[seen], put_right=[{"id": "closed", "about": "saw", "what": "It was closed.", "ends": ["end"]}]))
    assert not of(a, "observations[0]") and not a["isolate"] and a["changes"][0]["ends"][0].startswith("Cable end")


# ------------------------------------------------------------------------------------------------------------ what follows


def test_additional_protection_is_asked_where_the_use_is_known():
    a = assess(visit(circuits=[{"id": "sockets", "name": "Sockets", "feeds": "socket_outlets", "rcd_kind": "none"},
                               {"id": "shower", "name": "Shower", "feeds": "fixed_load", "rooms": ["wet"], "rcd_kind": "general", "rcd_residual_ma": 30},
                               {"id": "lamp", "name": "Lamp", "feeds": "lighting", "rcd_kind": "general", "rcd_residual_ma": 100},
                               {"id": "plain", "name": "Plain"}]))
    got = {f["path"]: f["outcome"] for f in a["findings"] if f["call"] == "electrical.check_additional_protection"}
    assert got == {"circuits[0]": "fail", "circuits[1]": "pass", "circuits[2]": "fail"}  # 411.3.3, 701.411.3.3 and 411.3.4 ask for 30 mA
    barn = assess(visit(dwelling=False, circuits=[{"id": "lamp", "name": "Lamp", "feeds": "lighting", "rcd_kind": "none"}]))
    assert not [f for f in barn["findings"] if f["call"] == "electrical.check_additional_protection"]


def test_nothing_measured_is_a_plan():
    a = assess(visit(circuits=[{"id": "saw", "name": "Saw", "feeds": "socket_outlets", "rcd_kind": "general"}]))
    assert a["findings"] and {f["outcome"] for f in a["findings"]} == {"undecided"}
    needed = a["readings_needed"]
    assert needed and [r["live"] for r in needed] == sorted(r["live"] for r in needed)  # dead before live
    settled = {n for r in needed for n in r["settles"]}
    assert settled == {i + 1 for i, f in enumerate(a["findings"]) if f["reason"] != "no rule in book"}
    assert len(a["unproved"]) == len(a["findings"])


PRICES = {"currency": "GBP", "rate_per_h": "40.00", "markup_percent": "10", "vat": {"standard": "20"}, "registered": True}
WORKS = [
    {"id": "new", "about": "saw", "title": "Renew the cable", "act": "replace", "minutes": 90, "minutes_low": 60, "minutes_high": 150, "materials": [{"name": "cable", "cost": "20.00", "quantity": 2}], "chosen": True, "work": "new_circuit"},
    {"id": "off", "about": "saw", "title": "Leave it off", "act": "isolate", "minutes": 15},
]


def bad_insulation() -> list[dict[str, Any]]:
    return [{"id": "saw", "name": "Saw", "insulation_mohm": {"value": 0.2, "instrument": "tester", "circuit_state": "disconnected"}}]


def test_prices_are_exact():
    a = assess(visit(circuits=bad_insulation(), works=WORKS, prices=PRICES))
    (o,) = a["options"]
    by = {x["id"]: x for x in o["list"]}
    # (1.5 h × 40 + 2 × 20 × 1.10) × 1.20 = (60 + 44) × 1.20
    assert Decimal(by["new"]["price"]) == Decimal("124.80")
    assert Decimal(by["new"]["price_low"]) == Decimal("100.80") and Decimal(by["new"]["price_high"]) == Decimal("172.80")
    assert Decimal(by["off"]["price"]) == Decimal("12.00") and by["off"]["isolates"]
    assert Decimal(a["quote"]["total"]) == Decimal("124.80")
    (n,) = a["notifiable"]
    assert n["answer"] == "notifiable" and n["done"] is False and n["source"]


def test_the_usual_ways_stand_where_nothing_was_offered():
    a = assess(visit(circuits=bad_insulation()))
    (o,) = a["options"]
    assert {x["id"] for x in o["list"]} == {r["id"] for r in makegood.words()["checks"]["electrical.check_insulation"]["remedies"]}
    assert all(x["price"] is None for x in o["list"]) and any(x["isolates"] for x in o["list"])


def test_safety_is_first_in_the_order_of_work():
    a = assess(visit(circuits=bad_insulation(), works=WORKS, time={"available_min": 90, "used_min": 20}))
    order = a["order_of_work"]
    assert (order["available_min"], order["used_min"], order["left_min"]) == (90, 20, 70)
    assert order["steps"][0]["title"].startswith("Isolate") and order["steps"][0]["findings"]
    # 5 minutes for isolating leave 65: 90 minutes of cable do not fit
    assert [x["title"] for x in order["left_out"]] == ["Renew the cable"]
    assert assess(visit(circuits=bad_insulation(), works=WORKS))["order_of_work"]["available_min"] is None


# ------------------------------------------------------------------------------------------------------------------ many


def demo() -> dict[str, Any]:
    return json.loads((ROOT / "notebooks" / "demo_visit.json").read_text(encoding="utf-8"))


@pytest.mark.parametrize("threads", [1, 2])
def test_many_visits_are_each_one(threads):
    visits = [demo(), visit(), visit(circuits=bad_insulation())]
    seen: list[int] = []
    m = makegood.assess_many(visits, rules=RULES, threads=threads, inquiries=True, progress=seen.append)
    from makegood import _many

    assert seen[-1] == 3
    for i, v in enumerate(visits):
        alone = assess(v)["findings"]
        rows = [k for k in range(len(m.visit)) if m.visit[k] == i]
        assert len(rows) == len(alone)
        for k, f in zip(rows, alone):
            assert m.paths[m.path[k]] == f["path"] and m.calls[m.call[k]] == f["call"]
            assert _many.OUTCOMES[m.outcome[k]] == f["outcome"] and _many.REASONS[m.reason[k]] == f["reason"]
            assert _many.DANGERS[m.danger[k]] == (f["danger"] or {"level": ""})["level"]
            if f["verdict"]["value"] is not None and f["kind"] == "check":
                assert m.value[k] == f["verdict"]["value"] and m.limit[k] == f["verdict"]["limit"]
    assert sum(m.counts().values()) == len(m.visit)


def test_many_stops_when_the_progress_does():
    class Stop(Exception):
        pass

    def stop(done: int) -> None:
        raise Stop

    with pytest.raises(Stop):
        makegood.assess_many([visit()] * 200, rules=RULES, progress=stop)


def test_an_assessment_is_a_document_and_the_same_each_time():
    a, b = assess(demo()), assess(demo())
    assert a == b and json.loads(json.dumps(a)) == a
    assert set(a["terms"]) <= set(makegood.words()["glossary"]) and a["scope"]
    for f in a["findings"]:
        assert f["client"] and f["electrician"] and f["question"]
        if f["danger"]:
            assert "not a certificate" in f["danger"]["note"]
    for f in a["isolate"]:
        assert f["how"] and f["why"] and f["until"]


# ------------------------------------------------------------------------------------------------------------- bad input


@pytest.mark.parametrize(
    ("more", "path", "words"),
    [
        ({"calculations": [{"id": "x", "call": "air.check_overun", "inputs": {}}]}, "calculations[0].call", 'did you mean "air.check_overrun"'),
        ({"calculations": [{"id": "x", "call": "air.check_overrun", "inputs": {"overrun_mins": 3, "overrun_case": "no_window"}}]}, "calculations[0].inputs.overrun_mins", "overrun_min"),
        ({"calculations": [{"id": "x", "call": "air.check_overrun", "inputs": {"overrun_case": "no_window"}}]}, "calculations[0].inputs", "overrun_min"),
        ({"calculations": [{"id": "x", "call": "air.check_overrun", "about": "sew", "inputs": {"overrun_min": 3, "overrun_case": "no_window"}}]}, "calculations[0].about", 'did you mean "saw"'),
        ({"observations": [{"id": "x", "kind": "live_parts_in_reach"}]}, "observations[0].kind", "live_parts_within_reach"),
        ({"put_right": [{"id": "x", "about": "saw", "what": "y", "before": {"insulation_mhom": 3}}]}, "put_right[0].before.insulation_mhom", "insulation_mohm"),
        ({"put_right": [{"id": "x", "about": "saw", "what": "y", "before": {"insulation_mohm": -3}}]}, "put_right[0].before.insulation_mohm", "below 0"),
        ({"put_right": [{"id": "x", "about": "saw", "what": "y", "before": {"insulation_mohm": {"value": 3, "instrument": "testr"}}}]}, "put_right[0].before.insulation_mohm.instrument", "tester"),
        ({"put_right": [{"id": "x", "what": "y", "before": {"insulation_mohm": 3}}]}, "put_right[0].about", "which part"),
        ({"put_right": [{"id": "x", "about": "hall", "what": "y", "before": {"name": "z"}}]}, "put_right[0].about", "no readings before"),
        ({"put_right": [{"id": "x", "about": "saw", "what": "y", "ends": ["end"]}]}, "put_right[0].ends[0]", "not in the visit"),
        ({"works": [{"id": "x", "about": "saw", "title": "y", "minutes": 20, "work": "new_circuits"}]}, "works[0].work", 'did you mean "new_circuit"'),
        ({"works": [{"id": "x", "about": "saw", "title": "y", "minutes": 20, "minutes_low": 30}]}, "works[0].minutes", "outside"),
        ({"works": [{"id": "x", "about": "saw", "title": "y"}]}, "works[0].minutes", "missing"),
        ({"circuits": [{"id": "saw", "name": "Saw", "rooms": ["wett"]}]}, "circuits[0].rooms[0]", "wet"),
        ({"appliances": [{"id": "saw", "name": "Saw", "kind": "other"}], "observations": [{"id": "x", "kind": "live_parts_within_reach", "about": "saw"}]}, "observations[0].about", "circuits.saw"),
    ],
)
def test_what_does_not_fit_is_said_with_its_place(more, path, words):
    found = problems(visit(**more))
    assert path in found and words in found[path], found


def test_a_part_in_two_lists_is_named_with_its_list():
    a = assess(visit(appliances=[{"id": "saw", "name": "Saw bench", "kind": "other"}], observations=[{"id": "x", "kind": "live_parts_within_reach", "about": "circuits.saw"}]))
    (f,) = of(a, "observations[0]")
    assert f["circuit"] == "saw" and f["subject"] == "Saw"
