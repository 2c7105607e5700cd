// SPDX-License-Identifier: MIT
// Protective devices by standard: the current at which they operate, and what follows for loops, touch voltage and earthing.
// Subject: electrical. Devices are known by their standard and their figures alone.
#pragma once
#include "protection.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

inline constexpr source breaker_bands{"IEC 60898-1", "Table 2, bands of instantaneous operation", "memory"};
inline constexpr source fuse_loop_tables{"BS 7671:2008 and 2008+A1:2011", "Table 41.2, I_a = 230 V/Z_s of the printed limit (C_min 1)"};
inline constexpr source touch_rule{"IEC 60364-4-41", "415.2.2, R ≤ 50 V/I_a"};

inline constexpr column breaker_columns[] = {{"n_low", unit::one}, {"n_high", unit::one}};
inline constexpr choice_row breaker_rows[] = {{"B", "type B", {3, 5}}, {"C", "type C", {5, 10}}, {"D", "type D", {10, 20}}};
inline constexpr choice_table breakers{breaker_columns, breaker_rows};
namespace detail {
inline constexpr arg rating_arg = arg{"rating_a", "I_n", unit::ampere, positive_to(1e4), "rated current of the device"}.usually(6, 63);
}
inline constexpr auto breaker_operating_current = formula(
    out{"breaker_operating_current", "I_a", unit::ampere, "Current at which a circuit-breaker or RCBO is sure to operate at once: the upper end of its band."},
    in(choice{"type", breakers, "band of instantaneous operation"}, detail::rating_arg), breaker_bands,
    [](auto type, auto rating) { return type[1] * rating; },
    remarks{"exact to rounding; the same for 0.1, 0.2, 0.4, 1 and 5 s, since a lower current would leave it to the slow thermal part", "0 without rating"});
inline constexpr auto breaker_holding_current = formula(
    out{"breaker_holding_current", "I", unit::ampere, "Highest current that a circuit-breaker or RCBO is sure to bear without instantaneous operation: the lower end of its band."},
    in(choice{"type", breakers, "band of instantaneous operation"}, detail::rating_arg), breaker_bands,
    [](auto type, auto rating) { return type[0] * rating; },
    remarks{"exact to rounding; an inrush peak above it may trip the device", ""});

// Z_s at 0.4 s and at 5 s as printed for 230 V and C_min 1; 0: not read, so that the maker's curve is asked for.
inline constexpr column fuse_columns[] = {{"I_n", unit::ampere}, {"Z_0.4", unit::ohm}, {"Z_5", unit::ohm}};
inline constexpr choice_row fuse_rows[] = {
    {"bs88_2_2_6", "BS 88-2.2 or 88-6 gG, 6 A", {6, 8.52, 0}},      {"bs88_2_2_10", "BS 88-2.2 or 88-6 gG, 10 A", {10, 5.11, 0}}, {"bs88_2_2_16", "BS 88-2.2 or 88-6 gG, 16 A", {16, 2.70, 0}},
    {"bs88_2_2_20", "BS 88-2.2 or 88-6 gG, 20 A", {20, 1.77, 0}},   {"bs88_2_2_25", "BS 88-2.2 or 88-6 gG, 25 A", {25, 1.44, 0}}, {"bs88_2_2_32", "BS 88-2.2 or 88-6 gG, 32 A", {32, 1.04, 0}},
    {"bs88_2_6", "BS 88-2:2010 gG, 6 A", {6, 8.21, 0}},             {"bs88_2_10", "BS 88-2:2010 gG, 10 A", {10, 4.89, 0}},        {"bs88_2_16", "BS 88-2:2010 gG, 16 A", {16, 2.56, 0}},
    {"bs88_2_20", "BS 88-2:2010 gG, 20 A", {20, 1.77, 0}},          {"bs88_2_25", "BS 88-2:2010 gG, 25 A", {25, 1.35, 0}},        {"bs88_2_32", "BS 88-2:2010 gG, 32 A", {32, 1.04, 0}},
    {"bs1361_5", "BS 1361 type I, 5 A", {5, 10.45, 0}},             {"bs1361_20", "BS 1361 type I, 20 A", {20, 1.70, 0}},         {"bs1361_30", "BS 1361 type I, 30 A", {30, 0, 1.84}},
    {"bs3036_15", "BS 3036 rewirable, 15 A", {15, 2.55, 0}},        {"bs3036_20", "BS 3036 rewirable, 20 A", {20, 1.77, 0}},      {"bs3036_30", "BS 3036 rewirable, 30 A", {30, 1.09, 0}},
    {"bs1362_3", "BS 1362 plug fuse, 3 A", {3, 16.4, 0}},           {"bs1362_13", "BS 1362 plug fuse, 13 A", {13, 2.42, 0}}};
