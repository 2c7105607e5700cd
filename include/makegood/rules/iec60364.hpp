// SPDX-License-Identifier: MIT
// Rulebook: the IEC texts for low-voltage installations (60364-4-41, 60364-5-52, 60364-5-54, 60364-6, 60364-7-701).
// Numbers only; the text of the standard is not reproduced.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr rule iec60364_rows[] = {
    {"voltage_drop_limit", "lighting", comparator::at_most, {3.0, 0.005, 100.0, 0.5}, {"IEC 60364-5-52:2009", "Annex G, Table G.52.1 A", "seen"}, "3 % of the nominal voltage for lighting on a public supply"},
    {"voltage_drop_limit", "other", comparator::at_most, {5.0, 0.005, 100.0, 0.5}, {"IEC 60364-5-52:2009", "Annex G, Table G.52.1 A", "seen"}, "5 % of the nominal voltage for other uses on a public supply"},
    {"voltage_drop_limit", "lighting_private_supply", comparator::at_most, {6.0, 0.005, 100.0, 0.5}, {"IEC 60364-5-52:2009", "Annex G, Table G.52.1 B", "seen"}, "6 % of the nominal voltage for lighting on a private supply"},
    {"voltage_drop_limit", "other_private_supply", comparator::at_most, {8.0, 0.005, 100.0, 0.5}, {"IEC 60364-5-52:2009", "Annex G, Table G.52.1 B", "seen"}, "8 % of the nominal voltage for other uses on a private supply"},
    {"adiabatic", "", comparator::at_most, {}, {"IEC 60364-5-54:2011", "543.1.2, Annex A", "memory"}, "the energy let through is not above k²S²"},
    {"insulation_minimum", "selv_pelv", comparator::at_least, {0.5}, {"IEC 60364-6", "Table 6.1", "seen"}, "0.5 MΩ at 250 V d.c."},
    {"insulation_minimum", "up_to_500_v", comparator::at_least, {1.0}, {"IEC 60364-6", "Table 6.1", "seen"}, "1 MΩ at 500 V d.c."},
    {"insulation_minimum", "above_500_v", comparator::at_least, {1.0}, {"IEC 60364-6", "Table 6.1", "seen"}, "1 MΩ at 1000 V d.c."},
    {"rcd_trip_time", "general", comparator::at_most, {300.0}, {"IEC 61008-1", "Table 1, operating time at I_Δn", "seen"}, "300 ms at the rated residual current"},
    {"rcd_trip_time", "selective", comparator::at_most, {500.0}, {"IEC 61008-1", "Table 1, operating time at I_Δn", "seen"}, "500 ms at the rated residual current"},
    {"rcd_trip_window", "general_1x", comparator::within, {0.0, 300.0}, {"IEC 61008-1", "Table 1", "seen"}, "at most 300 ms at the rated residual current"},
    {"rcd_trip_window", "general_2x", comparator::within, {0.0, 150.0}, {"IEC 61008-1", "Table 1", "memory"}, "at most 150 ms at twice the rated residual current"},
    {"rcd_trip_window", "general_5x", comparator::within, {0.0, 40.0}, {"IEC 61008-1", "Table 1", "seen"}, "at most 40 ms at five times the rated residual current"},
    {"rcd_trip_window", "selective_1x", comparator::within, {130.0, 500.0}, {"IEC 61008-1", "Table 1", "seen"}, "130 to 500 ms at the rated residual current"},
    {"rcd_trip_window", "selective_2x", comparator::within, {60.0, 200.0}, {"IEC 61008-1", "Table 1; the least time recalled", "memory"}, "60 to 200 ms at twice the rated residual current"},
    {"rcd_trip_window", "selective_5x", comparator::within, {50.0, 150.0}, {"IEC 61008-1", "Table 1; the least time recalled", "memory"}, "50 to 150 ms at five times the rated residual current"},
    {"rcd_ramp", "AC", comparator::within, {0.5, 1.0}, {"IEC 61008-1", "Table 1: no trip at 0.5 I_Δn, trip at I_Δn", "memory"}, "trips between 0.5 and 1 times the rated residual current"},
    {"breaking_capacity", "", comparator::at_most, {}, {"IEC 60364-4-43", "434.5.1", "memory"}, "the device breaks the highest fault current"},
    {"overload_coordination", "", comparator::within, {}, {"IEC 60364-4-43", "433.1", "seen"}, "I_b ≤ I_n ≤ I_z"},
    {"overload_operation", "", comparator::at_most, {1.45}, {"IEC 60364-4-43", "433.1", "seen"}, "I_2 ≤ 1.45 I_z"},
    {"touch_voltage_limit", "general", comparator::at_most, {50.0}, {"IEC 60364-4-41", "411.5.3, 415.2.2", "seen"}, "50 V a.c."},
    {"touch_voltage_limit", "special", comparator::at_most, {25.0}, {"IEC 60364-7, locations with the lower limit", "", "memory"}, "25 V a.c."},
    // zones of a room with a bath or shower: height (1: counted from the bottom of the basin), widths in plan along a taut string, m
    {"bathroom_zone_height", "", comparator::at_most, {2.25, 0.0}, {"IEC 60364-7-701:2006", "701.30, read in a paraphrase", "seen"}, "up to 2.25 m above the floor, or the highest fixed outlet"},
    {"bathroom_zone1_radius", "", comparator::at_most, {1.20}, {"IEC 60364-7-701:2006", "701.30, read in a paraphrase", "seen"}, "without a basin 1.20 m from the centre of the fixed outlet"},
    {"bathroom_zone2_width", "", comparator::at_most, {0.60}, {"IEC 60364-7-701:2006", "701.30, read in a paraphrase", "seen"}, "0.60 m beyond zone 1 of a bath or tray"},
    {"bathroom_zone0_height", "", comparator::at_most, {0.10}, {"IEC 60364-7-701:2006", "701.30", "memory"}, "without a basin 0.10 m high"},
    {"bathroom_limited_by", "low_partition", comparator::at_least, {1.0}, {"IEC 60364-7-701:2006", "701.30", "memory"}, "the shorter way round or over it counts"},
    {"bathroom_limited_by", "door", comparator::at_least, {1.0}, {"IEC 60364-7-701:2006", "701.30", "memory"}, "doors limit the zones"},
    {"bathroom_limited_by", "window", comparator::at_least, {1.0}, {"IEC 60364-7-701:2006", "701.30", "memory"}, "fixed panes limit the zones"},
    {"bathroom_ip", "zone_0", comparator::at_least, {7.0}, {"GOST R 50571.7.701-2013 (based on IEC 60364-7-701:2006)", "701.512.2", "seen"}, "IPX7"},
    {"bathroom_ip", "zone_1", comparator::at_least, {4.0}, {"IEC 60364-7-701:2006", "701.512.2", "memory"}, "IPX4"},
    {"bathroom_ip", "zone_2", comparator::at_least, {4.0}, {"GOST R 50571.7.701-2013 (based on IEC 60364-7-701:2006)", "701.512.2", "seen"}, "IPX4"},
    {"bathroom_ip", "jets", comparator::at_least, {5.0}, {"IEC 60364-7-701:2006", "701.512.2", "memory"}, "IPX5 where water jets are likely"},
    // SELV and PELV: V a.c., V d.c.
    {"bathroom_selv", "zone_0", comparator::at_most, {12.0, 30.0}, {"IEC 60364-7-701:2006", "701.414.4.5, 701.55", "memory"}, "12 V a.c., 30 V d.c."},
    {"bathroom_selv", "zone_1", comparator::at_most, {25.0, 60.0}, {"IEC 60364-7-701:2006", "701.55", "memory"}, "25 V a.c., 60 V d.c."},
    {"bathroom_selv", "zone_2", comparator::at_most, {50.0, 120.0}, {"IEC 60364-7-701:2006", "414.1.1", "memory"}, "50 V a.c., 120 V d.c., which is what SELV may have"},
    {"bathroom_selv", "switch", comparator::at_most, {12.0, 30.0}, {"IEC 60364-7-701:2006", "701.512.3", "memory"}, "switches of SELV circuits in zone 1: 12 V a.c., 30 V d.c."},
    // in zones 0, 1, 2 and outside. 0: not permitted, 1: permitted, 2: SELV within the limit for switches, 3: where no direct spray reaches it,
    // 4: beyond the distance of socket-outlets, 5: SELV within the limit of the zone, suited by its maker
    {"bathroom_equipment", "switch", comparator::at_least, {0.0, 2.0, 2.0, 1.0}, {"IEC 60364-7-701:2006", "701.512.3", "memory"}, "outside the zones; of SELV in zones 1 and 2"},
    {"bathroom_equipment", "pull_cord", comparator::at_least, {0.0, 1.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.512.3", "memory"}, "the insulating cord alone; its switch is judged where it is"},
    {"bathroom_equipment", "socket", comparator::at_least, {0.0, 0.0, 2.0, 1.0}, {"IEC 60364-7-701:2006", "701.512.3", "memory"}, "outside the zones; of SELV in zone 2"},
    {"bathroom_equipment", "shaver_supply", comparator::at_least, {0.0, 0.0, 3.0, 1.0}, {"IEC 60364-7-701:2006", "701.512.3", "memory"}, "zone 2 where no direct spray reaches it, and outside"},
    {"bathroom_equipment", "connection_unit", comparator::at_least, {0.0, 0.0, 0.0, 1.0}, {"IEC 60364-7-701:2006", "701.512.3", "memory"}, "outside the zones"},
    {"bathroom_equipment", "junction_box", comparator::at_least, {0.0, 1.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.512.3", "memory"}, "zone 2 and outside; in zone 1 for what may be there"},
    {"bathroom_equipment", "towel_rail", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "fan", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "luminaire", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "water_heater", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "shower_unit", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "pump", comparator::at_least, {5.0, 1.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.55", "memory"}, "zone 1: fixed, permanently connected, suited by its maker"},
    {"bathroom_equipment", "mirror", comparator::at_least, {0.0, 5.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.55", "memory"}, "zone 2 and outside; zone 1: SELV"},
    {"bathroom_equipment", "heater", comparator::at_least, {0.0, 5.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.55", "memory"}, "zone 2 and outside; zone 1: SELV"},
    {"bathroom_equipment", "floor_heating", comparator::at_least, {1.0, 1.0, 1.0, 1.0}, {"IEC 60364-7-701:2006", "701.753", "memory"}, "below the floor, with an earthed grid, sheath or screen"},
    {"bathroom_floor_heating", "", comparator::at_least, {1.0}, {"IEC 60364-7-701:2006", "701.753", "memory"}, "an earthed grid, sheath or screen, or SELV"},
    {"bathroom_rcd", "", comparator::at_most, {30.0}, {"IEC 60364-7-701:2006", "701.411.3.3", "memory"}, "30 mA on all circuits of the room"},
    {"bathroom_bonding", "", comparator::at_least, {0.0}, {"IEC 60364-7-701:2006", "701.415.2", "memory"}, "supplementary bonding"},
    {"disconnection_time", "tn_final", comparator::at_most, {0.4}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.4 s"},
    {"disconnection_time", "tt_final", comparator::at_most, {0.2}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.2 s"},
    {"disconnection_time", "tn_distribution", comparator::at_most, {5.0}, {"IEC 60364-4-41", "411.3.2.3", "seen"}, "5 s"},
    {"disconnection_time", "tt_distribution", comparator::at_most, {1.0}, {"IEC 60364-4-41", "411.3.2.4", "memory"}, "1 s"},
    {"disconnection_time", "tn_final_120_v", comparator::at_most, {0.8}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.8 s"},
    {"disconnection_time", "tn_final_400_v", comparator::at_most, {0.2}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.2 s"},
    {"disconnection_time", "tn_final_above_400_v", comparator::at_most, {0.1}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.1 s"},
    {"disconnection_time", "tt_final_400_v", comparator::at_most, {0.07}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.07 s"},
    {"disconnection_time", "tt_final_above_400_v", comparator::at_most, {0.04}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.04 s"},
    // highest rated residual current of a device for additional protection, mA
    {"additional_protection", "socket_outlet", comparator::at_most, {30.0}, {"IEC 60364-4-41:2017", "411.3.3", "memory"}, "30 mA for socket-outlets up to 32 A for general use by ordinary persons"},
    {"additional_protection", "lighting_dwelling", comparator::at_most, {30.0}, {"IEC 60364-4-41:2017", "411.3.4 (read in a quotation of STN 33 2000-4-41:2019, its adoption)", "seen"}, "30 mA for circuits of luminaires in a dwelling"},
    {"additional_protection", "mobile_outdoor", comparator::at_most, {30.0}, {"IEC 60364-4-41:2017", "411.3.3", "memory"}, "30 mA for mobile equipment up to 32 A used outdoors"},
    {"additional_protection", "bathroom", comparator::at_most, {30.0}, {"IEC 60364-7-701:2006", "701.415.1", "memory"}, "30 mA for all circuits of the room"},
    {"additional_protection", "floor_heating", comparator::at_most, {30.0}, {"IEC 60364-7-753", "753.411.3.2", "memory"}, "30 mA for heating units"},
    {"additional_protection", "swimming", comparator::at_most, {30.0}, {"IEC 60364-7-702", "702.41, protection by disconnection", "memory"}, "30 mA in the zones where disconnection protects; extra-low voltage and separation are the other ways"},
    {"additional_protection", "sauna", comparator::at_most, {30.0}, {"IEC 60364-7-703", "703.411.3.3", "memory"}, "30 mA for all circuits but the heater's"},
    {"additional_protection", "vehicle_charging", comparator::at_most, {30.0}, {"IEC 60364-7-722", "722.531", "memory"}, "30 mA for each charging point by itself"},
    {"fuse_for_load", "", comparator::at_most, {}, {"IEC 60364-4-43", "433.1", "seen"}, "I_b ≤ I_n"},
    {"flex_protection", "", comparator::at_most, {}, {"IEC 60364-4-43", "433.1", "seen"}, "I_n ≤ I_z of the cord"},
    {"maximum_demand", "", comparator::at_most, {}, {"IEC 60364-1", "311", "memory"}, "demand not above the supply's rating"},
    {"rcd_type_for_load", "", comparator::at_least, {}, {"IEC 60755 and IEC 62423", "types of residual current device", "memory"}, "the type covers the residual currents of the load"},
};
inline constexpr rule_table iec60364{"iec60364", "Low-voltage electrical installations", "international", "IEC 60364 (parts as cited)",
                                     "2009-2016", iec60364_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
