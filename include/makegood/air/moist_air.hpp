// SPDX-License-Identifier: MIT
// Moist air: saturation pressure, humidity, dew point, density, viscosity.
// Subject: air. One saturation formula a calculation: Hyland-Wexler unless the name says another.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

inline constexpr source hyland_wexler{"Hyland and Wexler 1983, in ASHRAE Handbook Fundamentals 2017, ch. 1", "equations for saturation pressure over ice and water"};
inline constexpr source ashrae_psychrometrics{"ASHRAE Handbook Fundamentals 2017, ch. 1 Psychrometrics", "W = 0.621945 p_w/(p - p_w)"};
inline constexpr source ashrae_wet_bulb{"ASHRAE Handbook Fundamentals 2017, ch. 1 Psychrometrics", "equations (33) and (35), wet bulb above and below freezing"};
inline constexpr source iapws_if97{"IAPWS R7-97(2012), Industrial Formulation 1997", "region 4, equation (30)"};
inline constexpr source standard_atmosphere{"U.S. Standard Atmosphere 1976", "layer from 0 to 11 km: 6.5 K/km, geopotential altitude"};
inline constexpr unit_t gram_per_cubic_metre = unit::detail::si("g/m³", -3, 1, 0, 0, 0, 1e-3);
inline constexpr unit_t gram_per_hour = unit::detail::si("g/h", 0, 1, -1, 0, 0, 1e-3 / 3600.0);
inline constexpr unit_t kelvin_per_metre = unit::detail::si("K/m", -1, 0, 0, 0, 1, 1);
inline constexpr unit_t kilojoule_per_kilogram = unit::detail::si("kJ/kg", 2, 0, -2, 0, 0, 1e3);
inline constexpr source wmo_magnus{"WMO-No. 8, Guide to Instruments and Methods of Observation", "Annex 4.B, over water"};

namespace detail {
/// ln(p_sat / 1 Pa) over ice and its slope; t is the number of kelvins, ln_t its logarithm.
template <class T>
MAKEGOOD_INLINE constexpr std::pair<T, T> log_saturation_ice(const T& t, const T& ln_t) {
  const T value = -5674.5359 / t + 6.3925247 - 0.009677843 * t + 6.2215701e-7 * square(t) + 2.0747825e-9 * cube(t) -
                  9.484024e-13 * square(square(t)) + 4.1635019 * ln_t;
  const T slope = 5674.5359 / square(t) - 0.009677843 + 2.0 * 6.2215701e-7 * t + 3.0 * 2.0747825e-9 * square(t) -
                  4.0 * 9.484024e-13 * cube(t) + 4.1635019 / t;
  return {value, slope};
}
/// The same over water.
template <class T>
MAKEGOOD_INLINE constexpr std::pair<T, T> log_saturation_water(const T& t, const T& ln_t) {
  const T value = -5800.2206 / t + 1.3914993 - 0.048640239 * t + 4.1764768e-5 * square(t) - 1.4452093e-8 * cube(t) + 6.5459673 * ln_t;
  const T slope = 5800.2206 / square(t) - 0.048640239 + 2.0 * 4.1764768e-5 * t - 3.0 * 1.4452093e-8 * square(t) + 6.5459673 / t;
  return {value, slope};
}
/// The two formulas at 0 °C, Pa; between them lies a gap of 0.06 Pa.
inline constexpr double ice_at_zero_pa = 611.15357089076767;
inline constexpr double water_at_zero_pa = 611.21286745118838;

inline constexpr arg air_temperature_arg =
    arg{"temperature_c", "t", unit::celsius, air_temperature, "temperature of the air"}.usually(-15, 35);
inline constexpr arg humidity_arg =
    arg{"relative_humidity_percent", "φ", unit::percent, between(0, 100), "relative humidity (below 0 °C over ice)"}.usually(20, 95);
inline constexpr arg pressure_or_standard_arg =
    arg{"pressure_pa", "p", unit::pascal, between(5e4, 1.2e5), "pressure of the air"}.usually(90000, 105000).otherwise(101325.0);
inline constexpr arg psychrometer_temperature_arg =
    arg{"temperature_c", "t", unit::celsius, between(-50, 80), "temperature of the air (dry bulb)"}.usually(20, 30);
inline constexpr arg humidity_ratio_arg =
    arg{"humidity_ratio", "W", unit::kilogram_per_kilogram, between(0, 2), "mass of vapour to each kilogram of dry air"}.usually(0.001, 0.02);
/// The energy of air that saturates at its wet bulb, in kJ/kg of dry air, with the humidity ratios put in as pressures: no pole where the
/// water boils. `latent`, `per_water` and `per_vapour` are those over water or over ice.
struct wet_bulb_energy {
  double latent, per_water, per_vapour;
};
inline constexpr wet_bulb_energy over_water{2501.0, 2.326, 4.186}, over_ice{2830.0, 0.24, 2.1};
/// Residual and slope at the wet bulb of x kelvin; t in °C, saturated and its slope at x.
template <class X, class P, class S, class T, class V, class A>
MAKEGOOD_INLINE constexpr auto wet_bulb_rest(const wet_bulb_energy& e, const X& x, const P& saturated, const S& by_kelvin, const T& t, const V& vapour, const A& pressure) {
  auto wet = x - 273.15;
  auto dry = pressure - vapour;
  auto taken = e.latent - e.per_water * wet;
  auto given = 1.006 * (t - wet) * dry + 0.621945 * vapour * (e.latent + 1.86 * t - e.per_vapour * wet);
  auto given_by_kelvin = 0.0 - 1.006 * dry - 0.621945 * e.per_vapour * vapour;
  auto left = pressure - saturated;
  auto value = 0.621945 * taken * saturated * dry - given * left;
  auto slope = 0.621945 * dry * (taken * by_kelvin - e.per_water * saturated) - given_by_kelvin * left + given * by_kelvin;
  return std::pair(value, slope);
}
}  // namespace detail

