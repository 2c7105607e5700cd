// SPDX-License-Identifier: MIT
// Rulebook: England, Approved Document P (electrical safety in dwellings), 2013 edition: which work is notifiable, and where.
// Numbers only. Lay it beside an edition of BS 7671, which has the zones.
#pragma once
#include "../rulebook.hpp"
#include "notification_books.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr std::string_view adp_2013 = "Approved Document P, 2013 edition (England)";
inline constexpr rule england_adp_2013_rows[] = {
    {"special_location_height", "", comparator::at_most, {2.25}, {"Approved Document P, 2013 edition (England)", "regulation 12(9)(a)(i), para 2.5", "seen"}, "up to 2.25 m above the finished floor, or the shower head"},
    {"special_location_edge", "", comparator::at_most, {0.6}, {"Approved Document P, 2013 edition (England)", "regulation 12(9)(a)(ii)(aa)", "seen"}, "0.6 m from the edge of a bath or tray"},
    {"special_location_radius", "", comparator::at_most, {1.2}, {"Approved Document P, 2013 edition (England)", "regulation 12(9)(a)(ii)(bb)", "memory"}, "1.2 m from the centre of the shower head where there is neither"},
    {"notifiable", "special_location_alteration", comparator::at_least, {1.0}, {"Approved Document P, 2013 edition (England)", "regulation 12(6A)(c), para 2.5", "seen"}, "an addition or alteration to a circuit there is notifiable; replacement, repair and maintenance are not"},
    // 1 notifiable, 0 not, 2 it depends on what the text says, which is who is told and when
    {"notifiable_work", "new_circuit", comparator::at_least, {1.0}, {adp_2013, "regulation 12(6A) (read in summaries); regulation 20 for the 30 days", "seen"}, notification::tell_first},
    {"notifiable_work", "consumer_unit_replaced", comparator::at_least, {1.0}, {adp_2013, "regulation 12(6A) (read in summaries); regulation 20 for the 30 days", "seen"}, notification::tell_first},
    {"notifiable_work", "special_location_alteration", comparator::at_least, {1.0}, {adp_2013, "regulation 12(6A)(c), para 2.5", "seen"}, notification::tell_first},
    {"notifiable_work", "alteration_elsewhere", comparator::at_least, {0.0}, {adp_2013, "para 2.7 (read in a summary)", "seen"}, notification::nobody},
    {"notifiable_work", "kitchen_alteration", comparator::at_least, {0.0}, {adp_2013, "para 2.7 (read in a summary): kitchens are no special location since 2013", "seen"}, notification::nobody},
    {"notifiable_work", "outdoor_alteration", comparator::at_least, {0.0}, {adp_2013, "para 2.7 (read in a summary): gardens are no special location since 2013", "seen"}, notification::nobody},
    {"notifiable_work", "like_for_like_replacement", comparator::at_least, {0.0}, {adp_2013, "para 2.7", "seen"}, notification::nobody},
    {"notifiable_work", "repair", comparator::at_least, {0.0}, {adp_2013, "para 2.7", "seen"}, notification::nobody},
    {"notifiable_work", "heating_floor_fixed_wiring", comparator::at_least, {2.0}, {adp_2013, "follows from regulation 12(6A)", "seen"},
     "As a circuit of its own, or in the space about a bath or shower, it has to be notified before the work begins; on an existing circuit elsewhere it need not. Ask again by that kind of work."},
    {"notifiable_work", "ventilation_fan_wiring", comparator::at_least, {2.0}, {adp_2013, "follows from regulation 12(6A)", "seen"},
     "As a circuit of its own, or in the space about a bath or shower, it has to be notified before the work begins; on an existing circuit elsewhere it need not. Ask again by that kind of work."},
    {"notifiable_work", "fan_replacement", comparator::at_least, {0.0}, {"Approved Document F, volume 1, 2021 edition (England)", "3.32", "seen"}, "Nobody needs to be told of a similar fan on the existing cabling. Measure its flow all the same."},
    {"notifiable_work", "fan_installation", comparator::at_least, {2.0}, {"Building Regulations 2010", "Schedule 4, single appliances; Approved Document F", "memory"},
     "A single fan with its own controls was recalled as free from notice, a system for several rooms was not: ask building control before the work begins. Its wiring is judged by where it lies."},
    {"notifiable_work", "inspection_only", comparator::at_least, {0.0}, {"Building Regulations 2010", "regulation 3, meaning of building work", "memory"}, notification::looking},
    {"bathroom_socket_distance", "", comparator::at_least, {3.0}, {"Approved Document P, 2013 edition (England)", "Diagram 2 note, p. 7", "seen"}, "socket-outlets at least 3 m from the bath or tray, as drawn"},
};
inline constexpr rule_table england_adp_2013{"england-adp-2013", "Approved Document P: electrical safety, dwellings", "England", "2013 edition", "2013-04-06", england_adp_2013_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
