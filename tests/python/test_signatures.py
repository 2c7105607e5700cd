# SPDX-License-Identifier: MIT
"""Signatures that other programs may rely on: names and order stay."""

import inspect

import pytest

import makegood

FIXED = """
electrical.voltage_drop(drop_mv_per_a_m, current_a, length_m)
electrical.voltage_drop_impedance(resistance_mohm_per_m, reactance_mohm_per_m, current_a, length_m, power_factor, b)
electrical.operating_temperature_factor(design_current_a, tabulated_capacity_a, ambient_factor, grouping_factor, conductor_max_c)
electrical.adiabatic_k(material, initial_c, final_c)
electrical.adiabatic_area(current_a, time_s, k)
electrical.max_earth_fault_loop_impedance(voltage_v, minimum_voltage_factor, operating_current_a)
electrical.prospective_fault_current(voltage_v, impedance_ohm)
electrical.design_current(power_w, voltage_v, power_factor)
sensing.ntc_resistance(temperature_c, reference_ohm, reference_c, beta_k)
sensing.ntc_temperature(resistance_ohm, reference_ohm, reference_c, beta_k)
sensing.steinhart_hart_temperature(resistance_ohm, a, b, c)
sensing.steinhart_hart_resistance(temperature_c, a, b, c)
sensing.fit_steinhart_hart(points)
sensing.rtd_resistance(temperature_c, r0_ohm)
sensing.rtd_temperature(resistance_ohm, r0_ohm)
sensing.check_sensor(resistance_ohm, temperature_c, curve)
heating.element_resistance(power_w, voltage_v)
heating.element_power(resistance_ohm, voltage_v)
heating.power_at_voltage(rated_power_w, rated_voltage_v, voltage_v)
heating.floor_heat_flux(surface_c, room_c)
air.airflow_from_air_changes(room_volume_m3, air_changes_per_h)
air.air_changes_from_airflow(flow_l_per_s, room_volume_m3)
air.reynolds_number(velocity_m_per_s, diameter_mm, density_kg_per_m3, viscosity_pa_s)
air.friction_factor(reynolds, relative_roughness)
air.duct_pressure_loss(flow_l_per_s, diameter_mm, length_m, roughness_mm, density_kg_per_m3, viscosity_pa_s)
air.saturation_pressure(temperature_c)
air.dew_point(temperature_c, relative_humidity_percent)
""".split("\n")[1:-1]


def find(line):
    subject, name = line[: line.index("(")].split(".")
    return getattr(getattr(makegood, subject), name)


@pytest.mark.parametrize("line", FIXED)
def test_fixed(line):
    f = find(line)
    names = line[line.index("(") + 1 : -1].split(", ")
    parameters = list(inspect.signature(f).parameters.values())
    assert [p.name for p in parameters[: len(names)]] == names
    assert all(p.default is not p.empty for p in parameters[len(names) :]), "a new argument needs a default"


@pytest.mark.parametrize("line", [l for l in FIXED if "fit_" not in l and "check_" not in l and "adiabatic_k" not in l])
def test_position_and_keyword_give_the_same_bits(line):
    f = find(line)
    described = f.describe()["arguments"]
    x = [0.25 * a["usual"][0] + 0.75 * a["usual"][1] for a in described]
    if "ring" in line:
        x[1] = 2 * x[2]
    assert f(*x) == f(**{a["name"]: v for a, v in zip(described, x)})
