// SPDX-License-Identifier: MIT
// Checks of a temperature sensor: its resistance against its curve at the temperature that it should have.
// Subject: sensing. The band is the worst case: both tolerances stretched the same way.
#pragma once
#include <variant>
#include "../verdict.hpp"
#include "resistance.hpp"
#include "thermistor.hpp"

namespace makegood {
inline namespace v1 {
namespace sensing {

inline constexpr source sensor_band_practice{"rule of the trade for temperature sensors", "resistance and temperature tolerance, worst case of both", "common-practice"};
inline constexpr std::string_view sensor_caution =
    "Take the sensor off its controller before it is measured. One reading cannot tell a wrong type from a wrong temperature: a second temperature can.";

namespace detail {
inline constexpr arg measured_sensor =
    arg{"resistance_ohm", "R", unit::ohm, between(0, 1e9), "resistance of the sensor as read"}.usually(1000, 50000).read_by(reads::resistance);
inline constexpr arg sensor_place =
    arg{"temperature_c", "t", unit::celsius, between(-50, 200), "temperature at the sensor"}.usually(5, 40).read_by(reads::temperature);
inline constexpr arg temperature_tolerance =
    arg{"temperature_tolerance_k", "Δ_t", unit::kelvin, between(0, 40), "how far the sensor may be from the temperature that was read, plus or minus"}.usually(0.5, 3).otherwise(2.0);
constexpr arg resistance_tolerance(double otherwise) {
  return arg{"resistance_tolerance_percent", "p", unit::percent, between(0, 50), "tolerance of the sensor's resistance, plus or minus"}.usually(0.5, 10).otherwise(otherwise);
}
inline constexpr double ntc_percent = 5.0;
inline constexpr double rtd_percent = 0.5;      // 5 % would be 13 K
inline constexpr double silicon_percent = 2.0;  // 5 % would be 6 K
}  // namespace detail

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_ntc_sensor_arguments, (resistance_ohm, temperature_c, reference_ohm, reference_c, beta_k),
                                 (resistance_tolerance_percent = T(detail::ntc_percent), temperature_tolerance_k = T(2.0)));
inline constexpr auto check_ntc_sensor = check(
    out{"check_ntc_sensor", "R", unit::ohm, "Resistance of an NTC sensor against its beta curve at the temperature it should have."},
    in<check_ntc_sensor_arguments>(detail::measured_sensor, detail::sensor_place, detail::ntc_reference_ohm, detail::ntc_reference_c, detail::ntc_beta,
                                   detail::resistance_tolerance(detail::ntc_percent), detail::temperature_tolerance),
    rule_use{}, comparator::within, sensor_band_practice, [](auto resistance, auto, auto, auto, auto, auto, auto) { return resistance; },
    [](auto, auto, auto t, auto reference, auto t_reference, auto beta, auto tolerance, auto away) {
      return band{call(ntc_resistance, t + away, reference, t_reference, beta) * (1.0 - percent(tolerance)),
                  call(ntc_resistance, t - away, reference, t_reference, beta) * (1.0 + percent(tolerance))};
    },
    sensor_caution);

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_steinhart_hart_sensor_arguments, (resistance_ohm, temperature_c, a, b, c),
                                 (resistance_tolerance_percent = T(detail::ntc_percent), temperature_tolerance_k = T(2.0)));
inline constexpr auto check_steinhart_hart_sensor = check(
    out{"check_steinhart_hart_sensor", "R", unit::ohm, "Resistance of a thermistor against its Steinhart-Hart curve at the temperature it should have."},
    in<check_steinhart_hart_sensor_arguments>(detail::measured_sensor, detail::sensor_place, detail::steinhart_a, detail::steinhart_b, detail::steinhart_c,
                                              detail::resistance_tolerance(detail::ntc_percent), detail::temperature_tolerance),
    rule_use{}, comparator::within, sensor_band_practice, [](auto resistance, auto, auto, auto, auto, auto, auto) { return resistance; },
    [](auto, auto, auto t, auto a, auto b, auto c, auto tolerance, auto away) {
      return band{call(steinhart_hart_resistance, t + away, a, b, c) * (1.0 - percent(tolerance)),
                  call(steinhart_hart_resistance, t - away, a, b, c) * (1.0 + percent(tolerance))};
    },
    sensor_caution);

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_rtd_sensor_arguments, (resistance_ohm, temperature_c, r0_ohm),
                                 (resistance_tolerance_percent = T(detail::rtd_percent), temperature_tolerance_k = T(2.0)));
