// SPDX-License-Identifier: MIT
// Checks of an installation: voltage drop, adiabatic heating, loop impedance, insulation, tripping time.
// Subject: electrical.
#pragma once
#include "../verdict.hpp"
#include "conductors.hpp"
#include "protection.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

inline constexpr column voltage_drop_rule[] = {
    {"p", unit::percent}, {"p_m", unit::percent_per_metre}, {"L_0", unit::metre}, {"p_max", unit::percent}};
inline constexpr choice_row load_kind_rows[] = {
    {"lighting", "lighting"}, {"other", "other uses"},
    {"lighting_private_supply", "lighting on a private supply"}, {"other_private_supply", "other uses on a private supply"}};
inline constexpr choice_table load_kinds{{}, load_kind_rows};

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_voltage_drop_arguments, (voltage_drop_v, nominal_voltage_v, load_kind), (length_m = T(0.0)));
inline constexpr auto check_voltage_drop = check(
    out{"check_voltage_drop", "ΔU", unit::volt, "Voltage drop of a final circuit against the rulebook's share of the nominal voltage."},
    in<check_voltage_drop_arguments>(
        arg{"voltage_drop_v", "ΔU", unit::volt, between(0, 1e5), "voltage drop at the design current"}.usually(0, 20),
        arg{"nominal_voltage_v", "U_0", unit::volt, positive_to(1e5), "nominal voltage"}.usually(100, 500),
        choice{"load_kind", load_kinds, "use of the circuit"},
        arg{"length_m", "L", unit::metre, between(0, 1e5), "length of the run, for the addition beyond 100 m"}.usually(0, 200).otherwise(0)),
    rule_use{"voltage_drop_limit", "load_kind", voltage_drop_rule}, comparator::at_most, source{"IEC 60364-5-52:2009", "Annex G"},
    [](auto drop, auto, auto, auto) { return drop; },
    [](auto rule, auto, auto nominal, auto, auto length) {
      auto beyond = maximum(length - rule[2], constant(0, unit::metre));
      auto further = let("p_+", unit::percent, minimum(rule[1] * beyond, rule[3]));
      return percent(nominal * (rule[0] + further));  // in this order 3 % of 230 V is 6.9 V to the last bit
    },
    "The limit guards the working of the equipment, not its safety. A maker's narrower supply tolerance comes first.");

inline constexpr auto check_adiabatic = check(
    out{"check_adiabatic", "I²t", unit::ampere_squared_second, "Energy let through in a fault against what the conductor bears."},
    in(detail::conductor_area, detail::adiabatic_k_arg, detail::let_through), rule_use{"adiabatic"}, comparator::at_most, adiabatic_equation,
    [](auto, auto, auto energy) { return energy; }, [](auto, auto area, auto k, auto) { return call(adiabatic_withstand, area, k); },
    "The energy is the maker's figure at the prospective current, or I² t from 0.1 to 5 s; the k is that of the arrangement, not of the metal alone.");

inline constexpr column minimum_voltage_rule[] = {{"C_min", unit::one}};
inline constexpr auto check_loop_impedance = check(
    out{"check_loop_impedance", "Z_s", unit::ohm, "Earth fault loop impedance against the highest at which the device disconnects in time."},
    in(arg{"loop_impedance_ohm", "Z_s", unit::ohm, between(0, 1e6), "loop impedance at the furthest point"}.usually(0.1, 3).read_by(reads::loop_impedance),
       arg{"voltage_v", "U_0", unit::volt, positive_to(1e5), "nominal voltage to earth"}.usually(100, 250),
       arg{"operating_current_a", "I_a", unit::ampere, positive_to(1e6), "current that operates the device in the required time"}.usually(15, 1000)),
    rule_use{"minimum_voltage_factor", "", minimum_voltage_rule}, comparator::at_most, source{"BS 7671:2018+A2:2022", "411.4.4", "memory"},
    [](auto impedance, auto, auto) { return impedance; },
    [](auto rule, auto, auto voltage, auto current) { return call(max_earth_fault_loop_impedance, voltage, rule[0], current); },
    "A reading on cold cable is lower than the loop when warm: bring the conductors' part to their working temperature first. A live test: prove the protective conductor dead first.");

inline constexpr column insulation_rule[] = {{"R_min", unit::megaohm}};
inline constexpr choice_row circuit_kind_rows[] = {
    {"selv_pelv", "SELV or PELV, tested with 250 V d.c.", {}, {}},
    {"up_to_500_v", "up to and including 500 V, tested with 500 V d.c.", {}, {}},
    {"above_500_v", "above 500 V, tested with 1000 V d.c.", {}, {}}};
inline constexpr choice_table circuit_kinds{{}, circuit_kind_rows};

inline constexpr auto check_insulation = check(
    out{"check_insulation", "R", unit::megaohm, "Insulation resistance against the rulebook's least value."},
    in(arg{"resistance_mohm", "R", unit::megaohm, between(0, 1e9), "insulation resistance at the rulebook's test voltage"}.usually(0.1, 200).read_by(reads::insulation),
       choice{"circuit_kind", circuit_kinds, "kind of circuit, which sets the test voltage"}),
    rule_use{"insulation_minimum", "circuit_kind", insulation_rule}, comparator::at_least, source{"IEC 60364-6", "Table 6.1"},
    [](auto resistance, auto) { return resistance; }, [](auto rule, auto, auto) { return rule[0]; },
    "Dead and isolated; electronics, controllers, sensors, mirrors and neon indicators taken off: they read low and may be damaged. A sound circuit reads far above the limit.");

inline constexpr column trip_time_rule[] = {{"t_max", unit::millisecond}};
inline constexpr choice_row rcd_kind_rows[] = {{"general", "general type", {}, {}}, {"selective", "selective (time-delayed) type", {}, {}}};
inline constexpr choice_table rcd_kinds{{}, rcd_kind_rows};

inline constexpr auto check_rcd_trip = check(
    out{"check_rcd_trip", "t", unit::millisecond, "Tripping time of a residual current device at its rated residual current against the rulebook's limit."},
    in(arg{"time_ms", "t", unit::millisecond, between(0, 1e6), "tripping time at 1 x the rated residual current"}.usually(5, 600).read_by(reads::rcd_time),
       choice{"rcd_kind", rcd_kinds, "kind of device"}),
    rule_use{"rcd_trip_time", "rcd_kind", trip_time_rule}, comparator::at_most, source{"IEC 61008-1", "operating times at I_Δn"},
    [](auto time, auto) { return time; }, [](auto rule, auto, auto) { return rule[0]; },
    "A live test: prove the protective conductor first. The worse of the two half-waves counts. A selective type also has a least time, which this check does not judge.");

}  // namespace electrical
}  // namespace v1
}  // namespace makegood
