// SPDX-License-Identifier: MIT
// Rulebook: England, Approved Document F, volume 1 (dwellings), 2021 edition.
// Numbers only. A later edition exists and was not read: the edition is an argument, never a default.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr source adf_table_1_1{"Approved Document F, volume 1, 2021 edition (England)", "Table 1.1", "seen"};
inline constexpr source adf_table_1_2{"Approved Document F, volume 1, 2021 edition (England)", "Table 1.2", "seen"};
inline constexpr rule england_adf_2021_rows[] = {
    {"extract_rate", "kitchen", comparator::at_least, {60.0}, adf_table_1_1, "60 l/s, intermittent, no hood to the outside"},
    {"extract_rate", "kitchen_hood", comparator::at_least, {30.0}, adf_table_1_1, "30 l/s, intermittent, hood to the outside"},
    {"extract_rate", "utility", comparator::at_least, {30.0}, adf_table_1_1, "30 l/s, intermittent"},
    {"extract_rate", "bathroom", comparator::at_least, {15.0}, adf_table_1_1, "15 l/s, intermittent"},
    {"extract_rate", "sanitary", comparator::at_least, {6.0}, adf_table_1_1, "6 l/s, intermittent"},
    {"extract_rate", "kitchen_continuous", comparator::at_least, {13.0}, adf_table_1_2, "13 l/s, continuous at the high rate"},
    {"extract_rate", "utility_continuous", comparator::at_least, {8.0}, adf_table_1_2, "8 l/s, continuous at the high rate"},
    {"extract_rate", "bathroom_continuous", comparator::at_least, {8.0}, adf_table_1_2, "8 l/s, continuous at the high rate"},
    {"extract_rate", "sanitary_continuous", comparator::at_least, {6.0}, adf_table_1_2, "6 l/s, continuous at the high rate"},
    {"inner_room_air_changes", "", comparator::at_least, {4.0}, {"Approved Document F, volume 1, 2021 edition (England)", "1.48", "seen"}, "4 air changes an hour from an intermittent fan in a wet room without an outside wall"},
    {"discharge_outside", "", comparator::at_least, {1.0}, {"Approved Document F, volume 1, 2021 edition (England)", "1.17", "seen"}, "extracted air is discharged to the outside"},
};
inline constexpr rule_table england_adf_2021{"england-adf-2021", "Approved Document F, volume 1: dwellings", "England", "2021 edition",
                                             "2021-12-15", england_adf_2021_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
