// SPDX-License-Identifier: MIT
// Resistive heating elements: resistance, power, current, supply voltage, mats in parallel.
// Subject: heating.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr source ohms_law{"D. C. Kulshreshtha, Basic Electrical Engineering", "Example 2.12, P = U²/R"};

namespace detail {
inline constexpr arg power = arg{"power_w", "P", unit::watt, positive_to(1e7), "power of the element"}.usually(20, 3000);
inline constexpr arg voltage = arg{"voltage_v", "U", unit::volt, positive_to(1e5), "voltage at the element"}.usually(100, 250);
/// A count is a whole number.
/// Exact for numbers up to 2^50: adding and taking away 1.5 * 2^52 rounds to a whole number.
template <class T>
constexpr auto is_whole(const T& x) { return (x + 0x1.8p52) - 0x1.8p52 == x; }
}  // namespace detail

inline constexpr auto element_resistance = formula(
    out{"element_resistance", "R", unit::ohm, "Resistance of a heating element from its power and voltage."},
    in(detail::power, detail::voltage), ohms_law, [](auto power, auto voltage) { return square(voltage) / power; },
    remarks{"exact to rounding; an element's cold resistance is lower by its temperature coefficient", ""});

inline constexpr auto element_power = formula(
    out{"element_power", "P", unit::watt, "Power of a heating element from its resistance and voltage."},
    in(arg{"resistance_ohm", "R", unit::ohm, positive_to(1e9), "resistance of the element"}.usually(15, 3000), detail::voltage), ohms_law,
    [](auto resistance, auto voltage) { return square(voltage) / resistance; }, remarks{"exact to rounding", ""});

inline constexpr auto element_current = formula(
    out{"element_current", "I", unit::ampere, "Current of a heating element from its power and voltage."}, in(detail::power, detail::voltage), ohms_law,
    [](auto power, auto voltage) { return power / voltage; }, remarks{"exact to rounding", ""});

inline constexpr auto power_at_voltage = formula(
    out{"power_at_voltage", "P", unit::watt, "Power of a heating element at another voltage than its rated one, its resistance unchanged."},
    in(arg{"rated_power_w", "P_r", unit::watt, positive_to(1e7), "rated power"}.usually(20, 3000),
       arg{"rated_voltage_v", "U_r", unit::volt, positive_to(1e5), "rated voltage"}.usually(100, 250),
       arg{"voltage_v", "U", unit::volt, between(0, 1e5), "voltage at the element"}.usually(100, 250)),
    ohms_law, [](auto power, auto rated, auto voltage) { return power * square(voltage / rated); },
    remarks{"exact to rounding for a constant resistance", "0 W without voltage"});

inline constexpr auto parallel_element_resistance = formula(
    out{"parallel_element_resistance", "R", unit::ohm, "Resistance of equal heating mats in parallel."},
    in(arg{"power_w", "P", unit::watt, positive_to(1e7), "power of each mat"}.usually(100, 1500), detail::voltage,
       arg{"mats_count", "n", unit::one, between(1, 1000), "number of mats, whole"}.usually(1, 1)),
    ohms_law, [](auto power, auto voltage, auto mats) { return square(voltage) / (mats * power); },
    requires_that([](auto, auto, auto mats) { return detail::is_whole(mats); }, "the number of mats is whole"), remarks{"exact to rounding", "one mat: its own resistance"});

inline constexpr auto power_density = formula(
    out{"power_density", "q", unit::watt_per_square_metre, "Heating power to each square metre."},
    in(arg{"power_w", "P", unit::watt, between(0, 1e7), "heating power"}.usually(50, 3000),
       arg{"area_m2", "A", unit::square_metre, positive_to(1e6), "heated area"}.usually(0.5, 20)),
    source{"power over area", "", "memory"}, [](auto power, auto area) { return power / area; }, remarks{"exact to rounding", "0 without power"});

}  // namespace heating
}  // namespace v1
}  // namespace makegood
