// SPDX-License-Identifier: MIT
// Checks of setting out: fixings, holes and notches in joists.
// Subject: setting_out.
#pragma once
#include "../verdict.hpp"
#include "fixings.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

MAKEGOOD_ARGUMENTS(check_fixing_arguments, (pull_n, allowable_pull_n, shear_n, allowable_shear_n));
inline constexpr auto check_fixing = check(
    out{"check_fixing", "β", unit::ratio, "Pull and shear on a fixing together against what is allowed in that wall."},
    in<check_fixing_arguments>(arg{"pull_n", "T", unit::newton, between(0, 1e6), "pull on the fixing"}.usually(0, 500), arg{"allowable_pull_n", "T_a", unit::newton, positive_to(1e6), "allowable pull in this wall"}.usually(200, 2000),
                               arg{"shear_n", "V", unit::newton, between(0, 1e6), "shear on the fixing"}.usually(0, 500), arg{"allowable_shear_n", "V_a", unit::newton, positive_to(1e6), "allowable shear in this wall"}.usually(200, 2000)),
    rule_use{}, comparator::at_most, source{"linear interaction of tension and shear", "T/T_a + V/V_a ≤ 1", "common-practice"},
    [](auto pull, auto allowable_pull, auto shear, auto allowable_shear) { return call(fixing_interaction, pull, allowable_pull, shear, allowable_shear); },
    [](auto, auto, auto, auto, auto) { return constant(1.0, unit::ratio); },
    "What the wall behind the tiles is decides: a figure for solid masonry says nothing of board, block or a void. A rail is pulled by hands and leaned on: the load is not the weight alone.");

inline constexpr column part_of_depth[] = {{"k", unit::ratio}};
inline constexpr column part_of_span[] = {{"k_1", unit::ratio}, {"k_2", unit::ratio}};
inline constexpr column hole_to_notch_rule[] = {{"l_min", unit::millimetre}, {"k", unit::ratio}};
namespace detail {
inline constexpr arg joist_depth = arg{"joist_depth_mm", "D", unit::millimetre, positive_to(1000), "depth of the joist as measured; above 250 mm an engineer is asked"}.usually(95, 250).valid_in(between(0, 250)).read_by(reads::length);
inline constexpr arg joist_span = arg{"span_m", "L", unit::metre, positive_to(30), "clear span of the joist between its supports"}.usually(1.5, 5).read_by(reads::length);
inline constexpr arg from_support = arg{"from_support_mm", "x", unit::millimetre, between(0, 30000), "distance from the nearer support"}.usually(100, 1500).read_by(reads::length);
inline constexpr arg hole_diameter = arg{"diameter_mm", "d", unit::millimetre, positive_to(500), "diameter of the hole, of two the larger"}.usually(10, 60).read_by(reads::length);
}  // namespace detail
inline constexpr choice_row notch_rows[] = {{"between", "between the supports, in the top edge"}, {"end", "at the end, over the support"}};
inline constexpr choice_table notch_kinds{{}, notch_rows};

inline constexpr auto check_joist_hole = check(
    out{"check_joist_hole", "d", unit::millimetre, "Size of a hole through a solid timber joist against the largest for its depth; its place and its neighbours have checks of their own."}, in(detail::hole_diameter, detail::joist_depth),
    rule_use{"joist_hole_diameter", "", part_of_depth}, comparator::at_most, source{"rules for holes in solid timber joists", "part of the joist's depth"}, [](auto diameter, auto) { return diameter; },
    [](auto rule, auto, auto depth) { return rule[0] * depth; },
    "On the centre line. The size alone proves nothing: check_joist_hole_place, check_joist_hole_spacing and check_joist_hole_to_notch as well. Solid, simply supported joists of floors only: never I-joists, trusses, glued or cut ones.");