inline constexpr auto check_rtd_sensor = check(
    out{"check_rtd_sensor", "R", unit::ohm, "Resistance of a platinum sensor against its curve at the temperature it should have."},
    in<check_rtd_sensor_arguments>(
        arg{"resistance_ohm", "R", unit::ohm, between(0, 1e9), "resistance of the sensor as read, leads taken off"}.usually(90, 1200).read_by(reads::resistance),
        detail::sensor_place, detail::rtd_r0, detail::resistance_tolerance(detail::rtd_percent), detail::temperature_tolerance),
    rule_use{}, comparator::within, sensor_band_practice, [](auto resistance, auto, auto, auto, auto) { return resistance; },
    [](auto, auto, auto t, auto r0, auto tolerance, auto away) {
      return band{call(rtd_resistance, t - away, r0) * (1.0 - percent(tolerance)), call(rtd_resistance, t + away, r0) * (1.0 + percent(tolerance))};
    },
    sensor_caution);

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_silicon_ptc_sensor_arguments, (resistance_ohm, temperature_c, reference_ohm),
                                 (a_per_k = T(7.88e-3), b_per_k2 = T(1.937e-5), resistance_tolerance_percent = T(detail::silicon_percent),
                                  temperature_tolerance_k = T(2.0)));
inline constexpr auto check_silicon_ptc_sensor = check(
    out{"check_silicon_ptc_sensor", "R", unit::ohm, "Resistance of a silicon sensor against its rising curve at the temperature it should have."},
    in<check_silicon_ptc_sensor_arguments>(
        arg{"resistance_ohm", "R", unit::ohm, between(0, 1e9), "resistance of the sensor as read"}.usually(800, 2600).read_by(reads::resistance),
        detail::sensor_place, detail::silicon_reference, detail::silicon_a, detail::silicon_b, detail::resistance_tolerance(detail::silicon_percent),
        detail::temperature_tolerance),
    rule_use{}, comparator::within, sensor_band_practice, [](auto resistance, auto, auto, auto, auto, auto, auto) { return resistance; },
    [](auto, auto, auto t, auto reference, auto a, auto b, auto tolerance, auto away) {
      return band{call(silicon_ptc_resistance, t - away, reference, a, b) * (1.0 - percent(tolerance)),
                  call(silicon_ptc_resistance, t + away, reference, a, b) * (1.0 + percent(tolerance))};
    },
    sensor_caution);

/// The curves that a sensor can have, by their constants alone.
struct ntc_curve {
  double reference_ohm, reference_c, beta_k;
};
struct steinhart_hart_curve {
  double a, b, c;
};
struct rtd_curve {
  double r0_ohm;
};
struct silicon_ptc_curve {
  double reference_ohm;
  double a_per_k = 7.88e-3, b_per_k2 = 1.937e-5;
};
using curve = std::variant<ntc_curve, steinhart_hart_curve, rtd_curve, silicon_ptc_curve>;

/// One door for every curve, with the tolerances that its check has by default.
inline verdict check_sensor(const given& resistance_ohm, const given& temperature_c, const curve& is, const decision_rule& rule = {}) {
  if (const auto* ntc = std::get_if<ntc_curve>(&is))
    return check_ntc_sensor({.resistance_ohm = resistance_ohm, .temperature_c = temperature_c, .reference_ohm = ntc->reference_ohm,
                             .reference_c = ntc->reference_c, .beta_k = ntc->beta_k}, {}, rule);
  if (const auto* steinhart = std::get_if<steinhart_hart_curve>(&is))
    return check_steinhart_hart_sensor(
        {.resistance_ohm = resistance_ohm, .temperature_c = temperature_c, .a = steinhart->a, .b = steinhart->b, .c = steinhart->c}, {}, rule);
  if (const auto* rtd = std::get_if<rtd_curve>(&is))
    return check_rtd_sensor({.resistance_ohm = resistance_ohm, .temperature_c = temperature_c, .r0_ohm = rtd->r0_ohm}, {}, rule);
  const auto& silicon = std::get<silicon_ptc_curve>(is);
  return check_silicon_ptc_sensor({.resistance_ohm = resistance_ohm, .temperature_c = temperature_c, .reference_ohm = silicon.reference_ohm,
                                   .a_per_k = silicon.a_per_k, .b_per_k2 = silicon.b_per_k2}, {}, rule);
}

}  // namespace sensing
}  // namespace v1
}  // namespace makegood
