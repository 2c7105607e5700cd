// SPDX-License-Identifier: MIT
// Rulebook: temperatures of heated floors and of surfaces that are touched, power of appliances, meshes and devices before electric
// heating, from several standards. Each row says where it comes from, and whether it was read or recalled.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr rule heating_standards_rows[] = {
    {"floor_temperature", "occupied", comparator::at_most, {29.0}, {"EN 1264-3 / ISO 11855", "limits of floor surface temperature", "seen"}, "29 °C at a room of 20 °C"},
    {"floor_temperature", "edge", comparator::at_most, {35.0}, {"EN 1264-3 / ISO 11855", "limits of floor surface temperature", "memory"}, "35 °C in a strip along outer walls"},
    {"floor_temperature", "bathroom", comparator::at_most, {33.0}, {"EN 1264-3 / ISO 11855", "9 K above a room of 24 °C", "memory"}, "33 °C in a bathroom at 24 °C"},
    {"floor_temperature", "timber", comparator::at_most, {27.0}, {"rule of the trade for timber and resilient finishes", "", "common-practice"}, "27 °C under timber, laminate and resilient finishes"},
    {"floor_covering", "", comparator::at_most, {0.15}, {"EN 1264-2/-4", "thermal resistance of the covering", "memory"}, "0.15 m²·K/W (1.5 tog)"},
    {"power_density", "tile", comparator::at_most, {200.0}, {"rule of the trade for heated floors", "", "common-practice"}, "200 W/m² under tile"},
    {"power_density", "timber", comparator::at_most, {150.0}, {"rule of the trade for heated floors", "", "common-practice"}, "150 W/m² under timber; many makers 100 W/m²"},
    {"touch_temperature", "", comparator::at_most, {}, {"ISO 13732-1:2006", "burn thresholds", "memory"}, "below the burn threshold of the material and the time"},
    {"vulnerable_surface", "", comparator::at_most, {43.0}, {"HSE, Scalding and burning (health services web guidance)", "risk of burn injuries", "seen"}, "43 °C where vulnerable people are at risk"},
    {"power_input", "", comparator::at_most, {}, {"IEC 335-1:1991 = GOST R MEK 335-1-94", "10.1, Table 1", "seen"}, "deviation of the power input as tabulated"},
    {"room_heating", "", comparator::at_least, {}, {"EN 12831-1", "design heat loss", "memory"}, "heaters cover the design heat loss"},
    {"heating_rcd", "", comparator::at_most, {30.0}, {"IEC 60364-7-753", "753.411.3.2", "memory"}, "at most 30 mA"},
    {"additional_protection", "floor_heating", comparator::at_most, {30.0}, {"IEC 60364-7-753", "753.411.3.2", "memory"}, "at most 30 mA"},
    {"heating_mesh", "floor", comparator::at_most, {30.0}, {"BS 7671:2008", "753.411.3.2", "seen"}, "spacing of the mesh at most 30 mm"},
    {"heating_mesh", "wall", comparator::at_most, {3.0}, {"IEC 60364-7-753:2014", "foreword, significant changes", "seen"}, "spacing of the mesh at most 3 mm"},
    {"pad_rise", "", comparator::within, {30.0, 30.0}, {"rule of the trade for mirror pads", "", "common-practice"}, "within 30 % of the rise expected"},
};
inline constexpr rule_table heating_standards{"heating-standards", "Heated floors, rails, mirrors and appliances", "international", "EN 1264, ISO 13732-1, IEC 60335-1, IEC 60364-7-753 (as cited)",
                                              "2026-11-01", heating_standards_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
