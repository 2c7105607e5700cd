# SPDX-License-Identifier: MIT
"""Setting out and lighting through the Python door: the drawing, messages that say what would have to give, models against other arithmetic."""

from __future__ import annotations

import math
import xml.etree.ElementTree as ET

import numpy as np
import pytest

import makegood
from makegood import lighting, setting_out

WALL = {"width_mm": 1800, "height_mm": 2400, "tile_width_mm": 298, "tile_height_mm": 148, "joint_mm": 2, "first_x_mm": 110, "first_y_mm": 40, "shift_ratio": 0.5, "courses_in_bond": 2}
HOLES = [{"x_mm": 0, "y_mm": 0}, {"x_mm": 480, "y_mm": 0}, {"x_mm": 0, "y_mm": 64}, {"x_mm": 480, "y_mm": 64}]
PIPE = {"name": "pipe & <valve>", "left_mm": 300, "bottom_mm": 0, "right_mm": 350, "top_mm": 2400}
CEILING = {"x_mm": 0, "y_mm": 2250, "width_mm": 1800, "height_mm": 150, "rule": "150 mm below the ceiling"}
SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture(scope="module")
def placed():
    return setting_out.place_brackets(WALL, HOLES, 6, 1, 1, [PIPE], {"bottom_mm": 900, "top_mm": 1300}, None, {"wander_mm": 4, "centres_mm": 2, "common_mm": 3})


def test_chance_is_reported_beside_the_worst_case(placed):
    c = placed.chance
    assert placed.fits and 0 < c["probability"] <= c["best_probability"] <= 1
    assert c["best_failure"] == pytest.approx(1 - c["best_probability"], abs=1e-12)
    assert len(c["holes"]) == len(HOLES) and all(p >= c["probability"] for p in c["holes"])
    assert "probability" in placed.text
    rng = np.random.default_rng(4)
    n = 200_000
    good = np.ones(n, bool)
    common = rng.normal(0, 3, (2, n))
    for h in placed.holes:
        x = h["x_mm"] + common[0] + rng.normal(0, math.hypot(4, 2), n)
        y = h["y_mm"] + common[1] + rng.normal(0, math.hypot(4, 2), n)
        row = np.floor((y - 39) / 150)
        up = y - 39 - 150 * row
        along = np.mod(x - 109 - (row % 2) * 150, 300)
        good &= (np.minimum(up, 150 - up) > 4) & (np.minimum(along, 300 - along) > 4) & ((x < 297) | (x > 353))
    assert good.mean() == pytest.approx(c["probability"], abs=4.5 * math.sqrt(0.25 / n))
    without = setting_out.place_brackets(WALL, HOLES, 6)
    assert without.chance is None


def test_drawing_is_whole(placed):
    text = setting_out.draw_wall(WALL, placed, 6, [PIPE], [CEILING], title='Rail & "mirror" <1>')
    root = ET.fromstring(text)
    assert root.tag == f"{SVG}svg" and root.get("role") == "img"
    title, desc = root.find(f"{SVG}title"), root.find(f"{SVG}desc")
    assert title.text == 'Rail & "mirror" <1>'
    assert root.get("aria-labelledby").split() == [title.get("id"), desc.get("id")]
    for i, h in enumerate(placed.holes):
        assert f"Hole {i + 1}: {h['x_mm']:.1f}".rstrip("0").rstrip(".") in desc.text
    assert "pipe & <valve>" in desc.text and "150 mm below the ceiling" in desc.text
    holes = [c for c in root.iter(f"{SVG}circle") if c.get("class") == "hole"]
    assert len(holes) == len(HOLES) + 1  # and one among the signs
    # to scale: distances between the circles are those between the holes
    wall = next(r for r in root.iter(f"{SVG}rect") if r.get("class") == "wall")
    scale = float(wall.get("width")) / WALL["width_mm"]
    assert float(wall.get("height")) == pytest.approx(scale * WALL["height_mm"], abs=2e-3)
    for c, h in zip(holes, placed.holes):
        assert float(c.get("cx")) - float(wall.get("x")) == pytest.approx(scale * h["x_mm"], abs=2e-3)
        assert float(wall.get("y")) + float(wall.get("height")) - float(c.get("cy")) == pytest.approx(scale * h["y_mm"], abs=2e-3)
    words = [t.text for t in root.iter(f"{SVG}text")]
    for h in placed.holes:
        for name in ("x_mm", "y_mm"):
            shown = f"{h[name]:.1f}".rstrip("0").rstrip(".")
            assert words.count(shown) >= 2  # beside the wall and in the table
    # told apart without colour: keep-outs and cut tiles are hatched, and every colour is a grey
    assert {r.get("fill") for r in root.iter(f"{SVG}rect") if r.get("class") == "keep"} == {"url(#keep)"}
    assert any(r.get("fill") == "url(#cut)" for r in root.iter(f"{SVG}rect"))
    for part in text.split('"'):
        if part.startswith("#") and len(part) in (4, 7):
            digits = part[1:]
            assert len(set(digits)) == 1, part
    assert "<script" not in text and "href" not in text and "http" not in text.replace("http://www.w3.org/2000/svg", "")


