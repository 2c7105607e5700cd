// SPDX-License-Identifier: MIT
// Rulebook: England, Approved Document F, volume 1 (dwellings), 2021 edition.
// Numbers only. A later edition exists and was not read: the edition is an argument, never a default.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr std::string_view adf_2021 = "Approved Document F, volume 1, 2021 edition (England)";
inline constexpr source adf_table_1_1{adf_2021, "Table 1.1", "seen"};
inline constexpr source adf_table_1_2{adf_2021, "Table 1.2", "seen"};
inline constexpr source adf_table_1_7{adf_2021, "Table 1.7", "seen"};
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
    {"inner_room_air_changes", "", comparator::at_least, {4.0}, {adf_2021, "1.48", "seen"}, "4 air changes an hour from an intermittent fan in a wet room without an outside wall"},
    {"air_changes", "no_outside_wall", comparator::at_least, {4.0}, {adf_2021, "1.48", "seen"}, "4 air changes an hour from an intermittent fan in a wet room without an outside wall"},
    {"air_changes", "purge", comparator::at_least, {4.0}, {adf_2021, "1.27", "seen"}, "purge ventilation of 4 air changes an hour directly to the outside"},
    {"overrun", "no_outside_wall", comparator::at_least, {15.0}, {adf_2021, "1.51", "seen"}, "15 minutes of overrun of an intermittent fan in a wet room without an outside wall"},
    {"discharge_outside", "", comparator::at_least, {1.0}, {adf_2021, "1.17", "seen"}, "extracted air is discharged to the outside"},
    // l/s: fixed, for each bedroom, for each square metre of all floors, least
    {"whole_dwelling", "bedrooms", comparator::at_least, {13.0, 6.0, 0.3, 0.0}, {adf_2021, "1.24 and Table 1.3", "seen"}, "19 l/s with one bedroom and 6 l/s for each further one, or 0.3 l/s for each square metre of all floors, whichever is more"},
    {"whole_dwelling", "one_habitable_room", comparator::at_least, {13.0, 0.0, 0.3, 0.0}, {adf_2021, "1.24 and Table 1.3, note 1", "seen"}, "13 l/s with one habitable room, or 0.3 l/s for each square metre of all floors, whichever is more"},
    {"door_undercut", "finished_floor", comparator::at_least, {10.0, 760.0}, {adf_2021, "1.25", "seen"}, "10 mm above the finished floor under a door of 760 mm: 7600 mm²"},
    {"door_undercut", "bare_floor", comparator::at_least, {20.0, 760.0}, {adf_2021, "1.25", "seen"}, "20 mm above a floor that has no finish yet, under a door of 760 mm"},
    {"background_ventilator", "habitable_several_floors", comparator::at_least, {8000.0}, adf_table_1_7, "8000 mm² equivalent area, dwelling with several floors"},
    {"background_ventilator", "kitchen_several_floors", comparator::at_least, {8000.0}, {adf_2021, "Table 1.7", "memory"}, "8000 mm² equivalent area, dwelling with several floors"},
    {"background_ventilator", "habitable_one_floor", comparator::at_least, {10000.0}, adf_table_1_7, "10000 mm² equivalent area, dwelling on one floor"},
    {"background_ventilator", "kitchen_one_floor", comparator::at_least, {10000.0}, adf_table_1_7, "10000 mm² equivalent area, dwelling on one floor"},
    {"background_ventilator", "bathroom", comparator::at_least, {4000.0}, adf_table_1_7, "4000 mm² equivalent area; without an outside wall it is added to the ventilators of other rooms (note 4)"},
    {"background_ventilator", "utility", comparator::at_least, {0.0}, adf_table_1_7, "no minimum"},
    {"background_ventilator", "sanitary", comparator::at_least, {0.0}, adf_table_1_7, "no minimum"},
    {"background_ventilator", "habitable_continuous", comparator::at_least, {4000.0}, {adf_2021, "1.64b", "seen"}, "4000 mm² equivalent area with continuous extract; the checklist in Table D1 of the same document prints 5000 mm²"},
    {"background_ventilator", "habitable_continuous_checklist", comparator::at_least, {5000.0}, {adf_2021, "Table D1", "seen"}, "5000 mm² in the checklist of Table D1; 1.64b of the same document prints 4000 mm²"},
    {"background_ventilator", "replaced_window", comparator::at_least, {8000.0}, {adf_2021, "3.15a", "seen"}, "8000 mm² with a replaced window that had none, habitable room or kitchen"},
    {"background_ventilator", "added_wet_room", comparator::at_least, {5000.0}, {adf_2021, "3.25", "seen"}, "5000 mm² in a wet room that is added to an existing dwelling"},
    {"purge_opening", "opens_15_to_30", comparator::at_least, {0.1}, {adf_2021, "Table 1.4", "seen"}, "1/10 of the floor area: hinged or pivot window that opens 15 to 30 degrees"},
    {"purge_opening", "opens_30_or_more", comparator::at_least, {0.05}, {adf_2021, "Table 1.4", "seen"}, "1/20 of the floor area: window that opens 30 degrees or more, sash window or outside door"},
    {"ventilation_distance", "terminal_below_ceiling", comparator::at_most, {400.0}, {adf_2021, "1.20b", "seen"}, "as high as practicable, at most 400 mm below the ceiling"},
    {"ventilation_distance", "hood_above_hob", comparator::at_least, {650.0}, {adf_2021, "1.21", "seen"}, "650 mm or more where the maker gives no height"},
    {"ventilation_distance", "ventilator_height", comparator::at_least, {1700.0}, {adf_2021, "1.34", "seen"}, "1700 mm or more above the floor"},
    {"ventilation_distance", "fan_to_ventilator", comparator::at_least, {500.0}, {adf_2021, "1.55", "seen"}, "500 mm or more between fan and background ventilator in one room"},
    {"duct_length", "flexible_final", comparator::at_most, {1.5, 0.0}, {adf_2021, "1.77", "seen"}, "flexible duct for final connections only, at most 1.5 m, pulled taut (1.78a)"},
    {"terminal_area", "", comparator::at_least, {0.9}, {adf_2021, "1.80", "seen"}, "free area of the terminal at least 90 % of that of the duct"},
    {"surface_humidity", "month", comparator::below, {75.0}, {adf_2021, "Table B2", "seen"}, "water activity of the surface below 0.75, moving average of a month"},
    {"surface_humidity", "week", comparator::below, {85.0}, {adf_2021, "Table B2", "seen"}, "water activity of the surface below 0.85, moving average of a week"},
    {"surface_humidity", "day", comparator::below, {95.0}, {adf_2021, "Table B2", "seen"}, "water activity of the surface below 0.95, moving average of a day"},
    {"room_humidity", "month", comparator::below, {65.0}, {adf_2021, "Table B3", "seen"}, "relative humidity of the room below 65 %, moving average of a month"},
    {"room_humidity", "week", comparator::below, {75.0}, {adf_2021, "Table B3", "seen"}, "relative humidity of the room below 75 %, moving average of a week"},
    // how a flow is held against its design: least part lacking in per cent and in l/s; then by which decision rule
    {"design_flow", "room", comparator::at_least, {0.0, 0.0}, {adf_2021, "Appendix C, C2", "seen"}, "measured at least as designed, no allowance"},
    {"design_flow", "dwelling", comparator::at_least, {0.0, 0.0}, {adf_2021, "Appendix C, C2", "seen"}, "measured at least as designed, no allowance"},
    {"flow_decision", "simple_acceptance", comparator::at_least, {}, {adf_2021, "Appendix C, C2, and 4.10", "seen"}, "the reading itself is compared; the instrument is good to 5 % and was calibrated within 12 months"},
    // work on an existing dwelling
    {"refurbishment", "fan_replaced", comparator::at_least, {}, {adf_2021, "3.30", "seen"}, "an existing fan is kept or replaced, and checked"},
    {"refurbishment", "never_had_fan", comparator::at_least, {}, {adf_2021, "3.31", "seen"}, "no, unless compliance gets worse"},
    {"refurbishment", "added_wet_room", comparator::at_least, {}, {adf_2021, "3.25", "seen"}, "extract of Table 1.1 and a background ventilator of 5000 mm²"},
    {"refurbishment", "notifiable_on_existing_cabling", comparator::at_least, {}, {adf_2021, "3.32", "seen"}, "no"},
    // for information: no verdict
    {"information", "noise_sensitive_room_db", comparator::at_most, {30.0}, {adf_2021, "1.5 to 1.7", "seen"}, "sound in bedrooms and living rooms, dB LAeq,T"},
    {"information", "noise_kitchen_or_bathroom_db", comparator::at_most, {45.0}, {adf_2021, "1.7, note", "seen"}, "sound in less sensitive rooms, fan intermittent or at its high rate, dB LAeq,T"},
    {"information", "instrument_limit_percent", comparator::at_most, {5.0}, {adf_2021, "4.10", "seen"}, "limit of error of the flow instrument, per cent; doors and windows shut"},
    {"information", "calibration_age_months", comparator::at_most, {12.0}, {adf_2021, "4.10c", "seen"}, "age of the instrument's calibration, months"},
    {"information", "least_ventilators_two_bedrooms", comparator::at_least, {5.0}, {adf_2021, "1.57", "seen"}, "background ventilators of a dwelling with more than one bedroom, number"},
    {"information", "air_permeability_for_natural_m3_per_h_m2", comparator::above, {5.0}, {adf_2021, "Table 1.6, note", "seen"}, "design air permeability at 50 Pa above which natural ventilation is allowed, m³/(h·m²); as built above 3"},
    {"information", "assumed_infiltration_per_h", comparator::at_least, {0.15}, {adf_2021, "B7", "seen"}, "infiltration that the rates reckon with in less airtight dwellings, air changes an hour"},
    {"information", "bio_effluents_l_per_s_person", comparator::at_least, {4.0}, {adf_2021, "B6", "seen"}, "air for each person against odours, adapted people, l/s"},
};
inline constexpr rule_table england_adf_2021{"england-adf-2021", "Approved Document F, volume 1: dwellings", "England", "2021 edition",
                                             "2021-12-15", england_adf_2021_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
