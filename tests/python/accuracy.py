# SPDX-License-Identifier: MIT
"""How near the formulas come to the exact result of their equations: points, scales and errors.

    python tests/python/accuracy.py [NAME...]     # prints
    python tests/python/accuracy.py --write       # and writes tests/published/accuracy.csv

prints the worst error of each formula that was found, in units in the last place of the result (ulp) and relative, with its
point. The exact results are those of oracle.py (mpmath, 50 digits); the points are seeded: every run has the same.
tests/python/test_oracle.py holds the same errors against bounds, tests/python/test_accuracy.py holds the table.
"""

from __future__ import annotations

import csv
import itertools
import json
import math
import pathlib
import random
import struct
import sys
import zlib
from dataclasses import dataclass
from typing import Any, Callable, Iterator

import makegood

Point = dict[str, Any]
RANDOM_POINTS = 300
CLIMBS, CLIMB_STEPS = 10, 60


def formulas() -> list[str]:
    return [d["name"] for d in makegood.catalogue() if d["kind"] == "formula"]


def door(name: str) -> Any:
    subject, function = name.split(".")
    return makegood._core.subjects[subject][function]


# ------------------------------------------------------------------------------------------------------------- points


def up(x: float, steps: int = 1) -> float:
    for _ in range(abs(steps)):
        x = math.nextafter(x, math.inf if steps > 0 else -math.inf)
    return x


def around(x: float, *distances: float) -> list[float]:
    """A number, its neighbours, and numbers at these distances on both sides."""
    found = [x, up(x), up(x, -1)]
    for d in distances:
        found += [x + d, x - d]
    return found


def each(name: str, values: list[float], **others: Any) -> list[Point]:
    return [{name: v, **others} for v in values]


TINY = 1e-300
NEAR = (1e-12, 1e-9, 1e-6, 1e-3)


def _reynolds(re: float, diameter_mm: float, density: float, viscosity: float) -> float:
    """The flow in l/s in a round duct for a Reynolds number."""
    return re * math.pi * diameter_mm * viscosity / (4 * density)


def _special() -> dict[str, list[Point]]:
    """Where terms cancel, where a branch changes, where a result passes zero. What is not named lies in the middle."""
    zero_k = 273.15
    saturation = each("temperature_c", around(0.0, *NEAR) + [-1e-300, 1e-300])
    turning = [2300 * (1 + e) for e in (-1e-9, -1e-6, 0.0, 1e-9, 1e-6)] + [4000 * (1 + e) for e in (-1e-9, -1e-6, 1e-9, 1e-6)]
    duct = {"diameter_mm": 100.0, "density_kg_per_m3": 1.2, "viscosity_pa_s": 1.8e-5}
    # not at 2300 itself: the rounding of the Reynolds number decides there which formula is taken, and the factor steps
    ducts = [{"flow_l_per_s": _reynolds(re, 100.0, 1.2, 1.8e-5), **duct, "roughness_mm": r} for re in turning if re != 2300 for r in (0.0, 0.09)]
    flat = {"width_mm": 200.0, "height_mm": 50.0, "density_kg_per_m3": 1.2, "viscosity_pa_s": 1.8e-5}
    # Re = rho v D/mu with v = Q/(w h), D = 2 w h/(w + h): Q = Re mu (w + h)/(2 rho)
    flats = [{"flow_l_per_s": re * 1.8e-5 * 250.0 / (2 * 1.2), **flat} for re in turning if re != 2300]
    factors = [{"reynolds": re, "relative_roughness": r} for b in (2300.0, 4000.0) for re in around(b, *NEAR) for r in (0.0, 1e-3)]
    ntc = {"reference_ohm": 10000.0, "reference_c": 25.0, "beta_k": 3950.0}
    steinhart = {"a": 1.129241e-3, "b": 2.341077e-4, "c": 8.775468e-8}
    return {
        "electrical.voltage_drop_impedance": each("power_factor", [1.0, up(1.0, -1), 1 - 1e-12, 1 - 1e-6, 0.0, 1e-9]),
        "electrical.ring_voltage_drop": each("distance_m", [0.0, 1e-9, *(80.0 - d for d in (0.0, 1e-3, 1e-6, 1e-9)), up(80.0, -1)], ring_length_m=80.0)
        + each("spur_length_m", [0.0, 1e-9], ring_length_m=80.0, distance_m=80.0),
        "electrical.operating_temperature_factor": [
            {"tabulated_capacity_a": 40.0, "ambient_factor": 0.87, "grouping_factor": 0.8, "design_current_a": i, "conductor_max_c": t}
            for i in (40.0 * 0.87 * 0.8, 27.8, 27.84, 0.0)
            for t in (40.0, 70.0, 90.0)
        ],
        "electrical.resistance_at_temperature": each("temperature_c", around(20.0, *NEAR)) + each("temperature_c", [-30.0 + d for d in NEAR], alpha_per_k=0.02),
        "electrical.adiabatic_k": each("final_c", [up(70.0), *(70.0 + d for d in NEAR)], initial_c=70.0),
        "electrical.adiabatic_k_from_constants": each("final_c", [up(70.0), *(70.0 + d for d in NEAR)], initial_c=70.0),
        "electrical.adiabatic_final_temperature": each("let_through_a2s", [1e-9, 1e-3, 1.0, 1e5], area_mm2=2.5)
        + each("let_through_a2s", [40.0, 4000.0], area_mm2=2.5, initial_c=0.0),
        "electrical.warm_loop_impedance": each("cold_loop_impedance_ohm", [0.35, up(0.35), 0.35 + 1e-9], external_ohm=0.35)
        + each("temperature_factor", [1.0, up(1.0)]),
        "electrical.varley_loop_distance": each("earth_reading_ohm", [up(0.9, -1), *(0.9 - d for d in NEAR), 0.0], loop_reading_ohm=1.0, lead_ohm=0.05, length_m=100.0)
        + each("lead_ohm", [0.0, 0.499, 0.4999999], earth_reading_ohm=0.0, loop_reading_ohm=1.0, length_m=100.0),
        "electrical.varley_loop_resistance": each("added_ohm", [20.0, up(20.0, -1), *(20.0 - d for d in NEAR)], sound_arm_ohm=10.0, faulty_arm_ohm=10.0, loop_ohm=20.0),
        "electrical.resistance_short_distance": each("lead_ohm", [1.0, up(1.0, -1), *(1.0 - d for d in NEAR)], loop_reading_ohm=1.0),
        "electrical.resistance_short_distance_both_ends": each("near_reading_ohm", around(0.5, *NEAR), far_reading_ohm=0.5)
        + each("far_reading_ohm", around(1.0, *NEAR), near_reading_ohm=0.5, length_m=20.0, loop_mohm_per_m=25.0),
        "electrical.awg_gauge": each("diameter_mm", around(8.251465, *NEAR) + around(0.127, *NEAR)),
        "electrical.conductor_resistivity": each("temperature_c", around(20.0, *NEAR)),
        "electrical.ring_spread_voltage_drop": each("position_ratio", [0.0, 1e-9, 1 - 1e-9, up(1.0, -1), 1.0]),
        "electrical.ring_leg_current": each("distance_m", [0.0, 1e-9, *(80.0 - d for d in (0.0, 1e-3, 1e-6, 1e-9)), up(80.0, -1)], ring_length_m=80.0),
        "electrical.longest_run_by_loop": each("external_ohm", [1.0, up(1.0, -1), *(1.0 - d for d in NEAR)], loop_limit_ohm=1.0),
        "electrical.longest_ring_by_loop": each("external_ohm", [1.0, up(1.0, -1), *(1.0 - d for d in NEAR)], loop_limit_ohm=1.0),
        "electrical.unknown_branch_insulation": each("rest_mohm", [up(1.0), *(1.0 + d for d in NEAR)], total_mohm=1.0),
        "electrical.insulation_at_temperature": each("wanted_c", around(20.0, *NEAR), temperature_c=20.0),
        "sensing.ntc_resistance": each("temperature_c", around(25.0, *NEAR) + around(0.0, *NEAR), **ntc),
        "sensing.ntc_temperature": each("resistance_ohm", around(10000.0, 1e-9, 1e-6, 1e-3) + around(33620.6, 1e-3), **ntc)
        + each("resistance_ohm", around(10000.0, 1e-6), **{**ntc, "reference_c": 0.0}),
        "sensing.beta_from_two_points": each("temperature_2_c", [25.0 + d for d in (1e-6, 1e-3, 0.1, 1.0)], temperature_1_c=25.0, resistance_1_ohm=10000.0, resistance_2_ohm=9950.0)
        + each("resistance_2_ohm", around(10000.0, 1e-6, 1e-3, 1.0), temperature_1_c=0.0, temperature_2_c=50.0, resistance_1_ohm=10000.0),
        "sensing.steinhart_hart_temperature": each("resistance_ohm", around(32650.8, 1e-3, 1.0), **steinhart)
        + each("resistance_ohm", [1000.0, 10000.0], **{**steinhart, "c": 0.0}),
        "sensing.steinhart_hart_resistance": each("temperature_c", around(0.0, *NEAR), **steinhart)
        + each("temperature_c", around(25.0, 1e-6), **{**steinhart, "c": 0.0}),
        "sensing.rtd_resistance": each("temperature_c", around(0.0, *NEAR) + around(100.0, 1e-9), r0_ohm=100.0),
        "sensing.rtd_temperature": each("resistance_ohm", around(100.0, *NEAR) + [18.52, 60.25], r0_ohm=100.0),
        "sensing.rtd_tolerance": each("temperature_c", around(0.0, 1e-9)),
        "sensing.silicon_ptc_resistance": each("temperature_c", around(25.0, *NEAR)),
        "sensing.silicon_ptc_temperature": each("resistance_ohm", around(1000.0, *NEAR) + [815.0], reference_ohm=1000.0)
        + each("b_per_k2", [0.0, 1e-15, 1e-9], resistance_ohm=1200.0, reference_ohm=1000.0),
        "heating.floor_heat_flux": each("surface_c", [20.0, up(20.0), *(20.0 + d for d in NEAR)], room_c=20.0),
        "heating.floor_surface_temperature": each("flux_w_per_m2", [0.0, 1e-12, 1e-6, 1e-3])
        + each("room_c", around(-5.0, 1e-9, 1e-3), flux_w_per_m2=8.92 * 5**1.1),
        "air.hydraulic_diameter": each("width_mm", around(100.0, 1e-9), height_mm=100.0),
        "air.friction_factor": factors,
        "air.friction_factor_colebrook": factors + each("relative_roughness", [0.0, 1e-15, 0.05, 1.0], reynolds=1e8),
        "air.friction_factor_churchill": factors + each("reynolds", [10.0, 100.0, 1000.0, 2800.0, 3300.0]),
        "air.duct_pressure_loss": ducts,
        "air.duct_pressure_loss_rectangular": flats,
        "air.saturation_pressure": saturation,
        "air.saturation_pressure_magnus": saturation,
        "air.saturation_pressure_iso13788": saturation,
        "air.vapour_pressure": saturation,
        "air.dew_point": each("relative_humidity_percent", [100.0, up(100.0, -1), 99.999, 0.1])
        + each("relative_humidity_percent", around(100.0 * 611.21 / 2338.8, 1e-9, 1e-4, 1e-2), temperature_c=20.0)
        + each("temperature_c", around(0.0, *NEAR), relative_humidity_percent=100.0)
        + each("temperature_c", around(0.0, *NEAR), relative_humidity_percent=99.995),
        "air.dew_point_magnus": each("relative_humidity_percent", [100.0, up(100.0, -1), 99.999, 0.1])
        + each("relative_humidity_percent", around(26.167, 1e-9, 1e-4), temperature_c=20.0)
        + each("temperature_c", around(0.0, *NEAR), relative_humidity_percent=100.0),
        "air.relative_humidity": each("dew_point_c", [20.0, up(20.0, -1), 20.0 - 1e-9, 0.0, up(0.0, -1)], temperature_c=20.0)
        + each("dew_point_c", [0.0, up(0.0, -1), -1e-9], temperature_c=0.0),
        "air.humidity_ratio": each("vapour_pressure_pa", [0.0, 1e-300, up(95000.0, -1), 95000.0 - 1e-6, 94999.0], pressure_pa=95000.0),
        "air.air_density": each("temperature_c", around(0.0, *NEAR)) + each("temperature_c", around(-zero_k + 200, 1e-9)),
        "air.air_viscosity": each("temperature_c", around(0.0, *NEAR)),
        "air.saturation_pressure_sonntag": each("temperature_c", around(0.0, *NEAR)),
        "air.dew_point_iso13788": each("relative_humidity_percent", [100.0, up(100.0, -1), 99.999, 0.1]) + each("temperature_c", around(0.0, *NEAR), relative_humidity_percent=100.0),
        "air.saturation_temperature": each("vapour_pressure_pa", around(611.15357089076767, 1e-9, 1e-3) + around(611.21286745118838, 1e-9, 1e-3)),
        "air.wet_bulb": each("relative_humidity_percent", [0.0, 1e-9, 1e-3, 99.999, up(100.0, -1), 100.0])
        + each("temperature_c", around(0.0, *NEAR), relative_humidity_percent=100.0)
        + each("relative_humidity_percent", [25.0, 27.0, 28.0, 29.0, 30.0, 32.0], temperature_c=8.0),
        "air.humidity_ratio_from_wet_bulb": each("wet_bulb_c", around(0.0, *NEAR), temperature_c=5.0) + each("temperature_c", [20.0, up(20.0), 20.0 + 1e-9], wet_bulb_c=20.0),
        "air.relative_humidity_from_wet_bulb": each("wet_bulb_c", around(0.0, *NEAR), temperature_c=5.0) + each("temperature_c", [20.0, up(20.0), 20.0 + 1e-9], wet_bulb_c=20.0),
        "air.standard_pressure": each("altitude_m", around(0.0, *NEAR)),
        "air.altitude_from_pressure": each("pressure_pa", around(101325.0, *NEAR)),
        "air.room_concentration": each("time_h", [0.0, 1e-12, 1e-6, 1e-3, 100.0]),
        "air.moisture_removed": each("outside_c", around(20.0, *NEAR), temperature_c=20.0, relative_humidity_percent=60.0, outside_humidity_percent=60.0),
        "air.stack_pressure_from_temperatures": each("outside_c", around(20.0, *NEAR), inside_c=20.0),
        "air.stack_pressure": each("density_kg_per_m3", around(1.2, 1e-9, 1e-6), outside_density_kg_per_m3=1.2),
        "air.enthalpy": each("temperature_c", around(0.0, *NEAR)),
        "air.orifice_discharge_coefficient": each("diameter_mm", around(71.12, 1e-9, 1e-3), orifice_mm=40.0),
        "air.orifice_expansibility": each("downstream_pa", [100000.0, up(100000.0, -1), 99999.999], upstream_pa=100000.0),
        "air.diverging_branch_coefficient": each("branch_flow_ratio", [0.0, 1e-9, 0.1, 0.3, 0.45, 1.0]) + each("branch_diameter_ratio", [0.1, 0.5], branch_flow_ratio=0.3),
        "air.diverging_run_coefficient": each("branch_flow_ratio", [0.0, 1e-9, 0.1, 0.3, 0.5, up(0.5), 1.0]) + each("branch_diameter_ratio", [0.1, 0.5], branch_flow_ratio=0.3),
        "air.converging_branch_coefficient": each("branch_flow_ratio", [0.0, 1e-9, 0.1, 0.26, 0.35, 1.0]) + each("branch_diameter_ratio", [0.1, 0.5], branch_flow_ratio=0.3),
        "air.converging_run_coefficient": each("branch_flow_ratio", [0.0, 1e-9, 0.1, 0.3, 1.0]),
        "air.flexible_duct_multiplier": each("compression_percent", [0.0, 1e-15, 1e-9]),
    }


