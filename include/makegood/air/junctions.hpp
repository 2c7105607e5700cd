// SPDX-License-Identifier: MIT
// Tees and wyes: loss coefficients by the share of the flow that takes the branch.
// Subject: air. On the velocity of all the air together, in the duct that carries it; a coefficient below zero is a leg that gains.
#pragma once
#include "ducts.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

inline constexpr source crane_tees{"Crane TP-410, 2013 and later", "chapter 2, equations 2-35 to 2-38, tees and wyes"};
inline constexpr column junction_columns[] = {{"cos α", unit::one}, {"F", unit::one}, {"E_run", unit::one}, {"a_90", unit::one}};
inline constexpr choice_row converging_rows[] = {{"30", "30°", {0.866025403784438647, 1.74, 1.0, 0.0}}, {"45", "45°", {0.707106781186547524, 1.41, 1.0, 0.0}},
                                                 {"60", "60°", {0.5, 1.0, 1.0, 0.0}}, {"90", "90°", {0.0, 0.0, 0.0, 1.0}}};
inline constexpr choice_table converging_angles{junction_columns, converging_rows};
inline constexpr choice_row diverging_rows[] = {{"30", "30°", {0.866025403784438647}}, {"45", "45°", {0.707106781186547524}}, {"60", "60°", {0.5}}};
inline constexpr column diverging_columns[] = {{"cos α", unit::one}};
inline constexpr choice_table diverging_angles{diverging_columns, diverging_rows};
namespace detail {
inline constexpr arg branch_share_arg = arg{"branch_flow_ratio", "y", unit::ratio, between(0, 1), "flow of the branch over the flow of all"}.usually(0.51, 0.9);
inline constexpr arg branch_size_arg = arg{"branch_diameter_ratio", "β", unit::ratio, between(0.1, 1), "diameter of the branch over that of the straight duct"}.usually(0.65, 1).otherwise(1.0);
inline constexpr std::string_view tee_remark = "fits for pipe fittings at high Reynolds numbers: 20 % and more for a domestic one; steps where a factor changes its row";
}  // namespace detail

inline constexpr auto diverging_branch_coefficient = formula(
    out{"diverging_branch_coefficient", "ζ_b", unit::one, "Loss coefficient of the air that leaves into the branch of a wye."},
    in(detail::branch_share_arg, choice{"angle_deg", diverging_angles, "angle of the branch"}, detail::branch_size_arg), crane_tees,
    [](auto share, auto angle, auto size) {
      auto area = square(size);
      auto faster = let("r", unit::one, share / area);
      auto small = let("G_1", unit::one, select(share <= 0.6, 1.1 - 0.7 * share, constant(0.85, unit::one)));
      auto large = let("G_2", unit::one, select(share <= 0.4, 1.0 - 0.6 * share, constant(0.6, unit::one)));
      auto g = let("G", unit::one, select(area <= 0.35, small, large));
      return g * (1.0 + square(faster) - 2.0 * faster * angle[0]);
    },
    remarks{detail::tee_remark, "1 with no flow into the branch"});

inline constexpr auto diverging_run_coefficient = formula(
    out{"diverging_run_coefficient", "ζ_r", unit::one, "Loss coefficient of the air that goes straight on past a branch that takes some of it."},
    in(detail::branch_share_arg, detail::branch_size_arg), crane_tees,
    [](auto share, auto size) {
      auto m = let("M", unit::one, select(square(size) <= 0.4, constant(0.4, unit::one), select(share <= 0.5, 2.0 * (2.0 * share - 1.0), 0.3 * (2.0 * share - 1.0))));
      return m * square(share);
    },
    remarks{detail::tee_remark, "0 with no flow into the branch"});

inline constexpr auto converging_branch_coefficient = formula(
    out{"converging_branch_coefficient", "ζ_b", unit::one, "Loss coefficient of the air that comes in by the branch of a tee or wye."},
    in(detail::branch_share_arg, choice{"angle_deg", converging_angles, "angle of the branch"}, detail::branch_size_arg), crane_tees,
    [](auto share, auto angle, auto size) {
      auto area = square(size);
      auto c = let("C", unit::one, select(area <= 0.35, constant(1.0, unit::one), select(share <= 0.4, 0.9 * (1.0 - share), constant(0.55, unit::one))));
      return c * (1.0 + square(share / area) - 2.0 * square(1.0 - share) - angle[1] * square(share) / area);
    },
    remarks{detail::tee_remark, "below 0 with little flow in the branch: the main flow draws it in"});

inline constexpr auto converging_run_coefficient = formula(
    out{"converging_run_coefficient", "ζ_r", unit::one, "Loss coefficient of the air that comes straight on, past a branch that adds to it."},
    in(detail::branch_share_arg, choice{"angle_deg", converging_angles, "angle of the branch"}, detail::branch_size_arg), crane_tees,
    [](auto share, auto angle, auto size) {
      auto slanted = angle[2] * (1.0 - square(1.0 - share) - angle[1] * square(share) / square(size));
      return slanted + angle[3] * share * (1.55 - share);
    },
    remarks{detail::tee_remark, "0 with no flow in the branch"});

}  // namespace air
}  // namespace v1
}  // namespace makegood
