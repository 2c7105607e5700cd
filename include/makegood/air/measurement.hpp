// SPDX-License-Identifier: MIT
// Measuring an air flow: pressure to velocity, a grille's face, the doubt of a reading, orifice plates.
// Subject: air.
#pragma once
#include "../formula.hpp"
#include "ducts.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

inline constexpr auto velocity_from_velocity_pressure = formula(
    out{"velocity_from_velocity_pressure", "v", unit::metre_per_second, "Velocity from the velocity pressure that a pitot tube reads."},
    in(arg{"velocity_pressure_pa", "p_v", unit::pascal, between(0, 1e6), "velocity pressure at one point"}.usually(2, 100), detail::density_arg),
    source{"White, Fluid Mechanics", "chapter 6, pitot tube: v = √(2 p_v/ρ)"},
    [](auto pressure, auto density) { return sqrt(2.0 * pressure / density); },
    remarks{"exact to rounding; below 2 m/s the pressure is under 2.5 Pa and hardly read; average velocities, not pressures", "0 in still air"});

inline constexpr auto grille_flow = formula(
    out{"grille_flow", "q", unit::litre_per_second, "Air flow from the mean velocity before a grille, its face area and the factor that belongs to both."},
    in(arg{"velocity_m_per_s", "v", unit::metre_per_second, between(0, 1e4), "mean of readings all over the face"}.usually(0.5, 5),
       arg{"face_area_mm2", "A", unit::square_millimetre, between(0, 1e9), "face area (width times height)"}.usually(5000, 80000),
       arg{"correction_factor", "k", unit::ratio, positive_to(10), "flow over reading times area: free area and jets of this grille with this way of reading"}.usually(0.6, 1.1).otherwise(1.0)),
    source{"continuity, with the factor of grille and instrument", "", "common-practice"},
    [](auto velocity, auto area, auto factor) { return in_milli(velocity * micro(area)) * factor; },
    remarks{"that of the factor: without one for the very grille, 20 % and more", "0 in still air"});

inline constexpr auto flow_measurement_uncertainty = formula(
    out{"flow_measurement_uncertainty", "u", unit::percent, "Relative standard uncertainty of a measured flow."},
    in(arg{"limit_percent", "a", unit::percent, between(0, 100), "limits of error of the instrument (rectangular)"}.usually(1, 10),
       arg{"repeatability_percent", "s", unit::percent, between(0, 100), "standard deviation of the mean of the readings"}.usually(0.5, 5),
       arg{"correction_percent", "c", unit::percent, between(0, 100), "limits of error of the correction factor (rectangular)"}.usually(0, 10).otherwise(0.0)),
    source{"JCGM 100:2008 (GUM)", "4.3.7 rectangular limits, 5.1.2 sum of squares"},
    [](auto limit, auto repeatability, auto correction) { return sqrt(square(limit) / 3.0 + square(repeatability) + square(correction) / 3.0); },
    remarks{"exact to rounding", "0 without any doubt"});

// ---- orifice plates -----------------------------------------------------------------------------------------------------

inline constexpr column tapping_columns[] = {{"L_1D", unit::millimetre}, {"L_1", unit::one}, {"L_2", unit::one}};
inline constexpr choice_row tapping_rows[] = {
    {"corner", "corner tappings", {0.0, 0.0, 0.0}}, {"flange", "flange tappings", {25.4, 0.0, 0.0}}, {"d_half", "tappings at D and D/2", {0.0, 1.0, 0.47}}};
inline constexpr choice_table tappings{tapping_columns, tapping_rows};
inline constexpr source iso_5167{"ISO 5167-2:2003", "5.3.2, equations (4) and (5)"};
namespace detail {
inline constexpr arg bore_arg = arg{"orifice_mm", "d", unit::millimetre, between(1, 1e4), "bore of the plate"}.usually(40, 70);
inline constexpr arg pipe_arg = arg{"diameter_mm", "D", unit::millimetre, between(1, 1e4), "inner diameter of the duct"}.usually(100, 160);
}  // namespace detail

