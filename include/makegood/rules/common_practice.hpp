// SPDX-License-Identifier: MIT
// Rulebook: rules of the trade that stand in no standard that was read. Every row is graded common-practice.
// Name it only where a maker's figure is missing; a derived book with the maker's figure is better.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr rule common_practice_rows[] = {
    // lower %, upper % of the rated resistance
    {"element_resistance_band", "", comparator::within, {5.0, 10.0}, {"rule of the trade for heating mats and cables", "", "common-practice"}, "-5 % / +10 % of the rated resistance"},
    {"sensor_band", "", comparator::within, {5.0, 2.0}, {"rule of the trade for floor sensors", "", "common-practice"}, "5 % of the resistance and 2 K of the temperature"},
    {"warm_cable_factor", "", comparator::at_most, {0.8}, {"rule of thumb for readings on cold cable", "", "common-practice"}, "a cold reading is held to 0.8 of the limit"},
    {"bonding_continuity", "", comparator::at_most, {0.05}, {"rule of the trade for a bonding conductor and its clamps", "", "common-practice"}, "0.05 Ω"},
};
inline constexpr rule_table common_practice{"common-practice", "Rules of the trade", "none", "2026", "2026-11-01", common_practice_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
