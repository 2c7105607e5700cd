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
};
inline constexpr rule_table iec60364{"iec60364", "Low-voltage electrical installations", "international", "IEC 60364 (parts as cited)",
                                     "2009-2016", iec60364_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