inline constexpr auto saturation_pressure = formula(
    out{"saturation_pressure", "p_s", unit::pascal, "Pressure of saturated water vapour, over ice below 0 °C and over water from 0 °C (Hyland-Wexler)."},
    in(detail::air_temperature_arg), hyland_wexler,
    [](auto t) {
      auto kelvins = let("T", unit::one, magnitude(kelvin(t), unit::kelvin));
      auto ln_t = log(kelvins);
      auto ln_p = let("ln p", unit::one,
                      select(t < constant(0.0, unit::celsius), detail::log_saturation_ice(kelvins, ln_t).first, detail::log_saturation_water(kelvins, ln_t).first));
      return attach(exp(ln_p), unit::pascal);
    },
    remarks{"300 ppm against the printed table from -100 to 200 °C, except about -60 °C", "at 0 °C the formula over water holds; the one over ice ends 0.06 Pa lower"});

inline constexpr auto saturation_pressure_ice = formula(
    out{"saturation_pressure_ice", "p_s", unit::pascal, "Pressure of saturated water vapour over ice (Hyland-Wexler)."},
    in(arg{"temperature_c", "t", unit::celsius, between(-100, 0.01), "temperature of the air or the ice"}.usually(-30, 0)), hyland_wexler,
    [](auto t) {
      auto kelvins = let("T", unit::one, magnitude(kelvin(t), unit::kelvin));
      auto ln_p = let("ln p", unit::one, detail::log_saturation_ice(kelvins, log(kelvins)).first);
      return attach(exp(ln_p), unit::pascal);
    },
    remarks{"300 ppm against the printed table from -100 °C, except about -60 °C", "ends at the triple point, 0.01 °C"});

inline constexpr auto saturation_pressure_magnus = formula(
    out{"saturation_pressure_magnus", "p_s", unit::pascal, "Pressure of saturated water vapour over water by the WMO form of the Magnus formula."},
    in(arg{"temperature_c", "t", unit::celsius, air_temperature, "temperature of the air"}.usually(-15, 35).valid_in(between(-45, 60))), wmo_magnus,
    [](auto t) {
      auto above = from_zero(t);
      return constant(611.2, unit::pascal) * exp(17.62 * above / (constant(243.12, unit::kelvin) + above));
    },
    remarks{"0.3 % below the international steam formula at 20 °C", "over water also below 0 °C"});

inline constexpr auto saturation_pressure_iso13788 = formula(
    out{"saturation_pressure_iso13788", "p_s", unit::pascal, "Pressure of saturated water vapour as building physics takes it (ISO 13788)."},
    in(arg{"temperature_c", "t", unit::celsius, air_temperature, "temperature of the air or the surface"}.usually(-15, 35)),
    source{"EN ISO 13788", "Annex E, formulas E.7 and E.8"},
    [](auto t) {
      auto above = from_zero(t);
      auto exponent = select(t < constant(0.0, unit::celsius), 21.875 * above / (constant(265.5, unit::kelvin) + above),
                             17.269 * above / (constant(237.3, unit::kelvin) + above));
      return constant(610.5, unit::pascal) * exp(exponent);
    },
    remarks{"within 0.2 % of Hyland-Wexler from 0 to 40 °C", "both branches give 610.5 Pa at 0 °C"});

