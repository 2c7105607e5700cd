// SPDX-License-Identifier: MIT
// Resistance thermometers: platinum (IEC 60751), and silicon sensors with a rising curve (PTC).
// Subject: sensing.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace sensing {

inline constexpr source iec_60751{"IEC 60751:2008/2022 Industrial platinum resistance thermometers and platinum temperature sensors", "resistance-temperature relationship, Table 1"};
inline constexpr source silicon_curve{"generic curve of silicon spreading-resistance sensors", "R = R_25 (1 + a Δ + b Δ²)", "memory"};

namespace detail {
inline constexpr literal rtd_a = constant(3.9083e-3, unit::per_kelvin, "A");
inline constexpr literal rtd_a_squared = constant(3.9083e-3 * 3.9083e-3, unit::per_square_kelvin, "A²");
inline constexpr literal rtd_b = constant(-5.775e-7, unit::per_square_kelvin, "B");
inline constexpr literal rtd_c = constant(-4.183e-12, unit::per_fourth_kelvin, "C");
inline constexpr arg rtd_temperature_arg =
    arg{"temperature_c", "t", unit::celsius, between(-200, 850), "temperature of the sensor"}.usually(-20, 120);
inline constexpr arg rtd_r0 =
    arg{"r0_ohm", "R_0", unit::ohm, positive_to(1e6), "resistance at 0 °C"}.usually(100, 1000);
inline constexpr arg silicon_temperature =
    arg{"temperature_c", "t", unit::celsius, between(-100, 300), "temperature of the sensor"}.usually(0, 60).valid_in(between(-50, 150));
inline constexpr arg silicon_reference =
    arg{"reference_ohm", "R_25", unit::ohm, positive_to(1e6), "resistance at 25 °C"}.usually(900, 2100);
inline constexpr arg silicon_a =
    arg{"a_per_k", "a", unit::per_kelvin, between(1e-4, 0.1), "linear coefficient"}.usually(7.5e-3, 8.2e-3).otherwise(7.88e-3);
inline constexpr arg silicon_b =
    arg{"b_per_k2", "b", unit::per_square_kelvin, between(0, 1e-3), "square coefficient"}.usually(1.8e-5, 2.0e-5).otherwise(1.937e-5);
}  // namespace detail

inline constexpr auto rtd_resistance = formula(
    out{"rtd_resistance", "R", unit::ohm, "Resistance of a platinum sensor at a temperature (IEC 60751)."},
    in(detail::rtd_temperature_arg, detail::rtd_r0), iec_60751,
    [](auto t, auto r0) {
      auto above = from_zero(t);
      auto warm = 1.0 + detail::rtd_a * above + detail::rtd_b * square(above);
      auto cold = warm + detail::rtd_c * (above - constant(100.0, unit::kelvin)) * cube(above);
      return r0 * select(t < constant(0.0, unit::celsius), cold, warm);
    },
    remarks{"the standard's own curve; printed tables round to 0.01 Ω of 100 Ω", "R_0 at 0 °C"});

inline constexpr auto rtd_temperature = formula(
    out{"rtd_temperature", "t", unit::celsius, "Temperature of a platinum sensor from its resistance (IEC 60751, exact root also below 0 °C)."},
    in(arg{"resistance_ohm", "R", unit::ohm, positive_to(1e7), "resistance of the sensor, leads taken off"}.usually(95, 140),
       arg{"r0_ohm", "R_0", unit::ohm, positive_to(1e6), "resistance at 0 °C"}.usually(98, 102)),
    iec_60751,
    [](auto resistance, auto r0) {
      auto away = let("δ", unit::one, (resistance - r0) / r0);
      auto warm = 2.0 * away / (detail::rtd_a + sqrt(detail::rtd_a_squared + 4.0 * (detail::rtd_b * away)));
      auto cold = root<6>(
          "θ", unit::kelvin, warm,
          [&](const auto& x) {
            auto hundred = constant(100.0, unit::kelvin);
            return std::pair(detail::rtd_a * x + detail::rtd_b * square(x) + detail::rtd_c * (x - hundred) * cube(x) - away,
                             detail::rtd_a + 2.0 * (detail::rtd_b * x) + detail::rtd_c * (cube(x) + 3.0 * (x - hundred) * square(x)));
          },
          warm);
      return at_celsius(select(resistance < r0, cold, warm));
    },
    requires_that([](auto resistance, auto r0) { return resistance >= 0.185 * r0 && resistance <= 3.905 * r0; },
                  "the resistance is between 18.5 % and 390.5 % of R_0 (-200 to 850 °C)"),
    remarks{"root to rounding", "0 °C at R_0"});

