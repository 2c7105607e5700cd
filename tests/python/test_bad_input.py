# SPDX-License-Identifier: MIT
"""Documents of a visit that are wrong in every way: what is said of them, where, and that nothing else happens.

The fields come from the schema of a visit (makegood.visit_schema()): a new field is tested as soon as COMPLETE holds it,
and test_every_field_is_tried names it until then.
"""

from __future__ import annotations

import copy
import json
import pathlib
import random
import re
import subprocess
import sys
import time
from dataclasses import dataclass
from typing import Any, Callable, Iterator

import pytest

import makegood
from makegood.__main__ import main

ROOT = pathlib.Path(__file__).resolve().parents[2]
SCHEMA = makegood.visit_schema()
RULES = "bs7671:2018+a2,england-adf-2021"
FILES = [ROOT / "notebooks" / "demo_visit.json"]
FILES += sorted(p for p in (ROOT / "tests" / "visits").glob("*.json") if not p.name.endswith(".expected.json"))

# Every field of the schema once.
COMPLETE: dict[str, Any] = {
    "$schema": "visit.schema.json",
    "format": "makegood-visit-1",
    "title": "every field",
    "place": "nowhere",
    "date": "2026-11-02",
    "invented": True,
    "note": "made for the tests",
    "supply": {"earthing": "TN-S", "nominal_voltage_v": 230, "external_loop_impedance_ohm": 0.3},
    "instruments": [
        {
            "id": "meter",
            "description": "a meter",
            "calibrated": "2026-01-01",
            "accuracy": [
                {"reads": "resistance", "percent": 1, "counts": 2, "resolution": 0.1, "limit": 0.1, "standard_uncertainty": 0.1, "coverage_factor": 2, "range": 400,
                 "nulled": False, "leads_ohm": 0.2, "leads_standard_uncertainty_ohm": 0.01, "leads_left_in": False, "common_offset": False},
                {"reads": "length", "exact": True},
                {"reads": "loop_impedance", "percent": 30, "operating_edition": 2019},
            ],
        }
    ],
    "rooms": [
        {"id": "bath", "name": "Bathroom", "kind": "bathroom", "length_m": 2, "width_m": 2, "height_m": 2.4, "volume_m3": 9.6, "outside_wall": False}
    ],
    "circuits": [
        {
            "id": "floor",
            "name": "Floor",
            "load_kind": "other",
            "feeds": "fixed_load",
            "rooms": ["bath"],
            "rcd_residual_ma": 30,
            "design_current_a": 3,
            "power_w": 700,
            "power_factor": 0.9,
            "length_m": {"value": 20, "instrument": "meter"},
            "cable": {"drop_mv_per_a_m": 18, "resistance_mohm_per_m": 9, "reactance_mohm_per_m": 0.08, "cpc_area_mm2": 1.5, "k": 115},
            "device": {"rating_a": 16, "operating_current_a": 160, "operating_time_s": 0.1, "let_through_a2s": 15000},
            "rcd_kind": "general",
            "loop_impedance_ohm": 0.9,
            "insulation_mohm": 200,
            "rcd_trip_ms": 24,
        }
    ],
    "appliances": [
        {
            "id": "mat",
            "name": "Mat",
            "kind": "heating_mat",
            "circuit": "floor",
            "rated_power_w": 450,
            "rated_voltage_v": 230,
            "lower_tolerance_percent": 5,
            "upper_tolerance_percent": 10,
            "mats_count": 1,
            "cold_tail_ohm": 0.1,
            "resistance_ohm": 118,
            "insulation_mohm": 300,
        }
    ],
    "sensors": [
        {
            "id": "probe",
            "name": "Probe",
            "appliance": "mat",
            "curve": {"kind": "ntc", "reference_ohm": 10000, "reference_c": 25, "beta_k": 3950, "a": 1e-3, "b": 2e-4, "c": 1e-7, "r0_ohm": 100},
            "resistance_ohm": 11000,
            "temperature_c": 22,
        }
    ],
    "fans": [
        {
            "id": "fan",
            "name": "Fan",
            "room": "bath",
            "circuit": "floor",
            "flow_l_per_s": 15,
            "available_pressure_pa": 40,
            "air_temperature_c": 20,
            "relative_humidity_percent": 50,
            "air_pressure_pa": 101325,
            "discharge_to": "outside",
            "overrun_min": 15,
            "duct": [
                {"name": "pipe", "diameter_mm": 125, "length_m": 3, "roughness_mm": 0.09, "compression_percent": 0, "loss_coefficient": 1},
                {"name": "flat part", "width_mm": 220, "height_mm": 55, "length_m": 1},
            ],
        }
    ],
    "inquiries": [
        {"id": "cold floor", "name": "Floor that stays cold", "family": "heating_element", "about": "mat", "given": {"power_w": 600}, "readings": {"element_ohm": 88.3}, "standing": ["isolated"]},
    ],
    "calculations": [{"id": "run on", "name": "Fan", "about": "fan", "call": "air.check_overrun", "inputs": {"overrun_min": 6, "overrun_case": "no_outside_wall"}}],
    "observations": [{"id": "end", "name": "Cable end", "about": "floor", "kind": "live_parts_within_reach", "note": "behind the bath"}],
    "put_right": [
        {"id": "dried", "about": "mat", "what": "A joint was renewed.", "minutes": 30, "time": "11:00", "before": {"insulation_mohm": 0.2}, "ends": ["end"], "work": "repair", "note": "with gel"}
    ],
    "works": [
        {"id": "new", "about": "floor", "title": "New cable", "act": "replace", "minutes": 90, "minutes_low": 60, "minutes_high": 150, "access": "floor", "leaves": "nothing",
         "materials": [{"name": "cable", "cost": "20.00", "quantity": 2}], "cures": ["open"], "work": "new_circuit", "chosen": True}
    ],
    "prices": {"currency": "GBP", "rate_per_h": "40", "call_out": "20", "markup_percent": "10", "travel_miles": "12", "rate_per_mile": "0.45", "travel_h": "0.5", "vat": {"standard": "20"},
               "registered": True, "rounding": "rate_half_up"},
    "time": {"available_min": 240, "used_min": 30, "access_min": 10, "isolating_min": 5},
    "dwelling": True,
}  # fmt: skip

