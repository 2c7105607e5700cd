// SPDX-License-Identifier: MIT
// Checks of ventilation beside the rate of a room: overrun, whole dwelling, make-up air, openings, ducts, discharge, design flows, surfaces.
// Subject: air. A limit that a rulebook does not hold is said, never guessed; a comparator may differ from row to row.
#pragma once
#include "../verdict.hpp"
#include "surfaces.hpp"
#include "ventilation.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

namespace detail {
inline constexpr unit_t minute = unit::detail::si("min", 0, 0, 1, 0, 0, 60);
inline constexpr unit_t litre_per_second_square_metre = unit::detail::si("l/(s·m²)", 1, 0, -1, 0, 0, 1e-3);
inline constexpr source adf_2021_source(std::string_view clause) { return {"Approved Document F, volume 1, 2021 edition (England)", clause}; }
inline constexpr arg measured_flow_arg = arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e5), "extract flow at the terminal"}.usually(3, 80).read_by(reads::airflow);
}  // namespace detail

// ---- air changes, overrun ----------------------------------------------------------------------------------------------------

inline constexpr choice_row air_change_purpose_rows[] = {{"no_outside_wall", "wet room without an outside wall, intermittent fan", {}, {}},
                                                         {"purge", "purge ventilation of a habitable room", {}, {}},
                                                         {"sanitary", "sanitary accommodation", {}, {}},
                                                         {"kitchen_continuous", "enclosed kitchen, continuous extract", {}, {}}};
inline constexpr choice_table air_change_purposes{{}, air_change_purpose_rows};
inline constexpr column air_changes_for_rule[] = {{"n_min", unit::per_hour}};
inline constexpr auto check_air_changes_for = check(
    out{"check_air_changes_for", "n", unit::per_hour, "Air changes that a flow makes in a room, against the rulebook's number for the purpose."},
    in(detail::measured_flow_arg, arg{"room_volume_m3", "V", unit::cubic_metre, positive_to(1e6), "volume of the room"}.usually(3, 40), choice{"purpose", air_change_purposes, "what the air changes are for"}),
    rule_use{"air_changes", "purpose", air_changes_for_rule}, comparator::at_least, detail::adf_2021_source("1.27 and 1.48"),
    [](auto flow, auto volume, auto) { return call(air_changes_from_airflow, flow, volume); }, [](auto rule, auto, auto, auto) { return rule[0]; },
    "It comes on top of the rate of the room; the greater governs.");

inline constexpr choice_row overrun_case_rows[] = {{"no_outside_wall", "wet room without an outside wall", {}, {}}, {"no_window", "room without a window that opens", {}, {}}};
inline constexpr choice_table overrun_cases{{}, overrun_case_rows};
inline constexpr column overrun_rule[] = {{"t_min", detail::minute}};
inline constexpr auto check_overrun = check(
    out{"check_overrun", "t", detail::minute, "Time that an intermittent fan runs on, against the rulebook's least time for such a room."},
    in(arg{"overrun_min", "t", detail::minute, between(0, 1440), "time that the fan runs on after the light or the shower is off"}.usually(1, 30), choice{"overrun_case", overrun_cases, "why the room needs it"}),
    rule_use{"overrun", "overrun_case", overrun_rule}, comparator::at_least, detail::adf_2021_source("1.51"), [](auto time, auto) { return time; }, [](auto rule, auto, auto) { return rule[0]; },
    "Timed, not read off the setting. Isolate before the cover comes off to set the timer: its permanent line stays live with the switch off.");

// ---- the whole dwelling --------------------------------------------------------------------------------------------------------

/// adds: 1 where the part by area comes on top of the part by number, 0 where the greater of both governs.
inline constexpr column counted_columns[] = {{"a", unit::one}};
inline constexpr choice_row counted_rows[] = {{"bedrooms", "by number of bedrooms, or by area if that is more", {0.0}, {}},
                                              {"one_habitable_room", "one habitable room, or by area if that is more", {0.0}, {}},
                                              {"bedrooms_and_area", "by number of bedrooms and by area together", {1.0}, {}},
                                              {"persons", "by number of persons", {0.0}, {}},
                                              {"main_rooms_1", "1 main room", {0.0}, {}},
                                              {"main_rooms_2", "2 main rooms", {0.0}, {}},
                                              {"main_rooms_3", "3 main rooms", {0.0}, {}},
                                              {"main_rooms_4", "4 main rooms", {0.0}, {}},
                                              {"main_rooms_5", "5 main rooms", {0.0}, {}},
                                              {"main_rooms_6", "6 main rooms", {0.0}, {}},
                                              {"main_rooms_7", "7 main rooms", {0.0}, {}}};
inline constexpr choice_table dwelling_counts{counted_columns, counted_rows};
inline constexpr column whole_dwelling_rule[] = {{"q_0", unit::litre_per_second}, {"q_1", unit::litre_per_second}, {"q_A", detail::litre_per_second_square_metre}, {"q_min", unit::litre_per_second}};
MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_whole_dwelling_arguments, (flow_l_per_s, counted_by), (counted_count = T(0.0), floor_area_m2 = T(0.0)));
inline constexpr auto check_whole_dwelling = check(
    out{"check_whole_dwelling", "q", unit::litre_per_second, "Ventilation of a whole dwelling, the sum of its continuous extract or supply, against the rulebook's rate."},
    in<check_whole_dwelling_arguments>(
        arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e5), "sum of the continuous flows"}.usually(5, 100).read_by(reads::airflow), choice{"counted_by", dwelling_counts, "what the rulebook counts"},
        arg{"counted_count", "n", unit::one, between(0, 1000), "bedrooms or persons; main rooms stand in the word"}.usually(1, 5).otherwise(0),
        arg{"floor_area_m2", "A", unit::square_metre, between(0, 1e6), "area of all floors inside"}.usually(30, 150).otherwise(0)),
    rule_use{"whole_dwelling", "counted_by", whole_dwelling_rule}, comparator::at_least, detail::adf_2021_source("1.24 and Table 1.3"), [](auto flow, auto, auto, auto) { return flow; },
    [](auto rule, auto, auto by, auto count, auto area) {
      auto by_number = let("q_n", unit::litre_per_second, rule[0] + rule[1] * count);
      auto by_area = let("q_a", unit::litre_per_second, rule[2] * area);
      auto both = let("q_b", unit::litre_per_second, by_number + by[0] * by_area);
      auto greater = let("q_g", unit::litre_per_second, select(both > by_area, both, by_area));
      return select(greater > rule[3], greater, rule[3]);
    },
    "The sum of what is measured at the terminals, not of what the rooms ask for each.");

// ---- air that follows ------------------------------------------------------------------------------------------------------------

inline constexpr choice_row undercut_floor_rows[] = {{"finished_floor", "gap above the finished floor", {}, {}}, {"bare_floor", "gap above a floor that has no finish yet", {}, {}}};
inline constexpr choice_table undercut_floors{{}, undercut_floor_rows};
inline constexpr column undercut_rule[] = {{"h_r", unit::millimetre}, {"b_r", unit::millimetre}};
inline constexpr auto check_door_undercut = check(
    out{"check_door_undercut", "A", unit::square_millimetre, "Free area under an inner door against the area that the rulebook's gap under its door has."},
    in(arg{"door_width_mm", "b", unit::millimetre, positive_to(1e4), "width of the door"}.usually(600, 930).read_by(reads::length),
       arg{"gap_mm", "h", unit::millimetre, between(0, 1e3), "height of the gap"}.usually(3, 30).read_by(reads::length), choice{"floor", undercut_floors, "what the gap stands above"}),
    rule_use{"door_undercut", "floor", undercut_rule}, comparator::at_least, detail::adf_2021_source("1.25"),
    [](auto width, auto gap, auto) { return call(door_undercut_area, width, gap); }, [](auto rule, auto, auto, auto) { return rule[0] * rule[1]; },
    "A carpet or a threshold laid later closes it: measure above what lies there now. A fire door is never cut.");

inline constexpr choice_row ventilated_room_rows[] = {{"habitable_several_floors", "habitable room, dwelling with several floors", {}, {}},
                                                      {"habitable_one_floor", "habitable room, dwelling on one floor", {}, {}},
                                                      {"kitchen_several_floors", "kitchen, dwelling with several floors", {}, {}},
                                                      {"kitchen_one_floor", "kitchen, dwelling on one floor", {}, {}},
                                                      {"bathroom", "bathroom or wet room", {}, {}},
                                                      {"utility", "utility room", {}, {}},
                                                      {"sanitary", "sanitary accommodation", {}, {}},
                                                      {"habitable_continuous", "room other than a wet room, continuous extract", {}, {}},
                                                      {"habitable_continuous_checklist", "the same by the checklist of the edition", {}, {}},
                                                      {"replaced_window", "habitable room or kitchen whose window is replaced and had no ventilator", {}, {}},
                                                      {"added_wet_room", "wet room added to an existing dwelling", {}, {}},
                                                      {"diagram_4_smaller", "smaller size of a diagram of the rulebook", {}, {}}};
inline constexpr choice_table ventilated_rooms{{}, ventilated_room_rows};
inline constexpr column background_rule[] = {{"A_min", unit::square_millimetre}};
inline constexpr auto check_background_ventilator = check(
    out{"check_background_ventilator", "A", unit::square_millimetre, "Equivalent area of a room's background ventilators together, against the rulebook's least for the room."},
    in(arg{"equivalent_area_mm2", "A", unit::square_millimetre, between(0, 1e7), "equivalent area of all ventilators of the room, as marked on them"}.usually(1000, 15000), choice{"ventilated_room", ventilated_rooms, "room and system"}),
    rule_use{"background_ventilator", "ventilated_room", background_rule}, comparator::at_least, detail::adf_2021_source("Table 1.7"), [](auto area, auto) { return area; }, [](auto rule, auto, auto) { return rule[0]; },
    "Equivalent area, not the free area of the slot. Painted shut or taped over counts as none.");

inline constexpr choice_row purge_opening_rows[] = {{"opens_15_to_30", "hinged or pivot window that opens 15 to 30 degrees", {}, {}},
                                                    {"opens_30_or_more", "window that opens 30 degrees or more, sash window, outside door", {}, {}},
                                                    {"openable", "whatever opens", {}, {}}};
inline constexpr choice_table purge_openings{{}, purge_opening_rows};
inline constexpr column purge_rule[] = {{"r_min", unit::one}};
inline constexpr auto check_purge_opening = check(
    out{"check_purge_opening", "r", unit::ratio, "Opening for purge ventilation as a part of the room's floor area, against the rulebook's least part."},
    in(arg{"opening_area_m2", "A_o", unit::square_metre, between(0, 1e4), "height times width of the opening"}.usually(0.2, 3).read_by(reads::length),
       arg{"floor_area_m2", "A_f", unit::square_metre, positive_to(1e5), "floor area of the room"}.usually(5, 30).read_by(reads::length), choice{"opening", purge_openings, "how it opens"}),
    rule_use{"purge_opening", "opening", purge_rule}, comparator::at_least, detail::adf_2021_source("Table 1.4"), [](auto opening, auto floor, auto) { return opening / floor; }, [](auto rule, auto, auto, auto) { return rule[0]; },
    "A window that is held by a restrictor opens as far as that lets it.");

// ---- distances, ducts, terminals ----------------------------------------------------------------------------------------------------

inline constexpr choice_row ventilation_distance_rows[] = {{"terminal_below_ceiling", "from the ceiling down to fan or terminal", {}, {}},
                                                           {"hood_above_hob", "from the hob up to its hood", {}, {}},
                                                           {"ventilator_height", "from the floor up to a background ventilator", {}, {}},
                                                           {"fan_to_ventilator", "between fan and background ventilator of one room", {}, {}},
                                                           {"rigid_support_spacing", "between supports of rigid duct", {}, {}},
                                                           {"flexible_support_spacing", "between supports of flexible duct", {}, {}},
                                                           {"bathroom_fan_diameter", "diameter of a bathroom fan with its ducting", {}, {}}};
inline constexpr choice_table ventilation_distances{{}, ventilation_distance_rows};
inline constexpr column distance_rule[] = {{"d_r", unit::millimetre}};
inline constexpr auto check_ventilation_distance = check(
    out{"check_ventilation_distance", "d", unit::millimetre, "A distance of an installed fan, terminal, ventilator or duct support against the rulebook's least or greatest one."},
    in(arg{"distance_mm", "d", unit::millimetre, between(0, 1e5), "distance as measured"}.usually(100, 2500).read_by(reads::length), choice{"distance", ventilation_distances, "which distance it is"}),
    rule_use{"ventilation_distance", "distance", distance_rule}, comparator::at_least, detail::adf_2021_source("1.20 to 1.55"), [](auto distance, auto) { return distance; }, [](auto rule, auto, auto) { return rule[0]; },
    "Whether it is a least or a greatest distance stands in the rulebook's row.");

inline constexpr choice_row limited_duct_rows[] = {{"flexible_final", "flexible duct as final connection", {}, {}},
                                                   {"flexible_4_in_50_cfm", "flexible, 4 in, fan of 50 cfm", {}, {}},
                                                   {"flexible_5_in_80_cfm", "flexible, 5 in, fan of 80 cfm", {}, {}},
                                                   {"flexible_5_in_100_cfm", "flexible, 5 in, fan of 100 cfm", {}, {}},
                                                   {"flexible_6_in_100_cfm", "flexible, 6 in, fan of 100 cfm", {}, {}},
                                                   {"smooth_4_in_80_cfm", "smooth, 4 in, fan of 80 cfm", {}, {}},
                                                   {"smooth_4_in_100_cfm", "smooth, 4 in, fan of 100 cfm", {}, {}},
                                                   {"smooth_5_in_125_cfm", "smooth, 5 in, fan of 125 cfm", {}, {}}};
inline constexpr choice_table limited_ducts{{}, limited_duct_rows};
inline constexpr column duct_length_rule[] = {{"L_0", unit::metre}, {"L_e", unit::metre}};
inline constexpr auto check_duct_length = check(
    out{"check_duct_length", "L", unit::metre, "Length of a duct against the greatest that the rulebook permits, less what its elbows take off."},
    in(arg{"length_m", "L", unit::metre, between(0, 1e4), "length of the duct"}.usually(0.3, 20).read_by(reads::length), choice{"duct", limited_ducts, "kind of duct, and the fan where the rulebook asks for it"},
       arg{"elbow_count", "n_e", unit::one, between(0, 100), "elbows in it"}.usually(0, 3).otherwise(0)),
    rule_use{"duct_length", "duct", duct_length_rule}, comparator::at_most, detail::adf_2021_source("1.77"), [](auto length, auto, auto) { return length; },
    [](auto rule, auto, auto, auto elbows) { return rule[0] - rule[1] * elbows; },
    "A table of lengths stands for a measurement; where the flow itself is measured, the flow decides. A flexible duct that sags or is crushed loses many times what it loses taut.");

inline constexpr column flexible_bends_rule[] = {{"q_b", unit::litre_per_second}, {"n_1", unit::one}, {"n_2", unit::one}};
inline constexpr auto check_flexible_bends = check(
    out{"check_flexible_bends", "n", unit::one, "Bends made with flexible duct against the greatest number at the flow."},
    in(arg{"bend_count", "n", unit::one, between(0, 100), "bends in flexible duct"}.usually(0, 4), arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e5), "design flow through it"}.usually(6, 60)),
    rule_use{"flexible_bends", "", flexible_bends_rule}, comparator::at_most, source{"NHBC Standards", "8.4.2.6.1"}, [](auto bends, auto) { return bends; },
    [](auto rule, auto, auto flow) { return select(flow <= rule[0], rule[1], rule[2]); }, "Count every change of direction, sagging parts between supports too.");

inline constexpr column terminal_rule[] = {{"r_min", unit::one}};
inline constexpr auto check_terminal_area = check(
    out{"check_terminal_area", "r", unit::ratio, "Free area of a terminal as a part of the duct's free area, against the rulebook's least part."},
    in(arg{"free_area_mm2", "A_t", unit::square_millimetre, between(0, 1e7), "free area of the terminal, mesh and blades taken off"}.usually(2000, 20000),
       arg{"duct_area_mm2", "A_d", unit::square_millimetre, positive_to(1e7), "free area of the duct; 100 mm: 7854 mm²"}.usually(7000, 20000)),
    rule_use{"terminal_area", "", terminal_rule}, comparator::at_least, detail::adf_2021_source("1.80"), [](auto terminal, auto duct) { return terminal / duct; }, [](auto rule, auto, auto) { return rule[0]; },
    "A mesh behind a louvre halves what the louvre leaves free; lint closes it further.");

// ---- where the air goes --------------------------------------------------------------------------------------------------------------

inline constexpr column discharge_columns[] = {{"o_p", unit::one}};
inline constexpr choice_row discharge_rows[] = {{"outside", "to the outside, by a terminal of its own", {1.0}, {}},
                                                {"roof_void", "into a roof void", {0.0}, {}},
                                                {"vented_roof_void", "into a roof void with the open area that the rulebook asks for", {0.0}, {}},
                                                {"soffit", "into a soffit or its void", {0.0}, {}},
                                                {"ridge_vent", "towards a ridge vent", {0.0}, {}},
                                                {"crawl_space", "into a crawl space or floor void", {0.0}, {}},
                                                {"other_room", "into another room", {0.0}, {}},
                                                {"recirculated", "back into the room through a filter", {0.0}, {}}};
inline constexpr choice_table discharge_places{discharge_columns, discharge_rows};
inline constexpr column discharge_rule[] = {{"o_min", unit::one}};
inline constexpr auto check_discharge_outside = check(
    out{"check_discharge_outside", "o", unit::one, "Where extracted air goes, 1 for outside and 0 for anywhere else, against what the rulebook permits."},
    in(choice{"discharge_to", discharge_places, "where the air goes"}), rule_use{"discharge_outside", "discharge_to", discharge_rule}, comparator::at_least, detail::adf_2021_source("1.17"),
    [](auto place) { return place[0]; }, [](auto rule, auto) { return rule[0]; },
    "A matter of the jurisdiction: name its rulebook. Look at the end of the duct; one that lies beside its terminal blows into the void.");

inline constexpr choice_row roof_pitch_rows[] = {{"over_22_degrees", "pitch over 22 degrees", {}, {}}, {"to_22_degrees", "pitch of 22 degrees or less", {}, {}}};
inline constexpr choice_table roof_pitches{{}, roof_pitch_rows};
inline constexpr column void_openings_rule[] = {{"r_min", unit::one}};
inline constexpr auto check_roof_void_openings = check(
    out{"check_roof_void_openings", "r", unit::ratio, "Open area of a roof void that extract air is blown into, as a part of the ceiling area, against the rulebook's least part."},
    in(arg{"open_area_m2", "A_o", unit::square_metre, between(0, 1e4), "unobstructed area of all openings to the outside"}.usually(0.05, 1), arg{"ceiling_area_m2", "A_c", unit::square_metre, positive_to(1e5), "area of the ceiling under the void"}.usually(30, 150),
       choice{"pitch", roof_pitches, "pitch of the roof"}),
    rule_use{"roof_void_openings", "pitch", void_openings_rule}, comparator::at_least, source{"National Construction Code 2019 (Australia)", "3.8.7.4"}, [](auto open, auto ceiling, auto) { return open / ceiling; },
    [](auto rule, auto, auto, auto) { return rule[0]; }, "Only where the rulebook permits a roof void at all; elsewhere the air goes outside, however well the void is ventilated.");

inline constexpr column ridge_rule[] = {{"s_min", unit::one}};
inline constexpr auto check_roof_void_ridge_share = check(
    out{"check_roof_void_ridge_share", "s", unit::ratio, "Part of a roof void's openings that lies near the ridge, against the rulebook's least part."},
    in(arg{"ridge_area_m2", "A_r", unit::square_metre, between(0, 1e4), "open area within 900 mm of the ridge"}.usually(0.01, 0.3), arg{"open_area_m2", "A_o", unit::square_metre, positive_to(1e4), "open area that is required"}.usually(0.3, 1)),
    rule_use{"roof_void_ridge_share", "", ridge_rule}, comparator::at_least, source{"National Construction Code 2019 (Australia)", "3.8.7.4"}, [](auto ridge, auto open) { return ridge / open; }, [](auto rule, auto, auto) { return rule[0]; },
    "The rest of the openings lies low, so that air passes through.");

// ---- measured against designed ---------------------------------------------------------------------------------------------------------

inline constexpr choice_row flow_extent_rows[] = {{"room", "one room or terminal", {}, {}}, {"dwelling", "the whole dwelling or system", {}, {}}};
inline constexpr choice_table flow_extents{{}, flow_extent_rows};
inline constexpr column flow_tolerance_rule[] = {{"p_t", unit::percent}, {"q_t", unit::litre_per_second}};
namespace detail {
inline constexpr arg commissioned_flow_arg = arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e5), "flow as measured"}.usually(3, 80).read_by(reads::airflow);
inline constexpr arg design_flow_arg = arg{"design_flow_l_per_s", "q_d", unit::litre_per_second, positive_to(1e5), "flow as designed"}.usually(6, 80);
struct flow_tolerance {
  template <class Rule, class Q>
  constexpr auto operator()(const Rule& rule, const Q& design) const {
    auto part = let("q_p", unit::litre_per_second, percent(rule[0]) * design);
    return select(part > rule[1], part, rule[1]);
  }
};
}  // namespace detail
inline constexpr auto check_design_flow = check(
    out{"check_design_flow", "q", unit::litre_per_second, "Flow as measured at commissioning against the least that the rulebook accepts for the flow as designed."},
    in(detail::commissioned_flow_arg, detail::design_flow_arg, choice{"extent", flow_extents, "what was measured"}), rule_use{"design_flow", "extent", flow_tolerance_rule}, comparator::at_least,
    detail::adf_2021_source("Appendix C, C2"), [](auto flow, auto, auto) { return flow; }, [](auto rule, auto, auto design, auto) { return design - detail::flow_tolerance{}(rule, design); },
    "How the measurement's uncertainty counts differs by rulebook: commissioned_flow decides as the rulebook does.");
inline constexpr auto check_design_flow_excess = check(
    out{"check_design_flow_excess", "q", unit::litre_per_second, "Flow as measured at commissioning against the greatest that the rulebook accepts for the flow as designed."},
    in(detail::commissioned_flow_arg, detail::design_flow_arg, choice{"extent", flow_extents, "what was measured"}), rule_use{"design_flow_excess", "extent", flow_tolerance_rule}, comparator::at_most,
    source{"Decree of the Ministry of the Environment on indoor climate and ventilation of new buildings, 2017 (Finland)", "section 27"}, [](auto flow, auto, auto) { return flow; },
    [](auto rule, auto, auto design, auto) { return design + detail::flow_tolerance{}(rule, design); }, "Too much air is noise, draught and heat; few rulebooks limit it.");

// ---- surfaces ------------------------------------------------------------------------------------------------------------------------------

inline constexpr choice_row humidity_period_rows[] = {{"month", "mean of a month", {}, {}}, {"week", "mean of a week", {}, {}}, {"day", "mean of a day", {}, {}}};
inline constexpr choice_table humidity_periods{{}, humidity_period_rows};
inline constexpr column surface_humidity_rule[] = {{"φ_max", unit::percent}};
MAKEGOOD_ARGUMENTS(check_surface_mould_arguments, (surface_c, room_c, relative_humidity_percent, period));
inline constexpr auto check_surface_mould = check(
    out{"check_surface_mould", "φ_si", unit::percent, "Relative humidity of the room's air at its coldest surface against the criterion of mould that is named."},
    in<check_surface_mould_arguments>(detail::surface_temperature_arg, detail::room_temperature_arg, detail::room_humidity_arg, choice{"period", humidity_periods, "what the numbers are means of"}),
    rule_use{"surface_humidity", "period", surface_humidity_rule}, comparator::at_most, source{"ISO 13788", "critical surface humidity", "memory"},
    [](auto surface, auto room, auto humidity, auto) { return call(surface_relative_humidity, surface, room, humidity); }, [](auto rule, auto, auto, auto, auto) { return rule[0]; },
    "Criteria differ: name one. Means of the period, not of the moment after a shower; an infrared thermometer sees the room in shiny surfaces.");
inline constexpr auto check_surface_condensation = check(
    out{"check_surface_condensation", "t_si", unit::celsius, "Temperature of a surface against the dew point of the air at it: water condenses where it is not above."},
    in(detail::surface_temperature_arg, detail::room_temperature_arg, detail::room_humidity_arg), rule_use{}, comparator::above, source{"ISO 13788", "condensation where the surface is not above the dew point", "memory"},
    [](auto surface, auto, auto) { return surface; }, [](auto, auto, auto room, auto humidity) { return call(critical_surface_temperature, room, humidity, constant(100.0, unit::percent)); },
    "Of the moment as read; the coldest corner and the coldest night decide.");
inline constexpr auto check_room_humidity = check(
    out{"check_room_humidity", "φ", unit::percent, "Mean relative humidity of a room against the rulebook's criterion for the period."},
    in(arg{"relative_humidity_percent", "φ", unit::percent, between(0, 100), "mean over the period"}.usually(35, 85), choice{"period", humidity_periods, "what it is a mean of"}), rule_use{"room_humidity", "period", surface_humidity_rule}, comparator::below,
    detail::adf_2021_source("Table B3"), [](auto humidity, auto) { return humidity; }, [](auto rule, auto, auto) { return rule[0]; }, "A moving average in the heating season, from a logger; one reading says little.");

}  // namespace air
}  // namespace v1
}  // namespace makegood
