// SPDX-License-Identifier: MIT
// Checks of an installation: voltage drop, heating by faults and loads, loops, insulation, residual current devices, bonding, fuses and cords.
// Subject: electrical.
#pragma once
#include "../verdict.hpp"
#include "capacity.hpp"
#include "conductors.hpp"
#include "devices.hpp"
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
inline constexpr choice_row rcd_kind_rows[] = {{"general", "general type", {}, {}}, {"selective", "selective (time-delayed) type", {}, {}},
                                               {"bs4293", "general type of the older BS 4293", {}, {}}};
inline constexpr choice_table rcd_kinds{{}, rcd_kind_rows};

inline constexpr auto check_rcd_trip = check(
    out{"check_rcd_trip", "t", unit::millisecond, "Tripping time of a residual current device at its rated residual current against the rulebook's limit."},
    in(arg{"time_ms", "t", unit::millisecond, between(0, 1e6), "tripping time at 1 x the rated residual current"}.usually(5, 600).read_by(reads::rcd_time),
       choice{"rcd_kind", rcd_kinds, "kind of device"}),
    rule_use{"rcd_trip_time", "rcd_kind", trip_time_rule}, comparator::at_most, source{"IEC 61008-1", "operating times at I_Δn"},
    [](auto time, auto) { return time; }, [](auto rule, auto, auto) { return rule[0]; },
    "A live test: prove the protective conductor first. The worse of the two half-waves counts. A selective type also has a least time: check_rcd_trip_at holds it to both.");

inline constexpr column trip_window_rule[] = {{"t_min", unit::millisecond}, {"t_max", unit::millisecond}};
inline constexpr choice_row rcd_test_rows[] = {{"general_1x", "general type at I_Δn"},     {"general_2x", "general type at 2 I_Δn"},     {"general_5x", "general type at 5 I_Δn"},
                                               {"selective_1x", "selective type at I_Δn"}, {"selective_2x", "selective type at 2 I_Δn"}, {"selective_5x", "selective type at 5 I_Δn"},
                                               {"bs4293_1x", "general type of the older BS 4293 at I_Δn"}, {"bs4293_5x", "general type of the older BS 4293 at 5 I_Δn"}};
inline constexpr choice_table rcd_tests{{}, rcd_test_rows};
inline constexpr auto check_rcd_trip_at = check(
    out{"check_rcd_trip_at", "t", unit::millisecond, "Tripping time of a residual current device at a multiple of its rated residual current, against its longest and, selective, its least time."},
    in(arg{"time_ms", "t", unit::millisecond, between(0, 1e6), "tripping time at this test current"}.usually(5, 600).read_by(reads::rcd_time),
       choice{"rcd_test", rcd_tests, "kind of device and test current"}),
    rule_use{"rcd_trip_window", "rcd_test", trip_window_rule}, comparator::within, source{"IEC 61008-1", "Table 1, operating and non-actuating times"},
    [](auto time, auto) { return time; }, [](auto rule, auto, auto) { return band{rule[0], rule[1]}; },
    "A live test: prove the protective conductor first. Which test currents are required belongs to the edition; times at other currents inform.");

inline constexpr auto check_breaking_capacity = check(
    out{"check_breaking_capacity", "I_pf", unit::ampere, "Prospective fault current against what the protective device can break."},
    in(arg{"fault_current_a", "I_pf", unit::ampere, between(0, 1e6), "highest prospective fault current where the device stands"}.usually(100, 16000),
       arg{"breaking_capacity_a", "I_cn", unit::ampere, positive_to(1e6), "rated short-circuit capacity of the device, or of it with the one before it"}.usually(1500, 16000)),
    rule_use{"breaking_capacity"}, comparator::at_most, source{"IEC 60364-4-43", "434.5.1", "memory"}, [](auto current, auto) { return current; },
    [](auto, auto, auto capacity) { return capacity; },
    "The larger of the currents between lines, line and neutral, and line and earth counts, at the highest supply voltage. A live test: prove the protective conductor dead first.");