inline constexpr auto vapour_pressure = formula(
    out{"vapour_pressure", "p_w", unit::pascal, "Partial pressure of the water vapour in air of a given temperature and relative humidity."},
    in(detail::air_temperature_arg, detail::humidity_arg), hyland_wexler,
    [](auto t, auto humidity) { return percent(humidity) * call(saturation_pressure, t); },
    remarks{"that of the saturation formula", "0 Pa in dry air"});

inline constexpr auto dew_point_magnus = formula(
    out{"dew_point_magnus", "t_d", unit::celsius, "Dew point over water by the WMO form of the Magnus formula."},
    in(arg{"temperature_c", "t", unit::celsius, air_temperature, "temperature of the air"}.usually(-15, 35).valid_in(between(-45, 60)),
       arg{"relative_humidity_percent", "φ", unit::percent, positive_to(100), "relative humidity over water"}.usually(20, 95)),
    wmo_magnus,
    [](auto t, auto humidity) {
      auto above = from_zero(t);
      auto b = constant(243.12, unit::kelvin);
      auto g = let("γ", unit::one, log(percent(humidity)) + 17.62 * above / (b + above));
      return at_celsius(b * g / (17.62 - g));
    },
    remarks{"exact inverse of saturation_pressure_magnus", "the temperature itself at 100 %; dry air has no dew point"});

inline constexpr auto dew_point = formula(
    out{"dew_point", "t_d", unit::celsius, "Temperature at which the air's vapour saturates: dew point, below 0 °C frost point (inverse of Hyland-Wexler)."},
    in(detail::air_temperature_arg,
       arg{"relative_humidity_percent", "φ", unit::percent, positive_to(100), "relative humidity (below 0 °C over ice)"}.usually(20, 95)),
    hyland_wexler,
    [](auto t, auto humidity) {
      auto pressure = call(vapour_pressure, t, humidity);
      auto ln_p = let("ln p", unit::one, log(magnitude(pressure, unit::pascal)));
      // first guess: the Magnus forms over ice and over water, turned round
      auto ice_guess = ln_p - 6.415424;
      auto water_guess = ln_p - 6.415424;
      auto frost = root<4>(
          "T_d", unit::one, 273.15 + 272.62 * ice_guess / (22.46 - ice_guess),
          [&](const auto& x) {
            const auto [value, slope] = detail::log_saturation_ice(x, log(x));
            return std::pair(value - ln_p, slope);
          },
          ln_p);
      auto dew = root<4>(
          "T_d", unit::one, 273.15 + 243.12 * water_guess / (17.62 - water_guess),
          [&](const auto& x) {
            const auto [value, slope] = detail::log_saturation_water(x, log(x));
            return std::pair(value - ln_p, slope);
          },
          ln_p);
      auto zero = constant(273.15, unit::kelvin);
      return celsius(select(pressure < constant(detail::ice_at_zero_pa, unit::pascal), attach(frost, unit::kelvin),
                            select(pressure < constant(detail::water_at_zero_pa, unit::pascal), zero, attach(dew, unit::kelvin))));
    },
    valid_while([](auto t, auto humidity) { return call(vapour_pressure, t, humidity) >= 0.0014050; }, "the frost point lies below -100 °C, where the formula ends"),
    remarks{"root of the saturation formula to rounding", "the temperature itself at 100 %; dry air has no dew point; 0 °C within the 0.06 Pa between the two formulas"});

inline constexpr auto relative_humidity = formula(
    out{"relative_humidity", "φ", unit::percent, "Relative humidity from temperature and dew point (below 0 °C: over ice, frost point)."},
    in(detail::air_temperature_arg, arg{"dew_point_c", "t_d", unit::celsius, air_temperature, "dew point"}.usually(-30, -15)),
    hyland_wexler, [](auto t, auto dew) {
      auto vapour = let("p_w", unit::pascal, call(saturation_pressure, dew));
      return in_percent(vapour / call(saturation_pressure, t));
    },
    requires_that([](auto t, auto dew) { return dew <= t; }, "the dew point is not above the temperature"),
    remarks{"that of the saturation formula", "100 % where dew point and temperature are equal"});

