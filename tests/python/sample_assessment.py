# SPDX-License-Identifier: MIT
"""A whole assessment of an invented visit, for the pages: a boat-house with a sauna, half finished by somebody else.

The findings come from `makegood.assess`, the results from the models; the words beside them are written by hand, as data.
    python sample_assessment.py FILE.json
"""

from __future__ import annotations

import copy
import functools
import json
import sys
from typing import Any

import makegood
from makegood import air, electrical, heating, price, setting_out

RULES = "bs7671:2018+a2,england-adf-2021"
NOTE = "suggested; not a certificate or condition report"


def reading(value: float, instrument: str, **more: Any) -> dict[str, Any]:
    return {"value": value, "instrument": instrument, **more}


def circuit(
    name: str, id: str, power_w: float, length_m: float, loop: Any, insulation: Any, trip: Any, rating: int = 16, **more: Any
) -> dict[str, Any]:
    operating = {6: 30, 16: 80, 32: 160}[rating]
    return {
        "id": id,
        "name": name,
        "load_kind": "other",
        "power_w": power_w,
        "length_m": reading(length_m, "tape"),
        "cable": {"drop_mv_per_a_m": 18 if rating < 32 else 11, "cpc_area_mm2": 1.5, "k": 115},
        "device": {"rating_a": rating, "operating_current_a": operating, "operating_time_s": 0.1},
        "rcd_kind": "general",
        "loop_impedance_ohm": loop,
        "insulation_mohm": insulation,
        "rcd_trip_ms": trip,
        **more,
    }


def visit() -> dict[str, Any]:
    tester, dead = "tester", {"circuit_state": "disconnected", "test_voltage_v": 500}
    return {
        "format": "makegood-visit-1",
        "title": "Boat-house with a sauna",
        "place": "Invented: the old slipway by the lake",
        "date": "2026-10-19",
        "invented": True,
        "supply": {"earthing": "TN-S", "nominal_voltage_v": 230, "external_loop_impedance_ohm": reading(0.34, tester)},
        "instruments": [
            {
                "id": tester,
                "description": "installation tester",
                "calibrated": "2026-05-06",
                "accuracy": [
                    {"reads": "loop_impedance", "percent": 5, "counts": 3, "resolution": 0.01},
                    {"reads": "insulation", "percent": 3, "counts": 3, "resolution": 0.01},
                    {"reads": "rcd_time", "percent": 2, "counts": 2, "resolution": 1},
                ],
            },
            {
                "id": "meter",
                "description": "hand-held multimeter",
                "calibrated": "2026-05-06",
                "accuracy": [{"reads": "resistance", "percent": 0.8, "counts": 2, "resolution": 0.1}],
            },
            {"id": "tape", "description": "tape along the route of the cable", "accuracy": [{"reads": "length", "limit": 0.2}]},
            {"id": "thermometer", "description": "contact thermometer", "accuracy": [{"reads": "temperature", "limit": 1.0}]},
            {"id": "hood", "description": "hood with a vane anemometer; no statement of its accuracy was found"},
        ],
        "rooms": [
            {"id": "hall", "name": "Boat hall", "kind": "other", "length_m": 9.0, "width_m": 4.2, "height_m": 3.0},
            {"id": "wash", "name": "Wash room", "kind": "bathroom", "length_m": 2.4, "width_m": 2.1, "height_m": 2.3},
        ],
        "circuits": [
            circuit(
                "Sauna heater circuit",
                "sauna",
                6000,
                24,
                reading(0.81, tester),
                {"above": 999, "instrument": tester, **dead},
                reading(27, tester),
                32,
            ),
            circuit("Floor warming circuit", "warming", 900, 19, reading(1.12, tester), reading(3.1, tester, **dead), reading(31, tester)),
            circuit(
                "Outlets in the boat hall",
                "hall",
                3600,
                31,
                reading(2.62, tester),
                reading(86, tester, **dead),
                {"state": "no_trip", "instrument": tester},
            ),
            circuit(
                "Lamp over the slipway",
                "slipway",
                60,
                38,
                reading(1.7, tester),
                {"below": 0.05, "instrument": tester, **dead},
                reading(24, tester),
                6,
                load_kind="lighting",
            ),
        ],
        "appliances": [
            {
                "id": "stove",
                "name": "Sauna heater",
                "kind": "heater",
                "circuit": "sauna",
                "rated_power_w": 6000,
                "rated_voltage_v": 230,
                "lower_tolerance_percent": 5,
                "upper_tolerance_percent": 10,
                "resistance_ohm": reading(8.7, "meter"),
                "insulation_mohm": reading(0.42, tester, **dead),
            },
            {
                "id": "mat",
                "name": "Heating mat under the slate",
                "kind": "heating_mat",
                "circuit": "warming",
                "rated_power_w": 900,
                "rated_voltage_v": 230,
                "lower_tolerance_percent": 5,
                "upper_tolerance_percent": 10,
                "resistance_ohm": reading(116.4, "meter"),
                "insulation_mohm": {"above": 999, "instrument": tester, **dead},
            },
        ],
        "sensors": [
            {
                "id": "probe",
                "name": "Sensor in the slate floor",
                "appliance": "mat",
                "curve": {"kind": "ntc", "reference_ohm": 10000, "reference_c": 25, "beta_k": 3950},
                "resistance_ohm": reading(15300, "meter"),
                "temperature_c": reading(14.2, "thermometer"),
            },
        ],
        "fans": [
            {
                "id": "fan",
                "name": "Fan of the wash room",
                "room": "wash",
                "flow_l_per_s": reading(9.6, "hood"),
                "available_pressure_pa": 40,
                "air_temperature_c": 20,
                "relative_humidity_percent": 50,
                "duct": [
                    {
                        "name": "flexible duct over the ceiling",
                        "diameter_mm": 100,
                        "length_m": 3.2,
                        "roughness_mm": 0.9,
                        "compression_percent": 25,
                        "loss_coefficient": 2.4,
                    },
                    {"name": "pipe along the eaves", "diameter_mm": 100, "length_m": 4.5, "roughness_mm": 0.01, "loss_coefficient": 5.0},
                ],
            },
        ],
    }


# ------------------------------------------------------------------------------------------------- results of the models

BELOW = {"temperature_c": 8, "resistance_m2k_per_w": 0.3}


def floor(top: str, mm: float) -> list[dict[str, Any]]:
    return [
        {"material": top, "thickness_mm": mm},
        {"material": "mortar", "thickness_mm": 5},
        {"material": "extruded_foam", "thickness_mm": 20},
        {"material": "concrete", "thickness_mm": 90},
    ]


DUCT = [
    {"kind": "fitting", "name": "grille in the ceiling", "free_area_ratio": 0.6, "diameter_mm": 100},
    {"kind": "flexible", "name": "flexible duct over the ceiling", "diameter_mm": 100, "length_m": 3.2, "compression_percent": 25},
    {"kind": "round", "name": "pipe along the eaves", "diameter_mm": 100, "length_m": 4.5, "wall": "pvc"},
    {"kind": "fitting", "name": "bend", "fitting": "mitre_90"},
    {"kind": "fitting", "name": "cowl outside", "loss_coefficient": 2.5, "diameter_mm": 100},
]
WALL = {
    "width_mm": 2100,
    "height_mm": 2300,
    "tile_width_mm": 198,
    "tile_height_mm": 98,
    "joint_mm": 3,
    "first_x_mm": 55,
    "first_y_mm": 20,
    "shift_ratio": 0.5,
    "courses_in_bond": 2,
}
KEEP = [
    {"name": "pipe to the shower", "left_mm": 640, "bottom_mm": 0, "right_mm": 700, "top_mm": 1150},
    {"name": "cable to the wall lamp", "left_mm": 1500, "bottom_mm": 1250, "right_mm": 1570, "top_mm": 2300},
]
SHOWER = {
    "outline": [[0, 0], [2.4, 0], [2.4, 2.1], [0, 2.1]],
    "ceiling_m": 2.3,
    "fixtures": [{"name": "shower tray", "kind": "shower_tray", "outline": [[0, 0], [0.9, 0], [0.9, 0.9], [0, 0.9]], "rim_m": 0.1}],
    "partitions": [{"name": "glass screen", "from": [0.9, 0], "to": [0.9, 0.9], "top_m": 2.0}],
}
BRACKETS = [{"x_mm": 0, "y_mm": 0}, {"x_mm": 520, "y_mm": 0}, {"x_mm": 0, "y_mm": 700}, {"x_mm": 520, "y_mm": 700}]

CALLS: list[tuple[str, str, str, Any, dict[str, Any]]] = [
    (
        "evidence",
        "Heating mat under the slate",
        "heating.warm_up_evidence",
        heating.warm_up_evidence,
        {
            "times_s": [0, 900, 1800, 3600, 5400, 7200],
            "temperatures_c": [14.0, 16.5, 18.5, 21.0, 22.5, 23.5],
            "build_up": {"layers": floor("limestone", 12), "power_density_w_per_m2": 150, "room": 18, "heater_after_layer": 2, "below": BELOW},
            "proved": {"insulation": True, "screen": True, "resistance": True, "rcd": True},
        },
    ),
    (
        "warm_up",
        "Slate floor, once mended",
        "heating.floor_warm_up",
        heating.floor_warm_up,
        {
            "layers": floor("limestone", 12),
            "power_density_w_per_m2": 150,
            "initial_c": 14,
            "room": 18,
            "heater_after_layer": 2,
            "target_c": 24,
            "below": BELOW,
        },
    ),
    (
        "no_limit",
        "Timber floor of the changing room",
        "heating.without_floor_limit",
        heating.without_floor_limit,
        {
            "layers": floor("timber", 14),
            "power_density_w_per_m2": 150,
            "set_point_c": 22,
            "finish": "timber",
            "heater_after_layer": 2,
            "below": BELOW,
            "air_elsewhere_c": 18,
        },
    ),
    (
        "meeting",
        "Fan of the wash room",
        "air.operating_point",
        air.operating_point,
        {
            "fan": {"points": [[0, 58], [8, 50], [16, 38], [22, 24], [27, 0]], "pressure": "static", "outlet_diameter_mm": 100, "power_w": 16},
            "system": {"segments": DUCT},
        },
    ),
    ("duct", "Duct of the wash room", "air.duct_run", air.duct_run, {"segments": DUCT, "flow_l_per_s": 15}),
    (
        "shower",
        "Wash room",
        "air.room_moisture",
        air.room_moisture,
        {
            "room_volume_m3": 11.6,
            "flow_l_per_s": 9.6,
            "shower_min": 6,
            "source_kg_per_h": 1.6,
            "source_low_kg_per_h": 1.0,
            "source_high_kg_per_h": 2.6,
            "surface_c": 16,
        },
    ),
    (
        "void",
        "Roof over the wash room",
        "air.roof_void_condensation",
        air.roof_void_condensation,
        {"flow_l_per_s": 9.6, "surface_c": 4, "rulebook": "england-adf-2021", "void_flow_l_per_s": 3, "outdoor_c": 3},
    ),
    (
        "rail",
        "Brackets of the towel rail",
        "setting_out.place_brackets",
        setting_out.place_brackets,
        {
            "wall": WALL,
            "holes": BRACKETS,
            "hole_diameter_mm": 8,
            "tolerance_mm": 1,
            "wander_mm": 2,
            "keep_outs": KEEP,
            "window": {"left_mm": 800, "bottom_mm": 700, "right_mm": 1500, "top_mm": 1100},
            "doubt": {"wander_mm": 1.5, "centres_mm": 1, "common_mm": 2},
        },
    ),
    (
        "zones",
        "Wash room",
        "setting_out.bathroom_zones",
        setting_out.bathroom_zones,
        {"points": [[1.2, 0.1, 1.2], [2.3, 1.5, 1.1], [0.45, 0.45, 2.1], [0.4, 1.3, 1.4]], "room": SHOWER, "rulebook": RULES},
    ),
    (
        "ring",
        "Outlets in the boat hall",
        "electrical.ring_tests",
        electrical.ring_tests,
        {
            "line_end_to_end_ohm": 0.62,
            "neutral_end_to_end_ohm": 0.63,
            "cpc_end_to_end_ohm": 1.04,
            "points": [
                {"name": "door", "line_neutral_ohm": 0.31, "line_cpc_ohm": 0.42},
                {"name": "bench", "line_neutral_ohm": 0.55, "line_cpc_ohm": 0.68},
                {"name": "window", "line_neutral_ohm": 0.31, "line_cpc_ohm": 0.41},
            ],
        },
    ),
    (
        "choice",
        "Heating mat under the slate",
        "price.compare_options",
        price.compare_options,
        {
            "options": [
                {
                    "name": "Find the break and mend it",
                    "act": "repair",
                    "cost": "260",
                    "minutes": 150,
                    "cures": {"break": "0.85"},
                    "spread": {"kind": "triangular", "low": "190", "high": "410"},
                },
                {"name": "Lay a new mat on top", "act": "replace", "cost": "1480", "cures": ["break", "bypassed"]},
                {"name": "Take it out of use", "act": "isolate", "cost": "36", "isolates": True, "secures": True, "labels": True},
            ],
            "probabilities": {"break": 0.83, "bypassed": 0.17},
            "dangerous": ["bypassed"],
        },
    ),
]