inline constexpr auto check_overload = check(
    out{"check_overload", "I_n", unit::ampere, "Rated current of a device between the current of the circuit and the capacity of its cable."},
    in(detail::rating_arg, arg{"design_current_a", "I_b", unit::ampere, between(0, 1e4), "design current"}.usually(1, 5),
       arg{"capacity_a", "I_z", unit::ampere, positive_to(1e4), "capacity of the cable where it lies, all factors in it"}.usually(64, 85)),
    rule_use{"overload_coordination"}, comparator::within, source{"IEC 60364-4-43", "433.1, I_b ≤ I_n ≤ I_z"}, [](auto rating, auto, auto) { return rating; },
    [](auto, auto, auto design, auto capacity) { return band{design, capacity}; },
    "The worst place of the run counts: in insulation, in a group, in a hot space.");

inline constexpr column overload_factor_rule[] = {{"k", unit::one}};
inline constexpr auto check_overload_operation = check(
    out{"check_overload_operation", "I_2", unit::ampere, "Current that is sure to operate the device against what the cable bears for a while."},
    in(arg{"operating_current_a", "I_2", unit::ampere, positive_to(1e4), "conventional operating current of the device"}.usually(8, 100),
       arg{"capacity_a", "I_z", unit::ampere, positive_to(1e4), "capacity of the cable where it lies, all factors in it"}.usually(10, 85)),
    rule_use{"overload_operation", "", overload_factor_rule}, comparator::at_most, source{"IEC 60364-4-43", "433.1, I_2 ≤ 1.45 I_z"}, [](auto current, auto) { return current; },
    [](auto rule, auto, auto capacity) { return rule[0] * capacity; },
    "Circuit-breakers meet it whenever their rating is within the capacity; a rewirable fuse needs the factor 0.725.");

inline constexpr column touch_limit_rule[] = {{"U_L", unit::volt}};
inline constexpr choice_row location_rows[] = {{"general", "ordinary location"}, {"special", "location with the lower limit, such as medical or agricultural"}};
inline constexpr choice_table locations{{}, location_rows};
inline constexpr auto check_touch_voltage = check(
    out{"check_touch_voltage", "U_t", unit::volt, "Touch voltage that stays, against its conventional limit."},
    in(arg{"touch_voltage_v", "U_t", unit::volt, between(0, 1e4), "voltage that stays on exposed metal"}.usually(0, 120).read_by(reads::voltage), choice{"location", locations, "kind of location"}),
    rule_use{"touch_voltage_limit", "location", touch_limit_rule}, comparator::at_most, source{"IEC 60364-4-41", "411 and 415.2, conventional touch voltage limit"},
    [](auto voltage, auto) { return voltage; }, [](auto rule, auto, auto) { return rule[0]; },
    "A voltage above the limit is allowed only until automatic disconnection. Isolate; do not touch the metal to find out.");

inline constexpr auto check_supplementary_bonding = check(
    out{"check_supplementary_bonding", "R", unit::ohm, "Resistance between parts that can be touched together against the limit from the device's current."},
    in(arg{"resistance_ohm", "R", unit::ohm, between(0, 1e6), "resistance between the parts"}.usually(0.01, 2).read_by(reads::continuity),
       arg{"operating_current_a", "I_a", unit::ampere, positive_to(1e6), "current that operates the device: within 5 s, or I_Δn of a residual current device"}.usually(0.03, 320),
       choice{"location", locations, "kind of location"}),
    rule_use{"touch_voltage_limit", "location", touch_limit_rule}, comparator::at_most, touch_rule, [](auto resistance, auto, auto) { return resistance; },
    [](auto rule, auto, auto current, auto) { return call(bonding_resistance_limit, current, rule[0]); },
    "Dead and isolated. Left out in a bathroom only where disconnection, 30 mA devices on all circuits and main bonding of all extraneous parts are proved.");

inline constexpr auto check_earth_electrode = check(
    out{"check_earth_electrode", "R_A", unit::ohm, "Resistance of an earth electrode against the limit of the residual current device that relies on it."},
    in(arg{"resistance_ohm", "R_A", unit::ohm, between(0, 1e6), "resistance of electrode and protective conductors"}.usually(5, 400).read_by(reads::loop_impedance),
       arg{"residual_current_ma", "I_Δn", unit::milliampere, positive_to(1e5), "rated residual current"}.usually(10, 500), choice{"location", locations, "kind of location"}),
    rule_use{"touch_voltage_limit", "location", touch_limit_rule}, comparator::at_most, source{"IEC 60364-4-41", "411.5.3, R_A I_Δn ≤ 50 V"},
    [](auto resistance, auto, auto) { return resistance; }, [](auto rule, auto, auto residual, auto) { return call(earth_resistance_limit, residual, rule[0]); },
    "Soil dries and freezes: above 200 Ω an electrode may not be stable. Never disconnect an earth electrode with the installation live.");

inline constexpr column leakage_rule[] = {{"p_max", unit::percent}};
inline constexpr auto check_standing_leakage = check(
    out{"check_standing_leakage", "p", unit::percent, "Standing leakage as a share of the residual current device's rated current, against the share that avoids unwanted trips."},
    in(arg{"leakage_ma", "I_L", unit::milliampere, between(0, 1e5), "standing current in the protective conductors behind the device"}.usually(0.1, 12),
       arg{"residual_current_ma", "I_Δn", unit::milliampere, positive_to(1e5), "rated residual current"}.usually(10, 300)),
    rule_use{"standing_leakage", "", leakage_rule}, comparator::at_most, source{"BS 7671:2018", "531.3.2", "memory"},
    [](auto leakage, auto residual) { return call(residual_share, leakage, residual); }, [](auto rule, auto, auto) { return rule[0]; },
    "More than the share is a cause of unwanted trips, not a danger by itself; less than it proves nothing about insulation.");

inline constexpr column disconnection_rule[] = {{"t_max", unit::second}};
inline constexpr choice_row disconnection_kind_rows[] = {{"tn_final", "final circuit in a TN system, above 120 up to 230 V"}, {"tt_final", "final circuit in a TT system, above 120 up to 230 V"},
                                                         {"tn_distribution", "distribution circuit in a TN system"},           {"tt_distribution", "distribution circuit in a TT system"},
                                                         {"tn_final_120_v", "final circuit in a TN system, above 50 up to 120 V"}, {"tn_final_400_v", "final circuit in a TN system, above 230 up to 400 V"},
                                                         {"tn_final_above_400_v", "final circuit in a TN system, above 400 V"}, {"tt_final_400_v", "final circuit in a TT system, above 230 up to 400 V"},
                                                         {"tt_final_above_400_v", "final circuit in a TT system, above 400 V"}};
inline constexpr choice_table disconnection_kinds{{}, disconnection_kind_rows};
inline constexpr auto check_disconnection_time = check(
    out{"check_disconnection_time", "t", unit::second, "Time in which a fault is disconnected against the longest that the system allows."},
    in(arg{"time_s", "t", unit::second, between(0, 1e4), "time to disconnection at the fault current"}.usually(0.01, 5), choice{"circuit", disconnection_kinds, "system and kind of circuit"}),
    rule_use{"disconnection_time", "circuit", disconnection_rule}, comparator::at_most, source{"IEC 60364-4-41", "411.3.2, Table 41.1"}, [](auto time, auto) { return time; },
    [](auto rule, auto, auto) { return rule[0]; }, "The time belongs to the device's slowest curve at the lowest fault current, with warm conductors.");

inline constexpr column cold_loop_rule[] = {{"k", unit::one}};
inline constexpr auto check_cold_loop_impedance = check(
    out{"check_cold_loop_impedance", "Z_m", unit::ohm, "Loop impedance read on cold conductors against the rule of thumb."},
    in(arg{"loop_impedance_ohm", "Z_m", unit::ohm, between(0, 1e6), "loop impedance read, cold"}.usually(0.1, 3).read_by(reads::loop_impedance),
       arg{"limit_ohm", "Z_s", unit::ohm, positive_to(1e6), "highest loop impedance at working temperature, with C_min in it"}.usually(0.2, 8)),
    rule_use{"warm_cable_factor", "", cold_loop_rule}, comparator::at_most, source{"Rule of the trade", "0.8 times the limit", "common-practice"},
    [](auto impedance, auto) { return impedance; }, [](auto rule, auto, auto limit) { return rule[0] * limit; },
    "In place of a correction for temperature, never together with one. A live test: prove the protective conductor dead first.");