/// The arguments of orifice_discharge_coefficient: a word stands among the numbers.
template <class T>
struct orifice_discharge_coefficient_arguments {
  need<T> orifice_mm, diameter_mm, reynolds;
  need<std::string_view> taps;
  static constexpr std::string_view names() { return "(orifice_mm, diameter_mm, reynolds, taps)"; }
};
inline constexpr auto orifice_discharge_coefficient = formula(
    out{"orifice_discharge_coefficient", "C", unit::one, "Discharge coefficient of a sharp orifice plate (Reader-Harris and Gallagher)."},
    in<orifice_discharge_coefficient_arguments>(
        detail::bore_arg, arg{detail::pipe_arg}.valid_in(between(50, 1000)),
        arg{"reynolds", "Re_D", unit::one, between(1000, 1e9), "Reynolds number in the duct"}.usually(10000, 1e6).valid_in(between(5000, 1e9)),
        choice{"taps", tappings, "where the pressures are taken"}),
    iso_5167,
    [](auto bore, auto pipe, auto reynolds, auto taps) {
      auto beta = let("β", unit::one, bore / pipe);
      auto first = let("L_1t", unit::one, taps[0] / pipe + taps[1]);
      auto second = let("L_2t", unit::one, taps[0] / pipe + taps[2]);
      auto m = let("M_2", unit::one, 2.0 * second / (1.0 - beta));
      auto a = let("A", unit::one, damped_pow(19000.0 * beta / reynolds, 0.8));
      auto fourth = square(square(beta));
      auto plain = 0.5961 + 0.0261 * square(beta) - 0.216 * square(fourth) + 0.000521 * damped_pow(1e6 * beta / reynolds, 0.7);
      auto with_reynolds = (0.0188 + 0.0063 * a) * power<7, 2>(beta) * damped_pow(1e6 / reynolds, 0.3);
      auto upstream = (0.043 + 0.080 * exp(-10.0 * first) - 0.123 * exp(-7.0 * first)) * (1.0 - 0.11 * a) * (fourth / (1.0 - fourth));
      auto downstream = 0.031 * (m - 0.8 * damped_pow(maximum(m, constant(1e-30, unit::one)), 1.1)) * damped_pow(beta, 1.3);
      auto small = let("C_D", unit::one, select(pipe < constant(71.12, unit::millimetre), 0.011 * (0.75 - beta) * (2.8 - magnitude(pipe, unit::millimetre) / 25.4), constant(0.0, unit::one)));
      return plain + with_reynolds + upstream - downstream + small;
    },
    requires_that([](auto bore, auto pipe, auto, auto) { return bore < 0.9 * pipe; }, "the bore is less than 0.9 of the duct"),
    valid_while([](auto bore, auto pipe, auto, auto) { return bore >= 0.1 * pipe && bore <= 0.75 * pipe; }, "the standard holds for a bore of 0.1 to 0.75 of the duct"),
    remarks{"0.5 to 0.75 % for a plate and straight lengths as the standard asks; a plate in a short domestic duct does not have them", ""});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(orifice_expansibility_arguments, (orifice_mm, diameter_mm, upstream_pa, downstream_pa), (isentropic_exponent = T(1.4)));
inline constexpr auto orifice_expansibility = formula(
    out{"orifice_expansibility", "ε", unit::one, "Expansibility factor of a sharp orifice plate: what the gas expands on its way through."},
    in<orifice_expansibility_arguments>(detail::bore_arg, detail::pipe_arg, arg{"upstream_pa", "p_1", unit::pascal, positive_to(1e8), "absolute pressure before the plate"}.usually(100000, 102000),
                                        arg{"downstream_pa", "p_2", unit::pascal, positive_to(1e8), "absolute pressure after it"}.usually(97000, 99900),
                                        arg{"isentropic_exponent", "k", unit::one, between(1, 2), "isentropic exponent"}.usually(1.3, 1.4).otherwise(1.4)),
    iso_5167,
    [](auto bore, auto pipe, auto before, auto after, auto exponent) {
      auto beta = let("β", unit::one, bore / pipe);
      auto fourth = square(square(beta));
      auto lost = let("x", unit::one, 1.0 - exp(log(after / before) / exponent));
      return 1.0 - (0.351 + 0.256 * fourth + 0.93 * square(fourth)) * lost;
    },
    requires_that([](auto, auto, auto before, auto after, auto) { return after <= before; }, "the pressure after the plate is not above that before it"),
    requires_that([](auto bore, auto pipe, auto, auto, auto) { return bore < 0.9 * pipe; }, "the bore is less than 0.9 of the duct"),
    valid_while([](auto, auto, auto before, auto after, auto) { return after >= 0.75 * before; }, "the standard holds down to p_2/p_1 = 0.75"),
    remarks{"3.5 Δp/(k p_1) % by the standard", "1 without a difference"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(orifice_flow_arguments, (orifice_mm, diameter_mm, pressure_difference_pa, density_kg_per_m3, discharge_coefficient), (expansibility_factor = T(1.0)));
inline constexpr auto orifice_flow = formula(
    out{"orifice_flow", "q", unit::litre_per_second, "Flow through an orifice plate from the pressure across it."},
    in<orifice_flow_arguments>(detail::bore_arg, detail::pipe_arg, arg{"pressure_difference_pa", "Δp", unit::pascal, between(0, 1e7), "pressure across the plate"}.usually(5, 500),
                               detail::density_arg, arg{"discharge_coefficient", "C", unit::one, between(0.1, 2), "0.6 for a sharp plate"}.usually(0.59, 0.63),
                               arg{"expansibility_factor", "ε", unit::one, between(0.1, 1), "1 for small pressures"}.usually(0.95, 1).otherwise(1.0)),
    source{"ISO 5167-2:2003", "equation (1)"},
    [](auto bore, auto pipe, auto pressure, auto density, auto coefficient, auto expansion) {
      auto beta = let("β", unit::one, bore / pipe);
      auto velocity = let("v", unit::metre_per_second, coefficient * expansion * sqrt(2.0 * pressure / density / (1.0 - square(square(beta)))));
      return in_milli(constant(0.785398163397448310, unit::one, "π/4") * square(milli(bore)) * velocity);
    },
    requires_that([](auto bore, auto pipe, auto, auto, auto, auto) { return bore < 0.99 * pipe; }, "the bore is less than the duct"),
    remarks{"that of the coefficient", "0 without pressure"});

}  // namespace air
}  // namespace v1
}  // namespace makegood
