// SPDX-License-Identifier: MIT
// Mirrors that are kept clear: dew point against glass, power, time to clear, and whether a pad does what it should.
// Subject: heating.
#pragma once
#include "../air/moist_air.hpp"
#include "../formula.hpp"
#include "rooms.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr source glass_balance{"balance of heat of a pane", "(h + h_b) A (t_d + margin - t_g)", "derived"};

namespace detail {
inline constexpr arg pane_area = arg{"area_m2", "A", unit::square_metre, positive_to(100), "area of the pad"}.usually(0.1, 1);
inline constexpr arg pane_thickness = arg{"thickness_mm", "d", unit::millimetre, positive_to(100), "thickness of the glass"}.usually(3, 8);
inline constexpr arg front_coefficient =
    arg{"coefficient_w_per_m2_k", "h", unit::watt_per_square_metre_kelvin, positive_to(1000), "loss of the pane to both sides: 8 for a front alone, convection and radiation together"}.usually(6, 14);
inline constexpr literal glass_heat = constant(1.875e6, unit::joule_per_cubic_metre_kelvin, "ρ c");  // 2500 kg/m³ times 750 J/(kg·K)
}  // namespace detail

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(mirror_clear_power_arguments, (air_c, relative_humidity_percent, glass_c, area_m2), (coefficient_w_per_m2_k = T(8.0), back_w_per_m2_k = T(0.0), margin_k = T(1.0)));
inline constexpr auto mirror_clear_power = formula(
    out{"mirror_clear_power", "P", unit::watt, "Power that keeps a mirror above the dew point of the room's air by a margin."},
    in<mirror_clear_power_arguments>(
        arg{"air_c", "t", unit::celsius, between(-20, 60), "temperature of the air"}.usually(20, 28), arg{"relative_humidity_percent", "φ", unit::percent, positive_to(100), "relative humidity of the air"}.usually(85, 100),
        arg{"glass_c", "t_g", unit::celsius, between(-30, 60), "temperature of the glass without heat"}.usually(10, 16), detail::pane_area,
        arg{"coefficient_w_per_m2_k", "h", unit::watt_per_square_metre_kelvin, positive_to(1000), "loss of the front, convection and radiation together"}.usually(6, 12).otherwise(8),
        arg{"back_w_per_m2_k", "h_b", unit::watt_per_square_metre_kelvin, between(0, 1000), "loss of the back to the wall: 0.1 to 6"}.usually(0, 4).otherwise(0),
        arg{"margin_k", "m", unit::kelvin, between(0, 20), "how far above the dew point"}.usually(0.5, 2).otherwise(1)),
    glass_balance,
    [](auto t, auto humidity, auto glass, auto area, auto front, auto back, auto margin) {
      auto dew = call(air::dew_point_magnus, t, humidity);
      auto rise = let("ΔT", unit::kelvin, maximum(dew - glass + margin, constant(0.0, unit::kelvin)));
      return (front + back) * area * rise;
    },
    remarks{"steady; the coefficient is known to a fifth; a pane that warms draws condensed water off more slowly than it keeps clear", "0 W where the glass is above the dew point anyway"});

MAKEGOOD_ARGUMENTS(mirror_clear_time_arguments, (power_w, area_m2, thickness_mm, coefficient_w_per_m2_k, glass_c, target_c));
inline constexpr auto mirror_clear_time = formula(
    out{"mirror_clear_time", "t", unit::second, "Time until a heated pane comes from cold to the temperature at which it stays clear."},
    in<mirror_clear_time_arguments>(arg{"power_w", "P", unit::watt, positive_to(1e4), "power of the pad"}.usually(60, 200), arg{"area_m2", "A", unit::square_metre, positive_to(100), "area of the pad"}.usually(0.1, 0.5),
                                    detail::pane_thickness, detail::front_coefficient, arg{"glass_c", "t_g", unit::celsius, between(-30, 60), "temperature of the glass and of what is around it, cold"}.usually(14, 20),
                                    arg{"target_c", "t_1", unit::celsius, between(-30, 100), "temperature to reach: dew point and margin"}.usually(21, 24)),
    source{"J. P. Holman, Heat Transfer (SI units)", "lumped capacity, Example 4-1; glass 2500 kg/m³, 750 J/(kg·K) from EN 12524"},
    [](auto power, auto area, auto thickness, auto coefficient, auto glass, auto target) {
      auto loss = let("H", unit::watt_per_kelvin, coefficient * area);
      auto capacity = let("C", unit::joule_per_kelvin, detail::glass_heat * (milli(thickness) * area));
      return call(warm_up_time, capacity, power, loss, glass, target, glass);
    },
    requires_that([](auto power, auto area, auto, auto coefficient, auto glass, auto target) { return target >= glass && coefficient * area * (target - glass) < power; },
                  "the power brings the glass above the target: (t_1 - t_g) h A is below P"),
    remarks{"from the moment the pad is on, dry glass; water on it takes 2.4 kJ a gram more", "0 s where the glass is at the target already"});

MAKEGOOD_ARGUMENTS(pad_temperature_rise_arguments, (power_w, area_m2, thickness_mm, coefficient_w_per_m2_k, time_s));
inline constexpr auto pad_temperature_rise = formula(
    out{"pad_temperature_rise", "ΔT", unit::kelvin, "How much a heated pane warms in a time, if the whole pad works."},
    in<pad_temperature_rise_arguments>(arg{"power_w", "P", unit::watt, positive_to(1e4), "power of the pad"}.usually(20, 200), detail::pane_area, detail::pane_thickness, detail::front_coefficient,
                                       arg{"time_s", "t", unit::second, positive_to(1e6), "time since it was switched on"}.usually(60, 3600)),
    source{"J. P. Holman, Heat Transfer (SI units)", "lumped capacity, Example 4-1; glass 2500 kg/m³, 750 J/(kg·K) from EN 12524"},
    [](auto power, auto area, auto thickness, auto coefficient, auto time) {
      auto loss = let("H", unit::watt_per_kelvin, coefficient * area);
      auto capacity = let("C", unit::joule_per_kelvin, detail::glass_heat * (milli(thickness) * area));
      auto half = let("θ", unit::one, tanh(0.5 * (time * loss / capacity)));  // 1 - exp(-2 x) = 2 tanh x/(1 + tanh x), without a difference
      return power / loss * (2.0 * half / (1.0 + half));
    },
    remarks{"of the glass over the pad; the coefficient is known to a fifth", ""});

}  // namespace heating
}  // namespace v1
}  // namespace makegood