SPECIAL = _special()


def middle(argument: dict[str, Any]) -> Any:
    if "one_of" in argument:
        return argument["one_of"][0]
    low, high = argument["usual"]
    return argument["default"] if "default" in argument else 0.5 * (low + high)


def drawn(rng: random.Random, argument: dict[str, Any]) -> Any:
    if "one_of" in argument:
        return rng.choice(argument["one_of"])
    low, high = argument["usual"]
    if low > 0 and high / low > 50 and rng.random() < 0.7:
        return min(max(low * (high / low) ** rng.random(), low), high)
    return rng.uniform(low, high)


def accepted(name: str, point: Point) -> bool:
    try:
        door(name)(**point)
        return True
    except (makegood.RangeError, makegood.RelationError):
        return False


def _ordinal(x: float) -> int:
    """Neighbouring doubles have neighbouring numbers."""
    (n,) = struct.unpack("<q", struct.pack("<d", x))
    return n if n >= 0 else -(n & 0x7FFFFFFFFFFFFFFF)


def _of_ordinal(n: int) -> float:
    return math.copysign(struct.unpack("<d", struct.pack("<q", abs(n)))[0], n)


def last_accepted(name: str, point: Point, argument: str, end: float) -> float:
    """The argument's last value towards `end` that is not refused: the end itself, or where a relation or the result ends."""
    if accepted(name, {**point, argument: end}):
        return end
    inside, outside = _ordinal(point[argument]), _ordinal(end)
    while abs(outside - inside) > 1:
        middle_ = (inside + outside) // 2
        if accepted(name, {**point, argument: _of_ordinal(middle_)}):
            inside = middle_
        else:
            outside = middle_
    return _of_ordinal(inside)


def edges(name: str, point: Point, argument: dict[str, Any]) -> Iterator[Point]:
    """Both ends of what is accepted, with the other arguments as they are; one step inside, and a little more.

    Beside 0 stands 1e-300: below the normal numbers every product loses digits.
    """
    which = argument["name"]
    for end in (argument["low"], argument["high"]):
        if end == 0 and not accepted(name, {**point, which: 0.0}):
            end = TINY
        last = last_accepted(name, point, which, end)
        for x in (last, math.nextafter(last, point[which]) if last else TINY, last + 1e-9 * (point[which] - last)):
            yield {**point, which: x}


def condition(name: str, point: Point) -> float:
    """How many times the result magnifies a relative change of its arguments, by differences in 50 digits; 0 where it is refused.

    It is large only where terms cancel: a product has the sum of its exponents.
    """
    import oracle

    mp = oracle.mp
    try:
        door(name)(**point)
        given = {k: v if isinstance(v, str) else mp.mpf(v) for k, v in point.items()}
        value = oracle.ORACLE[name](**given)
        if not value:
            return 0.0
        total = mp.mpf(0)
        for k, v in given.items():
            if not isinstance(v, str) and v:
                total += abs(oracle.ORACLE[name](**{**given, k: v * (1 + mp.mpf(10) ** -25)}) - value)
        return float(total / abs(value) * mp.mpf(10) ** 25)
    except (makegood.RangeError, makegood.RelationError, ValueError, ZeroDivisionError, TypeError):
        return 0.0  # refused; or the step leaves where the equation has a real result


