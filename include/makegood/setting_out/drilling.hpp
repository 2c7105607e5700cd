// SPDX-License-Identifier: MIT
// Drilling: spindle and peripheral speed.
// Subject: setting_out.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

namespace unit {
using namespace makegood::unit;
inline constexpr unit_t per_minute{"1/min", {0, 0, -2, 0, 0, 0}, 1.0 / 60.0, false, {}};
inline constexpr unit_t metre_per_minute{"m/min", {2, 0, -2, 0, 0, 0}, 1.0 / 60.0, false, {}};
inline constexpr unit_slip newton_slips[] = {{1e3, "kN"}, {9.80665, "kg"}};
inline constexpr unit_t newton{"N", {2, 2, -4, 0, 0, 0}, 1.0, false, newton_slips};
}  // namespace unit

namespace detail {
inline constexpr literal pi = constant(3.14159265358979324, unit::one, "π");
inline constexpr arg drill_diameter = arg{"diameter_mm", "d", unit::millimetre, positive_to(1000), "diameter of the drill or core"}.usually(3, 120);
inline constexpr source peripheral_equation{"University of Florida, EML2322L, Drilling speeds and feeds", "eq. 2 (metric form)"};
}  // namespace detail

inline constexpr auto spindle_speed = formula(
    out{"spindle_speed", "n", unit::per_minute, "Speed of the spindle for a cutting speed at the rim of the drill. The cutting speed comes from whoever made the drill: there is none by default."},
    in(detail::drill_diameter, arg{"cutting_speed_m_per_min", "v", unit::metre_per_minute, between(0, 1e4), "cutting speed at the rim, from the maker of the drill or a table for the material"}.usually(5, 120)),
    detail::peripheral_equation, [](auto diameter, auto speed) { return speed / (detail::pi * milli(diameter)); },
    remarks{"exact to rounding; the workshop rule 4 CS/D in feet and inches gives 4.7 % more", "0 without cutting speed; a larger core turns slower in proportion"});

inline constexpr auto peripheral_speed = formula(
    out{"peripheral_speed", "v", unit::metre_per_minute, "Speed of the rim of a drill or core at a speed of the spindle."},
    in(detail::drill_diameter, arg{"spindle_speed_per_min", "n", unit::per_minute, between(0, 1e6), "speed of the spindle"}.usually(100, 3000)), detail::peripheral_equation,
    [](auto diameter, auto speed) { return detail::pi * milli(diameter) * speed; }, remarks{"exact to rounding", "0 at rest"});

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood
