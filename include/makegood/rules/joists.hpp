// SPDX-License-Identifier: MIT
// Rulebooks: holes and notches in solid timber joists, one book a country or body; they do not mix, for each trades depth against place.
// Simply supported domestic floor joists of solid timber alone: never I-joists, trussed or glued beams, roofs, or joists already cut.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

namespace detail {
inline constexpr source trada{"summary of TRADA and BS 5268-2 guidance", "page text"};
inline constexpr source tgd_a{"Technical Guidance Document A, 1997 (Ireland), as quoted", "holes and notches"};
inline constexpr source nhbc{"NHBC Standards 2020", "6.4.18, Table 6"};
inline constexpr source irc{"summary of IRC, IBC and NDS rules for sawn lumber joists", "R502.8.1"};
}  // namespace detail

inline constexpr rule gb_joist_rows[] = {
    {"joist_hole_diameter", "", comparator::at_most, {0.25}, detail::trada, "hole at most 0.25 of the depth, on the centre line"},
    {"joist_hole_place", "", comparator::within, {0.25, 0.40}, {"summary of TRADA and BS 5268-2 guidance", "page text; the near end from memory", "memory"}, "hole from 0.25 to 0.40 of the span from a support"},
    {"joist_hole_spacing", "", comparator::at_least, {3.0}, detail::trada, "centres of holes at least 3 diameters apart"},
    {"joist_notch_depth", "between", comparator::at_most, {0.125}, detail::trada, "notch in the top at most 0.125 of the depth"},
    {"joist_notch_place", "", comparator::within, {0.07, 0.25}, detail::trada, "notch from 0.07 to 0.25 of the span from a support"},
    {"joist_hole_to_notch", "", comparator::at_least, {100.0, 0.0}, {"rule of UK guides as quoted beside TGD A", "", "common-practice"}, "hole and notch at least 100 mm apart"},
};
inline constexpr rule_table gb_joists{"gb-joists", "Notches and holes in solid timber joists (England and Wales)", "England and Wales", "BS 5268-2 practice", "2026-11-01", gb_joist_rows};

inline constexpr rule ie_joist_rows[] = {
    {"joist_hole_diameter", "", comparator::at_most, {0.25}, detail::tgd_a, "hole at most 0.25 of the depth, at the neutral axis"},
    {"joist_hole_place", "", comparator::within, {0.25, 0.40}, {"Technical Guidance Document A, 1997 (Ireland), as quoted", "holes and notches; the far end from memory", "memory"}, "hole from 0.25 to 0.40 of the span from a support"},
    {"joist_hole_spacing", "", comparator::at_least, {3.0}, detail::tgd_a, "centres of holes at least 3 diameters apart"},
    {"joist_notch_depth", "between", comparator::at_most, {0.125}, detail::tgd_a, "notch at most 0.125 of the depth"},
    {"joist_notch_place", "", comparator::within, {0.07, 0.25}, {"Technical Guidance Document A, 1997 (Ireland), as quoted", "holes and notches; the far end from memory", "memory"}, "notch from 0.07 to 0.25 of the span from a support"},
    {"joist_hole_to_notch", "", comparator::at_least, {0.0, 1.0}, detail::tgd_a, "hole and notch at least one joist depth apart"},
};
inline constexpr rule_table ie_joists{"ie-tgd-a", "Notches and holes in solid timber joists (Ireland)", "Ireland", "TGD A 1997", "2026-11-01", ie_joist_rows};

inline constexpr rule nhbc_joist_rows[] = {
    {"joist_notch_depth", "between", comparator::at_most, {0.15}, detail::nhbc, "notch at most 0.15 of the depth"},
    {"joist_notch_place", "", comparator::within, {0.10, 0.20}, detail::nhbc, "notch from 0.1 to 0.2 of the span from a support"},
    {"joist_hole_to_notch", "", comparator::at_least, {100.0, 0.0}, detail::nhbc, "cuts at least 100 mm apart"},
};
inline constexpr rule_table nhbc_joists{"nhbc-2020", "Notches in solid timber joists (new homes under this warranty)", "United Kingdom", "2020", "2026-11-01", nhbc_joist_rows};

inline constexpr rule us_joist_rows[] = {
    {"joist_hole_diameter", "", comparator::at_most, {1.0 / 3.0}, detail::irc, "hole at most D/3, 2 in from the edges, from other holes and from notches"},
    {"joist_notch_depth", "between", comparator::at_most, {1.0 / 6.0}, detail::irc, "notch at most D/6"},
    {"joist_notch_depth", "end", comparator::at_most, {0.25}, detail::irc, "notch at the end at most D/4"},
    {"joist_notch_length", "", comparator::at_most, {1.0 / 3.0}, detail::irc, "notch no longer than D/3"},
    {"joist_notch_place", "", comparator::within, {0.0, 1.0 / 3.0}, detail::irc, "no notch in the middle third of the span"},
    {"joist_hole_to_notch", "", comparator::at_least, {50.8, 0.0}, detail::irc, "hole at least 2 in from any other cut"},
};
inline constexpr rule_table us_joists{"us-irc-joists", "Notches and holes in sawn lumber joists (United States)", "United States", "IRC R502.8.1", "2026-11-01", us_joist_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood
