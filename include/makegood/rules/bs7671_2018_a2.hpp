// SPDX-License-Identifier: MIT
// Rulebook: UK requirements for electrical installations, BS 7671:2018 with Amendment 2 (2022).
// Numbers only; the text of the standard is not reproduced. Grades say what was read and what was recalled.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr rule bs7671_2018_a2_rows[] = {
    // base %, further % per metre, beyond m, at most further %
    {"voltage_drop_limit", "lighting", comparator::at_most, {3.0, 0.005, 100.0, 0.5}, {"BS 7671:2018+A2:2022", "Appendix 4, Table 4Ab", "seen"}, "3 % of the nominal voltage for lighting"},
    {"voltage_drop_limit", "other", comparator::at_most, {5.0, 0.005, 100.0, 0.5}, {"BS 7671:2018+A2:2022", "Appendix 4, Table 4Ab", "seen"}, "5 % of the nominal voltage for other uses"},
    {"adiabatic", "", comparator::at_most, {}, {"BS 7671:2018+A2:2022", "434.5.2, 543.1.3", "memory"}, "the energy let through is not above k²S²"},
    {"minimum_voltage_factor", "", comparator::at_most, {0.95}, {"BS 7671:2018+A2:2022", "411.4.4, C_min 0.95 since BS 7671:2008+A3:2015", "memory"}, "Z_s · I_a is not above U_0 · C_min"},
    {"insulation_minimum", "selv_pelv", comparator::at_least, {0.5}, {"BS 7671:2018+A2:2022", "Table 64 (same values as IEC 60364-6 Table 6.1)", "seen"}, "0.5 MΩ at 250 V d.c."},
    {"insulation_minimum", "up_to_500_v", comparator::at_least, {1.0}, {"BS 7671:2018+A2:2022", "Table 64 (same values as IEC 60364-6 Table 6.1)", "seen"}, "1 MΩ at 500 V d.c."},
    {"insulation_minimum", "above_500_v", comparator::at_least, {1.0}, {"BS 7671:2018+A2:2022", "Table 64 (same values as IEC 60364-6 Table 6.1)", "seen"}, "1 MΩ at 1000 V d.c."},
    {"rcd_trip_time", "general", comparator::at_most, {300.0}, {"BS EN 61008-1 / 61009-1", "operating time at I_Δn", "seen"}, "300 ms at the rated residual current"},
    {"rcd_trip_time", "selective", comparator::at_most, {500.0}, {"BS EN 61008-1 / 61009-1", "operating time at I_Δn", "seen"}, "500 ms at the rated residual current"},
    {"rcd_trip_time", "bs4293", comparator::at_most, {200.0}, {"BS 4293", "operating time at the rated residual current", "seen"}, "200 ms at the rated residual current (older devices)"},
    {"rcd_trip_window", "general_1x", comparator::within, {0.0, 300.0}, {"BS EN 61008-1 / 61009-1", "Table 1", "seen"}, "at most 300 ms at the rated residual current"},
    {"rcd_trip_window", "general_2x", comparator::within, {0.0, 150.0}, {"BS EN 61008-1 / 61009-1", "Table 1", "memory"}, "at most 150 ms at twice the rated residual current"},
    {"rcd_trip_window", "general_5x", comparator::within, {0.0, 40.0}, {"BS EN 61008-1 / 61009-1", "Table 1", "seen"}, "at most 40 ms at five times the rated residual current"},
    {"rcd_trip_window", "selective_1x", comparator::within, {130.0, 500.0}, {"BS EN 61008-1 / 61009-1", "Table 1", "seen"}, "130 to 500 ms at the rated residual current"},
    {"rcd_trip_window", "selective_2x", comparator::within, {60.0, 200.0}, {"BS EN 61008-1 / 61009-1", "Table 1; the least time recalled", "memory"}, "60 to 200 ms at twice the rated residual current"},
    {"rcd_trip_window", "selective_5x", comparator::within, {50.0, 150.0}, {"BS EN 61008-1 / 61009-1", "Table 1; the least time recalled", "memory"}, "50 to 150 ms at five times the rated residual current"},
    {"rcd_trip_window", "bs4293_1x", comparator::within, {0.0, 200.0}, {"BS 4293", "operating time at the rated residual current", "seen"}, "at most 200 ms at the rated residual current (older devices)"},
    {"rcd_trip_window", "bs4293_5x", comparator::within, {0.0, 40.0}, {"BS 4293 and BS 7288", "operating time at five times the rated residual current", "seen"}, "at most 40 ms at five times the rated residual current (older devices)"},
    {"rcd_ramp", "AC", comparator::within, {0.5, 1.0}, {"BS EN 61008-1 / 61009-1", "Table 1: no trip at 0.5 I_Δn, trip at I_Δn", "memory"}, "trips between 0.5 and 1 times the rated residual current"},
    // 1: asked for, 0: informs; for devices up to that many mA (0: all)
    {"rcd_test_required", "half", comparator::at_least, {0.0}, {"BS 7671:2018+A2:2022", "part 6, tests of residual current devices", "memory"}, "informs: no trip at half the rated residual current"},
    {"rcd_test_required", "1x", comparator::at_least, {1.0}, {"BS 7671:2018+A2:2022", "part 6, tests of residual current devices", "memory"}, "asked for: time at the rated residual current, alternating"},
    {"rcd_test_required", "5x", comparator::at_least, {0.0}, {"BS 7671:2018+A2:2022", "part 6, tests of residual current devices", "memory"}, "informs: time at five times the rated residual current"},
    {"rcd_test_required", "ramp", comparator::at_least, {0.0}, {"BS 7671:2018+A2:2022", "part 6, tests of residual current devices", "memory"}, "informs: current at which it trips"},
    {"breaking_capacity", "", comparator::at_most, {}, {"BS 7671:2018+A2:2022", "434.5.1", "memory"}, "the device breaks the highest fault current"},
    {"overload_coordination", "", comparator::within, {}, {"BS 7671:2018+A2:2022", "433.1.1", "memory"}, "I_b ≤ I_n ≤ I_z"},
    {"overload_operation", "", comparator::at_most, {1.45}, {"BS 7671:2018+A2:2022", "433.1.1", "memory"}, "I_2 ≤ 1.45 I_z"},
    {"touch_voltage_limit", "general", comparator::at_most, {50.0}, {"BS 7671:2018+A2:2022", "411.5.3, 415.2.2", "seen"}, "50 V a.c."},
    {"touch_voltage_limit", "special", comparator::at_most, {25.0}, {"BS 7671:2018+A2:2022", "part 7, locations with the lower limit", "memory"}, "25 V a.c."},
    // zones of a room with a bath or shower: height (1: counted from the bottom of the basin), widths in plan along a taut string, m
    {"bathroom_zone_height", "", comparator::at_most, {2.25, 0.0}, {"BS 7671:2018+A2:2022", "701.32, read in a paraphrase", "seen"}, "up to 2.25 m above the floor, or the highest fixed outlet"},
    {"bathroom_zone1_radius", "", comparator::at_most, {1.20}, {"BS 7671:2018+A2:2022", "701.32, read in a paraphrase", "seen"}, "without a basin 1.20 m from the centre of the fixed outlet"},
    {"bathroom_zone2_width", "", comparator::at_most, {0.60}, {"BS 7671:2018+A2:2022", "701.32, read in a paraphrase", "seen"}, "0.60 m beyond zone 1 of a bath or tray"},
    {"bathroom_zone0_height", "", comparator::at_most, {0.10}, {"BS 7671:2018+A2:2022", "701.32", "memory"}, "without a basin 0.10 m high"},
    {"bathroom_limited_by", "low_partition", comparator::at_least, {1.0}, {"BS 7671:2018+A2:2022", "701.32", "memory"}, "the shorter way round or over it counts"},
    {"bathroom_limited_by", "door", comparator::at_least, {1.0}, {"BS 7671:2018+A2:2022", "701.32", "memory"}, "doors limit the zones"},
    {"bathroom_limited_by", "window", comparator::at_least, {1.0}, {"BS 7671:2018+A2:2022", "701.32", "memory"}, "fixed panes limit the zones"},
    {"bathroom_socket_distance", "", comparator::at_least, {2.5}, {"BS 7671:2018+A2:2022", "701.512.3", "memory"}, "socket-outlets at least 2.5 m from zone 1, in plan"},
    {"bathroom_ip", "zone_0", comparator::at_least, {7.0}, {"BS 7671:2018+A2:2022", "701.512.2", "memory"}, "IPX7"},
    {"bathroom_ip", "zone_1", comparator::at_least, {4.0}, {"BS 7671:2018+A2:2022", "701.512.2", "memory"}, "IPX4"},
    {"bathroom_ip", "zone_2", comparator::at_least, {4.0}, {"BS 7671:2018+A2:2022", "701.512.2", "memory"}, "IPX4"},
    {"bathroom_ip", "jets", comparator::at_least, {5.0}, {"BS 7671:2018+A2:2022", "701.512.2", "memory"}, "IPX5 where water jets are likely"},
    // SELV and PELV: V a.c., V d.c.
    {"bathroom_selv", "zone_0", comparator::at_most, {12.0, 30.0}, {"BS 7671:2018+A2:2022", "701.414.4.5, 701.55", "memory"}, "12 V a.c., 30 V d.c."},
    {"bathroom_selv", "zone_1", comparator::at_most, {25.0, 60.0}, {"BS 7671:2018+A2:2022", "701.55", "memory"}, "25 V a.c., 60 V d.c."},
    {"bathroom_selv", "zone_2", comparator::at_most, {50.0, 120.0}, {"BS 7671:2018+A2:2022", "414.1.1", "memory"}, "50 V a.c., 120 V d.c., which is what SELV may have"},
    {"bathroom_selv", "switch", comparator::at_most, {12.0, 30.0}, {"BS 7671:2018+A2:2022", "701.512.3", "memory"}, "switches of SELV circuits in zone 1: 12 V a.c., 30 V d.c."},
    // in zones 0, 1, 2 and outside. 0: not permitted, 1: permitted, 2: SELV within the limit for switches, 3: where no direct spray reaches it,
    // 4: beyond the distance of socket-outlets, 5: SELV within the limit of the zone, suited by its maker
    {"bathroom_equipment", "switch", comparator::at_least, {0.0, 2.0, 2.0, 1.0}, {"BS 7671:2018+A2:2022", "701.512.3", "memory"}, "outside the zones; of SELV in zones 1 and 2"},
    {"bathroom_equipment", "pull_cord", comparator::at_least, {0.0, 1.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.512.3", "memory"}, "the insulating cord alone; its switch is judged where it is"},
    {"bathroom_equipment", "socket", comparator::at_least, {0.0, 0.0, 2.0, 4.0}, {"BS 7671:2018+A2:2022", "701.512.3", "memory"}, "outside the zones and beyond the distance; of SELV in zone 2"},
    {"bathroom_equipment", "shaver_supply", comparator::at_least, {0.0, 0.0, 3.0, 1.0}, {"BS 7671:2018+A2:2022", "701.512.3", "memory"}, "zone 2 where no direct spray reaches it, and outside"},
    {"bathroom_equipment", "connection_unit", comparator::at_least, {0.0, 0.0, 0.0, 1.0}, {"BS 7671:2018+A2:2022", "701.512.3", "memory"}, "outside the zones"},
    {"bathroom_equipment", "junction_box", comparator::at_least, {0.0, 0.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.512.3", "memory"}, "zone 2 and outside"},
    {"bathroom_equipment", "towel_rail", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "fan", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "luminaire", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "water_heater", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "shower_unit", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "pump", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "mirror", comparator::at_least, {0.0, 5.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.55", "memory"}, "zone 2 and outside; zone 1: SELV"},
    {"bathroom_equipment", "heater", comparator::at_least, {0.0, 5.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.55", "memory"}, "zone 2 and outside; zone 1: SELV"},
    {"bathroom_equipment", "floor_heating", comparator::at_least, {1.0, 1.0, 1.0, 1.0}, {"BS 7671:2018+A2:2022", "701.753", "memory"}, "below the floor, with an earthed grid, sheath or screen"},
    {"bathroom_floor_heating", "", comparator::at_least, {1.0}, {"BS 7671:2018+A2:2022", "701.753", "memory"}, "an earthed grid, sheath or screen, or SELV"},
    {"bathroom_rcd", "", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "701.411.3.3", "memory"}, "30 mA on all circuits of the room"},
    {"bathroom_bonding", "", comparator::at_least, {1.0}, {"BS 7671:2018+A2:2022", "701.415.2", "memory"}, "supplementary bonding; it may be left out on three conditions"},
    // cables unseen in walls, mm: from which distance of the edge, how wide
    {"cable_zone_depth", "", comparator::at_least, {50.0}, {"BS 7671:2018+A2:2022", "522.6.202 (read in quotations)", "seen"}, "the rule concerns cables less than 50 mm deep"},
    {"concealed_cable_rcd", "", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "522.6.203 (read for 522.6.7 of the 2008 edition)", "seen"}, "30 mA for them without earthed metal about them"},
    {"cable_zone_thin_wall", "", comparator::at_most, {100.0}, {"BS 7671:2018+A2:2022", "522.6.202 (read in quotations)", "seen"}, "in walls up to 100 mm the zones of the other face count"},
    {"cable_zone", "top", comparator::at_most, {0.0, 150.0}, {"BS 7671:2018+A2:2022", "522.6.202 (read in quotations)", "seen"}, "within 150 mm of the top of the wall"},
    {"cable_zone", "internal_corner", comparator::at_most, {0.0, 150.0}, {"BS 7671:2018+A2:2022", "522.6.202 (read in quotations)", "seen"}, "within 150 mm of an angle between two walls"},
    {"cable_zone", "accessory_vertical", comparator::at_most, {0.0}, {"BS 7671:2018+A2:2022", "522.6.202 (read in quotations)", "seen"}, "straight up or down from an accessory"},
    {"cable_zone", "accessory_horizontal", comparator::at_most, {0.0}, {"BS 7671:2018+A2:2022", "522.6.202 (read in quotations)", "seen"}, "straight to either side of an accessory"},
    {"disconnection_time", "tn_final", comparator::at_most, {0.4}, {"BS 7671:2018+A2:2022", "Table 41.1 (read in the 2008 edition)", "seen"}, "0.4 s"},
    {"disconnection_time", "tt_final", comparator::at_most, {0.2}, {"BS 7671:2018+A2:2022", "Table 41.1 (read in the 2008 edition)", "seen"}, "0.2 s"},
    {"disconnection_time", "tn_distribution", comparator::at_most, {5.0}, {"BS 7671:2018+A2:2022", "411.3.2.3", "seen"}, "5 s"},
    {"disconnection_time", "tt_distribution", comparator::at_most, {1.0}, {"BS 7671:2018+A2:2022", "411.3.2.4", "memory"}, "1 s"},
    {"disconnection_time", "tn_final_120_v", comparator::at_most, {0.8}, {"BS 7671:2018+A2:2022", "Table 41.1 (read in the 2008 edition)", "seen"}, "0.8 s"},
    {"disconnection_time", "tn_final_400_v", comparator::at_most, {0.2}, {"BS 7671:2018+A2:2022", "Table 41.1 (read in the 2008 edition)", "seen"}, "0.2 s"},
    {"disconnection_time", "tn_final_above_400_v", comparator::at_most, {0.1}, {"BS 7671:2018+A2:2022", "Table 41.1 (read in the 2008 edition)", "seen"}, "0.1 s"},
    {"disconnection_time", "tt_final_400_v", comparator::at_most, {0.07}, {"BS 7671:2018+A2:2022", "Table 41.1 (read in the 2008 edition)", "seen"}, "0.07 s"},
    {"disconnection_time", "tt_final_above_400_v", comparator::at_most, {0.04}, {"BS 7671:2018+A2:2022", "Table 41.1 (read in the 2008 edition)", "seen"}, "0.04 s"},
    {"ring_leg_capacity", "", comparator::at_least, {20.0}, {"BS 7671:2018+A2:2022", "433.1.204", "seen"}, "the cable of a ring of 30 or 32 A carries at least 20 A where it lies"},
    {"ring_leg_current", "", comparator::at_most, {}, {"BS 7671:2018+A2:2022", "433.1.204", "memory"}, "no leg carries lastingly more than its cable's capacity"},
    {"ring_floor_area", "", comparator::at_most, {100.0}, {"BS 7671:2018+A2:2022", "Appendix 15, informative", "memory"}, "at most 100 m² of floor to a ring"},
    {"unfused_spur_outlets", "", comparator::at_most, {1.0}, {"BS 7671:2018+A2:2022", "Appendix 15, informative", "memory"}, "one outlet, single or twin, to an unfused spur, and one such spur to a point of the ring"},
    {"fuse_for_load", "", comparator::at_most, {}, {"BS 7671:2018+A2:2022", "433.1.1", "memory"}, "I_b ≤ I_n"},
    {"flex_protection", "", comparator::at_most, {}, {"BS 7671:2018+A2:2022", "433.1.1", "memory"}, "I_n ≤ I_z of the cord"},
    {"maximum_demand", "", comparator::at_most, {}, {"BS 7671:2018+A2:2022", "311", "memory"}, "demand not above the supply's rating"},
    {"standing_leakage", "", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "531.3.2", "memory"}, "at most 30 % of the rated residual current"},
    // highest rated residual current of a device for additional protection, mA
    {"additional_protection", "socket_outlet", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "411.3.3 (read in quotations)", "seen"}, "30 mA for socket-outlets up to 32 A"},
    {"additional_protection", "lighting_dwelling", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "411.3.4 (read in a summary of the edition's changes)", "seen"}, "30 mA for circuits of luminaires in a dwelling"},
    {"additional_protection", "mobile_outdoor", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "411.3.3 (read in quotations)", "seen"}, "30 mA for mobile equipment up to 32 A used outdoors"},
    {"additional_protection", "buried_cable", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "522.6.202 (read in a summary)", "seen"}, "30 mA for cables less than 50 mm deep that nothing else protects"},
    {"additional_protection", "bathroom", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "701.411.3.3 (read in a summary)", "seen"}, "30 mA for circuits that serve the room or pass through zones 1 and 2"},
    {"additional_protection", "floor_heating", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "753.411.3.2", "memory"}, "30 mA for heating units"},
    {"additional_protection", "swimming", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "702.41, protection by disconnection", "memory"}, "30 mA in the zones where disconnection protects; extra-low voltage and separation are the other ways"},
    {"additional_protection", "sauna", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "703.411.3.3", "memory"}, "30 mA for all circuits but the heater's"},
    {"additional_protection", "vehicle_charging", comparator::at_most, {30.0}, {"BS 7671:2018+A2:2022", "722.531.3.101", "memory"}, "30 mA for each charging point by itself"},
    // suggested class of a finding: the code of a condition report stands before the colon
    {"danger_class", "now", comparator::at_least, {1.0}, {"BS 7671:2018+A2:2022", "Appendix 6, condition report (codes read in summaries)", "seen"}, "C1: somebody can be hurt as things stand; act at once"},
    {"danger_class", "potential", comparator::at_least, {2.0}, {"BS 7671:2018+A2:2022", "Appendix 6, condition report (codes read in summaries)", "seen"}, "C2: it can become dangerous when something else fails; put it right soon"},
    {"danger_class", "improve", comparator::at_least, {3.0}, {"BS 7671:2018+A2:2022", "Appendix 6, condition report (codes read in summaries)", "seen"}, "C3: no danger by itself, but better brought up to today's rules"},
    {"danger_class", "investigate", comparator::at_least, {0.0}, {"BS 7671:2018+A2:2022", "Appendix 6, condition report (codes read in summaries)", "seen"}, "FI: it could not be judged; look into it without delay"},
    {"rcd_type_for_load", "", comparator::at_least, {}, {"BS 7671:2018+A2:2022", "531.3.3", "memory"}, "the type covers the residual currents of the load"},
};
inline constexpr rule_table bs7671_2018_a2{
    "bs7671:2018+a2", "Requirements for Electrical Installations, IET Wiring Regulations, 18th edition with Amendment 2",
    "United Kingdom", "BS 7671:2018+A2:2022", "2022-03-28", bs7671_2018_a2_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