Path = tuple[Any, ...]


def said(path: Path) -> str:
    """("circuits", 2, "length_m") as problems say it: circuits[2].length_m."""
    text = ""
    for step in path:
        text += f"[{step}]" if isinstance(step, int) else f".{step}" if text else step
    return text


def at(document: Any, path: Path) -> Any:
    for step in path:
        document = document[step]
    return document


def put(document: Any, path: Path, value: Any) -> None:
    at(document, path[:-1])[path[-1]] = value


def plain(node: dict[str, Any]) -> dict[str, Any]:
    """A part of the schema without the null that a field which may be left out takes as well."""
    return next(n for n in node["anyOf"] if n.get("type") != "null") if "anyOf" in node else node


def kind_of(node: dict[str, Any]) -> str:
    return "reading" if "oneOf" in node else plain(node)["type"]


def reading_number(node: dict[str, Any]) -> dict[str, Any]:
    return next(n for n in node["oneOf"] if n["type"] == "number")


def reading_object(node: dict[str, Any]) -> dict[str, Any]:
    return next(n for n in node["oneOf"] if n["type"] == "object")


@dataclass(frozen=True)
class Field:
    path: Path
    node: dict[str, Any]
    required: bool

    @property
    def kind(self) -> str:
        return kind_of(self.node)


def fields(document: Any = COMPLETE, node: dict[str, Any] = SCHEMA, path: Path = ()) -> Iterator[Field]:
    """The fields of a document, each with its part of the schema."""
    for name, whole in node.get("properties", {}).items():
        if name not in document:
            continue
        sub = plain(whole)
        yield Field((*path, name), sub, name in node["required"])
        if kind_of(sub) == "object":
            yield from fields(document[name], sub, (*path, name))
        elif kind_of(sub) == "array":
            for i, item in enumerate(document[name]):
                yield from fields(item, sub["items"], (*path, name, i))


def schema_fields(node: dict[str, Any] = SCHEMA, path: str = "") -> Iterator[str]:
    for name, whole in node.get("properties", {}).items():
        sub = plain(whole)
        yield f"{path}{name}"
        if kind_of(sub) == "object":
            yield from schema_fields(sub, f"{path}{name}.")
        elif kind_of(sub) == "array":
            yield from schema_fields(sub["items"], f"{path}{name}[].")


FIELDS = list(fields())


def problems_of(document: Any) -> list[tuple[str, str]]:
    """The problems of a document, [] for a good one; any other exception than DocumentError passes through."""
    try:
        makegood.read_visit(document)
    except makegood.DocumentError as e:
        assert e.problems and str(e) == "\n".join(f"{p}: {t}" if p else t for p, t in e.problems)
        return e.problems
    return []


@dataclass(frozen=True)
class Bad:
    """One thing done to a document, and what must be said of it."""

    what: str
    do: Callable[[Any], None]
    path: str
    words: str  # a regular expression
    seen_by_schema: bool = True  # False: the schema has no words for it

    def document(self) -> Any:
        document = copy.deepcopy(COMPLETE)
        self.do(document)
        return document


def setting(path: Path, value: Any) -> Callable[[Any], None]:
    return lambda document: put(document, path, copy.deepcopy(value))


def removing(path: Path) -> Callable[[Any], None]:
    return lambda document: at(document, path[:-1]).pop(path[-1])


def renaming(path: Path, name: str) -> Callable[[Any], None]:
    def do(document: Any) -> None:
        fields_ = at(document, path[:-1])
        fields_[name] = fields_.pop(path[-1])

    return do


def misspelt(word: str) -> str:
    """The word with a letter twice: 'length_m', 'lenngth_m'."""
    k = len(word) // 2
    return word[: k + 1] + word[k] + word[k + 1 :]


def bad_numbers(node: dict[str, Any]) -> Iterator[tuple[Any, str, bool]]:
    """Numbers that are outside the limits; what is said; whether the schema sees it."""
    if "minimum" in node:
        yield node["minimum"] - 1, r"^-?[\d.]+ .*is below|^-?[\d.]+ is below", True
    if "exclusiveMinimum" in node:
        yield node["exclusiveMinimum"], "must be above", True
        yield node["exclusiveMinimum"] - 1, "is below|must be above", True
    if "maximum" in node:
        yield node["maximum"] * 1.5 + 1, "is above", True
    if "exclusiveMaximum" in node:
        yield node["exclusiveMaximum"], "must be below", True
    yield float("nan"), "not a number", False
    yield float("inf"), "is above", False
    yield float("-inf"), "is below", False
    yield 10**400, "not a number|is above", False
    if node.get("minimum", node.get("exclusiveMinimum", -1e30)) > -999:
        yield -999, "missing value: leave the reading out", True


def wrong_types(kind: str) -> Iterator[tuple[Any, str]]:
    wanted = {
        "number": "a number", "string": "a text", "boolean": "true or false", "array": "a list", "object": "an object",
        "reading": "a number.*, an object or null",
    }[kind]  # fmt: skip
    values = {"string": "2,5", "number": 3, "boolean": True, "array": [1], "object": {"value": 3}}
    names = {"string": "a text", "number": "a number", "boolean": "true or false", "array": "a list", "object": "an object"}
    for type_, value in values.items():
        if type_ != kind and not (kind == "reading" and type_ in ("number", "object")):
            yield value, f"^must be {wanted}.*, not {names[type_]}$"
    if kind in ("number", "reading"):
        yield "2.5", f"^must be {wanted}.*, not a text$"
        yield "", f"^must be {wanted}.*, not a text$"
        yield False, f"^must be {wanted}.*, not true or false$"
    if kind == "boolean":
        yield "true", f"^must be {wanted}, not a text$"
        yield 0, f"^must be {wanted}, not a number$"


def bad_ways(field: Field) -> Iterator[Bad]:
    path, where, name = field.path, said(field.path), field.path[-1]
    if path == ("$schema",):
        return  # read past: an editor's own
    if field.required:
        yield Bad("missing", removing(path), where, "^is missing: ")
    else:
        wrong = misspelt(name)
        yield Bad("misspelt", renaming(path, wrong), said((*path[:-1], wrong)), f'^there is no such field; did you mean "{name}"\\?$')
    for value, words in wrong_types(field.kind):
        yield Bad(f"{value!r}", setting(path, value), where, words)
    if field.kind == "number":
        for value, words, seen in bad_numbers(field.node):
            yield Bad(f"{value!r:.30}", setting(path, value), where, words, seen)
    elif field.kind == "string" and "enum" in field.node:
        for word in field.node["enum"]:
            yield Bad(misspelt(word), setting(path, misspelt(word)), where, f'is not one of "{field.node["enum"][0]}".*did you mean "{re.escape(word)}"\\?$')
        yield Bad("no such word", setting(path, "frobnicated"), where, '^"frobnicated" is not one of ')
        yield Bad("capitals", setting(path, field.node["enum"][0].swapcase()), where, "is not one of ")
    elif field.kind == "string" and field.required:
        yield Bad("empty", setting(path, ""), where, "^is empty: ", False)
    elif field.kind == "array":
        texts = kind_of(field.node["items"]) == "string"
        for value in (None, 3, {} if texts else "x", [], True):
            yield Bad(f"[..., {value!r}]", lambda d, v=value: at(d, path).append(v), said((*path, len(at(COMPLETE, path)))), f"^must be {'a text' if texts else 'an object'}, not ")
    elif name in ("inputs", "before"):  # arguments of a calculation, fields of the part
        yield Bad("one field more", lambda d: at(d, path).update(frobnicated=1), said((*path, "frobnicated")), "has no such (argument|field)", False)
    elif name == "vat":  # rates by any name
        yield Bad("no number", lambda d: at(d, path).update(frobnicated="a fifth"), "prices", "vat", False)
    elif field.kind == "object" and "properties" not in field.node:  # what the family reads, which says what it does not know
        yield Bad("one field more", lambda d: at(d, path).update(frobnicated=1), said(path[:-1]), '"frobnicated"', False)
    elif field.kind == "object":
        yield Bad("one field more", lambda d: at(d, path).update(frobnicated=1), said((*path, "frobnicated")), "^there is no such field$")
    elif field.kind == "reading":
        yield from bad_readings(field)


def bad_readings(field: Field) -> Iterator[Bad]:
    path, where, node = field.path, said(field.path), reading_object(field.node)
    for value, words, seen in bad_numbers(reading_number(field.node)):
        yield Bad(f"{value!r:.30}", setting(path, value), where, words, seen)
        # the schema gives the limits of a reading only where it is a bare number
        for way in ("value", "above", "below"):
            yield Bad(f"{way} {value!r:.30}", setting(path, {way: value}), f"{where}.{way}", words, False)
    for nothing in ({}, {"instrument": "meter"}, {"note": "forgotten"}, {"value": None}):
        yield Bad(f"{nothing}", setting(path, nothing), where, "^says nothing: give exactly one of", False)
    for two in ({"value": 1, "above": 1}, {"above": 1, "below": 1}, {"value": 1, "state": "pending"}, {"value": 1, "above": 1, "below": 1, "state": "no_trip"}):
        yield Bad(f"{two}", setting(path, two), where, "^says more than one thing: give exactly one of", False)
    for name, sub in ((name, plain(whole)) for name, whole in node.get("properties", {}).items()):
        good: dict[str, Any] = {} if name in ("value", "above", "below", "state") else {"value": 30}
        for value, words in wrong_types(kind_of(sub)):
            yield Bad(f"{name} {value!r}", setting(path, {**good, name: value}), f"{where}.{name}", words)
        if "enum" in sub:
            for word in sub["enum"]:
                yield Bad(f"{name} {misspelt(word)}", setting(path, {**good, name: misspelt(word)}), f"{where}.{name}", f'did you mean "{word}"\\?$')
        elif sub["type"] == "number" and name not in good and name not in ("value", "above", "below"):
            for value, words, seen in bad_numbers(sub):
                yield Bad(f"{name} {value!r:.30}", setting(path, {**good, name: value}), f"{where}.{name}", words, seen)
        wrong = misspelt(name)
        yield Bad(wrong, setting(path, {"value": 30, wrong: 1}), f"{where}.{wrong}", f'^there is no such field; did you mean "{name}"\\?$')
    yield Bad("unknown instrument", setting(path, {"value": 30, "instrument": "metre"}), f"{where}.instrument", 'refers to "metre", which is not in the visit; did you mean "meter"', False)


def beside(problem: tuple[str, str], path: str) -> bool:
    """What follows from a problem elsewhere: an id that was not read is missed by those that refer to it, and an accuracy
    of which a part was not read may say too little."""
    where, text = problem
    return text.startswith("refers to ") or (text.startswith("states ") and path.startswith(where))


def test_every_field_is_tried():
    mine = {re.sub(r"\[\d+\]", "[]", said(f.path)) for f in FIELDS}
    wanted = set(schema_fields())
    assert mine == wanted, f"COMPLETE lacks {sorted(wanted - mine)}"
    assert problems_of(COMPLETE) == []
    assert all(f.kind in ("number", "string", "boolean", "array", "object", "reading") for f in FIELDS)


@pytest.mark.parametrize("file", FILES, ids=lambda p: p.stem)
def test_good_documents_are_good(file):
    assert problems_of(json.loads(file.read_text(encoding="utf-8"))) == []


@pytest.mark.parametrize("field", FIELDS, ids=lambda f: said(f.path))
def test_one_thing_wrong(field):
    """One problem, in the exact place, with the right words."""
    for bad in bad_ways(field):
        found = [p for p in problems_of(bad.document()) if re.search(bad.words, p[1]) or not beside(p, bad.path)]
        assert [p for p, _ in found] == [bad.path], f"{bad.what}: wanted one problem at {bad.path}, got {found}"
        assert re.search(bad.words, found[0][1]), f"{bad.what}: wanted {bad.words!r}, got {found}"


def test_an_emptied_word_is_one_problem():
    for path in (("format",), ("supply", "earthing"), ("rooms", 0, "kind")):
        document = copy.deepcopy(COMPLETE)
        put(document, path, "")
        assert [p for p, _ in problems_of(document)] == [said(path)]


def test_null_is_refused_in_its_place_or_means_nothing():
    for field in FIELDS:
        if field.path == ("$schema",):
            continue
        document = copy.deepcopy(COMPLETE)
        put(document, field.path, None)
        found = [p for p in problems_of(document) if not beside(p, said(field.path))]
        if field.required or field.kind in ("array", "string", "boolean"):
            assert found, f"{said(field.path)}: null is taken for {field.kind}"
        for path, text in found:
            assert path == said(field.path) and re.search("^must be .*, not null$", text), (path, text)


def test_all_problems_at_once():
    rng = random.Random(20261102)
    ways = [(f, list(bad_ways(f))) for f in FIELDS]
    ways = [(f, [b for b in w if b.what != "missing"]) for f, w in ways if w and f.kind not in ("array", "object")]
    for count in [2, 3, 5, 8, 13] * 20:
        chosen = rng.sample(ways, count)
        bads = [rng.choice(w) for _, w in chosen if w]
        document = copy.deepcopy(COMPLETE)
        for bad in bads:
            bad.do(document)
        found = problems_of(document)
        for bad in bads:
            unknown = bad.what == "unknown instrument" and any(path == "instruments[0].id" for path, _ in found)  # that one is said alone
            assert unknown or any(path == bad.path and re.search(bad.words, text) for path, text in found), (bad.what, bad.path, found)
        extra = [p for p in found if p[0] not in {b.path for b in bads} and not any(beside(p, b.path) for b in bads)]
        assert not extra, extra


SLIPS = [
    ("circuits", 0, "length_m", 22000, "22000 m is above 1000 m; if it was in mm, write 22 m"),
    ("circuits", 0, "length_m", -4, "-4 m is below 0 m"),
    ("circuits", 0, "loop_impedance_ohm", 93000, "if it was in mΩ, write 93 Ω"),
    ("circuits", 0, "insulation_mohm", 5e8, "if it was in Ω, write 500 MΩ"),
    ("circuits", 0, "power_factor", 90, "if it was in %, write 0.9"),
    ("circuits", 0, "design_current_a", 16000, "if it was in mA, write 16 A"),
    ("circuits", 0, "rcd_trip_ms", -999, "code for a missing value"),
    ("supply", "nominal_voltage_v", 0.23, "0.23 V is below 50 V; if it was in kV, write 230 V"),
    ("rooms", 0, "length_m", 5400, "if it was in mm, write 5.4 m"),
    ("rooms", 0, "volume_m3", 36000, "if it was in l, write 36 m³"),
    ("fans", 0, "air_temperature_c", 293.15, "if it was in K, write 20 °C"),
    ("sensors", 0, "temperature_c", 295.15, "if it was in K, write 22 °C"),
]


@pytest.mark.parametrize("slip", SLIPS, ids=lambda s: f"{said(s[:-2])}={s[-2]:g}")
def test_slips_of_unit(slip):
    *path, value, words = slip
    document = copy.deepcopy(COMPLETE)
    put(document, tuple(path), value)
    ((where, text),) = problems_of(document)
    assert where == said(tuple(path)) and words in text


def test_what_belongs_together():
    def after(do: Callable[[Any], Any]) -> list[tuple[str, str]]:
        document = copy.deepcopy(COMPLETE)
        do(document)
        return problems_of(document)

    for part in ("instruments", "rooms", "circuits", "appliances", "sensors", "fans"):
        found = after(lambda d: d[part].append(copy.deepcopy(d[part][0])))
        assert found == [(f"{part}[1].id", f'"{COMPLETE[part][0]["id"]}" stands twice')]
        found = after(lambda d: d[part].extend(copy.deepcopy(d[part][0]) for _ in range(3)))
        assert [p for p, _ in found] == [f"{part}[{i}].id" for i in (1, 2, 3)]
    for path, near in ((("appliances", 0, "circuit"), "floor"), (("sensors", 0, "appliance"), "mat"), (("fans", 0, "room"), "bath")):
        wrong = misspelt(near)
        assert after(setting(path, wrong)) == [(said(path), f'refers to "{wrong}", which is not in the visit; did you mean "{near}"?')]
        assert after(setting(path, "nothing at all like it")) == [(said(path), 'refers to "nothing at all like it", which is not in the visit')]
    # all that referred to it are named
    assert {p for p, _ in after(lambda d: d["rooms"].clear())} == {"fans[0].room", "circuits[0].rooms[0]"}
    assert {p for p, _ in after(lambda d: d["circuits"].clear())} == {"appliances[0].circuit", "fans[0].circuit", "observations[0].about", "works[0].about"}
    accuracy = ("instruments", 0, "accuracy", 0)
    assert after(setting(accuracy, {"reads": "length"}))[0][0] == said(accuracy)
    assert "resolution" in after(setting(accuracy, {"reads": "length", "counts": 3}))[0][1]
    assert "exact" in after(setting(accuracy, {"reads": "length", "percent": 3, "exact": True}))[0][1]


@pytest.mark.parametrize("document", [None, 3, "x", True, [], [COMPLETE], {}, {"visit": COMPLETE}, {"": 1}], ids=lambda d: f"{d!r:.20}")
def test_what_is_no_visit(document):
    found = problems_of(document)
    assert found
    if isinstance(document, dict):
        assert {p for p, t in found if t.startswith("is missing")} == set(SCHEMA["required"])
    else:
        assert [p for p, _ in found] == [""] and found[0][1].startswith("must be an object, not ")


def test_a_name_that_is_no_text_and_objects_that_are_no_json():
    for strange in ({1: 2}, {None: 1}, {"note": {1}}, {"note": b"x"}, {"note": object()}, {"note": 1j}):
        with pytest.raises((makegood.Error, TypeError)):
            makegood.read_visit({**COMPLETE, **strange})


# ----------------------------------------------------------------------------------------------------------- the schema


@pytest.fixture(scope="module")
def validator():
    jsonschema = pytest.importorskip("jsonschema")
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    return jsonschema.Draft202012Validator(SCHEMA)


def test_good_documents_fit_the_schema(validator):
    for document in [COMPLETE, *(json.loads(f.read_text(encoding="utf-8")) for f in FILES)]:
        assert [e.message for e in validator.iter_errors(document)] == []


def test_bad_documents_do_not_fit_the_schema(validator):
    """What the reader refuses the schema refuses, where it has words for it; each part is held against its own piece."""
    seen = 0
    for field in FIELDS:
        # only what stands about the field, against its own part of the schema: the rest is the same for all
        node, top = SCHEMA, ()
        if len(field.path) > 1:
            top = field.path[:1]
            node = SCHEMA["properties"][top[0]]
        part = validator.evolve(schema=node)
        for bad in bad_ways(field):
            if not bad.seen_by_schema:
                continue
            document = bad.document()
            assert not part.is_valid(at(document, top)), f"the schema takes {bad.what} at {bad.path}"
            seen += 1
    assert seen > 1000


def test_schema_and_reader_agree_about_null(validator):
    apart = []
    for field in FIELDS:
        if field.path != ("$schema",):
            document = copy.deepcopy(COMPLETE)
            put(document, field.path, None)
            if validator.is_valid(document) != (not problems_of(document)):
                apart.append(said(field.path))
    assert not apart


# --------------------------------------------------------------------------------------------------- files, command line


def run(*arguments: Any) -> subprocess.CompletedProcess[str]:
    return subprocess.run([sys.executable, "-m", "makegood", *map(str, arguments)], capture_output=True, text=True, timeout=60)


def refused(tmp_path: pathlib.Path, capsys: Any, content: bytes | None, rules: str = RULES) -> str:
    """Runs assess on a file of this content; nothing is printed on stdout, nothing is written; returns stderr."""
    visit, old, new = tmp_path / "visit.json", tmp_path / "old.html", tmp_path / "new.json"
    if content is not None:
        visit.write_bytes(content)
    old.write_text("as it was", encoding="utf-8")
    capsys.readouterr()
    code = main(["assess", str(visit), "--rules", rules, "--json", str(new), "--html", str(old)])
    out, err = capsys.readouterr()
    assert code == 2 and out == "", (code, out)
    assert err and "Traceback" not in err
    assert old.read_text(encoding="utf-8") == "as it was"
    assert {p.name for p in tmp_path.iterdir()} == {"old.html"} | ({"visit.json"} if content is not None else set())
    return err


GOOD = json.dumps(COMPLETE).encode()

NOT_READABLE = [
    ("nothing", b"", r"not JSON: .*\(line 1, column 1\)"),
    ("only spaces", b"  \n ", r"not JSON: .*line 2, column 2"),
    ("no JSON", b"{'format': 1}", r"not JSON: .*\(line 1, column 2\)"),
    ("a comma too many", b'{\n  "title": "x",\n}', r"not JSON: .*\(line [23], column \d+\)"),
    ("cut off", GOOD[: len(GOOD) // 2], r"not JSON: .*\(line 1, column \d+\)"),
    ("something after", GOOD + b"]", r"not JSON: .*\(line 1, column \d+\)"),
    ("half a letter", '{"title": "Küche'.encode()[:-4], r"not UTF-8 text .* at byte \d+"),
    ("Latin-1", '{"title": "Küche"}'.encode("latin-1"), r"not UTF-8 text .* at byte 12"),
    ("UTF-16", '{"title": "x"}'.encode("utf-16"), r"not UTF-8 text"),
    ("bytes", bytes(range(256)), r"not UTF-8 text|not JSON"),
    ("NaN", GOOD.replace(b'"power_w": 700', b'"power_w": NaN'), r"NaN is no number"),
    ("Infinity", GOOD.replace(b'"power_w": 700', b'"power_w": -Infinity'), r"-Infinity is no number"),
    ("a number beyond all", GOOD.replace(b'"power_w": 700', b'"power_w": 1e999'), r"circuits\[0\]\.power_w: inf W is above"),
    ("a name twice", GOOD.replace(b'"power_w": 700', b'"power_w": 700, "power_w": 7'), r"power_w: stands twice"),
    ("brackets without end", b"[" * 200000, r"nested too deeply|not JSON"),
    ("null", b"null", r"must be an object, not null"),
    ("a list", b"[" + GOOD + b"]", r"must be an object, not a list"),
    ("a wrong field", GOOD.replace(b'"power_w": 700', b'"pover_w": 700'), r'circuits\[0\]\.pover_w: there is no such field; did you mean "power_w"\?'),
    ("a control sign", b'{"title": "a\nb"}', r"not JSON: .*\(line 1, column \d+\)"),
]  # fmt: skip


@pytest.mark.parametrize("what, content, words", NOT_READABLE, ids=[n[0] for n in NOT_READABLE])
def test_files_that_are_no_visit(tmp_path, capsys, what, content, words):
    err = refused(tmp_path, capsys, content)
    assert re.search(words, err), err
    with pytest.raises(makegood.DocumentError) as caught:
        makegood.load_visit(tmp_path / "visit.json")
    assert caught.value.problems


def test_every_problem_is_printed(tmp_path, capsys):
    document = copy.deepcopy(COMPLETE)
    document["circuits"][0]["length_m"] = -4
    document["circuits"][0]["load_kind"] = "lightning"
    del document["supply"]["earthing"]
    err = refused(tmp_path, capsys, json.dumps(document).encode())
    lines = err.splitlines()
    assert lines[0].endswith("visit.json: 3 problems")
    assert "  circuits[0].length_m: -4 m is below 0 m" in lines
    assert sum(": " in line for line in lines[1:]) == 3 and len(lines) == 4


def test_a_byte_order_mark_is_no_problem(tmp_path):
    (tmp_path / "visit.json").write_bytes(b"\xef\xbb\xbf" + GOOD)
    assert makegood.load_visit(tmp_path / "visit.json").title == "every field"


def test_missing_file_and_unknown_rulebook(tmp_path, capsys):
    err = refused(tmp_path, capsys, None)
    assert "visit.json" in err and "No such file" in err
    err = refused(tmp_path, capsys, GOOD, rules="bs7671:1066")
    assert 'no rulebook "bs7671:1066"' in err or "bs7671:1066" in err
    for rules in ("", ",", RULES + ",", "bs7671:2018+a2,nobodys"):
        refused(tmp_path, capsys, GOOD, rules=rules)
    (tmp_path / "visit.json").unlink()
    (tmp_path / "old.html").unlink()
    assert main(["assess", str(tmp_path), "--rules", RULES]) == 2  # a folder


def test_nothing_is_half_written(tmp_path, capsys):
    (tmp_path / "visit.json").write_bytes(GOOD)
    (tmp_path / "taken").mkdir()
    assert main(["assess", str(tmp_path / "visit.json"), "--rules", RULES, "--json", str(tmp_path / "taken")]) == 2
    assert {p.name for p in tmp_path.iterdir()} == {"visit.json", "taken"} and not list((tmp_path / "taken").iterdir())
    assert "Traceback" not in capsys.readouterr().err
    new = tmp_path / "made" / "out.json"
    assert main(["assess", str(tmp_path / "visit.json"), "--rules", RULES, "--json", str(new)]) == 0
    assert json.loads(new.read_text(encoding="utf-8"))["findings"] and [p.name for p in new.parent.iterdir()] == ["out.json"]


def test_command_line_in_its_own_process(tmp_path):
    """The same through the interpreter: what is printed where, and the code that is left."""
    visit, page, data = tmp_path / "visit.json", tmp_path / "page.html", tmp_path / "data.json"
    bad = copy.deepcopy(COMPLETE)
    bad["circuits"][0]["length_m"] = 22000
    visit.write_text(json.dumps(bad), encoding="utf-8")
    data.write_text("as it was", encoding="utf-8")
    done = run("assess", visit, "--rules", RULES, "--json", data, "--html", page)
    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr.endswith("  circuits[0].length_m: 22000 m is above 1000 m; if it was in mm, write 22 m\n")
    assert not page.exists() and data.read_text(encoding="utf-8") == "as it was"
    visit.write_bytes(GOOD)
    done = run("assess", visit, "--rules", "nobodys", "--json", data, "--html", page)
    assert (done.returncode, done.stdout) == (2, "") and "nobodys" in done.stderr and "Traceback" not in done.stderr
    assert not page.exists() and data.read_text(encoding="utf-8") == "as it was"
    done = run("assess", tmp_path / "absent.json", "--rules", RULES)
    assert (done.returncode, done.stdout) == (2, "") and "absent.json" in done.stderr
    for wrong in ([], ["asess"], ["assess"], ["assess", visit], ["assess", visit, "--rules"], ["describe", "nothing_like_it"]):
        done = run(*wrong)
        assert (done.returncode, done.stdout) == (2, "") and done.stderr and "Traceback" not in done.stderr
    done = run("assess", visit, "--rules", RULES, "--json", data, "--html", page)
    assert done.returncode == 0 and done.stderr == "" and page.exists() and json.loads(data.read_text(encoding="utf-8"))


# ------------------------------------------------------------------------------------------------------------------ fuzz


def any_value(rng: random.Random, depth: int = 0) -> Any:
    simple: list[Callable[[], Any]] = [
        lambda: None,
        lambda: rng.choice([True, False]),
        lambda: rng.choice([0, -0.0, 1, -1, 5e-324, 1e308, -1e308, 2**63, -(2**64), 10**400, float("nan"), float("inf"), 1e12, 273.15]),
        lambda: rng.uniform(-100, 100),
        lambda: 10 ** rng.uniform(-12, 12),
        lambda: rng.choice(["", " ", "2,5", "NaN", "null", "kΩ", "\x00", "\U0001f50c", "x" * 5000, "floor", "meter", "ntc", "TT", "../../x", "{v}", "%s"]),
    ]
    if depth > 3 or rng.random() < 0.7:
        return rng.choice(simple)()
    if rng.random() < 0.5:
        return [any_value(rng, depth + 1) for _ in range(rng.randrange(4))]
    names = ["", "id", "value", "above", "state", "name", "kind", "instrument", "length_m", "Ω", "a.b", "[0]"]
    return {rng.choice(names): any_value(rng, depth + 1) for _ in range(rng.randrange(4))}


def spots(document: Any, path: Path = ()) -> Iterator[Path]:
    if path:
        yield path
    items = document.items() if isinstance(document, dict) else enumerate(document) if isinstance(document, list) else ()
    for name, item in items:
        yield from spots(item, (*path, name))


def test_random_documents_never_crash():
    """Random values in random places: problems, or a visit that can be assessed; bounded by time, seeded."""
    rng = random.Random(1)
    sources = [COMPLETE, *(json.loads(f.read_text(encoding="utf-8")) for f in FILES)]
    everywhere = [list(spots(d)) for d in sources]
    end = time.monotonic() + 4.0
    tried = refused_ = assessed = 0
    while tried < 6000 and time.monotonic() < end:
        which = rng.randrange(len(sources))
        document = copy.deepcopy(sources[which])
        for _ in range(rng.choice([1, 1, 1, 2, 5])):
            path = rng.choice(everywhere[which])
            try:
                if rng.random() < 0.15:
                    at(document, path[:-1]).pop(path[-1])
                elif rng.random() < 0.1 and isinstance(at(document, path), dict):
                    at(document, path)[rng.choice(["x", "", "value", "name", "length_m"])] = any_value(rng)
                else:
                    put(document, path, any_value(rng))
            except (KeyError, IndexError, TypeError, AttributeError):
                continue  # what stood there has gone
        tried += 1
        try:
            visit = makegood.read_visit(document)
        except makegood.DocumentError as e:
            refused_ += 1
            assert all(isinstance(p, str) and isinstance(t, str) and t for p, t in e.problems)
            continue
        found = makegood.assess(visit, rules=RULES).to_dict()
        json.dumps(found, allow_nan=False)
        assessed += 1
    assert refused_ > 100 and assessed > 20, (tried, refused_, assessed)


ASSESSED = {
    "a sensor with a short circuit": (("sensors", 0, "resistance_ohm"), 0),
    "a fault loop that reads 0.00": (("circuits", 0, "loop_impedance_ohm"), {"value": 0, "instrument": "meter"}),
    "a duct in metres": (("fans", 0, "duct", 0, "diameter_mm"), 0.125),
    "a load far beyond its circuit": (("circuits", 0, "power_factor"), 1e-6),
    "a beta of another kind": (("sensors", 0, "curve", "beta_k"), 50),
    "coefficients out of place": (("sensors", 0, "curve"), {"kind": "steinhart_hart", "a": -1, "b": 1e-4, "c": 1e-7}),
    "air that boils": (("fans", 0), {**COMPLETE["fans"][0], "air_temperature_c": 90, "relative_humidity_percent": 100, "air_pressure_pa": 50000}),
}


def one_changed(path: Path, value: Any) -> Any:
    document = copy.deepcopy(COMPLETE)
    del document["circuits"][0]["design_current_a"]  # else the power and its factor are not looked at
    del document["circuits"][0]["device"]["let_through_a2s"]  # else the fault current is not
    put(document, path, value)
    return document


@pytest.mark.parametrize("path, value", ASSESSED.values(), ids=ASSESSED)
def test_a_visit_that_is_read_is_assessed(path, value):
    """A document without problems has an answer: one strange reading must not take the others with it."""
    try:
        visit = makegood.read_visit(one_changed(path, value))
    except makegood.DocumentError as e:
        assert e.problems[0][0].startswith(said(path))  # refused in its place is as good
        return
    assert len(makegood.assess(visit, rules=RULES).findings) == len(makegood.assess(makegood.read_visit(one_changed(("note",), "")), rules=RULES).findings)


def nested(depth: int) -> Any:
    deep: Any = 1
    for _ in range(depth):
        deep = [deep]
    return deep


def test_deep_nesting_is_refused():
    itself: dict[str, Any] = dict(COMPLETE)
    itself["note"] = itself
    for document in ({**COMPLETE, "note": nested(100)}, {**COMPLETE, "note": nested(50000)}, itself):
        with pytest.raises(makegood.Error, match="nested too deeply"):
            makegood.read_visit(document)


def test_deep_nesting_is_a_problem_of_the_document():
    assert problems_of({**COMPLETE, "note": nested(100)})[0][0].startswith("note")


@pytest.mark.parametrize("document", [{"note": "\ud83d"}, {"\ud83d": 1}], ids=["text", "name"])
def test_half_a_sign_is_a_problem_of_the_document(document):
    assert problems_of({**COMPLETE, **document})


@pytest.mark.skipif(not hasattr(sys, "get_int_max_str_digits"), reason="this Python reads a number of any length")
def test_a_number_of_5000_digits(tmp_path, capsys):
    content = GOOD.replace(b'"power_w": 700', b'"power_w": ' + b"7" * 5000)
    assert re.search("power_w|not JSON", refused(tmp_path, capsys, content))


def test_the_place_of_a_name_that_stands_twice(tmp_path, capsys):
    content = GOOD.replace(b'"power_w": 700', b'"power_w": 700, "power_w": 7').replace(b'"place": "nowhere"', b'"place": "nowhere", "place": "x"')
    err = refused(tmp_path, capsys, content)
    assert "  circuits[0].power_w: stands twice" in err and "  place: stands twice" in err
