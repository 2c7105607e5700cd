// SPDX-License-Identifier: MIT
// Fixings of what hangs on a wall: pull, shear, both together, what tests on site permit.
// Subject: setting_out.
#pragma once
#include "../formula.hpp"
#include "cords.hpp"
#include "drilling.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

namespace detail {
inline constexpr arg hung_load = arg{"load_n", "W", unit::newton, between(0, 1e6), "load that hangs on it, with what hands add to it: 1 kg is 9.81 N"}.usually(50, 1500);
inline constexpr arg allowable = arg{"allowable_n", "N_a", unit::newton, positive_to(1e6), "allowable load of one fixing in this wall"}.usually(200, 2000);
}  // namespace detail

MAKEGOOD_ARGUMENTS(fixing_pull_arguments, (load_n, projection_mm, lever_mm, top_count));
inline constexpr auto fixing_pull = formula(
    out{"fixing_pull", "T", unit::newton, "Pull out of the wall on each of the top fixings of a bracket that a load tips forward."},
    in<fixing_pull_arguments>(detail::hung_load, arg{"projection_mm", "e", unit::millimetre, between(0, 1e4), "distance of the load from the wall"}.usually(50, 200),
                              arg{"lever_mm", "h", unit::millimetre, positive_to(1e4), "distance of the top fixings from the lower edge that the bracket turns about"}.usually(30, 500),
                              arg{"top_count", "n", unit::one, between(1, 100), "number of top fixings that share it, whole"}.usually(2, 2)),
    source{"moment balance", "T = W e/(h n)", "derived"}, [](auto load, auto projection, auto lever, auto top) { return load * projection / (lever * top); },
    requires_that([](auto, auto, auto, auto top) { return detail::is_whole_number(top); }, "the number of fixings is whole"),
    remarks{"exact for a stiff bracket on a flat wall; tiles that are not flat put it all on one fixing", "0 for a load at the wall"});

inline constexpr auto fixing_shear = formula(
    out{"fixing_shear", "V", unit::newton, "Shear along the wall on each fixing of a bracket."},
    in(detail::hung_load, arg{"fixings_count", "n", unit::one, between(1, 100), "number of fixings that share it, whole"}.usually(4, 4)), source{"load shared by all fixings", "V = W/n", "derived"},
    [](auto load, auto fixings) { return load / fixings; }, requires_that([](auto, auto fixings) { return detail::is_whole_number(fixings); }, "the number of fixings is whole"),
    remarks{"exact where all holes fit alike; a loose hole carries nothing", "0 without load"});

MAKEGOOD_ARGUMENTS(fixing_interaction_arguments, (pull_n, allowable_pull_n, shear_n, allowable_shear_n));
inline constexpr auto fixing_interaction = formula(
    out{"fixing_interaction", "β", unit::ratio, "How much of a fixing is used by pull and shear together: the straight line, which is cautious."},
    in<fixing_interaction_arguments>(arg{"pull_n", "T", unit::newton, between(0, 1e6), "pull on the fixing"}.usually(0, 500), arg{"allowable_pull_n", "T_a", unit::newton, positive_to(1e6), "allowable pull in this wall"}.usually(200, 2000),
                                     arg{"shear_n", "V", unit::newton, between(0, 1e6), "shear on the fixing"}.usually(0, 500), arg{"allowable_shear_n", "V_a", unit::newton, positive_to(1e6), "allowable shear in this wall"}.usually(200, 2000)),
    source{"linear interaction of tension and shear", "T/T_a + V/V_a", "common-practice"}, [](auto pull, auto allowable_pull, auto shear, auto allowable_shear) { return pull / allowable_pull + shear / allowable_shear; },
    remarks{"exact to rounding; cautious against curved rules", "0 without load"});

inline constexpr auto allowable_from_tests = formula(
    out{"allowable_from_tests", "N_a", unit::newton, "Allowable load of a fixing from the mean of ultimate loads found by tests in that very wall."},
    in(arg{"mean_ultimate_n", "N_u", unit::newton, positive_to(1e6), "mean of the ultimate loads, of five tests or more"}.usually(500, 8000),
       arg{"factor", "ν", unit::one, between(1, 100), "safety factor on the mean"}.usually(3, 7).otherwise(4)),
    source{"BS 8539:2012, allowable-load test as described in the trade", "clause 9, mean over 4", "memory"}, [](auto mean, auto factor) { return mean / factor; },
    remarks{"exact to rounding; the lowest test has a say of its own: see fixing_load", ""});

inline constexpr auto greatest_proof_load = formula(
    out{"greatest_proof_load", "N_p", unit::newton, "Greatest load with which a fixing is proved on site, which does not harm a sound one."}, in(detail::allowable),
    source{"AEFAC Technical Note TN05, Site testing guidelines Vol 2 Proof tests", "section 4, note"}, [](auto allowable) { return 1.5 * allowable; }, remarks{"exact to rounding", ""});

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood
