// SPDX-License-Identifier: MIT
// Rulebooks: which electrical work in a dwelling has to be notified, in Wales, Scotland and Northern Ireland. England's rows stand in
// england_adp_2013.hpp. Numbers: 1 notifiable (in Scotland: needs a building warrant), 0 not, 2 it depends on what the text says.
// The text says who is told, and when. Conditions are the words of job/notifiable.hpp; what was neither read nor recalled has no row.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

namespace notification {
inline constexpr std::string_view tell_first =
    "Tell the building control body before the work begins (building notice or full plans). A registered installer certifies it instead: notice or certificate to building control and "
    "a copy to the occupier within 30 days after completion.";
inline constexpr std::string_view nobody = "Nobody needs to be told. The work must comply all the same: hand over the record of the work and of its tests.";
inline constexpr std::string_view looking = "Nobody needs to be told: looking and testing is not building work. Hand over the record of the tests.";
}  // namespace notification

inline constexpr std::string_view adp_2006 = "Approved Document P, 2006 edition (Wales)";
inline constexpr rule wales_adp_2006_rows[] = {
    {"notifiable_work", "new_circuit", comparator::at_least, {1.0}, {adp_2006, "examples of notifiable work (read in a reproduction)", "seen"}, notification::tell_first},
    {"notifiable_work", "consumer_unit_replaced", comparator::at_least, {1.0}, {adp_2006, "examples of notifiable work (read in a reproduction)", "seen"}, notification::tell_first},
    {"notifiable_work", "special_location_alteration", comparator::at_least, {1.0}, {adp_2006, "Table 1 and Schedule 4, paragraph 2 (read in a reproduction)", "seen"}, notification::tell_first},
    {"notifiable_work", "kitchen_alteration", comparator::at_least, {1.0}, {adp_2006, "Table 1 and Schedule 4, paragraph 2 (read in a reproduction)", "seen"}, notification::tell_first},
    {"notifiable_work", "outdoor_alteration", comparator::at_least, {1.0}, {adp_2006, "Table 1, special installations: garden lighting or power (read in a reproduction)", "seen"}, notification::tell_first},
    {"notifiable_work", "heating_floor_fixed_wiring", comparator::at_least, {1.0}, {adp_2006, "Table 1, special installations: electric floor or ceiling heating (read in a reproduction)", "seen"},
     notification::tell_first},
    {"notifiable_work", "alteration_elsewhere", comparator::at_least, {0.0}, {adp_2006, "Table 1: lights, sockets and fused spurs added to an existing circuit (read in a reproduction)", "seen"},
     notification::nobody},
    {"notifiable_work", "like_for_like_replacement", comparator::at_least, {0.0}, {adp_2006, "Table 1 and Schedule 4, paragraph 1 (read in a reproduction)", "seen"}, notification::nobody},
    {"notifiable_work", "repair", comparator::at_least, {0.0}, {adp_2006, "Table 1: a damaged cable of one circuit, enclosures, mechanical protection (read in a reproduction)", "seen"}, notification::nobody},
    {"notifiable_work", "fan_replacement", comparator::at_least, {0.0}, {"Planning Portal (England and Wales), questions on Approved Document F", "a similar fan on the existing cabling is no building work (read in a copy)", "seen"},
     notification::nobody},
    {"notifiable_work", "ventilation_fan_wiring", comparator::at_least, {2.0}, {adp_2006, "Table 1: it depends on the room (read in a reproduction)", "seen"},
     "Fed from an existing circuit outside kitchen, bathroom and garden it need not be notified; there, or with a circuit of its own, it has to be before the work begins. Ask again by that kind of work."},
    {"notifiable_work", "inspection_only", comparator::at_least, {0.0}, {"Building Regulations 2010", "regulation 3, meaning of building work", "memory"}, notification::looking},
};
inline constexpr rule_table wales_adp_2006{"wales-adp-2006", "Approved Document P: electrical safety, dwellings (older list of notifiable work)", "Wales",
                                           "2006 edition, with Schedule 4 of the Building Regulations 2010", "2006-04-06", wales_adp_2006_rows};

// Scotland asks by the building, not by the kind of work: a book for each of two sorts of building.
inline constexpr std::string_view scotland_handbook = "Building standards technical handbook 2022: domestic (Scotland)";
inline constexpr std::string_view scotland_report = "Regulation of electricians in Scotland: research report, Scottish Government";
inline constexpr std::string_view scotland_2004 = "Building (Scotland) Regulations 2004";
inline constexpr std::string_view scotland_no_warrant =
    "No building warrant is needed, unless it touches a separating wall or belongs to work that needs one. The work must comply all the same: hand over the record of the work and of its tests.";
inline constexpr std::string_view scotland_warrant =
    "The owner gets a building warrant from the local authority's building standards before the work begins; an approved certifier of construction may certify it.";
inline constexpr source scotland_type_1{scotland_handbook, "0.5.1, building type 1: electrical work to or in a house", "seen"};
inline constexpr source scotland_type_24{scotland_2004, "schedule 3, paragraph 24 (as made): replacement by the same general type", "seen"};
inline constexpr source scotland_flats{scotland_report, "Appendix 3: rewiring and wiring to lighting need a warrant in flats and higher houses", "memory"};
inline constexpr rule scotland_warrant_house_rows[] = {
    {"notifiable_work", "new_circuit", comparator::at_least, {0.0}, scotland_type_1, scotland_no_warrant},
    {"notifiable_work", "consumer_unit_replaced", comparator::at_least, {0.0}, scotland_type_1, scotland_no_warrant},
    {"notifiable_work", "special_location_alteration", comparator::at_least, {0.0}, scotland_type_1, scotland_no_warrant},
    {"notifiable_work", "kitchen_alteration", comparator::at_least, {0.0}, scotland_type_1, scotland_no_warrant},
    {"notifiable_work", "alteration_elsewhere", comparator::at_least, {0.0}, scotland_type_1, scotland_no_warrant},
    {"notifiable_work", "heating_floor_fixed_wiring", comparator::at_least, {0.0}, scotland_type_1, scotland_no_warrant},
    {"notifiable_work", "ventilation_fan_wiring", comparator::at_least, {0.0}, scotland_type_1, scotland_no_warrant},
    {"notifiable_work", "fan_installation", comparator::at_least, {0.0}, {scotland_handbook, "0.5.1, building type 1: mechanical extract ducts through walls and roof, electrical work", "seen"}, scotland_no_warrant},
    {"notifiable_work", "like_for_like_replacement", comparator::at_least, {0.0}, scotland_type_24, scotland_no_warrant},
    {"notifiable_work", "fan_replacement", comparator::at_least, {0.0}, scotland_type_24, scotland_no_warrant},
    {"notifiable_work", "repair", comparator::at_least, {0.0}, {scotland_2004, "schedule 3, repair to a standard no worse than at present", "memory"}, scotland_no_warrant},
    {"notifiable_work", "inspection_only", comparator::at_least, {0.0}, {"Building (Scotland) Act 2003", "meaning of construction", "memory"}, notification::looking},
};
inline constexpr rule_table scotland_warrant_house{"scotland-warrant-house", "Building warrants: electrical work in a house of up to two storeys", "Scotland",
                                                   "Building (Scotland) Regulations 2004, schedule 3, by the handbook of 2022", "2022-06-01", scotland_warrant_house_rows};
inline constexpr rule scotland_warrant_flat_rows[] = {
    {"notifiable_work", "new_circuit", comparator::at_least, {1.0}, scotland_flats, scotland_warrant},
    {"notifiable_work", "special_location_alteration", comparator::at_least, {1.0}, scotland_flats, scotland_warrant},
    {"notifiable_work", "kitchen_alteration", comparator::at_least, {1.0}, scotland_flats, scotland_warrant},
    {"notifiable_work", "alteration_elsewhere", comparator::at_least, {1.0}, scotland_flats, scotland_warrant},
    {"notifiable_work", "like_for_like_replacement", comparator::at_least, {0.0}, scotland_type_24, scotland_no_warrant},
    {"notifiable_work", "fan_replacement", comparator::at_least, {0.0}, scotland_type_24, scotland_no_warrant},
    {"notifiable_work", "repair", comparator::at_least, {0.0}, {scotland_2004, "schedule 3, repair to a standard no worse than at present", "memory"}, scotland_no_warrant},
    {"notifiable_work", "inspection_only", comparator::at_least, {0.0}, {"Building (Scotland) Act 2003", "meaning of construction", "memory"}, notification::looking},
};
inline constexpr rule_table scotland_warrant_flat{"scotland-warrant-flat", "Building warrants: electrical work in a flat, or in a house of three storeys or more", "Scotland",
                                                  "Building (Scotland) Regulations 2004, schedule 3", "2005-05-01", scotland_warrant_flat_rows};

inline constexpr rule northern_ireland_electrical_rows[] = {
    {"notifiable_work", "inspection_only", comparator::at_least, {0.0}, {"Building regulations of Northern Ireland", "looking and testing is not building work", "memory"}, notification::looking},
    {"notifiable_work", "", comparator::at_least, {2.0}, {"Electrical Safety First, building regulations by country", "about 2013, read in a copy: no equivalent requirement in Northern Ireland", "seen"},
     "No rule that asks for notice of electrical work was found for Northern Ireland: ask the district council's building control before other building work. The work must comply all the same."},
};
inline constexpr rule_table northern_ireland_electrical{"northern-ireland-electrical", "Notice of electrical work in dwellings: no such rule found", "Northern Ireland", "as read, about 2013", "2013-04-06",
                                                        northern_ireland_electrical_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