inline constexpr column bonding_rule[] = {{"R_max", unit::ohm}};
inline constexpr auto check_bonding_continuity = check(
    out{"check_bonding_continuity", "R", unit::ohm, "Resistance of a bonding conductor and its clamps against the trade's figure for a sound one."},
    in(arg{"resistance_ohm", "R", unit::ohm, between(0, 1e6), "resistance from the main earthing terminal to the metal, clamp included"}.usually(0.01, 0.2).read_by(reads::continuity)),
    rule_use{"bonding_continuity", "", bonding_rule}, comparator::at_most, source{"Rule of the trade", "0.05 Ω", "common-practice"}, [](auto resistance) { return resistance; },
    [](auto rule, auto) { return rule[0]; }, "Dead and isolated, one end of the conductor off: parallel paths hide a loose clamp. A long run has its own resistance.");

inline constexpr auto check_fuse_for_load = check(
    out{"check_fuse_for_load", "I_b", unit::ampere, "Current of an appliance against the fuse of its plug or connection unit."},
    in(arg{"load_current_a", "I_b", unit::ampere, between(0, 1000), "current of the appliance"}.usually(0.1, 12), arg{"fuse_rating_a", "I_n", unit::ampere, positive_to(1000), "rated current of the fuse"}.usually(3, 13)),
    rule_use{"fuse_for_load"}, comparator::at_most, source{"IEC 60364-4-43", "433.1, I_b ≤ I_n"}, [](auto load, auto) { return load; }, [](auto, auto, auto rating) { return rating; },
    "Motors and power supplies draw more when they are switched on: the maker's figure for the fuse comes first. 3 A at 230 V is only 690 W.");

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_flex_for_fuse_arguments, (fuse_rating_a, area_mm2, ambient_c), (conductor_max_c = T(60.0)));
inline constexpr auto check_flex_for_fuse = check(
    out{"check_flex_for_fuse", "I_n", unit::ampere, "Fuse of an appliance against the capacity of its flexible cord where it lies."},
    in<check_flex_for_fuse_arguments>(
        arg{"fuse_rating_a", "I_n", unit::ampere, positive_to(1000), "rated current of the fuse"}.usually(3, 13), choice{"area_mm2", flexes, "cross-section of the cord, mm²"},
        arg{"ambient_c", "t_a", unit::celsius, between(-50, 300), "temperature around the cord"}.usually(20, 50),
        arg{"conductor_max_c", "t_p", unit::celsius, between(40, 300), "highest normal temperature of the cord: 60 °C for common ones"}.usually(60, 90).otherwise(60)),
    rule_use{"flex_protection"}, comparator::at_most, source{"BS 7671:2008 and later", "Appendix 4, Table 4F3A"}, [](auto fuse, auto, auto, auto) { return fuse; },
    [](auto, auto, auto cord, auto ambient, auto hottest) { return cord[0] * minimum(sqrt((hottest - ambient) / constant(30.0, unit::kelvin)), constant(1.0, unit::one)); },
    "A fuse above the cord's rating may be right under the appliance's own standard (short cords of 0.75 mm² on a 13 A plug): ask the maker before condemning it.",
    requires_that([](auto, auto, auto ambient, auto hottest) { return ambient <= hottest; }, "the surroundings are not hotter than the cord may be"));

// Ranks: each type does all that those before it do.
inline constexpr column rcd_type_columns[] = {{"rank", unit::one}};
inline constexpr choice_row rcd_type_rows[] = {{"AC", "type AC: alternating residual current", {1}}, {"A", "type A: pulsating direct current as well", {2}},
                                               {"F", "type F: mixed frequencies of single-phase drives as well", {3}}, {"B", "type B: smooth direct current as well", {4}}};