inline constexpr auto humidity_ratio = formula(
    out{"humidity_ratio", "W", unit::kilogram_per_kilogram, "Mass of water vapour to each kilogram of dry air."},
    in(arg{"vapour_pressure_pa", "p_w", unit::pascal, between(0, 1e7), "partial pressure of the water vapour"}.usually(100, 4000),
       arg{"pressure_pa", "p", unit::pascal, positive_to(1e7), "pressure of the air"}.usually(90000, 105000)),
    ashrae_psychrometrics, [](auto vapour, auto pressure) { return 0.621945 * vapour / (pressure - vapour); },
    requires_that([](auto vapour, auto pressure) { return vapour < pressure; }, "the vapour pressure is below the pressure of the air"),
    remarks{"ideal gases: printed tables with the enhancement factor stand 0.4 to 1 % higher", "0 in dry air"});

inline constexpr auto air_density = formula(
    out{"air_density", "ρ", unit::kilogram_per_cubic_metre, "Density of moist air as a mixture of ideal gases."},
    in(detail::air_temperature_arg, detail::humidity_arg,
       arg{"pressure_pa", "p", unit::pascal, positive_to(1e7), "pressure of the air"}.usually(90000, 105000)),
    source{"ASHRAE Handbook Fundamentals 2017, ch. 1 Psychrometrics", "gas constants 287.042 and 461.524 J/(kg·K)"},
    [](auto t, auto humidity, auto pressure) {
      auto vapour = call(vapour_pressure, t, humidity);
      auto kelvins = let("T", unit::kelvin, kelvin(t));
      return (pressure - vapour) / (constant(287.042, unit::joule_per_kilogram_kelvin, "R_a") * kelvins) +
             vapour / (constant(461.524, unit::joule_per_kilogram_kelvin, "R_w") * kelvins);
    },
    requires_that([](auto t, auto humidity, auto pressure) { return call(vapour_pressure, t, humidity) <= pressure; },
                  "the vapour pressure is not above the pressure of the air"),
    remarks{"0.03 % below the CIPM-2007 formula at 20 °C, 50 %", "moist air is lighter than dry air"});

inline constexpr auto air_viscosity = formula(
    out{"air_viscosity", "µ", unit::pascal_second, "Dynamic viscosity of air by Sutherland's formula."},
    in(arg{"temperature_c", "t", unit::celsius, between(-170, 1500), "temperature of the air"}.usually(-15, 35).valid_in(between(-100, 1500))),
    source{"U.S. Standard Atmosphere 1976", "viscosity, 1.458e-6 T^1.5/(T + 110.4)"},
    [](auto t) {
      auto kelvins = let("T", unit::kelvin, kelvin(t));
      return constant(1.458e-6, unit::kilogram_per_metre_second_root_kelvin) * kelvins * sqrt(kelvins) /
             (kelvins + constant(110.4, unit::kelvin));
    },
    remarks{"textbook tables at 35 °C stand about 0.6 % higher; humidity is left out (below 1 % in a bathroom)", ""});

// ---- other saturation formulas, by name ---------------------------------------------------------------------------------

inline constexpr auto saturation_pressure_sonntag = formula(
    out{"saturation_pressure_sonntag", "p_s", unit::pascal, "Pressure of saturated water vapour over water by Sonntag's formula of 1990."},
    in(arg{"temperature_c", "t", unit::celsius, between(-100, 100), "temperature of the air"}.usually(-15, 35)),
    source{"Sonntag 1990, Zeitschrift für Meteorologie 70, 340-344", "over water, ITS-90"},
    [](auto t) {
      auto kelvins = let("T", unit::one, magnitude(kelvin(t), unit::kelvin));
      auto ln_p = let("ln p", unit::one,
                      -6096.9385 / kelvins + 21.2409642 - 2.711193e-2 * kelvins + 1.673952e-5 * square(kelvins) + 2.433502 * log(kelvins));
      return attach(exp(ln_p), unit::pascal);
    },
    remarks{"within 0.03 % of Hyland-Wexler from 0 to 40 °C", "over water also below 0 °C"});

inline constexpr auto saturation_pressure_iapws = formula(
    out{"saturation_pressure_iapws", "p_s", unit::pascal, "Pressure of saturated steam by the international industrial formulation (IAPWS-IF97, region 4)."},
    in(arg{"temperature_c", "t", unit::celsius, between(0, 373), "temperature of the water"}.usually(1, 95)), iapws_if97,
    [](auto t) {
      auto kelvins = magnitude(kelvin(t), unit::kelvin);
      auto theta = let("θ", unit::one, kelvins - 0.23855557567849 / (kelvins - 650.17534844798));
      auto a = let("A", unit::one, square(theta) + 1167.0521452767 * theta - 724213.16703206);
      auto b = let("B", unit::one, -17.073846940092 * square(theta) + 12020.824702470 * theta - 3232555.0322333);
      auto c = let("C", unit::one, 14.915108613530 * square(theta) - 4823.2657361591 * theta + 405113.40542057);
      auto root_of_root = let("β", unit::one, 2.0 * c / (sqrt(square(b) - 4.0 * a * c) - b));
      return attach(1e6 * square(square(root_of_root)), unit::pascal);
    },
    remarks{"0.025 % of the steam tables", "0.00 °C gives 611.213 Pa"});

