// SPDX-License-Identifier: MIT
// Checks of heating elements: resistance against the band about the rated one.
// Subject: heating.
#pragma once
#include "../verdict.hpp"
#include "elements.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr column element_band_rule[] = {{"p_-", unit::percent}, {"p_+", unit::percent}};
MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_element_resistance_arguments, (resistance_ohm, rated_power_w, rated_voltage_v),
                                 (mats_count = T(1.0), cold_tail_ohm = T(0.0)));
inline constexpr auto check_element_resistance = check(
    out{"check_element_resistance", "R", unit::ohm, "Resistance of heating mats or an element as read, less the cold tail, against the band about the rated resistance."},
    in<check_element_resistance_arguments>(
        arg{"resistance_ohm", "R", unit::ohm, between(0, 1e9), "resistance as read at the end of the cold tail"}.usually(15, 600).read_by(reads::resistance),
        arg{"rated_power_w", "P_r", unit::watt, positive_to(1e7), "rated power of each mat"}.usually(100, 1500),
        arg{"rated_voltage_v", "U_r", unit::volt, positive_to(1e5), "rated voltage"}.usually(100, 250),
        arg{"mats_count", "n", unit::one, between(1, 1000), "number of equal mats in parallel, whole"}.usually(1, 1).otherwise(1),
        arg{"cold_tail_ohm", "R_t", unit::ohm, between(0, 1000), "resistance of the cold tail, out and back"}.usually(0, 0.5).otherwise(0)),
    rule_use{"element_resistance_band", "", element_band_rule}, comparator::within, source{"rule of the trade for heating mats and cables", "", "common-practice"},
    [](auto resistance, auto, auto, auto, auto tail) { return resistance - tail; },
    [](auto rule, auto, auto power, auto voltage, auto mats, auto) {
      auto rated = call(parallel_element_resistance, power, voltage, mats);
      return band{rated * (1.0 - percent(rule[0])), rated * (1.0 + percent(rule[1]))};
    },
    "Dead and isolated, controller and sensor taken off. The maker's band and the record made at installation come first; a bypass below some 5 % hides in the band.",
    requires_that([](auto, auto, auto, auto mats, auto) { return detail::is_whole(mats); }, "the number of mats is whole"),
    requires_that([](auto resistance, auto, auto, auto, auto tail) { return tail <= resistance; }, "the cold tail's resistance is not above the reading"));

}  // namespace heating
}  // namespace v1
}  // namespace makegood
