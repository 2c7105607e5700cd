// SPDX-License-Identifier: MIT
// Rulebook: the IEC texts for low-voltage installations (60364-4-41, 60364-5-52, 60364-5-54, 60364-6).
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
    {"disconnection_time", "tn_final", comparator::at_most, {0.4}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.4 s"},
    {"disconnection_time", "tt_final", comparator::at_most, {0.2}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.2 s"},
    {"disconnection_time", "tn_distribution", comparator::at_most, {5.0}, {"IEC 60364-4-41", "411.3.2.3", "seen"}, "5 s"},
    {"disconnection_time", "tt_distribution", comparator::at_most, {1.0}, {"IEC 60364-4-41", "411.3.2.4", "memory"}, "1 s"},
    {"disconnection_time", "tn_final_120_v", comparator::at_most, {0.8}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.8 s"},
    {"disconnection_time", "tn_final_400_v", comparator::at_most, {0.2}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.2 s"},
    {"disconnection_time", "tn_final_above_400_v", comparator::at_most, {0.1}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.1 s"},
    {"disconnection_time", "tt_final_400_v", comparator::at_most, {0.07}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.07 s"},
    {"disconnection_time", "tt_final_above_400_v", comparator::at_most, {0.04}, {"IEC 60364-4-41", "Table 41.1", "seen"}, "0.04 s"},
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
