// SPDX-License-Identifier: MIT
// What the library calculates for heating: one line an entry.
#pragma once
#include "checks.hpp"
#include "formulas.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

using entries = list<
    element_resistance,
    element_power,
    element_current,
    power_at_voltage,
    parallel_element_resistance,
    power_density,
    floor_heat_flux,
    floor_surface_temperature,
    check_element_resistance>;

}  // namespace heating
}  // namespace v1
}  // namespace makegood