def drawn_point(name: str, described: list[dict[str, Any]], rng: random.Random) -> Point:
    """Arguments where ordinary jobs lie. A table may have holes: of two words together, or of one alone, those that it has."""
    point = {a["name"]: drawn(rng, a) for a in described}
    if sum("one_of" in a for a in described) > 1 or all("one_of" in a for a in described):
        while not accepted(name, point):
            point = {a["name"]: drawn(rng, a) for a in described}
    return point


def climbed(name: str, described: list[dict[str, Any]], rng: random.Random, climbs: int, steps: int) -> Iterator[Point]:
    """Points that climb, from drawn ones, to where terms cancel most. Every point on the way up is one."""
    for _ in range(climbs):
        point = drawn_point(name, described, rng)
        best = condition(name, point)
        yield point
        for step in range(steps if any("one_of" not in a for a in described) else 0):
            trial = dict(point)
            a = rng.choice([a for a in described if "one_of" not in a])
            x = trial[a["name"]]
            size = 10.0 ** -rng.uniform(0, 1 + 6 * step / steps)  # long strides first
            same = [b["name"] for b in described if b is not a and b.get("unit") == a.get("unit")]
            if same and rng.random() < 0.3:  # terms of one unit cancel where they are nearly equal
                x = trial[rng.choice(same)]
            trial[a["name"]] = min(max(x + rng.choice((-1, 1)) * size * (abs(x) or 1.0), a["low"]), a["high"])
            if (now := condition(name, trial)) > best:
                point, best = trial, now
                yield point


def points(name: str, seed: str = "", share: float = 1.0) -> Iterator[tuple[str, Point]]:
    """(kind, arguments): drawn from where ordinary jobs lie, at the ends of what is permitted, special ones, and climbed ones.

    Another seed draws and climbs to other points, a share below 1 to fewer.
    """
    described = door(name).describe()["arguments"]
    rng = random.Random(zlib.crc32((seed + name).encode()))
    for _ in range(round(RANDOM_POINTS * share)):
        yield "usual", drawn_point(name, described, rng)
    if all("one_of" in a for a in described):  # a table: its edge is every row
        for words in itertools.product(*(a["one_of"] for a in described)):
            point = {a["name"]: w for a, w in zip(described, words)}
            if accepted(name, point):
                yield "edge", point
    for a in described:
        if "one_of" in a:
            continue
        point = {b["name"]: drawn(rng, b) for b in described}
        while not accepted(name, point):
            point = {b["name"]: drawn(rng, b) for b in described}
        for edge in edges(name, point, a):
            yield "edge", edge
    for given in SPECIAL.get(name, []):
        strange = set(given) - {a["name"] for a in described}
        assert not strange, f"{name} has no {strange}"
        for word in next((a["one_of"] for a in described if "one_of" in a), [None]):
            yield "special", {a["name"]: given.get(a["name"], word if "one_of" in a else middle(a)) for a in described}
    for point in climbed(name, described, random.Random(zlib.crc32((seed + "climbed " + name).encode())), math.ceil(CLIMBS * share), CLIMB_STEPS):
        yield "climbed", point


# ------------------------------------------------------------------------------------------------------------- scales

def _shunt_scale(p: Point) -> float:
    kelvins = p["temperature_c"] + 273.15
    own = p["reference_ohm"] * math.exp(p["beta_k"] * (1 / kelvins - 1 / (p["reference_c"] + 273.15)))
    x = math.log1p(own / p["shunt_ohm"])
    rest = p["beta_k"] - kelvins * x
    return abs(kelvins**2 * x * p["beta_k"] / rest**2) if rest else math.inf


def _warming_scale(p: Point) -> float:
    rise = p["power_w"] / p["loss_w_per_k"]
    short = abs(p["surroundings_c"] + rise - p["target_c"])
    size = 1 + abs(p["surroundings_c"]) + rise + abs(p["target_c"]) + abs(p["start_c"])
    return p["capacity_j_per_k"] / p["loss_w_per_k"] * size / short if short else math.inf


def _limit_scale(p: Point) -> float:
    added = p["source_l_per_s"] * 3.6e6 / (p["room_volume_m3"] * p["air_changes_per_h"])
    size = added + p["initial_ppm"] + p["outside_ppm"] + p["limit_ppm"]
    short = min(abs(p["outside_ppm"] + added - p["limit_ppm"]), abs(p["outside_ppm"] + added - p["initial_ppm"]))
    return size / short / p["air_changes_per_h"] if short else math.inf


def _vapour_ratio_scale(p: Point) -> float:
    pressure = 611.2 * math.exp(17.62 * p["wet_bulb_c"] / (243.12 + p["wet_bulb_c"]))
    return 0.62 * pressure / (p["pressure_pa"] - pressure)


