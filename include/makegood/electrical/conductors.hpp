// SPDX-License-Identifier: MIT
// Conductors: voltage drop, resistance against temperature, currents.
// Subject: electrical.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

inline constexpr auto voltage_drop = formula(
    out{"voltage_drop", "ΔU", unit::volt, "Voltage drop along a cable from its tabulated drop per ampere and metre."},
    in(arg{"drop_mv_per_a_m", "d", unit::millivolt_per_ampere_metre, positive_to(1000), "tabulated drop of the cable"}.usually(0.2, 50),
       arg{"current_a", "I", unit::ampere, between(0, 1e5), "design current"}.usually(0, 200),
       arg{"length_m", "L", unit::metre, between(0, 1e5), "length of the run, one way"}.usually(0, 200)),
    source{"BS 7671:2018+A2:2022", "Appendix 4, 6.1"},
    [](auto drop, auto current, auto length) { return milli(drop * current * length); },
    remarks{"exact to rounding; the tabulated figures themselves are rounded to two digits (up to 1.5 %)", "0 V without current or length"});

MAKEGOOD_ARGUMENTS(voltage_drop_impedance_arguments, (resistance_mohm_per_m, reactance_mohm_per_m, current_a, length_m, power_factor, b));
inline constexpr auto voltage_drop_impedance = formula(
    out{"voltage_drop_impedance", "ΔU", unit::volt, "Voltage drop of a run from resistance, reactance and power factor."},
    in<voltage_drop_impedance_arguments>(
        arg{"resistance_mohm_per_m", "r", unit::milliohm_per_metre, between(0, 1e5), "resistance of the conductor at its working temperature"}.usually(0.2, 25),
        arg{"reactance_mohm_per_m", "x", unit::milliohm_per_metre, between(0, 1e4), "reactance of the conductor; 0.08 mΩ/m where nothing better is known"}.usually(0.06, 0.2),
        arg{"current_a", "I", unit::ampere, between(0, 1e5), "design current"}.usually(0, 200),
        arg{"length_m", "L", unit::metre, between(0, 1e5), "length of the run, one way"}.usually(0, 200),
        arg{"power_factor", "cos φ", unit::one, between(0, 1), "power factor, current lagging"}.usually(0.6, 0.99),
        arg{"b", "b", unit::one, between(1, 2), "2 for single-phase, 1 for three-phase (drop to neutral)"}.usually(1, 2)),
    source{"IEC 60364-5-52:2009", "Annex G, u = b (r cos φ + x sin φ) L I"},
    [](auto resistance, auto reactance, auto current, auto length, auto power_factor, auto b) {
      auto sine = let("sin φ", unit::one, select(power_factor < 1.0, sqrt((1.0 - power_factor) * (1.0 + power_factor)), 0.0 * power_factor));
      return milli(b * (resistance * power_factor + reactance * sine) * length * current);
    },
    remarks{"difference of magnitudes: slightly below the phasor drop for long inductive runs", "at power factor 1 the reactance has no part, and no part in the sensitivities"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(ring_voltage_drop_arguments, (resistance_mohm_per_m, ring_length_m, distance_m, current_a), (spur_length_m = T(0.0)));
inline constexpr auto ring_voltage_drop = formula(
    out{"ring_voltage_drop", "ΔU", unit::volt, "Voltage drop at one load on a ring, and at the end of a spur from it."},
    in<ring_voltage_drop_arguments>(
        arg{"resistance_mohm_per_m", "z", unit::milliohm_per_metre, between(0, 1e5), "resistance of line and neutral together, of one metre of cable"}.usually(5, 45),
        arg{"ring_length_m", "L", unit::metre, positive_to(1e5), "length of the whole ring"}.usually(40, 120),
        arg{"distance_m", "x", unit::metre, between(0, 1e5), "distance of the load from the board along the ring"}.usually(0, 40),
        arg{"current_a", "I", unit::ampere, between(0, 1e5), "current of the load"}.usually(0, 32),
        arg{"spur_length_m", "L_s", unit::metre, between(0, 1e5), "length of the spur, same cable"}.usually(0, 10).otherwise(0)),
    source{"Ohm's law for two ways in parallel", "z I x (1 - x/L)", "memory"},
    [](auto resistance, auto ring, auto distance, auto current, auto spur) {
      return milli(resistance * current * (distance * (ring - distance) / ring + spur));
    },
    requires_that([](auto, auto ring, auto distance, auto, auto) { return distance <= ring; }, "the load is not further along than the ring is long"),
    remarks{"exact for one load; several loads on one ring add by superposition", "0 V at the board without a spur"});

MAKEGOOD_ARGUMENTS(operating_temperature_factor_arguments, (design_current_a, tabulated_capacity_a, ambient_factor, grouping_factor, conductor_max_c));
inline constexpr auto operating_temperature_factor = formula(
    out{"operating_temperature_factor", "C_t", unit::ratio, "How much of its tabulated resistance a conductor has that carries less than its full load."},
    in<operating_temperature_factor_arguments>(
        arg{"design_current_a", "I_b", unit::ampere, between(0, 1e5), "design current"}.usually(1, 15),
        arg{"tabulated_capacity_a", "I_t", unit::ampere, positive_to(1e5), "tabulated current-carrying capacity"}.usually(20, 60),
        arg{"ambient_factor", "C_a", unit::one, between(0.1, 2), "factor for ambient temperature"}.usually(0.87, 1).valid_in(between(0.1, 1)),
        arg{"grouping_factor", "C_g", unit::one, between(0.1, 1), "factor for grouping"}.usually(0.7, 1),
        arg{"conductor_max_c", "t_p", unit::celsius, between(40, 300), "highest normal temperature of the conductor"}.usually(70, 90)),
    source{"BS 7671:2018+A2:2022", "Appendix 4, 6.1"},
    [](auto design, auto tabulated, auto ambient, auto grouping, auto hottest) {
      auto whole = constant(230.0, unit::kelvin) + from_zero(hottest);
      auto share = square(ambient * grouping) - square(design / tabulated);
      return (whole - share * (hottest - constant(30.0, unit::celsius))) / whole;
    },
    valid_while([](auto design, auto tabulated, auto ambient, auto grouping, auto) { return design <= tabulated * ambient * grouping; },
                "the design current is above the corrected capacity of the conductor"),
    remarks{"for the resistive part of the drop, 30 °C air and devices other than rewirable fuses", "1 at the full corrected load"});

inline constexpr source power_of_a_load{"D. C. Kulshreshtha, Basic Electrical Engineering", "I = P/(U cos φ)", "memory"};
inline constexpr auto design_current = formula(
    out{"design_current", "I_b", unit::ampere, "Current of a single-phase load from its power."},
    in(arg{"power_w", "P", unit::watt, between(0, 1e8), "active power"}.usually(20, 15000),
       arg{"voltage_v", "U", unit::volt, positive_to(1e5), "voltage"}.usually(100, 250),
       arg{"power_factor", "cos φ", unit::one, positive_to(1), "power factor"}.usually(0.5, 1)),
    power_of_a_load, [](auto power, auto voltage, auto power_factor) { return power / (voltage * power_factor); },
    remarks{"exact to rounding; harmonics are not in the power factor cos φ", "0 A without load"});
inline constexpr auto design_current_three_phase = formula(
    out{"design_current_three_phase", "I_b", unit::ampere, "Current in each line of a balanced three-phase load from its power."},
    in(arg{"power_w", "P", unit::watt, between(0, 1e8), "active power of all three phases"}.usually(500, 50000),
       arg{"voltage_v", "U", unit::volt, positive_to(1e5), "voltage between lines"}.usually(200, 440),
       arg{"power_factor", "cos φ", unit::one, positive_to(1), "power factor"}.usually(0.5, 1)),
    power_of_a_load,
    [](auto power, auto voltage, auto power_factor) {
      return power / (constant(1.7320508075688772935, unit::one, "√3") * voltage * power_factor);
    },
    remarks{"exact to rounding for a balanced load", "0 A without load"});

inline constexpr auto resistance_at_temperature = formula(
    out{"resistance_at_temperature", "r", unit::milliohm_per_metre, "Resistance of a conductor at a temperature from its resistance at 20 °C."},
    in(arg{"resistance_20_mohm_per_m", "r_20", unit::milliohm_per_metre, positive_to(1e6), "resistance at 20 °C"}.usually(0.2, 40),
       arg{"temperature_c", "t", unit::celsius, between(-200, 1000), "temperature of the conductor"}.usually(-10, 90).valid_in(between(-50, 250)),
       arg{"alpha_per_k", "α_20", unit::per_kelvin, between(-0.01, 0.02), "temperature coefficient at 20 °C: copper 0.00393, aluminium 0.00403"}.usually(0.0038, 0.0041).otherwise(0.00393)),
    source{"IEC 60228:2004", "informative annex on correction to 20 °C"},
    [](auto resistance, auto t, auto alpha) { return resistance * (1.0 + alpha * (t - constant(20.0, unit::celsius))); },
    requires_that([](auto, auto t, auto alpha) { return 1.0 + alpha * (t - 20.0) > 0.0; }, "the straight line of resistance is above zero at this temperature"),
    remarks{"within 0.1 % from -20 to 100 °C; site tables use 0.004 for both metals", "the resistance at 20 °C itself at 20 °C"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(loop_resistance_arguments, (line_mohm_per_m, cpc_mohm_per_m, length_m), (temperature_factor = T(1.0)));
inline constexpr auto loop_resistance = formula(
    out{"loop_resistance", "R_1+R_2", unit::ohm, "Resistance of line and protective conductor of a run together."},
    in<loop_resistance_arguments>(
        arg{"line_mohm_per_m", "r_1", unit::milliohm_per_metre, between(0, 1e5), "resistance of the line conductor at 20 °C"}.usually(1, 25),
        arg{"cpc_mohm_per_m", "r_2", unit::milliohm_per_metre, between(0, 1e5), "resistance of the protective conductor at 20 °C"}.usually(1, 25),
        arg{"length_m", "L", unit::metre, between(0, 1e5), "length of the run"}.usually(1, 100),
        arg{"temperature_factor", "F", unit::one, between(0.5, 3), "correction from 20 °C to the temperature wanted"}.usually(1, 1.28).otherwise(1)),
    source{"D. Locke, Guide to the Wiring Regulations: 17th Edition, Wiley 2008", "Appendix 4, Tables 4.2 and 4.3"},
    [](auto line, auto cpc, auto length, auto factor) { return milli((line + cpc) * length) * factor; },
    remarks{"exact to rounding; the tabulated resistances are upper limits, cable measures 1 to 3 % lower", "0 Ω without length"});

inline constexpr auto length_from_resistance = formula(
    out{"length_from_resistance", "L", unit::metre, "Length of a conductor from its resistance."},
    in(arg{"resistance_ohm", "R", unit::ohm, between(0, 1e6), "resistance as read, leads taken off"}.usually(0.01, 3),
       arg{"resistance_mohm_per_m", "r", unit::milliohm_per_metre, positive_to(1e5), "resistance of one metre at the same temperature"}.usually(1, 45)),
    source{"L = R/r with the values of IEC 60228", "", "memory"}, [](auto resistance, auto per_metre) { return resistance / milli(per_metre); },
    remarks{"the tabulated resistance is an upper limit: the length comes out 1 to 3 % short; 10 mΩ of contact is about a metre", "0 m at 0 Ω"});

inline constexpr auto cross_connected_resistance = formula(
    out{"cross_connected_resistance", "R_x", unit::ohm, "Reading between two conductors of a sound ring at one point, their ends linked crosswise at the board."},
    in(arg{"first_ohm", "r_a", unit::ohm, positive_to(1e6), "end-to-end resistance of the one conductor"}.usually(0.2, 1.5),
       arg{"second_ohm", "r_b", unit::ohm, positive_to(1e6), "end-to-end resistance of the other"}.usually(0.2, 2.5),
       arg{"position_ratio", "x", unit::one, between(0, 1), "place of the point along the ring: 0 and 1 at the board, 0.5 in the middle"}.usually(0, 1)),
    source{"Ohm's law for two ways in parallel", "[r_a x + r_b(1-x)] ∥ [r_a(1-x) + r_b x]", "derived"},
    [](auto first, auto second, auto x) {
      auto one_way = let("R_A", unit::ohm, first * x + second * (1.0 - x));
      auto other_way = let("R_B", unit::ohm, first * (1.0 - x) + second * x);
      return one_way * other_way / (first + second);
    },
    remarks{"exact for a ring without spur or fault; a fault makes it another curve", "r_a r_b/(r_a+r_b) at the board, (r_a+r_b)/4 in the middle; half of either everywhere if they are equal"});

}  // namespace electrical
}  // namespace v1
}  // namespace makegood
