// SPDX-License-Identifier: MIT
// What the library calculates for setting out: one line an entry. The models are described in src/setting_out.cpp.
#pragma once
#include "checks.hpp"
#include "formulas.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

using entries = list<
    spindle_speed,
    peripheral_speed,
    bend_saving,
    cord_length,
    parabola_sag,
    bend_radius,
    fixing_pull,
    fixing_shear,
    fixing_interaction,
    allowable_from_tests,
    greatest_proof_load,
    check_fixing,
    check_joist_hole,
    check_joist_hole_place,
    check_joist_hole_spacing,
    check_joist_hole_to_notch,
    check_joist_notch,
    check_joist_notch_place,
    check_joist_notch_length>;

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood
