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
    murray_loop_distance,
    murray_loop_distance_unequal,
    varley_loop_distance,
    varley_loop_resistance,
    capacitance_break_distance,
    capacitance_break_distance_sound_core,
    resistance_short_distance,
    resistance_short_distance_both_ends,
    reflection_distance,
    velocity_factor_from_length,
    velocity_factor_from_permittivity,
    insulation_of_two,
    unknown_branch_insulation,
    insulation_of_length,
    insulation_at_temperature,
    polarisation_index,
    check_adiabatic,
    check_loop_impedance,
    check_insulation,
    check_rcd_trip>;

}  // namespace electrical
}  // namespace v1
}  // namespace makegood