inline constexpr auto dew_point_iso13788 = formula(
    out{"dew_point_iso13788", "t_d", unit::celsius, "Dew point, below 0 °C frost point, by the saturation formula of building physics (ISO 13788)."},
    in(arg{"temperature_c", "t", unit::celsius, air_temperature, "temperature of the air"}.usually(-15, 35),
       arg{"relative_humidity_percent", "φ", unit::percent, positive_to(100), "relative humidity (below 0 °C over ice)"}.usually(20, 95)),
    source{"EN ISO 13788", "Annex E, formulas E.9 and E.10"},
    [](auto t, auto humidity) {
      auto above = from_zero(t);
      auto exponent = select(t < constant(0.0, unit::celsius), 21.875 * above / (constant(265.5, unit::kelvin) + above),
                             17.269 * above / (constant(237.3, unit::kelvin) + above));
      auto g = let("γ", unit::one, log(percent(humidity)) + exponent);
      return at_celsius(select(g < 0.0, constant(265.5, unit::kelvin) * g / (21.875 - g), constant(237.3, unit::kelvin) * g / (17.269 - g)));
    },
    valid_while([](auto t, auto humidity) { return call(saturation_pressure_iso13788, t) * percent(humidity) >= 0.0013; }, "the frost point lies below -100 °C"),
    remarks{"exact inverse of saturation_pressure_iso13788", "the temperature itself at 100 %; dry air has no dew point"});

// ---- both ways ----------------------------------------------------------------------------------------------------------

inline constexpr auto saturation_temperature = formula(
    out{"saturation_temperature", "t_d", unit::celsius, "Temperature at which water vapour of a pressure saturates: dew point, below 0 °C frost point (inverse of Hyland-Wexler)."},
    in(arg{"vapour_pressure_pa", "p_w", unit::pascal, between(0.0014050, 1.5e6), "partial pressure of the water vapour"}.usually(100, 5000)), hyland_wexler,
    [](auto vapour) {
      auto ln_p = let("ln p", unit::one, log(magnitude(vapour, unit::pascal)));
      auto by_magnus = ln_p - 6.415424;  // first guess: the Magnus forms over ice and over water, turned round
      auto frost = root<4>(
          "T_d", unit::one, 273.15 + 272.62 * by_magnus / (22.46 - by_magnus),
          [&](const auto& x) {
            const auto [value, slope] = detail::log_saturation_ice(x, log(x));
            return std::pair(value - ln_p, slope);
          },
          ln_p);
      auto dew = root<4>(
          "T_d", unit::one, 273.15 + 243.12 * by_magnus / (17.62 - by_magnus),
          [&](const auto& x) {
            const auto [value, slope] = detail::log_saturation_water(x, log(x));
            return std::pair(value - ln_p, slope);
          },
          ln_p);
      auto zero = constant(273.15, unit::kelvin);
      return celsius(select(vapour < constant(detail::ice_at_zero_pa, unit::pascal), attach(frost, unit::kelvin),
                            select(vapour < constant(detail::water_at_zero_pa, unit::pascal), zero, attach(dew, unit::kelvin))));
    },
    remarks{"root of the saturation formula to rounding", "0 °C within the 0.06 Pa between the formulas over ice and over water"});

inline constexpr auto vapour_pressure_from_humidity_ratio = formula(
    out{"vapour_pressure_from_humidity_ratio", "p_w", unit::pascal, "Partial pressure of the water vapour from the mass of vapour to each kilogram of dry air."},
    in(detail::humidity_ratio_arg, detail::pressure_or_standard_arg), ashrae_psychrometrics,
    [](auto ratio, auto pressure) { return pressure * ratio / (0.621945 + ratio); }, remarks{"ideal gases", "0 Pa in dry air"});

inline constexpr auto relative_humidity_from_humidity_ratio = formula(
    out{"relative_humidity_from_humidity_ratio", "φ", unit::percent, "Relative humidity from temperature and humidity ratio (below 0 °C over ice)."},
    in(arg{"temperature_c", "t", unit::celsius, air_temperature, "temperature of the air"}.usually(28, 35), detail::humidity_ratio_arg, detail::pressure_or_standard_arg), hyland_wexler,
    [](auto t, auto ratio, auto pressure) { return in_percent(call(vapour_pressure_from_humidity_ratio, ratio, pressure) / call(saturation_pressure, t)); },
    requires_that([](auto t, auto ratio, auto pressure) { return call(vapour_pressure_from_humidity_ratio, ratio, pressure) <= call(saturation_pressure, t); },
                  "the air holds no more vapour than saturates it"),
    remarks{"that of the saturation formula", "0 % in dry air"});

inline constexpr auto air_density_from_humidity_ratio = formula(
    out{"air_density_from_humidity_ratio", "ρ", unit::kilogram_per_cubic_metre, "Density of moist air from its humidity ratio."},
    in(detail::air_temperature_arg, detail::humidity_ratio_arg, detail::pressure_or_standard_arg),
    source{"ASHRAE Handbook Fundamentals 2017, ch. 1 Psychrometrics", "v = 0.287042 T (1 + 1.607858 W)/p; ρ = (1 + W)/v"},
    [](auto t, auto ratio, auto pressure) {
      auto kelvins = let("T", unit::kelvin, kelvin(t));
      return pressure * (1.0 + ratio) / (constant(287.042, unit::joule_per_kilogram_kelvin, "R_a") * kelvins * (1.0 + 1.607858 * ratio));
    },
    remarks{"ideal gases; no test whether the air can hold so much vapour", "moist air is lighter than dry air"});

inline constexpr auto vapour_concentration = formula(
    out{"vapour_concentration", "c", gram_per_cubic_metre, "Mass of water vapour in each cubic metre of air."},
    in(detail::air_temperature_arg, detail::humidity_arg),
    source{"ASHRAE Handbook Fundamentals 2017, ch. 1 Psychrometrics", "gas constant of water vapour 461.524 J/(kg·K)"},
    [](auto t, auto humidity) {
      auto vapour = call(vapour_pressure, t, humidity);
      return in_milli(vapour / (constant(461.524, unit::joule_per_kilogram_kelvin, "R_w") * kelvin(t)));
    },
    remarks{"ideal gas", "0 in dry air"});

MAKEGOOD_ARGUMENTS(moisture_removed_arguments, (flow_l_per_s, temperature_c, relative_humidity_percent, outside_c, outside_humidity_percent));
inline constexpr auto moisture_removed = formula(
    out{"moisture_removed", "G", gram_per_hour, "Water that an air flow carries out of a room; negative: it brings water in."},
    in<moisture_removed_arguments>(arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e6), "air flow out of the room"}.usually(1, 100),
                                   arg{detail::air_temperature_arg}.usually(18, 26), arg{detail::humidity_arg}.usually(50, 95),
                                   arg{"outside_c", "t_e", unit::celsius, air_temperature, "temperature of the air that comes in, before it is warmed"}.usually(-10, 5),
                                   arg{"outside_humidity_percent", "φ_e", unit::percent, between(0, 100), "its relative humidity (below 0 °C over ice)"}.usually(60, 95)),
    source{"Sustainable solar housing design guide (IEA SHC)", "section 10.1, equation (10.2)", "handbook"},
    [](auto flow, auto t, auto humidity, auto outside, auto outside_humidity) {
      auto inside_water = let("c_i", gram_per_cubic_metre, call(vapour_concentration, t, humidity));
      auto outside_water = let("c_e", gram_per_cubic_metre, call(vapour_concentration, outside, outside_humidity));
      return in_hourly(milli(flow) * (inside_water - outside_water));
    },
    remarks{"mixed air; the flow is taken as the same volume in and out", "0 without flow"});

inline constexpr auto enthalpy = formula(
    out{"enthalpy", "h", kilojoule_per_kilogram, "Enthalpy of moist air to each kilogram of dry air, from 0 for dry air and liquid water at 0 °C."},
    in(arg{detail::air_temperature_arg}.usually(2, 35), detail::humidity_ratio_arg), source{"ASHRAE Handbook Fundamentals 2017, ch. 1 Psychrometrics", "equation (30)"},
    [](auto t, auto ratio) {
      auto above = magnitude(from_zero(t), unit::kelvin);
      return attach(1.006 * above + ratio * (2501.0 + 1.86 * above), kilojoule_per_kilogram);
    },
    remarks{"0.1 kJ/kg against the printed table from 0 to 40 °C", "0 for dry air at 0 °C"});

