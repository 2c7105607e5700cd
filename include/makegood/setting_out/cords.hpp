// SPDX-License-Identifier: MIT
// Cords and cables along a wall: length on legs with bends, slack and sag, the least radius of a bend.
// Subject: setting_out.
#pragma once
#include "../formula.hpp"
#include "drilling.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

namespace detail {
/// How many whole things: see heating.
template <class T>
constexpr auto is_whole_number(const T& x) { return (x + 0x1.8p52) - 0x1.8p52 == x; }
inline constexpr arg hung_length = arg{"length_mm", "L", unit::millimetre, positive_to(1e6), "length of the cord between its two holds, which are at one height"}.usually(520, 1500);
inline constexpr arg hung_span = arg{"span_mm", "S", unit::millimetre, positive_to(1e6), "distance between the holds"}.usually(300, 500);
}  // namespace detail

inline constexpr auto bend_saving = formula(
    out{"bend_saving", "s", unit::millimetre, "What rounded right-angle bends save of the length along the corners: 0.4292 R each."},
    in(arg{"radius_mm", "R", unit::millimetre, between(0, 1e4), "radius of the bends, at the middle of the cord"}.usually(5, 100),
       arg{"bends_count", "n", unit::one, between(0, 1000), "number of right-angle bends, whole"}.usually(2, 2).otherwise(1)),
    source{"arc against corner", "2R - πR/2", "derived"},
    [](auto radius, auto bends) { return bends * (2.0 * radius - detail::pi * (radius / 2.0)); }, requires_that([](auto, auto bends) { return detail::is_whole_number(bends); }, "the number of bends is whole"),
    remarks{"exact for right angles and one radius", "0 for sharp corners"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(cord_length_arguments, (legs_mm), (radius_mm = T(0.0), bends_count = T(0.0), allowance_mm = T(0.0)));
inline constexpr auto cord_length = formula(
    out{"cord_length", "L", unit::millimetre, "Length of a cord along legs that meet at right angles, with rounded bends and what is taken up where it is terminated or left slack."},
    in<cord_length_arguments>(arg{"legs_mm", "Σl", unit::millimetre, positive_to(1e6), "sum of the legs, corner to corner"}.usually(500, 5000),
                              arg{"radius_mm", "R", unit::millimetre, between(0, 1e4), "radius of the bends, at the middle of the cord"}.usually(5, 50).otherwise(0),
                              arg{"bends_count", "n", unit::one, between(0, 1000), "number of right-angle bends, whole"}.usually(2, 2).otherwise(0),
                              arg{"allowance_mm", "l_a", unit::millimetre, between(0, 1e5), "for terminating it at both ends, and slack"}.usually(0, 300).otherwise(0)),
    source{"arc against corner", "sum of legs - n (2R - πR/2) + allowance", "derived"},
    [](auto legs, auto radius, auto bends, auto allowance) { return legs - call(bend_saving, radius, bends) + allowance; },
    requires_that([](auto, auto, auto bends, auto) { return detail::is_whole_number(bends); }, "the number of bends is whole"),
    requires_that([](auto legs, auto radius, auto bends, auto) { return 2.0 * radius * bends <= legs; }, "each bend takes its radius of both its legs: the legs are long enough for them"),
    remarks{"exact for right angles", "the legs alone without bends and allowance"});

inline constexpr auto parabola_sag = formula(
    out{"parabola_sag", "h", unit::millimetre, "How far a nearly taut cord hangs down between two holds of one height: the parabola, below 1 % low up to 3 % of slack."},
    in(detail::hung_length, detail::hung_span), source{"shallow-sag approximation", "√(3S(L - S)/8)", "derived"},
    [](auto length, auto span) { return sqrt(0.375 * span * (length - span)); }, requires_that([](auto length, auto span) { return length >= span; }, "the cord is no shorter than the span"),
    remarks{"below 1 % low to 3 % of slack; more of slack: hanging_cord", "0 for a taut cord"});

inline constexpr column bend_columns[] = {{"D_1", unit::millimetre}, {"D_2", unit::millimetre}, {"D_3", unit::millimetre}, {"k_1", unit::one}, {"k_2", unit::one}, {"k_3", unit::one}, {"k_4", unit::one}};
/// Up to D_1, D_2, D_3 and above: least radius at the inside of the bend over the outer diameter.
inline constexpr choice_row bend_rows[] = {
    {"fixed_unarmoured", "cable of fixed wiring without armour, flat or round: a flat one by its long side", {10, 25, 25, 3, 4, 6, 6}, "IET On-Site Guide, minimum internal radii of bends (memory)"},
    {"shaped_once", "cable of fixed wiring, shaped once at its termination", {10, 25, 25, 1, 2, 3, 3}, "DIN VDE 0298 part 3 (reproduction); middle row from memory"},
    {"flexible_fixed", "flexible cord, fixed", {8, 12, 20, 3, 3, 4, 4}, "DIN VDE 0298 part 3 (reproduction); third row from memory"},
    {"flexible_free", "flexible cord, moved freely", {8, 12, 20, 3, 4, 5, 5}, "DIN VDE 0298 part 3 (reproduction); second row from memory"},
    {"flexible_entry", "flexible cord at its entry into an appliance", {8, 12, 20, 3, 4, 5, 5}, "DIN VDE 0298 part 3 (reproduction); ends from memory"},
    {"flexible_guided", "flexible cord, guided or reeled", {8, 12, 20, 5, 5, 5, 6}, "DIN VDE 0298 part 3 (reproduction); third row from memory"},
    {"mineral_insulated", "mineral-insulated cable", {8, 12, 20, 5, 5, 5, 5}, "Indoor Wiring Regulations (Taiwan), article 272"}};
inline constexpr choice_table bend_kinds{bend_columns, bend_rows};
inline constexpr auto bend_radius = formula(
    out{"bend_radius", "R", unit::millimetre, "Least radius of a bend, at its inside, of a cable or cord by its kind and outer diameter."},
    in(choice{"cable", bend_kinds, "kind of cable and what it does"}, arg{"diameter_mm", "D", unit::millimetre, positive_to(200), "outer diameter; of a flat cable its long side"}.usually(5, 30)),
    source{"DIN VDE 0298 part 3, table of permissible bending radii (reproduction)", "columns assigned by their order; the maker's figure comes first"},
    [](auto cable, auto diameter) {
      auto k = select(diameter <= cable[0], cable[3], select(diameter <= cable[1], cable[4], select(diameter <= cable[2], cable[5], cable[6])));
      return k * diameter;
    },
    remarks{"steps of a table: whoever made the cable has the better figure", "at a step the smaller factor"});

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood
