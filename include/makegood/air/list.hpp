// SPDX-License-Identifier: MIT
// What the library calculates for air and ventilation: one line an entry.
#pragma once
#include "checks.hpp"
#include "formulas.hpp"
#include "models.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

using entries = list<
    airflow_from_air_changes,
    air_changes_from_airflow,
    flow_from_velocity,
    door_undercut_area,
    make_up_air_velocity,
    air_power,
    specific_fan_power,
    fan_law_flow,
    fan_law_pressure,
    fan_law_power,
    check_extract,
    check_air_changes,
    check_duct_pressure,
    reynolds_number,
    friction_factor,
    friction_factor_colebrook,
    friction_factor_churchill,
    friction_factor_swamee_jain,
    friction_factor_haaland,
    hydraulic_diameter,
    equivalent_diameter,
    duct_velocity,
    duct_velocity_rectangular,
    velocity_pressure,
    fitting_pressure_loss,
    duct_pressure_loss,
    duct_pressure_loss_rectangular,
    flexible_duct_multiplier,
    saturation_pressure,
    saturation_pressure_ice,
    saturation_pressure_magnus,
    saturation_pressure_iso13788,
    vapour_pressure,
    dew_point,
    dew_point_magnus,
    relative_humidity,
    humidity_ratio,
    air_density,
    air_viscosity,
    saturation_pressure_sonntag,
    saturation_pressure_iapws,
    dew_point_iso13788,
    saturation_temperature,
    vapour_pressure_from_humidity_ratio,
    relative_humidity_from_humidity_ratio,
    air_density_from_humidity_ratio,
    vapour_concentration,
    moisture_removed,
    enthalpy,
    temperature_from_enthalpy,
    humidity_ratio_from_wet_bulb,
    relative_humidity_from_wet_bulb,
    wet_bulb,
    standard_pressure,
    altitude_from_pressure,
    decay_concentration,
    room_concentration,
    time_to_concentration,
    air_changes_from_decay,
    stack_pressure,
    stack_pressure_from_temperatures,
    infiltration_flow,
    velocity_from_velocity_pressure,
    grille_flow,
    flow_measurement_uncertainty,
    orifice_discharge_coefficient,
    orifice_expansibility,
    orifice_flow,
    diverging_branch_coefficient,
    diverging_run_coefficient,
    converging_branch_coefficient,
    converging_run_coefficient>;

}  // namespace air
}  // namespace v1
}  // namespace makegood
