// SPDX-License-Identifier: MIT
// What the library calculates for temperature sensors: one line an entry. The fit (fit.hpp) needs Eigen and stands apart.
#pragma once
#include "checks.hpp"
#include "formulas.hpp"

namespace makegood {
inline namespace v1 {
namespace sensing {

using entries = list<
    ntc_resistance,
    ntc_temperature,
    beta_from_two_points,
    steinhart_hart_temperature,
    steinhart_hart_resistance,
    rtd_resistance,
    rtd_temperature,
    rtd_tolerance,
    silicon_ptc_resistance,
    silicon_ptc_temperature,
    metal_resistance,
    metal_temperature,
    alloy_resistance,
    alloy_resistance_20,
    lead_resistance_error_k,
    rtd_lead_error_k,
    ntc_lead_error_k,
    ntc_shunt_error_k,
    shunted_resistance,
    shunt_resistance,
    self_heating_k,
    divider_sensor_power,
    ntc_sensitivity,
    ntc_tolerance,
    ntc_tolerance_standard,
    rtd_tolerance_ohm,
    switching_ptc_coefficient,
    check_ntc_sensor,
    check_steinhart_hart_sensor,
    check_rtd_sensor,
    check_silicon_ptc_sensor>;

}  // namespace sensing
}  // namespace v1
}  // namespace makegood