inline constexpr column tolerance_columns[] = {{"a", unit::kelvin}, {"b", unit::one}};
inline constexpr choice_row tolerance_rows[] = {
    {"AA", "class AA", {0.1, 0.0017}, "IEC 60751:2008, tolerance classes"},
    {"A", "class A", {0.15, 0.002}, "IEC 60751:2008, tolerance classes"},
    {"B", "class B", {0.3, 0.005}, "IEC 60751:2008, tolerance classes"},
    {"C", "class C", {0.6, 0.01}, "IEC 60751:2008, tolerance classes (seen in a secondary print)"}};
inline constexpr choice_table tolerance_classes{tolerance_columns, tolerance_rows};

inline constexpr auto rtd_tolerance = formula(
    out{"rtd_tolerance", "Δt", unit::kelvin, "Permitted deviation of a platinum sensor of a tolerance class, plus or minus."},
    in(choice{"tolerance_class", tolerance_classes, "tolerance class"}, detail::rtd_temperature_arg),
    source{"IEC 60751:2008/2022 Industrial platinum resistance thermometers and platinum temperature sensors", "tolerance classes"},
    [](auto row, auto t) { return row[0] + row[1] * fabs(from_zero(t)); },
    remarks{"exact; the range over which a class holds depends on the construction (wire wound or film)", "the constant part at 0 °C"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(silicon_ptc_resistance_arguments, (temperature_c, reference_ohm), (a_per_k = T(7.88e-3), b_per_k2 = T(1.937e-5)));
inline constexpr auto silicon_ptc_resistance = formula(
    out{"silicon_ptc_resistance", "R", unit::ohm, "Resistance of a silicon sensor with a rising curve, from its resistance at 25 °C."},
    in<silicon_ptc_resistance_arguments>(detail::silicon_temperature, detail::silicon_reference, detail::silicon_a, detail::silicon_b), silicon_curve,
    [](auto t, auto reference, auto a, auto b) {
      auto away = let("Δ", unit::kelvin, t - constant(25.0, unit::celsius));
      return reference * (1.0 + a * away + b * square(away));
    },
    remarks{"1 to 2 K from 0 to 60 °C with the general coefficients", "the reference resistance at 25 °C"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(silicon_ptc_temperature_arguments, (resistance_ohm, reference_ohm), (a_per_k = T(7.88e-3), b_per_k2 = T(1.937e-5)));
inline constexpr auto silicon_ptc_temperature = formula(
    out{"silicon_ptc_temperature", "t", unit::celsius, "Temperature of a silicon sensor with a rising curve, from its resistance."},
    in<silicon_ptc_temperature_arguments>(
        arg{"resistance_ohm", "R", unit::ohm, positive_to(1e7), "resistance of the sensor"}.usually(800, 2600),
        detail::silicon_reference, detail::silicon_a, detail::silicon_b),
    silicon_curve,
    [](auto resistance, auto reference, auto a, auto b) {
      auto away = let("δ", unit::one, (resistance - reference) / reference);
      return constant(25.0, unit::celsius) + 2.0 * away / (a + sqrt(square(a) + 4.0 * b * away));
    },
    requires_that([](auto resistance, auto reference, auto a, auto b) { return square(a) + 4.0 * b * (resistance - reference) / reference > 0.0; },
                  "the resistance is above the lowest value of the curve"),
    valid_while([](auto resistance, auto reference, auto a, auto b) {
      const double away = (resistance - reference) / reference;
      const double t = 25.0 + 2.0 * away / (a + sqrt(square(a) + 4.0 * b * away));
      return t >= -50.0 && t <= 150.0;
    }, "the temperature lies outside -50 to 150 °C, where the curve is known to hold"),
    remarks{"1 to 2 K from 0 to 60 °C with the general coefficients", "25 °C at the reference resistance"});

}  // namespace sensing
}  // namespace v1
}  // namespace makegood