inline constexpr auto temperature_from_enthalpy = formula(
    out{"temperature_from_enthalpy", "t", unit::celsius, "Temperature of moist air from its enthalpy and humidity ratio."},
    in(arg{"enthalpy_kj_per_kg", "h", kilojoule_per_kilogram, between(-100, 5000), "enthalpy to each kilogram of dry air"}.usually(10, 80), detail::humidity_ratio_arg),
    source{"ASHRAE Handbook Fundamentals 2017, ch. 1 Psychrometrics", "equation (30), turned round"},
    [](auto energy, auto ratio) {
      return at_celsius(attach((magnitude(energy, kilojoule_per_kilogram) - 2501.0 * ratio) / (1.006 + 1.86 * ratio), unit::kelvin));
    },
    remarks{"exact inverse of enthalpy", ""});

// ---- the wet bulb -------------------------------------------------------------------------------------------------------

inline constexpr auto humidity_ratio_from_wet_bulb = formula(
    out{"humidity_ratio_from_wet_bulb", "W", unit::kilogram_per_kilogram, "Humidity ratio from dry bulb and wet bulb; a wet bulb below 0 °C is an iced one."},
    in(detail::psychrometer_temperature_arg, arg{"wet_bulb_c", "t_w", unit::celsius, between(-50, 80), "temperature of the wet bulb"}.usually(13, 20), detail::pressure_or_standard_arg),
    ashrae_wet_bulb,
    [](auto t, auto wet, auto pressure) {
      auto saturated = let("W_s", unit::kilogram_per_kilogram, call(humidity_ratio, call(saturation_pressure, wet), pressure));
      auto air = magnitude(from_zero(t), unit::kelvin);
      auto bulb = magnitude(from_zero(wet), unit::kelvin);
      auto over_water = ((2501.0 - 2.326 * bulb) * saturated - 1.006 * (air - bulb)) / (2501.0 + 1.86 * air - 4.186 * bulb);
      auto over_ice = ((2830.0 - 0.24 * bulb) * saturated - 1.006 * (air - bulb)) / (2830.0 + 1.86 * air - 2.1 * bulb);
      return select(wet < constant(0.0, unit::celsius), over_ice, over_water);
    },
    requires_that([](auto t, auto wet, auto) { return wet <= t; }, "the wet bulb is not above the dry bulb"),
    requires_that([](auto, auto wet, auto pressure) { return call(saturation_pressure, wet) < 0.9 * pressure; }, "the wet bulb is well below boiling"),
    requires_that(
        [](auto t, auto wet, auto pressure) {
          return 0.621945 * call(saturation_pressure, wet) * select(wet < 0.0, 2830.0 - 0.24 * wet, 2501.0 - 2.326 * wet) >=
                 1.006 * (t - wet) * (pressure - call(saturation_pressure, wet));
        },
        "the wet bulb is not below that of dry air"),
    remarks{"that of the saturation formula; an aspirated bulb with a clean wick, read at its lowest, is meant", "0 where the wet bulb is that of dry air"});

inline constexpr auto relative_humidity_from_wet_bulb = formula(
    out{"relative_humidity_from_wet_bulb", "φ", unit::percent, "Relative humidity from dry bulb and wet bulb of a psychrometer (below 0 °C over ice)."},
    in(detail::psychrometer_temperature_arg, arg{"wet_bulb_c", "t_w", unit::celsius, between(-50, 80), "temperature of the wet bulb"}.usually(13, 20), detail::pressure_or_standard_arg),
    ashrae_wet_bulb,
    [](auto t, auto wet, auto pressure) {
      auto ratio = let("W", unit::kilogram_per_kilogram, call(humidity_ratio_from_wet_bulb, t, wet, pressure));
      return in_percent(call(vapour_pressure_from_humidity_ratio, ratio, pressure) / call(saturation_pressure, t));
    },
    requires_that([](auto t, auto wet, auto) { return wet <= t; }, "the wet bulb is not above the dry bulb"),
    requires_that([](auto, auto wet, auto pressure) { return call(saturation_pressure, wet) < 0.9 * pressure; }, "the wet bulb is well below boiling"),
    requires_that(
        [](auto t, auto wet, auto pressure) {
          return 0.621945 * call(saturation_pressure, wet) * select(wet < 0.0, 2830.0 - 0.24 * wet, 2501.0 - 2.326 * wet) >=
                 1.006 * (t - wet) * (pressure - call(saturation_pressure, wet));
        },
        "the wet bulb is not below that of dry air"),
    remarks{"that of the saturation formula", "100 % where the two bulbs are equal"});

