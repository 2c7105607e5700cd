// SPDX-License-Identifier: MIT
// What the library calculates for electrical work: one line an entry.
#pragma once
#include "checks.hpp"
#include "formulas.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

using entries = list<
    voltage_drop,
    voltage_drop_impedance,
    ring_voltage_drop,
    operating_temperature_factor,
    design_current,
    design_current_three_phase,
    resistance_at_temperature,
    loop_resistance,
    length_from_resistance,
    conductor_resistance_20,
    current_capacity,
    installed_capacity,
    flat_twin_capacity,
    flat_twin_voltage_drop,
    ambient_factor,
    grouping_factor,
    thermal_insulation_factor,
    required_capacity,
    short_overload_current,
    smallest_size,
    check_voltage_drop,
    adiabatic_k,
    adiabatic_k_from_constants,
    adiabatic_area,
    adiabatic_area_from_let_through,
    adiabatic_time,
    adiabatic_final_temperature,
    adiabatic_withstand,
    fault_energy,
    earth_fault_loop_impedance,
    max_earth_fault_loop_impedance,
    warm_loop_impedance,
    prospective_fault_current,
    breaker_operating_current,
    breaker_holding_current,
    fuse_operating_current,
    conventional_operating_current,
    cold_loop_limit,
    earth_resistance_limit,
    touch_voltage,
    bonding_resistance_limit,
    extraneous_part_resistance,
    protective_conductor_area,
    joint_resistance_under_load,
    joint_heating,
    residual_share,
    cooker_demand,
    heating_demand,
    lighting_demand,
    circuits_demand,
    check_adiabatic,
    check_loop_impedance,
    check_insulation,
    check_rcd_trip,
    check_rcd_trip_at,
    check_breaking_capacity,
    check_overload,
    check_overload_operation,
    check_touch_voltage,
    check_supplementary_bonding,
    check_earth_electrode,
    check_standing_leakage,
    check_disconnection_time,
    check_cold_loop_impedance,
    check_bonding_continuity,
    check_fuse_for_load,
    check_flex_for_fuse,
    check_rcd_type_for_load,
    check_maximum_demand>;

}  // namespace electrical
}  // namespace v1
}  // namespace makegood
