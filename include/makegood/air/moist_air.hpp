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

}  // namespace air
}  // namespace v1
}  // namespace makegood