def test_tiles_of_the_drawing_are_those_of_the_wall():
    root = ET.fromstring(setting_out.draw_wall(WALL))
    wall = next(r for r in root.iter(f"{SVG}rect") if r.get("class") == "wall")
    scale = float(wall.get("width")) / WALL["width_mm"]
    tiles = [r for r in root.iter(f"{SVG}rect") if r.get("class") == "tile"][:-2]  # two are signs
    area = sum(float(r.get("width")) * float(r.get("height")) for r in tiles) / scale**2
    ys = np.arange(0.5, 2400)
    covered = 0.0
    for y in ys:  # a sweep along every millimetre of height
        row = math.floor((y - 40) / 150)
        if (y - 40) - 150 * row < 148:
            starts = 110 + (row % 2) * 150 + 300 * np.arange(-3, 8)
            covered += float(np.sum(np.clip(np.minimum(starts + 298, 1800) - np.maximum(starts, 0), 0, None)))
    assert area == pytest.approx(covered, rel=2e-3)
    cut = [r for r in tiles if r.get("fill") == "url(#cut)"]
    whole = [r for r in tiles if r.get("fill") == "#fff"]
    assert cut and whole
    assert all(float(r.get("width")) == pytest.approx(298 * scale, abs=2e-3) and float(r.get("height")) == pytest.approx(148 * scale, abs=2e-3) for r in whole)


@pytest.mark.parametrize(
    ("wall", "rest", "says"),
    [
        ({**WALL, "width_mm": "wide"}, {}, "width_mm"),
        ({**WALL, "joint_mm": -1}, {}, "joint_mm"),
        ({**WALL, "tile_width_mm": 1, "tile_height_mm": 1}, {}, "20000 tiles"),
        (WALL, {"keep_outs": [{"left_mm": 3, "right_mm": 1, "bottom_mm": 0, "top_mm": 1}]}, "right_mm"),
        (WALL, {"zones": [{"x_mm": 0, "y_mm": 0, "width_mm": math.nan, "height_mm": 1}]}, "width_mm"),
        (WALL, {"hole_diameter_mm": 0}, "hole_diameter_mm"),
    ],
)
def test_drawing_refuses_nonsense(wall, rest, says):
    with pytest.raises(makegood.RangeError, match=says):
        setting_out.draw_wall(wall, **rest)


def test_no_place_says_what_would_have_to_give():
    wide = setting_out.place_brackets(WALL, [{"x_mm": 0, "y_mm": 0}, {"x_mm": 2000, "y_mm": 0}], 6)
    assert not wide.fits and "wider than the wall" in wide.text and "206" in wide.text
    all_of_it = setting_out.place_brackets(WALL, HOLES, 6, keep_outs=[{"name": "shower", "left_mm": 0, "right_mm": 1800, "bottom_mm": 0, "top_mm": 2000}, {**PIPE, "left_mm": 0, "right_mm": 1800, "bottom_mm": 1900}])
    assert not all_of_it.fits and '"shower" would have to give 70 mm' in all_of_it.text  # holes of 6 mm at 3 and 67 mm above the floor
    assert "No place" in setting_out.draw_wall(WALL, all_of_it)


@pytest.mark.parametrize(
    ("call", "says"),
    [
        (lambda: setting_out.place_brackets(WALL, HOLES, 6, doubt={"common_mm": 60, "wander_mm": 1}), "20 times"),
        (lambda: setting_out.place_brackets(WALL, HOLES, 6, doubt={}), "chance"),
        (lambda: setting_out.place_brackets(WALL, HOLES, 6, doubt={"wander": 1}), 'no argument "wander"'),
        (lambda: setting_out.fixing_load(100, 100, 50, 5, 4), "more than all"),
        (lambda: setting_out.fixing_load(100, 100, 0), "lever_mm"),
        (lambda: setting_out.characteristic_load([1000]), "2 to 1000"),
        (lambda: setting_out.pilot_holes(35, 20, step_ratio=1), "step_ratio"),
        (lambda: setting_out.hanging_cord(900, 1000), "from the span"),
        (lambda: setting_out.flex_reach(0, {"x_mm": 0, "y_mm": 0}, {"x_mm": 1, "y_mm": 1}), "length_mm"),
        (lambda: setting_out.flex_reach(1, {"x_mm": 0, "y_mm": 0, "leaves": "back"}, {"x_mm": 1, "y_mm": 1}), '"back"'),
        (lambda: setting_out.flex_reach(1, {"x_mm": 0, "y_mm": 0}, {"x_mm": 1, "y_mm": 1}, cable="rope", diameter_mm=8), "rope"),
        (lambda: setting_out.spindle_speed(0, 20), "diameter_mm"),
        (lambda: setting_out.parabola_sag(900, 1000), "no shorter"),
        (lambda: lighting.lumen_method(8, 6, 2.2, 400, 3200, 0.5, 0.7, 1.5), "whole"),
        (lambda: lighting.downlight_layout(8, 6, 2.2, 500, 60), "spacing_ratio"),
        (lambda: lighting.downlight_layout(80, 60, 2.2, 500, 60, 0.2), "400"),
        (lambda: lighting.downlight_layout(8, 6, 2.2, 500, 180, 1), "beam_angle_deg"),
        (lambda: lighting.mirror_illuminance("bulbs", 600, 0.6, 0.5), "bulbs"),
        (lambda: lighting.points_illuminance([]), "one at least"),
        (lambda: lighting.room_index(8, 6, 0), "mounting_height_m"),
    ],
)
def test_nonsense_is_refused(call, says):
    with pytest.raises(makegood.Error, match=says):
        call()


def test_joists_do_not_mix_countries():
    assert setting_out.check_joist_notch(18.75, 150, "gb-joists").plain == "pass"
    assert setting_out.check_joist_notch(math.nextafter(18.75, 19), 150, "gb-joists").plain == "fail"
    assert setting_out.check_joist_notch(19, 150, "gb-joists").outcome == "fail"  # as one authority prints it
    assert setting_out.check_joist_notch(19, 150, "us-irc-joists").plain == "pass"
    assert setting_out.check_joist_notch(30, 150, "gb-joists", "end").reason == "no rule in book"
    assert setting_out.check_joist_hole(20, 200, "nhbc-2020").reason == "no rule in book"
    assert "outside" in setting_out.check_joist_notch(20, 300, "gb-joists").reason


def test_fixings_with_tests_and_hands():
    r = setting_out.fixing_load(60, 80, 50, 2, 4, 500, 120, None, 800, [2100, 1800, 2400, 2000, 1900])
    assert r.pull_n == pytest.approx((60 * 80 + 500 * 120) / (50 * 2))
    assert r.shear_n == pytest.approx(560 / 4)
    s = np.std([2100, 1800, 2400, 2000, 1900], ddof=1)
    assert r.tests["deviation_n"] == pytest.approx(s)
    assert r.allowable_pull_n == pytest.approx(min(510, (2040 - r.tests["k"] * s) / 3))
    assert r.outcome == "fail" and r.interaction == pytest.approx(r.pull_n / r.allowable_pull_n + r.shear_n / 800)
    assert setting_out.check_fixing(r.pull_n, r.allowable_pull_n, r.shear_n, 800).outcome == "fail"
    alone = setting_out.fixing_load(60, 80, 50)
    assert alone.outcome == "undecided" and any("accidental" in t for t in alone.text)
    scattered = setting_out.fixing_load(60, 80, 50, ultimate_n=[100, 2000, 400], allowable_shear_n=800)
    assert scattered.outcome == "fail" and any("nothing is proved" in t for t in scattered.text)


def test_k_is_the_quantile_of_the_non_central_t():
    mp = pytest.importorskip("mpmath")
    for n, confidence, fractile in ((3, 0.9, 0.05), (5, 0.9, 0.05), (8, 0.75, 0.1), (20, 0.95, 0.01)):
        k = setting_out.characteristic_load([1000.0 + i for i in range(n)], confidence, fractile).k
        nu, delta = n - 1, -mp.sqrt(2) * mp.erfinv(2 * mp.mpf(fractile) - 1) * mp.sqrt(n)
        t = k * mp.sqrt(n)

        def density(w):  # of chi-square, by Φ of the numerator
            return mp.ncdf(t * mp.sqrt(w / nu) - delta) * w ** (mp.mpf(nu) / 2 - 1) * mp.exp(-w / 2) / (2 ** (mp.mpf(nu) / 2) * mp.gamma(mp.mpf(nu) / 2))

        assert float(mp.quad(density, [0, 1, nu, 3 * nu + 20, 20 * nu + 200])) == pytest.approx(confidence, abs=1e-8)


def test_flex_reaches_or_says_what_is_missing():
    r = setting_out.flex_reach(1000, {"x_mm": 0, "y_mm": 0}, {"x_mm": 600, "y_mm": 400}, cable="flexible_fixed", diameter_mm=8, allowance_mm=100)
    radius = 3 * 8 + 4
    assert r.bend_radius_mm == radius and r.bends_count == 1
    assert r.needed_mm == pytest.approx(1100 - radius * (2 - math.pi / 2))
    assert r.outcome == "fail" and r.missing_mm == pytest.approx(r.needed_mm - 1000)
    assert any("joint" in t and "accessible" in t for t in r.text)
    assert abs(r.outlet_at["x_mm"] - 600) + abs(r.outlet_at["y_mm"] - 400) == pytest.approx(r.missing_mm)
    assert r.concealed["length_mm"] == 1000 and any("50 mm" in t for t in r.concealed["text"])
    string = setting_out.flex_reach(1000, {"x_mm": 0, "y_mm": 0}, {"x_mm": 600, "y_mm": 400}, "straight")
    assert string.legs_mm == pytest.approx(math.hypot(600, 400)) and string.outcome == "pass"
    zone = {"x_mm": 200, "y_mm": -100, "width_mm": 200, "height_mm": 900, "rule": "zone 1"}
    around = setting_out.flex_reach(1000, {"x_mm": 0, "y_mm": 0}, {"x_mm": 600, "y_mm": 0}, "straight", None, [zone])
    assert around.legs_mm == pytest.approx(2 * math.hypot(200, 100) + 200)  # below it
    doubtful = setting_out.flex_reach(730, {"x_mm": 0, "y_mm": 0}, {"x_mm": 600, "y_mm": 400}, "straight", allowance_mm=5, length_sd_mm=5, place_sd_mm=5)
    assert doubtful.outcome == "undecided" and 0.05 < doubtful.probability < 0.95
    assert setting_out.flex_reach(900, {"x_mm": 300, "y_mm": 0}, {"x_mm": 600, "y_mm": 0}, keep_outs=[zone]).text[0].count('"zone 1"') == 1


def test_drills_step_up():
    r = setting_out.pilot_holes(35, 20, 4, 2)
    sizes = [s["diameter_mm"] for s in r.steps]
    assert sizes[0] == 4 and sizes[-1] == 35 and all(b <= 2 * a * (1 + 1e-12) for a, b in zip(sizes, sizes[1:]))
    assert all(s["spindle_speed_per_min"] == pytest.approx(20000 / math.pi / s["diameter_mm"]) for s in r.steps)
    assert any("hammer" in t for t in r.cautions) and any("water" in t for t in r.cautions)
    jumps = setting_out.pilot_holes(35, 20, 4, 1.5, [5, 6, 8, 25])
    assert any("larger than asked" in t for t in jumps.text)


def test_light_of_downlights_by_plain_numpy():
    r = lighting.downlight_layout(4.2, 3.1, 2.0, 600, 90, None, 2, 3, False, "cosine_power", 0.8, 0.4, 2.4)
    m = -math.log(2) / math.log(math.cos(math.radians(45)))
    assert r.middle_intensity_cd == pytest.approx(600 * (m + 1) / (2 * math.pi))
    xs, ys = (np.arange(600) + 0.5) * 4.2 / 600, (np.arange(500) + 0.5) * 3.1 / 500
    x, y = np.meshgrid(xs, ys)
    e = np.zeros_like(x)
    for p in r.positions:
        d2 = (x - p["x_m"]) ** 2 + (y - p["y_m"]) ** 2 + 4
        cos = 2 / np.sqrt(d2)
        e += r.middle_intensity_cd * cos ** (m + 1) / d2
    reflected = 0.8 * 6 * 600 * 0.4 / (2 * (4.2 * 3.1 + 2.4 * (4.2 + 3.1)) * 0.6)
    e = 0.8 * e + reflected
    assert r.reflected_lx == pytest.approx(reflected)
    assert r.mean_lx == pytest.approx(e.mean(), rel=5e-3)
    assert r.min_lx == pytest.approx(e.min(), rel=0.02)
    assert r.max_lx == pytest.approx(e.max(), rel=5e-3)
    assert [p["x_m"] for p in r.positions[:3]] == pytest.approx([0.7, 2.1, 3.5])
    small = lighting.downlight_layout(2.4, 1.8, 2.4, 500, 60, None, 2, 2)
    assert any("0.75" in t for t in small.cautions)
    assert any("0.75" in t for t in lighting.lumen_method(2.4, 1.8, 2.4, 150, 500, 0.45, 0.8).cautions)


def test_light_at_a_mirror_by_plain_numpy():
    for shape, emitter in (("strips", "flat"), ("strips", "tube"), ("ring", "flat")):
        r = lighting.mirror_illuminance(shape, 700, 0.7, 0.45, None if shape == "ring" else 0.8, 0.1, emitter)
        n = 20000
        if shape == "ring":
            a = 2 * np.pi * (np.arange(n) + 0.5) / n
            x, y, flux = 0.35 * np.cos(a), 0.1 + 0.35 * np.sin(a), np.full(n, 700 / n)
        else:
            y = np.tile(0.1 + 0.8 * ((np.arange(n) + 0.5) / n - 0.5), 2)
            x, flux = np.repeat([-0.35, 0.35], n), np.full(2 * n, 700 / n)
        d = np.sqrt(x**2 + y**2 + 0.45**2)
        candela = flux / np.pi * 0.45 / d if emitter == "flat" else flux / np.pi**2 * np.hypot(x, 0.45) / d
        turned, half = math.sin(math.radians(60)), 0.5
        for name, normal in (("front_lx", (0, 0, 1)), ("left_lx", (-turned, 0, half)), ("chin_lx", (0, -turned, half))):
            cos = np.maximum((normal[0] * x + normal[1] * y + normal[2] * 0.45) / d, 0)
            assert getattr(r, name) == pytest.approx(float(np.sum(candela * cos / d**2)), rel=5e-3), (shape, emitter, name)
        assert r.elements >= 10 and r.last_change < 0.01
    # the light of a tube: all of it leaves, F = π² I
    theta = (np.arange(20000) + 0.5) * np.pi / 20000
    assert np.sum(2 * np.pi * np.sin(theta) ** 2 / np.pi**2) * np.pi / 20000 == pytest.approx(1.0)


def test_points_on_upright_faces():
    lamp = [{"x_m": 1.0, "y_m": 1.0, "height_m": 0.5, "intensity_cd": 100}]
    d = math.sqrt(2.25)
    facing = lighting.points_illuminance(lamp, facing_deg=45)
    assert facing.illuminance_lx == pytest.approx(100 * math.sqrt(2) / d**3)
    assert lighting.points_illuminance(lamp, facing_deg=0).illuminance_lx == pytest.approx(100 / d**3)
    assert lighting.points_illuminance(lamp, facing_deg=225).illuminance_lx == 0
    assert lighting.points_illuminance(lamp).illuminance_lx == pytest.approx(100 * 0.5 / d**3)