inline constexpr choice_table fuses{fuse_columns, fuse_rows};
inline constexpr column disconnection_columns[] = {{"t", unit::second}};
inline constexpr choice_row disconnection_rows[] = {{"0.4", "0.4 s", {0.4}}, {"5", "5 s", {5}}};
inline constexpr choice_table disconnections{disconnection_columns, disconnection_rows};
inline constexpr auto fuse_operating_current = formula(
    out{"fuse_operating_current", "I_a", unit::ampere, "Current that operates a fuse in the required time."},
    in(choice{"fuse", fuses, "fuse by standard and rated current"}, choice{"disconnection_time_s", disconnections, "required time of disconnection, s"}), fuse_loop_tables,
    [](auto fuse, auto time) { return constant(230.0, unit::volt) / select(time[0] < constant(1.0, unit::second), fuse[1], fuse[2]); },
    requires_that([](auto fuse, auto time) { return (time[0] > 1.0 && fuse[2] > 0.0) || (time[0] < 1.0 && fuse[1] > 0.0); },
                  "the printed limit of this fuse at this time was read; otherwise take the maker's time-current curve"),
    remarks{"within 0.3 % of the curve: the printed limit is rounded to 0.01 Ω", "later editions multiply the limit by C_min, not the current"});

inline constexpr column conventional_columns[] = {{"k_2", unit::one}, {"k_1", unit::one}};
inline constexpr choice_row conventional_rows[] = {
    {"breaker", "circuit-breaker or RCBO of IEC 60898-1 or 61009-1", {1.45, 1.13}}, {"gg_16_up", "gG fuse, 16 A and above", {1.6, 1.25}},
    {"gg_4_to_16", "gG fuse, above 4 A and below 16 A", {1.9, 1.5}},               {"gg_to_4", "gG fuse, 4 A and below", {2.1, 1.5}},
    {"bs1361", "BS 1361 cartridge fuse", {1.5, 0}},                                  {"bs3036", "BS 3036 rewirable fuse", {2.0, 0}}};
inline constexpr choice_table conventional_devices{conventional_columns, conventional_rows};
inline constexpr auto conventional_operating_current = formula(
    out{"conventional_operating_current", "I_2", unit::ampere, "Current that is sure to operate an overload device within its conventional time."},
    in(choice{"device", conventional_devices, "kind of device"}, detail::rating_arg),
    source{"IEC 60898-1 and IEC 60269-1", "conventional times and currents", "memory"}, [](auto device, auto rating) { return device[0] * rating; },
    remarks{"exact to rounding; conventional time 1 h up to 63 A", ""});

inline constexpr auto cold_loop_limit = formula(
    out{"cold_loop_limit", "Z_m", unit::ohm, "Rule of thumb for a loop read on cold conductors: 0.8 of the limit."},
    in(arg{"limit_ohm", "Z_s", unit::ohm, positive_to(1e6), "highest loop impedance at working temperature, with C_min in it"}.usually(0.2, 8)),
    source{"Rule of the trade", "0.8 times the limit", "common-practice"}, [](auto limit) { return 0.8 * limit; },
    remarks{"on the safe side: about 1/1.2 applied to the whole loop although its outer part is not warmed; never together with a correction for temperature", ""});

inline constexpr auto earth_resistance_limit = formula(
    out{"earth_resistance_limit", "R_A", unit::ohm, "Highest resistance of electrode and protective conductors with a residual current device."},
    in(arg{"residual_current_ma", "I_Δn", unit::milliampere, positive_to(1e5), "rated residual current"}.usually(10, 500),
       arg{"touch_voltage_v", "U_L", unit::volt, positive_to(1000), "limit of touch voltage: 50 V, in some locations 25 V"}.usually(25, 50).otherwise(50)),
    source{"IEC 60364-4-41", "411.5.3, R_A I_Δn ≤ 50 V"}, [](auto residual, auto touch) { return touch / milli(residual); },
    remarks{"exact to rounding; above 200 Ω an electrode may not be stable", ""});

MAKEGOOD_ARGUMENTS(touch_voltage_arguments, (voltage_v, external_ohm, line_ohm, protective_ohm));
inline constexpr auto touch_voltage = formula(
    out{"touch_voltage", "U_t", unit::volt, "Voltage on exposed metal during an earth fault, against the main earthing terminal."},
    in<touch_voltage_arguments>(
        arg{"voltage_v", "U_0", unit::volt, positive_to(1e5), "nominal voltage to earth"}.usually(100, 250),
        arg{"external_ohm", "Z_e", unit::ohm, between(0, 1e6), "impedance of the loop outside the installation"}.usually(0.1, 0.8),
        arg{"line_ohm", "R_1", unit::ohm, between(0, 1e6), "resistance of the line conductor"}.usually(0.05, 1),
        arg{"protective_ohm", "R_2", unit::ohm, positive_to(1e6), "resistance of the protective conductor"}.usually(0.05, 1)),
    source{"Voltage divider of the earth fault loop", "U_t = U_0 R_2/(Z_e + R_1 + R_2)", "derived"},
    [](auto voltage, auto external, auto line, auto protective) { return voltage * protective / (external + line + protective); },
    remarks{"impedances added as numbers; with main bonding in place", ""});

