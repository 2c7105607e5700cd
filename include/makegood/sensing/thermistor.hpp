// SPDX-License-Identifier: MIT
// Thermistors with a falling curve (NTC): the beta equation and the Steinhart-Hart equation, both ways.
// Subject: sensing. Coefficients of Steinhart-Hart belong to the resistance in ohms.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace sensing {

inline constexpr source beta_equation{"E. O. Doebelin and D. N. Manik, Measurement Systems", "thermistors, Example 8.4"};
inline constexpr source steinhart_hart_1968{"Steinhart and Hart, Deep-Sea Research 15 (1968) 497", "1/T = a + b ln R + c (ln R)³", "memory"};

namespace detail {
inline constexpr arg sensor_temperature =
    arg{"temperature_c", "t", unit::celsius, between(-150, 500), "temperature of the sensor"}.usually(0, 50).valid_in(between(-60, 150));
inline constexpr arg sensor_resistance =
    arg{"resistance_ohm", "R", unit::ohm, positive_to(1e9), "resistance of the sensor"}.usually(1000, 50000);
inline constexpr arg ntc_reference_ohm =
    arg{"reference_ohm", "R_0", unit::ohm, positive_to(1e9), "resistance at the reference temperature"}.usually(2000, 50000);
inline constexpr arg ntc_reference_c =
    arg{"reference_c", "t_0", unit::celsius, between(-150, 500), "reference temperature"}.usually(20, 25);
inline constexpr arg ntc_beta = arg{"beta_k", "B", unit::kelvin, between(100, 20000), "beta value"}.usually(3000, 4500);
inline constexpr arg steinhart_a = arg{"a", "a", unit::per_kelvin, between(-0.1, 0.1), "first coefficient"}.usually(8e-4, 1.5e-3);
inline constexpr arg steinhart_b = arg{"b", "b", unit::per_kelvin, positive_to(0.1), "second coefficient"}.usually(2e-4, 3e-4);
inline constexpr arg steinhart_c = arg{"c", "c", unit::per_kelvin, between(-1e-4, 1e-4), "third coefficient; may be 0"}.usually(5e-8, 3e-7);
}  // namespace detail

MAKEGOOD_ARGUMENTS(ntc_resistance_arguments, (temperature_c, reference_ohm, reference_c, beta_k));
inline constexpr auto ntc_resistance = formula(
    out{"ntc_resistance", "R", unit::ohm, "Resistance of an NTC thermistor at a temperature, from its beta value."},
    in<ntc_resistance_arguments>(detail::sensor_temperature, detail::ntc_reference_ohm, detail::ntc_reference_c, detail::ntc_beta), beta_equation,
    [](auto t, auto reference, auto t_reference, auto beta) {
      return reference * exp(beta * (t_reference - t) / (kelvin(t) * kelvin(t_reference)));
    },
    remarks{"a constant beta errs by 0.1 to 0.3 K from 0 to 50 °C and more outside", "the reference resistance at the reference temperature"});

MAKEGOOD_ARGUMENTS(ntc_temperature_arguments, (resistance_ohm, reference_ohm, reference_c, beta_k));
inline constexpr auto ntc_temperature = formula(
    out{"ntc_temperature", "t", unit::celsius, "Temperature of an NTC thermistor from its resistance and beta value."},
    in<ntc_temperature_arguments>(detail::sensor_resistance, detail::ntc_reference_ohm, detail::ntc_reference_c, detail::ntc_beta), beta_equation,
    [](auto resistance, auto reference, auto t_reference, auto beta) {
      auto zero = let("T_0", unit::kelvin, kelvin(t_reference));
      auto away = let("λ", unit::one, log_quotient(resistance, reference));
      return t_reference - square(zero) * away / (beta + zero * away);  // T_0 B/(B + T_0 λ), without the difference of two inverses
    },
    requires_that([](auto resistance, auto reference, auto t_reference, auto beta) { return beta + kelvin(t_reference) * log(resistance / reference) > 0.0; },
                  "the resistance is above the curve's value at endless temperature, R_0 exp(-B/T_0)"),
    remarks{"a constant beta errs by 0.1 to 0.3 K from 0 to 50 °C and more outside", "the reference temperature at the reference resistance"});

