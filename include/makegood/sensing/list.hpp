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
    check_ntc_sensor,
    check_steinhart_hart_sensor,
    check_rtd_sensor,
    check_silicon_ptc_sensor>;

}  // namespace sensing
}  // namespace v1
}  // namespace makegood