def plain_values(value: Any) -> Any:
    """What a model returned, as a document."""
    value = value.to_dict() if hasattr(value, "to_dict") else value.tolist() if hasattr(value, "tolist") else value
    if isinstance(value, dict):
        return {str(k): plain_values(v) for k, v in value.items()}
    if isinstance(value, (list, tuple)):
        return [plain_values(v) for v in value]
    return value


def results() -> list[dict[str, Any]]:
    out = []
    for i, (id, subject, call, function, inputs) in enumerate(CALLS):
        result = plain_values(function(**copy.deepcopy(inputs)))
        said = result.get("text") or []
        said = [said] if isinstance(said, str) else said
        out.append(
            {"path": f"calculations[{i}]", "id": id, "subject": subject, "about": "", "call": call, "text": said, "result": result, "inputs": inputs}
        )
    return out


# ------------------------------------------------------------------------------------------------- words beside findings

CLIENT = {  # (subject, check): for the client, level of danger, its words, its caution, what follows
    ("Sauna heater", "check_insulation"): (
        "The heating rods of the sauna leak current to the metal case: 0.42 MΩ were read, at least 1 MΩ is asked for.",
        "now",
        "The metal case can give a shock to someone who stands on a wet floor.",
        "Moisture in the rods can read like this too; do not heat it up to dry it out.",
        "The leak grows as the rods take up damp.",
    ),
    ("Lamp over the slipway", "check_insulation"): (
        "The cable to the lamp is damaged or wet: it leaks far more than it may.",
        "now",
        "The outdoor cable can be live where it can be touched.",
        "Keep away from the cable along the slipway.",
        "It fails for good with the next rain, or somebody touches it.",
    ),
    ("Outlets in the boat hall", "check_rcd_trip"): (
        "The safety switch of these outlets did not react at all.",
        "potential",
        "A fault in a tool by the water would not be switched off in time.",
        "",
        "Tools used by the water have no protection against shock.",
    ),
    ("Fan of the wash room", "check_extract"): (
        "The fan moves 9.6 l/s; at least 15 l/s are asked for. Steam stays in the room too long.",
        "improve",
        "Damp in walls and roof over years.",
        "",
        "Mould on cold corners.",
    ),
    ("Heating mat under the slate", "check_element"): (
        "Only about half of the floor heating can work: its resistance is twice what it should be.",
        "investigate",
        "A mat of which a part was bypassed runs hotter than it was made for.",
        "Leave it off until the break is found.",
        "The floor does not get warm.",
    ),
}
UNKNOWN = {
    "check_loop_impedance": "Whether a fault in these outlets is switched off in time is not proved: the reading lies too near its limit.",
    "check_duct_pressure": "Whether the fan is strong enough for its duct has to be measured; it cannot be worked out for such a squeezed duct.",
}
PASSED = {
    "check_insulation": "The cable or heater does not leak.",
    "check_loop_impedance": "A fault to earth is switched off in time.",
    "check_adiabatic": "Its protective wire survives a fault.",
    "check_rcd_trip": "The safety switch reacts in time.",
    "check_element": "Its heating rods are whole.",
    "check_voltage_drop": "The cable is thick enough for its length.",
    "check_ntc_sensor": "The temperature sensor says what it should.",
}


def _findings(a: dict[str, Any]) -> list[dict[str, Any]]:
    for f in a["findings"]:
        check = f["verdict"]["check"]
        said = next((v for (s, c), v in CLIENT.items() if s == f["subject"] and check.startswith(c)), None) if f["outcome"] != "pass" else None
        source = f["verdict"].get("source") or {}
        f.update(
            kind="check",
            caution="",
            consequence="",
            danger=None,
            circuit="",
            call=f"electrical.{check}",
            client=(
                next((words for c, words in PASSED.items() if check.startswith(c)), f["plain"]) if f["outcome"] == "pass" else UNKNOWN.get(check, "")
            ),
            electrician=f"{f['plain']} {source.get('title', '')}, {source.get('clause', '')}." if source.get("title") else f["plain"],
        )
        if said:
            client, level, words, caution, consequence = said
            code = {"now": "C1", "potential": "C2", "improve": "C3", "investigate": "FI"}[level]
            f.update(client=client, caution=caution, caution_client=caution, consequence=consequence)
            f["danger"] = {"level": level, "words": words, "code": code, "source": "BS 7671:2018+A2:2022, Appendix 6", "note": NOTE}
            f["circuit"] = {"Sauna heater": "sauna", "Lamp over the slipway": "slipway"}.get(f["subject"], "")
    a["findings"].append(
        {
            "path": "observations[0]",
            "subject": "Joint box under the bench",
            "question": "Was anything seen there that can hurt?",
            "plain": "Live parts were within reach: the lid of a joint box was missing.",
            "next": "",
            "outcome": "fail",
            "reason": "",
            "before": [],
            "verdict": None,
            "kind": "observation",
            "client": "The lid of a joint box under the bench is missing; bare live metal can be touched.",
            "electrician": "Live parts within reach at the joint box under the bench, IP2X not met.",
            "caution": "Do not reach under the bench.",
            "caution_client": "Do not reach under the bench.",
            "consequence": "Somebody who looks for a dropped screw touches it.",
            "danger": {
                "level": "now",
                "words": "Bare live metal within reach.",
                "code": "C1",
                "source": "BS 7671:2018+A2:2022, Appendix 6",
                "note": NOTE,
            },
            "circuit": "hall",
            "call": "",
        }
    )
    a["findings"].append(
        {
            "path": "circuits[2]",
            "subject": "Outlets in the boat hall",
            "question": "Is there a drawing of what this circuit feeds?",
            "plain": "There is none.",
            "next": "Write down which outlets go dead with it.",
            "outcome": "undecided",
            "reason": "",
            "before": [],
            "verdict": None,
            "kind": "wanting",
            "client": "Nobody wrote down which outlets belong to this circuit.",
            "electrician": "No circuit chart at the board.",
            "caution": "",
            "caution_client": "",
            "consequence": "The next person isolates the wrong circuit.",
            "danger": None,
            "circuit": "",
            "call": "",
        }
    )
    found: list[dict[str, Any]] = a["findings"]
    return found


def _number(a: dict[str, Any], subject: str, check: str) -> int:
    return next(n for n, f in enumerate(a["findings"], 1) if f["subject"] == subject and ((f["verdict"] or {}).get("check") or "").startswith(check))


def quote() -> dict[str, Any]:
    said = price.quote(
        [
            {
                "kind": "labour",
                "name": "Mend the break in the floor heating",
                "time_h": "2.5",
                "rate_per_h": "48",
                "spread": {"kind": "triangular", "low_h": "1.5", "high_h": "4.5"},
            },
            {
                "kind": "labour",
                "name": "New cable to the lamp over the slipway",
                "time_h": "1.5",
                "rate_per_h": "48",
                "spread": {"kind": "triangular", "low_h": "1.25", "high_h": "2.5"},
            },
            {"kind": "materials", "name": "Outdoor cable, glands and a joint box", "cost": "61.40", "markup_percent": "15"},
            {"kind": "materials", "name": "Safety switch for the outlets", "cost": "34.90", "markup_percent": "15"},
            {"kind": "travel", "name": "Travel", "distance_miles": "18", "rate_per_mile": "0.55", "time_h": "0.7", "rate_per_h": "24"},
            {"kind": "contingency", "name": "For what is found on opening", "percent": "5"},
        ],
        vat={"standard": "20"},
        budget="480",
    )
    document: dict[str, Any] = plain_values(said)
    return document


# path, where, what, as said, value, unit, state, instrument, circuit, time, test voltage, note, kind, supersedes
READINGS: list[tuple[Any, ...]] = [
    ("circuits[0].loop_impedance_ohm", "Sauna heater circuit", "loop impedance", "0.81 Ω", 0.81, "Ω", "", "tester", "energised", "10:05"),
    ("circuits[0].insulation_mohm", "Sauna heater circuit", "insulation", "more than 999 MΩ", 999, "MΩ", "above", "tester",
     "disconnected", "9:40", 500),
    ("circuits[2].rcd_trip_ms", "Outlets in the boat hall", "tripping time", "no trip", None, "ms", "no_trip", "tester", "energised", "10:20", None,
     "Tried twice, on both half-waves."),
    ("circuits[2].loop_impedance_ohm", "Outlets in the boat hall", "loop impedance", "2.62 Ω", 2.62, "Ω", "", "tester", "energised", "10:30", None,
     "", "measured", "circuits[2].before.loop_impedance_ohm"),
    ("circuits[2].before.loop_impedance_ohm", "Outlets in the boat hall", "loop impedance", "2.9 Ω", 2.9, "Ω", "", "tester", "energised", "9:55"),
    ("appliances[1].rated_power_w", "Heating mat under the slate", "rated power", "900 W", 900, "W", "", "", "", "", None, "Label in the box.",
     "nameplate"),
    ("appliances[1].resistance_ohm", "Heating mat under the slate", "resistance of the element", "116.4 Ω", 116.4, "Ω", "", "meter", "disconnected",
     "9:50"),
    ("fans[0].flow_l_per_s", "Fan of the wash room", "flow of air", "9.6 l/s", 9.6, "l/s", "", "hood", "", "11:10", None,
     "The hood did not sit tight on the wall."),
]  # fmt: skip


def _reading(
    path: str, subject: str, what: str, said: str, value: Any, unit: str, state: str, instrument: str, circuit_state: str, time: str,
    volts: Any = None, note: str = "", kind: str = "measured", supersedes: str = "",
) -> dict[str, Any]:  # fmt: skip
    return {
        "path": path,
        "subject": subject,
        "what": what,
        "said": said,
        "value": value,
        "unit": unit,
        "state": state,
        "instrument": instrument,
        "time": time,
        "circuit_state": circuit_state,
        "test_voltage_v": volts,
        "supersedes": supersedes,
        "note": note,
        "kind": kind,
    }


def _option(id: str, title: str, act: str, minutes: int, cost: Any, leaves: str, why: str, **more: Any) -> dict[str, Any]:
    low, likely, high = cost if isinstance(cost, tuple) else (None, cost, None)
    return {
        "id": id,
        "title": title,
        "act": act,
        "minutes": minutes,
        "price": likely,
        "price_low": low,
        "price_high": high,
        "currency": "GBP",
        "probability": None,
        "leaves": leaves,
        "isolates": act == "isolate",
        "recommended": False,
        "why": why,
        **more,
    }


@functools.cache
def _built() -> str:
    a = makegood.assess(makegood.read_visit(visit()), rules=RULES).to_dict()
    _findings(a)
    stove, lamp = _number(a, "Sauna heater", "check_insulation"), _number(a, "Lamp over the slipway", "check_insulation")
    trip, flow = _number(a, "Outlets in the boat hall", "check_rcd_trip"), _number(a, "Fan of the wash room", "check_extract")
    mat, lid, chart = _number(a, "Heating mat under the slate", "check_element"), len(a["findings"]) - 1, len(a["findings"])
    insulation, loop = _number(a, "Floor warming circuit", "check_insulation"), _number(a, "Outlets in the boat hall", "check_loop_impedance")
    a["results"] = results()
    a["isolate"] = [
        {
            "what": "Sauna heater",
            "circuit": "sauna",
            "findings": [stove],
            "why": ["Its metal case can become live."],
            "how": ["Switched off at the board, locked off, and labelled “do not switch on”."],
            "until": "Until its heating rods are replaced and read again.",
        },
        {
            "what": "Lamp over the slipway",
            "circuit": "slipway",
            "findings": [lamp],
            "why": ["Its cable leaks current where people walk with wet feet."],
            "how": ["Disconnected at the board, ends made safe to touch, and labelled."],
            "until": "Until a new cable is laid and read.",
        },
        {
            "what": "Outlets in the boat hall",
            "circuit": "hall",
            "findings": [lid, trip],
            "why": ["A joint box stands open, and the safety switch does not react."],
            "how": ["Switched off at the board and locked off."],
            "until": "Until the box has a lid and the safety switch is replaced.",
        },
    ]
    a["changes"] = [
        {
            "id": "dry",
            "about": "warming",
            "subject": "Floor warming circuit",
            "what": "A wet joint in the wall box was cut out and made anew, dry.",
            "minutes": 35,
            "time": "11:20",
            "answers": [
                {
                    "question": "Is the insulation of the cable sound?",
                    "finding": insulation,
                    "before": {"outcome": "fail", "value": 0.31, "unit": "MΩ", "said": "0.31 MΩ: it leaked"},
                    "after": {"outcome": "pass", "value": 3.1, "unit": "MΩ", "said": "3.1 MΩ: it does not leak"},
                }
            ],
            "ends": [],
        },
        {
            "id": "clamp",
            "about": "sauna",
            "subject": "Sauna heater circuit",
            "what": "A loose screw at the board was tightened, to the torque on its label.",
            "minutes": 15,
            "time": "11:55",
            "answers": [],
            "ends": ["Heat marks at the board"],
        },
    ]
    a["options"] = [
        {
            "about": "mat",
            "subject": "Heating mat under the slate",
            "for": "The floor warms on one half only",
            "list": [
                _option(
                    "mend",
                    "Find the break and mend it",
                    "repair",
                    150,
                    ("190.00", "260.00", "410.00"),
                    "a joint under one tile; a second break stays possible",
                    "Most likely to bring back the whole floor for the least money.",
                    probability=0.85,
                    recommended=True,
                ),
                _option(
                    "anew",
                    "Lay a new mat on top",
                    "replace",
                    960,
                    ("1350.00", "1480.00", "1700.00"),
                    "the door has to be shortened by 15 mm",
                    "Certain, but the slate comes up.",
                    probability=1.0,
                ),
                _option(
                    "off", "Take it out of use", "isolate", 20, "36.00", "a cold floor", "Costs least; nothing can go wrong with it.", probability=0.0
                ),
            ],
        },
        {
            "about": "slipway",
            "subject": "Lamp over the slipway",
            "for": "The cable leaks",
            "list": [
                _option(
                    "cable",
                    "New cable in a pipe",
                    "replace",
                    90,
                    ("140.00", "165.00", "220.00"),
                    "the old cable stays in the ground, cut at both ends",
                    "The old cable is wet along its length.",
                    recommended=True,
                ),
                _option(
                    "solar",
                    "A lamp with a solar cell",
                    "work_around",
                    30,
                    "58.00",
                    "less light in winter; the old cable stays dead",
                    "No cable at all.",
                ),
            ],
        },
        {
            "about": "stove",
            "subject": "Sauna heater",
            "for": "Its heating rods leak to the case",
            "list": [
                _option(
                    "rods",
                    "New heating rods",
                    "replace",
                    75,
                    None,
                    "the case and its switch are as old as they are",
                    "The maker has to name a price.",
                    recommended=True,
                ),
                _option("off2", "Leave it off", "isolate", 0, "0.00", "no sauna", "It is off and locked now."),
            ],
        },
        {
            "about": "fan",
            "subject": "Fan of the wash room",
            "for": "It moves too little air",
            "list": [
                _option(
                    "stretch",
                    "Stretch the flexible duct and lead it outside",
                    "repair",
                    60,
                    "72.00",
                    "the fan stays as loud as it is",
                    "Two thirds of the loss are in the squeezed duct.",
                    probability=0.7,
                    recommended=True,
                )
            ],
        },
    ]
    a["quote"] = quote()
    a["unproved"] = [
        {
            "subject": "Outlets in the boat hall",
            "question": "Does a fault to earth disconnect in time?",
            "why": "the doubt of the reading reaches across the limit",
            "finding": loop,
        },
        {
            "subject": "Outlets in the boat hall",
            "question": "Is there a drawing of what this circuit feeds?",
            "why": "there is none",
            "finding": chart,
        },
    ]
    a["readings_needed"] = [
        {
            "what": "Resistance between each pair of the mat's ends",
            "subject": "Heating mat under the slate",
            "settles": [mat],
            "minutes": 10,
            "live": False,
            "first": ["Isolate, lock off and prove dead."],
            "caution": "",
            "why": "It tells a break from a part that was bypassed.",
        },
        {
            "what": "Tripping time of the new safety switch",
            "subject": "Outlets in the boat hall",
            "settles": [trip],
            "minutes": 5,
            "live": True,
            "first": ["Insulation and earth are proved first."],
            "caution": "A live test: covers stay on.",
            "why": "Nothing else shows that it reacts.",
        },
        {
            "what": "Flow of the fan with the door shut",
            "subject": "Fan of the wash room",
            "settles": [flow],
            "minutes": 5,
            "live": False,
            "first": [],
            "caution": "",
            "why": "The hood is not described well enough.",
        },
    ]
    a["notifiable"] = [
        {
            "work": "New cable outdoors on a circuit that exists",
            "subject": "Lamp over the slipway",
            "answer": "not_notifiable",
            "rule": "Work on a circuit that exists, outside a special place",
            "source": "Building Regulations 2010 (England), regulation 12(6A)",
            "do": "A certificate for minor works is enough; keep it.",
        },
        {
            "work": "New heating rods in the sauna",
            "subject": "Sauna heater",
            "answer": "notifiable",
            "rule": "Work in a room with a sauna heater",
            "source": "Building Regulations 2010 (England), regulation 12(6A)",
            "do": "The building control body is told first, or someone registered does the work and tells it.",
        },
        {
            "work": "Leading the fan outside",
            "subject": "Fan of the wash room",
            "answer": "not_known",
            "rule": "",
            "source": "",
            "do": "Ask the building control body before the wall is cut.",
        },
    ]
    a["order_of_work"] = {
        "available_min": 240,
        "used_min": 60,
        "steps": [
            {
                "n": 1,
                "title": "Put a lid on the joint box",
                "subject": "Joint box under the bench",
                "minutes": 10,
                "access": "boat hall",
                "findings": [lid],
                "why": "Danger comes first.",
                "begins_min": 60,
            },
            {
                "n": 2,
                "title": "Replace the safety switch",
                "subject": "Outlets in the boat hall",
                "minutes": 40,
                "access": "board",
                "findings": [trip],
                "why": "Danger comes first.",
                "begins_min": 70,
            },
            {
                "n": 3,
                "title": "Find the break and mend it",
                "subject": "Heating mat under the slate",
                "minutes": 150,
                "access": "slate floor",
                "findings": [mat],
                "why": "The floor is open once.",
                "begins_min": 110,
            },
        ],
        "left_out": [
            {"title": "New cable in a pipe", "subject": "Lamp over the slipway", "minutes": 90, "why": "No time is left today; the lamp stays off."},
            {"title": "New heating rods", "subject": "Sauna heater", "minutes": 75, "why": "The rods have to be ordered."},
        ],
        "text": ["Three works fit into the 180 minutes that are left; two have to wait."],
    }
    a["diagnoses"] = [
        {
            "id": "half",
            "name": "The floor warms on one half",
            "about": "mat",
            "family": "heating_element",
            "title": "A break in the heating mat",
            "advice": "Read the ends of the mat in pairs before anything is lifted.",
            "test": "pairs",
            "act": "mend",
            "explain": ["The resistance is twice what the label says, and the screen is whole.", "That fits one of two halves that is broken."],
            "hypotheses": [
                {
                    "id": "break",
                    "title": "One of two runs is broken",
                    "probability": 0.83,
                    "prior": 0.2,
                    "danger": False,
                    "plain": "One half of the mat is cut.",
                    "next": "Find the place.",
                },
                {
                    "id": "bypassed",
                    "title": "Part of it was bypassed",
                    "probability": 0.12,
                    "prior": 0.05,
                    "danger": True,
                    "plain": "Somebody joined across a damaged part.",
                    "next": "Open the joint.",
                },
                {"id": "label", "title": "The label is of another mat", "probability": 0.05, "prior": 0.1, "danger": False, "plain": "", "next": ""},
            ],
            "tests": [
                {
                    "id": "pairs",
                    "title": "Resistance in pairs",
                    "minutes": 10,
                    "live": False,
                    "how": "Every pair of ends, written down.",
                    "caution": "Prove dead first.",
                    "net": 41.0,
                    "offer": True,
                }
            ],
            "acts": [
                {
                    "id": "mend",
                    "title": "Mend the break",
                    "money": 260,
                    "minutes": 150,
                    "expected_loss": 301,
                    "best_probability": 0.8,
                    "danger_left": 0.02,
                    "allowed": True,
                    "isolates": False,
                    "leaves": "a joint under one tile",
                }
            ],
            "findings": [mat],
            "readings": [
                {"test": "element_ohm", "label": "element_ohm #1", "state": "value", "value": 116.4},
                {"test": "insulation_mohm", "label": "insulation_mohm #1", "state": "above", "value": 999.0},
                {"test": "cables", "label": "cables #1", "outcome": "one"},
            ],
            "notes": [],
        }
    ]
    a["readings"] = [_reading(*row) for row in READINGS]
    a["instruments"] = [
        {
            "id": "tester",
            "description": "installation tester",
            "calibrated": "2026-05-06",
            "accuracy": ["loop impedance: 5 % of the reading and 3 counts of 0.01 Ω", "insulation: 3 % of the reading and 3 counts of 0.01 MΩ"],
        },
        {
            "id": "meter",
            "description": "hand-held multimeter",
            "calibrated": "2026-05-06",
            "accuracy": ["resistance: 0.8 % and 2 counts of 0.1 Ω"],
        },
        {"id": "hood", "description": "hood with a vane anemometer", "calibrated": "", "accuracy": []},
    ]
    a["terms"] = ["MΩ", "safety switch"]
    a["scope"] = [
        "The cable under the slipway was not dug up.",
        "Nothing above the hall's ceiling was opened.",
        "The oven pipe and its distances from timber were not looked at.",
    ]
    a["summary"] = {k: sum(f["outcome"] == k for f in a["findings"]) for k in ("pass", "fail", "undecided")}
    return json.dumps(a, ensure_ascii=False)


def sample() -> dict[str, Any]:
    """A fresh copy of the assessment."""
    document: dict[str, Any] = json.loads(_built())
    return document


if __name__ == "__main__":
    with open(sys.argv[1], "w", encoding="utf-8") as file:
        json.dump(sample(), file, ensure_ascii=False, indent=1)