MAKEGOOD_ARGUMENTS(beta_from_two_points_arguments, (temperature_1_c, resistance_1_ohm, temperature_2_c, resistance_2_ohm));
inline constexpr auto beta_from_two_points = formula(
    out{"beta_from_two_points", "B", unit::kelvin, "Beta value of a thermistor from its resistance at two temperatures; negative if the resistance rises."},
    in<beta_from_two_points_arguments>(
        arg{"temperature_1_c", "t_1", unit::celsius, between(-150, 500), "first temperature"}.usually(0, 25),
        arg{"resistance_1_ohm", "R_1", unit::ohm, positive_to(1e9), "resistance there"}.usually(8000, 35000),
        arg{"temperature_2_c", "t_2", unit::celsius, between(-150, 500), "second temperature"}.usually(30, 85),
        arg{"resistance_2_ohm", "R_2", unit::ohm, positive_to(1e9), "resistance there"}.usually(1000, 7000)),
    beta_equation,
    [](auto t_1, auto resistance_1, auto t_2, auto resistance_2) {
      // ln(R_1/R_2) from the smaller one, so that no digit is lost where they hardly differ nor where one is far below the other
      auto ratio = select(resistance_1 < resistance_2, -log1p((resistance_2 - resistance_1) / resistance_1),
                          log1p((resistance_1 - resistance_2) / resistance_2));
      return ratio * kelvin(t_1) * kelvin(t_2) / (t_2 - t_1);
    },
    requires_that([](auto t_1, auto, auto t_2, auto) { return t_1 < t_2 || t_2 < t_1; }, "the two temperatures differ"),
    remarks{"exact to rounding; the value belongs to this pair of temperatures", "0 for two equal resistances"});

MAKEGOOD_ARGUMENTS(steinhart_hart_temperature_arguments, (resistance_ohm, a, b, c));
inline constexpr auto steinhart_hart_temperature = formula(
    out{"steinhart_hart_temperature", "t", unit::celsius, "Temperature of a thermistor from its resistance by the Steinhart-Hart equation."},
    in<steinhart_hart_temperature_arguments>(detail::sensor_resistance, detail::steinhart_a, detail::steinhart_b, detail::steinhart_c),
    steinhart_hart_1968,
    [](auto resistance, auto a, auto b, auto c) {
      auto x = let("λ", unit::one, log(magnitude(resistance, unit::ohm)));
      return celsius(1.0 / (a + b * x + c * cube(x)));
    },
    requires_that(
        [](auto resistance, auto a, auto b, auto c) {
          const auto x = log(resistance);
          return a + b * x + c * cube(x) > 0.0;
        },
        "a + b ln R + c (ln R)³ is above zero: these coefficients belong to another unit of resistance, or to another sensor"),
    remarks{"some 10 mK over a span of 50 to 100 K when fitted there", ""});

MAKEGOOD_ARGUMENTS(steinhart_hart_resistance_arguments, (temperature_c, a, b, c));
inline constexpr auto steinhart_hart_resistance = formula(
    out{"steinhart_hart_resistance", "R", unit::ohm, "Resistance of a thermistor at a temperature by the Steinhart-Hart equation."},
    in<steinhart_hart_resistance_arguments>(detail::sensor_temperature, detail::steinhart_a, detail::steinhart_b, detail::steinhart_c),
    steinhart_hart_1968,
    [](auto t, auto a, auto b, auto c) {
      auto y = let("y", unit::per_kelvin, 1.0 / kelvin(t) - a);
      // first guess: whichever of the straight line and the cube alone lies nearer to zero
      auto cube_alone = attach(cbrt(magnitude(c * square(y), unit::per_cubic_kelvin)), unit::per_kelvin);
      auto x = root<10>(
          "λ", unit::one, y / maximum(b, cube_alone),
          [&](const auto& s) { return std::pair(b * s + c * cube(s) - y, b + 3.0 * c * square(s)); }, y);
      return attach(exp(x), unit::ohm);
    },
    requires_that(
        [](auto t, auto a, auto b, auto c) {
          const auto y = 1.0 / kelvin(t) - a;
          return c >= 0.0 || -6.75 * c * square(y) <= 0.95 * cube(b);
        },
        "with a negative c the curve rises steadily as far as this temperature, and a little further"),
    remarks{"root of the equation to rounding", "with c = 0 the beta equation in another form"});

}  // namespace sensing
}  // namespace v1
}  // namespace makegood