inline constexpr auto bonding_resistance_limit = formula(
    out{"bonding_resistance_limit", "R", unit::ohm, "Highest resistance between parts that can be touched together, for supplementary bonding."},
    in(arg{"operating_current_a", "I_a", unit::ampere, positive_to(1e6), "current that operates the device: within 5 s an overcurrent device, I_Δn of a residual current device"}.usually(0.03, 320),
       arg{"touch_voltage_v", "U_L", unit::volt, positive_to(1000), "limit of touch voltage: 50 V, in some locations 25 V"}.usually(25, 50).otherwise(50)),
    touch_rule, [](auto current, auto touch) { return touch / current; }, remarks{"exact to rounding", ""});

inline constexpr auto extraneous_part_resistance = formula(
    out{"extraneous_part_resistance", "R", unit::ohm, "Resistance to the main earthing terminal above which metal counts as isolated from earth."},
    in(arg{"voltage_v", "U_0", unit::volt, positive_to(1e5), "nominal voltage to earth"}.usually(100, 250),
       arg{"body_current_ma", "I_B", unit::milliampere, positive_to(1000), "current through the body that is accepted"}.usually(0.5, 30),
       arg{"body_impedance_ohm", "Z_B", unit::ohm, between(0, 1e5), "impedance of the body: 1000 Ω is the usual design figure"}.usually(500, 2000).otherwise(1000)),
    source{"IET Guidance Note 8", "R > U_0/I_B - Z_B", "memory"},
    [](auto voltage, auto current, auto body) { return voltage / milli(current) - body; },
    remarks{"exact to rounding; 22 kΩ at 10 mA, 6.7 kΩ at 30 mA", "below 0 where the body alone keeps the current down"});

inline constexpr auto protective_conductor_area = formula(
    out{"protective_conductor_area", "S", unit::square_millimetre, "Cross-section of a protective conductor of the same metal by the table, without calculation."},
    in(arg{"line_area_mm2", "S_L", unit::square_millimetre, positive_to(1e4), "cross-section of the line conductor"}.usually(1, 50)),
    source{"BS 7671:2008 and later", "Table 54.7; IEC 60364-5-54 Table 54.2"},
    [](auto line) { return select(line <= constant(16.0, unit::square_millimetre), line, select(line <= constant(35.0, unit::square_millimetre), constant(16.0, unit::square_millimetre), line / 2.0)); },
    remarks{"exact; flat twin cables have a smaller protective conductor than the table: the adiabatic equation is then required", ""});

inline constexpr auto joint_resistance_under_load = formula(
    out{"joint_resistance_under_load", "R", unit::ohm, "Resistance of a joint, or of a run with its joints, from the voltage across it under load."},
    in(arg{"drop_v", "ΔU", unit::volt, between(0, 1000), "voltage across the joint, or voltage without load less voltage under load at one place"}.usually(0.01, 5),
       arg{"current_a", "I", unit::ampere, positive_to(1e4), "current at the same time"}.usually(5, 32)),
    source{"Ohm's law", "R = ΔU/I", "derived"}, [](auto drop, auto current) { return drop / current; },
    remarks{"that of the two readings; the supply's own change between them is an error of like size", "0 Ω without drop"});
inline constexpr auto joint_heating = formula(
    out{"joint_heating", "P", unit::watt, "Heat made in a joint by the current through it."},
    in(arg{"resistance_ohm", "R", unit::ohm, between(0, 1e4), "resistance of the joint"}.usually(0.001, 1),
       arg{"current_a", "I", unit::ampere, between(0, 1e4), "current through it"}.usually(5, 32)),
    source{"Joule's law", "P = I² R", "derived"}, [](auto resistance, auto current) { return square(current) * resistance; },
    remarks{"exact to rounding; a few watts in an accessory are enough to char it", "0 W without current"});

inline constexpr auto residual_share = formula(
    out{"residual_share", "p", unit::percent, "Share of a residual current device's rated residual current that the standing leakage takes."},
    in(arg{"leakage_ma", "I_L", unit::milliampere, between(0, 1e5), "standing current in the protective conductors behind the device"}.usually(0.1, 12),
       arg{"residual_current_ma", "I_Δn", unit::milliampere, positive_to(1e5), "rated residual current"}.usually(10, 300)),
    source{"BS 7671:2018", "531.3.2: not above 30 %", "memory"}, [](auto leakage, auto residual) { return in_percent(leakage / residual); },
    remarks{"exact to rounding; leakages of several appliances add up to less than their sum", "0 % without leakage"});

}  // namespace electrical
}  // namespace v1
}  // namespace makegood
