// SPDX-License-Identifier: MIT
// Rulebooks of ventilation outside England's edition of 2021: other countries, older editions, criteria of standards.
// Each row says whether it was read or recalled; what was neither read nor recalled is left out. A flow that is printed in m³/h or cfm is
// converted; the printed number stands in the text.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr double m3_per_h = 1.0 / 3.6;          ///< in l/s
inline constexpr double cfm = 0.028316846592 / 0.06;   ///< cubic foot a minute in l/s
inline constexpr double foot = 0.3048;                 ///< in m

inline constexpr rule england_adf_1995_rows[] = {
    {"overrun", "no_outside_wall", comparator::at_least, {15.0}, {"Approved Document F, 1995 edition (England and Wales)", "1.5", "seen"}, "15 minutes of overrun in a room without an outside wall"},
    {"overrun", "no_window", comparator::at_least, {15.0}, {"Approved Document F, 1995 edition (England and Wales)", "1.5", "memory"}, "15 minutes of overrun in a room without a window that opens"},
};
inline constexpr rule_table england_adf_1995{"england-adf-1995", "Approved Document F (one rule of it)", "England and Wales", "1995 edition", "1995-07-01", england_adf_1995_rows};

inline constexpr std::string_view scotland_3_14_title = "Building standards technical handbook, domestic, standard 3.14 (Scotland)";
inline constexpr rule scotland_3_14_rows[] = {
    {"extract_rate", "kitchen", comparator::at_least, {60.0}, {scotland_3_14_title, "3.14", "memory"}, "60 l/s, intermittent, elsewhere in the kitchen"},
    {"extract_rate", "kitchen_hood", comparator::at_least, {30.0}, {scotland_3_14_title, "3.14", "memory"}, "30 l/s, intermittent, above the hob"},
    {"extract_rate", "bathroom", comparator::at_least, {15.0}, {scotland_3_14_title, "3.14", "memory"}, "15 l/s, intermittent"},
    {"air_changes", "sanitary", comparator::at_least, {3.0}, {scotland_3_14_title, "3.14", "memory"}, "3 air changes an hour in a toilet"},
};
inline constexpr rule_table scotland_3_14{"scotland-3.14", "Standard 3.14 (recalled, not read)", "Scotland", "recalled", "", scotland_3_14_rows};

inline constexpr rule northern_ireland_k_rows[] = {
    {"background_ventilator", "bathroom", comparator::at_least, {2500.0}, {"Technical Booklet K, October 2012 (Northern Ireland)", "system 1, as extracted", "seen"}, "2500 mm² in a wet room"},
};
inline constexpr rule_table northern_ireland_k{"northern-ireland-k-2012", "Technical Booklet K (one rule of it)", "Northern Ireland", "October 2012", "2012-10-31", northern_ireland_k_rows};

inline constexpr std::string_view tgd_f = "Technical Guidance Document F, 2019 (Ireland), list of corrections";
inline constexpr rule ireland_tgd_f_rows[] = {
    {"whole_dwelling", "persons", comparator::at_least, {5.0, 4.0, 0.0, 0.0}, {tgd_f, "correction F(v), Appendix 1, example 3", "seen"}, "5 l/s and 4 l/s for each person"},
    {"background_ventilator", "habitable_continuous", comparator::at_least, {2500.0}, {tgd_f, "correction F(i), 1.2.2.8", "seen"}, "2500 mm² with continuous extract, each room except wet rooms"},
    {"background_ventilator", "diagram_4_smaller", comparator::at_least, {3500.0}, {tgd_f, "correction F(ii), Diagram 4", "seen"}, "3500 mm², the smaller size of Diagram 4"},
};
inline constexpr rule_table ireland_tgd_f{"ireland-tgd-f-2019", "Technical Guidance Document F: ventilation", "Ireland", "2019, corrected", "2019-11-01", ireland_tgd_f_rows};

// Tolerances take the uncertainty of the measurement in: |measured - design| + U is held against them.
inline constexpr std::string_view finland_title = "Decree of the Ministry of the Environment on indoor climate and ventilation of new buildings, 2017 (Finland), unofficial translation";
inline constexpr rule finland_1009_rows[] = {
    {"whole_dwelling", "persons", comparator::at_least, {0.0, 6.0, 0.0, 18.0}, {finland_title, "section 9", "seen"}, "6 l/s for each person, at least 18 l/s"},
    {"design_flow", "room", comparator::at_least, {20.0, 1.0}, {finland_title, "section 27", "seen"}, "20 % of a room's flow, at least 1 l/s, measurement uncertainty included"},
    {"design_flow", "dwelling", comparator::at_least, {10.0, 0.0}, {finland_title, "section 27", "seen"}, "10 % of the dwelling's or system's flow, measurement uncertainty included"},
    {"design_flow_excess", "room", comparator::at_most, {20.0, 1.0}, {finland_title, "section 27", "seen"}, "20 % of a room's flow, at least 1 l/s, measurement uncertainty included"},
    {"design_flow_excess", "dwelling", comparator::at_most, {10.0, 0.0}, {finland_title, "section 27", "seen"}, "10 % of the dwelling's or system's flow, measurement uncertainty included"},
    {"flow_decision", "ilac_g8_binary", comparator::at_least, {}, {finland_title, "section 27", "seen"}, "the tolerance includes the measurement uncertainty: met only where the reading with all of its uncertainty stays inside"},
    {"information", "specific_fan_power_excess_percent", comparator::at_most, {10.0}, {finland_title, "section 27", "seen"}, "permitted excess of the specific fan power, per cent"},
};
inline constexpr rule_table finland_1009{"finland-1009-2017", "Decree 1009/2017 on indoor climate and ventilation of new buildings", "Finland", "in force from 2018", "2018-01-01", finland_1009_rows};

inline constexpr std::string_view ncc_2019 = "National Construction Code 2019 (Australia)";
inline constexpr rule australia_ncc_2019_rows[] = {
    {"extract_rate", "bathroom", comparator::at_least, {25.0}, {ncc_2019, "3.8.7.3(a)(i)", "seen"}, "25 l/s"},
    {"extract_rate", "sanitary", comparator::at_least, {25.0}, {ncc_2019, "3.8.7.3(a)(i)", "memory"}, "25 l/s"},
    {"extract_rate", "kitchen", comparator::at_least, {40.0}, {ncc_2019, "3.8.7.3(a)(ii)", "seen"}, "40 l/s, kitchen or laundry"},
    {"extract_rate", "utility", comparator::at_least, {40.0}, {ncc_2019, "3.8.7.3(a)(ii)", "seen"}, "40 l/s, kitchen or laundry"},
    {"discharge_outside", "vented_roof_void", comparator::at_least, {0.0}, {ncc_2019, "3.8.7.3 and 3.8.7.4", "seen"}, "a roof space is permitted where it is ventilated with the open area of 3.8.7.4"},
    {"discharge_outside", "", comparator::at_least, {1.0}, {ncc_2019, "3.8.7.3", "seen"}, "to the outside, or into a roof space that is ventilated as 3.8.7.4 asks"},
    {"roof_void_openings", "over_22_degrees", comparator::at_least, {1.0 / 300.0}, {ncc_2019, "3.8.7.4(b)", "seen"}, "1/300 of the ceiling area where the pitch is over 22 degrees"},
    {"roof_void_openings", "to_22_degrees", comparator::at_least, {1.0 / 150.0}, {ncc_2019, "3.8.7.4", "seen"}, "1/150 of the ceiling area where the pitch is 22 degrees or less"},
    {"roof_void_ridge_share", "", comparator::at_least, {0.3}, {ncc_2019, "3.8.7.4", "seen"}, "30 % of the openings within 900 mm of the ridge"},
};
inline constexpr rule_table australia_ncc_2019{"australia-ncc-2019", "National Construction Code: exhaust systems and roof spaces", "Australia", "2019", "2019-05-01", australia_ncc_2019_rows};

