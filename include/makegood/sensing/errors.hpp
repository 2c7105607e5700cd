// SPDX-License-Identifier: MIT
// What makes a temperature sensor read wrong: leads, damp across it, its own heat, its tolerances.
// Subject: sensing. An error is what the reading has too much: positive where the temperature looks higher than it is.
#pragma once
#include "../formula.hpp"
#include "resistance.hpp"
#include "thermistor.hpp"

namespace makegood {
inline namespace v1 {
namespace sensing {

inline constexpr source lead_example{"K. Krishnaswamy and S. Vijayachitra, Industrial Instrumentation", "Example 1.3, p. 54"};
inline constexpr source in_parallel{"Ohm's law for two ways in parallel", "R R_s/(R + R_s)", "derived"};
inline constexpr source beta_errors{"beta equation turned round", "T²/(B - T x) of ln(reading/R)", "derived"};

namespace detail {
inline constexpr arg lead_arg = arg{"lead_ohm", "R_L", unit::ohm, between(0, 1e6), "resistance in series: both leads, a joint"}.usually(0.1, 500);
inline constexpr arg shunt_arg = arg{"shunt_ohm", "R_s", unit::ohm, positive_to(1e12), "resistance across the sensor, such as damp in a joint"}.usually(50000, 5e6);
inline constexpr arg true_sensor_ohm = arg{"resistance_ohm", "R", unit::ohm, positive_to(1e9), "resistance of the sensor alone"}.usually(1000, 50000);
}  // namespace detail

inline constexpr auto lead_resistance_error_k = formula(
    out{"lead_resistance_error_k", "ΔT", unit::kelvin, "Error of a two-wire reading by what is in series with the sensor, from the slope of its curve."},
    in(detail::lead_arg, arg{"slope_ohm_per_k", "s", unit::ohm_per_kelvin, between(-1e7, 1e7), "slope of the curve there: 0.385 for 100 Ω platinum, negative for an NTC"}.usually(0.3, 4)),
    lead_example, [](auto lead, auto slope) { return lead / slope; },
    requires_that([](auto, auto slope) { return slope < 0.0 || slope > 0.0; }, "the slope is not zero"),
    remarks{"first order: exact for a straight curve; an NTC has its own formula", "0 K without resistance"});

inline constexpr auto rtd_lead_error_k = formula(
    out{"rtd_lead_error_k", "ΔT", unit::kelvin, "Error of a two-wire reading of a platinum sensor from 0 °C up, by what is in series with it."},
    in(arg{"temperature_c", "t", unit::celsius, between(0, 850), "temperature of the sensor"}.usually(0, 120), arg{"lead_ohm", "R_L", unit::ohm, between(0, 1e5), "resistance in series: both leads, a joint"}.usually(0.1, 10),
       detail::rtd_r0),
    iec_60751,
    [](auto t, auto lead, auto r0) {
      auto above = from_zero(t);
      auto slope = let("s", unit::per_kelvin, detail::rtd_a + 2.0 * (detail::rtd_b * above));  // (A + 2 B t), then the root of B x² + s x = R_L/R_0
      auto more = let("δ", unit::one, lead / r0);
      return 2.0 * more / (slope + sqrt(square(slope) + 4.0 * (detail::rtd_b * more)));
    },
    requires_that([](auto t, auto lead, auto r0) { return call(rtd_resistance, t, r0) + lead <= 3.905 * r0; }, "sensor and leads together lie on the curve (up to 850 °C)"),
    remarks{"exact root of the standard's equation", "0 K without leads"});

MAKEGOOD_ARGUMENTS(ntc_lead_error_k_arguments, (temperature_c, lead_ohm, reference_ohm, reference_c, beta_k));
inline constexpr auto ntc_lead_error_k = formula(
    out{"ntc_lead_error_k", "ΔT", unit::kelvin, "Error of an NTC reading by what is in series with it: it reads low, so the heat comes on late and stays on."},
    in<ntc_lead_error_k_arguments>(detail::sensor_temperature, detail::lead_arg, detail::ntc_reference_ohm, detail::ntc_reference_c, detail::ntc_beta), beta_errors,
    [](auto t, auto lead, auto reference, auto t_reference, auto beta) {
      auto resistance = call(ntc_resistance, t, reference, t_reference, beta);
      auto kelvins = let("T", unit::kelvin, kelvin(t));
      auto x = let("x", unit::one, log1p(lead / resistance));
      return -(square(kelvins) * x / (beta + kelvins * x));
    },
    remarks{"exact for the beta equation", "0 K without resistance in series"});

MAKEGOOD_ARGUMENTS(ntc_shunt_error_k_arguments, (temperature_c, shunt_ohm, reference_ohm, reference_c, beta_k));
inline constexpr auto ntc_shunt_error_k = formula(
    out{"ntc_shunt_error_k", "ΔT", unit::kelvin, "Error of an NTC reading by a resistance across it (damp): it reads high, so the heat goes off early."},
    in<ntc_shunt_error_k_arguments>(detail::sensor_temperature, detail::shunt_arg, detail::ntc_reference_ohm, detail::ntc_reference_c, detail::ntc_beta), beta_errors,
    [](auto t, auto shunt, auto reference, auto t_reference, auto beta) {
      auto resistance = call(ntc_resistance, t, reference, t_reference, beta);
      auto kelvins = let("T", unit::kelvin, kelvin(t));
      auto x = let("x", unit::one, log1p(resistance / shunt));
      return square(kelvins) * x / (beta - kelvins * x);
    },
    requires_that(
        [](auto t, auto shunt, auto reference, auto t_reference, auto beta) {
          return beta > kelvin(t) * log1p(reference * exp(beta * (t_reference - t) / (kelvin(t) * kelvin(t_reference))) / shunt);
        },
        "what is read is above the curve's value at endless temperature"),
    remarks{"exact for the beta equation", "nothing to speak of with an endless resistance across it"});

inline constexpr auto shunted_resistance = formula(
    out{"shunted_resistance", "R_p", unit::ohm, "Resistance that is read where a shunt lies across a sensor."}, in(detail::true_sensor_ohm, detail::shunt_arg), in_parallel,
    [](auto resistance, auto shunt) { return resistance * (shunt / (resistance + shunt)); }, remarks{"exact to rounding", "half for a shunt as large as the sensor"});

inline constexpr auto shunt_resistance = formula(
    out{"shunt_resistance", "R_s", unit::ohm, "Resistance across a sensor that explains a reading which is too low."},
    in(arg{"resistance_ohm", "R", unit::ohm, positive_to(1e9), "resistance that the sensor should have"}.usually(9000, 50000),
       arg{"reading_ohm", "R_p", unit::ohm, positive_to(1e9), "resistance as read"}.usually(500, 8000)),
    in_parallel, [](auto resistance, auto reading) { return resistance * (reading / (resistance - reading)); },
    requires_that([](auto resistance, auto reading) { return reading < resistance; }, "the reading is below what the sensor should have"),
    remarks{"exact inverse of shunted_resistance; ill-conditioned where the two hardly differ", ""});

inline constexpr auto self_heating_k = formula(
    out{"self_heating_k", "ΔT", unit::kelvin, "How much warmer a sensor is than its surroundings by the power that it takes."},
    in(arg{"power_mw", "P", unit::milliwatt, between(0, 1e5), "power in the sensor"}.usually(0.05, 10),
       arg{"dissipation_mw_per_k", "δ", unit::milliwatt_per_kelvin, positive_to(1e5), "dissipation factor: 1 to 3 for a small bead in still air, more in screed"}.usually(1, 35)),
    source{"J. P. Bentley, Principles of Measurement Systems, 3rd ed.", "resistive sensing elements, self-heating"}, [](auto power, auto dissipation) { return power / dissipation; },
    remarks{"that of the dissipation factor, which depends on what the sensor lies in", "0 K without power"});

inline constexpr auto divider_sensor_power = formula(
    out{"divider_sensor_power", "P", unit::milliwatt, "Power in a sensor that is read through a divider with one resistor."},
    in(arg{"supply_v", "U", unit::volt, between(0, 1000), "supply of the divider"}.usually(1, 12), arg{"series_ohm", "R_1", unit::ohm, between(0, 1e9), "resistor in series"}.usually(2000, 40000),
       detail::true_sensor_ohm),
    source{"Ohm's and Joule's laws", "U² R/(R_1 + R)²", "derived"},
    [](auto supply, auto series, auto resistance) {
      auto current = let("I", unit::ampere, supply / (series + resistance));
      return in_milli(square(current) * resistance);
    },
    remarks{"exact to rounding; a controller that samples heats less", "0 mW without supply"});

inline constexpr auto ntc_sensitivity = formula(
    out{"ntc_sensitivity", "α", unit::percent_per_kelvin, "Relative change of an NTC's resistance with temperature: negative, -B/T²."}, in(detail::sensor_temperature, detail::ntc_beta), beta_equation,
    [](auto t, auto beta) { return in_percent(-(beta / square(kelvin(t)))); }, remarks{"exact for the beta equation", ""});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(ntc_tolerance_arguments, (temperature_c, beta_k, resistance_tolerance_percent, beta_tolerance_percent), (reference_c = T(25.0)));
namespace detail {
inline constexpr arg r25_tolerance = arg{"resistance_tolerance_percent", "p_R", unit::percent, between(0, 50), "tolerance of the reference resistance, plus or minus"}.usually(0.5, 10);
inline constexpr arg beta_tolerance = arg{"beta_tolerance_percent", "p_B", unit::percent, between(0, 20), "tolerance of beta, plus or minus"}.usually(0.3, 3);
inline constexpr arg reference_25 = arg{"reference_c", "t_0", unit::celsius, between(-150, 500), "reference temperature"}.usually(20, 25).otherwise(25);
inline constexpr source tolerance_rule{"first-order propagation of the beta equation", "(T²/B) ΔR/R and T (1 - T/T_0) ΔB/B", "derived"};
}  // namespace detail
inline constexpr auto ntc_tolerance = formula(
    out{"ntc_tolerance", "ΔT", unit::kelvin, "How far an NTC may be from its temperature by its tolerances, worst case: both the same way."},
    in<ntc_tolerance_arguments>(detail::sensor_temperature, detail::ntc_beta, detail::r25_tolerance, detail::beta_tolerance, detail::reference_25), detail::tolerance_rule,
    [](auto t, auto beta, auto resistance, auto of_beta, auto t_reference) {
      auto kelvins = let("T", unit::kelvin, kelvin(t));
      auto by_resistance = let("Δ_R", unit::kelvin, square(kelvins) / beta * percent(resistance));
      auto by_beta = let("Δ_B", unit::kelvin, kelvins * fabs((t - t_reference) / kelvin(t_reference)) * percent(of_beta));
      return by_resistance + by_beta;
    },
    remarks{"first order: within a few per cent of itself for tolerances up to 10 %", "at the reference temperature beta has no part"});
inline constexpr auto ntc_tolerance_standard = formula(
    out{"ntc_tolerance_standard", "u", unit::kelvin, "Standard uncertainty of an NTC's temperature by its tolerances, each taken as rectangular and apart from the other."},
    in<ntc_tolerance_arguments>(detail::sensor_temperature, detail::ntc_beta, detail::r25_tolerance, detail::beta_tolerance, detail::reference_25),
    source{"JCGM 100:2008 (GUM)", "4.3.7, half-width/√3, root sum of squares"},
    [](auto t, auto beta, auto resistance, auto of_beta, auto t_reference) {
      auto kelvins = let("T", unit::kelvin, kelvin(t));
      auto by_resistance = let("Δ_R", unit::kelvin, square(kelvins) / beta * percent(resistance));
      auto by_beta = let("Δ_B", unit::kelvin, kelvins * ((t - t_reference) / kelvin(t_reference)) * percent(of_beta));
      return sqrt((square(by_resistance) + square(by_beta)) / 3.0);
    },
    requires_that([](auto, auto, auto resistance, auto of_beta, auto) { return resistance + of_beta > 0.0; }, "at least one tolerance is above zero"),
    remarks{"sensors of one lot share their errors: take ntc_tolerance then", "at the reference temperature beta has no part"});

inline constexpr auto rtd_tolerance_ohm = formula(
    out{"rtd_tolerance_ohm", "ΔR", unit::ohm, "Permitted deviation of a platinum sensor of a tolerance class in ohms, plus or minus: the deviation in kelvin times the local slope."},
    in(choice{"tolerance_class", tolerance_classes, "tolerance class"}, detail::rtd_temperature_arg, detail::rtd_r0),
    source{"Tolerances for Pt100 detectors according to IEC 60751 (1995), one-page table", "ohm columns"},
    [](auto row, auto t, auto r0) {
      auto above = from_zero(t);
      auto hundred = constant(100.0, unit::kelvin);
      auto warm = detail::rtd_a + 2.0 * (detail::rtd_b * above);
      auto cold = warm + detail::rtd_c * (cube(above) + 3.0 * (above - hundred) * square(above));
      auto slope = let("s", unit::per_kelvin, select(t < constant(0.0, unit::celsius), cold, warm));
      return r0 * slope * call(rtd_tolerance, row, t);
    },
    remarks{"exact; 0.385 Ω/K is the mean from 0 to 100 °C only", "the constant part at 0 °C"});

inline constexpr auto switching_ptc_coefficient = formula(
    out{"switching_ptc_coefficient", "α", unit::percent_per_kelvin, "Temperature coefficient of a switching PTC on the steep part of its curve."},
    in<beta_from_two_points_arguments>(
        arg{"temperature_1_c", "t_1", unit::celsius, between(-50, 300), "first temperature"}.usually(60, 80),
        arg{"resistance_1_ohm", "R_1", unit::ohm, positive_to(1e9), "resistance there"}.usually(100, 1000),
        arg{"temperature_2_c", "t_2", unit::celsius, between(-50, 300), "second temperature"}.usually(85, 120),
        arg{"resistance_2_ohm", "R_2", unit::ohm, positive_to(1e9), "resistance there"}.usually(2000, 50000)),
    source{"IEC 60738-1", "definition, α = ln(R_2/R_1)/(t_2 - t_1)", "memory"},
    [](auto t_1, auto resistance_1, auto t_2, auto resistance_2) {
      auto ratio = select(resistance_1 < resistance_2, log1p((resistance_2 - resistance_1) / resistance_1), -log1p((resistance_1 - resistance_2) / resistance_2));
      return in_percent(ratio / (t_2 - t_1));
    },
    requires_that([](auto t_1, auto, auto t_2, auto) { return t_1 < t_2 || t_2 < t_1; }, "the two temperatures differ"),
    remarks{"of the steep part alone: below switching the resistance says nothing of the temperature", "0 for two equal resistances"});

}  // namespace sensing
}  // namespace v1
}  // namespace makegood