inline constexpr auto check_joist_hole_place = check(
    out{"check_joist_hole_place", "x", unit::millimetre, "Place of a hole along a solid timber joist against the stretch where holes are permitted."}, in(detail::from_support, detail::joist_span),
    rule_use{"joist_hole_place", "", part_of_span}, comparator::within, source{"rules for holes in solid timber joists", "part of the span from a support"}, [](auto x, auto) { return x; },
    [](auto rule, auto, auto span) { return band{rule[0] * in_milli(span), rule[1] * in_milli(span)}; },
    "The whole hole lies there, not its centre alone: take the edge that lies nearer to the end of the stretch. A joist with loads of its own (a bath, a wall, a stair) is not covered.");

inline constexpr auto check_joist_hole_spacing = check(
    out{"check_joist_hole_spacing", "s", unit::millimetre, "Distance between the centres of two holes in a joist against the least for their diameter."},
    in(arg{"centres_mm", "s", unit::millimetre, between(0, 30000), "distance between centres"}.usually(30, 300).read_by(reads::length), detail::hole_diameter), rule_use{"joist_hole_spacing", "", part_of_depth}, comparator::at_least,
    source{"rules for holes in solid timber joists", "multiple of the diameter"}, [](auto centres, auto) { return centres; }, [](auto rule, auto, auto diameter) { return rule[0] * diameter; },
    "The larger of the two diameters. Old holes count, plugged ones too.");

inline constexpr auto check_joist_hole_to_notch = check(
    out{"check_joist_hole_to_notch", "l", unit::millimetre, "Distance between a hole and a notch in a joist against the least."},
    in(arg{"distance_mm", "l", unit::millimetre, between(0, 30000), "clear distance along the joist"}.usually(50, 500).read_by(reads::length), detail::joist_depth), rule_use{"joist_hole_to_notch", "", hole_to_notch_rule}, comparator::at_least,
    source{"rules for cuts in solid timber joists", "a length or a part of the depth"}, [](auto distance, auto) { return distance; }, [](auto rule, auto, auto depth) { return maximum(rule[0], rule[1] * depth); }, "Old cuts count.");

inline constexpr auto check_joist_notch = check(
    out{"check_joist_notch", "t", unit::millimetre, "Depth of a notch in a solid timber joist against the greatest for its depth; its place has a check of its own. Unrounded: a printed 19 mm for 18.75 mm is rounded the wrong way."},
    in(arg{"notch_depth_mm", "t", unit::millimetre, between(0, 1000), "depth of the notch"}.usually(5, 40).read_by(reads::length), detail::joist_depth, choice{"where", notch_kinds, "between the supports or at the end"}.otherwise("between")),
    rule_use{"joist_notch_depth", "where", part_of_depth}, comparator::at_most, source{"rules for notches in solid timber joists", "part of the joist's depth"}, [](auto notch, auto, auto) { return notch; },
    [](auto rule, auto, auto depth, auto) { return rule[0] * depth; },
    "In the top edge. The depth alone proves nothing: check_joist_notch_place as well. Solid, simply supported joists of floors only. A cable in a notch lies less than 50 mm deep: a steel plate over it, or what the wiring rules ask.");

inline constexpr auto check_joist_notch_place = check(
    out{"check_joist_notch_place", "x", unit::millimetre, "Place of a notch along a solid timber joist against the stretch where notches are permitted."}, in(detail::from_support, detail::joist_span),
    rule_use{"joist_notch_place", "", part_of_span}, comparator::within, source{"rules for notches in solid timber joists", "part of the span from a support"}, [](auto x, auto) { return x; },
    [](auto rule, auto, auto span) { return band{rule[0] * in_milli(span), rule[1] * in_milli(span)}; },
    "The whole notch lies there, not its middle alone. Never a notch in the bottom edge.");

inline constexpr auto check_joist_notch_length = check(
    out{"check_joist_notch_length", "l", unit::millimetre, "Length of a notch along a solid timber joist against the greatest for its depth."},
    in(arg{"notch_length_mm", "l", unit::millimetre, between(0, 30000), "length of the notch along the joist"}.usually(15, 80).read_by(reads::length), detail::joist_depth), rule_use{"joist_notch_length", "", part_of_depth}, comparator::at_most,
    source{"rules for notches in solid timber joists", "part of the joist's depth"}, [](auto length, auto) { return length; }, [](auto rule, auto, auto depth) { return rule[0] * depth; }, "Books without a rule of it say so.");

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood
