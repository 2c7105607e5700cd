# SPDX-License-Identifier: MIT
"""The typed stubs stand as make_stubs.py writes them, and a type checker makes of them what a user needs."""

from __future__ import annotations

import ast
import importlib.util
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys

import pytest

import ledger
import makegood

ROOT = pathlib.Path(__file__).resolve().parents[2]
FOLDER = ROOT / "bindings" / "makegood"
AGAIN = "run: python bindings/make_stubs.py"

GOOD = '''\
from pathlib import Path
from typing import Any

import numpy as np
import numpy.typing as npt

import makegood
from makegood import Measured, Reading, Verdict, air, decision, electrical, heating, sensing, setting_out

drop: float = electrical.voltage_drop(44, 16.0, length_m=22)
doubtful: Measured = electrical.voltage_drop(44, Measured(16, 0.2, "clamp"), 22)
rows: makegood.Verdicts = electrical.check_voltage_drop([5.0, None], 230, "lighting", "iec60364", threads=2)
slopes_of_rows: dict[str, npt.NDArray[np.float64]] = electrical.voltage_drop.sensitivities(np.array([44.0, 29.0]), 16, 22)
many: npt.NDArray[np.float64] = electrical.voltage_drop(np.array([44.0, 29.0]), 16, 22, errors="nan")
listed: npt.NDArray[np.float64] = electrical.voltage_drop([44, 29], 16, 22, out=many)
whole: npt.NDArray[np.float64] = electrical.voltage_drop(np.arange(3), 16, 22)
k: float = electrical.adiabatic_k("copper", 70, 160)
several: npt.NDArray[np.float64] = electrical.adiabatic_k(["copper", "steel"], 70, final_c=160)
verdict: Verdict = electrical.check_voltage_drop(5.0, 230, "lighting", "bs7671:2018+a2")
verdict = electrical.check_voltage_drop(Reading.above(20), 230, "other", makegood.Rulebook("iec60364"), length_m=20)
verdict = electrical.check_voltage_drop(None, 230, load_kind="other", rulebook="iec60364")
verdict = sensing.check_rtd_sensor(doubtful, 22, 100)
verdict = air.check_duct_pressure(3, 4, rule="iso14253")
meter = makegood.Instrument("meter", {"resistance": [makegood.Accuracy(percent=1, counts=2, resolution=0.1, range=200)]})
verdict = sensing.check_rtd_sensor(Reading(108.6, instrument=meter), 22, 100, rule=makegood.DecisionRule.jcgm106(0.99))
settles: list[str] = verdict.which_settle([meter])
risk: float = makegood.decision.global_risk({"kind": "gamma", "shape": 4, "rate": 4}, 0.25, upper=2.0).consumer_risk
last: float = makegood.decision.proving_reading(1.37, "<=", makegood.Accuracy.operating(30, 2019), "ilac_g8").reading
verdict = sensing.check_sensor(Reading(11650), 21.4, {"kind": "rtd", "r0_ohm": 100})
rate: float = air.required_extract("kitchen", makegood.Rulebook("england-adf-2021")).flow_l_per_s
limit: float | None = verdict.limit
if verdict.outcome == "pass":
    print(verdict.worked()[0]["symbol"], verdict.to_dict())
fit = sensing.fit_steinhart_hart([(0, 32554), (25, 10000), (50, 3605)])
bits: float = decision.entropy([0.5, 0.25, 0.25]).bits
evpi: float = decision.value_of_information(np.array([0.3, 0.7]), [[5, 5], [50, 0]]).evpi
print(fit.a, fit.to_dict())
steps: list[dict[str, Any]] = heating.element_power.worked(100, voltage_v=230).steps
slopes: dict[str, float] = heating.element_power.sensitivities(100, 230)
described: dict[str, Any] = electrical.voltage_drop.describe()
visit: makegood.Visit = makegood.load_visit(Path("visit.json"))
assessment: makegood.Assessment = makegood.assess(visit, rules="iec60364")
drawing: str = setting_out.draw_wall({"width_mm": 900, "height_mm": 900, "tile_width_mm": 148, "tile_height_mm": 148, "joint_mm": 2}, title="wall")
page: str = makegood.report(assessment) + makegood.report(assessment.to_dict(), audience="client")
short: str = makegood.message(assessment, limit=300)
questions: list[str] = [finding.question for finding in assessment.findings]
names: list[str] = [d["name"] for d in makegood.catalogue()]


def loaded(document: dict[str, Any]) -> list[tuple[str, str]]:
    try:
        makegood.read_visit(document)
    except makegood.DocumentError as e:
        return e.problems
    except makegood.RangeError as e:
        raise ValueError from e
    return []
'''

# Each line is wrong in its own way, and mypy must say so.
BAD = '''\
electrical.voltage_drop("44", 16, 22)
electrical.voltage_drop(44, 16)
electrical.voltage_drop(44, 16, 22, 3)
electrical.voltage_drop(44, 16, lenght_m=22)
electrical.voltage_drop(44, 16, None)
electrical.voltage_drop(44, 16, ["22"])
electrical.voltage_drop(44, 16, 22, errors="ignore")
electrical.voltage_drop(["44"], Measured(16, 1), 22)
electrical.voltage_drop.worked(44, 16)
electrical.voltage_dropp(44, 16, 22)
electrical.adiabatic_k("coper", 70, 160)
electrical.check_voltage_drop("5", 230, "lighting", "iec60364")
electrical.check_voltage_drop(5, 230, "lightning", "iec60364")
electrical.check_voltage_drop(5, 230, "lighting")
electrical.check_voltage_drop(5, 230, "lighting", 3)
electrical.check_voltage_drop(5, 230, "lighting", "iec60364", lenght_m=3)
electrical.check_voltage_drop(["5.0"], 230, "lighting", "iec60364")
electrical.check_voltage_drop.worked(5, 230, "lighting", "iec60364")
electrical.check_voltage_drop(5, 230, "lighting", "iec60364").outcome == "passed"
sensing.fit_steinhart_hart(3)
sensing.fit_steinhart_hart()
Measured("16", 1)
Measured(16, 1).value = 3
makegood.assess(makegood.load_visit("visit.json"))
makegood.assess({}, rules="iec60364")
makegood.load_visit(3)
text: str = electrical.voltage_drop(44, 16, 22)
text = electrical.voltage_drop(44, 16, Measured(22, 1))
text = electrical.voltage_drop(44, 16, [22])
text = electrical.check_voltage_drop(5, 230, "lighting", "iec60364")
'''.splitlines()
BAD_HEAD = "import makegood\nfrom makegood import Measured, electrical, sensing\n"


@pytest.fixture(scope="module")
def make_stubs():
    spec = importlib.util.spec_from_file_location("make_stubs", ROOT / "bindings" / "make_stubs.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="module")
def written(make_stubs):
    try:
        return make_stubs.stubs(makegood)
    except make_stubs.Behind as e:
        pytest.fail(f"bindings/make_stubs.py is behind the module: {e}")


def test_stubs_are_as_the_module_is(written):
    behind = [n for n, text in written.items() if not (FOLDER / n).is_file() or (FOLDER / n).read_text(encoding="utf-8") != text]
    assert not behind, f"{', '.join(behind)}: behind the module; {AGAIN}"
    strange = {p.name for p in FOLDER.glob("*.pyi")} - set(written)
    assert not strange, f"nobody writes {strange}: delete them"
    assert (FOLDER / "py.typed").is_file()


def test_stubs_are_written_alike_every_time(written):
    code = "import json, make_stubs, sys; json.dump(make_stubs.stubs(make_stubs.built_package()), sys.stdout)"
    path = os.pathsep.join([str(ROOT / "bindings"), str(pathlib.Path(makegood.__file__).parents[1])])
    for seed in ("1", "2", "3"):  # the order of a set differs by this
        environment = {**os.environ, "PYTHONPATH": path, "PYTHONHASHSEED": seed}
        done = subprocess.run([sys.executable, "-c", code], env=environment, capture_output=True, text=True, check=True)
        assert json.loads(done.stdout) == written
    for name, text in written.items():
        assert "\t" not in text and not re.search(r" +$", text, re.M) and text.endswith("\n") and not text.endswith("\n\n"), name


def test_every_entry_has_its_stub(written):
    for subject, doors in makegood._core.subjects.items():
        tree = ast.parse(written[f"{subject}.pyi"])
        classes = {c.name: c for c in tree.body if isinstance(c, ast.ClassDef)}
        variables = {v.target.id: v.annotation.slice.id for v in tree.body if isinstance(v, ast.AnnAssign) and v.target.id in doors}
        assert list(variables) == list(doors)
        for name, door in doors.items():
            calls = [f for f in classes[variables[name]].body if isinstance(f, ast.FunctionDef) and f.name == "__call__"]
            of_words = all("one_of" in a for a in door.describe()["arguments"])  # words have no doubt
            assert len(calls) == {"formula": 2 if of_words else 4, "check": 2, "model": 1}[door.kind], name  # a number, a Measured, arrays, arrays of Measured
            wanted = [p.name for p in door.__signature__.parameters.values() if p.kind != p.KEYWORD_ONLY]
            by_name = [p.name for p in door.__signature__.parameters.values() if p.kind == p.KEYWORD_ONLY]
            for call in calls:
                assert set(by_name) <= {a.arg for a in call.args.kwonlyargs}, name
                assert [a.arg for a in call.args.args] == ["self", *wanted], name
                required = [p.name for p in door.__signature__.parameters.values() if p.default is p.empty]
                if len(calls) == 4 and call is calls[3]:
                    words = {a["name"] for a in door.describe()["arguments"] if "one_of" in a}
                    required = wanted if set(required) <= words else required  # no number: no array of doubts
                assert len(call.args.args) - 1 - len(call.args.defaults) == len(required), name
            assert ast.get_docstring(classes[variables[name]]) == door.describe()["summary"]


def test_models_return_what_their_stubs_say(written):
    bath = {"kind": "bath", "outline": [[0, 0], [1.7, 0], [1.7, 0.7], [0, 0.7]], "rim_m": 0.55}
    plan = {"outline": [[0, 0], [4, 0], [4, 3], [0, 3]], "fixtures": [bath]}
    calls = {
        "sensing.fit_steinhart_hart": ([(0, 32554), (25, 10000), (50, 3605)],),
        "sensing.check_sensor": (11650, 21.4, {"kind": "ntc", "reference_ohm": 10000, "reference_c": 25, "beta_k": 3950}),
        "sensing.curve_against_points": ({"kind": "rtd", "r0_ohm": 100}, [(0, 100), (100, 138.51)]),
        "sensing.identify_sensor": ([{"resistance_ohm": 11650, "temperature_c": 21.4}], None, 0.05, False),
        "heating.mats_that_fit": (3, 2.4, 1.5),
        "air.required_extract": ("kitchen", "england-adf-2021"),
        "air.duct_run": ([{"kind": "round", "diameter_mm": 100, "length_m": 3}], 15),
        "air.operating_point": ({"points": [[0, 60], [30, 0]]}, {"flow_l_per_s": 15, "pressure_pa": 30}),
        "air.operating_flows": ([{"points": [[0, 60], [30, 0]]}], [0], [100], [3], [0.1], [2]),
        "air.fan_diagnosis": ({"points": [[0, 60], [30, 0]]}, {"flow_l_per_s": 15, "pressure_pa": 30}, {"grille_l_per_s": 9}),
        "air.duct_network": ([{"from": "a", "to": "b", "resistance_pa_s2_per_l2": 0.1}], [{"name": "a", "outside": True}, {"name": "b", "outside": True}]),
        "air.room_moisture": (10.8, 15),
        "air.roof_void_condensation": (15, 5),
        "air.traverse_points": ("round", 6),
        "air.ventilation_required": ([{"kind": "bathroom"}, {"kind": "habitable", "volume_m3": 30}], "england-adf-2021", 2),
        "air.commissioned_flow": (14.9, 15, "finland-1009-2017"),
        "air.outlet_options": (
            {"points": [[0, 60], [30, 0]]},
            [{"name": "wall", "segments": [{"kind": "round", "diameter_mm": 100, "length_m": 3}]}, {"name": "void", "discharge_to": "roof_void", "segments": [{"kind": "round", "diameter_mm": 100, "length_m": 1}]}],
            "england-adf-2021",
            15,
        ),
        "air.measured_flow": ("hood", [12.1, 11.8, 12.3]),
        "electrical.ring_tests": (0.44, 0.44, 0.72),
        "electrical.test_record_consistency": ([{"loop_ohm": 0.8, "line_plus_cpc_ohm": 0.4}], {"external_loop_ohm": 0.35}),
        "electrical.parallel_insulation": ([1.5, 3.0, 3.0], ["a", "b", "c"], 1.0),
        "electrical.locate_fault": ({"velocity_factor": 0.66}, [{"method": "reflection", "round_trip_ns": {"value": 100.0, "limit": 1.0}}]),
        "electrical.switched_feed_logic": (["a"], [{"name": "S", "kind": "one_way"}], [{"voltage": "live", "from": "a"}]),
        "electrical.joint_under_load": (236.0, 229.0, 9.5),
        "electrical.unwanted_trips": (30.0, "at_once"),
        "setting_out.place_brackets": (
            {"width_mm": 900, "height_mm": 900, "tile_width_mm": 148, "tile_height_mm": 148, "joint_mm": 2},
            [{"x_mm": 0, "y_mm": 0}, {"x_mm": 300, "y_mm": 0, "wish": "vertical_joint"}],
            6.0,
        ),
        "setting_out.bathroom_zone": ([1.9, 0.3, 1.2], plan, "bs7671:2018+a2"),
        "setting_out.bathroom_zones": ([[1.9, 0.3, 1.2], [3.0, 2.0, 1.0]], plan, "bs7671:2018+a2", 0.01),
        "setting_out.check_equipment_in_zone": ({"kind": "fan", "ip": "IPX4"}, "1", "bs7671:2018+a2"),
        "setting_out.cable_zones": ({"width_mm": 3000, "height_mm": 2400}, [], "bs7671:2018+a2"),
        "setting_out.check_hole_outside_cable_zones": (
            {"x_mm": 800, "y_mm": 800, "diameter_mm": 8, "depth_mm": 40},
            {"width_mm": 3000, "height_mm": 2400},
            [],
            "bs7671:2018+a2",
            {"reading": "not_used"},
        ),
        "setting_out.fixing_load": (120, 100, 60),
        "setting_out.characteristic_load": ([2100, 1800, 2400, 2000, 1900],),
        "setting_out.pilot_holes": (35, 20),
        "setting_out.flex_reach": (1200, {"x_mm": 0, "y_mm": 0}, {"x_mm": 600, "y_mm": 400}),
        "setting_out.hanging_cord": (1010, 1000),
        "lighting.lumen_method": (8, 6, 2.2, 400, 3200, 0.5, 0.7),
        "lighting.points_illuminance": ([{"x_m": 0, "y_m": 0, "height_m": 2, "intensity_cd": 300}],),
        "lighting.downlight_layout": (2.4, 1.8, 2.4, 500, 60, None, 2, 2),
        "lighting.mirror_illuminance": ("strips", 600, 0.6, 0.5, 0.6),
        "price.round_money": ("56.496", "half_up"),
        "price.vat_from_gross": ("235.00", "17.5"),
        "price.quote": ([{"kind": "labour", "time_h": "2", "rate_per_h": "48.00"}], {"standard": "20"}),
        "price.compare_options": ([{"name": "replace", "cost": "900", "cures": ["joint"]}], {"joint": 1.0}),
        "job.diagnose": ("heating_element", {"power_w": 600}, {"element_ohm": 88}),
        "job.next_test": ("heating_element", {"power_w": 600}, {"element_ohm": 88}),
        "job.notifiable_work": ("new_circuit", "england-adp-2013"),
        "job.order_of_work": ([{"id": "joint", "minutes": 20, "risk": 2, "access": "hatch"}], 60, [{"id": "hatch", "setup_min": 10, "close_min": 5}], 40),
        "decision.conformity_probability": (9.0, 0.5, None, 11.5),
        "decision.guard_band": (0.5, "iso14253"),
        "decision.conformity_statement": (9.0, 0.5, "ilac_g8", None, 11.5),
        "decision.global_risk": ({"kind": "gamma", "shape": 4, "rate": 4}, 0.25, None, 2.0),
        "decision.acceptance_limit": ({"kind": "gamma", "shape": 4, "rate": 4}, 0.25, 0.001, None, 2.0),
        "decision.instrument_uncertainty": (52.9, {"percent": 0.8, "counts": 3, "resolution": 0.1}),
        "decision.operating_uncertainty": (0.05, [0.02, 0.03, 0.01]),
        "decision.operating_limit": (2,),
        "decision.proving_reading": (1.37, "<=", {"percent": 3}),
        "electrical.protective_device": ("breaker_b", 32),
        "electrical.cable_size": ("C", 32, 30, 20, 1, 11.5, 0.35, 1.366, 10000),
        "electrical.maximum_demand": ([{"kind": "lighting", "currents_a": [2]}],),
        "electrical.earthing_arrangement": ("tn_s",),
        "electrical.proof_of_isolation": (),
        "electrical.point_loads": ("radial", 18, [{"distance_m": 20, "current_a": 10}]),
        "electrical.spur_load": (80, [{"distance_m": 20, "current_a": 10}], "bs7671:2018+a2", 27),
        "electrical.required_rcd_tests": (30, "bs7671:2018+a2"),
        "heating.floor_material": ("timber",),
        "heating.floor_warm_up": ([{"material": "ceramic_tile", "thickness_mm": 10}, {"material": "cement_screed", "thickness_mm": 60}], 150, 18, 20),
        "heating.without_floor_limit": ([{"material": "ceramic_tile", "thickness_mm": 10}, {"material": "cement_screed", "thickness_mm": 60}], 150, 22),
        "heating.warm_up_evidence": (
            [0, 1200],
            [18, 22],
            {"layers": [{"material": "ceramic_tile", "thickness_mm": 10}, {"material": "cement_screed", "thickness_mm": 60}], "power_density_w_per_m2": 150, "room": 20},
            {"insulation": True, "screen": True, "resistance": True, "rcd": True},
        ),
        "heating.floor_scenarios": ([{"material": "ceramic_tile", "thickness_mm": 10}, {"material": "cement_screed", "thickness_mm": 60}], [150, 100], 18, 20),
        "decision.reliability": ([0, 1, 1], [0.2, 0.7, 0.9]),
    }
    calls = {r["function"]: tuple(r["inputs"].values()) for r in ledger.rows() if r["function"].startswith("decision.")} | calls
    assert set(calls) == {d["name"] for d in makegood.catalogue() if d["kind"] == "model"}
    for full_name, arguments in calls.items():
        subject, name = full_name.split(".")
        door = makegood._core.subjects[subject][name]
        (annotation,) = (v.annotation.slice.id for v in ast.parse(written[f"{subject}.pyi"]).body if isinstance(v, ast.AnnAssign) and v.target.id == name)
        (cls,) = (c for c in ast.parse(written[f"{subject}.pyi"]).body if isinstance(c, ast.ClassDef) and c.name == annotation)
        (call,) = (f for f in cls.body if isinstance(f, ast.FunctionDef))
        assert type(door(*arguments)).__name__ == call.returns.id, full_name


def test_a_member_without_stub_is_named(make_stubs, monkeypatch):
    bases, body = make_stubs.CLASSES["Visit"]
    monkeypatch.setitem(make_stubs.CLASSES, "Visit", (bases, body + "\n        def gone(self) -> str: ...\n"))
    with pytest.raises(make_stubs.Behind, match="Visit has no gone"):
        make_stubs.stubs(makegood)
    monkeypatch.setitem(make_stubs.CLASSES, "Visit", (bases, body))
    bases, body = make_stubs.CLASSES["Rulebook"]
    monkeypatch.setitem(make_stubs.CLASSES, "Rulebook", (bases, body.replace("ids: str", "id: str")))
    with pytest.raises(make_stubs.Behind, match=r"Rulebook.__init__ takes \(ids\)"):
        make_stubs.stubs(makegood)


@pytest.fixture(scope="module")
def mypy(tmp_path_factory):
    """Runs mypy --strict on files of these texts; returns its code and what it says of each file."""
    if importlib.util.find_spec("mypy"):
        command = [sys.executable, "-m", "mypy"]
    elif shutil.which("mypy"):
        command = [str(shutil.which("mypy"))]
    else:
        pytest.skip("mypy is not installed")
    folder = tmp_path_factory.mktemp("typed")

    def run(**texts: str) -> dict[str, list[str]]:
        for name, text in texts.items():
            (folder / f"{name}.py").write_text(text, encoding="utf-8")
        done = subprocess.run(
            [*command, "--strict", "--no-error-summary", "--hide-error-context", "--config-file", os.devnull]
            + ["--cache-dir", str(folder / "cache"), *(f"{name}.py" for name in texts)],
            cwd=folder,
            env={**os.environ, "MYPYPATH": str(FOLDER.parent), "PYTHONPATH": ""},
            capture_output=True,
            text=True,
            timeout=120,
        )
        if 'module named "numpy"' in done.stdout:
            pytest.skip("mypy runs in another Python, one without NumPy")
        assert done.returncode in (0, 1), done.stdout + done.stderr
        found = {name: [] for name in texts}
        for line in done.stdout.splitlines():
            name, _, said = line.partition(":")
            if ": note:" in line:
                continue
            found.setdefault(pathlib.Path(name).stem, []).append(said)
        return found

    return run


def test_type_checker(mypy):
    found = mypy(good=GOOD, bad=BAD_HEAD + "\n".join(BAD) + "\n")
    assert found.pop("good") == [], "a right use is refused"
    said = found.pop("bad")
    assert not found, f"mypy finds fault with the stubs themselves: {found}"
    first = BAD_HEAD.count("\n") + 1
    errors = {int(line.split(":")[0]) for line in said if ": error:" in f":{line}"}
    missed = [BAD[n - first] for n in range(first, first + len(BAD)) if n not in errors]
    assert not missed, "mypy lets pass:\n" + "\n".join(missed)
    assert errors == set(range(first, first + len(BAD)))


def test_stubs_type_check_themselves(mypy):
    found = mypy(**{"all_of_it": "from makegood import *\nfrom makegood import air, electrical, heating, sensing\n"})
    assert found == {"all_of_it": []}
