// SPDX-License-Identifier: MIT
// Units of measure: symbol, dimension and scale, so that worked steps print units and a test can prove every equation.
// Core: every subject uses it. Includes the standard library only.
#pragma once
#include <array>
#include <string_view>
#include "view.hpp"

namespace makegood {
inline namespace v1 {

/// A unit that is often written in place of the one asked for: value * factor is then in the right unit.
struct unit_slip {
  double factor;
  std::string_view symbol;
};

/// A unit of measure. Exponents of m, kg, s, A, K, cd are kept doubled, so that a square root stays exact.
struct unit_t {
  std::string_view symbol;
  std::array<signed char, 6> twice{};
  double scale = 1.0;        ///< size in coherent SI units
  bool celsius = false;      ///< a temperature counted from 0 °C (differences are kelvin)
  view<unit_slip> slips{};

  constexpr bool same_as(const unit_t& other) const {
    const double ratio = scale / other.scale;
    return twice == other.twice && ratio > 1.0 - 1e-12 && ratio < 1.0 + 1e-12 && celsius == other.celsius;
  }
  constexpr bool dimensionless() const { return same_as(unit_t{}); }
};

namespace unit {
namespace detail {
constexpr unit_t si(std::string_view symbol, double m, double kg, double s, double a, double k, double scale,
                    view<unit_slip> slips = {}) {
  return {symbol,
          {static_cast<signed char>(2 * m), static_cast<signed char>(2 * kg), static_cast<signed char>(2 * s),
           static_cast<signed char>(2 * a), static_cast<signed char>(2 * k), 0},
          scale, false, slips};
}
inline constexpr unit_slip metre_slips[] = {{1e-3, "mm"}, {1e-2, "cm"}};
inline constexpr unit_slip millimetre_slips[] = {{1e3, "m"}, {10.0, "cm"}, {25.4, "in"}};
inline constexpr unit_slip ohm_slips[] = {{1e3, "kΩ"}, {1e6, "MΩ"}, {1e-3, "mΩ"}};
inline constexpr unit_slip megaohm_slips[] = {{1e-6, "Ω"}, {1e-3, "kΩ"}, {1e3, "GΩ"}};
inline constexpr unit_slip volt_slips[] = {{1e-3, "mV"}, {1e3, "kV"}};
inline constexpr unit_slip ampere_slips[] = {{1e-3, "mA"}, {1e3, "kA"}};
inline constexpr unit_slip milliampere_slips[] = {{1e3, "A"}, {1e-3, "µA"}};
inline constexpr unit_slip watt_slips[] = {{1e3, "kW"}, {1e-3, "mW"}};
inline constexpr unit_slip second_slips[] = {{1e-3, "ms"}, {60.0, "min"}};
inline constexpr unit_slip millisecond_slips[] = {{1e3, "s"}};
inline constexpr unit_slip nanosecond_slips[] = {{1e3, "µs"}, {1e9, "s"}};
inline constexpr unit_slip nanofarad_slips[] = {{1e-3, "pF"}, {1e3, "µF"}};
inline constexpr unit_slip pascal_slips[] = {{1e3, "kPa"}, {100.0, "hPa"}};
inline constexpr unit_slip flow_slips[] = {{1.0 / 3.6, "m³/h"}, {1e3, "m³/s"}};
inline constexpr unit_slip percent_slips[] = {{100.0, "(a fraction of 1)"}};
inline constexpr unit_slip ratio_slips[] = {{0.01, "%"}};
inline constexpr unit_slip volume_slips[] = {{1e-3, "l"}};
inline constexpr unit_slip area_slips[] = {{1e-4, "cm²"}, {1e-6, "mm²"}};
inline constexpr unit_slip milliohm_per_metre_slips[] = {{1e3, "Ω/m"}, {1e-3, "µΩ/m"}};
}  // namespace detail

inline constexpr unit_t one{};
inline constexpr unit_t ratio = detail::si("", 0, 0, 0, 0, 0, 1, detail::ratio_slips);
inline constexpr unit_t percent = detail::si("%", 0, 0, 0, 0, 0, 0.01, detail::percent_slips);
inline constexpr unit_t percent_per_metre = detail::si("%/m", -1, 0, 0, 0, 0, 0.01);
inline constexpr unit_t metre = detail::si("m", 1, 0, 0, 0, 0, 1, detail::metre_slips);
inline constexpr unit_t millimetre = detail::si("mm", 1, 0, 0, 0, 0, 1e-3, detail::millimetre_slips);
inline constexpr unit_t square_metre = detail::si("m²", 2, 0, 0, 0, 0, 1, detail::area_slips);
inline constexpr unit_t square_millimetre = detail::si("mm²", 2, 0, 0, 0, 0, 1e-6);
inline constexpr unit_t cubic_metre = detail::si("m³", 3, 0, 0, 0, 0, 1, detail::volume_slips);
inline constexpr unit_t second = detail::si("s", 0, 0, 1, 0, 0, 1, detail::second_slips);
inline constexpr unit_t millisecond = detail::si("ms", 0, 0, 1, 0, 0, 1e-3, detail::millisecond_slips);
inline constexpr unit_t nanosecond = detail::si("ns", 0, 0, 1, 0, 0, 1e-9, detail::nanosecond_slips);
inline constexpr unit_t nanofarad = detail::si("nF", -2, -1, 4, 2, 0, 1e-9, detail::nanofarad_slips);
inline constexpr unit_t metre_per_nanosecond = detail::si("m/ns", 1, 0, -1, 0, 0, 1e9);
inline constexpr unit_t per_hour = detail::si("1/h", 0, 0, -1, 0, 0, 1.0 / 3600.0);
inline constexpr unit_t metre_per_second = detail::si("m/s", 1, 0, -1, 0, 0, 1);
inline constexpr unit_t litre_per_second = detail::si("l/s", 3, 0, -1, 0, 0, 1e-3, detail::flow_slips);
inline constexpr unit_t cubic_metre_per_second = detail::si("m³/s", 3, 0, -1, 0, 0, 1);
inline constexpr unit_t kelvin = detail::si("K", 0, 0, 0, 0, 1, 1);
inline constexpr unit_t per_kelvin = detail::si("1/K", 0, 0, 0, 0, -1, 1);
inline constexpr unit_t per_square_kelvin = detail::si("1/K²", 0, 0, 0, 0, -2, 1);
inline constexpr unit_t per_cubic_kelvin = detail::si("1/K³", 0, 0, 0, 0, -3, 1);
inline constexpr unit_t per_fourth_kelvin = detail::si("1/K⁴", 0, 0, 0, 0, -4, 1);
inline constexpr unit_t celsius = {"°C", kelvin.twice, 1.0, true, {}};
inline constexpr unit_t ampere = detail::si("A", 0, 0, 0, 1, 0, 1, detail::ampere_slips);
inline constexpr unit_t milliampere = detail::si("mA", 0, 0, 0, 1, 0, 1e-3, detail::milliampere_slips);
inline constexpr unit_t volt = detail::si("V", 2, 1, -3, -1, 0, 1, detail::volt_slips);
inline constexpr unit_t watt = detail::si("W", 2, 1, -3, 0, 0, 1, detail::watt_slips);
inline constexpr unit_t ohm = detail::si("Ω", 2, 1, -3, -2, 0, 1, detail::ohm_slips);
inline constexpr unit_t megaohm = detail::si("MΩ", 2, 1, -3, -2, 0, 1e6, detail::megaohm_slips);
inline constexpr unit_t milliohm_per_metre = detail::si("mΩ/m", 1, 1, -3, -2, 0, 1e-3, detail::milliohm_per_metre_slips);
inline constexpr unit_t millivolt_per_ampere_metre = detail::si("mV/(A·m)", 1, 1, -3, -2, 0, 1e-3);
inline constexpr unit_t ohm_millimetre = detail::si("Ω·mm", 3, 1, -3, -2, 0, 1e-3);
inline constexpr unit_t joule_per_kelvin_cubic_millimetre = detail::si("J/(K·mm³)", -1, 1, -2, 0, -1, 1e9);
inline constexpr unit_t ampere_squared_second = detail::si("A²·s", 0, 0, 1, 2, 0, 1);
inline constexpr unit_t adiabatic_k = detail::si("A·√s/mm²", -2, 0, 0.5, 1, 0, 1e6);
inline constexpr unit_t pascal = detail::si("Pa", -1, 1, -2, 0, 0, 1, detail::pascal_slips);
inline constexpr unit_t pascal_second = detail::si("Pa·s", -1, 1, -1, 0, 0, 1);
inline constexpr unit_t kilogram_per_metre_second_root_kelvin = detail::si("kg/(m·s·√K)", -1, 1, -1, 0, -0.5, 1);
inline constexpr unit_t kilogram_per_cubic_metre = detail::si("kg/m³", -3, 1, 0, 0, 0, 1);
inline constexpr unit_t kilogram_per_kilogram = detail::si("kg/kg", 0, 0, 0, 0, 0, 1);
inline constexpr unit_t joule_per_kilogram_kelvin = detail::si("J/(kg·K)", 2, 0, -2, 0, -1, 1);
inline constexpr unit_t watt_per_square_metre = detail::si("W/m²", 0, 1, -3, 0, 0, 1);
inline constexpr unit_t watt_per_square_metre_kelvin = detail::si("W/(m²·K)", 0, 1, -3, 0, -1, 1);
inline constexpr unit_t watt_per_square_metre_fourth_kelvin = detail::si("W/(m²·K⁴)", 0, 1, -3, 0, -4, 1);
inline constexpr unit_t watt_per_metre_kelvin = detail::si("W/(m·K)", 1, 1, -3, 0, -1, 1);
inline constexpr unit_t square_metre_kelvin_per_watt = detail::si("m²·K/W", 0, -1, 3, 0, 1, 1);
inline constexpr unit_t watt_per_metre = detail::si("W/m", 1, 1, -3, 0, 0, 1);
inline constexpr unit_t watt_per_kelvin = detail::si("W/K", 2, 1, -3, 0, -1, 1);
inline constexpr unit_t joule_per_kelvin = detail::si("J/K", 2, 1, -2, 0, -1, 1);
inline constexpr unit_t joule_per_cubic_metre_kelvin = detail::si("J/(m³·K)", -1, 1, -2, 0, -1, 1);
inline constexpr unit_t watt_hour_per_cubic_metre_kelvin = detail::si("W·h/(m³·K)", -1, 1, -2, 0, -1, 3600);
inline constexpr unit_t watt_root_second_per_square_metre_kelvin = detail::si("W·√s/(m²·K)", 0, 1, -2.5, 0, -1, 1);
inline constexpr unit_t square_metre_per_second = detail::si("m²/s", 2, 0, -1, 0, 0, 1);
inline constexpr unit_t metre_per_square_second = detail::si("m/s²", 1, 0, -2, 0, 0, 1);
inline constexpr unit_t milliwatt = detail::si("mW", 2, 1, -3, 0, 0, 1e-3);
inline constexpr unit_t milliwatt_per_kelvin = detail::si("mW/K", 2, 1, -3, 0, -1, 1e-3);
inline constexpr unit_t ohm_per_kelvin = detail::si("Ω/K", 2, 1, -3, -2, -1, 1);
inline constexpr unit_t percent_per_kelvin = detail::si("%/K", 0, 0, 0, 0, -1, 0.01);
inline constexpr unit_t hour = detail::si("h", 0, 0, 1, 0, 0, 3600);
inline constexpr unit_t per_kilowatt_hour = detail::si("1/(kW·h)", -2, -1, 2, 0, 0, 1.0 / 3.6e6);
}  // namespace unit

/// A constant with a unit and, where the literature has one, a symbol. For a plain number it is that number.
struct literal {
  double value;
  unit_t of{};
  std::string_view symbol{};
  std::string_view label{};  ///< the word that chose it ("copper")
  constexpr operator double() const { return value; }
};
constexpr literal constant(double value, unit_t of, std::string_view symbol = {}) { return {value, of, symbol, {}}; }

}  // namespace v1
}  // namespace makegood
