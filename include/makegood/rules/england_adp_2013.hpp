// SPDX-License-Identifier: MIT
// Rulebook: England, Approved Document P (electrical safety in dwellings), 2013 edition: where an addition or alteration to a circuit is notifiable.
// Numbers only. Lay it beside an edition of BS 7671, which has the zones.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr rule england_adp_2013_rows[] = {
    {"special_location_height", "", comparator::at_most, {2.25}, {"Approved Document P, 2013 edition (England)", "regulation 12(9)(a)(i), para 2.5", "seen"}, "up to 2.25 m above the finished floor, or the shower head"},
    {"special_location_edge", "", comparator::at_most, {0.6}, {"Approved Document P, 2013 edition (England)", "regulation 12(9)(a)(ii)(aa)", "seen"}, "0.6 m from the edge of a bath or tray"},
    {"special_location_radius", "", comparator::at_most, {1.2}, {"Approved Document P, 2013 edition (England)", "regulation 12(9)(a)(ii)(bb)", "memory"}, "1.2 m from the centre of the shower head where there is neither"},
    {"notifiable", "special_location_alteration", comparator::at_least, {1.0}, {"Approved Document P, 2013 edition (England)", "regulation 12(6A)(c), para 2.5", "seen"}, "an addition or alteration to a circuit there is notifiable; replacement, repair and maintenance are not"},
    {"bathroom_socket_distance", "", comparator::at_least, {3.0}, {"Approved Document P, 2013 edition (England)", "Diagram 2 note, p. 7", "seen"}, "socket-outlets at least 3 m from the bath or tray, as drawn"},
};
inline constexpr rule_table england_adp_2013{"england-adp-2013", "Approved Document P: electrical safety, dwellings", "England", "2013 edition", "2013-04-06", england_adp_2013_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
