// SPDX-License-Identifier: MIT
// What the library calculates for air and ventilation: one line an entry.
#pragma once
#include "checks.hpp"
#include "formulas.hpp"
#include "models.hpp"
#include "ventilation_checks.hpp"

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
    check_air_changes_for,
    check_overrun,
    check_whole_dwelling,
    check_door_undercut,
    check_background_ventilator,
    check_purge_opening,
    check_ventilation_distance,
    check_duct_length,
    check_flexible_bends,
    check_terminal_area,
    check_discharge_outside,
    check_roof_void_openings,
    check_roof_void_ridge_share,
    check_design_flow,
    check_design_flow_excess,
    check_surface_mould,
    check_surface_condensation,
    check_room_humidity,
    surface_temperature,
    temperature_factor,
    surface_relative_humidity,
    critical_surface_temperature,
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
    air_viscosity>;

}  // namespace air
}  // namespace v1
}  // namespace makegood