inline constexpr source ncc_2022{"NCC 2022 Housing Provisions (Australia), as summarised by others", "10.8.2", "seen"};
inline constexpr rule australia_ncc_2022_rows[] = {
    {"overrun", "no_window", comparator::at_least, {10.0}, ncc_2022, "run-on of 10 minutes where the room has no window"},
    {"discharge_outside", "", comparator::at_least, {1.0}, ncc_2022, "to the outside; the roof space of the edition of 2019 is gone"},
};
inline constexpr rule_table australia_ncc_2022{"australia-ncc-2022", "National Construction Code: exhaust systems (a summary of it was read)", "Australia", "2022", "2022-10-01", australia_ncc_2022_rows};

inline constexpr std::string_view irc = "International Residential Code (public copies: Florida 2017, Massachusetts)";
inline constexpr source irc_duct{irc, "Table M1506.2", "seen"};
inline constexpr rule us_irc_rows[] = {
    {"extract_rate", "bathroom", comparator::at_least, {50.0 * cfm}, {irc, "M1507, local exhaust", "seen"}, "50 cfm, intermittent"},
    {"extract_rate", "bathroom_continuous", comparator::at_least, {20.0 * cfm}, {irc, "M1507, local exhaust", "seen"}, "20 cfm, continuous"},
    {"discharge_outside", "", comparator::at_least, {1.0}, {irc, "M1501", "seen"}, "not into an attic, soffit, ridge vent or crawl space"},
    {"duct_length", "flexible_4_in_50_cfm", comparator::at_most, {56.0 * foot, 15.0 * foot}, irc_duct, "56 ft, less 15 ft for each elbow"},
    {"duct_length", "flexible_5_in_80_cfm", comparator::at_most, {81.0 * foot, 15.0 * foot}, irc_duct, "81 ft, less 15 ft for each elbow"},
    {"duct_length", "flexible_5_in_100_cfm", comparator::at_most, {42.0 * foot, 15.0 * foot}, irc_duct, "42 ft, less 15 ft for each elbow"},
    {"duct_length", "flexible_6_in_100_cfm", comparator::at_most, {158.0 * foot, 15.0 * foot}, irc_duct, "158 ft, less 15 ft for each elbow"},
    {"duct_length", "smooth_4_in_80_cfm", comparator::at_most, {31.0 * foot, 15.0 * foot}, irc_duct, "31 ft, less 15 ft for each elbow"},
    {"duct_length", "smooth_4_in_100_cfm", comparator::at_most, {10.0 * foot, 15.0 * foot}, irc_duct, "10 ft, less 15 ft for each elbow"},
    {"duct_length", "smooth_5_in_125_cfm", comparator::at_most, {51.0 * foot, 15.0 * foot}, irc_duct, "51 ft, less 15 ft for each elbow"},
};
inline constexpr rule_table us_irc{"us-irc", "International Residential Code: mechanical ventilation", "United States", "copies of 2017", "2017-12-31", us_irc_rows};

inline constexpr std::string_view ashrae_62_2_title = "ASHRAE Handbook Fundamentals 2021 (SI), ch. 16, after Standard 62.2";
inline constexpr rule ashrae_62_2_rows[] = {
    {"extract_rate", "kitchen_hood", comparator::at_least, {50.0}, {ashrae_62_2_title, "Table 2", "handbook"}, "50 l/s, intermittent, vented hood"},
    {"extract_rate", "kitchen", comparator::at_least, {150.0}, {ashrae_62_2_title, "Table 2", "handbook"}, "150 l/s, intermittent, other fan"},
    {"extract_rate", "bathroom_continuous", comparator::at_least, {10.0}, {ashrae_62_2_title, "Table 1", "handbook"}, "10 l/s, continuous"},
    {"air_changes", "kitchen_continuous", comparator::at_least, {5.0}, {ashrae_62_2_title, "Table 1", "handbook"}, "5 air changes an hour, continuous, enclosed kitchen"},
    {"whole_dwelling", "bedrooms_and_area", comparator::at_least, {3.5, 3.5, 0.15, 0.0}, {ashrae_62_2_title, "Table 3", "handbook"}, "0.15 l/s for each square metre and 3.5 l/s for each bedroom and one more"},
};
inline constexpr rule_table ashrae_62_2{"ashrae-62.2", "Standard 62.2 as its handbook gives it, rounded SI values", "United States", "handbook of 2021", "2021-06-01", ashrae_62_2_rows};

