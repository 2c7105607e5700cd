// SPDX-License-Identifier: MIT
// What the library calculates for lighting: one line an entry. The models are described in src/lighting.cpp.
#pragma once
#include "checks.hpp"
#include "formulas.hpp"

namespace makegood {
inline namespace v1 {
namespace lighting {

using entries = list<
    room_index,
    lumen_method_illuminance,
    lumen_method_lamps,
    maintenance_factor,
    point_illuminance,
    point_illuminance_vertical,
    luminous_intensity,
    luminous_intensity_from_flux,
    downlight_spacing,
    line_illuminance,
    check_illuminance>;

}  // namespace lighting
}  // namespace v1
}  // namespace makegood