def _dew(t: float, humidity: float) -> float:
    return 1322.0 * humidity / 100.0 * math.exp(17.62 * t / (243.12 + t)) / (t + 273.15)


def _pane_scale(p: Point) -> float:
    loss = p["coefficient_w_per_m2_k"] * p["area_m2"]
    capacity = 2500 * 750 * p["area_m2"] * p["thickness_mm"] / 1000
    return _warming_scale({**p, "loss_w_per_k": loss, "capacity_j_per_k": capacity, "surroundings_c": p["glass_c"], "start_c": p["glass_c"]})


# An error counts against the larger of the result and a small natural scale of the quantity, each with its reason; what is
# not here has none but the smallest normal number (below it every product loses digits).
SCALE_BY_UNIT: dict[str, tuple[float, str]] = {
    "°C": (1.0, "1 K: a temperature in °C is a difference of 273.15 K, and may be 0"),
}
SCALE: dict[str, tuple[float | Callable[[Point], float], str]] = {
    "electrical.current_capacity": (lambda p: p["coefficient_a"] * p["area_mm2"] ** p["exponent_m"], "the first part: the second is taken off it, and may be as large"),
    "electrical.extraneous_part_resistance": (lambda p: p["body_impedance_ohm"], "the body's impedance is taken off, and may be as large"),
    "electrical.awg_gauge": (36.0, "36, of which a part is taken: the number passes through 0 at 1/0"),
    "lighting.point_illuminance_vertical": (
        lambda p: max(sys.float_info.min, p["intensity_cd"] * p["offset_m"] / math.hypot(p["height_m"], p["offset_m"]) ** 3),
        "the illuminance of a face that looks at the lamp: its cosine passes through 0 at 90°",
    ),
    "sensing.beta_from_two_points": (1.0, "1 K of a constant of some thousand: it passes through 0 where the two resistances are equal"),
    "sensing.ntc_shunt_error_k": (_shunt_scale, "a pole where the parallel resistance is the curve's at endless temperature: B - T x is a difference"),
    "heating.heated_area": (lambda p: p["length_m"] * p["width_m"], "the room: margins and fixed things are taken off it, and may be as large"),
    "heating.missing_parallel_mats": (lambda p: p["mats_count"], "the number of mats, of which those that are there are taken off"),
    "heating.screen_fault_position": (
        lambda p: 0.5 + (p["first_ohm"] + p["second_ohm"]) / (2 * (p["loop_ohm"] - 2 * p["tail_ohm"])),
        "half the element and what the readings are worth in length: the place is a difference, and passes through 0 at the first end",
    ),
    "heating.screen_fault_resistance": (lambda p: p["first_ohm"] + p["second_ohm"], "the two readings, of which the loop is taken off"),
    "heating.downward_flux": (
        lambda p: (p["up_m2k_per_w"] * p["flux_w_per_m2"] + abs(p["room_c"] - p["below_c"])) / p["down_m2k_per_w"],
        "its two parts, which cancel where the space below is as warm as the heating plane",
    ),
    "heating.upward_flux": (
        lambda p: (p["down_m2k_per_w"] * p["power_w_per_m2"] + abs(p["room_c"] - p["below_c"])) / (p["up_m2k_per_w"] + p["down_m2k_per_w"]),
        "its two parts, which cancel where all of the power goes down",
    ),
    "heating.contact_temperature": (lambda p: 1 + abs(p["first_c"]) + abs(p["second_c"]), "the two temperatures in °C, between which it passes through 0"),
    "heating.steady_temperature": (lambda p: 1 + abs(p["outside_c"]) + p["power_w"] / p["loss_w_per_k"], "the outside temperature and the rise, which may cancel in °C"),
    "heating.rail_surface_temperature": (lambda p: 1 + abs(p["room_c"]), "the room's temperature in °C, to which the rise is added"),
    "heating.mean_excess": (lambda p: 1 + abs(p["flow_c"]) + abs(p["return_c"]) + abs(p["room_c"]), "the temperatures in °C: their mean may be that of the room"),
    "heating.warm_up_time": (_warming_scale, "the logarithm's pole where the target is the temperature that the power comes to: their difference loses digits"),
    "heating.mirror_clear_time": (_pane_scale, "the logarithm's pole where the target is the temperature that the power comes to: their difference loses digits"),
    "heating.mirror_clear_power": (
        lambda p: 60 * (p["coefficient_w_per_m2_k"] + p["back_w_per_m2_k"]) * p["area_m2"],
        "60 K: a dew point and a temperature in °C, of which the difference is taken",
    ),
    "air.altitude_from_pressure": (8400.0, "8400 m, the height over which pressure falls by e: a power near 1 is taken off 1 at sea level"),
    "air.room_concentration": (
        lambda p: p["initial_ppm"] + p["outside_ppm"] + p["source_l_per_s"] * 3.6e6 / (p["room_volume_m3"] * p["air_changes_per_h"]),
        "what the room comes to: of it a part is taken, that begins at 0",
    ),
    "air.decay_concentration": (lambda p: p["initial_ppm"] + p["outside_ppm"], "the two concentrations, of which the difference is taken"),
    "air.time_to_concentration": (_limit_scale, "the logarithm's pole where the limit is what the room comes to: their difference loses digits"),
    "air.air_changes_from_decay": (
        lambda p: (p["initial_ppm"] / (p["initial_ppm"] - p["outside_ppm"]) + p["final_ppm"] / (p["final_ppm"] - p["outside_ppm"])) / p["time_h"],
        "logarithm of a quotient of differences: it passes through 0, and has a pole where the second reading is that of the outside",
    ),
    "air.moisture_removed": (
        lambda p: 3.6 * p["flow_l_per_s"] * (_dew(p["temperature_c"], p["relative_humidity_percent"]) + _dew(p["outside_c"], p["outside_humidity_percent"])),
        "what the air carries out and in: the difference is taken",
    ),
    "air.enthalpy": (lambda p: 1.006 * abs(p["temperature_c"]) + p["humidity_ratio"] * (2501 + 1.86 * abs(p["temperature_c"])), "its parts, which cancel below 0 °C"),
    "air.temperature_from_enthalpy": (
        lambda p: 1 + (abs(p["enthalpy_kj_per_kg"]) + 2501 * p["humidity_ratio"]) / (1.006 + 1.86 * p["humidity_ratio"]),
        "the enthalpy and that of the vapour, of which the difference is taken",
    ),
    "air.humidity_ratio_from_wet_bulb": (_vapour_ratio_scale, "the humidity of air that saturates at the wet bulb, of which a part is taken: it passes through 0 at the wet bulb of dry air"),
    "air.relative_humidity_from_wet_bulb": (
        lambda p: 100 * _dew(p["wet_bulb_c"], 100) / _dew(p["temperature_c"], 100),
        "that of air that saturates at the wet bulb, of which a part is taken: it passes through 0 at the wet bulb of dry air",
    ),
    "air.stack_pressure": (
        lambda p: 9.80665 * (p["outside_density_kg_per_m3"] + p["density_kg_per_m3"]) * abs(p["rise_m"]),
        "the two columns of air, of which the difference is taken",
    ),
    "air.diverging_branch_coefficient": (lambda p: 1 + (p["branch_flow_ratio"] / p["branch_diameter_ratio"] ** 2) ** 2, "its parts, which may cancel"),
    "air.diverging_run_coefficient": (1.0, "1, the velocity pressure: it passes through 0 at a share of one half"),
    "air.converging_branch_coefficient": (lambda p: 2 + (p["branch_flow_ratio"] / p["branch_diameter_ratio"] ** 2) ** 2, "its parts, which cancel: it passes through 0"),
    "air.converging_run_coefficient": (lambda p: 1 + 2 * (p["branch_flow_ratio"] / p["branch_diameter_ratio"]) ** 2, "its parts, which may cancel"),
    "electrical.operating_temperature_factor": (1.0, "1: the factor is 1 less a part, and passes through 0 where the current is far above the capacity"),
    "electrical.varley_loop_distance": (lambda p: p["length_m"], "the length: the place is a difference of two readings, and passes through 0 at the near end"),
    "electrical.varley_loop_resistance": (lambda p: p["loop_ohm"], "the loop: the result is a part of it less another, and passes through 0 at the near end"),
    "electrical.resistance_short_distance_both_ends": (
        lambda p: p["length_m"] + 1000 * max(p["near_reading_ohm"], p["far_reading_ohm"]) / p["loop_mohm_per_m"],
        "the length and what the readings are worth in length: the place is a difference, and passes through 0 at the near end",
    ),
    "electrical.resistance_at_temperature": (
        lambda p: p["resistance_20_mohm_per_m"],
        "the resistance at 20 °C: far below it, 1 + alpha (t - 20) passes through 0",
    ),
}


def scale(name: str, point: Point) -> float:
    given = SCALE.get(name) or SCALE_BY_UNIT.get(door(name).describe()["unit"])
    size = given[0] if given else sys.float_info.min
    return max(size(point) if callable(size) else size, sys.float_info.min)


# ------------------------------------------------------------------------------------------------------------- errors


@dataclass
class Error:
    kind: str
    point: Point
    value: float
    exact: float
    absolute: float  # |value - exact|
    scale: float

    @property
    def relative(self) -> float:
        return self.absolute / abs(self.exact) if self.exact else (0.0 if self.absolute == 0 else math.inf)

    @property
    def ulp(self) -> float:
        return self.absolute / math.ulp(self.exact)

    @property
    def scaled(self) -> float:
        """Relative to the result or to its natural scale, whichever is larger."""
        return self.absolute / max(abs(self.exact), self.scale)

    @property
    def scaled_ulp(self) -> float:
        """In units in the last place of the result or of its natural scale, whichever is larger."""
        return self.absolute / math.ulp(max(abs(self.exact), self.scale))

    def __str__(self) -> str:
        given = ", ".join(f"{k}={v!r}" for k, v in self.point.items())
        return f"{given} gives {self.value!r}, exactly {self.exact!r} ({self.kind} point)"


def error_at(name: str, kind: str, point: Point) -> Error | None:
    """None where the library refuses the point; every number goes to the oracle as the exact double."""
    import oracle

    try:
        value = door(name)(**point)
    except (makegood.RangeError, makegood.RelationError):
        return None
    exact = oracle.ORACLE[name](**{k: v if isinstance(v, str) else oracle.mp.mpf(v) for k, v in point.items()})
    exact = oracle.mp.re(exact)  # past a turning point by less than a rounding of the relation, a root has a small imaginary part
    return Error(kind, point, value, float(exact), float(abs(oracle.mp.mpf(value) - exact)), scale(name, point))


def errors(name: str, seed: str = "", share: float = 1.0) -> tuple[list[Error], list[Point]]:
    """The errors at all points of a formula, and the points that it refuses."""
    found, refused = [], []
    for kind, point in points(name, seed, share):
        e = error_at(name, kind, point)
        if e is None:
            refused.append({"": kind, **point})
        else:
            found.append(e)
    return found, refused


def worst(found: list[Error]) -> Error:
    return max(found, key=lambda e: e.scaled)


# ------------------------------------------------------------------------------------------------- the table that is shipped

TABLE = pathlib.Path(__file__).resolve().parents[1] / "published" / "accuracy.csv"
COLUMNS = ("function", "kind", "points", "ulp", "condition", "absolute", "unit", "worst")
# What the table calls the kinds of points. Where terms cancel is named by hand and climbed to.
KINDS = {"random": ("usual",), "boundary": ("edge",), "cancellation": ("special", "climbed")}


def rows(name: str, found: list[Error]) -> list[dict[str, Any]]:
    """The rows of one formula: for each kind of points the worst error and where it is.

    `ulp` counts in the last place of the result or of its natural scale, whichever is larger (SCALE, SCALE_BY_UNIT); `condition`
    is how many times the formula itself magnifies a relative change of its arguments there; `absolute` is the worst of all points.
    """
    made = []
    for kind, members in KINDS.items():
        some = [e for e in found if e.kind in members]
        e = max(some, key=lambda e: e.scaled_ulp)
        made.append({
            "function": name, "kind": kind, "points": len(some), "ulp": float(f"{e.scaled_ulp:.3g}"),
            "condition": float(f"{condition(name, e.point):.3g}"), "absolute": float(f"{max(e.absolute for e in some):.3g}"),
            "unit": door(name).describe()["unit"], "worst": json.dumps(e.point),
        })  # fmt: skip
    return made


def table() -> list[dict[str, Any]]:
    with TABLE.open(newline="", encoding="utf-8") as file:
        return [{**r, "points": int(r["points"]), **{k: float(r[k]) for k in ("ulp", "condition", "absolute")}} for r in csv.DictReader(file)]


def main(names: list[str]) -> int:
    write = "--write" in names
    names = [n for n in names if n != "--write"]
    if write and names:
        print("the table is written for all formulas at once", file=sys.stderr)
        return 2
    chosen = [n for n in formulas() if not names or n in names or n.split(".")[1] in names]
    if not chosen:
        print(f"no such formula; there are {', '.join(formulas())}", file=sys.stderr)
        return 2
    print("ulp: error in units in the last place of the result. relative: to the result. scaled: to the result or, if that is")
    print("larger, its natural scale (1 K for a temperature in °C). First line: the point where ordinary jobs lie that is worst by")
    print("its scaled error; second line: the worst of all, at the ends of what is permitted and where terms cancel.\n")
    print(f"{'formula':42}{'points':>7}{'refused':>8}{'ulp':>10}{'relative':>10}{'scaled':>10}  point")
    written: list[dict[str, Any]] = []
    for name in chosen:
        found, refused = errors(name)
        written += rows(name, found)
        for label, some in (("usual", [e for e in found if e.kind == "usual"]), ("all", found)):
            e = worst(some)
            head = f"{name:42}{len(found):7}{len(refused):8}" if label == "usual" else " " * 57
            given = ", ".join(f"{k}={v!r}" for k, v in e.point.items())
            print(f"{head}{e.ulp:10.3g}{e.relative:10.2g}{e.scaled:10.2g}  {given} -> {e.value!r}")
    if write:
        with TABLE.open("w", newline="", encoding="utf-8") as file:
            out = csv.DictWriter(file, COLUMNS, lineterminator="\n")
            out.writeheader()
            out.writerows(written)
        print(f"written: {TABLE}")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