inline constexpr auto wet_bulb = formula(
    out{"wet_bulb", "t_w", unit::celsius, "Thermodynamic wet bulb of air: the root of the energy balance, over water, below 0 °C over ice."},
    in(arg{detail::psychrometer_temperature_arg}.usually(-10, 35), detail::humidity_arg, detail::pressure_or_standard_arg), ashrae_wet_bulb,
    [](auto t, auto humidity, auto pressure) {
      auto vapour_pa = call(vapour_pressure, t, humidity);
      auto air = magnitude(from_zero(t), unit::kelvin);
      auto vapour = magnitude(vapour_pa, unit::pascal);
      auto total = magnitude(pressure, unit::pascal);
      // first guess: the psychrometer's line against a secant of the saturation curve
      auto saturated = guess(magnitude(call(saturation_pressure, t), unit::pascal));
      auto start = guess(air) + 273.15 - (saturated - guess(vapour)) / (0.035 * saturated + 6.6e-4 * guess(total));
      auto iced = root<7>(
          "T_w", unit::one, start,
          [&](const auto& x) {
            const auto [ln_p, slope] = detail::log_saturation_ice(x, log(x));
            const auto p = exp(ln_p);
            return detail::wet_bulb_rest(detail::over_ice, x, p, p * slope, air, vapour, total);
          },
          vapour);
      auto wetted = root<7>(
          "T_w", unit::one, start,
          [&](const auto& x) {
            const auto [ln_p, slope] = detail::log_saturation_water(x, log(x));
            const auto p = exp(ln_p);
            return detail::wet_bulb_rest(detail::over_water, x, p, p * slope, air, vapour, total);
          },
          vapour);
      // a bulb of 0 °C over water takes more than this air gives: it freezes
      auto at_zero = 0.621945 * 2501.0 * detail::water_at_zero_pa * (total - vapour) -
                     (1.006 * air * (total - vapour) + 0.621945 * vapour * (2501.0 + 1.86 * air)) * (total - detail::water_at_zero_pa);
      return celsius(attach(select(at_zero > 0.0, iced, wetted), unit::kelvin));
    },
    requires_that([](auto t, auto humidity, auto pressure) { return call(vapour_pressure, t, humidity) < 0.9 * pressure; }, "the vapour pressure is well below the pressure of the air"),
    remarks{"root of the balance to rounding", "the temperature itself at 100 %; where a wet and an iced bulb are both possible just about 0 °C, the wet one"});

// ---- altitude -----------------------------------------------------------------------------------------------------------

inline constexpr auto standard_pressure = formula(
    out{"standard_pressure", "p", unit::pascal, "Pressure of the standard atmosphere at an altitude above the sea."},
    in(arg{"altitude_m", "z", unit::metre, between(-5000, 11000), "altitude above the sea"}.usually(0, 2000)), standard_atmosphere,
    [](auto altitude) {
      auto height = let("H", unit::metre, constant(6356766.0, unit::metre, "r_0") * altitude / (constant(6356766.0, unit::metre, "r_0") + altitude));
      auto part = let("θ", unit::one, 1.0 - constant(0.0065, kelvin_per_metre) * height / constant(288.15, unit::kelvin));
      return constant(101325.0, unit::pascal) * damped_pow(part, 5.255876113278518);
    },
    remarks{"exact for the standard atmosphere to 11 km; the weather moves it by up to 5 %", "101325 Pa at 0 m"});

inline constexpr auto altitude_from_pressure = formula(
    out{"altitude_from_pressure", "z", unit::metre, "Altitude above the sea at which the standard atmosphere has a pressure."},
    in(arg{"pressure_pa", "p", unit::pascal, between(22700, 177000), "pressure of the air"}.usually(80000, 98000)), standard_atmosphere,
    [](auto pressure) {
      auto fall = let("x", unit::one, 1.0 - damped_pow(pressure / constant(101325.0, unit::pascal), 1.0 / 5.255876113278518));
      auto height = let("H", unit::metre, constant(288.15, unit::kelvin) * fall / constant(0.0065, kelvin_per_metre));
      return constant(6356766.0, unit::metre, "r_0") * height / (constant(6356766.0, unit::metre, "r_0") - height);
    },
    remarks{"inverse of standard_pressure; a day's weather is worth some 300 m", "0 m at 101325 Pa"});

}  // namespace air
}  // namespace v1
}  // namespace makegood