inline constexpr source france_article_4{"Order of 24 March 1982 on the ventilation of dwellings (France)", "article 4", "seen"};
inline constexpr rule france_1982_rows[] = {
    {"whole_dwelling", "main_rooms_1", comparator::at_least, {35.0 * m3_per_h}, france_article_4, "35 m³/h, least total extract at the reduced setting"},
    {"whole_dwelling", "main_rooms_2", comparator::at_least, {60.0 * m3_per_h}, france_article_4, "60 m³/h, least total extract at the reduced setting"},
    {"whole_dwelling", "main_rooms_3", comparator::at_least, {75.0 * m3_per_h}, {"Order of 24 March 1982 on the ventilation of dwellings (France)", "article 4", "memory"}, "75 m³/h, least total extract at the reduced setting"},
    {"whole_dwelling", "main_rooms_4", comparator::at_least, {90.0 * m3_per_h}, france_article_4, "90 m³/h, least total extract at the reduced setting"},
    {"whole_dwelling", "main_rooms_5", comparator::at_least, {105.0 * m3_per_h}, france_article_4, "105 m³/h, least total extract at the reduced setting"},
    {"whole_dwelling", "main_rooms_6", comparator::at_least, {120.0 * m3_per_h}, {"Order of 24 March 1982 on the ventilation of dwellings (France)", "article 4", "memory"}, "120 m³/h, least total extract at the reduced setting"},
    {"whole_dwelling", "main_rooms_7", comparator::at_least, {135.0 * m3_per_h}, france_article_4, "135 m³/h, least total extract at the reduced setting"},
    {"kitchen_by_main_rooms", "main_rooms_2", comparator::at_least, {30.0 * m3_per_h}, france_article_4, "30 m³/h in the kitchen at the reduced setting"},
    {"kitchen_by_main_rooms", "main_rooms_3", comparator::at_least, {45.0 * m3_per_h}, france_article_4, "45 m³/h in the kitchen at the reduced setting"},
    {"kitchen_by_main_rooms", "main_rooms_4", comparator::at_least, {45.0 * m3_per_h}, {"Order of 24 March 1982 on the ventilation of dwellings (France)", "article 4", "memory"}, "45 m³/h in the kitchen at the reduced setting"},
    {"kitchen_by_main_rooms", "main_rooms_5", comparator::at_least, {45.0 * m3_per_h}, france_article_4, "45 m³/h in the kitchen at the reduced setting"},
    {"kitchen_by_main_rooms", "main_rooms_6", comparator::at_least, {45.0 * m3_per_h}, france_article_4, "45 m³/h in the kitchen at the reduced setting"},
};
inline constexpr rule_table france_1982{"france-1982", "Order on the ventilation of dwellings, reduced setting", "France", "24 March 1982", "1982-03-24", france_1982_rows};

inline constexpr rule france_work_rows[] = {
    {"extract_rate", "bathroom", comparator::at_least, {45.0 * m3_per_h}, {"Labour code (France)", "article R4212-6", "seen"}, "45 m³/h, bathroom or shower room of a workplace"},
};
inline constexpr rule_table france_work{"france-work", "Labour code: workplaces (one rule of it)", "France", "R4212-6", "2008-05-01", france_work_rows};

inline constexpr rule france_overseas_rows[] = {
    {"extract_rate", "bathroom", comparator::at_least, {15.0 * m3_per_h}, {"Ventilation of dwellings overseas (France)", "smaller dwellings", "memory"}, "15 m³/h; 30 m³/h in larger dwellings"},
};
inline constexpr rule_table france_overseas{"france-overseas", "Ventilation of dwellings overseas (recalled, not read)", "France, overseas", "recalled", "", france_overseas_rows};

inline constexpr rule poland_b_03430_rows[] = {
    {"extract_rate", "sanitary", comparator::at_least, {30.0 * m3_per_h}, {"PN-B-03430 (Poland), as listed on a public page", "list of rates", "seen"}, "30 m³/h, separate toilet"},
    {"extract_rate", "bathroom", comparator::at_least, {50.0 * m3_per_h}, {"PN-B-03430 (Poland), as listed on a public page", "list of rates", "seen"}, "50 m³/h"},
};
inline constexpr rule_table poland_b_03430{"poland-b-03430", "Ventilation of dwellings", "Poland", "PN-B-03430 with amendment 3", "2000-02-01", poland_b_03430_rows};

inline constexpr rule netherlands_2012_rows[] = {
    {"extract_rate", "kitchen", comparator::at_least, {21.0}, {"Building decree 2012 (Netherlands)", "article 3.34, paragraph 7", "seen"}, "21 l/s directly from the place of cooking to the outside"},
    {"extract_rate", "kitchen_hood", comparator::at_least, {21.0}, {"Building decree 2012 (Netherlands)", "article 3.34, paragraph 7", "seen"}, "21 l/s directly from the place of cooking to the outside"},
};
inline constexpr rule_table netherlands_2012{"netherlands-2012", "Building decree: ventilation (one rule of it)", "Netherlands", "2012", "2012-04-01", netherlands_2012_rows};

inline constexpr std::string_view new_zealand_title = "Healthy homes standards, ventilation (New Zealand), page of the tenancy service";
inline constexpr rule new_zealand_2019_rows[] = {
    {"extract_rate", "kitchen", comparator::at_least, {50.0}, {new_zealand_title, "extractor fans", "seen"}, "50 l/s (or a duct of the stated diameter), fan of a rented home from 1 July 2019"},
    {"ventilation_distance", "bathroom_fan_diameter", comparator::at_least, {120.0}, {new_zealand_title, "extractor fans", "seen"}, "120 mm, ducting included (or the stated flow), fan of a rented home from 1 July 2019"},
    {"purge_opening", "openable", comparator::at_least, {0.05}, {new_zealand_title, "openings", "seen"}, "5 % of the floor area, each habitable room of a rented home"},
};
inline constexpr rule_table new_zealand_2019{"new-zealand-2019", "Healthy homes standards: ventilation of rented homes", "New Zealand", "2019", "2019-07-01", new_zealand_2019_rows};

inline constexpr rule iso13788_rows[] = {
    {"surface_humidity", "month", comparator::at_most, {80.0}, {"ISO 13788", "critical surface humidity 0.8; also ASHRAE Handbook Fundamentals 2021, ch. 25, 7.1", "seen"}, "relative humidity at the surface at most 80 %, mean of a month"},
};
inline constexpr rule_table iso13788{"iso-13788", "ISO 13788: critical surface humidity", "international", "2012", "2012-12-01", iso13788_rows};

inline constexpr rule nhbc_8_4_rows[] = {
    // up to this flow in l/s, so many bends; above it, so many
    {"flexible_bends", "", comparator::at_most, {30.0, 2.0, 1.0}, {"NHBC Standards", "8.4.2.6.1", "seen"}, "2 bends in flexible duct up to 30 l/s, 1 above"},
    {"ventilation_distance", "rigid_support_spacing", comparator::at_most, {750.0}, {"NHBC Standards", "8.4.2.6.2", "seen"}, "750 mm between the supports of rigid duct"},
    {"information", "back_draught_shutter_on_extract_fan", comparator::at_least, {}, {"NHBC Standards", "8.4.2.6.2, last paragraph", "seen"}, "no, unless the fan's instructions ask for it"},
};
inline constexpr rule_table nhbc_8_4{"nhbc-8.4", "NHBC Standards, chapter 8.4: services, ductwork", "United Kingdom", "8.4, year of the edition not noted", "", nhbc_8_4_rows};

inline constexpr rule ventilation_guide_2010_rows[] = {
    {"ventilation_distance", "flexible_support_spacing", comparator::at_most, {600.0}, {"Domestic Ventilation Compliance Guide 2010, amended 2011", "installation of ducting, as quoted", "seen"}, "600 mm between the supports of flexible duct"},
};
inline constexpr rule_table ventilation_guide_2010{"ventilation-guide-2010", "Domestic Ventilation Compliance Guide (superseded in England by the edition of 2021)", "England and Wales", "2010, amended 2011", "2011-01-01", ventilation_guide_2010_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
