// SPDX-License-Identifier: MIT
// Metals: resistance thermometers of copper and nickel, and heating alloys with their temperature coefficients.
// Subject: sensing. Alloys are known by their general names; the coefficients of one name differ between makers.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace sensing {

inline constexpr source gost_6651{"GOST 6651-2009 (same curves as OIML R 84:2003)", "copper and nickel tables"};
inline constexpr source linear_coefficient{"D. C. Kulshreshtha, Basic Electrical Engineering", "Example 2.17, R = R_0 (1 + α t)"};

// W = 1 + A t + B t²; below 0 °C also B_- t (t + 6.7) + C_- t³; above 100 °C also C_+ (t - 100) t². The curve ends at t_- and t_+;
// δ_100 is W - 1 at 100 °C.
inline constexpr column metal_columns[] = {{"A", unit::per_kelvin},        {"B", unit::per_square_kelvin}, {"B_-", unit::per_square_kelvin}, {"C_-", unit::per_cubic_kelvin},
                                           {"C_+", unit::per_cubic_kelvin}, {"t_-", unit::kelvin},          {"t_+", unit::kelvin},           {"δ_100", unit::one}};
inline constexpr choice_row metal_rows[] = {
    {"copper", "copper, α 0.00428", {4.28e-3, 0, -6.2032e-7, 8.5154e-10, 0, -180, 200, 0.428}, "GOST 6651-2009, copper table"},
    {"nickel", "nickel, α 0.00617", {5.4963e-3, 6.7556e-6, 0, 0, 9.2004e-9, -60, 180, 0.617186}, "GOST 6651-2009, nickel table"}};
inline constexpr choice_table metals{metal_columns, metal_rows};

namespace detail {
inline constexpr arg metal_temperature_arg =
    arg{"temperature_c", "t", unit::celsius, between(-180, 200), "temperature of the sensor"}.usually(-20, 120);
inline constexpr arg metal_r0 = arg{"r0_ohm", "R_0", unit::ohm, positive_to(1e6), "resistance at 0 °C"}.usually(50, 1000);
inline constexpr literal hundred_kelvin = constant(100.0, unit::kelvin);
inline constexpr literal copper_offset = constant(6.7, unit::kelvin);
/// R/R_0 - 1 in the three parts of the curve, t counted from 0 °C.
template <class Row, class T>
constexpr auto metal_warm(const Row& m, const T& t) { return m[0] * t + m[1] * square(t); }
template <class Row, class T>
constexpr auto metal_cold(const Row& m, const T& t) { return m[0] * t + m[1] * square(t) + m[2] * t * (t + copper_offset) + m[3] * cube(t); }
template <class Row, class T>
constexpr auto metal_hot(const Row& m, const T& t) { return m[0] * t + m[1] * square(t) + m[4] * (t - hundred_kelvin) * square(t); }
}  // namespace detail

inline constexpr auto metal_resistance = formula(
    out{"metal_resistance", "R", unit::ohm, "Resistance of a copper or nickel resistance thermometer at a temperature."},
    in(choice{"metal", metals, "metal and its coefficient from 0 to 100 °C"}, detail::metal_temperature_arg, detail::metal_r0), gost_6651,
    [](auto metal, auto t, auto r0) {
      auto above = from_zero(t);
      auto cold = detail::metal_cold(metal, above);
      auto warm = detail::metal_warm(metal, above);
      auto hot = detail::metal_hot(metal, above);
      return r0 * (1.0 + select(t < constant(0.0, unit::celsius), cold, select(t <= constant(100.0, unit::celsius), warm, hot)));
    },
    requires_that([](auto metal, auto t, auto) { return t >= metal[5] && t <= metal[6]; }, "the temperature lies on the metal's curve: copper -180 to 200 °C, nickel -60 to 180 °C"),
    remarks{"the standard's own curve; nickel of α 0.00618 is another one", "R_0 at 0 °C"});

inline constexpr auto metal_temperature = formula(
    out{"metal_temperature", "t", unit::celsius, "Temperature of a copper or nickel resistance thermometer from its resistance."},
    in(choice{"metal", metals, "metal and its coefficient from 0 to 100 °C"},
       arg{"resistance_ohm", "R", unit::ohm, positive_to(1e7), "resistance of the sensor, leads taken off"}.usually(92, 140),
       arg{"r0_ohm", "R_0", unit::ohm, positive_to(1e6), "resistance at 0 °C"}.usually(98, 102)),
    gost_6651,
    [](auto metal, auto resistance, auto r0) {
      auto away = let("δ", unit::one, (resistance - r0) / r0);
      auto warm = 2.0 * away / (metal[0] + sqrt(square(metal[0]) + 4.0 * (metal[1] * away)));
      auto cold = root<6>(
          "θ", unit::kelvin, warm,
          [&](const auto& x) {
            return std::pair(detail::metal_cold(metal, x) - away,
                             metal[0] + 2.0 * (metal[1] * x) + metal[2] * (2.0 * x + detail::copper_offset) + 3.0 * (metal[3] * square(x)));
          },
          warm);
      auto hot = root<6>(
          "θ", unit::kelvin, warm,
          [&](const auto& x) {
            return std::pair(detail::metal_hot(metal, x) - away, metal[0] + 2.0 * (metal[1] * x) + metal[4] * (3.0 * square(x) - 2.0 * (detail::hundred_kelvin * x)));
          },
          warm);
      return at_celsius(select(resistance < r0, cold, select(away <= metal[7], warm, hot)));
    },
    requires_that(  // a printed value at the end of the curve is rounded: 0.1 K more
        [](auto metal, auto resistance, auto r0) {
          return resistance >= r0 * (1.0 + detail::metal_cold(metal, 1.0005 * metal[5])) && resistance <= r0 * (1.0 + detail::metal_hot(metal, 1.0005 * metal[6]));
        },
        "the resistance lies on the metal's curve: copper -180 to 200 °C, nickel -60 to 180 °C"),
    remarks{"root to rounding", "0 °C at R_0"});

// α_20 and how far the coefficient of one name may lie from it.
inline constexpr column alloy_columns[] = {{"α_20", unit::per_kelvin}, {"Δα", unit::per_kelvin}};
inline constexpr choice_row alloy_rows[] = {
    {"copper", "copper", {4.041e-3, 1e-4}, "handbook table at 20 °C"},
    {"nickel", "nickel", {5.866e-3, 3e-4}, "handbook table at 20 °C"},
    {"constantan", "constantan", {-7.4e-5, 6e-5}, "handbook table at 20 °C"},
    {"nichrome", "nichrome", {1.7e-4, 2.3e-4}, "handbook table at 20 °C; other tables have up to 4e-4"},
    {"manganin", "manganin", {1.5e-5, 3e-5}, "handbook table at 20 °C (magnitude)"},
    {"platinum", "platinum", {3.729e-3, 2e-4}, "handbook table at 20 °C"},
    {"CuNi2", "copper-nickel, 2 % nickel", {1.3e-3, 3e-4}, "DIN 17471, recalled"},
    {"CuNi6", "copper-nickel, 6 % nickel", {7e-4, 2e-4}, "DIN 17471, recalled"},
    {"CuNi10", "copper-nickel, 10 % nickel", {4e-4, 5e-5}, "DIN 17471, recalled"},
    {"CuNi23Mn", "copper-nickel-manganese, 23 % nickel", {2.5e-4, 3e-5}, "DIN 17471, recalled"},
    {"CuNi44", "copper-nickel, 44 % nickel", {-2e-5, 6e-5}, "DIN 17471, recalled"},
    {"NiCr80-20", "nickel-chromium 80/20", {1.0e-4, 5e-5}, "DIN 17470, recalled"},
    {"CrAl25-5", "iron-chromium-aluminium 25/5", {3.5e-5, 2.5e-5}, "DIN 17470, recalled"},
    {"unknown", "an alloy that nobody knows: none to that of copper", {2e-3, 2.1e-3}, "the span of all of them"}};
inline constexpr choice_table alloys{alloy_columns, alloy_rows};

namespace detail {
inline constexpr arg alloy_temperature_arg =
    arg{"temperature_c", "t", unit::celsius, between(-100, 1000), "mean temperature of the wire"}.usually(0, 80).valid_in(between(-50, 250));
}
inline constexpr auto alloy_resistance = formula(
    out{"alloy_resistance", "R", unit::ohm, "Resistance of a heating element or wire at a temperature, from its resistance at 20 °C and its alloy."},
    in(choice{"alloy", alloys, "alloy of the wire"}, detail::alloy_temperature_arg,
       arg{"resistance_20_ohm", "R_20", unit::ohm, positive_to(1e9), "resistance at 20 °C"}.usually(15, 600)),
    linear_coefficient, [](auto alloy, auto t, auto resistance) { return resistance * (1.0 + alloy[0] * (t - constant(20.0, unit::celsius))); },
    requires_that([](auto alloy, auto t, auto) { return 1.0 + alloy[0] * (t - 20.0) > 0.0; }, "the straight line of resistance is above zero at this temperature"),
    remarks{"the coefficient of one name differs between makers by up to a third: CuNi2 from 1.0 to 1.6 per 1000 K", "the resistance at 20 °C itself at 20 °C"});

inline constexpr auto alloy_resistance_20 = formula(
    out{"alloy_resistance_20", "R_20", unit::ohm, "Resistance at 20 °C of a heating element or wire, from its resistance at another temperature and its alloy."},
    in(choice{"alloy", alloys, "alloy of the wire"}, detail::alloy_temperature_arg,
       arg{"resistance_ohm", "R", unit::ohm, positive_to(1e9), "resistance at that temperature"}.usually(15, 600)),
    linear_coefficient, [](auto alloy, auto t, auto resistance) { return resistance / (1.0 + alloy[0] * (t - constant(20.0, unit::celsius))); },
    requires_that([](auto alloy, auto t, auto) { return 1.0 + alloy[0] * (t - 20.0) > 0.0; }, "the straight line of resistance is above zero at this temperature"),
    remarks{"exact inverse of alloy_resistance", "the resistance itself at 20 °C"});

}  // namespace sensing
}  // namespace v1
}  // namespace makegood