inline constexpr choice_table rcd_types{rcd_type_columns, rcd_type_rows};
inline constexpr column ramp_rule[] = {{"n_low", unit::one}, {"n_high", unit::one}};
inline constexpr auto check_rcd_ramp = check(
    out{"check_rcd_ramp", "I_t", unit::milliampere, "Residual current at which a device tripped while it rose slowly, against the band of its rated residual current."},
    in(arg{"trip_current_ma", "I_t", unit::milliampere, between(0, 1e5), "alternating residual current at which it tripped, standing leakage included if it was on"}.usually(15, 30),
       arg{"residual_current_ma", "I_Δn", unit::milliampere, positive_to(1e5), "rated residual current"}.usually(30, 30),
       choice{"rcd_type", rcd_types, "type marked on the device"}),
    rule_use{"rcd_ramp", "rcd_type", ramp_rule}, comparator::within, source{"IEC 61008-1", "Table 1: no trip at 0.5 I_Δn, trip at I_Δn", "memory"},
    [](auto current, auto, auto) { return current; },
    [](auto rule, auto, auto residual, auto) { return band{rule[0] * residual, rule[1] * residual}; },
    "A live test: prove the protective conductor first. Standing leakage takes a part of the test current: below the band, test again with the circuits off. "
    "The ramp informs; it does not take the place of the time at the rated current.");

inline constexpr column load_rank_columns[] = {{"needed", unit::one}};
inline constexpr choice_row load_electronics_rows[] = {
    {"resistive", "resistive load, no electronics", {1}},
    {"single_phase_electronics", "single-phase electronics: controllers, power supplies, LED lighting, dimmers", {2}},
    {"class_1_it", "several power supplies of office or entertainment equipment", {2}},
    {"single_phase_drive", "single-phase variable-speed drive: washing machine, heat pump, inverter fan", {3}},
    {"three_phase_rectifier", "three-phase rectifier, photovoltaic inverter without separation, charging point without its own detection of direct current", {4}}};
inline constexpr choice_table load_electronics{load_rank_columns, load_electronics_rows};
inline constexpr auto check_rcd_type_for_load = check(
    out{"check_rcd_type_for_load", "type", unit::one, "Type of a residual current device (rank AC 1, A 2, F 3, B 4) against what the electronics of its load need."},
    in(choice{"rcd_type", rcd_types, "type marked on the device"}, choice{"load", load_electronics, "electronics of the load"}), rule_use{"rcd_type_for_load"}, comparator::at_least,
    source{"IEC 60755 and IEC 62423", "types of residual current device", "memory"}, [](auto type, auto) { return type[0]; }, [](auto, auto, auto load) { return load[0]; },
    "Direct current can blind a device of a lesser type. The maker of the load comes first: some state the type in their instructions.");

inline constexpr auto check_maximum_demand = check(
    out{"check_maximum_demand", "I", unit::ampere, "Demand of the installation against the rating of its supply."},
    in(arg{"demand_a", "I", unit::ampere, between(0, 1e4), "demand after diversity"}.usually(10, 120), arg{"supply_rating_a", "I_n", unit::ampere, positive_to(1e4), "rated current of the supply's fuse"}.usually(40, 100)),
    rule_use{"maximum_demand"}, comparator::at_most, source{"BS 7671:2018", "311.1"}, [](auto demand, auto) { return demand; }, [](auto, auto, auto rating) { return rating; },
    "The supply's fuse belongs to the network operator: read its rating from the carrier only, and ask the operator.");

inline constexpr column ring_capacity_rule[] = {{"I_min", unit::ampere}};
inline constexpr auto check_ring_capacity = check(
    out{"check_ring_capacity", "I_z", unit::ampere, "Capacity of the cable of a ring for socket outlets, 30 or 32 A, against the least that each leg needs."},
    in(arg{"capacity_a", "I_z", unit::ampere, between(0, 1e4), "capacity of the cable where it lies, all factors in it"}.usually(14, 32)),
    rule_use{"ring_leg_capacity", "", ring_capacity_rule}, comparator::at_least, source{"BS 7671:2008", "433.1.5; 433.1.204 since"}, [](auto capacity) { return capacity; },
    [](auto rule, auto) { return rule[0]; },
    "The worst place of the ring counts: in insulation, in a group, in a hot space. The load may still lie so that one leg carries more than its share: spur_load.");
inline constexpr auto check_ring_leg_current = check(
    out{"check_ring_leg_current", "I_1", unit::ampere, "Current in one leg of a ring against the capacity of its cable."},
    in(arg{"leg_current_a", "I_1", unit::ampere, between(0, 1e4), "lasting current in the leg that carries more"}.usually(5, 30),
       arg{"capacity_a", "I_z", unit::ampere, positive_to(1e4), "capacity of the cable where it lies, all factors in it"}.usually(14, 32)),
    rule_use{"ring_leg_current"}, comparator::at_most, source{"BS 7671:2018", "433.1.204", "memory"}, [](auto current, auto) { return current; },
    [](auto, auto, auto capacity) { return capacity; },
    "The ring's device does not see the share of one leg. A large load near the board, or a broken ring, puts nearly all of it on one leg.");
inline constexpr column floor_area_rule[] = {{"A_max", unit::square_metre}};
inline constexpr auto check_ring_floor_area = check(
    out{"check_ring_floor_area", "A", unit::square_metre, "Floor area served by one ring for socket outlets against the usual design rule."},
    in(arg{"floor_area_m2", "A", unit::square_metre, between(0, 1e5), "floor area that the ring serves"}.usually(20, 150)),
    rule_use{"ring_floor_area", "", floor_area_rule}, comparator::at_most, source{"BS 7671:2018", "Appendix 15, informative", "memory"}, [](auto area) { return area; },
    [](auto rule, auto) { return rule[0]; }, "A rule of design for dwellings, not of safety: kitchens and utility rooms load a ring more than their floor says.");

// What a device of at most so many milliampere has to stand before, whatever else protects the circuit.
inline constexpr column additional_protection_rule[] = {{"I_max", unit::milliampere}};
inline constexpr choice_row additional_protection_rows[] = {
    {"socket_outlet", "socket-outlets up to 32 A that anybody may use (up to 20 A in editions before 2018)"},
    {"lighting_dwelling", "lighting circuits of a dwelling"},
    {"mobile_outdoor", "mobile equipment up to 32 A used outdoors"},
    {"buried_cable", "cables less than 50 mm deep in a wall without earthed metal about them or other protection"},
    {"bathroom", "circuits that serve a room with a bath or shower, or pass through its zones 1 and 2"},
    {"floor_heating", "electric heating in a floor or ceiling"},
    {"swimming", "circuits in the zones of a swimming pool that are protected by disconnection"},
    {"sauna", "circuits of a sauna cabin other than its heater"},
    {"vehicle_charging", "charging point of a vehicle"}};
inline constexpr choice_table additional_protection_uses{{}, additional_protection_rows};
inline constexpr auto check_additional_protection = check(
    out{"check_additional_protection", "I_Δn", unit::milliampere, "Rated residual current of the device that protects a circuit against the highest permitted for its use."},
    in(arg{"rcd_residual_ma", "I_Δn", unit::milliampere, positive_to(1e5), "rated residual current of the device; none at all: a reading above 1000 mA, which is censored and fails"}.usually(10, 500),
       choice{"use", additional_protection_uses, "what the circuit serves"}),
    rule_use{"additional_protection", "use", additional_protection_rule}, comparator::at_most, source{"IEC 60364-4-41", "411.3.3, 411.3.4 and 415.1", "memory"},
    [](auto residual, auto) { return residual; }, [](auto rule, auto, auto) { return rule[0]; },
    "Read the rating from the device, and prove by a test that it trips and that the circuit lies behind it: the label of a board proves neither. A time-delayed device does not "
    "count. It is a further protection beside earthing and disconnection, never in their place. A rule newer than the installation is to be named with its edition.");

}  // namespace electrical
}  // namespace v1
}  // namespace makegood
